# Words of the routing: how tight the hose bends between its ports.

routing-title = How tight does it bend?
routing-back = Back to the check
routing-estimate = An estimate.
routing-estimate-why = Weight, set and clamps are not in it: look at the hose over the whole travel.
routing-not-routed = NOT ROUTED
routing-inside = inside
routing-seeking = Lengths and changes that would do are being looked for.
routing-laying = The hose is being laid
routing-tried = Changed. Look at it, or take it back.

## Ports
routing-facing = How do the ports face?
routing-facing-how = As you see them from where the bend is seen best. End A is always at the left.
routing-facing-u = Side by side
routing-facing-facing = In one line
routing-facing-offset = On two lines
routing-facing-right-angle = At a right angle
routing-facing-away = Away from each other
routing-facing-free = Any other way
routing-change-facing = other ports
routing-earlier = The ports are those of the last job here.
routing-earlier-why = Look whether they still stand so before you go by this.
routing-said = What was said of the ports
routing-stands = Where B stands
routing-ends = What can not bend

routing-gap = across
routing-gap-how = From sealing face A level across to sealing face B.
routing-rise = height
routing-rise-how = How much higher or lower sealing face B is than A.
routing-offset = in depth
routing-offset-how = How much nearer to you or farther from you B is than A.
routing-angle = swing
routing-angle-how = How far port B is swung from the way it is drawn, in the plane of the drawing.
routing-roll = roll
routing-roll-how = How far port B is turned about its own axis, seen onto its face. It twists the hose.
routing-a-looks = A looks
routing-b-looks = B looks
routing-looks-how = The way the port looks: 0 is to the right, then anticlockwise.
routing-looks-right = to the right
routing-looks-up = up
routing-looks-left = to the left
routing-looks-down = down
routing-rigid = stiff length
routing-rigid-how = Along the hose’s axis from the sealing face to the end of the ferrule: a tape on the old hose gives it.
routing-od = diameter of the hose
routing-od-how = Over the cover, with a caliper.
routing-of-b = B from A: { $label }
routing-of-closed = Closed: { $label }
routing-of-open = Open: { $label }
routing-way = { $value } { $way }
routing-right = to the right
routing-left = to the left
routing-above = higher
routing-below = lower
routing-near = nearer
routing-far = farther
routing-left-round = anticlockwise
routing-right-round = clockwise
routing-points = Elbow at { $end } points
routing-points-towards = to the other port
routing-points-away = away from it
routing-points-front = towards you
routing-points-back = away from you

## Travel
routing-travel-question = Does a port move?
routing-travel-unknown = Not known whether a port moves
routing-change-travel = say it
routing-change = change
routing-moves = A port moves
routing-moves-note = a cylinder, a boom, a swivel: two poses are asked
routing-fixed = Neither port moves
routing-fixed-note = both sit on one frame
routing-travel = Travel from closed to open
routing-closed = closed
routing-open = open
routing-closed-tightest = closed: tightest
routing-open-tightest = open: tightest
routing-between = { $part } % open
routing-between-tightest = { $part } % open: tightest
routing-twist-here = Twist here { $twist } against closed.
routing-near-rival = Two shapes are near here: the hose may lie in either.

## Drawing
routing-side = side: drag A or B
routing-plan = plan, from above
routing-side-name = Side view, { $pose }: { $radius } { $spot }
routing-plan-name = Plan from above, { $pose }
routing-radius = R { $radius }
routing-no-bend = no bend
routing-spot = inside, { $at } from A
routing-drag = Drag end { $end }; arrow keys move it
routing-drag-plan = Drag end { $end } in the plan; arrow keys move it

## Figures
routing-twist = twist over the travel
routing-at-shorter = at { $part } % shorter
routing-at-longer = at { $part } % longer
routing-length-now = overall length
routing-length-taken = overall length taken
routing-shortest = shortest that fits
routing-use-length = Use this length: { $length }
routing-recommended = { $length }: should it come out { $short } short, it still bends no tighter than { $radius } · { $source }

## What would cure it
routing-cures = Changes that were routed
routing-cures-how = Each was put through the whole travel. Tap one to try it.
routing-cure-bend = bends to { $radius }
routing-cure-length = { $length } long
routing-cure-assumed = drop and stiff length to be measured

## The next thing to do
routing-use = Use this bend
routing-use-then = { $radius } goes to the check
routing-go-enter = Enter: { $field }
routing-go-travel = Say whether a port moves
routing-go-open = Enter the open pose
routing-go-open-then = it still stands as the closed one
routing-go-rigid = Enter the stiff length of end { $end }
routing-go-turn = Use this turn
routing-go-length = Use the length that reaches
