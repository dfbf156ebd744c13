# Words of the check: may it be made.

check-title = May it be made?
check-first = The maker’s instructions, local codes and licensed practice come first.
check-passes = All that was looked at is within its limit.
check-not-entered = Not entered yet: { $count }
check-weigh = { $count ->
    [one] 1 thing to weigh
   *[other] { $count } things to weigh
}
check-bar-max = bar max
check-psi = { $psi } psi
check-psi-max = psi max
check-bar = { $bar } bar
check-refused = NOT CHECKED
check-refused-nought = { $field } is { $value }. Give a figure above 0, or leave it not known.
check-to-fit = Go on fitting
check-to-fit-then = the hose is made and on the record
check-same = Same for same: made as the record says. Not looked at:
check-estimated = { $value } est.
check-drawing = The assembly: end A at the left, end B at the right, overall length between the sealing points
check-cut-length = cut { $length }
check-more-pass = { $count ->
    [one] 1 more passes
   *[other] { $count } more pass
}
check-all-pass = { $count ->
    [one] 1 limit passes
   *[other] { $count } limits pass
}
check-at-least = min { $limit }
check-make = Make it
check-make-cautions = { $count ->
    [one] with 1 caution kept on the sheet
   *[other] with { $count } cautions kept on the sheet
}
check-keep = Keep { $value }
check-now = now { $value }
check-back = Back
check-not-known = not known
check-of-end = { $end }: { $label }
check-spec = What is made
check-hose-not-listed = A hose that is not listed here
check-swapped = { $hose } instead of { $was }
check-to-route = Work out the bend
check-to-oil = See what the oil does
check-to-surge = Estimate the surge
check-at-place = What is known of this place
check-sister = { $number } { $name }
check-sister-none = no hose known
check-sisters = On the same circuit { $circuit }
check-alternatives-word = Other hoses put through the same check

check-adapter-name = Name of the adapter
check-adapter-add = Add the adapter
check-adapter-rate = Rate { $name }
check-adapter-remove = Remove { $name }
check-adapter-named = Adapter { $name }
check-turn-other = Another turn
check-clock = Turn, looking along the hose from A to B
check-weakest = weakest

## Overrides
check-take-on = Take it on, with a name and a reason
check-by = Name
check-reason = Reason

## What a finding is called
check-title-hose = Hose
check-title-end = End { $part }
check-title-line = What the line does
check-title-pressure = { $part ->
    [hose] Pressure, hose
    [adapter] Pressure, { $name }
   *[other] Pressure, end { $part }
}
check-title-working = Working pressure
check-title-relief = Relief setting
check-title-surge = Surge
check-title-heat = Oil heat
check-title-fluid-heat = Heat of this fluid
check-title-cold = Cold
check-title-frost = Frost
check-title-ambient = Air round the hose
check-title-fluid = Fluid
check-title-bend = Bend, tightest
check-title-duty = Duty of the place
check-title-vacuum = Vacuum
check-title-helix = Helix
check-title-flow = Flow speed
check-title-end-read = End { $part }, as read
check-title-end-gender = End { $part }, male or female
check-title-end-form = End { $part }, form
check-title-end-drop = End { $part }, drop
check-title-size = End { $part }, size
check-title-original = The original
check-title-original-pressure = Pressure of the original
check-title-printed-pressure = Pressure printed
check-title-original-bore = Bore of the original
check-title-original-heat = Heat of the original
check-title-original-cold = Cold of the original
check-title-original-bend = Bend of the original
check-title-original-vacuum = Vacuum of the original
check-title-length = Overall length
check-title-cutoff = Cut-off, end { $part }
check-title-cut = Cut length
check-title-tolerance = Length tolerance
check-title-turn = Turn
check-title-route-travel = Travel
check-title-route-rigid = Stiff length, end { $part }
check-title-route-change = Length under pressure
check-title-route-rival = Two shapes are near
check-title-route-behind = Straight behind the ferrule
check-title-route-twist = Twist over the travel
check-title-circuit = Same circuit
check-title-failed = Failed here before
check-title-override = Override

