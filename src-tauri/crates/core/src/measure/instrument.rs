//! What an instrument says of its own error, as a standard and an expanded uncertainty.

use crate::quantity::Millimetres;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use thiserror::Error;
use ts_rs::TS;

/// What the diameter or length was read with.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Instrument {
    /// Its name or number, as it stands on it.
    #[serde(default)]
    pub name: String,
    /// Its error.
    pub error_mm: Millimetres,
    /// What that figure is.
    #[serde(default)]
    pub error_is: ErrorIs,
}

/// What the figure of an instrument's error is.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum ErrorIs {
    /// Its standard error. Whoever does not say gets this one: it leaves the least room.
    #[default]
    Standard,
    /// Limits either way that it never passes, as its maker states them: a rectangle (GUM 4.3.7).
    Limits,
    /// The expanded uncertainty of its calibration, coverage factor 2 (GUM 4.3.3).
    Expanded,
}

/// An instrument whose error can not be.
#[derive(Debug, Clone, PartialEq, Error)]
#[error("instrument.error_mm is {value}; the instrument's error, above 0 and up to {most} mm, is expected")]
pub struct InstrumentError {
    /// What was given.
    pub value: f64,
    /// The most that is taken.
    pub most: f64,
}

/// Coverage factor of the expanded uncertainty (GUM 6.3.3: about 95 %).
pub(super) const COVERAGE: f64 = 2.0;

/// Largest error that is taken: a worse instrument is a slip of the finger.
const MOST_MM: f64 = 10.0;

impl Instrument {
    /// Whether its error can be: an instrument without error is none.
    ///
    /// # Errors
    /// Nothing, less than nothing, or more than a ruler's.
    pub fn plausible(&self) -> Result<(), InstrumentError> {
        let value = self.error_mm.get();
        if value > 0.0 && value <= MOST_MM { Ok(()) } else { Err(InstrumentError { value, most: MOST_MM }) }
    }

    /// Standard uncertainty of one reading, in mm.
    pub fn standard_mm(&self) -> f64 {
        let error = self.error_mm.get();
        match self.error_is {
            ErrorIs::Standard => error,
            ErrorIs::Limits => error / 3.0_f64.sqrt(),
            ErrorIs::Expanded => error / COVERAGE,
        }
    }

    /// Expanded uncertainty of one reading, coverage factor 2, in mm.
    pub fn expanded_mm(&self) -> f64 {
        COVERAGE * self.standard_mm()
    }
}
