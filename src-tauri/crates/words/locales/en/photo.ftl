# Photos: what can go wrong with one, and what the command line says of them.

# What is wrong with a picture, in English as its reader says it.
picture-is-none = this is no PNG or JPEG picture; take the photograph as one of these
picture-too-large = the picture is { $width } x { $height } pixels, and { $limit } million are the most that are opened; take it smaller or cut it out
picture-broken = the picture is broken: { $cause }; take it again

# What is wrong with a photo's file, in English as the store says it.
photo-unusable = the photo { $path } can not be read or written ({ $cause }); check its folder's permissions
photo-not-here = the picture has not come yet: it comes with the next exchange after the device that took it
photo-damaged = the picture's file is damaged on this device and is not shown; the next exchange fetches it again where the storage has it
photo-no-such = no photo on record has that hash; photo list tells them
photo-many = { $count } photos on record begin so; give more digits
photo-added = Kept as { $photo }, { $size } kB.
photo-known = Known already as { $photo }: the same picture of the same thing.
photo-none = No photo is on record.
photo-state-here = here
photo-state-missing = its picture has not come yet
photo-state-damaged = DAMAGED here; fetched again at the next exchange
share-photos = Photos: { $here } of { $named } here.
share-photos-moved = Photos: { $came } came, { $went } went.
share-photos-to-come = { $count } { $count ->
    [one] photo has not come yet: it comes
   *[other] photos have not come yet: they come
 } after the device that took { $count ->
    [one] it
   *[other] them
 } has exchanged.
share-photos-to-go = { $count } { $count ->
    [one] photo waits
   *[other] photos wait
 } here to be sent.
share-photo-refused = REFUSED: photo { $photo }: what lies in the storage under it is not that picture. Delete it there, and a device that has it sends it again.
backups-photos = These carry no photos: the photos stay in the folder beside the register. register backup leaves one file with them.
