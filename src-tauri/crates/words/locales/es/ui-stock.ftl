# Words of what is kept: hose in pieces, what is counted, and counting a bin.
shelf-title = Existencias
shelf-note = manguera y piezas; primero lo escaso; contar un cajón
shelf-all-stores = Todos
shelf-store = Almacén
shelf-store-other = otro
shelf-store-name = Nombre del almacén
shelf-store-hint = Furgón 1, Taller
shelf-all-kinds = Todo
shelf-kind = Qué
shelf-kind-hose = Manguera
shelf-kind-end = Terminales
shelf-kind-ferrule = Casquillos
shelf-kind-adapter = Adaptadores
shelf-kind-sleeve = Fundas
shelf-kind-seal = Juntas
shelf-kind-other = Otros
shelf-search = Buscar
shelf-search-hint = nombre, cajón, etiqueta
shelf-none = Aún no hay nada. Cargar lo que hay en el furgón, cajón por cajón.
shelf-nothing-found = Nada de aquí coincide.
shelf-no-store = Este dispositivo aún no tiene almacén, así que nada se puede comparar con lo que hay. Cargar algo, o decir de qué almacén trabaja.
shelf-load-first = cargar el furgón
shelf-pick = Elegir lo que se va a mirar o cambiar.
shelf-low = Escaso
shelf-low-at = escaso: el mínimo es { $mark }
shelf-negative = menos que nada: salió más de lo que entró
shelf-negative-means = Salió más de lo que entró. Contarlo, y decir lo que hay de verdad.
shelf-in-bin = cajón { $bin }
shelf-no-bin = sin cajón
shelf-pieces = { $count ->
    [one] { $count } pieza
   *[other] { $count } piezas
  }
shelf-reel = Bobina
shelf-offcut = Sobrante
shelf-not-useful = más corto de lo que vale guardar
shelf-not-useful-means = Más corto de lo dicho para que valga la pena guardar un sobrante.
shelf-there = piezas
shelf-there-count = { $count ->
    [one] pieza
   *[other] piezas
  }

## One thing
shelf-piece = Pieza
shelf-made = Manguera fabricada
shelf-not-said = sin decir
shelf-all-of-it = Toda esta manguera
shelf-bin = Cajón
shelf-bin-hint = B2
shelf-low-mark = Mínimo
shelf-in-all = { $count } en total
shelf-all-bins = En todos los cajones
shelf-price-each = Precio de uno
shelf-price-metre = Precio del metro
shelf-not-priced = sin precio
shelf-more = Cargar más
shelf-correct = En realidad hay otra cantidad
shelf-correct-note = lo que se contó
shelf-correct-piece-note = lo que se midió
shelf-move = Mover
shelf-move-note = a otro almacén
shelf-scrap = Desechar algunas
shelf-scrap-piece = Desechar esta pieza
shelf-scrap-note = se puede deshacer

## Asked
shelf-keep = Guardarlo
shelf-ask-load = Cuántas entran
shelf-ask-length = Cuánto mide
shelf-ask-correct = Qué hay de verdad
shelf-ask-scrap = Cuántas son desecho
shelf-ask-bin = Dónde está
shelf-ask-move = Adónde va
shelf-move-where = Elegir antes, abajo, el almacén.
shelf-move-how = Cuántas van allí.
shelf-count-how = Contarlas.
shelf-length-how = Según la cuenta de la bobina, o medido.
shelf-low-how = Con esta cantidad aparece en la lista de lo escaso.
shelf-price-how = Sin impuesto, como se cobra.
shelf-price-no-currency = Decir antes la moneda: Furgón, Precios y almacén.

## Loading
shelf-load = Cargar
shelf-load-then = manguera, terminales, casquillos, juntas
shelf-load-title = Qué entra
shelf-bore = Diámetro interior
shelf-type = Tipo de manguera
shelf-form = Sale de la manguera
shelf-for-hose = Para manguera
shelf-series = Serie
shelf-series-hint = como la llama el proveedor
shelf-end-size = Tamaño de { $family }
shelf-end-gender = Qué mitad
shelf-name = Nombre
shelf-name-hint = como en la bolsa
shelf-hose-side = Lado de la manguera
shelf-machine-side = Lado de la máquina
shelf-rating = Presión admisible
shelf-rating-how = De su fabricante. Sin ella es desconocida, y nunca ilimitada.
shelf-label = Su etiqueta
shelf-label-hint = R3, o nada

## Done, and taken back
shelf-undo-reason = deshecho enseguida
shelf-did-load = { $amount } de entrada: { $name }
shelf-did-scrap = { $amount } de desecho: { $name }
shelf-did-correct = Hay { $amount }: { $name }
shelf-did-move = { $amount } a { $to }: { $name }
shelf-did-bin = { $name }: { $bin }
shelf-did-low = Mínimo cambiado: { $name }
shelf-did-price = Precio cambiado: { $name }

