# Das Register.
fault-unreadable = Eintrag { $event } ist nicht lesbar.
fault-changed = Eintrag { $event } ist nicht, was geschrieben wurde: Etwas hat ihn verändert.
fault-broken-chain = Eintrag { $event } schließt nicht an den vorigen an.
fault-tables = Die Tabellen sind nicht, was das Protokoll ergibt: neu aufbauen.
fault-file = Die Datei ist beschädigt: { $cause }
due-service = Schlauchleitung { $code } ersetzen: { $machine }, { $place }
due-storage = Lange genug gelagert: Schlauchleitung { $code }
due-inspection = Schlauchleitung { $code } prüfen: { $machine }, { $place }

# Wie lange Schlauchleitungen hier halten.
lives-heading = Wie lange Schlauchleitungen hier halten, in Jahren seit dem Einbau, Stand { $on }. Eine, die heil ausgebaut wurde oder noch sitzt, zählt so weit, wie sie beobachtet wurde.
lives-none = Von keiner Schlauchleitung hier ist der Tag des Einbaus bekannt.
lives-not-known = Nicht erfasst, was es ist
lives-left-out = { $count ->
    [one] 1 Aufenthalt ist
   *[other] { $count } Aufenthalte sind
} ausgelassen: Niemand weiß, wann eingebaut wurde, oder die Tage widersprechen sich.
lives-line-pressure = Druckleitungen
lives-line-return = Rücklaufleitungen
lives-line-suction = Saugleitungen
lives-line-case-drain = Leckölleitungen
lives-line-pilot = Steuerleitungen
lives-line-cylinder = Zylinderleitungen
lives-load-half = Bis zur Hälfte dessen gefordert, was sie tragen dürfen
lives-load-three-quarters = Zur Hälfte bis drei Vierteln gefordert
lives-load-full = Zu mehr als drei Vierteln gefordert
lives-load-above = Über dem gefordert, was sie tragen dürfen
lives-ended-before = { $count ->
    [one] 1 Aufenthalt
   *[other] { $count } Aufenthalte
} vor diesem Tag beendet und nicht gezählt.
lives-to-tell = Noch { $more } Ausfälle, { $all } im Ganzen, sagten den Formparameter auf die Hälfte mehr oder weniger genau: ob solche Schlauchleitungen verschleißen.
lives-to-tell-years = Im bisherigen Takt sind das { $years } Jahre.
lives-expected = Nächstes Vierteljahr: { $failures } Ausfälle zu erwarten ({ $low } bis { $high }).
lives-expected-all = Alle zusammen, nächstes Vierteljahr: { $failures } Ausfälle zu erwarten ({ $low } bis { $high }, 95 %).
lives-not-expected = { $count } Schlauchleitungen auf Maschinen sind in keiner Erwartung: Von ihrer Art sind zu wenige ausgefallen.
lives-least-cost = Am wenigsten kostet der Tausch nach { $age } Jahren ({ $low } bis { $high }), wenn ein Ausfall { $ratio } Tausche kostet: { $part } % des Wartens auf Ausfälle. Die Grenze des Herstellers geht vor.
lives-waiting = Warten
lives-waiting-pays = Kein Alter des Tausches kostet weniger als Warten, wenn ein Ausfall { $ratio } Tausche kostet: Die Geschichte zeigt nicht, dass sie verschleißen. Die Grenze des Herstellers geht dennoch vor.
lives-places = Stellen mit mehr Ausfällen als erwartet, von { $count } betrachteten:
lives-place-seen = { $seen } statt { $expected }
lives-place-stands-out = fällt auf
lives-place-chance = kann Zufall sein
lives-few = Zu wenige für eine Aussage
lives-title = Wie lange Schlauchleitungen hier halten
lives-years = Jahre
lives-next = Nächstes Vierteljahr, zu erwartende Ausfälle
lives-least = Alter der geringsten Kosten in Jahren, ein Ausfall kostet { $ratio } Tausche
lives-limits = Starke Linie: der Anteil, der noch hält. Gestrichelte Linien: seine 95-%-Grenzen, jede für ihr Jahr allein. Dünne Linie: Weibull-Anpassung. Es beschreibt diese Maschinen und verspricht nichts für die nächste Schlauchleitung; Grenze des Herstellers und Richtwert gehen vor. Unter vielen Stellen sind manche nur durch Zufall schlecht.
sheet-asks-days = Für { $column } sagen, ob Tag oder Monat vorn steht: Die Tage sind auf beide Arten lesbar.
sheet-asks-unit = Die Einheit von { $column } sagen: Weder Überschrift noch Zellen sagen sie.
