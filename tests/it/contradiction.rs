//! Where a print and the readings of a hose differ, `find` says so, and settles nothing by it.

use hosewright_core::catalogue::Catalogue;
use hosewright_core::find::{Contradicted, Found, Stated};
use hosewright_tests::find_figures::ask;
use hosewright_words::{Language, Words};
use rstest::rstest;
use serde_json::{Value, json};

fn find(hose: Value) -> Found {
    ask(Catalogue::embedded(), &json!({ "hose": hose }))
}

fn codes(found: &Found) -> Vec<Contradicted> {
    found.contradictions.iter().map(|contradiction| contradiction.code).collect()
}

const WHOLE: &str = "EN 853 2SN DN 16 250 BAR 3Q24";

#[rstest]
#[case::layers(json!({"print": WHOLE, "layers": 1}), Contradicted::Layers, 2.0, 1.0)]
#[case::bore(json!({"print": "EN 853 2SN DN 16", "id_mm": 12.7}), Contradicted::Bore, 15.5, 12.7)]
#[case::over_reinforcement(
    json!({"print": "EN 853 1SN DN 16", "reinforcement_od_mm": 27.0}), Contradicted::ReinforcementOd, 21.4, 27.0
)]
#[case::over_cover(json!({"print": WHOLE, "cover_od_mm": 34.0}), Contradicted::CoverOd, 26.6, 34.0)]
#[case::pressure(json!({"print": "EN 853 2SN DN 16 WP 350 BAR"}), Contradicted::Pressure, 350.0, 250.0)]
fn figures_that_differ_are_said(
    #[case] hose: Value,
    #[case] code: Contradicted,
    #[case] printed: f64,
    #[case] measured: f64,
) {
    let found = find(hose);
    let [contradiction] = &found.contradictions[..] else { panic!("{:?}", found.contradictions) };
    assert_eq!(contradiction.code, code);
    assert_eq!(contradiction.measured, Some(Stated::Number(measured)));
    let Some(Stated::Number(said)) = contradiction.printed else { panic!("{contradiction:?}") };
    assert!((said - printed).abs() < 1.0, "{contradiction:?}");
    assert!(contradiction.named.starts_with("EN 853"), "{contradiction:?}");
}

#[test]
fn a_printed_spiral_that_is_a_braid_is_said() {
    let found = find(json!({"print": "EN 856 * DN 16", "reinforcement": "wire-braid"}));
    assert_eq!(codes(&found), [Contradicted::Reinforcement]);
    let answer = serde_json::to_value(&found.contradictions[0]).expect("an answer");
    assert_eq!(
        answer,
        json!({"code": "reinforcement", "of": "hose", "words": "", "named": "EN 856 DN 16", "printed": "wire-spiral", "measured": "wire-braid"})
    );
}

#[rstest]
#[case::two_sizes("EN 853 2SN DN 16 -8")]
#[case::type_of_another_standard("EN 856 2SN DN 16")]
fn a_print_against_itself_is_said(#[case] text: &str) {
    let found = find(json!({ "print": text }));
    assert_eq!(codes(&found), [Contradicted::NoSuchHose], "{text}");
    assert!(!found.settled.hose);
}

#[test]
fn a_cover_of_another_duty_is_said() {
    let found = find(json!({"print": "SAE 100R7-8 NON-CONDUCTIVE", "cover": "antistatic"}));
    assert_eq!(codes(&found), [Contradicted::Cover]);
}

/// Three diameters outweigh a print, and the print stays in sight.
#[test]
fn a_contradicted_print_stays_among_the_candidates_and_settles_nothing() {
    let found = find(json!({"print": "EN 856 4SH DN 32", "id_mm": 15.9, "reinforcement_od_mm": 23.0,
                            "cover_od_mm": 25.2, "reinforcement": "wire-braid", "layers": 2}));
    assert!(found.contradictions.len() >= 4, "{:?}", found.contradictions);
    assert!(found.hose.iter().any(|row| row.kind == "4SH" && row.dn.get() == 31.0), "{:?}", found.hose);
    assert!(found.hose[0].kind == "2SN" && !found.settled.hose, "{:?}", found.hose[0]);
    let sum: f64 = found.hose.iter().map(|class| class.probability).sum::<f64>() + found.unknown.hose;
    assert!((sum - 1.0).abs() < 1e-9, "{sum}");
}

/// A strong print settles nothing over one layer too few.
#[test]
fn a_print_settles_nothing_against_a_reading() {
    let agreed = json!({"print": WHOLE, "id_mm": 15.9, "reinforcement": "wire-braid", "layers": 2});
    assert!(find(agreed).settled.hose);
    let found = find(json!({"print": WHOLE, "id_mm": 15.9, "reinforcement": "wire-braid", "layers": 1}));
    assert_eq!((codes(&found), found.settled.hose), (vec![Contradicted::Layers], false));
}

/// Ratings differ between editions: that is said, and leaves no doubt which hose it is.
#[test]
fn another_rating_is_said_and_the_hose_is_settled() {
    let found = find(json!({"print": "EN 856 4SH DN 31 WP 350 BAR", "id_mm": 31.8, "layers": 4}));
    assert_eq!((codes(&found), found.settled.hose), (vec![Contradicted::Pressure], true));
}

/// Every row of the tables, read in the middle of its limits and printed as it is named.
#[test]
fn what_agrees_is_no_contradiction() {
    let catalogue = Catalogue::embedded();
    let mut checked = 0;
    for row in catalogue.hoses.iter().filter(|row| row.kind.len() <= 8 && !row.kind.contains([' ', '-'])) {
        let kind = catalogue.hose_type(&row.standard, &row.kind).expect("the type of the row");
        let middle = |min: Option<f64>, max: Option<f64>| Some((min? + max?) / 2.0);
        let found = find(json!({
            "print": format!("{} {} DN {}", row.standard, row.kind, row.dn),
            "id_mm": row.id_mm.map(|band| (band.min + band.max) / 2.0),
            "reinforcement_od_mm": middle(row.reinforcement_od_min_mm.map(|mm| mm.get()), row.reinforcement_od_max_mm.map(|mm| mm.get())),
            "cover_od_mm": middle(row.cover_od_min_mm.map(|mm| mm.get()), row.cover_od_max_mm.map(|mm| mm.get())),
            "layers": kind.layers_min,
            "reinforcement": kind.reinforcement,
        }));
        assert_eq!(found.contradictions, [], "{} {} DN {}", row.standard, row.kind, row.dn);
        checked += 1;
    }
    assert!(checked > 200, "only {checked} rows");
}

#[test]
fn readings_without_a_print_contradict_nothing() {
    let found = find(json!({"id_mm": 15.9, "layers": 2, "reinforcement": "wire-braid"}));
    assert_eq!(found.contradictions, []);
}

#[test]
fn every_contradiction_has_words() {
    let words = Words::of(Language::English);
    for code in Contradicted::ALL {
        let code = serde_json::to_value(code).expect("a code");
        let id = format!("contradicted-{}", code.as_str().expect("text"));
        assert!(words.has(&id), "found.ftl has no {id}");
    }
    for kind in [
        "wire-braid",
        "wire-spiral",
        "textile-braid",
        "thermoplastic-textile",
        "ptfe-steel-braid",
        "suction-helix",
    ] {
        assert!(words.has(&format!("seen-{kind}")), "{kind}");
    }
    for cover in ["plain", "non-conductive", "flame-resistant", "antistatic"] {
        assert!(words.has(&format!("seen-{cover}")), "{cover}");
    }
}
