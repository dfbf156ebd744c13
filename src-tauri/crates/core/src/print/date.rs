//! When it was made.

use super::words::{Word, can_be};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// When a hose was made, as far as its print says.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Made {
    /// Year.
    pub year: u16,
    /// Quarter, 1 to 4.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub quarter: Option<u8>,
    /// Month, 1 to 12.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub month: Option<u8>,
    /// Week, 1 to 53.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub week: Option<u8>,
}

impl Made {
    const fn in_year(year: u16) -> Self {
        Self { year, quarter: None, month: None, week: None }
    }
}

/// A year of two or four digits; two digits from 70 on are of the last century.
fn year(word: &Word) -> Option<u16> {
    let number = word.whole()?;
    match word.text.len() {
        2 if number < 70 => Some(2000 + number as u16),
        2 => Some(1900 + number as u16),
        4 if (1950..2100).contains(&number) => Some(number as u16),
        _ => None,
    }
}

fn small(word: &Word, largest: u32) -> Option<u8> {
    word.whole().filter(|number| (1..=largest).contains(number)).map(|number| number as u8)
}

fn word_of(text: &str) -> Word {
    Word { text: text.to_owned(), glue: ' ', apart: false }
}

/// A date that can be nothing else, with the number of words it takes: `3Q24`, `3Q 2024`, `3Q/24`,
/// `W22/21`, `2/19/88`.
pub(super) fn plain(words: &[Word], at: usize) -> Option<(Made, usize)> {
    let first = words.get(at)?;
    let second = words.get(at + 1);
    if let Some((quarter, rest)) = first.text.split_once('Q') {
        let (of, taken) =
            if rest.is_empty() { (second.cloned()?, 2) } else { (word_of(rest), 1) };
        let is_quarter = matches!(quarter, "1" | "2" | "3" | "4" | "?" | "" | "*");
        let made = Made { quarter: quarter.parse().ok(), ..Made::in_year(year(&of)?) };
        return is_quarter.then_some((made, taken));
    }
    if let Some(week) = first.text.strip_prefix('W').map(word_of).and_then(|week| small(&week, 53)) {
        let of = second.filter(|word| word.glue == '/')?;
        return Some((Made { week: Some(week), ..Made::in_year(year(of)?) }, 2));
    }
    let (second, third) = (second?, words.get(at + 2)?);
    if second.glue == '/' && third.glue == '/' {
        let made = Made { month: Some(small(first, 12)?), ..Made::in_year(year(third)?) };
        small(second, 31)?;
        return Some((made, 3));
    }
    None
}

/// A month and a year, `2/03` or `06/2024`: what is no fraction of an inch.
pub(super) fn month_and_year(words: &[Word], at: usize) -> Option<(Made, usize)> {
    let (first, second) = (words.get(at)?, words.get(at + 1).filter(|word| word.glue == '/')?);
    Some((Made { month: Some(small(first, 12)?), ..Made::in_year(year(second)?) }, 2))
}

/// Four bare digits, which are ambiguous: the year and month on a ferrule (DIN 20066 practice), the
/// month (or else the week) and year on a hose, or the year itself.
pub(super) fn four_digits(word: &Word, on_ferrule: bool) -> Option<Made> {
    if !word.is_digits() || word.text.len() != 4 {
        return None;
    }
    let (front, back) = (word_of(word.text.get(..2)?), word_of(word.text.get(2..)?));
    let (month, of) = if on_ferrule { (&back, &front) } else { (&front, &back) };
    if let Some(month) = small(month, 12) {
        return Some(Made { month: Some(month), ..Made::in_year(year(of)?) });
    }
    if let Some(year) = year(word) {
        return Some(Made::in_year(year));
    }
    let week = small(&front, 53).filter(|_| !on_ferrule)?;
    Some(Made { week: Some(week), ..Made::in_year(year(&back)?) })
}

/// Whether a fraction is one of an inch: sixteenths and the like in lowest terms.
pub(super) fn is_inch_fraction(numerator: &Word, denominator: &Word) -> bool {
    let (Some(above), Some(below)) = (numerator.whole(), denominator.whole()) else { return false };
    matches!(below, 2 | 4 | 8 | 16 | 32 | 64)
        && above % 2 == 1
        && above < below
        && ["2", "4", "8", "16", "32", "64"].iter().any(|name| can_be(&denominator.text, name))
}
