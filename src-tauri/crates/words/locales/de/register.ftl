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
