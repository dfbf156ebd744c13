# Words of the check: may it be made.

check-title = ¿Se puede hacer?
check-first = Las instrucciones del fabricante, los reglamentos locales y la práctica autorizada van primero.
check-passes = Todo lo mirado está dentro de su límite.
check-not-entered = Aún sin indicar: { $count }
check-weigh = { $count ->
    [one] 1 cosa que sopesar
   *[other] { $count } cosas que sopesar
}
check-bar-max = bar máx.
check-psi = { $psi } psi
check-psi-max = psi máx.
check-bar = { $bar } bar
check-refused = SIN REVISAR
check-refused-nought = { $field } es { $value }. Dar un valor mayor que 0, o dejarlo como desconocido.
check-to-fit = Seguir montando
check-to-fit-then = la manguera está hecha y registrada
check-same = Igual por igual: hecha como dice el registro. Sin mirar:
check-estimated = { $value } est.
check-drawing = El conjunto: terminal A a la izquierda, terminal B a la derecha, longitud total entre los puntos de sellado
check-cut-length = corte { $length }
check-more-pass = { $count ->
    [one] 1 más cumple
   *[other] { $count } más cumplen
}
check-all-pass = { $count ->
    [one] 1 límite cumple
   *[other] { $count } límites cumplen
}
check-at-least = mín. { $limit }
check-make = Hacerla
check-make-cautions = { $count ->
    [one] con 1 precaución que queda en la hoja
   *[other] con { $count } precauciones que quedan en la hoja
}
check-keep = Guardar { $value }
check-now = ahora { $value }
check-back = Atrás
check-not-known = desconocido
check-of-end = { $end }: { $label }
check-spec = Qué se hace
check-hose-not-listed = Una manguera que no está en la lista
check-swapped = { $hose } en vez de { $was }
check-to-route = Calcular la curva
check-to-oil = Ver qué hace el aceite
check-to-surge = Estimar el pico de presión
check-at-place = Qué se sabe de este sitio
check-sister = { $number } { $name }
check-sister-none = ninguna manguera conocida
check-sisters = En el mismo circuito { $circuit }
check-alternatives-word = Otras mangueras pasadas por la misma revisión

check-adapter-name = Nombre del adaptador
check-adapter-add = Añadir el adaptador
check-adapter-rate = Presión de { $name }
check-adapter-remove = Quitar { $name }
check-adapter-named = Adaptador { $name }
check-turn-other = Otro giro
check-clock = Giro, mirando a lo largo de la manguera de A hacia B
check-weakest = lo más débil

## Overrides
check-take-on = Asumirlo, con nombre y motivo
check-by = Nombre
check-reason = Motivo

## What a finding is called
check-title-hose = Manguera
check-title-end = Terminal { $part }
check-title-line = Qué hace la línea
check-title-pressure = { $part ->
    [hose] Presión, manguera
    [adapter] Presión, { $name }
   *[other] Presión, terminal { $part }
}
check-title-working = Presión de trabajo
check-title-relief = Ajuste de limitadora
check-title-surge = Pico de presión
check-title-heat = Calor del aceite
check-title-fluid-heat = Calor de este fluido
check-title-cold = Frío
check-title-frost = Helada
check-title-ambient = Aire alrededor
check-title-fluid = Fluido
check-title-bend = Curva más cerrada
check-title-duty = Exigencia del sitio
check-title-vacuum = Vacío
check-title-helix = Hélice
check-title-flow = Velocidad del aceite
check-title-end-read = Terminal { $part }, medido
check-title-end-gender = Terminal { $part }, macho o hembra
check-title-end-form = Terminal { $part }, forma
check-title-end-drop = Terminal { $part }, altura de codo
check-title-size = Terminal { $part }, tamaño
check-title-original = La original
check-title-original-pressure = Presión de la original
check-title-printed-pressure = Presión impresa
check-title-original-bore = Diámetro interior original
check-title-original-heat = Calor de la original
check-title-original-cold = Frío de la original
check-title-original-bend = Curva de la original
check-title-original-vacuum = Vacío de la original
check-title-length = Longitud total
check-title-cutoff = Descuento, terminal { $part }
check-title-cut = Longitud de corte
check-title-tolerance = Tolerancia de longitud
check-title-turn = Giro
check-title-route-travel = Movimiento
check-title-route-rigid = Longitud rígida, terminal { $part }
check-title-route-change = Longitud bajo presión
check-title-route-rival = Dos formas próximas
check-title-route-behind = Tramo recto tras casquillo
check-title-route-twist = Torsión en el movimiento
check-title-circuit = Mismo circuito
check-title-failed = Ya falló aquí
check-title-override = Límite asumido

