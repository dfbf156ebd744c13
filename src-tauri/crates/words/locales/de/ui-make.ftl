# Wörter des Fertigens: an der Säge, an der Presse, am Prüfstand.

## Werte
make-at-end = { $end }: { $step }
make-plus-minus = { $value } ± { $by }
make-hold = { $from } bis { $to }
make-length-tolerance = { $length }, { $plus } { $minus }
make-yours = eigene
make-hero-insertion = ab dem Schnitt, Ende { $end }
make-hero-crimp = über die Flächen, Ende { $end }
make-hero-length = Dichtpunkt zu Dichtpunkt
make-hero-proof = Prüfdruck, { $hold } halten

## Teile, und wer arbeitet
make-parts = Teile, alle neu
make-part-hose = Schlauch
make-part-adapter = Adapter
make-part-ferrule = Presshülse { $ferrule }
make-part-ferrule-open = Presshülse noch nicht bekannt
make-worker = Abgehakt von
make-worker-none = noch niemand: angeben, wer arbeitet

## Der Schnitt
make-cut-drawing = Der Schlauch auf der Säge. { $length } schneiden.
make-cut-drawing-open = Der Schlauch auf der Säge. Die Schnittlänge ist nicht bekannt: Ein Abzugsmaß fehlt.
make-cut-aim = Ziel ± { $by }, rechtwinklig auf { $square }
make-cut-aim-only = Ziel ± { $by }
make-cut-overall = gesamt
make-cut-cutoff = Abzug { $end }
make-cut-how = Aus der Tabelle des Lieferanten, oder eine neue Armatur messen: vom Dichtpunkt zum Anschlag, bis zu dem der Schlauch geht.
make-cut-sealing = Dichtpunkt
make-cut-stop = Schlauchanschlag
make-cut-end-drawing = Eine neue Armatur { $end }: vom Dichtpunkt zum Schlauchanschlag messen.
make-cut-kerf = Säge nimmt { $kerf }
make-cut-off-reel = von der Rolle { $length }
make-cut-kerf-open = Was die Säge von der Rolle nimmt, ist nicht eingestellt (Wagen, Messmittel).
make-cutoff-reading = Abzugsmaß { $end }, Messwert { $number }
make-cutoff-so-far = Bisher gemessen; antippen nimmt einen Wert weg
make-cutoff-remove = Messwert { $number } wegnehmen: { $reading }
make-cutoff-refused = Einer der Messwerte kann nicht sein. Nehmen Sie ihn weg.
make-cutoff-from-nut = Eine neue Armatur, sauber, Mutter zurückgeschoben. Von dort, wo sie dichtet (Dichtkopf, Kegel oder Planfläche),
make-cutoff-from-male = Eine neue Armatur, sauber. Vom Ende ihres Gewindes oder von ihrem Kegel, wie ihre Norm es sagt,
make-cutoff-from-flange = Eine neue Armatur, sauber. Von der Stirn ihres Flanschbunds
make-cutoff-from-banjo = Eine neue Armatur, sauber. Von der Mitte ihres Auges
make-cutoff-from-standpipe = Eine neue Armatur, sauber. Vom Ende ihres Rohrs
make-cutoff-bent = (gebogen: die Mitte ihrer Dichtfläche, entlang des Schlauchs gemessen)
make-cutoff-to = bis zum Anschlag, bis zu dem der Schlauch geht.
make-cutoff-measured = gemessen { $day }
make-cutoff-type = Aus einer Tabelle eintippen
make-cutoff-as = { $cutoff }: { $whose }
make-cutoff-learned = { $count ->
    [one] { $cutoff }: gelernt aus { $count } fertigen Schlauchleitung
   *[other] { $cutoff }: gelernt aus { $count } fertigen Schlauchleitungen
}

## Der Verdrehwinkel
make-turn = Verdrehwinkel
make-turn-how = Am Schlauch entlang von A nach B sehen, Bogen A nach oben: Bogen B steht bei { $turn } im Uhrzeigersinn.
make-turn-found = Gemessen: { $turn }.
make-turn-name = Verdrehwinkel von B gegen A: { $turn }, im Uhrzeigersinn ab A, von A nach B gesehen.

