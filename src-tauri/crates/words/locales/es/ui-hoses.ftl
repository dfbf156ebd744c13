# Words of the table of all hoses.

hoses-title = Todas las mangueras
hoses-note = tabla, filtro, etiquetas
hoses-label = Mangueras listadas
hoses-table = Mangueras
hoses-chosen = Elegidas
hoses-choose = Elegir { $code }
hoses-machine = Máquina
hoses-place = Sitio
hoses-hose = Manguera
hoses-age = Edad
hoses-failures = Fallos
hoses-due = Vence
hoses-fitted = Montada
hoses-grade = Última inspección
hoses-none = El filtro no deja ninguna manguera.
hoses-age-unknown = edad desconocida
hoses-due-of-service = vida útil
hoses-due-of-storage = almacenamiento
hoses-due-of-inspection = inspección
hoses-due-of-finding = lo visto
hoses-due-of-asked = exigida de más
hoses-due-unknown = se desconoce
hoses-due-past = { $days ->
    [0] hoy
    [one] { $shown } día de más
   *[other] { $shown } días de más
  }
hoses-filter = Buscar y filtrar
hoses-search-hint = Etiqueta, máquina, sitio, tamaño
hoses-state = Estado
hoses-state-fitted = Montada
hoses-state-made = Hecha, sin montar
hoses-state-taken-off = Desmontada
hoses-state-failed-proof = No pasó la prueba
hoses-state-withdrawn = Retirada
hoses-is-past = Fuera de plazo
hoses-is-not-past = En plazo
hoses-open = Abrir esta manguera
hoses-open-place = Abrir su sitio

## At a glance
hoses-glance-years = años
hoses-glance-older = { $years } o más
hoses-glance-unknown = sin fecha
hoses-glance-past = vencidas
hoses-glance-days = en { $days } d
hoses-glance-ages = Cuántas mangueras hay de cada edad en años. { $ages }
hoses-glance-due = Cuántas vencen. { $due }
hoses-glance-failed = Fallos
hoses-glance-months = 12 meses

## What is done with the chosen
hoses-chosen-count = { $count ->
    [one] { $shown } manguera elegida
   *[other] { $shown } mangueras elegidas
  }
hoses-more = No se eligen más de { $most } a la vez: son las primeras { $most }.
hoses-labels = Etiquetas de estas
hoses-let-go = Quitar la selección
hoses-batch = { $count ->
    [one] Hacer { $shown } de nuevo
   *[other] Hacer { $shown } de nuevo
  }
hoses-batch-then = al lote, según lo que piden ahora sus sitios
hoses-too-many = A un lote van como mucho { $most } a la vez.
hoses-not-in-batch = { $count ->
    [one] Queda fuera { $shown } manguera: no está en ningún sitio, o nadie sabe qué va allí.
   *[other] Quedan fuera { $shown } mangueras: no están en ningún sitio, o nadie sabe qué va allí.
  }
