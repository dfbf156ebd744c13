//! What a hose assembly is: hose, two ends, length and turn, and the service it does.

use crate::quantity::{Bar, Celsius, Degrees, Dn, LitresPerMinute, Millimetres};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Which end of the assembly. End A is the one the turn is sighted from.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS,
)]
pub enum Role {
    /// The first end.
    A,
    /// The other end.
    B,
}

/// Which half of a connection a part is, by its thread.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS,
)]
#[serde(rename_all = "kebab-case")]
pub enum Gender {
    /// Thread on the outside.
    Male,
    /// Thread on the inside.
    Female,
}

/// A hose by its standard's names, as in the catalogue.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct HoseRef {
    /// The standard, such as `EN 853`.
    pub standard: String,
    /// The type within it, such as `2SN`.
    #[serde(rename = "type")]
    pub kind: String,
    /// Nominal diameter.
    pub dn: Dn,
    /// The user's own minimum bend radius at the inside of the bend, from their supplier; stands over the table's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub min_bend_radius_mm: Option<Millimetres>,
    /// The user's own lowest absolute pressure inside, in kPa, from their supplier; stands over the table's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub vacuum_kpa_abs: Option<f64>,
}

impl HoseRef {
    /// A hose by its names, with no figures of the user's own.
    pub fn named(standard: impl Into<String>, kind: impl Into<String>, dn: Dn) -> Self {
        let (standard, kind) = (standard.into(), kind.into());
        Self { standard, kind, dn, min_bend_radius_mm: None, vacuum_kpa_abs: None }
    }
}

/// One end of an assembly.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct EndSpec {
    /// A or B.
    pub role: Role,
    /// Family by the catalogue's name, such as `JIC 37 flare` or `flange 62`.
    pub family: String,
    /// Size within the family, such as `-10`, `L15`, `3/4`.
    pub size: String,
    /// Which half; none for flanges.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gender: Option<Gender>,
    /// `straight`, `elbow45`, `elbow90`, `compact90`, `standpipe`, `banjo` and the like.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub form: Option<String>,
    /// Drop of an elbow.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub drop_mm: Option<Millimetres>,
    /// From sealing point to hose stop: the supplier's or measured, never from a table of ours.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cutoff_mm: Option<Millimetres>,
    /// The user's own rating, from their supplier; stands over the table's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rating_bar: Option<Bar>,
}

/// A part between hose end and machine, with its own rating.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Adapter {
    /// What it is, in words.
    pub name: String,
    /// The supplier's rating; unknown stops.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rating_bar: Option<Bar>,
    /// Between which end and what of the machine; none where nobody said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub between: Option<Between>,
}

/// Where an adapter sits: the machine sees its machine side and not the hose end.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(rename = "AdapterBetween")]
pub struct Between {
    /// At which end.
    pub role: Role,
    /// The side that the hose end screws on.
    pub hose_side: Side,
    /// The side that the machine sees.
    pub machine_side: Side,
}

/// One side of an adapter.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(rename = "AdapterSide")]
pub struct Side {
    /// Family by the tables' name.
    pub family: String,
    /// Size within the family.
    pub size: String,
    /// Which half; none for flanges.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gender: Option<Gender>,
}

impl Side {
    /// Whether it is that end's very connection.
    pub fn is_like(&self, end: &EndSpec) -> bool {
        self.family == end.family && self.size == end.size && self.gender == end.gender
    }

    /// Whether that end screws into it: the same connection, the other half. A side or end whose half nobody wrote
    /// down takes nothing, but for flanges, which have none.
    pub fn takes(&self, end: &EndSpec) -> bool {
        let halves = match (self.gender, end.gender) {
            (Some(own), Some(other)) => own != other,
            (None, None) => self.family.starts_with("flange"),
            _ => false,
        };
        self.family == end.family && self.size == end.size && halves
    }
}

