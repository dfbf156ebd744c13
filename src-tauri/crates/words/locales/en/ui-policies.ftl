# Words of the limits of age: the tables' and the owner's.

policies-title = Limits of age
policies-note = guide values and your own
policies-here = Limits that hold here
policies-label = Yours
policies-yours = Your rules
policies-yours-none = No rule of yours yet: the guide values hold, and crossing one is a caution.
policies-guides = Guide values of the tables
policies-guides-how = They hold wherever no rule of yours says anything. A guide crossed is a caution and never more.
policies-what-service = Service life, from assembly
policies-what-storage = In store, before it is fitted
policies-what-inspection = Between inspections
policies-order = The narrowest rule that says anything wins: place, machine, site, fleet; of two as narrow, the one that names the line or the demands. Of years and hours the stricter counts.
policies-maker = The maker’s limits and local codes come first. No rule here makes them longer.
policies-new = Set a rule of yours
policies-new-then = with its effect before it is kept
policies-where = Where it holds
policies-scope-fleet = Whole fleet
policies-scope-site = One site
policies-scope-machine = Machine, place
policies-pick = Choose
policies-every-place = Every place of it
policies-every-line = Every line
policies-all-hoses = All hoses
policies-demand = Demands
demand-normal = Normal demands
demand-harsh = Increased demands
policies-limits = Limits
policies-limits-how = What stays empty is left to the wider rule, at last to the guide value.
policies-none = –
policies-limit-service-years = Service life
policies-limit-service-hours = Service hours
policies-limit-storage-years = In store
policies-limit-inspection-years = Inspection
policies-limit-inspection-hours = Inspection hours
policies-limit-service-years-how = From assembly to replacement, storage included.
policies-limit-service-hours-how = Hours of the machine since the hose was fitted. They become a day by the machine’s own hours a day; without readings they count for nothing, and the list says so.
policies-limit-storage-years-how = From assembly to fitting. Storage is part of the service life.
policies-limit-inspection-years-how = From one look to the next. Half a year is 0.5.
policies-limit-inspection-hours-how = Hours of the machine since the hose was last looked at.
policies-hours = { $hours } h
policies-take = Take this
policies-says-nothing = No limit
policies-is-stop = crossed: stop
policies-is-caution = crossed: caution
policies-keep = Keep this rule
policies-keep-then = it holds from now on, on every device
policies-remove = Take the rule away
policies-remove-note = the wider rule holds
policies-effect-word = EFFECT
policies-effect-longer = LONGER THAN THE GUIDE
policies-effect-later = LATER THAN NOW
policies-effect-longer-how = { $count ->
    [0] No hose leaves the list of what is past.
    [one] { $off } hose leaves the list of what is past.
   *[other] { $off } hoses leave the list of what is past.
  } { $over ->
    [0] {""}
    [one] { $guide } day would lie past that of the guide. The hose is no younger for it.
   *[other] { $guide } days would lie past those of the guide. The hoses are no younger for it.
  }
policies-pick-first = Choose where it holds first.
policies-effect = { $count ->
    [0] No day moves, of { $hoses } hoses that it holds for.
    [one] { $moved } day moves, of { $hoses } hoses that it holds for.
   *[other] { $moved } days move, of { $hoses } hoses that it holds for.
  } { $machines ->
    [0] {""}
    [one] { $stopped } machine is stopped.
   *[other] { $stopped } machines are stopped.
  }
policies-effect-none = Change a limit to see what it does before it is kept.
policies-effect-past = Past the limit
policies-effect-within = Due in 12 months
policies-effect-stopped = Stopped
policies-effect-change = { $before } now, { $after } then
policies-effect-rows = Hoses whose day moves
policies-effect-more = { $shown } of { $moved } are shown, the gravest first.
policies-was = was { $day }
