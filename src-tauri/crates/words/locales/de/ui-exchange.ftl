# Wörter des Austauschs mit den anderen Geräten der Flotte.
exchange-title = Andere Wagen
exchange-note = ein Register für die ganze Flotte
exchange-means = Die Geräte der Flotte legen an einem Ort eurer Wahl ab, was sie geschrieben haben, und holen dort, was die anderen schrieben. Es ist mit dem Schlüssel der Flotte verschlüsselt: Wer den Ort betreibt, kann es nicht lesen. Ohne Empfang geht alles wie bisher und wird später ausgetauscht.
exchange-no-fleet = Nur Geräte einer Flotte tauschen aus, was sie geschrieben haben. Eine Flotte gründen oder einer beitreten.
exchange-to-fleet = Zur Flotte
exchange-kind = Wo
exchange-kind-webdav = WebDAV
exchange-kind-s3 = Objektspeicher (S3)
exchange-kind-folder = Ordner oder Stick
exchange-url = Adresse
exchange-endpoint = Adresse des Dienstes
exchange-region = Region
exchange-user = Konto
exchange-password = Kennwort
exchange-key-id = Kennung des Schlüssels
exchange-key = Schlüssel
exchange-secret-means = Es liegt neben dem Schlüssel der Flotte auf diesem Gerät und wird nie wieder gezeigt.
exchange-use = Diesen Ort nehmen
exchange-use-note = gefragt wird er beim ersten Austausch
exchange-keep = Den bisherigen behalten
exchange-now = Jetzt austauschen
exchange-running = Tauscht aus
exchange-waits-then = { $count ->
    [one] 1 Eintrag wartet
   *[other] { $shown } Einträge warten
 }
exchange-nothing-waits-then = nichts Eigenes wartet
exchange-waits = { $count ->
    [one] 1 Eintrag dieses Geräts wartet
   *[other] { $shown } Einträge dieses Geräts warten
 }
exchange-all-sent = Alles, was dieses Gerät schrieb, ist gesendet
exchange-last = Letzter Austausch { $when }:
exchange-came = { $count ->
    [0] nichts Neues kam,
    [one] 1 Eintrag kam,
   *[other] { $shown } Einträge kamen,
 }
exchange-went = { $count ->
    [0] keiner ging.
    [one] 1 ging.
   *[other] { $shown } gingen.
 }
exchange-photos-here = { $here } von { $named } Fotos sind auf diesem Gerät.
exchange-photos = Fotos: { $came } gekommen, { $went } gegangen.
exchange-photos-to-come = { $count ->
    [one] 1 Foto ist
   *[other] { $shown } Fotos sind
 } noch nicht da.
exchange-photos-to-go = { $count ->
    [one] 1 Foto wartet
   *[other] { $shown } Fotos warten
 } auf das Senden.
exchange-photo-refused = Abgewiesen, Foto { $photo }: Was dort liegt, ist nicht dieses Bild. In der Ablage löschen; ein Gerät, das es hat, sendet es neu.
exchange-never = Noch wurde nichts ausgetauscht.
exchange-cut-off = Abgebrochen; was kam und ging, bleibt.
exchange-refused = Abgewiesen, Gerät { $device } ab Eintrag { $from }:
exchange-waiting-for = Spätere Einträge des Geräts { $device } warten auf frühere, die es noch nicht gesendet hat.
exchange-devices = Was hierher gekommen ist
exchange-no-devices = Noch nichts von einem anderen Gerät.
exchange-device = { $count ->
    [one] 1 Eintrag
   *[other] { $shown } Einträge
 }, bis { $when }
exchange-storage = Wo sie sich treffen
exchange-change = Anderer Ort
exchange-stop = Nicht mehr austauschen
members-open = OFFENE FLOTTE
members-open-means = Niemand hat sie begründet: Jedes Gerät zählt, das ihren Schlüssel hat, auch ein verlorenes.
members-found = Auf diesem Gerät begründen
members-found-note = dessen Wort sagt dann, wer dazugehört
members-found-title = Die Flotte hier begründen?
members-found-means = Auf dem Gerät des Büros tun. Wessen Einträge hier sind, wird Techniker. Alle anderen lesen den Schlüssel der Flotte noch einmal von einem Bildschirm, unter Wagen, Flotte, und werden hier zugelassen. Geht dieses Gerät verloren, muss die Flotte neu begonnen werden.
members-found-yes = Begründen
members-not-now = Jetzt nicht
members-waits = WARTET AUF DIE ZUSAGE DES BÜROS
members-waits-means = Was dieses Gerät schreibt, zählt nur auf ihm, bis ein Planer es zulässt. Es liest, was die anderen schrieben. Sein Zeichen: { $mark }
members-reader = LESER
members-reader-means = Dieses Gerät liest die Einträge der Flotte und schreibt keine. Ein Planer kann ihm eine andere Rolle geben.
members-withdrawn = ABGEMELDET
members-withdrawn-means = Ein Planer hat dieses Gerät abgemeldet: Was es schreibt, zählt nicht mehr. Aus einer Sicherung wiederhergestellt geht es als neues Gerät weiter, das zugelassen werden kann.
members-copied = ZWEIMAL GESCHRIEBEN
members-copied-means = Zwei Programme haben als Gerät { $device } geschrieben: Die Datei eines Registers wurde kopiert. Eines davon geht als neues Gerät weiter: sichern und die Sicherung wiederherstellen.
members-this = Dieses Gerät: { $standing }
members-standing-open = zählt
members-standing-waits = wartet auf die Zusage des Büros
members-standing-reader = Leser
members-standing-technician = Techniker
members-standing-planner = Planer
members-standing-founder = Gründer der Flotte
members-standing-withdrawn = abgemeldet
members-left-out = { $count ->
    [one] 1 Eintrag zählt nicht
   *[other] { $shown } Einträge zählen nicht
 }
members-mark = Sein Zeichen
members-compare = Auf den Bildschirm jenes Geräts schauen, unter Wagen, Flotte: Dort muss dasselbe Zeichen stehen.
members-admit = Zulassen als
members-role = Andere Rolle geben
members-as-technician = Techniker
members-as-technician-note = alles zur Arbeit
members-as-planner = Planer
members-as-planner-note = lässt auch zu, meldet ab und setzt Altersgrenzen
members-as-reader = Leser
members-as-reader-note = liest und schreibt nichts
members-lost = Es ist verloren
members-withdraw = Abmelden
members-withdraw-note = was hierher kam, bleibt
members-withdraw-title = { $name } abmelden?
members-withdraw-means = Seine { $shown } Einträge, die hier sind, bleiben. Was es danach unterschreibt, zählt auf keinem Gerät. Unter diesem Zeichen kommt es nicht wieder. Wer es hat, kann weiter lesen, was ausgetauscht wird, bis das Kennwort der Ablage geändert ist.
members-withdraw-yes = Abmelden
members-stays = Seine ersten { $shown } Einträge bleiben.
members-before = Es war vor diesem Gerät Planer: Nur wer vor ihm war, gibt ihm eine Rolle oder meldet es ab.
members-planners = Ein Planer lässt Geräte zu und gibt Rollen.
members-no-key = Es hat keinen Schlüssel genannt: wiederhergestellt oder von einem älteren Programm.
members-left-out-title = Was nicht zählt
members-why-waits = wartet auf die Zusage
members-why-role = nicht seine Rolle
members-why-withdrawn = nach der Abmeldung unterschrieben
members-why-forged = nicht von ihm unterschrieben
members-why-senior = über einen Planer vor ihm
