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
