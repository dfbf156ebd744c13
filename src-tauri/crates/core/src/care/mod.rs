//! The care of hoses on machines: which rule holds where, when a hose falls due by calendar, by hours and by what was
//! seen on it, and how bad its failure would be.

mod due;
mod meter;
mod risk;
mod rules;
mod signs;

pub use due::{Aged, CountedFrom, DueClock, DueFor, DueRow, HoursClock, OnSince, Standing};
pub use meter::{HoursUnknown, Meter};
pub use risk::{
    Chance, ChanceFrom, Chances, Consequence, ConsequenceWhy, FEWEST_FAILURES, Lives, Risk, chances,
    consequence,
};
pub use rules::{Held, Rule, RuleAt, Rules, Spot, Whose};
pub use signs::{Inspection, grade, standing};

use chrono::{Days, Months, NaiveDate};

/// That many years later, in whole months; none beyond the calendar.
pub fn after_years(day: NaiveDate, years: f64) -> Option<NaiveDate> {
    let months = (years * 12.0).round();
    (0.0..=f64::from(u32::MAX))
        .contains(&months)
        .then(|| Months::new(months as u32))
        .and_then(|months| day.checked_add_months(months))
}

/// That many days later; none beyond the calendar.
fn after_days(day: NaiveDate, days: f64) -> Option<NaiveDate> {
    if !days.is_finite() || days > 4_000_000.0 {
        return None;
    }
    // Nobody is hurt by a day too early.
    let whole = days.floor();
    if whole < 0.0 {
        day.checked_sub_days(Days::new(-whole as u64))
    } else {
        day.checked_add_days(Days::new(whole as u64))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> NaiveDate {
        text.parse().expect("a day")
    }

    #[test]
    fn years_are_counted_in_months_and_keep_the_day() {
        assert_eq!(after_years(day("2020-11-25"), 6.0), Some(day("2026-11-25")));
        assert_eq!(after_years(day("2020-02-29"), 1.0), Some(day("2021-02-28")));
        assert_eq!(after_years(day("2020-01-31"), 0.5), Some(day("2020-07-31")));
        assert_eq!(after_years(day("2020-01-31"), f64::INFINITY), None);
        assert_eq!(after_years(NaiveDate::MAX, 1.0), None);
    }

    #[test]
    fn part_of_a_day_is_not_waited_for() {
        assert_eq!(after_days(day("2026-01-01"), 1.9), Some(day("2026-01-02")));
        assert_eq!(after_days(day("2026-01-01"), -0.1), Some(day("2025-12-31")));
        assert_eq!(after_days(day("2026-01-01"), f64::INFINITY), None);
        assert_eq!(after_days(day("2026-01-01"), f64::NAN), None);
    }
}
