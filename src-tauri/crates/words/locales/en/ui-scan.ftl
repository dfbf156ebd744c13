# Words of scanning a tag.
scan-title = Scan a tag
scan-job-open = open
scan-drawing = A tag not yet seen: its code at the left, its words at the right

## Ways in
scan-how = Hold the tag square and near, so that its code fills a third of the picture.
scan-photo = Photograph the tag
scan-photo-then = opens the hose it belongs to
scan-choose = Pick a picture
scan-live = Live camera
scan-live-note = reads by itself
scan-type = Type the code
scan-type-then = 10 letters and a check letter
scan-again = Scan again
scan-measure = Measure
scan-measure-then = caliper, thread gauge, tape
scan-close-camera = Close the camera
scan-looking = Looking for a code. Hold the tag square and near.
scan-reading = Reading the picture.
scan-camera = Live camera
scan-camera-refused = It was refused. Allow the camera for this program in the phone’s settings; a photograph works without.
scan-camera-absent = There is none for this program here. A photograph works without.
scan-picture = The picture that was read

## Typing
scan-type-title = Type the letters beside the code
scan-type-head = Letters beside the code
scan-type-leave = picture instead
scan-missing = { $shown } missing. No letter I, L, O or U is used.
scan-wrong = NOT RIGHT
scan-use = Use { $code }
scan-use-compare = { $where }. Compare { $what } with the hose first.
scan-fits = { $count ->
    [one] { $shown } hose here fits.
   *[other] { $shown } hoses here fit. Type on.
  }
scan-not-fitted = on no machine

## What came of it
scan-failed = NOT DONE
scan-not-read = NOT READ
scan-no-code = No code in this picture can be read.
scan-instead = Or take it again: nearer, square on, in focus, without glare.
scan-no-tag = NO HOSE TAG
scan-says = The code says:
scan-code-alone = The tag carries its code { $code } alone. What the hose is stands in the register of the van that tagged it, and in words on the tag.
scan-merge = Bring in records
scan-which = Several tags. Which hose?
scan-is-own = YOUR FLEET’S
scan-is-partner = A PARTNER’S
scan-is-foreign = A STRANGER’S
scan-is-unsealed = NOT SEALED
scan-is-code-alone = CODE ALONE
scan-is-altered = ALTERED
scan-is-newer = NEWER THAN THIS PROGRAM
scan-is-withdrawn = WITHDRAWN
scan-is-failed = FAILED ITS PROOF
scan-is-elsewhere = FITTED ELSEWHERE
scan-is-other-spec = ANOTHER HOSE
scan-is-undone = STRUCK OUT
scan-is-failed-in-use = FAILED BEFORE
scan-is-contradicted = NOT SETTLED
scan-is-other-seal = ANOTHER’S SEAL
scan-is-higher = SAYS TOO MUCH
scan-carried-note = Read off the tag, not checked here. Compare it with the hose in your hand.
scan-open = Open { $code }
scan-open-then = the hose on record
scan-open-stop-then = what is on record; do not fit this hose by its tag
scan-keep = Keep it here
scan-make = Make one like it
scan-make-then = checked here first, nothing taken for granted

## What a tag carries
scan-carried-drawing = The hose as its tag says: { $what }
scan-not-carried = not on the tag
scan-fact-hose = Hose
scan-fact-a = End A
scan-fact-b = End B
scan-fact-length = Length
scan-fact-turn = Turn
scan-fact-pressure = Pressure, max
scan-fact-proof = Proof
scan-fact-fluid = Fluid
scan-fact-assembled = Assembled

## What was scanned
scan-log = Scans on this device
scan-log-count = Scans
scan-log-none = Nothing was scanned on this device yet.
scan-log-no-code = no code could be read
scan-log-row = { $standing }, { $way ->
    [typed] typed
   *[picture] off a picture
}
