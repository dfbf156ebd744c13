# The register.
fault-unreadable = Event { $event } can not be read.
fault-changed = Event { $event } is not what was written: something changed it.
fault-broken-chain = Event { $event } does not continue the one before it.
fault-tables = The tables are not what the log gives: rebuild them.
fault-file = The file is damaged: { $cause }
due-service = Replace hose { $code }: { $machine }, { $place }
due-storage = Stored long enough: hose { $code }
due-inspection = Inspect hose { $code }: { $machine }, { $place }

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
