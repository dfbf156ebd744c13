# What a check found: `why-<case>` says what is so, `cure-<case>` what to do about it.
# $value and $limit carry their unit. Other names: $part, $name, $end, $family, $size, $hose, $rival,
# $fluid, $tube, $duty, $rule, $by, $reason.

why-hose-missing = No se nombra ninguna manguera.
cure-hose-missing = Nombrar la manguera: norma, tipo y DN.
why-end-missing = El terminal { $end } no está nombrado.
cure-end-missing = Nombrar el terminal { $end }: familia, tamaño, macho o hembra, recto o codo.
why-line-missing = No se ha dicho qué hace la línea, así que no se miran la aspiración ni la velocidad del aceite.
cure-line-missing = Decir si es línea de presión, retorno, aspiración, drenaje, pilotaje o cilindro.

# Pressure
check-part = { $part ->
    [hose] La manguera
    [A] El terminal A
    [B] El terminal B
   *[adapter] El adaptador { $name }
}
why-working-pressure-missing = La presión de trabajo es desconocida.
cure-working-pressure-missing = Leerla en la placa o el manual de la máquina, o en un manómetro.
why-relief-missing = El ajuste de la limitadora es desconocido, así que el circuito puede superar su presión de trabajo.
cure-relief-missing = Introducir el ajuste de la válvula limitadora, principal o secundaria, de este circuito.
why-surge-missing = El mayor pico de presión es desconocido, y un pico cuenta como presión.
cure-surge-missing = Introducir el mayor pico de este circuito, medido o del fabricante de la máquina.
why-surge-reckoned = El mayor pico de presión, { $value }, se calculó con el caudal y el tiempo de cierre; no se midió.
cure-surge-reckoned = Medirlo, o preguntar al fabricante de la máquina; una estimación no es una medición.
why-surge-estimated = El mayor pico de presión es desconocido. Con la limitadora a { $relief } bar se estima en { $value }, { $factor } veces ese valor.
cure-surge-estimated = Medirlo, o preguntar al fabricante de la máquina; una estimación no es una medición.
why-surge-estimated-above = El mayor pico de presión es desconocido. Con la limitadora a { $relief } bar se estima en { $value }, { $factor } veces ese valor; la pieza más débil admite { $limit }.
cure-surge-estimated-above = Medir el pico antes de fiarse de esta manguera, o elegir piezas que admitan lo estimado.
why-relief-below-working = La limitadora está ajustada a { $value } y la línea trabaja a { $limit }; uno de los dos es erróneo.
cure-relief-below-working = Leer ambos otra vez. Una limitadora abre por encima de la presión a la que trabaja la línea.
why-surge-below-working = El mayor pico se da como { $value } y la línea trabaja a { $limit }; uno de los dos es erróneo.
cure-surge-below-working = Leer ambos otra vez. El pico es el total, con la presión de trabajo incluida, no lo que se le suma.
why-pressure-ok = { check-part } admite { $limit }.
why-pressure-unverified = { check-part } admite { $limit }, pero ese dato es de memoria y nadie lo ha verificado.
cure-pressure-unverified = Contrastarlo con el dato del proveedor.
why-pressure-proxy = { check-part } no tiene presión propia asignada; { $limit } es el dato de otro terminal con la misma rosca.
cure-pressure-proxy = Introducir la presión que da el proveedor para este terminal.
why-pressure-above-rating = { check-part } admite { $limit }; la línea puede alcanzar { $value }.
cure-pressure-above-rating = Elegir una pieza de mayor presión, o introducir la que da el proveedor si es mayor.
why-pressure-above-proxy = { check-part } no tiene presión propia asignada, y la línea puede alcanzar { $value }, más que el valor supletorio de { $limit }.
cure-pressure-above-proxy = Introducir la presión que da el proveedor para este terminal.
why-pressure-unknown = { check-part } no tiene presión conocida, y desconocido nunca es ilimitado.
cure-pressure-unknown = { $part ->
    [hose] Elegir una manguera cuya presión de trabajo esté en las tablas.
   *[other] Introducir la presión que da el proveedor.
}

