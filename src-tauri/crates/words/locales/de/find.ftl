# Wie jeder Befund genommen wird: wo die Schneiden anliegen und was schiefgeht.

how-id_mm = Schlauch etwa 100 mm hinter der Presshülse abschneiden und innen mit den Innenschneiden messen, zweimal um 90 Grad versetzt. Eine gequollene Seele misst zu klein; nie den unter einer Hülse gequetschten Teil messen.
how-reinforcement_od_mm = Am abgeschnittenen Ende einen Ring der Außendecke abschälen und die Außenschneiden leicht auf dem blanken Druckträger schließen. Das ist der sicherste Durchmesser eines Schlauchs; vom Platzen aufgespreizte Drähte messen zu groß.
how-cover_od_mm = Außenschneiden auf der Außendecke schließen, wo sie sauber und rund ist, zweimal um 90 Grad versetzt. Eine ölgetränkte Decke misst zu groß, eine abgescheuerte zu klein.
how-reinforcement = Das Schnittende ansehen: Drähte, die über- und untereinander kreuzen, sind ein Geflecht; Drähte, die nebeneinander liegen, eine Spirale. Textil ist Gewebe oder Garn, unter Gummi oder um eine Kunststoffseele.
how-layers = Schnittende aufschälen und die Lagen aus Draht oder Textil einzeln zählen.
how-cover = Farbe und Aufdruck ansehen: Orange oder „non-conductive“ leitet keinen Strom. Nahe Stromleitungen nie raten.
how-print = Außendecke abwischen und am Schlauch entlang lesen; der Aufdruck wiederholt sich. Für einen abgeriebenen Buchstaben ? setzen.

