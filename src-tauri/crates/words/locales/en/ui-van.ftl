# Words of the van: this device, its register and what goes in and out.
van-title = This van
van-hoses = Hoses on record
van-keep = Keep it

## Units, paper
van-units = Language, units, paper, look
van-language = Language
van-lengths = Lengths first in
van-inch = inch
van-pressures = Pressures first in
van-paper = Paper
van-paper-a4 = A4
van-paper-letter = Letter
van-practice = Length tolerances
van-din-20066 = DIN 20066
van-american = American
van-theme = Look
van-theme-auto = as the device
van-theme-light = light
van-theme-dark = dark
van-theme-sun = sun

## Labels
van-labels = Labels
van-labels-means = The labels that you have. The first is offered first; a hose whose label has no room on it is told which of the others would do.
van-labels-note = { $count ->
    [one] { $first }
    [2] { $first } and one more
   *[other] { $first } and { $others } more
}
van-labels-first = offered first
van-labels-row = { $size } · { $material } · { $dpi } dots an inch
van-labels-add = Another label
van-label-title = A label
van-label-name = What you call it
van-label-name-hint = such as wire tag 60 x 40
van-label-face = Measure the face that is printed, without backing and without the tail that goes round the hose.
van-label-width = Width
van-label-height = Height
van-label-side-how = Of the face that is printed: width along the words, height across them.
van-label-dpi = Printer, dots an inch
van-label-dpi-short = dots an inch
van-label-dpi-how = Stands in the printer’s papers: 203, 300 or 600 are usual.
van-label-form = How it is fixed
van-label-form-how = { $form ->
    [flag] Goes round the hose and stands off it, flat: a camera sees all of it.
    [wrap] Stuck round the hose: the thinner the hose, the smaller the code that a camera sees in one look.
   *[plate] Flat, tied on or fixed beside the hose: a camera sees all of it.
}
van-label-material = Made of
van-label-paper-means = Paper does not last on a machine: for the bench only.
van-label-make-first = Offer it first
van-label-remove = Remove it
van-label-same-name = Another of your labels has that name.

## Instruments
van-instruments = Instruments
van-instruments-note = caliper, gauges, tape, saw
van-errors = How far off they read
van-errors-note = Standard error. It weighs every reading: too small makes a wrong answer look sure.
van-caliper = Caliper
van-caliper-error = Error of the caliper
van-micrometer = Micrometer
van-micrometer-error = Error of the micrometer
van-tape = Tape
van-tape-error = Error of the tape
van-thread-gauge = Thread gauge
van-seat-gauge = Seat gauge
van-error-how = From its certificate, or measure one gauge block ten times.
van-bench = Saw and pressure gauge
van-kerf = saw takes
van-kerf-how = How wide the saw’s cut is: it counts on the reel. Measure one.
van-gauge-months = gauge calibrated every
van-gauge-months-how = Months between calibrations of the pressure gauge, by your own rule.
van-months = { $count ->
    [one] { $count } month
   *[other] { $count } months
}
van-names = Names or numbers on them
van-name-hint = none
van-keep-names = Keep the names
van-names-kept = The names are kept.

