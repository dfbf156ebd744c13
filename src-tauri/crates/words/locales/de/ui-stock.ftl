# Wörter für das, was geführt wird: Schlauch in Stücken, was gezählt wird, und das Zählen eines Fachs.
shelf-title = Bestand
shelf-note = Schlauch, Armaturen, Hülsen; Knappes zuerst; Fach zählen
shelf-all-stores = Alle
shelf-store = Lager
shelf-store-other = ein anderes
shelf-store-name = Name des Lagers
shelf-store-hint = Wagen 1, Werkstatt
shelf-all-kinds = Alle
shelf-kind = Was
shelf-kind-hose = Schlauch
shelf-kind-end = Armaturen
shelf-kind-ferrule = Presshülsen
shelf-kind-adapter = Adapter
shelf-kind-sleeve = Schutzschläuche
shelf-kind-seal = Dichtungen
shelf-kind-other = Anderes
shelf-search = Suchen
shelf-search-hint = Name, Fach, Etikett
shelf-none = Noch wird nichts geführt. Laden, was im Wagen liegt, Fach für Fach.
shelf-nothing-found = Nichts hier passt dazu.
shelf-no-store = Dieses Gerät hat noch kein Lager, also lässt sich nichts mit dem vergleichen, was da ist. Etwas laden, oder angeben, aus welchem Lager es arbeitet.
shelf-load-first = Wagen laden
shelf-pick = Wählen, was angesehen oder geändert werden soll.
shelf-low = Knapp
shelf-low-at = knapp: { $mark } ist der Mindestbestand
shelf-negative = unter null: es ging mehr hinaus als herein
shelf-negative-means = Es ging mehr hinaus, als je hereinkam. Zählen und angeben, was wirklich da ist.
shelf-in-bin = Fach { $bin }
shelf-no-bin = kein Fach
shelf-pieces = { $count ->
    [one] { $count } Stück
   *[other] { $count } Stücke
  }
shelf-reel = Rolle
shelf-offcut = Reststück
shelf-not-useful = kürzer, als sich aufzuheben lohnt
shelf-not-useful-means = Kürzer als das, was laut Angabe als Reststück aufzuheben lohnt.
shelf-there = Stücke
shelf-there-count = { $count ->
    [one] Stück
   *[other] Stücke
  }

## Eine Sache
shelf-piece = Stück
shelf-made = Schlauch hergestellt
shelf-not-said = nicht angegeben
shelf-all-of-it = Aller Schlauch dieser Art
shelf-bin = Fach
shelf-bin-hint = B2
shelf-low-mark = Knapp ab
shelf-in-all = { $count } insgesamt
shelf-all-bins = In allen Fächern
shelf-price-each = Preis je Stück
shelf-price-metre = Preis je Meter
shelf-not-priced = ohne Preis
shelf-more = Mehr davon laden
shelf-correct = Es ist in Wirklichkeit eine andere Zahl
shelf-correct-note = was gezählt wurde
shelf-correct-piece-note = was gemessen wurde
shelf-move = Umlagern
shelf-move-note = in ein anderes Lager
shelf-scrap = Einige verschrotten
shelf-scrap-piece = Dieses Stück verschrotten
shelf-scrap-note = lässt sich zurücknehmen

## Gefragt
shelf-keep = Sichern
shelf-ask-load = Wie viele herein
shelf-ask-length = Wie lang es ist
shelf-ask-correct = Was wirklich da ist
shelf-ask-scrap = Wie viele Ausschuss sind
shelf-ask-bin = Wo es liegt
shelf-ask-move = Wohin es kommt
shelf-move-where = Zuerst darunter das Lager wählen.
shelf-move-how = Wie viele dorthin kommen.
shelf-count-how = Zählen.
shelf-length-how = Vom Zettel der Rolle, oder gemessen.
shelf-low-how = Bei so viel steht es in der Liste des Knappen.
shelf-price-how = Ohne Steuer, wie verlangt.
shelf-price-no-currency = Zuerst die Währung angeben: Wagen, Preise und Lager.

