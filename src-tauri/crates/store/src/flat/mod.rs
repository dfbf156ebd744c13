//! The register at one moment as flat tables, for a copy in another database.

mod tables;

pub use tables::FlatTable;

use crate::rows::{parsed, unsigned};
use crate::{Error, Register, log};
use hosewright_core::record::{DeviceId, Event, EventRef, Hash};
use rusqlite::Transaction;
use rusqlite::types::ValueRef;
use std::borrow::Cow;
use std::collections::BTreeMap;
use std::ops::RangeInclusive;

/// The register at one moment: what is written meanwhile is not seen.
#[derive(Debug)]
pub struct Moment<'a> {
    tx: Transaction<'a>,
}

/// A value as text; none where nothing is known.
pub type Cell<'a> = Option<Cow<'a, str>>;

impl Register {
    /// The register as it is now, for as long as what is given lives.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn moment(&self) -> Result<Moment<'_>, Error> {
        Ok(Moment { tx: self.db.unchecked_transaction()? })
    }
}

impl Moment<'_> {
    /// The number and hash of each device's last event.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn ends(&self) -> Result<BTreeMap<DeviceId, (u64, Hash)>, Error> {
        let mut statement = self.tx.prepare_cached(concat!(
            include_str!("../query/series.sql"),
            "SELECT e.device, e.number, e.hash
             FROM last JOIN event e ON e.device = last.device AND e.number = last.number"
        ))?;
        let ends = statement.query_map([], |row| {
            Ok((parsed(row, "device")?, (unsigned(row, "number")?, parsed(row, "hash")?)))
        })?;
        Ok(ends.collect::<Result<_, _>>()?)
    }

    /// Whether the log has that very event; none where it has none of that number.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn has(&self, at: EventRef, hash: Hash) -> Result<Option<bool>, Error> {
        Ok(log::hash_of(&self.tx, at)?.map(|had| had == hash))
    }

    /// These events of a device, in their order.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn series(&self, device: DeviceId, numbers: RangeInclusive<u64>) -> Result<Vec<Event>, Error> {
        log::series(&self.tx, device, numbers)
    }

    /// The columns of a table.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn columns(&self, table: FlatTable) -> Result<Vec<String>, Error> {
        let statement = self.tx.prepare_cached(table.sql())?;
        Ok(statement.column_names().map(str::to_owned).collect())
    }

    /// Goes through the rows of a table. No two are the same in all their columns.
    ///
    /// # Errors
    /// The register can not be read, or the work fails.
    pub fn each<E: From<Error>>(
        &self,
        table: FlatTable,
        mut work: impl FnMut(&[Cell<'_>]) -> Result<(), E>,
    ) -> Result<(), E> {
        let mut statement = self.tx.prepare_cached(table.sql()).map_err(Error::from)?;
        let days: Vec<bool> = statement.column_names().map(|name| name.ends_with("_on")).collect();
        let mut rows = statement.query([]).map_err(Error::from)?;
        while let Some(row) = rows.next().map_err(Error::from)? {
            let mut cells = Vec::with_capacity(days.len());
            for (column, is_day) in days.iter().enumerate() {
                let cell = cell(row.get_ref(column).map_err(Error::from)?);
                cells.push(if *is_day { cell.filter(|day| is_common(day)) } else { cell });
            }
            work(&cells)?;
        }
        Ok(())
    }
}

/// Other databases hold no character of number 0 in a text: it is replaced.
fn cell(value: ValueRef<'_>) -> Cell<'_> {
    match value {
        ValueRef::Null => None,
        ValueRef::Integer(number) => Some(number.to_string().into()),
        ValueRef::Real(number) => Some(format!("{number:?}").into()),
        ValueRef::Text(bytes) | ValueRef::Blob(bytes) => {
            let text = String::from_utf8_lossy(bytes);
            Some(if text.contains('\0') { text.replace('\0', "\u{fffd}").into() } else { text })
        }
    }
}

/// Whether a day is of the years 1 to 9999, which every database knows.
fn is_common(day: &str) -> bool {
    ("0001-01-01"..="9999-12-31").contains(&day)
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::DateTime;
    use hosewright_core::record::Body;

    #[test]
    fn every_table_is_read_and_shows_what_was_written() {
        let folder = tempfile::tempdir().expect("a folder");
        let mut register =
            Register::open(folder.path().join("a.db"), DeviceId::from_bytes([1; 16])).expect("opens");
        let (site, machine) = ("51".repeat(16), "52".repeat(16));
        let bodies = [
            serde_json::json!({"kind": "site-named", "site": site, "name": "Nul \u{0} and\ttab"}),
            serde_json::json!({"kind": "machine-set", "machine": machine, "site": site, "name": "Press", "sort": "press"}),
            serde_json::json!({"kind": "hours-read", "machine": machine, "hours": 12.5, "date": "+12026-01-02"}),
        ];
        let bodies = bodies.map(|body| serde_json::from_value::<Body>(body).expect("a body"));
        register.append(bodies, DateTime::UNIX_EPOCH).expect("is written");
        let moment = register.moment().expect("reads");
        let mut rows = Vec::new();
        for table in FlatTable::ALL {
            assert!(!moment.columns(table).expect("reads").is_empty());
            let keep = |cells: &[Cell<'_>]| {
                let cells = cells.iter().map(|cell| cell.as_deref().unwrap_or("-").to_owned());
                rows.push(format!("{} {}", table.name(), cells.collect::<Vec<_>>().join("|")));
                Ok::<_, Error>(())
            };
            moment.each(table, keep).expect("reads");
        }
        let device = "01".repeat(16);
        assert_eq!(
            rows,
            [
                format!("sites {site}|Nul \u{fffd} and\ttab"),
                format!("machines {machine}|{site}|Press|press|-|-|12.5|-"),
                // A day that no calendar in use has is not known there.
                format!("hours {device}/3|{machine}|-|12.5"),
            ]
        );
    }
}
