# Words of what is kept: hose in pieces, what is counted, and counting a bin.
shelf-title = Stock
shelf-note = hose, ends, ferrules; low first; count a bin
shelf-all-stores = All
shelf-store = Store
shelf-store-other = another
shelf-store-name = Name of the store
shelf-store-hint = Van 1, Shop
shelf-all-kinds = All
shelf-kind = What
shelf-kind-hose = Hose
shelf-kind-end = Ends
shelf-kind-ferrule = Ferrules
shelf-kind-adapter = Adapters
shelf-kind-sleeve = Sleeves
shelf-kind-seal = Seals
shelf-kind-other = Other
shelf-search = Search
shelf-search-hint = name, bin, label
shelf-none = Nothing is kept yet. Load what lies in the van, bin by bin.
shelf-nothing-found = Nothing here matches.
shelf-no-store = This device has no store yet, so nothing can be held against what is there. Load something, or say which store it works from.
shelf-load-first = load the van
shelf-pick = Pick what is to be looked at or changed.
shelf-low = Low
shelf-low-at = low: { $mark } is the mark
shelf-negative = less than nothing: more went out than came in
shelf-negative-means = More went out than was ever taken in. Count it, and say what is really there.
shelf-in-bin = bin { $bin }
shelf-no-bin = no bin
shelf-pieces = { $count ->
    [one] { $count } piece
   *[other] { $count } pieces
  }
shelf-reel = Reel
shelf-offcut = Offcut
shelf-not-useful = shorter than is worth keeping
shelf-not-useful-means = Shorter than you said an offcut is worth keeping.
shelf-there = pieces
shelf-there-count = { $count ->
    [one] piece
   *[other] pieces
  }

## One thing
shelf-piece = Piece
shelf-made = Hose made
shelf-not-said = not said
shelf-all-of-it = All of this hose
shelf-bin = Bin
shelf-bin-hint = B2
shelf-low-mark = Low at
shelf-in-all = { $count } in all
shelf-all-bins = In all bins
shelf-price-each = Price of one
shelf-price-metre = Price of a metre
shelf-not-priced = not priced
shelf-more = Load more of it
shelf-correct = It is really another number
shelf-correct-note = what you counted
shelf-correct-piece-note = what you measured
shelf-move = Move
shelf-move-note = to another store
shelf-scrap = Scrap some
shelf-scrap-piece = Scrap this piece
shelf-scrap-note = can be taken back

## Asked
shelf-keep = Keep it
shelf-ask-load = How many come in
shelf-ask-length = How long is it
shelf-ask-correct = What is really there
shelf-ask-scrap = How many are scrap
shelf-ask-bin = Where it lies
shelf-ask-move = Where it goes
shelf-move-where = Pick the store under this first.
shelf-move-how = How many go there.
shelf-count-how = Count them.
shelf-length-how = From the reel’s tally, or measured.
shelf-low-how = At this much it stands in the low list.
shelf-price-how = Without tax, as you ask it.
shelf-price-no-currency = Say the currency first: Van, Prices and store.

## Loading
shelf-load = Load
shelf-load-then = hose, ends, ferrules, seals
shelf-load-title = What comes in
shelf-bore = Bore
shelf-type = Hose type
shelf-form = Leaves the hose
shelf-for-hose = For hose
shelf-series = Series
shelf-series-hint = as your supplier names it
shelf-end-size = Size of { $family }
shelf-end-gender = Which half
shelf-name = Name
shelf-name-hint = as on the bag
shelf-hose-side = Hose’s side
shelf-machine-side = Machine’s side
shelf-rating = Rating
shelf-rating-how = From its maker. Without one it is not known, and never unlimited.
shelf-label = Label on it
shelf-label-hint = R3, or nothing

## Done, and taken back
shelf-undo-reason = taken back at once
shelf-did-load = { $amount } loaded: { $name }
shelf-did-scrap = { $amount } scrapped: { $name }
shelf-did-correct = { $amount } are there: { $name }
shelf-did-move = { $amount } to { $to }: { $name }
shelf-did-bin = { $name }: { $bin }
shelf-did-low = Low mark changed: { $name }
shelf-did-price = Price changed: { $name }

