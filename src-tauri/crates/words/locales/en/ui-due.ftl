# Words of the list of what falls due.

due-label = Past
due-context = { $sites ->
    [one] { $sitesShown } site
   *[other] { $sitesShown } sites
  } · { $machines ->
    [one] { $machinesShown } machine
   *[other] { $machinesShown } machines
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
due-stopped-title = Stopped
due-within-30 = Within 30 days
due-within-90 = 31 to 90 days
due-within-365 = 91 days to 12 months
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
  }
due-row-finding = { $name }, seen { $day }
due-row-hours = { $known ->
    [yes] { $run } h of { $limit } h since fitting
   *[no] limit { $limit } h
  }{ $rated ->
    [yes] , at { $rate } h a day of its own
   *[no] {""}
  }
due-row-yours = yours { $years } y{ $stop ->
    [yes] , a stop
   *[no] {""}
  }
due-row-guide = guide { $years } y
due-row-asked = by what its place asks
due-row-risk = { $chance } × { $of }
due-guide-sources = Guide: { $sources }
due-row-consequence = consequence { $of } of 5: { $why }
due-hours-no-hours-at-fitting = hours do not count: none on record when it was fitted
due-hours-no-reading = hours do not count: none read yet
due-hours-no-rate = hours do not count: one reading gives no rate
due-hours-meter-set-back = hours do not count: the meter shows less than when it was fitted
due-row-chance = { $from ->
    [life] { $part } %
   *[age] { $part } % used
  }
due-stake-someone-beside = someone beside it
due-stake-hot-surface = hot surface
due-stake-load-held-up = load held up
due-stake-remote = remote site
due-stake-owner = your own word
due-stake-not-said = nobody said what a failure does here
due-stake-none = none of the table
due-order = Order
due-by-date = By day
due-by-risk = By risk
due-by-risk-title = Chance times consequence
due-risk-why = { $from ->
    [life] Chance of failing in the next { $days } days, from the lives of this fleet’s own hoses ({ $failures } failures), times what a failure does. An estimate for the order, no promise.
   *[age] The part of its limit that is used up in { $days } days, times what a failure does: no chance, it puts the oldest first. { $failures } failures on record are too few for a chance; { $needed } are needed.
  }
due-more = Show more
due-more-note = { $shown } shown
due-columns = What falls due when
due-column-30 = 30 days
due-column-90 = to 90
due-column-365 = 12 months
due-export-csv = Save as text
due-export-csv-note = for other programs

## Next
due-plan = Plan { $site }
due-plan-then = { $count ->
    [one] { $shown } hose past its limit
   *[other] { $shown } hoses past their limit
  }
due-plan-then-stopped = { $stopped } stopped, { $shown } past in all
due-open = Open { $machine }
due-open-then = place { $number }, { $name }

## Limit and lists
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
due-life-span = { $count ->
    [one] { $years } year
   *[other] { $years } years
} ({ $low } to { $high })
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
due-life-take-years = At the pace so far: { $count ->
    [one] { $years } year
   *[other] { $years } years
}.
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
