# Words of making: at the saw, at the press, at the rig.

## Figures
make-at-end = { $end }: { $step }
make-plus-minus = { $value } ± { $by }
make-hold = { $from } to { $to }
make-length-tolerance = { $length }, { $plus } { $minus }
make-yours = yours
make-hero-insertion = from the cut, end { $end }
make-hero-crimp = over the flats, end { $end }
make-hero-length = sealing point to sealing point
make-hero-proof = proof, hold { $hold }

## Parts, and who works
make-parts = Parts, all new
make-part-hose = Hose
make-part-adapter = Adapter
make-part-ferrule = ferrule { $ferrule }
make-part-ferrule-open = ferrule not known yet
make-worker = Ticked by
make-worker-none = nobody yet: say who works

## The cut
make-cut-drawing = The hose on the saw. Cut { $length }.
make-cut-drawing-open = The hose on the saw. The cut length is not known: a cut-off is missing.
make-cut-aim = aim ± { $by }, square to { $square }
make-cut-aim-only = aim ± { $by }
make-cut-overall = overall
make-cut-cutoff = cut-off { $end }
make-cut-how = From your supplier’s table, or measure a new end: from its sealing point to the stop the hose goes up to.
make-cut-sealing = sealing point
make-cut-stop = hose stop
make-cut-end-drawing = A new end { $end }: measure from the sealing point to the hose stop.
make-cut-kerf = saw takes { $kerf }
make-cut-off-reel = off the reel { $length }
make-cut-kerf-open = What the saw takes off the reel is not set (Van, Instruments).
make-cutoff-reading = Cut-off { $end }, reading { $number }
make-cutoff-so-far = Read so far; a tap takes one away
make-cutoff-remove = Take away reading { $number }: { $reading }
make-cutoff-refused = One of the readings can not be. Take it away.
make-cutoff-from-nut = A new end, clean, nut pushed back. From where it seals (nose, seat or flat face)
make-cutoff-from-male = A new end, clean. From the end of its thread, or its seat, as its standard says,
make-cutoff-from-flange = A new end, clean. From the face of its head
make-cutoff-from-banjo = A new end, clean. From the middle of its eye
make-cutoff-from-standpipe = A new end, clean. From the end of its tube
make-cutoff-bent = (bent: the middle of its sealing face, measured along the hose)
make-cutoff-to = to the stop the hose goes up to.
make-cutoff-measured = measured { $day }
make-cutoff-type = Type it from a table
make-cutoff-as = { $cutoff }: { $whose }
make-cutoff-learned = { $count ->
    [one] { $cutoff }: learned from { $count } finished hose
   *[other] { $cutoff }: learned from { $count } finished hoses
}

## The turn
make-turn = Turn
make-turn-how = Look along the hose from A to B, A’s elbow up: B’s elbow stands { $turn } clockwise.
make-turn-found = Measured: { $turn }.
make-turn-name = Turn of B against A: { $turn }, clockwise from A, looking from A to B.

## Settings of the ends
make-settings = How each end goes on
make-settings-yours = yours, from { $source }
make-crimp-source-none = Nobody said whose this diameter is: nothing passes by it. Enter its source.
make-end = End { $end }
make-cutoff = Cut-off
make-insertion = Insertion depth
make-skive = Skive
make-row-enter = Enter your supplier’s row for end { $end }
make-row-enter-note = kept for the next hose of its kind
make-clean = Clean and flushed
make-clean-agreed = As agreed with the machine’s owner, or else:
make-ferrule = Ferrule
make-lubricant = Lubricant
make-die-set = Die set
make-crimp-diameter = Crimp diameter
make-crimp-tolerance = Crimp tolerance
make-source = Source
make-source-how = Your supplier’s table or sheet that these figures stand in. A diameter measured on this hose is no target.
make-filled = from { $supplier }, { $from }: the one row that suits
make-offers = Take a whole row
make-offer-row = { $end } as { $supplier } says
make-offer-last = { $end } as last time: { $what }
make-offer-source = { $supplier }, { $from }
make-missing = To get before the hose is cut
make-missing-still = Still missing
make-field-at = { $field }, end { $end }
make-field-open = not known
make-skive-none = none
make-skive-outer = cover
make-skive-inner = tube
make-skive-both = cover and tube
make-skive-outer-by = cover { $length }
make-skive-inner-by = tube { $length }
make-skive-both-by = cover { $outer }, tube { $inner }
make-skive-outer-how = Length of cover taken off, from the cut.
make-skive-inner-how = Length of tube taken off, from the cut.

