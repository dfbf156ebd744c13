//! Time in service: what the life of this fleet's hoses is reckoned from.

use crate::{Error, Register, rows};
use chrono::NaiveDate;
use hosewright_core::tag::TagCode;
use rusqlite::Row;

/// A stay as far as the life of hoses goes.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Spell {
    /// The hose.
    pub code: TagCode,
    /// Its standard and type; none where no record says what it is.
    pub hose: Option<(String, String)>,
    /// The line it was on, by its name in the contract.
    pub line: Option<String>,
    /// The day it was fitted; none where that is not known: only its coming off is recorded, or it was found there.
    pub fitted: Option<NaiveDate>,
    /// The day it came off; none while it sits there.
    pub off: Option<NaiveDate>,
    /// It came off because it had failed.
    pub failed: bool,
}

impl Register {
    /// Every stay of every hose, the stays of one hose together and by date.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn spells(&self) -> Result<Vec<Spell>, Error> {
        let mut statement = self.db.prepare_cached(include_str!("spell.sql"))?;
        let spells = statement.query_map([], spell)?;
        Ok(spells.collect::<Result<_, _>>()?)
    }
}

fn spell(row: &Row<'_>) -> rusqlite::Result<Spell> {
    let found: bool = row.get("already_there")?;
    let hose: (Option<String>, Option<String>) = (row.get("standard")?, row.get("type")?);
    Ok(Spell {
        code: rows::parsed(row, "code")?,
        hose: hose.0.zip(hose.1),
        line: row.get("line")?,
        fitted: rows::optional(row, "on_date")?.filter(|_| !found),
        off: rows::optional(row, "off_date")?,
        failed: row.get("failed")?,
    })
}
