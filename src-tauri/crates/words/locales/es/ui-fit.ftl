# Words of fitting: the old hose off, the new one on, and both on the record.
fit-title = Montar la manguera
fit-which-machine = ¿En qué máquina va?
fit-which-place = ¿En qué sitio de { $machine }?
fit-hose-sits = hay una manguera: se desmonta
fit-no-hose = ahí no hay manguera
fit-other-machine = Otra máquina
fit-hand-over = No se monta ahora
fit-hand-over-note = entregarla; queda en el registro
fit-not-read = SIN LEER
fit-not-written = SIN GUARDAR
fit-tag-first = una manguera se monta con su etiqueta
fit-tighten = Cuánto apretar
fit-tighten-how = La cifra del fabricante va primero. Si no, tomar la única cifra cuya condición se cumpla; nunca mezclar tablas.
fit-sources = De dónde son las cifras
fit-sources-fold = Plegar las fuentes
fit-take-figure = tomar la cifra cuya condición se cumpla
fit-no-figure = sin cifra en las tablas: solo la del fabricante
fit-no-figure-taken = sin cifra tomada: solo por la del fabricante
fit-flats = { $count ->
    [one] { $flats } cara
   *[other] { $flats } caras
}
fit-off = { $code } se desmonta
fit-cause = Por qué falló
fit-not-failed = No había fallado
fit-note = Qué se vio
fit-say-cause = Decir por qué falló la vieja
fit-say-cause-then = o que no había fallado
fit-hours = Horas de la máquina
fit-hours-how = Como están en el contador.
fit-hours-last = Como están en el contador. Antes: { $last }.
fit-hours-doubt = ¿{ $hours }?
fit-hours-again = Leer el contador otra vez
fit-hours-right = { $hours } está bien: guardarlo
fit-enter-hours = Introducir las horas de la máquina
fit-date = Montada el
fit-refused = NO MONTAR AÚN
fit-ask = Introducir lo que pide el sitio
fit-ask-then = presión y fluido de la línea, luego sigue el montaje
fit-correct = Corregir antes el registro
fit-correct-then = la manguera cambió después de registrarla
fit-crimp-outside-then = no se monta sin medirla o prensarla otra vez
fit-finish = Terminar
fit-finish-then = vieja desmontada, nueva montada, todo registrado
