//! What only the supplier of the ends can give: the user's own figures, never a table of ours.

use super::MakeError;
use crate::quantity::Millimetres;
use crate::spec::Role;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// How one end goes on, by the user's supplier. What is not given is listed as missing.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct EndSettings {
    /// Which end.
    pub role: Role,
    /// The table, sheet or measurement the figures are from.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub source: Option<String>,
    /// Series of the fitting, by the supplier's name.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub series: Option<String>,
    /// How far the hose goes on.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub insertion_mm: Option<Millimetres>,
    /// Whether cover or tube is taken off first.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub skive: Option<Skive>,
    /// The ferrule, by the supplier's name.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ferrule: Option<String>,
    /// What the hose is pushed on with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lubricant: Option<String>,
    /// The die set, by the press's name.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub die_set: Option<String>,
    /// Diameter over the crimped ferrule.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub crimp_diameter_mm: Option<Millimetres>,
    /// How far either way it may be off.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub crimp_tolerance_mm: Option<Millimetres>,
    /// Where the end's cut-off is from: a table, or measured on a new end.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cutoff_source: Option<String>,
}

/// An end whose settings are from a supplier's table of the user's own.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Filled {
    /// Which end.
    pub role: Role,
    /// Whose figures they are.
    pub supplier: String,
    /// Where they stand.
    pub from: String,
    /// Whether the cut-off is theirs too.
    pub cutoff: bool,
}

/// What is taken off the hose before the end goes on.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Skive {
    /// Nothing: a no-skive end.
    None,
    /// The cover, over that length.
    Outer {
        /// Length from the cut.
        length_mm: Millimetres,
    },
    /// The tube, over that length.
    Inner {
        /// Length from the cut.
        length_mm: Millimetres,
    },
    /// Cover and tube.
    Both {
        /// Length of cover from the cut.
        outer_mm: Millimetres,
        /// Length of tube from the cut.
        inner_mm: Millimetres,
    },
}

/// A figure the sheet can't give, so that it is got before the hose is cut.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Missing {
    /// What: the words `missing-<code>` say how to get it.
    pub code: &'static str,
    /// Of which end; none for the whole.
    pub role: Option<Role>,
}

/// Everything a sheet can miss.
pub const MISSING: &[&str] = &[
    CUTOFF,
    LENGTH_TOLERANCE,
    "insertion",
    "skive",
    "ferrule",
    "lubricant",
    "die-set",
    "crimp-diameter",
    "crimp-tolerance",
    TORQUE,
];

pub(super) const CUTOFF: &str = "cutoff";
pub(super) const LENGTH_TOLERANCE: &str = "length-tolerance";
pub(super) const TORQUE: &str = "torque";

impl EndSettings {
    /// An end of which nothing is known yet.
    pub fn unknown(role: Role) -> Self {
        Self {
            role,
            source: None,
            series: None,
            insertion_mm: None,
            skive: None,
            ferrule: None,
            lubricant: None,
            die_set: None,
            crimp_diameter_mm: None,
            crimp_tolerance_mm: None,
            cutoff_source: None,
        }
    }

    pub(super) fn missing(&self) -> impl Iterator<Item = Missing> + use<> {
        let role = Some(self.role);
        let asked = [
            (self.insertion_mm.is_none(), "insertion"),
            (self.skive.is_none(), "skive"),
            (self.ferrule.is_none(), "ferrule"),
            (self.lubricant.is_none(), "lubricant"),
            (self.die_set.is_none(), "die-set"),
            (self.crimp_diameter_mm.is_none(), "crimp-diameter"),
            (self.crimp_tolerance_mm.is_none(), "crimp-tolerance"),
        ];
        asked.into_iter().filter(|(missing, _)| *missing).map(move |(_, code)| Missing { code, role })
    }

    /// Whether something has to be taken off, or nobody said.
    pub(super) fn may_need_skiving(&self) -> bool {
        self.skive != Some(Skive::None)
    }

    fn plausible(&self) -> Result<(), MakeError> {
        let given = [
            ("insertion_mm", self.insertion_mm),
            ("crimp_diameter_mm", self.crimp_diameter_mm),
            ("crimp_tolerance_mm", self.crimp_tolerance_mm),
        ];
        let wrong = given.into_iter().find_map(|(field, value)| {
            let value = value?.get();
            (!(value >= 0.0 && value.is_finite())).then_some((field, value))
        });
        match wrong {
            Some((field, value)) => {
                Err(MakeError::Setting { role: self.role, field, value: value.to_string() })
            }
            None => Ok(()),
        }
    }
}

/// The settings of both ends, A first; an end nobody gave settings for has none.
pub(super) fn of_both_ends(given: &[EndSettings]) -> Result<[EndSettings; 2], MakeError> {
    let of = |role| {
        let mut of_role = given.iter().filter(|settings| settings.role == role);
        let settings = of_role.next().cloned().unwrap_or_else(|| EndSettings::unknown(role));
        if of_role.next().is_some() {
            return Err(MakeError::SettingsTwice(role));
        }
        settings.plausible()?;
        Ok(settings)
    };
    Ok([of(Role::A)?, of(Role::B)?])
}
