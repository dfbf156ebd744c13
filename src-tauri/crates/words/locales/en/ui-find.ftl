# Words of finding: what was it?

## Parts
find-title = What was it?
find-no-place = Hose in the hand
find-recorded = { $how ->
    [sits] By the register, not read: sits here
    [sat] By the register, not read: sat here last
   *[belongs] By the register, not read: belongs here
}
find-parts = Parts
find-part-hose = Hose
find-part-end = End { $role }
find-part-mate = Machine’s half of { $role }
find-tab-hose = Hose
find-tab-end = { $role }
find-tab-mate = port { $role }
find-state-read = { $count } read
find-state-settled = settled
find-state-own = your word
find-tab-first = 1st
find-tab-second = 2nd
find-tab-third = 3rd
find-tab-needed = if needed
find-tab-not-needed = not needed
find-begin-a = First end A, then end B, then the hose. Tie a rag to one end and call it A.
find-before-loosening = Still on the machine? Load down, engine off, pressure proved gone before you loosen anything. Oil under the skin: hospital at once.
find-begin-settled = { $part } is settled: { $name }.
find-begin-open = { $part } is not settled yet.
find-begin-b = Now the other end.
find-begin-hose = Now the hose, the last part.
find-mate-open = End { $role } alone does not tell.
find-mate-why = The port on the machine says what the end had to be. It is the strongest evidence there is.

## Readings
find-key-print = Print on the cover
find-key-mate = The machine’s half
find-key-reinforcement = What carries the pressure
find-key-layers = Layers
find-key-id-mm = Bore of the hose
find-key-cover-od-mm = Ø over the cover
find-key-reinforcement-od-mm = Ø over the reinforcement
find-key-cover = Kind of cover
find-key-overall-length-mm = Overall length
find-key-gender = Which half
find-key-kind = What kind of end
find-key-shoulder = Shoulder or port mouth
find-key-seal = What seals
find-key-thread-diameter-mm = Thread Ø
find-key-thread-diameter-mm-male = Thread Ø, outside
find-key-thread-diameter-mm-female = Thread Ø, inside
find-key-pitch-mm = Thread gauge
find-key-taper = Taper
find-key-seat-included-angle-deg = Seat angle
find-key-cone = Shape of the seat
find-key-flank-angle-deg = Flank angle
find-key-swivel-hex-mm = Hex of the nut
find-key-tube-od-mm = Tube Ø
find-key-male-bore-mm = Bore of the male
find-key-second-thread-diameter-mm = Second thread Ø
find-key-threads-apart = Threads between
find-key-form = How the end leaves the hose
find-key-bolt-long-mm = Bolt spacing, long
find-key-bolt-short-mm = Bolt spacing, short
find-key-head-od-mm = Head Ø
find-key-head-thickness-mm = Head thickness

find-do-print = read the print
find-do-reinforcement = look at the cut end
find-do-layers = count the layers
find-do-id-mm = measure the bore
find-do-cover-od-mm = measure over the cover
find-do-reinforcement-od-mm = measure over the reinforcement
find-do-cover = look at the cover
find-do-overall-length-mm = tape the overall length
find-do-kind = look at the end
find-do-shoulder = look at the shoulder or mouth
find-do-gender = see where the thread is
find-do-seal = look for the seal
find-do-thread-diameter-mm = measure the thread
find-do-pitch-mm = gauge the thread
find-do-taper = look for taper
find-do-seat-included-angle-deg = gauge the seat
find-do-cone = look at the seat
find-do-flank-angle-deg = gauge the flanks
find-do-swivel-hex-mm = measure the hex
find-do-tube-od-mm = measure the tube
find-do-male-bore-mm = measure the bore
find-do-second-thread-diameter-mm = measure the thread again
find-do-threads-apart = count the threads between
find-do-form = say how it leaves the hose
find-do-bolt-long-mm = measure the long bolt spacing
find-do-bolt-short-mm = measure the short bolt spacing
find-do-head-od-mm = measure the head
find-do-head-thickness-mm = measure the head’s thickness

