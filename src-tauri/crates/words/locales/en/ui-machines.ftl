# Words of machines, places and hoses.
machines-back = Back
machines-not-known = Not known
machines-not-written = NOT KEPT
machines-not-read = NOT READ

## What a line does
machines-line-pressure = pressure
machines-line-return = return
machines-line-suction = suction
machines-line-case-drain = case drain
machines-line-pilot = pilot
machines-line-cylinder = cylinder, both ways

## Kinds of machine
machines-kind-excavator = excavator
machines-kind-loader = loader
machines-kind-forwarder = forwarder
machines-kind-harvester = harvester
machines-kind-crane = crane
machines-kind-drill = drill rig
machines-kind-tractor = tractor
machines-kind-truck-mounted = truck-mounted
machines-kind-press = press
machines-kind-other = other

## Ages, proof and stays
machines-counted-assembled = Assembled
machines-counted-hose-made = Hose made
machines-counted-fitted = Fitted or found
machines-counted-inspected = Inspected
machines-counted-unknown = no day known
machines-proof-no-rig = not proved: no rig
machines-proof-elsewhere = not proved here: made elsewhere
machines-proof-proved = proved at { $pressure } for { $seconds }, gauge { $gauge }
machines-stay-found = found there { $day }
machines-stay-fitted = fitted { $day }
machines-stay-off = off { $day }

## A spec
machines-drop = drop { $drop }
machines-straight = straight
machines-both-ends = { $end } both ends
