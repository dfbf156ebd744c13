//! Fluids, rules, cautions and what else the trade knows.

use super::{assert_sourced, dn, embedded, lines};
use hosewright_core::catalogue::{AgeOf, Catalogue, FluidRating, LengthPractice, Practice, Step, Table};
use hosewright_core::quantity::Millimetres;
use hosewright_core::spec::Line;
use rstest::rstest;
use std::collections::{BTreeMap, BTreeSet};

#[test]
fn every_rule_from_l001_to_l127_stands_in_one_place() {
    let tables = [
        Table::LengthTolerances,
        Table::TurnTolerances,
        Table::CutTolerances,
        Table::OilSpeeds,
        Table::Ages,
        Table::Limits,
    ];
    let mut places: BTreeMap<String, BTreeSet<(&str, usize)>> = BTreeMap::new();
    for table in tables {
        for (line, cells) in lines(table).into_iter().enumerate() {
            for column in ["id", "plus_id", "minus_id", "low_id", "high_id"] {
                if let Some(id) = cells.get(column) {
                    places.entry(id.clone()).or_default().insert((table.file(), line));
                }
            }
        }
    }
    let right: Vec<String> = (1..=127).map(|number| format!("L{number:03}")).collect();
    assert_eq!(places.keys().cloned().collect::<Vec<_>>(), right, "no rule is lost and none invented");
    for (id, places) in places {
        assert_eq!(places.len(), 1, "{id} stands in {places:?}");
    }
}

/// DIN 20066 (public copy of its table); DN 31 is its 32 and DN 51 its 50. American: rubber hose
/// handbook IP-2 (2003) table 4-8.
#[rstest]
#[case(LengthPractice::Din20066, 12.0, 630.0, Some([-3.0, 7.0]))]
#[case(LengthPractice::Din20066, 12.0, 630.1, Some([-4.0, 12.0]))]
#[case(LengthPractice::Din20066, 25.0, 2500.0, Some([-6.0, 20.0]))]
#[case(LengthPractice::Din20066, 31.0, 600.0, Some([-4.0, 12.0]))]
#[case(LengthPractice::Din20066, 51.0, 2000.0, Some([-6.0, 25.0]))]
#[case(LengthPractice::Din20066, 60.0, 630.0, Some([-6.0, 25.0]))]
#[case(LengthPractice::Din20066, 60.0, 700.0, None)]
#[case(LengthPractice::Din20066, 6.0, 4000.0, Some([-20.0, 60.0]))]
#[case(LengthPractice::Din20066, 60.0, 10_000.0, Some([-100.0, 300.0]))]
#[case(LengthPractice::American, 12.0, 305.0, Some([-3.2, 3.2]))]
#[case(LengthPractice::American, 12.0, 2000.0, Some([-20.0, 20.0]))]
fn the_tolerance_of_a_length_is_that_of_its_band(
    #[case] practice: LengthPractice,
    #[case] size: f64,
    #[case] overall: f64,
    #[case] right: Option<[f64; 2]>,
) {
    let overall = Millimetres(overall);
    let found = embedded().length_tolerance(practice, dn(size), overall).map(|row| row.at(overall));
    assert_eq!(found, right, "DN {size} at {overall:?} by {practice:?}");
}

/// Elbows: MIL-DTL-83796/5 referring to SAE J517. Cut: rubber hose handbook IP-2 (2003).
#[test]
fn the_tolerances_of_turn_and_cut_are_those_of_their_bands() {
    for (length, right) in [(610.0, 3.0), (611.0, 5.0)] {
        let found = embedded().turn_tolerance(Millimetres(length)).map(|row| row.plus_minus_deg);
        assert_eq!(found, Some(right), "turn at {length} mm");
    }
    for (bore, right) in [(19.0, Some(1.6)), (25.4, Some(3.2)), (60.0, None)] {
        let found = embedded().cut_tolerance(Millimetres(bore)).map(|row| row.out_of_square_mm.get());
        assert_eq!(found, right, "cut at bore {bore} mm");
    }
}

#[rstest]
#[case("proof-ratio", 2.0)]
#[case("burst-ratio", 4.0)]
#[case("proof-hold-min-s", 30.0)]
#[case("proof-hold-max-s", 60.0)]
#[case("straight-behind-ferrule-od", 1.5)]
#[case("water-based-temp-max", 70.0)]
#[case("worn-cover-margin", 0.5)]
fn a_limit_is_found_by_its_key(#[case] key: &str, #[case] right: f64) {
    let limit = embedded().limit(key).expect("the key is stable");
    assert_eq!(limit.value, Some(right), "{key}");
    assert_sourced(key, &limit.provenance);
}

