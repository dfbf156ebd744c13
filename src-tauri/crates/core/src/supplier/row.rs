//! One row of a supplier's table.

use crate::make::{EndSettings, Skive};
use crate::quantity::{Dn, Millimetres};
use crate::spec::{EndSpec, HoseRef, Role};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use thiserror::Error;
use ts_rs::TS;

/// How an end goes on a hose, by one supplier.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct SupplierRow {
    /// Whose figures they are.
    pub supplier: String,
    /// The hose's standard.
    pub standard: String,
    /// Its type.
    #[serde(rename = "type")]
    pub kind: String,
    /// Its size.
    pub dn: Dn,
    /// Family of the end; none is any of that series.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub family: Option<String>,
    /// Size of the end; none is any.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub size: Option<String>,
    /// Series of the fitting, by the supplier's name.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub series: Option<String>,
    /// The ferrule, by the supplier's name.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ferrule: Option<String>,
    /// How far the hose goes on.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub insertion_mm: Option<Millimetres>,
    /// What is taken off first.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub skive: Option<Skive>,
    /// What the hose is pushed on with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lubricant: Option<String>,
    /// The die set.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub die_set: Option<String>,
    /// Diameter over the crimped ferrule.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub crimp_diameter_mm: Option<Millimetres>,
    /// How far either way it may be off.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub crimp_tolerance_mm: Option<Millimetres>,
    /// From sealing point to hose stop.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cutoff_mm: Option<Millimetres>,
    /// Where it stands: the file and its row, or that it was entered by hand.
    pub from: String,
}

/// A row that can not be kept.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum RowError {
    /// A text that says nothing, or too much.
    #[error("{field} is blank or longer than {LONGEST} characters; write its name")]
    Text {
        /// The field.
        field: &'static str,
    },
    /// A figure that can not be.
    #[error("{field} is {value} mm; {expected} is expected: is it in another unit?")]
    Figure {
        /// The field.
        field: &'static str,
        /// What was given, as text.
        value: String,
        /// What would be right.
        expected: &'static str,
    },
    /// No figure at all.
    #[error("the row has no figure for the bench: a crimp diameter, insertion, skive or cut-off is expected")]
    Empty,
}

impl RowError {
    /// The field that is wrong.
    pub fn field(&self) -> &'static str {
        match self {
            Self::Text { field } | Self::Figure { field, .. } => field,
            Self::Empty => "crimp_diameter_mm",
        }
    }
}

/// Longest name, in characters.
const LONGEST: usize = 200;

impl SupplierRow {
    /// Whether it may be kept: names say something, figures can be.
    ///
    /// # Errors
    /// Names the field and what would be right.
    pub fn plausible(&self) -> Result<(), RowError> {
        let needed = [("supplier", &self.supplier), ("from", &self.from)];
        let given = [
            ("series", &self.series),
            ("ferrule", &self.ferrule),
            ("lubricant", &self.lubricant),
            ("die_set", &self.die_set),
        ];
        let given = given.into_iter().filter_map(|(field, text)| Some((field, text.as_ref()?)));
        for (field, text) in needed.into_iter().chain(given) {
            if text.trim().is_empty() || text.chars().count() > LONGEST {
                return Err(RowError::Text { field });
            }
        }
        self.figures()
    }

    fn figures(&self) -> Result<(), RowError> {
        let (outer, inner) = match self.skive {
            Some(Skive::Outer { length_mm }) => (Some(length_mm), None),
            Some(Skive::Inner { length_mm }) => (None, Some(length_mm)),
            Some(Skive::Both { outer_mm, inner_mm }) => (Some(outer_mm), Some(inner_mm)),
            Some(Skive::None) | None => (None, None),
        };
        let figures = [
            ("insertion_mm", self.insertion_mm, 3.0, 400.0, "3 to 400 mm"),
            ("skive", outer, 1.0, 400.0, "1 to 400 mm"),
            ("skive", inner, 1.0, 400.0, "1 to 400 mm"),
            ("crimp_diameter_mm", self.crimp_diameter_mm, 4.0, 300.0, "4 to 300 mm"),
            ("crimp_tolerance_mm", self.crimp_tolerance_mm, 0.01, 2.0, "0.01 to 2 mm either way"),
            ("cutoff_mm", self.cutoff_mm, 0.5, 1000.0, "0.5 to 1000 mm"),
        ];
        for (field, value, least, most, expected) in figures {
            if let Some(value) =
                value.map(|value| value.get()).filter(|value| !(least..=most).contains(value))
            {
                return Err(RowError::Figure { field, value: value.to_string(), expected });
            }
        }
        let any = figures.iter().any(|(_, value, ..)| value.is_some()) || self.skive.is_some();
        if any { Ok(()) } else { Err(RowError::Empty) }
    }

    /// Whether it holds for that hose and end.
    pub fn holds(&self, hose: &HoseRef, end: &EndSpec) -> bool {
        self.standard == hose.standard
            && self.kind == hose.kind
            && self.dn == hose.dn
            && self.family.as_ref().is_none_or(|family| *family == end.family)
            && self.size.as_ref().is_none_or(|size| *size == end.size)
    }

    /// How closely it says which end it is for: more for family and size than for a family, least for any.
    pub fn narrowness(&self) -> usize {
        usize::from(self.family.is_some()) + usize::from(self.size.is_some())
    }

    /// Whether both are for the same: a later one takes the place of the earlier.
    pub fn same_as(&self, other: &Self) -> bool {
        self.key() == other.key()
    }

    fn key(&self) -> impl PartialEq + use<'_> {
        (&self.supplier, &self.standard, &self.kind, self.dn, &self.family, &self.size, &self.series)
    }

    /// The settings of an end by it. They say whose they are.
    pub fn settings(&self, role: Role) -> EndSettings {
        let source = format!("{} ({})", self.supplier, self.from);
        EndSettings {
            role,
            series: self.series.clone(),
            insertion_mm: self.insertion_mm,
            skive: self.skive,
            ferrule: self.ferrule.clone(),
            lubricant: self.lubricant.clone(),
            die_set: self.die_set.clone(),
            crimp_diameter_mm: self.crimp_diameter_mm,
            crimp_tolerance_mm: self.crimp_tolerance_mm,
            cutoff_source: self.cutoff_mm.is_some().then(|| source.clone()),
            source: Some(source),
        }
    }
}
