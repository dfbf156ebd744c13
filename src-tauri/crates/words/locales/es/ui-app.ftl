# Words of the frame around every screen, and of the first run.

## Steps and places
step-find = Medir
step-check = Revisar
step-make = Hacer
step-tag = Etiqueta
step-fit = Montar
place-job = Trabajo
place-machines = Máquinas
place-van = Furgón
place-due = Plazos

## Title block
title-job = Trabajo
title-none = ninguno
title-leave = Dejar
title-leave-note = el trabajo sigue entre los pendientes
title-this-phone = Este dispositivo
title-first = Primera manguera
title-kept = Guardado
title-keeping = Guardando
title-not-kept = Sin guardar
