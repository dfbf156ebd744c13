//! What failed at a place before the same is offered there again.

use super::line::catalogue;
use hosewright_core::check::{Failures, OnCircuit, Verdict, Way, belongs, circuit};
use hosewright_core::quantity::Bar;
use hosewright_core::spec::Spec;
use rstest::rstest;

#[rstest]
#[case::nothing(&[], Way::Short, None, &[])]
#[case::once(&["ABR"], Way::Short, Some("failed-before"), &[("ABR", 1)])]
#[case::one_cause_again(&["ABR", "ABR"], Way::Long, Some("failed-repeatedly"), &[("ABR", 2)])]
#[case::the_most_frequent_first(&["TWIST", "ABR", "ABR"], Way::Long, Some("failed-repeatedly"), &[("ABR", 2), ("TWIST", 1)])]
fn repeated_failures_ask_for_the_long_way_and_are_counted_by_cause(
    #[case] failed: &[&str],
    #[case] way: Way,
    #[case] key: Option<&str>,
    #[case] counted: &[(&str, usize)],
) {
    let failures = Failures::of(catalogue(), failed.iter().copied());
    assert_eq!((failures.times, failures.way), (failed.len(), way));
    let causes: Vec<_> = failures.causes.iter().map(|cause| (cause.cause.as_str(), cause.times)).collect();
    assert_eq!(causes, counted);
    for cause in &failures.causes {
        let row = catalogue().causes.iter().find(|row| row.code == cause.cause);
        assert_eq!(Some(&cause.name), row.map(|row| &row.name), "called as in the tables");
    }
    let told = failures.finding();
    assert_eq!(told.as_ref().map(|finding| finding.case.key), key);
    assert!(told.is_none_or(
        |finding| finding.verdict == Verdict::Caution && finding.value == Some(failed.len() as f64)
    ));
}

/// Two ratings within a quarter are a step of the standards' pressures apart; more may be a wrong hose (common practice).
#[rstest]
#[case::alike(Some(250.0), Some(250.0), Verdict::Pass, "circuit-ok")]
#[case::a_quarter_more_than_the_sister(Some(250.0), Some(200.0), Verdict::Pass, "circuit-ok")]
#[case::a_quarter_less(Some(200.0), Some(250.0), Verdict::Pass, "circuit-ok")]
#[case::the_sister_is_weaker(Some(250.0), Some(199.0), Verdict::Caution, "circuit-sister-weaker")]
#[case::it_is_the_weaker_one(Some(199.0), Some(250.0), Verdict::Caution, "circuit-weaker")]
#[case::the_sister_is_not_known(Some(250.0), None, Verdict::Caution, "circuit-unknown")]
#[case::its_own_is_not_known(None, Some(250.0), Verdict::Caution, "circuit-unknown")]
fn a_hose_is_compared_with_its_sisters_on_the_circuit(
    #[case] own: Option<f64>,
    #[case] sister: Option<f64>,
    #[case] verdict: Verdict,
    #[case] key: &str,
) {
    let hose = |place, bar: Option<f64>| OnCircuit { place, pressure: bar.map(Bar) };
    let found = circuit(catalogue(), &hose(1, own), None, &[hose(2, sister)]);
    let [finding] = found.as_slice() else { panic!("{found:?}") };
    assert_eq!((finding.verdict, finding.case.key), (verdict, key));
    assert_eq!(finding.names["place"], "2");
    assert!(finding.source.contains("SAE J516"), "the weakest part sets the assembly: {}", finding.source);
    let compared = own.zip(sister);
    assert_eq!((finding.value, finding.limit), (compared.map(|both| both.0), compared.map(|both| both.1)));
}

#[rstest]
#[case(None, &[])]
#[case(Some(200.0), &[])]
#[case(Some(201.0), &["2"])]
#[case(Some(251.0), &["2", "1"])]
fn a_relief_valve_above_what_any_hose_of_the_circuit_carries_is_a_stop(
    #[case] relief: Option<f64>,
    #[case] above: &[&str],
) {
    let hose = |place, bar| OnCircuit { place, pressure: Some(Bar(bar)) };
    let found = circuit(catalogue(), &hose(1, 250.0), relief.map(Bar), &[hose(2, 200.0)]);
    let stops = found.iter().filter(|finding| finding.verdict == Verdict::Stop);
    let places: Vec<_> = stops
        .map(|finding| {
            assert_eq!((finding.case.key, finding.value), ("circuit-relief-above", relief));
            finding.names["place"].as_str()
        })
        .collect();
    assert_eq!(places, above, "gravest first");
}