# Temperature
why-heat-missing = No se ha dicho cuánto se calienta el fluido.
cure-heat-missing = Introducir la temperatura máxima del fluido.
why-heat-ok = { $hose } admite fluido hasta { $limit }.
why-heat-unverified = { $hose } admite fluido hasta { $limit }, pero esa fila de la tabla no está verificada.
cure-heat-unverified = Contrastarlo con el dato del proveedor.
why-heat-above-limit = { $hose } admite fluido hasta { $limit }; llega a { $value }.
cure-heat-above-limit = Elegir una manguera para fluido más caliente, o averiguar por qué se calienta tanto.
why-fluid-heat-ok = Con { $fluid } esta manguera admite hasta { $limit }.
why-fluid-heat-unverified = Con { $fluid } esta manguera admite hasta { $limit }, pero ese dato no está verificado.
cure-fluid-heat-unverified = Preguntar al proveedor hasta qué temperatura admite esta manguera este fluido.
why-fluid-heat-above-limit = Con { $fluid } esta manguera admite hasta { $limit }; el fluido llega a { $value }.
cure-fluid-heat-above-limit = Elegir una manguera hecha para este fluido a esa temperatura.
why-cold-missing = No se ha dicho cuánto se enfría el fluido.
cure-cold-missing = Introducir la temperatura mínima del fluido: cuenta un arranque en frío en invierno.
why-cold-ok = { $hose } admite frío hasta { $limit }.
why-cold-unverified = { $hose } admite frío hasta { $limit }, pero esa fila de la tabla no está verificada.
cure-cold-unverified = Contrastarlo con el dato del proveedor.
why-cold-below-limit = { $hose } admite frío hasta { $limit }; llega a { $value }.
cure-cold-below-limit = Elegir una manguera para temperaturas más bajas.
why-frost-ok = { $fluid } se mantiene por encima de { $limit }.
why-frost-unverified = { $fluid } se mantiene por encima de { $limit }, pero ese límite no está verificado.
cure-frost-unverified = Preguntar al proveedor hasta qué frío admite esta manguera este fluido.
why-frost-below-limit = { $fluid } no puede enfriarse por debajo de { $limit } en esta manguera; llega a { $value }.
cure-frost-below-limit = Evitar que la línea se hiele, o usar otro fluido y otra manguera.
why-ambient-missing = No se ha dicho cuánto se calienta el aire alrededor de la manguera.
cure-ambient-missing = Introducir la temperatura máxima del aire alrededor: cuentan un motor o un escape cercanos.
why-ambient-ok = El aire se mantiene dentro de los { $limit } de { $hose }.
why-ambient-unverified = El aire se mantiene dentro de los { $limit } de { $hose }, pero esa fila de la tabla no está verificada.
cure-ambient-unverified = Contrastarlo con el dato del proveedor.
why-ambient-above-limit = El aire llega a { $value }; { $hose } admite { $limit }.
cure-ambient-above-limit = Alejar la manguera del calor o apantallarla, o elegir una para más temperatura.

