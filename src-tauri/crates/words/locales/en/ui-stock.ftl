# Words of what is kept: hose in pieces, what is counted, and counting a bin.
stock-title = Stock
stock-note = hose, ends, ferrules; low first; count a bin
stock-all-stores = All
stock-store = Store
stock-store-other = another
stock-store-name = Name of the store
stock-store-hint = Van 1, Shop
stock-all-kinds = All
stock-kind = What
stock-kind-hose = Hose
stock-kind-end = Ends
stock-kind-ferrule = Ferrules
stock-kind-adapter = Adapters
stock-kind-sleeve = Sleeves
stock-kind-seal = Seals
stock-kind-other = Other
stock-search = Search
stock-search-hint = name, bin, label
stock-none = Nothing is kept yet. Load what lies in the van, bin by bin.
stock-nothing-found = Nothing here matches.
stock-pick = Pick what is to be looked at or changed.
stock-low = Low
stock-low-at = low: { $mark } is the mark
stock-negative = less than nothing: more went out than came in
stock-negative-means = More went out than was ever taken in. Count it, and say what is really there.
stock-in-bin = bin { $bin }
stock-no-bin = no bin
stock-pieces = { $count ->
    [one] { $count } piece
   *[other] { $count } pieces
  }
stock-reel = Reel
stock-offcut = Offcut
stock-not-useful = shorter than is worth keeping
stock-not-useful-means = Shorter than you said an offcut is worth keeping.
stock-there = pieces

## One thing
stock-piece = Piece
stock-made = Hose made
stock-not-said = not said
stock-all-of-it = All of this hose
stock-bin = Bin
stock-bin-hint = B2
stock-low-mark = Low at
stock-price-each = Price of one
stock-price-metre = Price of a metre
stock-not-priced = not priced
stock-more = Load more of it
stock-correct = It is really another number
stock-correct-note = what you counted
stock-correct-piece-note = what you measured
stock-move = Move
stock-move-note = to another store
stock-scrap = Scrap some
stock-scrap-piece = Scrap this piece
stock-scrap-note = can be taken back

## Asked
stock-keep = Keep it
stock-ask-load = How many come in
stock-ask-length = How long is it
stock-ask-correct = What is really there
stock-ask-scrap = How many are scrap
stock-ask-bin = Where it lies
stock-ask-move = Where it goes
stock-move-where = Pick the store under this first.
stock-move-how = How many go there.
stock-count-how = Count them.
stock-length-how = From the reel’s tally, or measured.
stock-low-how = At this much it stands in the low list.
stock-price-how = Without tax, as you ask it.
stock-price-no-currency = Say the currency first: Van, Prices and store.

## Loading
stock-load = Load
stock-load-then = hose, ends, ferrules, seals
stock-load-title = What comes in
stock-bore = Bore
stock-type = Hose type
stock-form = Leaves the hose
stock-for-hose = For hose
stock-series = Series
stock-series-hint = as your supplier names it
stock-end-size = Size of { $family }
stock-end-gender = Which half
stock-name = Name
stock-name-hint = as on the bag
stock-hose-side = Hose’s side
stock-machine-side = Machine’s side
stock-rating = Rating
stock-rating-how = From its maker. Without one it is not known, and never unlimited.
stock-label = Label on it
stock-label-hint = R3, or nothing

## Done, and taken back
stock-undo = Take it back
stock-undo-reason = taken back at once
stock-did-load = { $amount } loaded: { $name }
stock-did-scrap = { $amount } scrapped: { $name }
stock-did-correct = { $amount } are there: { $name }
stock-did-move = { $amount } to { $to }: { $name }
stock-did-bin = { $name }: { $bin }
stock-did-low = Low mark changed: { $name }
stock-did-price = Price changed: { $name }

## Counting
stock-take = Stock take
stock-take-note = bin by bin
stock-no-camera = No camera here. Type the bin’s name, or take a photograph of its code.
stock-scan-photo = Photograph of the bin’s code
stock-scan-none = No code in that picture. Type the bin’s name.
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
take-save = Save the count
take-save-then = can be taken back
take-saved = { $where } counted, { $count ->
    [0] nothing differs
    [one] { $count } difference saved
   *[other] { $count } differences saved
  }
