//! Days as people write them.

use chrono::{Datelike, Months, NaiveDate};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use thiserror::Error;
use ts_rs::TS;

/// Which stands first where a day is written as numbers with strokes, such as 03/04/2024.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum DayOrder {
    /// The day: 3 April.
    DayFirst,
    /// The month: 4 March.
    MonthFirst,
}

/// How much of a day has to be said.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Part {
    /// The day itself.
    Whole,
    /// The month will do, or the year: its first day is taken, which makes nothing younger than it is.
    MonthWillDo,
}

/// A text that is no day, or may be two.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum DayError {
    /// Nothing like a day.
    #[error("\"{0}\" is no day; write 2026-11-25")]
    NoDay(String),
    /// A day of either of two months.
    #[error(
        "\"{text}\" is {day_first} or {month_first}: say for its column which stands first, the day or the month"
    )]
    Either {
        /// What stands there.
        text: String,
        /// With the day first.
        day_first: NaiveDate,
        /// With the month first.
        month_first: NaiveDate,
    },
    /// Not a day in the order that was said.
    #[error("\"{0}\" is no day in the order of its column; mend it, or the order")]
    Order(String),
    /// A month or a year.
    #[error("\"{0}\" says no day; write the day as 2026-11-25")]
    NotWhole(String),
    /// A day's number.
    #[error(
        "\"{0}\" is a spreadsheet's own number of a day; let the spreadsheet show the column as dates and save it again"
    )]
    Serial(String),
}

/// Reads a day. With points the day stands first (`25.11.2026`), with the year first it is plain, a month can be a word;
/// only numbers with strokes need the order, and only where both are days. A year of two figures is the last such year
/// that is not past `today`.
///
/// # Errors
/// Says what it is instead, or which two days it may be.
pub fn day(text: &str, order: Option<DayOrder>, part: Part, today: NaiveDate) -> Result<NaiveDate, DayError> {
    let pieces = Pieces::of(text);
    let no_day = || DayError::NoDay(text.to_owned());
    let whole = |first: Option<NaiveDate>| match (first, part) {
        (None, _) => Err(no_day()),
        (Some(_), Part::Whole) => Err(DayError::NotWhole(text.to_owned())),
        (Some(first), Part::MonthWillDo) => Ok(first),
    };
    let year = |text: &str| year(text, today);
    let date = |year: Option<i32>, month: Option<u32>, day: Option<u32>| {
        NaiveDate::from_ymd_opt(year?, month?, day?)
    };
    let number = |text: &str| text.parse::<u32>().ok();
    match pieces.words() {
        [only] if only.len() == 5 && number(only).is_some() => Err(DayError::Serial(text.to_owned())),
        [only] if only.len() == 4 => whole(date(year(only), Some(1), Some(1))),
        [one, two] => {
            let month = |text: &str| month_named(text).or_else(|| number(text));
            let first = match one.len() {
                4 => date(year(one), month(two), Some(1)),
                _ => date(year(two), month(one), Some(1)),
            };
            whole(first)
        }
        [one, two, three] => {
            if let Some(month) = month_named(two) {
                return date(year(three), Some(month), number(one)).ok_or_else(no_day);
            }
            if let Some(month) = month_named(one) {
                return date(year(three), Some(month), number(two)).ok_or_else(no_day);
            }
            if one.len() == 4 {
                return date(year(one), number(two), number(three)).ok_or_else(no_day);
            }
            let day_first = date(year(three), number(two), number(one));
            if pieces.points {
                return day_first.ok_or_else(no_day);
            }
            let month_first = date(year(three), number(one), number(two));
            match (order, day_first, month_first) {
                (Some(DayOrder::DayFirst), Some(day), _) | (Some(DayOrder::MonthFirst), _, Some(day)) => {
                    Ok(day)
                }
                (_, None, None) => Err(no_day()),
                (Some(_), ..) => Err(DayError::Order(text.to_owned())),
                (None, Some(day), None) | (None, None, Some(day)) => Ok(day),
                (None, Some(day_first), Some(month_first)) if day_first == month_first => Ok(day_first),
                (None, Some(day_first), Some(month_first)) => {
                    Err(DayError::Either { text: text.to_owned(), day_first, month_first })
                }
            }
        }
        _ => Err(no_day()),
    }
}

/// Whether a text speaks for an order: it is a day in that one only.
pub(super) fn speaks_for(text: &str, today: NaiveDate) -> Option<DayOrder> {
    let read = |order| day(text, Some(order), Part::Whole, today).is_ok();
    match (read(DayOrder::DayFirst), read(DayOrder::MonthFirst)) {
        (true, false) => Some(DayOrder::DayFirst),
        (false, true) => Some(DayOrder::MonthFirst),
        _ => None,
    }
}

/// The parts of a day without its time of day.
struct Pieces<'a> {
    found: Vec<&'a str>,
    /// Parted by points.
    points: bool,
}

impl<'a> Pieces<'a> {
    fn of(text: &'a str) -> Self {
        let text = text.trim();
        // `2024-03-25 07:30:00` and `2024-03-25T07:30`: the time of day says nothing of the day.
        let day = match text.find(':') {
            Some(colon) => {
                text.get(..colon).and_then(|before| before.rfind(['T', ' '])).and_then(|at| text.get(..at))
            }
            None => None,
        };
        let day = day.unwrap_or(text);
        let parting = |c: char| c.is_whitespace() || ['.', '/', '-', ',', '\u{2013}'].contains(&c);
        let found =
            day.split(parting).filter(|piece| !piece.is_empty() && !["de", "of"].contains(piece)).collect();
        Self { found, points: day.contains('.') && !day.contains(['/', '-']) }
    }

