# Wörter des Findens: Was war es?

## Teile
find-title = Was war es?
find-no-place = Schlauch in der Hand
find-recorded = { $how ->
    [sits] Laut Register, nicht abgelesen: sitzt hier
    [sat] Laut Register, nicht abgelesen: saß hier zuletzt
   *[belongs] Laut Register, nicht abgelesen: gehört hierher
}
find-parts = Teile
find-part-hose = Schlauch
find-part-end = Ende { $role }
find-part-mate = Gegenstück zu { $role }
find-tab-hose = Schlauch
find-tab-end = { $role }
find-tab-mate = Geg. { $role }
find-state-read = { $count } gemessen
find-state-settled = geklärt
find-state-own = eigene Angabe
find-tab-first = 1.
find-tab-second = 2.
find-tab-third = 3.
find-tab-needed = wenn nötig
find-tab-not-needed = nicht nötig
find-begin-a = Erst Ende A, dann Ende B, dann der Schlauch. Einen Lappen an ein Ende binden und es A nennen.
find-before-loosening = Noch an der Maschine? Last ab, Motor aus, Druck nachweislich weg, bevor etwas gelöst wird. Öl unter der Haut: sofort ins Krankenhaus.
find-begin-settled = { $part } ist geklärt: { $name }.
find-begin-open = { $part } ist noch nicht geklärt.
find-begin-b = Jetzt das andere Ende.
find-begin-hose = Jetzt der Schlauch, das letzte Teil.
find-mate-open = Ende { $role } allein sagt es nicht.
find-mate-why = Der Anschluss an der Maschine sagt, was das Ende sein musste. Einen stärkeren Beweis gibt es nicht.

## Befunde
find-key-print = Aufdruck
find-key-mate = Das Gegenstück
find-key-reinforcement = Was den Druck trägt
find-key-layers = Lagen
find-key-id-mm = Innen-Ø des Schlauchs
find-key-cover-od-mm = Ø über Außendecke
find-key-reinforcement-od-mm = Ø über Druckträger
find-key-cover = Art der Außendecke
find-key-overall-length-mm = Gesamtlänge
find-key-gender = Welche Hälfte
find-key-kind = Welche Art Armatur
find-key-shoulder = Bund oder Mündung
find-key-seal = Was dichtet
find-key-thread-diameter-mm = Gewinde-Ø
find-key-thread-diameter-mm-male = Gewinde-Ø, außen
find-key-thread-diameter-mm-female = Gewinde-Ø, innen
find-key-pitch-mm = Gewindelehre
find-key-taper = Kegelig
find-key-seat-included-angle-deg = Kegelwinkel
find-key-cone = Form des Kegels
find-key-flank-angle-deg = Flankenwinkel
find-key-swivel-hex-mm = Schlüsselweite
find-key-tube-od-mm = Rohr-Ø
find-key-male-bore-mm = Durchgangsbohrung
find-key-second-thread-diameter-mm = Zweiter Gewinde-Ø
find-key-threads-apart = Gänge dazwischen
find-key-form = Wie die Armatur vom Schlauch abgeht
find-key-bolt-long-mm = Lochabstand, lang
find-key-bolt-short-mm = Lochabstand, kurz
find-key-head-od-mm = Flanschbund-Ø
find-key-head-thickness-mm = Bunddicke

