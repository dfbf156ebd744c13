# Was die Prüfung fand: `why-<case>` sagt, was ist, `cure-<case>`, was zu tun ist.
# $value und $limit bringen ihre Einheit mit. Andere Namen: $part, $name, $end, $family, $size, $hose, $rival,
# $fluid, $tube, $duty, $rule, $by, $reason.

why-hose-missing = Kein Schlauch ist genannt.
cure-hose-missing = Schlauch nennen: Norm, Typ und DN.
why-end-missing = Ende { $end } ist nicht genannt.
cure-end-missing = Ende { $end } nennen: Familie, Größe, Außen- oder Innengewinde, gerade oder Bogen.
why-line-missing = Niemand hat gesagt, was die Leitung tut; Unterdruck und Ölgeschwindigkeit sind deshalb nicht geprüft.
cure-line-missing = Sagen, ob es eine Druck-, Rücklauf-, Saug-, Lecköl-, Steuer- oder Zylinderleitung ist.

# Druck
check-part = { $part ->
    [hose] Der Schlauch
    [A] Ende A
    [B] Ende B
   *[adapter] Der Adapter { $name }
}
why-working-pressure-missing = Der Betriebsdruck ist nicht bekannt.
cure-working-pressure-missing = Vom Typenschild, aus der Anleitung der Maschine oder vom Manometer ablesen.
why-relief-missing = Die Einstellung des Druckbegrenzungsventils ist nicht bekannt; der Kreis kann über seinen Betriebsdruck gehen.
cure-relief-missing = Einstellung des Druckbegrenzungsventils oder Sekundärventils dieses Kreises eintragen.
why-surge-missing = Die höchste Druckspitze ist nicht bekannt, und eine Druckspitze zählt als Druck.
cure-surge-missing = Höchste Spitze dieses Kreises eintragen, gemessen oder vom Maschinenhersteller.
why-surge-reckoned = Die höchste Druckspitze, { $value }, ist aus Volumenstrom und Schließzeit berechnet und nicht gemessen.
cure-surge-reckoned = Messen oder den Maschinenhersteller fragen; eine Schätzung ist keine Messung.
why-surge-estimated = Die höchste Druckspitze ist nicht bekannt. Aus der Druckbegrenzung von { $relief } bar ist sie auf { $value } geschätzt, das { $factor }fache.
cure-surge-estimated = Messen oder den Maschinenhersteller fragen; eine Schätzung ist keine Messung.
why-surge-estimated-above = Die höchste Druckspitze ist nicht bekannt. Aus der Druckbegrenzung von { $relief } bar ist sie auf { $value } geschätzt, das { $factor }fache; das schwächste Teil trägt { $limit }.
cure-surge-estimated-above = Spitze messen, bevor dieser Schlauchleitung getraut wird, oder Teile wählen, die den Schätzwert tragen.
why-relief-below-working = Die Druckbegrenzung steht auf { $value }, und die Leitung arbeitet mit { $limit }; eines von beiden stimmt nicht.
cure-relief-below-working = Beides noch einmal ablesen. Ein Druckbegrenzungsventil öffnet über dem Druck, mit dem die Leitung arbeitet.
why-surge-below-working = Die höchste Druckspitze ist mit { $value } angegeben, und die Leitung arbeitet mit { $limit }; eines von beiden stimmt nicht.
cure-surge-below-working = Beides noch einmal ablesen. Die Druckspitze ist der ganze Spitzenwert, der Betriebsdruck mit darin, nicht das, was oben draufkommt.
why-pressure-ok = { check-part }: zulässig { $limit }.
why-pressure-unverified = { check-part }: zulässig { $limit }, aber dieser Wert ist aus dem Gedächtnis, und niemand hat ihn geprüft.
cure-pressure-unverified = Mit der Angabe des Lieferanten vergleichen.
why-pressure-proxy = { check-part } hat keine eigene Druckangabe; { $limit } ist der Wert einer anderen Armatur mit demselben Gewinde.
cure-pressure-proxy = Druckangabe des Lieferanten für diese Armatur eintragen.
why-pressure-above-rating = { check-part }: zulässig { $limit }; die Leitung kann { $value } erreichen.
cure-pressure-above-rating = Ein Teil mit höherem zulässigem Druck wählen, oder die Angabe des Lieferanten eintragen, wenn sie höher ist.
why-pressure-above-proxy = { check-part } hat keine eigene Druckangabe, und die Leitung kann { $value } erreichen, mehr als der Ersatzwert von { $limit }.
cure-pressure-above-proxy = Druckangabe des Lieferanten für diese Armatur eintragen.
why-pressure-unknown = { check-part } hat keine bekannte Druckangabe, und nicht bekannt heißt niemals unbegrenzt.
cure-pressure-unknown = { $part ->
    [hose] Einen Schlauch wählen, dessen Betriebsdruck in den Tabellen steht.
   *[other] Druckangabe des Lieferanten eintragen.
}

