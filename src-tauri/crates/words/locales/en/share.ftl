# The exchange with the other devices of a fleet.

share-storage = Storage: { $url }
share-no-storage = No storage is chosen: what this device writes stays on it. Choose one with share set.
share-no-fleet = This device belongs to no fleet, and only a fleet's devices exchange what they wrote: begin one, or join one.
share-sent = { $sent } { $sent ->
    [one] event
   *[other] events
 } of this device sent, { $waiting ->
    [0] none waits.
    [one] 1 waits.
   *[other] { $waiting } wait.
 }
share-device = { $name }: { $events } { $events ->
    [one] event
   *[other] events
 } here, the latest of { $day }
share-exchanged = Exchanged { $at }: { $came } { $came ->
    [one] event
   *[other] events
 } came, { $went } went.
share-refused = REFUSED: device { $device } from event { $from } on: { $why }
share-waiting-for = Later events of device { $device } wait for earlier ones that it has not sent yet.
share-cut-off = CUT OFF: { $why }. What came and went stays; exchange again.
share-fork = another event stands under that number here. Two programs wrote as the same device, as happens when a register's file is copied. One of them has to go on as a new device: back it up and restore the backup.
share-broken-chain = it does not continue the event before it: something was changed or left out on the way.
share-stranger = it is signed by a device that has told nobody its key. Have that device exchange once, then exchange again.
share-copied = WRITTEN TWICE: device { $device } from event { $from } on: { $why }
share-not-its-own = it is signed by another device than the one that wrote it, and that one is no planner of the fleet. If that device lost its keys, back it up, restore the backup, which goes on as a new device, and have that admitted.
share-withdrawn = it was signed after the device was withdrawn from the fleet. It is kept and counts nowhere.
share-standing-open = OPEN: nobody has founded this fleet, so every device that has its key counts, a lost one too. Found it with fleet found, on the office's device.
share-standing-waits = WAITS for the office's nod: what this device writes counts on it alone until a planner admits it (fleet admit).
share-standing-reader = READER: this device reads the fleet's records and writes none.
share-standing-withdrawn = WITHDRAWN: a planner withdrew this device; what it writes counts no more.
share-left-out = LEFT OUT: { $count } { $count ->
    [one] event
   *[other] events
 } of { $name }: { $why } See share left-out { $device }.
share-left-out-waits = the device waits for the office's nod.
share-left-out-role = the device has not the role for it.
share-left-out-withdrawn = the device was withdrawn before.
share-left-out-forged = the device did not sign it for that place.
share-left-out-senior = the other device was a planner before it.
share-left-out-nothing = Everything that came of it counts.
share-left-out-event = { $event }, { $day }: { $kind } { $what }: { $why }
share-address = "{ $url }" names no storage: write file:///folder (a folder that is there), https://server/folder or s3://bucket/folder
share-away = the storage does not answer; what is written stays on this device until it does ({ $cause })
share-refuses = the storage refuses this device; check account, password and folder
share-gone = { $name } is no longer in the storage
share-no-segment = this is no segment of a register; a segment begins with a line that names its format
share-newer = the segment has format { $found }, which this program does not know; update this program
share-not-whole = the segment is not whole: it was cut off or changed on the way; it is fetched again
share-not-signed = the segment's signature does not fit: whoever made it is not the device it names
share-other-fleet = the segment is encrypted to fleet { $fleet }, whose key this device does not have; join that fleet
share-other-events = the segment's events are not those that its head names: it was made wrongly or forged
share-empty = a segment holds at least one event
share-unreadable = what the segment holds can not be read: it was made by a newer program or forged
share-choose-first = no storage is chosen yet: share set tells where the fleet's is
share-join-first = this device belongs to no fleet: begin one or join one first
share-not-settled = { $count ->
    [one] 1 thing is not settled: devices told it in two ways. A person settles it where it stands.
   *[other] { $count } things are not settled: devices told them in two ways. A person settles them where they stand.
}
