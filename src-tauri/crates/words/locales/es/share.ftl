# El intercambio con los otros dispositivos de una flota.

share-storage = Almacén: { $url }
share-no-storage = No se ha elegido ningún almacén: lo que escribe este dispositivo se queda en él. Elegir uno con share set.
share-no-fleet = Este dispositivo no pertenece a ninguna flota, y solo los dispositivos de una flota intercambian lo que han escrito: empezar una o unirse a una.
share-sent = { $sent } { $sent ->
    [one] evento
   *[other] eventos
 } de este dispositivo { $sent ->
    [one] enviado
   *[other] enviados
 }, { $waiting ->
    [0] ninguno espera.
    [one] 1 espera.
   *[other] { $waiting } esperan.
 }
share-device = { $name }: { $events } { $events ->
    [one] evento
   *[other] eventos
 } aquí, el último del { $day }
share-exchanged = Intercambio { $at }: { $came ->
    [one] llegó 1 evento
   *[other] llegaron { $came } eventos
 }, { $went ->
    [one] salió 1.
   *[other] salieron { $went }.
 }
share-refused = RECHAZADO: dispositivo { $device } desde el evento { $from }: { $why }
share-waiting-for = Eventos posteriores del dispositivo { $device } esperan a otros anteriores que aún no ha enviado.
share-cut-off = CORTADO: { $why }. Lo que llegó y salió se queda; volver a intercambiar.
share-fork = aquí hay otro evento con ese número. Dos programas escribieron como el mismo dispositivo, como ocurre cuando se copia el archivo de un registro. Uno de ellos tiene que seguir como dispositivo nuevo: hacer una copia de seguridad y restaurarla.
share-broken-chain = no continúa el evento anterior: algo se cambió o se omitió por el camino.
share-stranger = está firmado por un dispositivo que no ha dicho su clave a nadie. Que ese dispositivo intercambie una vez y volver a intercambiar.