how-kind = Das ganze Ende ansehen: lose Mutter, Gewinde außen, Einschraubzapfen mit Bund und Ring, Gewinde in einem Körper, Auge, glattes Rohr, Flanschbund, halbe Kupplung, Steckanschluss mit Klammer, Messanschluss.
how-gender = Gewinde außen ist Außengewinde, Gewinde innen (Mutter oder Anschluss) ist Innengewinde.
how-thread_diameter_mm = Gewinde am dritten Gang oder weiter innen messen, zweimal um 90 Grad versetzt. Die ersten Gänge sind abgenutzt oder haben Grat.
how-thread_diameter_mm-male = Außenschneiden über den Spitzen des dritten Gangs oder weiter innen schließen, zweimal um 90 Grad versetzt. Abgenutzte Gewinde messen zu klein, Grate zu groß.
how-thread_diameter_mm-female = Innenschneiden auf den Spitzen in der Mutter öffnen, zweimal um 90 Grad versetzt. In einer kleinen Mutter messen Innenschneiden zu klein; eine überzogene Mutter ist unrund geworden.
how-pitch_mm = Gewindelehre über mehrere Gänge ins Gewinde legen und gegen das Licht halten. Das richtige Blatt zeigt nirgends einen Spalt; seine Steigung in mm oder seine Gänge je Zoll angeben. Blätter mit 1,5 mm und mit 16 oder 17 Gängen je Zoll sehen über wenige Gänge gleich aus.
how-tpi = Gewindelehre über mehrere Gänge ins Gewinde legen und gegen das Licht halten, oder die Gänge auf 1/2 Zoll zählen und verdoppeln. Das richtige Blatt zeigt nirgends einen Spalt.
how-taper = Messflächen flach an das Gewinde legen: Licht an einem Ende heißt kegelig. Kurze oder abgenutzte Gewinde täuschen.
how-second_thread_diameter_mm = Durchmesser fünf Gänge näher am Körper noch einmal messen und die Gänge dazwischen zählen. Ein kegeliges Gewinde ändert sich um ein Sechzehntel dieser Strecke, ein zylindrisches gar nicht.
how-second_thread_diameter_mm-male = Außenschneiden fünf Gänge näher am Körper noch einmal schließen und die Gänge dazwischen zählen. Ein kegeliges Gewinde ist dort größer, um ein Sechzehntel dieser Strecke.
how-second_thread_diameter_mm-female = Innenschneiden fünf Gänge tiefer noch einmal öffnen und die Gänge dazwischen zählen. Ein kegeliges Gewinde ist dort kleiner, um ein Sechzehntel dieser Strecke.
how-threads_apart = Gänge zwischen den beiden Durchmessern zählen.
how-flank_angle_deg = Blatt einer 55- und einer 60-Grad-Lehre gegen das Licht in die Flanken halten. Fünf Grad sind schwer zu sehen: erst das Gewinde reinigen.
how-shoulder = Anschluss: Ist seine Mündung zu einer Fase für einen O-Ring geschnitten, oder ist die Fläche bis zur Kante eben? Einschraubzapfen: Liegt der Ring direkt hinter dem Gewinde oder in der ebenen Fläche des Bunds?
how-seal = Suchen, was dichtet: ein O-Ring in einer ebenen Fläche, am Grund des Gewindes oder im Kegel; ein Gummi-Metall-Dichtring oder eine Flachdichtung; ein blanker Metallkegel; oder das Gewinde selbst. Ein O-Ring kann verloren sein: nach seiner Nut suchen. Eine glatte ebene Fläche dichtet auf dem Ring der anderen Hälfte.
how-seat_included_angle_deg = Kegellehre auf den Kegel setzen, mittig und ohne Wackeln. Den eingeschlossenen Winkel angeben: 37 Grad je Seite sind 74. Manche Überwurfarmaturen haben zwei Kegel oder einen runden Dichtkopf.
how-seat_included_angle_deg-male = Kegellehre auf den Dichtkopf setzen, oder den Lehrdorn in die Höhlung des Außengewindeteils, mittig und ohne Wackeln. Den eingeschlossenen Winkel angeben: 37 Grad je Seite sind 74.
how-seat_included_angle_deg-female = Mutter zurückschieben und die Lehre an den Kegel darin setzen, mittig und ohne Wackeln. Den eingeschlossenen Winkel angeben: 37 Grad je Seite sind 74. Manche Überwurfarmaturen haben zwei Kegel.
how-cone = Den Kegel des Teils in der Hand ansehen: Steht er vor (konvex) oder ist er hohl (konkav)?
how-tube_od_mm = Außenschneiden auf dem Rohr oder Dichtkopf hinter dem Kegel schließen; beim Außengewinde die Innenschneiden in der Bohrung am Grund des Kegels öffnen. Das unterscheidet die leichte von der schweren 24-Grad-Baureihe.
how-tube_od_mm-male = Innenschneiden in der Bohrung am Grund des Kegels öffnen, wo das Rohr säße. Das unterscheidet die leichte von der schweren 24-Grad-Baureihe.
how-tube_od_mm-female = Außenschneiden auf dem Rohr oder Dichtkopf hinter dem Kegel schließen. Das unterscheidet die leichte von der schweren 24-Grad-Baureihe.
how-male_bore_mm = Innenschneiden in der engsten Bohrung durch das Außengewindeteil öffnen. Hersteller weichen um etwa 1 mm ab.
how-swivel_hex_mm = Außenschneiden über die Schlüsselweite der Überwurfmutter schließen. Das ist ein schwacher Hinweis: Hersteller weichen ab, und eine rundgedrehte Mutter misst zu klein.
how-head_od_mm = Außenschneiden über dem runden Flanschbund schließen, nicht über den Flanschhälften.
how-head_thickness_mm = Messflächen über dem Rand des Flanschbunds schließen. Ein dicker Bund (14 mm) geht nicht unter übliche Flanschhälften.
how-bolt_long_mm = Von der Kante eines Schraubenlochs zur selben Kante des nächsten auf der langen Seite messen: Das ist von Mitte zu Mitte. Es lässt sich am eingebauten Flansch messen.
how-bolt_short_mm = Von der Kante eines Schraubenlochs zur selben Kante des nächsten auf der kurzen Seite messen: Das ist von Mitte zu Mitte.

# Ein gefährliches Paar, aus den Gewinden berechnet: welche Hälfte auf welche geht, was geschieht, und was die beiden trennt.

