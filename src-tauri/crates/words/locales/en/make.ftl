# The build sheet: what is done at each step, and how to get what is missing.

# Before anything is loosened
step-plan = Know the fluid, the way to hospital and what hangs overhead.
step-lower-load = Lower or prop the load.
step-lock-out = Stop the engine, lock it out, keep the key.
step-release-pressure = Release the pressure, drain accumulators, prove it gone.
step-mark-lines = Photograph the routing and mark twin lines.
step-loosen = Loosen slowly, catch the oil, cap the ports.
step-if-injected = If fluid may have gone under the skin: hospital at once.

# Making
step-fetch-parts = Fetch hose, ends, ferrules and sleeves; all new.
step-cut = Cut square to the cut length.
step-clean-bore = Clean the bore.
step-skive = Skive the end as its supplier says.
step-mark-insertion = Mark the insertion depth on the cover.
step-push-on = Put the ferrule on, lubricate as the supplier says, push the end on to the mark.
step-crimp = Crimp with the supplier's die set to the supplier's diameter.
step-fine-instrument = Take a micrometer: a caliper that may be off by 0.1 mm is too coarse for this crimp tolerance.
step-measure-crimp = Measure the crimp on the flats between the ridges, in several directions, at three places along the ferrule.
step-sleeves = Slide sleeves and guards on now, before the second end.
step-set-turn = Set the turn: from A to B with A's elbow up, clockwise to B's elbow.
step-mark-not-moved = Look: the insertion marks have not moved.
step-bore-gauge = Pass the bore gauge through both ends.
step-nuts-free = Turn the nuts: they run free.
step-measure-length = Measure the finished length from sealing point to sealing point.
step-measure-turn = Measure the turn.
step-flush-and-cap = Flush it both ways and cap both ends.

# Proving
step-connect-rig = Connect the rig with sound, rated fittings; restrain both ends.
step-bleed-rig = Bleed all air.
step-close-guard = Close the guard and step back.
step-raise-pressure = Raise the pressure slowly to proof.
step-hold-pressure = Hold it; read the gauge from outside.
step-release-and-look = Release all pressure, then look for leaks and movement.
step-no-rig = No rig: write "not proved: no rig" on the record and the tag.

# Marking
step-mark-ferrule = Mark the ferrule for good: assembler, working pressure, year and month.
step-label = Put the tag on.

# Fitting
step-match-lines = Match the lines to their marks.
step-new-seals = Clean the seats and fit new seals.
step-tighten = Tighten by the maker's figure, with a second spanner against twist.
step-tighten-flange = Draw the flange screws down crosswise by the maker's figure.
step-lay-straight = Lay it without twist, layline straight; set clamps, guards and sleeves back.
step-bleed-and-fill = Bleed, fill up, start without load.
step-first-run = Run it with people kept out.
step-leak-check = Look for leaks with a card, never with a hand.
step-clean-up = Wipe up the oil.
step-log-hours = Note the machine's hours.

# What only the user's own supplier can give
missing-cutoff = Cut-off: from your supplier's table, or measure a new end from sealing point to hose stop.
missing-length-tolerance = Length tolerance: the practice gives none for this size and length; agree one.
missing-insertion = Insertion depth: from your supplier's table, or measure the ferrule's depth.
missing-skive = Skive: from your supplier's table, whether cover or tube is taken off and how far.
missing-ferrule = Ferrule: the one your supplier releases for this hose and end.
missing-lubricant = Lubricant: what your supplier allows for this hose.
missing-die-set = Die set: from your supplier's crimp table for your press.
missing-crimp-diameter = Crimp diameter: from your supplier's crimp table, never from another maker's.
missing-crimp-tolerance = Crimp tolerance: from your supplier's crimp table.
missing-torque = Torque: from the machine's manual or your supplier; the tables have none for this end.

# How clean it has to be
asks-clean-after-cutting = After the cut: flush it or shoot a projectile through, then cap.
asks-cleanliness-general = For general industrial systems: { $code } { $asks }.
asks-cleanliness-servo = For servo or proportional systems: { $code } { $asks }.
asks-cleanliness-sampling = How the cleanliness is sampled: { $asks }.
