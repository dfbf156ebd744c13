//! What has to be there at all: a hose, both ends, the kind of line.

use crate::check::subject::{Subject, practice};
use crate::check::{Finding, Verdict, cases};
use crate::spec::Role;

pub(super) fn parts(subject: &Subject<'_>) -> Vec<Finding> {
    let mut findings = Vec::new();
    if subject.hose.is_none() {
        findings.push(Finding::new("hose", Verdict::Stop, cases::HOSE_MISSING).from(&practice()));
    }
    for role in [Role::A, Role::B] {
        if subject.end(role).is_none() {
            let missing = Finding::new("end", Verdict::Stop, cases::END_MISSING);
            findings.push(missing.about("end", format!("{role:?}")).from(&practice()));
        }
    }
    if subject.service.line.is_none() {
        findings.push(Finding::new("line", Verdict::Caution, cases::LINE_MISSING).from(&practice()));
    }
    findings
}
