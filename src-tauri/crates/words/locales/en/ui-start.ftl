# Words of the start: no job is open.
start-title = No job open
start-register-empty = Register is empty
start-register = { $count ->
    [one] One machine in the register
   *[other] { $count } machines in the register
 }
start-nothing = Nothing drawn yet.
start-no-job = No hose in hand.
start-text = Start with what you hold: the old tag, the print, or a caliper. Everything stays on this phone and works with no signal.
start-due = Due or overdue: { $count }.
start-drawing = A hose not yet drawn: both ends, hose and length are open
start-scan = Scan or type the tag
start-scan-then = or any label still on the hose
start-print = Read the print
start-print-note = layline, even in part
start-measure = Measure
start-measure-note = caliper, thread gauge, tape
start-machine = Start at a machine
start-machine-note = the place says what was there
start-drafts = { $count ->
    [0] No job not done
    [one] One job not done
   *[other] { $count } jobs not done
 }
start-draft-no-place = Hose in the hand
start-draft-kept = kept { $when }
start-give-up = Give up
start-give-up-name = Give up the job: { $where }
start-given-up = Given up. Its readings go when you leave this page.
start-take-back-name = Take it back: the job { $where }
start-problem = The register can not be read.
