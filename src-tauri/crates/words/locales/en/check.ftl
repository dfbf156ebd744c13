# What a check found: `why-<case>` says what is so, `cure-<case>` what to do about it.
# $value and $limit carry their unit. Other names: $part, $name, $end, $family, $size, $hose, $rival,
# $fluid, $tube, $duty, $rule, $by, $reason.

why-hose-missing = No hose is named.
cure-hose-missing = Name the hose: standard, type and DN.
why-end-missing = End { $end } is not named.
cure-end-missing = Name end { $end }: family, size, male or female, straight or elbow.
why-line-missing = Nobody said what the line does, so suction and oil speed are not looked at.
cure-line-missing = Say whether it is a pressure, return, suction, case drain, pilot or cylinder line.

# Pressure
check-part = { $part ->
    [hose] The hose
    [A] End A
    [B] End B
   *[adapter] The adapter { $name }
}
why-working-pressure-missing = The working pressure is not known.
cure-working-pressure-missing = Read it from the machine's plate or manual, or from a gauge.
why-relief-missing = The relief setting is not known, so the circuit may go higher than its working pressure.
cure-relief-missing = Enter the setting of the relief valve or port relief of this circuit.
why-surge-missing = The highest surge is not known, and a surge counts as pressure.
cure-surge-missing = Enter the highest peak of this circuit, measured or from the machine's maker.
why-surge-reckoned = The highest surge, { $value }, was worked out from flow and closing time, and not measured.
cure-surge-reckoned = Measure it, or ask the machine's maker; an estimate is no measurement.
why-surge-estimated = The highest surge is not known. From the relief of { $relief } bar it is estimated at { $value }, { $factor } times that.
cure-surge-estimated = Measure it, or ask the machine's maker; an estimate is no measurement.
why-surge-estimated-above = The highest surge is not known. From the relief of { $relief } bar it is estimated at { $value }, { $factor } times that; the weakest part carries { $limit }.
cure-surge-estimated-above = Measure the peak before you trust this hose, or choose parts that carry the estimate.
why-relief-below-working = The relief is set to { $value } and the line works at { $limit }; one of the two is wrong.
cure-relief-below-working = Read both again. A relief valve opens above the pressure the line works at.
why-surge-below-working = The highest surge is given as { $value } and the line works at { $limit }; one of the two is wrong.
cure-surge-below-working = Read both again. The surge is the whole peak, the working pressure in it, not what comes on top.
why-pressure-ok = { check-part } may carry { $limit }.
why-pressure-unverified = { check-part } may carry { $limit }, but that figure is recalled and nobody has verified it.
cure-pressure-unverified = Hold it against your supplier's figure.
why-pressure-proxy = { check-part } has no rating of its own; { $limit } is the figure of another end with the same thread.
cure-pressure-proxy = Enter your supplier's rating of this end.
why-pressure-above-rating = { check-part } may carry { $limit }; the line may see { $value }.
cure-pressure-above-rating = Choose a part with a higher rating, or enter your supplier's rating if it is higher.
why-pressure-above-proxy = { check-part } has no rating of its own, and the line may see { $value }, more than the stand-in of { $limit }.
cure-pressure-above-proxy = Enter your supplier's rating of this end.
why-pressure-unknown = { check-part } has no known rating, and not known is never unlimited.
cure-pressure-unknown = { $part ->
    [hose] Choose a hose whose working pressure is in the tables.
   *[other] Enter your supplier's rating.
}

