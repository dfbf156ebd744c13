//! Every limit at its figure and just past it.

use super::line::{asked, catalogue, checked, dn, evidence, finding, has, hose, known, name, objections};
use hosewright_core::catalogue::Basis;
use hosewright_core::check::{Question, Verdict, Weakest};
use hosewright_core::quantity::{Bar, Celsius, LitresPerMinute, Millimetres};
use hosewright_core::spec::{Adapter, Line};
use rstest::rstest;

#[test]
fn a_line_of_which_everything_is_known_and_within_its_limit_passes() {
    let checked = checked(&known());
    assert_eq!(objections(&checked), Vec::<&str>::new());
    assert_eq!(checked.verdict, Verdict::Pass);
    assert_eq!(checked.assembly_pressure_bar, Some(Bar(250.0)));
    assert_eq!(checked.weakest, Some(Weakest::Hose));
    assert_eq!(checked.cut_length_mm, Some(Millimetres(1180.0)));
    assert_eq!(checked.length_tolerance_mm, Some([-4.0, 12.0]), "DIN 20066, 630 to 1250 mm, up to DN 25");
    for key in ["pressure-ok", "bend-ok", "heat-ok", "fluid-ok", "flow-ok", "end-ok", "size-ok"] {
        assert!(has(&checked, key), "{key} is listed: what was looked at is shown");
    }
}

/// Relief and peak are never below the pressure the line works at.
fn works_at(question: &mut Question, bar: f64) {
    question.service.working_pressure_bar = Some(Bar(bar));
    question.service.relief_bar = Some(Bar(bar));
    question.service.surge_pressure_bar = Some(Bar(bar));
}

/// A limit: how a question is put at a value, a value exactly at the limit and one just past it, and the
/// case of the one past it.
type Put = fn(&mut Question, f64);

#[rstest]
#[case::hose_pressure_by_surge("pressure-above-rating", |q: &mut Question, v: f64| q.service.surge_pressure_bar = Some(Bar(v)), 250.0, 250.01)]
#[case::hose_pressure_by_relief("pressure-above-rating", |q: &mut Question, v: f64| q.service.relief_bar = Some(Bar(v)), 250.0, 250.01)]
#[case::hose_pressure_by_work("pressure-above-rating", works_at, 250.0, 250.01)]
#[case::own_rating_of_an_end("pressure-above-rating", |q: &mut Question, v: f64| q.spec.ends[0].rating_bar = Some(Bar(v)), 250.0, 249.99)]
#[case::rating_of_an_adapter("pressure-above-rating", |q: &mut Question, v: f64| q.spec.adapters = vec![Adapter { name: "tee".into(), rating_bar: Some(Bar(v)), between: None }], 250.0, 249.99)]
#[case::hot_fluid("heat-above-limit", |q: &mut Question, v: f64| q.service.fluid_max_c = Some(Celsius(v)), 100.0, 100.01)]
#[case::cold_fluid("cold-below-limit", |q: &mut Question, v: f64| q.service.fluid_min_c = Some(Celsius(v)), -40.0, -40.01)]
#[case::hot_air("ambient-above-limit", |q: &mut Question, v: f64| q.service.ambient_max_c = Some(Celsius(v)), 100.0, 100.01)]
#[case::water_based_heat("fluid-heat-above-limit", |q: &mut Question, v: f64| { q.service.fluid = Some("HFC".into()); q.service.fluid_max_c = Some(Celsius(v)) }, 70.0, 70.01)]
#[case::water_frost("frost-below-limit", |q: &mut Question, v: f64| { q.service.fluid = Some("water".into()); q.service.fluid_max_c = Some(Celsius(60.0)); q.service.fluid_min_c = Some(Celsius(v)) }, 0.0, -0.01)]
#[case::bend("bend-too-tight", |q: &mut Question, v: f64| q.service.bend_radius_mm = Some(Millimetres(v)), 200.0, 199.99)]
#[case::length_left_to_cut("cut-length-impossible", |q: &mut Question, v: f64| q.spec.overall_length_mm = Some(Millimetres(v)), 60.01, 60.0)]
#[case::printed_pressure("printed-pressure-above", |q: &mut Question, v: f64| evidence(q).printed_pressure_bar = Some(Bar(v)), 250.0, 250.01)]
fn a_limit_may_be_reached_and_not_passed(
    #[case] key: &str,
    #[case] put: Put,
    #[case] at: f64,
    #[case] past: f64,
) {
    let at_limit = asked(|question| put(question, at));
    assert_eq!(objections(&at_limit), Vec::<&str>::new(), "{at} is still within");
    let past_limit = asked(|question| put(question, past));
    assert_eq!(finding(&past_limit, key).verdict, Verdict::Stop, "{past} is past the limit");
    assert_eq!(past_limit.verdict, Verdict::Stop);
    assert!(at_limit.cut_length_mm.is_some());
    assert_eq!(past_limit.cut_length_mm.is_none(), key == "cut-length-impossible");
}

