# Words of the table of all hoses.

hoses-title = All hoses
hoses-note = table, filter, labels
hoses-label = Hoses listed
hoses-table = Hoses
hoses-chosen = Chosen
hoses-choose = Choose { $code }
hoses-machine = Machine
hoses-place = Place
hoses-hose = Hose
hoses-age = Age
hoses-failures = Failed
hoses-due = Due
hoses-fitted = Fitted
hoses-grade = Last looked at
hoses-none = No hose is left by what is filtered.
hoses-age-unknown = age not known
hoses-due-of-service = service life
hoses-due-of-storage = storage
hoses-due-of-inspection = inspection
hoses-due-of-finding = what was seen
hoses-due-of-asked = asked too much
hoses-due-unknown = not known
hoses-due-past = { $days ->
    [0] today
    [one] { $shown } day over
   *[other] { $shown } days over
  }
hoses-filter = Search and filter
hoses-search-hint = Tag, machine, place, size
hoses-state = State
hoses-state-fitted = Fitted
hoses-state-made = Made, not fitted
hoses-state-taken-off = Taken off
hoses-state-failed-proof = Failed its proof
hoses-state-withdrawn = Withdrawn
hoses-is-past = Past its day
hoses-is-not-past = Not past
hoses-open = Open this hose
hoses-open-place = Open its place

## At a glance
hoses-glance-years = years
hoses-glance-older = { $years }+
hoses-glance-unknown = no day
hoses-glance-past = past
hoses-glance-days = in { $days } d
hoses-glance-ages = How many hoses of which age in years. { $ages }
hoses-glance-due = How many fall due. { $due }
hoses-glance-failed = Failed
hoses-glance-months = 12 months

## What is done with the chosen
hoses-chosen-count = { $count ->
    [one] { $shown } hose chosen
   *[other] { $shown } hoses chosen
  }
hoses-more = More than { $most } are not chosen at once: the first { $most } are.
hoses-labels = Labels of these
hoses-let-go = Let go of all
hoses-batch = { $count ->
    [one] Make { $shown } again
   *[other] Make { $shown } again
  }
hoses-batch-then = into the batch, by what their places ask now
hoses-too-many = At most { $most } go into a batch at once.
hoses-not-in-batch = { $count ->
    [one] { $shown } hose is left out: it sits nowhere, or nobody knows what belongs there.
   *[other] { $shown } hoses are left out: they sit nowhere, or nobody knows what belongs there.
  }