find-how-overall-length-mm = Lay the tape from sealing point to sealing point, nuts pushed back. A bent end counts to the centre of its sealing face. Left in a bend it reads short.
find-how-form = Hold the hose straight and look at how the end leaves it. The drop of an elbow counts: another one does not fit.

## The tool, in a few words beside the drawing
find-tool-id-mm = Inside jaws, cut back 100 mm from the ferrule
find-tool-cover-od-mm = Outside jaws, where the cover is clean and round
find-tool-reinforcement-od-mm = Outside jaws on the bare wire, lightly
find-tool-layers = Peel and count
find-tool-reinforcement = Look at the cut end
find-tool-cover = Colour and print
find-tool-overall-length-mm = Tape, sealing point to sealing point
find-tool-kind = What is it at a glance?
find-tool-shoulder = What does the ring lie on?
find-tool-gender = Where is the thread?
find-tool-seal = A ring, a washer, or bare metal?
find-tool-thread-diameter-mm = On the third thread or further in
find-tool-thread-diameter-mm-male = Jaws over the crests, third thread
find-tool-thread-diameter-mm-female = Jaws inside, on the crests, third thread
find-tool-pitch-mm = The leaf that shows no light anywhere
find-tool-taper = Jaws flat along the thread: light at one end?
find-tool-seat-included-angle-deg = Gauge centred, not rocking
find-tool-cone = Proud, hollow or flat?
find-tool-flank-angle-deg = Leaf in the flanks, against the light
find-tool-swivel-hex-mm = Jaws across the flats
find-tool-tube-od-mm = Jaws on the tube behind the cone
find-tool-tube-od-mm-male = Jaws in the bore at the root of the cone
find-tool-male-bore-mm = Inside jaws, narrowest bore
find-tool-second-thread-diameter-mm = Five threads further in
find-tool-threads-apart = Between the two diameters
find-tool-form = Hold the hose straight
find-tool-bolt-long-mm = Hole edge to same edge
find-tool-bolt-short-mm = Hole edge to same edge
find-tool-head-od-mm = Jaws over the round head
find-tool-head-thickness-mm = Jaws over the rim

