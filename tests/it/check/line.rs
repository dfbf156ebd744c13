//! A line on which everything is known, and what the tests ask of an answer.

use hosewright_core::catalogue::{Catalogue, LengthPractice};
use hosewright_core::check::{Checked, Evidence, Finding, Question, Verdict, check};
use hosewright_core::find::{EndCandidate, EndFound, HoseCandidate, Settled, UnknownHose};
use hosewright_core::quantity::{Bar, Celsius, Dn, LitresPerMinute, Millimetres};
use hosewright_core::spec::{EndSpec, Gender, HoseRef, Line, Role, Service, Spec};

pub fn catalogue() -> &'static Catalogue {
    Catalogue::embedded()
}

pub fn checked(question: &Question) -> Checked {
    check(catalogue(), question).unwrap_or_else(|error| panic!("the question can be asked: {error}"))
}

pub fn dn(number: f64) -> Dn {
    Dn::new(number).expect("a size")
}

pub fn hose(standard: &str, kind: &str, number: f64) -> HoseRef {
    HoseRef::named(standard, kind, dn(number))
}

pub fn end(role: Role, family: &str, size: &str) -> EndSpec {
    EndSpec {
        role,
        family: family.into(),
        size: size.into(),
        gender: Some(Gender::Female),
        form: Some("straight".into()),
        drop_mm: None,
        cutoff_mm: Some(Millimetres(30.0)),
        rating_bar: None,
    }
}

pub fn was(standard: &str, kind: &str, number: f64, probability: f64) -> HoseCandidate {
    HoseCandidate {
        standard: standard.into(),
        kind: kind.into(),
        dn: dn(number),
        dash: None,
        probability,
        also: Vec::new(),
    }
}

pub fn end_was(role: Role, family: &str, size: &str) -> EndFound {
    EndFound {
        role,
        candidates: vec![EndCandidate {
            family: family.into(),
            standard: String::new(),
            size: size.into(),
            dash: None,
            thread: None,
            gender: Some(Gender::Female),
            probability: 0.997,
            also: Vec::new(),
        }],
        lookalikes: Vec::new(),
        unknown: 0.003,
        changed: 0.0,
        mate: None,
    }
}

/// A line on which everything is known and within its limit: two-wire hose of DN 16 (250 bar, 200 mm),
/// face-seal ends of -10 (413 bar).
pub fn known() -> Question {
    Question {
        spec: Spec {
            hose: Some(hose("EN 853", "2SN", 16.0)),
            ends: vec![end(Role::A, "ORFS", "-10"), end(Role::B, "ORFS", "-10")],
            adapters: Vec::new(),
            overall_length_mm: Some(Millimetres(1240.0)),
            turn_deg: None,
            cover: None,
        },
        service: Service {
            working_pressure_bar: Some(Bar(210.0)),
            relief_bar: Some(Bar(230.0)),
            surge_pressure_bar: Some(Bar(250.0)),
            fluid: Some("HM".into()),
            fluid_min_c: Some(Celsius(-20.0)),
            fluid_max_c: Some(Celsius(80.0)),
            ambient_max_c: Some(Celsius(40.0)),
            flow_l_min: Some(LitresPerMinute(60.0)),
            line: Some(Line::Pressure),
            bend_radius_mm: Some(Millimetres(220.0)),
            vacuum_kpa_abs: None,
            duties: Vec::new(),
            estimated: None,
        },
        found: Some(Evidence {
            hose: vec![was("EN 853", "2SN", 16.0, 0.996)],
            ends: vec![end_was(Role::A, "ORFS", "-10"), end_was(Role::B, "ORFS", "-10")],
            unknown: UnknownHose { hose: 0.004 },
            settled: Some(Settled { hose: true, a: true, b: true }),
            ..Evidence::default()
        }),
        overrides: Vec::new(),
        length_practice: LengthPractice::Din20066,
    }
}

pub fn evidence(question: &mut Question) -> &mut Evidence {
    question.found.as_mut().expect("the known line has evidence")
}

/// A change to a question.
pub type Change = fn(&mut Question);

pub fn changed(change: impl FnOnce(&mut Question)) -> Question {
    let mut question = known();
    change(&mut question);
    question
}

pub fn asked(change: impl FnOnce(&mut Question)) -> Checked {
    let mut question = known();
    change(&mut question);
    checked(&question)
}

#[track_caller]
pub fn finding<'c>(checked: &'c Checked, key: &str) -> &'c Finding {
    let keys: Vec<_> = checked.findings.iter().map(|finding| finding.case.key).collect();
    let found = checked.findings.iter().find(|finding| finding.case.key == key);
    found.unwrap_or_else(|| panic!("no {key} among {keys:?}"))
}

pub fn has(checked: &Checked, key: &str) -> bool {
    checked.findings.iter().any(|finding| finding.case.key == key)
}

/// What keeps it from a pass.
pub fn objections(checked: &Checked) -> Vec<&str> {
    let objections = checked.findings.iter().filter(|finding| finding.verdict != Verdict::Pass);
    objections.map(|finding| finding.case.key).collect()
}

pub fn name<'f>(finding: &'f Finding, which: &str) -> Option<&'f str> {
    finding.names.get(which).map(String::as_str)
}
