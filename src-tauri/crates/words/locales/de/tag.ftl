# Was über ein gelesenes Schild gesagt wird. Jeder Stand und jeder Befund hat eigene Wörter.
tag-standing-own = Ein Schild von { $fleet }, der eigenen Flotte. Sein Siegel ist echt.
tag-standing-partner = Ein Schild von { $fleet }, der Flotte eines Partners. Sein Siegel ist echt.
tag-standing-foreign = Ein Schild einer Flotte, die dieses Gerät nicht kennt ({ $fleet }). Sein Siegel lässt sich nicht prüfen.
tag-standing-unsealed = Ein Schlauchschild ohne Siegel: Niemand sagt, wer es gemacht hat.
tag-standing-code-alone = Nur der Code eines Schilds: Er sagt nichts darüber, wer es gemacht hat, und nichts über die Schlauchleitung.
tag-standing-altered = Ein Schlauchschild, das nicht ist, wie es gemacht wurde. Nichts darauf gilt.
tag-standing-newer = Ein Schlauchschild eines neueren Programms als dieses.

tag-seal-does-not-fit = das Siegel passt nicht zu dem, was darüber steht
tag-is-a-fleets-key = Das ist der Schlüssel einer Flotte, kein Schlauchschild. Er wird weder gezeigt noch aufbewahrt. Mit ihm unter Wagen der Flotte beitreten.

