//! `check`: a spec under its service -> may it be made.

use crate::{Answer, Api, ApiError};
use hosewright_core::check::{self, CheckError, Checked, Finding, Question, Verdict};
use hosewright_words::{Say, Words, quantity};

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
        |number: Option<f64>| number.map_or_else(String::new, |number| quantity(number, finding.unit));
    let (value, limit) = (written(finding.value), written(finding.limit));
    let mut values: Vec<(&str, &dyn Say)> = vec![("value", &value), ("limit", &limit)];
    values.extend(finding.case.names.iter().map(|(name, what)| (*name, what as &dyn Say)));
    let why = words.say(&format!("why-{}", finding.case.key), &values);
    let cure = match finding.verdict {
        Verdict::Pass => String::new(),
        _ => words.say(&format!("cure-{}", finding.case.key), &values),
    };
    (finding.why, finding.cure) = (why, cure);
}