## Einstellungen der Enden
make-settings = Wie jede Armatur aufkommt
make-settings-yours = eigene, aus { $source }
make-crimp-source-none = Niemand hat gesagt, von wem dieses Pressmaß ist: Damit gilt nichts als bestanden. Geben Sie die Quelle ein.
make-end = Ende { $end }
make-cutoff = Abzugsmaß
make-insertion = Einstecktiefe
make-skive = Schälen
make-row-enter = Zeile des Lieferanten für Ende { $end } eingeben
make-row-enter-note = bleibt für den nächsten Schlauch seiner Art
make-clean = Sauber und gespült
make-clean-agreed = Wie mit dem Betreiber der Maschine vereinbart, oder sonst:
make-ferrule = Presshülse
make-lubricant = Schmiermittel
make-die-set = Backensatz
make-crimp-diameter = Pressmaß
make-crimp-tolerance = Pressmaßtoleranz
make-source = Quelle
make-source-how = Tabelle oder Blatt des Lieferanten, in dem diese Werte stehen. Ein Maß, das an diesem Schlauch gemessen wurde, ist kein Sollmaß.
make-filled = von { $supplier }, { $from }: die eine Zeile, die passt
make-offers = Eine ganze Zeile nehmen
make-offer-row = { $end } wie { $supplier } es sagt
make-offer-last = { $end } wie letztes Mal: { $what }
make-offer-source = { $supplier }, { $from }
make-missing = Zu besorgen, bevor geschnitten wird
make-missing-still = Fehlt noch
make-field-at = { $field }, Ende { $end }
make-field-open = nicht bekannt
make-skive-none = ohne
make-skive-outer = Außendecke
make-skive-inner = Seele
make-skive-both = Außendecke und Seele
make-skive-outer-by = Außendecke { $length }
make-skive-inner-by = Seele { $length }
make-skive-both-by = Außendecke { $outer }, Seele { $inner }
make-skive-outer-how = Länge der abgenommenen Außendecke, ab dem Schnitt.
make-skive-inner-how = Länge der abgenommenen Seele, ab dem Schnitt.

## Tippen
make-keep = { $value } übernehmen
make-as-other = Wie an { $end }: { $value }
make-b-as-a = Gleich wie A: dessen Werte für Ende B
make-by-sheet = Nach einem Blatt gemacht, nicht eingegeben
make-by-sheet-crimp = Nicht aufgezeichnet, nicht bestanden: kein Schild, bevor die Werte eingegeben sind.
make-by-sheet-mark-insertion = Nach einem Blatt: Die Tiefe ist nicht aufgezeichnet.
make-doubt-word = STIMMT DAS?
make-doubt-again = Neu eingeben
make-doubt-right = { $value } stimmt: behalten
make-doubt-own = { $value } wurde an eben diesem Schlauch gemessen. Eine Pressung wird am Maß des Lieferanten gemessen, nie an sich selbst.
make-doubt-narrow = { $value } ist weniger als die { $hose } über dem Draht dieses Schlauchs, und die Presshülse liegt darum.
make-doubt-tolerance = ± { $value } ist viel für ein Pressmaß von { $target }: Toleranzen sind Zehntelmillimeter.
make-doubt-cut = { $value } ist nicht weniger als der ganze Schlauch mit { $whole }.
make-back = Zurück

## Pressung
make-crimp = Pressung { $end }
make-crimp-reading = Pressung { $end }, Messwert { $number }
make-crimp-how = Auf den Flächen zwischen den Graten, in vier Richtungen, an drei Stellen entlang der Hülse.
make-crimp-target = { $target }
make-crimp-place-1 = Stelle 1 von { $places }, hinter der Mündung
make-crimp-place-2 = Stelle 2 von { $places }, Mitte
make-crimp-place-3 = Stelle 3 von { $places }, vor dem Ende
make-crimp-mean = Mittel { $mean }
make-crimp-oval = unrund { $oval }
make-crimp-taper = konisch { $taper }
make-crimp-read-with = Messen mit
make-crimp-instrument = { $instrument } ± { $error }
make-crimp-change = wechseln zu { $instrument }
make-crimp-change-anew = wechseln zu { $instrument }: Dann wird neu gemessen
make-crimp-finer = { $end } mit der Messschraube messen
make-caliper = Messschieber
make-micrometer = Messschraube
make-crimp-given-up = Vorher gemessen, bleibt vermerkt: { $readings }
make-crimp-none = Noch nicht gemessen
make-crimp-name = Pressung von Ende { $end } im Schnitt. Messwerte: { $readings }.
make-crimp-span-name = Messwerte gegen Soll { $target }: { $min } bis { $max }, Mittel { $mean }.
make-crimp-read = Pressung an { $end } messen
make-crimp-read-on = Weiter messen an { $end }: Stelle { $place } von { $places }
make-crimp-read-again = Noch einmal messen an { $end }: { $reading }
make-crimp-again = { $end } noch einmal pressen
make-crimp-again-note = dann neu messen
make-crimp-mend = Pressung { $end }, Messwert { $number }: { $reading }. Ändern oder entfernen.
make-crimp-strike = Messwert { $reading } entfernen

