-- The crimp tables of the user's own suppliers. They stand beside the log: a supplier's table is taken in whole, replaced
-- by its next edition and taken away again, and it is not ours to pass on to other devices. What a hose was made by
-- stands in the hose's own record.
CREATE TABLE supplier_row (
    id       INTEGER PRIMARY KEY AUTOINCREMENT,
    supplier TEXT NOT NULL,
    standard TEXT NOT NULL,
    kind     TEXT NOT NULL,
    dn       REAL NOT NULL,
    family   TEXT NOT NULL, -- empty: any of the series
    size     TEXT NOT NULL, -- empty: any
    series   TEXT NOT NULL, -- empty: none
    content  TEXT NOT NULL, -- the whole row, JSON
    ms       INTEGER NOT NULL,
    UNIQUE (supplier, standard, kind, dn, family, size, series)
) STRICT;

CREATE INDEX supplier_row_hose ON supplier_row (standard, kind, dn);