# Fluid
why-fluid-missing = No se ha dicho qué circula por ella.
cure-fluid-missing = Introducir el fluido por su clase (HM, HFC) o nombre; está en la placa o el manual de la máquina.
why-fluid-unknown = { $fluid } no está en las tablas, así que nada se sabe de lo que hace a la manguera.
cure-fluid-unknown = Nombrar el fluido por su clase (HM, HFC); si no la tiene, preguntar al proveedor de la manguera.
why-fluid-excluded = La norma de { $hose } excluye { $fluid }.
cure-fluid-excluded = Elegir una manguera hecha para { $fluid }.
why-fluid-not-named = La norma de { $hose } no nombra { $fluid }.
cure-fluid-not-named = Preguntar al proveedor si esta manguera está autorizada para { $fluid }.
why-fluid-tube-unknown = El tubo interior de { $hose } es desconocido, así que { $fluid } puede destruirlo.
cure-fluid-tube-unknown = Elegir una manguera cuyo tubo interior esté en las tablas.
why-fluid-unrated = Nada se sabe de { $fluid } en un tubo interior de { $tube }.
cure-fluid-unrated = Elegir una manguera cuyo tubo interior se sepa que resiste { $fluid }.
why-fluid-destroys-tube = { $fluid } destruye un tubo interior de { $tube }.
cure-fluid-destroys-tube = Elegir una manguera con un tubo interior que resista { $fluid }.
why-fluid-limited = Un tubo interior de { $tube } resiste { $fluid } solo en servicio ligero.
cure-fluid-limited = Preguntar al proveedor si esta manguera está autorizada para { $fluid }.
why-fluid-unverified = Se dice que un tubo interior de { $tube } resiste { $fluid }, pero nadie lo ha verificado.
cure-fluid-unverified = Preguntar al proveedor si esta manguera está autorizada para { $fluid }.
why-fluid-ok = Un tubo interior de { $tube } resiste { $fluid }.
why-out-of-scope = { $line ->
    [brake-line] { $fluid }: se rechazan los frenos de vehículos de carretera. Tienen sus propias normas, manguera y homologaciones.
    [steam] { $fluid }: se rechaza el vapor. Necesita un caucho propio y manguera que reviente a diez veces su presión.
    [compressed-air] { $fluid }: se rechazan el aire comprimido y los gases. El gas almacena mucha más energía que el aceite, y la manguera hidráulica no está prevista para él.
    [fuel-gas] { $fluid }: se rechaza el gas combustible. Necesita manguera homologada y práctica autorizada; una fuga explota.
    [refrigerant] { $fluid }: se rechaza el refrigerante. Atraviesa la manguera hidráulica y hierve en ella.
    [oxygen] { $fluid }: se rechaza el oxígeno. El aceite en una línea de oxígeno se inflama.
    [water-jetting] { $fluid }: se rechaza el chorro de agua a presión. Sus mangueras tienen normas propias, y el chorro corta.
   *[other] { $fluid }: se rechaza. Es de otro oficio, con reglas propias.
}
cure-out-of-scope = Enviarla a quien esté autorizado o equipado para esas líneas.

# Bend
why-bend-missing = La curva no está revisada: no se ha dicho lo cerrada que es.
cure-bend-missing = Medir el radio más cerrado por el interior de la curva, o calcular el recorrido.
why-bend-ok = { $hose } admite curvarse hasta { $limit } por el interior; está curvada a { $value }.
why-bend-estimated-ok = { $hose } admite curvarse hasta { $limit } por el interior; según el recorrido está curvada a { $value }, una estimación.
why-bend-estimated-near = { $hose } admite curvarse hasta { $limit } por el interior; según el recorrido está curvada a { $value }. Una estimación no distingue tan poco.
cure-bend-estimated-near = Darle más espacio, o medir la curva más cerrada una vez montada.
why-bend-unverified = { $hose } admite curvarse hasta { $limit } por el interior, pero ese dato es de memoria y nadie lo ha verificado.
cure-bend-unverified = Introducir el radio mínimo de curvatura que da el proveedor para esta manguera (min_bend_radius_mm).
why-bend-too-tight = La curva es de { $value } por el interior; { $hose } necesita { $limit }.
cure-bend-too-tight = Elegir una manguera que se curve más, un terminal en codo o un recorrido más largo.
why-bend-limit-unknown = Hasta dónde se puede curvar { $hose } es desconocido, y desconocido nunca es ilimitado.
cure-bend-limit-unknown = Introducir el radio mínimo de curvatura que da el proveedor para esta manguera (min_bend_radius_mm), o elegir una cuyo radio esté en las tablas.

