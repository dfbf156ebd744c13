# The build sheet as a paper.
sheet-title = Build sheet
sheet-parts = Parts
sheet-hose = Hose
sheet-end = End { $end }
sheet-end-a = End A
sheet-end-b = End B
sheet-adapter = Adapter
sheet-drop = drop { $drop }
sheet-lengths = Lengths, turn and proof
sheet-cut-length = Cut the hose to
sheet-aim = Aim for the cut
sheet-cutoff = Cut-off { $end } (yours)
sheet-overall = Overall length
sheet-tolerance = Tolerance of the overall length
sheet-turn = Turn
sheet-turn-how = Look along the hose from A to B with A's elbow up; the angle runs clockwise to B's elbow.
sheet-rating = Working pressure of the assembly
sheet-proof = Proof test
sheet-proof-at = { $pressure }, held { $from } to { $to } s, oil or water behind a guard, never air
sheet-settings = Settings (yours, from your supplier)
sheet-insertion = Insertion depth
sheet-ferrule = Ferrule
sheet-lubricant = Lubricant
sheet-die-set = Die set
sheet-crimp = Crimp diameter
sheet-crimp-tolerance = Crimp tolerance
sheet-settings-source = From
sheet-not-known = not known
sheet-missing = To get before the hose is cut
sheet-cautions = Cautions of the check
sheet-steps = Steps
sheet-cleanliness = Cleanliness: as agreed with the machine's owner, or else
sheet-tighten = Tightening, from the tables
sheet-tighten-end = Tightening end { $end }
sheet-tighten-how = The maker's figure comes first. Each row below holds under its own condition alone: take the one that is yours, and never a range or a mean of rows. Where none is yours, ask the maker.
sheet-flats = { $count ->
    [one] { $figure } flat of 60°
   *[other] { $figure } flats of 60°
}
sheet-column-value = Value
sheet-column-condition = Holds for
sheet-column-source = Source
sheet-first = First of all
sheet-maker-first = The instructions of the makers of hose, ends, press and machine, local codes and licensed practice come before this sheet.
sheet-footer = { $program }, tables { $catalogue }
