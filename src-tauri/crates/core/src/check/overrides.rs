//! Limits of prudence, which a person may take on with a name and a reason. Pressure, end family,
//! fluid and conductivity are none.

use super::subject::practice;
use super::{Case, Finding, Override, Verdict, cases};
use std::collections::BTreeMap;

/// The rules that a person may take on.
pub const PRUDENCE: &[&str] = &["flow-speed", "flow-not-checked", "bend-not-checked"];

/// Turns each finding of prudence that somebody took on into a caution that names who and why, and
/// each override of anything else into a stop.
pub(super) fn take(findings: &mut Vec<Finding>, overrides: &[Override]) {
    for given in overrides {
        if !PRUDENCE.contains(&given.rule.as_str()) {
            findings.push(refused(given, cases::OVERRIDE_REFUSED));
        } else if given.by.trim().is_empty() || given.reason.trim().is_empty() {
            findings.push(refused(given, cases::OVERRIDE_UNSIGNED));
        } else {
            let taken =
                |finding: &&mut Finding| finding.rule == given.rule && finding.verdict != Verdict::Pass;
            findings.iter_mut().filter(taken).for_each(|finding| take_on(finding, given));
        }
    }
}

fn take_on(finding: &mut Finding, given: &Override) {
    finding.verdict = Verdict::Caution;
    finding.case = cases::OVERRIDE_TAKEN;
    finding.names = BTreeMap::from([
        ("rule", given.rule.clone()),
        ("by", given.by.clone()),
        ("reason", given.reason.clone()),
    ]);
}

fn refused(given: &Override, case: Case) -> Finding {
    Finding::new("override", Verdict::Stop, case).about("rule", &given.rule).from(&practice())
}