# Duties of the place
why-duty-ok = Se cumple la exigencia del sitio: manguera { $duty ->
    [non-conductive] no conductora
    [flame-resistant] resistente a la llama
    [antistatic] antiestática
   *[other] { $duty }
}.
why-duty-cover-missing = El sitio exige manguera { $duty ->
    [non-conductive] no conductora
    [flame-resistant] resistente a la llama
    [antistatic] antiestática
   *[other] { $duty }
}, y la especificación no dice que esta lo sea.
cure-duty-cover-missing = Elegir una manguera impresa o marcada como { $duty ->
    [non-conductive] no conductora
    [flame-resistant] resistente a la llama
    [antistatic] antiestática
   *[other] { $duty }
}, y decirlo en la especificación.
why-duty-wire-conducts = El sitio exige manguera { $duty ->
    [non-conductive] no conductora
    [flame-resistant] resistente a la llama
    [antistatic] antiestática
   *[other] { $duty }
}, y esta tiene, o puede tener, alambre dentro. Cerca de líneas eléctricas eso puede matar.
cure-duty-wire-conducts = Elegir una manguera textil marcada como { $duty ->
    [non-conductive] no conductora
    [flame-resistant] resistente a la llama
    [antistatic] antiestática
   *[other] { $duty }
}.

# Suction
why-vacuum-missing = No se ha dicho hasta dónde llega el vacío; { $hose } admite { $limit }.
cure-vacuum-missing = Introducir la presión absoluta más baja en la entrada de la bomba.
why-vacuum-ok = { $hose } admite un vacío hasta { $limit }.
why-vacuum-unverified = { $hose } admite un vacío hasta { $limit }, pero ese dato es de memoria y nadie lo ha verificado.
cure-vacuum-unverified = Introducir el dato del proveedor para esta manguera (vacuum_kpa_abs de la manguera).
why-vacuum-too-deep = La línea baja a { $value }; { $hose } admite { $limit } y por debajo se aplasta.
cure-vacuum-too-deep = Elegir una manguera de aspiración para un vacío más profundo, o un diámetro interior mayor.
why-vacuum-unrated = { $hose } no tiene vacío asignado y puede aplastarse.
cure-vacuum-unrated = Introducir el dato del proveedor para esta manguera (vacuum_kpa_abs de la manguera), o elegir una de aspiración con vacío asignado.
why-suction-helix-ok = Una hélice mantiene abierta la manguera.
why-suction-helix-missing = { $hose } no tiene hélice que la mantenga abierta en aspiración.
cure-suction-helix-missing = Elegir una manguera de aspiración con hélice.

# Flow
why-flow-missing = La velocidad del aceite no está revisada: no se ha dicho cuánto caudal pasa.
cure-flow-missing = Introducir el caudal de la bomba o la válvula.
why-flow-ok = El aceite va a { $value }; en una línea así es usual hasta { $limit }.
why-flow-too-fast = El aceite va a { $value }; en una línea así es usual hasta { $limit }. Se calienta y pierde presión.
cure-flow-too-fast = Ningún tamaño de este tipo es bastante ancho: se necesitan { $bore } mm. Llevar el aceite por dos mangueras, o asumirlo con nombre y motivo.
why-flow-too-fast-size = El aceite va a { $value }; en una línea así es usual hasta { $limit }. Se calienta y pierde presión.
cure-flow-too-fast-size = { $hose } lo deja en { $speed } m/s y pasó por la misma revisión. O asumirlo con nombre y motivo.
why-flow-too-fast-stopped = El aceite va a { $value }; en una línea así es usual hasta { $limit }. Se calienta y pierde presión.
cure-flow-too-fast-stopped = Un diámetro interior de { $bore } mm bastaría, pero la revisión detiene { $hose } tal como está. Remediar eso primero, o asumirlo con nombre y motivo.

