//! The press over time: a control chart of deviations from target, and the care that is due.

use chrono::NaiveDate;
use hosewright_core::check::Verdict;
use hosewright_core::press::{PressCare, Signal, chart, due};
use proptest::prelude::*;
use rstest::rstest;

fn day(text: &str) -> NaiveDate {
    text.parse().expect("a day")
}

/// NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2, flow rates of ten batches: mean 50.81, mean moving range
/// 1.8778, limits 45.8159 and 55.8041.
#[test]
fn the_limits_are_those_of_the_handbooks_worked_example() {
    let chart = chart(&[49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]).expect("enough values");
    let near = |value: f64, right: f64| assert!((value - right).abs() < 5e-4, "{value} is not {right}");
    near(chart.centre, 50.81);
    near(chart.moving_range, 1.8778);
    near(chart.upper, 55.8041);
    near(chart.lower, 45.8159);
    // D4 = 3.267 for ranges of two (handbook 6.3.2.1).
    near(chart.range_upper, 3.267 * 1.877_78);
    assert_eq!(chart.points[0].range, None);
    near(chart.points[1].range.expect("there is one before"), 2.0);
    let outside = |signal: &Signal| *signal == Signal::Outside;
    assert!(
        chart.points.iter().all(|point| !point.signals.iter().any(outside)),
        "the handbook finds none outside"
    );
}

#[test]
fn fewer_than_eight_values_give_no_limits() {
    assert_eq!(chart(&[0.0; 7]), None);
    assert_eq!(chart(&[]), None);
    let mut values = [0.0; 9];
    assert!(chart(&values).is_some());
    values[3] = f64::NAN;
    assert_eq!(chart(&values), None);
}

/// The WECO rules (handbook 6.3.2), each shown by a series that breaks it and one step short of it.
#[rstest]
#[case::outside(&[0.0, 0.1, -0.1, 0.0, 0.1, -0.1, 0.0, 0.1, -0.1, 0.0, 0.1, -0.1, 0.0, 1.0], Signal::Outside)]
#[case::jump(&[0.0, 0.1, -0.1, 0.0, 0.1, -0.1, 0.0, 0.1, -0.1, 0.0, 0.1, -0.1, 0.0, 1.0], Signal::Jump)]
#[case::eight_on_one_side(
    &[-0.1, 0.1, -0.1, 0.1, -0.3, -0.3, -0.1, -0.2, 0.1, 0.1, 0.2, 0.1, 0.2, 0.1, 0.2, 0.2],
    Signal::EightOnOneSide
)]
fn a_press_that_changed_is_seen(#[case] values: &[f64], #[case] signal: Signal) {
    let chart = chart(values).expect("enough values");
    let (last, before) = chart.points.split_last().expect("points");
    assert!(last.signals.contains(&signal), "{:?}", last.signals);
    assert!(before.iter().all(|point| !point.signals.contains(&signal)), "it came too early");
}

/// Two of three beyond two deviations and four of five beyond one, reckoned by hand: with limits that rest on forty quiet
/// values the last ones hardly move them.
#[test]
fn runs_near_a_limit_are_seen() {
    // Neighbours differ by 0.2: a deviation is 0.2 / 1.128 = 0.177.
    let quiet: Vec<f64> = (0..80).map(|at| if at % 2 == 0 { 0.1 } else { -0.1 }).collect();
    let signals = |more: &[f64]| {
        let values: Vec<f64> = quiet.iter().copied().chain(more.iter().copied()).collect();
        chart(&values).expect("enough").points.last().expect("points").signals.clone()
    };
    assert!(signals(&[0.42, 0.1, 0.42]).contains(&Signal::TwoOfThree), "{:?}", signals(&[0.42, 0.1, 0.42]));
    assert!(!signals(&[0.42, 0.1, 0.1]).contains(&Signal::TwoOfThree));
    assert!(!signals(&[-0.42, 0.1, 0.42]).contains(&Signal::TwoOfThree), "on two sides is no run");
    assert!(signals(&[0.25, 0.25, 0.0, 0.25, 0.25]).contains(&Signal::FourOfFive));
    assert!(!signals(&[0.25, 0.25, 0.0, 0.0, 0.25]).contains(&Signal::FourOfFive));
}

#[test]
fn care_is_due_by_crimps_or_months_whichever_comes_first_and_where_nobody_knows() {
    let care = |last: Option<&str>| PressCare {
        name: "grease the die shoes".into(),
        every_crimps: Some(3),
        every_months: Some(6),
        last_done: last.map(day),
    };
    let crimps = ["2026-01-05", "2026-02-01", "2026-02-01"].map(day);
    let on = day("2026-03-01");
    let by_count = due(&care(Some("2026-01-01")), &crimps, on);
    assert_eq!((by_count.crimps_since, by_count.verdict), (3, Verdict::Caution));
    let fresh = due(&care(Some("2026-01-05")), &crimps, on);
    assert_eq!((fresh.crimps_since, fresh.verdict), (2, Verdict::Pass), "the day itself was before it");
    assert_eq!(fresh.due_on, Some(day("2026-07-05")));
    let by_month = due(&care(Some("2026-02-01")), &[], day("2026-08-01"));
    assert_eq!(by_month.verdict, Verdict::Caution, "six months are up that day");
    assert_eq!(due(&care(None), &[], on).verdict, Verdict::Caution, "nobody knows");
    assert_eq!(
        due(&care(Some("2027-01-01")), &[], on).verdict,
        Verdict::Caution,
        "a day to come was no care"
    );
}

#[rstest]
#[case::blank(" ", Some(1), None)]
#[case::never("grease", None, None)]
#[case::nought("grease", Some(0), None)]
fn care_that_says_nothing_is_refused(
    #[case] name: &str,
    #[case] crimps: Option<u32>,
    #[case] months: Option<u32>,
) {
    let care = PressCare { name: name.into(), every_crimps: crimps, every_months: months, last_done: None };
    assert!(care.plausible().is_err());
}

proptest! {
    #[test]
    fn the_chart_moves_with_its_values(values in prop::collection::vec(-1.0..1.0f64, 8..60), by in -5.0..5.0f64) {
        let here = chart(&values).expect("enough");
        let moved: Vec<f64> = values.iter().map(|value| value + by).collect();
        let there = chart(&moved).expect("enough");
        prop_assert!((there.centre - here.centre - by).abs() < 1e-9);
        prop_assert!((there.upper - here.upper - by).abs() < 1e-9);
        prop_assert!(here.lower <= here.centre && here.centre <= here.upper);
    }
}