## Laden
shelf-load = Laden
shelf-load-then = Schlauch, Armaturen, Hülsen, Dichtungen
shelf-load-title = Was hereinkommt
shelf-bore = Innendurchmesser
shelf-type = Schlauchtyp
shelf-form = Abgang vom Schlauch
shelf-for-hose = Für Schlauch
shelf-series = Baureihe
shelf-series-hint = wie der Lieferant sie nennt
shelf-end-size = Größe von { $family }
shelf-end-gender = Welche Hälfte
shelf-name = Name
shelf-name-hint = wie auf dem Beutel
shelf-hose-side = Seite zum Schlauch
shelf-machine-side = Seite zur Maschine
shelf-rating = Zulässiger Druck
shelf-rating-how = Vom Hersteller. Ohne ihn ist er nicht bekannt, und nie unbegrenzt.
shelf-label = Etikett darauf
shelf-label-hint = R3, oder nichts

## Getan und zurückgenommen
shelf-undo-reason = gleich zurückgenommen
shelf-did-load = { $amount } geladen: { $name }
shelf-did-scrap = { $amount } verschrottet: { $name }
shelf-did-correct = { $amount } sind da: { $name }
shelf-did-move = { $amount } nach { $to }: { $name }
shelf-did-bin = { $name }: { $bin }
shelf-did-low = Mindestbestand geändert: { $name }
shelf-did-price = Preis geändert: { $name }

## Zählen
shelf-take = Inventur
shelf-take-note = Fach für Fach
shelf-no-camera = Hier gibt es keine Kamera. Namen des Fachs tippen, oder seinen Code fotografieren.
shelf-scan-photo = Code des Fachs fotografieren
shelf-scan-none = In diesem Bild ist kein Code. Namen des Fachs tippen.
take-label = Gezählt
take-title = Welches Fach
take-means = Immer ein Fach zählen. Nichts ändert sich, bevor die Unterschiede zu sehen waren.
take-which = Fächer, in denen etwas liegt
take-all = alles
take-typed = Oder Namen des Fachs tippen
take-scan = Fach scannen
take-begin = Dieses Fach zählen
take-bin = { $store } · Fach { $bin }
take-whole = { $store }, alles
take-known = bekannt: { $known }
take-counted = gezählt
take-not-there = nicht da
take-how = Zählen. 0: Keines ist da.
take-how-piece = Messen. 0: Es ist nicht da.
take-keep = Gezählt
take-first = Das erste zählen
take-next = Das nächste zählen
take-so-far = { $counted } von { $all } gezählt
take-empty = Hier liegt nichts Bekanntes.
take-else = Hier liegt noch anderes
take-else-note = laden
take-show = Unterschiede zeigen
take-show-then = bevor etwas gesichert wird
take-differences = Unterschiede
take-row = bekannt { $known }, gezählt { $counted }
take-none-differs = Alles ist, wie es bekannt war.
take-not-counted = Nicht gezählt
take-not-counted-means = Sie bleiben, wie sie bekannt sind.
take-changed = Seither geändert
take-changed-means = Nach dem Zählen wurde eine Schlauchleitung gemacht, oder ein anderes Gerät hat etwas gemeldet. Diese werden nicht gesichert: noch einmal zählen.
take-again = Noch einmal zählen
take-again-then = die anderen bleiben gezählt
take-save = Zählung sichern
take-save-then = lässt sich zurücknehmen
take-saved = { $where } gezählt, { $count ->
    [0] kein Unterschied
    [one] { $count } Unterschied gesichert
   *[other] { $count } Unterschiede gesichert
  }

