SELECT s.code, s.on_version, s.on_date, s.already_there, s.on_hours, s.off_version, s.off_date,
       s.off_hours, s.cause, s.note, a.assembled, a.standard, a.kind, a.dn, a.length_mm,
       s.place, p.number, p.name AS place_name, m.machine, m.name AS machine_name, t.site, t.name AS site_name
FROM stint s
LEFT JOIN assembly a ON a.code = s.code
LEFT JOIN place p ON p.place = s.place
LEFT JOIN machine m ON m.machine = p.machine
LEFT JOIN site t ON t.site = m.site
