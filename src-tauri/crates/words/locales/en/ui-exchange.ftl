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
