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

## The cut
make-cut-drawing = The hose on the saw. Cut { $length }.
make-cut-drawing-open = The hose on the saw. The cut length is not known: a cut-off is missing.
make-cut-aim = aim ± { $by }, square to { $square }
make-cut-aim-only = aim ± { $by }
make-cut-overall = overall
make-cut-cutoff = cut-off { $end }
make-cut-how = From your supplier’s table, or measure a new end: from its sealing point to the stop the hose goes up to.
make-cut-end-drawing = A new end { $end }: measure from the sealing point to the hose stop.
make-cut-sealing = sealing point
make-cut-stop = hose stop

## The turn
make-turn = Turn
make-turn-how = Look along the hose from A to B, A’s elbow up: B’s elbow stands { $turn } clockwise.
make-turn-name = Turn of B against A: { $turn }, clockwise from A, looking from A to B.

## Settings of the ends
make-settings = How each end goes on
make-settings-yours = yours, from { $source }
make-settings-source-none = yours, source not said
make-end = End { $end }
make-cutoff = Cut-off
make-insertion = Insertion depth
make-skive = Skive
make-ferrule = Ferrule
make-lubricant = Lubricant
make-die-set = Die set
make-crimp-diameter = Crimp diameter
make-crimp-tolerance = Crimp tolerance
make-source = From
make-source-how = The table, sheet or measurement these figures are from.
make-missing = To get before the hose is cut
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
make-b-as-a = All of end B as at A
make-back = Back

## Crimp
make-crimp = Crimp { $end }
make-crimp-reading = Crimp { $end }, reading { $number }
make-crimp-how = On the flats between the ridges, in four directions, at three places along the ferrule.
make-crimp-target = { $target }
make-crimp-place = place { $place } of { $places }
make-crimp-mean = mean { $mean }
make-crimp-range = { $min } to { $max }
make-crimp-inside = All { $count } inside the tolerance you entered
make-crimp-outside = { $out } of { $count } outside the tolerance you entered
make-crimp-outside-how = Above the upper limit: press once more, smaller. Below the lower: scrap. A crimped ferrule is never opened or used again (common practice, not verified; the supplier’s word comes first).
make-crimp-coarse = Your caliper reads to ± { $error }: too coarse for ± { $tolerance }. Use a micrometer.
make-crimp-none = Not read yet
make-crimp-no-target = No target entered: nothing to hold it against
make-crimp-name = Crimp of end { $end } in section. Readings: { $readings }.
make-crimp-span-name = Readings against target { $target }: { $min } to { $max }, mean { $mean }.
make-crimp-read = Read the crimp at { $end }
make-crimp-read-on = Read on at { $end }: place { $place } of { $places }
make-crimp-read-again = Read again at { $end }: { $reading }
make-crimp-not-within = not within { $target }: not ticked
make-crimp-again = Crimp { $end } again
make-crimp-mend = Crimp { $end }, reading { $number }: { $reading }. Change or strike.
make-crimp-strike = Strike { $reading }

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
make-proof-low = { $pressure } is less than the proof of { $proof }: this proves nothing. Prove again, or write what was held.
make-proof-short = { $held } is less than { $least }: this proves nothing. Hold again, or write what was held.
make-proof-is-proved = Proved at { $pressure }, { $hold }
make-proof-is-no-rig = Not proved: no rig. It stands so on the record and the tag.
make-proof-leaked = It leaked, or an end moved
make-proof-scrap = Scrap. Cut it up; no end is used again. Find the cause before the next one is made.
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

## Paper, title and refusal
make-paper = Build sheet as PDF
make-paper-note = for the bench or the file
make-saved = Saved: { $where }
make-not-saved = NOT SAVED
make-title = Make the hose
make-hose-in-hand = Hose in the hand
make-place = { $machine } · place { $number }
make-refused = NOT MADE
make-to-check = Back to Check
make-to-check-then = the cure stands at each finding