## What a reading can be
find-is-gender-female = Female
find-sign-gender-female = thread inside, mostly a nut
find-is-gender-male = Male
find-sign-gender-male = thread outside
find-is-kind-nut = Loose nut
find-sign-kind-nut = thread inside
find-is-kind-male = Male
find-sign-kind-male = thread outside
find-is-kind-stud = Stud
find-sign-kind-stud = ring at its shoulder
find-is-kind-socket = Port or socket
find-sign-kind-socket = thread in a body
find-is-kind-flange = Flange
find-sign-kind-flange = round head, four bolts
find-is-kind-tube = Plain tube
find-sign-kind-tube = no thread of its own
find-is-kind-banjo = Banjo
find-sign-kind-banjo = eye, hollow bolt
find-is-kind-coupling = Quick coupling
find-sign-kind-coupling = sleeve or nose
find-is-kind-staple = Staple end
find-sign-kind-staple = held by a U-shaped pin
find-is-kind-test-point = Test point
find-sign-kind-test-point = small, with a cap
find-is-shoulder-chamfered = Chamfered
find-sign-shoulder-chamfered = ring behind the thread
find-is-shoulder-flat = Flat
find-sign-shoulder-flat = ring or washer on the face
find-stray-again = Read it again
find-other-half = { $what } { $value } does not go with { $name } here, but with its other half. Was it measured on the machine’s half?
find-other-half-move = Yes: move it to the machine’s half of { $role }
find-is-seal-cone = Cone
find-sign-seal-cone = metal on metal
find-is-seal-o-ring-face = O-ring in face
find-sign-seal-o-ring-face = flat face, ring in it or opposite
find-is-seal-o-ring-cone = O-ring in cone
find-sign-seal-o-ring-cone = or its empty groove
find-is-seal-o-ring-shoulder = O-ring at base
find-sign-seal-o-ring-shoulder = under the hex, below the thread
find-is-seal-thread = The thread
find-sign-seal-thread = tape or paste, no seat
find-is-seal-bonded-washer = Bonded washer
find-sign-seal-bonded-washer = metal ring with rubber
find-is-seal-flat-gasket = Flat gasket
find-sign-seal-flat-gasket = copper or fibre ring
find-is-seal-inverted-flare = Inverted flare
find-sign-seal-inverted-flare = cone deep inside the female
find-is-taper-no = Parallel
find-sign-taper-no = no light under the jaws
find-is-taper-yes = Taper
find-sign-taper-yes = light at one end
find-is-seat-included-angle-deg-24 = 24°
find-sign-seat-included-angle-deg-24 = 12 a side
find-is-seat-included-angle-deg-60 = 60°
find-sign-seat-included-angle-deg-60 = 30 a side
find-is-seat-included-angle-deg-74 = 74°
find-sign-seat-included-angle-deg-74 = 37 a side
find-is-seat-included-angle-deg-90 = 90°
find-sign-seat-included-angle-deg-90 = 45 a side
find-is-cone-concave = Hollow
find-sign-cone-concave = the cone goes in
find-is-cone-convex = Raised
find-sign-cone-convex = the cone stands proud
find-is-cone-flat = Flat
find-sign-cone-flat = no cone there
find-is-flank-angle-deg-60 = 60°
find-sign-flank-angle-deg-60 = unified, metric
find-is-flank-angle-deg-55 = 55°
find-sign-flank-angle-deg-55 = Whitworth, pipe
find-is-reinforcement-wire-braid = Wire braid
find-sign-reinforcement-wire-braid = wires cross over and under
find-is-reinforcement-wire-spiral = Wire spiral
find-sign-reinforcement-wire-spiral = wires lie side by side
find-is-reinforcement-textile-braid = Textile
find-sign-reinforcement-textile-braid = cloth or cord in rubber
find-is-reinforcement-thermoplastic-textile = Textile on plastic
find-sign-reinforcement-thermoplastic-textile = cord round a plastic tube
find-is-reinforcement-ptfe-steel-braid = Steel braid outside
find-sign-reinforcement-ptfe-steel-braid = bare, round a white tube
find-is-reinforcement-suction-helix = Helix
find-sign-reinforcement-suction-helix = one coarse wire, wide apart
find-is-layers-1 = 1
find-is-layers-2 = 2
find-is-layers-4 = 4
find-is-layers-6 = 6
find-is-cover-plain = Plain
find-sign-cover-plain = black rubber, nothing special printed
find-is-cover-non-conductive = Non-conductive
find-sign-cover-non-conductive = often orange, or printed
find-is-cover-flame-resistant = Flame-resistant
find-is-cover-antistatic = Antistatic
find-is-form-straight = Straight
find-is-form-compact90 = Block 90°
find-is-form-standpipe = Standpipe
find-is-form-banjo = Banjo
find-form-elbow = Elbow { $angle }
find-per-inch = /in
find-more = { $count } more
find-tpi = { $count } /in
find-leaves-in = threads an inch
find-leaves-mm = pitch in mm
find-gauge-unit = Unit of the gauge
find-print-none = Nothing can be read
find-print-read-as = Read as { $what }
find-print-unread = Not understood: { $text }
find-print-fits = { $count ->
    [one] one hose of the tables fits
   *[other] { $count } hoses of the tables fit
 }
find-print-made = made { $when }
find-print-made-or = made { $when }, or { $other }
find-made-quarter = { $quarter ->
    [1] 1st
    [2] 2nd
    [3] 3rd
   *[other] { $quarter }th
 } quarter { $year }
find-made-week = week { $week } of { $year }
find-print-empty = Type what can still be read, ? for each worn letter, “gap” where any number is gone: ??N 853 2S?

