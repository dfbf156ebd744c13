# Fotos: was mit einem nicht stimmen kann, und was die Befehlszeile von ihnen sagt.

picture-is-none = das ist kein Bild in PNG oder JPEG; das Foto als eines davon aufnehmen
picture-too-large = das Bild hat { $width } x { $height } Bildpunkte, und höchstens { $limit } Millionen werden geöffnet; kleiner aufnehmen oder ausschneiden
picture-broken = das Bild ist beschädigt: { $cause }; noch einmal aufnehmen

photo-unusable = das Foto { $path } lässt sich nicht lesen oder schreiben ({ $cause }); die Rechte seines Ordners prüfen
photo-not-here = das Bild ist noch nicht da: Es kommt mit dem nächsten Austausch nach dem Gerät, das es aufgenommen hat
photo-damaged = die Datei des Bildes ist auf diesem Gerät beschädigt und wird nicht gezeigt; der nächste Austausch holt es neu, wo die Ablage es hat
photo-no-such = kein Foto der Aufzeichnungen hat diese Prüfsumme; photo list nennt sie
photo-many = { $count } Fotos der Aufzeichnungen beginnen so; mehr Stellen angeben
photo-added = Aufgehoben als { $photo }, { $size } kB.
photo-known = Schon bekannt als { $photo }: dasselbe Bild derselben Sache.
photo-none = Kein Foto ist aufgezeichnet.
photo-state-here = hier
photo-state-missing = das Bild ist noch nicht da
photo-state-damaged = hier BESCHÄDIGT; wird beim nächsten Austausch neu geholt
share-photos = Fotos: { $here } von { $named } hier.
share-photos-moved = Fotos: { $came } gekommen, { $went } gegangen.
share-photos-to-come = { $count } { $count ->
    [one] Foto ist noch nicht da: Es kommt, nachdem das Gerät, das es aufgenommen hat,
   *[other] Fotos sind noch nicht da: Sie kommen, nachdem das Gerät, das sie aufgenommen hat,
 } ausgetauscht hat.
share-photos-to-go = { $count } { $count ->
    [one] Foto wartet
   *[other] Fotos warten
 } hier auf das Senden.
share-photo-refused = ABGEWIESEN: Foto { $photo }: Was darunter in der Ablage liegt, ist nicht dieses Bild. Dort löschen; ein Gerät, das es hat, sendet es neu.
backups-photos = Diese enthalten keine Fotos: Die Fotos bleiben im Ordner neben dem Register. register backup hinterlässt eine Datei mit ihnen.
