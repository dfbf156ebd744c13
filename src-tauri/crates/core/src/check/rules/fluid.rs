//! The fluid against the tube, and against what the standard says of the type.

use crate::catalogue::{FluidRating, FluidRow, Provenance};
use crate::check::fluid;
use crate::check::limit::unverified;
use crate::check::subject::{Hose, Subject, hose_name, practice};
use crate::check::{Finding, Verdict, cases};

const RULE: &str = "fluid";

pub(super) fn fluid(subject: &Subject<'_>) -> Vec<Finding> {
    let Some(asked) = subject.service.fluid.as_deref() else {
        return vec![Finding::new(RULE, Verdict::Stop, cases::FLUID_MISSING).from(&practice())];
    };
    let rows = fluid::rows(subject.catalogue, asked);
    let Some(known) = rows.first() else {
        let unknown = Finding::new(RULE, Verdict::Stop, cases::FLUID_UNKNOWN);
        return vec![unknown.about("fluid", asked).from(&practice())];
    };
    let Some(hose) = subject.hose else { return Vec::new() };
    let mut findings: Vec<Finding> = by_standard(hose, fluid::id(known)).into_iter().collect();
    findings.extend(by_tube(hose, &rows));
    let named = |finding: Finding| finding.about("fluid", fluid::id(known)).about("hose", hose_name(hose.row));
    findings.into_iter().map(named).collect()
}

/// What the standard of the hose says: excluded, or not named at all.
fn by_standard(hose: Hose<'_>, fluid: &str) -> Option<Finding> {
    let source = Provenance { basis: hose.kind.columns.fluids, ..hose.kind.provenance.clone() };
    let listed = |list: &[String]| list.iter().any(|name| name == fluid);
    if listed(&hose.kind.fluids_excluded) {
        Some(Finding::new(RULE, Verdict::Stop, cases::FLUID_EXCLUDED).from(&source))
    } else if !listed(&hose.kind.fluids) {
        Some(Finding::new(RULE, Verdict::Caution, cases::FLUID_NOT_NAMED).from(&source))
    } else {
        None
    }
}

/// Each material the tube may be of: the type does not say which, so all of them must stand it.
fn by_tube(hose: Hose<'_>, rows: &[&FluidRow]) -> Vec<Finding> {
    if hose.kind.tube.is_empty() {
        return vec![Finding::new(RULE, Verdict::Stop, cases::FLUID_TUBE_UNKNOWN).from(&practice())];
    }
    hose.kind.tube.iter().map(|tube| stands(tube, rows).about("tube", tube)).collect()
}

fn stands(tube: &str, rows: &[&FluidRow]) -> Finding {
    let Some(row) = rows.iter().find(|row| row.elastomer == tube) else {
        return Finding::new(RULE, Verdict::Stop, cases::FLUID_UNRATED).from(&practice());
    };
    let (verdict, key) = match row.rating {
        FluidRating::Not => (Verdict::Stop, cases::FLUID_DESTROYS_TUBE),
        FluidRating::Limited => (Verdict::Caution, cases::FLUID_LIMITED),
        FluidRating::Recommended if unverified(row.provenance.basis) => {
            (Verdict::Caution, cases::FLUID_UNVERIFIED)
        }
        FluidRating::Recommended => (Verdict::Pass, cases::FLUID_OK),
    };
    Finding::new(RULE, verdict, key).from(&row.provenance)
}