# Temperatur
why-heat-missing = Niemand hat gesagt, wie heiß die Flüssigkeit wird.
cure-heat-missing = Höchste Temperatur der Flüssigkeit eintragen.
why-heat-ok = { $hose } verträgt Flüssigkeit bis { $limit }.
why-heat-unverified = { $hose } verträgt Flüssigkeit bis { $limit }, aber diese Tabellenzeile ist nicht geprüft.
cure-heat-unverified = Mit der Angabe des Lieferanten vergleichen.
why-heat-above-limit = { $hose } verträgt Flüssigkeit bis { $limit }; sie wird { $value } heiß.
cure-heat-above-limit = Einen Schlauch für heißere Flüssigkeit wählen, oder herausfinden, warum sie so heiß wird.
why-fluid-heat-ok = Mit { $fluid } verträgt dieser Schlauch bis { $limit }.
why-fluid-heat-unverified = Mit { $fluid } verträgt dieser Schlauch bis { $limit }, aber dieser Wert ist nicht geprüft.
cure-fluid-heat-unverified = Den Lieferanten fragen, wie heiß diese Flüssigkeit in diesem Schlauch werden darf.
why-fluid-heat-above-limit = Mit { $fluid } verträgt dieser Schlauch bis { $limit }; die Flüssigkeit wird { $value } heiß.
cure-fluid-heat-above-limit = Einen Schlauch wählen, der für diese Flüssigkeit bei dieser Temperatur gemacht ist.
why-cold-missing = Niemand hat gesagt, wie kalt die Flüssigkeit wird.
cure-cold-missing = Tiefste Temperatur der Flüssigkeit eintragen: Ein Kaltstart im Winter zählt.
why-cold-ok = { $hose } verträgt Kälte bis { $limit }.
why-cold-unverified = { $hose } verträgt Kälte bis { $limit }, aber diese Tabellenzeile ist nicht geprüft.
cure-cold-unverified = Mit der Angabe des Lieferanten vergleichen.
why-cold-below-limit = { $hose } verträgt Kälte bis { $limit }; sie wird { $value } kalt.
cure-cold-below-limit = Einen Schlauch für tiefere Temperaturen wählen.
why-frost-ok = { $fluid } bleibt über { $limit }.
why-frost-unverified = { $fluid } bleibt über { $limit }, aber diese Grenze ist nicht geprüft.
cure-frost-unverified = Den Lieferanten fragen, wie kalt diese Flüssigkeit in diesem Schlauch werden darf.
why-frost-below-limit = { $fluid } darf in diesem Schlauch nicht kälter als { $limit } werden; sie wird { $value } kalt.
cure-frost-below-limit = Leitung vor dem Einfrieren schützen, oder andere Flüssigkeit und anderen Schlauch nehmen.
why-ambient-missing = Niemand hat gesagt, wie heiß die Luft um den Schlauch wird.
cure-ambient-missing = Heißeste Luft um den Schlauch eintragen: Motor oder Auspuff in der Nähe zählen.
why-ambient-ok = Die Luft bleibt innerhalb der { $limit } von { $hose }.
why-ambient-unverified = Die Luft bleibt innerhalb der { $limit } von { $hose }, aber diese Tabellenzeile ist nicht geprüft.
cure-ambient-unverified = Mit der Angabe des Lieferanten vergleichen.
why-ambient-above-limit = Die Luft wird { $value } heiß; { $hose } verträgt { $limit }.
cure-ambient-above-limit = Schlauch von der Hitze weg verlegen oder abschirmen, oder einen hitzefesteren wählen.

