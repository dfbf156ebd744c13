SELECT m.machine, m.version, m.name, m.sort, m.site, t.name AS site_name,
       (SELECT count(*) FROM place p WHERE p.machine = m.machine) AS places,
       (SELECT count(*)
        FROM place p JOIN stint s ON s.place = p.place AND s.off_version IS NULL
        WHERE p.machine = m.machine) AS hoses
FROM machine m
LEFT JOIN site t ON t.site = m.site
ORDER BY t.folded IS NULL, t.folded, m.folded, m.machine
