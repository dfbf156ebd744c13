SELECT o.version, o.rule, o.reason, o.person, n.name
FROM override o
LEFT JOIN person n ON n.id = o.person
WHERE o.code = ?1
ORDER BY o.version