# Flüssigkeit
why-fluid-missing = Niemand hat gesagt, was darin fließt.
cure-fluid-missing = Flüssigkeit nach Klasse (HM, HFC) oder Namen eintragen; steht auf dem Typenschild oder in der Anleitung.
why-fluid-unknown = { $fluid } steht nicht in den Tabellen; was sie dem Schlauch antut, ist nicht bekannt.
cure-fluid-unknown = Flüssigkeit nach Klasse nennen (HM, HFC); hat sie keine, den Lieferanten des Schlauchs fragen.
why-fluid-excluded = Die Norm von { $hose } schließt { $fluid } aus.
cure-fluid-excluded = Einen Schlauch wählen, der für { $fluid } gemacht ist.
why-fluid-not-named = Die Norm von { $hose } nennt { $fluid } nicht.
cure-fluid-not-named = Den Lieferanten fragen, ob dieser Schlauch für { $fluid } freigegeben ist.
why-fluid-tube-unknown = Die Seele von { $hose } ist nicht bekannt; { $fluid } kann sie zerstören.
cure-fluid-tube-unknown = Einen Schlauch wählen, dessen Seele in den Tabellen steht.
why-fluid-unrated = Über { $fluid } in einer Seele aus { $tube } ist nichts bekannt.
cure-fluid-unrated = Einen Schlauch wählen, dessen Seele { $fluid } bekanntermaßen verträgt.
why-fluid-destroys-tube = { $fluid } zerstört eine Seele aus { $tube }.
cure-fluid-destroys-tube = Einen Schlauch mit einer Seele wählen, die { $fluid } verträgt.
why-fluid-limited = Eine Seele aus { $tube } verträgt { $fluid } nur bei leichtem Betrieb.
cure-fluid-limited = Den Lieferanten fragen, ob dieser Schlauch für { $fluid } freigegeben ist.
why-fluid-unverified = Eine Seele aus { $tube } soll { $fluid } vertragen, aber niemand hat es geprüft.
cure-fluid-unverified = Den Lieferanten fragen, ob dieser Schlauch für { $fluid } freigegeben ist.
why-fluid-ok = Eine Seele aus { $tube } verträgt { $fluid }.
why-out-of-scope = { $line ->
    [brake-line] { $fluid }: Bremsen von Straßenfahrzeugen werden abgelehnt. Sie haben eigene Normen, Schläuche und Zulassungen.
    [steam] { $fluid }: Dampf wird abgelehnt. Er braucht einen eigenen Gummi und Schlauch, der erst beim Zehnfachen seines Drucks platzt.
    [compressed-air] { $fluid }: Druckluft und Gas werden abgelehnt. Gas speichert weit mehr Energie als Öl, und Hydraulikschlauch ist dafür nicht ausgelegt.
    [fuel-gas] { $fluid }: Brenngas wird abgelehnt. Es braucht zugelassenen Schlauch und zugelassene Fachpraxis; ein Leck explodiert.
    [refrigerant] { $fluid }: Kältemittel wird abgelehnt. Es dringt durch Hydraulikschlauch und siedet darin.
    [oxygen] { $fluid }: Sauerstoff wird abgelehnt. Öl in einer Sauerstoffleitung fängt Feuer.
    [water-jetting] { $fluid }: Hochdruckwasserstrahlen wird abgelehnt. Seine Schläuche haben eigene Normen, und der Strahl schneidet.
   *[other] { $fluid } wird abgelehnt: Das gehört zu einem anderen Gewerk mit eigenen Regeln.
}
cure-out-of-scope = An jemanden geben, der für solche Leitungen zugelassen oder ausgerüstet ist.

# Biegung
why-bend-missing = Die Biegung ist nicht geprüft: Niemand hat gesagt, wie eng sie ist.
cure-bend-missing = Engsten Radius an der Innenseite der Biegung messen, oder die Verlegung berechnen.
why-bend-ok = { $hose } darf innen bis { $limit } gebogen werden; gebogen ist bis { $value }.
why-bend-estimated-ok = { $hose } darf innen bis { $limit } gebogen werden; nach der Verlegung ist bis { $value } gebogen, geschätzt.
why-bend-estimated-near = { $hose } darf innen bis { $limit } gebogen werden; nach der Verlegung ist bis { $value } gebogen. Eine Schätzung kann so wenig nicht unterscheiden.
cure-bend-estimated-near = Mehr Platz geben, oder nach dem Einbau die engste Biegung messen.
why-bend-unverified = { $hose } darf innen bis { $limit } gebogen werden, aber dieser Wert ist aus dem Gedächtnis, und niemand hat ihn geprüft.
cure-bend-unverified = Kleinsten Biegeradius des Lieferanten für diesen Schlauch eintragen (min_bend_radius_mm).
why-bend-too-tight = Die Biegung ist innen { $value }; { $hose } braucht { $limit }.
cure-bend-too-tight = Einen Schlauch wählen, der sich enger biegen lässt, eine Bogenarmatur, oder eine längere Verlegung.
why-bend-limit-unknown = Wie eng { $hose } gebogen werden darf, ist nicht bekannt, und nicht bekannt heißt niemals unbegrenzt.
cure-bend-limit-unknown = Kleinsten Biegeradius des Lieferanten für diesen Schlauch eintragen (min_bend_radius_mm), oder einen Schlauch wählen, dessen Biegeradius in den Tabellen steht.

