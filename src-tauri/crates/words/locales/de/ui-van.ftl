# Wörter des Wagens: dieses Gerät, sein Register und was hinein- und hinausgeht.
van-title = Dieser Wagen
van-hoses = Erfasste Leitungen
van-keep = Sichern

## Einheiten, Papier
van-units = Sprache, Einheiten, Papier, Ansicht
van-language = Sprache
van-lengths = Längen zuerst in
van-inch = Zoll
van-pressures = Drücke zuerst in
van-paper = Papier
van-paper-a4 = A4
van-paper-letter = Letter
van-practice = Längentoleranzen
van-din-20066 = DIN 20066
van-american = amerikanisch
van-theme = Ansicht
van-theme-auto = wie das Gerät
van-theme-light = hell
van-theme-dark = dunkel
van-theme-sun = Sonne

## Etiketten
van-labels = Etiketten
van-labels-means = Die vorhandenen Etiketten. Das erste wird zuerst angeboten; hat es für eine Schlauchleitung keinen Platz, wird gesagt, welches der anderen reichen würde.
van-labels-note = { $count ->
    [one] { $first }
    [2] { $first } und noch eines
   *[other] { $first } und { $others } weitere
}
van-labels-first = zuerst angeboten
van-labels-row = { $size } · { $material } · { $dpi } Punkte je Zoll
van-labels-add = Weiteres Etikett
van-label-title = Ein Etikett
van-label-name = Wie es genannt wird
van-label-name-hint = etwa Drahtschild 60 x 40
van-label-face = Die Fläche messen, die bedruckt wird, ohne Träger und ohne den Schwanz, der um den Schlauch geht.
van-label-width = Breite
van-label-height = Höhe
van-label-side-how = Von der Fläche, die bedruckt wird: Breite entlang der Wörter, Höhe quer dazu.
van-label-dpi = Drucker, Punkte je Zoll
van-label-dpi-short = Punkte je Zoll
van-label-dpi-how = Steht in den Papieren des Druckers: 203, 300 oder 600 sind üblich.
van-label-form = Wie es befestigt wird
van-label-form-how = { $form ->
    [flag] Geht um den Schlauch und steht flach davon ab: Eine Kamera sieht alles.
    [wrap] Um den Schlauch geklebt: Je dünner der Schlauch, desto kleiner der Code, den eine Kamera mit einem Blick sieht.
   *[plate] Flach, angebunden oder neben dem Schlauch befestigt: Eine Kamera sieht alles.
}
van-label-material = Aus
van-label-paper-means = Papier hält an einer Maschine nicht: nur für die Werkbank.
van-label-make-first = Zuerst anbieten
van-label-remove = Entfernen
van-label-same-name = Ein anderes eigenes Etikett heißt schon so.

## Messmittel
van-instruments = Messmittel
van-instruments-note = Messschieber, Lehren, Bandmaß, Säge
van-errors = Wie weit sie abweichen
van-errors-note = Standardabweichung. Sie gewichtet jeden Messwert: Zu klein lässt eine falsche Antwort sicher aussehen.
van-caliper = Messschieber
van-caliper-error = Fehler des Messschiebers
van-micrometer = Messschraube
van-micrometer-error = Fehler der Messschraube
van-tape = Bandmaß
van-tape-error = Fehler des Bandmaßes
van-thread-gauge = Gewindelehre
van-seat-gauge = Kegellehre
van-error-how = Aus seinem Kalibrierschein, oder ein Endmaß zehnmal messen.
van-bench = Säge und Manometer
van-kerf = Säge nimmt
van-kerf-how = Wie breit der Sägeschnitt ist: Er zählt auf der Rolle. Einen messen.
van-gauge-months = Manometer kalibrieren alle
van-gauge-months-how = Monate zwischen Kalibrierungen des Manometers, nach eigener Regel.
van-months = { $count ->
    [one] { $count } Monat
   *[other] { $count } Monate
}
van-names = Namen oder Nummern darauf
van-name-hint = keiner
van-keep-names = Namen sichern
van-names-kept = Die Namen sind gesichert.

