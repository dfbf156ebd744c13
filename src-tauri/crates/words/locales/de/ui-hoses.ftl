# Wörter der Tabelle aller Schlauchleitungen.

hoses-title = Alle Schlauchleitungen
hoses-note = Tabelle, Filter, Etiketten
hoses-label = Gelistete Leitungen
hoses-table = Schlauchleitungen
hoses-chosen = Ausgewählt
hoses-choose = { $code } auswählen
hoses-machine = Maschine
hoses-place = Stelle
hoses-hose = Schlauch
hoses-age = Alter
hoses-failures = Ausfälle
hoses-due = Fällig
hoses-fitted = Eingebaut
hoses-grade = Zuletzt angesehen
hoses-none = Was gefiltert ist, lässt keine Schlauchleitung übrig.
hoses-age-unknown = Alter nicht bekannt
hoses-due-of-service = Lebensdauer
hoses-due-of-storage = Lagerung
hoses-due-of-inspection = Inspektion
hoses-due-of-finding = Gesehenes
hoses-due-of-asked = überfordert
hoses-due-unknown = nicht bekannt
hoses-due-past = { $days ->
    [0] heute
    [one] { $shown } Tag darüber
   *[other] { $shown } Tage darüber
  }
hoses-filter = Suchen und filtern
hoses-search-hint = Schild, Maschine, Stelle, Größe
hoses-state = Zustand
hoses-state-fitted = Eingebaut
hoses-state-made = Gefertigt, nicht eingebaut
hoses-state-taken-off = Ausgebaut
hoses-state-failed-proof = Druckprüfung nicht bestanden
hoses-state-withdrawn = Zurückgezogen
hoses-is-past = Tag überschritten
hoses-is-not-past = Nicht überschritten
hoses-open = Schlauchleitung öffnen
hoses-open-place = Ihre Stelle öffnen

## Auf einen Blick
hoses-glance-years = Jahre
hoses-glance-older = ab { $years }
hoses-glance-unknown = kein Tag
hoses-glance-past = darüber
hoses-glance-days = in { $days } T
hoses-glance-ages = Wie viele Schlauchleitungen welches Alter in Jahren haben. { $ages }
hoses-glance-due = Wie viele fällig werden. { $due }
hoses-glance-failed = Ausgefallen
hoses-glance-months = 12 Monate

## Was mit den ausgewählten geschieht
hoses-chosen-count = { $count ->
    [one] { $shown } Schlauchleitung ausgewählt
   *[other] { $shown } Schlauchleitungen ausgewählt
  }
hoses-more = Mehr als { $most } werden nicht auf einmal ausgewählt: Es sind die ersten { $most }.
hoses-labels = Etiketten dafür
hoses-let-go = Auswahl aufheben
hoses-batch = { $count ->
    [one] { $shown } neu fertigen
   *[other] { $shown } neu fertigen
  }
hoses-batch-then = in die Sammlung, nach dem, was ihre Stellen jetzt verlangen
hoses-too-many = Höchstens { $most } gehen auf einmal in die Sammlung.
hoses-not-in-batch = { $count ->
    [one] { $shown } Schlauchleitung fehlt: Sie sitzt nirgends, oder niemand weiß, was dorthin gehört.
   *[other] { $shown } Schlauchleitungen fehlen: Sie sitzen nirgends, oder niemand weiß, was dorthin gehört.
  }
