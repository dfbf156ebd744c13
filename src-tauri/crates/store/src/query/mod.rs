//! What screens ask the register: one file for each question, its SQL beside it.

mod affected;
mod bench;
mod conflict;
mod counts;
mod device;
mod due;
mod hose;
mod hoses;
mod list;
mod machine;
mod place;
mod search;
mod spell;
mod stay;
mod stock;
mod survey;
mod written;

pub use affected::Resting;
pub use conflict::{Conflict, Contradiction, Told};
pub use counts::Counts;
pub use device::Device;
pub(crate) use due::policies;
pub use due::{AgeCount, Due, DueAsk, DueCounts, DueHose, DueSite, Overdue};
pub use hose::{Hose, HoseInspection, HoseNote, HoseOverride, HosePhoto, Status};
pub use hoses::{HoseFilter, HoseRow, HoseSort, HoseState, HosesGlance};
pub use list::{MachineRow, SiteRow};
pub use machine::{MachineSheet, PlaceDue, PlaceInspected, PlaceRow};
pub(crate) use place::place_at;
pub use place::{PlaceAt, PlaceSheet, Sister};
pub use search::Hit;
pub use spell::{Found, Spell};
pub use stay::Stay;
pub use stock::{PieceKept, Stock, StockConflict, StockUsed, UsedWhat};
pub use written::Written;

use crate::Error;
use hosewright_core::record::EventRef;
use rusqlite::{Connection, Params};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// A record and the event that stands for it: what a change that a person makes builds on.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Versioned<T> {
    /// The event.
    pub version: EventRef,
    /// The record.
    #[serde(flatten)]
    pub record: T,
}

/// How SQLite would go about a question, step by step.
fn plan(db: &Connection, sql: &str, values: impl Params) -> Result<Vec<String>, Error> {
    let mut statement = db.prepare(&format!("EXPLAIN QUERY PLAN {sql}"))?;
    let steps = statement.query_map(values, |row| row.get("detail"))?;
    Ok(steps.collect::<Result<_, _>>()?)
}