lookalike-starts-nut = Mutter { $female } geht auf Außengewinde { $male } an
lookalike-starts-port = Anschluss { $female } geht auf Außengewinde { $male } an
lookalike-same-thread = dasselbe Gewinde, lässt sich von Hand ganz aufschrauben
lookalike-near-thread = { $overlap } % der Gewindetiefe überlappen
lookalike-taper-in-parallel = kegeliges Außengewinde in zylindrischem Innengewinde
lookalike-parallel-in-taper = zylindrisches Außengewinde in kegeligem Innengewinde
lookalike-two-tapers = kegelige Gewinde zweier Normen
lookalike-turns = { $turns ->
    [0] in der ersten Umdrehung
    [1] nach etwa 1 Umdrehung
   *[other] nach etwa { $turns } Umdrehungen
}
lookalike-strips-and-blows-off = geht von Hand hinein, reißt unter Druck aus und springt ab
lookalike-few-threads-caught = der Dichtkopf ist zu breit für den Körper, die Mutter fasst wenige Gänge und lässt unter Druck los
lookalike-binds-and-leaks = klemmt { $turns } und fühlt sich fest an, leckt, und die Gewinde sind ruiniert
lookalike-wedges-and-splits = verkeilt sich { $turns } und sprengt das Innengewinde oder schwitzt
lookalike-weeps-along-thread = lässt sich gut aufschrauben und schwitzt unter Druck entlang der Flanken
lookalike-leaks-at-seat = die Dichtkegel berühren sich auf einer Linie oder Kante und lecken
lookalike-no-seal = nichts dichtet
lookalike-ring-extrudes = der Ring ist nicht eingeschlossen und wird zerschnitten oder herausgedrückt
lookalike-separates = getrennt durch { $readings }
lookalike-separates-none = kein Befund dieser Liste trennt die beiden: nach dem Teil fragen oder beide Hälften ersetzen
lookalike-by-thread_diameter_mm = Gewindedurchmesser
lookalike-by-pitch_mm = Steigung
lookalike-by-flank_angle_deg = Flankenwinkel
lookalike-by-taper = kegelig oder zylindrisch
lookalike-by-kind = Art der Armatur
lookalike-by-shoulder = Fase an der Mündung oder eben
lookalike-by-seal = was dichtet
lookalike-by-seat_included_angle_deg = Kegelwinkel
lookalike-by-cone = Kegel vorstehend oder hohl
lookalike-by-tube_od_mm = Rohr oder Kegelbohrung
lookalike-by-male_bore_mm = Durchgangsbohrung
# Wo Aufdruck und Befund Verschiedenes sagen. Abhilfe ist immer dieselbe: noch einmal ansehen und den Schlauch
# nie nach dem günstigeren der beiden einstufen.
contradicted-no-such-hose = Der Aufdruck widerspricht sich oder ist falsch gelesen: Kein Schlauch der Tabellen ist { $named }. Noch einmal lesen; bis es klar ist, gilt das Gemessene.
contradicted-reinforcement = Aufgedruckt { $named }, das ist { $printed }; gesehen: { $measured }. Schnittende noch einmal ansehen. Eines von beiden stimmt nicht: Diesen Schlauch nicht nach seinem Aufdruck einstufen.
contradicted-layers = Aufgedruckt { $named }, der hat { $printed ->
    [one] eine Lage
   *[other] { $printed } Lagen
}; gezählt: { $measured }. An einem sauberen Schnitt noch einmal zählen. Eines von beiden stimmt nicht: Diesen Schlauch nicht nach seinem Aufdruck einstufen.
contradicted-bore = Aufgedruckt { $named }, dessen nächster Innendurchmesser { $printed } ist; gemessen { $measured }. Abseits der Presshülse noch einmal messen, zweimal um 90 Grad versetzt. Eines von beiden stimmt nicht.
contradicted-reinforcement-od = Aufgedruckt { $named }, über dem Druckträger am nächsten { $printed }; gemessen { $measured }. Noch einmal messen, wo kein Draht aufgespreizt ist. Eines von beiden stimmt nicht.
contradicted-cover-od = Aufgedruckt { $named }, über der Außendecke am nächsten { $printed }; gemessen { $measured }. Noch einmal messen, wo die Decke sauber und rund ist. Eines von beiden stimmt nicht.
contradicted-cover = Aufgedruckt { $printed }, angesehen als { $measured }. Nahe Stromleitungen oder wo Funken gefährlich sind, keines von beiden annehmen, bis es bewiesen ist.
contradicted-pressure = Aufgedruckt { $printed }; die Tabelle nennt für { $named } { $measured }. Es kann eine andere Ausgabe oder ein anderer Schlauch sein: Der kleinere der beiden Werte gilt, bis das Blatt des Herstellers anderes sagt.

# Ein Befund, den nur ein Versehen erklärt.
stray = { $reading } sagt { $read }; { $named } hätte { $limits }. Noch einmal messen, oder sagen, dass es sich nicht feststellen lässt: Bis dahin ist hier nichts geklärt.
stray-absent = { $reading } sagt { $read }; { $named } hat so etwas nicht. Noch einmal messen, oder sagen, dass es sich nicht feststellen lässt: Bis dahin ist hier nichts geklärt.
stray-limit = { $limit }
stray-limits = { $least } bis { $most }

seen-wire-braid = Drahtgeflecht
seen-wire-spiral = Drahtspirale
seen-textile-braid = Textilgeflecht
seen-thermoplastic-textile = Textil um eine Kunststoffseele
seen-ptfe-steel-braid = blankes Stahlgeflecht über PTFE
seen-suction-helix = Textil mit Stützwendel
seen-plain = nichts Besonderes
seen-non-conductive = nicht leitend
seen-flame-resistant = flammwidrig
seen-antistatic = antistatisch