# Anforderungen der Stelle
why-duty-ok = Die Anforderung der Stelle ist erfüllt: { $duty ->
    [non-conductive] nicht leitend
    [flame-resistant] flammwidrig
    [antistatic] antistatisch
   *[other] { $duty }
}.
why-duty-cover-missing = Die Stelle verlangt: { $duty ->
    [non-conductive] nicht leitend
    [flame-resistant] flammwidrig
    [antistatic] antistatisch
   *[other] { $duty }
}. Die Spezifikation sagt nicht, dass dieser Schlauch es ist.
cure-duty-cover-missing = Einen Schlauch mit diesem Aufdruck oder Zeichen wählen ({ $duty ->
    [non-conductive] nicht leitend
    [flame-resistant] flammwidrig
    [antistatic] antistatisch
   *[other] { $duty }
}) und das in der Spezifikation sagen.
why-duty-wire-conducts = Die Stelle verlangt: { $duty ->
    [non-conductive] nicht leitend
    [flame-resistant] flammwidrig
    [antistatic] antistatisch
   *[other] { $duty }
}. In diesem Schlauch ist Draht, oder es kann welcher darin sein. Nahe Stromleitungen kann das töten.
cure-duty-wire-conducts = Einen Textilschlauch mit diesem Zeichen wählen: { $duty ->
    [non-conductive] nicht leitend
    [flame-resistant] flammwidrig
    [antistatic] antistatisch
   *[other] { $duty }
}.

# Saugen
why-vacuum-missing = Niemand hat gesagt, wie tief der Unterdruck geht; { $hose } verträgt { $limit }.
cure-vacuum-missing = Niedrigsten absoluten Druck am Einlass der Pumpe eintragen.
why-vacuum-ok = { $hose } verträgt Unterdruck bis { $limit }.
why-vacuum-unverified = { $hose } verträgt Unterdruck bis { $limit }, aber dieser Wert ist aus dem Gedächtnis, und niemand hat ihn geprüft.
cure-vacuum-unverified = Angabe des Lieferanten für diesen Schlauch eintragen (vacuum_kpa_abs des Schlauchs).
why-vacuum-too-deep = Die Leitung geht bis { $value } hinunter; { $hose } verträgt { $limit } und fällt darunter zusammen.
cure-vacuum-too-deep = Einen Saugschlauch für tieferen Unterdruck oder einen größeren Innendurchmesser wählen.
why-vacuum-unrated = { $hose } hat keine Angabe für Unterdruck und kann zusammenfallen.
cure-vacuum-unrated = Angabe des Lieferanten für diesen Schlauch eintragen (vacuum_kpa_abs des Schlauchs), oder einen Saugschlauch mit Angabe für Unterdruck wählen.
why-suction-helix-ok = Eine Stützwendel hält den Schlauch offen.
why-suction-helix-missing = { $hose } hat keine Stützwendel, die ihn beim Saugen offen hält.
cure-suction-helix-missing = Einen Saugschlauch mit Stützwendel wählen.

# Strömung
why-flow-missing = Die Ölgeschwindigkeit ist nicht geprüft: Niemand hat gesagt, wie viel fließt.
cure-flow-missing = Volumenstrom der Pumpe oder des Ventils eintragen.
why-flow-ok = Das Öl läuft mit { $value }; bis { $limit } ist in einer solchen Leitung üblich.
why-flow-too-fast = Das Öl läuft mit { $value }; bis { $limit } ist in einer solchen Leitung üblich. Es wird heiß und verliert Druck.
cure-flow-too-fast = Keine Größe dieses Typs ist weit genug: { $bore } mm werden gebraucht. Öl durch zwei Schlauchleitungen führen, oder mit Name und Grund verantworten.
why-flow-too-fast-size = Das Öl läuft mit { $value }; bis { $limit } ist in einer solchen Leitung üblich. Es wird heiß und verliert Druck.
cure-flow-too-fast-size = { $hose } bringt es auf { $speed } m/s und hat dieselbe Prüfung durchlaufen. Oder mit Name und Grund verantworten.
why-flow-too-fast-stopped = Das Öl läuft mit { $value }; bis { $limit } ist in einer solchen Leitung üblich. Es wird heiß und verliert Druck.
cure-flow-too-fast-stopped = { $bore } mm Innendurchmesser würden reichen, aber die Prüfung stoppt { $hose }, wie es jetzt ist. Erst das beheben, oder mit Name und Grund verantworten.

