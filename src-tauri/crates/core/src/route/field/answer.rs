//! What is answered to a routing as it was said.

use super::question::Points;
use crate::catalogue::Provenance;
use crate::check::{Finding, Verdict};
use crate::quantity::{Degrees, Millimetres};
use crate::route::{Layout, Routed};
use crate::spec::Role;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// A length that the routing rests on, with where it comes from.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct HoseFigure {
    /// The length; none is not known.
    pub value: Option<Millimetres>,
    /// Source and basis.
    #[serde(flatten)]
    #[ts(flatten)]
    pub provenance: Provenance,
}

/// How the length changes under pressure, with where that comes from.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct LengthChange {
    /// Least and greatest, in percent.
    pub value: [f64; 2],
    /// Source and basis.
    #[serde(flatten)]
    #[ts(flatten)]
    pub provenance: Provenance,
}

/// How a hose lies between ports as they were said, whether it may, and what would cure it.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct FieldRouted {
    /// The gravest finding.
    pub verdict: Verdict,
    /// Gravest first.
    pub findings: Vec<Finding>,
    /// The ports as `route` takes them, from the closed pose to the open one.
    pub layout: Layout,
    /// How the hose lies, pose by pose; none where it does not reach or no length would do.
    pub routed: Option<Routed>,
    /// The rigid ends in every pose, in the same order: drawn even where the hose does not reach.
    pub poses: Vec<DrawnPose>,
    /// The pose that bends tightest, by its number.
    pub worst_pose: Option<usize>,
    /// Outside diameter reckoned with.
    pub hose_od_mm: HoseFigure,
    /// Least radius at the inside of the bend.
    pub min_bend_radius_mm: HoseFigure,
    /// Change of the length under pressure reckoned with, least and greatest in percent.
    pub length_change_pct: LengthChange,
    /// Overall length that this is for: the given one, or the recommended one.
    pub overall_length_mm: Option<Millimetres>,
    /// The shortest overall length that keeps the least radius in every pose and change of length, and the
    /// straight length behind each ferrule.
    pub shortest_overall_length_mm: Option<Millimetres>,
    /// The length to make: see [`Recommended`].
    pub recommended: Option<Recommended>,
    /// The turn between two bent ends that these ports ask for, and that the hose is to be made with.
    pub turn_deg: Option<Degrees>,
    /// Single changes that would better the verdict, each routed over the whole travel; simplest first.
    pub cures: Vec<Cure>,
}

/// The length to make. It keeps the least radius by a tenth more at its shortest: made at the short end of the
/// length tolerance and shortened by pressure; rounded up to 10 mm, and routed again.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Recommended {
    /// Overall length.
    pub overall_length_mm: Millimetres,
    /// How much the length may come out short, from the tolerance of overall lengths.
    pub short_by_mm: Millimetres,
    /// Tightest radius at the inside of the bend with that length.
    pub min_inside_radius_mm: Option<Millimetres>,
    /// Where the rule comes from.
    #[serde(flatten)]
    #[ts(flatten)]
    pub provenance: Provenance,
}

/// Both ends in one pose.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct DrawnPose {
    /// Share of the travel: 0 closed, 1 open.
    pub travel: f64,
    /// End A.
    pub a: DrawnEnd,
    /// End B.
    pub b: DrawnEnd,
}

/// A rigid end as it is drawn.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct DrawnEnd {
    /// The way the port's face looks, of length 1.
    pub direction: [f64; 3],
    /// The end's axis from the sealing point to the end of the ferrule; an elbow has its corner between.
    pub axis_mm: Vec<[f64; 3]>,
}

/// One change that would better the verdict, routed before it is offered.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Cure {
    /// What is changed.
    pub change: Change,
    /// What it is, in words; empty until the edge writes it.
    pub what: String,
    /// At which end; none where the length is changed.
    pub end: Option<Role>,
    /// The end's form with the change.
    pub form: Option<String>,
    /// Where its elbow points.
    pub points: Option<Points>,
    /// The drop it was routed with.
    pub drop_mm: Option<Millimetres>,
    /// The rigid length it was routed with.
    pub rigid_mm: Option<Millimetres>,
    /// Drop and rigid length are in plain proportion to the hose and have to be measured on the real end.
    pub assumed: bool,
    /// The overall length that goes with it.
    pub overall_length_mm: Millimetres,
    /// The turn between two bent ends that goes with it.
    pub turn_deg: Option<Degrees>,
    /// Verdict of the whole with it.
    pub verdict: Verdict,
    /// Tightest radius at the inside of the bend with it.
    pub min_inside_radius_mm: Option<Millimetres>,
}

/// What a cure changes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Change {
    /// The overall length.
    Length,
    /// Where an elbow points.
    Exit,
    /// The form of an end.
    Form,
}
