//! The bench as a whole.

use super::finished::{self, FinishedCheck};
use super::proof::{self, ProofJudged, ProofState};
use super::{Bench, BenchError};
use crate::crimp::{CrimpQuestion, Crimped, crimp};
use crate::make::BuildSheet;
use crate::measure::Judged;
use crate::record::{BenchRecord, CrimpDone, Proof};
use crate::spec::Role;
use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// What was done at the bench, judged.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct BenchJudged {
    /// The crimps that were read, A first.
    pub crimps: Vec<Crimped>,
    /// Length and turn.
    pub finished: Vec<FinishedCheck>,
    /// The proof test.
    pub proof: ProofJudged,
    /// Whether it may be tagged.
    pub tag: bool,
    /// Why not, by the words `bench-why-<code>`.
    pub why_not: Vec<&'static str>,
}

/// Everything that keeps an assembly from being tagged.
pub const WHY_NOT: &[&str] = &["crimp-a", "crimp-b", "length", "turn", "proof-open", "proof-failed"];

/// Judges the bench. `months` is how long a calibration of the proof gauge holds, by the user's own rule.
///
/// An assembly may be tagged once both crimps pass, nothing measured on it lies outside, and it is proved or there is
/// no rig.
///
/// # Errors
/// A reading or figure that can not be.
pub fn judge(
    sheet: &BuildSheet,
    bench: &Bench,
    today: NaiveDate,
    months: u32,
) -> Result<BenchJudged, BenchError> {
    bench.plausible()?;
    let crimps = crimps(sheet, bench)?;
    let finished = finished::checks(sheet, &bench.finished);
    let proof = proof::judge(&sheet.proof, &bench.proof, today, months);
    let mut why_not = Vec::new();
    for (role, code) in [(Role::A, "crimp-a"), (Role::B, "crimp-b")] {
        let passes = |read: &Crimped| read.role == Some(role) && read.verdict == Judged::Pass;
        if !crimps.iter().any(passes) {
            why_not.push(code);
        }
    }
    why_not.extend(finished.iter().filter(|check| check.verdict == Judged::Stop).map(|check| check.code));
    match proof.state {
        ProofState::Proved | ProofState::NoRig => {}
        ProofState::Open => why_not.push("proof-open"),
        ProofState::Failed => why_not.push("proof-failed"),
    }
    Ok(BenchJudged { crimps, finished, proof, tag: why_not.is_empty(), why_not })
}

fn crimps(sheet: &BuildSheet, bench: &Bench) -> Result<Vec<Crimped>, BenchError> {
    let mut reads: Vec<_> = bench.crimps.iter().collect();
    reads.sort_by_key(|read| read.role);
    let judged = reads.into_iter().map(|read| {
        let settings = sheet.settings.iter().find(|settings| settings.role == read.role);
        crimp(&CrimpQuestion {
            role: Some(read.role),
            target_mm: settings.and_then(|settings| settings.crimp_diameter_mm),
            tolerance_mm: settings.and_then(|settings| settings.crimp_tolerance_mm),
            readings_mm: read.readings_mm.clone(),
            instrument: read.instrument.clone(),
        })
        .map_err(|error| BenchError::Crimp { role: read.role, error })
    });
    judged.collect()
}

impl BenchJudged {
    /// What of the bench stays on record.
    pub fn record(&self, sheet: &BuildSheet, bench: &Bench) -> BenchRecord {
        let settings = |role| sheet.settings.iter().find(|settings| settings.role == role);
        let crimps = bench.crimps.iter().filter_map(|read| {
            let judged = self.crimps.iter().find(|judged| judged.role == Some(read.role))?;
            Some(CrimpDone {
                role: read.role,
                target_mm: settings(read.role).and_then(|settings| settings.crimp_diameter_mm),
                tolerance_mm: settings(read.role).and_then(|settings| settings.crimp_tolerance_mm),
                readings_mm: read.readings_mm.clone(),
                given_up: read.given_up.clone(),
                instrument: read.instrument.clone(),
                verdict: judged.verdict,
            })
        });
        BenchRecord {
            settings: sheet.settings.to_vec(),
            cut_length_mm: bench.cut_length_mm,
            finished: bench.finished,
            crimps: crimps.collect(),
            steps: bench.steps.clone(),
        }
    }

    /// The proof as it stays on record; none while it is open.
    pub fn proof_record(&self, bench: &Bench) -> Option<Proof> {
        let done = &bench.proof;
        match self.proof.state {
            ProofState::Open => None,
            ProofState::NoRig => Some(Proof::NotProved { why: crate::record::NotProved::NoRig }),
            ProofState::Proved => Some(Proof::Proved {
                pressure_bar: done.pressure_bar?,
                hold_s: done.hold_s?,
                gauge: done.gauge.trim().to_owned(),
                gauge_calibrated: done.gauge_calibrated,
            }),
            ProofState::Failed => Some(Proof::Failed {
                what: done.failed?,
                pressure_bar: done.pressure_bar,
                hold_s: done.hold_s,
                gauge: done.gauge.trim().to_owned(),
                gauge_calibrated: done.gauge_calibrated,
            }),
        }
    }
}