## Tabellen der Lieferanten
van-suppliers = Lieferantentabellen
van-suppliers-note = Pressdaten, eigene
van-suppliers-means = Pressdaten der eigenen Lieferanten, wie sie sie geben. Sie gelten als eigene, wo immer sie stehen, mit Lieferant und Datei.
van-suppliers-none = Noch ist keine Lieferantentabelle hier.
van-suppliers-all = Alle Lieferanten
van-supplier-rows = { $count ->
    [one] Zeile
   *[other] Zeilen
}
van-supplier-pick = Tabelle einlesen
van-supplier-import = Tabelle eines Lieferanten
van-supplier-look = Suchen nach
van-supplier-look-hint = Schlauch, Armatur, Größe, Hülse
van-supplier-not-found = Keine Zeile hat alle diese Wörter.
van-supplier-more = Mehr Zeilen zeigen
van-supplier-remove-row = Diese Zeile entfernen
van-supplier-remove = Alle von { $supplier } entfernen
van-supplier-remove-means = Alle Zeilen von { $supplier } verlassen dieses Register. Damit gefertigte Schlauchleitungen behalten ihre erfassten Einstellungen.
van-supplier-remove-yes = Entfernen
van-match-rows = { $count ->
    [one] { $shown } Zeile.
   *[other] { $shown } Zeilen.
}
van-match-title = Welche Spalte was ist
van-match-how = Eine Spalte antippen, um zu ändern, wofür sie gilt. Nichts wird übernommen, bevor zu sehen war, was es wäre.
van-match-header = Überschriften stehen in Zeile { $row }
van-match-no-heading = keine Überschrift
van-match-not-read = nicht gelesen
van-match-unit = Einheit von { $column }
van-match-say = Angeben: { $column }
van-match-say-then = oder die Spalte antippen, in der es steht
van-match-fixed = { $column } aller Zeilen
van-match-fixed-hint = oder die Spalte antippen, in der es steht
van-match-try = Versuchen
van-match-try-then = Zeile für Zeile; noch wird nichts übernommen
van-match-take = Übernehmen
van-match-take-then = { $count ->
    [one] { $shown } Zeile, alle oder keine
   *[other] { $shown } Zeilen, alle oder keine
}
van-match-away = Weglegen
van-match-done = Fertig
van-sheet-go-on = Weiter mit { $name }
van-sheet-go-on-note = halb zugeordnet; noch nichts davon übernommen
van-row-enter = Eine Zeile von Hand eingeben
van-row-enter-note = ein Schlauch und ein Ende, wo es keine Tabelle gibt
van-row-go-on = Weiter mit der Zeile
van-row-go-on-note = halb eingegeben
van-row-title = Eine Zeile des Lieferanten
van-row-supplier = Lieferant
van-row-supplier-hint = von wem die Werte sind
van-row-end = Für welches Ende
van-row-any-end = Für jedes Ende der Baureihe
van-row-skive-outer = Schälung der Decke
van-row-skive-inner = Schälung der Seele
van-row-figure-how = So, wie es in der Tabelle Ihres Lieferanten steht, und von nirgends sonst.
van-row-from = von Hand eingegeben, { $day }
van-outcome-would = Es wären:
van-outcome-rest = Ohne die abgelehnten Zeilen:
van-outcome-done = Übernommen:
van-outcome-counts = von { $rows } Zeilen { $new } neu, { $changed } geändert, { $same } schon bekannt.
van-outcome-repeated = In der Tabelle doppelt: Zeilen { $rows }.
van-outcome-left = Weggelassen: Zeilen { $rows }.
van-outcome-refused = { $count ->
    [one] { $rows } Zeile kann nicht übernommen werden
   *[other] { $rows } Zeilen können nicht übernommen werden
}
van-outcome-row = Zeile { $row }
van-outcome-leave = { $count ->
    [one] Diese Zeile weglassen
   *[other] Diese { $shown } Zeilen weglassen
}
van-outcome-leave-note = und den Rest versuchen
van-column-supplier = Lieferant
van-column-standard = Schlauchnorm
van-column-type = Schlauchtyp
van-column-dn = DN
van-column-family = Armaturfamilie
van-column-size = Armaturgröße
van-column-series = Baureihe der Armatur
van-column-ferrule = Presshülse
van-column-insertion = Einstecktiefe
van-column-skive = Außendecke geschält auf
van-column-skive-inner = Seele geschält auf
van-column-lubricant = Schmiermittel
van-column-die-set = Backensatz
van-column-crimp-diameter = Pressmaß
van-column-crimp-tolerance = Pressmaßtoleranz
van-column-cutoff = Abzugsmaß

