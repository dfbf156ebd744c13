-- Counts with their places, and places of what was never counted there.
SELECT s.store, s.item, json_quote(s.unit) AS unit, s.quantity, coalesce(p.bin, '') AS bin, p.low
FROM stock s LEFT JOIN stock_place p ON p.store = s.store AND p.item = s.item
UNION ALL
SELECT p.store, p.item, '"pieces"' AS unit, NULL AS quantity, p.bin, p.low
FROM stock_place p
WHERE NOT EXISTS (SELECT 1 FROM stock s WHERE s.store = p.store AND s.item = p.item)
ORDER BY 1, 2, 3