## Supplier tables
van-suppliers = Supplier tables
van-suppliers-note = crimp settings, yours
van-suppliers-means = Crimp settings from your own suppliers, as they give them. They stand as yours wherever they are shown, with the supplier and the file.
van-suppliers-none = No supplier’s table is here yet.
van-suppliers-all = All suppliers
van-supplier-rows = { $count ->
    [one] row
   *[other] rows
}
van-supplier-pick = Take in a table
van-supplier-import = A supplier’s table
van-supplier-look = Look for
van-supplier-look-hint = hose, end, size, ferrule
van-supplier-not-found = No row has all of these words.
van-supplier-more = Show more rows
van-supplier-remove-row = Remove this row
van-supplier-remove = Remove all of { $supplier }
van-supplier-remove-means = All rows of { $supplier } go from this register. Hoses made with them keep their settings on record.
van-supplier-remove-yes = Remove them
van-match-rows = { $count ->
    [one] { $shown } row.
   *[other] { $shown } rows.
}
van-match-title = Which column is what
van-match-how = Tap a column to change what it is taken for. Nothing is taken in before you have seen what would be.
van-match-header = Headings stand in row { $row }
van-match-no-heading = no heading
van-match-not-read = not read
van-match-unit = Unit of { $column }
van-match-say = Say the { $column }
van-match-say-then = or tap the column it stands in
van-match-fixed = { $column } of all rows
van-match-fixed-hint = or tap the column it stands in
van-match-try = Try it
van-match-try-then = row by row; nothing is taken in yet
van-match-take = Take it in
van-match-take-then = { $count ->
    [one] { $shown } row, all or none
   *[other] { $shown } rows, all or none
}
van-match-away = Put it away
van-match-done = Done
van-sheet-go-on = Go on with { $name }
van-sheet-go-on-note = half matched; nothing of it is taken in yet
van-row-enter = Enter a row by hand
van-row-enter-note = one hose and end, where there is no table
van-row-go-on = Go on with the row
van-row-go-on-note = half entered
van-row-title = A supplier’s row
van-row-supplier = Supplier
van-row-supplier-hint = whose figures they are
van-row-end = For which end
van-row-any-end = For any end of the series
van-row-skive-outer = Skive of the cover
van-row-skive-inner = Skive of the tube
van-row-figure-how = As it stands in your supplier’s table, and from nowhere else.
van-row-from = entered by hand, { $day }
van-outcome-would = Would be:
van-outcome-rest = Without the refused rows:
van-outcome-done = Taken in:
van-outcome-counts = of { $rows } rows { $new } new, { $changed } changed, { $same } known already.
van-outcome-repeated = Said twice in the table: rows { $rows }.
van-outcome-left = Left out: rows { $rows }.
van-outcome-refused = { $count ->
    [one] { $rows } row can not be taken in
   *[other] { $rows } rows can not be taken in
}
van-outcome-row = Row { $row }
van-outcome-leave = { $count ->
    [one] Leave this row out
   *[other] Leave these { $shown } rows out
}
van-outcome-leave-note = and try the rest
van-column-supplier = supplier
van-column-standard = hose standard
van-column-type = hose type
van-column-dn = DN
van-column-family = end family
van-column-size = end size
van-column-series = series of the end
van-column-ferrule = ferrule
van-column-insertion = insertion depth
van-column-skive = cover skived over
van-column-skive-inner = tube skived over
van-column-lubricant = lubricant
van-column-die-set = die set
van-column-crimp-diameter = crimp diameter
van-column-crimp-tolerance = crimp tolerance
van-column-cutoff = cut-off

## Press
van-press = Press
van-press-note = crimps of each die set, care
van-press-means = How far each crimp’s mean lay from its target, die set by die set. A run to one side says the press moves before a crimp lies outside.
van-press-none = No crimp is on record yet.
van-press-left-out = { $count ->
    [one] { $shown } crimp is in no chart: its die set, target or readings were not written down.
   *[other] { $shown } crimps are in no chart: die set, target or readings were not written down.
}
van-press-crimps = { $count ->
    [one] { $shown } crimp
   *[other] { $shown } crimps
}
van-press-chart = Die set { $die }: how far { $count } crimps lay from their targets, { $low } to { $high }.
van-press-mean = mean { $mean } off target
van-press-few = Fewer than eight crimps say nothing of the press yet.
van-press-limits = Broken lines: what this press does by itself, { $low } to { $high }.
van-press-steady = Nothing says that the press moved.
van-press-earlier = { $count ->
    [one] and { $count } sign before
   *[other] and { $count } signs before
}
van-press-signal = { $code }, end { $end }, { $day }: { $what }

## Care of the press
van-care = Care of the press
van-care-means = As the press’s own book says; the intervals are yours.
van-care-none = No care is set. The book of the press names what and how often.
van-care-name = What is done
van-care-name-hint = such as grease the cones
van-care-crimps = every so many crimps
van-care-months = every so many months
van-care-add = Add to the care
van-care-done = Done today
van-care-remove = Remove
van-care-last = last { $day }
van-care-never = never done here
van-care-due = due
van-care-due-on = due on { $day }
van-care-since = { $count ->
    [one] { $shown } crimp since
   *[other] { $shown } crimps since
}
van-care-every-crimps = every { $count } crimps
van-care-every-months = { $count ->
    [one] every month
   *[other] every { $count } months
}