## Was eine Schlauchleitung braucht
need-title = Aus { $store }
need-title-none = Aus dem Bestand
need-name = Was diese Schlauchleitung braucht, verglichen mit dem, was da ist
need-there = { $there } da, { $wanted } gebraucht
need-short = fehlt: { $there } da, { $wanted } gebraucht
need-not-kept = hier nicht geführt: { $wanted } gebraucht
need-not-known = noch nicht bekannt, was gebraucht wird
need-bins = Fach { $bins }
need-elsewhere = anderswo: { $where }
need-doubtful = passt vielleicht, ansehen: { $names }
need-cut-from = Schneiden aus
need-cut-drawing = Ein Schnitt von { $length }; { $left } bleiben
need-left = { $left } bleiben, der Sägeschnitt abgezogen.
need-left-no-kerf = { $left } bleiben, weniger was die Säge nimmt: Das ist nicht gesetzt.
need-other-piece = Oder schneiden aus
need-substitutes = Schlauch, der auch ginge
need-substitutes-means = Jeder hat die ganze Prüfung für diese Stelle bestanden. Er wird noch einmal geprüft und verlangt eigene Einstellungen.
need-take-hose = { $name } stattdessen
need-adapters = Adapter, als letzter Ausweg
need-adapters-means = Eine Verbindung mehr, die lecken kann, und ein Teil mehr mit zulässigem Druck.
need-take-adapter = { $end }: { $names }
need-adapter-leaves = lässt { $pressure }
need-adapter-not-known = zulässiger Druck nicht bekannt
off-take = Vom Bestand abbuchen
off-by-hand = Nicht alles davon ist da oder bekannt: Nichts geht von selbst vom Lager ab. Was verwendet wurde, unter Wagen, Lager zählen.
off-goes = Geht mit dieser Schlauchleitung von { $store } ab: { $what }
off-hose = { $length } Schlauch
off-items = { $count } Teile
off-rest = Was von dem Stück bleibt
off-rest-kept = aufgehoben
off-rest-scrap = Abfall
off-not = Bestand lassen, wie er ist

## Eine Schlauchleitung, die doch nicht gefertigt wurde
undo-title = Doch nicht gefertigt
undo-note = versehentlich erfasst
undo-how = Sie wird aus dem Register gestrichen; es behält, dass sie erfasst war und warum es zurückgenommen wurde. Ihr Schild abnehmen und vernichten.
undo-parts = Ihre Teile
undo-parts-back = Kommen zurück: nie geschnitten oder gepresst
undo-parts-gone = Sind verbraucht oder Ausschuss
undo-why = Warum
undo-do = Zurücknehmen
undo-came-back = Kam zurück: { $what }
undo-nothing-back = Zurückgenommen. Nichts kam in den Bestand zurück.

## Preise und Lager
prices-title = Preise und Lager
prices-note = Lager dieses Wagens, Reststücke, Steuer, Arbeit
prices-store = Lager und Währung
prices-store-name = Lager dieses Geräts
prices-currency = Währung, mit ihren drei Buchstaben
prices-currency-hint = EUR
prices-keep = Lager und Währung sichern
prices-kept = Gesichert.
prices-figures = Zahlen
prices-offcut = Reststück aufheben ab
prices-offcut-how = Ein so langer Rest lohnt das Aufheben; ein kürzerer ist Abfall.
prices-tax = Steuer
prices-tax-how = In Prozent, auf die Preise.
prices-rate = Arbeit je Stunde
prices-rate-how = Ohne Steuer, wie verlangt.
prices-note-blank = Was leer ist, ist nicht angegeben: Eine Gesamtsumme wartet darauf und wird nie ohne es gerechnet.
prices-labour = Zeiten
prices-labour-none = Keine Zeit gesetzt: Ein Angebot hat nur Teile.
prices-per-hose = { $minutes } min je Leitung
prices-per-job = { $minutes } min je Auftrag
prices-remove = Entfernen
prices-labour-name = Was Zeit braucht
prices-labour-hint = Leitung fertigen und druckprüfen
prices-labour-for = Gezählt
prices-each-hose = für jede Leitung
prices-each-job = einmal je Auftrag
prices-labour-add = Mit Minuten hinzufügen
prices-minutes = Wie lange es dauert
prices-minutes-how = Wie berechnet, in Minuten.
prices-min = min
