//! What was done at the bench, as it stays on record with the assembly.

use super::PersonId;
use crate::crimp::{CrimpError, CrimpQuestion, Crimped, crimp};
use crate::make::EndSettings;
use crate::measure::{Instrument, Judged};
use crate::quantity::{Degrees, Millimetres};
use crate::spec::Role;
use chrono::{DateTime, Utc};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What was done at the bench: by which settings, with which readings, by whom.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct BenchRecord {
    /// The settings that were worked to, each with its source.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub settings: Vec<EndSettings>,
    /// Length of the hose as it was cut.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cut_length_mm: Option<Millimetres>,
    /// Length and turn of the finished assembly as they were measured.
    #[serde(default)]
    pub finished: Finished,
    /// The crimps as they were read.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub crimps: Vec<CrimpDone>,
    /// The steps that were ticked.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub steps: Vec<StepDone>,
}

/// Length and turn of a finished assembly as they were measured.
#[derive(Debug, Clone, Copy, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct Finished {
    /// From sealing point to sealing point.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub length_mm: Option<Millimetres>,
    /// Standard error of the tape.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub length_error_mm: Option<Millimetres>,
    /// Looking along the hose from A to B with A's elbow up: clockwise to B's elbow.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub turn_deg: Option<Degrees>,
    /// Standard error of what the turn was measured with.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub turn_error_deg: Option<Degrees>,
}

/// A crimp as it was read, with what it was held against.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct CrimpDone {
    /// Which end.
    pub role: Role,
    /// The supplier's diameter.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub target_mm: Option<Millimetres>,
    /// How far either way it might be off.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tolerance_mm: Option<Millimetres>,
    /// Diameters over the flats, four at each of three places.
    pub readings_mm: Vec<Option<Millimetres>>,
    /// Readings that were given up before these, in that order.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub given_up: Vec<GivenUp>,
    /// What they were read with.
    pub instrument: Instrument,
    /// What they said.
    pub verdict: Judged,
}

/// A reading of a crimp that was given up. A crimp that was read until it pleased looks like any other else.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct GivenUp {
    /// What was read, whether it can be or is a slip of the finger.
    pub mm: Millimetres,
    /// What it was read with.
    pub instrument: Instrument,
    /// Why it counts no more.
    pub why: WhyGivenUp,
}

/// Why a reading of a crimp counts no more.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum WhyGivenUp {
    /// Another was read in its place.
    ReadAgain,
    /// It was struck.
    Struck,
    /// The ferrule was pressed once more.
    PressedAgain,
}

impl CrimpDone {
    /// What the readings say, judged anew.
    ///
    /// # Errors
    /// Readings, tolerance or instrument that can not be.
    pub fn judged(&self) -> Result<Crimped, CrimpError> {
        crimp(&CrimpQuestion {
            role: Some(self.role),
            target_mm: self.target_mm,
            tolerance_mm: self.tolerance_mm,
            readings_mm: self.readings_mm.clone(),
            instrument: self.instrument.clone(),
        })
    }
}

/// A step that was ticked.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct StepDone {
    /// The step: the words `step-<code>`.
    pub code: String,
    /// Of which end; none for the whole.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub role: Option<Role>,
    /// When.
    pub at: DateTime<Utc>,
    /// By whom; none where nobody said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub by: Option<PersonId>,
}