# Enden
why-end-ok = Ende { $end } ist geklärt: { $family } { $size }.
why-end-not-read = Nichts Gemessenes sagt, dass Ende { $end } { $family } { $size } ist.
cure-end-not-read = Altes Ende und Gegenstück an der Maschine mit der Lehre prüfen, Gewinde und Dichtkegel, bevor gefertigt wird.
why-end-unsettled = Ende { $end } ist nicht geklärt. Eine falsche Armatur kann sich aufschrauben lassen und abspringen.
cure-end-unsettled = Nächsten Befund nehmen, Gegenstück an der Maschine mit der Lehre prüfen, oder beide Hälften ersetzen.
why-end-differs = Was an Ende { $end } gemessen wurde, ist nicht { $family } { $size }.
why-adapter-misfit = Ende { $end }, { $family } { $size }, lässt sich nicht in den Adapter schrauben, der darauf sitzen soll.
why-adapters-stacked = An Ende { $end } soll mehr als ein Adapter sitzen: Welchen davon die Maschine sieht, kann niemand sagen.
cure-adapters-stacked = Einen einzigen Adapter vom Ende zur Maschine nehmen, oder die richtige Armatur.
cure-adapter-misfit = Adapter nehmen, dessen Schlauchseite die andere Hälfte von { $family } { $size } ist.
cure-end-differs = Die gemessene Armatur nehmen, oder beide Hälften ersetzen.
why-end-gender-missing = Niemand hat gesagt, ob Ende { $end } Außen- oder Innengewinde hat.
cure-end-gender-missing = Sagen, welche Hälfte Ende { $end } ist.
why-end-form-missing = Niemand hat gesagt, ob Ende { $end } gerade oder ein Bogen ist.
cure-end-form-missing = Form von Ende { $end } angeben.
why-end-drop-missing = Ende { $end } ist gebogen, und seine Bogenhöhe ist nicht bekannt. Mit falscher Bogenhöhe passt es nicht.
cure-end-drop-missing = Bogenhöhe von der Schlauchachse zur Mitte der Dichtfläche messen.
why-size-ok = Ende { $end } ({ $family } { $size }) hat die Größe des Schlauchs.
why-size-jump = Ende { $end } ({ $family } { $size }) gehört zu { $value }, der Schlauch ist { $limit }: eine Sprunggröße.
cure-size-jump = Prüfen, ob die Sprunggröße gewollt ist und der Lieferant sie hat.
why-size-unknown = Die Tabellen sagen nicht, zu welcher Schlauchgröße Ende { $end } ({ $family } { $size }) gehört.
cure-size-unknown = Beim Lieferanten klären, ob diese Armatur für diese Schlauchgröße gemacht ist.

# Das Original
why-original-missing = Von der Schlauchleitung, die da war, ist nichts bekannt.
cure-original-missing = Lesen, was vom Aufdruck übrig ist, oder sie messen, bevor dem Ersatz getraut wird.
why-original-unknown = Die Schlauchleitung, die da war, steht vielleicht nicht in den Tabellen.
cure-original-unknown = Mehr messen, oder die Teileliste der Maschine suchen.
why-original-pressure-ok = { $hose } trägt mindestens die { $limit } von { $rival }.
why-original-pressure-above = Es kann { $rival } gewesen sein, zulässig { $limit }; { $hose } trägt { $value }.
cure-original-pressure-above = Klären, was es war, oder einen Schlauch wählen, der ebenso viel trägt.
why-original-pressure-unknown = Es kann { $rival } gewesen sein, und was der trägt, ist nicht bekannt.
cure-original-pressure-unknown = Den auf dem alten Schlauch aufgedruckten Druck oder die Teileliste der Maschine suchen.
why-original-edition-open = { $year ->
    [unknown] Schläuche mit der Kennzeichnung { $rival } trugen nach älteren Ausgaben der Norm { $value }, nach neueren { $limit }. Nichts Gelesenes sagt, welche; der höhere zählt.
   *[other] Schläuche mit der Kennzeichnung { $rival } trugen vor { $year } { $value }, seither { $limit }. Weder ein aufgedruckter Druck noch ein Datum sagt, welcher es war; der höhere zählt.
}
cure-original-edition-open = Den auf dem alten Schlauch aufgedruckten Druck oder sein Herstelldatum suchen.
why-original-edition-newer-ok = Der alte Schlauch, { $rival }, ist nach der neueren Ausgabe: er trug { $limit }, nicht { $value }.
why-original-edition-older-ok = Der alte Schlauch, { $rival }, ist nach der älteren Ausgabe: er trug { $value }, nicht { $limit }.
why-printed-pressure-ok = { $hose } trägt mindestens die { $limit }, die auf dem alten Schlauch stehen oder für ihn erfasst sind.
why-printed-pressure-above = Der alte Schlauch trug { $limit }; { $hose } trägt { $value }.
cure-printed-pressure-above = Einen Schlauch wählen, der ebenso viel trägt wie der alte.
why-original-bore-ok = { $hose } hat die Größe, die da war.
why-original-bore-larger = Es kann { $rival } gewesen sein, { $limit }; { $hose } ist kleiner und drosselt die Leitung.
cure-original-bore-larger = Klären, was es war, oder den größeren Innendurchmesser wählen.
why-original-bore-smaller = Es kann { $rival } gewesen sein, { $limit }; { $hose } ist größer.
cure-original-bore-smaller = Klären, was es war, und prüfen, ob der größere Schlauch passt und sich biegen lässt.
why-original-heat-ok = { $hose } verträgt die { $limit } von { $rival }.
why-original-heat-above = Es kann { $rival } gewesen sein, verträgt { $limit }; { $hose } verträgt { $value }.
cure-original-heat-above = Eintragen, wie heiß die Flüssigkeit wird, oder einen Schlauch wählen, der ebenso viel verträgt.
why-original-heat-measured = Es kann { $rival } gewesen sein, verträgt { $limit }; { $hose } verträgt { $value }, genug für die angegebene Hitze.
cure-original-heat-measured = Sicherstellen, dass die angegebene Hitze die höchste ist.
why-original-cold-ok = { $hose } verträgt die Kälte von { $limit } von { $rival }.
why-original-cold-below = Es kann { $rival } gewesen sein, verträgt { $limit }; { $hose } verträgt { $value }.
cure-original-cold-below = Eintragen, wie kalt die Flüssigkeit wird, oder einen Schlauch wählen, der ebenso viel verträgt.
why-original-cold-measured = Es kann { $rival } gewesen sein, verträgt { $limit }; { $hose } verträgt { $value }, genug für die angegebene Kälte.
cure-original-cold-measured = Sicherstellen, dass die angegebene Kälte die tiefste ist.
why-original-bend-ok = { $hose } lässt sich so eng biegen wie { $rival }, { $limit }.
why-original-bend-tighter = Es kann { $rival } gewesen sein, biegbar bis { $limit }; { $hose } nicht, und niemand hat die Biegung gemessen.
cure-original-bend-tighter = Engsten Radius an der Innenseite der Biegung messen, oder einen Schlauch wählen, der sich ebenso eng biegen lässt.
why-original-vacuum-ok = { $hose } verträgt den Unterdruck von { $rival }, { $limit }.
why-original-vacuum-deeper = Es kann { $rival } gewesen sein, ein Saugschlauch; { $hose } ist keiner, und niemand hat gesagt, was die Leitung tut.
cure-original-vacuum-deeper = Sagen, was die Leitung tut, oder einen Saugschlauch wählen.
why-original-vacuum-not-asked = Es kann { $rival } gewesen sein, ein Saugschlauch; { $hose } ist keiner.
cure-original-vacuum-not-asked = Sicherstellen, dass an dieser Leitung nichts saugt.

