# Words of scanning a tag.
scan-title = Escanear una etiqueta
scan-job-open = abierto
scan-drawing = Una etiqueta aún no vista: su código a la izquierda, sus palabras a la derecha

## Ways in
scan-how = Sostener la etiqueta de frente y cerca, que su código llene un tercio de la imagen.
scan-photo = Fotografiar la etiqueta
scan-photo-then = abre la manguera a la que pertenece
scan-choose = Elegir una imagen
scan-live = Cámara en vivo
scan-live-note = lee sola
scan-type = Escribir el código
scan-type-then = 10 letras y una letra de control
scan-again = Escanear otra vez
scan-measure = Medir
scan-measure-then = pie de rey, peine de roscas, cinta
scan-close-camera = Cerrar la cámara
scan-looking = Buscando un código. Sostener la etiqueta de frente y cerca.
scan-reading = Leyendo la imagen.
scan-camera = Cámara en vivo
scan-camera-refused = Fue denegada. Permitir la cámara a este programa en los ajustes del teléfono; una foto funciona sin ello.
scan-camera-absent = Aquí no hay ninguna para este programa. Una foto funciona sin ella.
scan-picture = La imagen que se leyó

## Typing
scan-type-title = Escribir las letras junto al código
scan-type-head = Letras junto al código
scan-type-leave = por imagen
scan-missing = Por escribir: { $shown }. No se usan las letras I, L, O ni U.
scan-wrong = NO ES CORRECTO
scan-use = Usar { $code }
scan-use-compare = { $where }. Comparar antes { $what } con la manguera.
scan-fits = { $count ->
    [one] Encaja { $shown } manguera de aquí.
   *[other] Encajan { $shown } mangueras de aquí. Seguir escribiendo.
  }
scan-not-fitted = en ninguna máquina

## What came of it
scan-failed = SIN HACER
scan-not-read = SIN LEER
scan-no-code = No se puede leer ningún código en esta imagen.
scan-instead = O tomarla otra vez: más cerca, de frente, enfocada, sin reflejos.
scan-no-tag = NO ES ETIQUETA DE MANGUERA
scan-says = El código dice:
scan-code-alone = La etiqueta lleva solo su código { $code }. Qué es la manguera está en el registro del furgón que la etiquetó, y en palabras en la etiqueta.
scan-merge = Traer registros
scan-which = Varias etiquetas. ¿Qué manguera?
scan-is-own = DE LA FLOTA PROPIA
scan-is-partner = DE UN SOCIO
scan-is-foreign = DE UN DESCONOCIDO
scan-is-unsealed = SIN SELLO
scan-is-code-alone = SOLO CÓDIGO
scan-is-altered = ALTERADA
scan-is-newer = MÁS NUEVA QUE ESTE PROGRAMA
scan-is-withdrawn = ANULADA
scan-is-failed = NO SUPERÓ LA PRUEBA
scan-is-elsewhere = MONTADA EN OTRO SITIO
scan-is-other-spec = OTRA MANGUERA
scan-is-undone = ANULADA
scan-is-failed-in-use = YA FALLÓ
scan-is-contradicted = SIN RESOLVER
scan-is-other-seal = SELLO AJENO
scan-is-higher = DICE DE MÁS
scan-carried-note = Leído de la etiqueta, sin revisar aquí. Compararlo con la manguera en mano.
scan-open = Abrir { $code }
scan-open-then = la manguera del registro
scan-open-stop-then = lo que consta; no montar esta manguera por su etiqueta
scan-keep = Guardarla aquí
scan-make = Hacer una igual
scan-make-then = antes se revisa aquí, nada se da por supuesto

## What a tag carries
scan-carried-drawing = La manguera como dice su etiqueta: { $what }
scan-not-carried = no está en la etiqueta
scan-fact-hose = Manguera
scan-fact-a = Terminal A
scan-fact-b = Terminal B
scan-fact-length = Longitud
scan-fact-turn = Giro
scan-fact-pressure = Presión máx.
scan-fact-proof = Prueba
scan-fact-fluid = Fluido
scan-fact-assembled = Ensamblada

## What was scanned
scan-log = Lecturas en este dispositivo
scan-log-count = Lecturas
scan-log-none = En este dispositivo aún no se escaneó nada.
scan-log-no-code = no se pudo leer ningún código
scan-log-row = { $standing }, { $way ->
    [typed] escrito
   *[picture] de una imagen
}
