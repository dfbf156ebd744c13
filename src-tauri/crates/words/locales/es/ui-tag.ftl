# Words of the tag and its label.
tag-title = Etiquetar la manguera
tag-text = Qué dice la etiqueta
tag-code = Código de la etiqueta
tag-label-name = Etiqueta de { $code } como se imprime
tag-size = { $width } × { $height }
tag-full-text = El código lleva el texto entero: cualquier teléfono lo lee sin este programa.
tag-code-alone-short = Muy pequeña para el texto entero: el código lleva el nombre de la etiqueta, las palabras están al lado.
tag-left-off = { $count ->
    [one] { $count } dato no cupo en palabras.
   *[other] { $count } datos no cupieron en palabras.
}
tag-no-room = NO CABE
tag-where = A lo largo de la manguera, a { $distance } del casquillo, donde se vea con la máquina parada.
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
tag-not-saved = SIN GUARDAR
tag-on-record = está en el registro
tag-to-fit = Montar la manguera
tag-crimp-outside = El prensado { $end } está fuera
tag-crimp-outside-then = sin etiqueta hasta medirlo o prensarlo otra vez
tag-bench-open = Terminarla en Hacer
tag-prove = Decir si se probó
tag-prove-then = la etiqueta lo dice de todos modos
tag-not-kept = SIN GUARDAR