## Typing
make-keep = Keep { $value }
make-as-other = As at { $end }: { $value }
make-b-as-a = Same as A: its figures for end B
make-by-sheet = Done by a sheet, not entered
make-by-sheet-crimp = Not on record, no pass: no tag before the figures are entered.
make-by-sheet-mark-insertion = By a sheet: the depth is not on record.
make-doubt-word = IS THAT RIGHT?
make-doubt-again = Type it again
make-doubt-right = { $value } is right: keep it
make-doubt-own = { $value } was read on this very hose. A crimp is held against your supplier’s diameter, never against itself.
make-doubt-narrow = { $value } is less than the { $hose } over the wires of this hose, and the ferrule lies round them.
make-doubt-tolerance = ± { $value } is much for a crimp of { $target }: tolerances are tenths of a millimetre.
make-doubt-cut = { $value } is no less than the whole hose of { $whole }.
make-back = Back

## Crimp
make-crimp = Crimp { $end }
make-crimp-reading = Crimp { $end }, reading { $number }
make-crimp-how = On the flats between the ridges, in four directions, at three places along the ferrule.
make-crimp-target = { $target }
make-crimp-place-1 = place 1 of { $places }, behind the mouth
make-crimp-place-2 = place 2 of { $places }, middle
make-crimp-place-3 = place 3 of { $places }, before the end
make-crimp-mean = mean { $mean }
make-crimp-oval = oval { $oval }
make-crimp-taper = taper { $taper }
make-crimp-read-with = Read with
make-crimp-instrument = { $instrument } ± { $error }
make-crimp-change = change to { $instrument }
make-crimp-change-anew = change to { $instrument }: the readings are taken anew
make-crimp-finer = Read { $end } with the micrometer
make-caliper = caliper
make-micrometer = micrometer
make-crimp-given-up = Read before, kept on record: { $readings }
make-crimp-none = Not read yet
make-crimp-name = Crimp of end { $end } in section. Readings: { $readings }.
make-crimp-span-name = Readings against target { $target }: { $min } to { $max }, mean { $mean }.
make-crimp-read = Read the crimp at { $end }
make-crimp-read-on = Read on at { $end }: place { $place } of { $places }
make-crimp-read-again = Read again at { $end }: { $reading }
make-crimp-again = Crimp { $end } again
make-crimp-again-note = then read it anew
make-crimp-mend = Crimp { $end }, reading { $number }: { $reading }. Change or remove.
make-crimp-strike = Remove the reading { $reading }

## The finished hose
make-finished = Finished hose
make-finished-cut = Cut to
make-finished-cut-how = What the hose was cut to, where it is not the figure of the sheet: cut-offs are learned from it.
make-finished-length = Length
make-finished-turn = Turn
make-finished-length-how = From sealing point to sealing point, laid straight, nuts pushed back; of a bent end to the middle of its sealing face.
make-finished-turn-how = Look along the hose from A to B, A’s elbow up: degrees clockwise to B’s elbow, 0 to 359.
make-finished-limits = { $low } to { $high }
make-measure-length = Measure the finished length
make-measure-turn = Measure the turn
make-measure-turn-then = from A to B, A’s elbow up, clockwise
make-measure-again = Measure again: { $value }
make-not-passed = It did not pass
make-not-passed-note = scrap

## Scrap
make-scrap-word = SCRAP
make-scrap-how = Cut it up; no end is used again. Find the cause before the next one is made.
make-scrap-at = Did not pass: { $step }
make-scrap-on-record = on record as { $code }
make-scrap-ask = It did not pass?
make-scrap-then = Then this hose ends here: scrap. Another one is made.
make-scrap-it = It is scrap
make-scrap-it-note = make another one
make-scrap-not = No: go on with it
make-scraps = Scrapped before this one
make-failed-leak = It leaked
make-failed-end-moved = An end moved
make-failed-burst = It burst

