# Words that every way in shares.
verdict-pass = APTO
verdict-caution = PRECAUCIÓN
verdict-stop = PARAR
verdict-unsettled = SIN RESOLVER
unverified = sin verificar
yours = propio

# Forms of ends
form-elbow = codo { $angle }°
form-straight = recto
form-compact90 = codo compacto 90°
form-standpipe = espiga lisa
form-banjo = banjo

# What a figure rests on
basis-published = publicado
basis-derived = calculado con datos publicados
basis-reference-library = calculado por una biblioteca de referencia
basis-common-practice = práctica común
basis-memory = de memoria, sin verificar
basis-lower-of-two = el menor de dos datos impresos
basis-bounded = acotado con datos impresos de tamaños vecinos
basis-proxy = dato de otro terminal, no de este
basis-none = desconocido
basis-yours = propio

# Ends and covers
gender-male = macho
gender-female = hembra
cover-plain = cubierta normal
cover-non-conductive = cubierta no conductora
cover-flame-resistant = cubierta resistente a la llama
cover-antistatic = cubierta antiestática

# Cómo salió una prueba, también en las etiquetas: textos cortos.
label-proved = probada { $pressure }
label-not-proved = NO PROBADA
label-no-rig = NO PROBADA: sin banco
