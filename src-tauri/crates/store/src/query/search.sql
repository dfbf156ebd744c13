-- ?1: beginnings of words; ?2: how many at most; ?3 and ?4: the first and last number of the kinds that are looked for.
SELECT w.rowid AS number_found, h.code,
       coalesce(p.place, h.place) AS place, p.number, p.name AS place_name,
       m.machine, m.name AS machine_name, t.site, t.name AS site_name,
       (SELECT count(*) FROM stint s WHERE s.place = p.place AND s.cause IS NOT NULL) AS failed,
       EXISTS (SELECT 1 FROM conflict c
               WHERE c.track IN ('made/' || h.code, 'whereabouts/' || h.code, 'inspections/' || h.code,
                                 'overrides/' || h.code, 'labels/' || h.code, 'withdrawal/' || h.code,
                                 CASE f.kind WHEN 'machine' THEN 'machine/' || f.key END)) AS unsettled
FROM (SELECT rowid FROM words WHERE words MATCH ?1 AND rowid BETWEEN ?3 AND ?4 ORDER BY rowid DESC LIMIT ?2) w
JOIN found f ON f.id = w.rowid
LEFT JOIN hose h ON f.kind = 'hose' AND h.code = f.key
LEFT JOIN place p ON p.place = CASE f.kind WHEN 'place' THEN f.key ELSE h.place END
LEFT JOIN machine m ON m.machine = CASE f.kind WHEN 'machine' THEN f.key ELSE p.machine END
LEFT JOIN site t ON t.site = CASE f.kind WHEN 'site' THEN f.key ELSE m.site END
ORDER BY w.rowid DESC
