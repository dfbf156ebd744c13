//! When it was made.

use super::pressure::UNIT_NAMES;
use super::reader::Reader;
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

/// Whose custom a bare date follows.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Custom {
    /// Quarter and year; month or week and year are met.
    Hose,
    /// Month and year, or month, day and year, with a slash (SAE J517).
    Sae,
    /// Year and month, in four digits (DIN 20066 practice).
    Ferrule,
}

/// A date that says what it is, with the number of words it takes: `3Q24`, `3Q 2024`, `3Q/24`,
/// `Q3 24`, `24Q3`, `W22/21`, `21W22`, `2/19/88`. One with more than one reading has the customary
/// one first.
pub(super) fn plain(words: &[Word], at: usize) -> Option<(Vec<Made>, usize)> {
    let quarter = || quarter(words, at).map(|(made, count)| (vec![made], count));
    quarter().or_else(|| week(words, at)).or_else(|| day(words, at).map(|made| (vec![made], 3)))
}

/// A quarter, and its year where that stands in the same word or in the next. A worn digit of the
/// quarter leaves the year.
fn quarter(words: &[Word], at: usize) -> Option<(Made, usize)> {
    let (left, right) = words.get(at)?.text.split_once('Q')?;
    let is_quarter = |text: &str| matches!(text, "1" | "2" | "3" | "4" | "?" | "*");
    let made =
        |quarter: &str, of: &Word| Some(Made { quarter: quarter.parse().ok(), ..Made::in_year(year(of)?) });
    let next = || words.get(at + 1);
    match (left, right) {
        (quarter, "") if is_quarter(quarter) || quarter.is_empty() => Some((made(quarter, next()?)?, 2)),
        ("", quarter) if is_quarter(quarter) => Some((made(quarter, next()?)?, 2)),
        ("", "") => None,
        (quarter, of) if is_quarter(quarter) => Some((made(quarter, &word_of(of))?, 1)),
        (of, quarter) if is_quarter(quarter) => Some((made(quarter, &word_of(of))?, 1)),
        ("", rest) if rest.len() == 3 || rest.len() == 5 => {
            let (quarter, of) = rest.split_at_checked(1).filter(|(quarter, _)| is_quarter(quarter))?;
            Some((made(quarter, &word_of(of))?, 1))
        }
        ("", of) => Some((made("", &word_of(of))?, 1)),
        _ => None,
    }
}

/// A week that is called so. `24W12` is year and week as ISO 8601 writes them, and can be the
/// reverse.
fn week(words: &[Word], at: usize) -> Option<(Vec<Made>, usize)> {
    let text = words.get(at)?.text.as_str();
    let in_week =
        |week: &Word, of: &Word| Some(Made { week: Some(small(week, 53)?), ..Made::in_year(year(of)?) });
    if matches!(text, "W" | "WK" | "WEEK" | "KW" | "CW") {
        return Some((vec![in_week(words.get(at + 1)?, words.get(at + 2)?)?], 3));
    }
    for mark in ["WK", "KW", "CW", "W"] {
        let Some((left, right)) = text.split_once(mark) else { continue };
        let (left, right) = (word_of(left), word_of(right));
        if !left.text.is_empty() {
            let readings: Vec<Made> =
                [in_week(&right, &left), in_week(&left, &right)].into_iter().flatten().collect();
            return (!readings.is_empty()).then(|| (distinct(readings), 1));
        }
        return Some((vec![in_week(&right, words.get(at + 1)?)?], 2));
    }
    None
}

/// Month, day and year.
fn day(words: &[Word], at: usize) -> Option<Made> {
    let [first, second, third] = words.get(at..at + 3)? else { return None };
    let is_date = second.glue == '/' && third.glue == '/' && small(second, 31).is_some();
    Some(Made { month: Some(small(first, 12).filter(|_| is_date)?), ..Made::in_year(year(third)?) })
}

