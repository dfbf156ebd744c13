# How each reading is taken: where the jaws go, and what goes wrong.

how-id_mm = Cortar a unos 100 mm del casquillo y medir el diámetro interior de la manguera con las bocas interiores, dos veces a 90 grados. Un tubo hinchado mide de menos; nunca medir la parte aplastada bajo un casquillo.
how-reinforcement_od_mm = Quitar un anillo de cubierta del extremo cortado y cerrar las bocas exteriores sobre el refuerzo desnudo, con suavidad. Es el diámetro más seguro de una manguera; los alambres abiertos por un reventón miden de más.
how-cover_od_mm = Cerrar las bocas exteriores sobre la cubierta donde esté limpia y redonda, dos veces a 90 grados. Una cubierta empapada de aceite mide de más, una rozada de menos.
how-reinforcement = Mirar el extremo cortado: alambres que se cruzan por encima y por debajo son un trenzado, alambres uno junto a otro son un espiral. Textil es tela o cordón, bajo caucho o alrededor de un tubo de plástico. Un reventón lo deshilacha: mirar donde el corte esté limpio.
how-layers = Pelar el extremo cortado y contar una a una las capas de alambre o textil. El caucho entre dos capas tapa la de abajo: pelar hasta ver el tubo interior.
how-cover = Mirar el color y la impresión: naranja o «non-conductive» no conduce corriente. Cerca de líneas eléctricas nunca suponerlo.
how-print = Limpiar la cubierta y leer a lo largo de la manguera; la impresión se repite. Poner ? por cada letra borrada.

how-kind = Mirar el terminal entero: una tuerca suelta, una rosca por fuera, un espárrago con resalte y su anillo, una rosca dentro de un cuerpo, un ojo, un tubo liso, una cabeza de brida, media conexión rápida, un alojamiento para grapa, una toma de presión. Quien la montó pudo poner un terminal equivocado: mirar también la otra mitad, en la máquina.
how-gender = Rosca por fuera es macho, rosca por dentro (tuerca o puerto) es hembra. Guiarse por la rosca y no por el cono: cualquiera de las dos mitades puede llevar la punta.
how-thread_diameter_mm = Medir la rosca en su tercera vuelta o más adentro, dos veces a 90 grados. Los primeros hilos están gastados o con rebaba.
how-thread_diameter_mm-male = Cerrar las bocas exteriores sobre las crestas del tercer hilo o más adentro, dos veces a 90 grados. Hilos gastados miden de menos, rebabas de más.
how-thread_diameter_mm-female = Abrir las bocas interiores sobre las crestas dentro de la tuerca, dos veces a 90 grados. Las bocas interiores miden de menos una tuerca pequeña; una tuerca pasada de apriete está ovalada.
how-pitch_mm = Poner el peine en la rosca, varias vueltas de largo, y mirar a contraluz. La hoja correcta no deja luz en ningún punto; dar su paso en mm o sus hilos por pulgada. Las hojas de 1,5 mm y de 16 o 17 hilos por pulgada se parecen en pocas vueltas.
how-tpi = Poner el peine en la rosca, varias vueltas de largo, y mirar a contraluz, o contar los hilos en 1/2 in y duplicar. La hoja correcta no deja luz en ningún punto.
how-taper = Poner las bocas planas a lo largo de la rosca: luz en un extremo significa cónica. Roscas cortas o gastadas engañan.
how-second_thread_diameter_mm = Medir el diámetro otra vez cinco hilos más cerca del cuerpo, y contar los hilos entre medias. Una rosca cónica cambia un dieciseisavo de esa longitud, una cilíndrica nada.
how-second_thread_diameter_mm-male = Cerrar las bocas exteriores otra vez cinco hilos más cerca del cuerpo, y contar los hilos entre medias. Una rosca cónica es mayor ahí, un dieciseisavo de esa longitud.
how-second_thread_diameter_mm-female = Abrir las bocas interiores otra vez cinco hilos más adentro, y contar los hilos entre medias. Una rosca cónica es menor ahí, un dieciseisavo de esa longitud.
how-threads_apart = Contar los hilos entre los dos diámetros. Uno de más o de menos falsea la conicidad: contar dos veces, de cresta a cresta.
how-flank_angle_deg = Poner la hoja de un peine de 55 y de uno de 60 grados en los flancos a contraluz. Cinco grados cuestan de ver: limpiar antes la rosca.
how-shoulder = Puerto: ¿tiene la boca un chaflán para una junta tórica, o la cara es plana hasta el borde? Espárrago: ¿está el anillo justo tras la rosca, o en la cara plana del collar? Puertos de varias clases comparten una rosca: guiarse por esto y no por la rosca.
how-seal = Buscar qué sella: una junta tórica en una cara plana, en la base de la rosca o en el cono; una arandela plana o de metal y goma; un cono de metal desnudo; o la propia rosca. La junta tórica puede haberse perdido: buscar su ranura. Una cara plana lisa sella sobre la junta de la otra mitad.
how-seat_included_angle_deg = Poner la galga de asientos en el cono, centrada y sin bailar. Dar el ángulo total: 37 grados por lado son 74. Algunas tuercas giratorias tienen dos asientos, o punta redondeada.
how-seat_included_angle_deg-male = Poner la galga de asientos en la punta, o la galga tapón en el hueco del macho, centrada y sin bailar. Dar el ángulo total: 37 grados por lado son 74.
how-seat_included_angle_deg-female = Retirar la tuerca y poner la galga en el asiento interior, centrada y sin bailar. Dar el ángulo total: 37 grados por lado son 74. Algunas tuercas giratorias tienen dos asientos.
how-cone = Mirar el asiento de la pieza en la mano: ¿sobresale un cono (convexo), es hueco (cóncavo) o no hay ninguno (plano)? Un chaflán en la boca de una rosca no es un cono.
how-tube_od_mm = Cerrar las bocas exteriores sobre el tubo o la punta tras el cono; en un macho abrir las bocas interiores en el agujero al fondo del cono. Distingue la serie ligera de la pesada de 24 grados. Los tubos en mm y en pulgadas se parecen: 16 mm y 5/8 in, 25 mm y 1 in.
how-tube_od_mm-male = Abrir las bocas interiores en el agujero al fondo del cono, donde iría el tubo. Distingue la serie ligera de la pesada de 24 grados.
how-tube_od_mm-female = Cerrar las bocas exteriores sobre el tubo o la punta tras el cono. Distingue la serie ligera de la pesada de 24 grados.
how-male_bore_mm = Abrir las bocas interiores en el paso más estrecho a través del macho. Los fabricantes difieren en 1 mm más o menos.
how-swivel_hex_mm = Cerrar las bocas exteriores entre caras de la tuerca giratoria. Es un indicio débil: los fabricantes difieren, y una tuerca redondeada mide de menos.
how-head_od_mm = Cerrar las bocas exteriores sobre la cabeza redonda de la brida, no sobre las medias bridas.
how-head_thickness_mm = Cerrar las bocas sobre el borde de la cabeza de la brida. Una cabeza gruesa (14 mm) no entra bajo medias bridas normales.
how-bolt_long_mm = Medir del borde de un agujero al mismo borde del siguiente por el lado largo: eso es entre centros. Se puede medir con la brida montada. De borde a borde más cercano falta un agujero.
how-bolt_short_mm = Medir del borde de un agujero al mismo borde del siguiente por el lado corto: eso es entre centros. De borde a borde más cercano falta un agujero.
