# Words of finding: what was it?

## Parts
find-title = ¿Qué era?
find-no-place = Manguera en mano
find-recorded = { $how ->
    [sits] Según el registro, sin leer: está aquí
    [sat] Según el registro, sin leer: fue la última aquí
   *[belongs] Según el registro, sin leer: va aquí
}
find-parts = Piezas
find-part-hose = Manguera
find-part-end = Terminal { $role }
find-part-mate = Contraparte de { $role }
find-tab-hose = Mang.
find-tab-end = { $role }
find-tab-mate = puerto { $role }
find-state-read = { $count } lect.
find-state-settled = resuelto
find-state-own = dato propio
find-tab-first = 1.º
find-tab-second = 2.º
find-tab-third = 3.º
find-tab-needed = quizá
find-tab-not-needed = sobra
find-begin-a = Primero el terminal A, luego el B, luego la manguera. Atar un trapo a un extremo y llamarlo A.
find-before-loosening = ¿Todavía en la máquina? Carga abajo, motor parado y presión comprobada a cero antes de aflojar nada. Aceite bajo la piel: al hospital de inmediato.
find-begin-settled = Resuelto: { $part }, { $name }.
find-begin-open = Aún sin resolver: { $part }.
find-begin-b = Ahora el otro terminal.
find-begin-hose = Ahora la manguera, lo último.
find-mate-open = El terminal { $role } solo no lo dice.
find-mate-why = El puerto de la máquina dice qué tenía que ser el terminal. Es la evidencia más fuerte que hay.

## Readings
find-key-print = Impresión en cubierta
find-key-mate = Contraparte
find-key-reinforcement = Qué soporta la presión
find-key-layers = Capas
find-key-id-mm = Ø interior
find-key-cover-od-mm = Ø sobre la cubierta
find-key-reinforcement-od-mm = Ø sobre el refuerzo
find-key-cover = Tipo de cubierta
find-key-overall-length-mm = Longitud total
find-key-gender = Qué mitad
find-key-kind = Qué tipo de terminal
find-key-shoulder = Resalte o boca
find-key-seal = Qué sella
find-key-thread-diameter-mm = Ø de rosca
find-key-thread-diameter-mm-male = Ø de rosca, exterior
find-key-thread-diameter-mm-female = Ø de rosca, interior
find-key-pitch-mm = Peine de roscas
find-key-taper = Conicidad
find-key-seat-included-angle-deg = Ángulo de asiento
find-key-cone = Forma del asiento
find-key-flank-angle-deg = Ángulo de flancos
find-key-swivel-hex-mm = Hex. de tuerca
find-key-tube-od-mm = Ø del tubo
find-key-male-bore-mm = Ø de paso del macho
find-key-second-thread-diameter-mm = Segundo Ø de rosca
find-key-threads-apart = Hilos entre medias
find-key-form = Cómo sale el terminal
find-key-bolt-long-mm = Tornillos, lado largo
find-key-bolt-short-mm = Tornillos, lado corto
find-key-head-od-mm = Ø de la cabeza
find-key-head-thickness-mm = Grosor de la cabeza

find-do-print = leer la impresión
find-do-reinforcement = mirar el extremo cortado
find-do-layers = contar las capas
find-do-id-mm = medir el diámetro interior
find-do-cover-od-mm = medir sobre la cubierta
find-do-reinforcement-od-mm = medir sobre el refuerzo
find-do-cover = mirar la cubierta
find-do-overall-length-mm = medir la longitud total
find-do-kind = mirar el terminal
find-do-shoulder = mirar el resalte o la boca
find-do-gender = ver dónde está la rosca
find-do-seal = buscar la junta
find-do-thread-diameter-mm = medir la rosca
find-do-pitch-mm = probar el peine de roscas
find-do-taper = mirar si es cónica
find-do-seat-included-angle-deg = medir el asiento
find-do-cone = mirar el asiento
find-do-flank-angle-deg = medir los flancos
find-do-swivel-hex-mm = medir el hexágono
find-do-tube-od-mm = medir el tubo
find-do-male-bore-mm = medir el paso
find-do-second-thread-diameter-mm = medir otra vez la rosca
find-do-threads-apart = contar los hilos entre medias
find-do-form = decir cómo sale de la manguera
find-do-bolt-long-mm = medir entre tornillos, largo
find-do-bolt-short-mm = medir entre tornillos, corto
find-do-head-od-mm = medir la cabeza
find-do-head-thickness-mm = medir el grosor de la cabeza

