# Wörter einer Stelle und einer Schlauchleitung.

## Stelle
place-label = Stelle
place-machine = Maschine
place-machine-note = alle ihre Stellen
place-sits = Sitzt dort
place-empty = Hier sitzt jetzt keine Schlauchleitung.
place-never = Hier ist keine Schlauchleitung erfasst.
place-asks = Sie verlangt { $what }.
place-two-hoses = Zwei Schlauchleitungen sind als hier sitzend erfasst. Nachsehen, welche es ist, und die andere austragen.
place-hose-unsettled = Die Erfassung dieser Schlauchleitung widerspricht sich. Öffnen und sagen, welche Fassung gilt.
place-unsettled = die Erfassung ist nicht geklärt
place-times = { $count ->
    [one] einmal
    [2] zweimal
   *[other] { $shown }-mal
}
place-cause-times = { $cause } { $times }
place-failed = AUSGEFALLEN: { $count ->
    [one] EINMAL
    [2] ZWEIMAL
   *[other] { $shown }-MAL
}
hose-place-failed = AN IHREM ORT AUSGEFALLEN: { $count ->
    [one] EINE
   *[other] { $shown }
}
place-failed-why = An dieser Stelle: { $causes }. Nach der Ursache sehen, bevor dieselbe wieder drankommt.
place-failed-once = Hier einmal ausgefallen: { $causes }.
place-lives = Schlauchleitungen dieser Stelle
place-months = gehaltene Monate
place-life = ab { $from }, { $months } Monate, { $end }
place-life-unknown = niemand weiß, seit wann, { $end }
place-came-off = ausgebaut
place-stay-failed = ausgefallen: { $cause }
place-still-on = sitzt noch
place-is-there = Hier sitzt eine
place-is-there-note = erfassen
place-on-record = Die Schlauchleitung hier
place-on-record-how = Was von ihr bekannt ist: Typ und beide Enden. Aufdruck lesen, Enden mit der Lehre messen; nicht raten. Sie wird als anderswo gefertigt, nicht druckgeprüft und hier nicht geprüft gesichert, unter einem neuen Code.
place-on-record-fitted = Eingebaut am; leer: Niemand weiß es
place-on-record-assembled = Gefertigt am, laut Presshülse; leer: Niemand weiß es
place-on-record-days = Eine, von der kein Tag bekannt ist, gilt als heute vorgefunden, und ihr Alter zählt nie als jung.
place-over = Zu viel von ihr verlangt
place-within = Nichts Bekanntes verlangt zu viel von ihr.
place-open = Nicht sicher bekannt: { $what }.
place-replace = Ersatz fertigen
place-replace-then = zum Prüfen: von dieser wird zu viel verlangt
place-far-out = Mehr als { $most }: Dort enden Hydraulikleitungen (übliche Praxis). Noch einmal ablesen.
place-service = Was sie verlangt
place-service-more = Kälte, Luft, Volumenstrom, Biegung, Unterdruck, Anforderungen
place-service-recorded = { $name }, erfasst
place-service-recorded-how = Erfasst: vom Kreis oder von der Schlauchleitung, die hier sitzt oder saß. Der nächste Auftrag beginnt damit.
place-keep = Sichern
place-go-on = Weiter mit dem hier begonnenen Auftrag
place-go-on-then = bei { $step }
place-another = Neuen beginnen
place-another-note = der hier begonnene bleibt
place-why-note = jetzt sagen, solange die alte zu sehen ist
place-why-then = geht mit zum Einbau
place-same = Gleiches für Gleiches
place-same-then = { $what }, zum Prüfen
place-same-failed = hier ausgefallen: { $times }
place-measure = Messen
place-measure-note = die alte, Ende für Ende
place-measure-then = dieselbe fiel hier mehr als einmal aus
place-no-spec = was hier sitzt, ist nicht erfasst
place-fit-here = Hier eine einbauen
place-fit-here-then = messen, was die Stelle braucht
place-scan = Schild scannen
place-scan-note = eine, die gefertigt ist

## Alter
hose-years = Jahre
hose-at-least = { $years } oder mehr
hose-limit-guide = Richtwert: { $count ->
    [one] { $years } Jahr
   *[other] { $years } Jahre
}.
hose-limit-policy = Grenze des Eigentümers: { $count ->
    [one] { $years } Jahr
   *[other] { $years } Jahre
}.
hose-age-unknown = Kein Tag ist bekannt, ab dem zu zählen wäre.
hose-age-found = Am { $day } eingebaut vorgefunden; wann sie gefertigt wurde, weiß niemand. Presshülse und Aufdruck ansehen.
hose-age = Alter

