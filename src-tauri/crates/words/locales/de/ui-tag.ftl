# Wörter des Schilds und seines Etiketts.
tag-title = Schlauchleitung kennzeichnen
tag-text = Was das Schild sagt
tag-code = Code des Schilds
tag-label-name = Etikett von { $code }, wie gedruckt
tag-full-text = Der Code trägt den ganzen Text: Jedes Telefon liest ihn ohne dieses Programm.
tag-code-alone-short = Der Code trägt nur den eigenen Code des Schilds: Die Wörter daneben sagen, was die Schlauchleitung ist.
tag-code-only = Nur der Code: kein Platz für das, was die Schlauchleitung ist, weder im Code noch in Wörtern. Es steht allein im Register.
tag-left-off = { $count ->
    [one] { $count } Angabe hatte in Wörtern keinen Platz.
   *[other] { $count } Angaben hatten in Wörtern keinen Platz.
}
tag-no-room = KEIN PLATZ
tag-where-flag = Als Fahne um den Schlauch, { $distance } hinter der Presshülse, die Fläche so, dass sie an der stehenden Maschine zu sehen ist.
tag-where-wrap = Um den Schlauch, { $distance } hinter der Presshülse, der Code so, dass er an der stehenden Maschine zu sehen ist.
tag-where-plate = Angebunden { $distance } hinter der Presshülse, wo es an der stehenden Maschine zu sehen ist und an nichts scheuert.
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
tag-again-note = mit seinem Code
tag-not-saved = NICHT GESICHERT
tag-on-record = sie ist erfasst
tag-to-fit = Schlauchleitung einbauen
tag-crimp-outside = Pressung { $end } liegt außerhalb
tag-crimp-outside-then = kein Schild, bevor neu gemessen oder gepresst ist
tag-bench-open = An der Werkbank abschließen
tag-prove = Sagen, ob druckgeprüft wurde
tag-prove-then = das Schild sagt es so oder so
tag-unfinished = NICHT FERTIG
tag-unfinished-how = Es gibt noch kein Etikett. Offen ist:
tag-source-open = Niemand hat gesagt, von wem das Pressmaß an { $end } ist.
tag-not-kept = NICHT GESICHERT
tag-first = Aus dieser Erfassung wurde noch keines gedruckt.
tag-by-hand-then = kein eigenes Etikett hat Platz
tag-stocks = Eigene Etiketten
tag-own-stocks = Eigene Etiketten ändern
tag-would-do = Eines der eigenen würde reichen:
tag-none-would-do = Keines der eigenen Etiketten würde reichen. Unter Wagen ein größeres anlegen, oder den Code von Hand schreiben.
tag-take-stock = { $name } nehmen
tag-take-stock-then = eigenes Etikett, das den Platz hat
tag-curve = Rund um einen Schlauch von { $od } ({ $from ->
    [given] wie gemessen
    [reckoned] aus dem größten der Tabellen gerechnet
   *[tables] aus den Tabellen
}) sieht eine Kamera mit einem Blick einen Code von { $seen }. Dieser ist { $code } breit, seine Wörter laufen { $direction ->
    [around] um den Schlauch herum
   *[along] entlang des Schlauchs
}.
tag-in-one-look = { $seen } mit einem Blick
tag-module = Code { $side } breit, { $dots } Druckerpunkte je Modul ({ $module }); eine Kamera liest ihn aus { $from } und näher.
tag-sealed = Von der eigenen Flotte gesiegelt.
tag-over-cover = Über die Außendecke
tag-over-cover-how = Quer über den Schlauch messen, über die Außendecke, wo das Etikett hinkommt.
tag-print = Drucken
tag-print-label = Etikett drucken
tag-print-label-then = Druckfenster des Systems
tag-save-label = Etikett sichern
tag-save-label-then = ein PDF in der Größe des Etiketts

## Eigene Etiketten
label-stock = { $width } × { $height }, { $form }
label-form-flag = Fahne
label-form-wrap = Wickel
label-form-plate = Plakette
label-material-polyester = Polyester
label-material-polypropylene = Polypropylen
label-material-vinyl = Vinyl
label-material-paper = Papier
label-material-metal = Metall
label-material-other = anderes

## Etiketten vieler Schlauchleitungen
labels-title = Etiketten
batch-count = Etiketten
batch-due = Was fällig wird
batch-machine-labels = Etiketten dieser Maschine
batch-machine-labels-note = von allem, was an ihr sitzt
batch-due-labels = Etiketten des Fälligen
batch-due-labels-note = eine Datei
batch-within = { $days ->
    [0] über der Grenze
   *[other] in { $shown } Tagen
}
batch-paper = Auf
batch-one-each = Etikettendrucker, je eines
batch-working = Macht die Etiketten.
batch-list = Leitungen
batch-reprint = Nachdruck
batch-diameter = { $from ->
    [reckoned] Durchmesser nicht gemessen, aus dem größten der Tabellen gerechnet
   *[tables] Durchmesser nicht gemessen, der kleinste der Tabellen
}
batch-code-alone = der Code trägt nur seinen Namen
batch-left-word = WEGGELASSEN
batch-left = { $count ->
    [one] { $shown } Schlauchleitung bekommt auf diesem Etikett keines; die Liste sagt, warum.
   *[other] { $shown } Schlauchleitungen bekommen auf diesem Etikett keines; die Liste sagt, warum.
}
batch-save = { $count ->
    [one] { $shown } Etikett sichern
   *[other] { $shown } Etiketten sichern
}
batch-save-then = { $count ->
    [one] PDF, { $shown } Seite
   *[other] PDF, { $shown } Seiten
}
