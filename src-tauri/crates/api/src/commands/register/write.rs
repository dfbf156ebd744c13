//! Writing in the register.

use crate::commands::Nothing;
use crate::commands::care::marked;
use crate::{Answer, Api, ApiError};
use hosewright_core::record::{Body, EventRef};
use hosewright_store::NewEvent;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// An id for a new site, machine, circuit, place, job or person.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Id {
    /// 32 hexadecimal digits that no two devices give alike.
    pub id: String,
}

/// A new id.
///
/// # Errors
/// None.
pub fn id(api: &mut Api, _: Nothing, _: &[u8]) -> Result<Answer<Id>, ApiError> {
    let id = api.world.random().iter().map(|byte| format!("{byte:02x}")).collect();
    Ok(api.answer(Id { id }))
}

/// What is to be written, all or none.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(rename = "RecordQuestion")]
pub struct Record {
    /// In order.
    pub events: Vec<RecordEvent>,
}

/// One event to be written.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct RecordEvent {
    /// What happened.
    pub body: Body,
    /// The events it builds on; the register's present state without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub builds_on: Option<Vec<EventRef>>,
}

/// What was written.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Recorded {
    /// The events' names; they are on the disk.
    pub written: Vec<EventRef>,
}

/// Writes events, all or none. What is answered is on the disk. What strikes out a build strikes out with it what it
/// took from stock.
///
/// # Errors
/// An event that can not be kept or contradicts what stands; a register that can not be written.
pub fn record(api: &mut Api, asked: Record, _: &[u8]) -> Result<Answer<Recorded>, ApiError> {
    let (now, catalogue) = (api.world.now(), api.catalogue);
    let register = api.register()?;
    let mut events = Vec::new();
    for RecordEvent { mut body, mut builds_on } in asked.events {
        marked(catalogue, &mut body);
        if let (Body::Voided(_), Some(struck)) = (&body, &mut builds_on) {
            struck.extend(register.given_back_with(struck)?);
        }
        events.push(NewEvent { body, builds_on });
    }
    let written = register.append(events, now)?;
    Ok(api.answer(Recorded { written }))
}
