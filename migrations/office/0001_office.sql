-- The office's copy of the register. The program keeps the tables; whoever plans asks the views, or the tables themselves.
-- Texts have no length, since people write what they like. Ids are hexadecimal text, events `device/number`. A column
-- that ends in _on is a day, and one that is not known is null.
CREATE SCHEMA hosewright;
COMMENT ON SCHEMA hosewright IS 'Copy of a hosewright register; written by "hosewright office" alone';

-- Which steps these tables have had, and of what they are the copy.
CREATE TABLE hosewright.copied (
    one       boolean PRIMARY KEY DEFAULT true CHECK (one),
    migration integer NOT NULL,
    copied_at timestamptz,
    program   text
);
INSERT INTO hosewright.copied (migration) VALUES (0);

-- How far the log of each device was taken over: changed in the same transaction as the log.
CREATE TABLE hosewright.series (
    device text PRIMARY KEY,
    number bigint NOT NULL,
    hash   text NOT NULL
);

CREATE TABLE hosewright.log (
    device    text NOT NULL,
    number    bigint NOT NULL,
    hash      text NOT NULL,
    previous  text NOT NULL,
    builds_on text[] NOT NULL,
    schema    bigint NOT NULL,
    written   timestamptz NOT NULL,
    count     bigint NOT NULL,
    kind      text NOT NULL,
    body      text NOT NULL, -- JSON, byte for byte as its writer wrote it
    PRIMARY KEY (device, number)
);
CREATE INDEX log_written ON hosewright.log (written);

