# Wörter der Papiere: Fertigungsblatt, Bescheinigung, Bericht.
papers-title = Papiere
papers-context = der Leitung in der Hand
papers-kind = Papier
papers-build-sheet = Fertigungsblatt
papers-certificate = Bescheinigung
papers-report = Bericht
papers-size = Größe
papers-preview = { $paper }, wie gedruckt
papers-closer = Näher ansehen
papers-whole = Die ganze Seite
papers-signature = Unterschrift
papers-sign-how = Wer sie gefertigt hat, unterschreibt. Es steht auf dem Papier, wie es hier gezeichnet ist.
papers-save = Als PDF sichern
papers-save-then = { $paper }, { $size }
papers-share = Teilen
papers-not-yet = Bescheinigung und Bericht gibt es, sobald die Schlauchleitung erfasst ist.
papers-not-made = KEIN PAPIER
