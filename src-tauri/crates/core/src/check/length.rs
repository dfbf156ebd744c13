//! From overall length to cut length, and the tolerance of the overall length.

use super::subject::Subject;
use crate::catalogue::{LengthTolerance, Provenance};
use crate::quantity::Millimetres;
use crate::spec::{Role, Spec};

/// The tolerance of the spec's overall length, minus (negative) and plus. None where length or hose
/// is not known, or the practice gives none for that size and length.
pub(super) fn tolerance(subject: &Subject<'_>) -> Option<[f64; 2]> {
    Some(row(subject)?.at(subject.spec.overall_length_mm?))
}

/// Where that tolerance is from.
pub(super) fn source(subject: &Subject<'_>) -> Option<Provenance> {
    Some(row(subject)?.provenance.clone())
}

fn row<'c>(subject: &Subject<'c>) -> Option<&'c LengthTolerance> {
    let dn = subject.hose?.row.dn;
    let overall = subject.spec.overall_length_mm?;
    subject.catalogue.length_tolerance(subject.question.length_practice, dn, overall)
}

/// Overall length less both cut-offs. None while one of the three is not known, or where nothing
/// would be left to cut.
pub(super) fn cut_length(spec: &Spec) -> Option<Millimetres> {
    left_to_cut(spec).filter(|left| left.get() > 0.0)
}

/// The same, even where it is nothing or less.
pub(super) fn left_to_cut(spec: &Spec) -> Option<Millimetres> {
    let overall = spec.overall_length_mm?.get();
    let a = spec.end(Role::A)?.cutoff_mm?.get();
    let b = spec.end(Role::B)?.cutoff_mm?.get();
    Some(Millimetres(overall - a - b))
}
