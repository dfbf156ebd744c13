//! The owner's own limits of age, by where they hold.

use super::{HexError, MachineId, PlaceId, SiteId};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::fmt;
use std::str::FromStr;
use thiserror::Error;
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

/// A text that is no scope.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum ScopeError {
    /// None of the words a scope begins with.
    #[error("`{text}` is no scope: `fleet`, `site/id`, `machine/id` or `place/id` is expected")]
    Word {
        /// What stood there.
        text: String,
    },
    /// No id.
    #[error(transparent)]
    Id(#[from] HexError),
}

/// From its [`fmt::Display`].
impl FromStr for Scope {
    type Err = ScopeError;
    fn from_str(text: &str) -> Result<Self, ScopeError> {
        match text.split_once('/') {
            None if text == "fleet" => Ok(Scope::Fleet),
            Some(("site", id)) => Ok(Scope::Site(id.parse()?)),
            Some(("machine", id)) => Ok(Scope::Machine(id.parse()?)),
            Some(("place", id)) => Ok(Scope::Place(id.parse()?)),
            _ => Err(ScopeError::Word { text: crate::fleet::repeated(text) }),
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_scope_comes_back_from_its_writing() {
        for scope in [
            Scope::Fleet,
            Scope::Site(SiteId::from_bytes([1; 16])),
            Scope::Machine(MachineId::from_bytes([2; 16])),
            Scope::Place(PlaceId::from_bytes([3; 16])),
        ] {
            assert_eq!(scope.to_string().parse(), Ok(scope));
        }
        for text in ["", "fleet/1", "yard/00", "site/", "machine/xy"] {
            assert!(text.parse::<Scope>().is_err(), "`{text}` was taken for a scope");
        }
    }
}
