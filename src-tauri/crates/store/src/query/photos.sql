-- ?1: what they are of, or null for all.
SELECT json_object(substr(p.about, 1, instr(p.about, '/') - 1), substr(p.about, instr(p.about, '/') + 1)) AS about,
       p.sha256, p.length, min(e.ms) AS ms, d.name,
       json_group_array(p.version ORDER BY e.ms, p.version) AS versions
FROM photo p
JOIN event e ON e.device = substr(p.version, 1, 32) AND e.number = CAST(substr(p.version, 34) AS INTEGER)
LEFT JOIN device d ON d.device = e.device
WHERE ?1 IS NULL OR p.about = ?1
GROUP BY p.about, p.sha256
ORDER BY min(e.ms) DESC, p.sha256
