# Words of the exchange with the fleet's other devices.
exchange-title = Other vans
exchange-note = one register for the whole fleet
exchange-means = The fleet’s devices leave what they wrote in one place that you choose, and fetch from it what the others wrote. It is encrypted with the fleet’s key: who runs the place can not read it. Without signal everything works as before and is exchanged later.
exchange-no-fleet = Only devices of one fleet exchange what they wrote. Begin a fleet, or join one.
exchange-to-fleet = To the fleet
exchange-kind = Where
exchange-kind-webdav = WebDAV
exchange-kind-s3 = Object storage (S3)
exchange-kind-folder = Folder or stick
exchange-url = Address
exchange-endpoint = Address of the service
exchange-region = Region
exchange-user = Account
exchange-password = Password
exchange-key-id = Id of the key
exchange-key = Key
exchange-secret-means = It is kept beside the fleet’s key on this device and never shown again.
exchange-use = Use this place
exchange-use-note = the first exchange asks it
exchange-keep = Keep the one there is
exchange-now = Exchange now
exchange-running = Exchanging
exchange-waits-then = { $count ->
    [one] 1 record waits
   *[other] { $shown } records wait
 }
exchange-nothing-waits-then = nothing of yours waits
exchange-waits = { $count ->
    [one] 1 record of this device waits
   *[other] { $shown } records of this device wait
 }
exchange-all-sent = All that this device wrote was sent
exchange-last = Last exchange { $when }:
exchange-came = { $count ->
    [0] nothing new came,
    [one] 1 record came,
   *[other] { $shown } records came,
 }
exchange-went = { $count ->
    [0] none went.
    [one] 1 went.
   *[other] { $shown } went.
 }
exchange-photos-here = { $here } of { $named } photos are on this device.
exchange-photos = Photos: { $came } came, { $went } went.
exchange-photos-to-come = { $count ->
    [one] 1 photo has
   *[other] { $shown } photos have
 } not come yet.
exchange-photos-to-go = { $count ->
    [one] 1 photo waits
   *[other] { $shown } photos wait
 } to be sent.
exchange-photo-refused = Refused, photo { $photo }: what lies there is not that picture. Delete it in the storage, and a device that has it sends it again.
exchange-never = Nothing was exchanged yet.
exchange-cut-off = Cut off; what came and went stays.
exchange-refused = Refused, device { $device } from record { $from } on:
exchange-waiting-for = Later records of device { $device } wait for earlier ones that it has not sent yet.
exchange-devices = What has come here
exchange-no-devices = Nothing of another device yet.
exchange-device = { $count ->
    [one] 1 record
   *[other] { $shown } records
 }, to { $when }
exchange-storage = Where they meet
exchange-change = Another place
exchange-stop = Stop exchanging
members-open = OPEN FLEET
members-open-means = Nobody has founded it: every device that has its key counts, a lost one too.
members-found = Found it on this device
members-found-note = its word then says who belongs to it
members-found-title = Found the fleet here?
members-found-means = Do it on the office’s device. Those whose records are here become technicians. Everyone else reads the fleet’s key off a screen once more, under Van, Fleet, and is admitted here. If this device is lost, the fleet has to be begun anew.
members-found-yes = Found it
members-not-now = Not now
members-waits = WAITS FOR THE OFFICE’S NOD
members-waits-means = What this device writes counts on it alone until a planner admits it. It reads what the others wrote. Its mark: { $mark }
members-reader = READER
members-reader-means = This device reads the fleet’s records and writes none. A planner can give it another role.
members-withdrawn = WITHDRAWN
members-withdrawn-means = A planner withdrew this device: what it writes counts no more. Restored from a backup it goes on as a new device, which can be admitted.
members-copied = WRITTEN TWICE
members-copied-means = Two programs wrote as device { $device }: a register’s file was copied. One of them goes on as a new device: back it up and restore the backup.
members-this = This device: { $standing }
members-standing-open = counts
members-standing-waits = waits for the office’s nod
members-standing-reader = reader
members-standing-technician = technician
members-standing-planner = planner
members-standing-founder = founder of the fleet
members-standing-withdrawn = withdrawn
members-left-out = { $count ->
    [one] 1 record does not count
   *[other] { $shown } records do not count
 }
members-mark = Its mark
members-compare = Look at that device’s own screen, under Van, Fleet: the same mark must stand there.
members-admit = Admit it as
members-role = Give it another role
members-as-technician = Technician
members-as-technician-note = everything of the job
members-as-planner = Planner
members-as-planner-note = also admits, withdraws and sets limits of age
members-as-reader = Reader
members-as-reader-note = reads and writes nothing
members-lost = It is lost
members-withdraw = Withdraw it
members-withdraw-note = what has come here stays
members-withdraw-title = Withdraw { $name }?
members-withdraw-means = Its { $shown } records that are here stay. Whatever it signs after them counts on no device. It can not come back under this mark. Whoever has it can still read what is exchanged until the storage’s password is changed.
members-withdraw-yes = Withdraw it
members-stays = Its first { $shown } records stay.
members-before = It was a planner before this device: only those before it give it a role or withdraw it.
members-planners = A planner admits devices and gives roles.
members-no-key = It has told no key: restored or of an older program.
members-left-out-title = What does not count
members-why-waits = waits for the nod
members-why-role = not its role
members-why-withdrawn = signed after it was withdrawn
members-why-forged = not signed by it
members-why-senior = about a planner before it
