//! What an end is at a glance, and what lies at its shoulder, part what no thread tells apart.

use hosewright_core::catalogue::Catalogue;
use hosewright_core::find::Found;
use hosewright_tests::find_figures::ask;
use rstest::rstest;
use serde_json::{Value, json};

fn find(mut end: Value, more: &[(&str, &str)]) -> Found {
    end["role"] = json!("A");
    for (key, value) in more {
        end[*key] = json!(value);
    }
    ask(Catalogue::embedded(), &json!({ "ends": [end] }))
}

fn share(found: &Found, family: &str) -> f64 {
    let candidates = found.ends[0].candidates.iter();
    candidates.filter(|class| class.family == family).map(|class| class.probability).sum()
}

/// G 1/2 and M22x1.5 outside; the rows differ in what they are, and not in their threads (ISO 228-1, ISO 261).
#[rstest]
#[case::a_stud_is_no_washer_end(json!({"gender": "male", "thread_diameter_mm": 20.9, "tpi": 14}), "stud", "G port", "Washer end G")]
#[case::a_washer_end_is_no_stud(json!({"gender": "male", "thread_diameter_mm": 20.9, "tpi": 14}), "male", "Washer end G", "G port")]
#[case::a_bolt_is_no_stud(json!({"gender": "male", "thread_diameter_mm": 20.9, "tpi": 14}), "banjo", "Banjo G", "G port")]
#[case::a_nut_is_no_port(json!({"gender": "female", "thread_diameter_mm": 20.55, "pitch_mm": 1.5}), "nut", "Metric 24 cone L", "ISO 6149 port")]
#[case::a_port_is_no_nut(json!({"gender": "female", "thread_diameter_mm": 20.55, "pitch_mm": 1.5}), "socket", "ISO 6149 port", "Metric 24 cone L")]
fn a_glance_parts_what_no_thread_does(
    #[case] end: Value,
    #[case] kind: &str,
    #[case] family: &str,
    #[case] other: &str,
) {
    let before = find(end.clone(), &[]);
    let ratio = share(&before, family) / share(&before, other);
    let after = find(end, &[("kind", kind)]);
    let parted = share(&after, family) / share(&after, other).max(1e-9);
    assert!(parted > 5.0 * ratio && parted > 3.0, "{family} to {other}: {ratio} before, {parted} after");
}

/// ISO 6149 ports are chamfered for an O-ring, those of ISO 9974 are flat: one thread, two seals.
#[rstest]
#[case::chamfered("chamfered", "ISO 6149 port", "ISO 9974 port")]
#[case::flat("flat", "ISO 9974 port", "ISO 6149 port")]
fn the_mouth_of_a_port_parts_two_standards(
    #[case] shoulder: &str,
    #[case] family: &str,
    #[case] other: &str,
) {
    let port = json!({"kind": "socket", "gender": "female", "thread_diameter_mm": 20.55, "pitch_mm": 1.5});
    let open = find(port.clone(), &[]);
    let ratio = share(&open, family) / share(&open, other);
    assert!((0.5..2.0).contains(&ratio), "alike until the mouth is looked at: {ratio}");
    let warned = |found: &Found| {
        found.ends[0].lookalikes.iter().any(|like| {
            like.pair.as_ref().is_some_and(|pair| {
                pair.female.family.ends_with("port")
                    && pair.male.family.ends_with("port")
                    && pair.female.family != pair.male.family
                    && pair.female.family.starts_with("ISO")
                    && pair.male.family.starts_with("ISO")
            })
        })
    };
    assert!(warned(&open), "each starts on the other");
    let looked = find(port, &[("shoulder", shoulder)]);
    assert!(share(&looked, family) > 10.0 * share(&looked, other));
    assert!(!warned(&looked), "{:?}", looked.ends[0].lookalikes);
}
