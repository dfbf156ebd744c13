# Words of the list of what falls due.

due-label = Vencidas
due-context = { $sites ->
    [one] { $sitesShown } sede
   *[other] { $sitesShown } sedes
  } · { $machines ->
    [one] { $machinesShown } máquina
   *[other] { $machinesShown } máquinas
  }
due-sites = Sede
due-all-sites = Todas
due-what = Qué vence
due-view-service = Vida útil { $count }
due-view-inspection = Inspección { $count }

## Ages
due-ages-service = Edad de cada manguera
due-ages-inspection = Desde que se miró cada una
due-ages-from = Donde no consta inspección, desde su montaje.
due-one-mark = una marca, una manguera
due-drawing-inspection = Años desde que se miraron { $count } mangueras por última vez, frente a un límite de { $limit }; fuera de plazo: { $over }
due-drawing-service = Edades de { $count } mangueras en años frente a un límite de { $limit }; fuera de plazo: { $over }
due-limit-guide = { $count ->
    [one] { $years } año
   *[other] { $years } años
}, orientativo
due-limit-policy = { $count ->
    [one] { $years } año
   *[other] { $years } años
}, propio
due-over = { $count } fuera
due-year-unit = a
due-other-limits = Algunas mangueras tienen otro límite; en la lista cada una cuenta por el suyo.
due-no-ages = Aún no se conoce ninguna edad.

## List
due-unknown = Edad desconocida
due-unknown-why = No consta fecha de fabricación, ensamblaje ni montaje. Nunca cuentan como jóvenes: mirar el casquillo y la impresión.
due-past = Fuera de plazo
due-stopped-title = Paradas
due-within-30 = En 30 días
due-within-90 = De 31 a 90 días
due-within-365 = De 91 días a 12 meses
due-nothing = Aquí nada vence en 12 meses.
due-over-by = { $years } años de más
due-in-days = { $days ->
    [one] en { $shown } día
   *[other] en { $shown } días
  }
due-since-unknown = ?
due-years = { $years } años
due-not-fitted = Sin montar
due-row-place = { $number } · { $name }
due-row-from = { $from ->
    [assembled] desde el ensamblaje
    [hose-made] desde la fabricación de la manguera
    [fitted] desde el montaje: como mínimo
    [inspected] desde la última inspección
   *[unknown] sin fecha conocida
  }
due-row-finding = { $name }, visto { $day }
due-row-hours = { $known ->
    [yes] { $run } h de { $limit } h desde el montaje
   *[no] límite { $limit } h
  }{ $rated ->
    [yes] , a { $rate } h por día propias
   *[no] {""}
  }
due-row-yours = límite propio, años: { $years }{ $stop ->
    [yes] , obliga a parar
   *[no] {""}
  }
due-row-guide = límite orientativo, años: { $years }
due-row-asked = por lo que exige su sitio
due-row-risk = { $chance } × { $of }
due-guide-sources = Orientativo: { $sources }
due-row-consequence = consecuencia { $of } de 5: { $why }
due-hours-no-hours-at-fitting = las horas no cuentan: no constan al montarla
due-hours-no-reading = las horas no cuentan: aún no hay lectura
due-hours-no-rate = las horas no cuentan: una sola lectura no da ritmo
due-hours-meter-set-back = las horas no cuentan: el contador marca menos que al montarla
due-row-chance = { $from ->
    [life] { $part } %
   *[age] { $part } % gastado
  }
due-stake-someone-beside = alguien al lado
due-stake-hot-surface = superficie caliente
due-stake-load-held-up = carga en alto
due-stake-remote = lugar apartado
due-stake-owner = indicación propia
due-stake-not-said = nadie dijo qué causa un fallo aquí
due-stake-none = nada de la tabla
due-order = Orden
due-by-date = Por fecha
due-by-risk = Por riesgo
due-by-risk-title = Probabilidad por consecuencia
due-risk-why = { $from ->
    [life] Probabilidad de fallar en los próximos { $days } días, según la duración de las mangueras propias ({ $failures } fallos), por la consecuencia. Una estimación para el orden, no una promesa.
   *[age] La parte de su límite gastada dentro de { $days } días, por la consecuencia: no es probabilidad, pone primero las más viejas. { $failures } fallos registrados son pocos para eso; hacen falta { $needed }.
  }
due-more = Mostrar más
due-more-note = { $shown } mostradas
due-columns = Qué vence y cuándo
due-column-30 = 30 días
due-column-90 = hasta 90
due-column-365 = 12 meses
due-export-csv = Guardar como texto
due-export-csv-note = para otros programas

## Next
due-plan = Planificar { $site }
due-plan-then = { $count ->
    [one] { $shown } manguera fuera de plazo
   *[other] { $shown } mangueras fuera de plazo
  }
due-plan-then-stopped = { $stopped } paradas, { $shown } vencidas en total
due-open = Abrir { $machine }
due-open-then = sitio { $number }, { $name }

## Limit and lists
due-policy-crossed = Cuando se supera
due-policy-caution = Precaución
due-policy-stop = Parar
due-export-xlsx = Guardar la lista
due-export-xlsx-note = hoja de cálculo
due-export-ics = Guardar las fechas
due-export-ics-note = calendario
due-saved = Guardado: { $where }

