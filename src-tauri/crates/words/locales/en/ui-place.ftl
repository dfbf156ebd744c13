# Words of one place and one hose.

## Place
place-label = Place
place-machine = Machine
place-machine-note = all its places
place-sits = Sits there
place-empty = No hose sits here now.
place-never = No hose is on record here.
place-asks = It asks for { $what }.
place-two-hoses = Two hoses are on record as sitting here. Look which one does, and take the other off the record.
place-hose-unsettled = The record of this hose contradicts itself. Open it and say which version stands.
place-unsettled = the record is not settled
place-times = { $count ->
    [one] once
    [2] twice
   *[other] { $shown } times
}
place-cause-times = { $cause } { $times }
place-failed = FAILED { $count ->
    [one] ONCE
    [2] TWICE
   *[other] { $shown } TIMES
}
hose-place-failed = ITS PLACE: { $count ->
    [one] 1 HOSE FAILED
   *[other] { $shown } HOSES FAILED
}
place-failed-why = At this place: { $causes }. Look at why before the same goes on.
place-failed-once = Failed once here: { $causes }.
place-lives = Hoses of this place
place-months = months held
place-life = from { $from }, { $months } months, { $end }
place-life-unknown = nobody knows since when, { $end }
place-came-off = came off
place-stay-failed = failed: { $cause }
place-still-on = still on
place-is-there = There is a hose on it
place-is-there-note = put it on record
place-on-record = The hose on it
place-on-record-how = What is known of it: its type and both ends. Read its print, gauge its ends; do not guess. It is kept as made elsewhere, not proved and not checked here, under a new code.
place-on-record-fitted = Fitted on; blank: nobody knows
place-on-record-assembled = Assembled on, from its ferrule; blank: nobody knows
place-on-record-days = A hose of which no day is known stands as found today, and its age is never counted as young.
place-over = Asked too much of it
place-within = Nothing that is known asks too much of it.
place-open = Not known for sure: { $what }.
place-replace = Make its replacement
place-replace-then = to the check: this one is asked too much
place-far-out = More than { $most }: hydraulic lines end there (common practice). Read it again.
place-service = What it asks of a hose
place-service-more = cold, air, flow, bend, vacuum, duties
place-service-recorded = { $name }, on record
place-service-recorded-how = On record: of its circuit, or of the hose that sits or sat here. The next job begins with it.
place-keep = Keep it
place-go-on = Go on with the job begun here
place-go-on-then = at { $step }
place-another = Begin another
place-another-note = the one begun here stays
place-why-note = say it while the old hose is in sight
place-why-then = goes along to Fit
place-same = Same for same
place-same-then = { $what }, to the check
place-same-failed = failed { $times } here
place-measure = Measure it
place-measure-note = the old hose, end by end
place-measure-then = the same failed here more than once
place-no-spec = what sits here is not on record
place-fit-here = Fit one here
place-fit-here-then = measure what the place takes
place-scan = Scan a tag
place-scan-note = a hose that is made

## Age
hose-years = years
hose-at-least = { $years } or more
hose-limit-guide = Guide: { $count ->
    [one] { $years } year
   *[other] { $years } years
}.
hose-limit-policy = The owner’s limit: { $count ->
    [one] { $years } year
   *[other] { $years } years
}.
hose-age-unknown = No day is known to count from.
hose-age-found = Found fitted { $day }; when it was made nobody knows. Look at the ferrule and the print.
hose-age = Age

## Hose
hose-title = Hose
hose-bar-max = bar max
hose-drawing = The assembly: end A at the left, end B at the right, overall length between the sealing points
hose-what = Hose
hose-end = End { $end }
hose-rating = Rating
hose-rating-not-known = not known: a part has no rating
hose-proof = Proof
hose-assembled = Assembled
hose-hose-made = Hose printed
hose-check = Check
hose-not-checked = not checked here
hose-not-known = not known
hose-some-place = a place not on record here
hose-status-made = not fitted yet
hose-status-fitted = fitted
hose-status-taken-off = taken off
hose-status-withdrawn = tag withdrawn
hose-status-failed-proof = failed its proof
hose-stays = Where it sat before
hose-sits = Where it sits
hose-at = { $machine }, place { $number }
hose-fit = Fit it
hose-fit-then = choose the machine and the place
hose-again = Make one like it
hose-again-then = same for same, to the check
hose-not-arrived = Its making is not on record here yet. Bring in the records of the van that made it.
hose-unknown = NOT KNOWN HERE
hose-unknown-what = Read the letters from the tag again. If they are right, the tag is of another van: scan it, for the tag itself says what the hose is, or bring in that van’s records.
hose-scan = Scan the tag
hose-scan-then = or type its letters again

## Notes and history
hose-notes = Notes
hose-note-label = A note on this hose
hose-note-add = Keep the note
hose-history = On record
hose-unnamed = a device without a name
hose-voided = Struck out:
hose-did-made = Put on record
hose-did-assembled = assembled { $day }
hose-did-fitted = Fitted { $day }: { $place }
hose-did-found = Found there { $day }: { $place }
hose-did-off = Taken off { $day }: { $place }
hose-did-inspected = Inspected { $day }
hose-did-overridden = Taken on against the check: { $reason }
hose-did-photo = A photo was added
hose-did-withdrawn = Tag withdrawn: { $reason }
hose-did-noted = Note: { $text }
hose-did-voided = Struck out: { $reason }

## Looking at it in place
hose-inspect = Inspected
hose-inspect-last = last { $day }
hose-inspect-never = not yet on record
hose-inspect-day = Day
hose-inspect-words = In your words
hose-inspect-who = It is kept as written by this device: { $device }.
hose-grade-pass = nothing found
hose-grade-caution = to watch
hose-grade-stop = to be replaced
hose-found = { $what }, { $grade }

## What contradicts itself
hose-conflict = Two devices wrote it differently. Look at the hose, then say which stands.
hose-this-stands = This one stands

## Withdrawing a tag
hose-withdraw = Withdraw its tag
hose-withdraw-note = lost, doubled
hose-withdraw-how = The code then counts no more and can not be fitted. What is on record stays.
hose-withdraw-why = Why
hose-withdraw-words = In your words
hose-withdraw-do = Withdraw the tag
hose-failed-proof = FAILED ITS PROOF
hose-failed-proof-why = Scrap. It was never tagged and is never fitted.
hose-did-labelled = Label made
hose-did-label-seen = Label seen on it
hose-tag-read = Tag read.
hose-papers = Papers
hose-papers-note = certificate, report
hose-withdrawn = WITHDRAWN
hose-withdrawn-why = { $reason }. Do not fit it under this tag.
hose-reason-lost = Tag lost
hose-reason-doubled = Code on two hoses
hose-reason-scrap = Hose scrapped
