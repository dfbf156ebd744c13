# Words of looking at hoses in place: signs, and the walk of a machine.

signs-what = What do you see? Look, do not feel.
signs-nothing = Nothing wrong
signs-group-cover = Cover
signs-group-shape = Shape
signs-group-end = Ends
signs-group-leak = Leak
signs-group-routing = How it lies
signs-group-marking = Marking
signs-group-other = Other
signs-count = { $count ->
    [one] { $shown } seen
   *[other] { $shown } seen
  }
signs-stops = Stops the machine until it is replaced.
signs-within = { $days ->
    [1] Due within a day.
   *[other] Due within { $days } days.
  }
signs-grade = How grave is it here?
signs-leak-word = NO HANDS
signs-leak = Never feel for a leak. Look from away, or with a card, never a hand; touch it only with the load down, the engine off and the pressure gone. Fluid under the skin is a surgical emergency even when it looks small.
found-stops = { $machine } is stopped by this.
found-stays = { $machine } stays stopped, whatever is seen now. Take the hose off, or strike out what was seen by mistake, on its page.
found-due = Due { $day }.
found-nothing = Nothing found: no day moves.
off-title = Came off
off-note = without a new one
off-day = Day it came off
off-picked = this
mistake-title = Fitted by mistake
mistake-note = it never went on
mistake-how = Its fitting is struck out: the hose is in the hand again, and no hose is on record at the place. The log keeps what was struck out, and why. A meter reading that was kept with it stays.
mistake-how-both = Its fitting is struck out, and so is that { $code } came off for it: { $code } sits there again, this hose is in the hand. The log keeps what was struck out, and why. A meter reading that was kept with it stays.
mistake-do = Strike it out
seen-mistake-title = Seen by mistake
seen-mistake-note = { $day } · { $what }
seen-mistake-nothing = nothing wrong
seen-mistake-how = The inspection is struck out and counts no more: what it stopped may run again, what it moved falls due as before. The log keeps it, and why it was struck out.
machines-stopped = STOPPED
machines-stopped-how = Something on this machine must not run on. It stays stopped until each of these is put right: the hose is off, the inspection is struck out on the page of its hose, or the rule or what the place asks is changed.
machines-stopped-rule = Past the owner’s limit, which is a stop
hose-stopped-how = This hose must not run on.
machines-stopped-seen = seen { $day } · { $code }

## The walk
survey-title = Look it over
survey-note = every place, nothing taken off
survey-label = Places
survey-of = { $at }/{ $of }
survey-safe-word = FIRST
survey-safe = Load down, engine off, locked out, pressure proved gone. Look; never feel for a leak by hand.
survey-how = One place after the other. What can not be seen is not opened and not guessed; what can not be reached is an answer too.
survey-begin = Begin
survey-go-on = Go on
survey-next = place { $number }, { $name }
survey-keep = Keep
survey-last-one = that was the last place
survey-done = Back to the machine
survey-before = Before
survey-skip = Leave for later
survey-question = What is there?
survey-found-not-opened = Hose there
survey-found-no-hose = No hose
survey-found-not-reached = Can’t reach
survey-no-record = Nothing on record here
survey-last = { $found ->
    [opened] { $day }: opened
    [not-opened] { $day }: looked at, not opened
    [no-hose] { $day }: no hose
   *[not-reached] { $day }: not reached
  }
survey-never = not looked over yet
survey-today = today
survey-tally = { $looked } looked at · { $reached } not reached · { $empty } without hose · { $left } left
survey-read = What can be read as it sits
survey-read-how = Nothing is loosened. The hose stays not opened, and what is not read stays open.
survey-print = Print on the cover
survey-print-hint = as it stands; ? for a worn letter
survey-cover = Ø over the cover
survey-cover-how = On a straight part, away from ferrules and bends.
survey-hex-a = Hex at A
survey-hex-b = Hex at B
survey-hex-how = Across flats of the nut, with the caliper. Do not turn it.
survey-not-opened = NOT OPENED
survey-likely = Read so far: { $what }. Nothing is settled until it is off.
survey-gone = { $code } is on record here. If it is gone, open the place and take it off the record with its cause.
survey-words = In your words

## What a failure would do
stakes-title = What a failure does here
stakes-how = It sets what comes first when what is due is put in order of risk.
stakes-what = What is beside it
stakes-none = None of these
stakes-not-said = nobody said yet
stakes-said = { $count ->
    [0] none of the table
    [one] { $count } thing said
   *[other] { $count } things said
  }
stakes-as-machine = As the machine
stakes-consequence = Consequence, 1 to 5
stakes-by-table = By the table
stakes-consequence-how = Yours stands over the table’s: 1 a nuisance, 5 someone may be hurt.
hose-clocks = Three clocks
hose-clock-made = Hose made
hose-clock-assembled = Assembled
hose-clock-fitted = Fitted
hose-clock-since = { $found ->
    [yes] found there { $day }
   *[no] { $day }
  }
hose-did-surveyed = Looked over in place { $day }
visits-sheet = Save the round sheet
visits-sheet-note = PDF, with tags
