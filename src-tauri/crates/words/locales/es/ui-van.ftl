# Words of the van: this device, its register and what goes in and out.
van-title = Este furgón
van-hoses = Mangueras registradas
van-keep = Guardarlo

## Units, paper
van-units = Idioma, unidades, papel, aspecto
van-language = Idioma
van-lengths = Longitudes primero en
van-inch = pulgada
van-pressures = Presiones primero en
van-paper = Papel
van-paper-a4 = A4
van-paper-letter = Carta
van-practice = Tolerancias de longitud
van-din-20066 = DIN 20066
van-american = Americana
van-theme = Aspecto
van-theme-auto = el del dispositivo
van-theme-light = claro
van-theme-dark = oscuro
van-theme-sun = sol

## Labels
van-labels = Etiquetas
van-labels-means = Las etiquetas que se tienen. La primera se ofrece primero; si una manguera no cabe en su etiqueta, se dice cuál de las otras serviría.
van-labels-note = { $count ->
    [one] { $first }
    [2] { $first } y una más
   *[other] { $first } y { $others } más
}
van-labels-first = se ofrece primero
van-labels-row = { $size } · { $material } · { $dpi } puntos por pulgada
van-labels-add = Otra etiqueta
van-label-title = Una etiqueta
van-label-name = Cómo se la llama
van-label-name-hint = como placa con alambre 60 x 40
van-label-face = Medir la cara que se imprime, sin soporte y sin la cola que rodea la manguera.
van-label-width = Ancho
van-label-height = Alto
van-label-side-how = De la cara que se imprime: el ancho a lo largo de las palabras, el alto a través de ellas.
van-label-dpi = Impresora, puntos por pulgada
van-label-dpi-short = puntos por pulgada
van-label-dpi-how = Está en los papeles de la impresora: 203, 300 o 600 son usuales.
van-label-form = Cómo se fija
van-label-form-how = { $form ->
    [flag] Rodea la manguera y sobresale de ella, plana: una cámara la ve entera.
    [wrap] Pegada alrededor de la manguera: cuanto más fina la manguera, menor el código que una cámara ve de una vez.
   *[plate] Plana, atada o fijada junto a la manguera: una cámara la ve entera.
}
van-label-material = Material
van-label-paper-means = El papel no dura en una máquina: solo para el banco.
van-label-make-first = Ofrecerla primero
van-label-remove = Quitarla
van-label-same-name = Otra de las etiquetas propias tiene ese nombre.

## Instruments
van-instruments = Instrumentos
van-instruments-note = pie de rey, galgas, cinta, sierra
van-errors = Cuánto se desvían al medir
van-errors-note = Error típico. Pesa en cada lectura: si es demasiado pequeño, una respuesta errónea parece segura.
van-caliper = Pie de rey
van-caliper-error = Error del pie de rey
van-micrometer = Micrómetro
van-micrometer-error = Error del micrómetro
van-tape = Cinta
van-tape-error = Error de la cinta
van-thread-gauge = Peine de roscas
van-seat-gauge = Galga de asientos
van-error-how = De su certificado, o medir diez veces un bloque patrón.
van-bench = Sierra y manómetro
van-kerf = la sierra se lleva
van-kerf-how = El ancho del corte de la sierra: cuenta en la bobina. Medir uno.
van-gauge-months = manómetro calibrado cada
van-gauge-months-how = Meses entre calibraciones del manómetro, según la regla propia.
van-months = { $count ->
    [one] { $count } mes
   *[other] { $count } meses
}
van-names = Nombres o números que llevan
van-name-hint = ninguno
van-keep-names = Guardar los nombres
van-names-kept = Los nombres están guardados.

