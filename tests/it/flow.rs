//! Flow, viscosity and surge against published values, and what must hold of any line.

use hosewright_core::catalogue::Catalogue;
use hosewright_core::check::Verdict;
use hosewright_core::flow::{
    Elbow, FlowAnswer, FlowQuestion, Fluid, OilAnswer, OilQuestion, Regime, SurgeQuestion, flow, oil, surge,
    velocity,
};
use hosewright_core::quantity::{Celsius, Degrees, LitresPerMinute, Metres, Millimetres};
use hosewright_tests::flow_figures::flow_cases;
use hosewright_tests::surge_figures::surge_cases;
use hosewright_tests::vectors::{assert_all_agree, rows};
use hosewright_tests::viscosity_figures::viscosity_cases;
use proptest::prelude::*;
use rstest::rstest;
use serde_json::json;

#[test]
fn flow_agrees_with_published_and_library_values() {
    assert_all_agree("flow_cases.csv", &flow_cases());
}

#[test]
fn viscosity_agrees_with_the_standards_values() {
    assert_all_agree("viscosity_cases.csv", &viscosity_cases());
}

#[test]
fn surge_agrees_with_published_and_closed_form_values() {
    assert_all_agree("surge_cases.csv", &surge_cases());
}

/// One row calls Re 2179 transitional that another table of the file, and the formula it is reckoned with, call laminar.
#[test]
fn the_regime_is_named_as_in_the_check_values() {
    let differ: Vec<String> = rows("flow_cases.csv")
        .iter()
        .filter(|row| !row.text("regime").is_empty() && row.maybe("reynolds").is_some())
        .filter(|row| {
            let name = serde_json::to_value(Regime::at(row.number("reynolds"))).unwrap();
            name != row.text("regime")
        })
        .map(|row| row.id().to_owned())
        .collect();
    assert_eq!(differ, ["DP-08"]);
}

#[test]
fn a_question_in_the_trades_writing_is_answered() {
    let question: FlowQuestion = serde_json::from_value(json!({
        "flow_l_min": "15.850323 gpm", "bore_mm": "1/2 in", "length_m": "3 m",
        "fluid": {"iso_vg": 46, "viscosity_index": 95}, "temp_c": "104 F", "elbows": [{"angle_deg": 90}]
    }))
    .unwrap();
    let answer = serde_json::to_value(flow(&question).unwrap()).unwrap();
    let near = |key: &str, expected: f64, tolerance: f64| {
        let found = answer[key].as_f64().unwrap();
        assert!((found / expected - 1.0).abs() < tolerance, "{key}: {found} and not {expected}");
    };
    // 60 l/min of the oil of case DP-08, and an elbow of 30 times 0.02714 velocity heads.
    near("velocity_m_s", 7.894101, 1e-6);
    near("reynolds", 2179.4583, 1e-6);
    near("friction_factor", 0.029365095, 1e-6);
    near("kinematic_viscosity_mm2_s", 46.0, 1e-6);
    near("pressure_drop_bar", 1.8760483 + 30.0 * 0.02714119 * 868.0 * 7.894101 * 7.894101 / 2e5, 1e-3);
    assert_eq!(answer["regime"], "laminar");
}

#[test]
fn flow_and_bore_alone_give_the_velocity() {
    let question: FlowQuestion = serde_json::from_value(json!({"flow_l_min": 40, "bore_mm": 12.7})).unwrap();
    let answer = flow(&question).unwrap();
    assert!((answer.velocity_m_s - 5.262734).abs() < 1e-6);
    assert_eq!((answer.reynolds, answer.pressure_drop_bar), (None, None));
}

#[rstest]
#[case(json!({"flow_l_min": 40, "bore_mm": 12.7, "lenght_m": 3}), "lenght_m")]
#[case(json!({"flow_l_min": 40, "bore_mm": 12.7, "fluid": {"vg": 46}}), "vg")]
#[case(json!({"flow_l_min": 40, "bore_mm": 12.7, "elbows": [{"angle": 90}]}), "angle")]
#[case(json!({"bore_mm": 12.7}), "flow_l_min")]
fn a_wrong_key_is_named(#[case] question: serde_json::Value, #[case] key: &str) {
    let error = serde_json::from_value::<FlowQuestion>(question).unwrap_err().to_string();
    assert!(error.contains(key), "{error}");
}

#[test]
fn a_rigid_line_needs_no_more_than_the_fluid() {
    let question: SurgeQuestion = serde_json::from_value(json!({"bulk_modulus_pa": 1.5e9})).unwrap();
    let answer = serde_json::to_value(surge(&question).unwrap()).unwrap();
    assert!((answer["effective_bulk_modulus_pa"].as_f64().unwrap() / 1.5e9 - 1.0).abs() < 1e-14);
    assert_eq!(answer["wave_speed_m_s"], serde_json::Value::Null);
    assert!(serde_json::from_value::<SurgeQuestion>(json!({"bulk_modulus_pa": 1.5e9, "wall": 3})).is_err());
}

