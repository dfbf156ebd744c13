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
share-copied = ESCRITO DOS VECES: dispositivo { $device } desde el evento { $from }: { $why }
share-not-its-own = está firmado por otro dispositivo que el que lo escribió, y ese no es planificador de la flota. Si ese dispositivo perdió sus claves: hacer una copia de seguridad, restaurarla, que sigue como dispositivo nuevo, y admitir este.
share-withdrawn = se firmó después de que el dispositivo se diera de baja en la flota. Se guarda y no cuenta en ninguna parte.
share-standing-open = ABIERTA: nadie ha fundado esta flota, así que cuenta todo dispositivo que tenga su clave, también uno perdido. Fundarla con fleet found en el dispositivo de la oficina.
share-standing-waits = ESPERA el visto bueno de la oficina: lo que escribe este dispositivo cuenta solo en él hasta que un planificador lo admita (fleet admit).
share-standing-reader = LECTOR: este dispositivo lee las anotaciones de la flota y no escribe ninguna.
share-standing-withdrawn = DADO DE BAJA: un planificador dio de baja este dispositivo; lo que escribe ya no cuenta.
share-left-out = SIN CONTAR: { $count } { $count ->
    [one] evento
   *[other] eventos
 } de { $name }: { $why } Véase share left-out { $device }.
share-left-out-waits = el dispositivo espera el visto bueno de la oficina.
share-left-out-role = el dispositivo no tiene el papel para ello.
share-left-out-withdrawn = el dispositivo ya estaba dado de baja.
share-left-out-forged = el dispositivo no lo firmó para ese lugar.
share-left-out-senior = el otro dispositivo era planificador antes que él.
share-left-out-nothing = Todo lo que llegó de él cuenta.
share-left-out-event = { $event }, { $day }: { $kind } { $what }: { $why }
share-address = "{ $url }" no nombra ningún almacén: escribir file:///carpeta (una carpeta que exista), https://servidor/carpeta o s3://bucket/carpeta
share-away = el almacén no responde; lo que se escribe se queda en este dispositivo hasta que responda ({ $cause })
share-refuses = el almacén rechaza este dispositivo; comprobar cuenta, contraseña y carpeta
share-gone = { $name } ya no está en el almacén
share-no-segment = esto no es un segmento de un registro; un segmento empieza con una línea que dice su formato
share-newer = el segmento tiene el formato { $found }, que este programa no conoce; actualizar este programa
share-not-whole = el segmento no está entero: se cortó o se cambió por el camino; se vuelve a traer
share-not-signed = la firma del segmento no corresponde: quien lo hizo no es el dispositivo que nombra
share-other-fleet = el segmento está cifrado para la flota { $fleet }, cuya clave no tiene este dispositivo; unirse a esa flota
share-other-events = los eventos del segmento no son los que dice su cabecera: se hizo mal o es falso
share-empty = un segmento contiene al menos un evento
share-unreadable = lo que contiene el segmento no se puede leer: lo hizo un programa más nuevo o es falso
share-choose-first = aún no se ha elegido ningún almacén: share set dice dónde está el de la flota
share-join-first = este dispositivo no pertenece a ninguna flota: primero empezar una o unirse a una
share-not-settled = { $count ->
    [one] 1 cosa está sin resolver: los dispositivos la contaron de dos maneras. La resuelve una persona donde consta.
   *[other] { $count } cosas están sin resolver: los dispositivos las contaron de dos maneras. Las resuelve una persona donde constan.
}
