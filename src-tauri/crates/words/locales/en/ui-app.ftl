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
title-leave = Leave
title-leave-note = the job stays among the jobs not done
title-this-phone = This device
title-first = First hose
title-kept = Kept
title-keeping = Keeping
title-not-kept = Not kept