tag-found-altered = Beschädigt oder verändert: { $problem }.
tag-found-altered-cure = Noch einmal scannen, sauber und gerade. Bleibt es so, nichts darauf trauen: Schlauchleitung messen und neu kennzeichnen.
tag-found-withdrawn = Dieses Schild wurde zurückgezogen: { $reason }.
tag-found-withdrawn-cure = Diese Schlauchleitung nicht einbauen. Herausfinden, was sie ist, und neu kennzeichnen, oder verschrotten.
tag-found-undone = Die Erfassung dieser Schlauchleitung wurde gestrichen: Nichts im Register steht hinter ihrem Schild.
tag-found-undone-cure = Nicht einbauen. Herausfinden, ob sie gefertigt wurde, dann neu fertigen und unter neuem Code erfassen.
tag-found-failed-proof = Die Schlauchleitung dieses Codes fiel bei der Druckprüfung durch: Sie ist Ausschuss.
tag-found-failed-proof-cure = Nicht einbauen. Durchschneiden und neu fertigen.
tag-found-failed-in-use = Die Schlauchleitung dieses Codes versagte und wurde ausgebaut ({ $day }): { $cause }.
tag-found-failed-in-use-cure = Nicht wieder einbauen. Durchschneiden und ihr Schild zurückziehen.
tag-found-contradicted = Zwei Erfassungen dieser Schlauchleitung widersprechen sich, und niemand hat geklärt, welche gilt.
tag-found-contradicted-cure = Unter Wagen klären, bevor auf Schlauchleitung oder Schild vertraut wird.
tag-found-fitted-elsewhere = Im Register ist dieser Code an { $at } eingebaut, nicht hier.
tag-found-fitted-elsewhere-cure = Zwei Schlauchleitungen können einen Code tragen, oder sie wurde versetzt und nicht erfasst. Die andere Stelle ansehen, bevor diese eingebaut oder auf sie vertraut wird.
tag-found-other-seal = Die Schlauchleitung dieses Codes fertigte die eigene Flotte, und dieses Schild hat das Siegel einer anderen Flotte.
tag-found-other-seal-cure = Es wurde kopiert oder gefälscht, oder die eigene Flotte hat seither einen neuen Schlüssel. Schlauchleitung mit dem Register vergleichen, dann ihr Etikett neu drucken.
tag-found-other-spec = Das Register kennt diesen Code mit anderen Angaben, als sein Schild sagt.
tag-found-other-spec-cure = Schlauchleitung messen: Das Schild kann älter sein als eine Berichtigung oder zu einer anderen gehören. Auf keines von beiden vertrauen, bis es feststeht.
tag-found-higher-pressure = Nach ihrem Schild trägt sie mehr als nach dem Register.
tag-found-higher-pressure-cure = Das Register gilt. Schild abnehmen und Etikett neu drucken.
tag-found-other-proof = Sie soll druckgeprüft sein, und im Register steht das nicht.
tag-found-other-proof-cure = Das Register gilt. Gab es eine Druckprüfung, sie erfassen.
tag-found-other-figures = Druck, Flüssigkeit, Anforderungen, Leitungsart oder Datum darauf sind andere als im Register.
tag-found-other-figures-cure = Erfassung öffnen: Sie gilt. Stimmt sie, Etikett neu drucken.
tag-found-taken-off = Die Schlauchleitung dieses Codes wurde von einer Maschine ausgebaut ({ $day }).
tag-found-taken-off-cure = Ihr Alter ansehen und warum sie ausgebaut wurde, bevor sie wieder eingebaut wird.
tag-day-not-known = Tag nicht bekannt
tag-found-not-known = Dieses Register hat nichts zu diesem Code.
tag-found-not-known-cure = Prüfen, was das Schild sagt, die Schlauchleitung danach neu fertigen oder ins Register übernehmen.
tag-found-not-known-alone-cure = Mit dem Wagen zusammenführen, der sie gefertigt hat, oder nach den Wörtern neben dem Code gehen und die Schlauchleitung messen.
tag-found-merge-first = Sie gehört zur eigenen Flotte, und dieses Register hat nichts von ihr: Ein anderer Wagen hat sie erfasst.
tag-found-merge-first-cure = Mit dem Wagen zusammenführen, der sie gefertigt hat. Geht das nicht, vom Schild übernehmen; die zwei Erfassungen erscheinen dann als Widerspruch, der zu klären ist.
tag-found-seal-missing = Die eigene Flotte siegelt ihre Schilder, und dieses einer erfassten Schlauchleitung hat kein Siegel.
tag-found-seal-missing-cure = Es ist älter als die Flotte, oder kopiert. Mit dem Register vergleichen und neu drucken.
tag-found-foreign-figures = Druck und Druckprüfung sind das Wort von jemandem, den dieses Gerät nicht kennt.
tag-found-foreign-figures-cure = Schlauchleitung prüfen, bevor darauf vertraut wird. Übernommen trägt sie nicht mehr, als die Tabellen erlauben.
tag-found-newer = Dieses Programm kann es nicht lesen.
tag-found-newer-cure = Mit einem neueren Programm lesen, oder nach den Wörtern neben dem Code gehen.
tag-found-not-proved = Die Schlauchleitung ist nicht druckgeprüft.
tag-found-not-proved-cure = Druckprüfen, bevor sie Druck trägt.
tag-found-age-not-known = Niemand hat festgehalten, wann diese Schlauchleitung gefertigt wurde: Ihr Alter ist nicht bekannt.
tag-found-age-not-known-cure = Das Datum auf Presshülse und Aufdrucklinie suchen. Steht dort keines, gilt sie als überaltert und wird neu gefertigt.
tag-found-sits = Im Register ist sie an { $at } eingebaut.
tag-found-sits-cure = Dort ihre Erfassung öffnen.

tag-taken-in-own = Vom Schild übernommen, unter dem Siegel dieser Flotte. Das Schild sagt: { $proof }.
tag-taken-in-partner = Vom Schild übernommen, unter dem Siegel der Flotte eines Partners. Das Schild sagt: { $proof }.
tag-taken-in-foreign = Vom Schild übernommen, unter einem Siegel, das sich nicht prüfen ließ. Das Schild sagt: { $proof }.
tag-taken-in-unsealed = Vom Schild übernommen, das kein Siegel hat. Das Schild sagt: { $proof }.
tag-taken-in-left-out = Nicht übernommen, denn niemand hier Bekanntes steht dafür ein: { $lines }.
tag-taken-in-done = { $code } ist jetzt erfasst.
tag-taken-in-pressure = Sie trägt { $pressure }.
tag-taken-in-no-pressure = Was sie trägt, ist nicht bekannt: Die Tabellen nennen keinen zulässigen Druck, und niemand hier Bekanntes steht für ihr Schild ein. Prüfen.

