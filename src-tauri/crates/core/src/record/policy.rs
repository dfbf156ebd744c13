//! The owner's own limits of age, by where they hold.

use super::{MachineId, PlaceId, SiteId};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::fmt;
use ts_rs::TS;

/// Where a policy holds. The narrowest that says anything wins.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Scope {
    /// Everywhere.
    Fleet,
    /// On one site.
    Site(SiteId),
    /// On one machine.
    Machine(MachineId),
    /// At one place.
    Place(PlaceId),
}

impl fmt::Display for Scope {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Scope::Fleet => to.write_str("fleet"),
            Scope::Site(id) => write!(to, "site/{id}"),
            Scope::Machine(id) => write!(to, "machine/{id}"),
            Scope::Place(id) => write!(to, "place/{id}"),
        }
    }
}

/// The owner's limits for a scope, whole: a change writes all of them anew. None says nothing and
/// leaves it to the wider scope, and at last to the guide of the tables.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct PolicySet {
    /// Where it holds.
    pub scope: Scope,
    /// Years from assembly to replacement, storage included.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub service_years: Option<f64>,
    /// Years an assembly may lie before it is fitted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub storage_years: Option<f64>,
    /// Years between inspections.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub inspection_years: Option<f64>,
    /// Whether crossing these limits is a stop; else a caution.
    #[serde(default)]
    pub stop: bool,
}
