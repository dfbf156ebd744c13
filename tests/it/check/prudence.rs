//! What a person may take on, and what nobody may.

use super::line::{Change, asked, evidence, finding, has, name, objections};
use hosewright_core::check::{Override, PRUDENCE, Question, Verdict};
use hosewright_core::find::Settled;
use hosewright_core::quantity::{Bar, Celsius, LitresPerMinute, Millimetres};
use hosewright_core::spec::{Duty, Line};
use rstest::rstest;

#[test]
fn a_limit_of_prudence_can_be_taken_on_with_a_name_and_a_reason() {
    let take = |rule: &str, by: &str, reason: &str| {
        asked(|question| {
            question.service.flow_l_min = Some(LitresPerMinute(150.0));
            question.overrides = vec![Override { rule: rule.into(), by: by.into(), reason: reason.into() }];
        })
    };
    let taken = take("flow-speed", "R. Fitter", "short line, cold climate");
    assert_eq!(objections(&taken), ["override-taken"]);
    let finding_taken = finding(&taken, "override-taken");
    assert_eq!(finding_taken.verdict, Verdict::Caution, "taken on is not passed");
    assert_eq!(finding_taken.limit, Some(10.0), "what was passed over stays to be seen");
    assert_eq!(name(finding_taken, "by"), Some("R. Fitter"));
    assert_eq!(name(finding_taken, "reason"), Some("short line, cold climate"));
    for unsigned in [take("flow-speed", " ", "reason"), take("flow-speed", "name", "")] {
        assert_eq!(finding(&unsigned, "override-unsigned").verdict, Verdict::Stop);
        assert!(has(&unsigned, "flow-too-fast-stopped"), "it stays as it was");
    }
    let needless = take("bend-not-checked", "name", "reason");
    assert_eq!(
        objections(&needless),
        ["flow-too-fast-stopped"],
        "an override of what was looked at does nothing"
    );
}

#[test]
fn an_override_of_what_is_within_its_limit_does_nothing() {
    let checked = asked(|question| {
        question.overrides =
            vec![Override { rule: "flow-speed".into(), by: "name".into(), reason: "reason".into() }];
    });
    assert_eq!(checked.verdict, Verdict::Pass);
    assert!(has(&checked, "flow-ok"));
}

#[test]
fn everything_of_prudence_can_be_taken_on() {
    let checked = asked(|question| {
        question.service.flow_l_min = None;
        question.service.bend_radius_mm = None;
        question.overrides = PRUDENCE
            .iter()
            .map(|rule| Override { rule: (*rule).into(), by: "name".into(), reason: "reason".into() })
            .collect();
    });
    assert_eq!(objections(&checked), ["override-taken", "override-taken"]);
}

#[rstest]
#[case::pressure("pressure", |q: &mut Question| q.service.surge_pressure_bar = Some(Bar(300.0)))]
#[case::end("end-unsettled", |q: &mut Question| evidence(q).settled = Some(Settled { hose: true, a: false, b: true }))]
#[case::fluid("fluid", |q: &mut Question| q.service.fluid = Some("HEES".into()))]
#[case::scope("scope", |q: &mut Question| q.service.fluid = Some("steam".into()))]
#[case::conductivity("duty", |q: &mut Question| q.service.duties = vec![Duty::NonConductive])]
#[case::temperature("fluid-temperature", |q: &mut Question| q.service.fluid_max_c = Some(Celsius(130.0)))]
#[case::bend("bend", |q: &mut Question| q.service.bend_radius_mm = Some(Millimetres(100.0)))]
#[case::vacuum("vacuum", |q: &mut Question| q.service.line = Some(Line::Suction))]
#[case::original("original", |q: &mut Question| evidence(q).printed_pressure_bar = Some(Bar(400.0)))]
#[case::length("length", |q: &mut Question| q.spec.overall_length_mm = Some(Millimetres(10.0)))]
#[case::nonsense("no-such-rule", |_: &mut Question| ())]
fn no_override_lifts_anything_but_prudence(#[case] rule: &str, #[case] spoil: Change) {
    let before = asked(spoil);
    let after = asked(|question| {
        spoil(question);
        question.overrides =
            vec![Override { rule: rule.into(), by: "the boss".into(), reason: "hurry".into() }];
    });
    assert_eq!(after.verdict, Verdict::Stop, "{rule}");
    assert_eq!(name(finding(&after, "override-refused"), "rule"), Some(rule));
    let kept = before.findings.iter().filter(|finding| finding.verdict == Verdict::Stop);
    for finding in kept {
        assert!(after.findings.contains(finding), "{} still stops", finding.case.key);
    }
}
