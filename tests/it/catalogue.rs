//! The embedded tables: complete, joined, plausible; and a bad table says what is wrong with it.

use hosewright_core::catalogue::Catalogue;
use hosewright_core::quantity::Dn;

fn dn(number: f64) -> Dn {
    Dn::new(number).expect("a size")
}

#[test]
fn a_hose_is_found_by_standard_type_and_size() {
    let hose = Catalogue::embedded().hose("EN 853", "2SN", dn(12.0)).expect("in the table");
    assert_eq!(
        hose.max_working_pressure_bar.map(|bar| bar.get()),
        Some(275.0),
        "EN 853 2SN DN 12 is a 275 bar hose"
    );
}

#[test]
fn a_twin_has_the_sizes_of_the_type_it_names_but_is_less_sure() {
    let catalogue = Catalogue::embedded();
    let own = catalogue.hose("EN 853", "2SN", dn(16.0)).expect("in the table");
    let twin = catalogue.hose("ISO 1436", "2SN", dn(16.0)).expect("shares the rows of EN 853 2SN");
    assert_eq!(
        twin.max_working_pressure_bar, own.max_working_pressure_bar,
        "the twins carry the same pressure"
    );
    assert!(
        twin.columns.pressure > own.columns.pressure,
        "that the twins are of one size is recalled, not read"
    );
}
