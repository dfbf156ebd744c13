# Words of the list of hoses that rested on rows which changed.

affected-title = Tablas que cambiaron
affected-note = comprobadas con filas viejas
affected-label = Mangueras
affected-catalogue = tablas { $version }
affected-what = Estas filas cambiaron desde que se comprobaron mangueras con ellas. Comprobar de nuevo una manguera así antes de hacer otra igual.
affected-changed = cambiada desde entonces
affected-gone = ya no está en las tablas
affected-not-known = comprobadas con un programa anterior que no guardaba filas
affected-hoses = { $count ->
    [one] manguera
   *[other] mangueras
  }
affected-checked-by = { $code } · comprobada con { $version }
affected-more = Se muestran { $shown } de { $count }.
affected-none-word = NINGUNA
affected-none = { $count ->
    [0] Ninguna manguera registrada se comprobó con las tablas.
    [one] Las filas en que se apoya { $shown } manguera siguen como estaban.
   *[other] Las filas en que se apoyan { $shown } mangueras siguen como estaban.
  }
affected-unknown = { $count ->
    [one] De { $shown } manguera nadie sabe en qué filas se apoyó: comprobarla de nuevo.
   *[other] De { $shown } mangueras nadie sabe en qué filas se apoyaron: comprobarlas de nuevo.
  }
affected-table-not-known = Filas desconocidas
affected-table-hoses = Mangueras
affected-table-hose_types = Tipos de manguera
affected-table-ends = Terminales
affected-table-flanges = Bridas
affected-table-hose_end_ratings = Presiones de terminales
affected-table-fluids = Fluidos