fn hose(kind: &str, dn: u32, ends: [(&str, &str); 2], length: Option<f64>) -> Spec {
    let [a, b] = ends;
    serde_json::from_value(serde_json::json!({
        "hose": {"standard": "EN 853", "type": kind, "dn": dn},
        "ends": [
            {"role": "A", "family": a.0, "size": a.1},
            {"role": "B", "family": b.0, "size": b.1},
        ],
        "overall_length_mm": length,
    }))
    .expect("a spec")
}

const JIC: (&str, &str) = ("JIC 37 flare", "-10");
const ORFS: (&str, &str) = ("ORFS", "-10");

/// EN 853 2SN DN 16 of 1240 mm with a JIC and an ORFS end belongs there.
#[rstest]
#[case::the_very_hose(hose("2SN", 16, [JIC, ORFS], Some(1240.0)), &[])]
#[case::the_other_way_round(hose("2SN", 16, [ORFS, JIC], Some(1240.0)), &[])]
#[case::another_type_is_the_checks_affair(hose("1SN", 16, [JIC, ORFS], Some(1240.0)), &[])]
#[case::another_bore(hose("1SN", 6, [JIC, ORFS], Some(1240.0)), &[("belongs-bore", Verdict::Stop)])]
#[case::other_ends(hose("2SN", 16, [JIC, JIC], Some(1240.0)), &[("belongs-ends", Verdict::Stop)])]
#[case::the_same_end_at_another_size(hose("2SN", 16, [JIC, ("ORFS", "-12")], Some(1240.0)), &[("belongs-ends", Verdict::Stop)])]
#[case::shorter(hose("2SN", 16, [JIC, ORFS], Some(910.0)), &[("belongs-shorter", Verdict::Caution)])]
#[case::longer(hose("2SN", 16, [JIC, ORFS], Some(1500.0)), &[("belongs-longer", Verdict::Caution)])]
#[case::all_at_once(
    hose("1SN", 6, [JIC, JIC], Some(910.0)),
    &[("belongs-bore", Verdict::Stop), ("belongs-ends", Verdict::Stop), ("belongs-shorter", Verdict::Caution)]
)]
#[case::length_not_known(hose("2SN", 16, [JIC, ORFS], None), &[])]
fn a_hose_is_held_against_the_one_that_belongs_at_the_place(
    #[case] carried: Spec,
    #[case] expected: &[(&str, Verdict)],
) {
    let there = hose("2SN", 16, [JIC, ORFS], Some(1240.0));
    let found = belongs(catalogue(), &there, &carried);
    let said: Vec<_> = found.iter().map(|finding| (finding.case.key, finding.verdict)).collect();
    assert_eq!(said, expected);
    assert!(found.iter().all(|finding| !finding.source.is_empty()));
    assert_eq!(belongs(catalogue(), &Spec::default(), &carried), [], "nobody said what belongs there");
}

#[test]
fn a_length_within_its_tolerance_belongs_and_a_hair_more_does_not() {
    let there = hose("2SN", 16, [JIC, ORFS], Some(1240.0));
    let dn = there.hose.as_ref().expect("a hose").dn;
    let practice = hosewright_core::catalogue::LengthPractice::default();
    let overall = there.overall_length_mm.expect("a length");
    let row = catalogue().length_tolerance(practice, dn, overall).expect("a row");
    let [less, more] = row.at(overall);
    for (off, expected) in [
        (less, None),
        (less - 0.1, Some("belongs-shorter")),
        (more, None),
        (more + 0.1, Some("belongs-longer")),
    ] {
        let found = belongs(catalogue(), &there, &hose("2SN", 16, [JIC, ORFS], Some(1240.0 + off)));
        assert_eq!(found.first().map(|finding| finding.case.key), expected, "{off}");
    }
}
