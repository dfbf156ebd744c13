# Words of the tag and its label.
tag-title = Etiquetar la manguera
tag-text = Qué dice la etiqueta
tag-code = Código de la etiqueta
tag-label-name = Etiqueta de { $code } como se imprime
tag-full-text = El código lleva el texto entero: cualquier teléfono lo lee sin este programa.
tag-code-alone-short = El código lleva solo el código propio de la etiqueta: las palabras al lado dicen qué es la manguera.
tag-code-only = Solo código: no cabe qué es la manguera, ni en el código ni en palabras. Depende solo del registro.
tag-left-off = { $count ->
    [one] { $count } dato no cupo en palabras.
   *[other] { $count } datos no cupieron en palabras.
}
tag-no-room = NO CABE
tag-where-flag = Una bandera alrededor de la manguera, a { $distance } del casquillo, con la cara donde se vea con la máquina parada.
tag-where-wrap = Alrededor de la manguera, a { $distance } del casquillo, con el código donde se vea con la máquina parada.
tag-where-plate = Atada a { $distance } del casquillo, donde se vea con la máquina parada y no roce con nada.
tag-by-hand = Escribirla a mano
tag-by-hand-note = aquí no hay impresora
tag-by-hand-how = En una placa de metal o plástico, con punzón o rotulador de pintura: el código, la presión de trabajo, el año y el mes. El resto está en el registro.
tag-save-png = Guardar como imagen
tag-save-pdf = Guardar como PDF
tag-share = Compartir la imagen
tag-save-and-keep = Guardar etiqueta y manguera
tag-keep = Guardar la manguera
tag-keep-then = en el registro, luego montarla
tag-correct = Guardar etiqueta nueva y corregir registro
tag-correct-then = se cambió después de registrarla: poner la etiqueta nueva, quitar la vieja
tag-again = Imprimir otra vez la etiqueta
tag-again-how = Una reimpresión: el mismo código, para la misma manguera. Antes se quita la etiqueta gastada.
tag-again-note = con el código que tiene
tag-not-saved = SIN GUARDAR
tag-on-record = está en el registro
tag-to-fit = Montar la manguera
tag-crimp-outside = El prensado { $end } está fuera
tag-crimp-outside-then = sin etiqueta hasta medirlo o prensarlo otra vez
tag-bench-open = Terminarla en Hacer
tag-prove = Decir si se probó
tag-prove-then = la etiqueta lo dice de todos modos
tag-unfinished = SIN ACABAR
tag-unfinished-how = Todavía no hay etiqueta. Queda abierto:
tag-source-open = Nadie dijo de quién es el diámetro de prensado en { $end }.
tag-not-kept = SIN GUARDAR
tag-first = De este registro aún no se imprimió ninguna.
tag-by-hand-then = ninguna de las etiquetas propias tiene espacio
tag-stocks = Etiquetas propias
tag-own-stocks = Cambiar las etiquetas propias
tag-would-do = Una de las propias serviría:
tag-none-would-do = Ninguna de las etiquetas propias serviría. Guardar una mayor en Furgón, o escribir el código a mano.
tag-take-stock = Tomar { $name }
tag-take-stock-then = la etiqueta propia donde cabe
tag-curve = Alrededor de una manguera de { $od } ({ $from ->
    [given] medida
    [reckoned] calculada de la mayor de las tablas
   *[tables] de las tablas
}) una cámara ve de una vez un código de { $seen }. Este mide { $code } de ancho, sus palabras van { $direction ->
    [around] alrededor de la manguera
   *[along] a lo largo de la manguera
}.
tag-in-one-look = { $seen } de una vez
tag-module = Código de { $side } de ancho, { $dots } puntos de impresora por módulo ({ $module }); una cámara lo lee a { $from } y más cerca.
tag-sealed = Sellada por la flota propia.
tag-over-cover = Sobre la cubierta
tag-over-cover-how = Medir la manguera de lado a lado, sobre la cubierta, donde va la etiqueta.
tag-print = Imprimir
tag-print-label = Imprimir la etiqueta
tag-print-label-then = la ventana de impresión del sistema
tag-save-label = Guardar la etiqueta
tag-save-label-then = un PDF del tamaño de la etiqueta

## Stocks of labels
label-stock = { $width } × { $height }, { $form }
label-form-flag = bandera
label-form-wrap = envolvente
label-form-plate = placa
label-material-polyester = poliéster
label-material-polypropylene = polipropileno
label-material-vinyl = vinilo
label-material-paper = papel
label-material-metal = metal
label-material-other = otro

## Labels of many hoses
labels-title = Etiquetas
batch-count = Etiquetas
batch-due = Lo que vence
batch-machine-labels = Etiquetas de esta máquina
batch-machine-labels-note = de todo lo montado en ella
batch-due-labels = Etiquetas de lo que vence
batch-due-labels-note = un archivo
batch-within = { $days ->
    [0] pasado el límite
   *[other] en { $shown } días
}
batch-paper = En
batch-one-each = impresora de etiquetas, de una en una
batch-working = Haciendo las etiquetas.
batch-list = Mangueras
batch-reprint = reimpresa
batch-diameter = { $from ->
    [reckoned] diámetro sin medir, calculado del mayor de las tablas
   *[tables] diámetro sin medir, el menor de las tablas
}
batch-code-alone = el código lleva solo su nombre
batch-left-word = FUERA
batch-left = { $count ->
    [one] { $shown } manguera se queda sin etiqueta de este tipo; la lista dice por qué.
   *[other] { $shown } mangueras se quedan sin etiqueta de este tipo; la lista dice por qué.
}
batch-save = { $count ->
    [one] Guardar { $shown } etiqueta
   *[other] Guardar { $shown } etiquetas
}
batch-save-then = { $count ->
    [one] PDF, { $shown } página
   *[other] PDF, { $shown } páginas
}
