-- Stock: pieces of hose each with its own length, where things lie, prices, and what went into which hose. All of it is
-- projected from the log. `stock` itself stays as it was: its items are now written as JSON.
CREATE TABLE stock_place (
    store   TEXT NOT NULL,
    item    TEXT NOT NULL, -- JSON
    bin     TEXT NOT NULL,
    low     INTEGER,
    version TEXT NOT NULL,
    PRIMARY KEY (store, item)
) STRICT, WITHOUT ROWID;

CREATE TABLE price (
    item     TEXT PRIMARY KEY, -- JSON
    minor    INTEGER,
    currency TEXT NOT NULL,
    version  TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE piece (
    piece   TEXT PRIMARY KEY,
    content TEXT NOT NULL, -- the whole piece, JSON
    version TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- Sums of what came and went; a piece that another device has not handed over yet may have one already.
CREATE TABLE piece_length (
    piece  TEXT PRIMARY KEY,
    tenths INTEGER NOT NULL -- of a millimetre
) STRICT, WITHOUT ROWID;

-- What went into which hose.
CREATE TABLE stock_used (
    version  TEXT PRIMARY KEY,
    code     TEXT NOT NULL,
    store    TEXT,
    item     TEXT, -- JSON
    piece    TEXT,
    unit     TEXT NOT NULL, -- that the item is counted in
    quantity INTEGER NOT NULL, -- as many, or of a piece tenths of a millimetre
    CHECK ((item IS NULL) <> (piece IS NULL)),
    CHECK ((item IS NULL) = (store IS NULL))
) STRICT, WITHOUT ROWID;

CREATE INDEX stock_used_code ON stock_used (code);
