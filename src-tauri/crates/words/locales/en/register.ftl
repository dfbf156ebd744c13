# The register.
fault-unreadable = Event { $event } can not be read.
fault-changed = Event { $event } is not what was written: something changed it.
fault-broken-chain = Event { $event } does not continue the one before it.
fault-tables = The tables are not what the log gives: rebuild them.
fault-file = The file is damaged: { $cause }
due-service = Replace hose { $code }: { $machine }, { $place }
due-storage = Stored long enough: hose { $code }
due-inspection = Inspect hose { $code }: { $machine }, { $place }