# Temperature
why-heat-missing = Nobody said how hot the fluid gets.
cure-heat-missing = Enter the hottest the fluid gets.
why-heat-ok = { $hose } bears fluid up to { $limit }.
why-heat-unverified = { $hose } bears fluid up to { $limit }, but that row of the table is not verified.
cure-heat-unverified = Hold it against your supplier's figure.
why-heat-above-limit = { $hose } bears fluid up to { $limit }; it gets { $value }.
cure-heat-above-limit = Choose a hose for hotter fluid, or find out why the fluid gets so hot.
why-fluid-heat-ok = With { $fluid } this hose bears up to { $limit }.
why-fluid-heat-unverified = With { $fluid } this hose bears up to { $limit }, but that figure is not verified.
cure-fluid-heat-unverified = Ask your supplier how hot this fluid may get in this hose.
why-fluid-heat-above-limit = With { $fluid } this hose bears up to { $limit }; the fluid gets { $value }.
cure-fluid-heat-above-limit = Choose a hose made for this fluid at that heat.
why-cold-missing = Nobody said how cold the fluid gets.
cure-cold-missing = Enter the coldest the fluid gets: a cold start in winter counts.
why-cold-ok = { $hose } bears cold down to { $limit }.
why-cold-unverified = { $hose } bears cold down to { $limit }, but that row of the table is not verified.
cure-cold-unverified = Hold it against your supplier's figure.
why-cold-below-limit = { $hose } bears cold down to { $limit }; it gets { $value }.
cure-cold-below-limit = Choose a hose for lower temperatures.
why-frost-ok = { $fluid } stays above { $limit }.
why-frost-unverified = { $fluid } stays above { $limit }, but that limit is not verified.
cure-frost-unverified = Ask your supplier how cold this fluid may get in this hose.
why-frost-below-limit = { $fluid } may not get colder than { $limit } in this hose; it gets { $value }.
cure-frost-below-limit = Keep the line from freezing, or use another fluid and hose.
why-ambient-missing = Nobody said how hot the air round the hose gets.
cure-ambient-missing = Enter the hottest air round the hose: an engine or an exhaust nearby counts.
why-ambient-ok = The air stays within the { $limit } of { $hose }.
why-ambient-unverified = The air stays within the { $limit } of { $hose }, but that row of the table is not verified.
cure-ambient-unverified = Hold it against your supplier's figure.
why-ambient-above-limit = The air gets { $value }; { $hose } bears { $limit }.
cure-ambient-above-limit = Route the hose away from the heat or shield it, or choose a hotter hose.

# Fluid
why-fluid-missing = Nobody said what flows in it.
cure-fluid-missing = Enter the fluid by its class (HM, HFC) or name; the machine's plate or manual has it.
why-fluid-unknown = { $fluid } is not in the tables, so nothing is known of what it does to the hose.
cure-fluid-unknown = Name the fluid by its class (HM, HFC); if it has none, ask the supplier of the hose.
why-fluid-excluded = The standard of { $hose } excludes { $fluid }.
cure-fluid-excluded = Choose a hose made for { $fluid }.
why-fluid-not-named = The standard of { $hose } does not name { $fluid }.
cure-fluid-not-named = Ask your supplier whether this hose is released for { $fluid }.
why-fluid-tube-unknown = The tube of { $hose } is not known, so { $fluid } may destroy it.
cure-fluid-tube-unknown = Choose a hose whose tube is in the tables.
why-fluid-unrated = Nothing is known of { $fluid } in a tube of { $tube }.
cure-fluid-unrated = Choose a hose whose tube is known to stand { $fluid }.
why-fluid-destroys-tube = { $fluid } destroys a tube of { $tube }.
cure-fluid-destroys-tube = Choose a hose with a tube that stands { $fluid }.
why-fluid-limited = A tube of { $tube } stands { $fluid } only for weak duty.
cure-fluid-limited = Ask your supplier whether this hose is released for { $fluid }.
why-fluid-unverified = A tube of { $tube } is said to stand { $fluid }, but nobody has verified it.
cure-fluid-unverified = Ask your supplier whether this hose is released for { $fluid }.
why-fluid-ok = A tube of { $tube } stands { $fluid }.
why-out-of-scope = { $line ->
    [brake-line] { $fluid }: brakes of road vehicles are refused. They have their own standards, hose and approvals.
    [steam] { $fluid }: steam is refused. It needs a rubber of its own and hose that bursts at ten times its pressure.
    [compressed-air] { $fluid }: compressed air and gas are refused. Gas stores far more energy than oil, and hydraulic hose is not rated for it.
    [fuel-gas] { $fluid }: fuel gas is refused. It needs approved hose and licensed practice; a leak explodes.
    [refrigerant] { $fluid }: refrigerant is refused. It goes through hydraulic hose and boils in it.
    [oxygen] { $fluid }: oxygen is refused. Oil in an oxygen line catches fire.
    [water-jetting] { $fluid }: water jetting is refused. Its hoses have their own standards, and the jet cuts.
   *[other] { $fluid } is refused: it is another trade's, with rules of its own.
}
cure-out-of-scope = Send it to whoever is licensed or equipped for such lines.

