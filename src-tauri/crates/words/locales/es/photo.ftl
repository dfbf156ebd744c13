# Fotos: qué puede fallar en una, y qué dice de ellas la línea de órdenes.

picture-is-none = esto no es una imagen PNG ni JPEG; tome la foto en uno de estos formatos
picture-too-large = la imagen tiene { $width } x { $height } puntos, y se abren como mucho { $limit } millones; tómela más pequeña o recórtela
picture-broken = la imagen está dañada: { $cause }; tómela de nuevo

photo-unusable = la foto { $path } no se puede leer o escribir ({ $cause }); revise los permisos de su carpeta
photo-not-here = la imagen aún no ha llegado: llega con el próximo intercambio después del dispositivo que la tomó
photo-damaged = el archivo de la imagen está dañado en este dispositivo y no se muestra; el próximo intercambio la trae de nuevo si el almacén la tiene
photo-no-such = ninguna foto registrada tiene esa suma; photo list las nombra
photo-many = { $count } fotos registradas empiezan así; dé más cifras
photo-added = Guardada como { $photo }, { $size } kB.
photo-known = Ya conocida como { $photo }: la misma imagen de lo mismo.
photo-none = No hay ninguna foto registrada.
photo-state-here = aquí
photo-state-missing = su imagen aún no ha llegado
photo-state-damaged = DAÑADA aquí; se trae de nuevo en el próximo intercambio
share-photos = Fotos: { $here } de { $named } aquí.
share-photos-moved = Fotos: { $came ->
    [one] llegó 1
   *[other] llegaron { $came }
 }, { $went ->
    [one] salió 1.
   *[other] salieron { $went }.
 }
share-photos-to-come = { $count ->
    [one] 1 foto aún no ha llegado: llega
   *[other] { $count } fotos aún no han llegado: llegan
 } cuando haya intercambiado el dispositivo que { $count ->
    [one] la
   *[other] las
 } tomó.
share-photos-to-go = { $count ->
    [one] 1 foto espera
   *[other] { $count } fotos esperan
 } aquí para enviarse.
share-photo-refused = RECHAZADA: foto { $photo }: lo que hay en el almacén con ese nombre no es esa imagen. Bórrelo allí, y un dispositivo que la tenga la envía de nuevo.
backups-photos = Estas no llevan fotos: las fotos quedan en la carpeta junto al registro. register backup deja un archivo con ellas.
