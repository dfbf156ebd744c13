-- The latest of the readings, those noted when a hose was fitted or taken off included.
SELECT ?1 AS machine, date, hours
FROM (
    SELECT date, hours FROM hours WHERE machine = ?1
    UNION ALL
    SELECT s.on_date, s.on_hours FROM place p JOIN stint s ON s.place = p.place
    WHERE p.machine = ?1 AND s.on_hours IS NOT NULL
    UNION ALL
    SELECT s.off_date, s.off_hours FROM place p JOIN stint s ON s.place = p.place
    WHERE p.machine = ?1 AND s.off_hours IS NOT NULL
)
ORDER BY date DESC, hours DESC
LIMIT 1
