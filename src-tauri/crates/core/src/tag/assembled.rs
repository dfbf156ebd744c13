//! When the assembly was made, as far as it is known.

use chrono::{Datelike, NaiveDate};
use schemars::JsonSchema;
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::fmt;
use std::str::FromStr;
use thiserror::Error;
use ts_rs::TS;

/// The day or the month of assembly, written `2026-11-25` or `2026-11`. Years 1900 to 9999.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, JsonSchema, TS)]
#[schemars(with = "String")]
#[ts(as = "String")]
pub struct Assembled {
    /// The day, or the first of the month.
    first_day: NaiveDate,
    day_known: bool,
}

/// The text is no date of assembly.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("\"{text}\" is no date of assembly; write 2026-11-25 or 2026-11")]
pub struct AssembledError {
    /// What was given.
    pub text: String,
}

impl Assembled {
    /// On that day; `None` outside the years 1900 to 9999.
    pub fn on(day: NaiveDate) -> Option<Self> {
        (1900..=9999).contains(&day.year()).then_some(Self { first_day: day, day_known: true })
    }

    /// In that month; `None` when there is no such month.
    pub fn in_month(year: i32, month: u32) -> Option<Self> {
        let first_day = NaiveDate::from_ymd_opt(year, month, 1)?;
        Self::on(first_day).map(|made| Self { day_known: false, ..made })
    }

    /// The day, or the first of the month where only that is known: age counts from it.
    pub fn first_day(self) -> NaiveDate {
        self.first_day
    }
}

impl fmt::Display for Assembled {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        let form = if self.day_known { "%Y-%m-%d" } else { "%Y-%m" };
        self.first_day.format(form).fmt(to)
    }
}

impl FromStr for Assembled {
    type Err = AssembledError;
    fn from_str(text: &str) -> Result<Self, AssembledError> {
        let part = |digits: &str, length| {
            (digits.len() == length && digits.bytes().all(|byte| byte.is_ascii_digit()))
                .then(|| digits.parse::<u32>().ok())
                .flatten()
        };
        let read = || {
            let mut parts = text.split('-');
            let year = part(parts.next()?, 4)? as i32;
            let month = part(parts.next()?, 2)?;
            match (parts.next(), parts.next()) {
                (None, _) => Self::in_month(year, month),
                (Some(day), None) => Self::on(NaiveDate::from_ymd_opt(year, month, part(day, 2)?)?),
                _ => None,
            }
        };
        read().ok_or_else(|| AssembledError { text: crate::fleet::repeated(text) })
    }
}

impl Serialize for Assembled {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Assembled {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        String::deserialize(from)?.parse().map_err(serde::de::Error::custom)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_month_or_a_day_is_read_and_written() {
        for text in ["2026-11", "2026-11-25", "1900-01-01", "2028-02-29"] {
            assert_eq!(text.parse::<Assembled>().map(|made| made.to_string()), Ok(text.to_owned()));
        }
    }

    #[test]
    fn what_is_no_date_is_refused() {
        for text in ["", "2026", "2026-13", "2026-02-30", "26-11", "2026-11-25-1", "+2026-11", "2026-1"] {
            assert!(text.parse::<Assembled>().is_err(), "{text}");
        }
    }
}
