# Wörter der Liste dessen, was fällig wird.

due-label = Überfällig
due-context = { $sites ->
    [one] { $sitesShown } Standort
   *[other] { $sitesShown } Standorte
  } · { $machines ->
    [one] { $machinesShown } Maschine
   *[other] { $machinesShown } Maschinen
  }
due-sites = Standort
due-all-sites = Alle
due-what = Was fällig wird
due-view-service = Lebensdauer { $count }
due-view-inspection = Inspektion { $count }

## Alter
due-ages-service = Alter jeder Schlauchleitung
due-ages-inspection = Seit jede zuletzt angesehen wurde
due-ages-from = Wo keine Inspektion erfasst ist, seit dem Einbau.
due-one-mark = ein Strich, eine Schlauchleitung
due-drawing-inspection = Jahre seit der letzten Inspektion von { $count } Schlauchleitungen, Grenze { $limit }; { $over } liegen darüber
due-drawing-service = Alter von { $count } Schlauchleitungen in Jahren, Grenze { $limit }; { $over } liegen darüber
due-limit-guide = { $count ->
    [one] { $years } Jahr
   *[other] { $years } Jahre
}, Richtwert
due-limit-policy = { $count ->
    [one] { $years } Jahr
   *[other] { $years } Jahre
}, eigene
due-over = { $count } darüber
due-year-unit = J
due-other-limits = Manche Schlauchleitungen haben eine andere Grenze; in der Liste zählt für jede ihre eigene.
due-no-ages = Noch ist kein Alter bekannt.

## Liste
due-unknown = Alter nicht bekannt
due-unknown-why = Kein Tag der Herstellung, Fertigung oder des Einbaus ist erfasst. Sie zählen nie als jung: Presshülse und Aufdruck ansehen.
due-past = Über der Grenze
due-stopped-title = Gestoppt
due-within-30 = In 30 Tagen
due-within-90 = 31 bis 90 Tage
due-within-365 = 91 Tage bis 12 Monate
due-nothing = Hier wird in 12 Monaten nichts fällig.
due-over-by = { $years } J darüber
due-in-days = { $days ->
    [one] in { $shown } Tag
   *[other] in { $shown } Tagen
  }
due-since-unknown = ?
due-years = { $years } J
due-not-fitted = Nicht eingebaut
due-row-place = { $number } · { $name }
due-row-from = { $from ->
    [assembled] ab Fertigung
    [hose-made] ab Herstellung des Schlauchs
    [fitted] ab Einbau: mindestens
    [inspected] ab der letzten Inspektion
   *[unknown] kein Tag bekannt
  }
due-row-finding = { $name }, gesehen { $day }
due-row-hours = { $known ->
    [yes] { $run } h von { $limit } h seit Einbau
   *[no] Grenze { $limit } h
  }{ $rated ->
    [yes] , bei eigenen { $rate } h am Tag
   *[no] {""}
  }
due-row-yours = eigene { $years } J{ $stop ->
    [yes] , ein Stopp
   *[no] {""}
  }
due-row-guide = Richtwert { $years } J
due-row-asked = durch das, was die Stelle verlangt
due-row-risk = { $chance } × { $of }
due-guide-sources = Richtwert: { $sources }
due-row-consequence = Folge { $of } von 5: { $why }
due-hours-no-hours-at-fitting = Stunden zählen nicht: beim Einbau keine erfasst
due-hours-no-reading = Stunden zählen nicht: noch keine abgelesen
due-hours-no-rate = Stunden zählen nicht: eine Ablesung gibt keine Rate
due-hours-meter-set-back = Stunden zählen nicht: der Zähler zeigt weniger als beim Einbau
due-row-chance = { $from ->
    [life] { $part } %
   *[age] { $part } % verbraucht
  }
