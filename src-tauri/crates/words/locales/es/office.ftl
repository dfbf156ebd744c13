# La copia del registro en la base de datos de una oficina.

office-kept = Copiado { $at }: { $came ->
    [one] 1 evento
   *[other] { $came } eventos
 }, { $events } en total; { $written ->
    [one] 1 fila escrita
   *[other] { $written } filas escritas
 }, { $removed ->
    [one] 1 quitada
   *[other] { $removed } quitadas
 }.
office-not-exchanged = SIN INTERCAMBIO previo, así que la copia es de lo que había aquí: { $why }
