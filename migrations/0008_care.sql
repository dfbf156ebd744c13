-- The care of hoses: policies that tell hoses apart and count hours, surveys, the rows of the tables a hose rests on,
-- and what of each hose is looked for, sorted and due. All of it is projected from the log.

DROP TABLE policy;

CREATE TABLE policy (
    key     TEXT PRIMARY KEY,
    scope   TEXT NOT NULL,
    content TEXT NOT NULL, -- the whole policy, JSON
    version TEXT NOT NULL
) STRICT, WITHOUT ROWID;

ALTER TABLE assembly ADD COLUMN standard TEXT;
ALTER TABLE assembly ADD COLUMN kind TEXT;
ALTER TABLE assembly ADD COLUMN dn REAL;
ALTER TABLE assembly ADD COLUMN length_mm REAL;
ALTER TABLE assembly ADD COLUMN failed_proof INTEGER NOT NULL DEFAULT 0 CHECK (failed_proof IN (0, 1));
ALTER TABLE machine ADD COLUMN demand TEXT;
ALTER TABLE inspection ADD COLUMN opened INTEGER NOT NULL DEFAULT 0 CHECK (opened IN (0, 1));

CREATE TABLE survey (
    version TEXT PRIMARY KEY,
    place   TEXT NOT NULL,
    date    TEXT NOT NULL,
    content TEXT NOT NULL -- the whole survey, JSON
) STRICT, WITHOUT ROWID;

CREATE INDEX survey_place ON survey (place, date);

-- The rows of the tables that a hose rests on, as they were. One that was recorded without them has one row here, with
-- a blank table and the version of the tables as its digest.
CREATE TABLE rests (
    source TEXT NOT NULL, -- the table
    row    TEXT NOT NULL,
    digest TEXT NOT NULL,
    code   TEXT NOT NULL,
    PRIMARY KEY (source, row, digest, code)
) STRICT, WITHOUT ROWID;

CREATE INDEX rests_code ON rests (code);

-- What follows is computed from the tables above.

-- A machine's hour meter: latest reading, and hours a day.
CREATE TABLE meter (
    machine TEXT PRIMARY KEY,
    read_on TEXT NOT NULL,
    hours   REAL NOT NULL,
    per_day REAL
) STRICT, WITHOUT ROWID;

-- How each hose stands.
CREATE TABLE hose (
    code          TEXT PRIMARY KEY,
    state         TEXT NOT NULL,
    standard      TEXT,
    kind          TEXT,
    dn            REAL,
    length_mm     REAL,
    hose_made     TEXT,
    assembled     TEXT,
    new_on        TEXT, -- first day in service; none where that is not known
    place         TEXT,
    machine       TEXT,
    site          TEXT,
    line          TEXT,
    demand        TEXT,
    on_date       TEXT,
    already_there INTEGER NOT NULL CHECK (already_there IN (0, 1)),
    on_hours      REAL,
    inspected     TEXT,
    grade         TEXT, -- of the last inspection
    standing      TEXT NOT NULL, -- what was seen and stands, JSON
    next_day      TEXT, -- the soonest it falls due; blank: not known; none: nothing falls due
    next_what     TEXT
) STRICT, WITHOUT ROWID;

CREATE INDEX hose_place ON hose (place) WHERE place IS NOT NULL;
CREATE INDEX hose_machine ON hose (machine) WHERE machine IS NOT NULL;
CREATE INDEX hose_site ON hose (site) WHERE site IS NOT NULL;
CREATE INDEX hose_next ON hose (next_day, code);
CREATE INDEX hose_state ON hose (state, code);

-- What falls due when. The day is blank where it is not known, so that it comes first; a stop that never comes is far off.
CREATE TABLE due (
    code     TEXT NOT NULL,
    what     TEXT NOT NULL,
    day      TEXT NOT NULL,
    stop_day TEXT NOT NULL,
    machine  TEXT,
    site     TEXT,
    PRIMARY KEY (code, what)
) STRICT, WITHOUT ROWID;

CREATE INDEX due_day ON due (day, what, code);
CREATE INDEX due_what ON due (what, day, code);
CREATE INDEX due_machine ON due (machine, day, what, code);
CREATE INDEX due_site ON due (site, day, what, code);
CREATE INDEX due_stop ON due (stop_day, machine) WHERE stop_day < '9999-12-31';

-- What is searched. The number puts hoses before places, machines and sites, and in each what was recorded last first.
CREATE TABLE found (
    id   INTEGER PRIMARY KEY,
    kind TEXT NOT NULL CHECK (kind IN ('hose', 'place', 'machine', 'site')),
    key  TEXT NOT NULL, -- a code or an id, which a thing of another kind may have too
    UNIQUE (key, kind)
) STRICT;

CREATE VIRTUAL TABLE words USING fts5 (
    text, content = '', contentless_delete = 1, detail = none, prefix = '1 2 3 4',
    tokenize = "unicode61 remove_diacritics 2"
);
