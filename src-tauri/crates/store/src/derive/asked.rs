//! What a place asks of the hose that sits there.

use crate::{Error, rows};
use hosewright_core::catalogue::Catalogue;
use hosewright_core::check::{Question, too_much};
use hosewright_core::quantity::Bar;
use hosewright_core::record::{CircuitId, Place, PlaceId};
use hosewright_core::spec::Service;
use hosewright_core::tag::TagCode;
use rusqlite::{Connection, OptionalExtension};

/// What the check is asked of a hose at that place; none where nobody knows the hose or the place.
pub(crate) fn question(db: &Connection, code: TagCode, place: PlaceId) -> Result<Option<Question>, Error> {
    let mut statement = db.prepare_cached(include_str!("asked.sql"))?;
    let found = statement.query_row([code.to_string(), place.to_string()], |row| {
        let before: Option<String> = row.get("service")?;
        let before: Option<Service> = before.map(|_| rows::json(row, "service")).transpose()?;
        let place: Place = rows::json(row, "place")?;
        let relief = row.get::<_, Option<f64>>("relief_bar")?.map(Bar);
        Ok(Question {
            spec: rows::json(row, "spec")?,
            service: place.asks(relief, before),
            ..Question::default()
        })
    });
    Ok(found.optional()?)
}

/// Whether the place is known to ask more than the hose stands. A record that names what the tables do not have can not be
/// checked; the place itself says so.
pub(super) fn is_too_much(db: &Connection, code: TagCode, place: PlaceId) -> Result<bool, Error> {
    let question = question(db, code, place)?;
    let found = question.map(|question| too_much(Catalogue::embedded(), &question));
    Ok(matches!(found, Some(Ok(Some(_)))))
}

/// The hoses that sit at the places of a circuit.
pub(super) fn on_circuit(db: &Connection, circuit: CircuitId) -> Result<Vec<TagCode>, Error> {
    super::ids(
        db,
        "SELECT s.code AS id FROM circuit c
         JOIN place p ON p.machine = c.machine AND json_extract(p.content, '$.circuit') = c.circuit
         JOIN stint s ON s.place = p.place AND s.off_version IS NULL
         WHERE c.circuit = ?1",
        &circuit.to_string(),
    )
}
