//! The fluid against the tube, and against what the standard says of the type.

use crate::catalogue::{FluidRating, Provenance};
use crate::check::fluid::Fluid;
use crate::check::limit::unverified;
use crate::check::subject::{Hose, Subject, hose_name, practice};
use crate::check::{Finding, Verdict, cases};

const RULE: &str = "fluid";

pub(super) fn fluid(subject: &Subject<'_>) -> Vec<Finding> {
    let Some(asked) = subject.service.fluid.as_deref() else {
        return vec![Finding::new(RULE, Verdict::Stop, cases::FLUID_MISSING).from(&practice())];
    };
    let Some(fluid) = subject.fluid else {
        let unknown = Finding::new(RULE, Verdict::Stop, cases::FLUID_UNKNOWN);
        return vec![unknown.about("fluid", asked).from(&practice())];
    };
    let Some(hose) = subject.hose else { return Vec::new() };
    let findings = by_standard(hose, fluid).into_iter().chain(by_tube(hose, fluid));
    findings
        .map(|finding| finding.about("fluid", &fluid.class.name).about("hose", hose_name(hose.row)))
        .collect()
}

/// What the standard of the hose says: excluded, or not named at all.
fn by_standard(hose: Hose<'_>, fluid: Fluid<'_>) -> Option<Finding> {
    let listed = |list: &[String]| list.contains(&fluid.class.class);
    let (verdict, case) = if listed(&hose.kind.fluids_excluded) {
        (Verdict::Stop, cases::FLUID_EXCLUDED)
    } else if !listed(&hose.kind.fluids) {
        (Verdict::Caution, cases::FLUID_NOT_NAMED)
    } else {
        return None;
    };
    let source = Provenance { source: hose.kind.provenance.source.clone(), basis: hose.kind.columns.fluids };
    Some(Finding::new(RULE, verdict, case).from(&source))
}

/// Each material the tube may be of: the type does not say which, so all of them must stand it.
fn by_tube(hose: Hose<'_>, fluid: Fluid<'_>) -> Vec<Finding> {
    if hose.kind.tube.is_empty() {
        return vec![Finding::new(RULE, Verdict::Stop, cases::FLUID_TUBE_UNKNOWN).from(&practice())];
    }
    hose.kind.tube.iter().map(|tube| stands(tube, fluid).about("tube", tube)).collect()
}

fn stands(tube: &str, fluid: Fluid<'_>) -> Finding {
    let Some(row) = fluid.in_tube(tube) else {
        return Finding::new(RULE, Verdict::Stop, cases::FLUID_UNRATED).from(&practice());
    };
    let (verdict, case) = match row.rating {
        FluidRating::Not => (Verdict::Stop, cases::FLUID_DESTROYS_TUBE),
        FluidRating::Limited => (Verdict::Caution, cases::FLUID_LIMITED),
        FluidRating::Recommended if unverified(row.provenance.basis) => {
            (Verdict::Caution, cases::FLUID_UNVERIFIED)
        }
        FluidRating::Recommended => (Verdict::Pass, cases::FLUID_OK),
    };
    Finding::new(RULE, verdict, case).from(&row.provenance)
}
