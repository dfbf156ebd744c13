//! A routing as a technician says it: how the ports face, and what would cure it.

use hosewright_core::catalogue::{Basis, Catalogue};
use hosewright_core::check::{Finding, Verdict};
use hosewright_core::route::field::{Change, Cure, FieldQuestion, FieldRouted, field};
use rstest::rstest;
use serde_json::{Value, json};
use std::f64::consts::PI;

#[track_caller]
fn asked(question: &Value) -> FieldQuestion {
    serde_json::from_value(question.clone()).expect("the question can be read")
}

#[track_caller]
fn routed(question: &Value) -> FieldRouted {
    field(Catalogue::embedded(), &asked(question)).expect("it is answered")
}

fn end(role: &str, form: &str, drop_mm: f64) -> Value {
    json!({"role": role, "family": "JIC 37 flare", "size": "-10", "gender": "female", "form": form, "drop_mm": drop_mm})
}

/// A hose of 20 mm that may be bent to 100 mm at the inside and keeps its length, on ends that reach nowhere.
fn bare(facing: &str, closed: Value, overall_mm: f64) -> Value {
    json!({
        "spec": {
            "hose": {"standard": "EN 853", "type": "2SN", "dn": 16, "min_bend_radius_mm": 100},
            "ends": [end("A", "straight", 0.0), end("B", "straight", 0.0)],
            "overall_length_mm": overall_mm,
        },
        "hose_od_mm": 20, "length_change_pct": [0, 0], "fixed": true,
        "facing": facing, "closed": closed, "a": {"rigid_mm": 0}, "b": {"rigid_mm": 0},
    })
}

/// Ends of 60 mm on a machine that moves.
fn moving(facing: &str, closed: Value, open: Value) -> Value {
    let mut question = bare(facing, closed, 700.0);
    question["a"] = json!({"rigid_mm": 60});
    question["b"] = json!({"rigid_mm": 60});
    question["length_change_pct"] = json!([-4, 2]);
    question["fixed"] = json!(false);
    question["open"] = open;
    question
}

#[track_caller]
fn inside(routed: &FieldRouted) -> f64 {
    let shape = routed.routed.as_ref().expect("it has a shape");
    shape.min_inside_radius_mm.expect("it bends").get()
}

#[track_caller]
fn finding<'a>(routed: &'a FieldRouted, case: &str) -> &'a Finding {
    let found = routed.findings.iter().find(|finding| finding.case.key == case);
    found.unwrap_or_else(|| panic!("no {case} in {:#?}", routed.findings))
}

fn says(routed: &FieldRouted, case: &str) -> bool {
    routed.findings.iter().any(|finding| finding.case.key == case)
}

/// Circular arcs are exact elasticas: a half and a quarter circle, less half of the hose's 20 mm.
#[rstest]
#[case::side_by_side("u", json!({"gap_mm": 400}), PI * 200.0, 190.0)]
#[case::square("right-angle", json!({"gap_mm": 300, "rise_mm": 300}), PI * 150.0, 290.0)]
#[case::drawn("free", json!({"a": {"position_mm": [5, 5, 0], "direction": [0, 0, 3]},
    "b": {"position_mm": [5, 405, 0], "direction": [0, 0, 1]}}), PI * 200.0, 190.0)]
fn a_circle_is_a_circle(
    #[case] facing: &str,
    #[case] closed: Value,
    #[case] length: f64,
    #[case] radius: f64,
) {
    let answered = routed(&bare(facing, closed, length));
    assert!((inside(&answered) - radius).abs() < 1e-3, "{}", inside(&answered));
}

/// Ports on one line, as far apart as the hose is long.
#[rstest]
#[case("facing", json!({"gap_mm": 500}))]
#[case("offset", json!({"gap_mm": 500, "rise_mm": 0}))]
fn a_straight_hose_bends_nowhere(#[case] facing: &str, #[case] closed: Value) {
    let answered = routed(&bare(facing, closed, 500.0));
    assert!(says(&answered, "route-straight-line-ok"), "{:#?}", answered.findings);
    assert_eq!((answered.verdict, answered.worst_pose), (Verdict::Pass, None));
}

