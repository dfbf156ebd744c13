# Wörter auf Etiketten und Papieren. Etiketten sind klein: kurz halten.
label-pressure = { $pressure } max
label-pressure-unknown = Druck nicht bekannt
label-non-conductive = NICHT LEITEND
label-flame-resistant = FLAMMWIDRIG
label-antistatic = ANTISTATISCH
label-length = Länge { $length }
label-length-and-turn = Länge { $length }, Winkel { $turn }°
label-made = gefertigt { $date }
label-adapter = Adapter: { $name }
label-male = AG
label-female = IG
label-reprint = NACHDRUCK
label-catalogue = Tabellen { $version }
label-caution = Die Anleitung des Herstellers geht vor.

sheet-page = { $page } von { $pages }
sheet-caution = Vorsicht