# Bend
why-bend-missing = The bend is not checked: nobody said how tight it is.
cure-bend-missing = Measure the tightest radius at the inside of the bend, or work out the route.
why-bend-ok = { $hose } may be bent to { $limit } at the inside; it is bent to { $value }.
why-bend-estimated-ok = { $hose } may be bent to { $limit } at the inside; by the route it is bent to { $value }, an estimate.
why-bend-estimated-near = { $hose } may be bent to { $limit } at the inside; by the route it is bent to { $value }. An estimate can not tell so little apart.
cure-bend-estimated-near = Give it more room, or measure the tightest bend once it is fitted.
why-bend-unverified = { $hose } may be bent to { $limit } at the inside, but that figure is recalled and nobody has verified it.
cure-bend-unverified = Enter your supplier's minimum bend radius of this hose (min_bend_radius_mm).
why-bend-too-tight = The bend is { $value } at the inside; { $hose } needs { $limit }.
cure-bend-too-tight = Choose a hose that bends tighter, an elbow end, or a longer route.
why-bend-limit-unknown = How tight { $hose } may be bent is not known, and not known is never unlimited.
cure-bend-limit-unknown = Enter your supplier's minimum bend radius of this hose (min_bend_radius_mm), or choose a hose whose bend radius is in the tables.

# Duties of the place
why-duty-ok = The { $duty } duty of the place is kept.
why-duty-cover-missing = The place asks for { $duty } hose, and the spec does not say that this hose is.
cure-duty-cover-missing = Choose a hose that is printed or marked as { $duty }, and say so in the spec.
why-duty-wire-conducts = The place asks for { $duty } hose, and this hose has, or may have, wire in it. Near power lines that can kill.
cure-duty-wire-conducts = Choose a textile hose marked as { $duty }.

# Suction
why-vacuum-missing = Nobody said how deep the vacuum gets; { $hose } bears { $limit }.
cure-vacuum-missing = Enter the lowest absolute pressure at the pump's inlet.
why-vacuum-ok = { $hose } bears a vacuum down to { $limit }.
why-vacuum-unverified = { $hose } bears a vacuum down to { $limit }, but that figure is recalled and nobody has verified it.
cure-vacuum-unverified = Enter your supplier's figure for this hose (vacuum_kpa_abs of the hose).
why-vacuum-too-deep = The line goes down to { $value }; { $hose } bears { $limit } and collapses below.
cure-vacuum-too-deep = Choose a suction hose for a deeper vacuum, or a larger bore.
why-vacuum-unrated = { $hose } has no vacuum rating and may collapse.
cure-vacuum-unrated = Enter your supplier's figure for this hose (vacuum_kpa_abs of the hose), or choose a suction hose with a vacuum rating.
why-suction-helix-ok = A helix holds the hose open.
why-suction-helix-missing = { $hose } has no helix that holds it open under suction.
cure-suction-helix-missing = Choose a suction hose with a helix.

# Flow
why-flow-missing = The oil speed is not checked: nobody said how much flows.
cure-flow-missing = Enter the flow of the pump or valve.
why-flow-ok = The oil runs at { $value }; up to { $limit } is usual in such a line.
why-flow-too-fast = The oil runs at { $value }; up to { $limit } is usual in such a line. It gets hot and loses pressure.
cure-flow-too-fast = No size of this type is wide enough: { $bore } mm is needed. Lead the oil through two hoses, or take it on with your name and reason.
why-flow-too-fast-size = The oil runs at { $value }; up to { $limit } is usual in such a line. It gets hot and loses pressure.
cure-flow-too-fast-size = { $hose } brings it to { $speed } m/s and was put through the same check. Or take it on with your name and reason.
why-flow-too-fast-stopped = The oil runs at { $value }; up to { $limit } is usual in such a line. It gets hot and loses pressure.
cure-flow-too-fast-stopped = A bore of { $bore } mm would do, but the check stops { $hose } as it stands. Cure that first, or take it on with your name and reason.

