# The bench: what is done about a crimp, a length, a proof. `bench-<code>` says it, `bench-<code>-how` how.

# Crimp
bench-tick = Dentro: darlo por hecho
bench-tick-how = Todas las lecturas están dentro de la tolerancia, descontado el error del instrumento.
bench-read-on = Seguir midiendo
bench-read-on-how = Sobre los planos entre las estrías, cuatro direcciones en cada uno de tres puntos: tras la boca, en el centro, antes del final.
bench-enter-target = Sin valor nominal: nada con que comparar
bench-enter-target-how = Introducir diámetro de prensado y tolerancia de la tabla del proveedor para esta manguera y este terminal.
bench-finer-instrument = Tomar un instrumento más fino
bench-finer-instrument-how = El error de este consume la tolerancia, o tanto de ella que la lectura no se distingue de su límite.
bench-read-again = Volver a medir esas
bench-read-again-how = A escuadra sobre el plano, no sobre una estría ni una letra, bocas limpias, sin más fuerza que la del trinquete.
bench-press-smaller = Demasiado flojo: prensar otra vez, menor
bench-press-smaller-how = Ajustar la prensa a menor diámetro, de modo que la lectura mayor quede dentro y la menor siga dentro, prensar otra vez y medir de nuevo (práctica común; la palabra del proveedor va primero).
bench-scrap = Demasiado prensado: desechar
bench-scrap-how = Un casquillo prensado nunca se abre ni se vuelve a usar. Cortar el terminal y hacer la manguera de nuevo con terminales nuevos; mirar el ajuste de la prensa antes de la siguiente.
bench-uneven-oval = Ovalado: mirar las mordazas
bench-uneven-oval-how = Ningún ajuste único lo deja todo dentro. Una mordaza está gastada, sucia, es de otro juego o falta, o el casquillo estaba torcido. Limpiar y comparar las mordazas; este prensado es desecho salvo que el proveedor diga otra cosa.
bench-uneven-taper = Más ancho en un extremo: mirar cómo estaba el casquillo
bench-uneven-taper-how = El casquillo no estaba entero o recto entre las mordazas, o las mordazas están gastadas de un lado. Este prensado es desecho salvo que el proveedor diga otra cosa.
bench-fit-good = El instrumento sirve para esta tolerancia.
bench-fit-narrow = El instrumento deja poco de esta tolerancia; uno de { $mm } serviría.
bench-fit-too-coarse = El instrumento es demasiado basto para esta tolerancia: con él no se puede aceptar nada. Uno de { $mm } serviría.

# Finished assembly
bench-measure = Medirlo
bench-measure-how = De punto de sellado a punto de sellado con las tuercas retiradas; el giro, mirando de A hacia B con el codo de A hacia arriba.
bench-too-long = Demasiado larga
bench-too-long-how = No tiene la longitud pedida. Hacerla de nuevo, o preguntar si el sitio admite esta longitud y revisarla como tal.
bench-too-short = Demasiado corta
bench-too-short-how = No tiene la longitud pedida y tiraría de sus terminales. Hacerla de nuevo, o preguntar si el sitio admite esta longitud y revisarla como tal.
bench-turned-off = Giro equivocado
bench-turned-off-how = Los codos no están como se pidió: montada así, la manguera quedaría torsionada. Hacerla de nuevo.
bench-doubtful-finished = Demasiado cerca del límite para decidir
bench-doubtful-finished-how = Medida está dentro, pero más cerca del límite que el error del instrumento. Medir otra vez, o con uno mejor.
bench-no-tolerance = Sin tolerancia en esta práctica
bench-no-tolerance-how = La práctica seguida no da ninguna para este tamaño y longitud: acordarla con quien pidió la manguera.

