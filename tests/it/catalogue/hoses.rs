//! Hoses and their types.

use super::{assert_sourced, dn, embedded};
use hosewright_core::catalogue::{Basis, HoseRow, HoseType};
use hosewright_tests::vectors;
use std::collections::BTreeSet;

/// Types that have no size rows, and why.
const WITHOUT_SIZES: [(&str, &str, &str); 1] =
    [("SAE J517", "100R9", "discontinued; 100R12 took its place in practice")];

/// Types that others name as exchangeable and that have no row of their own, and why.
const WITHOUT_ROW: [(&str, &str, &str); 2] = [
    ("SAE J517", "100R1A", "discontinued; named by EN 853 1ST only"),
    ("SAE J517", "100R2A", "discontinued; named by EN 853 2ST only"),
];

fn name(row: &HoseRow) -> String {
    format!("{} {} DN {}", row.standard, row.kind, row.dn)
}

#[test]
fn the_published_limits_stand_in_the_table() {
    let mut held = 0;
    for case in vectors::rows("hose_cases.csv").iter().filter(|case| case.text("kind") == "limit") {
        let (standard, kind) = (case.text("expect_standard"), case.text("expect_type"));
        let hose = embedded()
            .hose(standard, kind, dn(case.number("expect_dn")))
            .unwrap_or_else(|error| panic!("{}: {error}", case.text("id")));
        let found = match case.text("quantity") {
            "max working pressure" => hose.max_working_pressure_bar.map(|bar| bar.get()),
            "min burst pressure" => hose.min_burst_pressure_bar.map(|bar| bar.get()),
            "min bend radius" => hose.min_bend_radius_mm.map(|radius| radius.get()),
            other => panic!("{}: what is {other}?", case.text("id")),
        };
        assert_eq!(
            found,
            Some(case.number("expected_value")),
            "{}: {} of {} by {}",
            case.text("id"),
            case.text("quantity"),
            name(hose),
            case.text("source")
        );
        held += 1;
    }
    assert_eq!(held, 19, "every limit of the check values was held");
}

#[test]
fn limits_of_a_hose_are_in_their_order() {
    for row in embedded().hoses.iter().chain(&embedded().twins) {
        let bore = row.id_mm.map_or(row.id_nom_mm.get(), |band| band.max);
        if let Some(band) = row.id_mm {
            let nominal = row.id_nom_mm.get();
            assert!(band.min <= nominal && nominal <= band.max, "{}: {nominal} lies in {band:?}", name(row));
        }
        let mm = |length: Option<hosewright_core::quantity::Millimetres>| length.map(|mm| mm.get());
        let outward: Vec<f64> = [
            Some(bore),
            mm(row.reinforcement_od_min_mm),
            mm(row.reinforcement_od_max_mm),
            mm(row.cover_od_max_mm),
        ]
        .into_iter()
        .flatten()
        .collect();
        assert!(outward.is_sorted(), "{}: {outward:?} run from the bore outwards", name(row));
        if let (Some(least), Some(most)) = (row.cover_od_min_mm, row.cover_od_max_mm) {
            assert!(least <= most, "{}: the cover's limits are crossed", name(row));
        }
        assert!(row.temp_min_c < row.temp_max_c, "{}: cold is below hot", name(row));
    }
}

/// Rows whose own printed proof and burst figures are the table's and not twice and four times the
/// working pressure: the reason stands with each.
fn own_figures(row: &HoseRow) -> Option<&'static str> {
    match (row.standard.as_str(), row.kind.as_str()) {
        ("SAE J517", "100R1AT" | "100R2AT" | "100R4" | "100R5" | "100R6") => {
            Some("psi rounded to bar as printed")
        }
        ("MIL-H-8794", _) => Some("the military table has figures of its own"),
        _ => None,
    }
}

#[test]
fn proof_is_twice_and_burst_four_times_the_working_pressure_unless_the_table_prints_its_own() {
    for row in &embedded().hoses {
        let Some(working) = row.max_working_pressure_bar.map(|bar| bar.get()) else { continue };
        let (off, lowest) = if own_figures(row).is_some() { (0.5, 1.4) } else { (0.02, 2.0) };
        for (of, ratio) in [(row.proof_pressure_bar, 2.0), (row.min_burst_pressure_bar, 4.0)] {
            let Some(pressure) = of.map(|bar| bar.get()) else { continue };
            let found = pressure / working;
            assert!(
                found >= lowest && (found / ratio - 1.0).abs() <= off,
                "{}: {pressure} is {found:.2} times {working} bar and not {ratio}",
                name(row)
            );
        }
    }
}

#[test]
fn within_a_type_the_bigger_hose_is_bigger_bends_wider_and_carries_no_more() {
    for kind in &embedded().types {
        let mut sizes: Vec<_> = embedded().sizes(&kind.standard, &kind.kind).collect();
        sizes.sort_by_key(|row| row.dn);
        for pair in sizes.windows(2) {
            let [small, big] = pair else { unreachable!("windows of two") };
            let grows = |of: fn(&HoseRow) -> Option<f64>, strictly: bool| {
                of(small)
                    .zip(of(big))
                    .is_none_or(|(small, big)| if strictly { small < big } else { small <= big })
            };
            let told = |what| format!("{what} of {} against {}", name(big), name(small));
            assert!(grows(|row| Some(row.id_nom_mm.get()), true), "{}", told("bore"));
            assert!(grows(|row| row.id_mm.map(|band| band.min), true), "{}", told("smallest bore"));
            assert!(
                grows(|row| row.reinforcement_od_max_mm.map(|mm| mm.get()), true),
                "{}",
                told("reinforcement")
            );
            assert!(grows(|row| row.cover_od_max_mm.map(|mm| mm.get()), true), "{}", told("cover"));
            assert!(grows(|row| row.min_bend_radius_mm.map(|mm| mm.get()), false), "{}", told("bend radius"));
            assert!(
                grows(|row| row.max_working_pressure_bar.map(|bar| -bar.get()), false),
                "{}",
                told("pressure")
            );
        }
    }
}

