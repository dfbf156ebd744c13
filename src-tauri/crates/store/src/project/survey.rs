//! Surveys of places.

use crate::Error;
use hosewright_core::record::{Arranged, Body, PlaceId};
use rusqlite::{Connection, params};

pub(super) fn project(db: &Connection, place: PlaceId, surveys: &Arranged) -> Result<(), Error> {
    let mut insert =
        db.prepare_cached("INSERT INTO survey (version, place, date, content) VALUES (?1, ?2, ?3, ?4)")?;
    for node in &surveys.nodes {
        let Body::Surveyed(seen) = &node.current.body else { continue };
        insert.execute(params![
            node.current.at.to_string(),
            place.to_string(),
            seen.date.to_string(),
            serde_json::to_string(seen)?,
        ])?;
    }
    Ok(())
}
