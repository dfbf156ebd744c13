SELECT p.content, p.version,
       p.place, p.number, p.name AS place_name, m.machine, m.name AS machine_name, t.site, t.name AS site_name
FROM place p
LEFT JOIN machine m ON m.machine = p.machine
LEFT JOIN site t ON t.site = m.site
WHERE p.place = ?1
