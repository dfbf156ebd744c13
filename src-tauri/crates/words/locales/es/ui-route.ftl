# Words of the routing: how tight the hose bends between its ports.

routing-title = ¿Cuánto se curva?
routing-back = Volver a la revisión
routing-estimate = Una estimación.
routing-estimate-why = No incluye peso, deformación permanente ni abrazaderas: mirar la manguera en todo el movimiento.
routing-not-routed = SIN CALCULAR
routing-inside = interior
routing-seeking = Se buscan longitudes y cambios que sirvan.
routing-laying = Se está tendiendo la manguera
routing-tried = Cambiado. Mirarlo, o retirarlo.

## Ports
routing-facing = ¿Cómo miran los puertos?
routing-facing-how = Como se ven desde donde mejor se ve la curva. El terminal A está siempre a la izquierda.
routing-facing-u = Lado a lado
routing-facing-facing = En una línea
routing-facing-offset = En dos líneas
routing-facing-right-angle = En ángulo recto
routing-facing-away = Opuestos
routing-facing-free = De otra manera
routing-change-facing = otros puertos
routing-earlier = Los puertos son los del último trabajo de aquí.
routing-earlier-why = Mirar si siguen así antes de guiarse por esto.
routing-said = Lo dicho de los puertos
routing-stands = Dónde está B
routing-ends = Lo que no se curva

routing-gap = separación
routing-gap-how = De la cara de sellado A en horizontal hasta la cara de sellado B.
routing-rise = desnivel
routing-rise-how = Cuánto más alta o más baja está la cara de sellado B que la A.
routing-offset = en profundidad
routing-offset-how = Cuánto más cerca o más lejos de quien mira está B que A.
routing-angle = inclinación
routing-angle-how = Cuánto se aparta el puerto B de como está dibujado, en el plano del dibujo.
routing-roll = rotación
routing-roll-how = Cuánto está girado el puerto B sobre su propio eje, visto de frente a su cara. Torsiona la manguera.
routing-a-looks = A mira
routing-b-looks = B mira
routing-looks-how = Hacia dónde mira el puerto: 0 es a la derecha, luego en sentido antihorario.
routing-looks-right = a la derecha
routing-looks-up = arriba
routing-looks-left = a la izquierda
routing-looks-down = abajo
routing-rigid = longitud rígida
routing-rigid-how = Según el eje de la manguera, de la cara de sellado al final del casquillo: lo da una cinta en la manguera vieja.
routing-od = diámetro de la manguera
routing-od-how = Sobre la cubierta, con un pie de rey.
routing-of-b = B desde A: { $label }
routing-of-closed = Cerrado: { $label }
routing-of-open = Abierto: { $label }
routing-way = { $value } { $way }
routing-right = a la derecha
routing-left = a la izquierda
routing-above = más alto
routing-below = más bajo
routing-near = más cerca
routing-far = más lejos
routing-left-round = antihorario
routing-right-round = horario
routing-points = El codo en { $end } apunta
routing-points-towards = al otro puerto
routing-points-away = al lado contrario
routing-points-front = hacia quien mira
routing-points-back = alejándose de quien mira

## Travel
routing-travel-question = ¿Se mueve un puerto?
routing-travel-unknown = No se sabe si se mueve un puerto
routing-change-travel = decirlo
routing-change = cambiar
routing-moves = Un puerto se mueve
routing-moves-note = un cilindro, una pluma, un giro: se piden dos posiciones
routing-fixed = Ningún puerto se mueve
routing-fixed-note = ambos están en un mismo bastidor
routing-travel = Movimiento de cerrado a abierto
routing-closed = cerrado
routing-open = abierto
routing-closed-tightest = cerrado: la curva mínima
routing-open-tightest = abierto: la curva mínima
routing-between = { $part } % abierto
routing-between-tightest = { $part } % abierto: la curva mínima
routing-twist-here = Torsión aquí { $twist } respecto a cerrado.
routing-near-rival = Aquí hay dos formas próximas: la manguera puede quedar en cualquiera.

## Drawing
routing-side = alzado: arrastrar A o B
routing-plan = planta, desde arriba
routing-side-name = Alzado, { $pose }: { $radius } { $spot }
routing-plan-name = Planta desde arriba, { $pose }
routing-radius = R { $radius }
routing-no-bend = sin curva
routing-spot = interior, a { $at } de A
routing-drag = Arrastrar terminal { $end }; las flechas lo mueven
routing-drag-plan = Arrastrar terminal { $end } en la planta; las flechas lo mueven

## Figures
routing-twist = torsión en el movimiento
routing-at-shorter = { $part } % más corta
routing-at-longer = { $part } % más larga
routing-length-now = longitud total
routing-length-taken = longitud total tomada
routing-shortest = la más corta que sirve
routing-use-length = Usar esta longitud: { $length }
routing-recommended = { $length }: aunque saliera { $short } más corta, no se curva a menos de { $radius } · { $source }

## What would cure it
routing-cures = Cambios calculados
routing-cures-how = Cada uno se calculó en todo el movimiento. Tocar uno para probarlo.
routing-cure-bend = se curva a { $radius }
routing-cure-length = { $length } de largo
routing-cure-assumed = altura de codo y longitud rígida por medir

## The next thing to do
routing-use = Usar esta curva
routing-use-then = { $radius } va a la revisión
routing-go-enter = Introducir: { $field }
routing-go-travel = Decir si se mueve un puerto
routing-go-open = Introducir la posición abierta
routing-go-open-then = aún está como la cerrada
routing-go-rigid = Introducir longitud rígida de { $end }
routing-go-turn = Usar este giro
routing-go-length = Usar la longitud que alcanza
