//! A place and what sat there.

use super::{Stay, Versioned, stay};
use crate::{Error, Register, rows};
use hosewright_core::record::{MachineId, Place, PlaceId, SiteId};
use rusqlite::{OptionalExtension, Row};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// Where a place is. What another device has not handed over yet is not known.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct PlaceAt {
    /// The place.
    pub place: PlaceId,
    /// Its number on the machine's drawing.
    pub number: Option<u32>,
    /// What people call it.
    pub place_name: Option<String>,
    /// Its machine.
    pub machine: Option<MachineId>,
    /// What people call the machine.
    pub machine_name: Option<String>,
    /// The machine's site.
    pub site: Option<SiteId>,
    /// What people call the site.
    pub site_name: Option<String>,
}

/// A place with the history of the hoses that sat there.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct PlaceSheet {
    /// The place and what belongs there.
    pub place: Versioned<Place>,
    /// Where it is.
    pub at: PlaceAt,
    /// What sat and sits there, by date. More than one that has not come off is a conflict.
    pub stays: Vec<Stay>,
}

impl Register {
    /// A place with the history of the hoses that sat there; none if there is no such place.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn place(&self, place: PlaceId) -> Result<Option<PlaceSheet>, Error> {
        let mut statement = self.db.prepare_cached(include_str!("place.sql"))?;
        let found = statement
            .query_row([place.to_string()], |row| {
                Ok((
                    Versioned { version: rows::parsed(row, "version")?, record: rows::json(row, "content")? },
                    place_at(row)?,
                ))
            })
            .optional()?;
        let Some((record, at)) = found else { return Ok(None) };
        Ok(Some(PlaceSheet { place: record, at, stays: stay::of(&self.db, None, Some(place))? }))
    }
}

/// Where the place of a row is.
pub(super) fn place_at(row: &Row<'_>) -> rusqlite::Result<PlaceAt> {
    Ok(PlaceAt {
        place: rows::parsed(row, "place")?,
        number: row.get("number")?,
        place_name: row.get("place_name")?,
        machine: rows::optional(row, "machine")?,
        machine_name: row.get("machine_name")?,
        site: rows::optional(row, "site")?,
        site_name: row.get("site_name")?,
    })
}
