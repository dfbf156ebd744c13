# Die Werkbank: was mit Pressung, Länge und Druckprüfung zu tun ist. `bench-<code>` sagt es, `bench-<code>-how` wie.

# Pressung
bench-tick = Innerhalb: abhaken
bench-tick-how = Jeder Messwert liegt innerhalb der Toleranz, der Fehler des Messmittels abgezogen.
bench-read-on = Weiter messen
bench-read-on-how = Auf den Flächen zwischen den Graten, in vier Richtungen an je drei Stellen: hinter der Mündung, in der Mitte, vor dem Ende.
bench-enter-target = Kein Sollmaß: nichts, woran zu prüfen wäre
bench-enter-target-how = Pressmaß und Toleranz aus der Tabelle des Lieferanten für diesen Schlauch und diese Armatur eintragen.
bench-finer-instrument = Feineres Messmittel nehmen
bench-finer-instrument-how = Der Fehler dieses Messmittels braucht die Toleranz auf, oder so viel davon, dass der Messwert nicht von seiner Grenze zu unterscheiden ist.
bench-read-again = Diese noch einmal messen
bench-read-again-how = Rechtwinklig auf der Fläche, nicht auf Grat oder Buchstabe, Messflächen sauber, nicht mehr Kraft als die Ratsche gibt.
bench-press-smaller = Zu locker: noch einmal kleiner pressen
bench-press-smaller-how = Presse kleiner stellen, sodass der größte Messwert hineinkommt und der kleinste drin bleibt; noch einmal pressen und neu messen (übliche Praxis; das Wort des Lieferanten geht vor).
bench-scrap = Zu fest: Ausschuss
bench-scrap-how = Eine gepresste Hülse wird nie geöffnet und nie wieder verwendet. Ende abschneiden und die Schlauchleitung mit neuen Armaturen neu fertigen; vor der nächsten die Einstellung der Presse prüfen.
bench-uneven-oval = Unrund: Backen prüfen
bench-uneven-oval-how = Keine Einstellung bringt alles hinein. Eine Backe ist verschlissen, verschmutzt, aus einem anderen Satz oder fehlt, oder die Hülse lag schief. Backen reinigen und vergleichen; diese Pressung ist Ausschuss, wenn der Lieferant nichts anderes sagt.
bench-uneven-taper = An einem Ende weiter: Lage der Hülse prüfen
bench-uneven-taper-how = Die Hülse lag nicht ganz oder nicht gerade zwischen den Backen, oder die Backen sind einseitig verschlissen. Diese Pressung ist Ausschuss, wenn der Lieferant nichts anderes sagt.
bench-fit-good = Das Messmittel taugt für diese Toleranz.
bench-fit-narrow = Das Messmittel lässt von dieser Toleranz wenig übrig; eines mit { $mm } würde reichen.
bench-fit-too-coarse = Das Messmittel ist zu grob für diese Toleranz: Damit lässt sich nichts annehmen. Eines mit { $mm } würde reichen.

# Fertige Schlauchleitung
bench-measure = Messen
bench-measure-how = Von Dichtpunkt zu Dichtpunkt bei zurückgeschobenen Muttern; den Verdrehwinkel mit Blick von A nach B, Bogen A nach oben.
bench-too-long = Zu lang
bench-too-long-how = Sie hat nicht die verlangte Länge. Neu fertigen, oder fragen, ob die Stelle diese Länge verträgt, und sie so prüfen.
bench-too-short = Zu kurz
bench-too-short-how = Sie hat nicht die verlangte Länge und würde an ihren Enden ziehen. Neu fertigen, oder fragen, ob die Stelle diese Länge verträgt, und sie so prüfen.
bench-turned-off = Falsch verdreht
bench-turned-off-how = Die Bögen stehen nicht wie verlangt: So eingebaut wäre der Schlauch verdreht. Neu fertigen.
bench-doubtful-finished = Zu nah an der Grenze
bench-doubtful-finished-how = Gemessen liegt sie innerhalb, aber näher an der Grenze als der Fehler des Messmittels. Noch einmal messen, oder mit einem besseren.
bench-no-tolerance = Keine Toleranz in dieser Praxis
bench-no-tolerance-how = Die Praxis, nach der gearbeitet wird, nennt für diese Größe und Länge keine: mit dem Besteller eine vereinbaren.

