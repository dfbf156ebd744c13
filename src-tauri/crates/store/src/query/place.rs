//! A place and what sat there.

use super::{PlaceRow, Stay, Versioned, stay};
use crate::{Error, Register, rows};
use hosewright_core::quantity::Bar;
use hosewright_core::record::{Circuit, MachineId, Place, PlaceId, SiteId};
use hosewright_core::spec::Spec;
use hosewright_core::tag::TagCode;
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
    /// The circuit it is on, where that is known.
    pub circuit: Option<Versioned<Circuit>>,
    /// The other places of that circuit, by number, and what sits there.
    pub sisters: Vec<Sister>,
}

/// Another place of the same circuit.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Sister {
    /// The place.
    pub place: PlaceId,
    /// Its number on the machine's drawing.
    pub number: u32,
    /// What people call it.
    pub name: String,
    /// The hose that sits there; none is none that is known.
    pub code: Option<TagCode>,
    /// What that hose is, or without one what belongs there.
    pub spec: Option<Spec>,
    /// What the hose carries, as it was recorded; none is not known.
    pub pressure_bar: Option<Bar>,
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
        let stays = stay::of(&self.db, None, Some(place))?;
        let record: Versioned<Place> = record;
        let Some(circuit) = record.record.circuit else {
            return Ok(Some(PlaceSheet { place: record, at, stays, circuit: None, sisters: Vec::new() }));
        };
        let machine = self.machine(record.record.machine)?;
        let (circuits, places) = machine.map(|sheet| (sheet.circuits, sheet.places)).unwrap_or_default();
        let sisters = places
            .into_iter()
            .filter(|row| row.place.record.circuit == Some(circuit) && row.place.record.place != place)
            .map(|row| self.sister(row))
            .collect::<Result<_, _>>()?;
        let circuit = circuits.into_iter().find(|known| known.record.circuit == circuit);
        Ok(Some(PlaceSheet { place: record, at, stays, circuit, sisters }))
    }

    /// Another place of the circuit with the hose that sits there.
    fn sister(&self, row: PlaceRow) -> Result<Sister, Error> {
        let place = row.place.record;
        let code = row.hoses.first().map(|stay| stay.code);
        let hose = code.map(|code| self.hose(&code)).transpose()?.flatten();
        let assembly = hose.and_then(|hose| hose.assembly).map(|assembly| assembly.record);
        let pressure_bar = assembly.as_ref().and_then(|assembly| assembly.pressure_bar);
        let spec = assembly.map(|assembly| assembly.spec).or(place.spec);
        Ok(Sister { place: place.place, number: place.number, name: place.name, code, spec, pressure_bar })
    }
}

/// Where the place of a row is.
pub(crate) fn place_at(row: &Row<'_>) -> rusqlite::Result<PlaceAt> {
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
