# Stock, batches, quotes, rounds.
stock-series = series { $series }
stock-not-rated = not rated
stock-ferrule-unnamed = Ferrule (its name is not known: look it up in your supplier's table)
stock-state-there = there
stock-state-short = SHORT
stock-state-not-kept = never kept here
stock-state-not-known = not known
stock-said-negative = { $name } in { $store }: more went than was ever entered. Count it.
stock-said-negative-piece = A piece of { $name } in { $store }: more was cut than there was. Measure it.
stock-said-untold-piece = Something was cut from piece { $name }, of which nobody has told this device yet: merge the device that took it in.
stock-said-conflict = { $name }: two devices changed its place, bin, low mark or price at once. Set it again: that settles it.
stock-said-counted-blind = { $name } in { $store }: it was counted before this device had heard of what another had entered. Nobody knows whether that was counted already: count it again.
stock-said-kerf-not-known = What the saw takes is not known and counts as nothing: set it, or what is left is less than it says.
stock-said-cut-length-not-known = { $name }: a length or cut-off is missing, so the length to cut is not known.
stock-said-overall-taken = { $name }: a cut-off is missing, so as much hose is counted as the finished hose is long. It is cut once the cut-offs are known.
stock-said-currency-not-said = No currency is set: nothing is priced.
stock-said-other-currency = { $name } is priced in { $currency }: it counts as not priced.
stock-said-tax-not-said = The tax is not set: there is no total. Set 0 where there is none.
stock-said-no-labour-rate = No hourly rate is set: work is not priced.
stock-said-hose-old = A piece of { $name } that this would be cut from was made in { $made }, more than { $months } months ago: hose that old is not made into assemblies (the shortest guide age of the tables).
stock-said-hose-age-not-known = { $name }: nobody knows when this piece was made. Look for the date on its layline before it is cut.
stock-said-too-many-pieces = { $name }: there are more pieces than are planned at once; the shortest were left out.
stock-said-nothing-used = { $name }: nothing was taken from stock for it, so what it is made of is not known and there is no total.
stock-said-adapter-not-reckoned = { $name }: its sides or rating can not be reckoned with, so no way with it is shown. Correct it.
stock-list-none = Nothing of that is kept.
stock-list-pieces = { $count ->
    [one] one piece
   *[other] { $count } pieces
  }, { $total }
stock-list-low = LOW
stock-list-negative = BELOW NOTHING
stock-list-short-rest = too short to keep
stock-list-reel = reel
stock-list-offcut = offcut
stock-list-price-metre = { $price } a metre
stock-list-price-one = { $price } each
stock-list-made = made { $made }
stock-list-bin = bin { $bin }
stock-changed = { $count ->
    [0] Nothing was written.
    [one] One change written.
   *[other] { $count } changes written.
  }
stock-changed-piece = New piece { $piece }
stock-take-same = All that was counted is as it was known.
stock-take-row = { $name }: { $counted } counted where { $known } was known ({ $difference }).
stock-take-changed = NOT written down: { $name }. { $counted } counted, but by now { $known } is known: it changed since. Count it again.
stock-take-not-counted = Not counted, left as it is: { $name }, { $known }.
stock-take-saved = Saved.
stock-take-not-saved = Not saved yet; --save writes it down.
stock-need-store = From { $store }:
stock-need-line = { $state }: { $name }, { $wanted } wanted, { $there } there
stock-need-bins = { $bins }
stock-need-doubtful = may be: { $what }
stock-need-elsewhere = { $store } has { $quantity }
stock-need-cut = Cut from the { $sort } of { $length }{ $where }: { $pieces }; { $left } left.
stock-need-substitute = Instead: { $name }, { $length } in one piece{ $where }
stock-need-adapter = Last resort at end { $end }: { $what }; { $pressure } for the assembly. The adapter has a length of its own: measure again.
stock-need-pressure-unknown = pressure not known
stock-undone = Undone.
stock-given-back = Back in stock: { $name }, { $quantity }.
stock-nothing-given-back = Nothing came back to stock.
batch-title = Batch
batch-stopped = Not made
batch-cut-list = Cut from { $hose }
batch-unmade = No piece is long enough for { $pieces }.
batch-parts = Parts
batch-part = What
batch-wanted = Wanted
batch-state = There
batch-bin = Bin
batch-order = At the press
batch-rule = Each set of dies goes into the press once, smallest hose first; within a set the same diameter stays together; ends without a known set come last.
batch-mind = Mind
batch-each = Then, with each hose
batch-cut-reel-kept = Reel of { $length }{ $where }: { $pieces }; { $left } left
batch-cut-reel-scrap = Reel of { $length }{ $where }: { $pieces }; { $left } left
batch-cut-offcut-kept = Offcut of { $length }{ $where }: { $pieces }; { $left } left, keep it
batch-cut-offcut-scrap = Offcut of { $length }{ $where }: { $pieces }; { $left } left, scrap
batch-cut-sum = { $reel } of new hose, { $scrap } scrap. { $proved ->
    [yes] No plan takes less.
   *[no] No plan takes less than { $least } of new hose.
  }
batch-die-set = Die set { $die }: { $crimps }
batch-die-set-unknown = Die set not known: { $crimps }
quote-title = Quote
quote-lines = Parts and work
quote-sums = Sums
quote-what = What
quote-quantity = Quantity
quote-price = Price
quote-amount = Amount
quote-not-priced = not priced
quote-parts-of = Parts of { $name }, not on record
quote-not-priced-list = Not priced: { $what }.
quote-sum = Sum of what is priced
quote-tax = Tax { $percent } %
quote-tax-unknown = Tax not set
quote-total = Total
quote-no-total = no total
round-age-not-known = The age of what sits there is not known: look at it before anything is loaded.
round-hose-not-known = Which hose belongs there is not known.
round-repeated = { $times } hoses failed here. Look for the cause before the same is made again.
round-contradicted = The record contradicts itself about what sits there: look at it first.
round-due = due { $due }
round-nothing = Nothing is due there.
round-load = Load:
round-load-line = { $name }: { $missing } missing of { $wanted }
round-load-nothing = The van has all of it.
stock-undone-tag = Its build was undone: { $reason }
