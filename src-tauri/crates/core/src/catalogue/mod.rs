//! The tables: hoses, hose types, ends, flanges, ratings, torques, look-alike dangers, failure
//! causes, cautions, fluids and rules. Data are files under `data/`, embedded; each row carries its
//! source and basis. A new row needs no code.

mod end;
mod hose;
mod knowledge;
mod load;
mod lookup;
mod provenance;
mod table;
mod tables;

pub use end::{Cone, Connection, EndRating, EndRow, Flange, Lookalike, Seal, Torque, TorqueMethod};
pub use hose::{ColumnBases, HoseRow, HoseType, Interchange, Reinforcement, TypeBases};
pub use knowledge::{Caution, FailureCause, FluidRating, FluidRow, Rule, Step};
pub use lookup::UnknownName;
pub use provenance::{Basis, Provenance};
pub use table::CatalogueError;
pub use tables::Table;

use schemars::JsonSchema;
use serde::Serialize;
use std::collections::HashMap;
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
    /// The size rows that twins share, each under the twin's own name. [`Catalogue::hose`] finds them.
    pub twins: Vec<HoseRow>,
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
    /// What the labels (`S03`) in remarks stand for.
    pub sources: HashMap<String, String>,
    /// The version: a hash of all tables.
    pub version: String,
}
