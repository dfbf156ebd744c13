# Words of flow and surge: what the oil does in the hose.

flowing-title = ¿Qué hace el aceite?
flowing-not-reckoned = SIN CALCULAR
flowing-estimate-why = Aceite limpio en un interior liso y redondo; no incluye válvulas ni otras líneas.
flowing-within = El aceite va tan rápido como es usual en una línea así.
flowing-too-fast = Más rápido de lo usual en una línea así: se calienta y pierde presión.
flowing-usual-unknown = No se sabe qué es usual hasta decir qué hace la línea.
flowing-peak-unknown = No se sabe a cuánto llega el pico hasta conocer la presión de trabajo.
flowing-brings = deja el aceite en { $speed }
flowing-cure = Tomar un tamaño mayor.
flowing-usual = usual { $low } a { $high }
flowing-drawing = El interior en sección: el aceite va a { $speed }
flowing-loses = pierde { $drop }
flowing-said = En qué se basa
flowing-enter = Introducir: { $field }

flowing-drop = presión perdida
flowing-cold-drop = perdida en lo más frío
flowing-reynolds = número de Reynolds
flowing-regime-laminar = laminar
flowing-regime-transitional = entre laminar y turbulento
flowing-regime-turbulent = turbulento
flowing-viscosity = viscosidad
flowing-viscosity-at = { $value } a { $heat }

flowing-sizes = Tamaños suficientes, pasados por toda la revisión

flowing-surge = Pico de presión al cerrar una válvula
flowing-surge-drawing = La presión al cerrar la válvula: sube { $rise }
flowing-rise = se suma
flowing-peak = pico
flowing-wave = onda de presión
flowing-critical = ida y vuelta
flowing-critical-within = { $time }: tan malo como un cierre de golpe
flowing-critical-slower = { $time }: la válvula es más lenta
flowing-use-surge = Usar este pico
flowing-use-surge-then = { $peak } va a la revisión, como estimación

flowing-length = longitud de la línea
flowing-length-how = Toda la línea si es más que esta manguera: de la válvula que cierra hasta donde la línea se ensancha.
flowing-elbows-45 = codos 45°
flowing-elbows-90 = codos 90°
flowing-elbows-how = En la línea, aparte de los terminales de esta manguera.
flowing-vg = grado de viscosidad
flowing-vg-how = ISO VG de la placa de la máquina o del bidón, como 46.
flowing-closing = la válvula cierra en
flowing-closing-how = En milisegundos, de la hoja de datos de la válvula.