## Die fertige Schlauchleitung
make-finished = Fertige Schlauchleitung
make-finished-cut = Geschnitten auf
make-finished-cut-how = Worauf der Schlauch geschnitten wurde, wo es nicht der Wert des Blatts ist: Abzugsmaße werden daraus gelernt.
make-finished-length = Länge
make-finished-turn = Verdrehwinkel
make-finished-length-how = Von Dichtpunkt zu Dichtpunkt, gerade gelegt, Muttern zurückgeschoben; beim Bogen bis zur Mitte seiner Dichtfläche.
make-finished-turn-how = Am Schlauch entlang von A nach B sehen, Bogen A nach oben: Grad im Uhrzeigersinn zum Bogen B, 0 bis 359.
make-finished-limits = { $low } bis { $high }
make-measure-length = Fertige Länge messen
make-measure-turn = Verdrehwinkel messen
make-measure-turn-then = von A nach B, Bogen A nach oben, im Uhrzeigersinn
make-measure-again = Noch einmal messen: { $value }
make-not-passed = Nicht bestanden
make-not-passed-note = Ausschuss

## Ausschuss
make-scrap-word = AUSSCHUSS
make-scrap-how = Zerschneiden; keine Armatur wird wieder verwendet. Ursache finden, bevor die nächste gefertigt wird.
make-scrap-at = Nicht bestanden: { $step }
make-scrap-on-record = erfasst als { $code }
make-scrap-ask = Nicht bestanden?
make-scrap-then = Dann endet diese Schlauchleitung hier: Ausschuss. Eine andere wird gefertigt.
make-scrap-it = Es ist Ausschuss
make-scrap-it-note = eine andere fertigen
make-scrap-not = Nein: damit weitermachen
make-scraps = Vor dieser ausgesondert
make-failed-leak = Sie war undicht
make-failed-end-moved = Eine Armatur hat sich bewegt
make-failed-burst = Sie ist geplatzt

## Druckprüfung
make-proof = Druckprüfung
make-proof-at = { $pressure }, das Doppelte von { $working }
make-proof-hold-for = { $hold } halten
make-proof-caution = Schutz zu. Öl oder Wasser, niemals Luft.
make-proof-rig = Mit { $pressure } prüfen
make-proof-rig-then = das Doppelte von { $working }, { $hold } halten
make-proof-no-rig = Kein Prüfstand
make-proof-pressure = Gehaltener Druck
make-proof-hold = Gehaltene Zeit
make-proof-gauge = Manometer
make-proof-calibrated = Manometer kalibriert am
make-proof-pressure-how = Was das Manometer am Ende der Haltezeit zeigte.
make-proof-hold-how = Sekunden von vollem Druck bis zum Ablassen.
make-proof-gauge-how = Sein Name oder seine Nummer, wie es darauf steht.
make-proof-write = Aufschreiben, was gehalten wurde
make-proof-proved-word = GEPRÜFT
make-proof-is-proved = { $pressure }, { $hold } gehalten.
make-proof-no-rig-word = NICHT GEPRÜFT
make-proof-is-no-rig = Kein Prüfstand. So steht es im Register, auf dem Schild und auf den Papieren.
make-proof-failed = Durchgefallen
make-proof-failed-then = Erst allen Druck ablassen. Dann endet diese Schlauchleitung hier: Ausschuss, und sie bleibt als durchgefallen erfasst.
make-proof-again = Neu fertigen
make-proof-again-then = Haken, Messwerte und Druckprüfung beginnen neu
make-proof-other = Ändern: Prüfstand oder keiner