## Presse
van-press = Presse
van-press-note = Pressungen je Backensatz, Pflege
van-press-means = Wie weit das Mittel jeder Pressung vom Soll lag, Backensatz für Backensatz. Eine Folge auf einer Seite zeigt, dass die Presse wandert, bevor eine Pressung außerhalb liegt.
van-press-none = Noch ist keine Pressung erfasst.
van-press-left-out = { $count ->
    [one] { $shown } Pressung ist in keiner Karte: Backensatz, Soll oder Messwerte wurden nicht aufgeschrieben.
   *[other] { $shown } Pressungen sind in keiner Karte: Backensatz, Soll oder Messwerte wurden nicht aufgeschrieben.
}
van-press-crimps = { $count ->
    [one] { $shown } Pressung
   *[other] { $shown } Pressungen
}
van-press-chart = Backensatz { $die }: wie weit { $count } Pressungen vom Soll lagen, { $low } bis { $high }.
van-press-mean = Mittel { $mean } neben dem Soll
van-press-few = Weniger als acht Pressungen sagen noch nichts über die Presse.
van-press-limits = Gestrichelt: was diese Presse von selbst tut, { $low } bis { $high }.
van-press-steady = Nichts sagt, dass die Presse gewandert ist.
van-press-earlier = { $count ->
    [one] und { $count } Zeichen davor
   *[other] und { $count } Zeichen davor
}
van-press-signal = { $code }, Ende { $end }, { $day }: { $what }

## Pflege der Presse
van-care = Pflege der Presse
van-care-means = Wie es das Buch der Presse sagt; die Abstände sind eigene.
van-care-none = Keine Pflege ist gesetzt. Das Buch der Presse nennt was und wie oft.
van-care-name = Was zu tun ist
van-care-name-hint = etwa Kegel schmieren
van-care-crimps = alle so viele Pressungen
van-care-months = alle so viele Monate
van-care-add = Zur Pflege hinzufügen
van-care-done = Heute gemacht
van-care-remove = Entfernen
van-care-last = zuletzt { $day }
van-care-never = hier nie gemacht
van-care-due = fällig
van-care-due-on = fällig am { $day }
van-care-since = { $count ->
    [one] { $shown } Pressung seither
   *[other] { $shown } Pressungen seither
}
van-care-every-crimps = alle { $count } Pressungen
van-care-every-months = { $count ->
    [one] jeden Monat
   *[other] alle { $count } Monate
}

## Personen
van-people = Personen und dieses Gerät
van-people-note = wer arbeitet, wie andere Wagen diesen nennen
van-working = Wer arbeitet
van-working-now = arbeitet jetzt
van-nobody = Noch hat hier niemand einen Namen.
van-new-person = Weiterer Name
van-add = Namen hinzufügen
van-people-beside = Namen stehen neben dem Protokoll, nicht darin: Es nennt eine Person mit einer Nummer, sodass ein Name gelöscht werden kann und das Protokoll ganz bleibt.
van-erase = Löschen
van-erase-title = { $name } löschen?
van-erase-means = Der Name verschwindet aus diesem Register und aus jedem Wagen, der damit zusammenführt. Was erfasst wurde, bleibt, ohne den Namen. Früher gemachte Datensicherungen und Pakete haben ihn noch. Das lässt sich nicht zurücknehmen.
van-erase-yes = Namen löschen
van-erase-no = Lassen
van-device = Dieses Gerät
van-device-name = Name dieses Geräts
van-device-hint = etwa Wagen 2
van-device-keep = Gerät benennen
van-device-kept = Von jetzt an nennen seine Einträge { $name }.