# Länge und Verdrehwinkel
why-length-missing = Die Gesamtlänge ist nicht bekannt.
cure-length-missing = Von Dichtpunkt zu Dichtpunkt messen, Muttern zurückgeschoben.
why-cutoff-missing = Das Abzugsmaß von Ende { $end } ist nicht bekannt, also auch die Schnittlänge nicht.
cure-cutoff-missing = Aus der Tabelle des Lieferanten nehmen, oder eine neue Armatur vom Dichtpunkt zum Schlauchanschlag messen.
why-cut-length-ok = { $value } Schlauch werden geschnitten.
why-cut-length-impossible = Die Abzugsmaße sind so lang wie das Ganze: { $value } Schlauch blieben übrig.
cure-cut-length-impossible = Gesamtlänge und beide Abzugsmaße noch einmal messen.
why-length-tolerance-unknown = Die Praxis nennt für diese Größe und Länge keine Toleranz.
cure-length-tolerance-unknown = Mit dem Besteller eine vereinbaren.
why-turn-ok = Der Verdrehwinkel zwischen den beiden Bögen ist { $value }.
why-turn-missing = Beide Enden sind gebogen, und der Verdrehwinkel dazwischen ist nicht bekannt.
cure-turn-missing = Am Schlauch entlang von A nach B sehen, Bogen A nach oben; den Winkel im Uhrzeigersinn zum Bogen B ablesen.

# Was nicht geprüft wurde
not-checked-surge = Die Druckspitze: Sie wurde nicht gemessen.
not-checked-relief = Die Einstellung der Druckbegrenzung.
not-checked-heat = Wie heiß die Flüssigkeit wird.
not-checked-cold = Wie kalt die Flüssigkeit wird.
not-checked-ambient = Wie heiß die Luft wird.
not-checked-fluid = Die Flüssigkeit.
not-checked-line = Was die Leitung tut.
not-checked-vacuum = Der Unterdruck.
not-checked-original = Was die Schlauchleitung war, die da war.
not-checked-flow = Die Geschwindigkeit des Öls.
not-checked-bend = Die Biegung.
not-checked-route = Die Verlegung über den Weg der Maschine und ihre Torsion.
not-checked-pressure-drop = Der Druck, der in der Leitung verloren geht.

