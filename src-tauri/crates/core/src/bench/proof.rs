//! Whether a proof test proves.

use super::Proving;
use crate::make;
use crate::quantity::Bar;
use chrono::{Months, NaiveDate};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// What a proof test says.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct ProofJudged {
    /// What it is by now.
    pub state: ProofState,
    /// What is done, by the words `bench-<code>`.
    #[serde(rename = "do")]
    pub next_do: &'static str,
    /// What a person should know of it: `gauge-undated`, `gauge-overdue`.
    pub cautions: Vec<&'static str>,
    /// The pressure it is to be held at.
    pub pressure_bar: Bar,
    /// Shortest hold, in seconds.
    pub hold_from_s: f64,
    /// Longest hold.
    pub hold_to_s: f64,
}

/// What a proof test is by now.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum ProofState {
    /// Held at its pressure for its time, by a gauge with a name.
    Proved,
    /// There is no rig: a state of the record and of the tag.
    NoRig,
    /// It leaked, moved or burst: scrap.
    Failed,
    /// Something is missing, or it was too low or too short.
    Open,
}

/// What is done about a proof, and what a person should know of it.
pub const CODES: &[&str] = &[
    "proof-ok",
    "say-rig",
    "write-pressure",
    "write-hold",
    "write-gauge",
    "proof-low",
    "proof-high",
    "proof-short",
    "proof-failed",
    "proof-no-rig",
    "gauge-undated",
    "gauge-overdue",
];

/// What the test says. `months` is how long a calibration of the gauge holds, by the user's own rule.
pub(super) fn judge(due: &make::Proof, done: &Proving, today: NaiveDate, months: u32) -> ProofJudged {
    let (state, next_do) = state(due, done);
    ProofJudged {
        state,
        next_do,
        cautions: if state == ProofState::Proved { gauge(done, today, months) } else { Vec::new() },
        pressure_bar: due.proof_pressure_bar,
        hold_from_s: due.hold_from.value,
        hold_to_s: due.hold_to.value,
    }
}

/// A hose for fluid power bursts at four times its working pressure or more and is proved at twice that (ISO 7751):
/// at twice the proof it may be damaged, and a figure so high is mostly written in another unit.
const BURST_OVER_PROOF: f64 = 2.0;

/// A failure stands over everything else that was written.
fn state(due: &make::Proof, done: &Proving) -> (ProofState, &'static str) {
    if done.failed.is_some() {
        return (ProofState::Failed, "proof-failed");
    }
    match done.rig {
        None => return (ProofState::Open, "say-rig"),
        Some(false) => return (ProofState::NoRig, "proof-no-rig"),
        Some(true) => {}
    }
    let open = match (done.pressure_bar, done.hold_s) {
        (None, _) => "write-pressure",
        (Some(pressure), _) if pressure.get() < due.proof_pressure_bar.get() => "proof-low",
        (Some(pressure), _) if pressure.get() >= due.proof_pressure_bar.get() * BURST_OVER_PROOF => {
            "proof-high"
        }
        (Some(_), None) => "write-hold",
        (Some(_), Some(hold)) if hold < due.hold_from.value => "proof-short",
        _ if done.gauge.trim().is_empty() => "write-gauge",
        _ => return (ProofState::Proved, "proof-ok"),
    };
    (ProofState::Open, open)
}

fn gauge(done: &Proving, today: NaiveDate, months: u32) -> Vec<&'static str> {
    let until = done.gauge_calibrated.filter(|day| *day <= today);
    match until.map(|day| day.checked_add_months(Months::new(months))) {
        None => vec!["gauge-undated"],
        Some(Some(until)) if until < today => vec!["gauge-overdue"],
        Some(_) => Vec::new(),
    }
}
