# Words of machines, places and hoses.
machines-back = Atrás
machines-not-known = Desconocido
machines-not-written = SIN GUARDAR
machines-not-read = SIN LEER

## Kinds of machines
machines-kind-excavator = Excavadora
machines-kind-loader = Cargadora
machines-kind-forwarder = Autocargador
machines-kind-harvester = Cosechadora
machines-kind-crane = Grúa
machines-kind-drill = Perforadora
machines-kind-tractor = Tractor
machines-kind-truck-mounted = Camión grúa
machines-kind-press = Prensa
machines-kind-other = Otra

## What a hose carries

## What an age counts from
machines-counted-assembled = Ensamblada
machines-counted-hose-made = Manguera fabricada
machines-counted-fitted = Montada
machines-counted-inspected = Inspeccionada
machines-counted-unknown = Fecha desconocida

## A spec, a proof and a stay in one line
machines-drop = altura de codo { $drop }
machines-both-ends = { $end } en ambos extremos
machines-proof-no-rig = No probada: sin banco
machines-proof-failed = No superada: { $what }
machines-proof-elsewhere = No probada aquí
machines-proof-proved = Probada a { $pressure } durante { $seconds }, manómetro { $gauge }
machines-stay-fitted = montada { $day }
machines-stay-found = hallada montada { $day }
machines-stay-off = desmontada { $day }

## The list
machines-title = Máquinas
machines-hoses-label = Mangueras montadas
machines-fleet = { $sites ->
    [one] { $sitesShown } sede
   *[other] { $sitesShown } sedes
} · { $machines ->
    [one] { $machinesShown } máquina
   *[other] { $machinesShown } máquinas
}
machines-search = Buscar
machines-search-hint = Código, sitio, máquina, tamaño
machines-hits = Encontrado
machines-no-hit = Nada con estas palabras. Probar con menos letras, o un código sin guiones.
machines-no-site = Sin sede
machines-none = Aún no hay máquinas. Añadir la primera, luego numerar sus sitios.
machines-no-machine-here = Aún no hay máquinas en esta sede.
machines-hoses = { $count ->
    [one] { $shown } manguera
   *[other] { $shown } mangueras
}
machines-past = { $shown } fuera de plazo
machines-no-day = { $shown } sin fecha
machines-stopped-count = paradas: { $shown }
machines-row-stopped = parada
machines-row-unsettled = sin resolver
machines-conflict = Dos dispositivos anotaron esta máquina de forma distinta. Hasta que una persona diga cuál vale, se muestra lo más reciente.
machines-hit-place = Sitio { $number }, { $name }
machines-hit-loose = En ninguna máquina
machines-hit-site = Sede
machines-add-machine = Añadir máquina
machines-add-machine-here = Añadir máquina aquí
machines-add-site = Añadir sede

## Forms
machines-form-new = Nuevo en el registro
machines-form-name = Nombre
machines-form-name-hint = Como Excavadora 7
machines-form-site-hint = Como Patio norte
machines-form-kind = Tipo
machines-form-site = Sede
machines-keep = Guardar
machines-keep-machine-then = luego numerar sus sitios
machines-keep-place-then = luego está en la lista
machines-change = Cambiar la máquina

## One machine
machines-hours-label = Horas
machines-drawing = { $kind } con sus sitios numerados: { $places }.
machines-drawing-bare = { $kind }, sin sitios dibujados.
machines-read-hours = Leer horas
machines-read-hours-how = La cifra del contador de horas, en la cabina o junto al motor.
machines-hours-last = { $hours }, leídas { $day }
machines-hours-none = Horas nunca leídas
machines-hours-same-day = Menos que { $last }, leídas el { $day }: de dos lecturas de un día vale la mayor, así que esta no se vería. ¿Está mal aquella?
machines-hours-lower = Menos que { $last }, leídas el { $day }. Un contador no va hacia atrás: leerlo otra vez, o se cambió.
machines-hours-jump = { $last } se leyeron el { $day }. Desde entonces ninguna máquina puede haber funcionado tanto: un día tiene 24 horas.
machines-hours-earlier = Más que { $last }, leídas después, el { $day }. Un contador no va hacia atrás: una de las dos está mal.
machines-at-hours = con { $hours }
machines-hours-strike = Tachar { $hours }
machines-hours-strike-note = mal leídas ahora mismo
machines-hours-slip = mal leídas
machines-circuits = Circuitos
machines-circuit-relief = limitadora { $relief }
machines-circuit-no-relief = limitadora desconocida
machines-circuit-add = Añadir circuito
machines-circuit-hint = Como Pluma y balancín
machines-circuit-relief-how = Presión de ajuste de la válvula limitadora, de su placa o de los papeles de la máquina.
machines-circuit-relief-title = Limitadora de { $name }
machines-places = Sitios
machines-place = Sitio { $number }, { $name }
machines-years = años
machines-no-places = Aún no hay sitios. Numerar los sitios donde va una manguera, como en la máquina.
machines-place-empty = no consta manguera
machines-place-several = constan { $shown } mangueras
machines-reason-past = fuera de plazo
machines-reason-age-unknown = edad desconocida
machines-reason-stopped = parada
machines-reason-failed = falló, sin sustituir
machines-reason-job = trabajo abierto
machines-over = se le exige demasiado
machines-overs = { $count ->
    [one] { $shown } exigida de más
   *[other] { $shown } exigidas de más
}
machines-failed = falló aquí { $times }
machines-age-unknown = edad desconocida
machines-limit-note = Línea gruesa: límite de vida útil, { $count ->
    [one] { $years } año
   *[other] { $years } años
}. Una edad contada desde el día del montaje es esa como mínimo.
machines-place-add = Añadir sitio
machines-place-number = Número
machines-place-name-hint = Como Cilindro de pluma, izq.
machines-place-taken = { $number } es { $name }. Siguiente libre: { $free }.
machines-place-whole = Un número entero de 1 a 999.
machines-line = Línea
machines-circuit = Circuito
machines-choose = Elegir el sitio
machines-choose-how = su número arriba, o su fila
machines-go-on = Seguir en el sitio { $number }
machines-go-on-then = { $name }: el trabajo no está hecho
machines-of-site = { $count ->
    [one] { $shown } máquina
   *[other] { $shown } máquinas
  }
machines-unfold = mostrar
machines-fold = ocultar
machines-more = Se muestran { $shown } de { $count }; las demás, con la búsqueda.
