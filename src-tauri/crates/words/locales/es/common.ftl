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
