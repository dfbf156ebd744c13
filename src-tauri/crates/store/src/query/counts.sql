SELECT (SELECT count(*) FROM site) AS sites,
       (SELECT count(*) FROM machine) AS machines,
       (SELECT count(*) FROM place) AS places,
       (SELECT count(*) FROM assembly) AS hoses,
       (SELECT count(DISTINCT code) FROM stint WHERE off_version IS NULL) AS in_service,
       (SELECT count(*) FROM draft) AS drafts,
       (SELECT count(DISTINCT track) FROM conflict)
       + (SELECT count(*) FROM (SELECT 1 FROM stint WHERE off_version IS NULL
                                GROUP BY place HAVING count(*) > 1)) AS conflicts,
       (SELECT count(*) FROM event) AS events,
       (SELECT count(*) FROM held) AS held