#[test]
fn a_value_has_a_basis_and_a_blank_has_none() {
    for row in &embedded().hoses {
        let held = row.columns;
        for (there, basis, what) in [
            (true, held.id, "bore"),
            (
                row.reinforcement_od_min_mm.or(row.reinforcement_od_max_mm).is_some(),
                held.reinforcement,
                "reinforcement",
            ),
            (row.cover_od_min_mm.or(row.cover_od_max_mm).is_some(), held.cover, "cover"),
            (row.max_working_pressure_bar.is_some(), held.pressure, "working pressure"),
            (row.proof_pressure_bar.is_some(), held.proof, "proof pressure"),
            (row.min_burst_pressure_bar.is_some(), held.burst, "burst pressure"),
            (row.min_bend_radius_mm.is_some(), held.bend, "bend radius"),
            (row.vacuum_kpa_abs.is_some(), held.vacuum, "vacuum"),
        ] {
            assert_eq!(there, basis != Basis::None, "{}: {what} and its basis {basis:?}", name(row));
        }
        assert_sourced(&name(row), &row.pressure_provenance());
    }
}

#[test]
fn every_hose_has_a_type_and_every_type_has_sizes() {
    let types: BTreeSet<_> = embedded().types.iter().map(|kind| (&kind.standard, &kind.kind)).collect();
    for row in &embedded().hoses {
        assert!(types.contains(&(&row.standard, &row.kind)), "{} has no type", name(row));
    }
    for kind in &embedded().types {
        let excused =
            WITHOUT_SIZES.iter().any(|(standard, name, _)| kind.standard == *standard && kind.kind == *name);
        let sizes = embedded().sizes(&kind.standard, &kind.kind).count();
        assert_eq!(sizes == 0, excused, "{} {} has {sizes} sizes", kind.standard, kind.kind);
        assert_sourced(&format!("{} {}", kind.standard, kind.kind), &kind.provenance);
    }
}

#[test]
fn an_exchangeable_type_is_in_the_table_and_not_the_type_itself() {
    let has_row = |standard: &str, name: &str| {
        embedded().types.iter().any(|kind| kind.standard == standard && kind.kind == name)
    };
    for kind in &embedded().types {
        for with in &kind.interchange {
            let excused = WITHOUT_ROW
                .iter()
                .any(|(standard, name, _)| with.standard == *standard && with.kind == *name);
            assert_eq!(
                !excused,
                has_row(&with.standard, &with.kind),
                "{} {} names {} {}",
                kind.standard,
                kind.kind,
                with.standard,
                with.kind
            );
            assert!((&with.standard, &with.kind) != (&kind.standard, &kind.kind), "{} is itself", kind.kind);
        }
    }
}

#[test]
fn a_twin_has_the_sizes_of_the_type_it_names_but_is_less_sure() {
    let own = embedded().hose("EN 853", "2SN", dn(16.0)).expect("in the table");
    let twin = embedded().hose("ISO 1436", "2SN", dn(16.0)).expect("shares the rows of EN 853 2SN");
    assert_eq!(
        twin.max_working_pressure_bar, own.max_working_pressure_bar,
        "the twins carry the same pressure"
    );
    assert_eq!(
        (twin.standard.as_str(), twin.kind.as_str()),
        ("ISO 1436", "2SN"),
        "the row has the twin's name"
    );
    assert!(
        twin.columns.pressure > own.columns.pressure,
        "that the twins are of one size is recalled, not read"
    );
}

#[test]
fn the_class_of_a_hose_sets_its_pressure_and_without_a_class_it_is_not_known() {
    let in_class = embedded().hose("ISO 18752", "CC 350", dn(19.0)).expect("type CC in class 350");
    assert_eq!(in_class.max_working_pressure_bar.map(|bar| bar.get()), Some(350.0), "class 350 is 350 bar");
    assert_eq!(in_class.temp_max_c.get(), 120.0, "grade C stands 120 C");
    let compact = embedded().hose("ISO 18752", "AC 210", dn(19.0)).expect("type AC in class 210");
    assert_eq!(compact.temp_max_c.get(), 100.0, "grade A stands 100 C");
    let without = embedded().hose("ISO 18752", "CC", dn(19.0)).expect("the class can't be read any more");
    assert_eq!(without.max_working_pressure_bar, None, "without its class the pressure is not known");
    assert_eq!(without.columns.pressure, Basis::None, "and its basis says so");
}

#[test]
fn fluids_and_tubes_of_a_type_are_in_the_fluid_table() {
    let classes: BTreeSet<_> = embedded().fluid_classes.iter().map(|row| row.class.as_str()).collect();
    let tubes: BTreeSet<_> = embedded().fluids.iter().map(|row| row.elastomer.as_str()).collect();
    for HoseType { standard, kind, fluids, fluids_excluded, tube, .. } in &embedded().types {
        assert!(!fluids.is_empty(), "{standard} {kind} names no fluid");
        for class in fluids.iter().chain(fluids_excluded) {
            assert!(classes.contains(class.as_str()), "{standard} {kind}: {class} is no class of the table");
        }
        assert!(
            fluids.iter().all(|class| !fluids_excluded.contains(class)),
            "{standard} {kind}: allowed and excluded"
        );
        for tube in tube {
            assert!(tubes.contains(tube.as_str()), "{standard} {kind}: {tube} is no tube of the table");
        }
    }
}