#[test]
fn an_elbow_is_part_of_the_way() {
    // Square elbows towards each other, 60 mm up and 80 mm on: the rest of the hose runs straight between.
    let mut question = bare("u", json!({"gap_mm": 500}), 500.0);
    question["spec"]["ends"] = json!([end("A", "elbow90", 60.0), end("B", "elbow90", 60.0)]);
    question["a"] = json!({"rigid_mm": 80});
    question["b"] = json!({"rigid_mm": 80});
    let answered = routed(&question);
    assert!(says(&answered, "route-straight-line-ok"));
    let drawn = &answered.poses[0].a.axis_mm;
    for (point, right) in drawn.iter().flatten().zip([0.0, 0.0, 0.0, 0.0, 60.0, 0.0, 80.0, 60.0, 0.0]) {
        assert!((point - right).abs() < 1e-9, "{drawn:?}");
    }
    assert_eq!(answered.turn_deg.expect("both are bent").get(), 0.0, "both noses point down");
    let free = answered.routed.expect("a shape").free_length_mm.get();
    assert!((free - 340.0).abs() < 1e-9, "overall less both rigid ends: {free}");
}

/// A's port looks up and B's down on it: one nose below the hose, one above.
#[test]
fn the_turn_that_the_ports_ask_for_is_told_and_another_is_stopped() {
    let drawn =
        |position: [f64; 3], direction: [f64; 3]| json!({"position_mm": position, "direction": direction});
    let ports =
        json!({"a": drawn([0.0; 3], [0.0, 1.0, 0.0]), "b": drawn([600.0, 120.0, 0.0], [0.0, -1.0, 0.0])});
    let mut question = bare("free", ports, 600.0);
    question["spec"]["ends"] = json!([end("A", "elbow90", 60.0), end("B", "elbow90", 60.0)]);
    question["a"] = json!({"rigid_mm": 80});
    question["b"] = json!({"rigid_mm": 80});
    let untold = routed(&question);
    assert_eq!(untold.turn_deg.expect("both are bent").get(), 180.0);
    assert_eq!(finding(&untold, "route-turn-needed").verdict, Verdict::Caution);
    question["spec"]["turn_deg"] = json!(180);
    assert_eq!(finding(&routed(&question), "route-turn-ok").verdict, Verdict::Pass);
    question["spec"]["turn_deg"] = json!(90);
    let twisted = routed(&question);
    assert_eq!(finding(&twisted, "route-turn-differs").verdict, Verdict::Stop);
    assert_eq!(twisted.verdict, Verdict::Stop);
}

#[rstest]
#[case(4.0, "route-twist-ok", Verdict::Pass)]
#[case(8.0, "route-twist", Verdict::Caution)]
fn a_port_that_rolls_twists_the_hose_by_as_much(
    #[case] roll_deg: f64,
    #[case] case: &str,
    #[case] verdict: Verdict,
) {
    let question = moving("u", json!({"gap_mm": 420}), json!({"gap_mm": 420, "roll_deg": roll_deg}));
    let answered = routed(&question);
    let twist = answered.routed.as_ref().expect("a shape").poses[8].twist_deg.get();
    assert!((twist - roll_deg).abs() < 1e-6, "{twist}");
    let found = finding(&answered, case);
    assert_eq!((found.verdict, found.basis, found.limit), (verdict, Basis::Published, Some(5.0)));
}