    fn words(&self) -> &[&'a str] {
        &self.found
    }
}

/// A year of four figures, or of two: the last such that is not past next year.
fn year(text: &str, today: NaiveDate) -> Option<i32> {
    if !text.chars().all(|c| c.is_ascii_digit()) {
        return None;
    }
    let number: i32 = text.parse().ok()?;
    match text.len() {
        4 => (1950..=2100).contains(&number).then_some(number),
        2 => {
            let next = today.checked_add_months(Months::new(12)).unwrap_or(today).year();
            let this = next - next.rem_euclid(100) + number;
            Some(if this > next { this - 100 } else { this })
        }
        _ => None,
    }
}

/// A month by its name or the first letters of it, in English, German and Spanish.
fn month_named(text: &str) -> Option<u32> {
    const NAMES: [&[&str]; 12] = [
        &["january", "januar", "enero", "jänner"],
        &["february", "februar", "febrero"],
        &["march", "märz", "maerz", "marzo", "mrz"],
        &["april", "abril"],
        &["may", "mai", "mayo"],
        &["june", "juni", "junio"],
        &["july", "juli", "julio"],
        &["august", "agosto"],
        &["september", "septiembre", "setiembre", "sept"],
        &["october", "oktober", "octubre"],
        &["november", "noviembre"],
        &["december", "dezember", "diciembre"],
    ];
    let text = text.to_lowercase();
    if text.chars().count() < 3 {
        return None;
    }
    let named = |names: &&[&str]| names.iter().any(|name| name.starts_with(&text));
    let at = NAMES.iter().position(named)?;
    u32::try_from(at + 1).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    fn today() -> NaiveDate {
        NaiveDate::from_ymd_opt(2026, 11, 26).unwrap()
    }

    #[rstest]
    #[case("2024-03-25")]
    #[case("2024-03-25 07:30:00")]
    #[case("2024-03-25T07:30:00")]
    #[case("2024/3/25")]
    #[case("25.03.2024")]
    #[case("25.3.24")]
    #[case("25/03/2024")]
    #[case("03/25/2024")]
    #[case("3-25-24")]
    #[case("25 Mar 2024")]
    #[case("25-Mar-24")]
    #[case("March 25, 2024")]
    #[case("25. M\u{e4}rz 2024")]
    #[case("25 de marzo de 2024")]
    fn a_day_is_read_as_people_write_it(#[case] text: &str) {
        assert_eq!(day(text, None, Part::Whole, today()).unwrap().to_string(), "2024-03-25", "{text}");
    }

    #[test]
    fn what_may_be_two_days_is_asked_and_never_guessed() {
        let read = |order| day("03/04/2024", order, Part::Whole, today());
        assert!(matches!(read(None), Err(DayError::Either { .. })));
        assert_eq!(read(Some(DayOrder::DayFirst)).unwrap().to_string(), "2024-04-03");
        assert_eq!(read(Some(DayOrder::MonthFirst)).unwrap().to_string(), "2024-03-04");
        // With points the day stands first (DIN 5008).
        assert_eq!(day("03.04.2024", None, Part::Whole, today()).unwrap().to_string(), "2024-04-03");
        assert_eq!(day("04/04/2024", None, Part::Whole, today()).unwrap().to_string(), "2024-04-04");
        // What does not go with the order that was said is not turned about.
        let other = day("25/03/2024", Some(DayOrder::MonthFirst), Part::Whole, today());
        assert!(matches!(other, Err(DayError::Order(_))));
    }

    #[rstest]
    #[case("03/2024", "2024-03-01")]
    #[case("2024-03", "2024-03-01")]
    #[case("Mar 2024", "2024-03-01")]
    #[case("2019", "2019-01-01")]
    fn of_a_clock_the_month_will_do_and_it_is_taken_as_old_as_it_may_be(
        #[case] text: &str,
        #[case] first: &str,
    ) {
        assert_eq!(day(text, None, Part::MonthWillDo, today()).unwrap().to_string(), first);
        assert!(matches!(day(text, None, Part::Whole, today()), Err(DayError::NotWhole(_))), "{text}");
    }

    #[rstest]
    #[case("")]
    #[case("someday")]
    #[case("31.02.2024")]
    #[case("2024-13-01")]
    #[case("25.03.1824")]
    #[case("25/25/2024")]
    #[case("1.2.3.4")]
    fn what_is_no_day_is_refused(#[case] text: &str) {
        assert!(matches!(day(text, None, Part::Whole, today()), Err(DayError::NoDay(_))), "{text}");
    }

    #[test]
    fn a_year_of_two_figures_is_never_in_the_far_future_and_a_day_number_is_not_taken() {
        assert_eq!(day("1.2.99", None, Part::Whole, today()).unwrap().to_string(), "1999-02-01");
        assert!(matches!(day("45376", None, Part::Whole, today()), Err(DayError::Serial(_))));
    }

    proptest::proptest! {
        #[test]
        fn no_text_makes_it_panic_and_what_is_read_is_that_day(text in "[0-9./ :T-]{0,12}|\\PC{0,20}") {
            for part in [Part::Whole, Part::MonthWillDo] {
                for order in [None, Some(DayOrder::DayFirst), Some(DayOrder::MonthFirst)] {
                    let _ = day(&text, order, part, today());
                }
            }
        }
    }
}