find-do-print = Aufdruck lesen
find-do-reinforcement = Schnittende ansehen
find-do-layers = Lagen zählen
find-do-id-mm = Innen-Ø messen
find-do-cover-od-mm = über Außendecke messen
find-do-reinforcement-od-mm = über Druckträger messen
find-do-cover = Außendecke ansehen
find-do-overall-length-mm = Gesamtlänge mit Bandmaß
find-do-kind = Armatur ansehen
find-do-shoulder = Bund oder Mündung ansehen
find-do-gender = sehen, wo das Gewinde ist
find-do-seal = Dichtung suchen
find-do-thread-diameter-mm = Gewinde messen
find-do-pitch-mm = Gewindelehre anlegen
find-do-taper = auf Kegel prüfen
find-do-seat-included-angle-deg = Kegellehre anlegen
find-do-cone = Kegel ansehen
find-do-flank-angle-deg = Flanken mit der Lehre prüfen
find-do-swivel-hex-mm = Schlüsselweite messen
find-do-tube-od-mm = Rohr messen
find-do-male-bore-mm = Bohrung messen
find-do-second-thread-diameter-mm = Gewinde noch einmal messen
find-do-threads-apart = Gänge dazwischen zählen
find-do-form = sagen, wie sie vom Schlauch abgeht
find-do-bolt-long-mm = langen Lochabstand messen
find-do-bolt-short-mm = kurzen Lochabstand messen
find-do-head-od-mm = Flanschbund messen
find-do-head-thickness-mm = Bunddicke messen

find-how-overall-length-mm = Bandmaß von Dichtpunkt zu Dichtpunkt anlegen, Muttern zurückgeschoben. Ein Bogen zählt bis zur Mitte seiner Dichtfläche. In einem Bogen gemessen fehlt Länge.
find-how-form = Schlauch gerade halten und ansehen, wie die Armatur davon abgeht. Auch die Bogenhöhe zählt: Mit einer anderen passt es nicht.

## Das Messmittel, in wenigen Wörtern neben der Zeichnung
find-tool-id-mm = Innenschneiden, 100 mm hinter der Hülse abgeschnitten
find-tool-cover-od-mm = Außenschneiden, wo die Decke sauber und rund ist
find-tool-reinforcement-od-mm = Außenschneiden leicht auf dem blanken Draht
find-tool-layers = Schälen und zählen
find-tool-reinforcement = Schnittende ansehen
find-tool-cover = Farbe und Aufdruck
find-tool-overall-length-mm = Bandmaß, Dichtpunkt zu Dichtpunkt
find-tool-kind = Was ist es auf einen Blick?
find-tool-shoulder = Worauf liegt der Ring?
find-tool-gender = Wo ist das Gewinde?
find-tool-seal = Ring, Scheibe oder blankes Metall?
find-tool-thread-diameter-mm = Am dritten Gang oder weiter innen
find-tool-thread-diameter-mm-male = Außenschneiden über die Spitzen, dritter Gang
find-tool-thread-diameter-mm-female = Innenschneiden auf die Spitzen, dritter Gang
find-tool-pitch-mm = Das Blatt, das nirgends Licht zeigt
find-tool-taper = Messfläche flach ans Gewinde: Licht an einem Ende?
find-tool-seat-included-angle-deg = Lehre mittig, ohne Wackeln
find-tool-cone = Vorstehend, hohl oder flach?
find-tool-flank-angle-deg = Blatt in den Flanken, gegen das Licht
find-tool-swivel-hex-mm = Außenschneiden über die Schlüsselweite
find-tool-tube-od-mm = Außenschneiden auf dem Rohr hinter dem Kegel
find-tool-tube-od-mm-male = Innenschneiden in der Bohrung am Grund des Kegels
find-tool-male-bore-mm = Innenschneiden, engste Bohrung
find-tool-second-thread-diameter-mm = Fünf Gänge weiter
find-tool-threads-apart = Zwischen den beiden Durchmessern
find-tool-form = Schlauch gerade halten
find-tool-bolt-long-mm = Lochkante zu selber Kante
find-tool-bolt-short-mm = Lochkante zu selber Kante
find-tool-head-od-mm = Außenschneiden über den runden Bund
find-tool-head-thickness-mm = Messflächen über den Rand

