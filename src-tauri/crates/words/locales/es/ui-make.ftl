# Words of making: at the saw, at the press, at the rig.

## Figures
make-at-end = { $end }: { $step }
make-plus-minus = { $value } ± { $by }
make-hold = { $from } a { $to }
make-length-tolerance = { $length }, { $plus } { $minus }
make-yours = propio
make-hero-insertion = desde el corte, terminal { $end }
make-hero-crimp = sobre los planos, terminal { $end }
make-hero-length = de punto de sellado a punto de sellado
make-hero-proof = prueba, mantener { $hold }

## Parts, and who works
make-parts = Piezas, todas nuevas
make-part-hose = Manguera
make-part-adapter = Adaptador
make-part-ferrule = casquillo { $ferrule }
make-part-ferrule-open = casquillo aún desconocido
make-worker = Hecho por
make-worker-none = nadie aún: decir quién trabaja

## The cut
make-cut-drawing = La manguera en la sierra. Cortar { $length }.
make-cut-drawing-open = La manguera en la sierra. La longitud de corte es desconocida: falta un descuento.
make-cut-aim = precisión ± { $by }, escuadra { $square }
make-cut-aim-only = precisión ± { $by }
make-cut-overall = total
make-cut-cutoff = descuento { $end }
make-cut-how = De la tabla del proveedor, o medir un terminal nuevo: de su punto de sellado al tope hasta el que entra la manguera.
make-cut-sealing = punto de sellado
make-cut-stop = tope de manguera
make-cut-end-drawing = Un terminal { $end } nuevo: medir del punto de sellado al tope de manguera.
make-cut-kerf = la sierra se lleva { $kerf }
make-cut-off-reel = de la bobina { $length }
make-cut-kerf-open = Lo que la sierra se lleva de la bobina no está fijado (Furgón, Instrumentos).
make-cutoff-reading = Descuento { $end }, lectura { $number }
make-cutoff-so-far = Leído hasta ahora; un toque quita una lectura
make-cutoff-remove = Quitar la lectura { $number }: { $reading }
make-cutoff-refused = Una de las lecturas no puede ser. Quítela.
make-cutoff-from-nut = Un terminal nuevo, limpio, tuerca retirada. Desde donde sella (punta, asiento o cara plana)
make-cutoff-from-male = Un terminal nuevo, limpio. Desde el final de su rosca, o su asiento, según diga su norma,
make-cutoff-from-flange = Un terminal nuevo, limpio. Desde la cara de su cabeza
make-cutoff-from-banjo = Un terminal nuevo, limpio. Desde el centro de su ojo
make-cutoff-from-standpipe = Un terminal nuevo, limpio. Desde el final de su tubo
make-cutoff-bent = (acodado: el centro de su cara de sellado, medido según la manguera)
make-cutoff-to = hasta el tope hasta el que entra la manguera.
make-cutoff-measured = medido { $day }
make-cutoff-type = Escribirlo de una tabla
make-cutoff-as = { $cutoff }: { $whose }
make-cutoff-learned = { $count ->
    [one] { $cutoff }: aprendido de { $count } manguera acabada
   *[other] { $cutoff }: aprendido de { $count } mangueras acabadas
}

## The turn
make-turn = Giro
make-turn-how = Mirar a lo largo de la manguera de A hacia B, codo de A hacia arriba: el codo de B queda a { $turn } en sentido horario.
make-turn-found = Medido: { $turn }.
make-turn-name = Giro de B respecto a A: { $turn }, en sentido horario desde A, mirando de A hacia B.

## Settings of the ends
make-settings = Cómo se monta cada terminal
make-settings-yours = propios, de { $source }
make-crimp-source-none = Nadie dijo de quién es este diámetro: con él nada pasa. Introduzca su fuente.
make-end = Terminal { $end }
make-cutoff = Descuento
make-insertion = Profundidad de inserción
make-skive = Pelado
make-row-enter = Introducir la fila de su proveedor para el extremo { $end }
make-row-enter-note = queda para la próxima manguera de su clase
make-clean = Limpia y lavada
make-clean-agreed = Según lo acordado con el dueño de la máquina, o si no:
make-ferrule = Casquillo
make-lubricant = Lubricante
make-die-set = Juego de mordazas
make-crimp-diameter = Diámetro de prensado
make-crimp-tolerance = Tolerancia de prensado
make-source = Fuente
make-source-how = La tabla u hoja de su proveedor donde están estos datos. Un diámetro medido en esta manguera no es un objetivo.
make-filled = de { $supplier }, { $from }: la única fila que corresponde
make-offers = Tomar una fila entera
make-offer-row = { $end } como dice { $supplier }
make-offer-last = { $end } como la última vez: { $what }
make-offer-source = { $supplier }, { $from }
make-missing = Conseguir antes de cortar la manguera
make-missing-still = Falta todavía
make-field-at = { $field }, terminal { $end }
make-field-open = desconocido
make-skive-none = ninguno
make-skive-outer = cubierta
make-skive-inner = tubo interior
make-skive-both = cubierta y tubo interior
make-skive-outer-by = cubierta { $length }
make-skive-inner-by = tubo interior { $length }
make-skive-both-by = cubierta { $outer }, tubo interior { $inner }
make-skive-outer-how = Longitud de cubierta que se quita, desde el corte.
make-skive-inner-how = Longitud de tubo interior que se quita, desde el corte.

