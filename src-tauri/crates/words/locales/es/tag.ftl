# What is said of a tag that was read. Each standing and each finding has words of its own.
tag-standing-own = Una etiqueta de { $fleet }, la flota propia. Su sello es auténtico.
tag-standing-partner = Una etiqueta de { $fleet }, flota de un socio. Su sello es auténtico.
tag-standing-foreign = Una etiqueta de una flota que este dispositivo no conoce ({ $fleet }). Su sello no se puede comprobar.
tag-standing-unsealed = Una etiqueta de manguera sin sello: nadie dice quién la hizo.
tag-standing-code-alone = Solo el código de una etiqueta: no dice nada de quién la hizo ni de la manguera.
tag-standing-altered = Una etiqueta de manguera que no está como se hizo. Nada de lo que dice vale.
tag-standing-newer = Una etiqueta de manguera de un programa más nuevo que este.

tag-seal-does-not-fit = el sello no corresponde a lo que hay encima
tag-is-a-fleets-key = Es la clave de una flota, no una etiqueta de manguera. No se muestra ni se guarda. Unirse con ella a la flota en la pantalla Furgón.

tag-found-altered = Dañada o alterada: { $problem }.
tag-found-altered-cure = Escanearla otra vez, limpia y de frente. Si sigue así, no fiarse de nada de lo que dice: medir la manguera y darle una etiqueta nueva.
tag-found-withdrawn = Esta etiqueta se anuló: { $reason }.
tag-found-withdrawn-cure = No montar esta manguera. Averiguar qué es y darle una etiqueta nueva, o desecharla.
tag-found-failed-proof = La manguera de este código no superó su prueba: es desecho.
tag-found-failed-proof-cure = No montarla. Cortarla de lado a lado y hacerla de nuevo.
tag-found-undone = El registro de esta manguera se anuló: nada registrado respalda su etiqueta.
tag-found-undone-cure = No montarla. Averiguar si se hizo; después hacerla y registrarla de nuevo con otro código.
tag-found-failed-in-use = La manguera de este código falló y se desmontó ({ $day }): { $cause }.
tag-found-failed-in-use-cure = No volver a montarla. Cortarla en dos y anular su etiqueta.
tag-found-contradicted = Dos registros de esta manguera se contradicen y nadie ha decidido cuál vale.
tag-found-contradicted-cure = Decidirlo en la pantalla Furgón antes de fiarse de la manguera o de la etiqueta.
tag-found-other-seal = La manguera de este código la hizo la flota propia, y esta etiqueta lleva el sello de otra.
tag-found-other-seal-cure = Se copió o se falsificó, o la flota tiene desde entonces otra clave. Comparar la manguera con el registro e imprimir de nuevo su etiqueta.
tag-found-higher-pressure = Según su etiqueta soporta más que según el registro.
tag-found-higher-pressure-cure = Vale el registro. Quitar la etiqueta e imprimirla de nuevo.
tag-found-other-figures = Presión, fluido, exigencias, línea o fecha no son en ella los del registro.
tag-found-other-figures-cure = Abrir el registro: ese vale. Si es correcto, imprimir de nuevo la etiqueta.
tag-found-taken-off = La manguera de este código se desmontó de una máquina ({ $day }).
tag-found-taken-off-cure = Mirar su edad y por qué se desmontó antes de volver a montarla.
tag-day-not-known = un día que no se conoce
tag-taken-in-left-out = No se ha tomado, porque nadie conocido aquí responde de ello: { $lines }.
tag-found-fitted-elsewhere = En el registro este código está montado en { $at }, no aquí.
tag-found-fitted-elsewhere-cure = Puede que dos mangueras lleven un mismo código, o que se cambiara de sitio sin registrarlo. Mirar el otro sitio antes de montar esta o fiarse de ella.
tag-found-other-spec = El registro conoce este código con otros datos que los de su etiqueta.
tag-found-other-spec-cure = Medir la manguera: la etiqueta puede ser anterior a una corrección, o de otra manguera. No fiarse de ninguno de los dos hasta saberlo.
tag-found-other-proof = Dice que está probada, y el registro no lo dice.
tag-found-other-proof-cure = Vale el registro. Registrar la prueba si la hubo.
tag-found-not-known = Este registro no tiene nada de este código.
tag-found-not-known-cure = Revisar lo que dice la etiqueta, hacer de nuevo la manguera según ella, o darle entrada en el registro.
tag-found-not-known-alone-cure = Fusionar con el furgón que la hizo, o guiarse por las palabras junto al código y medir la manguera.
tag-found-merge-first = Es de la flota propia, y este registro no tiene nada de ella: su registro está en otro furgón.
tag-found-merge-first-cure = Fusionar con el furgón que la hizo. Si no puede ser, darle entrada por su etiqueta; los dos registros se mostrarán luego como una contradicción por resolver.
tag-found-seal-missing = La flota propia sella sus etiquetas, y esta, de una manguera registrada, no lleva sello.
tag-found-seal-missing-cure = Es anterior a la flota, o una copia. Compararla con el registro e imprimirla otra vez.
tag-found-foreign-figures = Su presión y su prueba son palabra de alguien que este dispositivo no conoce.
tag-found-foreign-figures-cure = Revisar la manguera antes de fiarse de ellas. Al darle entrada, no soporta más de lo que admiten las tablas.
tag-found-newer = Este programa no la puede leer.
tag-found-newer-cure = Leerla con un programa más nuevo, o por las palabras junto al código.
tag-found-not-proved = La manguera no se probó.
tag-found-not-proved-cure = Probarla antes de que soporte presión.
tag-found-age-not-known = Nadie anotó cuándo se montó esta manguera: su edad no se conoce.
tag-found-age-not-known-cure = Buscar la fecha en el casquillo y en la línea de marcado. Si no hay ninguna, se da por caducada y se hace de nuevo.
tag-found-sits = En el registro está montada en { $at }.
tag-found-sits-cure = Abrir ahí su registro.

