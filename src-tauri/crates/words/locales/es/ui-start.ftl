# Words of the start: no job is open.
start-title = Sin trabajo
start-register-empty = El registro está vacío
start-register = { $count ->
    [one] Una máquina registrada
   *[other] { $count } máquinas registradas
 }
start-nothing = Nada dibujado aún.
start-no-job = Ninguna manguera en mano.
start-text = Empezar con lo que haya a mano: la etiqueta vieja, la impresión o un pie de rey. Todo queda en este teléfono y funciona sin cobertura.
start-due = Por vencer o vencidas: { $count }.
start-drawing = Una manguera aún sin dibujar: ambos terminales, manguera y longitud abiertos
start-scan = Escanear o teclear etiqueta
start-scan-then = o cualquiera que quede en la manguera
start-print = Leer la impresión
start-print-note = línea de marcado, aunque sea en parte
start-measure = Medir
start-measure-note = pie de rey, peine de roscas, cinta
start-machine = Empezar por una máquina
start-machine-note = el sitio dice qué había
start-drafts = { $count ->
    [0] Ningún trabajo pendiente
    [one] Un trabajo pendiente
   *[other] { $count } trabajos pendientes
 }
start-draft-no-place = Manguera en mano
start-draft-kept = guardado { $when }
start-give-up = Abandonar
start-give-up-name = Abandonar el trabajo: { $where }
start-given-up = Abandonado. Sus lecturas se van al dejar esta página.
start-take-back-name = Deshacerlo: trabajo { $where }
start-problem = El registro no se puede leer.
