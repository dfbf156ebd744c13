# Words of fitting: the old hose off, the new one on, and both on the record.
fit-title = Fit the hose
fit-which-machine = Which machine does it go on?
fit-which-place = Which place on { $machine }?
fit-hose-sits = a hose sits there: it comes off
fit-no-hose = no hose there
fit-other-machine = Another machine
fit-hand-over = Not fitted now
fit-hand-over-note = hand it over; it stands on the record
fit-not-read = NOT READ
fit-not-written = NOT KEPT
fit-tag-first = a hose goes on with its tag
fit-tighten = How tight
fit-tighten-how = The maker’s figure comes first. Else take the one figure whose condition holds; never mix tables.
fit-sources = Where the figures are from
fit-sources-fold = Fold the sources away
fit-take-figure = take the figure whose condition holds
fit-no-figure = no figure in the tables: the maker’s alone
fit-no-figure-taken = no figure taken: by the maker’s alone
fit-flats = { $count ->
    [one] { $flats } flat
   *[other] { $flats } flats
}
fit-off = { $code } comes off
fit-cause = Why it failed
fit-not-failed = It had not failed
fit-note = What was seen
fit-say-cause = Say why the old one failed
fit-say-cause-then = or that it had not
fit-hours = Machine’s hours
fit-hours-how = As they stand on the meter.
fit-hours-last = As they stand on the meter. Last: { $last }.
fit-hours-doubt = { $hours }?
fit-hours-again = Read the meter again
fit-hours-right = { $hours } is right: keep it
fit-enter-hours = Enter the machine’s hours
fit-date = Fitted on
fit-refused = DO NOT FIT YET
fit-ask = Enter what the place asks
fit-ask-then = pressure and fluid of the line, then fitting goes on
fit-correct = Correct the record first
fit-correct-then = the hose was changed after it was recorded
fit-crimp-outside-then = not fitted before it is read or crimped again
fit-finish = Finish
fit-finish-then = old hose off, new one on, all on the record
