# Plain answers of the command line.
find-hose = Manguera
find-end-a = Terminal A
find-end-b = Terminal B
find-settled = resuelto
find-unsettled = SIN RESOLVER
find-none-of-these = ninguno de estos
find-lookalike = Parecido
find-separates = Para distinguirlos:
find-open = Aún abierto (95 % en conjunto): { $what }.
find-open-hose = { $count ->
    [one] un tipo de manguera
   *[other] { $count } tipos de manguera
}
find-open-a = { $count ->
    [one] un tipo de terminal A
   *[other] { $count } tipos de terminal A
}
find-open-b = { $count ->
    [one] un tipo de terminal B
   *[other] { $count } tipos de terminal B
}
find-next = Medir ahora:
find-more-names = y { $count } más
find-of-hose = manguera
find-of-a = terminal A
find-of-b = terminal B
find-enough = Fuera cual fuera de estas, la manguera nueva debe ser la misma; no hace falta medir más de la manguera.
explain-title = { $candidate } frente a { $rival }
explain-how = Bits de evidencia: a la derecha por el primero, a la izquierda por el segundo.
explain-together = Frecuencia, otras piezas, origen
explain-all = Todo junto
explain-must-be-wrong = Para que { $rival } fuera cierto, esto tendría que estar mal: { $readings }.
explain-unverified = { $name } está en las tablas de memoria; nadie ha verificado su fila.
check-adapter = adaptador
check-assembly = { $pressure } para el conjunto; lo más débil: { $weakest }
check-cut = Longitud de corte { $length }
check-tolerance = Tolerancia de la longitud total { $tolerance }
check-not-checked = Sin mirar:
check-alternatives = Otras mangueras en el mismo servicio:
print-standard = Norma
print-type = Tipo
print-size = Tamaño
print-dash = Dash
print-pressure = Presión de trabajo impresa
print-made = Fabricada
print-made-or = o bien
print-unread = No se entiende
print-nothing = nada de «{ $text }» se conoce como impresión de una manguera; poner ? por cada letra borrada
print-candidates = Puede ser { $count ->
    [one] una manguera:
   *[other] cualquiera de { $count } mangueras:
}
flow-velocity = Velocidad
flow-reynolds = Número de Reynolds
flow-friction = Factor de fricción
flow-drop = Pérdida de presión
flow-viscosity = Viscosidad empleada
surge-rise = Subida de presión
surge-speed = Velocidad de onda
surge-critical = Tiempo crítico
surge-modulus = Módulo de compresibilidad efectivo
oil-plain-usual = Usual en una línea así
oil-plain-cold-drop = Pérdida de presión en lo más frío
oil-plain-peak = Pico con la presión de trabajo
oil-plain-size = { $hose } deja el aceite en { $speed }.
oil-taken-smooth-bore = Se toma: un interior liso, como tienen las mangueras.
oil-taken-oil-density = Se toma: una densidad de { $value } a 40 °C, la del aceite mineral.
oil-taken-oil-usual-grade = Se toma: { $value }, como la mayoría del aceite mineral.
oil-taken-oil-usual-index = Se toma: un índice de viscosidad de { $value }, como la mayoría del aceite mineral.
oil-taken-oil-bulk-modulus = Se toma: un módulo de compresibilidad de { $value }, del lado del pico mayor.
oil-taken-rigid-wall = Se toma: una pared que no cede. Una manguera cede, así que el pico real es menor; cuánto, lo dice su expansión volumétrica (ISO 6801), de su proveedor.
oil-taken-sudden-closure = Se toma: una válvula que cierra de golpe, lo peor posible.
life-counts = { count-hoses }, { $failures } con fallo.
life-too-few-failures = Muy poco para decir: hacen falta al menos dos fallos en momentos con certeza distintos.
life-no-maximum = Muy poco para decir: toda manguera que falló lo hizo poco después de empezar a observarla.
life-shape = Forma
life-scale = Escala
life-b10 = Una de cada diez ha fallado a los
life-mean = Vida media
life-bounds = Entre paréntesis: límites del 95 % por verosimilitud perfilada.
route-estimate = una estimación: sin peso, sin deformación permanente, sin abrazaderas
route-inside = Radio interior más cerrado
route-centre = Radio más cerrado del eje
route-length = Longitud libre
route-shortest = Longitud libre mínima que sirve
route-twist-range = Torsión en todo el movimiento
route-straight = recta
route-near-rival = Otra forma tiene casi la misma energía; la manguera puede quedar en cualquiera.
route-no-shape = no alcanza
route-none = ninguna sirve
route-overall = Longitud total
route-shortest-overall = Longitud total mínima
route-recommended = Longitud que hacer
route-turn = Giro entre los codos
route-cures = Un cambio que lo remediaría, cada uno calculado en todo el movimiento:
route-cure-radius = Radio interior { $radius }.
route-cure-assumed = Altura de codo y longitud rígida van en simple proporción: medirlas en el terminal.
route-below-limit = El interior de la curva es más cerrado de lo que admite la manguera.
route-near-limit = La curva cumple el límite por menos de lo que una estimación distingue.
route-rival-too-tight = La manguera puede caer en otra forma, y esa es demasiado cerrada.
route-twist = El movimiento de la máquina torsiona la manguera.
route-no-limit = No se dio radio mínimo de curvatura.
route-no-diameter = No se dio diámetro exterior, así que el interior de la curva es desconocido.
tag-refused = no se hace etiqueta de lo que no se debe hacer.
tag-code-alone = El código lleva solo el nombre de la etiqueta; las palabras están al lado, y el registro sabe el resto.
count-rows = { $rows ->
    [one] 1 fila
   *[other] { $rows } filas
}
count-hoses = { $hoses ->
    [one] 1 manguera
   *[other] { $hoses } mangueras
}
count-machines = { $machines ->
    [one] 1 máquina
   *[other] { $machines } máquinas
}
count-places = { $places ->
    [one] 1 sitio
   *[other] { $places } sitios
}
import-done = { count-rows }: se tomaron { count-hoses }, { count-machines } y { count-places }; desmontadas: { $changed }; ya conocidas: { $known }.
import-would = No se cambió nada. { count-rows }, de lo que saldrían { count-hoses }, { count-machines } y { count-places }; desmontadas: { $changed }; ya conocidas: { $known }.
import-would-not = No se cambió nada, y nada de la lista se tomaría hasta corregir { $refused ->
    [one] esta fila
   *[other] estas { $refused } filas
}: todas las filas o ninguna. De las demás saldrían { count-hoses }, { count-machines } y { count-places }; desmontadas: { $changed }; ya conocidas: { $known }.
import-refused = fila { $row }: { $why }
record-done = { $count ->
    [one] Un evento está en el disco.
   *[other] { $count } eventos están en el disco.
}
merge-done = { $added ->
    [one] 1 evento era nuevo
   *[other] { $added } eventos eran nuevos
}, { $had ->
    [one] 1 ya estaba
   *[other] { $had } ya estaban
}, { $held ->
    [one] 1 espera a otros anteriores.
   *[other] { $held } esperan a otros anteriores.
}
merge-fork = Dispositivo { $device }: rechazado. Dos programas escribieron como el mismo dispositivo; uno de ellos debe seguir como uno nuevo.
merge-broken-chain = Dispositivo { $device }: rechazado. Sus eventos no continúan lo que hay aquí; traer su paquete de nuevo.
verify-whole = { $events ->
    [one] 1 evento
   *[other] { $events } eventos
} de { $devices ->
    [one] 1 dispositivo
   *[other] { $devices } dispositivos
}: todas las huellas concuerdan, y las tablas son lo que da el diario.
show-failures = { $count ->
    [0] No consta que aquí fallara ninguna manguera.
    [one] Este sitio ya falló una vez: { $causes }.
   *[other] Este sitio ya falló { $count } veces: { $causes }.
}
show-since = desde { $from }
show-hours = { $hours } h el { $date }
show-no-hose = ninguna manguera conocida
show-failed = falló:
status-made = hecha, aún sin montar
status-fitted = montada
status-taken-off = desmontada
status-withdrawn = etiqueta anulada
status-failed-proof = no superó la prueba: desecho
due-heading = A fecha de { $on }: { $count ->
    [one] 1 fecha
   *[other] { $count } fechas, la más próxima primero
}.
due-cut = { $shown } de { $count }; --all muestra todas.
due-no-day = sin fecha conocida
search-not-settled = sin resolver
due-stopped = { $count ->
    [one] Una no debe seguir en marcha; va primero.
   *[other] { $count } no deben seguir en marcha; van primero.
}
show-not-settled = SIN RESOLVER: { $count } registros de esta manguera se contradicen. Hasta que una persona lo resuelva en la página de la manguera, se muestra el más reciente.
due-what-service = sustituir
due-what-storage = almacenada
due-what-inspection = inspeccionar
due-guide = Edad orientativa donde el dueño no fijó ninguna:
search-nothing = nada en el registro tiene todas estas palabras
search-failed = { $count ->
    [one] aquí ya falló una manguera
   *[other] aquí ya fallaron { $count } mangueras
}
search-hose = manguera
search-place = sitio
search-machine = máquina
search-site = sede
tag-service-unchecked = PRECAUCIÓN: nada se dijo del servicio. La etiqueta lleva la presión de las piezas; no se revisó si sirven para la línea.
tag-no-register = No se indicó ningún registro: la etiqueta no lleva sello y no se comparó con nada registrado. Indicar uno con --db.
find-more-lookalikes = { $count ->
    [one] Hay un parecido más posible; --json lo muestra.
   *[other] Hay { $count } parecidos más posibles; --json los muestra.
}
cut-reel-kept = Bobina { $place } ({ $length } mm): { $pieces } mm; quedan { $left } mm en ella
cut-offcut-kept = Sobrante { $place } ({ $length } mm): { $pieces } mm; quedan { $left } mm, se guardan
cut-offcut-scrap = Sobrante { $place } ({ $length } mm): { $pieces } mm; quedan { $left } mm, desecho
cut-unmade = PARAR: no hay manguera para { $pieces } mm
cut-sum = Manguera nueva { $reel } mm, desecho { $scrap } mm. Ningún plan gasta menos de { $least } mm de manguera nueva.
cut-sum-proved = Manguera nueva { $reel } mm, desecho { $scrap } mm. No puede haber nada mejor.
bench-crimp = Prensado { $end }
bench-crimp-nameless = Prensado
bench-target = nominal { $target } ± { $tolerance }
bench-accepted = se acepta de { $low } a { $high }
bench-mean = media { $mean }, dispersión { $spread }
bench-range = { $min } a { $max }
bench-oval = ovalado { $oval }
bench-taper = conicidad { $taper }
bench-place = punto { $place }: media { $mean }, { $min } a { $max }, ovalado { $oval }
bench-count = { $count } de { $wanted } lecturas
bench-measured = { $value }, tolerancia { $low } a { $high }
bench-may-tag = Se puede etiquetar.
bench-may-not-tag = No se puede etiquetar:
bench-recorded = Registrada como { $code }.
bench-judged-pass = APTO
bench-judged-unsettled = SIN RESOLVER
bench-judged-stop = PARAR
press-on = A fecha de { $on }
press-die = Juego de mordazas { $die }: { $count ->
    [one] 1 prensado
   *[other] { $count } prensados
}
press-care = { $name }: { $crimps ->
    [one] 1 prensado
   *[other] { $crimps } prensados
} desde entonces
press-care-due = toca ya
press-care-on = toca el { $on }
press-care-undone = no se sabe cuándo se hizo por última vez
supplier-match = Encabezados en la fila { $row }, filas debajo: { $rows }.
supplier-missing = No se encuentra: { $missing }. Asignarle una columna, o dar un valor para todas las filas.
supplier-not-known = desconocido
supplier-would = Tomaría { $taken } de { $rows } filas; nuevas: { $new }, en lugar de una anterior: { $changed }, ya presentes: { $same }.
supplier-done = Tomadas { $taken } de { $rows } filas; nuevas: { $new }, en lugar de una anterior: { $changed }, ya presentes: { $same }.
supplier-would-not = No se tomaría nada: filas que no se pueden tomar, { $refused } de { $rows }. Corregirlas o dejarlas fuera.
supplier-refused = fila { $row }: { $why }
supplier-repeated = la fila { $row } dice lo mismo que la fila { $of }
supplier-left-out = quedan fuera: { $rows }
supplier-of = { $supplier }: { $count ->
    [one] 1 fila
   *[other] { $count } filas
}
supplier-empty = Aquí no hay ninguna tabla de proveedor. No se entrega ninguna: tomar la del proveedor propio, o introducir filas a mano.
supplier-removed = { $count ->
    [one] 1 fila quitada.
   *[other] { $count } filas quitadas.
}
supplier-kept = Guardado como { $id }.
supplier-no-row = ninguna fila de proveedor corresponde
supplier-last = la última vez, { $code } { $day }
supplier-cutoff = descuento { $mm } de { $n ->
    [one] 1 manguera
   *[other] { $n } mangueras
}{ $spread }
supplier-cutoffs = Ambos descuentos juntos { $mm } de { $n ->
    [one] 1 manguera
   *[other] { $n } mangueras
}{ $spread }
supplier-spread = , dispersión { $spread }
