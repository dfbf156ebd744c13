# Wie jeder Befund genommen wird: wo die Schneiden anliegen und was schiefgeht.

how-id_mm = Schlauch etwa 100 mm hinter der Presshülse abschneiden und innen mit den Innenschneiden messen, zweimal um 90 Grad versetzt. Eine gequollene Seele misst zu klein; nie den unter einer Hülse gequetschten Teil messen.
how-reinforcement_od_mm = Am abgeschnittenen Ende einen Ring der Außendecke abschälen und die Außenschneiden leicht auf dem blanken Druckträger schließen. Das ist der sicherste Durchmesser eines Schlauchs; vom Platzen aufgespreizte Drähte messen zu groß.
how-cover_od_mm = Außenschneiden auf der Außendecke schließen, wo sie sauber und rund ist, zweimal um 90 Grad versetzt. Eine ölgetränkte Decke misst zu groß, eine abgescheuerte zu klein.
how-reinforcement = Das Schnittende ansehen: Drähte, die über- und untereinander kreuzen, sind ein Geflecht; Drähte, die nebeneinander liegen, eine Spirale. Textil ist Gewebe oder Garn, unter Gummi oder um eine Kunststoffseele. Ein Platzer franst ihn aus: dort schauen, wo der Schnitt sauber ist.
how-layers = Schnittende aufschälen und die Lagen aus Draht oder Textil einzeln zählen. Gummi zwischen zwei Lagen verdeckt die untere: schälen, bis die Seele zu sehen ist.
how-cover = Farbe und Aufdruck ansehen: Orange oder „non-conductive“ leitet keinen Strom. Nahe Stromleitungen nie raten.
how-print = Außendecke abwischen und am Schlauch entlang lesen; der Aufdruck wiederholt sich. Für einen abgeriebenen Buchstaben ? setzen.

