-- What was begun on this device and is no job: a supplier's sheet half matched, a row half entered. One of each. They
-- change with every key and are nobody else's, so they stand beside the log.
CREATE TABLE unfinished (
    what    TEXT PRIMARY KEY,
    content TEXT NOT NULL, -- JSON
    file    BLOB, -- the file it is about, as it was picked
    ms      INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
