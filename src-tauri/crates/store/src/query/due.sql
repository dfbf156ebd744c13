-- Every hose that sits somewhere, made here or not, and every hose that was never fitted. A hose
-- whose tag was withdrawn is left out only where it sits nowhere.
SELECT c.code, a.assembled, a.hose_made, s.on_version, s.on_date, s.already_there,
       (SELECT max(i.date) FROM inspection i WHERE i.code = c.code) AS inspected,
       s.place, p.number, p.name AS place_name, p.machine, m.name AS machine_name, m.site, t.name AS site_name
FROM (SELECT code FROM assembly UNION SELECT code FROM stint WHERE off_version IS NULL) c
LEFT JOIN assembly a ON a.code = c.code
LEFT JOIN stint s ON s.code = c.code AND s.off_version IS NULL
LEFT JOIN place p ON p.place = s.place
LEFT JOIN machine m ON m.machine = p.machine
LEFT JOIN site t ON t.site = m.site
WHERE s.code IS NOT NULL
   OR (NOT EXISTS (SELECT 1 FROM stint x WHERE x.code = c.code)
       AND NOT EXISTS (SELECT 1 FROM withdrawal w WHERE w.code = c.code))