## The next thing to do
check-go-read = Medir terminal { $end }
check-go-take-read = Tomar el medido en { $end }
check-go-read-hose = Leer la manguera vieja
check-own-word = DATO PROPIO
check-go-settle-hose = Leer más de la manguera vieja
check-own-hose = Sin medir: la manguera era { $name }. Las lecturas no la resuelven; la nueva debe ser tan buena como todo lo que dejan abierto.
check-own-end = Sin medir: el terminal { $end } es { $name }. No queda resuelto hasta que lo digan las lecturas.
check-go-end = Nombrar terminal { $end }
check-go-change-end = Decirlo del terminal { $end }
check-go-other-end = Cambiar terminal { $end }
check-go-other-hose = Elegir otra manguera
check-go-size = Tomar { $hose }
check-go-rating = Introducir presión de { $end }
check-go-supplier-rating = Introducir la presión del proveedor para { $end }
check-go-change = Corregirlo
check-go-hose = Nombrar la manguera
check-go-working = Introducir presión de trabajo
check-go-fluid = Introducir el fluido
check-go-heat = Introducir temp. máxima
check-go-cold = Introducir temp. mínima
check-go-bend = Introducir la curva
check-go-hose-bend = Introducir radio del proveedor
check-go-hose-vacuum = Introducir vacío del proveedor
check-go-line = Decir qué hace la línea
check-go-length = Introducir longitud total
check-go-turn = Decir el giro de B
check-go-cover = Decir qué cubierta es
check-go-adapters = Introducir presión del adaptador
check-go-adapter-change = Cambiar el adaptador

## Fields
check-working = trabajo
check-working-how = De la placa o el manual de la máquina, o de un manómetro.
check-relief = limitadora
check-relief-how = Ajuste de la válvula limitadora, principal o secundaria, de este circuito.
check-surge = pico
check-surge-how = El pico mayor, medido o del fabricante de la máquina.
check-fluid = fluido
check-fluid-how = Por su clase: está en la placa o el manual de la máquina.
check-fluid-usual = aceite hidráulico usual, 32, 46 o 68: { $name }
check-cold = aceite, mínima
check-cold-how = Cuenta un arranque en frío en invierno.
check-hot = aceite, máxima
check-hot-how = La temperatura máxima del fluido en esta línea.
check-air = aire, máxima
check-air-how = Cuentan un motor o un escape cercanos.
check-flow = caudal
check-flow-how = Lo que da la bomba o la válvula.
check-line = línea
check-line-how = Qué hace la línea.
check-bend = curva
check-bend-how = El radio más cerrado, por el interior de la curva.
check-vacuum = vacío
check-vacuum-how = La presión absoluta más baja en la entrada de la bomba.
check-duties = exigencias
check-duties-how = Lo que pide el sitio además de presión.
check-hose = manguera
check-hose-bend = curva de la manguera, propia
check-hose-bend-how = El radio mínimo por el interior de la curva, del proveedor. Prevalece sobre el de la tabla.
check-hose-vacuum = vacío de la manguera, propio
check-hose-vacuum-how = La presión absoluta interior más baja, del proveedor. Prevalece sobre la de la tabla.
check-end-a = terminal A
check-end-b = terminal B
check-end-how = La familia, luego el tamaño.
check-gender = mitad
check-gender-how = Rosca por fuera es macho.
check-form = forma
check-drop = altura de codo
check-drop-how = Del eje de la manguera al centro de la cara de sellado.
check-cutoff = descuento, propio
check-cutoff-how = Propio: del punto de sellado al tope de manguera, del proveedor o medido.
check-rating = presión, propia
check-rating-how = Propia, del proveedor. Prevalece sobre la de la tabla.
check-rating-from = de dónde es la presión
check-rating-from-how = El proveedor, y la tabla o página que da esta cifra. Aquí prevalece sobre la de la tabla; por eso va marcada como propia y queda en el registro.
check-rating-from-label = Terminal { $end }, { $value }: según qué tabla o proveedor
check-rating-unsaid = nadie dijo de dónde
check-own-rating = { $value } EN { $end }: PROPIA
check-own-rating-from = No es la de la tabla. De: { $from }.
check-own-rating-note = Terminal { $end }: { $value } por cifra propia, de: { $from }
check-adapters = adaptadores
check-adapters-how = Cada pieza entre el terminal y la máquina, con su presión.
check-length = longitud total
check-length-how = De punto de sellado a punto de sellado, tuercas retiradas.
check-turn = giro
check-turn-how = Mirar a lo largo de la manguera de A hacia B con el codo de A hacia arriba: en sentido horario hasta el codo de B.
check-cover = cubierta
check-cover-how = Según lo impreso o marcado en la manguera.