# Ends
why-end-ok = El terminal { $end } está resuelto: { $family } { $size }.
why-end-not-read = Nada de lo medido dice que el terminal { $end } sea { $family } { $size }.
cure-end-not-read = Medir el terminal viejo y la contraparte de la máquina, rosca y asiento, antes de hacerla.
why-end-unsettled = El terminal { $end } está sin resolver. Un terminal equivocado puede enroscar y salir disparado.
cure-end-unsettled = Tomar la siguiente lectura, medir la contraparte de la máquina, o sustituir ambas mitades.
why-end-differs = Lo medido en el terminal { $end } no es { $family } { $size }.
why-adapter-misfit = El terminal { $end }, { $family } { $size }, no enrosca en el adaptador que debe llevar.
why-adapters-stacked = Consta más de un adaptador en el terminal { $end }: nadie puede decir cuál de ellos ve la máquina.
cure-adapters-stacked = Usar un solo adaptador que vaya del terminal a la máquina, o el terminal correcto.
cure-adapter-misfit = Tomar un adaptador cuyo lado de manguera sea la otra mitad de { $family } { $size }.
cure-end-differs = Tomar el terminal que se midió, o sustituir ambas mitades.
why-end-gender-missing = No se ha dicho si el terminal { $end } es macho o hembra.
cure-end-gender-missing = Decir qué mitad es el terminal { $end }.
why-end-form-missing = No se ha dicho si el terminal { $end } es recto o codo.
cure-end-form-missing = Decir la forma del terminal { $end }.
why-end-drop-missing = El terminal { $end } es acodado y su altura de codo es desconocida. Con una altura equivocada no encaja.
cure-end-drop-missing = Medir la altura de codo, del eje de la manguera al centro de la cara de sellado.
why-size-ok = El terminal { $end } ({ $family } { $size }) es del tamaño de la manguera.
why-size-jump = El terminal { $end } ({ $family } { $size }) va con { $value }, la manguera es { $limit }: un salto de tamaño.
cure-size-jump = Comprobar que el salto de tamaño es intencionado y que el proveedor lo tiene.
why-size-unknown = Las tablas no dicen con qué tamaño de manguera va el terminal { $end } ({ $family } { $size }).
cure-size-unknown = Comprobar con el proveedor que este terminal está hecho para este tamaño de manguera.

# The original
why-original-missing = Nada se sabe de la manguera que había.
cure-original-missing = Leer lo que quede de su impresión, o medirla, antes de fiarse de la sustituta.
why-original-unknown = La manguera que había puede no ser ninguna de las tablas.
cure-original-unknown = Tomar más lecturas, o buscar la lista de piezas de la máquina.
why-original-pressure-ok = { $hose } admite al menos los { $limit } de { $rival }.
why-original-pressure-above = Pudo ser { $rival }, que admite { $limit }; { $hose } admite { $value }.
cure-original-pressure-above = Resolver qué era, o elegir una manguera que admita lo mismo.
why-original-pressure-unknown = Pudo ser { $rival }, y lo que admite es desconocido.
cure-original-pressure-unknown = Buscar la presión impresa en la manguera vieja, o la lista de piezas de la máquina.
why-original-edition-open = { $year ->
    [unknown] Las mangueras marcadas { $rival } admitían { $value } según ediciones antiguas de la norma y { $limit } según las nuevas. Nada de lo leído dice cuál; cuenta la mayor.
   *[other] Las mangueras marcadas { $rival } admitían { $value } antes de { $year } y { $limit } desde entonces. Ni una presión impresa ni una fecha dice cuál era; cuenta la mayor.
}
cure-original-edition-open = Buscar la presión impresa en la manguera vieja o su fecha de fabricación.
why-original-edition-newer-ok = La manguera vieja, { $rival }, es de la edición nueva: admitía { $limit }, no { $value }.
why-original-edition-older-ok = La manguera vieja, { $rival }, es de la edición antigua: admitía { $value }, no { $limit }.
why-printed-pressure-ok = { $hose } admite al menos los { $limit } impresos o registrados de la manguera vieja.
why-printed-pressure-above = La manguera vieja admitía { $limit }; { $hose } admite { $value }.
cure-printed-pressure-above = Elegir una manguera que admita tanto como la vieja.
why-original-bore-ok = { $hose } es del tamaño que había.
why-original-bore-larger = Pudo ser { $rival }, { $limit }; { $hose } es menor y estrangula la línea.
cure-original-bore-larger = Resolver qué era, o elegir el diámetro interior mayor.
why-original-bore-smaller = Pudo ser { $rival }, { $limit }; { $hose } es mayor.
cure-original-bore-smaller = Resolver qué era, y comprobar que la manguera mayor cabe y se curva.
why-original-heat-ok = { $hose } admite los { $limit } de { $rival }.
why-original-heat-above = Pudo ser { $rival }, que admite { $limit }; { $hose } admite { $value }.
cure-original-heat-above = Introducir cuánto se calienta el fluido, o elegir una manguera que admita lo mismo.
why-original-heat-measured = Pudo ser { $rival }, que admite { $limit }; { $hose } admite { $value }, bastante para la temperatura dada.
cure-original-heat-measured = Asegurarse de que la temperatura dada es la máxima.
why-original-cold-ok = { $hose } admite el frío de { $limit } de { $rival }.
why-original-cold-below = Pudo ser { $rival }, que admite { $limit }; { $hose } admite { $value }.
cure-original-cold-below = Introducir cuánto se enfría el fluido, o elegir una manguera que admita lo mismo.
why-original-cold-measured = Pudo ser { $rival }, que admite { $limit }; { $hose } admite { $value }, bastante para el frío dado.
cure-original-cold-measured = Asegurarse de que el frío dado es el mínimo.
why-original-bend-ok = { $hose } se curva tanto como { $rival }, { $limit }.
why-original-bend-tighter = Pudo ser { $rival }, que se curva hasta { $limit }; { $hose } no, y nadie midió la curva.
cure-original-bend-tighter = Medir el radio más cerrado por el interior de la curva, o elegir una manguera que se curve tanto.
why-original-vacuum-ok = { $hose } admite el vacío de { $rival }, { $limit }.
why-original-vacuum-deeper = Pudo ser { $rival }, una manguera de aspiración; { $hose } no lo es, y no se ha dicho qué hace la línea.
cure-original-vacuum-deeper = Decir qué hace la línea, o elegir una manguera de aspiración.
why-original-vacuum-not-asked = Pudo ser { $rival }, una manguera de aspiración; { $hose } no lo es.
cure-original-vacuum-not-asked = Asegurarse de que nada aspira en esta línea.

