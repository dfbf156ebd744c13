# Words that stand on the parts of the screens themselves.

## Title block and ways about
sun-toggle = Sun view: black on white, no colour
chain-name = Steps of the job
chain-done = done
bar-name = Places

## Keypad
keypad-name = Keypad
keypad-rubout = Rub out
keypad-unit = Unit
keypad-point = Decimal sign
keypad-plus = in +
keypad-minus = Change sign
keypad-cant = can’t tell
unit-in = inch
unit-mm = mm
unit-m = m
unit-ft = ft
unit-bar = bar
unit-psi = psi
unit-c = °C
unit-f = °F
unit-l-min = l/min
unit-gpm = gpm

## Letters
letters-name = Letters
letters-space = space
letters-worn = One letter that is worn away
letters-gone = gap
letters-gone-name = Any number of letters that are gone
code-so-far = Code so far: { $code }
code-empty = No letter of the code yet

## Candidates
ruler-name = Candidates on one ruler
ruler-none = none of these
ruler-no-band = no table value
lookalike-title = Look-alike: { $name }

## Findings
finding-source = { $source } · { $basis }
finding-limit-from = Limit from { $source }
basis-published-means = stands in the source named and was read there
basis-derived-means = computed from a published formula
basis-reference-library-means = computed by the library named
basis-common-practice-means = a rule of the trade with no single source
basis-memory-means = recalled and not yet checked against its source
basis-lower-of-two-means = two printed figures differ; the lower one stands
basis-bounded-means = set from the printed figures of the neighbouring sizes
basis-proxy-means = another end with the same thread; never enough for a pass
basis-none-means = stops until you enter your supplier’s figure
basis-yours-means = entered by you

## Ratings and service
links-name = Ratings
link-a = A
link-hose = Hose
link-b = B
link-adapter = Adapter
link-weakest = weakest
link-unknown = not known
service-name = Service

## Label
label-true-size = true size
label-not-true-size = smaller than true size
label-set-scale = set scale with a card

## What a line does
line-pressure = Pressure
line-return = Return
line-suction = Suction
line-case-drain = Case drain
line-pilot = Pilot
line-cylinder = Cylinder

## What a person must see
said-more = { $count } more to see

## Names and signatures
parts-name-erased = name erased
signature-drawn = Signature, as drawn
signature-open = Sign here, on the line
signature-back = Take the last stroke back
signature-clear = Start anew
label-about-true-size = about true size
label-size-and-height = { $size }, { $height } high
scale-context = This screen
scale-title = Set the scale
scale-how = Lay a bank card upright on the drawing, its short side along the top: { $side }. Make the drawing as wide as the card.
scale-card = card
scale-width = Width of the card
scale-narrower = Narrower
scale-wider = Wider
scale-keep = Keep the scale
scale-keep-then = labels then show at true size
not-settled-name = Not settled
not-settled = { $count ->
    [one] { $shown } not settled
   *[other] { $shown } not settled
  }
not-settled-note = devices told it in two ways; until a person settles it, the later is shown

# What was done a moment ago, and what is on record and is to count no more
take-back = Take it back
take-back-not = Leave it as it is
