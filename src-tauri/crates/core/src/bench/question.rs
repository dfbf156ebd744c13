//! What was read, measured and proved.

use crate::crimp::CrimpError;
use crate::measure::Instrument;
use crate::quantity::{Bar, Millimetres};
use crate::record::{Finished, GivenUp, ProofFailure, StepDone};
use crate::spec::Role;
use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use thiserror::Error;
use ts_rs::TS;

/// What was read, measured and proved of one assembly, as far as it has come.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct Bench {
    /// The readings of the crimps.
    pub crimps: Vec<CrimpRead>,
    /// Length of the hose as it was cut.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cut_length_mm: Option<Millimetres>,
    /// Length and turn of the finished assembly.
    pub finished: Finished,
    /// The proof test.
    pub proof: Proving,
    /// The steps that are ticked.
    pub steps: Vec<StepDone>,
}

/// The readings of one crimp. What they are held against stands in the settings of that end.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct CrimpRead {
    /// Which end.
    pub role: Role,
    /// Four directions at each of three places; none was not read.
    pub readings_mm: Vec<Option<Millimetres>>,
    /// Readings that were given up before these, in that order.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub given_up: Vec<GivenUp>,
    /// What they were read with.
    pub instrument: Instrument,
}

/// A proof test as far as it has come.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct Proving {
    /// Whether there is a rig; none while nobody said.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rig: Option<bool>,
    /// How it failed, where it did.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub failed: Option<ProofFailure>,
    /// Pressure it was held at.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pressure_bar: Option<Bar>,
    /// How long, in seconds.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hold_s: Option<f64>,
    /// The gauge, by its number or mark.
    pub gauge: String,
    /// When it was last calibrated; none is not known.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub gauge_calibrated: Option<NaiveDate>,
}

/// What was done that can not be.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum BenchError {
    /// The readings of a crimp.
    #[error("crimps, end {role:?}: {error}")]
    Crimp {
        /// Which end.
        role: Role,
        /// What is wrong.
        error: CrimpError,
    },
    /// Two crimps of one end.
    #[error("crimps has end {0:?} twice; one of A and one of B are expected")]
    CrimpTwice(Role),
    /// A figure that can not be.
    #[error("{field} is {value}; {expected} is expected")]
    Number {
        /// The field.
        field: &'static str,
        /// What was given.
        value: f64,
        /// What would be right.
        expected: &'static str,
    },
}

impl BenchError {
    /// The field that is wrong.
    pub fn field(&self) -> &str {
        match self {
            Self::Crimp { .. } | Self::CrimpTwice(_) => "crimps",
            Self::Number { field, .. } => field,
        }
    }
}

impl Bench {
    pub(super) fn plausible(&self) -> Result<(), BenchError> {
        for role in [Role::A, Role::B] {
            if self.crimps.iter().filter(|read| read.role == role).count() > 1 {
                return Err(BenchError::CrimpTwice(role));
            }
        }
        let Finished { length_mm, length_error_mm, turn_deg, turn_error_deg } = self.finished;
        let mm = |given: Option<Millimetres>| given.map(|given| given.get());
        let lengths = [
            ("cut_length_mm", mm(self.cut_length_mm)),
            ("finished.length_mm", mm(length_mm)),
            ("finished.length_error_mm", mm(length_error_mm)),
            ("finished.turn_error_deg", turn_error_deg.map(|given| given.get())),
            ("proof.hold_s", self.proof.hold_s),
            ("proof.pressure_bar", self.proof.pressure_bar.map(|given| given.get())),
        ];
        for (field, value) in lengths {
            number(field, value, |value| value > 0.0 && value.is_finite(), "a number above 0")?;
        }
        let turn = turn_deg.map(|given| given.get());
        number(
            "finished.turn_deg",
            turn,
            |turn| (0.0..360.0).contains(&turn),
            "an angle from 0 to below 360 degrees",
        )
    }
}

fn number(
    field: &'static str,
    value: Option<f64>,
    can_be: impl Fn(f64) -> bool,
    expected: &'static str,
) -> Result<(), BenchError> {
    match value {
        Some(value) if !can_be(value) => Err(BenchError::Number { field, value, expected }),
        _ => Ok(()),
    }
}
