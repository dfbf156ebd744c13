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
