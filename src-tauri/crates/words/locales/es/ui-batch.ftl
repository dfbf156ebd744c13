# Words of several hoses made at once, of quotes and of the day's round.
several-title = Varias mangueras a la vez
several-note = una lista de corte, un orden de trabajo
several-label = Mangueras
several-none = Aún no hay ninguna manguera. Elegir las de una máquina o una visita.
several-hoses = Mangueras
several-place = { $machine } · { $number } · { $name }
several-add = Añadir mangueras
several-add-note = trabajos pendientes, sitios de una máquina
several-jobs = Trabajos sin acabar
several-machine = Lo mismo otra vez en una máquina
several-machine-hint = nombre de la máquina
several-which-machine = Máquina
several-in = incluida
several-not-known = Nadie sabe qué va ahí. Medirlo antes: empezar su trabajo.
several-work = Calcularlo
several-work-then = { $count ->
    [one] { $count } manguera
   *[other] { $count } mangueras
  }
several-cut = corte { $length }
several-cut-open = corte desconocido: falta un descuento
several-count = Cuántas
several-count-how = Todas iguales.
several-count-of = { $name }: { $count }, cambiar cuántas
several-remove = Quitar
several-remove-name = Quitar { $name }
several-empty = Vaciar la lista
several-cuts = Lista de corte
several-no-cuts = Aún no se sabe ninguna longitud de corte: faltan descuentos. Introducirlos en el trabajo de cada manguera.
several-to-job = Introducir sus descuentos
several-cut-drawing = { $stock }, se corta en { $pieces }; quedan { $left }
several-left-kept = quedan { $left }: de vuelta a su estante
several-left-scrap = quedan { $left }: desecho
several-unmade = no hay manguera para:
several-reel = { $reel } de bobina nueva, { $scrap } de desecho.
several-proved = Ninguna lista de corte gasta menos.
several-not-proved = La mejor hallada; ninguna lista puede gastar menos de { $least }.
several-parts = Piezas
several-order = Orden en la prensa
several-die-changes = { $count ->
    [one] { $count } cambio de mordazas
   *[other] { $count } cambios de mordazas
  }
several-die = Mordazas { $die }
several-die-open = Mordazas aún desconocidas
several-crimp = { $name }, terminal { $end }
several-crimp-open = diámetro por saber
several-save = Guardar la lista de trabajo
several-save-then = cortes, piezas y orden, en una página
several-quote = Presupuesto
several-quote-note = precios e impuesto
several-stopped = Una de las mangueras no se puede hacer: mirar arriba su motivo, o quitarla.
several-job-gone = Este trabajo está hecho o se dejó: quitarlo.
several-made = hecho, { $code }
several-labels = Etiquetas
several-labels-note = { $count ->
    [one] del que está hecho
   *[other] de los { $count } que están hechos
  }
several-each = Después, con cada conjunto

## Quote
quoted-title = Presupuesto
quoted-used = Total del trabajo
quoted-used-note = lo que se usó, con precios
quoted-open = Por saber
quoted-batch = { $count ->
    [one] { $count } manguera
   *[other] { $count } mangueras
  }
quoted-what = Qué
quoted-amount = Importe
quoted-line = { $quantity } a { $price }
quoted-open-amount = no se sabe cuánto
quoted-nothing = Nada a lo que poner precio: ninguna pieza salió de las existencias.
quoted-sum = Suma de lo que tiene precio
quoted-tax = Impuesto { $rate }
quoted-tax-open = Impuesto: sin fijar
quoted-total = Total
quoted-total-open = aún no
quoted-not-priced = Sin total hasta que tengan precio: { $names }.
quoted-to-stock = Ponerles precio en existencias
quoted-save = Guardar el presupuesto
quoted-save-open = sin total: no todo tiene precio

## The round
visits-title = La ronda
visits-note = visitas del día, piezas que cargar
visits-label = Visitas
visits-from = de { $store }
visits-days = Vence
visits-within-0 = ya vencido
visits-within-30 = en 30 días
visits-within-90 = en 90 días
visits-within-365 = en 12 meses
visits-machines = Máquinas
visits-nothing = En ese tiempo no vence ninguna manguera.
visits-in = incluida
visits-count = { $count ->
    [one] vence { $count } manguera
   *[other] vencen { $count } mangueras
  }
visits-load = Cargar esto
visits-all-there = Hay todo lo que pide la ronda.
visits-due = vence { $day }
visits-wanted = se piden { $wanted }, hay { $there }
visits-there = hay { $there }
visits-unknown = No se sabe cuánto
visits-missing = faltan { $missing }
visits-visits = Visitas
visits-open = Sitio
visits-open-name = Abrir { $name }
visits-batch = Hacerlas en un lote
visits-batch-then = { $count ->
    [one] { $count } manguera: lista de corte y orden de trabajo
   *[other] { $count } mangueras: lista de corte y orden de trabajo
  }
