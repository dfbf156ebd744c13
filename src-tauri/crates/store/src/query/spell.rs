//! Time in service: what the life of this fleet's hoses is reckoned from.

use super::PlaceAt;
use crate::{Error, Register, rows};
use chrono::NaiveDate;
use hosewright_core::quantity::Bar;
use hosewright_core::tag::TagCode;
use rusqlite::Row;

/// A stay as far as the life of hoses goes.
#[derive(Debug, Clone, PartialEq)]
pub struct Spell {
    /// The hose.
    pub code: TagCode,
    /// Its standard and type; none where no record says what it is.
    pub hose: Option<(String, String)>,
    /// What it may carry.
    pub pressure_bar: Option<Bar>,
    /// Where it sat.
    pub at: PlaceAt,
    /// What that machine is; none where no record says.
    pub machine_kind: Option<String>,
    /// The line it was on, by its name in the contract.
    pub line: Option<String>,
    /// The most that the place asks of a hose: the higher of working pressure and relief.
    pub asked_bar: Option<Bar>,
    /// The day it was fitted; none where that is not known: only its coming off is recorded, or it was found there.
    pub fitted: Option<NaiveDate>,
    /// The day it came off; none while it sits there.
    pub off: Option<NaiveDate>,
    /// It came off because it had failed.
    pub failed: bool,
    /// Where an inspection found it failed: the days it was last seen whole and found failed.
    pub found: Option<Found>,
}

/// A failure that an inspection found: nobody knows when it came about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Found {
    /// The last inspection before it, or the day it was fitted.
    pub whole: NaiveDate,
    /// The day of the finding.
    pub failed: NaiveDate,
}

impl Register {
    /// Every stay of every hose, the stays of one hose together and by date.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn spells(&self) -> Result<Vec<Spell>, Error> {
        let mut spells = Vec::new();
        self.each_spell(|spell| spells.push(spell))?;
        Ok(spells)
    }

    /// The same one after the other, of which one is held at a time.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn each_spell(&self, mut see: impl FnMut(Spell)) -> Result<(), Error> {
        let mut statement = self.db.prepare_cached(include_str!("spell.sql"))?;
        let mut found = statement.query([])?;
        while let Some(row) = found.next()? {
            see(spell(row)?);
        }
        Ok(())
    }
}

fn spell(row: &Row<'_>) -> rusqlite::Result<Spell> {
    let found: bool = row.get("already_there")?;
    let on: Option<NaiveDate> = rows::optional(row, "on_date")?;
    let looked: Option<String> = row.get("looked")?;
    let number = |name: &str| row.get::<_, Option<f64>>(name);
    let asked =
        [number("relief_bar")?, number("working_pressure_bar")?].into_iter().flatten().reduce(f64::max);
    let hose: (Option<String>, Option<String>) = (row.get("standard")?, row.get("type")?);
    Ok(Spell {
        code: rows::parsed(row, "code")?,
        hose: hose.0.zip(hose.1),
        pressure_bar: number("pressure_bar")?.map(Bar),
        at: super::place::place_at(row)?,
        machine_kind: row.get("sort")?,
        line: row.get("line")?,
        asked_bar: asked.map(Bar),
        fitted: on.filter(|_| !found),
        off: rows::optional(row, "off_date")?,
        failed: row.get("failed")?,
        found: found_by(on, rows::optional(row, "found")?, looked.as_deref()),
    })
}

/// When it was last seen whole before that finding, of the days it was looked at.
fn found_by(on: Option<NaiveDate>, failed: Option<NaiveDate>, looked: Option<&str>) -> Option<Found> {
    let (on, failed) = (on?, failed?);
    let days = looked.unwrap_or_default().split(',').filter_map(|day| day.parse().ok());
    let whole = days.filter(|day: &NaiveDate| *day < failed).fold(on, NaiveDate::max);
    Some(Found { whole, failed })
}
