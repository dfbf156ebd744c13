//! Which reading to take next: what it tells, what it costs, what can be reached, and when to stop.

use super::{ask, catalogue, proposed};
use hosewright_core::catalogue::Reach;
use hosewright_core::find::Part;
use serde_json::{Value, json};

#[test]
fn readings_are_ranked_by_what_they_tell_for_their_effort() {
    let found =
        ask(catalogue(), &json!({"ends": [{"role": "A", "gender": "male", "thread_diameter_mm": 22.1}]}));
    for part in [Part::Hose, Part::A, Part::B] {
        let worth: Vec<f64> = found
            .next
            .iter()
            .filter(|next| next.of == part)
            .map(|next| next.gain_bits / next.effort)
            .collect();
        assert!(worth.len() >= 2 && worth.is_sorted_by(|a, b| a >= b), "{part:?}: {worth:?}");
    }
}

/// Cutting back and skinning a cover is dear: what can be read over the cover comes first.
#[test]
fn a_hose_is_not_cut_open_for_what_its_cover_tells() {
    let hose = |reading: &str| {
        let found = ask(catalogue(), &json!({}));
        found.next.iter().position(|next| next.of == Part::Hose && next.reading == reading)
    };
    assert!(hose("cover_od_mm").is_some_and(|at| hose("reinforcement_od_mm").is_none_or(|dear| at < dear)));
}

#[test]
fn what_can_not_be_reached_is_not_asked() {
    for (reach, allowed) in [("in-place", Reach::InPlace), ("off", Reach::Off)] {
        let found = ask(catalogue(), &json!({"reach": reach}));
        assert!(!found.next.is_empty(), "{reach}: something can be read");
        for next in &found.next {
            let row = catalogue().efforts.iter().find(|row| row.reading == next.reading).expect("its effort");
            assert!(row.reach <= allowed, "{} can not be read {reach}", next.reading);
        }
    }
}

#[test]
fn what_nobody_can_tell_is_not_asked_again() {
    let before =
        ask(catalogue(), &json!({"ends": [{"role": "A", "gender": "male", "thread_diameter_mm": 22.1}]}));
    let (of, reading) = proposed(&before)[0];
    let after = ask(
        catalogue(),
        &json!({"ends": [{"role": "A", "gender": "male", "thread_diameter_mm": 22.1}],
        "cannot_tell": [{"of": of, "reading": reading}]}),
    );
    assert!(!proposed(&after).contains(&(of, reading)), "{:?}", proposed(&after));
    assert_eq!(proposed(&after)[0].0, of, "another reading of the same part is asked");
    assert_eq!(before.ends, after.ends, "not knowing says nothing");
    // A pitch that can not be gauged is no threads an inch either.
    let pitch = ask(catalogue(), &json!({"cannot_tell": [{"of": "A", "reading": "tpi"}]}));
    assert!(!proposed(&pitch).contains(&(Part::A, "pitch_mm")));
}

#[test]
fn every_reading_has_its_effort_with_source_and_basis() {
    let asked: Value = json!({"ends": [{"role": "A"}]});
    let mut left = asked;
    let mut met = std::collections::BTreeSet::new();
    // Each reading that is proposed is put aside, until none is left.
    let mut aside: Vec<Value> = Vec::new();
    loop {
        left["cannot_tell"] = json!(aside);
        let found = ask(catalogue(), &left);
        if found.next.is_empty() {
            break;
        }
        for next in found.next {
            let part = if next.of == Part::Hose { "hose" } else { "end" };
            met.insert(format!("{part} {}", next.reading));
            aside.push(json!({"of": next.of, "reading": next.reading}));
        }
    }
    for name in &met {
        let row = catalogue().efforts.iter().find(|row| {
            format!(
                "{} {}",
                serde_json::to_value(row.part).expect("a part").as_str().unwrap_or_default(),
                row.reading
            ) == *name
        });
        assert!(row.is_some_and(|row| !row.provenance.source.is_empty()), "{name} has an effort");
    }
    assert!(met.len() >= 20, "{met:?}");
}

/// EN 853 and SAE J517 two-wire hoses of one size differ by name; a new hose would be asked the same.
#[test]
fn nothing_more_is_asked_of_a_hose_once_every_candidate_asks_the_same_of_a_new_one() {
    let found = ask(catalogue(), &json!({"hose": {"print": "DIN 20022 2SN DN 16"}}));
    if found.enough.hose {
        assert!(found.next.iter().all(|next| next.of != Part::Hose), "{:?}", proposed(&found));
    }
    let open = ask(catalogue(), &json!({"hose": {"id_mm": 15.9}}));
    assert!(!open.enough.hose && open.next.iter().any(|next| next.of == Part::Hose));
    assert!(!open.settled.hose, "enough is never said of what is wide open");
}
