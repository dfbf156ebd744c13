# The build sheet: what is done at each step, and how to get what is missing.

# Before anything is loosened
step-plan = Saber el fluido, el camino al hospital y lo que cuelga encima.
step-lower-load = Bajar o apuntalar la carga.
step-lock-out = Parar el motor, bloquear el arranque, guardar la llave.
step-release-pressure = Descargar la presión, vaciar los acumuladores, comprobar que no queda ninguna.
step-mark-lines = Fotografiar el recorrido y marcar las líneas gemelas.
step-loosen = Aflojar despacio, recoger el aceite, tapar los puertos.
step-if-injected = Si pudo entrar fluido bajo la piel: al hospital de inmediato.

# Making
step-fetch-parts = Traer manguera, terminales, casquillos y fundas; todo nuevo.
step-cut = Cortar a escuadra a la longitud de corte.
step-clean-bore = Limpiar el interior.
step-skive = Pelar el extremo como diga el proveedor.
step-mark-insertion = Marcar la profundidad de inserción en la cubierta.
step-push-on = Poner el casquillo, lubricar como diga el proveedor, meter el terminal hasta la marca.
step-crimp = Prensar con el juego de mordazas del proveedor al diámetro del proveedor.
step-fine-instrument = Tomar un micrómetro: un pie de rey que puede errar 0,1 mm es demasiado basto para esta tolerancia de prensado.
step-measure-crimp = Medir el prensado sobre los planos entre las estrías, en varias direcciones, en tres puntos a lo largo del casquillo.
step-sleeves = Meter ahora fundas y protecciones, antes del segundo terminal.
step-set-turn = Fijar el giro: de A hacia B con el codo de A hacia arriba, en sentido horario hasta el codo de B.
step-mark-not-moved = Mirar: las marcas de inserción no se han movido.
step-bore-gauge = Pasar el calibre de paso por ambos terminales.
step-nuts-free = Girar las tuercas: corren libres.
step-measure-length = Medir la longitud acabada de punto de sellado a punto de sellado.
step-measure-turn = Medir el giro.
step-flush-and-cap = Enjuagarla en ambos sentidos y tapar los dos extremos.

# Proving
step-connect-rig = Conectar el banco con racores sanos y de presión suficiente; sujetar ambos extremos.
step-bleed-rig = Purgar todo el aire.
step-close-guard = Cerrar el resguardo y apartarse.
step-raise-pressure = Subir despacio hasta la presión de prueba.
step-hold-pressure = Mantenerla; leer el manómetro desde fuera.
step-release-and-look = Descargar toda la presión, y luego buscar fugas y movimiento.
step-no-rig = Sin banco: escribir «no probada: sin banco» en el registro y la etiqueta.

# Marking
step-mark-ferrule = Marcar el casquillo de forma permanente: ensamblador, presión de trabajo, año y mes.
step-label = Poner la etiqueta.

# Fitting
step-match-lines = Casar las líneas con sus marcas.
step-new-seals = Limpiar los asientos y poner juntas nuevas.
step-tighten = Apretar al valor del fabricante, con una segunda llave contra la torsión.
step-tighten-flange = Apretar los tornillos de la brida en cruz al valor del fabricante.
step-lay-straight = Tenderla sin torsión, línea de marcado recta; reponer abrazaderas, protecciones y fundas.
step-bleed-and-fill = Purgar, rellenar, arrancar sin carga.
step-first-run = Hacerla funcionar sin nadie cerca.
step-leak-check = Buscar fugas con un cartón, nunca con la mano.
step-clean-up = Limpiar el aceite.
step-log-hours = Anotar las horas de la máquina.

# What only the user's own supplier can give
missing-cutoff = Descuento: de la tabla del proveedor, o medir un terminal nuevo del punto de sellado al tope de manguera.
missing-length-tolerance = Tolerancia de longitud: la práctica no da ninguna para este tamaño y longitud; acordarla.
missing-insertion = Profundidad de inserción: de la tabla del proveedor, o medir la profundidad del casquillo.
missing-skive = Pelado: de la tabla del proveedor, si se quita cubierta o tubo interior y cuánto.
missing-ferrule = Casquillo: el que el proveedor autoriza para esta manguera y este terminal.
missing-lubricant = Lubricante: el que el proveedor permite para esta manguera.
missing-die-set = Juego de mordazas: de la tabla de prensado del proveedor para la prensa propia.
missing-crimp-diameter = Diámetro de prensado: de la tabla de prensado del proveedor, nunca de la de otro fabricante.
missing-crimp-tolerance = Tolerancia de prensado: de la tabla de prensado del proveedor.
missing-torque = Par de apriete: del manual de la máquina o del proveedor; las tablas no tienen ninguno para este terminal.

# Qué tan limpia debe estar
asks-clean-after-cutting = Tras el corte: lavarla o disparar un proyectil limpiador, y taparla.
asks-cleanliness-general = Para sistemas industriales en general: { $code } { $asks }.
asks-cleanliness-servo = Para sistemas con servoválvulas o válvulas proporcionales: { $code } { $asks }.
asks-cleanliness-sampling = Cómo se muestrea la limpieza: { $asks }.