CREATE TABLE hosewright.devices (device text PRIMARY KEY, name text, public_key text);
CREATE TABLE hosewright.sites (site text PRIMARY KEY, name text NOT NULL);
CREATE TABLE hosewright.machines (
    machine text PRIMARY KEY, site text, name text NOT NULL, sort text NOT NULL, demand text,
    read_on date, hours double precision, hours_per_day double precision
);
CREATE TABLE hosewright.hours (
    event text PRIMARY KEY, machine text NOT NULL, read_on date, hours double precision NOT NULL
);
CREATE TABLE hosewright.circuits (
    circuit text PRIMARY KEY, machine text NOT NULL, name text NOT NULL, relief_bar double precision
);
CREATE TABLE hosewright.places (
    place text PRIMARY KEY, machine text NOT NULL, number bigint NOT NULL, name text NOT NULL, line text, demand text,
    circuit text, working_pressure_bar double precision, relief_bar double precision, fluid text,
    standard text, type text, dn double precision, length_mm double precision, consequence integer
);
CREATE TABLE hosewright.hoses (
    code text PRIMARY KEY, state text NOT NULL, standard text, type text, dn double precision, length_mm double precision,
    made_on date, assembled_on date, in_service_on date, place text, machine text, site text, line text, demand text,
    fitted_on date, already_there boolean NOT NULL, fitted_hours double precision, inspected_on date, grade text,
    next_on date, next_what text
);
CREATE INDEX hoses_place ON hosewright.hoses (place);
CREATE TABLE hosewright.builds (
    code text PRIMARY KEY, event text NOT NULL, device text NOT NULL, standard text, type text, dn double precision,
    length_mm double precision, made_on date, assembled_on date, verdict text, pressure_bar double precision,
    proof text, proof_why text, proof_bar double precision, proof_s double precision, gauge text, taken_in text,
    catalogue text, program text
);
CREATE TABLE hosewright.ends (
    code text NOT NULL, position integer NOT NULL, role text, family text, size text, gender text, form text,
    rating_bar double precision, PRIMARY KEY (code, position)
);
CREATE TABLE hosewright.stays (
    code text NOT NULL, position bigint NOT NULL, place text NOT NULL, fitted_event text, fitted_on date,
    already_there boolean NOT NULL, fitted_hours double precision, removed_event text, removed_on date,
    removed_hours double precision, cause text, note text, PRIMARY KEY (code, position)
);
CREATE INDEX stays_place ON hosewright.stays (place);
CREATE TABLE hosewright.inspections (
    event text PRIMARY KEY, code text NOT NULL, inspected_on date, opened boolean NOT NULL
);
CREATE INDEX inspections_code ON hosewright.inspections (code);
CREATE TABLE hosewright.findings (
    event text NOT NULL, position bigint NOT NULL, sign text NOT NULL, grade text NOT NULL, PRIMARY KEY (event, position)
);
CREATE TABLE hosewright.surveys (
    event text PRIMARY KEY, place text NOT NULL, surveyed_on date, state text, code text, note text
);
-- due_on is null where it is not known: such a hose comes first. stop_on is null where nobody said that it stops.
CREATE TABLE hosewright.due (
    code text NOT NULL, what text NOT NULL, due_on date, stop_on date, PRIMARY KEY (code, what)
);
CREATE INDEX due_due_on ON hosewright.due (due_on);
CREATE TABLE hosewright.policies (
    key text PRIMARY KEY, line text, demand text, service_years double precision, service_hours double precision,
    storage_years double precision, inspection_years double precision, inspection_hours double precision, stop boolean
);
CREATE TABLE hosewright.labels (event text PRIMARY KEY, code text NOT NULL, how text NOT NULL);
CREATE TABLE hosewright.withdrawals (event text PRIMARY KEY, code text NOT NULL, reason text NOT NULL);
CREATE TABLE hosewright.overrides (event text PRIMARY KEY, code text NOT NULL, rule text NOT NULL, reason text NOT NULL);
-- An index holds no text of any length, so what is named by people has no key.
CREATE TABLE hosewright.stock (
    store text NOT NULL, kind text NOT NULL, name text, item text NOT NULL, unit text NOT NULL, bin text NOT NULL,
    quantity bigint NOT NULL
);
CREATE TABLE hosewright.bins (
    store text NOT NULL, kind text NOT NULL, name text, item text NOT NULL, bin text NOT NULL, low bigint
);
CREATE TABLE hosewright.prices (kind text NOT NULL, name text, item text NOT NULL, minor bigint, currency text NOT NULL);
CREATE TABLE hosewright.pieces (
    piece text PRIMARY KEY, store text, bin text, standard text, type text, dn double precision, sort text, made_on date,
    label text, length_mm double precision
);
CREATE TABLE hosewright.used (
    event text PRIMARY KEY, code text NOT NULL, store text, item text, piece text, unit text NOT NULL,
    quantity bigint NOT NULL, why text NOT NULL
);
CREATE INDEX used_code ON hosewright.used (code);
CREATE TABLE hosewright.notes (event text PRIMARY KEY, about text NOT NULL, text text NOT NULL);
CREATE TABLE hosewright.photos (
    event text PRIMARY KEY, about text NOT NULL, sha256 text NOT NULL, mime text NOT NULL, length bigint NOT NULL
);
CREATE TABLE hosewright.conflicts (track text NOT NULL, event text NOT NULL);

-- What sits where, how old it is and when it falls due next.
CREATE VIEW hosewright.fitted AS
SELECT s.name AS site, m.name AS machine, p.number AS place_number, p.name AS place, h.code, h.standard, h.type, h.dn,
       h.length_mm, b.pressure_bar, h.made_on, h.assembled_on, h.fitted_on, h.already_there,
       round((current_date - coalesce(h.assembled_on, h.in_service_on)) / 365.25, 1) AS age_years,
       h.inspected_on, h.grade, h.next_what, h.next_on, h.next_on - current_date AS days_left,
       h.place AS place_id, h.machine AS machine_id, h.site AS site_id
FROM hosewright.hoses h
JOIN hosewright.places p ON p.place = h.place
LEFT JOIN hosewright.machines m ON m.machine = h.machine
LEFT JOIN hosewright.sites s ON s.site = h.site
LEFT JOIN hosewright.builds b ON b.code = h.code;
COMMENT ON VIEW hosewright.fitted IS 'What sits where, with its age and when it falls due next';

