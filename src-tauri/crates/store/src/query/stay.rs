//! Stays of hoses at places: of one hose, at one place, of the whole fleet.

use super::PlaceAt;
use crate::{Error, Register, rows};
use chrono::NaiveDate;
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::{EventRef, PlaceId};
use hosewright_core::spec::HoseRef;
use hosewright_core::tag::TagCode;
use rusqlite::{Connection, Row, params};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// One stay of a hose at a place.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Stay {
    /// The hose.
    pub code: TagCode,
    /// The place.
    pub at: PlaceAt,
    /// What it is; none where nobody knows.
    pub hose: Option<HoseRef>,
    /// Its overall length.
    pub length_mm: Option<Millimetres>,
    /// When the hose was assembled, where that is known.
    pub assembled: Option<NaiveDate>,
    /// The event that put it there; none where only its end is recorded.
    pub on: Option<EventRef>,
    /// When it was fitted, or found there.
    pub on_date: Option<NaiveDate>,
    /// It was found there on that day, fitted at some earlier time.
    pub already_there: bool,
    /// The machine's hours then.
    pub on_hours: Option<f64>,
    /// The event that took it off; none while it sits there.
    pub off: Option<EventRef>,
    /// When it came off.
    pub off_date: Option<NaiveDate>,
    /// The machine's hours then.
    pub off_hours: Option<f64>,
    /// Why it failed, by the code of the failure causes; none: it had not failed.
    pub cause: Option<String>,
    /// What was seen.
    pub note: Option<String>,
}

impl Register {
    /// Every stay of every hose, by date: what the life of this fleet's hoses is reckoned from.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn stays(&self) -> Result<Vec<Stay>, Error> {
        of(&self.db, None, None)
    }
}

/// Stays of that hose, at that place, or all, by date.
pub(super) fn of(
    db: &Connection,
    code: Option<&TagCode>,
    place: Option<PlaceId>,
) -> Result<Vec<Stay>, Error> {
    let sql = match (code, place) {
        (Some(_), _) => concat!(include_str!("stay.sql"), "WHERE s.code = ?1 AND ?2 IS NULL "),
        (None, Some(_)) => concat!(include_str!("stay.sql"), "WHERE s.place = ?2 AND ?1 IS NULL "),
        (None, None) => concat!(include_str!("stay.sql"), "WHERE ?1 IS NULL AND ?2 IS NULL "),
    };
    let sql = format!("{sql}ORDER BY coalesce(s.on_date, s.off_date), s.code, s.position");
    let mut statement = db.prepare_cached(&sql)?;
    let stays = statement
        .query_map(params![code.map(TagCode::to_string), place.map(|place| place.to_string())], stay)?;
    Ok(stays.collect::<Result<_, _>>()?)
}

fn stay(row: &Row<'_>) -> rusqlite::Result<Stay> {
    Ok(Stay {
        code: rows::parsed(row, "code")?,
        at: super::place::place_at(row)?,
        hose: rows::hose(row)?,
        length_mm: row.get::<_, Option<f64>>("length_mm")?.map(Millimetres),
        assembled: rows::optional(row, "assembled")?,
        on: rows::optional(row, "on_version")?,
        on_date: rows::optional(row, "on_date")?,
        already_there: row.get("already_there")?,
        on_hours: row.get("on_hours")?,
        off: rows::optional(row, "off_version")?,
        off_date: rows::optional(row, "off_date")?,
        off_hours: row.get("off_hours")?,
        cause: row.get("cause")?,
        note: row.get("note")?,
    })
}