## Supplier tables
van-suppliers = Tablas de proveedores
van-suppliers-note = ajustes de prensado, propios
van-suppliers-means = Ajustes de prensado de los proveedores propios, como ellos los dan. Figuran como propios donde se muestran, con el proveedor y el archivo.
van-suppliers-none = Aquí aún no hay tabla de ningún proveedor.
van-suppliers-all = Todos los proveedores
van-supplier-rows = { $count ->
    [one] fila
   *[other] filas
}
van-supplier-pick = Tomar una tabla
van-supplier-import = Una tabla de proveedor
van-supplier-look = Buscar
van-supplier-look-hint = manguera, terminal, tamaño, casquillo
van-supplier-not-found = Ninguna fila tiene todas estas palabras.
van-supplier-more = Mostrar más filas
van-supplier-remove-row = Quitar esta fila
van-supplier-remove = Quitar todo de { $supplier }
van-supplier-remove-means = Todas las filas de { $supplier } se van de este registro. Las mangueras hechas con ellas conservan sus ajustes en el registro.
van-supplier-remove-yes = Quitarlas
van-match-rows = { $count ->
    [one] { $shown } fila.
   *[other] { $shown } filas.
}
van-match-title = Qué es cada columna
van-match-how = Tocar una columna para cambiar por qué se toma. Nada se toma sin haber visto antes qué saldría.
van-match-header = Los encabezados están en la fila { $row }
van-match-no-heading = sin encabezado
van-match-not-read = sin leer
van-match-unit = Unidad de { $column }
van-match-say = Decir: { $column }
van-match-say-then = o tocar la columna donde está
van-match-fixed = { $column } de todas las filas
van-match-fixed-hint = o tocar la columna donde está
van-match-try = Probar
van-match-try-then = fila por fila; aún no se toma nada
van-match-take = Tomarla
van-match-take-then = { $count ->
    [one] { $shown } fila, todo o nada
   *[other] { $shown } filas, todas o ninguna
}
van-match-away = Dejarla
van-match-done = Hecho
van-sheet-go-on = Seguir con { $name }
van-sheet-go-on-note = a medio asignar; aún no se tomó nada
van-row-enter = Introducir una fila a mano
van-row-enter-note = una manguera y un extremo, donde no hay tabla
van-row-go-on = Seguir con la fila
van-row-go-on-note = a medio introducir
van-row-title = Una fila del proveedor
van-row-supplier = Proveedor
van-row-supplier-hint = de quién son las cifras
van-row-end = Para qué extremo
van-row-any-end = Para cualquier extremo de la serie
van-row-skive-outer = Pelado de la cubierta
van-row-skive-inner = Pelado del tubo
van-row-figure-how = Como está en la tabla de su proveedor, y de ninguna otra parte.
van-row-from = introducida a mano, { $day }
van-outcome-would = Saldría:
van-outcome-rest = Sin las filas rechazadas:
van-outcome-done = Tomado:
van-outcome-counts = de { $rows } filas, nuevas: { $new }, cambiadas: { $changed }, ya conocidas: { $same }.
van-outcome-repeated = Dicho dos veces en la tabla: filas { $rows }.
van-outcome-left = Quedan fuera: filas { $rows }.
van-outcome-refused = { $count ->
    [one] { $rows } fila no se puede tomar
   *[other] { $rows } filas no se pueden tomar
}
van-outcome-row = Fila { $row }
van-outcome-leave = { $count ->
    [one] Dejar fuera esta fila
   *[other] Dejar fuera estas { $shown } filas
}
van-outcome-leave-note = y probar el resto
van-column-supplier = proveedor
van-column-standard = norma de la manguera
van-column-type = tipo de manguera
van-column-dn = DN
van-column-family = familia del terminal
van-column-size = tamaño del terminal
van-column-series = serie del terminal
van-column-ferrule = casquillo
van-column-insertion = profundidad de inserción
van-column-skive = pelado de cubierta
van-column-skive-inner = pelado de tubo interior
van-column-lubricant = lubricante
van-column-die-set = juego de mordazas
van-column-crimp-diameter = diámetro de prensado
van-column-crimp-tolerance = tolerancia de prensado
van-column-cutoff = descuento

