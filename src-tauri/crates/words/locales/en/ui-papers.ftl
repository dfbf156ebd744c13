# Words of the papers: build sheet, certificate, report.
papers-title = Papers
papers-context = of the hose in hand
papers-kind = Paper
papers-build-sheet = Build sheet
papers-certificate = Certificate
papers-report = Report
papers-size = Size
papers-preview = { $paper } as it prints
papers-closer = Look closer
papers-whole = The whole page
papers-signature = Signature
papers-sign-how = Whoever made it signs. It stands on the paper as it is drawn here.
papers-save = Save as PDF
papers-save-then = { $paper }, { $size }
papers-share = Share it
papers-not-yet = Certificate and report come once the hose is on record.
papers-not-made = NO PAPER
