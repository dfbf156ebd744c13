# Words of one place and one hose.

## Place
place-label = Sitio
place-machine = Máquina
place-machine-note = todos sus sitios
place-sits = Montada ahí
place-empty = Aquí no hay ahora ninguna manguera.
place-never = Aquí no consta ninguna manguera.
place-asks = Pide { $what }.
place-two-hoses = Aquí constan montadas dos mangueras. Mirar cuál lo está, y quitar la otra del registro.
place-hose-unsettled = El registro de esta manguera se contradice. Abrirlo y decir qué versión vale.
place-unsettled = el registro está sin resolver
place-times = { $count ->
    [one] una vez
    [2] dos veces
   *[other] { $shown } veces
}
place-cause-times = { $cause } { $times }
place-failed = FALLÓ { $count ->
    [one] UNA VEZ
    [2] DOS VECES
   *[other] { $shown } VECES
}
hose-place-failed = EN SU LUGAR { $count ->
    [one] FALLÓ 1
   *[other] FALLARON { $shown }
}
place-failed-why = En este sitio: { $causes }. Mirar por qué antes de montar lo mismo.
place-failed-once = Falló una vez aquí: { $causes }.
place-lives = Mangueras de este sitio
place-months = meses aguantados
place-life = desde { $from }, { $months } meses, { $end }
place-life-unknown = no se sabe desde cuándo, { $end }
place-came-off = desmontada
place-stay-failed = falló: { $cause }
place-still-on = sigue montada
place-is-there = Hay una manguera montada
place-is-there-note = ponerla en el registro
place-on-record = La manguera montada
place-on-record-how = Lo que se sabe de ella: su tipo y ambos terminales. Leer su impresión, medir sus terminales; no suponer. Se guarda como hecha en otro lugar, no probada y sin revisar aquí, con un código nuevo.
place-on-record-fitted = Montada el; en blanco: no se sabe
place-on-record-assembled = Ensamblada el, según su casquillo; en blanco: no se sabe
place-on-record-days = Una manguera sin fecha conocida consta como hallada hoy, y su edad nunca cuenta como joven.
place-over = Se le exige demasiado
place-within = Nada de lo sabido le exige demasiado.
place-open = No se sabe con seguridad: { $what }.
place-replace = Hacer su sustituta
place-replace-then = a la revisión: a esta se le exige demasiado
place-far-out = Más de { $most }: ahí acaban las líneas hidráulicas (práctica común). Leerlo otra vez.
place-service = Lo que exige a una manguera
place-service-more = frío, aire, caudal, curva, vacío, exigencias
place-service-recorded = { $name }, registrado
place-service-recorded-how = Registrado: de su circuito o de la manguera que está o estuvo aquí. El próximo trabajo empieza con ello.
place-keep = Guardarlo
place-go-on = Seguir con el trabajo empezado aquí
place-go-on-then = en { $step }
place-another = Empezar otro
place-another-note = el empezado aquí se queda
place-why-note = decirlo mientras la vieja está a la vista
place-why-then = va hasta el montaje
place-same = Igual por igual
place-same-then = { $what }, a la revisión
place-same-failed = falló { $times } aquí
place-measure = Medirla
place-measure-note = la manguera vieja, terminal a terminal
place-measure-then = la misma falló aquí más de una vez
place-no-spec = no consta qué hay montado aquí
place-fit-here = Montar una aquí
place-fit-here-then = medir lo que admite el sitio
place-scan = Escanear una etiqueta
place-scan-note = una manguera ya hecha

## Age
hose-years = años
hose-at-least = { $years } o más
hose-limit-guide = Orientativo: { $count ->
    [one] { $years } año
   *[other] { $years } años
}.
hose-limit-policy = Límite del dueño: { $count ->
    [one] { $years } año
   *[other] { $years } años
}.
hose-age-unknown = No se conoce fecha desde la que contar.
hose-age-found = Hallada montada el { $day }; nadie sabe cuándo se hizo. Mirar el casquillo y la impresión.
hose-age = Edad

