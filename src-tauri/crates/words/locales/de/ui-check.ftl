# Wörter der Prüfung: Darf sie gefertigt werden?

check-title = Darf sie gefertigt werden?
check-first = Anleitung des Herstellers, örtliche Vorschriften und zugelassene Fachpraxis gehen vor.
check-passes = Alles Geprüfte liegt innerhalb seiner Grenze.
check-not-entered = Noch nicht angegeben: { $count }
check-weigh = { $count ->
    [one] 1 Punkt abzuwägen
   *[other] { $count } Punkte abzuwägen
}
check-bar-max = bar max
check-psi = { $psi } psi
check-psi-max = psi max
check-bar = { $bar } bar
check-refused = NICHT GEPRÜFT
check-refused-nought = { $field } ist { $value }. Einen Wert über 0 angeben, oder als nicht bekannt lassen.
check-to-fit = Weiter einbauen
check-to-fit-then = die Schlauchleitung ist gefertigt und erfasst
check-same = Gleiches für Gleiches: gefertigt, wie erfasst. Nicht geprüft:
check-estimated = { $value } gesch.
check-drawing = Die Schlauchleitung: Ende A links, Ende B rechts, Gesamtlänge zwischen den Dichtpunkten
check-cut-length = Schnitt { $length }
check-more-pass = { $count ->
    [one] 1 weitere bestanden
   *[other] { $count } weitere bestanden
}
check-all-pass = { $count ->
    [one] 1 Grenze eingehalten
   *[other] { $count } Grenzen eingehalten
}
check-at-least = min. { $limit }
check-make = Fertigen
check-make-cautions = { $count ->
    [one] mit 1 Warnung auf dem Blatt
   *[other] mit { $count } Warnungen auf dem Blatt
}
check-keep = { $value } übernehmen
check-now = jetzt { $value }
check-back = Zurück
check-not-known = nicht bekannt
check-of-end = { $end }: { $label }
check-spec = Was gefertigt wird
check-hose-not-listed = Ein Schlauch, der hier nicht steht
check-swapped = { $hose } statt { $was }
check-to-route = Biegung berechnen
check-to-oil = Sehen, was das Öl tut
check-to-surge = Druckspitze schätzen
check-at-place = Was von dieser Stelle bekannt ist
check-sister = { $number } { $name }
check-sister-none = keine Schlauchleitung bekannt
check-sisters = Am selben Kreis { $circuit }
check-alternatives-word = Andere Schläuche, gleich geprüft

check-adapter-name = Name des Adapters
check-adapter-add = Adapter hinzufügen
check-adapter-rate = Druck für { $name }
check-adapter-remove = { $name } entfernen
check-adapter-named = Adapter { $name }
check-turn-other = Anderer Verdrehwinkel
check-clock = Verdrehwinkel, am Schlauch entlang von A nach B gesehen
check-weakest = am schwächsten

## Ausnahmen
check-take-on = Verantworten, mit Name und Grund
check-by = Name
check-reason = Grund

## Wie ein Ergebnis heißt
check-title-hose = Schlauch
check-title-end = Ende { $part }
check-title-line = Was die Leitung tut
check-title-pressure = { $part ->
    [hose] Druck, Schlauch
    [adapter] Druck, { $name }
   *[other] Druck, Ende { $part }
}
check-title-working = Betriebsdruck
check-title-relief = Druckbegrenzung
check-title-surge = Druckspitze
check-title-heat = Hitze des Öls
check-title-fluid-heat = Hitze dieser Flüssigkeit
check-title-cold = Kälte
check-title-frost = Frost
check-title-ambient = Luft um den Schlauch
check-title-fluid = Flüssigkeit
check-title-bend = Biegung, engste
check-title-duty = Anforderung der Stelle
check-title-vacuum = Unterdruck
check-title-helix = Stützwendel
check-title-flow = Ölgeschwindigkeit
check-title-end-read = Ende { $part }, wie gemessen
check-title-end-gender = Ende { $part }, Außen/Innen
check-title-end-form = Ende { $part }, Form
check-title-end-drop = Ende { $part }, Bogenhöhe
check-title-size = Ende { $part }, Größe
check-title-original = Das Original
check-title-original-pressure = Druck des Originals
check-title-printed-pressure = Aufgedruckter Druck
check-title-original-bore = Innen-Ø des Originals
check-title-original-heat = Hitze des Originals
check-title-original-cold = Kälte des Originals
check-title-original-bend = Biegung des Originals
check-title-original-vacuum = Unterdruck des Originals
check-title-length = Gesamtlänge
check-title-cutoff = Abzugsmaß, Ende { $part }
check-title-cut = Schnittlänge
check-title-tolerance = Längentoleranz
check-title-turn = Verdrehwinkel
check-title-route-travel = Bewegung
check-title-route-rigid = Steife Länge, Ende { $part }
check-title-route-change = Länge unter Druck
check-title-route-rival = Zwei Formen liegen nah
check-title-route-behind = Gerade hinter der Hülse
check-title-route-twist = Torsion über den Weg
check-title-circuit = Selber Kreis
check-title-failed = Hier schon ausgefallen
check-title-override = Ausnahme

