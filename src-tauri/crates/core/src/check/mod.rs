//! A spec under its service -> findings: may it be made.
//!
//! `rules/` holds one small file for each family of rules; [`check`] puts the spec through all of
//! them, then puts the other hoses of the same size through the same.

mod alternatives;
mod belongs;
pub(crate) mod cases;
mod edition;
mod finding;
mod fluid;
mod input;
mod length;
mod limit;
mod not_checked;
mod overrides;
mod place;
mod rating;
mod rivals;
mod rules;
mod sits;
mod sizes;
mod subject;

pub use belongs::belongs;
pub use cases::{AskedBy, CASES, Case};
pub use finding::{
    Alternative, Checked, Evidence, Finding, NotChecked, Override, Question, Verdict, Weakest,
};
pub use input::CheckError;
pub use overrides::PRUDENCE;
pub use place::{CauseCount, Failures, OnCircuit, Way, circuit};
pub(crate) use rules::usual_speed;
pub use sits::too_much;
pub(crate) use sizes::wide_enough;

use crate::catalogue::Catalogue;
use crate::quantity::Bar;
use crate::spec::HoseRef;
pub(crate) use limit::unverified;
use subject::Subject;
pub(crate) use subject::{bent, hose_name, practice, yours};

/// Puts a spec through every rule and says of each thing what it is, what it may be, and where that
/// limit comes from; then tries the other hoses of the same size.
///
/// # Errors
/// A number that can not be, an end given twice, a name that is not in the tables. A part that is
/// missing is no error but a finding.
pub fn check(catalogue: &Catalogue, question: &Question) -> Result<Checked, CheckError> {
    input::plausible(question)?;
    let subject = Subject::of(catalogue, question)?;
    let mut findings = findings(&subject);
    let alternatives = alternatives::alternatives(&subject, &findings);
    sizes::name_cure(&subject, &mut findings);
    let assembly = rating::assembly(&subject);
    Ok(Checked {
        verdict: gravest(&findings),
        assembly_pressure_bar: assembly.map(|(pressure, _)| pressure),
        weakest: assembly.map(|(_, part)| part),
        cut_length_mm: length::cut_length(&question.spec),
        length_tolerance_mm: length::tolerance(&subject),
        length_source: length::source(&subject),
        alternatives,
        not_checked: not_checked::not_checked(&findings),
        findings,
        spec: question.spec.clone(),
    })
}

/// These hoses in the spec's place, each put through the whole check: what may be made first, nearest first. The spec's
/// own hose is none of them.
///
/// # Errors
/// As [`check`].
pub fn alternatives_of(
    catalogue: &Catalogue,
    question: &Question,
    hoses: &[HoseRef],
) -> Result<Vec<Alternative>, CheckError> {
    input::plausible(question)?;
    let subject = Subject::of(catalogue, question)?;
    let own = findings(&subject);
    let rows = hoses.iter().filter_map(|hose| catalogue.hose(&hose.standard, &hose.kind, hose.dn).ok());
    Ok(alternatives::of_these(&subject, &own, rows))
}

/// What the check finds of a spec, without looking for another hose.
///
/// # Errors
/// As [`check`].
pub(crate) fn findings_of(catalogue: &Catalogue, question: &Question) -> Result<Vec<Finding>, CheckError> {
    input::plausible(question)?;
    Ok(findings(&Subject::of(catalogue, question)?))
}

/// Working pressure of an assembly, its weakest part's, without putting it through the rules. None while a
/// part's rating is not known.
///
/// # Errors
/// As [`check`].
pub fn assembly_rating(catalogue: &Catalogue, question: &Question) -> Result<Option<Bar>, CheckError> {
    input::plausible(question)?;
    let subject = Subject::of(catalogue, question)?;
    Ok(rating::assembly(&subject).map(|(pressure, _)| pressure))
}

/// All findings of a spec, gravest first, in the order of the rules.
fn findings(subject: &Subject<'_>) -> Vec<Finding> {
    let mut findings: Vec<Finding> = rules::ALL.iter().flat_map(|rule| rule(subject)).collect();
    overrides::take(&mut findings, &subject.question.overrides);
    findings.sort_by_key(|finding| std::cmp::Reverse(finding.verdict));
    findings
}

/// The verdict of the whole. Nothing looked at is no pass.
pub(crate) fn gravest(findings: &[Finding]) -> Verdict {
    findings.iter().map(|finding| finding.verdict).max().unwrap_or(Verdict::Stop)
}