# Ends
why-end-ok = End { $end } is settled: { $family } { $size }.
why-end-not-read = Nothing was read that says end { $end } is { $family } { $size }.
cure-end-not-read = Gauge the old end and the machine's half, thread and seat, before it is made.
why-end-unsettled = End { $end } is not settled. A wrong end can screw on and blow off.
cure-end-unsettled = Take the next reading, gauge the machine's half, or replace both halves.
why-end-differs = What was read of end { $end } is not { $family } { $size }.
why-adapter-misfit = End { $end }, { $family } { $size }, does not screw into the adapter that is to sit on it.
why-adapters-stacked = More than one adapter is said to sit on end { $end }: which of them the machine sees nobody can say.
cure-adapters-stacked = Use one adapter that goes from the end to the machine, or the right end.
cure-adapter-misfit = Take an adapter whose hose side is the other half of { $family } { $size }.
cure-end-differs = Take the end that was read, or replace both halves.
why-end-gender-missing = Nobody said whether end { $end } is male or female.
cure-end-gender-missing = Say which half end { $end } is.
why-end-form-missing = Nobody said whether end { $end } is straight or an elbow.
cure-end-form-missing = Say the form of end { $end }.
why-end-drop-missing = End { $end } is bent and its drop is not known. A wrong drop does not fit.
cure-end-drop-missing = Measure the drop from the hose's axis to the centre of the sealing face.
why-size-ok = End { $end } ({ $family } { $size }) is of the hose's size.
why-size-jump = End { $end } ({ $family } { $size }) goes with { $value }, the hose is { $limit }: a jump size.
cure-size-jump = Check that the jump size is meant and that your supplier has it.
why-size-unknown = The tables do not say which hose size end { $end } ({ $family } { $size }) goes with.
cure-size-unknown = Check with your supplier that this end is made for this hose size.

# The original
why-original-missing = Nothing is known of the hose that was there.
cure-original-missing = Read what is left of its printing, or measure it, before you trust the replacement.
why-original-unknown = The hose that was there may be none of the tables'.
cure-original-unknown = Take more readings, or find the machine's parts list.
why-original-pressure-ok = { $hose } carries at least the { $limit } of { $rival }.
why-original-pressure-above = It may have been { $rival }, which carries { $limit }; { $hose } carries { $value }.
cure-original-pressure-above = Settle what it was, or choose a hose that carries as much.
why-original-pressure-unknown = It may have been { $rival }, and what that carries is not known.
cure-original-pressure-unknown = Find the pressure printed on the old hose, or the machine's parts list.
why-original-edition-open = { $year ->
    [unknown] Hoses marked { $rival } carried { $value } by older editions of the standard and { $limit } by newer ones. Nothing read tells which; the higher counts.
   *[other] Hoses marked { $rival } carried { $value } before { $year } and { $limit } since. Neither a printed pressure nor a date tells which it was; the higher counts.
}
cure-original-edition-open = Find the pressure printed on the old hose or its date of manufacture.
why-original-edition-newer-ok = The old hose, { $rival }, is of the newer edition: it carried { $limit }, not { $value }.
why-original-edition-older-ok = The old hose, { $rival }, is of the older edition: it carried { $value }, not { $limit }.
why-printed-pressure-ok = { $hose } carries at least the { $limit } printed on or recorded for the old hose.
why-printed-pressure-above = The old hose carried { $limit }; { $hose } carries { $value }.
cure-printed-pressure-above = Choose a hose that carries as much as the old one.
why-original-bore-ok = { $hose } is of the size that was there.
why-original-bore-larger = It may have been { $rival }, { $limit }; { $hose } is smaller and chokes the line.
cure-original-bore-larger = Settle what it was, or choose the larger bore.
why-original-bore-smaller = It may have been { $rival }, { $limit }; { $hose } is larger.
cure-original-bore-smaller = Settle what it was, and check that the larger hose fits and bends.
why-original-heat-ok = { $hose } bears the { $limit } of { $rival }.
why-original-heat-above = It may have been { $rival }, which bears { $limit }; { $hose } bears { $value }.
cure-original-heat-above = Enter how hot the fluid gets, or choose a hose that bears as much.
why-original-heat-measured = It may have been { $rival }, which bears { $limit }; { $hose } bears { $value }, enough for the heat you gave.
cure-original-heat-measured = Make sure the heat you gave is the hottest it gets.
why-original-cold-ok = { $hose } bears the cold of { $limit } of { $rival }.
why-original-cold-below = It may have been { $rival }, which bears { $limit }; { $hose } bears { $value }.
cure-original-cold-below = Enter how cold the fluid gets, or choose a hose that bears as much.
why-original-cold-measured = It may have been { $rival }, which bears { $limit }; { $hose } bears { $value }, enough for the cold you gave.
cure-original-cold-measured = Make sure the cold you gave is the coldest it gets.
why-original-bend-ok = { $hose } bends as tight as { $rival }, { $limit }.
why-original-bend-tighter = It may have been { $rival }, which bends to { $limit }; { $hose } does not, and nobody measured the bend.
cure-original-bend-tighter = Measure the tightest radius at the inside of the bend, or choose a hose that bends as tight.
why-original-vacuum-ok = { $hose } bears the vacuum of { $rival }, { $limit }.
why-original-vacuum-deeper = It may have been { $rival }, a suction hose; { $hose } is none, and nobody said what the line does.
cure-original-vacuum-deeper = Say what the line does, or choose a suction hose.
why-original-vacuum-not-asked = It may have been { $rival }, a suction hose; { $hose } is none.
cure-original-vacuum-not-asked = Make sure that nothing sucks on this line.

