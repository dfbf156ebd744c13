-- ?1: JSON list of words in lower case, all of which must stand in the text; ?2: the first of them;
-- ?3: how many rows at most.
SELECT rank, code, place, number, place_name, machine, machine_name, site, site_name,
       (SELECT count(*) FROM stint f WHERE f.place = found.place AND f.cause IS NOT NULL) AS failed
FROM (
    SELECT CASE WHEN instr(a.folded, ?2) = 1 OR instr(a.folded, ' ' || ?2) = length(a.code) + 1
                THEN 0 ELSE 1 END AS rank,
           a.code, s.place, p.number, p.name AS place_name, m.machine, m.name AS machine_name,
           t.site, t.name AS site_name,
           a.folded || ' ' || coalesce(p.folded, '') || ' ' || coalesce(m.folded, '') || ' '
           || coalesce(t.folded, '') AS text
    FROM assembly a
    LEFT JOIN stint s ON s.code = a.code AND s.off_version IS NULL
    LEFT JOIN place p ON p.place = s.place
    LEFT JOIN machine m ON m.machine = p.machine
    LEFT JOIN site t ON t.site = m.site
    UNION ALL
    SELECT 2, NULL, p.place, p.number, p.name, m.machine, m.name, t.site, t.name,
           p.folded || ' ' || coalesce(m.folded, '') || ' ' || coalesce(t.folded, '')
    FROM place p
    LEFT JOIN machine m ON m.machine = p.machine
    LEFT JOIN site t ON t.site = m.site
    UNION ALL
    SELECT 3, NULL, NULL, NULL, NULL, m.machine, m.name, t.site, t.name,
           m.folded || ' ' || coalesce(t.folded, '')
    FROM machine m
    LEFT JOIN site t ON t.site = m.site
    UNION ALL
    SELECT 4, NULL, NULL, NULL, NULL, NULL, NULL, t.site, t.name, t.folded
    FROM site t
) found
WHERE NOT EXISTS (SELECT 1 FROM json_each(?1) word WHERE instr(text, word.value) = 0)
ORDER BY rank, site_name, machine_name, number, code
LIMIT ?3
