-- Settings of this device: outside the log, never merged, never in a bundle.
CREATE TABLE setting (
    key   TEXT PRIMARY KEY,
    value TEXT NOT NULL -- JSON
) STRICT;
