//! What the readings say it was.

use super::contradiction::Contradiction;
use super::stray::Stray;
use crate::catalogue::{Danger, FemalePart, Mechanism, ThreadFit};
use crate::quantity::{Bar, Dn};
use crate::spec::{Gender, Role};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Ranked candidates for the hose and each end. The probabilities of one list and its `unknown`
/// add to one.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Found {
    /// Hose types and sizes, likeliest first.
    pub hose: Vec<HoseCandidate>,
    /// Each end that was read.
    pub ends: Vec<EndFound>,
    /// Probability that the hose is none of the catalogue's.
    pub unknown: UnknownHose,
    /// Whether each part is settled.
    pub settled: Settled,
    /// Whether each part is known well enough to build: settled, or whatever is still possible asks the
    /// same of a new hose.
    #[serde(default)]
    pub enough: Settled,
    /// Whether the families of the two ends go so badly together that one of them may have been changed
    /// since the machine was new.
    #[serde(default)]
    pub odd_ends: bool,
    /// What to read next: the best reading of each part that is open, the part in the hand before one
    /// nobody has touched where they are comparable, then the second best of each, and so on.
    pub next: Vec<NextReading>,
    /// Where the print and the readings of the hose say different things.
    #[serde(default)]
    pub contradictions: Vec<Contradiction>,
    /// Readings that go with the likeliest answer of their part only as strays; such a part is not settled.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[ts(optional, as = "Option<Vec<Stray>>")]
    pub strays: Vec<Stray>,
    /// Working pressure printed on the hose, as far as its print can be read.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub printed_pressure_bar: Option<Bar>,
    /// Year of manufacture printed on the hose; none where it can be read in two ways.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub printed_year: Option<u16>,
}

/// The probability that a hose is none of the catalogue's.
#[derive(Debug, Clone, Copy, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct UnknownHose {
    /// Between 0 and 1.
    pub hose: f64,
}

/// A hose class: the rows that no reading can tell apart, named by the first of them.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct HoseCandidate {
    /// Standard.
    pub standard: String,
    /// Type.
    #[serde(rename = "type")]
    pub kind: String,
    /// Nominal diameter.
    pub dn: Dn,
    /// Dash size.
    pub dash: Option<u16>,
    /// Between 0 and 1.
    pub probability: f64,
    /// The rest of the class.
    #[serde(default)]
    pub also: Vec<HoseName>,
}

/// A hose row by name.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct HoseName {
    /// Standard.
    pub standard: String,
    /// Type.
    #[serde(rename = "type")]
    pub kind: String,
    /// Nominal diameter.
    pub dn: Dn,
    /// Dash size.
    pub dash: Option<u16>,
}

/// What one end can be.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct EndFound {
    /// Which end.
    pub role: Role,
    /// Likeliest first.
    pub candidates: Vec<EndCandidate>,
    /// Ends that would screw together with a candidate and must not, while still undecided.
    pub lookalikes: Vec<LookalikeFound>,
    /// Probability that the end is none of the catalogue's.
    pub unknown: f64,
    /// Probability that the end was changed for another family since the machine was new.
    #[serde(default)]
    pub changed: f64,
    /// What the machine's half says, where it was read.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mate: Option<MateFound>,
}

/// What the machine's half is by its own readings, and whether it belongs to the end.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct MateFound {
    /// Probability that it is the other half of the end's own row.
    pub belongs: f64,
    /// Whether it rather belongs to another end.
    #[serde(default)]
    pub is_another: bool,
    /// Likeliest family by its own readings.
    pub family: String,
    /// Likeliest size.
    pub size: String,
    /// Which half that is.
    pub gender: Option<Gender>,
    /// Probability of that, by its own readings.
    pub probability: f64,
}

/// An end class: the rows that no reading can tell apart, named by the first of them.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct EndCandidate {
    /// Family.
    pub family: String,
    /// Standard.
    pub standard: String,
    /// Size.
    pub size: String,
    /// Dash size.
    pub dash: Option<i16>,
    /// Thread as written.
    pub thread: Option<String>,
    /// Which half; none for flanges.
    pub gender: Option<Gender>,
    /// Between 0 and 1.
    pub probability: f64,
    /// The rest of the class.
    #[serde(default)]
    pub also: Vec<EndName>,
}

/// An end by name.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct EndName {
    /// Family.
    pub family: String,
    /// Size.
    pub size: String,
}

/// A dangerous partner that is still possible.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct LookalikeFound {
    /// Family.
    pub family: String,
    /// Size.
    pub size: String,
    /// Which half starts on which, and what happens, from the table; empty until the edge writes it where
    /// the pair was worked out.
    pub danger: String,
    /// The reading that parts the two, likewise.
    #[serde(default)]
    pub separates: String,
    /// The pair in codes.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub pair: Option<PairFound>,
}

/// A dangerous pair: which half starts on which, what happens and what parts the two.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct PairFound {
    /// The end with the nut, port, body, socket or clamp halves.
    pub female: EndName,
    /// What its half is.
    pub female_part: FemalePart,
    /// The end whose male, tube, nose or flange head it starts on.
    pub male: EndName,
    /// What happens.
    pub mechanism: Mechanism,
    /// How grave that is.
    pub grade: Danger,
    /// Keys of the readings that part the two.
    pub separating_readings: Vec<String>,
    /// How the threads meet, where the pair was worked out of them.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub fit: Option<ThreadFit>,
}

/// Whether one class holds 99 % and no dangerous partner holds 0.1 % or more.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Settled {
    /// The hose.
    pub hose: bool,
    /// End A.
    #[serde(rename = "A")]
    pub a: bool,
    /// End B.
    #[serde(rename = "B")]
    pub b: bool,
}

impl Settled {
    /// Whether that end is settled.
    pub fn end(self, role: Role) -> bool {
        match role {
            Role::A => self.a,
            Role::B => self.b,
        }
    }
}

/// What a reading is taken of.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema, TS)]
pub enum Part {
    /// The hose.
    #[default]
    #[serde(rename = "hose")]
    Hose,
    /// End A.
    A,
    /// End B.
    B,
}

impl From<Role> for Part {
    fn from(role: Role) -> Self {
        match role {
            Role::A => Self::A,
            Role::B => Self::B,
        }
    }
}

/// A reading worth taking.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct NextReading {
    /// What it is taken of.
    pub of: Part,
    /// The key of the reading, such as `seat_included_angle_deg`.
    pub reading: String,
    /// Expected gain of information.
    pub gain_bits: f64,
    /// What it costs to take, in readings by caliper of a part in the hand.
    #[serde(default)]
    pub effort: f64,
    /// Where the jaws go, in words; empty until the edge writes it.
    #[serde(default)]
    pub how: String,
}