fn line(flow_l_min: f64, bore_mm: f64, length_m: f64, viscosity: f64) -> FlowQuestion {
    FlowQuestion {
        flow_l_min: LitresPerMinute(flow_l_min),
        bore_mm: Millimetres(bore_mm),
        length_m: Some(Metres(length_m)),
        fluid: Some(Fluid {
            kinematic_viscosity_mm2_s: Some(viscosity),
            density_kg_m3: Some(870.0),
            ..Fluid::default()
        }),
        temp_c: None,
        roughness_mm: None,
        elbows: vec![
            Elbow { angle_deg: Some(Degrees(90.0)), ..Elbow::default() },
            Elbow { angle_deg: Some(Degrees(60.0)), radius_ratio: Some(2.5), ..Elbow::default() },
        ],
    }
}

fn drop(question: &FlowQuestion) -> f64 {
    match flow(question) {
        Ok(FlowAnswer { pressure_drop_bar: Some(drop), .. }) => drop.get(),
        other => panic!("no pressure drop: {other:?}"),
    }
}

proptest! {
    #[test]
    fn more_flow_and_more_length_lose_more(
        flow_l_min in 0.5..800.0_f64,
        bore in 4.0..76.0_f64,
        length in 0.1..50.0_f64,
        viscosity in 2.0..2000.0_f64,
        more in 1.001..3.0_f64,
    ) {
        let here = drop(&line(flow_l_min, bore, length, viscosity));
        prop_assert!(drop(&line(flow_l_min * more, bore, length, viscosity)) > here);
        prop_assert!(drop(&line(flow_l_min, bore, length * more, viscosity)) > here);
    }

    #[test]
    fn a_wider_bore_runs_slower(flow_l_min in 0.5..800.0_f64, bore in 4.0..76.0_f64, more in 1.001..3.0_f64) {
        let flow_l_min = LitresPerMinute(flow_l_min);
        prop_assert!(velocity(flow_l_min, Millimetres(bore * more)) < velocity(flow_l_min, Millimetres(bore)));
    }

    #[test]
    fn any_question_is_answered_or_refused_with_numbers_only(
        flow_l_min in any::<f64>(), bore in any::<f64>(), length in any::<f64>(),
        iso_vg in any::<f64>(), index in any::<f64>(), temp in any::<f64>(),
    ) {
        let question = FlowQuestion {
            flow_l_min: LitresPerMinute(flow_l_min),
            bore_mm: Millimetres(bore),
            length_m: Some(Metres(length)),
            fluid: Some(Fluid { iso_vg: Some(iso_vg), viscosity_index: Some(index), ..Fluid::default() }),
            temp_c: Some(Celsius(temp)),
            roughness_mm: None,
            elbows: Vec::new(),
        };
        match flow(&question) {
            Ok(answer) => prop_assert!(answer.pressure_drop_bar.unwrap().get().is_finite(), "{answer:?}"),
            Err(error) => prop_assert!(error.to_string().contains(error.field()), "{error}"),
        }
    }

    #[test]
    fn within_the_ranges_every_answer_is_finite(
        flow_l_min in prop_oneof![Just(0.001), Just(1e6), 0.001..1e6_f64],
        bore in prop_oneof![Just(0.1), Just(1e4), 0.1..1e4_f64],
        viscosity in prop_oneof![Just(0.01), Just(2e7), 0.01..2e7_f64],
    ) {
        let answer = flow(&line(flow_l_min, bore, 1e6, viscosity)).unwrap();
        prop_assert!(answer.velocity_m_s.is_finite());
        prop_assert!(answer.friction_factor.unwrap().is_finite(), "{answer:?}");
        prop_assert!(answer.pressure_drop_bar.unwrap().get().is_finite(), "{answer:?}");
    }
}

fn oil_question(change: impl FnOnce(&mut serde_json::Value)) -> OilQuestion {
    let mut question = json!({
        "spec": {"hose": {"standard": "EN 853", "type": "2SN", "dn": 16}, "overall_length_mm": 2000},
        "service": {"flow_l_min": 60, "line": "pressure", "fluid": "HM", "fluid_max_c": 60, "fluid_min_c": -10,
                    "working_pressure_bar": 100},
    });
    change(&mut question);
    serde_json::from_value(question).expect("the question can be read")
}

fn oil_of(change: impl FnOnce(&mut serde_json::Value)) -> OilAnswer {
    oil(Catalogue::embedded(), &oil_question(change)).expect("it is answered")
}

