//! Hose, both ends, the machine's halves and its origin are judged together.

use super::{ask, catalogue, end, of_end};
use hosewright_core::spec::Role;
use serde_json::{Value, json};

/// A parallel pipe thread with a 60 degree seat of unread shape: European or East Asian.
fn pipe(role: &str) -> Value {
    json!({"role": role, "gender": "male", "thread_diameter_mm": 20.8, "tpi": 14, "seat_included_angle_deg": 60,
        "seal": "cone", "flank_angle_deg": 55})
}

fn light(role: &str) -> Value {
    json!({"role": role, "gender": "male", "thread_diameter_mm": 21.9, "pitch_mm": 1.5, "flank_angle_deg": 60,
        "seat_included_angle_deg": 24, "seal": "cone", "tube_od_mm": 15.1})
}

fn eastern(role: &str) -> Value {
    json!({"role": role, "gender": "male", "thread_diameter_mm": 21.9, "pitch_mm": 1.5, "flank_angle_deg": 60,
        "seat_included_angle_deg": 60, "cone": "convex", "seal": "cone"})
}

#[test]
fn one_end_hints_at_where_the_machine_and_so_the_other_end_come_from() {
    let of = |other: Value| {
        let found = ask(catalogue(), &json!({"ends": [pipe("A"), other]}));
        of_end(&found, "JIS parallel pipe 30 seat", "1/2")
    };
    let (beside_light, beside_eastern) = (of(light("B")), of(eastern("B")));
    assert!(
        beside_eastern > beside_light + 0.1,
        "beside 24 degree {beside_light}, beside 30 degree {beside_eastern}"
    );
}

#[test]
fn an_end_that_goes_badly_with_the_other_may_have_been_changed() {
    let odd = |a: Value, b: Value| ask(catalogue(), &json!({"ends": [a, b]}));
    assert!(odd(light("A"), eastern("B")).odd_ends, "a 24 degree end beside a Japanese one");
    assert!(!odd(light("A"), light("B")).odd_ends && !odd(eastern("A"), eastern("B")).odd_ends);
    let (like, unlike) = (odd(light("A"), light("B")), odd(light("A"), eastern("B")));
    for role in [Role::A, Role::B] {
        assert!(end(&unlike, role).changed > 2.0 * end(&like, role).changed, "either may be the one");
    }
    assert!(!ask(catalogue(), &json!({"ends": [eastern("A")]})).odd_ends, "one end alone is not odd");
}

#[test]
fn a_half_of_the_machine_that_belongs_to_another_end_is_said() {
    let flare = json!({"role": "A", "gender": "male", "thread_diameter_mm": 22.1, "tpi": 14,
        "seat_included_angle_deg": 74, "cone": "convex", "seal": "cone"});
    let mate = |nut: Value| {
        let found = ask(catalogue(), &json!({"ends": [nut], "mates": [flare]}));
        end(&found, Role::A).mate.clone().expect("it was read")
    };
    let right = mate(json!({"role": "A", "gender": "female", "thread_diameter_mm": 20.5, "tpi": 14,
        "seat_included_angle_deg": 74}));
    assert!(!right.is_another && right.belongs > 0.95, "{right:?}");
    let wrong = mate(json!({"role": "A", "gender": "female", "thread_diameter_mm": 24.3, "tpi": 12,
        "seat_included_angle_deg": 74, "cone": "concave", "seal": "cone"}));
    assert!(wrong.is_another, "{wrong:?}");
    assert_eq!((wrong.family.as_str(), wrong.size.as_str()), ("JIC 37 flare", "-10"), "what it is by itself");
}

#[test]
fn jump_sizes_are_possible_and_rare() {
    let of = |bore: f64| {
        let found = ask(
            catalogue(),
            &json!({"hose": {"id_mm": bore},
            "ends": [{"role": "A", "gender": "female", "thread_diameter_mm": 20.6, "tpi": 14}]}),
        );
        of_end(&found, "JIC 37 flare", "-10")
    };
    let (own, jump, far) = (of(15.9), of(12.7), of(50.8));
    assert!(own >= jump && jump > far, "DN 16: {own}, DN 12: {jump}, DN 51: {far}");
    assert!(jump > 0.05, "one size apart is made every day: {jump}");
}
