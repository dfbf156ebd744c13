# What is said of a tag that was read. Each standing and each finding has words of its own.
tag-standing-own = A tag of { $fleet }, your own fleet. Its seal is true.
tag-standing-partner = A tag of { $fleet }, a partner's fleet. Its seal is true.
tag-standing-foreign = A tag of a fleet that this device does not know ({ $fleet }). Its seal can not be tried.
tag-standing-unsealed = A hose tag without a seal: nobody says who made it.
tag-standing-code-alone = A tag's code alone: it says nothing of who made it or of the hose.
tag-standing-altered = A hose tag that is not as it was made. Nothing on it counts.
tag-standing-newer = A hose tag of a newer program than this.

tag-seal-does-not-fit = the seal does not fit what stands above it
tag-is-a-fleets-key = This is the key of a fleet, not a hose tag. It is neither shown nor kept. Join the fleet with it on the Van screen.

tag-found-altered = Damaged or altered: { $problem }.
tag-found-altered-cure = Scan it again, clean and square on. If it stays so, trust nothing on it: measure the hose and give it a new tag.
tag-found-withdrawn = This tag was withdrawn: { $reason }.
tag-found-withdrawn-cure = Do not fit this hose. Find out what it is and give it a new tag, or scrap it.
tag-found-undone = The record of this hose was struck out: nothing on record stands behind its tag.
tag-found-undone-cure = Do not fit it. Find out whether it was made, then make and record it anew under a new code.
tag-found-failed-proof = The hose of this code failed its proof: it is scrap.
tag-found-failed-proof-cure = Do not fit it. Cut it through and make it anew.
tag-found-failed-in-use = The hose of this code failed and was taken off ({ $day }): { $cause }.
tag-found-failed-in-use-cure = Do not fit it again. Cut it through, and withdraw its tag.
tag-found-contradicted = Two records of this hose contradict each other, and nobody has settled which one stands.
tag-found-contradicted-cure = Settle it on the Van screen before you rely on hose or tag.
tag-found-fitted-elsewhere = The register has this code fitted at { $at }, not here.
tag-found-fitted-elsewhere-cure = Two hoses may carry one code, or it was moved unrecorded. Look at the other place before you fit or rely on this one.
tag-found-other-seal = Your fleet made the hose of this code, and this tag has another fleet's seal.
tag-found-other-seal-cure = It was copied or forged, or your fleet has a new key since. Hold the hose against the record, then print its label again.
tag-found-other-spec = The register knows this code with another spec than its tag says.
tag-found-other-spec-cure = Measure the hose: the tag may be older than a correction, or belong to another hose. Rely on neither till you know.
tag-found-higher-pressure = By its tag it carries more than by the record.
tag-found-higher-pressure-cure = The record stands. Take the tag off and print its label again.
tag-found-other-proof = It is said to be proved, and the record does not say so, or not so high.
tag-found-other-proof-cure = The record stands. Record the proof if there was one.
tag-found-other-figures = Pressure, fluid, duties, line or date on it are others than on record.
tag-found-other-figures-cure = Open the record: that stands. Is it right, print the label again.
tag-found-taken-off = The hose of this code was taken off a machine ({ $day }).
tag-found-taken-off-cure = Look at its age and at why it came off before it is fitted again.
tag-day-not-known = on a day not known
tag-found-not-known = This register has nothing of this code.
tag-found-not-known-cure = Check what the tag says, rebuild the hose from it, or take it into the register.
tag-found-not-known-alone-cure = Merge with the van that made it, or go by the words beside the code and measure the hose.
tag-found-merge-first = It is your fleet's, and this register has nothing of it: another van has its record.
tag-found-merge-first-cure = Merge with the van that made it. If that can not be, take it in from its tag; the two records then show as a contradiction to settle.
tag-found-seal-missing = Your fleet seals its tags, and this one of a hose on record has no seal.
tag-found-seal-missing-cure = It is older than the fleet, copied, or the hose was taken in from another's tag. Hold it against the record and print it again.
tag-found-foreign-figures = Its pressure and proof are the word of someone this device does not know.
tag-found-foreign-figures-cure = Check the hose before you rely on them. Taken in, it carries no more than the tables allow, and its maker's own figures stay a remark.
tag-found-newer = It can not be read by this program.
tag-found-newer-cure = Read it with a newer program. Till then rely on nothing of it.
tag-found-not-proved = The hose was not proved.
tag-found-not-proved-cure = Prove it before it carries pressure.
tag-found-age-not-known = Nobody wrote down when this hose was assembled: its age is not known.
tag-found-age-not-known-cure = Look for the date on its ferrule and on its layline. Is there none, take it for past its life and make it anew.
tag-found-sits = The register has it fitted at { $at }.
tag-found-sits-cure = Open its record there.

