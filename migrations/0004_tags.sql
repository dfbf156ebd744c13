-- Labels of hoses, projected from the log: printed here, or found on a hose that was taken in.
CREATE TABLE labelled (
    version TEXT PRIMARY KEY,
    code    TEXT NOT NULL,
    how     TEXT NOT NULL CHECK (how IN ('printed', 'seen'))
) STRICT, WITHOUT ROWID;

CREATE INDEX labelled_code ON labelled (code);

-- What was scanned on this device. It stands beside the log: a scan changes nothing of a hose, there are many, and where
-- a person went with a phone is nobody else's. The latest are kept.
CREATE TABLE scan (
    id       INTEGER PRIMARY KEY AUTOINCREMENT,
    ms       INTEGER NOT NULL,
    device   TEXT NOT NULL CHECK (length(device) = 32),
    code     TEXT, -- none where it could not be read
    way      TEXT NOT NULL CHECK (way IN ('picture', 'typed')),
    standing TEXT NOT NULL,
    verdict  TEXT NOT NULL CHECK (verdict IN ('pass', 'caution', 'stop'))
) STRICT;

-- The one size of label becomes the first of the user's stocks.
INSERT INTO setting (key, value)
SELECT 'label_stocks', json_array(json_object(
    'name', printf('%g x %g', width, height),
    'width_mm', width, 'height_mm', height, 'dpi', dpi, 'material', 'polyester', 'form', 'flag'
))
FROM (
    SELECT coalesce(max(number) FILTER (WHERE key = 'label_width_mm'), 60.0) AS width,
           coalesce(max(number) FILTER (WHERE key = 'label_height_mm'), 40.0) AS height,
           coalesce(max(number) FILTER (WHERE key = 'label_dpi'), 203.0) AS dpi,
           count(*) AS kept
    FROM (
        SELECT key, CAST(value AS REAL) AS number FROM setting
        WHERE key IN ('label_width_mm', 'label_height_mm', 'label_dpi')
          AND json_valid(value) AND json_type(value) IN ('integer', 'real')
    )
)
WHERE kept > 0;

DELETE FROM setting WHERE key IN ('label_width_mm', 'label_height_mm', 'label_dpi');