#[test]
fn nine_poses_lead_from_closed_to_open() {
    let answered = routed(&moving("u", json!({"gap_mm": 420}), json!({"gap_mm": 460, "rise_mm": 60})));
    let travel: Vec<f64> = answered.poses.iter().map(|pose| pose.travel).collect();
    assert_eq!((travel.len(), travel[0], travel[8]), (9, 0.0, 1.0));
    let shapes = answered.routed.expect("a shape").poses;
    assert_eq!(shapes.len(), 9);
    for (drawn, shape) in answered.poses.iter().zip(&shapes) {
        let ends = [(&drawn.a, shape.points_mm.first()), (&drawn.b, shape.points_mm.last())];
        for (end, point) in ends {
            let (end, point) = (end.axis_mm.last().expect("an end"), point.expect("points"));
            let apart = end.iter().zip(point).map(|(a, b)| (a - b).powi(2)).sum::<f64>().sqrt();
            assert!(apart < 0.1, "the hose begins {apart} mm from its ferrule");
        }
    }
}

#[test]
fn a_hose_that_does_not_reach_is_an_answer_with_the_length_it_needs() {
    let answered = routed(&bare("facing", json!({"gap_mm": 500}), 450.0));
    let found = finding(&answered, "route-too-short");
    assert_eq!((answered.verdict, found.value), (Verdict::Stop, Some(450.0)));
    assert!(answered.routed.is_none());
    assert_eq!(answered.poses[0].b.axis_mm[0], [500.0, 0.0, 0.0], "the ports are drawn all the same");
    assert_eq!(found.limit, Some(500.0), "the shortest that reaches");
}

/// DGUV Regel 113-020 figure 9: 1.5 diameters of straight hose behind a ferrule; trade guides: at least one.
#[rstest]
#[case::room(640.0, "route-behind-ok", Verdict::Pass)]
#[case::a_little(545.0, "route-behind-short", Verdict::Caution)]
#[case::none(425.0, "route-behind-none", Verdict::Stop)]
fn the_hose_lies_straight_behind_its_ferrules(
    #[case] gap_mm: f64,
    #[case] case: &str,
    #[case] verdict: Verdict,
) {
    // A half circle between the ports less the straight parts: the gap sets how much room is left.
    let mut question = bare("u", json!({"gap_mm": gap_mm}), PI * gap_mm / 2.0);
    question["spec"]["hose"]["min_bend_radius_mm"] = json!(196);
    let answered = routed(&question);
    let found = answered
        .findings
        .iter()
        .find(|finding| finding.rule == "route-behind-ferrule")
        .expect("it is looked at");
    assert_eq!((found.case.key, found.verdict), (case, verdict), "{found:#?}");
}

/// What a cure says, done to the question it is for.
fn cured(question: &Value, cure: &Cure) -> Value {
    let mut question = question.clone();
    question["spec"]["overall_length_mm"] = json!(cure.overall_length_mm.get());
    if let Some(turn) = cure.turn_deg {
        question["spec"]["turn_deg"] = json!(turn.get());
    }
    if let Some(role) = cure.end {
        let (place, side) = if format!("{role:?}") == "A" { (0, "a") } else { (1, "b") };
        let end = &mut question["spec"]["ends"][place];
        end["form"] = json!(cure.form);
        end["drop_mm"] = json!(cure.drop_mm.map(|drop| drop.get()));
        question[side] = json!({"rigid_mm": cure.rigid_mm.map(|rigid| rigid.get()), "points": cure.points});
    }
    question
}

fn tight() -> [Value; 4] {
    let mut elbow = moving("u", json!({"gap_mm": 300}), json!({"gap_mm": 340, "rise_mm": 40}));
    elbow["spec"]["ends"][0] = end("A", "elbow90", 50.0);
    elbow["a"] = json!({"rigid_mm": 70, "points": "away"});
    [
        moving("u", json!({"gap_mm": 150}), json!({"gap_mm": 200, "rise_mm": 60, "angle_deg": 20})),
        moving(
            "offset",
            json!({"gap_mm": 500, "rise_mm": 150}),
            json!({"gap_mm": 560, "rise_mm": 40, "offset_mm": 60}),
        ),
        moving(
            "right-angle",
            json!({"gap_mm": 150, "rise_mm": 150}),
            json!({"gap_mm": 200, "rise_mm": 120, "angle_deg": 25}),
        ),
        elbow,
    ]
}

