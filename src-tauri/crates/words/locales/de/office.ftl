# Die Kopie des Registers in der Datenbank eines Büros.

office-kept = Übertragen { $at }: { $came } { $came ->
    [one] Ereignis
   *[other] Ereignisse
 }, { $events } insgesamt; { $written } { $written ->
    [one] Zeile
   *[other] Zeilen
 } geschrieben, { $removed } weggenommen.
office-not-exchanged = NICHT AUSGETAUSCHT, die Kopie ist also von dem, was hier war: { $why }