## Datensicherung
van-backup = Datensicherung
van-backup-go = Daten sichern
van-backup-now = Jetzt sichern
van-backup-then = eine Datei, Register und Fotos
van-backup-none = Von diesem Gerät noch keine Datensicherung.
van-backup-last = zuletzt { $when }
van-backup-title = Letzte Datensicherung
van-backup-says = { $when }: { $where }, { $size }.
van-backup-means = Nicht auf diesem Gerät aufbewahren: mailen, auf einen Stick oder den Rechner im Büro legen.
van-backup-photos = Die unten genannten Datensicherungen enthalten keine Fotos: Diese bleiben auf diesem Gerät neben dem Register. Die Datei von „Jetzt sichern“ hat sie.
van-busy = Arbeitet.
van-restore = Wiederherstellen
van-restore-means = Setzt eine Datensicherung an die Stelle dieses Registers.
van-restore-pick = Datensicherung wählen
van-restore-first = Dieses Register ersetzen?
van-restore-first-means = { $file } tritt mit { $events } Einträgen an die Stelle dieses Registers. Dieses Register bleibt unter anderem Namen daneben erhalten.
van-restore-second = Was wurde seither erfasst?
van-restore-second-means = Alles, was hier nach { $file } erfasst wurde, ist nicht darin und wird nicht gezeigt. Dieses Gerät macht als neues weiter.
van-restore-on = Weiter
van-restore-yes = Wiederherstellen
van-restore-no = Alles lassen, wie es ist
van-restored = WIEDERHERGESTELLT
van-restored-says = { $events } Einträge stehen, einzeln geprüft.
van-kept = Datensicherungen neben dem Register
van-kept-last = Die letzte gute: { $when }. Täglich von selbst gemacht und durch Wiederherstellen geprüft. Geht dieses Gerät verloren, sind sie mit verloren.
van-kept-none = Noch keine. Das Programm macht täglich eine, solange es läuft, und prüft sie durch Wiederherstellen.
van-kept-late = Die neueste ist drei Tage alt oder älter, oder aus der Zukunft. Nachsehen, ob Platz da ist und die Uhr stimmt, und unter „Daten hinein und hinaus“ das Protokoll nachprüfen.
van-kept-restore = { $when } wiederherstellen

## Daten hinein und hinaus
van-records = Daten hinein und hinaus
van-records-note = andere Wagen, Listen, Ausgabe, Nachprüfen
van-vans = Andere Wagen
van-vans-means = Einander Pakete in beliebiger Reihenfolge geben, so oft wie gewünscht: Die Register werden gleich.
van-bundle = Paket für anderen Wagen
van-bundle-note = sichert eine Datei
van-merge = Paket zusammenführen
van-merge-note = Datei wählen
van-merged = { $count ->
    [one] { $shown } Eintrag war neu.
   *[other] { $shown } Einträge waren neu.
  }
van-merged-had = { $count ->
    [one] { $shown } war schon hier.
   *[other] { $shown } waren schon hier.
  }
van-merged-held = { $count ->
    [one] { $shown } wartet auf einen früheren seines Wagens: das neueste Paket jenes Wagens zusammenführen.
   *[other] { $shown } warten auf frühere ihres Wagens: das neueste Paket jenes Wagens zusammenführen.
  }
