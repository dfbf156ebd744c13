//! Other hoses of the size.

use super::line::{asked, catalogue, checked, dn, hose, known};
use hosewright_core::check::{Alternative, Verdict, alternatives_of};
use hosewright_core::quantity::{Bar, Millimetres};

#[test]
fn other_hoses_of_the_size_are_offered_with_their_reasons() {
    let checked = asked(|question| {
        question.service.surge_pressure_bar = Some(Bar(300.0));
        question.service.bend_radius_mm = Some(Millimetres(300.0));
    });
    assert!((1..=8).contains(&checked.alternatives.len()), "{} of them", checked.alternatives.len());
    let verdicts: Vec<_> = checked.alternatives.iter().map(|other| other.verdict).collect();
    assert!(verdicts.is_sorted(), "what may be made comes first: {verdicts:?}");
    for other in &checked.alternatives {
        let row = catalogue().hose(&other.standard, &other.kind, other.dn).expect("in the tables");
        assert_ne!((row.standard.as_str(), row.kind.as_str()), ("EN 853", "2SN"), "not the hose itself");
        assert_eq!(row.dn, dn(16.0));
        assert!(other.verdict == Verdict::Stop || row.max_working_pressure_bar >= Some(Bar(300.0)));
        assert!(
            other.verdict == Verdict::Pass || other.grounds.iter().any(|why| why.verdict == other.verdict)
        );
    }
    let spiral = checked
        .alternatives
        .iter()
        .find(|other| (other.standard.as_str(), other.kind.as_str()) == ("EN 856", "4SP"));
    let spiral = spiral.expect("350 bar at DN 16 carries it");
    assert_ne!(spiral.verdict, Verdict::Stop);
    let more =
        spiral.grounds.iter().find(|why| why.case.key == "alternative-pressure-ok").expect("it carries more");
    assert_eq!((more.value, more.limit, more.unit), (Some(350.0), Some(250.0), "bar"));
}

#[test]
fn the_nearest_alternative_comes_first_and_says_what_speaks_for_it() {
    let checked = checked(&known());
    let first = checked.alternatives.first().expect("there are others");
    let row = catalogue().hose(&first.standard, &first.kind, first.dn).expect("in the tables");
    assert_eq!(row.max_working_pressure_bar, Some(Bar(250.0)), "{} {}", first.standard, first.kind);
    let compact = checked.alternatives.iter().find(|other| other.kind == "2SC").expect("2SC is near");
    let tighter =
        compact.grounds.iter().find(|why| why.case.key == "alternative-bend-ok").expect("it bends tighter");
    assert_eq!((tighter.value, tighter.limit), (Some(170.0), Some(200.0)));
    assert!(
        !compact.grounds.iter().any(|why| why.case.key == "alternative-pressure-ok"),
        "it carries the same"
    );
    assert!(!compact.grounds.iter().any(|why| why.case.key == "alternative-twin-ok"), "it is another hose");
    let twin = checked
        .alternatives
        .iter()
        .find(|other| (other.standard.as_str(), other.kind.as_str()) == ("ISO 1436", "2SN"));
    let twin = twin.expect("its twin is the nearest of all");
    assert!(twin.grounds.iter().any(|why| why.case.key == "alternative-twin-ok"), "{:?}", twin.grounds);
}

#[test]
fn what_an_alternative_does_less_well_speaks_against_it() {
    let (mut lower, mut wider) = (0, 0);
    for (standard, kind, size) in [("EN 856", "4SP", 19.0), ("EN 857", "2SC", 16.0)] {
        let own = catalogue().hose(standard, kind, dn(size)).expect("in the tables");
        let checked = asked(|question| question.spec.hose = Some(hose(standard, kind, size)));
        for other in &checked.alternatives {
            let row = catalogue().hose(&other.standard, &other.kind, other.dn).expect("in the tables");
            let against =
                |key: &str, own: Option<f64>, other_has: Option<f64>, worse: fn(f64, f64) -> bool| {
                    let told = other.grounds.iter().find(|why| why.case.key == key);
                    let told = told.map(|why| (why.verdict, why.value, why.limit));
                    let expected = own.zip(other_has).filter(|(own, other)| worse(*other, *own));
                    let expected = expected.map(|(own, other)| (Verdict::Caution, Some(other), Some(own)));
                    assert_eq!(told, expected, "{key} of {} beside {kind}", row.kind);
                    usize::from(told.is_some())
                };
            let bars = [own, row].map(|row| row.max_working_pressure_bar.map(Bar::get));
            lower += against("alternative-pressure-less", bars[0], bars[1], |other, own| other < own);
            let bends = [own, row].map(|row| row.min_bend_radius_mm.map(Millimetres::get));
            wider += against("alternative-bend-wider", bends[0], bends[1], |other, own| other > own);
        }
    }
    assert!(lower > 0 && wider > 0, "{lower} carry less, {wider} bend wider: nothing was tried");
}

/// The van's own hoses are put through the check by name.
#[test]
fn hoses_that_are_named_are_tried_and_the_own_hose_is_none_of_them() {
    let named = [hose("EN 853", "2SN", 16.0), hose("ISO 1436", "2SN", 16.0), hose("EN 856", "4SP", 16.0)];
    let tried = alternatives_of(catalogue(), &known(), &named).expect("is checked");
    let kinds: Vec<_> = tried.iter().map(|other| (other.standard.as_str(), other.kind.as_str())).collect();
    assert_eq!(kinds, [("ISO 1436", "2SN"), ("EN 856", "4SP")]);
    let all = checked(&known()).alternatives;
    assert!(all.iter().any(|other| *other == tried[0]), "each as it is among all");
}

#[test]
fn an_alternative_that_stops_for_the_same_reason_says_that() {
    let checked = asked(|question| question.service.fluid = Some("steam".into()));
    for other in &checked.alternatives {
        assert_eq!(other.verdict, Verdict::Stop, "steam is refused in any hose");
    }
    assert!(
        checked
            .alternatives
            .iter()
            .any(|other| other.grounds.iter().any(|why| why.case.key == "alternative-same")),
        "{:?}",
        checked.alternatives.iter().map(|other| &other.grounds).collect::<Vec<_>>()
    );
}

#[test]
fn alternatives_of_one_verdict_stand_by_nearness_in_pressure_and_bend() {
    let others = checked(&known()).alternatives;
    assert_eq!(others.len(), 8, "DN 16 has more than are shown");
    let apart = |other: &Alternative| {
        let row = catalogue().hose(&other.standard, &other.kind, other.dn).expect("in the tables");
        let share = |figure: Option<f64>, own: f64| figure.map_or(1.0, |figure| (figure - own).abs() / own);
        share(row.max_working_pressure_bar.map(Bar::get), 250.0)
            + share(row.min_bend_radius_mm.map(Millimetres::get), 200.0)
    };
    for pair in others.windows(2) {
        let [nearer, farther] = pair else { panic!("two") };
        assert!(
            nearer.verdict < farther.verdict || apart(nearer) <= apart(farther),
            "{} {} before {} {}",
            nearer.standard,
            nearer.kind,
            farther.standard,
            farther.kind
        );
    }
}
