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
