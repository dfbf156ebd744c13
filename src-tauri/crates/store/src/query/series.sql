-- The last event of each series, by leaps from device to device: the log itself may have millions of events.
WITH RECURSIVE series (device) AS (
    SELECT min(device) FROM event
    UNION ALL
    SELECT (SELECT min(e.device) FROM event e WHERE e.device > series.device)
    FROM series WHERE series.device IS NOT NULL
), last (device, number) AS (
    SELECT device, (SELECT max(e.number) FROM event e WHERE e.device = series.device)
    FROM series WHERE device IS NOT NULL
)