## People
van-people = People and this device
van-people-note = who is working, what other vans call this one
van-working = Who is working
van-working-now = working now
van-nobody = Nobody has a name here yet.
van-new-person = Another name
van-add = Add the name
van-people-beside = Names stand beside the record, not in it: the record names a person by a number, so a name can be erased and the record stays whole.
van-erase = Erase
van-erase-title = Erase { $name }?
van-erase-means = The name goes from this register and from every van that merges with it. What was recorded stays, without the name. Backups and bundles made before still have it. It can not be undone.
van-erase-yes = Erase the name
van-erase-no = Leave it
van-device = This device
van-device-name = Name of this device
van-device-hint = such as Van 2
van-device-keep = Name this device
van-device-kept = From now on its records say { $name }.

## Backup
van-backup = Backup
van-backup-go = Back up
van-backup-now = Back up now
van-backup-then = one file, register and photos
van-backup-none = No backup from this device yet.
van-backup-last = last { $when }
van-backup-title = Last backup
van-backup-says = { $when }: { $where }, { $size }.
van-backup-means = Keep it off this device: mail it, put it on a stick or on the desk computer.
van-backup-photos = The backups listed below carry no photos: those stay on this device beside the register. The file of “Back up now” has them.
van-busy = At work.
van-restore = Restore
van-restore-means = Puts a backup in the place of this register.
van-restore-pick = Choose a backup
van-restore-first = Replace this register?
van-restore-first-means = { $file } takes the place of this register with its { $events } events. This register is kept beside it under another name.
van-restore-second = What was recorded since?
van-restore-second-means = Anything recorded here after { $file } was made is not in it and will not be shown. This device goes on as a new one.
van-restore-on = Go on
van-restore-yes = Restore it
van-restore-no = Leave all as it is
van-restored = RESTORED
van-restored-says = { $events } events stand, checked one by one.
van-kept = Backups beside the register
van-kept-last = The last good one: { $when }. Made by itself every day and proved by restoring it. If this device is lost they are lost with it.
van-kept-none = None yet. The program makes one every day while it runs, and proves it by restoring it.
van-kept-late = The newest is three days old or older, or from the future. See whether there is room and the clock is right, and verify the log under Records in and out.
van-kept-restore = Restore { $when }

## Records in and out
van-records = Records in and out
van-records-note = other vans, lists, export, verify
van-vans = Other vans
van-vans-means = Give each other bundles in any order, as often as you like: the registers come out the same.
van-bundle = Bundle for another van
van-bundle-note = saves a file
van-merge = Merge a bundle
van-merge-note = choose the file
van-merged = { $count ->
    [one] { $shown } event was new.
   *[other] { $shown } events were new.
  }
van-merged-had = { $count ->
    [one] { $shown } was here already.
   *[other] { $shown } were here already.
  }
van-merged-held = { $count ->
    [one] { $shown } waits for an earlier one of its van: merge that van’s latest bundle.
   *[other] { $shown } wait for earlier ones of their van: merge that van’s latest bundle.
  }
van-refused-fork = Refused from event { $from } of device { $device }: two registers write under one name. Restore that device from its own backup.
van-refused-chain = Refused from event { $from } of device { $device }: it does not continue what is here. Something changed it on the way.
van-no-conflicts = Nothing contradicts.
van-conflicts = { $count ->
    [one] { $shown } thing is told in two ways. Storage and versions names it, for a person to settle.
   *[other] { $shown } things are told in two ways. Storage and versions names them, for a person to settle.
  }
van-list = A list of hoses
van-list-means = One row for each hose at a place. All rows or none; nothing is taken in before you have seen what would be.
van-list-pick = Look at a list
van-list-note = CSV or XLSX
van-export = Write out
van-csv = Hoses, CSV
van-xlsx = Hoses, XLSX
van-zip = All, CSV tables
van-json = All, JSON
van-ics = Due, calendar
van-left = Saved: { $where }
van-verify = Verify the log
van-verify-means = Walks every event and proves that none was changed.
van-verify-go = Verify
van-verified = { $devices ->
    [one] All { $events } events are as they were written.
   *[other] All { $events } events of { $devices } devices are as they were written.
  }
van-verified-not = { $faults } faults in { $events } events.
van-rebuild = Rebuild the tables
van-rebuild-note = from the log

