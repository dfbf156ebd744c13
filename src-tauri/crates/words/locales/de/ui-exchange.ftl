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
