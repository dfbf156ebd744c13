-- The register: one append-only log, and tables projected from it.
-- Ids and hashes are hexadecimal text, events are named `device/number`, dates are ISO 8601.

-- The file itself: which device writes in it, and which version of the projections it holds.
CREATE TABLE register (
    id         INTEGER PRIMARY KEY CHECK (id = 1),
    device     TEXT NOT NULL CHECK (length(device) = 32),
    projection INTEGER NOT NULL
) STRICT;

-- The log. A device appends to its own series only; nothing is ever changed or removed.
CREATE TABLE event (
    device    TEXT NOT NULL CHECK (length(device) = 32),
    number    INTEGER NOT NULL CHECK (number >= 1),
    hash      TEXT NOT NULL CHECK (length(hash) = 64),
    previous  TEXT NOT NULL CHECK (length(previous) = 64),
    builds_on TEXT NOT NULL, -- JSON list of events
    schema    INTEGER NOT NULL,
    ms        INTEGER NOT NULL,
    count     INTEGER NOT NULL,
    kind      TEXT NOT NULL,
    body      TEXT NOT NULL, -- byte for byte as its writer wrote it
    PRIMARY KEY (device, number)
) STRICT, WITHOUT ROWID;

CREATE INDEX event_time ON event (ms, count);

CREATE TRIGGER event_is_never_changed BEFORE UPDATE ON event
BEGIN
    SELECT RAISE(ABORT, 'the log is append-only: an event is never changed');
END;

CREATE TRIGGER event_is_never_removed BEFORE DELETE ON event
BEGIN
    SELECT RAISE(ABORT, 'the log is append-only: an event is never removed');
END;

-- REPLACE would remove a row without asking the trigger above.
CREATE TRIGGER event_is_never_replaced BEFORE INSERT ON event
WHEN EXISTS (SELECT 1 FROM event WHERE device = NEW.device AND number = NEW.number)
BEGIN
    SELECT RAISE(ABORT, 'the log is append-only: an event is never replaced');
END;

CREATE TRIGGER event_continues_its_series BEFORE INSERT ON event
WHEN NEW.previous IS NOT CASE NEW.number
    WHEN 1 THEN '0000000000000000000000000000000000000000000000000000000000000000'
    ELSE (SELECT hash FROM event WHERE device = NEW.device AND number = NEW.number - 1)
END
BEGIN
    SELECT RAISE(ABORT, 'the log is append-only: an event continues its device''s series');
END;

-- Events of other devices that arrived before the ones they continue.
CREATE TABLE held (
    device TEXT NOT NULL,
    number INTEGER NOT NULL,
    hash   TEXT NOT NULL,
    line   TEXT NOT NULL,
    PRIMARY KEY (device, number, hash)
) STRICT, WITHOUT ROWID;

-- Names of people, beside the log so that they can be erased. An erased name stays erased.
CREATE TABLE person (
    id     TEXT PRIMARY KEY CHECK (length(id) = 32),
    name   TEXT,
    ms     INTEGER NOT NULL,
    erased INTEGER NOT NULL DEFAULT 0 CHECK (erased IN (0, 1)),
    CHECK (erased = (name IS NULL))
) STRICT, WITHOUT ROWID;

-- Settings of this device. They stay on it.
CREATE TABLE setting (
    key   TEXT PRIMARY KEY,
    value TEXT NOT NULL -- JSON
) STRICT, WITHOUT ROWID;

