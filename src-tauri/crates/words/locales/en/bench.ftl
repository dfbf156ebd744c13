# The bench: what is done about a crimp, a length, a proof. `bench-<code>` says it, `bench-<code>-how` how.

# Crimp
bench-tick = Inside: tick it
bench-tick-how = Every reading lies inside the tolerance, the error of the instrument taken off.
bench-read-on = Read on
bench-read-on-how = On the flats between the ridges, four directions at each of three places: behind the mouth, in the middle, before the end.
bench-enter-target = No target: nothing to hold it against
bench-enter-target-how = Enter crimp diameter and tolerance from your supplier's table for this hose and end.
bench-finer-instrument = Take a finer instrument
bench-finer-instrument-how = The error of this one takes the tolerance, or so much of it that the reading can not be told from its limit.
bench-read-again = Read those again
bench-read-again-how = Square on the flat, not on a ridge or a letter, jaws clean, no more force than the ratchet gives.
bench-press-smaller = Too loose: press once more, smaller
bench-press-smaller-how = Set the press smaller, so that the largest reading comes inside and the smallest stays inside, press once more and read anew (common practice; the supplier's word comes first).
bench-scrap = Too tight: scrap
bench-scrap-how = A crimped ferrule is never opened or used again. Cut the end off and make the hose anew with new ends; look at the setting of the press before the next one.
bench-uneven-oval = Out of round: look at the dies
bench-uneven-oval-how = No one setting brings all of it inside. A die is worn, dirty, of another set or missing, or the ferrule lay askew. Clean and compare the dies; this crimp is scrap unless the supplier says otherwise.
bench-uneven-taper = Wider at one end: look how the ferrule lay
bench-uneven-taper-how = The ferrule did not lie wholly or straight between the dies, or the dies are worn to one side. This crimp is scrap unless the supplier says otherwise.
bench-fit-good = The instrument is good for this tolerance.
bench-fit-narrow = The instrument leaves little of this tolerance; one of { $mm } would do.
bench-fit-too-coarse = The instrument is too coarse for this tolerance: nothing can be accepted by it. One of { $mm } would do.

# Finished assembly
bench-measure = Measure it
bench-measure-how = From sealing point to sealing point with the nuts pushed back; the turn looking from A to B with A's elbow up.
bench-too-long = Too long
bench-too-long-how = It does not have the length that was asked for. Make it anew, or ask whether the place takes this length and check it as such.
bench-too-short = Too short
bench-too-short-how = It does not have the length that was asked for and would pull at its ends. Make it anew, or ask whether the place takes this length and check it as such.
bench-turned-off = Turned wrong
bench-turned-off-how = The elbows do not stand as asked: fitted so, the hose would be twisted. Make it anew.
bench-doubtful-finished = Too near its limit to say
bench-doubtful-finished-how = It lies inside as measured, but nearer to the limit than the instrument's error. Measure again, or with a better one.
bench-no-tolerance = No tolerance in this practice
bench-no-tolerance-how = The practice that is worked to gives none for this size and length: agree one with whoever asked for the hose.

# Proof
bench-proof-ok = Proved
bench-proof-ok-how = Held at its pressure for its time.
bench-say-rig = Is there a rig?
bench-say-rig-how = Without one the hose is "not proved: no rig", on the record and on the tag.
bench-write-pressure = Write down the pressure
bench-write-pressure-how = What the gauge showed while it was held.
bench-write-hold = Write down how long it was held
bench-write-hold-how = In seconds, from when the pressure stood.
bench-write-gauge = Write down the gauge
bench-write-gauge-how = Its number or mark: a proof without a gauge proves nothing.
bench-proof-low = Below proof pressure
bench-proof-low-how = Release it, then raise it to proof pressure and hold it there.
bench-proof-high = Far above proof pressure
bench-proof-high-how = At twice proof pressure a hose may burst. Read the gauge's unit again. If it was raised so high, the hose is scrap.
bench-proof-short = Not held long enough
bench-proof-short-how = Hold it again for the full time.
bench-proof-failed = Failed: scrap
bench-proof-failed-how = It stays on record as failed and is never tagged or fitted. Release all pressure, cut the hose through so that nobody uses it, find out why before the next one is made.
bench-proof-no-rig = Not proved: no rig
bench-proof-no-rig-how = Says so on the record and on the tag.
bench-gauge-undated = Nobody knows when the gauge was calibrated
bench-gauge-undated-how = Write the day from its label or paper; until then the proof rests on a gauge nobody vouches for.
bench-gauge-overdue = The gauge's calibration has run out
bench-gauge-overdue-how = Have it calibrated; this proof rests on a gauge that may have drifted.

# Why it may not be tagged
bench-why-crimp-a = The crimp at A is not read and inside.
bench-why-crimp-b = The crimp at B is not read and inside.
bench-why-length = The finished length lies outside its tolerance.
bench-why-turn = The turn lies outside its tolerance.
bench-why-proof-open = The proof is neither done nor said to be impossible.
bench-why-proof-failed = It failed its proof: it is scrap.

# Cut-off of a new end
bench-cutoff-new-end = Take a new end of the same family, size, form and series; never a used one.
bench-cutoff-find-stop = Find the hose stop: the shoulder inside that the cut face of the hose comes to rest on. A wire down the socket finds it.
bench-cutoff-find-seal = Find the sealing point: nose of the cone, flat face, head face of a flange, nut pushed back; at an elbow the centre of the sealing face, along the hose's axis.
bench-cutoff-read = Read from one to the other along the axis, three times, the end taken up anew each time.
bench-cutoff-repeat = Read it again
bench-cutoff-repeat-how = Three readings, the end taken up anew each time, show whether they agree.
bench-cutoff-coarse = Too coarse for a cut-off
bench-cutoff-coarse-how = The instrument is unsure by more than the 2 mm a cut may be off. Take a caliper.
bench-cutoff-apart = The readings do not agree
bench-cutoff-apart-how = They lie more than 1 mm apart. Find the hose stop and the sealing point again and read anew.

# What is checked, and the press
bench-length = Finished length
bench-turn = Turn
bench-proof = Proof
press-none = No crimp with a die set, a target and readings is on record.
press-few = Fewer than 8: too few for limits.
press-limits = centre { $centre }, limits { $lower } to { $upper } from target
press-outside = outside the limits
press-jump = a jump from the one before
press-two-of-three = two of three beyond two deviations
press-four-of-five = four of five beyond one deviation
press-eight-on-one-side = eight in a row on one side
press-left-out = { $count ->
    [one] 1 end without die set, target or readings is in none.
   *[other] { $count } ends without die set, target or readings are in none.
}
