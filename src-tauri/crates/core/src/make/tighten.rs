//! How each end is tightened by the tables. The maker's figure comes first.

use crate::catalogue::{Basis, Catalogue, TorqueMethod};
use crate::spec::{EndSpec, Role};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// Every figure of the tables for one end. They differ by material and lubrication and are never
/// mixed; the maker's figure comes first.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Tighten {
    /// Which end.
    pub role: Role,
    /// All figures, each with its condition.
    pub values: Vec<TorqueValue>,
}

/// One figure.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct TorqueValue {
    /// What the figure is.
    pub method: TorqueMethod,
    /// Lower value.
    pub min: Option<f64>,
    /// Upper value.
    pub max: f64,
    /// Unit of both.
    pub unit: &'static str,
    /// Material, lubrication, screw.
    pub condition: String,
    /// Where it stands.
    pub source: String,
    /// How sure that is.
    pub basis: Basis,
    /// Remarks.
    pub note: String,
}

/// The figures for that end.
pub(super) fn tighten(catalogue: &Catalogue, end: &EndSpec) -> Tighten {
    let (family, size) = match catalogue.connection(&end.family, &end.size) {
        Ok(connection) => (connection.family(), connection.size()),
        Err(_) => (end.family.as_str(), end.size.as_str()),
    };
    let rows = catalogue.torques.iter().filter(|row| row.family == family && row.size.as_deref().is_none_or(|of| of == size));
    let values = rows.map(|row| TorqueValue {
        method: row.method,
        min: row.min,
        max: row.max,
        unit: unit(row.method),
        condition: row.condition.clone(),
        source: row.provenance.source.clone(),
        basis: row.provenance.basis,
        note: row.note.clone(),
    });
    Tighten { role: end.role, values: values.collect() }
}

fn unit(method: TorqueMethod) -> &'static str {
    match method {
        TorqueMethod::Torque => "Nm",
        TorqueMethod::FlatsFromFingerTight => "flats of 60 deg",
        TorqueMethod::Angle => "deg",
    }
}
