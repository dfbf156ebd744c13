SELECT t.site, t.version, t.name,
       (SELECT count(*) FROM machine m WHERE m.site = t.site) AS machines,
       (SELECT count(*)
        FROM machine m JOIN place p ON p.machine = m.machine
        JOIN stint s ON s.place = p.place AND s.off_version IS NULL
        WHERE m.site = t.site) AS hoses
FROM site t
ORDER BY t.folded, t.site
