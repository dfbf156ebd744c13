//! What stands on a cover becomes fields, whole or worn.

use hosewright_core::catalogue::Catalogue;
use hosewright_core::print::{PrintError, Printed, read};
use hosewright_core::spec::Cover;
use proptest::prelude::*;
use rstest::rstest;
use serde::Deserialize;

#[derive(Debug, Deserialize)]
struct Case {
    id: String,
    marking_string: String,
    standard: String,
    #[serde(rename = "type")]
    kind: String,
    dn: Option<f64>,
    dash: Option<u16>,
    pressure_bar: Option<f64>,
    mfg_year: Option<u16>,
    mfg_period: String,
    source: String,
}

fn print(text: &str) -> Printed {
    read(Catalogue::embedded(), text).expect("the print is short enough")
}

/// The period as the cases write it: `Q3`, `M06`, `W22`.
fn period(printed: &Printed) -> String {
    printed.made.map_or_else(String::new, |made| match (made.quarter, made.month, made.week) {
        (Some(quarter), _, _) => format!("Q{quarter}"),
        (_, Some(month), _) => format!("M{month:02}"),
        (_, _, Some(week)) => format!("W{week:02}"),
        _ => String::new(),
    })
}

/// Every example of the marking table, each field, empty ones too: a field the print does not say
/// stays empty.
#[test]
fn every_example_marking_is_read_as_published() {
    let text = include_str!("../vectors/hose_marking_cases.csv");
    let mut wrong = Vec::new();
    let mut cases = 0;
    for case in csv::Reader::from_reader(text.as_bytes()).deserialize::<Case>() {
        let case = case.expect("a row of the table");
        cases += 1;
        let got = print(&case.marking_string);
        let expected = (
            Some(case.standard.as_str()).filter(|name| !name.is_empty()),
            Some(case.kind.as_str()).filter(|name| !name.is_empty()),
            case.dn,
            case.dash,
            case.pressure_bar,
            case.mfg_year,
            case.mfg_period.clone(),
        );
        let found = (
            got.standard.as_deref(),
            got.kind.as_deref(),
            got.dn.map(|dn| dn.get()),
            got.dash,
            got.pressure_bar.map(|bar| bar.get()),
            got.made.map(|made| made.year),
            period(&got),
        );
        if found != expected {
            wrong.push(format!(
                "{} \"{}\" ({})\n  expected {expected:?}\n  found    {found:?}",
                case.id, case.marking_string, case.source
            ));
        }
    }
    assert!(cases >= 28, "only {cases} examples were read");
    assert!(wrong.is_empty(), "{} of {cases} are read otherwise:\n{}", wrong.len(), wrong.join("\n"));
}
