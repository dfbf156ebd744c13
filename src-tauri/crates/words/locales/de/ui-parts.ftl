# Wörter, die auf den Teilen der Bildschirme selbst stehen.

## Schriftfeld und Wege
sun-toggle = Sonnenansicht: Schwarz auf Weiß, ohne Farbe
chain-name = Schritte des Auftrags
chain-done = erledigt
bar-name = Orte

## Tastenfeld
keypad-name = Tastenfeld
keypad-rubout = Löschen
keypad-unit = Einheit
keypad-point = Dezimalzeichen
keypad-plus = Zoll +
keypad-minus = Vorzeichen wechseln
keypad-cant = unklar
unit-in = Zoll
unit-mm = mm
unit-m = m
unit-ft = ft
unit-bar = bar
unit-psi = psi
unit-c = °C
unit-f = °F
unit-l-min = l/min
unit-gpm = gpm

## Buchstaben
letters-name = Buchstaben
letters-space = leer
letters-worn = Ein abgeriebener Buchstabe
letters-gone = Lücke
letters-gone-name = Beliebig viele fehlende Buchstaben
code-so-far = Code bisher: { $code }
code-empty = Noch kein Buchstabe des Codes

## Kandidaten
ruler-name = Kandidaten auf einem Maßstab
ruler-none = keines davon
ruler-no-band = kein Tabellenwert
lookalike-title = Verwechselbar: { $name }

## Ergebnisse
finding-source = { $source } · { $basis }
finding-limit-from = Grenze aus { $source }
basis-published-means = steht in der genannten Quelle und wurde dort gelesen
basis-derived-means = aus einer veröffentlichten Formel berechnet
basis-reference-library-means = von der genannten Bibliothek berechnet
basis-common-practice-means = eine Regel des Fachs ohne einzelne Quelle
basis-memory-means = aus dem Gedächtnis und noch nicht an der Quelle geprüft
basis-lower-of-two-means = zwei gedruckte Werte weichen ab; der kleinere gilt
basis-bounded-means = aus den gedruckten Werten der Nachbargrößen gesetzt
basis-proxy-means = eine andere Armatur mit demselben Gewinde; nie genug zum Bestehen
basis-none-means = stoppt, bis die Angabe des Lieferanten eingetragen ist
basis-yours-means = selbst eingetragen

## Druckangaben und Einsatz
links-name = Zulässige Drücke
link-a = A
link-hose = Schlauch
link-b = B
link-adapter = Adapter
link-weakest = am schwächsten
link-unknown = nicht bekannt
service-name = Einsatz

## Etikett
label-true-size = wahre Größe
label-not-true-size = kleiner als wahre Größe
label-set-scale = Maßstab mit einer Karte setzen

## Was eine Leitung tut
line-pressure = Druck
line-return = Rücklauf
line-suction = Saugen
line-case-drain = Lecköl
line-pilot = Steuer
line-cylinder = Zylinder
said-more = noch { $count } anzusehen

## Namen und Unterschriften
parts-name-erased = Name gelöscht
signature-drawn = Unterschrift, wie gezeichnet
signature-open = Hier auf der Linie unterschreiben
signature-back = Letzten Strich zurücknehmen
signature-clear = Neu beginnen
label-about-true-size = etwa wahre Größe
label-size-and-height = { $size }, { $height } hoch
scale-context = Dieser Bildschirm
scale-title = Maßstab setzen
scale-how = Eine Bankkarte hochkant auf die Zeichnung legen, die kurze Seite oben entlang: { $side }. Die Zeichnung so breit machen wie die Karte.
scale-card = Karte
scale-width = Breite der Karte
scale-narrower = Schmaler
scale-wider = Breiter
scale-keep = Maßstab sichern
scale-keep-then = Etiketten erscheinen dann in wahrer Größe
not-settled-name = Nicht geklärt
not-settled = { $count ->
    [one] { $shown } nicht geklärt
   *[other] { $shown } nicht geklärt
  }
not-settled-note = Geräte haben es auf zwei Arten gesagt; bis ein Mensch es klärt, steht hier das Spätere

take-back = Zurücknehmen
take-back-not = Lassen, wie es ist
