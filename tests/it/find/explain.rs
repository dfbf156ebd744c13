//! Why a candidate stands where it stands.

use super::catalogue;
use hosewright_core::find::{Explained, Part, Why, explain, find};
use serde_json::{Value, json};

fn why(readings: Value, of: Part, candidate: usize, rival: Option<usize>) -> Option<Explained> {
    let readings = serde_json::from_value(readings).expect("readings by the contract");
    explain(catalogue(), &Why { readings, of, candidate, rival }).expect("readings that can be")
}

fn flare() -> Value {
    json!({"hose": {"id_mm": 15.9, "print": "EN 853 2S? DN 16"},
        "ends": [{"role": "A", "gender": "male", "thread_diameter_mm": 22.1, "tpi": 14,
            "seat_included_angle_deg": 74, "cone": "convex"}],
        "mates": [{"role": "A", "gender": "female", "thread_diameter_mm": 20.5, "tpi": 14}]})
}

/// 37 and 45 degree ends of 7/8-14 have one thread (SAE J514, SAE J512): the seat alone parts them.
#[test]
fn the_seat_would_have_to_be_wrong_for_a_45_degree_end_to_be_right() {
    let explained = why(flare(), Part::A, 0, None).expect("there is a candidate");
    assert_eq!(explained.candidate, "JIC 37 flare -10");
    let readings: serde_json::Value = flare();
    let found = find(catalogue(), &serde_json::from_value(readings).expect("readings")).expect("they can be");
    let place = found.ends[0]
        .candidates
        .iter()
        .position(|class| class.family == "SAE 45 flare" && class.size == "-10");
    let explained = why(flare(), Part::A, 0, place).expect("there is a candidate");
    assert_eq!(explained.rival.as_deref(), Some("SAE 45 flare -10"));
    assert_eq!(explained.must_be_wrong, ["seat_included_angle_deg"]);
    assert_eq!(explained.readings[0].reading, "seat_included_angle_deg", "the most telling first");
    let thread =
        explained.readings.iter().find(|said| said.reading == "thread_diameter_mm").expect("it was read");
    assert!(thread.bits.abs() < 0.05, "the thread is the same: {}", thread.bits);
}

#[test]
fn what_is_said_adds_up_to_the_odds() {
    for (of, count) in [(Part::Hose, 2), (Part::A, 6)] {
        for rival in [None, Some(2), Some(usize::MAX)] {
            let explained = why(flare(), of, 0, rival).expect("there is a candidate");
            assert_eq!(explained.readings.len(), count, "print and machine's half are each said once");
            let sum: f64 = explained.readings.iter().map(|said| said.bits).sum();
            assert!((sum + explained.together_bits - explained.odds_bits).abs() < 1e-9);
            assert_eq!(explained.rival.is_none(), rival == Some(usize::MAX));
        }
    }
}

#[test]
fn turned_round_it_says_the_opposite() {
    let ahead = why(flare(), Part::A, 0, Some(1)).expect("two candidates");
    let behind = why(flare(), Part::A, 1, Some(0)).expect("two candidates");
    assert!((ahead.odds_bits + behind.odds_bits).abs() < 1e-9);
    assert_eq!(ahead.candidate_from, behind.rival_from.expect("a row"));
}

#[test]
fn a_candidate_that_is_not_in_the_list_is_not_explained() {
    assert_eq!(why(flare(), Part::Hose, 100_000, None), None);
}
