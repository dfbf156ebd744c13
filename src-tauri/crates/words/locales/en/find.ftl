# How each reading is taken: where the jaws go, and what goes wrong.

how-id_mm = Cut back about 100 mm from the ferrule and measure the bore of the hose with the inside jaws, twice at 90 degrees. A swollen tube reads small; never measure the part squeezed under a ferrule.
how-reinforcement_od_mm = Skin a ring of cover off the cut-back end and close the outside jaws on the bare reinforcement, lightly. It is the surest diameter of a hose; wires flared by a burst read large.
how-cover_od_mm = Close the outside jaws on the cover where it is clean and round, twice at 90 degrees. A cover soaked in oil reads large, an abraded one small.
how-reinforcement = Look at the cut end: wires that cross over and under are a braid, wires that lie side by side are a spiral. Textile is cloth or cord, under rubber or round a plastic tube. A burst frays it: look where the cut is clean.
how-layers = Peel the cut end and count the layers of wire or textile one by one. Rubber between two layers hides the one beneath: peel until the tube shows.
how-cover = Look at the colour and the print: orange or "non-conductive" carries no current. Near power lines never guess it.
how-print = Wipe the cover and read along the hose; the print repeats. Put ? for a letter that is worn away.

how-kind = Look at the whole end: a loose nut, a thread outside, a stud with a shoulder and its ring, a thread inside a body, an eye, a plain tube, a flange head, half of a coupling, a staple socket, a test point. Whoever fitted it may have taken a wrong end: read the machine's half too.
how-gender = Thread on the outside is male, thread on the inside (a nut or a port) is female. Go by the thread, not by the cone: either half may have the nose.
how-thread_diameter_mm = Measure the thread on its third turn or further in, twice at 90 degrees. First threads are worn or burred.
how-thread_diameter_mm-male = Close the outside jaws over the crests of the third thread or further in, twice at 90 degrees. Worn threads read small, burrs read large.
how-thread_diameter_mm-female = Open the inside jaws on the crests inside the nut, twice at 90 degrees. Inside jaws read a small nut too small; an overtightened nut has gone out of round.
how-pitch_mm = Lay the thread gauge into the thread, several turns long, and hold it against the light. The right leaf shows no gap anywhere; give its pitch in mm or its threads an inch. Leaves of 1.5 mm and 16 or 17 threads an inch look alike over a few turns.
how-tpi = Lay the thread gauge into the thread, several turns long, and hold it against the light, or count the threads over 1/2 in and double. The right leaf shows no gap anywhere.
how-taper = Lay the jaws flat along the thread: light at one end means taper. Short or worn threads mislead.
how-second_thread_diameter_mm = Read the diameter again five threads nearer the body, and count the threads between. A taper thread changes by a sixteenth of that length, a parallel one not at all.
how-second_thread_diameter_mm-male = Close the outside jaws again five threads nearer the body, and count the threads between. A taper thread is larger there, by a sixteenth of that length.
how-second_thread_diameter_mm-female = Open the inside jaws again five threads deeper, and count the threads between. A taper thread is smaller there, by a sixteenth of that length.
how-threads_apart = Count the threads between the two diameters. One more or less makes a parallel thread look tapered: count twice, crest to crest.
how-flank_angle_deg = Hold the leaf of a 55 and of a 60 degree gauge into the flanks against the light. Five degrees are hard to see: clean the thread first.
how-shoulder = Port: is its mouth cut to a chamfer that takes an O-ring, or is the face flat to the edge? Stud: does the ring lie right behind the thread, or in the flat face of the collar? Ports of several kinds share one thread: go by this, not by the thread.
how-seal = Look for what seals: an O-ring in a flat face, at the base of the thread or in the cone; a bonded or flat washer; a bare metal cone; or the thread itself. An O-ring may have been lost: look for its groove. A plain flat face seals on the ring in the other half.
how-seat_included_angle_deg = Put the seat gauge on the cone, centred and without rocking. Give the included angle: 37 degrees a side is 74. Some swivels have two seats, or a rounded nose.
how-seat_included_angle_deg-male = Put the seat gauge on the nose, or the plug gauge into the hollow of the male, centred and without rocking. Give the included angle: 37 degrees a side is 74.
how-seat_included_angle_deg-female = Push the nut back and put the gauge to the seat inside, centred and without rocking. Give the included angle: 37 degrees a side is 74. Some swivels have two seats.
how-cone = Look at the seat of the part in your hand: does a cone stand proud (convex), is there a hollow cone (concave), or none (flat)? A chamfer in the mouth of a thread is no cone.
how-tube_od_mm = Close the outside jaws on the tube or nose behind the cone; on a male open the inside jaws in the bore at the root of the cone. It tells the light from the heavy 24 degree series. Tubes in mm and in inches lie close: 16 mm and 5/8 in, 25 mm and 1 in.
how-tube_od_mm-male = Open the inside jaws in the bore at the root of the cone, where the tube would sit. It tells the light from the heavy 24 degree series.
how-tube_od_mm-female = Close the outside jaws on the tube or nose behind the cone. It tells the light from the heavy 24 degree series.
how-male_bore_mm = Open the inside jaws in the narrowest bore through the male. Makers differ by about 1 mm.
how-swivel_hex_mm = Close the outside jaws across the flats of the swivel nut. It is a weak clue: makers differ, and a rounded nut reads small.
how-head_od_mm = Close the outside jaws over the round flange head, not over the clamp halves.
how-head_thickness_mm = Close the jaws over the rim of the flange head. A thick head (14 mm) does not go under standard clamp halves.
how-bolt_long_mm = Measure from the edge of one bolt hole to the same edge of the next along the long side: that is centre to centre. It can be read with the flange in place. From edge to nearest edge is short by one hole.
how-bolt_short_mm = Measure from the edge of one bolt hole to the same edge of the next along the short side: that is centre to centre. From edge to nearest edge is short by one hole.
