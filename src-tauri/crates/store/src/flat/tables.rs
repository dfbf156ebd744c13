//! What each flat table holds. A column that ends in `_on` is a day; not known is nothing.

/// A flat table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FlatTable {
    name: &'static str,
    sql: &'static str,
}

impl FlatTable {
    /// Its name.
    pub const fn name(self) -> &'static str {
        self.name
    }

    pub(super) const fn sql(self) -> &'static str {
        self.sql
    }
}

/// The kind of an item, what it is called in the trade, and the text that names it wherever it is counted.
macro_rules! item {
    ($item:literal) => {
        concat!(
            "coalesce(json_extract(",
            $item,
            ", '$.kind'), 'other') AS kind,
             CASE WHEN json_type(",
            $item,
            ") = 'text' THEN json_extract(",
            $item,
            ", '$')
                  ELSE coalesce(json_extract(",
            $item,
            ", '$.name'),
                                json_extract(",
            $item,
            ", '$.family') || ' ' || json_extract(",
            $item,
            ", '$.size'),
                                json_extract(",
            $item,
            ", '$.standard') || ' ' || json_extract(",
            $item,
            ", '$.type'))
                       || coalesce(' DN' || printf('%g', json_extract(",
            $item,
            ", '$.dn')), '')
             END AS name, ",
            $item,
            " AS item"
        )
    };
}

macro_rules! tables {
    ($($name:literal: $sql:expr),* $(,)?) => {
        /// All of them.
        pub const ALL: [Self; [$($name),*].len()] = [$(Self { name: $name, sql: $sql }),*];
    };
}

impl FlatTable {
    tables! {
        "devices": "SELECT coalesce(d.device, k.device) AS device, d.name, k.public_key
            FROM device d FULL JOIN device_key k ON k.device = d.device",
        "sites": "SELECT site, name FROM site",
        "machines": "SELECT m.machine, m.site, m.name, m.sort, m.demand, r.read_on, r.hours, r.per_day AS hours_per_day
            FROM machine m LEFT JOIN meter r ON r.machine = m.machine",
        "hours": "SELECT version AS event, machine, date AS read_on, hours FROM hours",
        "circuits": "SELECT circuit, machine, name, relief_bar FROM circuit",
        "places": "SELECT place, machine, number, name,
                   coalesce(json_extract(content, '$.service.line'), json_extract(content, '$.line')) AS line,
                   json_extract(content, '$.demand') AS demand, json_extract(content, '$.circuit') AS circuit,
                   json_extract(content, '$.service.working_pressure_bar') AS working_pressure_bar,
                   json_extract(content, '$.service.relief_bar') AS relief_bar,
                   json_extract(content, '$.service.fluid') AS fluid,
                   json_extract(content, '$.spec.hose.standard') AS standard,
                   json_extract(content, '$.spec.hose.type') AS type, json_extract(content, '$.spec.hose.dn') AS dn,
                   json_extract(content, '$.spec.overall_length_mm') AS length_mm,
                   json_extract(content, '$.consequence') AS consequence
            FROM place",
        "hoses": "SELECT code, state, standard, kind AS type, dn, length_mm, hose_made AS made_on,
                   assembled AS assembled_on, new_on AS in_service_on, place, machine, site, line, demand,
                   on_date AS fitted_on, already_there, on_hours AS fitted_hours, inspected AS inspected_on, grade,
                   next_day AS next_on, next_what
            FROM hose",
        "builds": "SELECT code, version AS event, substr(version, 1, 32) AS device, standard, kind AS type, dn, length_mm,
                   hose_made AS made_on, assembled AS assembled_on, json_extract(content, '$.verdict') AS verdict,
                   json_extract(content, '$.pressure_bar') AS pressure_bar,
                   json_extract(content, '$.proof.state') AS proof,
                   coalesce(json_extract(content, '$.proof.why'), json_extract(content, '$.proof.what')) AS proof_why,
                   json_extract(content, '$.proof.pressure_bar') AS proof_bar,
                   json_extract(content, '$.proof.hold_s') AS proof_s, json_extract(content, '$.proof.gauge') AS gauge,
                   json_extract(content, '$.taken_in') AS taken_in, json_extract(content, '$.catalogue') AS catalogue,
                   json_extract(content, '$.program') AS program
            FROM assembly",
        "ends": "SELECT a.code, e.key AS position, json_extract(e.value, '$.role') AS role,
                   json_extract(e.value, '$.family') AS family, json_extract(e.value, '$.size') AS size,
                   json_extract(e.value, '$.gender') AS gender, json_extract(e.value, '$.form') AS form,
                   json_extract(e.value, '$.rating_bar') AS rating_bar
            FROM assembly a, json_each(a.content, '$.spec.ends') e",
        "stays": "SELECT code, position, place, on_version AS fitted_event, on_date AS fitted_on, already_there,
                   on_hours AS fitted_hours, off_version AS removed_event, off_date AS removed_on,
                   off_hours AS removed_hours, cause, note
            FROM stint",
        "inspections": "SELECT version AS event, code, date AS inspected_on, opened FROM inspection",
        "findings": "SELECT version AS event, position, sign, grade FROM inspection_finding",
        "surveys": "SELECT version AS event, place, date AS surveyed_on, json_extract(content, '$.state') AS state,
                   json_extract(content, '$.code') AS code, json_extract(content, '$.note') AS note
            FROM survey",
        "due": "SELECT code, what, nullif(day, '') AS due_on, nullif(stop_day, '9999-12-31') AS stop_on FROM due",
        "policies": "SELECT key, json_extract(content, '$.of.line') AS line, json_extract(content, '$.of.demand') AS demand,
                   json_extract(content, '$.service_years') AS service_years,
                   json_extract(content, '$.service_hours') AS service_hours,
                   json_extract(content, '$.storage_years') AS storage_years,
                   json_extract(content, '$.inspection_years') AS inspection_years,
                   json_extract(content, '$.inspection_hours') AS inspection_hours,
                   json_extract(content, '$.stop') AS stop
            FROM policy",
        "labels": "SELECT version AS event, code, how FROM labelled",
        "withdrawals": "SELECT version AS event, code, reason FROM withdrawal",
        "overrides": "SELECT version AS event, code, rule, reason FROM override",
        "stock": concat!("SELECT store, ", item!("item"), ", unit, bin, quantity FROM stock"),
        "bins": concat!("SELECT store, ", item!("item"), ", bin, low FROM stock_place"),
        "prices": concat!("SELECT ", item!("item"), ", minor, currency FROM price"),
        "pieces": "SELECT p.piece, json_extract(p.content, '$.store') AS store, json_extract(p.content, '$.bin') AS bin,
                   json_extract(p.content, '$.hose.standard') AS standard, json_extract(p.content, '$.hose.type') AS type,
                   json_extract(p.content, '$.hose.dn') AS dn, json_extract(p.content, '$.sort') AS sort,
                   json_extract(p.content, '$.made') AS made_on, json_extract(p.content, '$.label') AS label,
                   l.tenths / 10.0 AS length_mm
            FROM piece p LEFT JOIN piece_length l ON l.piece = p.piece",
        "used": "SELECT version AS event, code, store, item, piece, unit, quantity, why FROM stock_used",
        "notes": "SELECT version AS event, about, text FROM note",
        "photos": "SELECT version AS event, about, sha256, mime, length FROM photo",
        "conflicts": "SELECT track, event FROM conflict",
    }
}
