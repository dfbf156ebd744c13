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