## Settings that can not be read
van-unreadable = NOT READ
van-unreadable-says = Kept settings that can not be read: { $settings }. Those of the first day hold for them. Set them anew.
van-setting-language = language
van-setting-length-unit = lengths
van-setting-pressure-unit = pressures
van-setting-paper = paper
van-setting-label-stocks = labels
van-setting-length-practice = length tolerances
van-setting-caliper-error-mm = error of the caliper
van-setting-micrometer-error-mm = error of the micrometer
van-setting-tape-error-mm = error of the tape
van-setting-kerf-mm = what the saw takes
van-setting-gauge-months = calibration of the gauge
van-setting-press-care = care of the press
van-setting-instruments = names of the instruments
van-setting-store = store
van-setting-offcut-mm = shortest offcut
van-setting-pricing = prices and labour
van-setting-person = who is working

## About
van-about = Storage and versions
van-about-note = events, tables, program
van-first = The maker’s instructions, local codes and licensed practice come first.
van-about-machines = Machines
van-about-hoses = Hoses on record
van-about-fitted = of them fitted
van-about-events = Events in the log
van-about-held = Events that wait
van-about-conflicts = Contradictions
van-about-size = Size
van-about-size-none = known after a backup
van-about-device = This device
van-about-program = Program
van-about-tables = Tables
van-about-stays = The register is one file on this device. Nothing leaves it but the files you save. Free software: its licence comes with it.
van-report = Report of a fault
van-report-means = Versions, counts and what does not verify, as a file for who mends the program. No names, places or codes are in it, and nothing is sent.
van-report-save = Save the report
van-report-left = { $where }, { $size }.

## What contradicts itself
van-device-unnamed = device without a name ({ $id })
van-conflict-other = a limit of every site
van-told = { $kind } ({ $by })
van-kind-device-named = name of the device
van-kind-device-key = key of the device
van-kind-device-admitted = admission of a device
van-kind-device-withdrawn = withdrawal of a device
van-kind-site-named = site
van-kind-machine-set = machine
van-kind-hours-read = hours
van-kind-circuit-set = circuit
van-kind-place-set = place
van-kind-assembly-made = put on record
van-kind-fitted = fitted
van-kind-taken-off = taken off
van-kind-inspected = inspected
van-kind-overridden = limit taken on
van-kind-labelled = label
van-kind-tag-withdrawn = tag withdrawn
van-kind-policy-set = limit of age
van-kind-stock-changed = stock
van-kind-photo-added = photo
van-kind-noted = note

## A list of hoses that is taken in
list-asks-days = Say for { $column }: day or month first?
list-asks-days-then = such as { $example }; it is never guessed
list-asks-unit = Say the unit of { $column }
list-asks-unit-then = such as { $example }; it is never guessed
list-days = Days of { $column }
list-days-day-first = day first
list-days-month-first = month first
list-counts = { $rows ->
    [one] { $rowsShown } row
   *[other] { $rowsShown } rows
  }: { $machines } machines, { $places } places and { $hoses } hoses new
list-filter = Rows
list-filter-all = All { $count }
list-filter-made = New { $count }
list-filter-changed = Taken off { $count }
list-filter-known = Known { $count }
list-filter-refused = Refused { $count }
list-filter-left-out = Left out { $count }
list-is-made = new
list-is-changed = taken off
list-is-known = known
list-is-refused = refused
list-is-left-out = left out
list-more = { $count ->
    [one] Show { $shown } more row
   *[other] Show { $shown } more rows
  }
list-working = Working: { $done } of { $of }
list-reading = Reading the list
list-stop = Stop
list-stop-note = nothing is taken in then
list-column-site = site
list-column-machine = machine
list-column-kind = kind of machine
list-column-machine-hours = machine’s hours now
list-column-place = number of the place
list-column-place-name = name of the place
list-column-line = kind of line
list-column-relief-bar = relief setting
list-column-working-pressure-bar = working pressure
list-column-fluid = fluid
list-column-code = code of the tag
list-column-hose = hose, all in one
list-column-standard = hose standard
list-column-type = hose type
list-column-dn = hose size
list-column-cover = duty of the cover
list-column-a-family = family of end A
list-column-a-size = size of end A
list-column-a-gender = male or female, end A
list-column-a-form = form of end A
list-column-b-family = family of end B
list-column-b-size = size of end B
list-column-b-gender = male or female, end B
list-column-b-form = form of end B
list-column-length-mm = overall length
list-column-turn-deg = turn
list-column-hose-made = day the hose was made
list-column-assembled = day it was assembled
list-column-fitted = day it was fitted
list-column-fitted-hours = hours when fitted
list-column-removed = day it came off
list-column-removed-hours = hours when it came off
list-column-cause = cause of failure
list-column-note = note
