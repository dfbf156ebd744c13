# Words on labels and sheets of paper. Labels are small: keep these short.
label-pressure = { $pressure } máx.
label-pressure-unknown = presión desconocida
label-non-conductive = NO CONDUCTORA
label-flame-resistant = RESISTENTE A LLAMA
label-antistatic = ANTIESTÁTICA
label-length = longitud { $length }
label-length-and-turn = longitud { $length }, giro { $turn }°
label-made = hecha { $date }
label-adapter = adaptador: { $name }
label-male = macho
label-female = hembra
label-reprint = REIMPRESA
label-catalogue = tablas { $version }
label-caution = Primero, las instrucciones del fabricante.

sheet-page = { $page } de { $pages }
sheet-caution = Precaución
