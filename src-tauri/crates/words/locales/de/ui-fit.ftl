# Wörter des Einbaus: alte Schlauchleitung ab, neue dran, beides erfasst.
fit-title = Schlauchleitung einbauen
fit-which-machine = An welche Maschine kommt sie?
fit-which-place = An welche Stelle von { $machine }?
fit-hose-sits = dort sitzt eine: Sie kommt ab
fit-no-hose = dort sitzt keine
fit-other-machine = Andere Maschine
fit-hand-over = Jetzt kein Einbau
fit-hand-over-note = übergeben; sie ist erfasst
fit-not-read = NICHT GELESEN
fit-not-written = NICHT GESICHERT
fit-tag-first = eingebaut wird nur mit Schild
fit-tighten = Wie fest
fit-tighten-how = Die Angabe des Herstellers geht vor. Sonst den einen Wert nehmen, dessen Bedingung zutrifft; nie Tabellen mischen.
fit-sources = Woher die Werte sind
fit-sources-fold = Quellen einklappen
fit-take-figure = den Wert nehmen, dessen Bedingung zutrifft
fit-no-figure = kein Wert in den Tabellen: nur der des Herstellers
fit-no-figure-taken = kein Wert genommen: nur nach dem des Herstellers
fit-flats = { $count ->
    [one] { $flats } Fläche
   *[other] { $flats } Flächen
}
fit-off = { $code } kommt ab
fit-cause = Warum sie ausfiel
fit-not-failed = Sie war nicht ausgefallen
fit-note = Was zu sehen war
fit-say-cause = Sagen, warum die alte ausfiel
fit-say-cause-then = oder dass sie es nicht war
fit-hours = Betriebsstunden
fit-hours-how = Wie sie am Zähler stehen.
fit-hours-last = Wie sie am Zähler stehen. Zuletzt: { $last }.
fit-hours-doubt = { $hours }?
fit-hours-again = Zähler noch einmal ablesen
fit-hours-right = { $hours } stimmt: behalten
fit-enter-hours = Betriebsstunden eintragen
fit-date = Eingebaut am
fit-refused = NOCH NICHT EINBAUEN
fit-ask = Eintragen, was die Stelle verlangt
fit-ask-then = Druck und Flüssigkeit der Leitung, dann geht der Einbau weiter
fit-correct = Erst die Erfassung berichtigen
fit-correct-then = die Schlauchleitung wurde nach der Erfassung geändert
fit-crimp-outside-then = kein Einbau, bevor neu gemessen oder gepresst ist
fit-finish = Abschließen
fit-finish-then = alte ab, neue dran, alles erfasst
