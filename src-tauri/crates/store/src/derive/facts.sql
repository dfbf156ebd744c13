SELECT h.code, h.state, h.standard, h.kind, h.dn, h.length_mm, h.hose_made, h.assembled, h.new_on, h.line, h.demand,
       h.on_date, h.already_there, h.on_hours, h.inspected, h.grade, h.standing, h.next_day, h.next_what,
       h.place, p.number, p.name AS place_name, h.machine, m.name AS machine_name, h.site, t.name AS site_name,
       json_extract(p.content, '$.stakes') AS stakes, json_extract(p.content, '$.consequence') AS consequence,
       r.read_on, r.hours, r.per_day,
       EXISTS (SELECT 1 FROM due x WHERE x.code = h.code AND x.what = 'asked') AS too_much
FROM hose h
LEFT JOIN place p ON p.place = h.place
LEFT JOIN machine m ON m.machine = h.machine
LEFT JOIN site t ON t.site = h.site
LEFT JOIN meter r ON r.machine = h.machine
