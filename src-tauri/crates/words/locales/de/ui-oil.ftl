# Wörter zu Strömung und Druckspitze: was das Öl im Schlauch tut.

flowing-title = Was tut das Öl?
flowing-not-reckoned = NICHT BERECHNET
flowing-estimate-why = Sauberes Öl in glattem rundem Querschnitt; Ventile und andere Leitungen sind nicht darin.
flowing-within = Das Öl läuft so schnell, wie es in einer solchen Leitung üblich ist.
flowing-too-fast = Schneller als in einer solchen Leitung üblich: Es wird heiß und verliert Druck.
flowing-usual-unknown = Was üblich ist, ist nicht bekannt, bis gesagt ist, was die Leitung tut.
flowing-peak-unknown = Wie hoch die Druckspitze wird, ist nicht bekannt, bis der Betriebsdruck es ist.
flowing-brings = bringt das Öl auf { $speed }
flowing-cure = Eine weitere Größe nehmen.
flowing-usual = üblich { $low } bis { $high }
flowing-drawing = Der Schlauch aufgeschnitten: Das Öl läuft mit { $speed }
flowing-loses = verliert { $drop }
flowing-said = Worauf es beruht
flowing-enter = Eintragen: { $field }

flowing-drop = Druckverlust
flowing-cold-drop = Verlust bei größter Kälte
flowing-reynolds = Reynolds-Zahl
flowing-regime-laminar = laminar
flowing-regime-transitional = zwischen laminar und turbulent
flowing-regime-turbulent = turbulent
flowing-viscosity = Viskosität
flowing-viscosity-at = { $value } bei { $heat }

flowing-sizes = Größen, die weit genug sind, ganz geprüft

flowing-surge = Druckspitze, wenn ein Ventil schließt
flowing-surge-drawing = Der Druck beim Schließen des Ventils: Er steigt um { $rise }
flowing-rise = kommt obendrauf
flowing-peak = Spitze
flowing-wave = Druckwelle
flowing-critical = hin und zurück
flowing-critical-within = { $time }: so schlimm wie ein schlagartiger Halt
flowing-critical-slower = { $time }: Das Ventil ist langsamer
flowing-use-surge = Diese Druckspitze verwenden
flowing-use-surge-then = { $peak } geht in die Prüfung, als Schätzwert

flowing-length = Länge der Leitung
flowing-length-how = Die ganze Leitung, wo sie mehr ist als diese Schlauchleitung: vom Ventil, das schließt, bis dorthin, wo die Leitung weiter wird.
flowing-elbows-45 = Bögen 45°
flowing-elbows-90 = Bögen 90°
flowing-elbows-how = In der Leitung, außer den Armaturen dieser Schlauchleitung.
flowing-vg = Viskositätsklasse
flowing-vg-how = ISO VG vom Typenschild oder vom Fass, etwa 46.
flowing-closing = Ventil schließt in
flowing-closing-how = In Millisekunden, aus dem Datenblatt des Ventils.
