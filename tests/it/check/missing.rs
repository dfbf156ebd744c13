//! What is left out is said, and what can not be is refused.

use super::line::{Change, asked, catalogue, checked, evidence, finding, hose, known, objections};
use hosewright_core::check::{CheckError, Checked, Question, Verdict, check};
use hosewright_core::quantity::{Bar, Celsius, Degrees, LitresPerMinute, Millimetres};
use hosewright_core::spec::{Adapter, Estimated, Role};
use rstest::rstest;

#[rstest]
#[case::hose("hose-missing", Verdict::Stop, |q: &mut Question| q.spec.hose = None)]
#[case::end_a("end-missing", Verdict::Stop, |q: &mut Question| { q.spec.ends.remove(0); })]
#[case::end_b("end-missing", Verdict::Stop, |q: &mut Question| { q.spec.ends.remove(1); })]
#[case::working_pressure("working-pressure-missing", Verdict::Stop, |q: &mut Question| q.service.working_pressure_bar = None)]
#[case::relief("relief-missing", Verdict::Caution, |q: &mut Question| q.service.relief_bar = None)]
#[case::surge("surge-estimated-above", Verdict::Caution, |q: &mut Question| q.service.surge_pressure_bar = None)]
#[case::surge_and_relief("surge-missing", Verdict::Caution, |q: &mut Question| { q.service.surge_pressure_bar = None; q.service.relief_bar = None; })]
#[case::fluid("fluid-missing", Verdict::Stop, |q: &mut Question| q.service.fluid = None)]
#[case::heat("heat-missing", Verdict::Caution, |q: &mut Question| q.service.fluid_max_c = None)]
#[case::cold("cold-missing", Verdict::Caution, |q: &mut Question| q.service.fluid_min_c = None)]
#[case::air("ambient-missing", Verdict::Caution, |q: &mut Question| q.service.ambient_max_c = None)]
#[case::flow("flow-missing", Verdict::Caution, |q: &mut Question| q.service.flow_l_min = None)]
#[case::line("line-missing", Verdict::Caution, |q: &mut Question| q.service.line = None)]
#[case::bend("bend-missing", Verdict::Caution, |q: &mut Question| q.service.bend_radius_mm = None)]
#[case::length("length-missing", Verdict::Caution, |q: &mut Question| q.spec.overall_length_mm = None)]
#[case::cutoff("cutoff-missing", Verdict::Caution, |q: &mut Question| q.spec.ends[1].cutoff_mm = None)]
#[case::gender("end-gender-missing", Verdict::Caution, |q: &mut Question| q.spec.ends[0].gender = None)]
#[case::form("end-form-missing", Verdict::Caution, |q: &mut Question| q.spec.ends[0].form = None)]
#[case::drop("end-drop-missing", Verdict::Caution, |q: &mut Question| q.spec.ends[0].form = Some("elbow90".into()))]
#[case::evidence_of_ends("end-not-read", Verdict::Caution, |q: &mut Question| evidence(q).ends.clear())]
#[case::evidence_of_hose("original-missing", Verdict::Caution, |q: &mut Question| evidence(q).hose.clear())]
#[case::evidence("original-missing", Verdict::Caution, |q: &mut Question| q.found = None)]
fn what_is_left_out_is_a_finding_and_never_a_pass(
    #[case] key: &str,
    #[case] verdict: Verdict,
    #[case] leave_out: Change,
) {
    let checked = asked(leave_out);
    assert_eq!(finding(&checked, key).verdict, verdict);
    assert_eq!(checked.verdict, verdict, "{:?}", objections(&checked));
}

#[test]
fn nothing_at_all_is_a_stop_and_not_an_error() {
    let checked = checked(&Question::default());
    assert_eq!(checked.verdict, Verdict::Stop);
    assert_eq!(checked.assembly_pressure_bar, None);
    assert!(checked.alternatives.is_empty(), "there is nothing to stand in for");
}

