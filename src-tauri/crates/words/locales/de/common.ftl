# Wörter, die alle Wege gemeinsam haben.
verdict-pass = BESTANDEN
verdict-caution = VORSICHT
verdict-stop = STOPP
verdict-unsettled = NICHT GEKLÄRT
unverified = ungeprüft
yours = eigene

# Formen der Armaturen
form-elbow = { $angle }°-Bogen
form-straight = gerade
form-compact90 = 90°-Kompaktbogen
form-standpipe = Rohrstutzen
form-banjo = Ringstück

# Worauf ein Wert beruht
basis-published = veröffentlicht
basis-derived = aus veröffentlichten Werten berechnet
basis-reference-library = von einer Referenzbibliothek berechnet
basis-common-practice = übliche Praxis
basis-memory = aus dem Gedächtnis, ungeprüft
basis-lower-of-two = der kleinere von zwei gedruckten Werten
basis-bounded = aus gedruckten Werten der Nachbargrößen
basis-proxy = Wert einer anderen Armatur, nicht dieser
basis-none = nicht bekannt
basis-yours = eigene

# Armaturen und Außendecken
gender-male = Außengewinde
gender-female = Innengewinde
cover-plain = gewöhnliche Außendecke
cover-non-conductive = nicht leitende Außendecke
cover-flame-resistant = flammwidrige Außendecke
cover-antistatic = antistatische Außendecke

# Wie eine Prüfung ausging, auch auf Etiketten: kurz halten.
label-proved = geprüft { $pressure }
label-not-proved = NICHT GEPRÜFT
label-no-rig = NICHT GEPRÜFT: kein Prüfstand
