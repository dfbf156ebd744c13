//! A cure that names a hose was put through the whole check, and an estimate says that it is one.

use super::line::{asked, catalogue, changed, checked, evidence, finding, has, hose, known, name, was};
use hosewright_core::catalogue::Basis;
use hosewright_core::check::{Question, Verdict};
use hosewright_core::quantity::{Bar, LitresPerMinute, Millimetres};
use proptest::prelude::*;

/// A line that asks little, so that a larger and weaker size will do.
fn mild(flow_l_min: f64, bend_mm: f64) -> Question {
    changed(|question| {
        question.service.working_pressure_bar = Some(Bar(60.0));
        question.service.relief_bar = Some(Bar(70.0));
        question.service.surge_pressure_bar = Some(Bar(80.0));
        question.service.flow_l_min = Some(LitresPerMinute(flow_l_min));
        evidence(question).hose = vec![was("EN 853", "1SN", 16.0, 0.996)];
        question.service.bend_radius_mm = Some(Millimetres(bend_mm));
    })
}

/// 150 l/min in 15.9 mm run at 12.6 m/s, in 19.1 mm at 8.7 (v = 21.22 Q / d2, rule L084).
#[test]
fn oil_that_runs_too_fast_names_the_size_that_would_do() {
    let found = checked(&mild(150.0, 260.0));
    let fast = finding(&found, "flow-too-fast-size");
    assert_eq!(name(fast, "hose"), Some("EN 853 2SN DN 19"));
    assert_eq!(name(fast, "speed"), Some("8.7"));
    assert_eq!(fast.verdict, Verdict::Caution);
}

/// DN 19 needs 240 mm at the inside of the bend (EN 853): where the place leaves 220 it is no cure.
#[test]
fn a_size_that_the_check_itself_stops_is_not_offered() {
    let found = checked(&mild(150.0, 220.0));
    assert!(!has(&found, "flow-too-fast-size"), "{:?}", found.findings);
    assert_eq!(name(finding(&found, "flow-too-fast-stopped"), "hose"), Some("EN 853 2SN DN 19"));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn a_hose_that_a_cure_names_passes_the_same_check(flow in 60.0..900.0_f64, bend in 200.0..900.0_f64) {
        let question = mild(flow, bend);
        let found = checked(&question);
        if let Some(fast) = found.findings.iter().find(|finding| finding.case.key == "flow-too-fast-size") {
            let said = name(fast, "hose").expect("a hose").to_owned();
            let number = said.rsplit(' ').next().and_then(|number| number.parse().ok()).expect("a size");
            let mut cured = question;
            cured.spec.hose = Some(hose("EN 853", "2SN", number));
            let cured = checked(&cured);
            prop_assert_ne!(cured.verdict, Verdict::Stop, "{} is stopped", said);
            prop_assert!(has(&cured, "flow-ok"), "{} is still too fast", said);
        }
    }
}

#[test]
fn a_surge_that_nobody_knows_is_estimated_from_the_relief_and_says_so() {
    let factor = catalogue().limit("surge-over-relief").and_then(|limit| limit.value).expect("a factor");
    for (relief, case) in [(230.0, "surge-estimated-above"), (180.0, "surge-estimated")] {
        let found = asked(|question| {
            question.service.working_pressure_bar = Some(Bar(170.0));
            question.service.surge_pressure_bar = None;
            question.service.relief_bar = Some(Bar(relief));
        });
        let estimated = finding(&found, case);
        assert_eq!(estimated.verdict, Verdict::Caution, "an estimate is no pass and no stop");
        assert_eq!((estimated.value, estimated.limit), (Some(relief * factor), Some(250.0)));
        assert_eq!(estimated.basis, Basis::CommonPractice);
        assert!(!estimated.source.is_empty());
    }
}

#[test]
fn an_alternative_says_what_speaks_for_it_and_against_it() {
    let found = checked(&known());
    let row = |standard: &str, kind: &str, number| catalogue().hose(standard, kind, number).expect("a row");
    let own = known().spec.hose.map(|hose| row(&hose.standard, &hose.kind, hose.dn)).expect("a hose");
    let mut both = 0;
    for other in &found.alternatives {
        let its = row(&other.standard, &other.kind, other.dn);
        let says = |key: &str| other.grounds.iter().any(|ground| ground.case.key == key);
        let pressures = own.max_working_pressure_bar.zip(its.max_working_pressure_bar);
        assert_eq!(
            says("alternative-pressure-ok"),
            pressures.is_some_and(|(own, its)| its > own),
            "{other:?}"
        );
        assert_eq!(
            says("alternative-pressure-less"),
            pressures.is_some_and(|(own, its)| its < own),
            "{other:?}"
        );
        let bends = own.min_bend_radius_mm.zip(its.min_bend_radius_mm);
        assert_eq!(says("alternative-bend-ok"), bends.is_some_and(|(own, its)| its < own), "{other:?}");
        assert_eq!(says("alternative-bend-wider"), bends.is_some_and(|(own, its)| its > own), "{other:?}");
        both += usize::from(other.grounds.iter().any(|ground| ground.verdict != Verdict::Pass));
    }
    assert!(both > 0, "something speaks against one of {:?}", found.alternatives);
    let order: Vec<Verdict> = found.alternatives.iter().map(|other| other.verdict).collect();
    assert!(order.windows(2).all(|pair| pair[0] <= pair[1]), "the gentlest first: {order:?}");
}
