//! What the check makes of other tables than the embedded ones: of another basis, a lower ceiling, a
//! suction hose without a helix.

use super::line::{known, objections};
use hosewright_core::catalogue::{Basis, Catalogue, Provenance, Reinforcement, Table};
use hosewright_core::check::{Checked, Finding, Question, Verdict, check};
use hosewright_core::flow::velocity;
use hosewright_core::quantity::{Bar, Millimetres};
use hosewright_core::spec::{Cover, Duty, Line, Role};
use rstest::rstest;

fn tables(change: impl FnOnce(&mut Catalogue)) -> Catalogue {
    let mut catalogue = Catalogue::read(Table::embedded).expect("the embedded tables can be read");
    change(&mut catalogue);
    catalogue
}

fn answered(catalogue: &Catalogue, change: impl FnOnce(&mut Question)) -> Checked {
    let mut question = known();
    change(&mut question);
    check(catalogue, &question).expect("the question can be asked")
}

#[track_caller]
fn of_rule<'c>(checked: &'c Checked, rule: &str) -> &'c Finding {
    checked.findings.iter().find(|finding| finding.rule == rule).expect(rule)
}

fn hose_row(catalogue: &mut Catalogue) -> &mut hosewright_core::catalogue::HoseRow {
    let is_it = |row: &&mut hosewright_core::catalogue::HoseRow| {
        (row.standard.as_str(), row.kind.as_str(), row.dn.get()) == ("EN 853", "2SN", 16.0)
    };
    catalogue.hoses.iter_mut().find(is_it).expect("in the tables")
}

fn provenance(basis: Basis) -> Provenance {
    Provenance { source: "a table of the test".into(), basis }
}

#[rstest]
#[case::published(Basis::Published, Verdict::Pass)]
#[case::derived(Basis::Derived, Verdict::Pass)]
#[case::library(Basis::ReferenceLibrary, Verdict::Pass)]
#[case::practice(Basis::CommonPractice, Verdict::Pass)]
#[case::lower(Basis::LowerOfTwo, Verdict::Pass)]
#[case::bounded(Basis::Bounded, Verdict::Pass)]
#[case::yours(Basis::Yours, Verdict::Pass)]
#[case::memory(Basis::Memory, Verdict::Caution)]
#[case::proxy(Basis::Proxy, Verdict::Caution)]
#[case::none(Basis::None, Verdict::Caution)]
fn a_limit_is_taken_for_as_sure_as_its_basis(#[case] basis: Basis, #[case] verdict: Verdict) {
    let catalogue = tables(|tables| hose_row(tables).columns.bend = basis);
    let checked = answered(&catalogue, |_| ());
    let bend = of_rule(&checked, "bend");
    assert_eq!((bend.verdict, bend.basis), (verdict, basis));
    assert_eq!(checked.verdict, verdict, "{:?}", objections(&checked));
}

#[rstest]
#[case::memory(Basis::Memory, "pressure-unverified", Verdict::Caution)]
#[case::proxy(Basis::Proxy, "pressure-proxy", Verdict::Caution)]
#[case::none(Basis::None, "pressure-unknown", Verdict::Stop)]
#[case::bounded(Basis::Bounded, "pressure-ok", Verdict::Pass)]
fn a_rating_is_taken_for_as_sure_as_its_basis(
    #[case] basis: Basis,
    #[case] key: &str,
    #[case] verdict: Verdict,
) {
    let catalogue = tables(|tables| hose_row(tables).columns.pressure = basis);
    let checked = answered(&catalogue, |_| ());
    let hose = of_rule(&checked, "pressure");
    assert_eq!((hose.case.key, hose.verdict), (key, verdict));
    assert_eq!(checked.assembly_pressure_bar.is_none(), basis == Basis::None, "no basis, no rating");
}

/// The ceiling is that of the connection's own table (ISO 8434, SAE J514).
#[rstest]
#[case::lower(413.0, Basis::Published, 300.0, (300.0, Basis::Bounded))]
#[case::the_same(413.0, Basis::Published, 413.0, (413.0, Basis::Published))]
#[case::higher(413.0, Basis::Published, 500.0, (413.0, Basis::Published))]
#[case::of_a_stand_in(413.0, Basis::Proxy, 300.0, (300.0, Basis::Proxy))]
fn the_connections_own_rating_is_the_ceiling(
    #[case] rating: f64,
    #[case] basis: Basis,
    #[case] ceiling: f64,
    #[case] expected: (f64, Basis),
) {
    let catalogue = tables(|tables| {
        for row in tables.ratings.iter_mut().filter(|row| row.family == "ORFS" && row.size == "-10") {
            (row.max_pressure_bar, row.provenance) = (Some(Bar(rating)), provenance(basis));
        }
        for row in tables.ends.iter_mut().filter(|row| row.family == "ORFS" && row.size == "-10") {
            (row.max_pressure_bar, row.pressure_basis) = (Some(Bar(ceiling)), Basis::Bounded);
        }
    });
    let checked = answered(&catalogue, |_| ());
    let ends: Vec<_> = checked.findings.iter().filter(|found| found.rule == "pressure").skip(1).collect();
    for end in ends.into_iter().filter(|end| end.limit != Some(250.0)) {
        assert_eq!((end.limit, end.basis), (Some(expected.0), expected.1));
    }
}

