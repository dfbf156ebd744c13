# Wörter des Scannens eines Schilds.
scan-title = Schild scannen
scan-job-open = offen
scan-drawing = Ein noch nicht gesehenes Schild: sein Code links, seine Wörter rechts

## Wege hinein
scan-how = Schild gerade und nah halten, sodass sein Code ein Drittel des Bilds füllt.
scan-photo = Schild fotografieren
scan-photo-then = öffnet die zugehörige Schlauchleitung
scan-choose = Bild wählen
scan-live = Live-Kamera
scan-live-note = liest von selbst
scan-type = Code tippen
scan-type-then = 10 Buchstaben und ein Prüfzeichen
scan-again = Noch einmal scannen
scan-measure = Messen
scan-measure-then = Messschieber, Gewindelehre, Bandmaß
scan-close-camera = Kamera schließen
scan-looking = Sucht einen Code. Schild gerade und nah halten.
scan-reading = Liest das Bild.
scan-camera = Live-Kamera
scan-camera-refused = Sie wurde verweigert. In den Einstellungen des Geräts die Kamera für dieses Programm erlauben; ein Foto geht auch ohne.
scan-camera-absent = Hier gibt es für dieses Programm keine. Ein Foto geht auch ohne.
scan-picture = Das gelesene Bild

## Tippen
scan-type-title = Die Buchstaben neben dem Code tippen
scan-type-head = Buchstaben neben dem Code
scan-type-leave = stattdessen Bild
scan-missing = { $shown } fehlen. Die Buchstaben I, L, O und U kommen nicht vor.
scan-wrong = STIMMT NICHT
scan-use = { $code } verwenden
scan-use-compare = { $where }. Zuerst mit der Schlauchleitung vergleichen: { $what }.
scan-fits = { $count ->
    [one] { $shown } Schlauchleitung hier passt.
   *[other] { $shown } Schlauchleitungen hier passen. Weiter tippen.
  }
scan-not-fitted = an keiner Maschine

## Was dabei herauskam
scan-failed = NICHT GETAN
scan-not-read = NICHT GELESEN
scan-no-code = In diesem Bild ist kein Code lesbar.
scan-instead = Oder noch einmal aufnehmen: näher, gerade, scharf, ohne Blendung.
scan-no-tag = KEIN SCHLAUCHSCHILD
scan-says = Der Code sagt:
scan-code-alone = Das Schild trägt nur seinen Code { $code }. Was die Schlauchleitung ist, steht im Register des Wagens, der sie gekennzeichnet hat, und in Wörtern auf dem Schild.
scan-merge = Daten einlesen
scan-which = Mehrere Schilder. Welche Schlauchleitung?
scan-is-own = EIGENE FLOTTE
scan-is-partner = VON EINEM PARTNER
scan-is-foreign = FREMD
scan-is-unsealed = OHNE SIEGEL
scan-is-code-alone = NUR CODE
scan-is-altered = VERÄNDERT
scan-is-newer = NEUER ALS DIESES PROGRAMM
scan-is-withdrawn = ZURÜCKGEZOGEN
scan-is-failed = DRUCKPRÜFUNG NICHT BESTANDEN
scan-is-elsewhere = ANDERSWO EINGEBAUT
scan-is-other-spec = ANDERE SCHLAUCHLEITUNG
scan-is-undone = GESTRICHEN
scan-is-failed-in-use = SCHON VERSAGT
scan-is-contradicted = NICHT GEKLÄRT
scan-is-other-seal = FREMDES SIEGEL
scan-is-higher = SAGT ZU VIEL
scan-carried-note = Vom Schild gelesen, hier nicht geprüft. Mit der Schlauchleitung in der Hand vergleichen.
scan-open = { $code } öffnen
scan-open-then = die Schlauchleitung im Register
scan-open-stop-then = was im Register steht; diese Schlauchleitung nicht nach ihrem Schild einbauen
scan-keep = Hier sichern
scan-make = Eine gleiche fertigen
scan-make-then = erst hier geprüft, nichts wird als gegeben genommen

## Was ein Schild trägt
scan-carried-drawing = Die Schlauchleitung, wie ihr Schild sagt: { $what }
scan-not-carried = nicht auf dem Schild
scan-fact-hose = Schlauch
scan-fact-a = Ende A
scan-fact-b = Ende B
scan-fact-length = Länge
scan-fact-turn = Verdrehwinkel
scan-fact-pressure = Druck, max
scan-fact-proof = Druckprüfung
scan-fact-fluid = Flüssigkeit
scan-fact-assembled = Gefertigt

## Was gescannt wurde
scan-log = Scans auf diesem Gerät
scan-log-count = Scans
scan-log-none = Auf diesem Gerät wurde noch nichts gescannt.
scan-log-no-code = kein Code war lesbar
scan-log-row = { $standing }, { $way ->
    [typed] getippt
   *[picture] vom Bild
}
