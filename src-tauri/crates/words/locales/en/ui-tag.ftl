# Words of the tag and its label.
tag-title = Tag the hose
tag-text = What the tag says
tag-code = Code of the tag
tag-label-name = Label of { $code } as it prints
tag-full-text = The code holds the whole text: any phone reads it without this program.
tag-code-alone-short = The code holds the tag’s own code alone: the words beside it say what the hose is.
tag-code-only = Code only: no room for what the hose is, neither in the code nor in words. It stands on the record alone.
tag-left-off = { $count ->
    [one] { $count } fact had no room in words.
   *[other] { $count } facts had no room in words.
}
tag-no-room = NO ROOM
tag-where-flag = A flag round the hose, { $distance } from the ferrule, its face where it is seen with the machine standing.
tag-where-wrap = Round the hose, { $distance } from the ferrule, its code where it is seen with the machine standing.
tag-where-plate = Tied on { $distance } from the ferrule, where it is seen with the machine standing and rubs on nothing.
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
tag-again-note = with the code it has
tag-not-saved = NOT SAVED
tag-on-record = it stands on the record
tag-to-fit = Fit the hose
tag-crimp-outside = Crimp { $end } lies outside
tag-crimp-outside-then = no tag before it is read or crimped again
tag-bench-open = Finish it on the bench
tag-prove = Say whether it was proved
tag-prove-then = the tag says it either way
tag-unfinished = NOT FINISHED
tag-unfinished-how = There is no label yet. Still open:
tag-source-open = Nobody said whose the crimp diameter at { $end } is.
tag-not-kept = NOT KEPT
tag-first = None was printed from this record yet.
tag-by-hand-then = no label of your stocks has room
tag-stocks = Your labels
tag-own-stocks = Change your labels
tag-would-do = One of yours would do:
tag-none-would-do = None of your labels would do. Keep a larger one under Van, or write the code by hand.
tag-take-stock = Take { $name }
tag-take-stock-then = your label that has the room
tag-curve = Round a hose of { $od } ({ $from ->
    [given] as measured
    [reckoned] reckoned from the largest of the tables
   *[tables] from the tables
}) a camera sees a code of { $seen } in one look. This one is { $code } wide, its words run { $direction ->
    [around] round the hose
   *[along] along the hose
}.
tag-in-one-look = { $seen } in one look
tag-module = Code { $side } wide, { $dots } printer dots a module ({ $module }); a camera reads it from { $from } and nearer.
tag-sealed = Sealed by your fleet.
tag-over-cover = Over the cover
tag-over-cover-how = Measure across the hose, over its cover, where the label goes.
tag-print = Print
tag-print-label = Print the label
tag-print-label-then = the system’s own print window
tag-save-label = Save the label
tag-save-label-then = a PDF of the label’s size

## Stocks of labels
label-stock = { $width } × { $height }, { $form }
label-form-flag = flag
label-form-wrap = wrap
label-form-plate = plate
label-material-polyester = polyester
label-material-polypropylene = polypropylene
label-material-vinyl = vinyl
label-material-paper = paper
label-material-metal = metal
label-material-other = other

## Labels of many hoses
labels-title = Labels
batch-count = Labels
batch-due = What falls due
batch-machine-labels = Labels of this machine
batch-machine-labels-note = of all that sits on it
batch-due-labels = Labels of what falls due
batch-due-labels-note = one file
batch-within = { $days ->
    [0] past the limit
   *[other] within { $shown } days
}
batch-paper = On
batch-one-each = label printer, one each
batch-working = Making the labels.
batch-list = Hoses
batch-reprint = reprint
batch-diameter = { $from ->
    [reckoned] diameter not measured, reckoned from the largest of the tables
   *[tables] diameter not measured, the smallest of the tables
}
batch-code-alone = the code holds its name alone
batch-left-word = LEFT OUT
batch-left = { $count ->
    [one] { $shown } hose gets no label on this stock; the list says why.
   *[other] { $shown } hoses get no label on this stock; the list says why.
}
batch-save = { $count ->
    [one] Save { $shown } label
   *[other] Save { $shown } labels
}
batch-save-then = { $count ->
    [one] PDF, { $shown } page
   *[other] PDF, { $shown } pages
}
