# What an answer of finding says of look-alikes, contradictions and slips. No screen speaks from this file: the
# answers bring these words.

# A dangerous pair that was worked out of the threads: which half starts on which, what happens, and what parts the two.

lookalike-starts-nut = la tuerca hembra { $female } entra en el macho { $male }
lookalike-starts-port = el puerto hembra { $female } admite el macho { $male }
lookalike-same-thread = una misma rosca, enrosca a mano hasta el fondo
lookalike-near-thread = coincide el { $overlap } % de la altura del filete
lookalike-taper-in-parallel = un macho cónico en una hembra cilíndrica
lookalike-parallel-in-taper = un macho cilíndrico en una hembra cónica
lookalike-two-tapers = roscas cónicas de dos normas
lookalike-turns = { $turns ->
    [0] en la primera vuelta
    [1] tras cerca de 1 vuelta
   *[other] tras unas { $turns } vueltas
}
lookalike-strips-and-blows-off = entra a mano, se barre bajo presión y sale disparado
lookalike-few-threads-caught = la punta es demasiado ancha para el cuerpo, la tuerca coge pocos hilos y se suelta bajo presión
lookalike-binds-and-leaks = se agarrota { $turns } y parece apretado, fuga, y las roscas quedan destrozadas
lookalike-wedges-and-splits = se acuña { $turns } y raja la hembra o rezuma
lookalike-weeps-along-thread = enrosca bien y rezuma por los flancos bajo presión
lookalike-leaks-at-seat = los asientos se tocan en una línea o un borde y fugan
lookalike-no-seal = nada sella
lookalike-ring-extrudes = la junta no queda encerrada y se corta o se expulsa
lookalike-starts-body = el cuerpo { $female } admite el macho { $male }
lookalike-starts-socket = el enchufe { $female } admite { $male }
lookalike-starts-halves = las medias bridas de { $female } abrazan { $male }
lookalike-turns-unknown = tras algunas vueltas
lookalike-pulls-out = queda sujeto por demasiado poco y se sale bajo presión
lookalike-screws-bend = los tornillos se doblan o la cabeza queda sujeta por un lado, y fuga o se suelta
lookalike-half-locks = encaja a medias, parece cerrado y se abre bajo presión
lookalike-fits-both = está hecho para encajar en los dos y no demuestra nada de la otra mitad
lookalike-separates = se distinguen por { $readings }
lookalike-separates-none = ninguna lectura de esta lista distingue los dos: pedir la pieza o sustituir ambas mitades
lookalike-by-thread_diameter_mm = diámetro de rosca
lookalike-by-pitch_mm = paso
lookalike-by-flank_angle_deg = ángulo de flancos
lookalike-by-taper = cónica o cilíndrica
lookalike-by-kind = tipo de terminal
lookalike-by-shoulder = chaflán en la boca o cara plana
lookalike-by-seal = qué sella
lookalike-by-seat_included_angle_deg = ángulo de asiento
lookalike-by-cone = cono saliente o hueco
lookalike-by-tube_od_mm = tubo o agujero del cono
lookalike-by-male_bore_mm = agujero de paso
lookalike-by-bolt_long_mm = distancia larga entre tornillos
lookalike-by-head_od_mm = cabeza de la brida
lookalike-by-head_thickness_mm = espesor de la cabeza de la brida
# Where the print on a hose and what is read of it say different things. The cure is the same: look again,
# and never rate the hose by the kinder of the two.
contradicted-no-such-hose = La impresión se contradice o está mal leída: ninguna manguera de las tablas es { $named }. Leerla otra vez; hasta que esté claro, guiarse por lo medido.
contradicted-reinforcement = Impreso { $named }, que es { $printed }; visto: { $measured }. Mirar otra vez el extremo cortado. Uno de los dos es erróneo: no valorar esta manguera por su impresión.
contradicted-layers = Impreso { $named }, que tiene { $printed ->
    [one] una capa
   *[other] { $printed } capas
}; contadas: { $measured }. Contar otra vez en un corte limpio. Uno de los dos es erróneo: no valorar esta manguera por su impresión.
contradicted-bore = Impreso { $named }, cuyo diámetro interior más cercano es { $printed }; medido { $measured }. Medir otra vez lejos del casquillo, dos veces a 90 grados. Uno de los dos es erróneo.
contradicted-reinforcement-od = Impreso { $named }, que en lo más cercano mide { $printed } sobre el refuerzo; medido { $measured }. Medir otra vez donde no haya alambres abiertos. Uno de los dos es erróneo.
contradicted-cover-od = Impreso { $named }, que en lo más cercano mide { $printed } sobre la cubierta; medido { $measured }. Medir otra vez donde la cubierta esté limpia y redonda. Uno de los dos es erróneo.
contradicted-cover = Impreso { $printed }, visto como { $measured }. Cerca de líneas eléctricas o donde las chispas sean peligrosas, no darla por ninguna de las dos hasta que esté probado.
contradicted-pressure = Impreso { $printed }; la tabla da a { $named } { $measured }. Puede ser otra edición u otra manguera: vale la menor de las dos hasta que la hoja de su fabricante diga otra cosa.

# A reading that only a slip explains.
stray = { $reading } da { $read }; { $named } tendría { $limits }. Leerlo otra vez, o decir que no se puede saber: hasta entonces aquí nada queda resuelto.
stray-absent = { $reading } da { $read }; { $named } no tiene tal cosa. Leerlo otra vez, o decir que no se puede saber: hasta entonces aquí nada queda resuelto.
stray-limit = { $limit }
stray-limits = { $least } a { $most }

seen-wire-braid = alambre trenzado
seen-wire-spiral = alambre en espiral
seen-textile-braid = textil trenzado
seen-thermoplastic-textile = textil alrededor de un tubo de plástico
seen-ptfe-steel-braid = trenzado de acero desnudo sobre PTFE
seen-suction-helix = textil con hélice de alambre
seen-plain = nada especial
seen-non-conductive = no conductora
seen-flame-resistant = resistente a la llama
seen-antistatic = antiestática
