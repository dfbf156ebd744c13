# Words that stand on the parts of the screens themselves.

## Title block and ways about
sun-toggle = Vista de sol: negro sobre blanco, sin color
chain-name = Pasos del trabajo
chain-done = hecho
bar-name = Secciones

## Keypad
keypad-name = Teclado
keypad-rubout = Borrar
keypad-unit = Unidad
keypad-point = Signo decimal
keypad-plus = en +
keypad-minus = Cambiar signo
keypad-cant = no se sabe
unit-in = pulg
unit-mm = mm
unit-m = m
unit-ft = ft
unit-bar = bar
unit-psi = psi
unit-c = °C
unit-f = °F
unit-l-min = l/min
unit-gpm = gpm

## Letters
letters-name = Letras
letters-space = espacio
letters-worn = Una letra borrada
letters-gone = hueco
letters-gone-name = Cualquier número de letras que faltan
code-so-far = Código hasta ahora: { $code }
code-empty = Aún ninguna letra del código

## Candidates
ruler-name = Candidatos en una regla
ruler-none = ninguno de estos
ruler-no-band = sin valor en tabla
lookalike-title = Parecido: { $name }

## Findings
finding-source = { $source } · { $basis }
finding-limit-from = Límite de { $source }
basis-published-means = está en la fuente nombrada y se leyó ahí
basis-derived-means = calculado con una fórmula publicada
basis-reference-library-means = calculado por la biblioteca nombrada
basis-common-practice-means = regla del oficio sin fuente única
basis-memory-means = de memoria y aún sin contrastar con su fuente
basis-lower-of-two-means = dos datos impresos difieren; vale el menor
basis-bounded-means = acotado con los datos impresos de los tamaños vecinos
basis-proxy-means = otro terminal con la misma rosca; nunca basta para un apto
basis-none-means = se detiene hasta introducir el dato del proveedor
basis-yours-means = introducido por quien usa el programa

## Ratings and service
links-name = Presiones admisibles
link-a = A
link-hose = Manguera
link-b = B
link-adapter = Adaptador
link-weakest = lo más débil
link-unknown = desconocido
service-name = Servicio

## Label
label-true-size = tamaño real
label-not-true-size = menor que el tamaño real
label-set-scale = fijar escala con una tarjeta

## What a line does
line-pressure = Presión
line-return = Retorno
line-suction = Aspiración
line-case-drain = Drenaje
line-pilot = Pilotaje
line-cylinder = Cilindro

## What a person must see
said-more = { $count } más por ver

## Names and signatures
parts-name-erased = nombre borrado
signature-drawn = Firma, como se dibujó
signature-open = Firmar aquí, sobre la línea
signature-back = Retirar el último trazo
signature-clear = Empezar de nuevo
label-about-true-size = casi a tamaño real
label-size-and-height = { $size }, { $height } de alto
scale-context = Esta pantalla
scale-title = Ajustar la escala
scale-how = Poner una tarjeta bancaria en vertical sobre el dibujo, con el lado corto arriba: { $side }. Hacer el dibujo tan ancho como la tarjeta.
scale-card = tarjeta
scale-width = Ancho de la tarjeta
scale-narrower = Más estrecho
scale-wider = Más ancho
scale-keep = Guardar la escala
scale-keep-then = así las etiquetas se ven a tamaño real
not-settled-name = Sin resolver
not-settled = { $count ->
    [one] { $shown } sin resolver
   *[other] { $shown } sin resolver
  }
not-settled-note = los dispositivos lo contaron de dos maneras; hasta que una persona lo resuelva, se muestra lo más reciente

take-back = Deshacerlo
take-back-not = Dejarlo como está