due-stake-someone-beside = jemand daneben
due-stake-hot-surface = heiße Fläche
due-stake-load-held-up = gehaltene Last
due-stake-remote = abgelegener Ort
due-stake-owner = eigene Angabe
due-stake-not-said = niemand hat gesagt, was ein Ausfall hier bewirkt
due-stake-none = nichts aus der Tabelle
due-order = Reihenfolge
due-by-date = Nach Tag
due-by-risk = Nach Risiko
due-by-risk-title = Wahrscheinlichkeit mal Folge
due-risk-why = { $from ->
    [life] Wahrscheinlichkeit eines Ausfalls in den nächsten { $days } Tagen, aus der Lebensdauer der eigenen Schlauchleitungen ({ $failures } Ausfälle), mal Folge. Eine Schätzung für die Reihenfolge, kein Versprechen.
   *[age] Der Teil der Grenze, der in { $days } Tagen verbraucht ist, mal Folge: keine Wahrscheinlichkeit, die ältesten kommen zuerst. { $failures } erfasste Ausfälle sind dafür zu wenige; { $needed } sind nötig.
  }
due-more = Mehr zeigen
due-more-note = { $shown } gezeigt
due-columns = Was wann fällig wird
due-column-30 = 30 Tage
due-column-90 = bis 90
due-column-365 = 12 Monate
due-export-csv = Als Text sichern
due-export-csv-note = für andere Programme

## Als Nächstes
due-plan = { $site } planen
due-plan-then = { $count ->
    [one] { $shown } Schlauchleitung über ihrer Grenze
   *[other] { $shown } Schlauchleitungen über ihrer Grenze
  }
due-plan-then-stopped = { $stopped } gestoppt, insgesamt { $shown } überfällig
due-open = { $machine } öffnen
due-open-then = Stelle { $number }, { $name }

## Grenze und Listen
due-policy-crossed = Wenn überschritten
due-policy-caution = Vorsicht
due-policy-stop = Stopp
due-export-xlsx = Liste sichern
due-export-xlsx-note = Tabelle
due-export-ics = Termine sichern
due-export-ics-note = Kalender
due-saved = Gesichert: { $where }

## Wie lange Schlauchleitungen hier halten
due-life = Wie lange sie hier halten
due-life-note = nach Typ, Belastung und Stelle; zu erwartende Ausfälle; Alter der geringsten Kosten
due-life-failed = Ausgefallen
due-life-by = Zusammengefasst nach
due-life-by-hose = Schlauchtyp
due-life-by-line = Leitung
due-life-percent = { $part } %
due-life-count = { $count ->
    [one] { $shown } Schlauchleitung, { $failed } ausgefallen
   *[other] { $shown } Schlauchleitungen, { $failed } ausgefallen
  }
due-life-not-known = Nicht erfasst
due-life-drawing = { $what }: Anteil, der noch hält, über { $years } Jahre seit Einbau, mit Grenzen. { $count }.
due-life-b10 = Eine von zehn ist ausgefallen nach
due-life-span = { $count ->
    [one] { $years } Jahr
   *[other] { $years } Jahre
} ({ $low } bis { $high })
due-life-few = Zu wenige für eine Aussage
due-life-few-why = Mindestens zwei Ausfälle in verschiedenem Alter sind nötig. Bis dahin sagen diese nichts darüber, wie lange solche Schlauchleitungen halten.
due-life-none = Zu wenige Ausfälle sind erfasst, um zu sagen, wie lange Schlauchleitungen hier halten.
due-life-left-out = { $count ->
    [one] { $shown } Aufenthalt ist ausgelassen: Niemand weiß, wann eingebaut wurde, oder die Tage widersprechen sich.
   *[other] { $shown } Aufenthalte sind ausgelassen: Niemand weiß, wann eingebaut wurde, oder die Tage widersprechen sich.
  }
due-life-how = Jahre seit dem Einbau. Jeder Ausfall zählt, gleich aus welcher Ursache; eine Schlauchleitung, die heil ausgebaut wurde oder noch sitzt, zählt so weit, wie sie beobachtet wurde. Ausfälle vor Beginn dieses Registers sind nicht darin.
due-life-bounds = Starke Linie: der Anteil, der noch hält (Kaplan und Meier). Band: 95-%-Grenzen, jede für ihr Jahr allein; breit heißt, dass wenig bekannt ist. Dünne Linie: Weibull-Anpassung. Es beschreibt diese Maschinen und verspricht nichts für die nächste Schlauchleitung; Grenze des Herstellers und Richtwert gehen vor.
due-life-by-load = Belastung
due-life-by-machine = Maschinenart
due-life-by-place = Art der Stelle
due-life-load-half = Bis zur Hälfte des zulässigen Drucks
due-life-load-three-quarters = Hälfte bis drei Viertel des zulässigen Drucks
due-life-load-full = Drei Viertel des zulässigen Drucks und mehr
due-life-load-above = Über dem zulässigen Druck
due-life-shape = Formparameter
due-life-shape-says = { $shape } ({ $low } bis { $high }): { $wears ->
    [wears-out] sie verschleißen
    [fails-young] sie fallen jung aus
   *[other] noch ist nicht zu sagen, ob sie verschleißen
  }
