-- Readings of a machine's hour meter, those noted when a hose was fitted or taken off included.
SELECT date, hours FROM hours WHERE machine = ?1
UNION ALL
SELECT s.on_date, s.on_hours FROM place p JOIN stint s ON s.place = p.place
WHERE p.machine = ?1 AND s.on_hours IS NOT NULL AND s.on_date IS NOT NULL
UNION ALL
SELECT s.off_date, s.off_hours FROM place p JOIN stint s ON s.place = p.place
WHERE p.machine = ?1 AND s.off_hours IS NOT NULL AND s.off_date IS NOT NULL
