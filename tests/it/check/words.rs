//! Every case has its words.

use super::line::{changed, checked, evidence, known, was};
use hosewright_core::check::{CASES, Case, Question, Verdict};
use hosewright_core::quantity::Bar;
use hosewright_core::spec::{Duty, Line};
use hosewright_words::{Language, Words};

#[test]
fn every_case_has_words_in_every_language() {
    for language in Language::ALL {
        let words = Words::of(language);
        for Case { key, .. } in CASES {
            assert!(words.has(&format!("why-{key}")), "{}: why-{key}", language.tag());
            let cured = words.has(&format!("cure-{key}"));
            assert_eq!(cured, !key.ends_with("-ok"), "{}: cure-{key}", language.tag());
        }
    }
}

#[test]
fn words_name_only_what_a_finding_has() {
    let words = Words::of(Language::English);
    let questions = [
        known(),
        Question::default(),
        changed(|question| question.service.surge_pressure_bar = Some(Bar(300.0))),
        changed(|question| question.service.fluid = Some("steam".into())),
        changed(|question| question.service.fluid = Some("HFDU".into())),
        changed(|question| question.service.line = Some(Line::Suction)),
        changed(|question| question.service.duties = vec![Duty::NonConductive]),
        changed(|question| evidence(question).settled = None),
        changed(|question| evidence(question).hose = vec![was("EN 856", "4SP", 19.0, 1.0)]),
    ];
    for question in &questions {
        let checked = checked(question);
        let grounds = checked.alternatives.iter().flat_map(|other| &other.grounds);
        for finding in checked.findings.iter().chain(grounds) {
            let key = finding.case.key;
            let numbers = [("value", number(finding.value)), ("limit", number(finding.limit))];
            let mut values: Vec<(&str, &dyn hosewright_words::Say)> = Vec::new();
            for (name, value) in &numbers {
                if let Some(value) = value {
                    values.push((name, value));
                }
            }
            for (name, value) in &finding.names {
                values.push((name, value));
            }
            for id in [format!("why-{key}"), format!("cure-{key}")] {
                let said = words.say(&id, &values);
                assert!(!said.contains("{$"), "{id} names what the finding does not have: {said}");
            }
        }
    }
}

fn number(value: Option<f64>) -> Option<String> {
    value.map(|value| value.to_string())
}

#[test]
fn a_finding_that_passes_has_a_case_that_says_so() {
    for question in [known(), Question::default()] {
        for finding in checked(&question).findings {
            let says_ok = finding.case.key.ends_with("-ok");
            assert_eq!(finding.verdict == Verdict::Pass, says_ok, "{}", finding.case.key);
            assert!(CASES.contains(&finding.case), "{} is in the list", finding.case.key);
        }
    }
}
