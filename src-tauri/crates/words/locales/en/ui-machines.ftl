# Words of machines, places and hoses.
machines-back = Back
machines-not-known = Not known
machines-not-written = NOT KEPT
machines-not-read = NOT READ