/// A hose assembly, as far as it is known.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Spec {
    /// The hose.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hose: Option<HoseRef>,
    /// Both ends, in any order.
    #[serde(default)]
    pub ends: Vec<EndSpec>,
    /// Adapters in the line.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub adapters: Vec<Adapter>,
    /// From sealing point to sealing point, nuts pushed back.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub overall_length_mm: Option<Millimetres>,
    /// Looking along the hose from A to B with A's elbow up: clockwise to B's elbow, 0 to 359.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub turn_deg: Option<Degrees>,
    /// What the cover is, such as `non-conductive`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cover: Option<Cover>,
}

impl Spec {
    /// The end with that role.
    pub fn end(&self, role: Role) -> Option<&EndSpec> {
        self.ends.iter().find(|end| end.role == role)
    }

    /// The same without the figures that stand over the tables' and that only its maker's supplier vouches for: ratings of
    /// ends and adapters, bend, vacuum and cut-offs.
    pub fn without_own_figures(&self) -> Spec {
        let mut bare = self.clone();
        if let Some(hose) = &mut bare.hose {
            (hose.min_bend_radius_mm, hose.vacuum_kpa_abs) = (None, None);
        }
        for end in &mut bare.ends {
            (end.cutoff_mm, end.rating_bar) = (None, None);
        }
        for adapter in &mut bare.adapters {
            adapter.rating_bar = None;
        }
        bare
    }
}

/// A cover with a duty of its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Cover {
    /// Nothing special.
    Plain,
    /// Does not lead current (often orange or printed so).
    NonConductive,
    /// Resists flame.
    FlameResistant,
    /// Leads static charge away.
    Antistatic,
}

/// What a place asks of the hose beyond pressure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Duty {
    /// Near power lines: must not lead current.
    NonConductive,
    /// Must resist flame.
    FlameResistant,
    /// Must lead static charge away.
    Antistatic,
}

/// What the line does.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Line {
    /// From the pump.
    Pressure,
    /// Back to the tank.
    Return,
    /// Into the pump.
    Suction,
    /// Leakage of a pump or motor.
    CaseDrain,
    /// Control pressure.
    Pilot,
    /// To a cylinder, both ways.
    Cylinder,
}

impl Line {
    /// Its name in the contract.
    pub const fn name(self) -> &'static str {
        match self {
            Line::Pressure => "pressure",
            Line::Return => "return",
            Line::Suction => "suction",
            Line::CaseDrain => "case-drain",
            Line::Pilot => "pilot",
            Line::Cylinder => "cylinder",
        }
    }
}

/// What the assembly will have to stand.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct Service {
    /// Pressure of the circuit in work.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub working_pressure_bar: Option<Bar>,
    /// Setting of the relief or port relief valve.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub relief_bar: Option<Bar>,
    /// Highest peak, where known.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub surge_pressure_bar: Option<Bar>,
    /// Fluid by its class (`HM`, `HFC`) or name.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub fluid: Option<String>,
    /// Coldest the fluid gets.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub fluid_min_c: Option<Celsius>,
    /// Hottest the fluid gets.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub fluid_max_c: Option<Celsius>,
    /// Hottest air round the hose.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub ambient_max_c: Option<Celsius>,
    /// Flow through the hose.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub flow_l_min: Option<LitresPerMinute>,
    /// What the line does.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub line: Option<Line>,
    /// Tightest bend at the inside of the hose.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub bend_radius_mm: Option<Millimetres>,
    /// Lowest absolute pressure in the line, in kPa.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub vacuum_kpa_abs: Option<f64>,
    /// What the place asks beyond pressure.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub duties: Vec<Duty>,
    /// Which of these figures were worked out, and not measured.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub estimated: Option<Estimated>,
}

/// Figures of the service as they were worked out. While the service gives that very figure it counts as an
/// estimate; one that is measured in its place does not.
#[derive(Debug, Clone, Copy, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct Estimated {
    /// Tightest bend, as it was routed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub bend_radius_mm: Option<Millimetres>,
    /// Highest peak, as it was reckoned from flow and closing time.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub surge_pressure_bar: Option<Bar>,
}

