# Words on labels and sheets of paper. Labels are small: keep these short.
label-pressure = { $pressure } max
label-pressure-unknown = pressure not known
label-non-conductive = NON-CONDUCTIVE
label-flame-resistant = FLAME-RESISTANT
label-antistatic = ANTISTATIC
label-length = length { $length }
label-length-and-turn = length { $length }, turn { $turn }°
label-made = made { $date }
label-adapter = adapter: { $name }
label-male = male
label-female = female
label-reprint = REPRINT
label-catalogue = tables { $version }
label-caution = The maker's instructions come first.

sheet-page = { $page } of { $pages }
sheet-caution = Caution
