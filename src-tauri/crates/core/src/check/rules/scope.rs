//! What is refused whatever the hose: lines of other trades, with other rules.

use crate::check::subject::Subject;
use crate::check::{Finding, Verdict, cases};

pub(super) fn scope(subject: &Subject<'_>) -> Option<Finding> {
    let refused = subject.refused?;
    let asked = subject.service.fluid.as_deref().unwrap_or_default();
    let finding = Finding::new("scope", Verdict::Stop, cases::OUT_OF_SCOPE);
    Some(finding.about("line", &refused.key).about("fluid", asked).from(&refused.provenance))
}