# Die Stelle und ihr Kreis
why-belongs-bore = Diese Schlauchleitung ist { $hose }; hierher gehört { $there }.
cure-belongs-bore = Dort einbauen, wo sie hingehört. Eine kleinere Weite drosselt die Leitung, und ein größerer Schlauch braucht Platz für seinen Biegeradius.
why-belongs-ends = Diese Schlauchleitung hat { $hose }; was hierher gehört, hat { $there }.
cure-belongs-ends = Dort einbauen, wo sie hingehört. Anschlüsse, die nur scheinbar zusammenpassen, lecken oder lösen sich.
why-belongs-shorter = Diese Schlauchleitung ist { $value } lang; hierher gehören { $limit }.
cure-belongs-shorter = Den ganzen Weg der Maschine ansehen: Eine zu kurze Schlauchleitung wird aus ihren Armaturen gezogen.
why-belongs-longer = Diese Schlauchleitung ist { $value } lang; hierher gehören { $limit }.
cure-belongs-longer = Den ganzen Weg der Maschine ansehen: Eine zu lange Schlauchleitung scheuert und knickt.
why-circuit-sister-weaker = Stelle { $place } ist am selben Kreis, und ihre Schlauchleitung trägt { $limit }; diese trägt { $value }. Eine der beiden kann falsch sein.
cure-circuit-sister-weaker = Schlauchleitung an Stelle { $place } ansehen: Sie sieht denselben Druck.
why-circuit-weaker = Stelle { $place } ist am selben Kreis, und ihre Schlauchleitung trägt { $limit }; diese trägt { $value }. Die alte hier kann eine falsche gewesen sein.
cure-circuit-weaker = Herausfinden, was die Teileliste der Maschine verlangt, bevor dieselbe wieder gefertigt wird.
why-circuit-relief-above = Die Druckbegrenzung dieses Kreises steht auf { $value }; die Schlauchleitung an Stelle { $place } trägt { $limit }.
cure-circuit-relief-above = Druckbegrenzung tiefer stellen, oder eine Schlauchleitung einbauen, die es trägt.
why-circuit-unknown = Stelle { $place } ist am selben Kreis, und was eine der beiden Schlauchleitungen trägt, ist nicht bekannt.
cure-circuit-unknown = Aufdruck von beiden lesen.
why-circuit-ok = Die Schlauchleitung an Stelle { $place } am selben Kreis trägt { $limit }; diese trägt { $value }.
why-failed-before = Hier ist schon einmal eine Schlauchleitung ausgefallen: { $causes }.
cure-failed-before = Sicherstellen, dass die Ursache beseitigt ist, bevor dieselbe wieder gefertigt wird.
why-failed-repeatedly = Hier sind schon { $value }-mal Schlauchleitungen ausgefallen: { $causes }.
cure-failed-repeatedly = Den langen Weg gehen: Verlegung, Strömung und die Ursache, bevor irgendetwas gefertigt wird.