#[test]
fn every_cure_was_routed_and_keeps_what_it_says() {
    let mut kinds = Vec::new();
    for question in tight() {
        let ill = routed(&question);
        assert_eq!(ill.verdict, Verdict::Stop, "{:#?}", ill.findings);
        assert!(!ill.cures.is_empty(), "nothing would cure {question}");
        for cure in &ill.cures {
            kinds.push(cure.change);
            let better = routed(&cured(&question, cure));
            assert!(
                (inside(&better) - cure.min_inside_radius_mm.expect("it bends").get()).abs() < 1e-6,
                "{cure:#?}"
            );
            // Drop and rigid length stand in the question now, so that nothing is assumed.
            assert!(better.verdict <= cure.verdict, "{cure:#?} {:#?}", better.findings);
            assert!(!cure.assumed || cure.verdict == Verdict::Caution, "what is assumed is no pass");
            assert!(cure.assumed || better.verdict == cure.verdict, "{cure:#?}");
        }
    }
    for kind in [Change::Length, Change::Exit, Change::Form] {
        assert!(kinds.contains(&kind), "no cure by {kind:?} was seen");
    }
}

#[test]
fn the_length_to_make_holds_at_the_short_end_of_its_tolerance() {
    for question in tight() {
        let made = routed(&question).recommended.expect("a length");
        for length in [made.overall_length_mm.get(), made.overall_length_mm.get() - made.short_by_mm.get()] {
            let mut question = question.clone();
            question["spec"]["overall_length_mm"] = json!(length);
            let answered = routed(&question);
            assert!(inside(&answered) >= 110.0 - 1e-6, "a tenth more than 100 mm: {}", inside(&answered));
            assert_eq!(finding(&answered, "route-behind-ok").verdict, Verdict::Pass);
        }
        assert_eq!(made.overall_length_mm.get() % 10.0, 0.0);
        assert!(made.provenance.source.contains("DIN 20066"), "{made:?}");
    }
}

/// Every field that may be left out: without it the verdict is no better, and something says so.
#[rstest]
#[case("/fixed", "route-travel-missing")]
#[case("/a/rigid_mm", "route-rigid-assumed")]
#[case("/spec/ends/0/drop_mm", "route-drop-assumed")]
#[case("/spec/ends/1/form", "end-form-missing")]
#[case("/spec/turn_deg", "route-turn-needed")]
fn what_is_left_out_is_said_and_is_no_pass(#[case] path: &str, #[case] case: &str) {
    let mut question = bare("u", json!({"gap_mm": 500}), 500.0);
    let straight_b = path.contains("ends/1");
    let b = if straight_b { end("B", "straight", 0.0) } else { end("B", "elbow90", 60.0) };
    question["spec"]["ends"] = json!([end("A", "elbow90", 60.0), b]);
    question["spec"]["turn_deg"] = json!(0);
    question["spec"]["overall_length_mm"] = json!(if straight_b { 900 } else { 500 });
    question["a"] = json!({"rigid_mm": 80});
    question["b"] = json!({"rigid_mm": 80});
    let whole = routed(&question);
    let (parent, key) = path.rsplit_once('/').expect("a path");
    question
        .pointer_mut(parent)
        .and_then(Value::as_object_mut)
        .expect("an object")
        .remove(key)
        .expect("it was there");
    let less = routed(&question);
    assert!(!says(&whole, case), "{:#?}", whole.findings);
    assert_eq!(finding(&less, case).verdict, Verdict::Caution);
    assert!(less.verdict >= whole.verdict && less.verdict != Verdict::Pass);
}

