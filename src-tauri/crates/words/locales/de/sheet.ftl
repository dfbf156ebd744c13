# Das Fertigungsblatt als Papier.
sheet-title = Fertigungsblatt
sheet-parts = Teile
sheet-hose = Schlauch
sheet-end = Ende { $end }
sheet-end-a = Ende A
sheet-end-b = Ende B
sheet-adapter = Adapter
sheet-drop = Bogenhöhe { $drop }
sheet-lengths = Längen, Verdrehwinkel und Druckprüfung
sheet-cut-length = Schlauch schneiden auf
sheet-aim = Zielgenauigkeit des Schnitts
sheet-cutoff = Abzugsmaß { $end } (eigenes)
sheet-overall = Gesamtlänge
sheet-tolerance = Toleranz der Gesamtlänge
sheet-turn = Verdrehwinkel
sheet-turn-how = Am Schlauch entlang von A nach B sehen, Bogen A nach oben; der Winkel läuft im Uhrzeigersinn zum Bogen B.
sheet-rating = Betriebsdruck der Schlauchleitung
sheet-proof = Druckprüfung
sheet-proof-at = { $pressure }, { $from } bis { $to } s gehalten, Öl oder Wasser hinter Schutz, niemals Luft
sheet-settings = Einstellungen (eigene, vom Lieferanten)
sheet-insertion = Einstecktiefe
sheet-ferrule = Presshülse
sheet-lubricant = Schmiermittel
sheet-die-set = Backensatz
sheet-crimp = Pressmaß
sheet-crimp-tolerance = Pressmaßtoleranz
sheet-settings-source = Quelle
sheet-not-known = nicht bekannt
sheet-missing = Zu besorgen, bevor geschnitten wird
sheet-cautions = Warnungen der Prüfung
sheet-steps = Schritte
sheet-cleanliness = Sauberkeit: wie mit dem Eigentümer der Maschine vereinbart, sonst
sheet-tighten = Anziehen, aus den Tabellen
sheet-tighten-end = Anziehen, Ende { $end }
sheet-tighten-how = Die Angabe des Herstellers geht vor. Jede Zeile gilt nur unter ihrer eigenen Bedingung: die zutreffende nehmen, nie eine Spanne oder ein Mittel von Zeilen. Trifft keine zu, den Hersteller fragen.
sheet-flats = { $count ->
    [one] { $figure } Fläche zu 60°
   *[other] { $figure } Flächen zu 60°
}
sheet-column-value = Wert
sheet-column-condition = Gilt für
sheet-column-source = Quelle
sheet-first = Zuallererst
sheet-maker-first = Die Anleitungen der Hersteller von Schlauch, Armaturen, Presse und Maschine, örtliche Vorschriften und zugelassene Fachpraxis gehen diesem Blatt vor.
sheet-footer = { $program }, Tabellen { $catalogue }
