# The register.
fault-unreadable = El evento { $event } no se puede leer.
fault-changed = El evento { $event } no es lo que se escribió: algo lo cambió.
fault-broken-chain = El evento { $event } no continúa el anterior.
fault-tables = Las tablas no son lo que da el diario: reconstruirlas.
fault-file = El archivo está dañado: { $cause }
due-service = Sustituir manguera { $code }: { $machine }, { $place }
due-storage = Almacenada bastante tiempo: manguera { $code }
due-inspection = Inspeccionar manguera { $code }: { $machine }, { $place }
due-overdue = Vencido desde { $day }: { $what }

# How long hoses last here.
lives-heading = Cuánto duran aquí las mangueras, en años desde su montaje, a fecha de { $on }. Una manguera que se desmontó entera o sigue montada cuenta hasta donde se la observó.
lives-none = Ninguna manguera de aquí tiene fecha de montaje conocida.
lives-not-known = No consta qué es
lives-left-out = { $count ->
    [one] 1 estancia queda
   *[other] { $count } estancias quedan
} fuera: no se sabe cuándo se montó esa manguera, o sus fechas se contradicen.
lives-line-pressure = Líneas de presión
lives-line-return = Líneas de retorno
lives-line-suction = Líneas de aspiración
lives-line-case-drain = Líneas de drenaje
lives-line-pilot = Líneas de pilotaje
lives-line-cylinder = Líneas de cilindro
lives-load-half = Se les pide hasta la mitad de lo que admiten
lives-load-three-quarters = Se les pide de la mitad a tres cuartos de lo que admiten
lives-load-full = Se les pide más de tres cuartos de lo que admiten
lives-load-above = Se les pide más de lo que admiten
lives-ended-before = { $count ->
    [one] 1 estancia
   *[other] { $count } estancias
} de antes de ese día, sin contar.
lives-to-tell = Con { $more } fallos más, { $all } en total, se sabría la forma hasta la mitad más o menos: si estas mangueras se desgastan.
lives-to-tell-years = Al ritmo de hasta ahora son { $years } años.
lives-expected = Próximo trimestre: se esperan { $failures } fallos ({ $low } a { $high }).
lives-expected-all = Todas juntas, próximo trimestre: se esperan { $failures } fallos ({ $low } a { $high }, 95 %).
lives-not-expected = Mangueras montadas fuera de lo esperado: { $count }; de las suyas han fallado muy pocas.
lives-least-cost = Lo que menos cuesta es cambiarlas a los { $age } años ({ $low } a { $high }), si un fallo cuesta como { $ratio } cambios: { $part } % de esperar los fallos. El límite del fabricante va primero.
lives-waiting = esperar
lives-waiting-pays = Ninguna edad de cambio cuesta menos que esperar, si un fallo cuesta como { $ratio } cambios: el historial no muestra que se desgasten. Aun así, el límite del fabricante va primero.
lives-places = Sitios con más fallos de los esperados, de { $count } mirados:
lives-place = Sitio
lives-place-failures = Fallos
lives-place-times = Múltiplo
lives-place-verdict = Juicio
lives-place-seen = { $seen } por { $expected }
lives-place-stands-out = destaca
lives-place-chance = puede ser azar
lives-few = Muy poco para decir
lives-title = Cuánto duran aquí las mangueras
lives-years = años
lives-next = Próximo trimestre, fallos esperados
lives-least = Edad de menor coste en años, si un fallo cuesta como { $ratio } cambios
lives-limits = Línea gruesa: la parte que aún aguanta. Líneas discontinuas: sus límites del 95 %, cada uno solo para su año. Línea fina: ajuste de Weibull. Describe estas máquinas y no promete nada de la próxima manguera; el límite del fabricante y el orientativo van primero. Entre muchos sitios, algunos son malos solo por azar.
sheet-asks-days = Diga para { $column } si va primero el día o el mes: sus fechas se leen de las dos maneras.
sheet-asks-unit = Diga la unidad de { $column }: no la dicen ni el título ni las celdas.

# Lo que un archivo, un disco u otro programa le hace al registro.
register-is-none = { $path } no es un registro; elija el archivo de un registro, o un nombre nuevo para empezar uno
register-is-newer = { $path } fue escrito por un programa más nuevo (esquema { $found }, este programa conoce { $known }) y quedó como está: actualice este programa
register-is-in-use = otro programa está usando el registro; ciérrelo o espere a que termine, e inténtelo de nuevo
register-disk-full = el disco está lleno y no se escribió nada; haga sitio e inténtelo de nuevo
register-disk-fails = el disco falla al leer o escribir el registro; no se escribió nada más: lleve la última copia a otro dispositivo y restáurela allí
register-read-only = no se puede escribir en el registro; revise los permisos del archivo y de su carpeta
register-can-not-open = { $path } no se puede abrir; compruebe que su carpeta existe y que se puede escribir en ella
register-keys-unusable = el archivo de claves { $path } no se puede usar ({ $cause }); revise sus permisos, o quítelo y únase de nuevo a la flota
register-damaged = el archivo del registro está dañado y quedó como está; restaure la última copia: en su sitio en la aplicación (Furgón, Copia de seguridad), con un nombre nuevo en la línea de comandos
register-exists = { $path } ya está ahí y no se sobrescribe; dé un nombre nuevo
register-log-left = { $path } contiene asientos de un registro que estaba antes aquí o está en uso; cierre lo que lo use y aparte el archivo, o dé un nombre nuevo
register-backup-damaged = la copia { $path } no pasa la verificación ({ $faults } fallos) y quedó como está: restaure una más antigua
backups-no-such = no hay ninguna copia «{ $name }» junto a este registro; elija una de la lista
backups-none = Todavía no hay ninguna copia junto a este registro.
backups-folder = En { $folder }, cada una probada restaurándola:
backups-late = La más reciente tiene tres días o más, o es del futuro: mire si el disco está lleno y el reloj va bien, y verifique el registro.
register-reader = este dispositivo es lector en su flota y no escribe nada; un planificador de la flota puede hacerlo técnico
register-planners-only = eso solo lo hace un planificador de la flota; hágase en el dispositivo de un planificador
register-device-gone = este dispositivo está dado de baja en su flota: lo que escribe ya no cuenta; haga una copia y restáurela, que sigue como dispositivo nuevo, y que se admita este
register-senior = ese dispositivo era planificador antes que este y solo lo juzgan los anteriores a él; si se perdió el dispositivo del fundador, empiece la flota de nuevo
register-open-fleet = esta flota está abierta: aún no tiene fundador cuya palabra sobre sus miembros cuente; fúndela primero
register-word-stays = una palabra sobre quién pertenece a la flota no se tacha; dé otro papel al dispositivo, admítalo o delo de baja