tag-stocks-that-do = Von den eigenen Etiketten würden reichen: { $stocks }.
tag-label-of = { $holds ->
    [full-text] QR-Code mit dem ganzen Text
   *[code-alone] QR-Code nur mit dem Code, die Angaben in Wörtern
    [code-only] QR-Code und Code allein: Die Wörter haben keinen Platz
}, Version { $version }, Stufe { $level }, Module von { $module } ({ $dots } Punkte); lesbar aus etwa { $from }.
tag-label-along = Rund um einen Schlauch von { $od } sieht eine Kamera davon { $seen }. Mit den Wörtern entlang des Schlauchs aufkleben.
tag-label-around = Rund um einen Schlauch von { $od } sieht eine Kamera davon { $seen }. Mit den Wörtern um den Schlauch herum aufkleben.
tag-diameter-doubt = { $from ->
    [reckoned] Niemand hat über die Decke gemessen, und in den Tabellen steht nur ihr größter Durchmesser: Genommen ist das { $part }-Fache davon, das Kleinste, was sein kann.
   *[tables] Niemand hat über die Decke gemessen: Genommen ist das Kleinste, was die Tabellen erlauben.
} Gemessen wird der Code vielleicht größer.
tag-label-reprint = Es sagt NACHDRUCK: Die Schlauchleitung hatte schon ein Etikett.
tag-batch-title = Schlauchetiketten
tag-batch-made = { $made ->
    [one] 1 Etikett
   *[other] { $made } Etiketten
} auf { $pages ->
    [one] 1 Seite
   *[other] { $pages } Seiten
}, davon { $reprints } Nachdruck.
tag-batch-refused = kein Etikett: { $why }
tag-batch-reprint = Nachdruck
tag-scans-none = Auf diesem Gerät wurde nichts gescannt.
tag-way-picture = Bild
tag-way-typed = getippt
tag-stock-form-flag = Fahne
tag-stock-form-wrap = Wickel
tag-stock-form-plate = Plakette
tag-stocks-kept = Gesichert.

fleets-keys-kept = Die Schlüssel liegen in { $file }. { $owner ->
    [yes] Nur ihr Besitzer darf die Datei lesen.
   *[no] Wer diesen Ordner öffnen kann, kann sie lesen: dieses Gerät gesperrt halten.
} Sie sind in keiner Datensicherung, keinem Paket und keiner Ausgabe: Ein wiederhergestelltes Gerät tritt seiner Flotte neu bei.
fleets-hand-on-caution = Das ist der Schlüssel von { $fleet }. Wer ihn fotografiert, kann Schilder machen, die als eigene gelesen werden, und er lässt sich nicht zurücknehmen. Nur einem Gerät der Flotte zeigen, das daneben ist, und sofort schließen. Nirgendwohin senden und für niemanden drucken.
fleets-hand-on-until = Er wird bis { $until } gelesen. Danach neu zeigen.
fleets-device = Dieses Gerät: { $mark }
fleets-own = Flotte { $name } ({ $mark }), seit { $day }{ $from }
fleets-seen = Flotte { $name } ({ $mark }), weitergegeben vom Gerät { $from }. Nichts wurde behalten. Beide Zeichen mit dem Bildschirm des anderen Geräts vergleichen; sind sie gleich, mit --from { $from } beitreten.
fleets-seen-known = { $from } ist das Zeichen von { $device }, dessen Erfassungen in diesem Register stehen.
fleets-from = , weitergegeben von { $from }
fleets-none = Keine Flotte: Schilder werden ohne Siegel gemacht. Eine gründen oder einer beitreten.
fleets-partner = Partner { $name } ({ $mark }), seit { $day }{ $from }
fleets-other = Gerät { $name }: { $mark }, { $stands }
fleets-no-name = ohne Namen
fleets-founder = Begründet von { $mark }; dieses Gerät: { $stands }
fleets-seen-founder = Die Flotte wurde vom Gerät { $mark } begründet, dessen Wort über ihre Mitglieder dieses Gerät glauben wird; nach dem Beitritt wartet es auf die Zusage des Büros.
fleets-seen-open = Die Flotte ist offen: Niemand hat sie begründet, und jedes Gerät zählt, das ihren Schlüssel hat.
fleets-standing-open = zählt, wie jedes Gerät einer offenen Flotte
fleets-standing-waits = wartet auf die Zusage des Büros
fleets-standing-reader = Leser
fleets-standing-technician = Techniker
fleets-standing-planner = Planer
fleets-standing-founder = Gründer
fleets-standing-withdrawn = abgemeldet
