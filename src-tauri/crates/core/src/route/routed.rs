//! What is answered: how tight the hose bends, pose by pose.

use crate::check::Verdict;
use crate::quantity::{Degrees, Millimetres};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// How a hose lies between its ports. An estimate: a hose without weight that bends equally easily all ways.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Routed {
    /// Each pose, the fitted one first.
    pub poses: Vec<Bend>,
    /// Smallest radius of the centre line in any pose; none where the hose is straight in all.
    pub min_radius_mm: Option<Millimetres>,
    /// The same at the inside of the bend; none also while the outside diameter is not known.
    pub min_inside_radius_mm: Option<Millimetres>,
    /// Free length that this is for.
    pub free_length_mm: Millimetres,
    /// The shortest free length that keeps the least bend radius in every pose, where it was sought. Not every
    /// longer hose keeps it.
    pub shortest_free_length_mm: Option<Millimetres>,
    /// Least and greatest twist over the poses.
    pub twist_range_deg: [Degrees; 2],
    /// How far clockwise B's `up` stands of A's in the first pose, seen along the hose from A, 0 to 359; none while
    /// either port has no `up` there. Two elbows are made with this turn.
    pub turn_deg: Option<Degrees>,
    /// May it be routed so.
    pub verdict: Verdict,
    /// What keeps it from a pass, gravest first.
    pub reasons: Vec<Reason>,
    /// Always true: hose stiffness, weight, set and clamps are not in the model.
    pub estimate: bool,
}

/// How a hose lies in one pose, at the length within its change under pressure where it bends most.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Bend {
    /// Smallest radius of the centre line; none where the hose is straight.
    pub min_radius_mm: Option<Millimetres>,
    /// The same at the inside of the bend; none also while the outside diameter is not known.
    pub min_inside_radius_mm: Option<Millimetres>,
    /// Where that is, along the free hose from the near port's end.
    pub at_mm: Option<Millimetres>,
    /// Half the integral of the curvature squared.
    pub bend_energy_per_mm: f64,
    /// Twist against the first pose at the fitted length: how far the far end has turned clockwise, seen along the
    /// hose from the near port, against what the hose carries over from the near end.
    pub twist_deg: Degrees,
    /// How exact the shape is, as a part of the length and of the greatest moment.
    pub residual: f64,
    /// Change of the length at which this shape is.
    pub length_change_pct: f64,
    /// Another stable shape has nearly the same energy (within 5 %): the hose may lie in either.
    pub near_rival: bool,
    /// Energy of that other shape.
    pub rival_energy_per_mm: Option<f64>,
    /// Smallest radius of that other shape.
    pub rival_min_radius_mm: Option<Millimetres>,
    /// Course of the centre line between the rigid ends.
    pub points_mm: Vec<[f64; 3]>,
}

/// What keeps a routing from a pass.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Reason {
    /// The inside radius is below the least bend radius.
    BelowLimit,
    /// The inside radius keeps the limit by less than an estimate needs.
    NearLimit,
    /// The hose may fall into another shape, and that one is too tight.
    RivalTooTight,
    /// The machine's travel twists the hose.
    Twist,
    /// No least bend radius was given.
    NoLimit,
    /// No outside diameter was given, so the inside radius is not known.
    NoDiameter,
}

impl Reason {
    /// How grave it is.
    pub fn verdict(self) -> Verdict {
        match self {
            Self::BelowLimit => Verdict::Stop,
            _ => Verdict::Caution,
        }
    }
}
