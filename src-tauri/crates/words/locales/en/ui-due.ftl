# Words of the list of what falls due.

due-label = Past
due-context = { $sites ->
    [one] { $sitesShown } site
   *[other] { $sitesShown } sites
  } · { $machines ->
    [one] { $machinesShown } machine
   *[other] { $machinesShown } machines
  }
due-title = { $hoses ->
    [one] { $shown } hose in service
   *[other] { $shown } hoses in service
  }
due-sites = Site
due-all-sites = All
due-what = What falls due
due-view-service = Service life { $count }
due-view-inspection = Inspection { $count }

## Ages
due-ages-service = Age of every hose
due-ages-inspection = Since each was last looked at
due-ages-from = Where no inspection is on record, since it was fitted.
due-one-mark = one mark, one hose
due-drawing-inspection = Years since { $count } hoses were last looked at, against a limit of { $limit }; { $over } are past it
due-drawing-service = Ages of { $count } hoses in years against a limit of { $limit }; { $over } are past it
due-limit-guide = { $count ->
    [one] { $years } year
   *[other] { $years } years
}, guide
due-limit-policy = { $count ->
    [one] { $years } year
   *[other] { $years } years
}, yours
due-over = { $count } over
due-year-unit = y
due-other-limits = Some hoses have another limit; each counts by its own in the list.
due-no-ages = No age is known yet.

## List
due-unknown = Age not known
due-unknown-why = No day of make, assembly or fitting is recorded. They are never counted as young: look at the ferrule and the print.
due-past = Past the limit
due-within-30 = Within 30 days
due-within-90 = Within 90 days
due-within-365 = Within 12 months
due-nothing = Nothing falls due here within 12 months.
due-over-by = { $years } y over
due-in-days = { $days ->
    [one] in { $shown } day
   *[other] in { $shown } days
  }
due-since-unknown = ?
due-years = { $years } y
due-not-fitted = Not fitted
due-row-place = { $number } · { $name }
due-row-from = { $from ->
    [assembled] from assembly
    [hose-made] from the hose’s making
    [fitted] from fitting: at least
    [inspected] from the last inspection
   *[unknown] no day known
  }; { $limit ->
    [policy] your { $years } y
   *[guide] guide { $years } y
  }

## Next
due-plan = Plan { $site }
due-plan-then = { $count ->
    [one] { $shown } hose past its limit
   *[other] { $shown } hoses past their limit
  }
due-open = Open { $machine }
due-open-then = place { $number }, { $name }

## Limit and lists
due-policy-service = Set the limit of service life
due-policy-inspection = Set the time between inspections
due-policy-note = { $count ->
    [one] { $years } year
   *[other] { $years } years
} now, { $from ->
    [policy] yours
   *[guide] guide value of the table
  }
due-policy-title-service = Years of service life
due-policy-title-inspection = Years between inspections
due-policy-how-inspection = From one look to the next. Yours stands over the guide value of the table; the maker’s papers, local codes and a place where a burst can hurt someone may ask for less.
due-policy-how-service = From assembly to replacement, storage included. The guide value is 6 years (DIN 20066); yours stands over it. The maker's limit comes first.
due-policy-fleet = Every site
due-policy-keep = Keep this limit
due-policy-crossed = When it is crossed
due-policy-caution = Caution
due-policy-stop = Stop
due-export-xlsx = Save the list
due-export-xlsx-note = spreadsheet
due-export-ics = Save the dates
due-export-ics-note = calendar
due-saved = Saved: { $where }

## How long hoses last here
due-life = How long hoses last here
due-life-note = by type, load and place; failures to expect; age of least cost
due-life-failed = Failed
due-life-by = Put together by
due-life-by-hose = Hose type
due-life-by-line = Line
due-life-percent = { $part } %
due-life-count = { $count ->
    [one] { $shown } hose, { $failed } failed
   *[other] { $shown } hoses, { $failed } failed
  }
