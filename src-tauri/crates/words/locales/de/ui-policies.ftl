# Wörter der Altersgrenzen: der Tabellen und der eigenen.

policies-title = Altersgrenzen
policies-note = Richtwerte und eigene
policies-here = Grenzen, die hier gelten
policies-label = Eigene
policies-yours = Eigene Regeln
policies-yours-none = Noch keine eigene Regel: Es gelten die Richtwerte; wird einer überschritten, gilt Vorsicht.
policies-guides = Richtwerte der Tabellen
policies-guides-how = Sie gelten, wo keine eigene Regel etwas sagt. Ein überschrittener Richtwert ist Vorsicht, nie mehr.
policies-what-service = Lebensdauer, ab Fertigung
policies-what-storage = Im Lager, vor dem Einbau
policies-what-inspection = Zwischen Inspektionen
policies-order = Die engste Regel, die etwas sagt, gilt: Stelle, Maschine, Standort, Flotte; von zwei gleich engen die, die Leitung oder Beanspruchung nennt. Von Jahren und Stunden zählt das Strengere.
policies-maker = Grenzen des Herstellers und örtliche Vorschriften gehen vor. Keine Regel hier verlängert sie.
policies-new = Eigene Regel setzen
policies-new-then = mit Wirkung, bevor sie gesichert wird
policies-where = Wo sie gilt
policies-scope-fleet = Ganze Flotte
policies-scope-site = Ein Standort
policies-scope-machine = Maschine, Stelle
policies-pick = Auswählen
policies-every-place = Jede ihrer Stellen
policies-every-line = Jede Leitung
policies-all-hoses = Alle Schlauchleitungen
policies-demand = Beanspruchung
demand-normal = Normale Beanspruchung
demand-harsh = Erhöhte Beanspruchung
policies-limits = Grenzen
policies-limits-how = Was leer bleibt, bleibt der weiteren Regel überlassen, zuletzt dem Richtwert.
policies-none = –
policies-limit-service-years = Lebensdauer
policies-limit-service-hours = Betriebsstunden
policies-limit-storage-years = Im Lager
policies-limit-inspection-years = Inspektion
policies-limit-inspection-hours = Stunden bis Inspektion
policies-limit-service-years-how = Von der Fertigung bis zum Austausch, Lagerzeit eingeschlossen.
policies-limit-service-hours-how = Stunden der Maschine seit dem Einbau. Sie werden nach ihren eigenen Stunden am Tag zu einem Tag; ohne Ablesung zählen sie nicht, und die Liste sagt es.
policies-limit-storage-years-how = Von der Fertigung bis zum Einbau. Lagerzeit zählt zur Lebensdauer.
policies-limit-inspection-years-how = Von einem Ansehen zum nächsten. Ein halbes Jahr ist 0,5.
policies-limit-inspection-hours-how = Stunden der Maschine, seit die Schlauchleitung zuletzt angesehen wurde.
policies-hours = { $hours } h
policies-take = Übernehmen
policies-says-nothing = Keine Grenze
policies-is-stop = überschritten: Stopp
policies-is-caution = überschritten: Vorsicht
policies-keep = Regel sichern
policies-keep-then = sie gilt von jetzt an, auf jedem Gerät
policies-remove = Regel wegnehmen
policies-remove-note = die weitere gilt
policies-effect-word = WIRKUNG
policies-effect-longer = LÄNGER ALS DER RICHTWERT
policies-effect-later = SPÄTER ALS JETZT
policies-effect-longer-how = { $count ->
    [0] Keine Schlauchleitung verlässt die Liste der überfälligen.
    [one] { $off } Schlauchleitung verlässt die Liste der überfälligen.
   *[other] { $off } Schlauchleitungen verlassen die Liste der überfälligen.
  } { $over ->
    [0] {""}
    [one] { $guide } Tag läge nach dem des Richtwerts. Die Schlauchleitung wird davon nicht jünger.
   *[other] { $guide } Tage lägen nach denen des Richtwerts. Die Schlauchleitungen werden davon nicht jünger.
  }
policies-pick-first = Erst wählen, wo sie gilt.
policies-effect = { $count ->
    [0] Kein Tag verschiebt sich, von { $hoses } Schlauchleitungen, für die sie gilt.
    [one] { $moved } Tag verschiebt sich, von { $hoses } Schlauchleitungen, für die sie gilt.
   *[other] { $moved } Tage verschieben sich, von { $hoses } Schlauchleitungen, für die sie gilt.
  } { $machines ->
    [0] {""}
    [one] { $stopped } Maschine steht.
   *[other] { $stopped } Maschinen stehen.
  }
policies-effect-none = Eine Grenze ändern zeigt, was sie bewirkt, bevor sie gesichert wird.
policies-effect-past = Über der Grenze
policies-effect-within = In 12 Monaten fällig
policies-effect-stopped = Gestoppt
policies-effect-change = jetzt { $before }, dann { $after }
policies-effect-rows = Schlauchleitungen, deren Tag sich verschiebt
policies-effect-more = { $shown } von { $moved } sind gezeigt, die schwersten zuerst.
policies-was = bisher { $day }