## How long hoses last here
due-life = Cuánto duran aquí las mangueras
due-life-note = por tipo, carga y sitio; fallos esperados; edad de menor coste
due-life-failed = Fallos
due-life-by = Agrupadas por
due-life-by-hose = Tipo de manguera
due-life-by-line = Línea
due-life-percent = { $part } %
due-life-count = { $count ->
    [one] { $shown } manguera, { $failed } con fallo
   *[other] { $shown } mangueras, { $failed } con fallo
  }
due-life-not-known = No consta
due-life-drawing = { $what }: parte que aún aguanta en { $years } años desde el montaje, con límites. { $count }.
due-life-b10 = Una de cada diez ha fallado a los
due-life-span = { $count ->
    [one] { $years } año
   *[other] { $years } años
} ({ $low } a { $high })
due-life-few = Muy poco para decir
due-life-few-why = Hacen falta al menos dos fallos a edades distintas. Hasta entonces esto no dice nada de cuánto duran estas mangueras.
due-life-none = Constan muy pocos fallos para decir cuánto duran aquí las mangueras.
due-life-left-out = { $count ->
    [one] { $shown } estancia queda fuera: no se sabe cuándo se montó esa manguera, o sus fechas se contradicen.
   *[other] { $shown } estancias quedan fuera: no se sabe cuándo se montaron esas mangueras, o sus fechas se contradicen.
  }
due-life-how = Años desde el montaje. Cuenta cualquier fallo, sea cual sea su causa; una manguera que se desmontó entera o sigue montada cuenta hasta donde se la observó. No están las mangueras que fallaron antes de empezar este registro.
due-life-bounds = Línea gruesa: la parte que aún aguanta (Kaplan y Meier). Banda: límites del 95 %, cada uno solo para su año; ancha significa que se sabe poco. Línea fina: ajuste de Weibull. Describe estas máquinas y no promete nada de la próxima manguera; el límite del fabricante y el orientativo van primero.
due-life-by-load = Carga
due-life-by-machine = Tipo de máquina
due-life-by-place = Tipo de sitio
due-life-load-half = Hasta la mitad de la presión admisible
due-life-load-three-quarters = De la mitad a tres cuartos de la presión admisible
due-life-load-full = Tres cuartos de la presión admisible o más
due-life-load-above = Por encima de la presión admisible
due-life-shape = Forma
due-life-shape-says = { $shape } ({ $low } a { $high }): { $wears ->
    [wears-out] se desgastan
    [fails-young] fallan jóvenes
   *[other] aún no se puede decir si se desgastan
  }
due-life-next = Próximo trimestre
due-life-next-says = se esperan { $failures } fallos ({ $low } a { $high })
due-life-next-drawing = Fallos esperados en el próximo trimestre: { $failures }, de { $low } a { $high }
due-life-all = Todas juntas
due-life-not-expected = { $count ->
    [one] { $shown } manguera queda fuera de lo esperado: de las suyas han fallado muy pocas.
   *[other] { $shown } mangueras quedan fuera de lo esperado: de las suyas han fallado muy pocas.
  }
due-life-take = { $more ->
    [one] Hace falta { $shown } fallo más para decir si estas mangueras se desgastan.
   *[other] Hacen falta { $shown } fallos más para decir si estas mangueras se desgastan.
  }
due-life-take-years = Al ritmo de hasta ahora: { $count ->
    [one] { $years } año
   *[other] { $years } años
}.
due-life-between = { $count ->
    [one] { $shown } se encontró con fallo en una inspección, no se sabe desde cuándo.
   *[other] { $shown } se encontraron con fallo en una inspección, no se sabe desde cuándo.
  }
due-life-costs = Edad de menor coste
due-life-costs-why = ¿Cuánto le cuesta un fallo, con todo lo que trae, y cuánto un cambio previsto? Solo usted lo sabe.
due-life-failure-cost = Un fallo
due-life-planned-cost = Un cambio previsto
due-life-costs-ask = Calcularlo
due-life-costs-wrong = Dos importes mayores que cero, el del fallo el más caro.
due-life-least = Cuesta menos cambiarlas a los
due-life-least-near = Igual hasta un 5 %
due-life-least-range = { $low } a { $high } años
due-life-least-from = desde { $low } años
due-life-waiting = Ninguna edad cuesta menos que esperar los fallos, por lo que se sabe.
due-life-cost-drawing = { $what }: coste de cambiar a una edad, con esperar los fallos como 100 %. El menor a los { $age } años, { $part } %.
due-life-cost-first = El límite del fabricante y el orientativo van primero, cueste lo que cueste.
due-life-places = Más fallos de los esperados
due-life-places-of = { $count ->
    [one] De { $shown } sitio mirado. Algunos son malos solo por azar.
   *[other] De { $shown } sitios mirados. Entre tantos, algunos son malos solo por azar.
  }
due-life-place-says = { $seen } por { $expected } esperados: { $ratio } veces ({ $low } a { $high }).
due-life-place-out = Destaca aun como el peor de todos.
due-life-place-chance = Puede ser azar.
due-life-since = Constan todos los fallos desde
due-life-since-note = Fíjelo si el registro empezó más tarde que las mangueras: lo que falló antes no se sabe.
due-life-since-all = Desde el principio
due-life-before = { $count ->
    [one] { $shown } estancia acabó antes de ese día y no cuenta.
   *[other] { $shown } estancias acabaron antes de ese día y no cuentan.
  }
due-life-paper = Guardarlo como hoja
due-life-paper-note = PDF, con las curvas