due-life-next = Nächstes Vierteljahr
due-life-next-says = { $failures } Ausfälle zu erwarten ({ $low } bis { $high })
due-life-next-drawing = Ausfälle, die im nächsten Vierteljahr zu erwarten sind: { $failures }, von { $low } bis { $high }
due-life-all = Alle zusammen
due-life-not-expected = { $count ->
    [one] { $shown } Schlauchleitung ist in keiner Erwartung: Von ihrer Art sind zu wenige ausgefallen.
   *[other] { $shown } Schlauchleitungen sind in keiner Erwartung: Von ihrer Art sind zu wenige ausgefallen.
  }
due-life-take = { $more ->
    [one] Noch { $shown } Ausfall ist nötig, um zu sagen, ob solche Schlauchleitungen verschleißen.
   *[other] Noch { $shown } Ausfälle sind nötig, um zu sagen, ob solche Schlauchleitungen verschleißen.
  }
due-life-take-years = Im bisherigen Takt: { $count ->
    [one] { $years } Jahr
   *[other] { $years } Jahre
}.
due-life-between = { $count ->
    [one] { $shown } wurde bei einer Inspektion ausgefallen vorgefunden, seit wann, weiß niemand.
   *[other] { $shown } wurden bei einer Inspektion ausgefallen vorgefunden, seit wann, weiß niemand.
  }
due-life-costs = Alter der geringsten Kosten
due-life-costs-why = Was kostet ein Ausfall mit allem, was daraus folgt, und was ein geplanter Tausch? Das wissen nur Sie.
due-life-failure-cost = Ein Ausfall
due-life-planned-cost = Ein geplanter Tausch
due-life-costs-ask = Ausrechnen
due-life-costs-wrong = Zwei Beträge über null, der Ausfall der teurere.
due-life-least = Am wenigsten kostet der Tausch nach
due-life-least-near = Auf 5 % genauso gut
due-life-least-range = { $low } bis { $high } Jahren
due-life-least-from = ab { $low } Jahren
due-life-waiting = Kein Alter kostet weniger, als auf Ausfälle zu warten, soweit bekannt.
due-life-cost-drawing = { $what }: Kosten des Tausches nach Alter, Warten auf Ausfälle ist 100 %. Am wenigsten nach { $age } Jahren, { $part } %.
due-life-cost-first = Grenze des Herstellers und Richtwert gehen vor, was immer es kostet.
due-life-places = Mehr Ausfälle als erwartet
due-life-places-of = { $count ->
    [one] Von { $shown } betrachteten Stelle. Manche sind nur durch Zufall schlecht.
   *[other] Von { $shown } betrachteten Stellen. Unter so vielen sind manche nur durch Zufall schlecht.
  }
due-life-place-says = { $seen } statt { $expected } erwarteter: das { $ratio }-Fache ({ $low } bis { $high }).
due-life-place-out = Fällt auf, selbst als schlechteste von allen.
due-life-place-chance = Kann Zufall sein.
due-life-since = Jeder Ausfall ist erfasst seit
due-life-since-note = Setzen, wo die Aufzeichnung später begann als die Schlauchleitungen: Was vorher ausfiel, weiß niemand.
due-life-since-all = Von Anfang an
due-life-before = { $count ->
    [one] { $shown } Aufenthalt endete vor diesem Tag und ist nicht gezählt.
   *[other] { $shown } Aufenthalte endeten vor diesem Tag und sind nicht gezählt.
  }
due-life-paper = Als Blatt sichern
due-life-paper-note = PDF, mit den Kurven
