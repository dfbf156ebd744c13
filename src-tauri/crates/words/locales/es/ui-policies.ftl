# Words of the limits of age: the tables' and the owner's.

policies-title = Límites de edad
policies-note = orientativos y propios
policies-here = Límites que rigen aquí
policies-label = Propias
policies-yours = Reglas propias
policies-yours-none = Aún no hay regla propia: rigen los valores orientativos, y superar uno es precaución.
policies-guides = Valores orientativos de las tablas
policies-guides-how = Rigen donde ninguna regla propia dice nada. Superar uno es precaución y nunca más.
policies-what-service = Vida útil, desde el ensamblaje
policies-what-storage = En almacén, antes del montaje
policies-what-inspection = Entre inspecciones
policies-order = Gana la regla más estrecha que diga algo: sitio, máquina, sede, flota; de dos iguales, la que nombra la línea o la exigencia. Entre años y horas cuenta lo más estricto.
policies-maker = Los límites del fabricante y los reglamentos locales van primero. Ninguna regla de aquí los alarga.
policies-new = Fijar una regla propia
policies-new-then = con su efecto antes de guardarla
policies-where = Dónde rige
policies-scope-fleet = Toda la flota
policies-scope-site = Una sede
policies-scope-machine = Máquina, sitio
policies-pick = Elegir
policies-every-place = Todos sus sitios
policies-every-line = Todas las líneas
policies-all-hoses = Todas las mangueras
policies-demand = Exigencia
demand-normal = Exigencia normal
demand-harsh = Exigencia elevada
policies-limits = Límites
policies-limits-how = Lo que queda vacío se deja a la regla más amplia y, al final, al valor orientativo.
policies-none = –
policies-limit-service-years = Vida útil
policies-limit-service-hours = Horas de servicio
policies-limit-storage-years = En almacén
policies-limit-inspection-years = Inspección
policies-limit-inspection-hours = Horas hasta inspección
policies-limit-service-years-how = Del ensamblaje a la sustitución, almacenaje incluido.
policies-limit-service-hours-how = Horas de la máquina desde el montaje. Se convierten en fecha según las horas por día de la propia máquina; sin lecturas no cuentan, y la lista lo dice.
policies-limit-storage-years-how = Del ensamblaje al montaje. El almacenaje forma parte de la vida útil.
policies-limit-inspection-years-how = De una mirada a la siguiente. Medio año es 0,5.
policies-limit-inspection-hours-how = Horas de la máquina desde que se miró la manguera por última vez.
policies-hours = { $hours } h
policies-take = Tomar este valor
policies-says-nothing = Sin límite
policies-is-stop = superado: parar
policies-is-caution = superado: precaución
policies-keep = Guardar esta regla
policies-keep-then = rige desde ahora, en cada dispositivo
policies-remove = Quitar la regla
policies-remove-note = rige la más amplia
policies-effect-word = EFECTO
policies-effect-longer = MÁS LARGO QUE LA GUÍA
policies-effect-later = MÁS TARDE QUE AHORA
policies-effect-longer-how = { $count ->
    [0] Ninguna manguera sale de la lista de vencidas.
    [one] { $off } manguera sale de la lista de vencidas.
   *[other] { $off } mangueras salen de la lista de vencidas.
  } { $over ->
    [0] {""}
    [one] { $guide } fecha quedaría después de la de la guía. La manguera no se hace más joven por eso.
   *[other] { $guide } fechas quedarían después de las de la guía. Las mangueras no se hacen más jóvenes por eso.
  }
policies-pick-first = Elija primero dónde rige.
policies-effect = { $count ->
    [0] No se mueve ninguna fecha, de { $hoses } mangueras para las que rige.
    [one] Se mueve { $moved } fecha, de { $hoses } mangueras para las que rige.
   *[other] Se mueven { $moved } fechas, de { $hoses } mangueras para las que rige.
  } { $machines ->
    [0] {""}
    [one] { $stopped } máquina queda parada.
   *[other] { $stopped } máquinas quedan paradas.
  }
policies-effect-none = Al cambiar un límite se ve qué causa antes de guardarlo.
policies-effect-past = Fuera de plazo
policies-effect-within = Vencen en 12 meses
policies-effect-stopped = Paradas
policies-effect-change = ahora { $before }, después { $after }
policies-effect-rows = Mangueras cuya fecha se mueve
policies-effect-more = Se muestran { $shown } de { $moved }, las más graves primero.
policies-was = antes { $day }
