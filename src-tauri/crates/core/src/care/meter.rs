//! A machine's hour meter: how many hours, and how many a day.

use chrono::{Days, NaiveDate};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The rate of use is taken over so many days before the last reading, where there are readings (common practice: a
/// year has every season in it).
const WINDOW_DAYS: u64 = 366;
/// Readings closer together than this set no rate (common practice: a busy week is not a year).
const SHORTEST_DAYS: i64 = 30;

/// What a machine's hour meter says.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Meter {
    /// The day of the latest reading.
    pub read_on: NaiveDate,
    /// What stood there.
    pub hours: f64,
    /// Hours a day, by the machine's own readings; none where they are too few or too close together.
    pub per_day: Option<f64>,
}

/// Why an age in hours is not known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum HoursUnknown {
    /// The meter was never read.
    NoReading,
    /// Nobody wrote down the hours when the hose was fitted.
    NoHoursAtFitting,
    /// The meter shows less than it did then: it was changed or set back.
    MeterSetBack,
    /// Too few readings to turn hours into a day.
    NoRate,
}

impl Meter {
    /// From all readings of a machine, in any order; none without a reading. What was read before a meter was changed
    /// or set back says nothing of the one that is there.
    pub fn of(mut readings: Vec<(NaiveDate, f64)>) -> Option<Self> {
        readings.sort_by(|one, other| one.0.cmp(&other.0).then(one.1.total_cmp(&other.1)));
        let (read_on, hours) = *readings.last()?;
        let begins = readings.windows(2).rposition(|two| two[1].1 < two[0].1).map_or(0, |at| at + 1);
        let readings = &readings[begins..];
        let from = read_on.checked_sub_days(Days::new(WINDOW_DAYS)).unwrap_or(NaiveDate::MIN);
        let in_window = readings.iter().find(|(day, _)| *day >= from);
        let first = in_window.filter(|(day, _)| (read_on - *day).num_days() >= SHORTEST_DAYS);
        // Readings that all lie close to the last are taken from further back.
        let first = first
            .or_else(|| readings.iter().rev().find(|(day, _)| (read_on - *day).num_days() >= SHORTEST_DAYS));
        let per_day = first.map(|(day, had)| (hours - had) / (read_on - *day).num_days() as f64);
        Some(Self { read_on, hours, per_day: per_day.filter(|rate| *rate > 0.0) })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn rate(readings: &[(&str, f64)], expected: Option<(f64, Option<f64>)>) {
        let readings = readings.iter().map(|(day, hours)| (day.parse().expect("a day"), *hours)).collect();
        let meter = Meter::of(readings).map(|meter| (meter.hours, meter.per_day));
        assert_eq!(meter, expected);
    }

    #[test]
    fn the_rate_of_use_is_the_machines_own_over_the_last_year() {
        rate(&[], None);
        rate(&[("2026-01-01", 100.0)], Some((100.0, None)));
        rate(&[("2026-01-01", 100.0), ("2026-04-11", 300.0)], Some((300.0, Some(2.0))));
        rate(&[("2026-04-11", 300.0), ("2026-01-01", 100.0)], Some((300.0, Some(2.0))));
        rate(&[("2026-01-01", 100.0), ("2026-01-11", 200.0)], Some((200.0, None)));
        // What the machine did years ago does not count while there are newer readings.
        let with_old = [("2010-01-01", 0.0), ("2026-01-01", 100.0), ("2026-04-11", 300.0)];
        rate(&with_old, Some((300.0, Some(2.0))));
        // The only earlier reading far enough away.
        rate(&[("2025-12-22", 0.0), ("2026-03-25", 90.0), ("2026-04-01", 100.0)], Some((100.0, Some(1.0))));
    }

    #[test]
    fn a_meter_that_was_set_back_begins_anew_and_a_standing_machine_has_no_rate() {
        let changed = [("2025-01-01", 9000.0), ("2026-01-01", 0.0), ("2026-04-11", 100.0)];
        rate(&changed, Some((100.0, Some(1.0))));
        rate(&[("2026-01-01", 100.0), ("2026-04-11", 100.0)], Some((100.0, None)));
    }
}
