-- What a hose is, what it was once checked for, and what the place it sits at asks of it.
SELECT json_extract(a.content, '$.spec') AS spec, json_extract(a.content, '$.service') AS service,
       p.content AS place, c.relief_bar
FROM assembly a
JOIN place p ON p.place = ?2
LEFT JOIN circuit c ON c.circuit = json_extract(p.content, '$.circuit')
WHERE a.code = ?1
