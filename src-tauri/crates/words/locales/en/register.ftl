# The register.
fault-unreadable = Event { $event } can not be read.
fault-changed = Event { $event } is not what was written: something changed it.
fault-broken-chain = Event { $event } does not continue the one before it.
fault-tables = The tables are not what the log gives: rebuild them.
fault-file = The file is damaged: { $cause }
due-service = Replace hose { $code }: { $machine }, { $place }
due-storage = Stored long enough: hose { $code }
due-inspection = Inspect hose { $code }: { $machine }, { $place }
due-overdue = Overdue since { $day }: { $what }

# How long hoses last here.
lives-heading = How long hoses last here, in years since they were fitted, as of { $on }. A hose that came off whole or is still on counts as far as it was watched.
lives-none = No hose here has a known day of fitting.
lives-not-known = Not on record what it is
lives-left-out = { $count ->
    [one] 1 stay is
   *[other] { $count } stays are
} left out: nobody knows when that hose was fitted, or its days contradict.
lives-line-pressure = Pressure lines
lives-line-return = Return lines
lives-line-suction = Suction lines
lives-line-case-drain = Case drain lines
lives-line-pilot = Pilot lines
lives-line-cylinder = Cylinder lines
lives-load-half = Asked up to half of what they may carry
lives-load-three-quarters = Asked half to three quarters of what they may carry
lives-load-full = Asked more than three quarters of what they may carry
lives-load-above = Asked more than they may carry
lives-ended-before = { $count ->
    [one] 1 stay
   *[other] { $count } stays
} ended before that day: not counted.
lives-to-tell = { $more } more failures, { $all } in all, would tell the shape to half as much again either way: whether such hoses wear out.
lives-to-tell-years = At the pace so far that is { $years } years.
lives-expected = Next quarter: { $failures } failures expected ({ $low } to { $high }).
lives-expected-all = All together, next quarter: { $failures } failures expected ({ $low } to { $high }, 95 %).
lives-not-expected = { $count } hoses on machines are in no expectation: too few of their kind have failed.
lives-least-cost = Costs least replaced at { $age } years ({ $low } to { $high }), a failure costing { $ratio } replacements: { $part } % of waiting for failures. The maker’s limit comes first.
lives-waiting = waiting
lives-waiting-pays = No age of replacement costs less than waiting, a failure costing { $ratio } replacements: the history does not show that they wear out. The maker’s limit comes first all the same.
lives-places = Places with more failures than expected, of { $count } that were looked at:
lives-place = Place
lives-place-failures = Failures
lives-place-times = Times as many
lives-place-verdict = Judged
lives-place-seen = { $seen } for { $expected }
lives-place-stands-out = stands out
lives-place-chance = may be chance
lives-few = Too few to tell
lives-title = How long hoses last here
lives-years = years
lives-next = Next quarter, failures expected
lives-least = Age of least cost in years, a failure costing { $ratio } replacements
lives-limits = Heavy line: the part that still holds. Broken lines: its 95 % bounds, each for its own year alone. Thin line: Weibull fit. It describes these machines and promises nothing of the next hose; the maker’s limit and the guide come first. Of many places some are bad by chance alone.
sheet-asks-days = Say for { $column } whether the day or the month stands first: its days can be read either way.
sheet-asks-unit = Say the unit of { $column }: neither its heading nor its cells do.

# What a file, a disk or another program does to the register. In English as the store says it.
register-is-none = { $path } is not a register; choose a register's own file, or a new name to begin one
register-is-newer = { $path } was written by a newer program (schema { $found }, this program knows { $known }); it was left as it is: update this program
register-is-in-use = another program is using the register; close it or wait for it to finish, and try again
register-disk-full = the disk is full and nothing was written; make room and try again
register-disk-fails = the disk fails to read or write the register; nothing more was written: take the latest backup to another device and restore it there
register-read-only = the register can not be written; check the file's and its folder's permissions
register-can-not-open = { $path } can not be opened; check that its folder exists and may be written
register-keys-unusable = the file of keys { $path } can not be used ({ $cause }); check its permissions, or take it away and join the fleet again
register-damaged = the register's file is damaged and was left as it is; restore the latest backup: in its place on the screens (Van, Backup), under a new name on the command line
register-exists = { $path } is there already and is not overwritten; give a new name
register-log-left = { $path } holds records of a register that was here before or is in use; close whatever uses it and move the file away, or give a new name
register-backup-damaged = the backup { $path } does not verify ({ $faults } faults); it was left as it is: restore an older one
backups-no-such = there is no backup "{ $name }" beside this register; choose one of the list
backups-none = No backup stands beside this register yet.
backups-folder = In { $folder }, each proved by restoring it:
backups-late = The newest is three days old or older, or from the future: see whether the disk is full and the clock right, and verify the register.
register-reader = this device is a reader in its fleet and writes nothing; a planner of the fleet can make it a technician
register-planners-only = only a planner of the fleet does that; have it done on a planner's device
register-device-gone = this device was withdrawn from its fleet: what it writes counts no more; back it up and restore the backup, which goes on as a new device, and have that admitted
register-senior = that device was a planner before this one, and only those before it judge it; where the founder's device is lost, begin the fleet anew
register-open-fleet = this fleet is open: it has no founder yet whose word on its members would count; found it first
register-word-stays = a word on who belongs to the fleet is not struck out; give the device another role, or admit or withdraw it
