# The copy of the register in an office's database.

office-kept = Brought over { $at }: { $came } { $came ->
    [one] event
   *[other] events
 }, { $events } in all; { $written } { $written ->
    [one] row
   *[other] rows
 } written, { $removed } taken away.
office-not-exchanged = NOT EXCHANGED first, so that the copy is of what was here: { $why }
