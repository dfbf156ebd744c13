//! Names people use find the rows of the tables, and a wrong name is told what would be right.

use super::{dn, embedded, lines};
use hosewright_core::catalogue::Table;
use proptest::prelude::*;
use rstest::rstest;

#[rstest]
#[case("EN 853", "2SN", 12.0, "EN 853 2SN 12")]
#[case("DIN EN 853", "2sn", 12.0, "EN 853 2SN 12")]
#[case("en853", "2SN", 13.0, "EN 853 2SN 12")]
#[case("EN 853", "2SN", 20.0, "EN 853 2SN 19")]
#[case("EN 856", "4SP", 32.0, "EN 856 4SP 31")]
#[case("EN 853", "2SN", 50.0, "EN 853 2SN 51")]
#[case("EN 853", "2SN", 6.3, "EN 853 2SN 6")]
#[case("EN 853", "2SN", 12.5, "EN 853 2SN 12")]
#[case("EN 853", "2SN", 31.5, "EN 853 2SN 31")]
#[case("GOST 6286", "Z-II", 12.5, "GOST 6286-73 Z-II 12.5")]
#[case("SAE", "100R2AT", 12.0, "SAE J517 100R2AT 12")]
#[case("SAE J517", "R2AT", 12.0, "SAE J517 100R2AT 12")]
#[case("SAE 100R", "SAE 100R12", 19.0, "SAE J517 100R12 19")]
#[case("ISO 1436", "R2AT", 16.0, "ISO 1436 R2ATS 16")]
#[case("ISO 18752", "350 CC", 19.0, "ISO 18752 CC 350 19")]
#[case("MIL-DTL-8794", "single wire braid", 12.0, "MIL-H-8794 single wire braid fabric cover 12")]
fn a_hose_is_found_by_the_names_people_use(
    #[case] standard: &str,
    #[case] kind: &str,
    #[case] size: f64,
    #[case] right: &str,
) {
    let hose = embedded().hose(standard, kind, dn(size)).unwrap_or_else(|error| panic!("{error}"));
    assert_eq!(format!("{} {} {}", hose.standard, hose.kind, hose.dn), right);
}

#[rstest]
#[case("JIC 37 flare", "-10", "JIC 37 flare -10")]
#[case("JIC", "10", "JIC 37 flare -10")]
#[case("37 (74 included)", "#10", "JIC 37 flare -10")]
#[case("DKJ", "7/8-14", "JIC 37 flare -10")]
#[case("24 degree light", "15L", "Metric 24 cone L L15")]
#[case("metric 24 cone", "L 15", "Metric 24 cone L L15")]
#[case("DIN 2353", "25S", "Metric 24 cone S S25")]
#[case("DKOS", "25", "Metric 24 cone S S25")]
#[case("DKOL", "M22x1,5", "Metric 24 cone L L15")]
#[case("DKR", "G1/2", "BSPP 60 cone 1/2")]
#[case("BSP", "1 1/4\"", "BSPP 60 cone 1-1/4")]
#[case("BSPP port", "1/2 in", "G port 1/2")]
#[case("ORFS", "12", "ORFS -12")]
#[case("ORB", "-12", "SAE ORB -12")]
#[case("ISO 6149", "M22", "ISO 6149 port M22x1.5")]
#[case("code 62", "-12", "flange 62 -12")]
#[case("61", "3/4", "flange 61 -12")]
#[case("SAE 6000", "1-1/4", "flange 62 -20")]
#[case("flange 61", "DN 20", "flange 61 -12")]
#[case("banjo", "M14x1.5", "Banjo metric M14x1.5")]
#[case("standpipe", "16", "Standpipe metric 16")]
#[case("washer end metric", "M22 x 1.5 pin 14", "Washer end metric M22x1.5 pin 14")]
#[case("NPT", "1/2", "NPT 1/2")]
fn an_end_is_found_by_the_names_people_use(#[case] family: &str, #[case] size: &str, #[case] right: &str) {
    let found =
        embedded().connection(family, size).unwrap_or_else(|error| panic!("{family} {size}: {error}"));
    assert_eq!(format!("{} {}", found.family(), found.size()), right, "{family} {size}");
}

#[test]
fn every_row_is_found_by_its_own_name() {
    for row in embedded().connections() {
        let found = embedded().connection(row.family(), row.size()).unwrap_or_else(|error| panic!("{error}"));
        assert_eq!((found.family(), found.size()), (row.family(), row.size()));
    }
    for row in embedded().hoses.iter().chain(&embedded().twins) {
        let found =
            embedded().hose(&row.standard, &row.kind, row.dn).unwrap_or_else(|error| panic!("{error}"));
        assert_eq!(found, row, "{} {} DN {}", row.standard, row.kind, row.dn);
    }
}

