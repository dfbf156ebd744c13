# Bestand, mehrere auf einmal, Angebote, Runden.
stock-series = Baureihe { $series }
stock-not-rated = Druck nicht angegeben
stock-ferrule-unnamed = Presshülse (ihr Name ist nicht bekannt: in der Tabelle des Lieferanten nachsehen)
stock-state-there = da
stock-state-short = FEHLT
stock-state-not-kept = hier nie geführt
stock-state-not-known = nicht bekannt
stock-said-negative = { $name } in { $store }: Es ging mehr hinaus, als je eingetragen wurde. Nachzählen.
stock-said-negative-piece = Ein Stück { $name } in { $store }: Es wurde mehr abgeschnitten, als da war. Nachmessen.
stock-said-untold-piece = Von Stück { $name } wurde etwas abgeschnitten, doch dieses Gerät hat von dem Stück noch nichts erfahren: mit dem Gerät zusammenführen, das es aufgenommen hat.
stock-said-conflict = { $name }: Zwei Geräte haben Ort, Fach, Mindestbestand oder Preis zugleich geändert. Neu setzen: Das erledigt es.
stock-said-counted-blind = { $name } in { $store }: gezählt, bevor dieses Gerät wusste, was ein anderes eingetragen hatte. Niemand weiß, ob das schon mitgezählt ist: noch einmal zählen.
stock-said-kerf-not-known = Was die Säge nimmt, ist nicht bekannt und zählt als nichts: setzen, sonst bleibt weniger übrig als angegeben.
stock-said-cut-length-not-known = { $name }: Eine Länge oder ein Abzugsmaß fehlt, die Schnittlänge ist also nicht bekannt.
stock-said-overall-taken = { $name }: Ein Abzugsmaß fehlt, darum zählt so viel Schlauch, wie die fertige Schlauchleitung lang ist. Geschnitten wird, wenn die Abzugsmaße bekannt sind.
stock-said-currency-not-said = Keine Währung gesetzt: Nichts hat einen Preis.
stock-said-other-currency = { $name } hat einen Preis in { $currency }: Das zählt als ohne Preis.
stock-said-tax-not-said = Die Steuer ist nicht gesetzt: Es gibt keine Gesamtsumme. Wo keine anfällt, 0 setzen.
stock-said-no-labour-rate = Kein Stundensatz gesetzt: Arbeit hat keinen Preis.
stock-said-hose-old = Ein Stück { $name }, von dem das geschnitten würde, wurde { $made } hergestellt, vor mehr als { $months } Monaten: So alter Schlauch wird nicht zu Schlauchleitungen verarbeitet (das kürzeste Richtalter der Tabellen).
stock-said-hose-age-not-known = { $name }: Niemand weiß, wann dieses Stück hergestellt wurde. Vor dem Schneiden das Datum in seiner Aufdrucklinie suchen.
stock-said-too-many-pieces = { $name }: Es sind mehr Stücke, als auf einmal geplant werden; die kürzesten wurden weggelassen.
stock-said-nothing-used = { $name }: Dafür wurde nichts aus dem Bestand genommen; woraus sie ist, ist nicht bekannt, also gibt es keine Gesamtsumme.
stock-said-adapter-not-reckoned = { $name }: mit seinen Seiten oder seinem Druck lässt sich nicht rechnen; kein Weg mit ihm wird gezeigt. Berichtigen.
stock-list-none = Davon wird nichts geführt.
stock-list-pieces = { $count ->
    [one] ein Stück
   *[other] { $count } Stücke
  }, { $total }
stock-list-low = KNAPP
stock-list-negative = UNTER NULL
stock-list-short-rest = zu kurz zum Aufheben
stock-list-reel = Rolle
stock-list-offcut = Reststück
stock-list-price-metre = { $price } je Meter
stock-list-price-one = { $price } je Stück
stock-list-made = hergestellt { $made }
stock-list-bin = Fach { $bin }
stock-changed = { $count ->
    [0] Nichts wurde geschrieben.
    [one] Eine Änderung geschrieben.
   *[other] { $count } Änderungen geschrieben.
  }
