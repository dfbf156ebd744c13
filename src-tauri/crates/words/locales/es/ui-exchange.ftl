# Palabras del intercambio con los otros dispositivos de la flota.
exchange-title = Otras furgonetas
exchange-note = un registro para toda la flota
exchange-means = Los dispositivos de la flota dejan lo que han escrito en un lugar que usted elige y recogen de él lo que escribieron los demás. Va cifrado con la clave de la flota: quien lleva el lugar no puede leerlo. Sin cobertura todo funciona igual y se intercambia después.
exchange-no-fleet = Solo los dispositivos de una flota intercambian lo que han escrito. Empezar una flota o unirse a una.
exchange-to-fleet = A la flota
exchange-kind = Dónde
exchange-kind-webdav = WebDAV
exchange-kind-s3 = Almacén de objetos (S3)
exchange-kind-folder = Carpeta o memoria
exchange-url = Dirección
exchange-endpoint = Dirección del servicio
exchange-region = Región
exchange-user = Cuenta
exchange-password = Contraseña
exchange-key-id = Identificador de la clave
exchange-key = Clave
exchange-secret-means = Se guarda junto a la clave de la flota en este dispositivo y no se vuelve a mostrar.
exchange-use = Usar este lugar
exchange-use-note = se le pregunta en el primer intercambio
exchange-keep = Dejar el que hay
exchange-now = Intercambiar ahora
exchange-running = Intercambiando
exchange-waits-then = { $count ->
    [one] espera 1 anotación
   *[other] esperan { $shown } anotaciones
 }
exchange-nothing-waits-then = no espera nada propio
exchange-waits = { $count ->
    [one] Espera 1 anotación de este dispositivo
   *[other] Esperan { $shown } anotaciones de este dispositivo
 }
exchange-all-sent = Se ha enviado todo lo que escribió este dispositivo
exchange-last = Último intercambio { $when }:
exchange-came = { $count ->
    [0] no llegó nada nuevo,
    [one] llegó 1 anotación,
   *[other] llegaron { $shown } anotaciones,
 }
exchange-went = { $count ->
    [0] no salió ninguna.
    [one] salió 1.
   *[other] salieron { $shown }.
 }
exchange-never = Todavía no se ha intercambiado nada.
exchange-cut-off = Cortado; lo que llegó y salió se queda.
exchange-refused = Rechazado, dispositivo { $device } desde la anotación { $from }:
exchange-waiting-for = Anotaciones posteriores del dispositivo { $device } esperan a otras anteriores que aún no ha enviado.
exchange-devices = Lo que ha llegado aquí
exchange-no-devices = Todavía nada de otro dispositivo.
exchange-device = { $count ->
    [one] 1 anotación
   *[other] { $shown } anotaciones
 }, hasta { $when }
exchange-storage = Dónde se encuentran
exchange-change = Otro lugar
exchange-stop = Dejar de intercambiar