tag-taken-in-own = Taken in from its tag, under the seal of this fleet. The tag says: { $proof }.
tag-taken-in-partner = Taken in from its tag, under the seal of a partner's fleet. The tag says: { $proof }.
tag-taken-in-foreign = Taken in from its tag, under a seal that could not be tried. The tag says: { $proof }.
tag-taken-in-unsealed = Taken in from its tag, which has no seal. The tag says: { $proof }.
tag-taken-in-left-out = Not taken over, for nobody known here vouches for it: { $lines }.
tag-taken-in-done = { $code } is on record now.
tag-taken-in-pressure = It carries { $pressure }.
tag-taken-in-no-pressure = What it carries is not known: the tables do not rate it and nobody known here vouches for its tag. Check it.

tag-stocks-that-do = Of your stocks these would do: { $stocks }.
tag-label-of = { $holds ->
    [full-text] QR code with the whole text
   *[code-alone] QR code with the code alone, the facts in words
    [code-only] QR code and code alone: the words have no room
}, version { $version }, level { $level }, modules of { $module } ({ $dots } dots); reads from about { $from }.
tag-label-along = Round a hose of { $od } a camera sees { $seen } of it. Stick it with its words along the hose.
tag-label-around = Round a hose of { $od } a camera sees { $seen } of it. Stick it with its words round the hose.
tag-diameter-doubt = { $from ->
    [reckoned] Nobody measured over the cover, and the tables have only its largest: taken is { $part } of that, the least that may be.
   *[tables] Nobody measured over the cover: taken is the smallest that the tables allow.
} Measured, the code may come out larger.
tag-label-reprint = It says REPRINT: the hose had a label before.
tag-batch-title = Hose labels
tag-batch-made = { $made ->
    [one] 1 label
   *[other] { $made } labels
} on { $pages ->
    [one] 1 page
   *[other] { $pages } pages
}, { $reprints } of them reprints.
tag-batch-refused = no label: { $why }
tag-batch-reprint = reprint
tag-scans-none = Nothing was scanned on this device.
tag-way-picture = picture
tag-way-typed = typed
tag-stock-form-flag = flag
tag-stock-form-wrap = wrap
tag-stock-form-plate = plate
tag-stocks-kept = Kept.

fleets-keys-kept = The keys are in { $file }. { $owner ->
    [yes] Only its owner may read it.
   *[no] Anyone who can open that folder may read it: keep this device locked.
 } They are in no backup, bundle or export: a device that is restored joins its fleet again.
fleets-hand-on-caution = This is the key of { $fleet }. Whoever photographs it can make tags that read as yours, and it can not be taken back. Show it only to a device of the fleet, beside you, and close it at once. Send it nowhere and print it for nobody.
fleets-hand-on-until = It is read until { $until }. Later, show it anew.
fleets-seen = Fleet { $name } ({ $mark }), handed on by the device { $from }. Nothing was kept. Compare both marks with the other device's own screen; are they the same, join with --from { $from }.
fleets-seen-known = { $from } is the mark of { $device }, whose records this register has.
fleets-device = This device: { $mark }
fleets-own = Fleet { $name } ({ $mark }), since { $day }{ $from }
fleets-from = , handed on by { $from }
fleets-none = No fleet: tags are made without a seal. Begin one, or join one.
fleets-partner = Partner { $name } ({ $mark }), since { $day }{ $from }
fleets-other = Device { $name }: { $mark }, { $stands }
fleets-no-name = without a name
fleets-founder = Founded by { $mark }; this device: { $stands }
fleets-seen-founder = The fleet was founded by the device { $mark }, whose word on its members this device will believe; it waits for the office's nod once it has joined.
fleets-seen-open = The fleet is open: nobody has founded it, and every device that has its key counts.
fleets-standing-open = counts, as every device of a fleet that is open
fleets-standing-waits = waits for the office's nod
fleets-standing-reader = reader
fleets-standing-technician = technician
fleets-standing-planner = planner
fleets-standing-founder = founder
fleets-standing-withdrawn = withdrawn