## Counting
shelf-take = Recuento
shelf-take-note = cajón por cajón
shelf-no-camera = Aquí no hay cámara. Escribir el nombre del cajón, o fotografiar su código.
shelf-scan-photo = Foto del código del cajón
shelf-scan-none = No hay código en esa imagen. Escribir el nombre del cajón.
take-label = Contado
take-title = Qué cajón
take-means = Contar los cajones de uno en uno. Nada cambia hasta haber visto las diferencias.
take-which = Cajones con algo dentro
take-all = todo
take-typed = O escribir el nombre del cajón
take-scan = Escanear el cajón
take-begin = Contar este cajón
take-bin = { $store } · cajón { $bin }
take-whole = { $store }, todo
take-known = se sabía: { $known }
take-counted = contado
take-not-there = no está
take-how = Contarlas. 0: no hay ninguna.
take-how-piece = Medirla. 0: no está.
take-keep = Contado
take-first = Contar lo primero
take-next = Contar lo siguiente
take-so-far = { $counted } de { $all } contados
take-empty = Que se sepa, aquí no hay nada.
take-else = Aquí hay otra cosa
take-else-note = cargarla
take-show = Mostrar las diferencias
take-show-then = antes de guardar nada
take-differences = Diferencias
take-row = se sabía { $known }, contado { $counted }
take-none-differs = Todo está como se sabía.
take-not-counted = Sin contar
take-not-counted-means = Se queda como se sabía.
take-changed = Cambió desde entonces
take-changed-means = Después de contar se hizo un conjunto u otro dispositivo anotó algo. No se guardan: contarlos otra vez.
take-again = Contarlos otra vez
take-again-then = los demás siguen contados
take-save = Guardar el recuento
take-save-then = se puede deshacer
take-saved = { $where } contado, { $count ->
    [0] sin diferencias
    [one] { $count } diferencia guardada
   *[other] { $count } diferencias guardadas
  }

## What a hose takes
need-title = De { $store }
need-title-none = De las existencias
need-name = Lo que pide esta manguera, frente a lo que hay
need-there = hay { $there }, se piden { $wanted }
need-short = falta: hay { $there }, se piden { $wanted }
need-not-kept = aquí no se guarda: se piden { $wanted }
need-not-known = aún no se sabe qué se pide
need-bins = cajón { $bins }
need-elsewhere = en otro lugar: { $where }
need-doubtful = puede servir, mirarlo: { $names }
need-cut-from = Cortar de
need-cut-drawing = Un corte de { $length }; quedan { $left }
need-left = Quedan { $left }, descontado el corte de la sierra.
need-left-no-kerf = Quedan { $left }, menos lo que se lleva la sierra: no está fijado.
need-other-piece = O cortar de
need-substitutes = Mangueras que servirían
need-substitutes-means = Cada una pasó la revisión entera para este sitio. Se revisa otra vez, y pide sus propios ajustes.
need-take-hose = { $name } en su lugar
need-adapters = Adaptadores, como último recurso
need-adapters-means = Una unión más que puede fugar y una pieza más con presión admisible.
need-take-adapter = { $end }: { $names }
need-adapter-leaves = deja { $pressure }
need-adapter-not-known = presión admisible desconocida
off-take = Descontarlo de las existencias
off-by-hand = No todo está o se conoce: nada se descuenta solo de las existencias. Contar lo usado en Furgón, Existencias.
off-goes = Sale de { $store } con esta manguera: { $what }
off-hose = { $length } de manguera
off-items = piezas: { $count }
off-rest = Lo que queda de esa pieza
off-rest-kept = se guarda
off-rest-scrap = desecho
off-not = Dejar las existencias como están

## A hose that was not made after all
undo-title = Al final no se hizo
undo-note = se registró por error
undo-how = Se tacha en el registro, que conserva que se hizo y por qué se deshizo. Quitarle la etiqueta y destruirla.
undo-parts = Sus piezas
undo-parts-back = Vuelven: nunca se cortó ni se prensó
undo-parts-gone = Están gastadas o son desecho
undo-why = Por qué
undo-do = Deshacerlo
undo-came-back = Volvió: { $what }
undo-nothing-back = Deshecho. Nada volvió a las existencias.

## Prices and store
prices-title = Precios y almacén
prices-note = almacén del furgón, sobrantes, impuesto, mano de obra
prices-store = Almacén y moneda
prices-store-name = Almacén de este dispositivo
prices-currency = Moneda, por sus tres letras
prices-currency-hint = EUR
prices-keep = Guardar almacén y moneda
prices-kept = Guardado.
prices-figures = Cifras
prices-offcut = sobrante desde
prices-offcut-how = Un resto así de largo vale la pena guardarlo; uno más corto es desecho.
prices-tax = impuesto
prices-tax-how = En tanto por ciento, sobre los precios.
prices-rate = mano de obra por hora
prices-rate-how = Sin impuesto, como se cobra.
prices-note-blank = Lo que está en blanco no se ha dicho: el total lo espera, y nunca se calcula sin ello.
prices-labour = Tiempos
prices-labour-none = No hay tiempos fijados: el presupuesto lleva solo piezas.
prices-per-hose = { $minutes } min por manguera
prices-per-job = { $minutes } min por trabajo
prices-remove = Quitar
prices-labour-name = Qué lleva tiempo
prices-labour-hint = Hacer y probar una manguera
prices-labour-for = Se cuenta
prices-each-hose = por cada manguera
prices-each-job = una vez por trabajo
prices-labour-add = Añadir con sus minutos
prices-minutes = Cuánto lleva
prices-minutes-how = Como se cobra, en minutos.
prices-min = min
