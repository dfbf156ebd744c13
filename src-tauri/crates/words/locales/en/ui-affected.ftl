# Words of the list of hoses that rested on rows which changed.

affected-title = Tables that changed
affected-note = hoses checked by old rows
affected-label = Hoses
affected-catalogue = tables { $version }
affected-what = These rows changed since hoses were checked by them. Check such a hose again before the next is made like it.
affected-changed = changed since
affected-gone = no longer in the tables
affected-not-known = checked by an older program that kept no rows
affected-hoses = { $count ->
    [one] hose
   *[other] hoses
  }
affected-checked-by = { $code } · checked by { $version }
affected-more = { $shown } of { $count } are shown.
affected-none-word = NONE
affected-none = { $count ->
    [0] No hose on record was checked by the tables.
    [one] The rows that { $shown } hose rests on are as they were.
   *[other] The rows that { $shown } hoses rest on are as they were.
  }
affected-unknown = { $count ->
    [one] Of { $shown } hose nobody knows which rows it rested on: check it again.
   *[other] Of { $shown } hoses nobody knows which rows they rested on: check them again.
  }
affected-table-not-known = Rows not known
affected-table-hoses = Hoses
affected-table-hose_types = Hose types
affected-table-ends = Ends
affected-table-flanges = Flanges
affected-table-hose_end_ratings = Hose-end ratings
affected-table-fluids = Fluids
