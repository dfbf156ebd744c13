//! The tables: hoses, hose types, ends, flanges, ratings, torques, look-alike dangers, failure
//! causes, cautions, fluids and rules. Data are files under `data/`, embedded; each row carries its
//! source and basis. A new row needs no code.

mod care;
mod edition;
mod end;
mod family;
mod flange;
mod fluid;
mod hose;
mod hose_type;
mod knowledge;
mod load;
mod lookalike;
mod lookup;
mod mark;
mod meetings;
mod names;
mod provenance;
mod rating;
mod reading;
mod rule;
mod table;
mod tables;
mod threads_meet;
mod twin;

pub use care::{Demand, Sign, SignGroup, Stake, StakeWeight, StandsUntil};
pub use edition::Edition;
pub use end::{Cone, EndRow, Seal};
pub use family::{EndKind, Family, FamilyPart, Shoulder};
pub use flange::Flange;
pub use fluid::{FluidClass, FluidGroup, FluidRating, FluidRow, OutOfScope};
pub use hose::{ColumnBases, HoseRow, Reinforcement};
pub use hose_type::{HoseType, Interchange, TypeBases};
pub use knowledge::{Caution, CrimpFact, FailureCause, MarkingRule, Step};
pub use lookalike::{Danger, FemalePart, Lookalike, Mechanism};
pub use mark::{RowMark, RowStands};
pub use names::{UnknownName, nearest};
pub use provenance::{Basis, Provenance};
pub use rating::{Connection, EndRating, Torque, TorqueMethod};
pub use reading::{Direction, Effort, OriginShare, PartKind, Reach, ReadingTerm, SizeStep};
pub use rule::{
    Age, AgeOf, CutTolerance, LengthPractice, LengthTolerance, Limit, OilSpeed, Practice, Range,
    TurnTolerance,
};
pub use table::CatalogueError;
pub use tables::Table;
pub(crate) use threads_meet::TAPER_ON_DIAMETER;
pub use threads_meet::{ThreadFit, ThreadRule};

use crate::find::Models;
use names::Names;
use schemars::JsonSchema;
use serde::Serialize;
use std::collections::HashMap;
use std::sync::OnceLock;
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
    /// The size rows that twins share, each under the twin's own name.
    pub twins: Vec<HoseRow>,
    /// Types whose working pressures changed while their mark did not. [`Catalogue::newer_edition`] finds one.
    pub editions: Vec<Edition>,
    /// Threaded and plain ends, one row for each size of each family.
    pub ends: Vec<EndRow>,
    /// Four-bolt flanges.
    pub flanges: Vec<Flange>,
    /// Families of ends and flanges and what their halves look like.
    pub families: Vec<Family>,
    /// Ratings of ends as hose ends. [`Catalogue::rating`] finds one for any end.
    pub ratings: Vec<EndRating>,
    /// Assembly torques and turns.
    pub torques: Vec<Torque>,
    /// Pairs that start on each other and must not: those of the table, then those that the threads of
    /// the ends show. Of a pair in both the table's word holds.
    pub lookalikes: Vec<Lookalike>,
    /// Causes of failure.
    pub causes: Vec<FailureCause>,
    /// What is seen at inspections, and what it does.
    pub signs: Vec<Sign>,
    /// What a failure puts at risk, and how bad that is.
    pub stakes: Vec<StakeWeight>,
    /// Cautions by the step they belong to.
    pub cautions: Vec<Caution>,
    /// Facts of crimping.
    pub crimp_facts: Vec<CrimpFact>,
    /// How hoses are marked.
    pub marking_rules: Vec<MarkingRule>,
    /// Classes of fluid.
    pub fluid_classes: Vec<FluidClass>,
    /// Fluid against tube material.
    pub fluids: Vec<FluidRow>,
    /// Fluids and lines that are refused.
    pub out_of_scope: Vec<OutOfScope>,
    /// Tolerances of overall length. [`Catalogue::length_tolerance`] finds the one that holds.
    pub length_tolerances: Vec<LengthTolerance>,
    /// Tolerances of the turn between elbows.
    pub turn_tolerances: Vec<TurnTolerance>,
    /// Squareness of the cut.
    pub cut_tolerances: Vec<CutTolerance>,
    /// Speeds of oil.
    pub oil_speeds: Vec<OilSpeed>,
    /// Ages.
    pub ages: Vec<Age>,
    /// Rules with one value. [`Catalogue::limit`] finds one by its key.
    pub limits: Vec<Limit>,
    /// How readings leave the band of a new part.
    pub reading_terms: Vec<ReadingTerm>,
    /// What readings cost.
    pub efforts: Vec<Effort>,
    /// How sizes of hose and end go together, from the same size on.
    pub size_steps: Vec<SizeStep>,
    /// Where families of ends are met.
    pub origins: Vec<OriginShare>,
    /// What the labels (`S03`) in remarks stand for.
    pub sources: HashMap<String, String>,
    /// The version: a hash of all tables.
    pub version: String,
    digests: mark::Digests,
    names: Names,
    /// What `find` works out of the tables, once.
    pub(crate) finding: OnceLock<Models>,
}