find-how-overall-length-mm = Poner la cinta de punto de sellado a punto de sellado, tuercas retiradas. Un terminal acodado cuenta hasta el centro de su cara de sellado. Medida en curva sale corta.
find-how-form = Sostener la manguera recta y mirar cómo sale de ella el terminal. Cuenta también la altura de codo: con otra no encaja.

## The tool, in a few words beside the drawing
find-tool-id-mm = Bocas interiores, cortada a 100 mm del casquillo
find-tool-cover-od-mm = Bocas exteriores, donde esté limpia y redonda
find-tool-reinforcement-od-mm = Bocas exteriores sobre el alambre, con suavidad
find-tool-layers = Pelar y contar
find-tool-reinforcement = Mirar el extremo cortado
find-tool-cover = Color e impresión
find-tool-overall-length-mm = Cinta, entre puntos de sellado
find-tool-kind = ¿Qué es a primera vista?
find-tool-shoulder = ¿Sobre qué apoya el anillo?
find-tool-gender = ¿Dónde está la rosca?
find-tool-seal = ¿Junta, arandela o metal desnudo?
find-tool-thread-diameter-mm = En el tercer hilo o más adentro
find-tool-thread-diameter-mm-male = Bocas sobre las crestas, tercer hilo
find-tool-thread-diameter-mm-female = Bocas dentro, en las crestas, tercer hilo
find-tool-pitch-mm = La hoja que no deja luz en ningún punto
find-tool-taper = Bocas planas en la rosca: ¿luz en un extremo?
find-tool-seat-included-angle-deg = Galga centrada, sin bailar
find-tool-cone = ¿Saliente, hueco o plano?
find-tool-flank-angle-deg = Hoja en los flancos, a contraluz
find-tool-swivel-hex-mm = Bocas entre caras
find-tool-tube-od-mm = Bocas sobre el tubo tras el cono
find-tool-tube-od-mm-male = Bocas en el agujero al fondo del cono
find-tool-male-bore-mm = Bocas interiores, paso más estrecho
find-tool-second-thread-diameter-mm = Cinco hilos más adentro
find-tool-threads-apart = Entre los dos diámetros
find-tool-form = Sostener la manguera recta
find-tool-bolt-long-mm = De borde de agujero al mismo borde
find-tool-bolt-short-mm = De borde de agujero al mismo borde
find-tool-head-od-mm = Bocas sobre la cabeza redonda
find-tool-head-thickness-mm = Bocas sobre el borde

