//! Readings name what a hose and its ends were, with honest probabilities.

use hosewright_core::catalogue::Catalogue;
use hosewright_tests::find_figures::{self, Answered};

fn catalogue() -> &'static Catalogue {
    Catalogue::embedded()
}

/// A miss that is understood, and why.
type Explained = (&'static str, &'static str);

#[track_caller]
fn holds_the_bars(what: &str, answered: &[Answered], explained: &[Explained]) {
    let figures = find_figures::figures(answered);
    eprintln!("{what}: {figures:?}");
    for case in answered { if !case.is_hit() || case.held.len() > 4 { eprintln!("{} {:?} settled {} looks {} hit {} {:?}", case.id, case.published, case.settled, case.lookalikes, case.is_hit(), case.held.iter().map(|(n,p)|format!("{} +{} {:.3}",n[0],n.len()-1,p)).collect::<Vec<_>>()); } }
    for case in answered.iter().filter(|case| !case.is_hit()) {
        assert!(
            explained.iter().any(|(id, _)| *id == case.id),
            "{what} {}: {} is not among the classes that hold 95 %: {:?}",
            case.id, case.published[0], case.held
        );
    }
    assert!(figures.hits >= 0.95, "{what}: the published answer is held in {:.1} % of the cases", 100.0 * figures.hits);
    assert!(figures.mean_size <= 4.0, "{what}: the set has {:.2} classes on average", figures.mean_size);
}

#[test]
fn published_connections_are_found() {
    holds_the_bars("connection", &find_figures::connections(catalogue()), &[]);
}

#[test]
fn published_hoses_are_found() {
    holds_the_bars("hose", &find_figures::hoses(catalogue()), &[]);
}

#[test]
fn example_markings_are_found() {
    holds_the_bars("marking", &find_figures::markings(catalogue()), &[]);
}