# Length and turn
why-length-missing = La longitud total es desconocida.
cure-length-missing = Medir de punto de sellado a punto de sellado, tuercas retiradas.
why-cutoff-missing = El descuento del terminal { $end } es desconocido, así que la longitud de corte también.
cure-cutoff-missing = Tomarlo de la tabla del proveedor, o medir un terminal nuevo del punto de sellado al tope de manguera.
why-cut-length-ok = Se cortan { $value } de manguera.
why-cut-length-impossible = Los descuentos son tan largos como el total: quedarían { $value } de manguera.
cure-cut-length-impossible = Medir otra vez la longitud total y ambos descuentos.
why-length-tolerance-unknown = La práctica no da tolerancia para este tamaño y longitud.
cure-length-tolerance-unknown = Acordarla con quien la pidió.
why-turn-ok = El giro entre los dos codos es { $value }.
why-turn-missing = Ambos terminales son acodados y el giro entre ellos es desconocido.
cure-turn-missing = Mirar a lo largo de la manguera de A hacia B con el codo de A hacia arriba; leer el ángulo en sentido horario hasta el codo de B.

# What was not looked at
not-checked-surge = El pico de presión: no se midió.
not-checked-relief = El ajuste de la limitadora.
not-checked-heat = Cuánto se calienta el fluido.
not-checked-cold = Cuánto se enfría el fluido.
not-checked-ambient = Cuánto se calienta el aire.
not-checked-fluid = El fluido.
not-checked-line = Qué hace la línea.
not-checked-vacuum = El vacío.
not-checked-original = Qué manguera había.
not-checked-flow = La velocidad del aceite.
not-checked-bend = La curva.
not-checked-route = El recorrido en todo el movimiento de la máquina, y su torsión.
not-checked-pressure-drop = La presión que se pierde en la línea.

