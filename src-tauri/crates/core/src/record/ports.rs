//! What was last said at a place of the ports the hose runs between and of the oil in the line, so that the next
//! job there need not measure them again.

use crate::quantity::Millimetres;
use crate::route::field::{Facing, FieldEnd, FieldPose};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The ports of a place; each value as in [`crate::route::field::FieldQuestion`].
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Ports {
    /// How they face each other.
    pub facing: Facing,
    /// The machine's closed pose.
    pub closed: FieldPose,
    /// Its open pose.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub open: Option<FieldPose>,
    /// Neither port moves.
    #[serde(default)]
    pub fixed: bool,
    /// End A.
    #[serde(default)]
    pub a: FieldEnd,
    /// End B.
    #[serde(default)]
    pub b: FieldEnd,
}

/// What flow and surge need of a line beside its service.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(default)]
pub struct OilLine {
    /// Length of the line, where it is more than the hose.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub length_mm: Option<Millimetres>,
    /// Elbows of 45 degrees beside those of the ends.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub elbows_45: Option<u32>,
    /// Elbows of 90 degrees beside those of the ends.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub elbows_90: Option<u32>,
    /// Viscosity grade of the oil (ISO 3448).
    #[serde(skip_serializing_if = "Option::is_none")]
    pub iso_vg: Option<f64>,
    /// In how many milliseconds a valve shuts.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub closing_ms: Option<f64>,
}