## Press
van-press = Prensa
van-press-note = prensados de cada juego, cuidado
van-press-means = Cuánto se apartó de su nominal la media de cada prensado, juego a juego de mordazas. Una racha hacia un lado dice que la prensa se desvía antes de que un prensado quede fuera.
van-press-none = Aún no consta ningún prensado.
van-press-left-out = { $count ->
    [one] { $shown } prensado no está en ningún gráfico: no se anotaron sus mordazas, nominal o lecturas.
   *[other] { $shown } prensados no están en ningún gráfico: no se anotaron mordazas, nominal o lecturas.
}
van-press-crimps = { $count ->
    [one] { $shown } prensado
   *[other] { $shown } prensados
}
van-press-chart = Juego de mordazas { $die }: cuánto se apartaron { $count } prensados de su nominal, { $low } a { $high }.
van-press-mean = media { $mean } desde el nominal
van-press-few = Menos de ocho prensados aún no dicen nada de la prensa.
van-press-limits = Líneas discontinuas: lo que esta prensa hace de por sí, { $low } a { $high }.
van-press-steady = Nada dice que la prensa se haya desviado.
van-press-earlier = { $count ->
    [one] y { $count } señal antes
   *[other] y { $count } señales antes
}
van-press-signal = { $code }, terminal { $end }, { $day }: { $what }

## Care of the press
van-care = Cuidado de la prensa
van-care-means = Como dice el libro de la prensa; los intervalos son propios.
van-care-none = No hay cuidados fijados. El libro de la prensa dice cuáles y cada cuánto.
van-care-name = Qué se hace
van-care-name-hint = como engrasar los conos
van-care-crimps = cada tantos prensados
van-care-months = cada tantos meses
van-care-add = Añadir al cuidado
van-care-done = Hecho hoy
van-care-remove = Quitar
van-care-last = última vez { $day }
van-care-never = nunca hecho aquí
van-care-due = toca ya
van-care-due-on = toca el { $day }
van-care-since = { $count ->
    [one] { $shown } prensado desde entonces
   *[other] { $shown } prensados desde entonces
}
van-care-every-crimps = cada { $count } prensados
van-care-every-months = { $count ->
    [one] cada mes
   *[other] cada { $count } meses
}

## People
van-people = Personas y dispositivo
van-people-note = quién trabaja, cómo llaman otros a este furgón
van-working = Quién trabaja
van-working-now = trabaja ahora
van-nobody = Aquí aún nadie tiene nombre.
van-new-person = Otro nombre
van-add = Añadir el nombre
van-people-beside = Los nombres están junto al registro, no en él: el registro nombra a una persona con un número, así un nombre se puede borrar y el registro sigue entero.
van-erase = Borrar
van-erase-title = ¿Borrar { $name }?
van-erase-means = El nombre se va de este registro y de cada furgón que se fusione con él. Lo registrado se queda, sin el nombre. Las copias y paquetes hechos antes aún lo tienen. No se puede deshacer.
van-erase-yes = Borrar el nombre
van-erase-no = Dejarlo
van-device = Este dispositivo
van-device-name = Nombre de este dispositivo
van-device-hint = como Furgón 2
van-device-keep = Nombrar este dispositivo
van-device-kept = Desde ahora sus registros dicen { $name }.

## Backup
van-backup = Copia de seguridad
van-backup-go = Hacer copia
van-backup-now = Hacer copia ahora
van-backup-then = un archivo, registro y fotos
van-backup-none = Aún no hay copia de este dispositivo.
van-backup-last = última { $when }
van-backup-title = Última copia
van-backup-says = { $when }: { $where }, { $size }.
van-backup-means = Guardarla fuera de este dispositivo: por correo, en una memoria o en el ordenador de la oficina.
van-backup-photos = Las copias de la lista no llevan fotos: estas quedan en este dispositivo junto al registro. El archivo de «Hacer copia ahora» las tiene.
van-busy = Trabajando.
van-restore = Restaurar
van-restore-means = Pone una copia en lugar de este registro.
van-restore-pick = Elegir una copia
van-restore-first = ¿Reemplazar este registro?
van-restore-first-means = { $file } ocupa el lugar de este registro con sus { $events } eventos. Este registro se conserva al lado con otro nombre.
van-restore-second = ¿Qué se registró desde entonces?
van-restore-second-means = Lo registrado aquí después de hacer { $file } no está en ella y no se mostrará. Este dispositivo sigue como uno nuevo.
van-restore-on = Seguir
van-restore-yes = Restaurarla
van-restore-no = Dejarlo todo como está
van-restored = RESTAURADO
van-restored-says = { $events } eventos en su sitio, comprobados uno a uno.
van-kept = Copias junto al registro
van-kept-last = La última buena: { $when }. Se hace sola cada día y se prueba restaurándola. Si se pierde este dispositivo, se pierden con él.
van-kept-none = Todavía ninguna. El programa hace una cada día mientras funciona y la prueba restaurándola.
van-kept-late = La más reciente tiene tres días o más, o es del futuro. Mire si hay sitio y el reloj va bien, y verifique el diario en «Entrada y salida».
van-kept-restore = Restaurar { $when }