/// A date that can be something else, among the words that are left: a month or week and its year,
/// `2/03`, `06/2024`, `2024-06`, `06.24`; and four bare digits.
pub(super) fn late(reader: &Reader<'_>, at: usize, by: Custom) -> Option<(Vec<Made>, usize)> {
    let (first, second) = (reader.word(at)?, reader.word(at + 1));
    // A number that goes on before or behind is no date.
    let goes_on = (first.glue == '/' && reader.unread_before(at).is_some())
        || reader.is_behind_worn(at)
        || reader.is_part_number(at);
    if goes_on || reader.can_be_followed_by(at, &UNIT_NAMES) {
        return None;
    }
    let found = |made: Vec<Made>, count| (!made.is_empty()).then_some((made, count));
    if let Some(second) = second.filter(|_| reader.is_free(at..at + 2)) {
        let is_year = |word: &Word| word.text.len() == 4;
        let is_dated = second.glue == '/' || (second.glue == '-' && (is_year(first) || is_year(second)));
        let ends = reader.word(at + 2).is_none_or(|next| next.glue != '/' || next.number().is_none());
        if is_dated && ends {
            return found(pair(first, second, by), 2);
        }
    }
    if let Some((front, back)) = first.text.split_once('.').filter(|(front, _)| front.len() == 2) {
        let back = word_of(back);
        let is_length = second.is_some_and(|next| matches!(next.text.as_str(), "MM" | "IN" | "INCH"));
        // 12.70 is a length, or a hose that nobody has.
        let is_recent = year(&back).is_some_and(|year| year >= 2000);
        return found(pair(&word_of(front), &back, by), 1).filter(|_| is_recent && !is_length);
    }
    found(four_digits(first, by), 1)
}

fn in_month(month: &Word, of: &Word) -> Option<Made> {
    Some(Made { month: Some(small(month, 12)?), ..Made::in_year(year(of)?) })
}

/// A week is written with two digits.
fn in_week(week: &Word, of: &Word) -> Option<Made> {
    let week = Some(small(week, 53).filter(|_| week.text.len() == 2)?);
    Some(Made { week, ..Made::in_year(year(of)?) })
}

/// Two numbers as a date. The month before the year is customary; a week with its year, or the year
/// first, can look the same.
fn pair(first: &Word, second: &Word, by: Custom) -> Vec<Made> {
    let readings = match (in_month(first, second), by) {
        (Some(made), Custom::Sae) => vec![Some(made)],
        (Some(made), _) => vec![Some(made), in_week(first, second)],
        (None, _) => vec![in_month(second, first), in_week(first, second)],
    };
    distinct(readings.into_iter().flatten().collect())
}

/// Four bare digits: the year and month on a ferrule, the month (or else the week) and year on a
/// hose, or the year itself.
fn four_digits(word: &Word, by: Custom) -> Vec<Made> {
    if !word.is_digits() || word.text.len() != 4 {
        return Vec::new();
    }
    let (front, back) = word.text.split_at(2);
    let (front, back) = (word_of(front), word_of(back));
    let itself = year(word).map(Made::in_year);
    let readings = match by {
        Custom::Ferrule => vec![in_month(&back, &front), itself],
        Custom::Sae => vec![in_month(&front, &back), itself],
        Custom::Hose => vec![in_month(&front, &back), itself, in_week(&front, &back)],
    };
    distinct(readings.into_iter().flatten().collect())
}

fn distinct(readings: Vec<Made>) -> Vec<Made> {
    let mut distinct: Vec<Made> = Vec::new();
    for made in readings {
        if !distinct.contains(&made) {
            distinct.push(made);
        }
    }
    distinct
}

/// Whether a fraction is one of an inch: sixteenths and the like in lowest terms.
pub(super) fn is_inch_fraction(numerator: &Word, denominator: &Word) -> bool {
    let (Some(above), Some(below)) = (numerator.whole(), denominator.whole()) else { return false };
    matches!(below, 2 | 4 | 8 | 16 | 32 | 64)
        && above % 2 == 1
        && above < below
        && ["2", "4", "8", "16", "32", "64"].iter().any(|name| can_be(&denominator.text, name))
}