## What a reading can be
find-is-gender-female = Hembra
find-sign-gender-female = rosca por dentro, casi siempre tuerca
find-is-gender-male = Macho
find-sign-gender-male = rosca por fuera
find-is-kind-nut = Tuerca suelta
find-sign-kind-nut = rosca por dentro
find-is-kind-male = Macho
find-sign-kind-male = rosca por fuera
find-is-kind-stud = Espárrago
find-sign-kind-stud = anillo en su resalte
find-is-kind-socket = Puerto o alojamiento
find-sign-kind-socket = rosca en un cuerpo
find-is-kind-flange = Brida
find-sign-kind-flange = cabeza redonda, cuatro tornillos
find-is-kind-tube = Tubo liso
find-sign-kind-tube = sin rosca propia
find-is-kind-banjo = Banjo
find-sign-kind-banjo = ojo, tornillo hueco
find-is-kind-coupling = Conexión rápida
find-sign-kind-coupling = manguito o punta
find-is-kind-staple = Terminal de grapa
find-sign-kind-staple = sujeto por un pasador en U
find-is-kind-test-point = Toma de presión
find-sign-kind-test-point = pequeña, con tapón
find-is-shoulder-chamfered = Con chaflán
find-sign-shoulder-chamfered = anillo tras la rosca
find-is-shoulder-flat = Plano
find-sign-shoulder-flat = anillo o arandela en la cara
find-stray-again = Leerlo otra vez
find-other-half = { $what } { $value } no concuerda aquí con { $name }, pero sí con su otra mitad. ¿Se midió la contraparte de la máquina?
find-other-half-move = Sí: pasarlo a la contraparte de { $role }
find-is-seal-cone = Cono
find-sign-seal-cone = metal con metal
find-is-seal-o-ring-face = Tórica en cara
find-sign-seal-o-ring-face = cara plana, junta en ella o enfrente
find-is-seal-o-ring-cone = Tórica en cono
find-sign-seal-o-ring-cone = o su ranura vacía
find-is-seal-o-ring-shoulder = Tórica en base
find-sign-seal-o-ring-shoulder = bajo el hexágono, tras la rosca
find-is-seal-thread = La rosca
find-sign-seal-thread = cinta o pasta, sin asiento
find-is-seal-bonded-washer = Arandela metal-goma
find-sign-seal-bonded-washer = anillo metálico con goma
find-is-seal-flat-gasket = Junta plana
find-sign-seal-flat-gasket = anillo de cobre o fibra
find-is-seal-inverted-flare = Abocardado invertido
find-sign-seal-inverted-flare = cono al fondo de la hembra
find-is-taper-no = Cilíndrica
find-sign-taper-no = sin luz bajo las bocas
find-is-taper-yes = Cónica
find-sign-taper-yes = luz en un extremo
find-is-seat-included-angle-deg-24 = 24°
find-sign-seat-included-angle-deg-24 = 12 por lado
find-is-seat-included-angle-deg-60 = 60°
find-sign-seat-included-angle-deg-60 = 30 por lado
find-is-seat-included-angle-deg-74 = 74°
find-sign-seat-included-angle-deg-74 = 37 por lado
find-is-seat-included-angle-deg-90 = 90°
find-sign-seat-included-angle-deg-90 = 45 por lado
find-is-cone-concave = Hueco
find-sign-cone-concave = el cono entra
find-is-cone-convex = Saliente
find-sign-cone-convex = el cono sobresale
find-is-cone-flat = Plano
find-sign-cone-flat = no hay cono
find-is-flank-angle-deg-60 = 60°
find-sign-flank-angle-deg-60 = unificada, métrica
find-is-flank-angle-deg-55 = 55°
find-sign-flank-angle-deg-55 = Whitworth, gas
find-is-reinforcement-wire-braid = Alambre trenzado
find-sign-reinforcement-wire-braid = los alambres se cruzan
find-is-reinforcement-wire-spiral = Alambre en espiral
find-sign-reinforcement-wire-spiral = alambres uno junto a otro
find-is-reinforcement-textile-braid = Textil
find-sign-reinforcement-textile-braid = tela o cordón en caucho
find-is-reinforcement-thermoplastic-textile = Textil sobre plástico
find-sign-reinforcement-thermoplastic-textile = cordón en torno a tubo de plástico
find-is-reinforcement-ptfe-steel-braid = Trenzado de acero
find-sign-reinforcement-ptfe-steel-braid = desnudo, sobre un tubo blanco
find-is-reinforcement-suction-helix = Hélice
find-sign-reinforcement-suction-helix = un alambre grueso, muy separado
find-is-layers-1 = 1
find-is-layers-2 = 2
find-is-layers-4 = 4
find-is-layers-6 = 6
find-is-cover-plain = Normal
find-sign-cover-plain = caucho negro, nada especial impreso
find-is-cover-non-conductive = No conductora
find-sign-cover-non-conductive = a menudo naranja, o impreso
find-is-cover-flame-resistant = Resistente a la llama
find-is-cover-antistatic = Antiestática
find-is-form-straight = Recto
find-is-form-compact90 = Compacto 90°
find-is-form-standpipe = Espiga lisa
find-is-form-banjo = Banjo
find-form-elbow = Codo { $angle }
find-per-inch = /in
find-more = { $count } más
find-tpi = { $count } /in
find-leaves-in = hilos por pulgada
find-leaves-mm = paso en mm
find-gauge-unit = Unidad del peine
find-print-none = No se puede leer nada
find-print-read-as = Leído como { $what }
find-print-unread = No se entiende: { $text }
find-print-fits = { $count ->
    [one] encaja una manguera de las tablas
   *[other] encajan { $count } mangueras de las tablas
 }
find-print-made = fabricada { $when }
find-print-made-or = fabricada { $when }, o { $other }
find-made-quarter = { $quarter ->
    [1] 1.er
    [2] 2.º
    [3] 3.er
   *[other] { $quarter }.º
 } trimestre de { $year }
find-made-week = semana { $week } de { $year }
find-print-empty = Escribir lo que aún se lee, ? por cada letra borrada, «hueco» donde faltan varias: ??N 853 2S?

## Candidates
find-candidates = Qué puede ser
find-nothing-read = Nada leído aún: todo sigue siendo posible.
find-many = { $count } son probables. Los primeros:
find-read-on = { $count } siguen siendo posibles. Seguir midiendo.
find-withdrawn = Sin candidatos: ese número no puede ser.
find-few = { $count ->
    [one] Uno es probable.
   *[other] { $count } son probables.
 }