## Records in and out
van-records = Entrada y salida
van-records-note = otros furgones, listas, exportar, verificar
van-vans = Otros furgones
van-vans-means = Darse paquetes en cualquier orden, cuantas veces se quiera: los registros salen iguales.
van-bundle = Paquete para otro furgón
van-bundle-note = guarda un archivo
van-merge = Fusionar un paquete
van-merge-note = elegir el archivo
van-merged = { $count ->
    [one] { $shown } evento era nuevo.
   *[other] { $shown } eventos eran nuevos.
  }
van-merged-had = { $count ->
    [one] { $shown } ya estaba aquí.
   *[other] { $shown } ya estaban aquí.
  }
van-merged-held = { $count ->
    [one] { $shown } espera a uno anterior de su furgón: fusionar el último paquete de ese furgón.
   *[other] { $shown } esperan a otros anteriores de su furgón: fusionar el último paquete de ese furgón.
  }
van-refused-fork = Rechazado desde el evento { $from } del dispositivo { $device }: dos registros escriben con un mismo nombre. Restaurar ese dispositivo con su propia copia.
van-refused-chain = Rechazado desde el evento { $from } del dispositivo { $device }: no continúa lo que hay aquí. Algo lo cambió por el camino.
van-no-conflicts = Nada se contradice.
van-conflicts = { $count ->
    [one] { $shown } cosa se cuenta de dos maneras. Almacén y versiones la nombra, para que alguien la resuelva.
   *[other] { $shown } cosas se cuentan de dos maneras. Almacén y versiones las nombra, para que alguien las resuelva.
  }
van-list = Una lista de mangueras
van-list-means = Una fila por cada manguera en un sitio. Todas las filas o ninguna; nada se toma sin haber visto antes qué saldría.
van-list-pick = Mirar una lista
van-list-note = CSV o XLSX
van-export = Exportar
van-csv = Mangueras, CSV
van-xlsx = Mangueras, XLSX
van-zip = Todo, tablas CSV
van-json = Todo, JSON
van-ics = Plazos, calendario
van-left = Guardado: { $where }
van-verify = Verificar el diario
van-verify-means = Recorre cada evento y comprueba que ninguno se cambió.
van-verify-go = Verificar
van-verified = { $devices ->
    [one] Los { $events } eventos están como se escribieron.
   *[other] Los { $events } eventos de { $devices } dispositivos están como se escribieron.
  }
van-verified-not = Fallos: { $faults }, en { $events } eventos.
van-rebuild = Reconstruir las tablas
van-rebuild-note = a partir del diario

## Settings that can not be read
van-unreadable = SIN LEER
van-unreadable-says = Ajustes guardados que no se pueden leer: { $settings }. Valen para ellos los del primer día. Fijarlos de nuevo.
van-setting-language = idioma
van-setting-length-unit = longitudes
van-setting-pressure-unit = presiones
van-setting-paper = papel
van-setting-label-stocks = etiquetas
van-setting-length-practice = tolerancias de longitud
van-setting-caliper-error-mm = error del pie de rey
van-setting-micrometer-error-mm = error del micrómetro
van-setting-tape-error-mm = error de la cinta
van-setting-kerf-mm = lo que se lleva la sierra
van-setting-gauge-months = calibración del manómetro
van-setting-press-care = cuidado de la prensa
van-setting-instruments = nombres de los instrumentos
van-setting-store = almacén
van-setting-offcut-mm = sobrante más corto
van-setting-pricing = precios y mano de obra
van-setting-person = quién trabaja

