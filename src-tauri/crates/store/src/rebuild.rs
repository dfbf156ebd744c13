//! The projected tables anew from the log, and their whole content as text.

use crate::project::Before;
use crate::{Error, Register, derive, log, members, project};
use hosewright_core::record::Membership;
use rusqlite::types::ValueRef;
use rusqlite::{Connection, Row};
use std::fmt::Write;

/// Every table that is projected from the log.
pub(crate) const PROJECTED: [&str; 33] = [
    "track",
    "link",
    "conflict",
    "device",
    "device_key",
    "member",
    "site",
    "machine",
    "hours",
    "circuit",
    "place",
    "assembly",
    "stint",
    "inspection",
    "inspection_finding",
    "labelled",
    "withdrawal",
    "policy",
    "survey",
    "rests",
    "meter",
    "hose",
    "due",
    "found",
    "stock",
    "stock_place",
    "stock_used",
    "price",
    "piece",
    "piece_length",
    "override",
    "photo",
    "note",
];

/// Every other table: the log, and what stands beside it.
pub(crate) const BESIDE: [&str; 9] =
    ["register", "event", "held", "person", "setting", "draft", "supplier_row", "scan", "unfinished"];

/// What is projected first: the other tables are computed by these.
const FIRST: [&str; 3] = ["track", "link", "member"];

/// Throws the projected tables away and computes them from the log.
pub(crate) fn rebuild(db: &Connection) -> Result<(), Error> {
    for table in FIRST {
        db.execute(&format!("DELETE FROM {table}"), [])?;
    }
    log::each(db, |event| log::index(db, &event, &event.body.read()))?;
    let members = members::project(db)?;
    tables(db, &members)
}

/// Computes what screens read anew from the events that count among those members.
pub(crate) fn tables(db: &Connection, members: &Membership) -> Result<(), Error> {
    for table in PROJECTED.iter().filter(|table| !FIRST.contains(table)) {
        db.execute(&format!("DELETE FROM {table}"), [])?;
    }
    log::tracks(db, |track| project::track(db, members, &track, Before::Nothing))?;
    derive::all(db)
}

/// The log's events and every projected row as text, a line each, in a fixed order.
pub(crate) fn dump(db: &Connection) -> Result<String, Error> {
    let mut text = String::new();
    rows(db, "event", "SELECT device, number, hash FROM event ORDER BY device, number", &mut text)?;
    for table in PROJECTED {
        // The number of what is searched puts it in order and means nothing more: of two at one moment either is first.
        let columns: Vec<String> = db
            .prepare(&format!("SELECT name FROM pragma_table_info('{table}') WHERE name <> 'id'"))?
            .query_map([], |row| row.get(0))?
            .collect::<Result<_, _>>()?;
        let columns = columns.join(", ");
        rows(db, table, &format!("SELECT {columns} FROM {table} ORDER BY {columns}"), &mut text)?;
    }
    Ok(text)
}

fn rows(db: &Connection, table: &str, sql: &str, text: &mut String) -> Result<(), Error> {
    let mut statement = db.prepare(sql)?;
    let width = statement.column_count();
    let mut rows = statement.query([])?;
    while let Some(row) = rows.next()? {
        text.push_str(table);
        for column in 0..width {
            text.push('\t');
            value(row, column, text)?;
        }
        text.push('\n');
    }
    Ok(())
}

fn value(row: &Row<'_>, column: usize, text: &mut String) -> Result<(), Error> {
    // Writing to a String does not fail.
    let _ = match row.get_ref(column)? {
        ValueRef::Null => write!(text, "null"),
        ValueRef::Integer(number) => write!(text, "{number}"),
        ValueRef::Real(number) => write!(text, "{number:?}"),
        ValueRef::Text(bytes) => write!(text, "{:?}", String::from_utf8_lossy(bytes)),
        ValueRef::Blob(bytes) => write!(text, "{bytes:?}"),
    };
    Ok(())
}

impl Register {
    /// The whole register as text, a line for each event (its hash) and each projected row, in a
    /// fixed order: two registers with the same events give the same text.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn dump(&self) -> Result<String, Error> {
        dump(&self.db)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use hosewright_core::record::DeviceId;

    #[test]
    fn every_table_is_projected_or_known_to_stand_beside_the_log() {
        let folder = tempfile::tempdir().expect("a folder");
        let register =
            Register::open(folder.path().join("a.db"), DeviceId::from_bytes([1; 16])).expect("opens");
        let mut tables: Vec<String> = register
            .db
            .prepare(
                "SELECT name FROM sqlite_schema
                 WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name NOT LIKE 'words%'",
            )
            .expect("prepares")
            .query_map([], |row| row.get(0))
            .expect("reads")
            .collect::<Result<_, _>>()
            .expect("reads");
        tables.retain(|table| !BESIDE.contains(&table.as_str()));
        tables.sort();
        let mut projected = PROJECTED.to_vec();
        projected.sort_unstable();
        assert_eq!(tables, projected);
    }
}