## Proof
make-proof = Proof
make-proof-at = { $pressure }, twice { $working }
make-proof-hold-for = hold { $hold }
make-proof-caution = Guard shut. Oil or water, never air.
make-proof-rig = Prove at { $pressure }
make-proof-rig-then = twice { $working }, hold { $hold }
make-proof-no-rig = No rig
make-proof-pressure = Pressure held
make-proof-hold = Time held
make-proof-gauge = Gauge
make-proof-calibrated = Gauge calibrated on
make-proof-pressure-how = What the gauge showed at the end of the hold.
make-proof-hold-how = Seconds from full pressure to release.
make-proof-gauge-how = Its name or number, as it stands on it.
make-proof-write = Write down what was held
make-proof-proved-word = PROVED
make-proof-is-proved = { $pressure }, held { $hold }.
make-proof-no-rig-word = NOT PROVED
make-proof-is-no-rig = No rig. It stands so on the record, the tag and the papers.
make-proof-failed = It failed
make-proof-failed-then = Release all pressure first. Then this hose ends here: scrap, and it stays on record as failed.
make-proof-again = Make it again
make-proof-again-then = ticks, readings and proof start anew
make-proof-other = Change: rig or no rig

## Steps
make-steps = Steps
make-steps-done = { $count ->
    [one] { $count } step done
   *[other] { $count } steps done
}
make-steps-more = { $count ->
    [one] { $count } more step
   *[other] { $count } more steps
}
make-next = Next: { $step }
make-enter = Enter: { $field }
make-measure-cutoff = Measure the cut-off of { $end }
make-measure-cutoff-anew = Measure { $end } anew
make-measure-cutoff-on = Measure on: cut-off of { $end }
make-measure-cutoff-then = before the hose is cut
make-to-tag = Make the tag
make-to-tag-then = label, code, mark on the ferrule
make-tick-fetch-parts = Tick: parts are here
make-tick-cut = Tick: hose is cut
make-tick-clean-bore = Tick: bore is clean
make-tick-skive = Tick: { $end } is skived
make-tick-mark-insertion = Tick: { $end } is marked
make-tick-push-on = Tick: { $end } is on
make-tick-crimp = Tick: { $end } is crimped
make-tick-fine-instrument = Tick: micrometer at hand for { $end }
make-tick-measure-crimp = Tick: crimp { $end } is read
make-tick-sleeves = Tick: sleeves are on
make-tick-set-turn = Tick: turn is set
make-tick-mark-not-moved = Tick: marks have not moved
make-tick-bore-gauge = Tick: gauge passes
make-tick-nuts-free = Tick: nuts run free
make-tick-measure-length = Tick: length is right
make-tick-measure-turn = Tick: turn is right
make-tick-flush-and-cap = Tick: flushed and capped
make-tick-connect-rig = Tick: rig is on
make-tick-bleed-rig = Tick: no air left
make-tick-close-guard = Tick: guard is shut
make-tick-raise-pressure = Tick: at proof pressure
make-tick-hold-pressure = Tick: held
make-tick-release-and-look = Tick: no leak, nothing moved
make-tick-no-rig = Tick: “not proved” is noted
make-tick-mark-ferrule = Tick: ferrule is marked
make-tick-label = Tick: tag is on
make-tick-plan = Tick: known
make-tick-lower-load = Tick: load is down
make-tick-lock-out = Tick: locked out
make-tick-release-pressure = Tick: pressure is gone
make-tick-mark-lines = Tick: lines are marked
make-tick-loosen = Tick: old hose is off
make-tick-match-lines = Tick: lines match
make-tick-new-seals = Tick: new seals are in
make-tick-tighten = Tick: tightened
make-tick-tighten-flange = Tick: flanges are down
make-tick-lay-straight = Tick: lies straight
make-tick-bleed-and-fill = Tick: bled and filled
make-tick-first-run = Tick: it runs
make-tick-leak-check = Tick: no leak
make-tick-clean-up = Tick: wiped up
make-tick-log-hours = Tick: hours are noted

## Papers, title and refusal
make-papers = Papers
make-papers-note = build sheet, certificate, report
make-saved = Saved: { $where }
make-title = Make the hose
make-hose-in-hand = Hose in the hand
make-place = { $machine } · place { $number }
make-refused = NOT MADE
make-to-check = Back to Check
make-to-check-then = the cure stands at each finding