# The place and its circuit
why-belongs-bore = Esta manguera es { $hose }; aquí va { $there }.
cure-belongs-bore = Montarla donde le corresponde. Un paso menor estrangula la línea, y una manguera mayor necesita sitio para su curva.
why-belongs-ends = Esta manguera lleva { $hose }; lo que va aquí lleva { $there }.
cure-belongs-ends = Montarla donde le corresponde. Los terminales que solo parecen encajar fugan o se sueltan.
why-belongs-shorter = Esta manguera mide { $value }; aquí van { $limit }.
cure-belongs-shorter = Mirarla en todo el recorrido de la máquina: una manguera demasiado corta se sale de sus terminales.
why-belongs-longer = Esta manguera mide { $value }; aquí van { $limit }.
cure-belongs-longer = Mirarla en todo el recorrido de la máquina: una manguera demasiado larga roza y se dobla.
why-circuit-sister-weaker = El sitio { $place } está en el mismo circuito, y su manguera admite { $limit }; esta admite { $value }. Una de las dos puede ser la manguera equivocada.
cure-circuit-sister-weaker = Mirar la manguera del sitio { $place }: recibe la misma presión.
why-circuit-weaker = El sitio { $place } está en el mismo circuito, y su manguera admite { $limit }; esta admite { $value }. La manguera vieja de aquí pudo ser la equivocada.
cure-circuit-weaker = Averiguar qué pide la lista de piezas de la máquina antes de hacer la misma otra vez.
why-circuit-relief-above = La limitadora de este circuito está ajustada a { $value }; la manguera del sitio { $place } admite { $limit }.
cure-circuit-relief-above = Ajustar la limitadora más baja, o montar una manguera que lo admita.
why-circuit-unknown = El sitio { $place } está en el mismo circuito, y lo que admite una de las dos mangueras es desconocido.
cure-circuit-unknown = Leer la impresión de ambas.
why-circuit-ok = La manguera del sitio { $place } en el mismo circuito admite { $limit }; esta admite { $value }.
why-failed-before = Aquí ya falló una manguera una vez: { $causes }.
cure-failed-before = Ver que la causa ha desaparecido antes de hacer la misma otra vez.
why-failed-repeatedly = Aquí ya fallaron mangueras { $value } veces: { $causes }.
cure-failed-repeatedly = Ir por el camino largo: recorrido, caudal y la causa, antes de hacer nada.