# Die Verlegung, wie sie draußen gefragt wird
why-route-travel-missing = Niemand hat gesagt, ob die Maschine diese Schlauchleitung bewegt.
cure-route-travel-missing = Offene Stellung eintragen, oder sagen, dass sich nichts bewegt.
why-route-rigid-assumed = Die steife Länge von Ende { $end } ist nicht bekannt; angenommen ist { $value }, im schlichten Verhältnis zum Schlauch.
cure-route-rigid-assumed = Ende { $end } entlang des Schlauchs messen: vom Dichtpunkt zum Ende der Presshülse.
why-route-drop-assumed = Die Bogenhöhe an { $end } ist nicht bekannt; angenommen ist { $value }, im schlichten Verhältnis zum Schlauch.
cure-route-drop-assumed = Bogenhöhe an { $end } messen: von der Schlauchachse zur Mitte der Dichtfläche.
why-route-change-ok = Unter Druck kann { $hose } seine Länge um { $value } bis { $limit } ändern; jede dieser Längen wurde angesehen.
why-route-change-unverified = Unter Druck kann { $hose } seine Länge um { $value } bis { $limit } ändern, aber dieser Wert ist aus dem Gedächtnis, und niemand hat ihn geprüft.
cure-route-change-unverified = Angabe des Lieferanten für diesen Schlauch eintragen.
why-route-change-taken = Die Norm von { $hose } sagt nicht, wie sich seine Länge unter Druck ändert; angenommen ist { $value } bis { $limit }, wie bei den meisten Gummischläuchen.
cure-route-change-taken = Angabe des Lieferanten für diesen Schlauch eintragen.
why-route-straight-line-ok = Der Schlauch liegt gerade.
why-route-near-limit = Die Biegung ist innen { $value }; { $hose } braucht { $limit }. Eine Schätzung kann so wenig nicht unterscheiden.
cure-route-near-limit = Mehr Platz geben, oder nach dem Einbau die engste Biegung messen.
why-route-rival = Der Schlauch kann in eine andere Form fallen, die innen auf { $value } gebogen ist; { $hose } braucht { $limit }.
cure-route-rival = Mit einer Schelle so führen, dass er nur auf eine Art liegen kann, oder seine Länge ändern.
why-route-behind-ok = Hinter jeder Presshülse können { $straight } mm Schlauch, das { $times }fache seines Durchmessers, gerade liegen, und der Rest hält seinen Radius.
why-route-behind-short = Mit { $straight } mm geradem Schlauch hinter jeder Presshülse, dem { $times }fachen seines Durchmessers, würde der Rest auf { $value } gebogen; er braucht { $limit }. Nur das übliche Mindestmaß, einmal der Durchmesser, bleibt.
cure-route-behind-short = Länger fertigen, oder die Biegung mit einem Bogen von der Presshülse wegführen.
why-route-behind-none = Für { $straight } mm geraden Schlauch hinter jeder Presshülse, das übliche Mindestmaß, ist kein Platz: Der Rest würde auf { $value } gebogen; er braucht { $limit }. Der Schlauch knickt an der Presshülse.
cure-route-behind-none = Länger fertigen, oder die Biegung mit einem Bogen von der Presshülse wegführen.
why-route-twist-ok = Der Weg verdreht den Schlauch um { $value }.
why-route-twist = Der Weg verdreht den Schlauch um { $value }. Bei { $limit } kann ein Schlauch 70 % seiner Lebensdauer verlieren.
cure-route-twist = Schlauch so legen, dass er sich in der Bewegungsebene der Maschine biegt, oder an einem Ende ein Drehgelenk einsetzen.
why-route-turn-ok = Der Verdrehwinkel von { $value } ist der, den diese Anschlüsse verlangen.
why-route-turn-needed = Beide Enden sind gebogen, und diese Anschlüsse verlangen dazwischen einen Verdrehwinkel von { $limit }.
cure-route-turn-needed = Mit diesem Verdrehwinkel fertigen: von A nach B, Bogen A nach oben, im Uhrzeigersinn zum Bogen B.
why-route-turn-differs = Gefertigt wird mit einem Verdrehwinkel von { $value }; diese Anschlüsse verlangen { $limit }. Beim Einbau würde der Schlauch verdreht.
cure-route-turn-differs = Mit einem Verdrehwinkel von { $limit } fertigen, oder einen Bogen anders ausrichten.
why-route-too-short = Eine Schlauchleitung von { $value } reicht nicht in jeder Stellung, so verkürzt, wie sie unter Druck sein kann.
cure-route-too-short = Sie braucht mindestens { $limit }.
why-route-out-of-reach = Eine Schlauchleitung von { $value } reicht nicht in jeder Stellung, so verkürzt, wie sie unter Druck sein kann.
cure-route-out-of-reach = Länger fertigen, einen Anschluss versetzen oder drehen, oder einen Bogen nehmen.
why-route-unsettled = Bei { $value } fand sich keine Form.
cure-route-unsettled = Eine etwas andere Länge versuchen.
why-route-no-length = Keine Länge von { $hose } hält innen { $limit } in jeder Stellung.
cure-route-no-length = Einen Bogen nehmen, einen Anschluss versetzen oder drehen, oder einen Schlauch wählen, der sich enger biegen lässt.

# Einzelne Änderungen, die eine Verlegung heilen
route-cure-length = { $length } lang fertigen.
route-cure-exit = Bogen an { $end } { $points } richten; { $length } lang fertigen.
route-cure-form = An { $end } nehmen: { $form }, { $points } gerichtet; { $length } lang fertigen.
points-towards = zum anderen Anschluss
points-away = vom anderen Anschluss weg
points-front = nach vorn
points-back = nach hinten

# Ausnahmen
why-override-taken = { $by } verantwortet das: { $reason }
cure-override-taken = Nichts, solange der Grund gilt.
why-override-refused = { $rule }: Hier ist keine Ausnahme erlaubt.
cure-override-refused = Beheben, was dort steht. Nur Grenzen der Vorsicht lassen sich mit Name und Grund verantworten.
why-override-unsigned = Der Ausnahme von { $rule } fehlt der Name oder der Grund.
cure-override-unsigned = Beides angeben: wer es verantwortet, und warum.

# Andere Schläuche
why-alternative-twin-ok = { $hose } wird von den Querverweisen der Normen selbst als gleichwertig genannt.
why-alternative-pressure-ok = Trägt mehr: { $value } gegen { $limit }.
why-alternative-bend-ok = Biegt sich enger: { $value } gegen { $limit }.
why-alternative-pressure-less = Trägt weniger: { $value } gegen { $limit }.
cure-alternative-pressure-less = Sicherstellen, dass der Kreis nicht mehr verlangt.
why-alternative-bend-wider = Braucht eine weitere Biegung: { $value } gegen { $limit }.
cure-alternative-bend-wider = Sicherstellen, dass die Stelle den Platz hat.
why-alternative-same = Was gegen den gewählten Schlauch spricht, spricht genauso gegen diesen.
cure-alternative-same = Erst das beheben.
