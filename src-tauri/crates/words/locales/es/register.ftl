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