# The route as it is asked in the field
why-route-travel-missing = No se ha dicho si la máquina mueve esta manguera.
cure-route-travel-missing = Introducir la posición abierta, o decir que nada se mueve.
why-route-rigid-assumed = La longitud rígida del terminal { $end } es desconocida; se toma { $value }, en simple proporción a la manguera.
cure-route-rigid-assumed = Medir el terminal { $end } a lo largo de la manguera: del punto de sellado al final del casquillo.
why-route-drop-assumed = La altura del codo en { $end } es desconocida; se toma { $value }, en simple proporción a la manguera.
cure-route-drop-assumed = Medir la altura de codo en { $end }: del eje de la manguera al centro de la cara de sellado.
why-route-change-ok = Bajo presión { $hose } puede cambiar su longitud de { $value } a { $limit }; se miró cada longitud entre ambas.
why-route-change-unverified = Bajo presión { $hose } puede cambiar su longitud de { $value } a { $limit }, pero ese dato es de memoria y nadie lo ha verificado.
cure-route-change-unverified = Introducir el dato del proveedor para esta manguera.
why-route-change-taken = La norma de { $hose } no dice nada de cómo cambia su longitud bajo presión; se toma de { $value } a { $limit }, como en la mayoría de las mangueras de caucho.
cure-route-change-taken = Introducir el dato del proveedor para esta manguera.
why-route-straight-line-ok = La manguera queda recta.
why-route-near-limit = La curva es de { $value } por el interior; { $hose } necesita { $limit }. Una estimación no distingue tan poco.
cure-route-near-limit = Darle más espacio, o medir la curva más cerrada una vez montada.
why-route-rival = La manguera puede caer en otra forma, curvada a { $value } por el interior; { $hose } necesita { $limit }.
cure-route-rival = Guiarla con una abrazadera para que solo pueda quedar de una manera, o cambiar su longitud.
why-route-behind-ok = { $straight } mm de manguera, { $times } veces su diámetro, pueden quedar rectos tras cada casquillo, y el resto conserva su radio.
why-route-behind-short = Con { $straight } mm de manguera rectos tras cada casquillo, { $times } veces su diámetro, el resto se curvaría a { $value }; necesita { $limit }. Solo queda el mínimo usual, una vez el diámetro.
cure-route-behind-short = Hacerla más larga, o apartar la curva del casquillo con un codo.
why-route-behind-none = No hay espacio para { $straight } mm de manguera recta tras cada casquillo, el mínimo usual: el resto se curvaría a { $value }; necesita { $limit }. La manguera se pliega en el casquillo.
cure-route-behind-none = Hacerla más larga, o apartar la curva del casquillo con un codo.
why-route-twist-ok = El movimiento torsiona la manguera { $value }.
why-route-twist = El movimiento torsiona la manguera { $value }. A { $limit } una manguera puede perder el 70 % de su vida.
cure-route-twist = Tender la manguera para que se curve en el plano en que se mueve la máquina, o poner una junta giratoria en un extremo.
why-route-turn-ok = El giro de { $value } es el que piden estos puertos.
why-route-turn-needed = Ambos terminales son acodados, y estos puertos piden un giro de { $limit } entre ellos.
cure-route-turn-needed = Hacerla con ese giro: de A hacia B con el codo de A hacia arriba, en sentido horario hasta el codo de B.
why-route-turn-differs = Está hecha con un giro de { $value }; estos puertos piden { $limit }. Montada quedaría torsionada.
cure-route-turn-differs = Hacerla con un giro de { $limit }, o dejar que un codo apunte a otro lado.
why-route-too-short = Una manguera de { $value } no alcanza en todas las posiciones, acortada por la presión como puede estarlo.
cure-route-too-short = Necesita { $limit } como mínimo.
why-route-out-of-reach = Una manguera de { $value } no alcanza en todas las posiciones, acortada por la presión como puede estarlo.
cure-route-out-of-reach = Hacerla más larga, mover o girar un puerto, o tomar un codo.
why-route-unsettled = No se llegó a ninguna forma con { $value }.
cure-route-unsettled = Probar una longitud algo distinta.
why-route-no-length = Ninguna longitud de { $hose } conserva { $limit } por el interior en todas las posiciones.
cure-route-no-length = Tomar un codo, mover o girar un puerto, o elegir una manguera que se curve más.

# Single changes that cure a route
route-cure-length = Hacerla de { $length }.
route-cure-exit = Dejar que el codo en { $end } apunte { $points }; hacerla de { $length }.
route-cure-form = Tomar en { $end } un { $form } que apunte { $points }; hacerla de { $length }.
points-towards = hacia el otro puerto
points-away = en sentido contrario al otro puerto
points-front = hacia quien mira
points-back = alejándose de quien mira

# Overrides
why-override-taken = { $by } lo asume: { $reason }
cure-override-taken = Nada, mientras valga el motivo.
why-override-refused = { $rule } no se puede asumir.
cure-override-refused = Remediar lo que dice. Solo los límites de prudencia se pueden asumir con nombre y motivo.
why-override-unsigned = A la asunción de { $rule } le falta nombre o motivo.
cure-override-unsigned = Dar ambos: quién lo asume, y por qué.

# Other hoses
why-alternative-twin-ok = { $hose } figura como su igual en las referencias cruzadas de las propias normas.
why-alternative-pressure-ok = Admite más: { $value } frente a { $limit }.
why-alternative-bend-ok = Se curva más: { $value } frente a { $limit }.
why-alternative-pressure-less = Admite menos: { $value } frente a { $limit }.
cure-alternative-pressure-less = Asegurarse de que el circuito no exige más.
why-alternative-bend-wider = Necesita una curva más amplia: { $value } frente a { $limit }.
cure-alternative-bend-wider = Asegurarse de que el sitio tiene espacio.
why-alternative-same = Lo que va contra la manguera elegida va igual contra esta.
cure-alternative-same = Remediar eso primero.
