# Wörter der Verlegung: wie eng sich der Schlauch zwischen seinen Anschlüssen biegt.

routing-title = Wie eng biegt er sich?
routing-back = Zurück zur Prüfung
routing-estimate = Eine Schätzung.
routing-estimate-why = Gewicht, Eigenform und Schellen sind nicht darin: Schlauch über den ganzen Weg ansehen.
routing-not-routed = NICHT VERLEGT
routing-inside = innen
routing-seeking = Längen und Änderungen, die passen, werden gesucht.
routing-laying = Der Schlauch wird gelegt
routing-tried = Geändert. Ansehen, oder zurücknehmen.

## Anschlüsse
routing-facing = Wie stehen die Anschlüsse?
routing-facing-how = Von dort gesehen, wo die Biegung am besten zu sehen ist. Ende A ist immer links.
routing-facing-u = Nebeneinander
routing-facing-facing = In einer Linie
routing-facing-offset = Auf zwei Linien
routing-facing-right-angle = Im rechten Winkel
routing-facing-away = Voneinander weg
routing-facing-free = Irgendwie anders
routing-change-facing = andere Anschlüsse
routing-earlier = Die Anschlüsse sind die des letzten Auftrags hier.
routing-earlier-why = Nachsehen, ob sie noch so stehen, bevor danach gearbeitet wird.
routing-said = Was zu den Anschlüssen gesagt ist
routing-stands = Wo B steht
routing-ends = Was sich nicht biegen kann

routing-gap = seitlich
routing-gap-how = Von Dichtfläche A waagrecht hinüber zu Dichtfläche B.
routing-rise = Höhe
routing-rise-how = Wie viel höher oder tiefer Dichtfläche B als A liegt.
routing-offset = in der Tiefe
routing-offset-how = Wie viel näher oder weiter weg B als A liegt.
routing-angle = Schwenk
routing-angle-how = Wie weit Anschluss B aus der gezeichneten Lage geschwenkt ist, in der Zeichenebene.
routing-roll = Rollen
routing-roll-how = Wie weit Anschluss B um die eigene Achse gedreht ist, auf seine Stirn gesehen. Das verdreht den Schlauch.
routing-a-looks = A zeigt
routing-b-looks = B zeigt
routing-looks-how = Wohin der Anschluss zeigt: 0 ist nach rechts, dann gegen den Uhrzeigersinn.
routing-looks-right = nach rechts
routing-looks-up = nach oben
routing-looks-left = nach links
routing-looks-down = nach unten
routing-rigid = steife Länge
routing-rigid-how = Entlang der Schlauchachse von der Dichtfläche zum Ende der Presshülse: mit dem Bandmaß am alten Schlauch zu messen.
routing-od = Durchmesser des Schlauchs
routing-od-how = Über der Außendecke, mit dem Messschieber.
routing-of-b = B von A: { $label }
routing-of-closed = Zu: { $label }
routing-of-open = Offen: { $label }
routing-way = { $value } { $way }
routing-right = nach rechts
routing-left = nach links
routing-above = höher
routing-below = tiefer
routing-near = näher
routing-far = weiter weg
routing-left-round = gegen den Uhrzeigersinn
routing-right-round = im Uhrzeigersinn
routing-points = Bogen an { $end } zeigt
routing-points-towards = zum anderen Anschluss
routing-points-away = davon weg
routing-points-front = nach vorn
routing-points-back = nach hinten

## Weg
routing-travel-question = Bewegt sich ein Anschluss?
routing-travel-unknown = Nicht bekannt, ob sich ein Anschluss bewegt
routing-change-travel = angeben
routing-change = ändern
routing-moves = Ein Anschluss bewegt sich
routing-moves-note = ein Zylinder, ein Ausleger, ein Drehgelenk: zwei Stellungen werden gefragt
routing-fixed = Kein Anschluss bewegt sich
routing-fixed-note = beide sitzen an einem Rahmen
routing-travel = Weg von zu nach offen
routing-closed = zu
routing-open = offen
routing-closed-tightest = zu: am engsten
routing-open-tightest = offen: am engsten
routing-between = { $part } % offen
routing-between-tightest = { $part } % offen: am engsten
routing-twist-here = Torsion hier { $twist } gegen zu.
routing-near-rival = Zwei Formen liegen hier nah: Der Schlauch kann in beiden liegen.

## Zeichnung
routing-side = Seite: A oder B ziehen
routing-plan = Draufsicht, von oben
routing-side-name = Seitenansicht, { $pose }: { $radius } { $spot }
routing-plan-name = Draufsicht von oben, { $pose }
routing-radius = R { $radius }
routing-no-bend = keine Biegung
routing-spot = innen, { $at } von A
routing-drag = Ende { $end } ziehen; Pfeiltasten bewegen es
routing-drag-plan = Ende { $end } in der Draufsicht ziehen; Pfeiltasten bewegen es

## Werte
routing-twist = Torsion über den Weg
routing-at-shorter = bei { $part } % kürzer
routing-at-longer = bei { $part } % länger
routing-length-now = Gesamtlänge
routing-length-taken = angenommene Gesamtlänge
routing-shortest = kürzeste, die passt
routing-use-length = Diese Länge verwenden: { $length }
routing-recommended = { $length }: Fällt sie { $short } zu kurz aus, biegt sie sich immer noch nicht enger als { $radius } · { $source }

## Was es heilt
routing-cures = Verlegte Änderungen
routing-cures-how = Jede wurde über den ganzen Weg geführt. Eine antippen, um sie zu versuchen.
routing-cure-bend = biegt sich auf { $radius }
routing-cure-length = { $length } lang
routing-cure-assumed = Bogenhöhe und steife Länge noch zu messen

## Was als Nächstes zu tun ist
routing-use = Diese Biegung verwenden
routing-use-then = { $radius } geht in die Prüfung
routing-go-enter = Eintragen: { $field }
routing-go-travel = Sagen, ob sich ein Anschluss bewegt
routing-go-open = Offene Stellung eintragen
routing-go-open-then = sie steht noch wie die geschlossene
routing-go-rigid = Steife Länge von Ende { $end } eintragen
routing-go-turn = Diesen Verdrehwinkel verwenden
routing-go-length = Die Länge verwenden, die reicht