van-refused-fork = Abgelehnt ab Eintrag { $from } von Gerät { $device }: Zwei Register schreiben unter einem Namen. Jenes Gerät aus seiner eigenen Datensicherung wiederherstellen.
van-refused-chain = Abgelehnt ab Eintrag { $from } von Gerät { $device }: Er schließt nicht an das Vorhandene an. Etwas hat ihn unterwegs verändert.
van-no-conflicts = Nichts widerspricht sich.
van-conflicts = { $count ->
    [one] { $shown } Sache wird auf zwei Arten gesagt. Speicher und Versionen nennt sie; ein Mensch muss sie klären.
   *[other] { $shown } Sachen werden auf zwei Arten gesagt. Speicher und Versionen nennt sie; ein Mensch muss sie klären.
  }
van-list = Eine Liste von Schlauchleitungen
van-list-means = Eine Zeile für jede Schlauchleitung an einer Stelle. Alle Zeilen oder keine; nichts wird übernommen, bevor zu sehen war, was es wäre.
van-list-pick = Liste ansehen
van-list-note = CSV oder XLSX
van-export = Ausgeben
van-csv = Leitungen, CSV
van-xlsx = Leitungen, XLSX
van-zip = Alles, CSV-Tabellen
van-json = Alles, JSON
van-ics = Fälliges, Kalender
van-left = Gesichert: { $where }
van-verify = Protokoll nachprüfen
van-verify-means = Geht jeden Eintrag durch und beweist, dass keiner verändert wurde.
van-verify-go = Nachprüfen
van-verified = { $devices ->
    [one] Alle { $events } Einträge sind, wie sie geschrieben wurden.
   *[other] Alle { $events } Einträge von { $devices } Geräten sind, wie sie geschrieben wurden.
  }
van-verified-not = { $faults } Fehler in { $events } Einträgen.
van-rebuild = Tabellen neu aufbauen
van-rebuild-note = aus dem Protokoll

## Einstellungen, die nicht lesbar sind
van-unreadable = NICHT GELESEN
van-unreadable-says = Gesicherte Einstellungen, die nicht lesbar sind: { $settings }. Für sie gelten die des ersten Tags. Neu setzen.
van-setting-language = Sprache
van-setting-length-unit = Längen
van-setting-pressure-unit = Drücke
van-setting-paper = Papier
van-setting-label-stocks = Etiketten
van-setting-length-practice = Längentoleranzen
van-setting-caliper-error-mm = Fehler des Messschiebers
van-setting-micrometer-error-mm = Fehler der Messschraube
van-setting-tape-error-mm = Fehler des Bandmaßes
van-setting-kerf-mm = was die Säge nimmt
van-setting-gauge-months = Kalibrierung des Manometers
van-setting-press-care = Pflege der Presse
van-setting-instruments = Namen der Messmittel
van-setting-store = Lager
van-setting-offcut-mm = kürzestes Reststück
van-setting-pricing = Preise und Arbeit
van-setting-person = wer arbeitet

## Über
van-about = Speicher und Versionen
van-about-note = Einträge, Tabellen, Programm
van-first = Anleitung des Herstellers, örtliche Vorschriften und zugelassene Fachpraxis gehen vor.
van-about-machines = Maschinen
van-about-hoses = Erfasste Schlauchleitungen
van-about-fitted = davon eingebaut
van-about-events = Einträge im Protokoll
van-about-held = Wartende Einträge
van-about-conflicts = Widersprüche
van-about-size = Größe
van-about-size-none = nach einer Datensicherung bekannt
van-about-device = Dieses Gerät
van-about-program = Programm
van-about-tables = Tabellen
van-about-stays = Das Register ist eine Datei auf diesem Gerät. Nichts verlässt es außer den gesicherten Dateien. Freie Software: Ihre Lizenz liegt bei.
van-report = Fehlerbericht
van-report-means = Versionen, Anzahlen und was der Prüfung nicht standhält, als Datei für die, die das Programm in Ordnung bringen. Keine Namen, Plätze oder Codes stehen darin, und nichts wird gesendet.
van-report-save = Bericht speichern
van-report-left = { $where }, { $size }.