-- Jobs that are not done, as the screens left them. They change with every key and belong to this device
-- alone, so they stand beside the log; what comes of a job is recorded in it.
CREATE TABLE draft (
    job     TEXT PRIMARY KEY CHECK (length(job) = 32),
    content TEXT NOT NULL, -- JSON
    ms      INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

-- What follows is projected from the log and can be made anew from it at any time.

-- Which events belong to the track of which thing.
CREATE TABLE track (
    key    TEXT NOT NULL,
    device TEXT NOT NULL,
    number INTEGER NOT NULL,
    PRIMARY KEY (key, device, number)
) STRICT, WITHOUT ROWID;

-- Which events build on which.
CREATE TABLE link (
    parent TEXT NOT NULL,
    child  TEXT NOT NULL,
    kind   TEXT NOT NULL, -- of the child
    PRIMARY KEY (parent, child)
) STRICT, WITHOUT ROWID;

-- Events of a track that contradict each other until a person settles it.
CREATE TABLE conflict (
    track TEXT NOT NULL,
    event TEXT NOT NULL,
    PRIMARY KEY (track, event)
) STRICT, WITHOUT ROWID;

CREATE TABLE device (
    device  TEXT PRIMARY KEY,
    name    TEXT NOT NULL,
    version TEXT NOT NULL -- the event that stands
) STRICT, WITHOUT ROWID;

CREATE TABLE site (
    site    TEXT PRIMARY KEY,
    name    TEXT NOT NULL,
    folded  TEXT NOT NULL, -- what is searched, in lower case
    version TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE machine (
    machine TEXT PRIMARY KEY,
    site    TEXT,
    name    TEXT NOT NULL,
    sort    TEXT NOT NULL,
    folded  TEXT NOT NULL,
    version TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE INDEX machine_site ON machine (site);

CREATE TABLE hours (
    version TEXT PRIMARY KEY,
    machine TEXT NOT NULL,
    date    TEXT NOT NULL,
    hours   REAL NOT NULL
) STRICT, WITHOUT ROWID;

CREATE INDEX hours_machine ON hours (machine, date);

CREATE TABLE circuit (
    circuit    TEXT PRIMARY KEY,
    machine    TEXT NOT NULL,
    name       TEXT NOT NULL,
    relief_bar REAL,
    version    TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE INDEX circuit_machine ON circuit (machine);

CREATE TABLE place (
    place   TEXT PRIMARY KEY,
    machine TEXT NOT NULL,
    number  INTEGER NOT NULL,
    name    TEXT NOT NULL,
    folded  TEXT NOT NULL,
    content TEXT NOT NULL, -- the whole place, JSON
    version TEXT NOT NULL
) STRICT;

CREATE INDEX place_machine ON place (machine, number);

CREATE TABLE assembly (
    code      TEXT PRIMARY KEY,
    hose_made TEXT,
    assembled TEXT,
    folded    TEXT NOT NULL,
    content   TEXT NOT NULL, -- the whole assembly, JSON
    version   TEXT NOT NULL
) STRICT;

-- A stay of a hose at a place. At least one of its ends is known.
CREATE TABLE stint (
    code          TEXT NOT NULL,
    position      INTEGER NOT NULL,
    place         TEXT NOT NULL,
    on_version    TEXT,
    on_date       TEXT,
    already_there INTEGER NOT NULL DEFAULT 0 CHECK (already_there IN (0, 1)),
    on_hours      REAL,
    off_version   TEXT,
    off_date      TEXT,
    off_hours     REAL,
    cause         TEXT,
    note          TEXT,
    PRIMARY KEY (code, position),
    CHECK (on_version IS NOT NULL OR off_version IS NOT NULL),
    CHECK ((on_version IS NULL) = (on_date IS NULL)),
    CHECK ((off_version IS NULL) = (off_date IS NULL))
) STRICT, WITHOUT ROWID;

CREATE INDEX stint_place ON stint (place);
CREATE INDEX stint_open ON stint (place, code) WHERE off_version IS NULL;

CREATE TABLE inspection (
    version TEXT PRIMARY KEY,
    code    TEXT NOT NULL,
    date    TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE INDEX inspection_code ON inspection (code, date);

CREATE TABLE inspection_finding (
    version  TEXT NOT NULL REFERENCES inspection (version) ON DELETE CASCADE,
    position INTEGER NOT NULL,
    sign     TEXT NOT NULL,
    grade    TEXT NOT NULL CHECK (grade IN ('pass', 'caution', 'stop')),
    PRIMARY KEY (version, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE withdrawal (
    code    TEXT PRIMARY KEY,
    reason  TEXT NOT NULL,
    version TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE policy (
    scope            TEXT PRIMARY KEY,
    service_years    REAL,
    storage_years    REAL,
    inspection_years REAL,
    stop             INTEGER NOT NULL CHECK (stop IN (0, 1)),
    version          TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE stock (
    store    TEXT NOT NULL,
    item     TEXT NOT NULL,
    unit     TEXT NOT NULL CHECK (unit IN ('pieces', 'millimetres')),
    quantity INTEGER NOT NULL,
    PRIMARY KEY (store, item, unit)
) STRICT, WITHOUT ROWID;

CREATE TABLE override (
    version TEXT PRIMARY KEY,
    code    TEXT NOT NULL,
    rule    TEXT NOT NULL,
    reason  TEXT NOT NULL,
    person  TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE INDEX override_code ON override (code);

CREATE TABLE photo (
    version TEXT PRIMARY KEY,
    about   TEXT NOT NULL,
    sha256  TEXT NOT NULL,
    mime    TEXT NOT NULL,
    length  INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE INDEX photo_about ON photo (about);

CREATE TABLE note (
    version TEXT PRIMARY KEY,
    about   TEXT NOT NULL,
    text    TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE INDEX note_about ON note (about);
