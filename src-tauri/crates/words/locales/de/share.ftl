# Der Austausch mit den anderen Geräten einer Flotte.

share-storage = Ablage: { $url }
share-no-storage = Es ist keine Ablage gewählt: Was dieses Gerät schreibt, bleibt auf ihm. Eine wählen mit share set.
share-no-fleet = Dieses Gerät gehört zu keiner Flotte, und nur Geräte einer Flotte tauschen aus, was sie geschrieben haben: eine gründen oder einer beitreten.
share-sent = { $sent } { $sent ->
    [one] Ereignis
   *[other] Ereignisse
 } dieses Geräts gesendet, { $waiting ->
    [0] keines wartet.
    [one] 1 wartet.
   *[other] { $waiting } warten.
 }
share-device = { $name }: { $events } { $events ->
    [one] Ereignis
   *[other] Ereignisse
 } hier, das letzte vom { $day }
share-exchanged = Ausgetauscht { $at }: { $came } { $came ->
    [one] Ereignis
   *[other] Ereignisse
 } gekommen, { $went } gegangen.
share-refused = ABGEWIESEN: Gerät { $device } ab Ereignis { $from }: { $why }
share-waiting-for = Spätere Ereignisse des Geräts { $device } warten auf frühere, die es noch nicht gesendet hat.
share-cut-off = ABGEBROCHEN: { $why }. Was kam und ging, bleibt; noch einmal austauschen.
share-fork = Unter dieser Nummer steht hier ein anderes Ereignis. Zwei Programme haben als dasselbe Gerät geschrieben, wie es geschieht, wenn die Datei eines Registers kopiert wird. Eines davon muss als neues Gerät weitergehen: sichern und die Sicherung wiederherstellen.
share-broken-chain = Es setzt das Ereignis davor nicht fort: Unterwegs wurde etwas geändert oder weggelassen.
share-stranger = Es ist von einem Gerät unterschrieben, das niemandem seinen Schlüssel genannt hat. Dieses Gerät einmal austauschen lassen, dann noch einmal austauschen.
