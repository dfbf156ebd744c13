//! Rules with numbers: tolerances of length, cut and turn, oil speeds, ages and single limits.
//! Each keeps the identifiers (`L014`) of the rules it was made from.

use super::table::{CatalogueError, Row};
use super::{Basis, Demand, Provenance};
use crate::quantity::{Dn, Millimetres};
use crate::spec::Line;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Whose length tolerances are worked to.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum LengthPractice {
    /// DIN 20066, by length and size.
    #[default]
    #[serde(rename = "din-20066")]
    Din20066,
    /// The American handbook practice, by length alone.
    American,
}

/// Whose custom a figure is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Practice {
    /// European.
    European,
    /// American.
    American,
}

/// A band of lengths: over the one, up to and with the other. A missing limit is none.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Range {
    /// Over this.
    pub over_mm: Option<f64>,
    /// Up to and with this.
    pub to_mm: Option<f64>,
}

impl Range {
    fn read(row: &Row<'_>, over: &str, to: &str) -> Result<Self, CatalogueError> {
        let (over_mm, to_mm) = (row.optional_number(over)?, row.optional_number(to)?);
        if over_mm.zip(to_mm).is_some_and(|(over, to)| over >= to) {
            return Err(row.wrong(to, format!("a number above {over}")));
        }
        Ok(Self { over_mm, to_mm })
    }

    /// Whether the length lies in it.
    pub fn holds(self, length: Millimetres) -> bool {
        self.over_mm.is_none_or(|over| length.get() > over) && self.to_mm.is_none_or(|to| length.get() <= to)
    }
}

/// The tolerance of an overall length.
#[derive(Debug, Clone, PartialEq)]
pub struct LengthTolerance {
    /// Whose practice.
    pub practice: LengthPractice,
    /// Smallest hose size; none is every size.
    pub dn_from: Option<Dn>,
    /// Largest hose size.
    pub dn_to: Option<Dn>,
    /// Overall lengths.
    pub lengths: Range,
    /// Above.
    pub plus: f64,
    /// Below; negative.
    pub minus: f64,
    /// Whether both are percent of the length; else mm.
    pub percent: bool,
    /// The rule of the upper figure.
    pub plus_id: String,
    /// The rule of the lower figure.
    pub minus_id: String,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

impl LengthTolerance {
    /// Minus (negative) and plus in mm at that overall length.
    pub fn at(&self, overall: Millimetres) -> [f64; 2] {
        let share = if self.percent { overall.get() / 100.0 } else { 1.0 };
        [self.minus * share, self.plus * share]
    }

