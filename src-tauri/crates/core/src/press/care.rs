//! What is done at a press by the user's own schedule, and what of it is due.

use crate::check::Verdict;
use chrono::{Months, NaiveDate};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use thiserror::Error;
use ts_rs::TS;

/// A thing that is done at the press every so many crimps or months, whichever comes first.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct PressCare {
    /// What, such as `grease the die shoes`.
    pub name: String,
    /// After how many crimps.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub every_crimps: Option<u32>,
    /// After how many months.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub every_months: Option<u32>,
    /// When it was done last; none is not known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub last_done: Option<NaiveDate>,
}

/// A thing to be done that can not be.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum CareError {
    /// No name.
    #[error("a care of the press has no name, or one longer than {LONGEST} characters; write what is done")]
    Name,
    /// Nothing says when.
    #[error("\"{name}\" says neither after how many crimps nor after how many months; give one from 1 up")]
    Never {
        /// Its name.
        name: String,
    },
}

/// Longest name, in characters.
const LONGEST: usize = 200;

impl PressCare {
    /// Whether it may be kept.
    ///
    /// # Errors
    /// It has no name, or nothing says when it is done.
    pub fn plausible(&self) -> Result<(), CareError> {
        if self.name.trim().is_empty() || self.name.chars().count() > LONGEST {
            return Err(CareError::Name);
        }
        let never = [self.every_crimps, self.every_months];
        if never == [None, None] || never.contains(&Some(0)) {
            return Err(CareError::Never { name: self.name.clone() });
        }
        Ok(())
    }
}

/// How a thing to be done at the press stands.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct CareDue {
    /// The thing.
    #[serde(flatten)]
    #[ts(flatten)]
    pub care: PressCare,
    /// Crimps since it was done; all that are on record where nobody knows when.
    pub crimps_since: u32,
    /// The day it is due by months; none without, or where nobody knows when it was done.
    pub due_on: Option<NaiveDate>,
    /// `caution` where it is due or nobody knows; `pass` where not.
    pub verdict: Verdict,
}

/// How it stands on a day, by the days on which crimps were made. When it was done last and nobody knows, it is due.
pub fn due(care: &PressCare, crimps: &[NaiveDate], on: NaiveDate) -> CareDue {
    let last = care.last_done.filter(|last| *last <= on);
    let since = crimps.iter().filter(|day| **day <= on && last.is_none_or(|last| **day > last)).count();
    let crimps_since = u32::try_from(since).unwrap_or(u32::MAX);
    let due_on =
        last.zip(care.every_months).and_then(|(last, months)| last.checked_add_months(Months::new(months)));
    let by_count = care.every_crimps.is_some_and(|every| crimps_since >= every);
    let by_day = due_on.is_some_and(|due| due <= on);
    let verdict = if last.is_none() || by_count || by_day { Verdict::Caution } else { Verdict::Pass };
    CareDue { care: care.clone(), crimps_since, due_on, verdict }
}
