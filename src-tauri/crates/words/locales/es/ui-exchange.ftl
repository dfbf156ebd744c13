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
exchange-photos-here = { $here } de { $named } fotos están en este dispositivo.
exchange-photos = Fotos: llegaron { $came }, salieron { $went }.
exchange-photos-to-come = { $count ->
    [one] 1 foto aún no ha
   *[other] { $shown } fotos aún no han
 } llegado.
exchange-photos-to-go = { $count ->
    [one] 1 foto espera
   *[other] { $shown } fotos esperan
 } para enviarse.
exchange-photo-refused = Rechazada, foto { $photo }: lo que hay allí no es esa imagen. Bórrela en el almacén, y un dispositivo que la tenga la envía de nuevo.
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
members-open = FLOTA ABIERTA
members-open-means = Nadie la ha fundado: cuenta todo dispositivo que tenga su clave, también uno perdido.
members-found = Fundarla en este dispositivo
members-found-note = su palabra dice entonces quién pertenece
members-found-title = ¿Fundar la flota aquí?
members-found-means = Hágase en el dispositivo de la oficina. Aquellos cuyas anotaciones están aquí pasan a técnicos. Los demás leen de nuevo la clave de la flota en una pantalla, en Furgón, Flota, y se admiten aquí. Si este dispositivo se pierde, hay que empezar la flota de nuevo.
members-found-yes = Fundarla
members-not-now = Ahora no
members-waits = ESPERA EL VISTO BUENO DE LA OFICINA
members-waits-means = Lo que escribe este dispositivo cuenta solo en él hasta que un planificador lo admita. Lee lo que escribieron los demás. Su marca: { $mark }
members-reader = LECTOR
members-reader-means = Este dispositivo lee las anotaciones de la flota y no escribe ninguna. Un planificador puede darle otro papel.
members-withdrawn = DADO DE BAJA
members-withdrawn-means = Un planificador dio de baja este dispositivo: lo que escribe ya no cuenta. Restaurado de una copia sigue como dispositivo nuevo, que se puede admitir.
members-copied = ESCRITO DOS VECES
members-copied-means = Dos programas escribieron como el dispositivo { $device }: se copió el archivo de un registro. Uno de ellos sigue como dispositivo nuevo: haga una copia y restáurela.
members-this = Este dispositivo: { $standing }
members-standing-open = cuenta
members-standing-waits = espera el visto bueno de la oficina
members-standing-reader = lector
members-standing-technician = técnico
members-standing-planner = planificador
members-standing-founder = fundador de la flota
members-standing-withdrawn = dado de baja
members-left-out = { $count ->
    [one] 1 anotación no cuenta
   *[other] { $shown } anotaciones no cuentan
 }
members-mark = Su marca
members-compare = Mirar la pantalla de ese dispositivo, en Furgón, Flota: allí debe estar la misma marca.
members-admit = Admitirlo como
members-role = Darle otro papel
members-as-technician = Técnico
members-as-technician-note = todo lo del trabajo
members-as-planner = Planificador
members-as-planner-note = también admite, da de baja y fija límites de edad
members-as-reader = Lector
members-as-reader-note = lee y no escribe nada
members-lost = Se ha perdido
members-withdraw = Darlo de baja
members-withdraw-note = lo que ha llegado aquí se queda
members-withdraw-title = ¿Dar de baja { $name }?
members-withdraw-means = Sus { $shown } anotaciones que están aquí se quedan. Lo que firme después no cuenta en ningún dispositivo. No puede volver con esta marca. Quien lo tenga puede seguir leyendo lo que se intercambia hasta que se cambie la contraseña del almacén.
members-withdraw-yes = Darlo de baja
members-stays = Sus primeras { $shown } anotaciones se quedan.
members-before = Era planificador antes que este dispositivo: solo los anteriores a él le dan un papel o lo dan de baja.
members-planners = Un planificador admite dispositivos y da papeles.
members-no-key = No ha dicho ninguna clave: restaurado o de un programa anterior.
members-left-out-title = Lo que no cuenta
members-why-waits = espera el visto bueno
members-why-role = no es su papel
members-why-withdrawn = firmado después de la baja
members-why-forged = no firmado por él
members-why-senior = sobre un planificador anterior