# Proof
bench-proof-ok = Probada
bench-proof-ok-how = Aguantó a su presión durante su tiempo.
bench-say-rig = ¿Hay banco de pruebas?
bench-say-rig-how = Sin él la manguera consta como «no probada: sin banco», en el registro y en la etiqueta.
bench-write-pressure = Anotar la presión
bench-write-pressure-how = Lo que marcaba el manómetro mientras se mantenía.
bench-write-hold = Anotar cuánto se mantuvo
bench-write-hold-how = En segundos, desde que se alcanzó la presión.
bench-write-gauge = Anotar el manómetro
bench-write-gauge-how = Su número o marca: una prueba sin manómetro no prueba nada.
bench-proof-low = Por debajo de la presión de prueba
bench-proof-low-how = Descargarla, subir luego a la presión de prueba y mantenerla ahí.
bench-proof-high = Muy por encima de la presión de prueba
bench-proof-high-how = Al doble de la presión de prueba una manguera puede reventar. Volver a leer la unidad del manómetro. Si de verdad subió tanto, la manguera es desecho.
bench-proof-short = Se mantuvo poco tiempo
bench-proof-short-how = Mantenerla otra vez todo el tiempo.
bench-proof-failed = No superada: desechar
bench-proof-failed-how = Queda en el registro como no superada y nunca se etiqueta ni se monta. Descargar toda la presión, cortar la manguera de lado a lado para que nadie la use, averiguar por qué antes de hacer la siguiente.
bench-proof-no-rig = No probada: sin banco
bench-proof-no-rig-how = Así consta en el registro y en la etiqueta.
bench-gauge-undated = No se sabe cuándo se calibró el manómetro
bench-gauge-undated-how = Anotar la fecha de su etiqueta o certificado; hasta entonces la prueba se apoya en un manómetro del que nadie responde.
bench-gauge-overdue = La calibración del manómetro ha caducado
bench-gauge-overdue-how = Hacerlo calibrar; esta prueba se apoya en un manómetro que puede haberse desviado.

# Why it may not be tagged
bench-why-crimp-a = El prensado en A no está medido y dentro.
bench-why-crimp-b = El prensado en B no está medido y dentro.
bench-why-length = La longitud acabada está fuera de tolerancia.
bench-why-turn = El giro está fuera de tolerancia.
bench-why-proof-open = La prueba ni está hecha ni consta como imposible.
bench-why-proof-failed = No superó la prueba: es desecho.

# Cut-off of a new end
bench-cutoff-new-end = Tomar un terminal nuevo de la misma familia, tamaño, forma y serie; nunca uno usado.
bench-cutoff-find-stop = Buscar el tope de manguera: el resalte interior donde apoya la cara cortada de la manguera. Un alambre por el alojamiento lo encuentra.
bench-cutoff-find-seal = Buscar el punto de sellado: punta del cono, cara plana, cara de la cabeza de una brida, tuerca retirada; en un codo, el centro de la cara de sellado, según el eje de la manguera.
bench-cutoff-read = Medir de uno a otro según el eje, tres veces, tomando el terminal de nuevo cada vez.
bench-cutoff-repeat = Medirlo otra vez
bench-cutoff-repeat-how = Tres lecturas, tomando el terminal de nuevo cada vez, muestran si coinciden.
bench-cutoff-coarse = Demasiado basto para un descuento
bench-cutoff-coarse-how = El instrumento es más incierto que los 2 mm que puede desviarse un corte. Tomar un pie de rey.
bench-cutoff-apart = Las lecturas no coinciden
bench-cutoff-apart-how = Distan más de 1 mm. Buscar otra vez el tope de manguera y el punto de sellado y medir de nuevo.

# What is checked, and the press
bench-length = Longitud acabada
bench-turn = Giro
bench-proof = Prueba
press-none = No consta ningún prensado con juego de mordazas, nominal y lecturas.
press-few = Menos de 8: muy pocos para fijar límites.
press-limits = centro { $centre }, límites { $lower } a { $upper } desde el nominal
press-outside = fuera de los límites
press-jump = un salto desde el anterior
press-two-of-three = dos de tres más allá de dos desviaciones
press-four-of-five = cuatro de cinco más allá de una desviación
press-eight-on-one-side = ocho seguidos del mismo lado
press-left-out = { $count ->
    [one] 1 terminal sin juego de mordazas, nominal o lecturas no está en ninguno.
   *[other] { $count } terminales sin juego de mordazas, nominal o lecturas no están en ninguno.
}