#[test]
fn an_end_the_hose_fitting_standards_do_not_rate_has_its_connections_rating() {
    let catalogue = tables(|tables| tables.ratings.retain(|row| row.family != "ORFS"));
    let checked = answered(&catalogue, |_| ());
    assert_eq!(checked.assembly_pressure_bar, Some(Bar(250.0)), "413 bar by the ends, 250 by the hose");
    let unrated = tables(|tables| {
        for row in tables.ratings.iter_mut().filter(|row| row.family == "ORFS") {
            (row.max_pressure_bar, row.provenance.basis) = (None, Basis::None);
        }
    });
    let checked = answered(&unrated, |_| ());
    assert_eq!(
        checked.verdict,
        Verdict::Stop,
        "the ceiling is no rating where the standards say none is known"
    );
}

#[test]
fn a_rated_hose_without_a_helix_is_a_caution_in_a_suction_line() {
    let catalogue = tables(|tables| {
        let row = hose_row(tables);
        (row.vacuum_kpa_abs, row.columns.vacuum) = (Some(20.0), Basis::Published);
    });
    let ask = |vacuum: f64| {
        answered(&catalogue, |question| {
            question.service.line = Some(Line::Suction);
            question.service.flow_l_min = Some(hosewright_core::quantity::LitresPerMinute(1.0));
            question.service.vacuum_kpa_abs = Some(vacuum);
        })
    };
    assert_eq!(objections(&ask(20.0)), ["suction-helix-missing"], "20 kPa is what it bears");
    assert!(objections(&ask(19.9)).contains(&"vacuum-too-deep"));
}

#[test]
fn oil_just_as_fast_as_usual_is_within() {
    let flow = known().service.flow_l_min.expect("a flow");
    let catalogue = tables(|tables| {
        let bore = hose_row(tables).id_nom_mm;
        tables.oil_speeds.iter_mut().for_each(|row| row.high_m_s = velocity(flow, bore));
    });
    assert_eq!(answered(&catalogue, |_| ()).verdict, Verdict::Pass);
}

#[test]
fn the_speeds_of_european_practice_count() {
    let catalogue = tables(|tables| tables.oil_speeds.reverse());
    let checked = answered(&catalogue, |_| ());
    assert_eq!(of_rule(&checked, "flow-speed").limit, Some(10.0));
}

#[test]
fn a_tube_nobody_knows_stops() {
    let catalogue = tables(|tables| tables.types.iter_mut().for_each(|kind| kind.tube.clear()));
    assert!(objections(&answered(&catalogue, |_| ())).contains(&"fluid-tube-unknown"));
    let strange = tables(|tables| {
        tables.types.iter_mut().for_each(|kind| kind.tube = vec!["unobtainium".into()]);
    });
    assert!(objections(&answered(&strange, |_| ())).contains(&"fluid-unrated"));
    let recalled = tables(|tables| {
        tables.fluids.iter_mut().for_each(|row| row.provenance.basis = Basis::Memory);
    });
    assert!(objections(&answered(&recalled, |_| ())).contains(&"fluid-unverified"));
}

#[rstest]
#[case::free_of_wire(Some(Reinforcement::TextileBraid), true)]
#[case::thermoplastic(Some(Reinforcement::ThermoplasticTextile), true)]
#[case::helix(Some(Reinforcement::SuctionHelix), false)]
#[case::not_said(None, false)]
fn only_textile_can_be_non_conductive(#[case] reinforcement: Option<Reinforcement>, #[case] free: bool) {
    let catalogue = tables(|tables| {
        tables.types.iter_mut().for_each(|kind| kind.reinforcement = reinforcement);
    });
    let checked = answered(&catalogue, |question| {
        question.spec.cover = Some(Cover::NonConductive);
        question.service.duties = vec![Duty::NonConductive];
    });
    assert_eq!(of_rule(&checked, "duty").verdict == Verdict::Pass, free);
}

