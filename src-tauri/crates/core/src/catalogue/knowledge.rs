//! What the trade knows in words: cautions, causes of failure, facts of crimping, rules of marking.

use super::Provenance;
use super::table::{CatalogueError, Row};
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
    /// Likely causes; blank where the cause is not known.
    pub causes: String,
    /// What to do.
    pub remedy: String,
    /// Source and basis.
    pub provenance: Provenance,
}

/// A fact of crimping, measuring and proving. Figures that only a fitting's maker can give are not
/// among them; those here are what the trade usually sees.
#[derive(Debug, Clone, PartialEq)]
pub struct CrimpFact {
    /// Identifier, such as `CR-08`.
    pub id: String,
    /// What it is about, such as `measure-crimp`.
    pub topic: String,
    /// The fact.
    pub statement: String,
    /// Lower figure.
    pub low: Option<f64>,
    /// Upper figure; the same as the lower where there is one only.
    pub high: Option<f64>,
    /// Whether the figures go either way from a target.
    pub plus_minus: bool,
    /// Their unit.
    pub unit: String,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

/// How hoses and assemblies are marked.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct MarkingRule {
    /// Identifier, such as `R01`.
    pub id: String,
    /// What is marked so.
    pub scope: String,
    /// `metric`, `imperial` or `both`.
    pub units: String,
    /// True where hose must not be marked so: a figure found there is never a working pressure.
    pub forbidden: bool,
    /// The form of the marking.
    pub pattern: String,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

pub(super) const CAUTION_COLUMNS: &str = "id,step,caution,why,source,basis";
pub(super) const CAUSE_COLUMNS: &str = "code,name,seen,causes,remedy,source,basis";
pub(super) const CRIMP_COLUMNS: &str = "id,topic,statement,low,high,plus_minus,unit,source,basis,note";
pub(super) const MARKING_COLUMNS: &str = "id,scope,units,forbidden,pattern,source,basis,note";

impl Caution {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            id: row.text("id")?,
            step: row.name("step")?,
            caution: row.text("caution")?,
            why: row.text("why")?,
            provenance: row.provenance()?,
        })
    }
}

impl FailureCause {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            code: row.text("code")?,
            name: row.text("name")?,
            seen: row.text("seen")?,
            causes: row.note("causes"),
            remedy: row.text("remedy")?,
            provenance: row.provenance()?,
        })
    }
}

impl CrimpFact {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            id: row.text("id")?,
            topic: row.text("topic")?,
            statement: row.text("statement")?,
            low: row.optional_number("low")?,
            high: row.optional_number("high")?,
            plus_minus: row.yes("plus_minus")?,
            unit: row.note("unit"),
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}

impl MarkingRule {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            id: row.text("id")?,
            scope: row.text("scope")?,
            units: row.text("units")?,
            forbidden: row.yes("forbidden")?,
            pattern: row.text("pattern")?,
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}