-- All that falls due; what is not known when, first.
CREATE VIEW hosewright.due_list AS
SELECT d.due_on, d.what, d.stop_on, d.due_on - current_date AS days_left,
       CASE WHEN d.stop_on <= current_date THEN 'stop' WHEN d.due_on IS NULL THEN 'not known'
            WHEN d.due_on <= current_date THEN 'due' ELSE 'to come' END AS standing,
       h.code, h.state, h.standard, h.type, h.dn, h.length_mm, s.name AS site, m.name AS machine, p.number AS place_number,
       p.name AS place, h.place AS place_id, h.machine AS machine_id, h.site AS site_id
FROM hosewright.due d
JOIN hosewright.hoses h ON h.code = d.code
LEFT JOIN hosewright.places p ON p.place = h.place
LEFT JOIN hosewright.machines m ON m.machine = h.machine
LEFT JOIN hosewright.sites s ON s.site = h.site
ORDER BY d.due_on NULLS FIRST, d.code, d.what;
COMMENT ON VIEW hosewright.due_list IS 'What falls due when; not known comes first';

-- Hoses that came off for a cause.
CREATE VIEW hosewright.failures AS
SELECT t.removed_on AS failed_on, t.cause, t.note, t.code, b.standard, b.type, b.dn, b.length_mm, t.fitted_on,
       t.removed_on - t.fitted_on AS days_fitted, t.removed_hours - t.fitted_hours AS hours_fitted,
       s.name AS site, m.name AS machine, p.number AS place_number, p.name AS place, p.line,
       t.place AS place_id, p.machine AS machine_id, m.site AS site_id
FROM hosewright.stays t
LEFT JOIN hosewright.builds b ON b.code = t.code
LEFT JOIN hosewright.places p ON p.place = t.place
LEFT JOIN hosewright.machines m ON m.machine = p.machine
LEFT JOIN hosewright.sites s ON s.site = m.site
WHERE t.cause IS NOT NULL;
COMMENT ON VIEW hosewright.failures IS 'Hoses that came off for a cause, with how long they were on';

-- What was looked at, a row for each thing that was found; one with nothing where nothing was.
CREATE VIEW hosewright.inspection_list AS
SELECT i.inspected_on, i.code, i.opened, f.sign, coalesce(f.grade, 'pass') AS grade, h.state, s.name AS site,
       m.name AS machine, p.number AS place_number, p.name AS place
FROM hosewright.inspections i
LEFT JOIN hosewright.findings f ON f.event = i.event
LEFT JOIN hosewright.hoses h ON h.code = i.code
LEFT JOIN hosewright.places p ON p.place = h.place
LEFT JOIN hosewright.machines m ON m.machine = h.machine
LEFT JOIN hosewright.sites s ON s.site = h.site;
COMMENT ON VIEW hosewright.inspection_list IS 'What inspections found';

-- What is kept where: counted things with the mark below which they are low, and pieces of hose by their length.
CREATE VIEW hosewright.stock_list AS
SELECT k.store, k.kind, k.name, k.unit, sum(k.quantity) AS quantity, max(b.low) AS low,
       sum(k.quantity) <= max(b.low) AS is_low, k.item
FROM hosewright.stock k
LEFT JOIN hosewright.bins b ON b.store = k.store AND b.item = k.item
GROUP BY k.store, k.kind, k.name, k.unit, k.item
UNION ALL
SELECT store, 'hose', standard || ' ' || type || ' DN' || dn, 'millimetres', sum(round(length_mm))::numeric, NULL, NULL, NULL
FROM hosewright.pieces GROUP BY store, standard, type, dn;
COMMENT ON VIEW hosewright.stock_list IS 'What is kept where; is_low says whether it is at or below its mark';
