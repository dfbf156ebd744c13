# Words of looking at hoses in place: signs, and the walk of a machine.

signs-what = ¿Qué se ve? Mirar, no palpar.
signs-nothing = Nada mal
signs-group-cover = Cubierta
signs-group-shape = Forma
signs-group-end = Terminales
signs-group-leak = Fuga
signs-group-routing = Cómo está puesta
signs-group-marking = Marcado
signs-group-other = Otra cosa
signs-count = { $count ->
    [one] { $shown } visto
   *[other] { $shown } vistos
  }
signs-stops = Para la máquina hasta sustituirla.
signs-within = { $days ->
    [1] Vence en un día.
   *[other] Vence en { $days } días.
  }
signs-grade = ¿Cómo de grave es aquí?
signs-leak-word = SIN MANOS
signs-leak = Nunca palpar una fuga. Buscarla de lejos o con un cartón, nunca con la mano; tocarla solo con la carga abajo, el motor parado y sin presión. El fluido bajo la piel es una urgencia quirúrgica aunque parezca poco.
found-stops = { $machine } queda parada por esto.
found-stays = { $machine } sigue parada, se vea lo que se vea ahora. Desmontar la manguera o tachar en su página lo que se vio por error.
found-due = Vence { $day }.
found-nothing = Nada encontrado: no se mueve ninguna fecha.
off-title = Desmontada
off-note = sin una nueva
off-day = Fecha del desmontaje
off-picked = esta
mistake-title = Montada por error
mistake-note = nunca estuvo ahí
mistake-how = Su montaje se tacha: la manguera vuelve a estar en la mano y en el lugar no consta ninguna. El historial conserva lo tachado y por qué. Una lectura del contador hecha con él se queda.
mistake-how-both = Su montaje se tacha, y también que { $code } se desmontó para ella: { $code } vuelve a estar ahí y esta manguera, en la mano. El historial conserva lo tachado y por qué. Una lectura del contador hecha con él se queda.
mistake-do = Tacharlo
seen-mistake-title = Visto por error
seen-mistake-note = { $day } · { $what }
seen-mistake-nothing = nada mal
seen-mistake-how = La inspección se tacha y ya no cuenta: lo que paró puede volver a funcionar y lo que movió vence como antes. El registro la conserva, con el motivo.
machines-stopped = PARADA
machines-stopped-how = Algo de esta máquina no debe seguir en marcha. Sigue parada hasta corregir todo esto: desmontar la manguera, tachar la inspección en la página de su manguera o cambiar la regla o lo que exige el sitio.
machines-stopped-rule = Fuera del límite propio, que obliga a parar
hose-stopped-how = Esta manguera no debe seguir en marcha.
machines-stopped-seen = visto { $day } · { $code }

## The walk
survey-title = Recorrido
survey-note = cada sitio, sin desmontar nada
survey-label = Sitios
survey-of = { $at }/{ $of }
survey-safe-word = PRIMERO
survey-safe = Carga abajo, motor parado y bloqueado, sin presión y comprobado. Mirar; nunca palpar una fuga con la mano.
survey-how = Un sitio tras otro. Lo que no se ve queda sin abrir y no se adivina; no llegar también es una respuesta.
survey-begin = Empezar
survey-go-on = Seguir
survey-next = sitio { $number }, { $name }
survey-keep = Guardar
survey-last-one = era el último sitio
survey-done = Volver a la máquina
survey-before = Anterior
survey-skip = Dejar para luego
survey-question = ¿Qué hay?
survey-found-not-opened = Hay manguera
survey-found-no-hose = No hay
survey-found-not-reached = No se llega
survey-no-record = Aquí no consta nada
survey-last = { $found ->
    [opened] { $day }: abierta
    [not-opened] { $day }: mirada, sin abrir
    [no-hose] { $day }: sin manguera
   *[not-reached] { $day }: no se llegó
  }
survey-never = aún sin mirar
survey-today = hoy
survey-tally = { $looked } miradas · { $reached } sin llegar · { $empty } sin manguera · { $left } por mirar
survey-read = Lo que se lee tal como está
survey-read-how = No se afloja nada. La manguera queda sin abrir y lo no leído queda abierto.
survey-print = Impresión de la cubierta
survey-print-hint = tal cual; ? por letra gastada
survey-cover = Ø sobre la cubierta
survey-cover-how = En un tramo recto, lejos de casquillos y curvas.
survey-hex-a = Hexágono en A
survey-hex-b = Hexágono en B
survey-hex-how = Entre caras de la tuerca, con el pie de rey. No girarla.
survey-not-opened = SIN ABRIR
survey-likely = Leído hasta ahora: { $what }. Nada queda resuelto hasta desmontarla.
survey-gone = Aquí consta { $code }. Si ya no está, abrir el sitio y darla de baja con su causa.
survey-words = Con palabras propias

## What a failure would do
stakes-title = Qué causa un fallo aquí
stakes-how = Decide qué va primero cuando lo que vence se ordena por riesgo.
stakes-what = Qué hay al lado
stakes-none = Nada de esto
stakes-not-said = nadie lo dijo aún
stakes-said = { $count ->
    [0] nada de la tabla
    [one] { $count } indicación
   *[other] { $count } indicaciones
  }
stakes-as-machine = Como la máquina
stakes-consequence = Consecuencia, de 1 a 5
stakes-by-table = Según la tabla
stakes-consequence-how = La propia prevalece sobre la tabla: 1 una molestia, 5 alguien puede resultar herido.
hose-clocks = Tres relojes
hose-clock-made = Manguera fabricada
hose-clock-assembled = Ensamblada
hose-clock-fitted = Montada
hose-clock-since = { $found ->
    [yes] hallada allí { $day }
   *[no] { $day }
  }
hose-did-surveyed = Mirada en su sitio { $day }
visits-sheet = Guardar la hoja de ronda
visits-sheet-note = PDF, con etiquetas