stock-changed-piece = Neues Stück { $piece }
stock-take-same = Alles Gezählte ist, wie es bekannt war.
stock-take-row = { $name }: { $counted } gezählt, { $known } bekannt ({ $difference }).
stock-take-changed = NICHT aufgeschrieben: { $name }. { $counted } gezählt, inzwischen sind aber { $known } bekannt: Es hat sich seither geändert. Noch einmal zählen.
stock-take-not-counted = Nicht gezählt, bleibt wie es ist: { $name }, { $known }.
stock-take-saved = Gesichert.
stock-take-not-saved = Noch nicht gesichert; --save schreibt es auf.
stock-need-store = Aus { $store }:
stock-need-line = { $state }: { $name }, { $wanted } gebraucht, { $there } da
stock-need-bins = { $bins }
stock-need-doubtful = vielleicht: { $what }
stock-need-elsewhere = { $store } hat { $quantity }
stock-need-cut = Schneiden: { $sort } von { $length }{ $where }: { $pieces }; { $left } bleiben.
stock-need-substitute = Stattdessen: { $name }, { $length } in einem Stück{ $where }
stock-need-adapter = Letzter Ausweg an Ende { $end }: { $what }; { $pressure } für die Schlauchleitung. Der Adapter hat eine eigene Länge: neu messen.
stock-need-pressure-unknown = Druck nicht bekannt
stock-undone = Zurückgenommen.
stock-given-back = Zurück im Bestand: { $name }, { $quantity }.
stock-nothing-given-back = Nichts kam in den Bestand zurück.
batch-title = Mehrere auf einmal

batch-stopped = Nicht gefertigt
batch-cut-list = Schneiden aus { $hose }
batch-unmade = Kein Stück ist lang genug für { $pieces }.
batch-parts = Teile
batch-part = Was
batch-wanted = Gebraucht
batch-state = Da
batch-bin = Fach
batch-order = An der Presse
batch-rule = Jeder Backensatz kommt einmal in die Presse, der kleinste Schlauch zuerst; innerhalb eines Satzes bleibt gleiches Pressmaß beisammen; Enden ohne bekannten Satz kommen zuletzt.
batch-mind = Zu beachten
batch-each = Dann bei jeder Schlauchleitung
batch-cut-reel-kept = Rolle von { $length }{ $where }: { $pieces }; { $left } bleiben
batch-cut-reel-scrap = Rolle von { $length }{ $where }: { $pieces }; { $left } bleiben
batch-cut-offcut-kept = Reststück von { $length }{ $where }: { $pieces }; { $left } bleiben, aufheben
batch-cut-offcut-scrap = Reststück von { $length }{ $where }: { $pieces }; { $left } bleiben, Abfall
batch-cut-sum = { $reel } neuer Schlauch, { $scrap } Abfall. { $proved ->
    [yes] Kein Plan braucht weniger.
   *[no] Kein Plan braucht weniger als { $least } neuen Schlauch.
  }
batch-die-set = Backensatz { $die }: { $crimps }
batch-die-set-unknown = Backensatz nicht bekannt: { $crimps }

quote-title = Angebot
quote-lines = Teile und Arbeit
quote-sums = Summen
quote-what = Was
quote-quantity = Menge
quote-price = Preis
quote-amount = Betrag
quote-not-priced = ohne Preis
quote-parts-of = Teile von { $name }, nicht aufgezeichnet
quote-not-priced-list = Ohne Preis: { $what }.
quote-sum = Summe dessen, was einen Preis hat
quote-tax = Steuer { $percent } %
quote-tax-unknown = Steuer nicht gesetzt
quote-total = Gesamt
quote-no-total = keine Gesamtsumme

round-age-not-known = Das Alter dessen, was dort sitzt, ist nicht bekannt: ansehen, bevor etwas geladen wird.
round-hose-not-known = Welche Schlauchleitung dorthin gehört, ist nicht bekannt.
round-repeated = Hier sind { $times } Schlauchleitungen ausgefallen. Erst die Ursache suchen, bevor die gleiche wieder gemacht wird.
round-contradicted = Die Aufzeichnung widerspricht sich darüber, was dort sitzt: erst ansehen.
round-due = fällig { $due }
round-nothing = Dort ist nichts fällig.
round-load = Laden:
round-load-line = { $name }: { $missing } fehlen von { $wanted }
round-load-nothing = Der Wagen hat alles davon.
stock-undone-tag = Ihre Fertigung wurde zurückgenommen: { $reason }
