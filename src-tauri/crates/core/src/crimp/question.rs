//! What is asked of a crimp.

use super::WANTED;
use crate::measure::{Instrument, InstrumentError};
use crate::quantity::Millimetres;
use crate::spec::Role;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use thiserror::Error;
use ts_rs::TS;

/// The diameters read over the flats of one ferrule, and what they shall be.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct CrimpQuestion {
    /// Which end.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub role: Option<Role>,
    /// The supplier's diameter.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub target_mm: Option<Millimetres>,
    /// How far either way it may be off.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tolerance_mm: Option<Millimetres>,
    /// Four directions at the place behind the mouth of the ferrule, four in its middle, four before its end; none
    /// was not read.
    pub readings_mm: Vec<Option<Millimetres>>,
    /// What they were read with.
    pub instrument: Instrument,
}

/// Readings that can not be.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum CrimpError {
    /// More readings than there are places for.
    #[error("readings_mm has {count} readings; up to {WANTED}, four at each of three places, are expected")]
    TooMany {
        /// How many.
        count: usize,
    },
    /// A diameter that can not be.
    #[error("{field} is {value}; a diameter above 0 and up to {MOST_MM} mm is expected")]
    Diameter {
        /// Which.
        field: String,
        /// What was given.
        value: f64,
    },
    /// A tolerance that can not be.
    #[error(
        "tolerance_mm is {value} of a diameter of {target}; above 0 and less than the diameter is expected"
    )]
    Tolerance {
        /// What was given.
        value: f64,
        /// Of what.
        target: f64,
    },
    /// The instrument.
    #[error(transparent)]
    Instrument(#[from] InstrumentError),
}

/// Largest diameter over a ferrule that is taken.
const MOST_MM: f64 = 500.0;

impl CrimpError {
    /// The field that is wrong.
    pub fn field(&self) -> &str {
        match self {
            Self::TooMany { .. } => "readings_mm",
            Self::Diameter { field, .. } => field,
            Self::Tolerance { .. } => "tolerance_mm",
            Self::Instrument(_) => "instrument.error_mm",
        }
    }
}

impl CrimpQuestion {
    pub(super) fn plausible(&self) -> Result<(), CrimpError> {
        self.instrument.plausible()?;
        if self.readings_mm.len() > WANTED {
            return Err(CrimpError::TooMany { count: self.readings_mm.len() });
        }
        diameter(|| "target_mm".to_owned(), self.target_mm)?;
        for (index, reading) in self.readings_mm.iter().enumerate() {
            diameter(|| format!("readings_mm[{index}]"), *reading)?;
        }
        let target = self.target_mm.map_or(MOST_MM, |target| target.get());
        match self.tolerance_mm.map(|tolerance| tolerance.get()) {
            Some(value) if !(value > 0.0 && value < target) => Err(CrimpError::Tolerance { value, target }),
            _ => Ok(()),
        }
    }
}

fn diameter(field: impl Fn() -> String, given: Option<Millimetres>) -> Result<(), CrimpError> {
    match given.map(|given| given.get()) {
        Some(value) if !(value > 0.0 && value <= MOST_MM) => {
            Err(CrimpError::Diameter { field: field(), value })
        }
        _ => Ok(()),
    }
}
