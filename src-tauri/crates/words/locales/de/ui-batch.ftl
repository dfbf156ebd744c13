# Wörter für mehrere Schlauchleitungen auf einmal, für Angebote und die Runde des Tages.
several-title = Mehrere auf einmal
several-note = eine Schnittliste, eine Reihenfolge
several-label = Leitungen
several-none = Noch ist keine Schlauchleitung darin. Die einer Maschine oder eines Besuchs wählen.
several-hoses = Schlauchleitungen
several-place = { $machine } · { $number } · { $name }
several-add = Leitungen hinzufügen
several-add-note = offene Aufträge, Stellen einer Maschine
several-jobs = Aufträge, die nicht fertig sind
several-machine = Noch einmal gleich an einer Maschine
several-machine-hint = Name der Maschine
several-which-machine = Maschine
several-in = darin
several-not-known = Niemand weiß, was dorthin gehört. Erst messen: Auftrag dafür beginnen.
several-work = Ausrechnen
several-work-then = { $count ->
    [one] { $count } Schlauchleitung
   *[other] { $count } Schlauchleitungen
  }
several-cut = Schnitt { $length }
several-cut-open = Schnitt nicht bekannt: ein Abzugsmaß fehlt
several-count = Wie viele davon
several-count-how = Alle gleich.
several-count-of = { $name }: { $count }, Anzahl ändern
several-remove = Heraus
several-remove-name = { $name } herausnehmen
several-empty = Liste leeren
several-cuts = Schnittliste
several-no-cuts = Noch ist keine Schnittlänge bekannt: Abzugsmaße fehlen. Im Auftrag jeder Schlauchleitung eintragen.
several-to-job = Abzugsmaße eintragen
several-cut-drawing = { $stock }, geschnitten in { $pieces }; { $left } bleiben
several-left-kept = { $left } bleiben: zurück ins Regal
several-left-scrap = { $left } bleiben: Abfall
several-unmade = kein Schlauch dafür:
several-reel = { $reel } von neuer Rolle, { $scrap } Abfall.
several-proved = Keine Schnittliste braucht weniger.
several-not-proved = Die beste, die gefunden wurde; keine kann weniger brauchen als { $least }.
several-parts = Teile
several-order = Reihenfolge an der Presse
several-die-changes = { $count ->
    [one] { $count } Backenwechsel
   *[other] { $count } Backenwechsel
  }
several-die = Backensatz { $die }
several-die-open = Backensatz noch nicht bekannt
several-crimp = { $name }, Ende { $end }
several-crimp-open = Pressmaß offen
several-save = Arbeitsliste sichern
several-save-then = Schnitte, Teile und Reihenfolge auf einer Seite
several-quote = Angebot
several-quote-note = Preise und Steuer
several-stopped = Eine der Schlauchleitungen darf nicht gefertigt werden: oben ihren Grund ansehen, oder sie herausnehmen.
several-job-gone = Dieser Auftrag ist fertig oder wurde aufgegeben: herausnehmen.
several-made = gemacht, { $code }
several-labels = Etiketten
several-labels-note = { $count ->
    [one] der einen, die gemacht ist
   *[other] der { $count }, die gemacht sind
  }
several-each = Dann bei jeder Schlauchleitung

## Angebot
quoted-title = Angebot
quoted-used = Auftragssumme
quoted-used-note = was gebraucht wurde, mit Preisen
quoted-open = Öffnen
quoted-batch = { $count ->
    [one] { $count } Schlauchleitung
   *[other] { $count } Schlauchleitungen
  }
quoted-what = Was
quoted-amount = Betrag
quoted-line = { $quantity } zu { $price }
quoted-open-amount = Menge offen
quoted-nothing = Nichts zu berechnen: Kein Teil ging vom Bestand ab.
quoted-sum = Summe dessen, was einen Preis hat
quoted-tax = Steuer { $rate }
quoted-tax-open = Steuer: nicht gesetzt
quoted-total = Gesamt
quoted-total-open = noch nicht
quoted-not-priced = Keine Gesamtsumme, bis diese einen Preis haben: { $names }.
quoted-to-stock = Preise im Bestand setzen
quoted-save = Angebot sichern
quoted-save-open = ohne Gesamtsumme: nicht alles hat einen Preis

## Die Runde
visits-title = Die Runde
visits-note = Besuche des Tages, was zu laden ist
visits-label = Besuche
visits-from = aus { $store }
visits-days = Wird fällig
visits-within-0 = schon vorbei
visits-within-30 = in 30 Tagen
visits-within-90 = in 90 Tagen
visits-within-365 = in 12 Monaten
visits-machines = Maschinen
visits-nothing = In dieser Zeit wird keine Schlauchleitung fällig.
visits-in = darin
visits-count = { $count ->
    [one] { $count } Schlauchleitung fällig
   *[other] { $count } Schlauchleitungen fällig
  }
visits-load = Diese laden
visits-all-there = Alles, was die Runde braucht, ist da.
visits-due = fällig { $day }
visits-wanted = { $wanted } gebraucht, { $there } da
visits-there = { $there } da
visits-unknown = Nicht bekannt, wie viel
visits-missing = { $missing } fehlen
visits-visits = Besuche
visits-open = Stelle
visits-open-name = { $name } öffnen
visits-batch = Alle auf einmal fertigen
visits-batch-then = { $count ->
    [one] { $count } Schlauchleitung: Schnittliste und Reihenfolge
   *[other] { $count } Schlauchleitungen: Schnittliste und Reihenfolge
  }