    pub(super) fn holds(&self, dn: Dn, overall: Millimetres) -> bool {
        self.dn_from.is_none_or(|from| dn >= from)
            && self.dn_to.is_none_or(|to| dn <= to)
            && self.lengths.holds(overall)
    }
}

/// The tolerance of the turn between two elbows.
#[derive(Debug, Clone, PartialEq)]
pub struct TurnTolerance {
    /// The rule.
    pub id: String,
    /// Overall lengths.
    pub lengths: Range,
    /// Degrees either way.
    pub plus_minus_deg: f64,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

/// How far from square a cut may be.
#[derive(Debug, Clone, PartialEq)]
pub struct CutTolerance {
    /// The rule.
    pub id: String,
    /// Bores.
    pub bores: Range,
    /// Most.
    pub out_of_square_mm: Millimetres,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

/// How fast oil should run.
#[derive(Debug, Clone, PartialEq)]
pub struct OilSpeed {
    /// The line: pressure, return or suction.
    pub line: Line,
    /// Which pressure lines, where the practice parts them: `medium`, `high`.
    pub pressure: Option<String>,
    /// Whose practice.
    pub practice: Practice,
    /// Lowest usual speed.
    pub low_m_s: f64,
    /// Highest usual speed.
    pub high_m_s: f64,
    /// The rule of the lower figure.
    pub low_id: String,
    /// The rule of the upper figure.
    pub high_id: String,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

/// What an age limits.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum AgeOf {
    /// Bulk hose, from its making to that of the assembly.
    HoseStorage,
    /// An assembly before it is fitted.
    AssemblyStorage,
    /// An assembly from its making, storage included.
    ServiceLife,
    /// From one inspection to the next.
    InspectionInterval,
}

/// An age that should not be passed.
#[derive(Debug, Clone, PartialEq)]
pub struct Age {
    /// The rule.
    pub id: String,
    /// What it limits.
    pub of: AgeOf,
    /// `rubber` or `thermoplastic`; none is either.
    pub material: Option<String>,
    /// How hard it is on the hose; none is either.
    pub demand: Option<Demand>,
    /// Whose practice.
    pub practice: Practice,
    /// The age.
    pub months: u32,
    /// In the table's words.
    pub rule: String,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

/// A rule with one value: a ratio, a temperature, a hold time.
#[derive(Debug, Clone, PartialEq)]
pub struct Limit {
    /// Stable name, such as `proof-ratio`.
    pub key: String,
    /// The rule, such as `L002`.
    pub id: String,
    /// What it limits, in the table's words.
    pub rule: String,
    /// The value; none where the rule is a word.
    pub value: Option<f64>,
    /// The word, where the rule is one.
    pub words: Option<String>,
    /// Unit of the value; blank for a bare number.
    pub unit: String,
    /// What it applies to.
    pub applies_to: String,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks, conflicts between sources among them.
    pub note: String,
}

impl Limit {
    /// How sure it is.
    pub fn basis(&self) -> Basis {
        self.provenance.basis
    }
}

pub(super) const LENGTH_COLUMNS: &str = "\
    practice,dn_from,dn_to,over_mm,to_mm,plus,minus,unit,plus_id,minus_id,source,basis,note";
pub(super) const TURN_COLUMNS: &str = "id,over_mm,to_mm,plus_minus_deg,source,basis,note";
pub(super) const CUT_COLUMNS: &str = "id,bore_over_mm,bore_to_mm,out_of_square_mm,source,basis,note";
pub(super) const SPEED_COLUMNS: &str =
    "line,pressure,practice,low_m_s,high_m_s,low_id,high_id,source,basis,note";
pub(super) const AGE_COLUMNS: &str = "id,of,material,demand,practice,months,rule,source,basis,note";
pub(super) const LIMIT_COLUMNS: &str = "key,id,rule,value,words,unit,applies_to,source,basis,note";

impl LengthTolerance {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            practice: row.name("practice")?,
            dn_from: row.dn("dn_from")?,
            dn_to: row.dn("dn_to")?,
            lengths: Range::read(row, "over_mm", "to_mm")?,
            plus: row.number("plus")?,
            minus: row.number("minus")?,
            percent: match row.optional("unit") {
                Some("%") => true,
                Some("mm") => false,
                _ => return Err(row.wrong("unit", "mm or %")),
            },
            plus_id: row.text("plus_id")?,
            minus_id: row.text("minus_id")?,
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}

impl TurnTolerance {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            id: row.text("id")?,
            lengths: Range::read(row, "over_mm", "to_mm")?,
            plus_minus_deg: row.number("plus_minus_deg")?,
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}

impl CutTolerance {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            id: row.text("id")?,
            bores: Range::read(row, "bore_over_mm", "bore_to_mm")?,
            out_of_square_mm: Millimetres(row.number("out_of_square_mm")?),
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}

impl OilSpeed {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        let (low_m_s, high_m_s) = (row.number("low_m_s")?, row.number("high_m_s")?);
        if low_m_s > high_m_s {
            return Err(row.wrong("high_m_s", format!("{low_m_s} or more")));
        }
        Ok(Self {
            line: row.name("line")?,
            pressure: row.optional_text("pressure"),
            practice: row.name("practice")?,
            low_m_s,
            high_m_s,
            low_id: row.text("low_id")?,
            high_id: row.text("high_id")?,
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}

impl Age {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            id: row.text("id")?,
            of: row.name("of")?,
            material: row.optional_text("material"),
            demand: row.optional_name("demand")?,
            practice: row.name("practice")?,
            months: row.value("months", "a number of months")?,
            rule: row.text("rule")?,
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}

impl Limit {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        let (value, words) = (row.optional_number("value")?, row.optional_text("words"));
        if value.is_some() == words.is_some() {
            return Err(row.wrong("value", "a number, or a text in the column words, not both"));
        }
        Ok(Self {
            key: row.text("key")?,
            id: row.text("id")?,
            rule: row.text("rule")?,
            value,
            words,
            unit: row.note("unit"),
            applies_to: row.text("applies_to")?,
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}