## Was als Nächstes zu tun ist
check-go-read = Ende { $end } messen
check-go-take-read = Gemessene Armatur an { $end } nehmen
check-go-read-hose = Alten Schlauch messen
check-own-word = EIGENE ANGABE
check-go-settle-hose = Mehr am alten Schlauch messen
check-own-hose = Nicht gemessen: Der Schlauch war { $name }. Die Befunde klären ihn nicht; der neue muss so gut sein wie alles, was sie offen lassen.
check-own-end = Nicht gemessen: Ende { $end } ist { $name }. Geklärt ist es erst, wenn die Befunde es sagen.
check-go-end = Ende { $end } nennen
check-go-change-end = Für Ende { $end } angeben
check-go-other-end = Ende { $end } ändern
check-go-other-hose = Anderen Schlauch wählen
check-go-size = { $hose } nehmen
check-go-rating = Druck für Ende { $end } eintragen
check-go-supplier-rating = Druck des Lieferanten für Ende { $end } eintragen
check-go-change = Berichtigen
check-go-hose = Schlauch nennen
check-go-working = Betriebsdruck eintragen
check-go-fluid = Flüssigkeit eintragen
check-go-heat = Höchste Temperatur eintragen
check-go-cold = Tiefste Temperatur eintragen
check-go-bend = Biegung eintragen
check-go-hose-bend = Biegeradius des Lieferanten eintragen
check-go-hose-vacuum = Unterdruck des Lieferanten eintragen
check-go-line = Sagen, was die Leitung tut
check-go-length = Gesamtlänge eintragen
check-go-turn = Verdrehwinkel von B angeben
check-go-cover = Außendecke angeben
check-go-adapters = Druck des Adapters eintragen
check-go-adapter-change = Adapter ändern

## Felder
check-working = Betriebsdruck
check-working-how = Vom Typenschild, aus der Anleitung der Maschine oder vom Manometer.
check-relief = Druckbegrenzung
check-relief-how = Einstellung des Druckbegrenzungs- oder Sekundärventils dieses Kreises.
check-surge = Druckspitze
check-surge-how = Die höchste Spitze, gemessen oder vom Maschinenhersteller.
check-fluid = Flüssigkeit
check-fluid-how = Nach Klasse: steht auf dem Typenschild oder in der Anleitung der Maschine.
check-fluid-usual = übliches Hydrauliköl, 32, 46 oder 68: { $name }
check-cold = Öl, kältestes
check-cold-how = Ein Kaltstart im Winter zählt.
check-hot = Öl, heißestes
check-hot-how = So heiß, wie die Flüssigkeit in dieser Leitung höchstens wird.
check-air = Luft, heißeste
check-air-how = Motor oder Auspuff in der Nähe zählen.
check-flow = Volumenstrom
check-flow-how = Was die Pumpe oder das Ventil gibt.
check-line = Leitung
check-line-how = Was die Leitung tut.
check-bend = Biegung
check-bend-how = Der engste Radius, an der Innenseite der Biegung.
check-vacuum = Unterdruck
check-vacuum-how = Der niedrigste absolute Druck am Einlass der Pumpe.
check-duties = Anforderungen
check-duties-how = Was die Stelle außer Druck verlangt.
check-hose = Schlauch
check-hose-bend = Biegeradius des Schlauchs, eigener
check-hose-bend-how = Der kleinste Radius an der Innenseite der Biegung, vom Lieferanten. Er geht dem der Tabelle vor.
check-hose-vacuum = Unterdruck des Schlauchs, eigener
check-hose-vacuum-how = Der niedrigste absolute Druck innen, vom Lieferanten. Er geht dem der Tabelle vor.
check-end-a = Ende A
check-end-b = Ende B
check-end-how = Erst die Familie, dann die Größe.
check-gender = Hälfte
check-gender-how = Gewinde außen ist Außengewinde.
check-form = Form
check-drop = Bogenhöhe
check-drop-how = Von der Schlauchachse zur Mitte der Dichtfläche.
check-cutoff = Abzugsmaß, eigenes
check-cutoff-how = Eigenes: vom Dichtpunkt zum Schlauchanschlag, vom Lieferanten oder gemessen.
check-rating = zulässiger Druck, eigener
check-rating-how = Eigener, vom Lieferanten. Er geht dem der Tabelle vor.
check-rating-from = woher der Druck ist
check-rating-from-how = Der Lieferant, und die Tabelle oder Seite, die diesen Wert nennt. Er geht hier dem der Tabelle vor; darum ist er als eigener gekennzeichnet und wird erfasst.
check-rating-from-label = Ende { $end }, { $value }: nach welcher Tabelle, welchem Lieferanten
check-rating-unsaid = niemand sagte, woher
check-own-rating = { $value } AN { $end }: EIGENER WERT
check-own-rating-from = Nicht der der Tabelle. Aus: { $from }.
check-own-rating-note = Ende { $end }: { $value } nach eigenem Wert, aus: { $from }
check-adapters = Adapter
check-adapters-how = Jedes Teil zwischen Schlauchende und Maschine, mit seinem zulässigen Druck.
check-length = Gesamtlänge
check-length-how = Von Dichtpunkt zu Dichtpunkt, Muttern zurückgeschoben.
check-turn = Verdrehwinkel
check-turn-how = Am Schlauch entlang von A nach B sehen, Bogen A nach oben: im Uhrzeigersinn zum Bogen B.
check-cover = Außendecke
check-cover-how = Wie auf dem Schlauch gedruckt oder gekennzeichnet.