tag-taken-in-own = Registrada a partir de su etiqueta, con el sello de esta flota. La etiqueta dice: { $proof }.
tag-taken-in-partner = Registrada a partir de su etiqueta, con el sello de la flota de un socio. La etiqueta dice: { $proof }.
tag-taken-in-foreign = Registrada a partir de su etiqueta, con un sello que no se pudo comprobar. La etiqueta dice: { $proof }.
tag-taken-in-unsealed = Registrada a partir de su etiqueta, que no lleva sello. La etiqueta dice: { $proof }.
tag-taken-in-done = { $code } ya está en el registro.
tag-taken-in-pressure = Soporta { $pressure }.
tag-taken-in-no-pressure = No se sabe qué presión soporta: las tablas no le dan ninguna y nadie conocido aquí responde de su etiqueta. Revisarla.

tag-stocks-that-do = De las etiquetas propias servirían: { $stocks }.
tag-label-of = { $holds ->
    [full-text] Código QR con el texto entero
   *[code-alone] Código QR solo con el código, los datos en palabras
    [code-only] Código QR y código solos: las palabras no caben
}, versión { $version }, nivel { $level }, módulos de { $module } ({ $dots } puntos); se lee desde unos { $from }.
tag-label-along = Alrededor de una manguera de { $od } una cámara ve { $seen } de ella. Pegarla con las palabras a lo largo de la manguera.
tag-label-around = Alrededor de una manguera de { $od } una cámara ve { $seen } de ella. Pegarla con las palabras alrededor de la manguera.
tag-diameter-doubt = { $from ->
    [reckoned] Nadie midió sobre la cubierta, y las tablas solo tienen su diámetro mayor: se toma { $part } de él, lo menos que puede ser.
   *[tables] Nadie midió sobre la cubierta: se toma el menor que permiten las tablas.
} Medido, el código puede salir más grande.
tag-label-reprint = Dice REIMPRESA: la manguera ya tuvo una etiqueta.
tag-batch-title = Etiquetas de manguera
tag-batch-made = { $made ->
    [one] 1 etiqueta
   *[other] { $made } etiquetas
} en { $pages ->
    [one] 1 página
   *[other] { $pages } páginas
}, de ellas reimpresiones: { $reprints }.
tag-batch-refused = sin etiqueta: { $why }
tag-batch-reprint = reimpresa
tag-scans-none = En este dispositivo no se escaneó nada.
tag-way-picture = imagen
tag-way-typed = escrito
tag-stock-form-flag = bandera
tag-stock-form-wrap = envolvente
tag-stock-form-plate = placa
tag-stocks-kept = Guardado.

fleets-keys-kept = Las claves están en { $file }. { $owner ->
    [yes] Solo su dueño puede leer el archivo.
   *[no] Quien pueda abrir esa carpeta puede leerlas: tener este dispositivo bloqueado.
} No están en ninguna copia de seguridad, paquete ni exportación: un dispositivo restaurado se une otra vez a su flota.
fleets-hand-on-caution = Esta es la clave de { $fleet }. Quien la fotografíe puede hacer etiquetas que se leen como propias, y no se puede retirar. Mostrarla solo a un dispositivo de la flota, estando al lado, y cerrarla enseguida. No enviarla a ningún sitio ni imprimirla para nadie.
fleets-hand-on-until = Se lee hasta { $until }. Después, mostrarla de nuevo.
fleets-device = Este dispositivo: { $mark }
fleets-own = Flota { $name } ({ $mark }), desde { $day }{ $from }
fleets-seen = Flota { $name } ({ $mark }), pasada por el dispositivo { $from }. No se ha guardado nada. Comparar las dos marcas con la pantalla del otro dispositivo; si son iguales, unirse con --from { $from }.
fleets-seen-known = { $from } es la marca de { $device }, cuyos registros están en este registro.
fleets-from = , entregada por { $from }
fleets-none = Sin flota: las etiquetas se hacen sin sello. Empezar una, o unirse a una.
fleets-partner = Socio { $name } ({ $mark }), desde { $day }{ $from }
fleets-other = Dispositivo { $name }: { $mark }, { $stands }
fleets-no-name = sin nombre
fleets-founder = Fundada por { $mark }; este dispositivo: { $stands }
fleets-seen-founder = La flota la fundó el dispositivo { $mark }, cuya palabra sobre sus miembros creerá este dispositivo; tras unirse espera el visto bueno de la oficina.
fleets-seen-open = La flota está abierta: nadie la ha fundado y cuenta todo dispositivo que tenga su clave.
fleets-standing-open = cuenta, como todo dispositivo de una flota abierta
fleets-standing-waits = espera el visto bueno de la oficina
fleets-standing-reader = lector
fleets-standing-technician = técnico
fleets-standing-planner = planificador
fleets-standing-founder = fundador
fleets-standing-withdrawn = dado de baja
