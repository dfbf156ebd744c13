SELECT i.version, i.date, i.opened,
       (SELECT json_group_array(json_object('sign', f.sign, 'grade', f.grade) ORDER BY f.position)
        FROM inspection_finding f WHERE f.version = i.version) AS findings
FROM inspection i
WHERE i.code = ?1
ORDER BY i.date, i.version