## Counting
shelf-take = Stock take
shelf-take-note = bin by bin
shelf-no-camera = No camera here. Type the bin’s name, or take a photograph of its code.
shelf-scan-photo = Photograph of the bin’s code
shelf-scan-none = No code in that picture. Type the bin’s name.
take-label = Counted
take-title = Which bin
take-means = Count one bin at a time. Nothing changes until you have seen the differences.
take-which = Bins with something in them
take-all = all of it
take-typed = Or type the bin’s name
take-scan = Scan the bin
take-begin = Count this bin
take-bin = { $store } · bin { $bin }
take-whole = { $store }, all of it
take-known = known: { $known }
take-counted = counted
take-not-there = not there
take-how = Count them. 0: none are there.
take-how-piece = Measure it. 0: it is not there.
take-keep = Counted
take-first = Count the first
take-next = Count the next
take-so-far = { $counted } of { $all } counted
take-empty = Nothing is known to lie here.
take-else = Something else lies here
take-else-note = load it
take-show = Show the differences
take-show-then = before anything is saved
take-differences = Differences
take-row = known { $known }, counted { $counted }
take-none-differs = All is as it was known.
take-not-counted = Not counted
take-not-counted-means = They stay as they are known.
take-changed = Changed since
take-changed-means = A hose was made, or another device told of something, after these were counted. They are not saved: count them again.
take-again = Count them again
take-again-then = the others are still counted
take-save = Save the count
take-save-then = can be taken back
take-saved = { $where } counted, { $count ->
    [0] nothing differs
    [one] { $count } difference saved
   *[other] { $count } differences saved
  }

## What a hose takes
need-title = From { $store }
need-title-none = From the stock
need-name = What this hose takes, against what is there
need-there = { $there } there, { $wanted } wanted
need-short = short: { $there } there, { $wanted } wanted
need-not-kept = not kept here: { $wanted } wanted
need-not-known = not known yet what is wanted
need-bins = bin { $bins }
need-elsewhere = elsewhere: { $where }
need-doubtful = may fit, look at it: { $names }
need-cut-from = Cut from
need-cut-drawing = A cut of { $length }; { $left } are left
need-left = { $left } are left, the saw’s cut taken off.
need-left-no-kerf = { $left } are left, less what the saw takes: that is not set.
need-other-piece = Or cut from
need-substitutes = Hose that would do
need-substitutes-means = Each passed the whole check for this place. It is checked again, and asks its own settings.
need-take-hose = { $name } instead
need-adapters = Adapters, as a last resort
need-adapters-means = One more joint that can leak and one more part with a rating.
need-take-adapter = { $end }: { $names }
need-adapter-leaves = leaves { $pressure }
need-adapter-not-known = rating not known
off-take = Take this off the stock
off-by-hand = Not all of it is there, or known: nothing goes off the stock by itself. Count what you used under Van, Stock.
off-goes = Goes off { $store } with this hose: { $what }
off-hose = { $length } of hose
off-items = { $count } parts
off-rest = What is left of that piece
off-rest-kept = kept
off-rest-scrap = scrap
off-not = Leave the stock as it is

## A hose that was not made after all
undo-title = Not made after all
undo-note = it was recorded by mistake
undo-how = It is struck out of the record, which keeps that it was made and why it was undone. Take its tag off and destroy it.
undo-parts = Its parts
undo-parts-back = Come back: it was never cut or crimped
undo-parts-gone = Are used up or scrap
undo-why = Why
undo-do = Undo it
undo-came-back = Came back: { $what }
undo-nothing-back = Undone. Nothing came back to the stock.

## Prices and store
prices-title = Prices and store
prices-note = this van’s store, offcuts, tax, labour
prices-store = Store and currency
prices-store-name = This device’s store
prices-currency = Currency, by its three letters
prices-currency-hint = EUR
prices-keep = Keep store and currency
prices-kept = Kept.
prices-figures = Figures
prices-offcut = offcut kept from
prices-offcut-how = A rest as long as this is worth keeping; a shorter one is scrap.
prices-tax = tax
prices-tax-how = In percent, on top of the prices.
prices-rate = labour an hour
prices-rate-how = Without tax, as you ask it.
prices-note-blank = What is blank is not said: a total waits for it, and is never reckoned without.
prices-labour = Times
prices-labour-none = No time is set: a quote has parts alone.
prices-per-hose = { $minutes } min a hose
prices-per-job = { $minutes } min a job
prices-remove = Remove
prices-labour-name = What takes time
prices-labour-hint = Make and prove a hose
prices-labour-for = Counted
prices-each-hose = for each hose
prices-each-job = once a job
prices-labour-add = Add with its minutes
prices-minutes = How long it takes
prices-minutes-how = As you ask it, in minutes.
prices-min = min