#[test]
fn speeds_and_ages_are_there_for_each_practice() {
    for practice in [Practice::European, Practice::American] {
        for line in [Line::Pressure, Line::Return, Line::Suction] {
            let speeds: Vec<_> = embedded().speeds(line, practice).collect();
            assert!(!speeds.is_empty(), "{line:?} by {practice:?}");
            for speed in speeds {
                assert!(speed.low_m_s < speed.high_m_s && speed.high_m_s <= 10.0, "{speed:?}");
            }
        }
    }
    for (of, practice, months) in [
        (AgeOf::HoseStorage, Practice::European, 48),
        (AgeOf::HoseStorage, Practice::American, 120),
        (AgeOf::AssemblyStorage, Practice::European, 24),
        (AgeOf::ServiceLife, Practice::European, 72),
        (AgeOf::InspectionInterval, Practice::European, 12),
    ] {
        assert!(
            embedded().ages_of(of).any(|age| age.practice == practice && age.months == months),
            "{of:?} of {months} months by {practice:?}"
        );
    }
}

#[test]
fn every_fluid_is_rated_against_every_tube_once() {
    let tubes: BTreeSet<_> = embedded().fluids.iter().map(|row| row.elastomer.as_str()).collect();
    for class in &embedded().fluid_classes {
        if let Some(other) = &class.rated_as {
            let known =
                embedded().fluid_classes.iter().any(|row| row.class == *other && row.rated_as.is_none());
            assert!(known, "{} is rated as {other}, which is rated itself", class.class);
        }
        let rated = tubes.iter().filter(|tube| embedded().resistance(class, tube).is_some()).count();
        let withdrawn = ["HFDS", "HFDT"].contains(&class.class.as_str());
        assert_eq!(rated, if withdrawn { 0 } else { tubes.len() }, "{} against {tubes:?}", class.class);
    }
    for row in &embedded().fluids {
        assert!(
            embedded().fluid_classes.iter().any(|class| class.class == row.class),
            "{} is no class of fluid",
            row.class
        );
    }
}

#[test]
fn phosphate_ester_destroys_nitrile_and_not_ptfe() {
    let ester = embedded().fluid("phosphate ester").expect("a fluid of the table");
    let rating = |tube| embedded().resistance(ester, tube).map(|row| row.rating);
    assert_eq!(rating("NBR"), Some(FluidRating::Not), "EN 853, 854, 856 and 857 exclude HFD R");
    assert_eq!(rating("PTFE"), Some(FluidRating::Recommended), "PTFE is named for phosphate esters");
}

#[test]
fn lines_of_another_trade_are_refused() {
    for name in
        ["compressed air", "Air", "brake fluid", "DOT-4", "steam", "LPG", "R134a", "oxygen", "water jetting"]
    {
        let refused = embedded().out_of_scope(name).unwrap_or_else(|| panic!("{name} is refused"));
        assert!(!refused.why.is_empty(), "{name} is refused for a reason");
    }
    for name in ["HM", "hydraulic oil", "water glycol", "water", ""] {
        assert!(embedded().out_of_scope(name).is_none(), "{name} is not refused");
    }
}

#[test]
fn every_step_of_the_job_has_its_cautions() {
    for step in
        [Step::Before, Step::Find, Step::Check, Step::Make, Step::Prove, Step::Tag, Step::Fit, Step::Keep]
    {
        assert!(embedded().cautions.iter().any(|caution| caution.step == step), "{step:?} has no caution");
    }
}

#[test]
fn a_cause_can_be_recorded_as_unknown() {
    assert!(embedded().causes.iter().any(|cause| cause.code == "UNKNOWN"), "\"unknown\" is a cause");
    assert!(
        embedded().causes.iter().all(|cause| cause.code == "UNKNOWN" || !cause.causes.is_empty()),
        "others are told"
    );
}

#[test]
fn figures_of_crimping_are_in_order_and_have_a_unit() {
    for fact in &embedded().crimp_facts {
        assert_eq!(fact.low.is_some(), fact.high.is_some(), "{}: both figures or none", fact.id);
        if let Some((low, high)) = fact.low.zip(fact.high) {
            assert!(low <= high && !fact.unit.is_empty(), "{}: {low} to {high} {}", fact.id, fact.unit);
        }
    }
}

#[test]
fn a_figure_of_bursting_is_never_a_working_pressure() {
    let forbidden: Vec<_> = embedded().marking_rules.iter().filter(|rule| rule.forbidden).collect();
    assert!(
        forbidden.iter().any(|rule| rule.pattern.contains("burst")),
        "burst pressure on a hose is forbidden"
    );
}

#[test]
fn the_same_tables_give_the_same_catalogue() {
    let again = Catalogue::read(Table::embedded).expect("the embedded tables are sound");
    assert_eq!(again.version, embedded().version, "the version hangs on the tables alone");
}