find-decides = { $count ->
    [one] Lo asegura: { $what }.
   *[other] Los distingue: { $what }.
 }
find-part-settled = Resuelto.
find-others = otros { $count }: { $percent }
find-more-candidates = Todos los candidatos, y por qué
find-why = { $name } y las lecturas
find-why-back = Volver a los candidatos
find-why-none = Aún no hay lecturas guardadas de esta pieza.
find-why-most = hasta { $limit }
find-why-least = desde { $limit }
find-why-table = tabla { $range }
find-why-tables = tabla { $range }, rival { $other }
find-why-blank = en blanco
find-why-against = Frente a
find-why-none-of-these = ninguno de estos
find-why-readings = Qué dice cada lectura
find-why-how = Bits de evidencia, cada uno dobla la razón: a la derecha por { $candidate }, a la izquierda por { $rival }.
find-why-bits = { $bits } bits por { $name }
find-why-even = no dice nada entre los dos
find-why-together = Frecuencia, otras piezas, origen
find-why-all = Todo junto
find-why-wrong = { $count ->
    [one] Para que { $rival } fuera cierto, esta lectura tendría que estar mal: { $readings }.
   *[other] Para que { $rival } fuera cierto, estas lecturas tendrían que estar mal: { $readings }.
 }
find-why-none-wrong = Ninguna lectura por sí sola tendría que estar mal para que { $rival } fuera cierto.
find-why-unverified = La fila de { $name } es de memoria: nadie la ha verificado.
find-why-from = De dónde vienen las filas
find-also = Ninguna lectura lo distingue de:
find-pick = Lo sé: es este
find-pick-note = { $part ->
    [hose] dato propio, sin medir; Revisar sigue pidiendo todo lo que las lecturas dejan abierto
   *[end] dato propio, sin medir; Revisar se detiene hasta que las lecturas lo resuelvan
 }
find-picked = Dato propio, sin medir: este queda en la especificación.
find-unpick = Retirarlo

## Going on
find-keep = Guardar { $value }
find-then = Luego: { $task }
find-then-part = Luego: { $part }, { $task }
find-as-a = Se ve igual que A
find-skip = Seguir
find-outcome = La manguera tal como se halló: terminales, manguera y longitud
find-now = Ahora: { $task }
find-refused = { $what } no puede ser { $value }: está entre { $low } y { $high }.
find-then-check = Luego: revisar qué puede sustituirla
find-use = Revisar qué puede sustituirla
find-use-then-settled = Manguera y ambos terminales resueltos.
find-use-then-open = Sin resolver: { $parts }. La revisión se detiene ahí.
find-use-then-hose = La manguera no está resuelta: la nueva debe ser tan buena como todo lo que aún pudo ser.
find-reach = La manguera está (solo se pide lo accesible)
find-reach-in-place = aún montada
find-reach-off = fuera de la máquina
find-reach-cut = cortada
find-apart-off = Desmontarla de la máquina
find-apart-cut = Cortarla, a 100 mm del casquillo
find-apart-then = Entonces se puede leer más. Sin resolver: { $parts }.
find-reach-more-off = Montada ya no dice más. Fuera de la máquina se puede leer más.
find-reach-more-cut = Sin cortar ya no dice más. Cortada se puede leer más.
find-back = Atrás: { $part }, { $what }
find-readings = Todas las lecturas
find-readings-of = Lecturas: { $part }
find-readings-close = Volver a la lectura
find-cant = no se sabe
find-remove = Quitar
find-flange-way = Es una brida
find-thread-way = Tiene rosca
find-not-read = sin leer
find-port-read = leído
find-print-parts = Ningún pie de rey distingue { $one } de { $other }. Su impresión sí: limpiar la manguera en todo su largo.
find-print-again = Leer la impresión
find-lookalikes-more = Otros parecidos: { $count }
find-problem = Sin respuesta
find-open-yet = Aún son posibles muchos.

# Where the two ends, or the two halves of one, do not go together.
find-odd-ends = ¿Se cambió un terminal? Estas dos familias rara vez se dan en una máquina. Medir la contraparte de ambos en la máquina.
find-mate-differs = La contraparte de { $role } en la máquina no corresponde a este terminal: según sus propias lecturas es { $name }. Uno de los dos ya estaba mal; resolverlo en la máquina.
