-- What the rows of its tracks say of a hose now, and the words by which it is found. Of two stays that have not ended, which is a conflict, the last.
SELECT a.code IS NOT NULL AS made, a.standard, a.kind, a.dn, a.length_mm, a.hose_made, a.assembled, a.failed_proof,
       s.place, p.machine, m.site,
       coalesce(json_extract(p.content, '$.service.line'), json_extract(p.content, '$.line')) AS line,
       coalesce(json_extract(p.content, '$.demand'), m.demand) AS demand,
       s.on_date, coalesce(s.already_there, 0) AS already_there, s.on_hours, r.read_on, r.hours, r.per_day,
       EXISTS (SELECT 1 FROM stint x WHERE x.code = c.code) AS sat,
       (SELECT x.on_date FROM stint x WHERE x.code = c.code AND x.already_there = 0
        ORDER BY x.position LIMIT 1) AS new_on,
       EXISTS (SELECT 1 FROM stint x WHERE x.code = c.code AND (x.already_there = 1 OR x.on_date IS NULL)) AS was_old,
       EXISTS (SELECT 1 FROM withdrawal w WHERE w.code = c.code) AS withdrawn,
       EXISTS (SELECT 1 FROM inspection i WHERE i.code = c.code) AS looked_at,
       EXISTS (SELECT 1 FROM hose h WHERE h.code = c.code) AS stood,
       coalesce(a.folded, lower(c.code)) || ' ' || coalesce(p.folded, '') || ' ' || coalesce(m.folded, '') || ' '
           || coalesce(t.folded, '') AS words
FROM (SELECT ?1 AS code) c
LEFT JOIN assembly a ON a.code = c.code
LEFT JOIN stint s ON s.code = c.code AND s.off_version IS NULL
LEFT JOIN place p ON p.place = s.place
LEFT JOIN machine m ON m.machine = p.machine
LEFT JOIN site t ON t.site = m.site
LEFT JOIN meter r ON r.machine = p.machine
ORDER BY s.position DESC
LIMIT 1