## Was ein Befund sein kann
find-is-gender-female = Innengewinde
find-sign-gender-female = Gewinde innen, meist eine Mutter
find-is-gender-male = Außengewinde
find-sign-gender-male = Gewinde außen
find-is-kind-nut = Lose Mutter
find-sign-kind-nut = Gewinde innen
find-is-kind-male = Außengewinde
find-sign-kind-male = Gewinde außen
find-is-kind-stud = Einschraubzapfen
find-sign-kind-stud = Ring an seinem Bund
find-is-kind-socket = Anschluss
find-sign-kind-socket = Gewinde in einem Körper
find-is-kind-flange = Flansch
find-sign-kind-flange = runder Bund, vier Schrauben
find-is-kind-tube = Glattes Rohr
find-sign-kind-tube = kein eigenes Gewinde
find-is-kind-banjo = Ringstück
find-sign-kind-banjo = Auge, Hohlschraube
find-is-kind-coupling = Schnellkupplung
find-sign-kind-coupling = Muffe oder Stecker
find-is-kind-staple = Steckanschluss
find-sign-kind-staple = von U-Klammer gehalten
find-is-kind-test-point = Messanschluss
find-sign-kind-test-point = klein, mit Kappe
find-is-shoulder-chamfered = Mit Fase
find-sign-shoulder-chamfered = Ring hinter dem Gewinde
find-is-shoulder-flat = Eben
find-sign-shoulder-flat = Ring oder Scheibe auf der Fläche
find-stray-again = Noch einmal messen
find-other-half = { $what } { $value } passt hier nicht zu { $name }, aber zu dessen Gegenstück. Wurde das Gegenstück an der Maschine gemessen?
find-other-half-move = Ja: zum Gegenstück von { $role } verschieben
find-is-seal-cone = Kegel
find-sign-seal-cone = Metall auf Metall
find-is-seal-o-ring-face = O-Ring in Fläche
find-sign-seal-o-ring-face = ebene Fläche, Ring darin oder gegenüber
find-is-seal-o-ring-cone = O-Ring im Kegel
find-sign-seal-o-ring-cone = oder seine leere Nut
find-is-seal-o-ring-shoulder = O-Ring am Grund
find-sign-seal-o-ring-shoulder = unter dem Sechskant, hinter dem Gewinde
find-is-seal-thread = Das Gewinde
find-sign-seal-thread = Band oder Paste, kein Kegel
find-is-seal-bonded-washer = Gummi-Metall-Ring
find-sign-seal-bonded-washer = Metallring mit Gummi
find-is-seal-flat-gasket = Flachdichtung
find-sign-seal-flat-gasket = Kupfer- oder Faserring
find-is-seal-inverted-flare = Innenbördel
find-sign-seal-inverted-flare = Kegel tief im Innengewinde
find-is-taper-no = Zylindrisch
find-sign-taper-no = kein Licht unter der Messfläche
find-is-taper-yes = Kegelig
find-sign-taper-yes = Licht an einem Ende
find-is-seat-included-angle-deg-24 = 24°
find-sign-seat-included-angle-deg-24 = 12 je Seite
find-is-seat-included-angle-deg-60 = 60°
find-sign-seat-included-angle-deg-60 = 30 je Seite
find-is-seat-included-angle-deg-74 = 74°
find-sign-seat-included-angle-deg-74 = 37 je Seite
find-is-seat-included-angle-deg-90 = 90°
find-sign-seat-included-angle-deg-90 = 45 je Seite
find-is-cone-concave = Hohl
find-sign-cone-concave = der Kegel geht hinein
find-is-cone-convex = Vorstehend
find-sign-cone-convex = der Kegel steht vor
find-is-cone-flat = Flach
find-sign-cone-flat = kein Kegel da
find-is-flank-angle-deg-60 = 60°
find-sign-flank-angle-deg-60 = Unified, metrisch
find-is-flank-angle-deg-55 = 55°
find-sign-flank-angle-deg-55 = Whitworth, Rohrgewinde
find-is-reinforcement-wire-braid = Drahtgeflecht
find-sign-reinforcement-wire-braid = Drähte kreuzen über- und untereinander
find-is-reinforcement-wire-spiral = Drahtspirale
find-sign-reinforcement-wire-spiral = Drähte liegen nebeneinander
find-is-reinforcement-textile-braid = Textil
find-sign-reinforcement-textile-braid = Gewebe oder Garn in Gummi
find-is-reinforcement-thermoplastic-textile = Textil auf Kunststoff
find-sign-reinforcement-thermoplastic-textile = Garn um eine Kunststoffseele
find-is-reinforcement-ptfe-steel-braid = Stahlgeflecht außen
find-sign-reinforcement-ptfe-steel-braid = blank, um eine weiße Seele
find-is-reinforcement-suction-helix = Stützwendel
find-sign-reinforcement-suction-helix = ein dicker Draht, weit gewickelt
find-is-layers-1 = 1
find-is-layers-2 = 2
find-is-layers-4 = 4
find-is-layers-6 = 6
find-is-cover-plain = Gewöhnlich
find-sign-cover-plain = schwarzer Gummi, nichts Besonderes gedruckt
find-is-cover-non-conductive = Nicht leitend
find-sign-cover-non-conductive = oft orange, oder aufgedruckt
find-is-cover-flame-resistant = Flammwidrig
find-is-cover-antistatic = Antistatisch
find-is-form-straight = Gerade
find-is-form-compact90 = Kompakt 90°
find-is-form-standpipe = Rohrstutzen
find-is-form-banjo = Ringstück
find-form-elbow = Bogen { $angle }
find-per-inch = /Zoll
find-more = { $count } weitere
find-tpi = { $count } /Zoll
find-leaves-in = Gänge je Zoll
find-leaves-mm = Steigung in mm
find-gauge-unit = Einheit der Lehre
find-print-none = Nichts ist lesbar
find-print-read-as = Gelesen als { $what }
find-print-unread = Nicht verstanden: { $text }
find-print-fits = { $count ->
    [one] ein Schlauch der Tabellen passt
   *[other] { $count } Schläuche der Tabellen passen
 }