## About
van-about = Almacén y versiones
van-about-note = eventos, tablas, programa
van-first = Las instrucciones del fabricante, los reglamentos locales y la práctica autorizada van primero.
van-about-machines = Máquinas
van-about-hoses = Mangueras registradas
van-about-fitted = de ellas, montadas
van-about-events = Eventos en el diario
van-about-held = Eventos en espera
van-about-conflicts = Contradicciones
van-about-size = Tamaño
van-about-size-none = se sabe tras una copia
van-about-device = Este dispositivo
van-about-program = Programa
van-about-tables = Tablas
van-about-stays = El registro es un archivo en este dispositivo. Nada sale de él salvo los archivos que se guardan. Software libre: su licencia lo acompaña.
van-report = Informe de un fallo
van-report-means = Versiones, cantidades y lo que no se verifica, en un archivo para quien arregla el programa. No lleva nombres, lugares ni códigos, y no se envía nada.
van-report-save = Guardar el informe
van-report-left = { $where }, { $size }.

## What contradicts itself
van-device-unnamed = dispositivo sin nombre ({ $id })
van-conflict-other = un límite de todas las sedes
van-told = { $kind } ({ $by })
van-kind-device-named = nombre del dispositivo
van-kind-device-key = clave del dispositivo
van-kind-device-admitted = admisión de un dispositivo
van-kind-device-withdrawn = baja de un dispositivo
van-kind-site-named = sede
van-kind-machine-set = máquina
van-kind-hours-read = horas
van-kind-circuit-set = circuito
van-kind-place-set = sitio
van-kind-assembly-made = puesta en el registro
van-kind-fitted = montada
van-kind-taken-off = desmontada
van-kind-inspected = inspeccionada
van-kind-overridden = límite asumido
van-kind-labelled = etiqueta
van-kind-tag-withdrawn = etiqueta anulada
van-kind-policy-set = límite de edad
van-kind-stock-changed = existencias
van-kind-photo-added = foto
van-kind-noted = nota

## A list of hoses that is taken in
list-asks-days = Diga para { $column }: ¿día o mes primero?
list-asks-days-then = como { $example }; nunca se adivina
list-asks-unit = Diga la unidad de { $column }
list-asks-unit-then = como { $example }; nunca se adivina
list-days = Fechas de { $column }
list-days-day-first = día primero
list-days-month-first = mes primero
list-counts = { $rows ->
    [one] { $rowsShown } fila
   *[other] { $rowsShown } filas
  }: nuevas: { $machines } máquinas, { $places } sitios y { $hoses } mangueras
list-filter = Filas
list-filter-all = Todas { $count }
list-filter-made = Nuevas { $count }
list-filter-changed = Desmontadas { $count }
list-filter-known = Conocidas { $count }
list-filter-refused = Rechazadas { $count }
list-filter-left-out = Omitidas { $count }
list-is-made = nueva
list-is-changed = desmontada
list-is-known = conocida
list-is-refused = rechazada
list-is-left-out = omitida
list-more = { $count ->
    [one] Mostrar { $shown } fila más
   *[other] Mostrar { $shown } filas más
  }
list-working = Trabajando: { $done } de { $of }
list-reading = Leyendo la lista
list-stop = Parar
list-stop-note = entonces no se toma nada
list-column-site = sede
list-column-machine = máquina
list-column-kind = tipo de máquina
list-column-machine-hours = horas de la máquina ahora
list-column-place = número del sitio
list-column-place-name = nombre del sitio
list-column-line = tipo de línea
list-column-relief-bar = ajuste de la limitadora
list-column-working-pressure-bar = presión de trabajo
list-column-fluid = fluido
list-column-code = código de la etiqueta
list-column-hose = manguera, todo en uno
list-column-standard = norma de la manguera
list-column-type = tipo de manguera
list-column-dn = tamaño de la manguera
list-column-cover = propiedad de la cubierta
list-column-a-family = familia del terminal A
list-column-a-size = tamaño del terminal A
list-column-a-gender = macho o hembra, terminal A
list-column-a-form = forma del terminal A
list-column-b-family = familia del terminal B
list-column-b-size = tamaño del terminal B
list-column-b-gender = macho o hembra, terminal B
list-column-b-form = forma del terminal B
list-column-length-mm = longitud total
list-column-turn-deg = giro
list-column-hose-made = fecha de fabricación de la manguera
list-column-assembled = fecha de ensamblaje
list-column-fitted = fecha de montaje
list-column-fitted-hours = horas al montar
list-column-removed = fecha de desmontaje
list-column-removed-hours = horas al desmontar
list-column-cause = causa del fallo
list-column-note = nota
