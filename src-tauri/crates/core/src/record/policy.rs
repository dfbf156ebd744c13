//! The owner's own limits of age, by where and for which hoses they hold.

use super::{HexError, MachineId, PlaceId, SiteId};
use crate::catalogue::Demand;
use crate::spec::Line;
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

/// Which hoses of a scope. One that says both holds before one that says the line, that before one that says
/// the demand, and that before one that says neither.
#[derive(
    Debug, Clone, Copy, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS,
)]
#[serde(deny_unknown_fields, default)]
pub struct PolicyOf {
    /// Those on such a line; none is any.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub line: Option<Line>,
    /// Those where it is so hard on them; none is any.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub demand: Option<Demand>,
}

impl PolicyOf {
    /// Every hose of the scope.
    pub const ALL: Self = Self { line: None, demand: None };

    /// Whether it says nothing: every hose of the scope.
    pub fn is_all(&self) -> bool {
        *self == Self::ALL
    }
}

/// Which policy: where it holds, and for which hoses there. One of each kind stands.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct PolicyKey {
    /// Where.
    pub scope: Scope,
    /// Which hoses.
    pub of: PolicyOf,
}

/// Of every hose it is the scope's writing alone, as it was before policies told hoses apart.
impl fmt::Display for PolicyKey {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(to, "{}", self.scope)?;
        if let Some(line) = self.of.line {
            write!(to, "/line-{}", line.name())?;
        }
        match self.of.demand {
            Some(demand) => write!(to, "/demand-{}", demand.name()),
            None => Ok(()),
        }
    }
}

/// The owner's limits for a scope, whole: a change writes all of them anew. None says nothing and
/// leaves it to the wider scope, and at last to the guide of the tables.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct PolicySet {
    /// Where it holds.
    pub scope: Scope,
    /// Which hoses there; every one without.
    #[serde(default, skip_serializing_if = "PolicyOf::is_all")]
    #[ts(optional, as = "Option<PolicyOf>")]
    pub of: PolicyOf,
    /// Years from assembly to replacement, storage included.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub service_years: Option<f64>,
    /// Hours of the machine from fitting to replacement.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub service_hours: Option<f64>,
    /// Years an assembly may lie before it is fitted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub storage_years: Option<f64>,
    /// Years between inspections.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub inspection_years: Option<f64>,
    /// Hours of the machine between inspections.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub inspection_hours: Option<f64>,
    /// Whether crossing these limits is a stop; else a caution.
    #[serde(default)]
    pub stop: bool,
}

impl PolicySet {
    /// One that says nothing.
    pub fn none(scope: Scope, of: PolicyOf) -> Self {
        Self {
            scope,
            of,
            service_years: None,
            service_hours: None,
            storage_years: None,
            inspection_years: None,
            inspection_hours: None,
            stop: false,
        }
    }

    /// Which policy it is.
    pub fn key(&self) -> PolicyKey {
        PolicyKey { scope: self.scope.clone(), of: self.of }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_policy_for_every_hose_is_written_as_its_scope_alone() {
        let key = |of| PolicyKey { scope: Scope::Fleet, of }.to_string();
        assert_eq!(key(PolicyOf::ALL), "fleet");
        let suction = PolicyOf { line: Some(Line::Suction), demand: Some(Demand::Harsh) };
        assert_eq!(key(suction), "fleet/line-suction/demand-harsh");
    }

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
