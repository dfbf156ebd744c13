# Words of the tag and its label.
tag-title = Tag the hose
tag-text = What the tag says
tag-code = Code of the tag
tag-label-name = Label of { $code } as it prints
tag-size = { $width } × { $height }
tag-full-text = The code holds the whole text: any phone reads it without this program.
tag-code-alone-short = Too small for the whole text: the code holds the tag’s name, the words stand beside it.
tag-left-off = { $count ->
    [one] { $count } fact had no room in words.
   *[other] { $count } facts had no room in words.
}
tag-no-room = NO ROOM
tag-where = Along the hose, { $distance } from the ferrule, where it is seen with the machine standing.
tag-by-hand = Write it by hand
tag-by-hand-note = no printer here
tag-by-hand-how = On a metal or plastic tag, with a punch or a paint pen: the code, the working pressure, the year and month. The rest stands on the record.
tag-save-png = Save as picture
tag-save-pdf = Save as PDF
tag-share = Share the picture
tag-save-and-keep = Save the label and keep the hose
tag-keep = Keep the hose
tag-keep-then = on the record, then fit it
tag-correct = Save the label anew and correct the record
tag-correct-then = it was changed after it was recorded: put the new label on, take the old one off
tag-again = Print the label again
tag-again-how = A reprint: the same code, for the same hose. A worn label comes off first.
tag-not-saved = NOT SAVED
tag-on-record = it stands on the record
tag-to-fit = Fit the hose
tag-crimp-outside = Crimp { $end } lies outside
tag-crimp-outside-then = no tag before it is read or crimped again
tag-bench-open = Finish it on the bench
tag-prove = Say whether it was proved
tag-prove-then = the tag says it either way
tag-not-kept = NOT KEPT