## Typing
make-keep = Guardar { $value }
make-as-other = Como en { $end }: { $value }
make-b-as-a = Igual que A: sus datos para el extremo B
make-by-sheet = Hecho según una hoja, sin introducirla
make-by-sheet-crimp = No consta, no pasa: no hay etiqueta antes de introducir los datos.
make-by-sheet-mark-insertion = Según una hoja: la profundidad no consta.
make-doubt-word = ¿ES CORRECTO?
make-doubt-again = Escribirlo de nuevo
make-doubt-right = { $value } es correcto: guardarlo
make-doubt-own = { $value } se leyó en esta misma manguera. Un prensado se compara con el diámetro de su proveedor, nunca consigo mismo.
make-doubt-narrow = { $value } es menos que los { $hose } sobre los alambres de esta manguera, y el casquillo los rodea.
make-doubt-tolerance = ± { $value } es mucho para un prensado de { $target }: las tolerancias son décimas de milímetro.
make-doubt-cut = { $value } no es menos que la manguera entera de { $whole }.
make-back = Atrás

## Crimp
make-crimp = Prensado { $end }
make-crimp-reading = Prensado { $end }, lectura { $number }
make-crimp-how = Sobre los planos entre las estrías, en cuatro direcciones, en tres puntos a lo largo del casquillo.
make-crimp-target = { $target }
make-crimp-place-1 = punto 1 de { $places }, tras la boca
make-crimp-place-2 = punto 2 de { $places }, centro
make-crimp-place-3 = punto 3 de { $places }, antes del final
make-crimp-mean = media { $mean }
make-crimp-oval = ovalado { $oval }
make-crimp-taper = conicidad { $taper }
make-crimp-read-with = Medido con
make-crimp-instrument = { $instrument } ± { $error }
make-crimp-change = cambiar a { $instrument }
make-crimp-change-anew = cambiar a { $instrument }: se mide todo de nuevo
make-crimp-finer = Medir { $end } con el micrómetro
make-caliper = pie de rey
make-micrometer = micrómetro
make-crimp-given-up = Leído antes, queda anotado: { $readings }
make-crimp-none = Aún sin medir
make-crimp-name = Prensado del terminal { $end } en sección. Lecturas: { $readings }.
make-crimp-span-name = Lecturas frente al nominal { $target }: { $min } a { $max }, media { $mean }.
make-crimp-read = Medir el prensado en { $end }
make-crimp-read-on = Seguir en { $end }: punto { $place } de { $places }
make-crimp-read-again = Medir otra vez en { $end }: { $reading }
make-crimp-again = Prensar { $end } otra vez
make-crimp-again-note = luego medir de nuevo
make-crimp-mend = Prensado { $end }, lectura { $number }: { $reading }. Cambiar o quitar.
make-crimp-strike = Quitar la lectura { $reading }

## The finished hose
make-finished = Manguera acabada
make-finished-cut = Cortada a
make-finished-cut-how = A qué se cortó la manguera, si no es el dato de la hoja: de ahí se aprenden los descuentos.
make-finished-length = Longitud
make-finished-turn = Giro
make-finished-length-how = De punto de sellado a punto de sellado, tendida recta, tuercas retiradas; en un terminal acodado, hasta el centro de su cara de sellado.
make-finished-turn-how = Mirar a lo largo de la manguera de A hacia B, codo de A hacia arriba: grados en sentido horario hasta el codo de B, de 0 a 359.
make-finished-limits = { $low } a { $high }
make-measure-length = Medir la longitud acabada
make-measure-turn = Medir el giro
make-measure-turn-then = de A hacia B, codo de A arriba, sentido horario
make-measure-again = Medir otra vez: { $value }
make-not-passed = No pasó
make-not-passed-note = desecho

## Scrap
make-scrap-word = DESECHO
make-scrap-how = Cortarla en trozos; ningún terminal se vuelve a usar. Encontrar la causa antes de hacer la siguiente.
make-scrap-at = No pasó: { $step }
make-scrap-on-record = en el registro como { $code }
make-scrap-ask = ¿No pasó?
make-scrap-then = Entonces esta manguera acaba aquí: desecho. Se hace otra.
make-scrap-it = Es desecho
make-scrap-it-note = hacer otra
make-scrap-not = No: seguir con ella
make-scraps = Desechadas antes de esta
make-failed-leak = Fugó
make-failed-end-moved = Un terminal se movió
make-failed-burst = Reventó

