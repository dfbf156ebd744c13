//! Places.

use crate::Error;
use hosewright_core::record::{Body, Entry, PlaceId};
use rusqlite::{Connection, params};

pub(super) fn project(db: &Connection, id: PlaceId, current: Option<&Entry>) -> Result<(), Error> {
    let Some(Entry { at, body: Body::PlaceSet(place), .. }) = current else { return Ok(()) };
    db.prepare_cached(
        "INSERT INTO place (place, machine, number, name, folded, content, version)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)",
    )?
    .execute(params![
        id.to_string(),
        place.machine.to_string(),
        place.number,
        place.name,
        format!("{} {}", place.number, place.name).to_lowercase(),
        serde_json::to_string(place)?,
        at.to_string(),
    ])?;
    Ok(())
}
