//! A machine with its places and what sits there.

use super::{Stay, Versioned, stay};
use crate::{Error, Register, rows};
use chrono::NaiveDate;
use hosewright_core::care::{DueFor, Standing};
use hosewright_core::check::Verdict;
use hosewright_core::quantity::Bar;
use hosewright_core::record::{Circuit, HoursRead, Machine, MachineId, Place, Site, Surveyed};
use hosewright_core::tag::TagCode;
use rusqlite::{Connection, OptionalExtension, Row};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// A machine with its places and what sits there.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct MachineSheet {
    /// The machine.
    pub machine: Versioned<Machine>,
    /// Where it works.
    pub site: Option<Versioned<Site>>,
    /// Latest reading of its hour meter, those noted with a hose included.
    pub hours: Option<HoursRead>,
    /// Its circuits, by name.
    pub circuits: Vec<Versioned<Circuit>>,
    /// Its places, by number.
    pub places: Vec<PlaceRow>,
}

/// The last inspection of the hose that sits at a place.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct PlaceInspected {
    /// When.
    pub date: NaiveDate,
    /// The gravest that was found.
    pub grade: Verdict,
    /// What was seen and stands.
    pub standing: Vec<Standing>,
}

/// The soonest that falls due at a place.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct PlaceDue {
    /// The day; none is not known.
    pub day: Option<NaiveDate>,
    /// What falls due.
    pub what: DueFor,
}

/// A place of a machine and what sits there.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct PlaceRow {
    /// The place and what belongs there.
    pub place: Versioned<Place>,
    /// What sits there: none is no hose that is known, more than one is a conflict.
    pub hoses: Vec<Stay>,
    /// The stay that ended last there; none where no hose has come off.
    pub last_off: Option<Stay>,
    /// The last inspection of the hose that sits there; none where it was never inspected.
    pub inspected: Option<PlaceInspected>,
    /// The last survey of the place.
    pub surveyed: Option<Versioned<Surveyed>>,
    /// The soonest that falls due there.
    pub due: Option<PlaceDue>,
}

impl Register {
    /// A machine with its places and what sits there; none if there is no such machine.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn machine(&self, machine: MachineId) -> Result<Option<MachineSheet>, Error> {
        let id = machine.to_string();
        let mut statement = self.db.prepare_cached(include_str!("machine.sql"))?;
        let Some((machine, site)) = statement.query_row([&id], machine_and_site).optional()? else {
            return Ok(None);
        };
        Ok(Some(MachineSheet {
            machine,
            site,
            hours: hours(&self.db, &id)?,
            circuits: circuits(&self.db, &id)?,
            places: places(&self.db, &id)?,
        }))
    }
}

type MachineAndSite = (Versioned<Machine>, Option<Versioned<Site>>);

fn machine_and_site(row: &Row<'_>) -> rusqlite::Result<MachineAndSite> {
    let machine = Machine {
        machine: rows::parsed(row, "machine")?,
        site: rows::optional(row, "site")?,
        name: row.get("name")?,
        sort: row.get("sort")?,
        demand: rows::named(row, "demand")?,
    };
    let site = match (machine.site, rows::optional(row, "site_version")?) {
        (Some(site), Some(version)) => {
            Some(Versioned { version, record: Site { site, name: row.get("site_name")? } })
        }
        _ => None,
    };
    Ok((Versioned { version: rows::parsed(row, "version")?, record: machine }, site))
}

fn hours(db: &Connection, id: &str) -> Result<Option<HoursRead>, Error> {
    let mut statement = db.prepare_cached(include_str!("machine_hours.sql"))?;
    Ok(statement
        .query_row([id], |row| {
            Ok(HoursRead {
                machine: rows::parsed(row, "machine")?,
                hours: row.get("hours")?,
                date: rows::parsed(row, "date")?,
            })
        })
        .optional()?)
}

fn circuits(db: &Connection, id: &str) -> Result<Vec<Versioned<Circuit>>, Error> {
    let mut statement = db.prepare_cached(
        "SELECT circuit, machine, name, relief_bar, version FROM circuit WHERE machine = ?1 ORDER BY name, circuit",
    )?;
    let circuits = statement.query_map([id], |row| {
        Ok(Versioned {
            version: rows::parsed(row, "version")?,
            record: Circuit {
                circuit: rows::parsed(row, "circuit")?,
                machine: rows::parsed(row, "machine")?,
                name: row.get("name")?,
                relief_bar: row.get::<_, Option<f64>>("relief_bar")?.map(Bar),
            },
        })
    })?;
    Ok(circuits.collect::<Result<_, _>>()?)
}

fn places(db: &Connection, id: &str) -> Result<Vec<PlaceRow>, Error> {
    let mut statement =
        db.prepare_cached("SELECT content, version FROM place WHERE machine = ?1 ORDER BY number, place")?;
    let places = statement.query_map([id], |row| {
        Ok(Versioned::<Place> { version: rows::parsed(row, "version")?, record: rows::json(row, "content")? })
    })?;
    places
        .map(|place| {
            let place = place?;
            let stays = stay::of(db, None, Some(place.record.place))?;
            let (hoses, ended): (Vec<Stay>, Vec<Stay>) =
                stays.into_iter().partition(|stay| stay.off.is_none());
            let last_off = ended.into_iter().max_by_key(|stay| stay.off_date);
            let (inspected, due) = match hoses.last() {
                Some(stay) => stands(db, &stay.code)?,
                None => (None, None),
            };
            let surveyed = super::survey::last(db, place.record.place)?;
            Ok(PlaceRow { place, hoses, last_off, inspected, surveyed, due })
        })
        .collect()
}

/// How the hose of a place stands: its last inspection, and the soonest that falls due.
fn stands(db: &Connection, code: &TagCode) -> Result<(Option<PlaceInspected>, Option<PlaceDue>), Error> {
    let mut statement = db
        .prepare_cached("SELECT inspected, grade, standing, next_day, next_what FROM hose WHERE code = ?1")?;
    let found = statement.query_row([code.to_string()], |row| {
        let (date, grade) = (rows::optional(row, "inspected")?, rows::named(row, "grade")?);
        let inspected = match (date, grade) {
            (Some(date), Some(grade)) => {
                Some(PlaceInspected { date, grade, standing: rows::json(row, "standing")? })
            }
            _ => None,
        };
        let day: Option<String> = row.get("next_day")?;
        let day = day.filter(|day| !day.is_empty()).and_then(|day| day.parse().ok());
        let due = rows::named(row, "next_what")?.map(|what| PlaceDue { day, what });
        Ok((inspected, due))
    });
    Ok(found.optional()?.unwrap_or((None, None)))
}
