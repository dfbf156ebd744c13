//! A reading that only a slip explains is said, and settles nothing.

use hosewright_core::catalogue::Catalogue;
use hosewright_core::check::Evidence;
use hosewright_core::find::{Found, Part};
use hosewright_tests::find_figures::ask;
use rstest::rstest;
use serde_json::{Value, json};

/// All of a JIC 37 -10 nut (7/8-14 UNF: 20.27 to 20.67 mm inside, ASME B1.1; hex and seat as in the demo).
fn nut() -> Value {
    json!({"role": "A", "kind": "nut", "gender": "female", "thread_diameter_mm": 20.6, "tpi": 14,
        "seal": "cone", "seat_included_angle_deg": 74, "cone": "concave", "swivel_hex_mm": 25.4})
}

fn find(end: &Value, hose: &Value) -> Found {
    ask(Catalogue::embedded(), &json!({"ends": [end], "hose": hose}))
}

#[test]
fn an_end_without_a_slip_is_settled_and_nothing_is_said() {
    let found = find(&nut(), &json!({}));
    assert!(found.settled.a && found.strays.is_empty(), "{:?}", found.strays);
}

/// A decimal point that slipped, a gauge read off the wrong leaf, an angle of another seat.
#[rstest]
#[case::point("thread_diameter_mm", json!(2.06), 2.06)]
#[case::digit("thread_diameter_mm", json!(26.0), 26.0)]
#[case::leaf("tpi", json!(28), 25.4 / 28.0)]
fn a_slip_at_an_end_is_said_and_leaves_it_open(#[case] key: &str, #[case] slip: Value, #[case] read: f64) {
    let mut end = nut();
    end[key] = slip;
    let found = find(&end, &json!({}));
    assert!(!found.settled.a && !found.enough.a, "{:?}", found.ends[0].candidates.first());
    if found.ends[0].candidates[0].probability >= 0.5 {
        let [stray] = &found.strays[..] else { panic!("{:?}", found.strays) };
        assert_eq!((stray.of, stray.read), (Part::A, read));
        assert!(stray.named.contains(&found.ends[0].candidates[0].family), "{stray:?}");
    }
}

/// A point that slipped is told with the limits it should lie in.
#[test]
fn a_slip_is_told_with_what_would_go() {
    let mut end = nut();
    end["thread_diameter_mm"] = json!(2.06);
    let found = find(&end, &json!({}));
    let stray = &found.strays[0];
    let (least, most) = stray.least.zip(stray.most).expect("limits");
    assert!(least < 20.6 && 20.6 < most && most - least < 1.0, "{least} to {most}");
}

/// Nuts differ from maker to maker: a hex is no reason to doubt.
#[test]
fn a_hex_of_another_maker_is_no_slip() {
    let mut end = nut();
    end["swivel_hex_mm"] = json!(32.0);
    let found = find(&end, &json!({}));
    assert!(found.strays.is_empty(), "{:?}", found.strays);
}

#[test]
fn a_slip_at_the_hose_leaves_it_open() {
    let whole = json!({"print": "EN 853 2SN DN 16", "id_mm": 15.9, "cover_od_mm": 25.2, "reinforcement_od_mm": 23.0,
        "reinforcement": "wire-braid", "layers": 2});
    assert!(find(&nut(), &whole).settled.hose);
    let mut slip = whole;
    slip["reinforcement_od_mm"] = json!(2.3);
    let found = find(&nut(), &slip);
    assert!(!found.settled.hose, "{:?}", found.hose.first());
}

#[test]
fn what_find_says_of_a_stray_can_be_put_to_the_check_as_it_stands() {
    let hose = json!({ "print": "EN 853 2SN DN 16", "id_mm": 15.9, "cover_od_mm": 2.62 });
    let found = find(&nut(), &hose);
    assert_eq!(found.strays.len(), 1, "{:?}", found.strays);
    let answer = serde_json::to_value(&found).expect("it is written");
    let evidence: Evidence = serde_json::from_value(answer).expect("it is taken as it stands");
    assert_eq!(evidence.strays, found.strays);
    assert_eq!(evidence.settled.map(|settled| settled.hose), Some(false));
}
