//! Whether what sits at a place stands what the place asks of it now. Most findings of a check are about making a hose;
//! these are about letting one run on.

use super::{AskedBy, CheckError, Finding, Question, Verdict, findings_of};
use crate::catalogue::Catalogue;
use crate::spec::Service;

/// The gravest that the place asks and that the hose is known not to stand; none where nothing is asked, or nothing that
/// is known is too much. What is not known is no pass: the check of the place itself says it.
///
/// # Errors
/// As [`super::check`].
pub fn too_much(catalogue: &Catalogue, question: &Question) -> Result<Option<Finding>, CheckError> {
    // The kind of line alone asks nothing that could be too much.
    if (Service { line: None, ..question.service.clone() }) == Service::default() {
        return Ok(None);
    }
    let stops = |finding: &Finding| {
        finding.verdict == Verdict::Stop && finding.case.asked_by == AskedBy::Line && !finding.case.open
    };
    Ok(findings_of(catalogue, question)?.into_iter().find(stops))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{Bar, Dn};
    use crate::spec::{HoseRef, Line, Spec};

    fn at(service: Service) -> Option<&'static str> {
        let hose = HoseRef::named("EN 853", "1SN", Dn::new(12.0).expect("a size"));
        let question =
            Question { spec: Spec { hose: Some(hose), ..Spec::default() }, service, ..Question::default() };
        let found = too_much(Catalogue::embedded(), &question).expect("can be checked");
        found.map(|finding| finding.case.key)
    }

    #[test]
    fn what_is_over_its_limit_is_told_and_what_is_not_known_is_left_to_the_check() {
        let bar = |bar| Service { working_pressure_bar: Some(Bar(bar)), ..Service::default() };
        assert_eq!(at(bar(420.0)), Some("pressure-above-rating"));
        assert_eq!(at(bar(20.0)), None, "ends that nobody knows stop a job and no machine");
        assert_eq!(at(Service::default()), None);
        // A suction line asks for a hose that bears vacuum, which is the next job's business.
        assert_eq!(at(Service { line: Some(Line::Suction), ..Service::default() }), None);
    }
}
