# Wörter zu Maschinen, Stellen und Schlauchleitungen.
machines-back = Zurück
machines-not-known = Nicht bekannt
machines-not-written = NICHT GESICHERT
machines-not-read = NICHT GELESEN

## Arten von Maschinen
machines-kind-excavator = Bagger
machines-kind-loader = Lader
machines-kind-forwarder = Rückezug
machines-kind-harvester = Vollernter
machines-kind-crane = Kran
machines-kind-drill = Bohrgerät
machines-kind-tractor = Traktor
machines-kind-truck-mounted = Ladekran
machines-kind-press = Presse
machines-kind-other = Andere

## Was eine Schlauchleitung trägt

## Ab wann ein Alter zählt
machines-counted-assembled = Gefertigt
machines-counted-hose-made = Schlauch hergestellt
machines-counted-fitted = Eingebaut
machines-counted-inspected = Inspiziert
machines-counted-unknown = Tag nicht bekannt

## Spezifikation, Druckprüfung und Aufenthalt in einer Zeile
machines-drop = Bogenhöhe { $drop }
machines-both-ends = { $end } an beiden Enden
machines-proof-no-rig = Nicht geprüft: kein Prüfstand
machines-proof-failed = Durchgefallen: { $what }
machines-proof-elsewhere = Nicht hier geprüft
machines-proof-proved = Geprüft mit { $pressure } über { $seconds }, Manometer { $gauge }
machines-stay-fitted = eingebaut { $day }
machines-stay-found = eingebaut vorgefunden { $day }
machines-stay-off = ausgebaut { $day }

## Die Liste
machines-title = Maschinen
machines-hoses-label = Eingebaute Leitungen
machines-fleet = { $sites ->
    [one] { $sitesShown } Standort
   *[other] { $sitesShown } Standorte
} · { $machines ->
    [one] { $machinesShown } Maschine
   *[other] { $machinesShown } Maschinen
}
machines-search = Suchen
machines-search-hint = Code, Stelle, Maschine, Größe
machines-hits = Gefunden
machines-no-hit = Nichts unter diesen Wörtern. Weniger Buchstaben versuchen, oder einen Code ohne Striche.
machines-no-site = Kein Standort
machines-none = Noch keine Maschine. Die erste anlegen, dann ihre Stellen nummerieren.
machines-no-machine-here = An diesem Standort noch keine Maschine.
machines-hoses = { $count ->
    [one] { $shown } Schlauchleitung
   *[other] { $shown } Schlauchleitungen
}
machines-past = { $shown } über Grenze
machines-no-day = { $shown } ohne Datum
machines-stopped-count = { $shown } gestoppt
machines-row-stopped = gestoppt
machines-row-unsettled = nicht geklärt
machines-conflict = Zwei Geräte haben diese Maschine verschieden erfasst. Bis ein Mensch sagt, was gilt, steht hier das Spätere.
machines-hit-place = Stelle { $number }, { $name }
machines-hit-loose = An keiner Maschine
machines-hit-site = Standort
machines-add-machine = Maschine anlegen
machines-add-machine-here = Hier Maschine anlegen
machines-add-site = Standort anlegen

## Formulare
machines-form-new = Neu im Register
machines-form-name = Name
machines-form-name-hint = Etwa Bagger 7
machines-form-site-hint = Etwa Hof Nord
machines-form-kind = Art
machines-form-site = Standort
machines-keep = Sichern
machines-keep-machine-then = dann ihre Stellen nummerieren
machines-keep-place-then = dann steht sie in der Liste
machines-change = Maschine ändern

## Eine Maschine
machines-hours-label = Stunden
machines-drawing = { $kind } mit nummerierten Stellen: { $places }.
machines-drawing-bare = { $kind }, keine Stelle eingezeichnet.
machines-read-hours = Stunden ablesen
machines-read-hours-how = Die Zahl am Betriebsstundenzähler, in der Kabine oder am Motor.
machines-hours-last = { $hours }, abgelesen { $day }
machines-hours-none = Stunden nie abgelesen
machines-hours-same-day = Weniger als { $last }, abgelesen am { $day }: Von zwei Ablesungen eines Tages gilt die höhere, diese wäre also nicht zu sehen. Ist jene falsch?
machines-hours-lower = Weniger als { $last }, abgelesen am { $day }. Ein Zähler läuft nicht rückwärts: noch einmal ablesen, oder er wurde getauscht.
machines-hours-jump = { $last } wurden am { $day } abgelesen. Seither kann keine Maschine so lang gelaufen sein: Ein Tag hat 24 Stunden.
machines-hours-earlier = Mehr als { $last }, abgelesen später, am { $day }. Ein Zähler läuft nicht rückwärts: eine von beiden ist falsch.
machines-at-hours = bei { $hours }
machines-hours-strike = { $hours } streichen
machines-hours-strike-note = eben falsch abgelesen
machines-hours-slip = falsch abgelesen
machines-circuits = Kreise
machines-circuit-relief = Druckbegrenzung { $relief }
machines-circuit-no-relief = Druckbegrenzung nicht bekannt
machines-circuit-add = Kreis anlegen
machines-circuit-hint = Etwa Ausleger und Stiel
machines-circuit-relief-how = Einstelldruck des Druckbegrenzungsventils, vom Schild oder aus den Papieren der Maschine.
machines-circuit-relief-title = Druckbegrenzung von { $name }
machines-places = Stellen
machines-place = Stelle { $number }, { $name }
machines-years = Jahre
machines-no-places = Noch keine Stelle. Die Stellen, an denen Schlauchleitungen sitzen, nummerieren wie an der Maschine.
machines-place-empty = keine Schlauchleitung erfasst
machines-place-several = { $shown } Schlauchleitungen erfasst
machines-reason-past = über Grenze
machines-reason-age-unknown = Alter nicht bekannt
machines-reason-stopped = gestoppt
machines-reason-failed = ausgefallen, nicht ersetzt
machines-reason-job = Auftrag offen
machines-over = zu viel verlangt
machines-overs = { $count ->
    [one] { $shown } zu viel verlangt
   *[other] { $shown } zu viel verlangt
}
machines-failed = hier ausgefallen: { $times }
machines-age-unknown = Alter nicht bekannt
machines-limit-note = Starke Linie: Grenze der Lebensdauer, { $count ->
    [one] { $years } Jahr
   *[other] { $years } Jahre
}. Ein Alter ab dem Tag des Einbaus ist mindestens so hoch.
machines-place-add = Stelle anlegen
machines-place-number = Nummer
machines-place-name-hint = Etwa Auslegerzylinder links
machines-place-taken = { $number } ist { $name }. Nächste freie: { $free }.
machines-place-whole = Eine ganze Zahl von 1 bis 999.
machines-line = Leitung
machines-circuit = Kreis
machines-choose = Stelle wählen
machines-choose-how = ihre Nummer oben, oder ihre Zeile
machines-go-on = Weiter an Stelle { $number }
machines-go-on-then = { $name }: der Auftrag ist offen
machines-of-site = { $count ->
    [one] { $shown } Maschine
   *[other] { $shown } Maschinen
  }
machines-unfold = zeigen
machines-fold = verbergen
machines-more = { $shown } von { $count } sind gezeigt; die anderen suchen.