## Schlauchleitung
hose-title = Schlauchleitung
hose-bar-max = bar max
hose-drawing = Die Schlauchleitung: Ende A links, Ende B rechts, Gesamtlänge zwischen den Dichtpunkten
hose-what = Schlauch
hose-end = Ende { $end }
hose-rating = Zulässiger Druck
hose-rating-not-known = nicht bekannt: Ein Teil hat keine Druckangabe
hose-proof = Druckprüfung
hose-assembled = Gefertigt
hose-hose-made = Aufdruck des Schlauchs
hose-check = Prüfung
hose-not-checked = hier nicht geprüft
hose-not-known = nicht bekannt
hose-some-place = eine hier nicht erfasste Stelle
hose-status-made = noch nicht eingebaut
hose-status-fitted = eingebaut
hose-status-taken-off = ausgebaut
hose-status-withdrawn = Schild zurückgezogen
hose-status-failed-proof = Druckprüfung durchgefallen
hose-stays = Wo sie vorher saß
hose-sits = Wo sie sitzt
hose-at = { $machine }, Stelle { $number }
hose-fit = Einbauen
hose-fit-then = Maschine und Stelle wählen
hose-again = Eine gleiche fertigen
hose-again-then = Gleiches für Gleiches, zum Prüfen
hose-not-arrived = Ihre Fertigung ist hier noch nicht erfasst. Die Daten des Wagens einlesen, der sie gefertigt hat.
hose-unknown = HIER NICHT BEKANNT
hose-unknown-what = Buchstaben vom Schild noch einmal lesen. Stimmen sie, ist das Schild von einem anderen Wagen: scannen, denn das Schild sagt selbst, was sie ist, oder die Daten jenes Wagens einlesen.
hose-scan = Schild scannen
hose-scan-then = oder seine Buchstaben noch einmal tippen

## Notizen und Verlauf
hose-notes = Notizen
hose-note-label = Eine Notiz zu dieser Schlauchleitung
hose-note-add = Notiz sichern
hose-history = Erfasst
hose-unnamed = ein Gerät ohne Namen
hose-voided = Gestrichen:
hose-did-made = Erfasst
hose-did-assembled = gefertigt { $day }
hose-did-fitted = Eingebaut { $day }: { $place }
hose-did-found = Dort vorgefunden { $day }: { $place }
hose-did-off = Ausgebaut { $day }: { $place }
hose-did-inspected = Inspiziert { $day }
hose-did-overridden = Gegen die Prüfung verantwortet: { $reason }
hose-did-photo = Ein Foto kam dazu
hose-did-withdrawn = Schild zurückgezogen: { $reason }
hose-did-noted = Notiz: { $text }
hose-did-voided = Gestrichen: { $reason }

## Ansehen im eingebauten Zustand
hose-inspect = Inspiziert
hose-inspect-last = zuletzt { $day }
hose-inspect-never = noch nicht erfasst
hose-inspect-day = Tag
hose-inspect-words = In eigenen Worten
hose-inspect-who = Es wird als von diesem Gerät geschrieben gesichert: { $device }.
hose-grade-pass = nichts gefunden
hose-grade-caution = beobachten
hose-grade-stop = ersetzen
hose-found = { $what }, { $grade }

## Was sich widerspricht
hose-conflict = Zwei Geräte haben es verschieden geschrieben. Schlauchleitung ansehen, dann sagen, was gilt.
hose-this-stands = Dies gilt

## Ein Schild zurückziehen
hose-withdraw = Schild zurückziehen
hose-withdraw-note = verloren, doppelt
hose-withdraw-how = Der Code zählt dann nicht mehr, und mit ihm wird nichts eingebaut. Was erfasst ist, bleibt.
hose-withdraw-why = Warum
hose-withdraw-words = In eigenen Worten
hose-withdraw-do = Schild zurückziehen
hose-failed-proof = DRUCKPRÜFUNG DURCHGEFALLEN
hose-failed-proof-why = Ausschuss. Sie wurde nie gekennzeichnet und wird nie eingebaut.
hose-did-labelled = Etikett gemacht
hose-did-label-seen = Etikett daran gesehen
hose-tag-read = Schild gelesen.
hose-papers = Papiere
hose-papers-note = Bescheinigung, Bericht
hose-withdrawn = ZURÜCKGEZOGEN
hose-withdrawn-why = { $reason }. Unter diesem Schild nicht einbauen.
hose-reason-lost = Schild verloren
hose-reason-doubled = Code an zwei Schlauchleitungen
hose-reason-scrap = Schlauchleitung ausgesondert
