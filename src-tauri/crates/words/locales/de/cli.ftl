# Schlichte Antworten der Befehlszeile.
find-hose = Schlauch
find-end-a = Ende A
find-end-b = Ende B
find-settled = geklärt
find-unsettled = NICHT GEKLÄRT
find-none-of-these = keines davon
find-lookalike = Verwechselbar
find-separates = So zu unterscheiden:
find-open = Noch offen (95 % zusammen): { $what }.
find-open-hose = { $count ->
    [one] eine Art Schlauch
   *[other] { $count } Arten Schlauch
}
find-open-a = { $count ->
    [one] eine Art Ende A
   *[other] { $count } Arten Ende A
}
find-open-b = { $count ->
    [one] eine Art Ende B
   *[other] { $count } Arten Ende B
}
find-next = Als Nächstes:
find-more-names = und { $count } weitere
find-of-hose = Schlauch
find-of-a = Ende A
find-of-b = Ende B
find-enough = Welcher davon es auch war, der neue Schlauch muss derselbe sein; am Schlauch braucht nichts mehr gemessen zu werden.
explain-title = { $candidate } gegen { $rival }
explain-how = Bit an Beweis: nach rechts für das Erste, nach links für das Zweite.
explain-together = Häufigkeit, andere Teile, Herkunft
explain-all = Alles zusammen
explain-must-be-wrong = Damit { $rival } stimmt, müsste dies falsch sein: { $readings }.
explain-unverified = { $name } steht aus dem Gedächtnis in den Tabellen; niemand hat die Zeile geprüft.
check-adapter = Adapter
check-assembly = { $pressure } für die Schlauchleitung; am schwächsten: { $weakest }
check-cut = Schnittlänge { $length }
check-tolerance = Toleranz der Gesamtlänge { $tolerance }
check-not-checked = Nicht geprüft:
check-alternatives = Andere Schläuche im selben Einsatz:
print-standard = Norm
print-type = Typ
print-size = Größe
print-dash = Dash
print-pressure = Aufgedruckter Betriebsdruck
print-made = Hergestellt
print-made-or = oder
print-unread = Nicht verstanden
print-nothing = nichts von „{ $text }“ ist als Aufdruck eines Schlauchs bekannt; ? für einen abgeriebenen Buchstaben schreiben
print-candidates = Kann { $count ->
    [one] ein Schlauch sein:
   *[other] einer von { $count } Schläuchen sein:
}
flow-velocity = Geschwindigkeit
flow-reynolds = Reynolds-Zahl
flow-friction = Rohrreibungszahl
flow-drop = Druckverlust
flow-viscosity = Verwendete Viskosität
surge-rise = Druckanstieg
surge-speed = Wellengeschwindigkeit
surge-critical = Laufzeit hin und zurück
surge-modulus = Wirksamer Kompressionsmodul
oil-plain-usual = In einer solchen Leitung üblich
oil-plain-cold-drop = Druckverlust bei größter Kälte
oil-plain-peak = Spitze samt Betriebsdruck
oil-plain-size = { $hose } bringt das Öl auf { $speed }.
oil-taken-smooth-bore = Angenommen: innen glatt, wie Schläuche es sind.
oil-taken-oil-density = Angenommen: Dichte { $value } bei 40 °C, die von Mineralöl.
oil-taken-oil-usual-grade = Angenommen: { $value }, wie die meisten Mineralöle.
oil-taken-oil-usual-index = Angenommen: Viskositätsindex { $value }, wie die meisten Mineralöle.
oil-taken-oil-bulk-modulus = Angenommen: Kompressionsmodul { $value }, auf der Seite der höheren Spitze.
oil-taken-rigid-wall = Angenommen: eine Wand, die nicht nachgibt. Ein Schlauch gibt nach, die wahre Spitze ist also niedriger; um wie viel, sagt seine Volumenausdehnung (ISO 6801) vom Lieferanten.
oil-taken-sudden-closure = Angenommen: ein Ventil, das schlagartig schließt, das Schlimmste, was sein kann.
life-counts = { count-hoses }, davon { $failures } ausgefallen.
life-too-few-failures = Zu wenige für eine Aussage: mindestens zwei Ausfälle zu sicher verschiedenen Zeiten sind nötig.
life-no-maximum = Zu wenige für eine Aussage: Jede ausgefallene fiel bald nach Beginn der Beobachtung aus.
life-shape = Formparameter
life-scale = Skalenparameter
life-b10 = Eine von zehn ist ausgefallen nach
life-mean = Mittlere Lebensdauer
life-bounds = In Klammern: 95-%-Grenzen nach Profil-Likelihood.
route-estimate = eine Schätzung: ohne Gewicht, ohne Eigenform, ohne Schellen
route-inside = Engster Radius innen
route-centre = Engster Radius der Mittellinie
route-length = Freie Länge
route-shortest = Kürzeste freie Länge, die reicht
route-twist-range = Torsion über den Weg
route-straight = gerade
route-near-rival = Eine andere Form hat fast dieselbe Energie; der Schlauch kann in beiden liegen.
route-no-shape = er reicht nicht
route-none = keine reicht
route-overall = Gesamtlänge
route-shortest-overall = Kürzeste Gesamtlänge
route-recommended = Zu fertigende Länge
route-turn = Verdrehwinkel der Bögen
route-cures = Eine Änderung, die es heilt; jede über den ganzen Weg verlegt:
route-cure-radius = Innenradius { $radius }.
route-cure-assumed = Bogenhöhe und steife Länge sind im schlichten Verhältnis angenommen: an der Armatur messen.
route-below-limit = Die Innenseite der Biegung ist enger, als der Schlauch erlaubt.
route-near-limit = Die Biegung liegt um weniger innerhalb der Grenze, als eine Schätzung unterscheiden kann.
route-rival-too-tight = Der Schlauch kann in eine andere Form fallen, und die ist zu eng.
route-twist = Der Weg der Maschine verdreht den Schlauch.
route-no-limit = Kein kleinster Biegeradius wurde angegeben.
route-no-diameter = Kein Außendurchmesser wurde angegeben; die Innenseite der Biegung ist deshalb nicht bekannt.
tag-refused = für etwas, das nicht gefertigt werden darf, gibt es kein Schild.
tag-code-alone = Der Code trägt nur den Namen des Schilds; die Wörter stehen daneben, und das Register weiß den Rest.
count-rows = { $rows ->
    [one] 1 Zeile
   *[other] { $rows } Zeilen
}
count-hoses = { $hoses ->
    [one] 1 Schlauchleitung
   *[other] { $hoses } Schlauchleitungen
}
count-machines = { $machines ->
    [one] 1 Maschine
   *[other] { $machines } Maschinen
}
count-places = { $places ->
    [one] 1 Stelle
   *[other] { $places } Stellen
}
import-done = { count-rows }: { count-hoses }, { count-machines } und { count-places } übernommen, { $changed } ausgebaut; { $known } schon bekannt.
import-would = Nichts wurde geändert. { count-rows } ergäben: { count-hoses }, { count-machines } und { count-places }, { $changed } ausgebaut; { $known } schon bekannt.
import-would-not = Nichts wurde geändert, und nichts aus der Liste würde übernommen, bis { $refused ->
    [one] diese Zeile berichtigt ist
   *[other] diese { $refused } Zeilen berichtigt sind
}: alle Zeilen oder keine. Die übrigen ergäben: { count-hoses }, { count-machines } und { count-places }, { $changed } ausgebaut; { $known } schon bekannt.
import-refused = Zeile { $row }: { $why }
record-done = { $count ->
    [one] Ein Eintrag ist auf der Platte.
   *[other] { $count } Einträge sind auf der Platte.
}
merge-done = { $added ->
    [one] 1 Eintrag war neu
   *[other] { $added } Einträge waren neu
}, { $had ->
    [one] 1 war schon da
   *[other] { $had } waren schon da
}, { $held ->
    [one] 1 wartet auf frühere.
   *[other] { $held } warten auf frühere.
}
merge-fork = Gerät { $device }: abgelehnt. Zwei Programme haben als dasselbe Gerät geschrieben; eines davon muss als neues weitermachen.
merge-broken-chain = Gerät { $device }: abgelehnt. Seine Einträge schließen nicht an das Vorhandene an; sein Paket neu holen.
verify-whole = { $events ->
    [one] 1 Eintrag
   *[other] { $events } Einträge
} von { $devices ->
    [one] 1 Gerät
   *[other] { $devices } Geräten
}: Jeder Hash stimmt, und die Tabellen sind, was das Protokoll ergibt.
show-failures = { $count ->
    [0] Von keinem Ausfall ist hier etwas bekannt.
    [one] An dieser Stelle gab es schon einen Ausfall: { $causes }.
   *[other] An dieser Stelle gab es schon { $count } Ausfälle: { $causes }.
}
show-since = seit { $from }
show-hours = { $hours } h am { $date }
show-no-hose = keine Schlauchleitung bekannt
show-failed = ausgefallen:
status-made = gefertigt, noch nicht eingebaut
status-fitted = eingebaut
status-taken-off = ausgebaut
status-withdrawn = Schild zurückgezogen
status-failed-proof = Druckprüfung durchgefallen: Ausschuss
due-heading = Stand { $on }: { $count ->
    [one] 1 Termin
   *[other] { $count } Termine, der nächste zuerst
}.
due-cut = { $shown } von { $count }; --all zeigt alle.
due-no-day = kein Tag bekannt
search-not-settled = nicht geklärt
due-stopped = { $count ->
    [one] Einer darf nicht weiterlaufen; er steht zuerst.
   *[other] { $count } dürfen nicht weiterlaufen; sie stehen zuerst.
}
show-not-settled = NICHT GEKLÄRT: { $count } Einträge zu diesem Schlauch widersprechen sich. Bis jemand es auf der Seite des Schlauchs klärt, steht hier der spätere.
due-what-service = ersetzen
due-what-storage = gelagert
due-what-inspection = prüfen
due-guide = Richtalter, wo der Eigentümer keines gesetzt hat:
search-nothing = nichts im Register hat alle diese Wörter
search-failed = { $count ->
    [one] hier ist schon eine Schlauchleitung ausgefallen
   *[other] hier sind schon { $count } Schlauchleitungen ausgefallen
}
search-hose = Schlauchleitung
search-place = Stelle
search-machine = Maschine
search-site = Standort
tag-service-unchecked = VORSICHT: Über den Einsatz wurde nichts gesagt. Das Schild trägt den zulässigen Druck der Teile; ob sie zur Leitung passen, wurde nicht geprüft.
tag-no-register = Kein Register angegeben: Das Schild hat kein Siegel und wurde gegen keinen Eintrag gehalten. Mit --db eines nennen.
find-more-lookalikes = { $count ->
    [one] Noch eine verwechselbare ist möglich; --json nennt sie.
   *[other] Noch { $count } verwechselbare sind möglich; --json nennt sie.
}
cut-reel-kept = Rolle { $place } ({ $length } mm): { $pieces } mm; { $left } mm bleiben darauf
cut-offcut-kept = Reststück { $place } ({ $length } mm): { $pieces } mm; { $left } mm übrig, behalten
cut-offcut-scrap = Reststück { $place } ({ $length } mm): { $pieces } mm; { $left } mm übrig, Abfall
cut-unmade = STOPP: kein Schlauch für { $pieces } mm
cut-sum = Neuer Schlauch { $reel } mm, Abfall { $scrap } mm. Kein Plan braucht weniger als { $least } mm neuen Schlauch.
cut-sum-proved = Neuer Schlauch { $reel } mm, Abfall { $scrap } mm. Besser geht es nicht.
bench-crimp = Pressung { $end }
bench-crimp-nameless = Pressung
bench-target = Soll { $target } ± { $tolerance }
bench-accepted = angenommen von { $low } bis { $high }
bench-mean = Mittel { $mean }, Streuung { $spread }
bench-range = { $min } bis { $max }
bench-oval = unrund { $oval }
bench-taper = konisch { $taper }
bench-place = Stelle { $place }: Mittel { $mean }, { $min } bis { $max }, unrund { $oval }
bench-count = { $count } von { $wanted } Messwerten
bench-measured = { $value }, Toleranz { $low } bis { $high }
bench-may-tag = Sie darf gekennzeichnet werden.
bench-may-not-tag = Sie darf nicht gekennzeichnet werden:
bench-recorded = Erfasst als { $code }.
bench-judged-pass = BESTANDEN
bench-judged-unsettled = NICHT GEKLÄRT
bench-judged-stop = STOPP
press-on = Stand { $on }
press-die = Backensatz { $die }: { $count ->
    [one] 1 Pressung
   *[other] { $count } Pressungen
}
press-care = { $name }: { $crimps ->
    [one] 1 Pressung
   *[other] { $crimps } Pressungen
} seither
press-care-due = fällig
press-care-on = fällig am { $on }
press-care-undone = niemand weiß, wann es zuletzt gemacht wurde
supplier-match = Überschriften in Zeile { $row }, { $rows } Zeilen darunter.
supplier-missing = Nicht gefunden: { $missing }. Eine Spalte zuordnen oder einen Wert für alle Zeilen angeben.
supplier-not-known = nicht bekannt
supplier-would = Würde { $taken } von { $rows } Zeilen übernehmen: { $new } neu, { $changed } anstelle einer früheren, { $same } schon vorhanden.
supplier-done = { $taken } von { $rows } Zeilen übernommen: { $new } neu, { $changed } anstelle einer früheren, { $same } schon vorhanden.
supplier-would-not = Nichts würde übernommen: { $refused } von { $rows } Zeilen gehen nicht. Berichtigen oder weglassen.
supplier-refused = Zeile { $row }: { $why }
supplier-repeated = Zeile { $row } sagt dasselbe wie Zeile { $of }
supplier-left-out = weggelassen: { $rows }
supplier-of = { $supplier }: { $count ->
    [one] 1 Zeile
   *[other] { $count } Zeilen
}
supplier-empty = Hier ist keine Lieferantentabelle. Keine wird mitgeliefert: die des eigenen Lieferanten einlesen oder Zeilen von Hand eingeben.
supplier-removed = { $count ->
    [one] 1 Zeile entfernt.
   *[other] { $count } Zeilen entfernt.
}
supplier-kept = Gesichert als { $id }.
supplier-no-row = keine Zeile eines Lieferanten passt
supplier-last = letztes Mal, { $code } { $day }
supplier-cutoff = Abzugsmaß { $mm } aus { $n ->
    [one] 1 Schlauchleitung
   *[other] { $n } Schlauchleitungen
}{ $spread }
supplier-cutoffs = Beide Abzugsmaße zusammen { $mm } aus { $n ->
    [one] 1 Schlauchleitung
   *[other] { $n } Schlauchleitungen
}{ $spread }
supplier-spread = , Streuung { $spread }
