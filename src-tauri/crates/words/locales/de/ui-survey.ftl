# Wörter fürs Ansehen von Schlauchleitungen am Ort: Anzeichen, und der Rundgang einer Maschine.

signs-what = Was ist zu sehen? Ansehen, nicht fühlen.
signs-nothing = Nichts zu sehen
signs-group-cover = Außendecke
signs-group-shape = Form
signs-group-end = Enden
signs-group-leak = Leck
signs-group-routing = Wie sie liegt
signs-group-marking = Kennzeichnung
signs-group-other = Anderes
signs-count = { $count ->
    [one] { $shown } gesehen
   *[other] { $shown } gesehen
  }
signs-stops = Stoppt die Maschine, bis sie ersetzt ist.
signs-within = { $days ->
    [1] Fällig binnen eines Tages.
   *[other] Fällig binnen { $days } Tagen.
  }
signs-grade = Wie schwer ist es hier?
signs-leak-word = KEINE HÄNDE
signs-leak = Nie nach einem Leck fühlen. Aus der Entfernung oder mit einer Karte suchen, nie mit der Hand; anfassen nur mit Last ab, Motor aus und Druck weg. Fluid unter der Haut ist ein chirurgischer Notfall, auch wenn es klein aussieht.
found-stops = { $machine } wird dadurch gestoppt.
found-stays = { $machine } bleibt gestoppt, was auch jetzt gesehen wird. Schlauchleitung ausbauen oder, was irrtümlich gesehen wurde, auf ihrer Seite streichen.
found-due = Fällig { $day }.
found-nothing = Nichts gefunden: Kein Tag verschiebt sich.
off-title = Ausgebaut
off-note = ohne neue
off-day = Tag des Ausbaus
off-picked = diese
mistake-title = Irrtümlich eingebaut
mistake-note = sie war nie dort
mistake-how = Ihr Einbau wird gestrichen: Die Schlauchleitung ist wieder in der Hand, am Ort ist keine erfasst. Das Protokoll behält, was gestrichen wurde und warum. Ein Zählerstand, der dabei erfasst wurde, bleibt.
mistake-how-both = Ihr Einbau wird gestrichen, und ebenso, dass { $code } dafür ausgebaut wurde: { $code } sitzt wieder dort, diese Schlauchleitung ist in der Hand. Das Protokoll behält, was gestrichen wurde und warum. Ein Zählerstand, der dabei erfasst wurde, bleibt.
mistake-do = Streichen
seen-mistake-title = Irrtümlich gesehen
seen-mistake-note = { $day } · { $what }
seen-mistake-nothing = nichts gefunden
seen-mistake-how = Die Inspektion wird gestrichen und zählt nicht mehr: Was sie stoppte, darf wieder laufen, was sie verschob, ist fällig wie zuvor. Das Protokoll behält sie und den Grund.
machines-stopped = GESTOPPT
machines-stopped-how = Etwas an dieser Maschine darf nicht weiterlaufen. Sie bleibt gestoppt, bis alles davon behoben ist: die Schlauchleitung ausgebaut, die Inspektion auf der Seite ihrer Schlauchleitung gestrichen oder die Regel oder die Angaben der Stelle geändert.
machines-stopped-rule = Über der eigenen Grenze, die ein Stopp ist
hose-stopped-how = Diese Schlauchleitung darf nicht weiterlaufen.
machines-stopped-seen = gesehen { $day } · { $code }

## Der Rundgang
survey-title = Rundgang
survey-note = jede Stelle, nichts ausgebaut
survey-label = Stellen
survey-of = { $at }/{ $of }
survey-safe-word = ZUERST
survey-safe = Last ab, Motor aus, gesichert, Druck nachweislich weg. Ansehen; nie mit der Hand nach einem Leck fühlen.
survey-how = Eine Stelle nach der anderen. Was nicht zu sehen ist, bleibt ungeöffnet und wird nicht geraten; auch nicht erreichbar ist eine Antwort.
survey-begin = Beginnen
survey-go-on = Weiter
survey-next = Stelle { $number }, { $name }
survey-keep = Sichern
survey-last-one = das war die letzte Stelle
survey-done = Zurück zur Maschine
survey-before = Davor
survey-skip = Für später lassen
survey-question = Was ist da?
survey-found-not-opened = Leitung da
survey-found-no-hose = Keine da
survey-found-not-reached = Nicht erreichbar
survey-no-record = Hier ist nichts erfasst
survey-last = { $found ->
    [opened] { $day }: geöffnet
    [not-opened] { $day }: angesehen, nicht geöffnet
    [no-hose] { $day }: keine Schlauchleitung
   *[not-reached] { $day }: nicht erreicht
  }
survey-never = noch nicht angesehen
survey-today = heute
survey-tally = { $looked } angesehen · { $reached } nicht erreicht · { $empty } ohne Schlauchleitung · { $left } offen
survey-read = Was sich so ablesen lässt
survey-read-how = Nichts wird gelöst. Die Schlauchleitung bleibt ungeöffnet, und was nicht gelesen ist, bleibt offen.
survey-print = Aufdruck der Außendecke
survey-print-hint = wie er steht; ? für abgenutzte Zeichen
survey-cover = Ø über der Außendecke
survey-cover-how = An einem geraden Stück, weg von Presshülsen und Bögen.
survey-hex-a = Schlüsselweite A
survey-hex-b = Schlüsselweite B
survey-hex-how = Über die Flächen der Überwurfmutter, mit dem Messschieber. Nicht drehen.
survey-not-opened = NICHT GEÖFFNET
survey-likely = Bisher gelesen: { $what }. Nichts ist geklärt, bis sie ausgebaut ist.
survey-gone = { $code } ist hier erfasst. Ist sie weg, die Stelle öffnen und sie mit Ursache austragen.
survey-words = In eigenen Worten

## Was ein Ausfall bewirken würde
stakes-title = Was ein Ausfall hier bewirkt
stakes-how = Danach ordnet sich, was fällig ist, wenn nach Risiko geordnet wird.
stakes-what = Was daneben ist
stakes-none = Nichts davon
stakes-not-said = noch nicht gesagt
stakes-said = { $count ->
    [0] nichts aus der Tabelle
    [one] { $count } Angabe
   *[other] { $count } Angaben
  }
stakes-as-machine = Wie die Maschine
stakes-consequence = Folge, 1 bis 5
stakes-by-table = Nach Tabelle
stakes-consequence-how = Die eigene geht der Tabelle vor: 1 ist lästig, bei 5 kann jemand verletzt werden.
hose-clocks = Drei Uhren
hose-clock-made = Schlauch hergestellt
hose-clock-assembled = Gefertigt
hose-clock-fitted = Eingebaut
hose-clock-since = { $found ->
    [yes] vorgefunden { $day }
   *[no] { $day }
  }
hose-did-surveyed = Am Ort angesehen { $day }
visits-sheet = Rundenblatt sichern
visits-sheet-note = PDF, mit Schildern
