//! One mark with two pressures: the print and the date tell which the old hose carried.

use super::line::{asked, catalogue, evidence, finding, has, hose, objections, was};
use hosewright_core::check::{Checked, Evidence, Verdict};
use hosewright_core::find::find;
use hosewright_core::quantity::Bar;
use rstest::rstest;

/// 100R2AT DN 12: 245 bar by the older figures, 275 since 2006 (SAE J517:2003 scope). It is to be replaced by itself.
fn replaced(printed: Option<f64>, year: Option<u16>) -> Checked {
    asked(|question| {
        question.spec.hose = Some(hose("SAE J517", "100R2AT", 12.0));
        let found = evidence(question);
        found.hose = vec![was("SAE J517", "100R2AT", 12.0, 1.0)];
        found.printed_pressure_bar = printed.map(Bar);
        found.printed_year = year;
    })
}

#[rstest]
#[case::a_date_before(None, Some(2005), "original-edition-older-ok", 245.0)]
#[case::a_date_since(None, Some(2006), "original-edition-newer-ok", 275.0)]
#[case::the_older_pressure_printed(Some(245.0), None, "original-edition-older-ok", 245.0)]
#[case::the_newer_pressure_printed(Some(275.0), None, "original-edition-newer-ok", 275.0)]
#[case::a_print_over_a_date(Some(245.0), Some(2015), "original-edition-older-ok", 245.0)]
#[case::a_print_that_is_neither(Some(300.0), Some(2015), "original-edition-newer-ok", 275.0)]
#[case::nothing(None, None, "original-edition-open", 275.0)]
fn print_and_date_tell_the_edition_and_where_nothing_does_the_higher_counts(
    #[case] printed: Option<f64>,
    #[case] year: Option<u16>,
    #[case] edition: &str,
    #[case] asks: f64,
) {
    let checked = replaced(printed, year);
    let told = finding(&checked, edition);
    assert_eq!((told.value, told.limit), (Some(245.0), Some(275.0)));
    assert_eq!(told.verdict == Verdict::Pass, edition.ends_with("-ok"), "doubt is no pass");
    assert!(told.source.contains("J517:2003"), "{}", told.source);
    let (key, verdict) = if asks > 245.0 {
        ("original-pressure-above", Verdict::Stop)
    } else {
        ("original-pressure-ok", Verdict::Pass)
    };
    let pressure = finding(&checked, key);
    assert_eq!((pressure.verdict, pressure.limit), (verdict, Some(asks)), "{:?}", objections(&checked));
}

#[test]
fn where_the_year_of_the_change_was_not_found_a_date_tells_nothing() {
    let checked = asked(|question| {
        question.spec.hose = Some(hose("SAE J517", "100R1S", 12.0));
        evidence(question).hose = vec![was("SAE J517", "100R1AT", 12.0, 1.0)];
        evidence(question).printed_year = Some(1990);
    });
    assert_eq!(finding(&checked, "original-edition-open").verdict, Verdict::Caution);
    assert!(!has(&checked, "original-pressure-above"), "the newer type carries as much as either");
}

#[rstest]
#[case("SAE 100R2AT-8 275 BAR 3Q12", Some(275.0), Some(2012))]
#[case("SAE 100R2AT-8 245 BAR 3Q01", Some(245.0), Some(2001))]
#[case("SAE 100R2AT-8", None, None)]
fn a_print_of_either_edition_is_read_and_contradicts_nothing(
    #[case] print: &str,
    #[case] bar: Option<f64>,
    #[case] year: Option<u16>,
) {
    let readings =
        serde_json::from_value(serde_json::json!({ "hose": { "print": print } })).expect("readings");
    let found = find(catalogue(), &readings).expect("is found");
    assert_eq!((found.printed_pressure_bar.map(Bar::get), found.printed_year), (bar, year));
    assert!(found.contradictions.is_empty(), "{:?}", found.contradictions);
    assert_eq!(found.hose[0].kind, "100R2AT", "{:?}", found.hose);
    // What was printed goes along to the check.
    let evidence = Evidence::from(found);
    assert_eq!((evidence.printed_pressure_bar.map(Bar::get), evidence.printed_year), (bar, year));
}

#[test]
fn every_edition_names_a_type_with_pressures_that_are_no_lower() {
    assert!(!catalogue().editions.is_empty());
    for edition in &catalogue().editions {
        let rows: Vec<_> = catalogue().sizes(&edition.standard, &edition.kind).collect();
        assert!(!rows.is_empty(), "{edition:?}");
        for row in rows {
            let (_, newer) = catalogue().newer_edition(row).expect("every size has its newer pressure");
            assert!(newer.max_working_pressure_bar >= row.max_working_pressure_bar, "{row:?}");
        }
    }
}
