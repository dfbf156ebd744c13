//! How a register stands, in numbers alone: nothing that anyone wrote in it.

use crate::open::{MIGRATIONS, PROJECTION};
use crate::rebuild::{BESIDE, PROJECTED};
use crate::{Error, Register};
use serde::Serialize;
use std::collections::BTreeMap;

/// Versions, counts and sizes of a register.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Diagnosis {
    /// Steps the file has had, and how many this program knows.
    pub schema: [i64; 2],
    /// How its tables were projected, and how this program does it.
    pub projection: [i64; 2],
    /// Version of SQLite.
    pub sqlite: String,
    /// Pages of the file, those of them that are free, and bytes of a page.
    pub pages: [i64; 3],
    /// Rows of each table.
    pub rows: BTreeMap<&'static str, i64>,
    /// Events by the schema of their bodies.
    pub events_by_schema: BTreeMap<i64, i64>,
    /// Devices that have written in it.
    pub devices: i64,
}

impl Register {
    /// How the register stands.
    ///
    /// # Errors
    /// It can not be read.
    pub fn diagnosis(&self) -> Result<Diagnosis, Error> {
        let number = |sql: &str| self.db.query_row(sql, [], |row| row.get::<_, i64>(0));
        let pragma = |name| self.db.pragma_query_value(None, name, |row| row.get::<_, i64>(0));
        let mut rows = BTreeMap::new();
        for table in PROJECTED.into_iter().chain(BESIDE) {
            rows.insert(table, number(&format!("SELECT count(*) FROM {table}"))?);
        }
        let mut by_schema = self.db.prepare("SELECT schema, count(*) FROM event GROUP BY schema")?;
        let by_schema = by_schema.query_map([], |row| Ok((row.get(0)?, row.get(1)?)))?;
        Ok(Diagnosis {
            schema: [pragma("user_version")?, MIGRATIONS.len() as i64],
            projection: [number("SELECT projection FROM register")?, PROJECTION],
            sqlite: rusqlite::version().to_owned(),
            pages: [pragma("page_count")?, pragma("freelist_count")?, pragma("page_size")?],
            rows,
            events_by_schema: by_schema.collect::<Result<_, _>>()?,
            devices: number("SELECT count(DISTINCT device) FROM event")?,
        })
    }
}