## Schritte
make-steps = Schritte
make-steps-done = { $count ->
    [one] { $count } Schritt erledigt
   *[other] { $count } Schritte erledigt
}
make-steps-more = { $count ->
    [one] { $count } weiterer Schritt
   *[other] { $count } weitere Schritte
}
make-next = Dann: { $step }
make-enter = Eintragen: { $field }
make-measure-cutoff = Abzugsmaß von { $end } messen
make-measure-cutoff-anew = { $end } neu messen
make-measure-cutoff-on = Weiter messen: Abzugsmaß von { $end }
make-measure-cutoff-then = bevor geschnitten wird
make-to-tag = Schild machen
make-to-tag-then = Etikett, Code, Zeichen auf der Hülse
make-tick-fetch-parts = Abhaken: Teile sind da
make-tick-cut = Abhaken: geschnitten
make-tick-clean-bore = Abhaken: innen sauber
make-tick-skive = Abhaken: { $end } ist geschält
make-tick-mark-insertion = Abhaken: { $end } ist angezeichnet
make-tick-push-on = Abhaken: { $end } sitzt
make-tick-crimp = Abhaken: { $end } ist gepresst
make-tick-fine-instrument = Abhaken: Messschraube für { $end } zur Hand
make-tick-measure-crimp = Abhaken: Pressung { $end } gemessen
make-tick-sleeves = Abhaken: Schutzschläuche sind drauf
make-tick-set-turn = Abhaken: Winkel eingestellt
make-tick-mark-not-moved = Abhaken: Marken nicht bewegt
make-tick-bore-gauge = Abhaken: Lehre geht durch
make-tick-nuts-free = Abhaken: Muttern laufen frei
make-tick-measure-length = Abhaken: Länge stimmt
make-tick-measure-turn = Abhaken: Winkel stimmt
make-tick-flush-and-cap = Abhaken: gespült, verschlossen
make-tick-connect-rig = Abhaken: am Prüfstand
make-tick-bleed-rig = Abhaken: keine Luft mehr
make-tick-close-guard = Abhaken: Schutz ist zu
make-tick-raise-pressure = Abhaken: auf Prüfdruck
make-tick-hold-pressure = Abhaken: gehalten
make-tick-release-and-look = Abhaken: dicht, nichts bewegt
make-tick-no-rig = Abhaken: „nicht geprüft“ vermerkt
make-tick-mark-ferrule = Abhaken: Hülse gekennzeichnet
make-tick-label = Abhaken: Schild ist dran
make-tick-plan = Abhaken: bekannt
make-tick-lower-load = Abhaken: Last ist unten
make-tick-lock-out = Abhaken: gesichert
make-tick-release-pressure = Abhaken: Druck ist weg
make-tick-mark-lines = Abhaken: Leitungen markiert
make-tick-loosen = Abhaken: alte ist ab
make-tick-match-lines = Abhaken: Leitungen zugeordnet
make-tick-new-seals = Abhaken: neue Dichtungen drin
make-tick-tighten = Abhaken: angezogen
make-tick-tighten-flange = Abhaken: Flansche sind fest
make-tick-lay-straight = Abhaken: liegt gerade
make-tick-bleed-and-fill = Abhaken: entlüftet, gefüllt
make-tick-first-run = Abhaken: läuft
make-tick-leak-check = Abhaken: kein Leck
make-tick-clean-up = Abhaken: aufgewischt
make-tick-log-hours = Abhaken: Stunden notiert

## Papiere, Titel und Ablehnung
make-papers = Papiere
make-papers-note = Fertigungsblatt, Bescheinigung, Bericht
make-saved = Gesichert: { $where }
make-title = Leitung fertigen
make-hose-in-hand = Schlauch in der Hand
make-place = { $machine } · Stelle { $number }
make-refused = NICHT GEFERTIGT
make-to-check = Zurück zum Prüfen
make-to-check-then = die Abhilfe steht bei jedem Ergebnis
