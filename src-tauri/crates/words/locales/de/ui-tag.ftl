# Wörter des Schilds und seines Etiketts.
tag-title = Schlauchleitung kennzeichnen
tag-text = Was das Schild sagt
tag-code = Code des Schilds
tag-label-name = Etikett von { $code }, wie gedruckt
tag-size = { $width } × { $height }
tag-full-text = Der Code trägt den ganzen Text: Jedes Telefon liest ihn ohne dieses Programm.
tag-code-alone-short = Zu klein für den ganzen Text: Der Code trägt den Namen des Schilds, die Wörter stehen daneben.
tag-left-off = { $count ->
    [one] { $count } Angabe hatte in Wörtern keinen Platz.
   *[other] { $count } Angaben hatten in Wörtern keinen Platz.
}
tag-no-room = KEIN PLATZ
tag-where = Entlang des Schlauchs, { $distance } hinter der Presshülse, wo es an der stehenden Maschine zu sehen ist.
tag-by-hand = Von Hand schreiben
tag-by-hand-note = kein Drucker hier
tag-by-hand-how = Auf ein Schild aus Metall oder Kunststoff, mit Schlagzahlen oder Lackstift: Code, Betriebsdruck, Jahr und Monat. Der Rest steht im Register.
tag-save-png = Als Bild sichern
tag-save-pdf = Als PDF sichern
tag-share = Bild teilen
tag-save-and-keep = Etikett und Schlauchleitung sichern
tag-keep = Schlauchleitung sichern
tag-keep-then = erfassen, dann einbauen
tag-correct = Etikett neu sichern und Erfassung berichtigen
tag-correct-then = sie wurde nach der Erfassung geändert: neues Etikett anbringen, altes abnehmen
tag-again = Etikett noch einmal drucken
tag-again-how = Ein Nachdruck: derselbe Code, für dieselbe Schlauchleitung. Ein abgenutztes Etikett kommt zuerst ab.
tag-not-saved = NICHT GESICHERT
tag-on-record = sie ist erfasst
tag-to-fit = Schlauchleitung einbauen
tag-crimp-outside = Pressung { $end } liegt außerhalb
tag-crimp-outside-then = kein Schild, bevor neu gemessen oder gepresst ist
tag-bench-open = An der Werkbank abschließen
tag-prove = Sagen, ob druckgeprüft wurde
tag-prove-then = das Schild sagt es so oder so
tag-not-kept = NICHT GESICHERT
