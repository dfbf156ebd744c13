# The build sheet as a paper.
sheet-title = Hoja de fabricación
sheet-parts = Piezas
sheet-hose = Manguera
sheet-end = Terminal { $end }
sheet-end-a = Terminal A
sheet-end-b = Terminal B
sheet-adapter = Adaptador
sheet-drop = altura de codo { $drop }
sheet-lengths = Longitudes, giro y prueba
sheet-cut-length = Cortar la manguera a
sheet-aim = Precisión del corte
sheet-cutoff = Descuento { $end } (propio)
sheet-overall = Longitud total
sheet-tolerance = Tolerancia de la longitud total
sheet-turn = Giro
sheet-turn-how = Mirar a lo largo de la manguera de A hacia B con el codo de A hacia arriba; el ángulo va en sentido horario hasta el codo de B.
sheet-rating = Presión de trabajo del conjunto
sheet-proof = Prueba de presión
sheet-proof-at = { $pressure }, mantenida de { $from } a { $to } s, aceite o agua tras un resguardo, nunca aire
sheet-settings = Ajustes (propios, del proveedor)
sheet-insertion = Profundidad de inserción
sheet-ferrule = Casquillo
sheet-lubricant = Lubricante
sheet-die-set = Juego de mordazas
sheet-crimp = Diámetro de prensado
sheet-crimp-tolerance = Tolerancia de prensado
sheet-settings-source = De
sheet-not-known = desconocido
sheet-missing = Conseguir antes de cortar la manguera
sheet-cautions = Precauciones de la revisión
sheet-steps = Pasos
sheet-cleanliness = Limpieza: la acordada con el dueño de la máquina, o si no
sheet-tighten = Apriete, de las tablas
sheet-tighten-end = Apriete del terminal { $end }
sheet-tighten-how = La cifra del fabricante va primero. Cada fila de abajo vale solo bajo su propia condición: tomar la que corresponda, y nunca un intervalo ni una media de filas. Si ninguna corresponde, preguntar al fabricante.
sheet-flats = { $count ->
    [one] { $figure } cara de 60°
   *[other] { $figure } caras de 60°
}
sheet-column-value = Valor
sheet-column-condition = Vale para
sheet-column-source = Fuente
sheet-first = Antes de nada
sheet-maker-first = Las instrucciones de los fabricantes de manguera, terminales, prensa y máquina, los reglamentos locales y la práctica autorizada van por delante de esta hoja.
sheet-footer = { $program }, tablas { $catalogue }
