# Words of the frame around every screen, and of the first run.

## Steps and places
step-find = Find
step-check = Check
step-make = Make
step-tag = Tag
step-fit = Fit
place-job = Job
place-machines = Machines
place-van = Van
place-due = Due

## Title block
title-job = Job
title-none = none
title-this-phone = This phone
title-first = First hose
title-no-signal = No signal
title-ready = Ready
title-kept = Kept
title-keeping = Keeping
title-not-kept = Not kept

## First run
first-title = Nothing drawn yet.
first-text = Start with what you hold: the old tag, the print, or a caliper. Everything stays on this phone and works with no signal.
first-drawing = A hose not yet drawn: both ends, hose and length are open
first-scan = Scan the old tag
first-scan-then = or any label still on the hose
first-print = Read the print
first-print-note = layline, even in part
first-measure = Measure
first-measure-note = caliper, thread gauge, tape