## The next thing to do
check-go-read = Gauge end { $end }
check-go-take-read = Take the end read at { $end }
check-go-read-hose = Read the old hose
check-own-word = YOUR WORD
check-go-settle-hose = Read more of the old hose
check-own-hose = Not measured: the hose was { $name }. The readings do not settle it, so the new one has to be as good as all that they leave open.
check-own-end = Not measured: end { $end } is { $name }. It is not settled before the readings say so.
check-go-end = Name end { $end }
check-go-change-end = Say it of end { $end }
check-go-other-end = Change end { $end }
check-go-other-hose = Choose another hose
check-go-size = Take { $hose }
check-go-rating = Enter the rating of end { $end }
check-go-supplier-rating = Enter the supplier’s rating of end { $end }
check-go-change = Put it right
check-go-hose = Name the hose
check-go-working = Enter the working pressure
check-go-fluid = Enter the fluid
check-go-heat = Enter how hot it gets
check-go-cold = Enter how cold it gets
check-go-bend = Enter the bend
check-go-hose-bend = Enter your supplier’s bend radius
check-go-hose-vacuum = Enter your supplier’s vacuum
check-go-line = Say what the line does
check-go-length = Enter the overall length
check-go-turn = Say how B is turned
check-go-cover = Say what the cover is
check-go-adapters = Enter the adapter’s rating
check-go-adapter-change = Change the adapter

## Fields
check-working = working
check-working-how = From the machine’s plate or manual, or from a gauge.
check-relief = relief
check-relief-how = Setting of the relief valve or port relief of this circuit.
check-surge = surge
check-surge-how = The highest peak, measured or from the machine’s maker.
check-fluid = fluid
check-fluid-how = By its class: the machine’s plate or manual has it.
check-fluid-usual = usual hydraulic oil, 32, 46 or 68: { $name }
check-cold = oil, coldest
check-cold-how = A cold start in winter counts.
check-hot = oil, hottest
check-hot-how = The hottest the fluid gets in this line.
check-air = air, hottest
check-air-how = An engine or an exhaust nearby counts.
check-flow = flow
check-flow-how = What the pump or valve gives.
check-line = line
check-line-how = What the line does.
check-bend = bend
check-bend-how = The tightest radius, at the inside of the bend.
check-vacuum = vacuum
check-vacuum-how = The lowest absolute pressure at the pump’s inlet.
check-duties = duties
check-duties-how = What the place asks beyond pressure.
check-hose = hose
check-hose-bend = bend of the hose, yours
check-hose-bend-how = The smallest radius at the inside of the bend, from your supplier. It stands over the table’s.
check-hose-vacuum = vacuum of the hose, yours
check-hose-vacuum-how = The lowest absolute pressure inside, from your supplier. It stands over the table’s.
check-end-a = end A
check-end-b = end B
check-end-how = The family, then the size.
check-gender = half
check-gender-how = Thread on the outside is male.
check-form = form
check-drop = drop
check-drop-how = From the hose’s axis to the centre of the sealing face.
check-cutoff = cut-off, yours
check-cutoff-how = Yours: from sealing point to hose stop, from your supplier or measured.
check-rating = rating, yours
check-rating-how = Yours, from your supplier. It stands over the table’s.
check-rating-from = where the rating is from
check-rating-from-how = The supplier, and the table or page that gives this figure. It stands over the table’s here, so it is marked as yours and goes on the record.
check-rating-from-label = End { $end }, { $value }: by which table or supplier
check-rating-unsaid = nobody said from where
check-own-rating = { $value } AT { $end }: YOURS
check-own-rating-from = Not the table’s. From: { $from }.
check-own-rating-note = End { $end } is rated { $value } by the fitter’s own figure, from: { $from }
check-adapters = adapters
check-adapters-how = Each part between hose end and machine, with its rating.
check-length = overall length
check-length-how = From sealing point to sealing point, nuts pushed back.
check-turn = turn
check-turn-how = Look along the hose from A to B with A’s elbow up: clockwise to B’s elbow.
check-cover = cover
check-cover-how = As printed or marked on the hose.
