//! How readings go wrong, what they cost to take, and how the parts of one job go together.

use super::Provenance;
use super::table::{CatalogueError, Row};
use crate::spec::Gender;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// One way a reading leaves the band of a new part: a share of readings is off by an exponential
/// amount.
#[derive(Debug, Clone, PartialEq)]
pub struct ReadingTerm {
    /// Name, such as `belled-nut`.
    pub term: String,
    /// What is read.
    pub part: PartKind,
    /// The key of the reading.
    pub reading: String,
    /// The half it holds for; none is both.
    pub half: Option<Gender>,
    /// Which way.
    pub direction: Direction,
    /// Share of readings.
    pub share: f64,
    /// Mean amount, mm.
    pub mean_mm: f64,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

/// What a reading is taken of, whichever end.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum PartKind {
    /// The hose.
    Hose,
    /// An end.
    End,
}

/// Which way a reading errs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Direction {
    /// It reads small.
    Smaller,
    /// It reads large.
    Larger,
}

/// How often an end goes on a hose so many sizes apart, relative to its own size.
#[derive(Debug, Clone, PartialEq)]
pub struct SizeStep {
    /// Sizes apart; the last row holds for more as well.
    pub steps: usize,
    /// Relative weight.
    pub weight: f64,
    /// Source and basis.
    pub provenance: Provenance,
}

/// How often a family of ends is met on machines of each origin, relative to a family that is not
/// in the table (1).
#[derive(Debug, Clone, PartialEq)]
pub struct OriginShare {
    /// Family.
    pub family: String,
    /// On machines of North America, Europe, East Asia and elsewhere, in that order.
    pub weights: [f64; 4],
    /// Source and basis.
    pub provenance: Provenance,
}

/// What a reading costs.
#[derive(Debug, Clone, PartialEq)]
pub struct Effort {
    /// What is read.
    pub part: PartKind,
    /// The key of the reading.
    pub reading: String,
    /// In readings by caliper of a part in the hand.
    pub effort: f64,
    /// How far the hose must be taken apart for it.
    pub reach: Reach,
    /// Source and basis.
    pub provenance: Provenance,
    /// How it is taken.
    pub note: String,
}

/// How far a hose is taken apart. Ordered: what can be read in place can be read of a hose that is off.
#[derive(
    Debug, Clone, Copy, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS,
)]
#[serde(rename_all = "kebab-case")]
pub enum Reach {
    /// Fitted on the machine.
    InPlace,
    /// Off the machine.
    Off,
    /// Off, and cut back from the ferrule.
    #[default]
    Cut,
}

pub(super) const TERM_COLUMNS: &str = "term,part,reading,half,direction,share,mean_mm,source,basis,note";
pub(super) const STEP_COLUMNS: &str = "steps,weight,source,basis,note";
pub(super) const ORIGIN_COLUMNS: &str = "family,north_america,europe,east_asia,elsewhere,source,basis";
pub(super) const EFFORT_COLUMNS: &str = "part,reading,effort,reach,source,basis,note";

impl ReadingTerm {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        let share = row.number("share")?;
        if !(share > 0.0 && share < 1.0) {
            return Err(row.wrong("share", "a share between 0 and 1"));
        }
        Ok(Self {
            term: row.text("term")?,
            part: row.name("part")?,
            reading: row.text("reading")?,
            half: row.optional_name("half")?,
            direction: row.name("direction")?,
            share,
            mean_mm: above_nothing(row, "mean_mm")?,
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}

impl SizeStep {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            steps: row.value("steps", "a number of sizes")?,
            weight: above_nothing(row, "weight")?,
            provenance: row.provenance()?,
        })
    }
}

impl OriginShare {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        let of = |column| above_nothing(row, column);
        Ok(Self {
            family: row.text("family")?,
            weights: [of("north_america")?, of("europe")?, of("east_asia")?, of("elsewhere")?],
            provenance: row.provenance()?,
        })
    }
}

impl Effort {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            part: row.name("part")?,
            reading: row.text("reading")?,
            effort: above_nothing(row, "effort")?,
            reach: row.name("reach")?,
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}

fn above_nothing(row: &Row<'_>, column: &str) -> Result<f64, CatalogueError> {
    let number = row.number(column)?;
    if number > 0.0 { Ok(number) } else { Err(row.wrong(column, "a number above 0")) }
}
