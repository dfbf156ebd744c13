# Words of several hoses made at once, of quotes and of the day's round.
several-title = Several hoses at once
several-note = one cut list, one order of work
several-label = Hoses
several-none = No hose is in it yet. Pick those of one machine or one visit.
several-hoses = Hoses
several-place = { $machine } · { $number } · { $name }
several-add = Add hoses
several-add-note = open jobs, places of a machine
several-jobs = Jobs that are not done
several-machine = The same again at a machine
several-machine-hint = name of the machine
several-which-machine = Machine
several-in = in it
several-not-known = Nobody knows what belongs there. Measure it first: start its job.
several-work = Work it out
several-work-then = { $count ->
    [one] { $count } hose
   *[other] { $count } hoses
  }
several-cut = cut { $length }
several-cut-open = cut not known: a cut-off is missing
several-count = How many of it
several-count-how = All alike.
several-count-of = { $name }: { $count }, change how many
several-remove = Out
several-remove-name = Take out { $name }
several-empty = Empty the list
several-cuts = Cut list
several-no-cuts = No length to cut is known yet: cut-offs are missing. Enter them in each hose’s job.
several-to-job = Enter its cut-offs
several-cut-drawing = { $stock }, cut into { $pieces }; { $left } left
several-left-kept = { $left } left: back on its shelf
several-left-scrap = { $left } left: scrap
several-unmade = no hose for it:
several-reel = { $reel } of new reel, { $scrap } scrap.
several-proved = No cut list uses less.
several-not-proved = The best that was found; no list can use less than { $least }.
several-parts = Parts
several-order = Order on the press
several-die-changes = { $count ->
    [one] { $count } change of dies
   *[other] { $count } changes of dies
  }
several-die = Dies { $die }
several-die-open = Dies not known yet
several-crimp = { $name }, end { $end }
several-crimp-open = diameter open
several-save = Save the work list
several-save-then = cuts, parts and order, as a page
several-quote = Quote
several-quote-note = prices and tax
several-stopped = A hose of it may not be made: look at its reason above, or take it out.
several-job-gone = This job is done or was given up: take it out.
several-made = made, { $code }
several-labels = Labels
several-labels-note = { $count ->
    [one] of the one that is made
   *[other] of the { $count } that are made
  }
several-each = Then, with each hose

## Quote
quoted-title = Quote
quoted-used = Job total
quoted-used-note = what was used, with prices
quoted-open = Open
quoted-batch = { $count ->
    [one] { $count } hose
   *[other] { $count } hoses
  }
quoted-what = What
quoted-amount = Amount
quoted-line = { $quantity } at { $price }
quoted-open-amount = how much is open
quoted-nothing = Nothing to price: no part went off the stock.
quoted-sum = Sum of what is priced
quoted-tax = Tax { $rate }
quoted-tax-open = Tax: not set
quoted-total = Total
quoted-total-open = not yet
quoted-not-priced = No total until these have prices: { $names }.
quoted-to-stock = Price them in the stock
quoted-save = Save the quote
quoted-save-open = without a total: not all is priced

## The round
visits-title = The round
visits-note = visits of the day, parts to load
visits-label = Visits
visits-from = from { $store }
visits-days = Falls due
visits-within-0 = past already
visits-within-30 = in 30 days
visits-within-90 = in 90 days
visits-within-365 = in 12 months
visits-machines = Machines
visits-nothing = No hose falls due in that time.
visits-in = in it
visits-count = { $count ->
    [one] { $count } hose due
   *[other] { $count } hoses due
  }
visits-load = Load these
visits-all-there = All that the round takes is there.
visits-due = due { $day }
visits-wanted = { $wanted } wanted, { $there } there
visits-there = { $there } there
visits-unknown = Not known how much
visits-missing = { $missing } short
visits-visits = Visits
visits-open = Place
visits-open-name = Open { $name }
visits-batch = Make them as one batch
visits-batch-then = { $count ->
    [one] { $count } hose: cut list and order of work
   *[other] { $count } hoses: cut list and order of work
  }