## Hose
hose-title = Manguera
hose-bar-max = bar máx.
hose-drawing = El conjunto: terminal A a la izquierda, terminal B a la derecha, longitud total entre los puntos de sellado
hose-what = Manguera
hose-end = Terminal { $end }
hose-rating = Presión
hose-rating-not-known = desconocida: una pieza no tiene presión asignada
hose-proof = Prueba
hose-assembled = Ensamblada
hose-hose-made = Fecha impresa
hose-check = Revisión
hose-not-checked = sin revisar aquí
hose-not-known = desconocido
hose-some-place = un sitio que aquí no consta
hose-status-made = aún sin montar
hose-status-fitted = montada
hose-status-taken-off = desmontada
hose-status-withdrawn = etiqueta anulada
hose-status-failed-proof = no superó la prueba
hose-stays = Dónde estuvo antes
hose-sits = Dónde está
hose-at = { $machine }, sitio { $number }
hose-fit = Montarla
hose-fit-then = elegir la máquina y el sitio
hose-again = Hacer una igual
hose-again-then = igual por igual, a la revisión
hose-not-arrived = Aquí aún no consta cómo se hizo. Traer los registros del furgón que la hizo.
hose-unknown = DESCONOCIDA AQUÍ
hose-unknown-what = Leer otra vez las letras de la etiqueta. Si están bien, la etiqueta es de otro furgón: escanearla, pues la propia etiqueta dice qué es la manguera, o traer los registros de ese furgón.
hose-scan = Escanear la etiqueta
hose-scan-then = o escribir otra vez sus letras

## Notes and history
hose-notes = Notas
hose-note-label = Una nota sobre esta manguera
hose-note-add = Guardar la nota
hose-history = En el registro
hose-unnamed = un dispositivo sin nombre
hose-voided = Tachado:
hose-did-made = Puesta en el registro
hose-did-assembled = ensamblada { $day }
hose-did-fitted = Montada { $day }: { $place }
hose-did-found = Hallada ahí { $day }: { $place }
hose-did-off = Desmontada { $day }: { $place }
hose-did-inspected = Inspeccionada { $day }
hose-did-overridden = Asumido contra la revisión: { $reason }
hose-did-photo = Se añadió una foto
hose-did-withdrawn = Etiqueta anulada: { $reason }
hose-did-noted = Nota: { $text }
hose-did-voided = Tachado: { $reason }

## Looking at it in place
hose-inspect = Inspeccionada
hose-inspect-last = última { $day }
hose-inspect-never = aún no consta
hose-inspect-day = Fecha
hose-inspect-words = Con palabras propias
hose-inspect-who = Se guarda como escrito por este dispositivo: { $device }.
hose-grade-pass = nada encontrado
hose-grade-caution = vigilar
hose-grade-stop = sustituir
hose-found = { $what }, { $grade }

## What contradicts itself
hose-conflict = Dos dispositivos lo escribieron distinto. Mirar la manguera, luego decir cuál vale.
hose-this-stands = Vale este

## Withdrawing a tag
hose-withdraw = Anular su etiqueta
hose-withdraw-note = perdida, duplicada
hose-withdraw-how = El código deja de valer y no se puede montar. Lo que consta en el registro se queda.
hose-withdraw-why = Por qué
hose-withdraw-words = Con palabras propias
hose-withdraw-do = Anular la etiqueta
hose-failed-proof = NO SUPERÓ LA PRUEBA
hose-failed-proof-why = Desecho. Nunca se etiquetó y nunca se monta.
hose-did-labelled = Etiqueta hecha
hose-did-label-seen = Etiqueta vista en ella
hose-tag-read = Etiqueta leída.
hose-papers = Papeles
hose-papers-note = certificado, informe
hose-withdrawn = ANULADA
hose-withdrawn-why = { $reason }. No montarla con esta etiqueta.
hose-reason-lost = Etiqueta perdida
hose-reason-doubled = Código en dos mangueras
hose-reason-scrap = Manguera desechada
