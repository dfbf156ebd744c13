//! A mean that a few wild values do not pull along.
//!
//! Huber's estimate with winsorising at 1.5 deviations, location and scale together ("H15"; Analytical Methods
//! Committee, Robust statistics part 1, The Analyst 114 (1989) 1693, and its technical brief 6, 2001).

use super::Spread;

/// A robust mean with its spread.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Robust {
    /// The mean.
    pub mean: f64,
    /// Robust standard deviation; none of fewer than three values, and nought where they agree.
    pub deviation: Option<f64>,
    /// How many values.
    pub count: usize,
}

/// Values further from the mean than this many deviations are drawn in to there.
const WINSOR: f64 = 1.5;

/// What drawing in takes off a normal distribution's variance, put back.
const CORRECTION: f64 = 1.134;

/// The median deviation of a normal distribution is this part of its standard deviation.
const MEDIAN_DEVIATION: f64 = 1.4826;

/// Rounds of drawing in; the estimate settles in far fewer.
const ROUNDS: usize = 200;

/// The fewest values that a spread is said of.
const LEAST: usize = 3;

/// Mean and spread of values; none where there are none.
pub fn robust(values: &[f64]) -> Option<Robust> {
    let count = values.len();
    let mut mean = median(values.to_vec())?;
    if count < LEAST {
        return Some(Robust { mean, deviation: None, count });
    }
    let away = values.iter().map(|value| (value - mean).abs()).collect();
    let mut deviation = MEDIAN_DEVIATION * median(away)?;
    for _ in 0..ROUNDS {
        let reach = WINSOR * deviation;
        let Some(drawn) = Spread::of(values.iter().map(|value| value.clamp(mean - reach, mean + reach)))
        else {
            break;
        };
        let next = CORRECTION * drawn.deviation.unwrap_or_default();
        let settled = (drawn.mean - mean).abs() <= 1e-12 && (next - deviation).abs() <= 1e-12;
        (mean, deviation) = (drawn.mean, next);
        if settled {
            break;
        }
    }
    Some(Robust { mean, deviation: Some(deviation), count })
}

fn median(mut values: Vec<f64>) -> Option<f64> {
    values.sort_by(f64::total_cmp);
    let middle = values.len() / 2;
    let upper = *values.get(middle)?;
    let lower = if values.len().is_multiple_of(2) { *values.get(middle.checked_sub(1)?)? } else { upper };
    Some((lower + upper) / 2.0)
}
