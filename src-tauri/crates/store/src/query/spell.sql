SELECT s.code, s.on_date, s.already_there, s.off_date, s.cause IS NOT NULL AS failed,
       json_extract(a.content, '$.spec.hose.standard') AS standard,
       json_extract(a.content, '$.spec.hose.type') AS type,
       json_extract(p.content, '$.line') AS line
FROM stint s
LEFT JOIN assembly a ON a.code = s.code
LEFT JOIN place p ON p.place = s.place
ORDER BY s.code, coalesce(s.on_date, s.off_date), s.position
