//! What is refused whatever the hose: lines of other trades, with other rules.

use crate::catalogue::{Catalogue, OutOfScope};
use crate::check::fluid::Fluid;
use crate::check::subject::Subject;
use crate::check::{Finding, Verdict, cases};

pub(super) fn scope(subject: &Subject<'_>) -> Option<Finding> {
    let asked = subject.service.fluid.as_deref()?;
    let refused = refused(subject.catalogue, asked)?;
    let finding = Finding::new("scope", Verdict::Stop, cases::OUT_OF_SCOPE);
    Some(finding.about("line", &refused.key).about("fluid", asked).from(&refused.provenance))
}

/// By the name itself, or because it is another name of a fluid that is refused.
fn refused<'a>(catalogue: &'a Catalogue, asked: &str) -> Option<&'a OutOfScope> {
    catalogue.out_of_scope(asked).or_else(|| {
        let class = Fluid::named(catalogue, asked)?.class.class.as_str();
        let line = if class.starts_with("brake-fluid") { "brake-line" } else { class };
        catalogue.out_of_scope(line)
    })
}