#[test]
fn figures_come_from_the_tables_with_their_source_or_are_yours() {
    let mut question = bare("u", json!({"gap_mm": 500}), 900.0);
    let yours = routed(&question);
    assert_eq!(yours.hose_od_mm.provenance.basis, Basis::Yours);
    assert_eq!(yours.min_bend_radius_mm.provenance.basis, Basis::Yours);
    assert_eq!(yours.length_change_pct.provenance.basis, Basis::Yours);
    for (place, key) in [("", "hose_od_mm"), ("", "length_change_pct"), ("/spec/hose", "min_bend_radius_mm")]
    {
        question.pointer_mut(place).and_then(Value::as_object_mut).expect("an object").remove(key);
    }
    let table = routed(&question);
    let catalogue = Catalogue::embedded();
    let row = catalogue.hoses.iter().find(|row| row.kind == "2SN" && row.dn.get() == 16.0).expect("a row");
    assert_eq!(table.hose_od_mm.value, row.cover_od_max_mm);
    assert_eq!(table.min_bend_radius_mm.value, row.min_bend_radius_mm);
    assert!(!table.min_bend_radius_mm.provenance.source.is_empty());
    assert_eq!(table.length_change_pct.value, [-4.0, 2.0]);
}

#[test]
fn a_type_whose_standard_is_silent_gets_the_usual_length_change_with_a_caution() {
    let mut question = bare("u", json!({"gap_mm": 500}), 900.0);
    question.as_object_mut().expect("an object").remove("length_change_pct");
    question["spec"]["hose"] =
        json!({"standard": "ISO 1436", "type": "2SN", "dn": 16, "min_bend_radius_mm": 100});
    let answered = routed(&question);
    assert_eq!(finding(&answered, "route-change-taken").verdict, Verdict::Caution);
    assert_eq!(answered.length_change_pct.value, [-4.0, 2.0]);
    assert_eq!(answered.length_change_pct.provenance.basis, Basis::CommonPractice);
}

#[rstest]
#[case::gap(json!({"closed": {}}), "closed.gap_mm")]
#[case::rise(json!({"facing": "offset"}), "closed.rise_mm")]
#[case::hose(json!({"spec": {}}), "spec.hose")]
#[case::kind(json!({"spec": {"hose": {"standard": "EN 853", "type": "9XX", "dn": 16}}}), "spec.hose.type")]
#[case::ports(json!({"facing": "free"}), "closed.gap_mm")]
#[case::drawn(json!({"closed": {"gap_mm": 1, "a": {"position_mm": [0, 0, 0], "direction": [0, 1, 0]}}}), "closed.a")]
#[case::both(json!({"open": {"gap_mm": 300}}), "open")]
#[case::form(json!({"spec": {"hose": {"standard": "EN 853", "type": "2SN", "dn": 16}, "ends": [end("A", "bent", 1.0)]}}), "spec.ends.A.form")]
#[case::length(json!({"a": {"rigid_mm": 600}, "b": {"rigid_mm": 600}}), "spec.overall_length_mm")]
#[case::rigid(json!({"a": {"rigid_mm": -5}}), "a.rigid_mm")]
#[case::change(json!({"length_change_pct": [2, -4]}), "length_change_pct")]
fn a_wrong_field_is_named(#[case] change: Value, #[case] named: &str) {
    let mut question = bare("u", json!({"gap_mm": 500}), 900.0);
    for (key, value) in change.as_object().expect("an object") {
        question[key] = value.clone();
    }
    let error = field(Catalogue::embedded(), &asked(&question)).expect_err("this can not be answered");
    assert_eq!(error.field(), named, "{error}");
}

#[test]
fn while_a_port_is_dragged_only_the_shape_is_asked_for() {
    let mut question = tight()[0].clone();
    let whole = routed(&question);
    question["shape_only"] = json!(true);
    let quick = routed(&question);
    assert_eq!(quick.routed, whole.routed);
    assert_eq!(quick.verdict, whole.verdict);
    assert!(
        quick.cures.is_empty() && quick.recommended.is_none() && quick.shortest_overall_length_mm.is_none()
    );
    question["spec"]["overall_length_mm"] = Value::Null;
    assert!(routed(&question).recommended.is_some(), "without a length one has to be sought");
}
