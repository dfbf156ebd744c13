# Das Fertigungsblatt: was bei jedem Schritt zu tun ist, und wie Fehlendes zu besorgen ist.

# Bevor etwas gelöst wird
step-plan = Flüssigkeit, Weg zum Krankenhaus und alles, was über einem hängt, kennen.
step-lower-load = Last ablassen oder abstützen.
step-lock-out = Motor abstellen, gegen Einschalten sichern, Schlüssel behalten.
step-release-pressure = Druck ablassen, Speicher entleeren, nachweisen, dass er weg ist.
step-mark-lines = Verlegung fotografieren und gleiche Leitungen kennzeichnen.
step-loosen = Langsam lösen, Öl auffangen, Anschlüsse verschließen.
step-if-injected = Wenn Flüssigkeit unter die Haut gelangt sein kann: sofort ins Krankenhaus.

# Fertigen
step-fetch-parts = Schlauch, Armaturen, Presshülsen und Schutzschläuche holen; alles neu.
step-cut = Rechtwinklig auf Schnittlänge schneiden.
step-clean-bore = Schlauch innen reinigen.
step-skive = Ende schälen, wie der Lieferant es sagt.
step-mark-insertion = Einstecktiefe auf der Außendecke anzeichnen.
step-push-on = Presshülse aufsetzen, schmieren wie der Lieferant es sagt, Armatur bis zur Marke einschieben.
step-crimp = Mit dem Backensatz des Lieferanten auf das Pressmaß des Lieferanten verpressen.
step-fine-instrument = Bügelmessschraube nehmen: Ein Messschieber, der um 0,1 mm abweichen kann, ist für diese Pressmaßtoleranz zu grob.
step-measure-crimp = Pressung auf den Flächen zwischen den Graten messen, in mehreren Richtungen, an drei Stellen entlang der Hülse.
step-sleeves = Schutzschläuche und Scheuerschutz jetzt aufschieben, vor dem zweiten Ende.
step-set-turn = Verdrehwinkel einstellen: von A nach B, Bogen A nach oben, im Uhrzeigersinn zum Bogen B.
step-mark-not-moved = Nachsehen: Die Einsteckmarken haben sich nicht bewegt.
step-bore-gauge = Durchgangslehre durch beide Enden führen.
step-nuts-free = Muttern drehen: Sie laufen frei.
step-measure-length = Fertige Länge von Dichtpunkt zu Dichtpunkt messen.
step-measure-turn = Verdrehwinkel messen.
step-flush-and-cap = In beide Richtungen spülen und beide Enden verschließen.

# Druckprüfung
step-connect-rig = Prüfstand mit einwandfreien, druckfesten Anschlüssen verbinden; beide Enden festhalten.
step-bleed-rig = Alle Luft ablassen.
step-close-guard = Schutz schließen und zurücktreten.
step-raise-pressure = Druck langsam auf Prüfdruck steigern.
step-hold-pressure = Halten; Manometer von außen ablesen.
step-release-and-look = Allen Druck ablassen, dann nach Lecks und Bewegung sehen.
step-no-rig = Kein Prüfstand: „nicht geprüft: kein Prüfstand“ im Register und auf dem Schild vermerken.

# Kennzeichnen
step-mark-ferrule = Presshülse dauerhaft kennzeichnen: Hersteller der Schlauchleitung, Betriebsdruck, Jahr und Monat.
step-label = Schild anbringen.

# Einbau
step-match-lines = Leitungen ihren Marken zuordnen.
step-new-seals = Dichtflächen reinigen und neue Dichtungen einsetzen.
step-tighten = Nach Angabe des Herstellers anziehen, mit zweitem Schlüssel gegen Verdrehen halten.
step-tighten-flange = Flanschschrauben nach Angabe des Herstellers über Kreuz anziehen.
step-lay-straight = Ohne Torsion legen, Aufdrucklinie gerade; Schellen, Scheuerschutz und Schutzschläuche wieder anbringen.
step-bleed-and-fill = Entlüften, auffüllen, ohne Last starten.
step-first-run = Probelauf, dabei alle Personen fernhalten.
step-leak-check = Mit Pappe nach Lecks suchen, niemals mit der Hand.
step-clean-up = Öl aufwischen.
step-log-hours = Betriebsstunden der Maschine aufschreiben.

# Was nur der eigene Lieferant geben kann
missing-cutoff = Abzugsmaß: aus der Tabelle des Lieferanten, oder eine neue Armatur vom Dichtpunkt zum Schlauchanschlag messen.
missing-length-tolerance = Längentoleranz: Die Praxis nennt für diese Größe und Länge keine; eine vereinbaren.
missing-insertion = Einstecktiefe: aus der Tabelle des Lieferanten, oder die Tiefe der Presshülse messen.
missing-skive = Schälen: aus der Tabelle des Lieferanten, ob Außendecke oder Seele abgenommen wird und wie weit.
missing-ferrule = Presshülse: die, die der Lieferant für diesen Schlauch und diese Armatur freigibt.
missing-lubricant = Schmiermittel: was der Lieferant für diesen Schlauch erlaubt.
missing-die-set = Backensatz: aus der Presstabelle des Lieferanten für diese Presse.
missing-crimp-diameter = Pressmaß: aus der Presstabelle des Lieferanten, nie aus der eines anderen Herstellers.
missing-crimp-tolerance = Pressmaßtoleranz: aus der Presstabelle des Lieferanten.
missing-torque = Anziehmoment: aus der Anleitung der Maschine oder vom Lieferanten; die Tabellen haben keines für diese Armatur.

# Wie sauber er sein muss
asks-clean-after-cutting = Nach dem Schnitt: spülen oder ein Reinigungsgeschoss durchschießen, dann verschließen.
asks-cleanliness-general = Für allgemeine Industrieanlagen: { $code } { $asks }.
asks-cleanliness-servo = Für Anlagen mit Servo- oder Proportionalventilen: { $code } { $asks }.
asks-cleanliness-sampling = Wie die Sauberkeit beprobt wird: { $asks }.
