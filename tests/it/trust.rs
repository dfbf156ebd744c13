//! How far what is found may be trusted: a small sample of what `cargo xtask reliability` prints in full.

use hosewright_tests::simulated::laws::{Law, MODEL, WORST};
use hosewright_tests::simulated::scores::{Scored, Share, bins, scores};
use hosewright_tests::simulated::strangers::Strange;
use hosewright_tests::simulated::trust::{cell, strangers, walks};
use hosewright_tests::simulated::world::World;
use rstest::rstest;

const SEED: u64 = 7;

/// A bar holds within two and a half standard errors of the sample.
const SPREADS: f64 = 2.5;

#[track_caller]
fn at_least(what: &str, share: Share, bar: f64) {
    assert!(share.of >= 50, "{what}: only {} were counted", share.of);
    assert!(share.get() + SPREADS * share.error() >= bar, "{what}: {} of {}", share.did, share.of);
}

#[rstest]
#[case::own_laws(MODEL, 0.02)]
#[case::all_other_laws_at_once(WORST, 0.05)]
fn stated_probabilities_are_observed(#[case] law: Law, #[case] bar: f64) {
    let cell = cell(&World::new(), law, 0.1, 60, SEED);
    let scores = scores(&cell.lists);
    assert!(scores.lists >= 500, "only {} lists", scores.lists);
    let margin = 2.0 * scores.ece_by_chance;
    assert!(scores.ece_of_first <= bar + margin, "{}: {scores:?}, {:?}", law.name, bins(&cell.lists));
    assert!(scores.ece_of_all <= bar, "{}: {scores:?}", law.name);
    at_least("rows that are not called unknown", not(cell.called_unknown()), 0.98);
}

fn not(share: Share) -> Share {
    Share { did: share.of - share.did, of: share.of }
}

#[test]
fn strangers_are_called_unknown() {
    let [ends, hoses] = strangers(&World::new(), Strange::Afresh, 0.1, 60, SEED);
    let called = |lists: &[Scored]| Share::of(lists, |list| list.is_called_unknown());
    at_least("ends", called(&ends), 0.9);
    at_least("hoses", called(&hoses), 0.9);
}

#[test]
fn guided_takes_less_effort_than_the_fixed_order() {
    let walks = walks(&World::new(), MODEL, 0.1, 60, SEED);
    let (guided, fixed) = walks.settled();
    assert!(guided.did >= fixed.did, "guided settles {} ends, the fixed order {}", guided.did, fixed.did);
    assert!(walks.saved() > 0.0, "{:?}", walks.mean_effort());
}
