# Words of flow and surge: what the oil does in the hose.

flowing-title = What does the oil do?
flowing-not-reckoned = NOT RECKONED
flowing-estimate-why = Clean oil in a smooth round bore; valves and other lines are not in it.
flowing-within = The oil runs as fast as is usual in such a line.
flowing-too-fast = Faster than is usual in such a line: it gets hot and loses pressure.
flowing-usual-unknown = What is usual is not known until it is said what the line does.
flowing-peak-unknown = How high the surge peaks is not known until the working pressure is.
flowing-brings = brings the oil to { $speed }
flowing-cure = Take a wider size.
flowing-usual = usual { $low } to { $high }
flowing-drawing = The bore cut open: the oil runs at { $speed }
flowing-loses = loses { $drop }
flowing-said = What it rests on
flowing-enter = Enter: { $field }

flowing-drop = pressure lost
flowing-cold-drop = lost at the coldest
flowing-reynolds = Reynolds number
flowing-regime-laminar = laminar
flowing-regime-transitional = between laminar and turbulent
flowing-regime-turbulent = turbulent
flowing-viscosity = viscosity
flowing-viscosity-at = { $value } at { $heat }

flowing-sizes = Sizes wide enough, put through the whole check

flowing-surge = Surge, when a valve shuts
flowing-surge-drawing = The pressure as the valve shuts: it rises by { $rise }
flowing-rise = comes on top
flowing-peak = peak
flowing-wave = pressure wave
flowing-critical = there and back
flowing-critical-within = { $time }: as bad as a sudden stop
flowing-critical-slower = { $time }: the valve is slower
flowing-use-surge = Use this surge
flowing-use-surge-then = { $peak } goes to the check, as an estimate

flowing-length = length of the line
flowing-length-how = The whole line where it is more than this hose: from the valve that shuts to where the line widens.
flowing-elbows-45 = elbows 45°
flowing-elbows-90 = elbows 90°
flowing-elbows-how = In the line beside this hose’s own ends.
flowing-vg = viscosity grade
flowing-vg-how = ISO VG from the machine’s plate or the drum, such as 46.
flowing-closing = valve shuts in
flowing-closing-how = In milliseconds, from the valve’s data sheet.
