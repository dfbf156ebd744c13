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
share-copied = ZWEIMAL GESCHRIEBEN: Gerät { $device } ab Ereignis { $from }: { $why }
share-not-its-own = Es ist von einem anderen Gerät unterschrieben als dem, das es geschrieben hat, und jenes ist kein Planer der Flotte. Hat jenes Gerät seine Schlüssel verloren: sichern, die Sicherung wiederherstellen, die als neues Gerät weitergeht, und dieses zulassen.
share-withdrawn = Es wurde unterschrieben, nachdem das Gerät von der Flotte abgemeldet war. Es wird aufgehoben und zählt nirgends.
share-standing-open = OFFEN: Niemand hat diese Flotte begründet, darum zählt jedes Gerät, das ihren Schlüssel hat, auch ein verlorenes. Auf dem Gerät des Büros mit fleet found begründen.
share-standing-waits = WARTET auf die Zusage des Büros: Was dieses Gerät schreibt, zählt nur auf ihm, bis ein Planer es zulässt (fleet admit).
share-standing-reader = LESER: Dieses Gerät liest die Einträge der Flotte und schreibt keine.
share-standing-withdrawn = ABGEMELDET: Ein Planer hat dieses Gerät abgemeldet; was es schreibt, zählt nicht mehr.
share-left-out = NICHT GEZÄHLT: { $count } { $count ->
    [one] Ereignis
   *[other] Ereignisse
 } von { $name }: { $why } Siehe share left-out { $device }.
share-left-out-waits = Das Gerät wartet auf die Zusage des Büros.
share-left-out-role = Das Gerät hat nicht die Rolle dafür.
share-left-out-withdrawn = Das Gerät war da schon abgemeldet.
share-left-out-forged = Das Gerät hat es nicht für diese Stelle unterschrieben.
share-left-out-senior = Das andere Gerät war vor ihm Planer.
share-left-out-nothing = Alles, was von ihm kam, zählt.
share-left-out-event = { $event }, { $day }: { $kind } { $what }: { $why }
share-address = „{ $url }“ nennt keine Ablage: file:///ordner (ein Ordner, den es gibt), https://server/ordner oder s3://bucket/ordner schreiben
share-away = Die Ablage antwortet nicht; was geschrieben wird, bleibt bis dahin auf diesem Gerät ({ $cause })
share-refuses = Die Ablage weist dieses Gerät ab; Konto, Kennwort und Ordner prüfen
share-gone = { $name } ist nicht mehr in der Ablage
share-no-segment = Dies ist kein Segment eines Registers; ein Segment beginnt mit einer Zeile, die sein Format nennt
share-newer = Das Segment hat Format { $found }, das dieses Programm nicht kennt; dieses Programm erneuern
share-not-whole = Das Segment ist nicht ganz: Es wurde unterwegs abgeschnitten oder geändert; es wird noch einmal geholt
share-not-signed = Die Unterschrift des Segments passt nicht: Wer es gemacht hat, ist nicht das Gerät, das es nennt
share-other-fleet = Das Segment ist für die Flotte { $fleet } verschlüsselt, deren Schlüssel dieses Gerät nicht hat; dieser Flotte beitreten
share-other-events = Die Ereignisse des Segments sind nicht die, die sein Kopf nennt: Es wurde falsch gemacht oder gefälscht
share-empty = Ein Segment enthält mindestens ein Ereignis
share-unreadable = Was das Segment enthält, ist nicht zu lesen: Ein neueres Programm hat es gemacht, oder es ist gefälscht
share-choose-first = Es ist noch keine Ablage gewählt: share set sagt, wo die der Flotte ist
share-join-first = Dieses Gerät gehört zu keiner Flotte: zuerst eine gründen oder einer beitreten
share-not-settled = { $count ->
    [one] 1 Sache ist nicht geklärt: Geräte haben sie auf zwei Arten gesagt. Ein Mensch klärt sie dort, wo sie steht.
   *[other] { $count } Sachen sind nicht geklärt: Geräte haben sie auf zwei Arten gesagt. Ein Mensch klärt sie dort, wo sie stehen.
}
