# Was die Antworten des Findens zu Verwechselbarem, Widersprüchen und Versehen sagen.

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
lookalike-starts-body = Körper { $female } nimmt Außengewinde { $male } auf
lookalike-starts-socket = Muffe { $female } nimmt { $male } auf
lookalike-starts-halves = Flanschhälften von { $female } gehen über { $male }
lookalike-turns-unknown = nach einigen Umdrehungen
lookalike-pulls-out = wird von zu wenig gehalten und zieht sich unter Druck heraus
lookalike-screws-bend = die Schrauben verbiegen sich oder der Bund wird einseitig gehalten; leckt oder lässt los
lookalike-half-locks = rastet halb ein, sieht geschlossen aus und geht unter Druck auseinander
lookalike-fits-both = ist gemacht, um auf beide zu passen, und beweist nichts über das Gegenstück
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
lookalike-by-bolt_long_mm = langer Lochabstand
lookalike-by-head_od_mm = Flanschbund
lookalike-by-head_thickness_mm = Dicke des Flanschbunds
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