how-kind = Das ganze Ende ansehen: lose Mutter, Gewinde außen, Einschraubzapfen mit Bund und Ring, Gewinde in einem Körper, Auge, glattes Rohr, Flanschbund, halbe Kupplung, Steckanschluss mit Klammer, Messanschluss. Wer ihn einbaute, kann eine falsche Armatur genommen haben: auch die Gegenseite an der Maschine ansehen.
how-gender = Gewinde außen ist Außengewinde, Gewinde innen (Mutter oder Anschluss) ist Innengewinde. Nach dem Gewinde gehen, nicht nach dem Kegel: Den Dichtkopf kann jede der beiden Hälften haben.
how-thread_diameter_mm = Gewinde am dritten Gang oder weiter innen messen, zweimal um 90 Grad versetzt. Die ersten Gänge sind abgenutzt oder haben Grat.
how-thread_diameter_mm-male = Außenschneiden über den Spitzen des dritten Gangs oder weiter innen schließen, zweimal um 90 Grad versetzt. Abgenutzte Gewinde messen zu klein, Grate zu groß.
how-thread_diameter_mm-female = Innenschneiden auf den Spitzen in der Mutter öffnen, zweimal um 90 Grad versetzt. In einer kleinen Mutter messen Innenschneiden zu klein; eine überzogene Mutter ist unrund geworden.
how-pitch_mm = Gewindelehre über mehrere Gänge ins Gewinde legen und gegen das Licht halten. Das richtige Blatt zeigt nirgends einen Spalt; seine Steigung in mm oder seine Gänge je Zoll angeben. Blätter mit 1,5 mm und mit 16 oder 17 Gängen je Zoll sehen über wenige Gänge gleich aus.
how-tpi = Gewindelehre über mehrere Gänge ins Gewinde legen und gegen das Licht halten, oder die Gänge auf 1/2 Zoll zählen und verdoppeln. Das richtige Blatt zeigt nirgends einen Spalt.
how-taper = Messflächen flach an das Gewinde legen: Licht an einem Ende heißt kegelig. Kurze oder abgenutzte Gewinde täuschen.
how-second_thread_diameter_mm = Durchmesser fünf Gänge näher am Körper noch einmal messen und die Gänge dazwischen zählen. Ein kegeliges Gewinde ändert sich um ein Sechzehntel dieser Strecke, ein zylindrisches gar nicht.
how-second_thread_diameter_mm-male = Außenschneiden fünf Gänge näher am Körper noch einmal schließen und die Gänge dazwischen zählen. Ein kegeliges Gewinde ist dort größer, um ein Sechzehntel dieser Strecke.
how-second_thread_diameter_mm-female = Innenschneiden fünf Gänge tiefer noch einmal öffnen und die Gänge dazwischen zählen. Ein kegeliges Gewinde ist dort kleiner, um ein Sechzehntel dieser Strecke.
how-threads_apart = Gänge zwischen den beiden Durchmessern zählen. Einer zu viel oder zu wenig verfälscht die Verjüngung: zweimal zählen, von Spitze zu Spitze.
how-flank_angle_deg = Blatt einer 55- und einer 60-Grad-Lehre gegen das Licht in die Flanken halten. Fünf Grad sind schwer zu sehen: erst das Gewinde reinigen.
how-shoulder = Anschluss: Ist seine Mündung zu einer Fase für einen O-Ring geschnitten, oder ist die Fläche bis zur Kante eben? Einschraubzapfen: Liegt der Ring direkt hinter dem Gewinde oder in der ebenen Fläche des Bunds? Mehrere Arten von Anschlüssen haben dasselbe Gewinde: hiernach gehen, nicht nach dem Gewinde.
how-seal = Suchen, was dichtet: ein O-Ring in einer ebenen Fläche, am Grund des Gewindes oder im Kegel; ein Gummi-Metall-Dichtring oder eine Flachdichtung; ein blanker Metallkegel; oder das Gewinde selbst. Ein O-Ring kann verloren sein: nach seiner Nut suchen. Eine glatte ebene Fläche dichtet auf dem Ring der anderen Hälfte.
how-seat_included_angle_deg = Kegellehre auf den Kegel setzen, mittig und ohne Wackeln. Den eingeschlossenen Winkel angeben: 37 Grad je Seite sind 74. Manche Überwurfarmaturen haben zwei Kegel oder einen runden Dichtkopf.
how-seat_included_angle_deg-male = Kegellehre auf den Dichtkopf setzen, oder den Lehrdorn in die Höhlung des Außengewindeteils, mittig und ohne Wackeln. Den eingeschlossenen Winkel angeben: 37 Grad je Seite sind 74.
how-seat_included_angle_deg-female = Mutter zurückschieben und die Lehre an den Kegel darin setzen, mittig und ohne Wackeln. Den eingeschlossenen Winkel angeben: 37 Grad je Seite sind 74. Manche Überwurfarmaturen haben zwei Kegel.
how-cone = Den Sitz des Teils in der Hand ansehen: Steht ein Kegel vor (konvex), ist er hohl (konkav), oder ist keiner da (flach)? Eine Fase in der Mündung eines Gewindes ist kein Kegel.
how-tube_od_mm = Außenschneiden auf dem Rohr oder Dichtkopf hinter dem Kegel schließen; beim Außengewinde die Innenschneiden in der Bohrung am Grund des Kegels öffnen. Das unterscheidet die leichte von der schweren 24-Grad-Baureihe. Rohre in mm und in Zoll liegen nah beieinander: 16 mm und 5/8 in, 25 mm und 1 in.
how-tube_od_mm-male = Innenschneiden in der Bohrung am Grund des Kegels öffnen, wo das Rohr säße. Das unterscheidet die leichte von der schweren 24-Grad-Baureihe.
how-tube_od_mm-female = Außenschneiden auf dem Rohr oder Dichtkopf hinter dem Kegel schließen. Das unterscheidet die leichte von der schweren 24-Grad-Baureihe.
how-male_bore_mm = Innenschneiden in der engsten Bohrung durch das Außengewindeteil öffnen. Hersteller weichen um etwa 1 mm ab.
how-swivel_hex_mm = Außenschneiden über die Schlüsselweite der Überwurfmutter schließen. Das ist ein schwacher Hinweis: Hersteller weichen ab, und eine rundgedrehte Mutter misst zu klein.
how-head_od_mm = Außenschneiden über dem runden Flanschbund schließen, nicht über den Flanschhälften.
how-head_thickness_mm = Messflächen über dem Rand des Flanschbunds schließen. Ein dicker Bund (14 mm) geht nicht unter übliche Flanschhälften.
how-bolt_long_mm = Von der Kante eines Schraubenlochs zur selben Kante des nächsten auf der langen Seite messen: Das ist von Mitte zu Mitte. Es lässt sich am eingebauten Flansch messen. Von Kante zu nächster Kante fehlt ein Loch.
how-bolt_short_mm = Von der Kante eines Schraubenlochs zur selben Kante des nächsten auf der kurzen Seite messen: Das ist von Mitte zu Mitte. Von Kante zu nächster Kante fehlt ein Loch.
