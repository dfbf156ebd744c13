//! What an end may carry and how it is tightened.

use super::table::{CatalogueError, Row};
use super::{EndRow, Flange, Provenance};
use crate::quantity::{Bar, Dn};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The rating of an end as a hose end, from hose-fitting standards.
#[derive(Debug, Clone, PartialEq)]
pub struct EndRating {
    /// Family.
    pub family: String,
    /// Size.
    pub size: String,
    /// Rating; blank is not known, never unlimited.
    pub max_pressure_bar: Option<Bar>,
    /// Standard of the rating.
    pub standard: String,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

/// An end or a flange.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Connection<'c> {
    /// A threaded or plain end.
    End(&'c EndRow),
    /// A four-bolt flange.
    Flange(&'c Flange),
}

impl<'c> Connection<'c> {
    /// The family's name.
    pub fn family(self) -> &'c str {
        match self {
            Self::End(end) => &end.family,
            Self::Flange(flange) => &flange.family,
        }
    }

    /// Family and size, as people say it.
    pub fn name(self) -> String {
        format!("{} {}", self.family(), self.size())
    }

    /// The size within the family.
    pub fn size(self) -> &'c str {
        match self {
            Self::End(end) => &end.size,
            Self::Flange(flange) => &flange.size,
        }
    }

    /// The standard.
    pub fn standard(self) -> &'c str {
        match self {
            Self::End(end) => &end.standard,
            Self::Flange(flange) => &flange.standard,
        }
    }

    /// The dash size.
    pub fn dash(self) -> Option<i16> {
        match self {
            Self::End(end) => end.dash,
            Self::Flange(flange) => flange.dash,
        }
    }

    /// The hose size it goes with in the standard.
    pub fn dn(self) -> Option<Dn> {
        match self {
            Self::End(end) => end.dn,
            Self::Flange(flange) => flange.dn,
        }
    }

    /// Source and basis of the row.
    pub fn provenance(self) -> &'c Provenance {
        match self {
            Self::End(end) => &end.provenance,
            Self::Flange(flange) => &flange.provenance,
        }
    }

    /// The rating of the connection itself, which no hose end on it can pass.
    pub fn ceiling(self) -> EndRating {
        let (pressure, basis, source, note) = match self {
            Self::End(row) => (row.max_pressure_bar, row.pressure_basis, &row.provenance.source, &row.note),
            Self::Flange(row) => {
                (row.max_pressure_bar, row.pressure_basis, &row.provenance.source, &row.note)
            }
        };
        EndRating {
            family: self.family().to_owned(),
            size: self.size().to_owned(),
            max_pressure_bar: pressure,
            standard: self.standard().to_owned(),
            provenance: Provenance { source: source.clone(), basis },
            note: note.clone(),
        }
    }
}

pub(super) const RATING_COLUMNS: &str = "\
    family,size,max_pressure_bar,standard,source,basis,note";

impl EndRating {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            family: row.text("family")?,
            size: row.text("size")?,
            max_pressure_bar: row.bar("max_pressure_bar")?,
            standard: row.text("standard")?,
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}

/// How an end is tightened.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum TorqueMethod {
    /// Nm on a torque spanner.
    Torque,
    /// Flats of the hex from finger tight.
    FlatsFromFingerTight,
    /// Degrees from where the force rises.
    Angle,
}

/// A tightening value of a table. The maker's figure comes first.
#[derive(Debug, Clone, PartialEq)]
pub struct Torque {
    /// Family.
    pub family: String,
    /// Size; none where the value holds for every size of the family.
    pub size: Option<String>,
    /// What the value is.
    pub method: TorqueMethod,
    /// Lower value, in newton metres, flats of 60 degrees or degrees by the method.
    pub min: Option<f64>,
    /// Upper value.
    pub max: f64,
    /// Material, lubrication, screw.
    pub condition: String,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

pub(super) const TORQUE_COLUMNS: &str = "family,size,method,min,max,condition,source,basis,note";

impl Torque {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        let max = row.number("max")?;
        let min = row.optional_number("min")?;
        if min.is_some_and(|min| min > max) {
            return Err(row.wrong("max", "a number not below min"));
        }
        Ok(Self {
            family: row.text("family")?,
            size: row.optional_text("size").filter(|size| size != "all"),
            method: row.name("method")?,
            min,
            max,
            condition: row.text("condition")?,
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}
