# Words of machines, places and hoses.
machines-back = Back
machines-not-known = Not known
machines-not-written = NOT KEPT
machines-not-read = NOT READ

## Kinds of machines
machines-kind-excavator = Excavator
machines-kind-loader = Loader
machines-kind-forwarder = Forwarder
machines-kind-harvester = Harvester
machines-kind-crane = Crane
machines-kind-drill = Drill rig
machines-kind-tractor = Tractor
machines-kind-truck-mounted = Truck crane
machines-kind-press = Press
machines-kind-other = Other

## What a hose carries

## What an age counts from
machines-counted-assembled = Assembled
machines-counted-hose-made = Hose made
machines-counted-fitted = Fitted
machines-counted-inspected = Inspected
machines-counted-unknown = Day not known

## A spec, a proof and a stay in one line
machines-drop = drop { $drop }
machines-both-ends = { $end } both ends
machines-proof-no-rig = Not proved: no rig
machines-proof-failed = Failed: { $what }
machines-proof-elsewhere = Not proved here
machines-proof-proved = Proved at { $pressure } for { $seconds }, gauge { $gauge }
machines-stay-fitted = fitted { $day }
machines-stay-found = found fitted { $day }
machines-stay-off = off { $day }

## The list
machines-title = Machines
machines-hoses-label = Hoses fitted
machines-fleet = { $sites ->
    [one] { $sitesShown } site
   *[other] { $sitesShown } sites
} · { $machines ->
    [one] { $machinesShown } machine
   *[other] { $machinesShown } machines
}
machines-search = Search
machines-search-hint = Code, place, machine, size
machines-hits = Found
machines-no-hit = Nothing under these words. Try fewer letters, or a code without its dashes.
machines-no-site = No site
machines-none = No machine yet. Add the first, then number its places.
machines-no-machine-here = No machine at this site yet.
machines-hoses = { $count ->
    [one] { $shown } hose
   *[other] { $shown } hoses
}
machines-past = { $shown } past limit
machines-no-day = { $shown } without a date
machines-stopped-count = { $shown } stopped
machines-row-stopped = stopped
machines-row-unsettled = not settled
machines-conflict = Two devices wrote this machine differently. Until a person says which stands, the later is shown.
machines-hit-place = Place { $number }, { $name }
machines-hit-loose = On no machine
machines-hit-site = Site
machines-add-machine = Add a machine
machines-add-machine-here = Add a machine here
machines-add-site = Add a site

## Forms
machines-form-new = New in the register
machines-form-name = Name
machines-form-name-hint = Such as Excavator 7
machines-form-site-hint = Such as North yard
machines-form-kind = Kind
machines-form-site = Site
machines-keep = Keep
machines-keep-machine-then = then number its places
machines-keep-place-then = then it stands in the list
machines-change = Change machine

## One machine
machines-hours-label = Hours
machines-drawing = { $kind } with its numbered places: { $places }.
machines-drawing-bare = { $kind }, no place drawn on it.
machines-read-hours = Read hours
machines-read-hours-how = The figure on the hour meter, in the cab or by the engine.
machines-hours-last = { $hours }, read { $day }
machines-hours-none = Hours never read
machines-hours-same-day = Lower than { $last }, read on { $day }: of two readings of one day the higher one stands, so this one would not show. Is that one wrong?
machines-hours-lower = Lower than { $last }, read on { $day }. A meter does not run back: read it again, or it was changed.
machines-hours-jump = { $last } were read on { $day }. Since then no machine can have run that long: a day has 24 hours.
machines-hours-earlier = Higher than { $last }, read later, on { $day }. A meter does not run back: one of the two is wrong.
machines-at-hours = at { $hours }
machines-hours-strike = Strike out { $hours }
machines-hours-strike-note = read wrong just now
machines-hours-slip = read wrong
machines-circuits = Circuits
machines-circuit-relief = relief { $relief }
machines-circuit-no-relief = relief not known
machines-circuit-add = Add a circuit
machines-circuit-hint = Such as Boom and stick
machines-circuit-relief-how = Set pressure of the relief valve, from its plate or the machine’s papers.
machines-circuit-relief-title = Relief of { $name }
machines-places = Places
machines-place = Place { $number }, { $name }
machines-years = years
machines-no-places = No place yet. Number the places where a hose sits, as on the machine.
machines-place-empty = no hose on record
machines-place-several = { $shown } hoses on record
machines-reason-past = past limit
machines-reason-age-unknown = age not known
machines-reason-stopped = stopped
machines-reason-failed = failed, not replaced
machines-reason-job = job open
machines-over = asked too much
machines-overs = { $count ->
    [one] { $shown } asked too much
   *[other] { $shown } asked too much
}
machines-failed = failed here { $times }
machines-age-unknown = age not known
machines-limit-note = Bold line: limit of service, { $count ->
    [one] { $years } year
   *[other] { $years } years
}. An age counted from the day it was fitted is at least that.
machines-place-add = Add a place
machines-place-number = Number
machines-place-name-hint = Such as Boom cylinder, left
machines-place-taken = { $number } is { $name }. Next free: { $free }.
machines-place-whole = A whole number from 1 to 999.
machines-line = Line
machines-circuit = Circuit
machines-choose = Choose the place
machines-choose-how = its number above, or its row
machines-go-on = Go on at place { $number }
machines-go-on-then = { $name }: the job is not done
machines-of-site = { $count ->
    [one] { $shown } machine
   *[other] { $shown } machines
  }
machines-unfold = show
machines-fold = hide
machines-more = { $shown } of { $count } are shown; search for the others.