#[test]
fn every_name_people_use_leads_to_a_row() {
    for cells in lines(Table::FamilyAliases) {
        let families = embedded().families_named(&cells["alias"]).unwrap_or_else(|error| panic!("{error}"));
        assert!(
            families.contains(&cells["family"].as_str()),
            "{} is {} and not {families:?}",
            cells["alias"],
            cells["family"]
        );
        assert!(
            embedded().connections().any(|row| row.family() == cells["family"]),
            "{} has rows",
            cells["family"]
        );
    }
    for cells in lines(Table::FluidAliases) {
        let class = embedded().fluid(&cells["alias"]).unwrap_or_else(|error| panic!("{error}"));
        assert_eq!(class.class, cells["class"], "{}", cells["alias"]);
    }
    for cells in lines(Table::HoseAliases) {
        let kinds = || {
            embedded().types.iter().filter(|kind| {
                kind.standard
                    == if cells["what"] == "standard" { &cells["name"] } else { &cells["standard"] }.as_str()
            })
        };
        match cells["what"].as_str() {
            "standard" => {
                let kind = kinds().next().unwrap_or_else(|| panic!("{} has types", cells["name"]));
                let found = embedded()
                    .hose_type(&cells["alias"], &kind.kind)
                    .unwrap_or_else(|error| panic!("{error}"));
                assert_eq!(found, kind, "{}", cells["alias"]);
            }
            _ => {
                let found = embedded()
                    .hose_type(&cells["standard"], &cells["alias"])
                    .unwrap_or_else(|error| panic!("{error}"));
                assert_eq!(found.kind, cells["name"], "{} of {}", cells["alias"], cells["standard"]);
            }
        }
    }
}

#[test]
fn a_name_that_fits_two_ends_is_not_guessed() {
    let error = embedded().connection("metric 24 cone", "M18x1.5").expect_err("L12 and S10 have that thread");
    assert_eq!(error.nearest, ["Metric 24 cone L L12", "Metric 24 cone S S10"], "both are named: {error}");
    let error = embedded().connection("24 cone", "12").expect_err("a tube of 12 mm is in three series");
    assert_eq!(error.nearest.len(), 3, "LL, L and S are named: {error}");
}

#[rstest]
#[case::standard("EN 835", "2SN", 12.0, "standard", "EN 853")]
#[case::kind("EN 853", "2SM", 12.0, "type", "2SN")]
#[case::size("EN 853", "2SN", 17.0, "dn", "16")]
fn a_wrong_hose_is_told_what_would_be_right(
    #[case] standard: &str,
    #[case] kind: &str,
    #[case] size: f64,
    #[case] what: &str,
    #[case] right: &str,
) {
    let error = embedded().hose(standard, kind, dn(size)).expect_err("there is no such hose");
    assert_eq!(error.what, what, "{error}");
    assert!(error.nearest.iter().any(|near| near == right), "{right} is offered: {error}");
}

#[rstest]
#[case::family("JIC 73 flare", "-10", "family", "JIC 37 flare")]
#[case::size("JIC", "-11", "size", "-10")]
#[case::gauge_number_of_no_thread("JIC", "5/8", "size", "-10")]
fn a_wrong_end_is_told_what_would_be_right(
    #[case] family: &str,
    #[case] size: &str,
    #[case] what: &str,
    #[case] right: &str,
) {
    let error = embedded().connection(family, size).expect_err("there is no such end");
    assert_eq!(error.what, what, "{error}");
    assert!(error.nearest.iter().any(|near| near == right), "{right} is offered: {error}");
}

#[test]
fn a_wrong_fluid_is_told_what_would_be_right() {
    let error = embedded().fluid("HFCC").expect_err("there is no such fluid");
    assert!(error.nearest.iter().any(|near| near == "HFC"), "HFC is offered: {error}");
}

proptest! {
    #[test]
    fn no_name_panics(a in "\\PC{0,24}", b in "\\PC{0,24}", size in 0.1_f64..1000.0) {
        let catalogue = embedded();
        for error in [
            catalogue.connection(&a, &b).err(),
            catalogue.connection("JIC", &b).err(),
            catalogue.connection("61", &b).err(),
            catalogue.hose(&a, &b, dn(size)).err(),
            catalogue.hose("SAE", &b, dn(size)).err(),
            catalogue.fluid(&a).err(),
        ]
        .into_iter()
        .flatten()
        {
            prop_assert!(!error.nearest.is_empty(), "a wrong name is offered others: {error}");
        }
    }
}
