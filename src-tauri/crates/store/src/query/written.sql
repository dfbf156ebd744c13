-- ?1: JSON list of track keys.
WITH about (device, number) AS (
    SELECT t.device, t.number FROM track t WHERE t.key IN (SELECT value FROM json_each(?1))
),
voiding (device, number) AS (
    SELECT substr(l.child, 1, 32), CAST(substr(l.child, 34) AS INTEGER)
    FROM about a JOIN link l ON l.parent = a.device || '/' || a.number AND l.kind = 'voided'
)
SELECT e.device, e.number, e.builds_on, e.ms, e.count, e.kind, e.body, d.name,
       EXISTS (SELECT 1 FROM link WHERE parent = e.device || '/' || e.number AND kind = 'voided') AS void
FROM (SELECT * FROM about UNION SELECT * FROM voiding) w
JOIN event e ON e.device = w.device AND e.number = w.number
LEFT JOIN device d ON d.device = e.device
ORDER BY e.ms, e.count, e.device, e.number
