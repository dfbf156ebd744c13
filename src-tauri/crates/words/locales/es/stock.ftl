# Stock, batches, quotes, rounds.
stock-series = serie { $series }
stock-not-rated = sin presión asignada
stock-ferrule-unnamed = Casquillo (no se sabe su nombre: buscarlo en la tabla del proveedor)
stock-state-there = hay
stock-state-short = FALTA
stock-state-not-kept = nunca hubo aquí
stock-state-not-known = no se sabe
stock-said-negative = { $name } en { $store }: salió más de lo que entró. Contarlo.
stock-said-negative-piece = Una pieza de { $name } en { $store }: se cortó más de lo que había. Medirla.
stock-said-untold-piece = Se cortó algo de la pieza { $name }, de la que este dispositivo aún no sabe nada: fusionar el paquete del dispositivo que le dio entrada.
stock-said-conflict = { $name }: dos dispositivos cambiaron a la vez su lugar, cajón, mínimo o precio. Fijarlo otra vez: con eso queda resuelto.
stock-said-counted-blind = { $name } en { $store }: se contó antes de que este dispositivo supiera lo que otro había anotado. Nadie sabe si ya iba contado: contarlo otra vez.
stock-said-kerf-not-known = No se sabe lo que se lleva la sierra y cuenta como nada: fijarlo, o queda menos de lo que dice.
stock-said-cut-length-not-known = { $name }: falta una longitud o un descuento, así que no se sabe la longitud de corte.
stock-said-overall-taken = { $name }: falta un descuento, así que se cuenta tanta manguera como mide la terminada. Se corta cuando se sepan los descuentos.
stock-said-currency-not-said = No hay moneda fijada: nada lleva precio.
stock-said-other-currency = { $name } tiene precio en { $currency }: cuenta como sin precio.
stock-said-tax-not-said = El impuesto no está fijado: no hay total. Poner 0 donde no lo haya.
stock-said-no-labour-rate = No hay tarifa por hora: la mano de obra no lleva precio.
stock-said-hose-old = Una pieza de { $name } de la que se cortaría se fabricó en { $made }, hace más de { $months } meses: con manguera tan vieja no se hacen conjuntos (la menor edad orientativa de las tablas).
stock-said-hose-age-not-known = { $name }: nadie sabe cuándo se fabricó esta pieza. Buscar la fecha en su línea de marcado antes de cortarla.
stock-said-too-many-pieces = { $name }: hay más piezas de las que se planifican a la vez; las más cortas quedaron fuera.
stock-said-nothing-used = { $name }: no se tomó nada de las existencias para ella; no se sabe de qué está hecha y por eso no hay total.
stock-said-adapter-not-reckoned = { $name }: con sus lados o su presión no se puede calcular y no se muestra ninguna solución con él. Corregirlo.
stock-list-none = De eso no se guarda nada.
stock-list-pieces = { $count ->
    [one] una pieza
   *[other] { $count } piezas
  }, { $total }
stock-list-low = ESCASO
stock-list-negative = BAJO CERO
stock-list-short-rest = muy corto para guardarlo
stock-list-reel = bobina
stock-list-offcut = sobrante
stock-list-price-metre = { $price } el metro
stock-list-price-one = { $price } la unidad
stock-list-made = fabricada { $made }
stock-list-bin = cajón { $bin }
stock-changed = { $count ->
    [0] No se escribió nada.
    [one] Un cambio escrito.
   *[other] { $count } cambios escritos.
  }
stock-changed-piece = Pieza nueva { $piece }
stock-take-same = Todo lo contado está como se sabía.
stock-take-row = { $name }: contado { $counted } donde se sabía { $known } ({ $difference }).
stock-take-changed = NO anotado: { $name }. Contado { $counted }, pero ahora se sabe { $known }: cambió desde entonces. Contarlo otra vez.
stock-take-not-counted = Sin contar, se deja como está: { $name }, { $known }.
stock-take-saved = Guardado.
stock-take-not-saved = Aún sin guardar; --save lo escribe.
stock-need-store = De { $store }:
stock-need-line = { $state }: { $name }, se piden { $wanted }, hay { $there }
stock-need-bins = { $bins }
stock-need-doubtful = puede ser: { $what }
stock-need-elsewhere = { $store } tiene { $quantity }
stock-need-cut = Cortar de { $sort } de { $length }{ $where }: { $pieces }; quedan { $left }.
stock-need-substitute = En su lugar: { $name }, { $length } de una pieza{ $where }
stock-need-adapter = Último recurso en el terminal { $end }: { $what }; { $pressure } para el conjunto. El adaptador tiene su propia longitud: medir otra vez.
stock-need-pressure-unknown = presión desconocida
stock-undone = Deshecho.
stock-undone-tag = Su registro se anuló: { $reason }
stock-given-back = De vuelta en existencias: { $name }, { $quantity }.
stock-nothing-given-back = Nada volvió a las existencias.
batch-title = Lote
batch-stopped = Sin hacer
batch-cut-list = Cortar de { $hose }
batch-unmade = Ninguna pieza es bastante larga para { $pieces }.
batch-parts = Piezas
batch-part = Qué
batch-wanted = Se piden
batch-state = Hay
batch-bin = Cajón
batch-order = En la prensa
batch-rule = Cada juego de mordazas entra una sola vez en la prensa, primero la manguera menor; dentro de un juego, los de igual diámetro van juntos; los terminales sin juego conocido van al final.
batch-mind = Atención
batch-each = Después, con cada conjunto
batch-cut-reel-kept = Bobina de { $length }{ $where }: { $pieces }; quedan { $left }
batch-cut-reel-scrap = Bobina de { $length }{ $where }: { $pieces }; quedan { $left }
batch-cut-offcut-kept = Sobrante de { $length }{ $where }: { $pieces }; quedan { $left }, guardarlo
batch-cut-offcut-scrap = Sobrante de { $length }{ $where }: { $pieces }; quedan { $left }, desecho
batch-cut-sum = { $reel } de manguera nueva, { $scrap } de desecho. { $proved ->
    [yes] Ningún plan gasta menos.
   *[no] Ningún plan gasta menos de { $least } de manguera nueva.
  }
batch-die-set = Juego de mordazas { $die }: { $crimps }
batch-die-set-unknown = Juego de mordazas desconocido: { $crimps }
quote-title = Presupuesto
quote-lines = Piezas y mano de obra
quote-sums = Sumas
quote-what = Qué
quote-quantity = Cantidad
quote-price = Precio
quote-amount = Importe
quote-not-priced = sin precio
quote-parts-of = Piezas de { $name }, sin anotar
quote-not-priced-list = Sin precio: { $what }.
quote-sum = Suma de lo que tiene precio
quote-tax = Impuesto { $percent } %
quote-tax-unknown = Impuesto sin fijar
quote-total = Total
quote-no-total = sin total
round-age-not-known = No se sabe la edad de lo que hay montado ahí: mirarlo antes de cargar nada.
round-hose-not-known = No se sabe qué manguera va ahí.
round-repeated = Aquí fallaron { $times } conjuntos. Buscar la causa antes de hacer otro igual.
round-contradicted = El registro se contradice sobre lo que hay montado ahí: mirarlo primero.
round-due = vence { $due }
round-nothing = Ahí no vence nada.
round-load = Cargar:
round-load-line = { $name }: faltan { $missing } de { $wanted }
round-load-nothing = El furgón lo lleva todo.
