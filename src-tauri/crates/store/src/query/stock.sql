-- Counts bin by bin, with the bin and low mark that were set for the thing, and those of what was never counted there.
SELECT s.store, s.item, json_quote(s.unit) AS unit, s.bin, s.quantity, coalesce(p.bin, '') AS usual, p.low
FROM stock s LEFT JOIN stock_place p ON p.store = s.store AND p.item = s.item
UNION ALL
SELECT p.store, p.item, '"pieces"' AS unit, '' AS bin, NULL AS quantity, p.bin AS usual, p.low
FROM stock_place p
WHERE NOT EXISTS (SELECT 1 FROM stock s WHERE s.store = p.store AND s.item = p.item)
ORDER BY 1, 2, 3, 4