## Was sich widerspricht
van-device-unnamed = Gerät ohne Namen ({ $id })
van-conflict-other = eine Grenze jedes Standorts
van-told = { $kind } ({ $by })
van-kind-device-named = Name des Geräts
van-kind-device-key = Schlüssel des Geräts
van-kind-device-admitted = Zulassung eines Geräts
van-kind-device-withdrawn = Abmeldung eines Geräts
van-kind-site-named = Standort
van-kind-machine-set = Maschine
van-kind-hours-read = Stunden
van-kind-circuit-set = Kreis
van-kind-place-set = Stelle
van-kind-assembly-made = erfasst
van-kind-fitted = eingebaut
van-kind-taken-off = ausgebaut
van-kind-inspected = inspiziert
van-kind-overridden = Grenze verantwortet
van-kind-labelled = Etikett
van-kind-tag-withdrawn = Schild zurückgezogen
van-kind-policy-set = Altersgrenze
van-kind-stock-changed = Bestand
van-kind-photo-added = Foto
van-kind-noted = Notiz

## A list of hoses that is taken in
list-asks-days = Für { $column } sagen: Tag oder Monat vorn?
list-asks-days-then = etwa { $example }; es wird nie geraten
list-asks-unit = Einheit sagen: { $column }
list-asks-unit-then = etwa { $example }; es wird nie geraten
list-days = Tage von { $column }
list-days-day-first = Tag vorn
list-days-month-first = Monat vorn
list-counts = { $rows ->
    [one] { $rowsShown } Zeile
   *[other] { $rowsShown } Zeilen
  }: neu { $machines } Maschinen, { $places } Stellen, { $hoses } Schlauchleitungen
list-filter = Zeilen
list-filter-all = Alle { $count }
list-filter-made = Neu { $count }
list-filter-changed = Ausgebaut { $count }
list-filter-known = Bekannt { $count }
list-filter-refused = Abgelehnt { $count }
list-filter-left-out = Weggelassen { $count }
list-is-made = neu
list-is-changed = ausgebaut
list-is-known = bekannt
list-is-refused = abgelehnt
list-is-left-out = weggelassen
list-more = { $count ->
    [one] { $shown } weitere Zeile zeigen
   *[other] { $shown } weitere Zeilen zeigen
  }
list-working = In Arbeit: { $done } von { $of }
list-reading = Die Liste wird gelesen
list-stop = Anhalten
list-stop-note = dann wird nichts übernommen
list-column-site = Standort
list-column-machine = Maschine
list-column-kind = Maschinenart
list-column-machine-hours = Maschinenstunden jetzt
list-column-place = Nummer der Stelle
list-column-place-name = Name der Stelle
list-column-line = Art der Leitung
list-column-relief-bar = Einstellung der Druckbegrenzung
list-column-working-pressure-bar = Betriebsdruck
list-column-fluid = Medium
list-column-code = Code des Etiketts
list-column-hose = Schlauch, alles in einem
list-column-standard = Schlauchnorm
list-column-type = Schlauchtyp
list-column-dn = Nennweite
list-column-cover = Eigenschaft der Außendecke
list-column-a-family = Familie von Ende A
list-column-a-size = Größe von Ende A
list-column-a-gender = Außen- oder Innengewinde, Ende A
list-column-a-form = Form von Ende A
list-column-b-family = Familie von Ende B
list-column-b-size = Größe von Ende B
list-column-b-gender = Außen- oder Innengewinde, Ende B
list-column-b-form = Form von Ende B
list-column-length-mm = Gesamtlänge
list-column-turn-deg = Verdrehwinkel
list-column-hose-made = Herstelltag des Schlauchs
list-column-assembled = Tag der Fertigung
list-column-fitted = Tag des Einbaus
list-column-fitted-hours = Stunden beim Einbau
list-column-removed = Tag des Ausbaus
list-column-removed-hours = Stunden beim Ausbau
list-column-cause = Ausfallursache
list-column-note = Bemerkung