# Druckprüfung
bench-proof-ok = Geprüft
bench-proof-ok-how = Mit Prüfdruck über die volle Zeit gehalten.
bench-say-rig = Gibt es einen Prüfstand?
bench-say-rig-how = Ohne ihn gilt die Schlauchleitung als „nicht geprüft: kein Prüfstand“, im Register und auf dem Schild.
bench-write-pressure = Druck aufschreiben
bench-write-pressure-how = Was das Manometer beim Halten zeigte.
bench-write-hold = Haltezeit aufschreiben
bench-write-hold-how = In Sekunden, ab dem Moment, als der Druck stand.
bench-write-gauge = Manometer aufschreiben
bench-write-gauge-how = Nummer oder Zeichen: Eine Druckprüfung ohne Manometer beweist nichts.
bench-proof-low = Unter Prüfdruck
bench-proof-low-how = Druck ablassen, dann auf Prüfdruck steigern und dort halten.
bench-proof-high = Weit über Prüfdruck
bench-proof-high-how = Beim doppelten Prüfdruck kann ein Schlauch platzen. Einheit am Manometer noch einmal lesen. Wurde wirklich so hoch geprüft, ist die Schlauchleitung Ausschuss.
bench-proof-short = Nicht lang genug gehalten
bench-proof-short-how = Noch einmal über die volle Zeit halten.
bench-proof-failed = Durchgefallen: Ausschuss
bench-proof-failed-how = Sie bleibt als durchgefallen im Register und wird nie gekennzeichnet und nie eingebaut. Allen Druck ablassen, Schlauch durchschneiden, damit niemand ihn verwendet; die Ursache finden, bevor die nächste gefertigt wird.
bench-proof-no-rig = Nicht geprüft: kein Prüfstand
bench-proof-no-rig-how = Steht so im Register und auf dem Schild.
bench-gauge-undated = Niemand weiß, wann das Manometer kalibriert wurde
bench-gauge-undated-how = Den Tag von Aufkleber oder Schein eintragen; bis dahin stützt sich die Prüfung auf ein Manometer, für das niemand einsteht.
bench-gauge-overdue = Die Kalibrierung des Manometers ist abgelaufen
bench-gauge-overdue-how = Kalibrieren lassen; diese Prüfung stützt sich auf ein Manometer, das abgewichen sein kann.

# Warum sie nicht gekennzeichnet werden darf
bench-why-crimp-a = Die Pressung an A ist nicht gemessen und innerhalb.
bench-why-crimp-b = Die Pressung an B ist nicht gemessen und innerhalb.
bench-why-length = Die fertige Länge liegt außerhalb ihrer Toleranz.
bench-why-turn = Der Verdrehwinkel liegt außerhalb seiner Toleranz.
bench-why-proof-open = Die Druckprüfung ist weder gemacht noch als unmöglich angegeben.
bench-why-proof-failed = Sie fiel bei der Druckprüfung durch: Ausschuss.

# Abzugsmaß einer neuen Armatur
bench-cutoff-new-end = Eine neue Armatur derselben Familie, Größe, Form und Baureihe nehmen; nie eine gebrauchte.
bench-cutoff-find-stop = Schlauchanschlag suchen: der Bund innen, an dem die Schnittfläche des Schlauchs anliegt. Ein Draht durch die Fassung findet ihn.
bench-cutoff-find-seal = Dichtpunkt suchen: Spitze des Dichtkegels, Planfläche, Stirn des Flanschbunds, Mutter zurückgeschoben; beim Bogen die Mitte der Dichtfläche, entlang der Schlauchachse.
bench-cutoff-read = Entlang der Achse vom einen zum anderen messen, dreimal, die Armatur jedes Mal neu aufnehmen.
bench-cutoff-repeat = Noch einmal messen
bench-cutoff-repeat-how = Drei Messwerte, die Armatur jedes Mal neu aufgenommen, zeigen, ob sie übereinstimmen.
bench-cutoff-coarse = Zu grob für ein Abzugsmaß
bench-cutoff-coarse-how = Das Messmittel ist unsicherer als die 2 mm, um die ein Schnitt abweichen darf. Messschieber nehmen.
bench-cutoff-apart = Die Messwerte stimmen nicht überein
bench-cutoff-apart-how = Sie liegen mehr als 1 mm auseinander. Schlauchanschlag und Dichtpunkt noch einmal suchen und neu messen.

# Was geprüft wird, und die Presse
bench-length = Fertige Länge
bench-turn = Verdrehwinkel
bench-proof = Druckprüfung
press-none = Keine Pressung mit Backensatz, Sollmaß und Messwerten ist erfasst.
press-few = Weniger als 8: zu wenige für Grenzen.
press-limits = Mitte { $centre }, Grenzen { $lower } bis { $upper } vom Soll
press-outside = außerhalb der Grenzen
press-jump = ein Sprung gegenüber der vorigen
press-two-of-three = zwei von drei jenseits zweier Abweichungen
press-four-of-five = vier von fünf jenseits einer Abweichung
press-eight-on-one-side = acht nacheinander auf einer Seite
press-left-out = { $count ->
    [one] 1 Ende ohne Backensatz, Sollmaß oder Messwerte ist in keiner.
   *[other] { $count } Enden ohne Backensatz, Sollmaß oder Messwerte sind in keiner.
}