find-print-made = hergestellt { $when }
find-print-made-or = hergestellt { $when }, oder { $other }
find-made-quarter = { $quarter ->
    [1] 1.
    [2] 2.
    [3] 3.
   *[other] { $quarter }.
 } Quartal { $year }
find-made-week = Woche { $week } von { $year }
find-print-empty = Tippen, was noch lesbar ist, ? für jeden abgeriebenen Buchstaben, „Lücke“, wo beliebig viele fehlen: ??N 853 2S?

## Kandidaten
find-candidates = Was es sein kann
find-nothing-read = Noch nichts gemessen: Alles ist noch möglich.
find-many = { $count } sind wahrscheinlich. Die ersten davon:
find-read-on = { $count } sind noch möglich. Weiter messen.
find-withdrawn = Keine Kandidaten: Diese Zahl kann nicht sein.
find-few = { $count ->
    [one] Eines ist wahrscheinlich.
   *[other] { $count } sind wahrscheinlich.
 }
find-decides = { $count ->
    [one] Sicher macht es: { $what }.
   *[other] Es unterscheidet sie: { $what }.
 }
find-part-settled = Geklärt.
find-others = { $count } andere, { $percent }
find-more-candidates = Alle Kandidaten, und warum
find-why = { $name } und die Befunde
find-why-back = Zurück zu den Kandidaten
find-why-none = Noch ist kein Befund dieses Teils gesichert.
find-why-most = bis { $limit }
find-why-least = ab { $limit }
find-why-table = Tabelle { $range }
find-why-tables = Tabelle { $range }, Rivale { $other }
find-why-blank = leer
find-why-against = Gegen
find-why-none-of-these = keines davon
find-why-readings = Was jeder Befund sagt
find-why-how = Bit an Beweis, jedes verdoppelt die Chancen: nach rechts für { $candidate }, nach links für { $rival }.
find-why-bits = { $bits } Bit für { $name }
find-why-even = sagt zwischen beiden nichts
find-why-together = Häufigkeit, andere Teile, Herkunft
find-why-all = Alles zusammen
find-why-wrong = { $count ->
    [one] Damit { $rival } stimmt, müsste dieser Befund falsch sein: { $readings }.
   *[other] Damit { $rival } stimmt, müssten diese Befunde falsch sein: { $readings }.
 }
