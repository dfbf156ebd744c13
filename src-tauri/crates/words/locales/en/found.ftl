# What an answer of finding says of look-alikes, contradictions and slips. No screen speaks from this file: the
# answers bring these words.

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
lookalike-starts-body = body { $female } takes male { $male }
lookalike-starts-socket = socket { $female } takes { $male }
lookalike-starts-halves = clamp halves of { $female } go over { $male }
lookalike-turns-unknown = after some turns
lookalike-pulls-out = it is gripped by too little and pulls out under pressure
lookalike-screws-bend = the screws bend or the head is held on one side, and it leaks or lets go
lookalike-half-locks = it locks halfway, looks shut and comes apart under pressure
lookalike-fits-both = it is made to fit both and proves nothing of the other half
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
lookalike-by-bolt_long_mm = long bolt spacing
lookalike-by-head_od_mm = flange head
lookalike-by-head_thickness_mm = thickness of the flange head
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
