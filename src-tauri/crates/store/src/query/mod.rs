//! What screens ask the register: one file for each question, its SQL beside it.

mod bench;
mod conflict;
mod counts;
mod device;
mod due;
mod hose;
mod list;
mod machine;
mod place;
mod search;
mod spell;
mod stay;
mod stock;
mod written;

pub use conflict::{Conflict, Contradiction, Told};
pub use counts::Counts;
pub use device::Device;
pub use due::{CountedFrom, Due, DueFor, Guide, LimitFrom, Overdue};
pub use hose::{Hose, HoseInspection, HoseNote, HoseOverride, HosePhoto, Status};
pub use list::{MachineRow, SiteRow};
pub use machine::{MachineSheet, PlaceRow};
pub use place::{PlaceAt, PlaceSheet, Sister};
pub use search::Hit;
pub use spell::{Found, Spell};
pub use stay::Stay;
pub use stock::{PieceKept, Stock, StockConflict, StockUsed, UsedWhat};
pub use written::Written;

use hosewright_core::record::EventRef;
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