/// Which source a hose's heat and cold have: the scopes' where they name the same figure for it.
#[rstest]
#[case(("EN 853", "2SN", 16.0), Some("oil-temp-max"), Some("oil-temp-min"))]
#[case(("EN 854", "2TE", 16.0), Some("oil-temp-max"), Some("oil-temp-min"))]
#[case(("EN 857", "1SC", 16.0), Some("oil-temp-max"), Some("oil-temp-min"))]
#[case(("EN 856", "4SP", 16.0), Some("oil-temp-max"), Some("oil-temp-min"))]
#[case(("EN 856", "4SH", 19.0), Some("oil-temp-max"), Some("oil-temp-min"))]
#[case(("EN 856", "R12", 16.0), Some("oil-temp-max-hot-types"), Some("oil-temp-min"))]
#[case(("EN 856", "R13", 19.0), Some("oil-temp-max-hot-types"), Some("oil-temp-min"))]
#[case(("SAE J517", "100R12", 16.0), Some("oil-temp-max-hot-types"), Some("oil-temp-min"))]
#[case(("SAE J517", "100R15", 19.0), Some("oil-temp-max-hot-types"), Some("oil-temp-min"))]
#[case(("ISO 3862", "R12", 16.0), Some("oil-temp-max-hot-types"), None)]
#[case(("SAE J517", "100R7", 16.0), Some("oil-temp-max-thermoplastic"), Some("oil-temp-min"))]
#[case(("SAE J517", "100R8", 16.0), Some("oil-temp-max-thermoplastic"), Some("oil-temp-min"))]
#[case(("SAE J517", "100R14", 16.0), Some("ptfe-temp-max"), Some("ptfe-temp-min"))]
#[case(("SAE J517", "100R1S", 16.0), None, Some("oil-temp-min"))]
#[case(("GOST 6286-73", "I-A", 16.0), None, None)]
fn a_hoses_heat_and_cold_name_their_source(
    #[case] (standard, kind, dn): (&str, &str, f64),
    #[case] hot: Option<&str>,
    #[case] cold: Option<&str>,
) {
    let tables = Catalogue::embedded();
    let name = super::line::hose(standard, kind, dn);
    let row = tables.hose(standard, kind, name.dn).expect("in the tables");
    let source = |key: Option<&str>| match key {
        Some(key) => tables.limit(key).expect(key).provenance.clone(),
        None => Provenance { source: row.source.clone(), basis: row.basis },
    };
    let checked = answered(tables, |question| question.spec.hose = Some(name.clone()));
    for (figure, key) in [(row.temp_max_c, hot), (row.temp_min_c, cold)] {
        let expected = source(key);
        let found = checked
            .findings
            .iter()
            .find(|found| found.rule == "fluid-temperature" && found.limit == Some(figure.get()));
        let found = found.unwrap_or_else(|| panic!("{standard} {kind}: no {figure:?}"));
        assert_eq!((&found.source, found.basis), (&expected.source, expected.basis), "{figure:?}");
    }
}

#[test]
fn a_figure_other_than_the_scopes_has_the_rows_source() {
    let catalogue = tables(|tables| hose_row(tables).temp_max_c = hosewright_core::quantity::Celsius(95.0));
    let checked = answered(&catalogue, |_| ());
    let heat = checked.findings.iter().find(|found| found.limit == Some(95.0)).expect("the heat");
    assert_eq!(heat.source, hose_row(&mut tables(|_| ())).source);
}

