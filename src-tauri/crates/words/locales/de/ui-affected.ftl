# Wörter der Liste der Schlauchleitungen, die auf geänderten Zeilen beruhen.

affected-title = Geänderte Tabellen
affected-note = nach alten Zeilen geprüft
affected-label = Leitungen
affected-catalogue = Tabellen { $version }
affected-what = Diese Zeilen sind geändert, seit Schlauchleitungen nach ihnen geprüft wurden. Eine solche neu prüfen, bevor die nächste so gefertigt wird.
affected-changed = seither geändert
affected-gone = nicht mehr in den Tabellen
affected-not-known = von einem älteren Programm geprüft, das keine Zeilen festhielt
affected-hoses = { $count ->
    [one] Schlauchleitung
   *[other] Schlauchleitungen
  }
affected-checked-by = { $code } · geprüft nach { $version }
affected-more = { $shown } von { $count } sind gezeigt.
affected-none-word = KEINE
affected-none = { $count ->
    [0] Keine erfasste Schlauchleitung wurde nach den Tabellen geprüft.
    [one] Die Zeilen, auf denen { $shown } Schlauchleitung beruht, sind wie sie waren.
   *[other] Die Zeilen, auf denen { $shown } Schlauchleitungen beruhen, sind wie sie waren.
  }
affected-unknown = { $count ->
    [one] Von { $shown } Schlauchleitung weiß niemand, auf welchen Zeilen sie beruht: neu prüfen.
   *[other] Von { $shown } Schlauchleitungen weiß niemand, auf welchen Zeilen sie beruhen: neu prüfen.
  }
affected-table-not-known = Zeilen nicht bekannt
affected-table-hoses = Schläuche
affected-table-hose_types = Schlauchtypen
affected-table-ends = Armaturen
affected-table-flanges = Flansche
affected-table-hose_end_ratings = Drücke der Armaturen
affected-table-fluids = Fluide