# Length and turn
why-length-missing = The overall length is not known.
cure-length-missing = Measure from sealing point to sealing point, nuts pushed back.
why-cutoff-missing = The cut-off of end { $end } is not known, so the cut length is not either.
cure-cutoff-missing = Take it from your supplier's table, or measure a new end from sealing point to hose stop.
why-cut-length-ok = { $value } of hose is cut.
why-cut-length-impossible = The cut-offs are as long as the whole: { $value } of hose would be left.
cure-cut-length-impossible = Measure the overall length and both cut-offs again.
why-length-tolerance-unknown = The practice gives no tolerance for this size and length.
cure-length-tolerance-unknown = Agree one with whoever ordered it.
why-turn-ok = The turn between the two elbows is { $value }.
why-turn-missing = Both ends are bent and the turn between them is not known.
cure-turn-missing = Look along the hose from A to B with A's elbow up; read the angle clockwise to B's elbow.

# What was not looked at
not-checked-surge = The surge: it was not measured.
not-checked-relief = The relief setting.
not-checked-heat = How hot the fluid gets.
not-checked-cold = How cold the fluid gets.
not-checked-ambient = How hot the air gets.
not-checked-fluid = The fluid.
not-checked-line = What the line does.
not-checked-vacuum = The vacuum.
not-checked-original = What the hose that was there was.
not-checked-flow = The speed of the oil.
not-checked-bend = The bend.
not-checked-route = The route over the machine's travel, and its twist.
not-checked-pressure-drop = The pressure that is lost in the line.

# The place and its circuit
why-belongs-bore = This hose is { $hose }; { $there } belongs here.
cure-belongs-bore = Fit it where it belongs. A smaller bore chokes the line, and a larger hose needs room for its bend.
why-belongs-ends = This hose has { $hose }; what belongs here has { $there }.
cure-belongs-ends = Fit it where it belongs. Ends that only seem to go together leak or come apart.
why-belongs-shorter = This hose is { $value } long; { $limit } belongs here.
cure-belongs-shorter = Look at it through the whole travel of the machine: a hose that is too short is pulled out of its ends.
why-belongs-longer = This hose is { $value } long; { $limit } belongs here.
cure-belongs-longer = Look at it through the whole travel of the machine: a hose that is too long rubs and kinks.
why-circuit-sister-weaker = Place { $place } is on the same circuit, and its hose carries { $limit }; this one carries { $value }. One of the two may be the wrong hose.
cure-circuit-sister-weaker = Look at the hose of place { $place }: it sees the same pressure.
why-circuit-weaker = Place { $place } is on the same circuit, and its hose carries { $limit }; this one carries { $value }. The old hose here may have been a wrong one.
cure-circuit-weaker = Find out what the machine's parts list asks for before you make the same again.
why-circuit-relief-above = The relief of this circuit is set to { $value }; the hose of place { $place } carries { $limit }.
cure-circuit-relief-above = Set the relief lower, or fit a hose that carries it.
why-circuit-unknown = Place { $place } is on the same circuit, and what one of the two hoses carries is not known.
cure-circuit-unknown = Read the printing of both.
why-circuit-ok = The hose of place { $place } on the same circuit carries { $limit }; this one carries { $value }.
why-failed-before = A hose failed here once before: { $causes }.
cure-failed-before = See that the cause is gone before you make the same again.
why-failed-repeatedly = Hoses failed here { $value } times before: { $causes }.
cure-failed-repeatedly = Go the long way: route, flow and the cause, before anything is made.