#[test]
fn a_finding_carries_its_value_its_limit_and_where_that_comes_from() {
    let checked = asked(|question| question.service.bend_radius_mm = Some(Millimetres(150.0)));
    let bend = finding(&checked, "bend-too-tight");
    assert_eq!((bend.value, bend.limit, bend.unit), (Some(150.0), Some(200.0), "mm"));
    assert_eq!(bend.basis, Basis::Published);
    assert!(!bend.source.is_empty(), "the limit names its source");
    assert_eq!(checked.findings[0].case.key, "bend-too-tight", "the gravest comes first");
    let surge = asked(|question| question.service.surge_pressure_bar = Some(Bar(300.0)));
    let surge = finding(&surge, "pressure-above-rating");
    assert_eq!((surge.value, surge.limit, surge.unit), (Some(300.0), Some(250.0), "bar"));
    assert_eq!(name(surge, "part"), Some("hose"));
}

/// Bore 15.9 mm, v = 21.22 Q / d^2 (geometry); usual speeds of the public power-unit maker guide.
#[rstest]
#[case::pressure(Line::Pressure, 10.0)]
#[case::pilot(Line::Pilot, 10.0)]
#[case::cylinder(Line::Cylinder, 10.0)]
#[case::back_to_tank(Line::Return, 4.0)]
#[case::case_drain(Line::CaseDrain, 4.0)]
#[case::suction(Line::Suction, 1.5)]
fn oil_faster_than_usual_is_a_caution_of_prudence(#[case] line: Line, #[case] fastest: f64) {
    let bore = catalogue().hose("EN 853", "2SN", dn(16.0)).expect("in the tables").id_nom_mm.get();
    let at = |speed: f64| {
        asked(|question| {
            question.service.line = Some(line);
            question.service.flow_l_min = Some(LitresPerMinute(speed * bore * bore / 21.2207));
        })
    };
    let usual = at(fastest * 0.9999);
    assert_eq!(finding(&usual, "flow-ok").limit, Some(fastest));
    let fast = at(fastest * 1.0001);
    let too_fast = finding(&fast, "flow-too-fast-stopped");
    assert_eq!((too_fast.verdict, too_fast.unit), (Verdict::Caution, "m/s"));
    let speed = too_fast.value.expect("a speed");
    assert!((speed / fastest - 1.0001).abs() < 1e-5, "{speed} m/s by the formula, {fastest} usual");
}

#[test]
fn a_bend_limit_that_nobody_knows_stops() {
    let checked = asked(|question| question.spec.hose = Some(hose("SAE J517", "100R18", 16.0)));
    let bend = finding(&checked, "bend-limit-unknown");
    assert_eq!((bend.verdict, bend.value, bend.limit), (Verdict::Stop, Some(220.0), None));
}

/// 100R4 of DN 25: 17 kPa absolute, recalled; the suction hose of the tables.
#[rstest]
#[case::at_its_rating(Some(17.0), "vacuum-unverified", Verdict::Caution)]
#[case::deeper(Some(16.99), "vacuum-too-deep", Verdict::Stop)]
#[case::nobody_said(None, "vacuum-missing", Verdict::Caution)]
fn a_suction_hose_is_held_to_its_vacuum(
    #[case] vacuum: Option<f64>,
    #[case] key: &str,
    #[case] verdict: Verdict,
) {
    let checked = asked(|question| {
        question.spec.hose = Some(hose("SAE J517", "100R4", 25.0));
        question.service.line = Some(Line::Suction);
        question.service.vacuum_kpa_abs = vacuum;
    });
    let finding_of_vacuum = finding(&checked, key);
    assert_eq!(finding_of_vacuum.verdict, verdict);
    assert_eq!((finding_of_vacuum.limit, finding_of_vacuum.unit), (Some(17.0), "kPa abs"));
    assert_eq!(finding(&checked, "suction-helix-ok").verdict, Verdict::Pass);
}

#[test]
fn a_hose_without_a_vacuum_rating_is_not_sucked_on() {
    let suction = asked(|question| question.service.line = Some(Line::Suction));
    assert_eq!(finding(&suction, "vacuum-unrated").verdict, Verdict::Stop);
    assert_eq!(finding(&suction, "suction-helix-missing").verdict, Verdict::Caution);
    let vacuum_elsewhere = asked(|question| question.service.vacuum_kpa_abs = Some(101.3));
    assert_eq!(finding(&vacuum_elsewhere, "vacuum-unrated").value, Some(101.3));
    let atmosphere = asked(|question| question.service.vacuum_kpa_abs = Some(101.325));
    assert_eq!(atmosphere.verdict, Verdict::Pass, "the atmosphere is no vacuum");
    assert!(!has(&atmosphere, "suction-helix-missing"), "only a suction line needs a helix");
}

#[rstest]
#[case::at_its_limit(93.0, false)]
#[case::past_it(93.01, true)]
fn thermoplastic_is_held_to_its_own_heat_in_oil(#[case] hottest: f64, #[case] stops: bool) {
    // The row of EN 855 R7 says 100 C; PA and TPE-E in oil bear 93 C (public SAE type summary).
    let checked = asked(|question| {
        question.spec.hose = Some(hose("EN 855", "R7", 16.0));
        question.service.fluid_max_c = Some(Celsius(hottest));
    });
    assert_eq!(has(&checked, "fluid-heat-above-limit"), stops, "{:?}", objections(&checked));
}
