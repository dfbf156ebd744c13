//! What the trade knows beside dimensions: rules, fluids, cautions, causes of failure.

use super::Provenance;
use crate::quantity::Celsius;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The step of the job a caution belongs to.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS,
)]
#[serde(rename_all = "kebab-case")]
pub enum Step {
    /// Before anything is loosened.
    Before,
    /// Finding out what it was.
    Find,
    /// Deciding what may replace it.
    Check,
    /// Cutting and crimping.
    Make,
    /// Proof test.
    Prove,
    /// Marking.
    Tag,
    /// On to the machine.
    Fit,
    /// Afterwards.
    Keep,
}

/// A caution and why.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Caution {
    /// Identifier, such as `C15`.
    pub id: String,
    /// The step it belongs to.
    pub step: Step,
    /// What to do or not to do.
    pub caution: String,
    /// What happens otherwise.
    pub why: String,
    /// Source and basis.
    pub provenance: Provenance,
}

/// A cause of failure, as it is recorded.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FailureCause {
    /// Code, such as `ABR`.
    pub code: String,
    /// Name.
    pub name: String,
    /// What is seen.
    pub seen: String,
    /// Likely causes.
    pub causes: String,
    /// What to do.
    pub remedy: String,
    /// Source and basis.
    pub provenance: Provenance,
}

/// How a tube material stands a fluid.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum FluidRating {
    /// Made for it.
    Recommended,
    /// For weak duty; ask the supplier.
    Limited,
    /// Destroyed by it.
    Not,
}

/// One fluid against one tube material.
#[derive(Debug, Clone, PartialEq)]
pub struct FluidRow {
    /// Class by ISO 6743-4 (`HM`), or none.
    pub class: Option<String>,
    /// Name.
    pub name: String,
    /// Tube material.
    pub elastomer: String,
    /// How it stands it.
    pub rating: FluidRating,
    /// Hottest.
    pub max_temp_c: Option<Celsius>,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

/// A rule with one value: a ratio, an age, a speed.
#[derive(Debug, Clone, PartialEq)]
pub struct Rule {
    /// Identifier of the row, such as `L055`.
    pub id: String,
    /// What it limits, in the table's words.
    pub rule: String,
    /// The value; none where the rule is a word.
    pub value: Option<f64>,
    /// Its unit as written in the table.
    pub unit: String,
    /// What it applies to.
    pub applies_to: String,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}
