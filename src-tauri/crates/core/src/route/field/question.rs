//! What a technician can say of a routing: how the ports face each other and a few lengths, no vectors.

use crate::quantity::{Degrees, Millimetres};
use crate::spec::Spec;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// How the ports face each other. End A is always left in the drawing: x runs to the right, y up, z towards the
/// viewer, and A's port is the origin.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Facing {
    /// Both leave the same way side by side: up, B to the right of A.
    U,
    /// Towards each other: A leaves to the right, B to the left.
    Facing,
    /// Across: A leaves to the right, B downwards, so that the hose comes up to it.
    RightAngle,
    /// Towards each other on two lines, `rise_mm` apart: the hose makes an S.
    Offset,
    /// Away from each other: A leaves to the left, B to the right, and the hose goes round.
    Away,
    /// Position and direction of both as they are drawn.
    Free,
}

/// A port where it was drawn.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct DrawnPort {
    /// Where: to the right, up, towards the viewer.
    pub position_mm: [Millimetres; 3],
    /// The way the port's face looks; of any length but none.
    pub direction: [f64; 3],
}

/// The ports in one pose of the machine. A is the origin but where both are `free`.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct FieldPose {
    /// How far B is to the right of A.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub gap_mm: Option<Millimetres>,
    /// How far B is above A in the drawing; 0 unless given, but for `right-angle` and `offset`, which need it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rise_mm: Option<Millimetres>,
    /// How far B stands out of the plane of the drawing, towards the viewer; 0 unless given.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub offset_mm: Option<Millimetres>,
    /// How far B's port is swung in the plane of the drawing from how it faces, anticlockwise; 0 unless given.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub angle_deg: Option<Degrees>,
    /// How far B's port is turned about its own axis, clockwise seen from outside onto its face; 0 unless given.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub roll_deg: Option<Degrees>,
    /// A's port, where the ports are `free`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub a: Option<DrawnPort>,
    /// B's port, where the ports are `free`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub b: Option<DrawnPort>,
}

/// Where an elbow on a port points, in the closed pose.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Points {
    /// Towards the other port; where the ports look straight at or away from each other, up.
    #[default]
    Towards,
    /// Away from the other port; where the ports look straight at or away from each other, down.
    Away,
    /// Out of the drawing, towards the viewer.
    Front,
    /// Into the drawing.
    Back,
}

/// What of an end the spec does not say.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct FieldEnd {
    /// Length that can not bend: along the hose's axis from the sealing point to the end of the ferrule. A tape
    /// on the old hose gives it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rigid_mm: Option<Millimetres>,
    /// Where an elbow points.
    pub points: Points,
}

/// A routing as it can be said in the field.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct FieldQuestion {
    /// The hose with its ends' forms and drops, overall length and turn. Without a length the recommended one
    /// is taken.
    #[serde(default)]
    pub spec: Spec,
    /// Outside diameter as measured; stands over the table's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hose_od_mm: Option<Millimetres>,
    /// How the length changes under pressure, least and greatest in percent, from the user's supplier; stands
    /// over the table's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub length_change_pct: Option<[f64; 2]>,
    /// How the ports face each other.
    pub facing: Facing,
    /// The machine's closed pose, in which the hose is fitted.
    pub closed: FieldPose,
    /// Its open pose.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub open: Option<FieldPose>,
    /// Neither port moves. Without an open pose and without this, the travel is not known.
    #[serde(default)]
    pub fixed: bool,
    /// Only how the hose lies at the length that is given: no other length and no cure is sought, as while a port
    /// is being dragged.
    #[serde(default)]
    pub shape_only: bool,
    /// End A, beside what the spec says.
    #[serde(default)]
    pub a: FieldEnd,
    /// End B, beside what the spec says.
    #[serde(default)]
    pub b: FieldEnd,
}
