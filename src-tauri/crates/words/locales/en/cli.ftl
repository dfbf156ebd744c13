# Plain answers of the command line.
find-hose = Hose
find-end-a = End A
find-end-b = End B
find-settled = settled
find-unsettled = NOT SETTLED
find-none-of-these = none of these
find-lookalike = Look-alike
find-separates = To tell them apart:
find-open = Still open (95 % together): { $what }.
find-open-hose = { $count ->
    [one] one kind of hose
   *[other] { $count } kinds of hose
}
find-open-a = { $count ->
    [one] one kind of end A
   *[other] { $count } kinds of end A
}
find-open-b = { $count ->
    [one] one kind of end B
   *[other] { $count } kinds of end B
}
find-next = Read next:
find-more-names = and { $count } more
find-of-hose = hose
find-of-a = end A
find-of-b = end B
find-enough = Whichever of these it was, the new hose must be the same; nothing more need be read of the hose.
explain-title = { $candidate } against { $rival }
explain-how = Bits of evidence: to the right for the first, to the left for the second.
explain-together = How common, other parts, origin
explain-all = All together
explain-must-be-wrong = For { $rival } to be right, this would have to be wrong: { $readings }.
explain-unverified = { $name } stands in the tables from memory; nobody has verified its row.
check-adapter = adapter
check-assembly = { $pressure } for the assembly; weakest: { $weakest }
check-cut = Cut length { $length }
check-tolerance = Tolerance of the overall length { $tolerance }
check-not-checked = Not looked at:
check-alternatives = Other hoses in the same service:
print-standard = Standard
print-type = Type
print-size = Size
print-dash = Dash
print-pressure = Working pressure printed
print-made = Made
print-made-or = or else
print-unread = Not understood
print-nothing = nothing of "{ $text }" is known as a hose's printing; write ? for a letter that is worn away
print-candidates = Can be { $count ->
    [one] one hose:
   *[other] any of { $count } hoses:
}
flow-velocity = Speed
flow-reynolds = Reynolds number
flow-friction = Friction factor
flow-drop = Pressure drop
flow-viscosity = Viscosity reckoned with
surge-rise = Pressure rise
surge-speed = Wave speed
surge-critical = Critical time
surge-modulus = Bulk modulus in effect
oil-plain-usual = Usual in such a line
oil-plain-cold-drop = Pressure drop at the coldest
oil-plain-peak = Peak with the working pressure
oil-plain-size = { $hose } brings the oil to { $speed }.
oil-taken-smooth-bore = Taken: a smooth bore, as hoses have.
oil-taken-oil-density = Taken: a density of { $value } at 40 °C, that of mineral oil.
oil-taken-oil-usual-grade = Taken: { $value }, as most mineral oil is.
oil-taken-oil-usual-index = Taken: a viscosity index of { $value }, as most mineral oil has.
oil-taken-oil-bulk-modulus = Taken: a bulk modulus of { $value }, on the side of the higher peak.
oil-taken-rigid-wall = Taken: a wall that does not give way. A hose gives way, so that the true peak is lower; its volumetric expansion (ISO 6801), from your supplier, tells by how much.
oil-taken-sudden-closure = Taken: a valve that closes at once, the worst that can be.
life-counts = { count-hoses }, { $failures } of them failed.
life-too-few-failures = Too few to tell: at least two failures that were certainly at different times are needed.
life-no-maximum = Too few to tell: every hose that failed did so soon after it was first watched.
life-shape = Shape
life-scale = Scale
life-b10 = One in ten has failed by
life-mean = Mean life
life-bounds = In brackets: 95 % bounds by profile likelihood.
route-estimate = an estimate: no weight, no set, no clamps
route-inside = Tightest radius at the inside
route-centre = Tightest radius of the centre line
route-length = Free length
route-shortest = Shortest free length that will do
route-twist-range = Twist over the travel
route-straight = straight
route-near-rival = Another shape has nearly the same energy; the hose may lie in either.
route-no-shape = it does not reach
route-none = none will do
route-overall = Overall length
route-shortest-overall = Shortest overall length
route-recommended = Length to make
route-turn = Turn between the elbows
route-cures = One change that would cure it, each routed over the whole travel:
route-cure-radius = Inside radius { $radius }.
route-cure-assumed = Drop and rigid length are in plain proportion: measure them on the end.
route-below-limit = The inside of the bend is tighter than the hose allows.
route-near-limit = The bend is within the limit by less than an estimate can tell.
route-rival-too-tight = The hose may fall into another shape, and that one is too tight.
route-twist = The machine's travel twists the hose.
route-no-limit = No least bend radius was given.
route-no-diameter = No outside diameter was given, so the inside of the bend is not known.
tag-refused = no tag is made of what must not be made.
tag-code-alone = The code holds the tag's name alone; the words stand beside it, and the register knows the rest.
count-rows = { $rows ->
    [one] 1 row
   *[other] { $rows } rows
}
count-hoses = { $hoses ->
    [one] 1 hose
   *[other] { $hoses } hoses
}
count-machines = { $machines ->
    [one] 1 machine
   *[other] { $machines } machines
}
count-places = { $places ->
    [one] 1 place
   *[other] { $places } places
}
import-done = { count-rows }: { count-hoses }, { count-machines } and { count-places } taken in, { $changed } taken off; { $known } known already.
import-would = Nothing was changed. { count-rows } would make { count-hoses }, { count-machines } and { count-places } and take { $changed } off; { $known } known already.
import-would-not = Nothing was changed, and nothing of the list would be taken in until { $refused ->
    [one] this row is
   *[other] these { $refused } rows are
} mended: all rows or none. The others would make { count-hoses }, { count-machines } and { count-places } and take { $changed } off; { $known } known already.
import-refused = row { $row }: { $why }
record-done = { $count ->
    [one] One event is on the disk.
   *[other] { $count } events are on the disk.
}
merge-done = { $added ->
    [one] 1 event was new
   *[other] { $added } events were new
}, { $had ->
    [one] 1 was there already
   *[other] { $had } were there already
}, { $held ->
    [one] 1 waits for earlier ones.
   *[other] { $held } wait for earlier ones.
}
merge-fork = Device { $device }: refused. Two programs wrote as the same device; one of them must go on as a new one.
merge-broken-chain = Device { $device }: refused. Its events do not continue what is here; fetch its bundle anew.
verify-whole = { $events ->
    [one] 1 event
   *[other] { $events } events
} of { $devices ->
    [one] 1 device
   *[other] { $devices } devices
}: every hash holds, and the tables are what the log gives.
show-failures = { $count ->
    [0] No hose is known to have failed here.
    [one] This place failed once before: { $causes }.
   *[other] This place failed { $count } times before: { $causes }.
}
show-since = since { $from }
show-hours = { $hours } h on { $date }
show-no-hose = no hose known
show-failed = failed:
status-made = made, not fitted yet
status-fitted = fitted
status-taken-off = taken off
status-withdrawn = tag withdrawn
status-failed-proof = failed its proof: scrap
due-heading = As of { $on }: { $count ->
    [one] 1 date
   *[other] { $count } dates, soonest first
}.
due-cut = { $shown } of { $count }; --all shows all.
due-no-day = no day known
search-not-settled = not settled
due-stopped = { $count ->
    [one] One must not run on; it stands first.
   *[other] { $count } must not run on; they stand first.
}
show-not-settled = NOT SETTLED: { $count } events about this hose contradict each other. Until a person settles it on the hose's page, what is shown is the later of them.
due-what-service = replace
due-what-storage = stored
due-what-inspection = inspect
due-guide = Guide age where the owner has set none:
search-nothing = nothing in the register has all of these words
search-failed = { $count ->
    [one] a hose failed here before
   *[other] { $count } hoses failed here before
}
search-hose = hose
search-place = place
search-machine = machine
search-site = site
tag-no-register = No register was given: the tag has no seal and was held against no record. Name one with --db.
tag-service-unchecked = CAUTION: nothing was said of the service. The tag carries the rating of the parts; whether they suit the line was not checked.
find-more-lookalikes = { $count ->
    [one] One more look-alike is possible; --json lists it.
   *[other] { $count } more look-alikes are possible; --json lists them.
}
cut-reel-kept = Reel { $place } ({ $length } mm): { $pieces } mm; { $left } mm stay on it
cut-offcut-kept = Offcut { $place } ({ $length } mm): { $pieces } mm; { $left } mm left, kept
cut-offcut-scrap = Offcut { $place } ({ $length } mm): { $pieces } mm; { $left } mm left, scrap
cut-unmade = STOP: no hose for { $pieces } mm
cut-sum = New hose { $reel } mm, scrap { $scrap } mm. No plan takes less than { $least } mm of new hose.
cut-sum-proved = New hose { $reel } mm, scrap { $scrap } mm. Nothing better can be.
bench-crimp = Crimp { $end }
bench-crimp-nameless = Crimp
bench-target = target { $target } ± { $tolerance }
bench-accepted = accepted from { $low } to { $high }
bench-mean = mean { $mean }, spread { $spread }
bench-range = { $min } to { $max }
bench-oval = out of round { $oval }
bench-taper = taper { $taper }
bench-place = place { $place }: mean { $mean }, { $min } to { $max }, out of round { $oval }
bench-count = { $count } of { $wanted } readings
bench-measured = { $value }, tolerance { $low } to { $high }
bench-may-tag = It may be tagged.
bench-may-not-tag = It may not be tagged:
bench-recorded = Recorded as { $code }.
bench-judged-pass = PASS
bench-judged-unsettled = NOT SETTLED
bench-judged-stop = STOP
press-on = As of { $on }
press-die = Die set { $die }: { $count ->
    [one] 1 crimp
   *[other] { $count } crimps
}
press-care = { $name }: { $crimps ->
    [one] 1 crimp
   *[other] { $crimps } crimps
} since
press-care-due = due
press-care-on = due on { $on }
press-care-undone = nobody knows when it was done last
supplier-match = Headings in row { $row }, { $rows } rows beneath.
supplier-missing = Not found: { $missing }. Match a column to it, or give one value for all rows.
supplier-not-known = not known
supplier-would = Would take { $taken } of { $rows } rows: { $new } new, { $changed } in an earlier one's place, { $same } there already.
supplier-done = Took { $taken } of { $rows } rows: { $new } new, { $changed } in an earlier one's place, { $same } there already.
supplier-would-not = Nothing would be taken: { $refused } of { $rows } rows can not be. Mend them or leave them out.
supplier-refused = row { $row }: { $why }
supplier-repeated = row { $row } says the same as row { $of }
supplier-left-out = left out: { $rows }
supplier-of = { $supplier }: { $count ->
    [one] 1 row
   *[other] { $count } rows
}
supplier-empty = No supplier's table is here. None is shipped: take in your supplier's, or enter rows by hand.
supplier-removed = { $count ->
    [one] 1 row taken away.
   *[other] { $count } rows taken away.
}
supplier-kept = Kept as { $id }.
supplier-no-row = no supplier's row fits
supplier-last = last time, { $code } { $day }
supplier-cutoff = cut-off { $mm } from { $n ->
    [one] 1 hose
   *[other] { $n } hoses
}{ $spread }
supplier-cutoffs = Both cut-offs together { $mm } from { $n ->
    [one] 1 hose
   *[other] { $n } hoses
}{ $spread }
supplier-spread = , spread { $spread }