#[rstest]
#[case::negative_pressure("service.working_pressure_bar", |q: &mut Question| q.service.working_pressure_bar = Some(Bar(-1.0)))]
#[case::relief("service.relief_bar", |q: &mut Question| q.service.relief_bar = Some(Bar(f64::NAN)))]
#[case::surge("service.surge_pressure_bar", |q: &mut Question| q.service.surge_pressure_bar = Some(Bar(f64::INFINITY)))]
#[case::no_working_pressure("service.working_pressure_bar", |q: &mut Question| q.service.working_pressure_bar = Some(Bar(0.0)))]
#[case::no_relief("service.relief_bar", |q: &mut Question| q.service.relief_bar = Some(Bar(0.0)))]
#[case::no_surge("service.surge_pressure_bar", |q: &mut Question| q.service.surge_pressure_bar = Some(Bar(0.0)))]
#[case::no_flow("service.flow_l_min", |q: &mut Question| q.service.flow_l_min = Some(LitresPerMinute(0.0)))]
#[case::no_printed_pressure("found.printed_pressure_bar", |q: &mut Question| evidence(q).printed_pressure_bar = Some(Bar(0.0)))]
#[case::flow("service.flow_l_min", |q: &mut Question| q.service.flow_l_min = Some(LitresPerMinute(-0.1)))]
#[case::bend("service.bend_radius_mm", |q: &mut Question| q.service.bend_radius_mm = Some(Millimetres(-1.0)))]
#[case::vacuum("service.vacuum_kpa_abs", |q: &mut Question| q.service.vacuum_kpa_abs = Some(-1.0))]
#[case::below_absolute_zero("service.fluid_min_c", |q: &mut Question| q.service.fluid_min_c = Some(Celsius(-274.0)))]
#[case::endless_heat("service.fluid_max_c", |q: &mut Question| q.service.fluid_max_c = Some(Celsius(f64::INFINITY)))]
#[case::air("service.ambient_max_c", |q: &mut Question| q.service.ambient_max_c = Some(Celsius(f64::NAN)))]
#[case::crossed("service.fluid_min_c", |q: &mut Question| q.service.fluid_min_c = Some(Celsius(80.1)))]
#[case::length("spec.overall_length_mm", |q: &mut Question| q.spec.overall_length_mm = Some(Millimetres(-1.0)))]
#[case::turn("spec.turn_deg", |q: &mut Question| q.spec.turn_deg = Some(Degrees(360.0)))]
#[case::turn_back("spec.turn_deg", |q: &mut Question| q.spec.turn_deg = Some(Degrees(-1.0)))]
#[case::cutoff("spec.ends.B.cutoff_mm", |q: &mut Question| q.spec.ends[1].cutoff_mm = Some(Millimetres(-1.0)))]
#[case::drop("spec.ends.A.drop_mm", |q: &mut Question| q.spec.ends[0].drop_mm = Some(Millimetres(-1.0)))]
#[case::rating("spec.ends.A.rating_bar", |q: &mut Question| q.spec.ends[0].rating_bar = Some(Bar(-1.0)))]
#[case::adapter("spec.adapters.rating_bar", |q: &mut Question| q.spec.adapters = vec![Adapter { name: "x".into(), rating_bar: Some(Bar(-1.0)), between: None }])]
#[case::printed("found.printed_pressure_bar", |q: &mut Question| evidence(q).printed_pressure_bar = Some(Bar(-1.0)))]
#[case::end_twice("spec.ends", |q: &mut Question| q.spec.ends[1].role = Role::A)]
#[case::hose_name("spec.hose.type", |q: &mut Question| q.spec.hose = Some(hose("EN 853", "9XX", 16.0)))]
#[case::hose_size("spec.hose.dn", |q: &mut Question| q.spec.hose = Some(hose("EN 853", "2SN", 17.0)))]
#[case::end_name("spec.ends.A.family", |q: &mut Question| q.spec.ends[0].family = "bayonet".into())]
fn what_can_not_be_is_an_error_that_names_its_field(#[case] field: &str, #[case] spoil: Change) {
    let mut question = known();
    spoil(&mut question);
    let error = check(catalogue(), &question).expect_err("it can not be");
    assert_eq!(error.field(), field);
    assert!(!error.to_string().is_empty());
}

#[rstest]
#[case::full_vacuum(|q: &mut Question| q.service.vacuum_kpa_abs = Some(0.0))]
#[case::one_temperature(|q: &mut Question| q.service.fluid_min_c = Some(Celsius(80.0)))]
#[case::full_turn(|q: &mut Question| q.spec.turn_deg = Some(Degrees(359.9)))]
#[case::absolute_zero(|q: &mut Question| q.service.fluid_min_c = Some(Celsius(-273.15)))]
fn what_can_be_is_answered(#[case] change: Change) {
    let mut question = known();
    change(&mut question);
    let answer: Result<Checked, CheckError> = check(catalogue(), &question);
    assert!(answer.is_ok(), "{answer:?}");
}

#[test]
fn what_was_not_looked_at_is_listed() {
    let left_out = |checked: &Checked| checked.not_checked.iter().map(|one| one.what).collect::<Vec<_>>();
    let whole = checked(&known());
    assert_eq!(left_out(&whole), ["route", "pressure-drop"], "which no check looks at");
    let same_for_same = asked(|question| {
        question.service.flow_l_min = None;
        question.service.bend_radius_mm = None;
        question.service.surge_pressure_bar = None;
    });
    let said = left_out(&same_for_same);
    for what in ["flow", "bend", "surge", "route"] {
        assert!(said.contains(&what), "{what} in {said:?}");
    }
}

#[test]
fn a_surge_that_was_worked_out_was_not_measured_and_is_listed() {
    let checked = asked(|question| {
        question.service.estimated =
            Some(Estimated { surge_pressure_bar: question.service.surge_pressure_bar, bend_radius_mm: None });
    });
    let surge = checked.not_checked.iter().filter(|one| one.what == "surge").count();
    assert_eq!(surge, 1, "{:?}", checked.not_checked);
}
