# Wörter des Starts: Kein Auftrag ist offen.
start-title = Kein Auftrag offen
start-register-empty = Register ist leer
start-register = { $count ->
    [one] Eine Maschine im Register
   *[other] { $count } Maschinen im Register
 }
start-nothing = Noch nichts gezeichnet.
start-no-job = Kein Schlauch in der Hand.
start-text = Mit dem beginnen, was da ist: altes Schild, Aufdruck oder Messschieber. Alles bleibt auf diesem Gerät und geht ohne Netz.
start-due = Fällig oder überfällig: { $count }.
start-drawing = Eine noch nicht gezeichnete Schlauchleitung: Beide Enden, Schlauch und Länge sind offen
start-scan = Schild scannen oder tippen
start-scan-then = oder jedes Etikett, das noch dran ist
start-print = Aufdruck lesen
start-print-note = auch nur in Teilen
start-measure = Messen
start-measure-note = Messschieber, Gewindelehre, Bandmaß
start-machine = Bei einer Maschine beginnen
start-machine-note = die Stelle sagt, was dort war
start-drafts = { $count ->
    [0] Kein offener Auftrag
    [one] Ein offener Auftrag
   *[other] { $count } offene Aufträge
 }
start-draft-no-place = Schlauch in der Hand
start-draft-kept = gesichert { $when }
start-give-up = Aufgeben
start-give-up-name = Auftrag aufgeben: { $where }
start-given-up = Aufgegeben. Seine Befunde gehen beim Verlassen dieser Seite verloren.
start-take-back-name = Zurücknehmen: Auftrag { $where }
start-problem = Das Register ist nicht lesbar.