/// Water freezes: 0 C (EN 853, 854, 856, 857 scopes); water and what has water in it 0 to +60 C in two
/// others.
#[rstest]
#[case("EN 853", "2SN", 16.0, "water", Some(0.0), 70.0)]
#[case("EN 854", "2TE", 16.0, "water", Some(0.0), 70.0)]
#[case("EN 856", "4SP", 16.0, "water", Some(0.0), 70.0)]
#[case("EN 857", "2SC", 16.0, "water", Some(0.0), 70.0)]
#[case("ISO 3862", "4SP", 16.0, "water", Some(0.0), 70.0)]
#[case("EN 853", "2SN", 16.0, "HFC", None, 70.0)]
#[case("ISO 11237", "2SC", 16.0, "HFC", Some(0.0), 60.0)]
#[case("ISO 11237", "2SC", 16.0, "water", Some(0.0), 60.0)]
#[case("ISO 3949", "R7", 16.0, "water", Some(0.0), 60.0)]
#[case("SAE J517", "100R2S", 16.0, "water", None, 70.0)]
#[case("EN 853", "2SN", 16.0, "HM", None, 100.0)]
fn water_narrows_the_limits(
    #[case] standard: &str,
    #[case] kind: &str,
    #[case] dn: f64,
    #[case] fluid: &str,
    #[case] frost: Option<f64>,
    #[case] hottest: f64,
) {
    let ask = |cold: f64, hot: f64| {
        answered(Catalogue::embedded(), |question| {
            question.spec.hose = Some(super::line::hose(standard, kind, dn));
            question.service.fluid = Some(fluid.into());
            question.service.fluid_min_c = Some(hosewright_core::quantity::Celsius(cold));
            question.service.fluid_max_c = Some(hosewright_core::quantity::Celsius(hot));
        })
    };
    let broken = |checked: &Checked| {
        objections(checked)
            .iter()
            .filter(|key| key.ends_with("-limit"))
            .map(|key| (*key).to_owned())
            .collect::<Vec<_>>()
    };
    assert_eq!(broken(&ask(frost.unwrap_or(-40.0), hottest)), Vec::<String>::new(), "at both limits");
    assert!(!broken(&ask(0.0, hottest + 0.01)).is_empty(), "hotter than {hottest} C");
    assert_eq!(broken(&ask(-0.01, 20.0)).contains(&"frost-below-limit".to_owned()), frost.is_some());
}

#[test]
fn water_limits_hold_for_any_tube() {
    // A tube the fluid table has no heat for: the scopes' +70 C for water-based fluids stays.
    let catalogue = tables(|tables| tables.fluids.iter_mut().for_each(|row| row.max_temp_c = None));
    for (hot, stops) in [(70.0, false), (70.01, true)] {
        let checked = answered(&catalogue, |question| {
            question.service.fluid = Some("HFC".into());
            question.service.fluid_max_c = Some(hosewright_core::quantity::Celsius(hot));
        });
        assert_eq!(objections(&checked).contains(&"fluid-heat-above-limit"), stops, "{hot} C");
    }
}

#[test]
fn an_end_without_a_hose_size_or_a_thread_is_judged_by_what_it_has() {
    let sizeless = tables(|tables| {
        tables.ends.iter_mut().filter(|row| row.family == "ORFS").for_each(|row| row.dn = None);
    });
    assert_eq!(objections(&answered(&sizeless, |_| ())), ["size-unknown", "size-unknown"]);
    let threadless = tables(|tables| {
        tables.ends.iter_mut().filter(|row| row.family == "ORFS").for_each(|row| row.thread = None);
    });
    let checked = answered(&threadless, |question| {
        question.spec.ends.iter_mut().for_each(|end| end.gender = None);
    });
    assert_eq!(checked.verdict, Verdict::Pass, "a plain end is neither male nor female");
}

#[test]
fn the_originals_most_demanding_figure_counts_whichever_comes_first() {
    for turned in [false, true] {
        let checked = answered(Catalogue::embedded(), |question| {
            let found = question.found.as_mut().expect("there is evidence");
            found.hose = [("EN 856", "4SP"), ("SAE J517", "100R14"), ("EN 857", "2SC")]
                .map(|(standard, kind)| super::line::was(standard, kind, 16.0, 0.33))
                .to_vec();
            if turned {
                found.hose.reverse();
            }
            question.service.fluid_max_c = None;
            question.service.fluid_min_c = None;
            question.service.bend_radius_mm = None;
        });
        let limit = |key: &str| super::line::finding(&checked, key).limit;
        assert_eq!(limit("original-pressure-above"), Some(350.0), "4SP");
        assert_eq!(limit("original-heat-above"), Some(204.0), "100R14");
        assert_eq!(limit("original-cold-below"), Some(-54.0), "100R14");
        let tightest = Catalogue::embedded();
        let bends = [("EN 856", "4SP"), ("SAE J517", "100R14"), ("EN 857", "2SC")].map(|(standard, kind)| {
            let row = tightest.hose(standard, kind, super::line::dn(16.0)).expect("in the tables");
            row.min_bend_radius_mm.map_or(f64::INFINITY, Millimetres::get)
        });
        assert_eq!(limit("original-bend-tighter"), bends.into_iter().reduce(f64::min));
    }
}

#[test]
fn a_part_is_found_by_its_role_in_whatever_order_they_come() {
    let checked = answered(Catalogue::embedded(), |question| question.spec.ends.reverse());
    assert_eq!(checked.verdict, Verdict::Pass);
    let missing = answered(Catalogue::embedded(), |question| {
        question.spec.ends.retain(|end| end.role == Role::B);
    });
    assert_eq!(super::line::name(super::line::finding(&missing, "end-missing"), "end"), Some("A"));
}
