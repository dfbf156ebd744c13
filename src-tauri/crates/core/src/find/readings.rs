//! What was read off a failed hose and off the machine's half.

use super::Part;
use crate::catalogue::{EndKind, Reach, Reinforcement, Seal, Shoulder};
use crate::quantity::{Degrees, Millimetres, Reading};
use crate::spec::{Cover, Gender, Role};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// All readings of one job. Every key is optional: a missing reading says nothing.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct Readings {
    /// Readings of the hose.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hose: Option<HoseReadings>,
    /// Readings of the ends.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub ends: Vec<EndReadings>,
    /// The same readings taken on the machine's half of each end.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub mates: Vec<EndReadings>,
    /// From sealing point to sealing point.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub overall_length_mm: Option<Reading>,
    /// Standard error of the caliper; 0.1 mm unless given.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub caliper_error_mm: Option<Millimetres>,
    /// Where the machine was made: a hint, never a proof.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub origin: Option<Origin>,
    /// How far the hose is taken apart, and so what can be read; everything, unless it is given.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub reach: Option<Reach>,
    /// Readings that were tried and can not be had.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[ts(optional, as = "Option<Vec<CannotTell>>")]
    pub cannot_tell: Vec<CannotTell>,
}

/// A reading that can not be had: rust, a broken part, no gauge.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct CannotTell {
    /// What it would be taken of.
    pub of: Part,
    /// Its key, such as `seal`.
    pub reading: String,
}

/// Where a machine was made.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Origin {
    /// North America.
    NorthAmerica,
    /// Europe.
    Europe,
    /// East Asia.
    EastAsia,
    /// Not known.
    Unknown,
}

/// Shape of a seat as it is seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum SeatShape {
    /// A cone that stands proud.
    Convex,
    /// A hollow cone.
    Concave,
    /// No cone: a flat face, or the plain end of a thread or tube.
    Flat,
}

/// What can be read off a hose that is cut back from the squeezed part.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct HoseReadings {
    /// Bore.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub id_mm: Option<Reading>,
    /// Over the cover.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cover_od_mm: Option<Reading>,
    /// Over the reinforcement.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub reinforcement_od_mm: Option<Reading>,
    /// What carries the pressure.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub reinforcement: Option<Reinforcement>,
    /// Layers of it, counted.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub layers: Option<u8>,
    /// What the cover is.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cover: Option<Cover>,
    /// What can still be read on the cover; `?` or `.` for one worn letter, `*` or `...` for any number.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub print: Option<String>,
}

/// What can be read off one half of a connection.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct EndReadings {
    /// Which end.
    pub role: Role,
    /// What it is at a glance: a nut, a male thread, a plain tube and so on.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub kind: Option<EndKind>,
    /// Which half was measured.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gender: Option<Gender>,
    /// Outside diameter of a male, inside diameter of a female.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub thread_diameter_mm: Option<Reading>,
    /// Threads an inch by the gauge.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tpi: Option<f64>,
    /// Pitch by the gauge.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pitch_mm: Option<Reading>,
    /// Whether the thread is taper.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub taper: Option<bool>,
    /// Flank angle by the gauge.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub flank_angle_deg: Option<Degrees>,
    /// A second diameter, read some threads nearer the body.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub second_thread_diameter_mm: Option<Reading>,
    /// How many threads apart the two diameters were read.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub threads_apart: Option<f64>,
    /// What lies at a stud's shoulder or a port's mouth.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub shoulder: Option<Shoulder>,
    /// What seals.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seal: Option<Seal>,
    /// Included angle of the seat by the gauge (37 degree flare = 74).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seat_included_angle_deg: Option<Degrees>,
    /// Shape of the seat of the part that was measured.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cone: Option<SeatShape>,
    /// Outside diameter of the tube, or the bore at the root of the cone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tube_od_mm: Option<Reading>,
    /// Through bore of the male.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub male_bore_mm: Option<Reading>,
    /// Across the flats of the swivel nut.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub swivel_hex_mm: Option<Reading>,
    /// Diameter of a flange head.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub head_od_mm: Option<Reading>,
    /// Thickness of a flange head.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub head_thickness_mm: Option<Reading>,
    /// Bolt spacing, long side, centre to centre.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bolt_long_mm: Option<Reading>,
    /// Bolt spacing, short side.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bolt_short_mm: Option<Reading>,
}
