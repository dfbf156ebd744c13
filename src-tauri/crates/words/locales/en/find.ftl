# How each reading is taken: where the jaws go, and what goes wrong.

how-id_mm = Cut back about 100 mm from the ferrule and measure the bore of the hose with the inside jaws, twice at 90 degrees. A swollen tube reads small; never measure the part squeezed under a ferrule.
how-reinforcement_od_mm = Skin a ring of cover off the cut-back end and close the outside jaws on the bare reinforcement, lightly. It is the surest diameter of a hose; wires flared by a burst read large.
how-cover_od_mm = Close the outside jaws on the cover where it is clean and round, twice at 90 degrees. A cover soaked in oil reads large, an abraded one small.
how-reinforcement = Look at the cut end: wires that cross over and under are a braid, wires that lie side by side are a spiral. Textile is cloth or cord, under rubber or round a plastic tube.
how-layers = Peel the cut end and count the layers of wire or textile one by one.
how-cover = Look at the colour and the print: orange or "non-conductive" carries no current. Near power lines never guess it.
how-print = Wipe the cover and read along the hose; the print repeats. Put ? for a letter that is worn away.

how-kind = Look at the whole end: a loose nut, a thread outside, a stud with a shoulder and its ring, a thread inside a body, an eye, a plain tube, a flange head, half of a coupling, a staple socket, a test point.
how-gender = Thread on the outside is male, thread on the inside (a nut or a port) is female.
how-thread_diameter_mm = Measure the thread on its third turn or further in, twice at 90 degrees. First threads are worn or burred.
how-thread_diameter_mm-male = Close the outside jaws over the crests of the third thread or further in, twice at 90 degrees. Worn threads read small, burrs read large.
how-thread_diameter_mm-female = Open the inside jaws on the crests inside the nut, twice at 90 degrees. Inside jaws read a small nut too small; an overtightened nut has gone out of round.
how-pitch_mm = Lay the thread gauge into the thread, several turns long, and hold it against the light. The right leaf shows no gap anywhere; give its pitch in mm or its threads an inch. Leaves of 1.5 mm and 16 or 17 threads an inch look alike over a few turns.
how-tpi = Lay the thread gauge into the thread, several turns long, and hold it against the light, or count the threads over 1/2 in and double. The right leaf shows no gap anywhere.
how-taper = Lay the jaws flat along the thread: light at one end means taper. Short or worn threads mislead.
how-second_thread_diameter_mm = Read the diameter again five threads nearer the body, and count the threads between. A taper thread changes by a sixteenth of that length, a parallel one not at all.
how-second_thread_diameter_mm-male = Close the outside jaws again five threads nearer the body, and count the threads between. A taper thread is larger there, by a sixteenth of that length.
how-second_thread_diameter_mm-female = Open the inside jaws again five threads deeper, and count the threads between. A taper thread is smaller there, by a sixteenth of that length.
how-threads_apart = Count the threads between the two diameters.
how-flank_angle_deg = Hold the leaf of a 55 and of a 60 degree gauge into the flanks against the light. Five degrees are hard to see: clean the thread first.
how-shoulder = Port: is its mouth cut to a chamfer that takes an O-ring, or is the face flat to the edge? Stud: does the ring lie right behind the thread, or in the flat face of the collar?
how-seal = Look for what seals: an O-ring in a flat face, at the base of the thread or in the cone; a bonded or flat washer; a bare metal cone; or the thread itself. An O-ring may have been lost: look for its groove. A plain flat face seals on the ring in the other half.
how-seat_included_angle_deg = Put the seat gauge on the cone, centred and without rocking. Give the included angle: 37 degrees a side is 74. Some swivels have two seats, or a rounded nose.
how-seat_included_angle_deg-male = Put the seat gauge on the nose, or the plug gauge into the hollow of the male, centred and without rocking. Give the included angle: 37 degrees a side is 74.
how-seat_included_angle_deg-female = Push the nut back and put the gauge to the seat inside, centred and without rocking. Give the included angle: 37 degrees a side is 74. Some swivels have two seats.
how-cone = Look at the seat of the part in your hand: does it stand proud (convex) or is it hollow (concave)?
how-tube_od_mm = Close the outside jaws on the tube or nose behind the cone; on a male open the inside jaws in the bore at the root of the cone. It tells the light from the heavy 24 degree series.
how-tube_od_mm-male = Open the inside jaws in the bore at the root of the cone, where the tube would sit. It tells the light from the heavy 24 degree series.
how-tube_od_mm-female = Close the outside jaws on the tube or nose behind the cone. It tells the light from the heavy 24 degree series.
how-male_bore_mm = Open the inside jaws in the narrowest bore through the male. Makers differ by about 1 mm.
how-swivel_hex_mm = Close the outside jaws across the flats of the swivel nut. It is a weak clue: makers differ, and a rounded nut reads small.
how-head_od_mm = Close the outside jaws over the round flange head, not over the clamp halves.
how-head_thickness_mm = Close the jaws over the rim of the flange head. A thick head (14 mm) does not go under standard clamp halves.
how-bolt_long_mm = Measure from the edge of one bolt hole to the same edge of the next along the long side: that is centre to centre. It can be read with the flange in place.
how-bolt_short_mm = Measure from the edge of one bolt hole to the same edge of the next along the short side: that is centre to centre.