find-why-none-wrong = Damit { $rival } stimmt, müsste kein einzelner Befund falsch sein.
find-why-unverified = Die Zeile von { $name } ist aus dem Gedächtnis: Niemand hat sie geprüft.
find-why-from = Woher die Zeilen kommen
find-also = Kein Befund unterscheidet es von:
find-pick = Ich kenne es: dieses hier
find-pick-note = { $part ->
    [hose] eigene Angabe, nicht gemessen; das Prüfen verlangt weiter alles, was die Befunde offen lassen
   *[end] eigene Angabe, nicht gemessen; das Prüfen stoppt, bis die Befunde es klären
 }
find-picked = Eigene Angabe, nicht gemessen: Dieses steht in der Spezifikation.
find-unpick = Das zurücknehmen

## Weiter
find-keep = { $value } übernehmen
find-then = Dann: { $task }
find-then-part = Dann: { $part }, { $task }
find-as-a = Sieht aus wie A
find-skip = Weiter
find-outcome = Die Schlauchleitung, wie sie war: Enden, Schlauch und Länge
find-now = Jetzt: { $task }
find-refused = { $what } kann nicht { $value } sein: Es liegt zwischen { $low } und { $high }.
find-then-check = Dann: prüfen, was sie ersetzen darf
find-use = Prüfen, was sie ersetzen darf
find-use-then-settled = Schlauch und beide Enden sind geklärt.
find-use-then-open = Nicht geklärt: { $parts }. Das Prüfen stoppt dort.
find-use-then-hose = Der Schlauch ist nicht geklärt: Der neue muss so gut sein wie alles, was er noch gewesen sein kann.
find-reach = Der Schlauch ist (gefragt wird nur, was erreichbar ist)
find-reach-in-place = noch eingebaut
find-reach-off = ausgebaut
find-reach-cut = aufgeschnitten
find-apart-off = Ausbauen
find-apart-cut = Aufschneiden, 100 mm hinter der Presshülse
find-apart-then = Dann lässt sich mehr messen. Nicht geklärt: { $parts }.
find-reach-more-off = Eingebaut sagt er nicht mehr. Ausgebaut lässt sich mehr messen.
find-reach-more-cut = Ungeschnitten sagt er nicht mehr. Aufgeschnitten lässt sich mehr messen.
find-back = Zurück: { $part }, { $what }
find-readings = Alle Befunde
find-readings-of = Befunde: { $part }
find-readings-close = Zurück zum Befund
find-cant = unklar
find-remove = Entfernen
find-flange-way = Es ist ein Flansch
find-thread-way = Es hat ein Gewinde
find-not-read = nicht gemessen
find-port-read = gemessen
find-print-parts = Kein Messschieber unterscheidet { $one } von { $other }. Ihr Aufdruck schon: Schlauch auf ganzer Länge abwischen.
find-print-again = Aufdruck lesen
find-lookalikes-more = { $count } weitere verwechselbare
find-problem = Nicht beantwortet
find-open-yet = Noch sind viele möglich.

# Wo die zwei Enden, oder die zwei Hälften eines Endes, nicht zusammengehen.
find-odd-ends = Wurde ein Ende getauscht? Diese zwei Familien kommen selten an einer Maschine vor. An beiden das Gegenstück messen.
find-mate-differs = Das Gegenstück zu { $role } gehört nicht zu diesem Ende: Nach den eigenen Befunden ist es { $name }. Eines von beiden war schon vorher falsch; an der Maschine klären.
