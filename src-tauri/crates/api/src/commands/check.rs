//! `check`: a spec under its service -> may it be made.

use crate::{Answer, Api, ApiError};
use hosewright_core::catalogue::Catalogue;
use hosewright_core::check::{self, CheckError, Checked, Finding, Question, Verdict};
use hosewright_words::{Say, Words};

impl From<CheckError> for ApiError {
    fn from(error: CheckError) -> Self {
        ApiError::input(error.field(), &error)
    }
}

/// A spec under its service -> a verdict with every finding, its limit and where that comes from.
///
/// # Errors
/// Names the field that can not be. A part that is missing is a finding, not an error.
pub fn check(api: &mut Api, question: Question, _: &[u8]) -> Result<Answer<Checked>, ApiError> {
    Ok(api.answer(checked(api, &question)?))
}

/// The answer with its words.
pub(super) fn checked(api: &Api, question: &Question) -> Result<Checked, ApiError> {
    let mut checked = check::check(api.catalogue, question)?;
    for finding in &mut checked.findings {
        word(&api.words, finding);
    }
    for left_out in &mut checked.not_checked {
        left_out.words = api.words.say(&format!("not-checked-{}", left_out.what), &[]);
    }
    for other in &mut checked.alternatives {
        for ground in &mut other.grounds {
            word(&api.words, ground);
        }
        other.reasons = other.grounds.iter().map(|ground| ground.why.clone()).collect();
    }
    Ok(checked)
}

/// Writes why, and what to do about it where it is no pass.
pub(super) fn word(words: &Words, finding: &mut Finding) {
    let written =
        |number: Option<f64>| number.map_or_else(String::new, |number| words.quantity(number, finding.unit));
    let (value, limit) = (written(finding.value), written(finding.limit));
    let names = finding.names.iter().map(|(key, what)| (*key, named(words, key, what)));
    let names: Vec<(&str, String)> = names.collect();
    let mut values: Vec<(&str, &dyn Say)> = vec![("value", &value), ("limit", &limit)];
    values.extend(names.iter().map(|(key, what)| (*key, what as &dyn Say)));
    let why = words.say(&format!("why-{}", finding.case.key), &values);
    let cure = match finding.verdict {
        Verdict::Pass => String::new(),
        _ => words.say(&format!("cure-{}", finding.case.key), &values),
    };
    (finding.why, finding.cure) = (why, cure);
}

/// A name as it stands in words: a number has the decimal sign of the language, a fluid the name that its class has
/// there; any other stands as it is.
fn named(words: &Words, key: &str, what: &str) -> String {
    let class = Catalogue::embedded().fluid_classes.iter().find(|row| row.name == what);
    match (key, class) {
        ("fluid", Some(row)) => words.say(&format!("fluid-{}", row.class), &[]),
        _ if what.parse::<f64>().is_ok() => words.figure(what),
        _ => what.to_owned(),
    }
}
