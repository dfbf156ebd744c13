SELECT s.code, s.on_date, s.already_there, s.off_date, s.cause IS NOT NULL AS failed,
       -- Found failed by an inspection: on the first day that one stopped it. Seen whole on the last day before.
       CASE WHEN s.cause IS NOT NULL THEN
           (SELECT min(i.date) FROM inspection i JOIN inspection_finding f ON f.version = i.version
            WHERE i.code = s.code AND i.date > s.on_date AND i.date <= s.off_date AND f.grade = 'stop')
       END AS found,
       CASE WHEN s.cause IS NOT NULL THEN
           (SELECT group_concat(i.date) FROM inspection i
            WHERE i.code = s.code AND i.date >= s.on_date AND i.date < s.off_date)
       END AS looked,
       json_extract(a.content, '$.spec.hose.standard') AS standard,
       json_extract(a.content, '$.spec.hose.type') AS type,
       json_extract(a.content, '$.pressure_bar') AS pressure_bar,
       json_extract(p.content, '$.line') AS line,
       json_extract(p.content, '$.service.relief_bar') AS relief_bar,
       json_extract(p.content, '$.service.working_pressure_bar') AS working_pressure_bar,
       m.sort,
       s.place, p.number, p.name AS place_name, m.machine, m.name AS machine_name, t.site, t.name AS site_name
FROM stint s
LEFT JOIN assembly a ON a.code = s.code
LEFT JOIN place p ON p.place = s.place
LEFT JOIN machine m ON m.machine = p.machine
LEFT JOIN site t ON t.site = m.site
ORDER BY s.code, coalesce(s.on_date, s.off_date), s.position
