# Das Register.
fault-unreadable = Eintrag { $event } ist nicht lesbar.
fault-changed = Eintrag { $event } ist nicht, was geschrieben wurde: Etwas hat ihn verändert.
fault-broken-chain = Eintrag { $event } schließt nicht an den vorigen an.
fault-tables = Die Tabellen sind nicht, was das Protokoll ergibt: neu aufbauen.
fault-file = Die Datei ist beschädigt: { $cause }
due-service = Schlauchleitung { $code } ersetzen: { $machine }, { $place }
due-storage = Lange genug gelagert: Schlauchleitung { $code }
due-inspection = Schlauchleitung { $code } prüfen: { $machine }, { $place }
due-overdue = Überfällig seit { $day }: { $what }

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
lives-place = Stelle
lives-place-failures = Ausfälle
lives-place-times = Vielfaches
lives-place-verdict = Urteil
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

# Was eine Datei, ein Datenträger oder ein anderes Programm dem Register antut.
register-is-none = { $path } ist kein Register; die Datei eines Registers wählen, oder einen neuen Namen, um eines zu beginnen
register-is-newer = { $path } wurde von einem neueren Programm geschrieben (Schema { $found }, dieses Programm kennt { $known }) und blieb, wie es ist: dieses Programm aktualisieren
register-is-in-use = ein anderes Programm benutzt das Register; es schließen oder abwarten, bis es fertig ist, und noch einmal versuchen
register-disk-full = der Datenträger ist voll und nichts wurde geschrieben; Platz schaffen und noch einmal versuchen
register-disk-fails = der Datenträger versagt beim Lesen oder Schreiben des Registers; es wurde nichts mehr geschrieben: die letzte Datensicherung auf ein anderes Gerät bringen und dort wiederherstellen
register-read-only = das Register kann nicht beschrieben werden; die Rechte der Datei und ihres Ordners prüfen
register-can-not-open = { $path } lässt sich nicht öffnen; prüfen, ob der Ordner da ist und beschrieben werden darf
register-keys-unusable = die Schlüsseldatei { $path } ist nicht brauchbar ({ $cause }); ihre Rechte prüfen, oder sie wegnehmen und der Flotte neu beitreten
register-damaged = die Datei des Registers ist beschädigt und blieb, wie sie ist; die letzte Datensicherung wiederherstellen: an ihrem Platz in der App (Wagen, Datensicherung), unter neuem Namen auf der Befehlszeile
register-exists = { $path } ist schon da und wird nicht überschrieben; einen neuen Namen angeben
register-log-left = { $path } enthält Einträge eines Registers, das vorher hier war oder in Gebrauch ist; schließen, was es benutzt, und die Datei wegbringen, oder einen neuen Namen angeben
register-backup-damaged = die Datensicherung { $path } hält der Prüfung nicht stand ({ $faults } Fehler) und blieb, wie sie ist: eine ältere wiederherstellen
backups-no-such = neben diesem Register gibt es keine Datensicherung „{ $name }“; eine aus der Liste wählen
backups-none = Neben diesem Register liegt noch keine Datensicherung.
backups-folder = In { $folder }, jede durch Wiederherstellen geprüft:
backups-late = Die neueste ist drei Tage alt oder älter, oder aus der Zukunft: nachsehen, ob der Datenträger voll ist und die Uhr stimmt, und das Register prüfen.
register-reader = dieses Gerät ist Leser in seiner Flotte und schreibt nichts; ein Planer der Flotte kann es zum Techniker machen
register-planners-only = das tut nur ein Planer der Flotte; auf dem Gerät eines Planers tun lassen
register-device-gone = dieses Gerät ist von seiner Flotte abgemeldet: was es schreibt, zählt nicht mehr; sichern und die Sicherung wiederherstellen, die als neues Gerät weitergeht, und dieses zulassen lassen
register-senior = jenes Gerät war vor diesem Planer, und nur wer vor ihm war, urteilt über es; ist das Gerät des Gründers verloren, die Flotte neu gründen
register-open-fleet = diese Flotte ist offen: sie hat noch keinen Gründer, dessen Wort über ihre Mitglieder zählte; erst begründen
register-word-stays = ein Wort darüber, wer zur Flotte gehört, wird nicht gestrichen; dem Gerät eine andere Rolle geben, es zulassen oder abmelden