due-life-not-known = Not on record
due-life-drawing = { $what }: part still holding over { $years } years since fitting, with bounds. { $count }.
due-life-b10 = One in ten has failed by
due-life-span = { $years } years ({ $low } to { $high })
due-life-few = Too few to tell
due-life-few-why = It takes at least two failures at different ages. Until then these say nothing of how long such hoses last.
due-life-none = Too few failures are on record to tell how long hoses last here.
due-life-left-out = { $count ->
    [one] { $shown } stay is left out: nobody knows when that hose was fitted, or its days contradict.
   *[other] { $shown } stays are left out: nobody knows when those hoses were fitted, or their days contradict.
  }
due-life-how = Years since fitting. Any failure counts, whatever its cause; a hose that came off whole or is still on counts as far as it was watched. Hoses that failed before this register began are not in it.
due-life-bounds = Heavy line: the part that still holds (Kaplan and Meier). Band: 95 % bounds, each for its own year alone; wide means little is known. Thin line: Weibull fit. It describes these machines and promises nothing of the next hose; the maker’s limit and the guide come first.
due-life-by-load = Load
due-life-by-machine = Kind of machine
due-life-by-place = Kind of place
due-life-load-half = Up to half of the rating
due-life-load-three-quarters = Half to three quarters of the rating
due-life-load-full = Three quarters of the rating and more
due-life-load-above = Above the rating
due-life-shape = Shape
due-life-shape-says = { $shape } ({ $low } to { $high }): { $wears ->
    [wears-out] they wear out
    [fails-young] they fail young
   *[other] nobody can tell yet whether they wear out
  }
due-life-next = Next quarter
due-life-next-says = { $failures } failures expected ({ $low } to { $high })
due-life-next-drawing = Failures expected in the next quarter: { $failures }, from { $low } to { $high }
due-life-all = All together
due-life-not-expected = { $count ->
    [one] { $shown } hose is in no expectation: too few of its kind have failed.
   *[other] { $shown } hoses are in no expectation: too few of their kind have failed.
  }
due-life-take = { $more ->
    [one] It takes { $shown } more failure to tell whether such hoses wear out.
   *[other] It takes { $shown } more failures to tell whether such hoses wear out.
  }
due-life-take-years = At the pace so far: { $years } years.
due-life-between = { $count ->
    [one] { $shown } was found failed by an inspection, since nobody knows when.
   *[other] { $shown } were found failed by an inspection, since nobody knows when.
  }
due-life-costs = Age of least cost
due-life-costs-why = What does a failure cost you, with all that comes of it, and what a planned replacement? Only you know.
due-life-failure-cost = A failure
due-life-planned-cost = A planned replacement
due-life-costs-ask = Work it out
due-life-costs-wrong = Two amounts above nothing, the failure the dearer one.
due-life-least = Costs least replaced at
due-life-least-near = Within 5 % of that
due-life-least-range = { $low } to { $high } years
due-life-least-from = from { $low } years
due-life-waiting = No age costs less than waiting for failures, as far as is known.
due-life-cost-drawing = { $what }: cost of replacing at an age, waiting for failures being 100 %. Least at { $age } years, { $part } %.
due-life-cost-first = The maker’s limit and the guide come first, whatever it costs.
due-life-places = More failures than expected
due-life-places-of = { $count ->
    [one] Of { $shown } place that was looked at. Some are bad by chance alone.
   *[other] Of { $shown } places that were looked at. Of so many some are bad by chance alone.
  }
due-life-place-says = { $seen } for { $expected } expected: { $ratio } times ({ $low } to { $high }).
due-life-place-out = Stands out even as the worst of all.
due-life-place-chance = May be chance.
due-life-since = Every failure is on record since
due-life-since-note = Set it where records began later than the hoses: what failed before is not known.
due-life-since-all = From the beginning
due-life-before = { $count ->
    [one] { $shown } stay ended before that day and is not counted.
   *[other] { $shown } stays ended before that day and are not counted.
  }
due-life-paper = Save it as a sheet
due-life-paper-note = PDF, with the curves