/// v = 21.22 Q / d2 (rule L084), against 3 to 10 m/s in a pressure line (rules L073, L074).
#[test]
fn the_speed_of_the_oil_is_held_against_what_is_usual_in_the_line() {
    let slow = oil_of(|_| {});
    assert!((slow.warm.velocity_m_s / (21.22 * 60.0 / 15.9_f64.powi(2)) - 1.0).abs() < 1e-3);
    let usual = slow.usual.expect("the line is known");
    assert_eq!((usual.low_m_s, usual.high_m_s, slow.verdict), (3.0, 10.0, Verdict::Pass));
    let fast = oil_of(|question| question["service"]["flow_l_min"] = json!(150));
    assert_eq!(fast.verdict, Verdict::Caution);
    let first = &fast.sizes[0];
    assert_eq!((first.kind.as_str(), first.dn.get()), ("2SN", 19.0));
    assert!(fast.sizes.iter().all(|size| size.velocity_m_s <= 10.0), "{:?}", fast.sizes);
    let unknown = oil_of(|question| question["service"]["line"] = json!(null));
    assert_eq!((unknown.verdict, unknown.usual), (Verdict::Caution, None), "not known is no pass");
}

#[test]
fn what_nobody_gave_is_named_with_its_basis_and_what_was_given_is_not() {
    let taken = |answer: &OilAnswer| answer.assumed.iter().map(|one| one.what).collect::<Vec<_>>();
    let all = oil_of(|_| {});
    for what in [
        "oil-usual-grade",
        "oil-usual-index",
        "oil-density",
        "oil-bulk-modulus",
        "rigid-wall",
        "sudden-closure",
    ] {
        assert!(taken(&all).contains(&what), "{what} in {:?}", taken(&all));
    }
    assert!(all.assumed.iter().all(|one| !one.provenance.source.is_empty()));
    let given = oil_of(|question| {
        question["fluid"] = json!({"iso_vg": 68, "viscosity_index": 100, "density_kg_m3": 880});
        question["bulk_modulus_pa"] = json!(1.5e9);
        question["volumetric_expansion_cm3_m_mpa"] = json!(0.5);
        question["closure_time_s"] = json!(0.05);
    });
    assert_eq!(taken(&given), ["smooth-bore"]);
    assert!(
        all.cold.expect("a cold start").pressure_drop_bar > all.warm.pressure_drop_bar,
        "stiff oil costs more"
    );
}

/// Joukowsky: rise = density x wave speed x speed, wave speed = root of modulus over density for a rigid wall.
#[test]
fn a_sudden_stop_gives_joukowskys_rise_and_a_soft_wall_less() {
    let rigid = oil_of(|_| {});
    let density = rigid.warm.density_kg_m3.expect("a density");
    let rise = density * (1.7e9 / density).sqrt() * rigid.warm.velocity_m_s / 1e5;
    let stopped = rigid.surge.expect("it is reckoned");
    let found = stopped.answer.pressure_rise_bar.expect("a rise").get();
    assert!((found / rise - 1.0).abs() < 1e-9, "{found} and not {rise}");
    assert!((stopped.peak_bar.expect("a peak").get() - found - 100.0).abs() < 1e-9);
    let soft = oil_of(|question| question["volumetric_expansion_cm3_m_mpa"] = json!(1.0));
    assert!(soft.surge.expect("it is reckoned").answer.pressure_rise_bar.expect("a rise").get() < found);
}

proptest! {
    /// What is taken where nobody gave it is a bound: no wall and no valve gives a higher peak.
    #[test]
    fn the_wall_and_the_valve_that_are_taken_give_the_highest_rise(
        expansion in 0.0..30.0_f64,
        closure in 0.0..2.0_f64,
    ) {
        let rise = |answer: OilAnswer| answer.surge.and_then(|surge| surge.answer.pressure_rise_bar).expect("a rise").get();
        let taken = rise(oil_of(|question| question["closure_time_s"] = json!(closure)));
        let worst = rise(oil_of(|_| {}));
        let given = rise(oil_of(|question| {
            question["volumetric_expansion_cm3_m_mpa"] = json!(expansion);
            question["closure_time_s"] = json!(closure);
        }));
        prop_assert!(given <= taken * (1.0 + 1e-12) && taken <= worst, "{given}, {taken}, {worst}");
    }
}

#[rstest]
#[case("/spec/hose", "spec.hose")]
#[case("/service/flow_l_min", "service.flow_l_min")]
fn what_the_oil_needs_is_named(#[case] path: &str, #[case] field: &str) {
    let question = oil_question(|question| *question.pointer_mut(path).unwrap() = json!(null));
    assert_eq!(oil(Catalogue::embedded(), &question).unwrap_err().field(), field);
}
