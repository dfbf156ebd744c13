//! Individuals and moving ranges of a press's deviations from target.
//!
//! Limits by NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2: mean and three times the mean moving range
//! over d2 = 1.128; the range's upper limit is D4 = 3.267 times its mean. Runs by its 6.3.2, the "WECO" rules.

use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// A control chart of values in the order they were taken.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Charted {
    /// Mean of all: the centre line.
    pub centre: f64,
    /// Mean of the ranges between neighbours.
    pub moving_range: f64,
    /// Lower limit.
    pub lower: f64,
    /// Upper limit.
    pub upper: f64,
    /// Upper limit of a moving range.
    pub range_upper: f64,
    /// The values.
    pub points: Vec<ChartPoint>,
}

/// One value of a control chart.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct ChartPoint {
    /// The value.
    pub value: f64,
    /// How far it lies from the one before; none of the first.
    pub range: Option<f64>,
    /// What it gives away.
    pub signals: Vec<Signal>,
}

/// What a point gives away: the press is not what it was.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Signal {
    /// Outside the limits.
    Outside,
    /// The step from the one before is outside its limit.
    Jump,
    /// Two of three beyond two deviations on one side.
    TwoOfThree,
    /// Four of five beyond one deviation on one side.
    FourOfFive,
    /// Eight in a row on one side of the centre.
    EightOnOneSide,
}

impl Signal {
    /// Every signal, by the name its words have: `press-<name>`.
    pub const NAMES: [&'static str; 5] =
        ["outside", "jump", "two-of-three", "four-of-five", "eight-on-one-side"];
}

/// Expected range of two values of one normal distribution, in its standard deviations.
const D2: f64 = 1.128;

/// Upper limit of such a range over its mean.
const D4: f64 = 3.267;

/// The fewest values whose limits say anything; fewer give no chart (common practice: the limits settle at about
/// twenty).
const LEAST: usize = 8;

/// The chart of values in the order they were taken; none of fewer than eight, or of one that is no number.
pub fn chart(values: &[f64]) -> Option<Charted> {
    if values.len() < LEAST || values.iter().any(|value| !value.is_finite()) {
        return None;
    }
    let count = values.len() as f64;
    let centre = values.iter().sum::<f64>() / count;
    let ranges: Vec<f64> = values.windows(2).map(|pair| (pair[1] - pair[0]).abs()).collect();
    let moving_range = ranges.iter().sum::<f64>() / (count - 1.0);
    let sigma = moving_range / D2;
    let range_upper = D4 * moving_range;
    let points = values.iter().enumerate().map(|(at, value)| {
        let range = at.checked_sub(1).and_then(|before| ranges.get(before)).copied();
        let jump = range.is_some_and(|range| range > range_upper);
        let past: Vec<f64> = values.iter().take(at + 1).map(|value| value - centre).collect();
        let signals = signals(&past, sigma).into_iter().chain(jump.then_some(Signal::Jump)).collect();
        ChartPoint { value: *value, range, signals }
    });
    Some(Charted {
        centre,
        moving_range,
        lower: centre - 3.0 * sigma,
        upper: centre + 3.0 * sigma,
        range_upper,
        points: points.collect(),
    })
}

/// What the last of these distances from the centre gives away, with those before it.
fn signals(past: &[f64], sigma: f64) -> Vec<Signal> {
    let Some(last) = past.last() else { return Vec::new() };
    let mut signals = Vec::new();
    if last.abs() > 3.0 * sigma {
        signals.push(Signal::Outside);
    }
    // The point itself is one of those counted, on its own side.
    let beyond = |wanted: usize, of: usize, distance: f64| {
        let recent = past.len().checked_sub(of).and_then(|from| past.get(from..));
        let beyond = |value: &f64| value * last.signum() > distance;
        beyond(last)
            && recent.is_some_and(|recent| recent.iter().filter(|value| beyond(value)).count() >= wanted)
    };
    let runs = [
        (Signal::TwoOfThree, 2, 3, 2.0 * sigma),
        (Signal::FourOfFive, 4, 5, sigma),
        (Signal::EightOnOneSide, 8, 8, 0.0),
    ];
    let runs = runs.into_iter().filter(|(_, wanted, of, distance)| beyond(*wanted, *of, *distance));
    signals.extend(runs.map(|(signal, ..)| signal));
    signals
}
