//! What is asked: where the ports are in every pose, and what the hose can stand.

use crate::quantity::Millimetres;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A hose between two ports of a machine that may move.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct Layout {
    /// The near port as the hose is fitted. Poses that do not name theirs have this one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub a: Option<Port>,
    /// The far port as the hose is fitted.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub b: Option<Port>,
    /// Length of hose that is free to bend, between the rigid ends. Without it the shortest is sought.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub free_length_mm: Option<Millimetres>,
    /// Outside diameter of the hose.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hose_od_mm: Option<Millimetres>,
    /// Least radius at the inside of the bend.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub min_bend_radius_mm: Option<Millimetres>,
    /// The machine's other poses, in the order of its travel.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub poses: Vec<Pose>,
    /// How much the length may change under pressure, least and greatest, in percent. 0 unless given.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub length_change_pct: Option<[f64; 2]>,
}

/// Where both ports are at one moment.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct Pose {
    /// The near port; the fitted one unless given.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub a: Option<Port>,
    /// The far port; the fitted one unless given.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub b: Option<Port>,
}

/// A port: where, and which way the hose leaves it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Port {
    /// Position.
    pub position_mm: [Millimetres; 3],
    /// The way the hose leaves; of any length but none.
    pub direction: [f64; 3],
    /// A mark on the port, across the direction, that turns with it. Without it the port is taken to turn
    /// as little as possible from the first pose.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub up: Option<[f64; 3]>,
    /// Straight and stiff length from the port to where the hose can bend; none unless given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rigid_mm: Option<Millimetres>,
}
