# The register.
fault-unreadable = El evento { $event } no se puede leer.
fault-changed = El evento { $event } no es lo que se escribió: algo lo cambió.
fault-broken-chain = El evento { $event } no continúa el anterior.
fault-tables = Las tablas no son lo que da el diario: reconstruirlas.
fault-file = El archivo está dañado: { $cause }
due-service = Sustituir manguera { $code }: { $machine }, { $place }
due-storage = Almacenada bastante tiempo: manguera { $code }
due-inspection = Inspeccionar manguera { $code }: { $machine }, { $place }

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