# The route as it is asked in the field
why-route-travel-missing = Nobody said whether the machine moves this hose.
cure-route-travel-missing = Enter the open pose, or say that nothing moves.
why-route-rigid-assumed = The rigid length of end { $end } is not known; { $value } is taken, in plain proportion to the hose.
cure-route-rigid-assumed = Measure end { $end } along the hose: from the sealing point to the end of the ferrule.
why-route-drop-assumed = The drop of the elbow at { $end } is not known; { $value } is taken, in plain proportion to the hose.
cure-route-drop-assumed = Measure the drop at { $end }: from the hose's axis to the centre of the sealing face.
why-route-change-ok = Under pressure { $hose } may change its length by { $value } to { $limit }; every length of these was looked at.
why-route-change-unverified = Under pressure { $hose } may change its length by { $value } to { $limit }, but that figure is recalled and nobody has verified it.
cure-route-change-unverified = Enter your supplier's figure for this hose.
why-route-change-taken = The standard of { $hose } says nothing of how its length changes under pressure; { $value } to { $limit }, as for most rubber hose, is taken.
cure-route-change-taken = Enter your supplier's figure for this hose.
why-route-straight-line-ok = The hose lies straight.
why-route-near-limit = The bend is { $value } at the inside; { $hose } needs { $limit }. An estimate can not tell so little apart.
cure-route-near-limit = Give it more room, or measure the tightest bend once it is fitted.
why-route-rival = The hose may fall into another shape that is bent to { $value } at the inside; { $hose } needs { $limit }.
cure-route-rival = Guide it with a clamp so that it can only lie one way, or change its length.
why-route-behind-ok = { $straight } mm of hose, { $times } times its diameter, can lie straight behind each ferrule, and the rest keeps its radius.
why-route-behind-short = With { $straight } mm of hose straight behind each ferrule, { $times } times its diameter, the rest would be bent to { $value }; it needs { $limit }. Only the least in use, once the diameter, is left.
cure-route-behind-short = Make it longer, or turn the bend away from the ferrule with an elbow.
why-route-behind-none = There is no room for { $straight } mm of straight hose behind each ferrule, the least in use: the rest would be bent to { $value }; it needs { $limit }. The hose kinks at the ferrule.
cure-route-behind-none = Make it longer, or turn the bend away from the ferrule with an elbow.
why-route-twist-ok = The travel twists the hose by { $value }.
why-route-twist = The travel twists the hose by { $value }. At { $limit } a hose may lose 70 % of its life.
cure-route-twist = Lay the hose so that it bends in the plane in which the machine moves, or put a swivel joint at one end.
why-route-turn-ok = The turn of { $value } is the one that these ports ask for.
why-route-turn-needed = Both ends are bent, and these ports ask for a turn of { $limit } between them.
cure-route-turn-needed = Make it with that turn: from A to B with A's elbow up, clockwise to B's elbow.
why-route-turn-differs = It is made with a turn of { $value }; these ports ask for { $limit }. It would be twisted as it is fitted.
cure-route-turn-differs = Make it with a turn of { $limit }, or let one elbow point another way.
why-route-too-short = A hose of { $value } does not reach in every pose, shortened by pressure as it may be.
cure-route-too-short = It needs { $limit } at least.
why-route-out-of-reach = A hose of { $value } does not reach in every pose, shortened by pressure as it may be.
cure-route-out-of-reach = Make it longer, move or turn a port, or take an elbow.
why-route-unsettled = No shape was settled on at { $value }.
cure-route-unsettled = Try a slightly different length.
why-route-no-length = No length of { $hose } keeps { $limit } at the inside in every pose.
cure-route-no-length = Take an elbow, move or turn a port, or choose a hose that bends tighter.

# Single changes that cure a route
route-cure-length = Make it { $length } long.
route-cure-exit = Let the elbow at { $end } point { $points }; make it { $length } long.
route-cure-form = Take a { $form } at { $end }, pointing { $points }; make it { $length } long.
points-towards = towards the other port
points-away = away from the other port
points-front = towards you
points-back = away from you

# Overrides
why-override-taken = { $by } takes this on: { $reason }
cure-override-taken = Nothing, as long as the reason holds.
why-override-refused = { $rule } may not be overridden.
cure-override-refused = Cure what it says. Only limits of prudence can be taken on with a name and a reason.
why-override-unsigned = The override of { $rule } has no name or no reason.
cure-override-unsigned = Give both: who takes it on, and why.

# Other hoses
why-alternative-twin-ok = { $hose } is named as its equal by the standards' own cross references.
why-alternative-pressure-ok = It carries more: { $value } against { $limit }.
why-alternative-bend-ok = It bends tighter: { $value } against { $limit }.
why-alternative-pressure-less = It carries less: { $value } against { $limit }.
cure-alternative-pressure-less = Make sure that the circuit asks for no more.
why-alternative-bend-wider = It needs a wider bend: { $value } against { $limit }.
cure-alternative-bend-wider = Make sure that the place has the room.
why-alternative-same = What speaks against your hose speaks against this one just the same.
cure-alternative-same = Cure that first.
