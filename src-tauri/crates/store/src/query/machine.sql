SELECT m.machine, m.site, m.name, m.sort, m.demand, m.version, t.name AS site_name, t.version AS site_version
FROM machine m
LEFT JOIN site t ON t.site = m.site
WHERE m.machine = ?1
