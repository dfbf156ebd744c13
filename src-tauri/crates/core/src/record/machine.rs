//! Sites, machines, their circuits and the places where hoses sit.

use super::{CircuitId, MachineId, OilLine, PlaceId, Ports, SiteId};
use crate::catalogue::{Demand, Stake};
use crate::quantity::Bar;
use crate::spec::{Line, Service, Spec};
use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A site and its name.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Site {
    /// Which.
    pub site: SiteId,
    /// What people call it.
    pub name: String,
}

/// A machine, whole: a change writes all of it anew.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Machine {
    /// Which.
    pub machine: MachineId,
    /// Where it works.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub site: Option<SiteId>,
    /// What people call it, such as `Excavator 3`.
    pub name: String,
    /// What it is: `excavator`, `loader`, `forwarder`, `crane`, `press` and the like.
    pub sort: String,
    /// How hard it is on its hoses; none is not said and counts as normal.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub demand: Option<Demand>,
}

/// A reading of a machine's hour meter.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct HoursRead {
    /// Whose.
    pub machine: MachineId,
    /// Hours on the meter.
    pub hours: f64,
    /// When it was read.
    pub date: NaiveDate,
}

/// A circuit of a machine.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Circuit {
    /// Which.
    pub circuit: CircuitId,
    /// Whose.
    pub machine: MachineId,
    /// What people call it, such as `boom`.
    pub name: String,
    /// Setting of its relief or port relief valve.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub relief_bar: Option<Bar>,
}

/// A place on a machine where a hose sits, and what belongs there.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Place {
    /// Which.
    pub place: PlaceId,
    /// On which machine.
    pub machine: MachineId,
    /// Its number on the machine's drawing.
    pub number: u32,
    /// What people call it, such as `Stick cylinder, rod side`.
    pub name: String,
    /// What the line does.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub line: Option<Line>,
    /// The circuit it belongs to.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub circuit: Option<CircuitId>,
    /// The hose that belongs there, as far as it is known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub spec: Option<Spec>,
    /// What it has to stand there.
    #[serde(default)]
    pub service: Service,
    /// How its ports stand.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ports: Option<Ports>,
    /// What is known of the line and its oil.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub oil: Option<OilLine>,
    /// How hard it is on hoses there; none is as hard as the machine.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub demand: Option<Demand>,
    /// What a failure there would put at risk. None: nobody has said; empty: looked at, none of them.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub stakes: Option<Vec<Stake>>,
    /// The owner's own word on how bad a failure there would be, from 1 to 5; it stands over what the stakes say.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub consequence: Option<u8>,
}

impl Place {
    /// What a hose has to stand there: what is known of the place stands over the relief setting of its circuit, and that
    /// over what the hose was once checked for, for a relief raised since then counts. A duty that any of them has is kept.
    pub fn asks(&self, relief: Option<Bar>, before: Option<Service>) -> Service {
        let circuit = Service { relief_bar: relief, ..Service::default() };
        let line = Service { line: self.line, ..Service::default() };
        self.service.clone().over(circuit.over(before.unwrap_or_default().over(line)))
    }
}