## Candidates
find-candidates = What it can be
find-nothing-read = Nothing read yet: everything is still possible.
find-many = { $count } are likely. The first of them:
find-read-on = { $count } are still possible. Read on.
find-withdrawn = No candidates: that number can not be.
find-few = { $count ->
    [one] One is likely.
   *[other] { $count } are likely.
 }
find-decides = { $count ->
    [one] { $what } makes sure.
   *[other] { $what } tells them apart.
 }
find-part-settled = Settled.
find-others = { $count } others, { $percent }
find-more-candidates = All candidates, and why
find-why = { $name } and the readings
find-why-back = Back to the candidates
find-why-none = No reading of this part is kept yet.
find-why-most = up to { $limit }
find-why-least = from { $limit }
find-why-table = table { $range }
find-why-tables = table { $range }, rival { $other }
find-why-blank = blank
find-why-against = Against
find-why-none-of-these = none of these
find-why-readings = What each reading says
find-why-how = Bits of evidence, each doubles the odds: to the right for { $candidate }, to the left for { $rival }.
find-why-bits = { $bits } bits for { $name }
find-why-even = says nothing between the two
find-why-together = How common, other parts, origin
find-why-all = All together
find-why-wrong = { $count ->
    [one] For { $rival } to be right, this reading would have to be wrong: { $readings }.
   *[other] For { $rival } to be right, these readings would have to be wrong: { $readings }.
 }
find-why-none-wrong = No single reading would have to be wrong for { $rival } to be right.
find-why-unverified = The row of { $name } is recalled: nobody has verified it.
find-why-from = Where the rows come from
find-also = No reading tells it apart from:
find-pick = I know it: this one
find-pick-note = { $part ->
    [hose] your word, not measured; Check still asks for all that the readings leave open
   *[end] your word, not measured; Check stops until the readings settle it
 }
find-picked = Your word, not measured: this one stands in the spec.
find-unpick = Take that back

## Going on
find-keep = Keep { $value }
find-then = Next: { $task }
find-then-part = Next: { $part }, { $task }
find-as-a = Looks the same as A
find-skip = Go on
find-outcome = The hose as it was found: ends, hose and length
find-now = Now: { $task }
find-refused = { $what } can not be { $value }: it lies between { $low } and { $high }.
find-then-check = Next: check what may replace it
find-use = Check what may replace it
find-use-then-settled = Hose and both ends are settled.
find-use-then-open = Not settled: { $parts }. Check stops there.
find-use-then-hose = The hose is not settled: the new one has to be as good as all that it can still have been.
find-reach = The hose is (only what can be reached is asked)
find-reach-in-place = still fitted
find-reach-off = off the machine
find-reach-cut = cut open
find-apart-off = Take it off the machine
find-apart-cut = Cut it open, 100 mm from the ferrule
find-apart-then = Then more can be read. Not settled: { $parts }.
find-reach-more-off = Still fitted, it tells no more. Off the machine, more can be read.
find-reach-more-cut = Uncut, it tells no more. Cut open, more can be read.
find-back = Back: { $part }, { $what }
find-readings = All readings
find-readings-of = Readings: { $part }
find-readings-close = Back to the reading
find-cant = can’t tell
find-remove = Remove
find-flange-way = It is a flange
find-thread-way = It has a thread
find-not-read = not read
find-port-read = read
find-print-parts = No caliper tells { $one } from { $other }. Their print does: wipe the hose along its whole length.
find-print-again = Read the print
find-lookalikes-more = { $count } more look-alikes
find-problem = Not answered
find-open-yet = Many are still possible.

# Where the two ends, or the two halves of one, do not go together.
find-odd-ends = Was an end changed? These two families are seldom met on one machine. Read the machine’s half of both.
find-mate-differs = The machine’s half of { $role } does not belong to this end: by its own readings it is { $name }. One of the two was wrong before; settle it on the machine.
