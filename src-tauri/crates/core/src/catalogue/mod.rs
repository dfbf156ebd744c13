//! The tables: hoses, hose types, ends, flanges, ratings, torques, look-alike dangers, failure
//! causes, cautions, fluids and rules. Data are files under `data/`, embedded; each row carries its
//! source and basis. A new row needs no code.

mod end;
mod hose;
mod knowledge;
mod provenance;

pub use end::{Cone, EndRating, EndRow, Flange, Lookalike, Seal, Torque, TorqueMethod};
pub use hose::{HoseRow, HoseType, Interchange, Reinforcement};
pub use knowledge::{Caution, FailureCause, FluidRating, FluidRow, Rule, Step};
pub use provenance::{Basis, Provenance};

use crate::quantity::Dn;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// Smallest and largest value of a new part, in the unit of the field's name.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema, TS)]
pub struct Band {
    /// Lower limit.
    pub min: f64,
    /// Upper limit.
    pub max: f64,
}

/// All tables, read and joined.
#[derive(Debug)]
pub struct Catalogue {
    /// One row for each size of each hose type that has its own dimensions.
    pub hoses: Vec<HoseRow>,
    /// Hose types; twins of another standard name the type whose sizes they share.
    pub types: Vec<HoseType>,
    /// Threaded and plain ends, one row for each size of each family.
    pub ends: Vec<EndRow>,
    /// Four-bolt flanges.
    pub flanges: Vec<Flange>,
    /// Ratings of ends as hose ends.
    pub ratings: Vec<EndRating>,
    /// Assembly torques and turns.
    pub torques: Vec<Torque>,
    /// Pairs that start on each other and must not.
    pub lookalikes: Vec<Lookalike>,
    /// Causes of failure.
    pub causes: Vec<FailureCause>,
    /// Cautions by the step they belong to.
    pub cautions: Vec<Caution>,
    /// Fluid against tube material.
    pub fluids: Vec<FluidRow>,
    /// Rules of length, age, speed and the like.
    pub rules: Vec<Rule>,
    /// The version: a hash of all tables.
    pub version: String,
}

impl Catalogue {
    /// The type of that standard and name, by any name people use for them.
    pub fn hose_type(&self, standard: &str, kind: &str) -> Option<&HoseType> {
        self.types.iter().find(|t| t.standard == standard && t.kind == kind)
    }

    /// The size row of a type; twins find the row of the type whose sizes they share.
    pub fn hose(&self, standard: &str, kind: &str, dn: Dn) -> Option<&HoseRow> {
        self.hoses.iter().find(|h| h.standard == standard && h.kind == kind && h.dn == dn)
    }
}
