//! The weakest part sets the pressure, and a stand-in is no rating.

use super::line::{Change, asked, catalogue, end, end_was, evidence, finding, has, objections};
use hosewright_core::catalogue::Basis;
use hosewright_core::check::{Question, Verdict, Weakest};
use hosewright_core::quantity::Bar;
use hosewright_core::spec::{Adapter, EndSpec, Gender, Role};
use rstest::rstest;

#[rstest]
#[case::end_a(Role::A, Weakest::A)]
#[case::end_b(Role::B, Weakest::B)]
fn the_weakest_part_sets_the_pressure(#[case] role: Role, #[case] weakest: Weakest) {
    let checked = asked(|question| {
        question.service.relief_bar = Some(Bar(200.0));
        question.service.working_pressure_bar = Some(Bar(180.0));
        question.service.surge_pressure_bar = Some(Bar(200.0));
        // ISO 12151-5 / SAE J516 by way of the printed swivel ratings: 37 degree -10, 206 bar.
        let of_role = question.spec.ends.iter_mut().find(|end| end.role == role).expect("both ends");
        *of_role = end(role, "JIC 37 flare", "-10");
        evidence(question).ends = vec![
            end_was(Role::A, if role == Role::A { "JIC 37 flare" } else { "ORFS" }, "-10"),
            end_was(Role::B, if role == Role::B { "JIC 37 flare" } else { "ORFS" }, "-10"),
        ];
    });
    assert_eq!(checked.verdict, Verdict::Pass, "{:?}", objections(&checked));
    assert_eq!(checked.assembly_pressure_bar, Some(Bar(206.0)));
    assert_eq!(checked.weakest, Some(weakest));
}

/// Each of two figures is within every rating, and together they can not be.
#[rstest]
#[case::relief("relief-below-working", |q: &mut Question| q.service.relief_bar = Some(Bar(209.9)))]
#[case::surge("surge-below-working", |q: &mut Question| q.service.surge_pressure_bar = Some(Bar(209.9)))]
#[case::work("relief-below-working", |q: &mut Question| q.service.working_pressure_bar = Some(Bar(230.1)))]
fn pressures_that_contradict_each_other_stop(#[case] key: &str, #[case] change: Change) {
    let checked = asked(change);
    assert_eq!(finding(&checked, key).verdict, Verdict::Stop);
    assert_eq!(objections(&checked), [key], "nothing else is wrong with the line");
}

#[test]
fn a_relief_and_a_peak_just_at_the_working_pressure_are_no_contradiction() {
    let checked = asked(|question| {
        question.service.relief_bar = Some(Bar(210.0));
        question.service.surge_pressure_bar = Some(Bar(210.0));
    });
    assert_eq!(checked.verdict, Verdict::Pass, "{:?}", objections(&checked));
}

#[test]
fn an_adapter_can_be_the_weakest_part_and_without_a_rating_stops() {
    let adapter = |rating_bar| {
        asked(|question| {
            question.spec.adapters = vec![Adapter { name: "bulkhead".into(), rating_bar, between: None }]
        })
    };
    let rated = adapter(Some(Bar(249.0)));
    assert_eq!((rated.assembly_pressure_bar, rated.weakest), (Some(Bar(249.0)), Some(Weakest::Adapter)));
    let named = rated.findings.iter().any(|finding| {
        finding.limit == Some(249.0) && finding.names.get("name").is_some_and(|name| name == "bulkhead")
    });
    assert!(named, "several adapters are told apart by their names");
    let unrated = adapter(None);
    assert_eq!(finding(&unrated, "pressure-unknown").verdict, Verdict::Stop);
    assert_eq!(
        (unrated.assembly_pressure_bar, unrated.weakest),
        (None, None),
        "not known is never unlimited"
    );
}

#[test]
fn the_users_own_rating_stands_over_the_tables_and_says_so() {
    let checked = asked(|question| question.spec.ends[1].rating_bar = Some(Bar(400.0)));
    let own: Vec<_> = checked.findings.iter().filter(|finding| finding.basis == Basis::Yours).collect();
    assert_eq!(own.len(), 1);
    assert_eq!((own[0].limit, own[0].verdict), (Some(400.0), Verdict::Pass));
}

/// A stand-in of another end with the same thread: ISO 6149 M22x1.5, 160 bar, basis proxy.
#[rstest]
#[case::within(160.0, "pressure-proxy", Verdict::Caution)]
#[case::above(160.01, "pressure-above-proxy", Verdict::Stop)]
fn a_stand_in_is_no_rating(#[case] surge: f64, #[case] key: &str, #[case] verdict: Verdict) {
    let ask = |own: Option<Bar>| {
        asked(|question| {
            question.service.working_pressure_bar = Some(Bar(100.0));
            question.service.relief_bar = Some(Bar(100.0));
            question.service.surge_pressure_bar = Some(Bar(surge));
            question.spec.ends[0] = EndSpec {
                gender: Some(Gender::Male),
                rating_bar: own,
                ..end(Role::A, "ISO 6149 port", "M22x1.5")
            };
        })
    };
    let stand_in = ask(None);
    assert_eq!(finding(&stand_in, key).verdict, verdict);
    assert_eq!(finding(&stand_in, key).basis, Basis::Proxy);
    let own = ask(Some(Bar(250.0)));
    assert!(!has(&own, key), "the supplier's rating cures it: {:?}", objections(&own));
}

#[test]
fn an_end_whose_rating_nobody_knows_stops_until_the_user_enters_it() {
    let ask = |own: Option<Bar>| {
        asked(|question| {
            question.spec.ends[0] = EndSpec { rating_bar: own, ..end(Role::A, "Banjo metric", "M22x1.5") };
        })
    };
    let unknown = ask(None);
    assert_eq!(finding(&unknown, "pressure-unknown").verdict, Verdict::Stop);
    assert_eq!(finding(&unknown, "pressure-unknown").basis, Basis::None);
    assert!(!has(&ask(Some(Bar(300.0))), "pressure-unknown"), "the supplier's rating cures it");
}

#[test]
fn a_recalled_rating_is_at_least_a_caution() {
    // BSPP 60 cone 5/8: 250 bar, recalled.
    let checked = asked(|question| {
        question.spec.ends[0] = end(Role::A, "BSPP 60 cone", "5/8");
        evidence(question).ends[0] = end_was(Role::A, "BSPP 60 cone", "5/8");
    });
    assert_eq!(objections(&checked), ["pressure-unverified"]);
    assert_eq!(finding(&checked, "pressure-unverified").basis, Basis::Memory);
    assert_eq!(checked.verdict, Verdict::Caution);
}

/// An estimate may reach the rating, as a pressure may.
#[test]
fn an_estimated_peak_that_just_reaches_the_rating_is_not_above_it() {
    let factor = catalogue().limit("surge-over-relief").and_then(|limit| limit.value).expect("a factor");
    for (rating, key) in
        [(150.0 * factor, "surge-estimated"), (150.0 * factor - 0.1, "surge-estimated-above")]
    {
        let checked = asked(|question| {
            question.service.working_pressure_bar = Some(Bar(140.0));
            question.service.relief_bar = Some(Bar(150.0));
            question.service.surge_pressure_bar = None;
            question.spec.ends[0].rating_bar = Some(Bar(rating));
        });
        let told = finding(&checked, key);
        assert_eq!(
            (told.value, told.limit, told.verdict),
            (Some(150.0 * factor), Some(rating), Verdict::Caution)
        );
    }
}
