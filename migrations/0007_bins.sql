-- Stock is counted bin by bin, and what went into a hose says whether it was used or thrown away. Both are projected from
-- the log anew.
DROP TABLE stock;
CREATE TABLE stock (
    store    TEXT NOT NULL,
    item     TEXT NOT NULL, -- JSON
    unit     TEXT NOT NULL CHECK (unit IN ('pieces', 'millimetres')),
    bin      TEXT NOT NULL, -- blank is the one that was set for the thing
    quantity INTEGER NOT NULL,
    PRIMARY KEY (store, item, unit, bin)
) STRICT, WITHOUT ROWID;

DROP TABLE stock_used;
CREATE TABLE stock_used (
    version  TEXT PRIMARY KEY,
    code     TEXT NOT NULL,
    store    TEXT,
    item     TEXT, -- JSON
    piece    TEXT,
    unit     TEXT NOT NULL, -- that the item is counted in
    quantity INTEGER NOT NULL, -- as many, or of a piece tenths of a millimetre
    why      TEXT NOT NULL,
    CHECK ((item IS NULL) <> (piece IS NULL)),
    CHECK ((item IS NULL) = (store IS NULL))
) STRICT, WITHOUT ROWID;

CREATE INDEX stock_used_code ON stock_used (code);

-- How many decimals money has is said by its currency, and no longer by the device: the rate of labour becomes the amount
-- as it is typed.
UPDATE setting
SET value = json_remove(
    json_set(
        value,
        '$.labour_rate',
        CASE
            WHEN json_type(value, '$.labour_rate') = 'integer' THEN
                CASE coalesce(json_extract(value, '$.currency_digits'), 2)
                    WHEN 0 THEN printf('%d', json_extract(value, '$.labour_rate'))
                    WHEN 1 THEN printf('%.1f', json_extract(value, '$.labour_rate') / 10.0)
                    WHEN 2 THEN printf('%.2f', json_extract(value, '$.labour_rate') / 100.0)
                    WHEN 3 THEN printf('%.3f', json_extract(value, '$.labour_rate') / 1000.0)
                    ELSE printf('%.4f', json_extract(value, '$.labour_rate') / 10000.0)
                END
        END
    ),
    '$.currency_digits'
)
WHERE key = 'pricing' AND json_valid(value) AND json_type(value) = 'object';
