//! What walks round a machine found.

use super::Versioned;
use crate::{Error, Register, rows};
use hosewright_core::record::{PlaceId, Surveyed};
use rusqlite::{Connection, OptionalExtension};

impl Register {
    /// The last survey of a place.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn last_survey(&self, place: PlaceId) -> Result<Option<Versioned<Surveyed>>, Error> {
        last(&self.db, place)
    }
}

/// The last survey of a place.
pub(super) fn last(db: &Connection, place: PlaceId) -> Result<Option<Versioned<Surveyed>>, Error> {
    let mut statement = db.prepare_cached(
        "SELECT version, content FROM survey WHERE place = ?1 ORDER BY date DESC, version DESC LIMIT 1",
    )?;
    let found = statement.query_row([place.to_string()], |row| {
        Ok(Versioned { version: rows::parsed(row, "version")?, record: rows::json(row, "content")? })
    });
    Ok(found.optional()?)
}
