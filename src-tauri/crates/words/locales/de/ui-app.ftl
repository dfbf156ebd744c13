# Wörter des Rahmens um jeden Bildschirm und des ersten Starts.

## Schritte und Orte
step-find = Finden
step-check = Prüfen
step-make = Fertigen
step-tag = Schild
step-fit = Einbau
place-job = Auftrag
place-machines = Maschinen
place-van = Wagen
place-due = Fällig

## Schriftfeld
title-job = Auftrag
title-none = keiner
title-leave = Verlassen
title-leave-note = der Auftrag bleibt unter den offenen
title-this-phone = Dieses Gerät
title-first = Erste Leitung
title-kept = Gesichert
title-keeping = Sichert
title-not-kept = Nicht gesichert