## Proof
make-proof = Prueba
make-proof-at = { $pressure }, el doble de { $working }
make-proof-hold-for = mantener { $hold }
make-proof-caution = Resguardo cerrado. Aceite o agua, nunca aire.
make-proof-rig = Probar a { $pressure }
make-proof-rig-then = el doble de { $working }, mantener { $hold }
make-proof-no-rig = Sin banco
make-proof-pressure = Presión mantenida
make-proof-hold = Tiempo mantenido
make-proof-gauge = Manómetro
make-proof-calibrated = Manómetro calibrado el
make-proof-pressure-how = Lo que marcaba el manómetro al final.
make-proof-hold-how = Segundos desde la presión plena hasta la descarga.
make-proof-gauge-how = Su nombre o número, como figura en él.
make-proof-write = Anotar lo que se mantuvo
make-proof-proved-word = PROBADA
make-proof-is-proved = { $pressure }, mantenida { $hold }.
make-proof-no-rig-word = NO PROBADA
make-proof-is-no-rig = Sin banco. Así consta en el registro, la etiqueta y los papeles.
make-proof-failed = No la superó
make-proof-failed-then = Descargar antes toda la presión. Entonces esta manguera acaba aquí: desecho, y queda en el registro como no superada.
make-proof-again = Hacerla otra vez
make-proof-again-then = pasos, lecturas y prueba empiezan de nuevo
make-proof-other = Cambiar: con o sin banco

## Steps
make-steps = Pasos
make-steps-done = { $count ->
    [one] { $count } paso hecho
   *[other] { $count } pasos hechos
}
make-steps-more = { $count ->
    [one] { $count } paso más
   *[other] { $count } pasos más
}
make-next = Luego: { $step }
make-enter = Introducir: { $field }
make-measure-cutoff = Medir el descuento de { $end }
make-measure-cutoff-anew = Medir { $end } de nuevo
make-measure-cutoff-on = Seguir: descuento de { $end }
make-measure-cutoff-then = antes de cortar la manguera
make-to-tag = Hacer la etiqueta
make-to-tag-then = etiqueta, código, marca en el casquillo
make-tick-fetch-parts = Hecho: piezas a mano
make-tick-cut = Hecho: manguera cortada
make-tick-clean-bore = Hecho: interior limpio
make-tick-skive = Hecho: { $end } pelado
make-tick-mark-insertion = Hecho: { $end } señalado
make-tick-push-on = Hecho: { $end } metido
make-tick-crimp = Hecho: { $end } prensado
make-tick-fine-instrument = Hecho: micrómetro a mano para { $end }
make-tick-measure-crimp = Hecho: prensado { $end } medido
make-tick-sleeves = Hecho: fundas puestas
make-tick-set-turn = Hecho: giro fijado
make-tick-mark-not-moved = Hecho: marcas sin mover
make-tick-bore-gauge = Hecho: el calibre pasa
make-tick-nuts-free = Hecho: tuercas libres
make-tick-measure-length = Hecho: longitud correcta
make-tick-measure-turn = Hecho: giro correcto
make-tick-flush-and-cap = Hecho: enjuagada y tapada
make-tick-connect-rig = Hecho: banco conectado
make-tick-bleed-rig = Hecho: sin aire
make-tick-close-guard = Hecho: resguardo cerrado
make-tick-raise-pressure = Hecho: a presión de prueba
make-tick-hold-pressure = Hecho: mantenida
make-tick-release-and-look = Hecho: sin fugas, nada se movió
make-tick-no-rig = Hecho: «no probada» anotado
make-tick-mark-ferrule = Hecho: casquillo marcado
make-tick-label = Hecho: etiqueta puesta
make-tick-plan = Hecho: sabido
make-tick-lower-load = Hecho: carga abajo
make-tick-lock-out = Hecho: bloqueado
make-tick-release-pressure = Hecho: sin presión
make-tick-mark-lines = Hecho: líneas marcadas
make-tick-loosen = Hecho: vieja desmontada
make-tick-match-lines = Hecho: líneas casadas
make-tick-new-seals = Hecho: juntas nuevas puestas
make-tick-tighten = Hecho: apretado
make-tick-tighten-flange = Hecho: bridas apretadas
make-tick-lay-straight = Hecho: tendida recta
make-tick-bleed-and-fill = Hecho: purgado y lleno
make-tick-first-run = Hecho: funciona
make-tick-leak-check = Hecho: sin fugas
make-tick-clean-up = Hecho: limpiado
make-tick-log-hours = Hecho: horas anotadas

## Papers, title and refusal
make-papers = Papeles
make-papers-note = hoja de fabricación, certificado, informe
make-saved = Guardado: { $where }
make-title = Hacer la manguera
make-hose-in-hand = Manguera en mano
make-place = { $machine } · sitio { $number }
make-refused = SIN HACER
make-to-check = Volver a Revisar
make-to-check-then = el remedio está en cada hallazgo
