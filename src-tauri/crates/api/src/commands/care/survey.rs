//! `register.survey`: a walk round a machine, place by place, without taking anything off.

use crate::commands::find;
use crate::{Answer, Api, ApiError};
use hosewright_core::catalogue::Reach;
use hosewright_core::find::{Found, NextReading, Readings, Settled};
use hosewright_core::record::{MachineId, PlaceId, SurveyState, Surveyed};
use hosewright_core::spec::{Role, Spec};
use hosewright_core::tag::TagCode;
use hosewright_store::{PlaceRow, Versioned};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Which machine.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct SurveyQuestion {
    /// Its id.
    pub machine: MachineId,
}

/// The places of a machine, and what was read of each in place.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Survey {
    /// The machine.
    pub machine: MachineId,
    /// What people call it.
    pub name: String,
    /// Its places, by number.
    pub places: Vec<SurveyPlace>,
    /// Places that were looked at.
    pub done: usize,
    /// Places that were not, or could not be reached.
    pub left: usize,
}

/// A place on the walk.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct SurveyPlace {
    /// Which.
    pub place: PlaceId,
    /// Its number on the machine's drawing.
    pub number: u32,
    /// What people call it.
    pub name: String,
    /// The hose that sits there, as far as the register knows.
    pub code: Option<TagCode>,
    /// What belongs there.
    pub spec: Option<Spec>,
    /// The last survey.
    pub last: Option<Versioned<Surveyed>>,
    /// Whether what was read settles each part; what was not opened seldom does.
    pub settled: Option<Settled>,
    /// The likeliest by what was read.
    pub found: SurveyFound,
    /// What can still be read in place.
    pub next: Vec<NextReading>,
}

/// The likeliest hose and ends by what was read in place.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct SurveyFound {
    /// The hose.
    pub hose: Option<String>,
    /// End A.
    #[serde(rename = "A")]
    pub a: Option<String>,
    /// End B.
    #[serde(rename = "B")]
    pub b: Option<String>,
}

/// A walk round a machine: what was read of each place without opening it, what that settles, and what is left to read.
///
/// # Errors
/// There is no such machine.
pub fn survey(api: &mut Api, asked: SurveyQuestion, _: &[u8]) -> Result<Answer<Survey>, ApiError> {
    let sheet = api.register()?.machine(asked.machine)?;
    let sheet = sheet
        .ok_or_else(|| ApiError::nothing("machine", format!("there is no machine {}", asked.machine)))?;
    let name = sheet.machine.record.name;
    let mut places = Vec::new();
    for row in sheet.places {
        places.push(place(api, row)?);
    }
    let seen = |place: &&SurveyPlace| {
        place.last.as_ref().is_some_and(|last| last.record.state != SurveyState::NotReached)
    };
    let done = places.iter().filter(seen).count();
    let left = places.len() - done;
    Ok(api.answer(Survey { machine: asked.machine, name, places, done, left }))
}

fn place(api: &mut Api, row: PlaceRow) -> Result<SurveyPlace, ApiError> {
    let found = match row.surveyed.as_ref().and_then(|last| last.record.readings.clone()) {
        Some(readings) => Some(found(api, readings, row.surveyed.as_ref().map(|last| last.record.state))?),
        None => None,
    };
    let record = row.place.record;
    Ok(SurveyPlace {
        place: record.place,
        number: record.number,
        name: record.name,
        code: row.hoses.last().map(|stay| stay.code),
        spec: record.spec,
        last: row.surveyed,
        settled: found.as_ref().map(|found| found.settled),
        next: found.as_ref().map(|found| found.next.clone()).unwrap_or_default(),
        found: found.as_ref().map(likeliest).unwrap_or_default(),
    })
}

/// What readings say that were taken in place, or off.
fn found(api: &mut Api, readings: Readings, state: Option<SurveyState>) -> Result<Found, ApiError> {
    let reach = if state == Some(SurveyState::Opened) { Reach::Off } else { Reach::InPlace };
    let readings = Readings { reach: readings.reach.or(Some(reach)), ..readings };
    Ok(find::find(api, readings, &[])?.content)
}

fn likeliest(found: &Found) -> SurveyFound {
    let hose = found.hose.first().map(|hose| format!("{} {} DN{}", hose.standard, hose.kind, hose.dn));
    let end = |role: Role| {
        let end = found.ends.iter().find(|end| end.role == role)?;
        end.candidates.first().map(|end| format!("{} {}", end.family, end.size))
    };
    SurveyFound { hose, a: end(Role::A), b: end(Role::B) }
}
