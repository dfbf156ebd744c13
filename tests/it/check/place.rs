//! What failed at a place before the same is offered there again.

use super::line::catalogue;
use hosewright_core::check::{Failures, OnCircuit, Verdict, Way, circuit};
use hosewright_core::quantity::Bar;
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
