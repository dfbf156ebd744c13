//! Other hoses of the same size, put through the same check.

use super::subject::{Hose, Subject, hose_name};
use super::{Alternative, Finding, Verdict, cases, findings, gravest};
use crate::catalogue::{HoseRow, Interchange, Provenance};
use crate::quantity::{Bar, Millimetres};

/// How many are worth showing.
const SHOWN: usize = 8;

/// The other hoses of the spec's size: what may be made first, nearest in pressure and bend first.
pub(super) fn alternatives(subject: &Subject<'_>, own: &[Finding]) -> Vec<Alternative> {
    let Some(hose) = subject.hose else { return Vec::new() };
    let rows = subject.catalogue.hoses.iter().chain(&subject.catalogue.twins);
    let others =
        rows.filter(|row| subject.catalogue.one_size(row.dn, hose.row.dn) && !same_row(row, hose.row));
    let tried = ranked(subject, hose, others, own);
    tried.into_iter().take(SHOWN).collect()
}

/// Those hoses, all of them, put through the same check.
pub(super) fn of_these<'a>(
    subject: &Subject<'a>,
    own: &[Finding],
    rows: impl Iterator<Item = &'a HoseRow>,
) -> Vec<Alternative> {
    let Some(hose) = subject.hose else { return Vec::new() };
    ranked(subject, hose, rows.filter(|row| !same_row(row, hose.row)), own)
}

fn ranked<'a>(
    subject: &Subject<'a>,
    hose: Hose<'a>,
    rows: impl Iterator<Item = &'a HoseRow>,
    own: &[Finding],
) -> Vec<Alternative> {
    let others = rows.filter_map(|row| Hose::of(subject.catalogue, row));
    let mut tried: Vec<(f64, Alternative)> =
        others.map(|other| (distance(hose, other.row), tried(subject, hose, other, own))).collect();
    tried.sort_by(|(a_far, a), (b_far, b)| a.verdict.cmp(&b.verdict).then(a_far.total_cmp(b_far)));
    tried.into_iter().map(|(_, alternative)| alternative).collect()
}

fn same_row(a: &HoseRow, b: &HoseRow) -> bool {
    a.standard == b.standard && a.kind == b.kind && a.dn == b.dn
}

/// The spec with that hose in the same service.
fn tried<'a>(subject: &Subject<'a>, own: Hose<'a>, other: Hose<'a>, own_findings: &[Finding]) -> Alternative {
    let findings = findings(&subject.with(other));
    let verdict = gravest(&findings);
    let mut grounds = advantages(own, other.row);
    grounds.extend(disadvantages(own, other.row));
    grounds.extend(objections(findings, verdict, own_findings));
    Alternative {
        standard: other.row.standard.clone(),
        kind: other.row.kind.clone(),
        dn: other.row.dn,
        verdict,
        reasons: Vec::new(),
        grounds,
    }
}

/// How far apart two hoses are in pressure and bend, each as a share of the spec's own. What is not
/// known is as far as the whole.
fn distance(own: Hose<'_>, other: &HoseRow) -> f64 {
    let apart = |own: Option<f64>, other: Option<f64>| match (own, other) {
        (Some(own), Some(other)) if own > 0.0 => (other - own).abs() / own,
        _ => 1.0,
    };
    let pressure = |row: &HoseRow| row.max_working_pressure_bar.map(Bar::get);
    let bend = |radius: Option<Millimetres>| radius.map(Millimetres::get);
    apart(pressure(own.row), pressure(other))
        + apart(bend(own.min_bend_radius().0), bend(other.min_bend_radius_mm))
}

/// What speaks for it beside the spec's own hose.
fn advantages(own: Hose<'_>, row: &HoseRow) -> Vec<Finding> {
    let pass = |key| Finding::new("alternative", Verdict::Pass, key).about("hose", hose_name(row));
    let twin = |with: &&Interchange| with.equal && with.standard == row.standard && with.kind == row.kind;
    let twin = own.kind.interchange.iter().find(twin);
    let twin = twin.map(|with| pass(cases::ALTERNATIVE_TWIN).from(&with.provenance));
    let compared = |own: Option<f64>, other: Option<f64>, better: fn(f64, f64) -> bool| {
        own.zip(other).filter(|(own, other)| better(*other, *own))
    };
    let pressure = |row: &HoseRow| row.max_working_pressure_bar.map(Bar::get);
    let higher = compared(pressure(own.row), pressure(row), |other, own| other > own);
    let higher = higher.map(|(own, other)| {
        better(pass(cases::ALTERNATIVE_PRESSURE), other, own, Bar::UNIT, &row.pressure_provenance())
    });
    let bend = |radius: Option<Millimetres>| radius.map(Millimetres::get);
    let tighter =
        compared(bend(own.min_bend_radius().0), bend(row.min_bend_radius_mm), |other, own| other < own);
    let tighter = tighter.map(|(own, other)| {
        better(pass(cases::ALTERNATIVE_BEND), other, own, Millimetres::UNIT, &row.bend_provenance())
    });
    twin.into_iter().chain(higher).chain(tighter).collect()
}

/// What it does less well than the spec's own hose, even where that is enough.
fn disadvantages(own: Hose<'_>, row: &HoseRow) -> Vec<Finding> {
    let less = |key| Finding::new("alternative", Verdict::Caution, key).about("hose", hose_name(row));
    let pressures = own.row.max_working_pressure_bar.zip(row.max_working_pressure_bar);
    let lower = pressures.filter(|(own, other)| other < own).map(|(own, other)| {
        let finding = less(cases::ALTERNATIVE_PRESSURE_LESS);
        better(finding, other.get(), own.get(), Bar::UNIT, &row.pressure_provenance())
    });
    let bends = own.min_bend_radius().0.zip(row.min_bend_radius_mm);
    let wider = bends.filter(|(own, other)| other > own).map(|(own, other)| {
        let finding = less(cases::ALTERNATIVE_BEND_WIDER);
        better(finding, other.get(), own.get(), Millimetres::UNIT, &row.bend_provenance())
    });
    lower.into_iter().chain(wider).collect()
}

fn better(finding: Finding, other: f64, own: f64, unit: &'static str, from: &Provenance) -> Finding {
    finding.measured(other, own, unit).from(from)
}

/// What speaks against it: what gave its verdict, less what the spec's own hose has just the same.
fn objections(findings: Vec<Finding>, verdict: Verdict, own: &[Finding]) -> Vec<Finding> {
    if verdict == Verdict::Pass {
        return Vec::new();
    }
    let gravest = findings.into_iter().filter(|finding| finding.verdict == verdict);
    let different: Vec<Finding> = gravest.filter(|finding| !own.contains(finding)).collect();
    if different.is_empty() {
        return vec![Finding::new("alternative", verdict, cases::ALTERNATIVE_SAME)];
    }
    different
}
