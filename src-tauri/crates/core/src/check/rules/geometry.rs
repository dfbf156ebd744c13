//! Length, cut-offs and the turn between two bent ends.

use crate::check::length;
use crate::check::subject::{Subject, practice};
use crate::check::{Finding, Verdict, cases};
use crate::quantity::{Degrees, Millimetres};
use crate::spec::Role;

pub(super) fn geometry(subject: &Subject<'_>) -> Vec<Finding> {
    length(subject).into_iter().chain(tolerance(subject)).chain(turn(subject)).collect()
}

fn length(subject: &Subject<'_>) -> Vec<Finding> {
    const RULE: &str = "length";
    let new = |verdict, case| Finding::new(RULE, verdict, case).from(&practice());
    let mut findings = Vec::new();
    if subject.spec.overall_length_mm.is_none() {
        findings.push(new(Verdict::Caution, cases::LENGTH_MISSING));
    }
    for end in subject.ends.iter().filter(|end| end.spec.cutoff_mm.is_none()) {
        findings
            .push(new(Verdict::Caution, cases::CUTOFF_MISSING).about("end", format!("{:?}", end.spec.role)));
    }
    if let Some(left) = length::left_to_cut(subject.spec) {
        let (verdict, case) = if left.get() > 0.0 {
            (Verdict::Pass, cases::CUT_LENGTH_OK)
        } else {
            (Verdict::Stop, cases::CUT_LENGTH_IMPOSSIBLE)
        };
        findings.push(new(verdict, case).measured(left.get(), 0.0, Millimetres::UNIT));
    }
    findings
}

/// Some long lengths of large sizes have no tolerance in the practice asked for: agreed with whoever ordered.
fn tolerance(subject: &Subject<'_>) -> Option<Finding> {
    let known = subject.hose.is_some() && subject.spec.overall_length_mm.is_some();
    let none = known && length::tolerance(subject).is_none();
    none.then(|| {
        Finding::new("length-tolerance", Verdict::Caution, cases::LENGTH_TOLERANCE_UNKNOWN).from(&practice())
    })
}

/// Two bent ends stand at an angle to each other, and without it the hose can't be made.
fn turn(subject: &Subject<'_>) -> Option<Finding> {
    let bent = |role| subject.end(role).and_then(|end| end.bent());
    if bent(Role::A) != Some(true) || bent(Role::B) != Some(true) {
        return None;
    }
    let new = |verdict, case| Finding::new("turn", verdict, case).from(&practice());
    Some(match subject.spec.turn_deg {
        Some(turn) => new(Verdict::Pass, cases::TURN_OK).measured(turn.get(), None, Degrees::UNIT),
        None => new(Verdict::Caution, cases::TURN_MISSING),
    })
}