impl Service {
    /// This one, and of what it does not say the other. A duty of either is kept; a figure is an estimate where the service
    /// it is taken from calls it one.
    pub fn over(self, other: Self) -> Self {
        let estimated = |said: bool| if said { self.estimated } else { other.estimated };
        let both = Estimated {
            bend_radius_mm: estimated(self.bend_radius_mm.is_some()).and_then(|one| one.bend_radius_mm),
            surge_pressure_bar: estimated(self.surge_pressure_bar.is_some())
                .and_then(|one| one.surge_pressure_bar),
        };
        let mut duties = self.duties;
        duties.extend(other.duties.into_iter().filter(|duty| !duties.contains(duty)).collect::<Vec<_>>());
        Self {
            working_pressure_bar: self.working_pressure_bar.or(other.working_pressure_bar),
            relief_bar: self.relief_bar.or(other.relief_bar),
            surge_pressure_bar: self.surge_pressure_bar.or(other.surge_pressure_bar),
            fluid: self.fluid.or(other.fluid),
            fluid_min_c: self.fluid_min_c.or(other.fluid_min_c),
            fluid_max_c: self.fluid_max_c.or(other.fluid_max_c),
            ambient_max_c: self.ambient_max_c.or(other.ambient_max_c),
            flow_l_min: self.flow_l_min.or(other.flow_l_min),
            line: self.line.or(other.line),
            bend_radius_mm: self.bend_radius_mm.or(other.bend_radius_mm),
            vacuum_kpa_abs: self.vacuum_kpa_abs.or(other.vacuum_kpa_abs),
            duties,
            estimated: (both != Estimated::default()).then_some(both),
        }
    }

    /// Whether the bend that is given was worked out.
    pub fn is_bend_estimated(&self) -> bool {
        let estimated = self.estimated.and_then(|one| one.bend_radius_mm);
        self.bend_radius_mm.is_some_and(|given| estimated == Some(given))
    }

    /// Whether the peak that is given was worked out.
    pub fn is_surge_estimated(&self) -> bool {
        let estimated = self.estimated.and_then(|one| one.surge_pressure_bar);
        self.surge_pressure_bar.is_some_and(|given| estimated == Some(given))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_one_service_does_not_say_the_other_says_and_no_duty_or_doubt_is_lost() {
        let place: Service =
            serde_json::from_str(r#"{"relief_bar":230,"duties":["flame-resistant"]}"#).expect("a service");
        let hose: Service = serde_json::from_str(
            r#"{"relief_bar":180,"fluid":"HM","bend_radius_mm":250,"estimated":{"bend_radius_mm":250},
                "duties":["non-conductive","flame-resistant"]}"#,
        )
        .expect("a service");
        let both = place.over(hose.clone());
        assert_eq!((both.relief_bar, both.fluid.as_deref()), (Some(Bar(230.0)), Some("HM")));
        assert_eq!(both.duties, [Duty::FlameResistant, Duty::NonConductive]);
        assert!(both.is_bend_estimated());
        let measured = Service { bend_radius_mm: hose.bend_radius_mm, ..Service::default() };
        assert!(!measured.over(hose).is_bend_estimated(), "the one that counts was measured");
    }

    #[test]
    fn an_end_of_a_side_that_nobody_described_is_not_taken() {
        let side = |gender| Side { family: "JIC 37 flare".into(), size: "-10".into(), gender };
        let end: EndSpec =
            serde_json::from_str(r#"{"role":"A","family":"JIC 37 flare","size":"-10","gender":"female"}"#)
                .expect("an end");
        assert!(side(Some(Gender::Male)).takes(&end));
        assert!(!side(Some(Gender::Female)).takes(&end) && !side(None).takes(&end));
        assert!(side(Some(Gender::Female)).is_like(&end) && !side(None).is_like(&end));
    }
}