# A dangerous pair that was worked out of the threads: which half starts on which, what happens, and what parts the two.

lookalike-starts-nut = female { $female } nut starts on male { $male }
lookalike-starts-port = female { $female } port starts on male { $male }
lookalike-same-thread = one thread, screws home by hand
lookalike-near-thread = { $overlap } % of the thread's depth overlaps
lookalike-taper-in-parallel = a taper male in a parallel female
lookalike-parallel-in-taper = a parallel male in a taper female
lookalike-two-tapers = taper threads of two standards
lookalike-turns = { $turns ->
    [0] within the first turn
    [1] after about 1 turn
   *[other] after about { $turns } turns
}
lookalike-strips-and-blows-off = it goes in by hand, strips under pressure and blows off
lookalike-few-threads-caught = the nose is too wide for the body, the nut catches few threads and lets go under pressure
lookalike-binds-and-leaks = it binds { $turns } and feels tight, leaks, and the threads are ruined
lookalike-wedges-and-splits = it wedges { $turns } and splits the female or weeps
lookalike-weeps-along-thread = it screws up well and weeps along the flanks under pressure
lookalike-leaks-at-seat = the seats touch on a line or a rim and leak
lookalike-no-seal = nothing seals
lookalike-ring-extrudes = the ring is not enclosed and is cut or pushed out
lookalike-separates = parted by { $readings }
lookalike-separates-none = no reading of this list parts the two: ask for the part or replace both halves
lookalike-by-thread_diameter_mm = thread diameter
lookalike-by-pitch_mm = pitch
lookalike-by-flank_angle_deg = flank angle
lookalike-by-taper = taper or parallel
lookalike-by-kind = kind of end
lookalike-by-shoulder = chamfer at the mouth or flat
lookalike-by-seal = what seals
lookalike-by-seat_included_angle_deg = seat angle
lookalike-by-cone = cone proud or hollow
lookalike-by-tube_od_mm = tube or cone bore
lookalike-by-male_bore_mm = through bore
# Where the print on a hose and what is read of it say different things. The cure is the same: look again,
# and never rate the hose by the kinder of the two.
contradicted-no-such-hose = The print contradicts itself or is misread: no hose of the tables is { $named }. Read it again; until it is clear go by what is measured.
contradicted-reinforcement = Printed { $named }, which is { $printed }; seen: { $measured }. Look at the cut end again. One of the two is wrong: do not rate this hose by its print.
contradicted-layers = Printed { $named }, which has { $printed ->
    [one] one layer
   *[other] { $printed } layers
}; counted: { $measured }. Count again at a clean cut. One of the two is wrong: do not rate this hose by its print.
contradicted-bore = Printed { $named }, whose bore nearest to this is { $printed }; measured { $measured }. Measure again away from the ferrule, twice at 90 degrees. One of the two is wrong.
contradicted-reinforcement-od = Printed { $named }, which is at its nearest { $printed } over the reinforcement; measured { $measured }. Measure again where no wire is flared. One of the two is wrong.
contradicted-cover-od = Printed { $named }, which is at its nearest { $printed } over the cover; measured { $measured }. Measure again where the cover is clean and round. One of the two is wrong.
contradicted-cover = Printed { $printed }, looked at as { $measured }. Near power lines or where sparks are dangerous take it for neither until it is proven.
contradicted-pressure = Printed { $printed }; the table rates { $named } at { $measured }. It may be another edition or another hose: the lower of the two holds until its maker's sheet says otherwise.

# A reading that only a slip explains.
stray = { $reading } reads { $read }; { $named } would have { $limits }. Read it again, or say that it can't be told: until then nothing here is settled.
stray-absent = { $reading } reads { $read }; { $named } has no such thing. Read it again, or say that it can't be told: until then nothing here is settled.
stray-limit = { $limit }
stray-limits = { $least } to { $most }

seen-wire-braid = braided wire
seen-wire-spiral = spiral wire
seen-textile-braid = braided textile
seen-thermoplastic-textile = textile round a plastic tube
seen-ptfe-steel-braid = bare steel braid over PTFE
seen-suction-helix = textile with a wire helix
seen-plain = nothing special
seen-non-conductive = non-conductive
seen-flame-resistant = flame resistant
seen-antistatic = antistatic
