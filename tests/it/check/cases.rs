//! Whole cases of the trade, as its tables say.

use super::line::{asked, catalogue, has, hose, objections, was};
use hosewright_core::check::{Evidence, Question, Verdict};
use hosewright_core::find::HoseCandidate;
use hosewright_core::quantity::{Bar, Celsius, Millimetres};

#[test]
fn the_published_limits_stand_in_the_answer() {
    let mut cases = 0;
    for case in cases_of("limit") {
        cases += 1;
        let named = hose(&case.standard, &case.kind, case.dn);
        let row = catalogue().hose(&named.standard, &named.kind, named.dn).expect(&case.id);
        let figure = match case.quantity.as_str() {
            "max working pressure" => row.max_working_pressure_bar.map(Bar::get),
            "min burst pressure" => row.min_burst_pressure_bar.map(Bar::get),
            "min bend radius" => row.min_bend_radius_mm.map(Millimetres::get),
            other => panic!("{}: {other} is a new kind of limit", case.id),
        };
        let expected: f64 = case.expected.parse().expect("a number");
        assert!(
            figure.is_some_and(|figure| (figure - expected).abs() < 0.5),
            "{}: {figure:?}, {expected} by {}",
            case.id,
            case.source
        );
    }
    assert_eq!(cases, 19, "C039 to C066");
}

#[test]
fn whole_cases_of_the_trade_are_answered_as_its_tables_say() {
    let mut cases = 0;
    for case in cases_of("check") {
        cases += 1;
        let checked = asked(|question| {
            question.spec.hose = Some(hose(&case.standard, &case.kind, case.dn));
            question.found = None;
            question.service.bend_radius_mm = Some(Millimetres(400.0));
            for of in [
                &mut question.service.working_pressure_bar,
                &mut question.service.relief_bar,
                &mut question.service.surge_pressure_bar,
            ] {
                *of = Some(Bar(100.0));
            }
            for end in &mut question.spec.ends {
                end.rating_bar = Some(Bar(700.0));
            }
            apply(question, &case.clue);
        });
        let accepts = checked.verdict != Verdict::Stop;
        assert_eq!(
            accepts,
            case.expected == "1",
            "{} ({}): {:?}, {}",
            case.id,
            case.clue,
            objections(&checked),
            case.source
        );
    }
    assert_eq!(cases, 7, "C067 to C076");
}

#[test]
fn the_2sn_is_not_enough_where_the_4sp_is() {
    // C067's note: 350 bar is enough; 2SN (215 bar) is not. C073's: 2SC (130 mm) fits the bend.
    let weak = asked(|question| {
        question.spec.hose = Some(hose("EN 853", "2SN", 19.0));
        question.service.surge_pressure_bar = Some(Bar(280.0));
    });
    assert!(has(&weak, "pressure-above-rating"));
    let compact = asked(|question| {
        question.spec.hose = Some(hose("EN 857", "2SC", 12.0));
        question.service.bend_radius_mm = Some(Millimetres(150.0));
    });
    assert!(has(&compact, "bend-ok"), "{:?}", objections(&compact));
}

/// The service in the words of the case file.
fn apply(question: &mut Question, clue: &str) {
    let service = &mut question.service;
    match clue {
        "system 280 bar, needs -12 hose" => service.surge_pressure_bar = Some(Bar(280.0)),
        "oil at 110 C" => service.fluid_max_c = Some(Celsius(110.0)),
        "phosphate ester HFD R" => service.fluid = Some("HFD R".into()),
        "bend 150 mm wanted, DN 12" => service.bend_radius_mm = Some(Millimetres(150.0)),
        "replace 4SP DN 10 (445 bar) by R12 DN 10" => replaced(question, was("EN 856", "4SP", 10.0, 1.0)),
        "replace 2SN DN 16 by 2SC DN 16" => replaced(question, was("EN 853", "2SN", 16.0, 1.0)),
        other => panic!("a new kind of case: {other}"),
    }
}

fn replaced(question: &mut Question, original: HoseCandidate) {
    question.found = Some(Evidence { hose: vec![original], ..Evidence::default() });
}

struct Case {
    id: String,
    clue: String,
    standard: String,
    kind: String,
    dn: f64,
    quantity: String,
    expected: String,
    source: String,
}

fn cases_of(kind: &str) -> Vec<Case> {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/vectors/hose_cases.csv");
    let mut file = csv::Reader::from_path(path).expect("the cases are there");
    let header = file.headers().expect("a header").clone();
    let column = |row: &csv::StringRecord, name: &str| {
        let at = header.iter().position(|column| column == name).expect(name);
        row.get(at).unwrap_or_default().to_owned()
    };
    let rows = file.records().map(|row| row.expect("a row"));
    rows.filter(|row| column(row, "kind") == kind)
        .map(|row| Case {
            id: column(&row, "id"),
            clue: column(&row, "other_clue"),
            standard: column(&row, "expect_standard"),
            kind: column(&row, "expect_type"),
            dn: column(&row, "expect_dn").parse().expect("a size"),
            quantity: column(&row, "quantity"),
            expected: column(&row, "expected_value"),
            source: column(&row, "source"),
        })
        .collect()
}
