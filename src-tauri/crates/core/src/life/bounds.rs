//! Bounds by profile likelihood: the values that the history does not speak against.

use super::likelihood::{Likelihood, Sums};
use crate::root::root;

/// How far the log likelihood may fall: half the 95 % point of chi-square with one degree of freedom.
const FALL: f64 = 3.841_458_820_694_124 / 2.0;
/// Shape below which the profile no longer changes.
const LEAST_SHAPE: f64 = 1e-9;

/// 95 % bounds of the shape: where the profile has fallen by [`FALL`] from its maximum. The lower one is 0 where
/// every hose was entered old and the history speaks against no small shape.
pub(super) fn shape_bounds(likelihood: &Likelihood, shape: f64, maximum: f64) -> [Option<f64>; 2] {
    let above = |shape: f64| likelihood.profile(shape) - (maximum - FALL);
    let lower = outward(shape, 0.5, LEAST_SHAPE, above);
    let upper = outward(shape, 2.0, 1e13, above);
    [lower.or(Some(0.0)), upper]
}

/// The root outward from the maximum: steps by `factor` until the function is negative, then closes in.
fn outward(from: f64, factor: f64, limit: f64, above: impl Fn(f64) -> f64) -> Option<f64> {
    let mut inside = from;
    loop {
        let outside = inside * factor;
        if (outside - limit) * (factor - 1.0) > 0.0 {
            return None;
        }
        if above(outside) < 0.0 {
            return root(inside, outside, above);
        }
        inside = outside;
    }
}

/// Which end of an interval of rates, and so of scales.
#[derive(Clone, Copy, PartialEq)]
enum Side {
    /// A higher rate: a smaller scale.
    Lower,
    /// A lower rate: a larger scale.
    Upper,
}

/// 95 % bounds of the scale.
///
/// At a shape within its bounds, the rates within [`FALL`] are an interval. Its ends, followed over the shape, turn where
/// the likelihood's slope over the shape is zero: those are the bounds.
pub(super) fn scale_bounds(
    likelihood: &Likelihood,
    maximum: f64,
    [low, high]: [Option<f64>; 2],
) -> [Option<f64>; 2] {
    let (Some(low), Some(high)) = (low, high) else { return [None, None] };
    let bound = |side: Side| {
        let shape = root(low.max(LEAST_SHAPE), high, |shape| {
            let sums = likelihood.sums(shape);
            end(likelihood, maximum, shape, sums, side)
                .map_or(f64::NAN, |rate| likelihood.slope_at_scale(shape, sums, rate))
        })?;
        let rate = end(likelihood, maximum, shape, likelihood.sums(shape), side)?;
        Some(likelihood.ln_scale(shape, rate).exp())
    };
    // A shape near 0 goes with a scale near 0.
    let lower = if low == 0.0 { Some(0.0) } else { bound(Side::Lower) };
    [lower, bound(Side::Upper).filter(|scale| scale.is_finite())]
}

/// The rate at a shape at which the log likelihood has fallen by [`FALL`] from the maximum.
fn end(likelihood: &Likelihood, maximum: f64, shape: f64, sums: Sums, side: Side) -> Option<f64> {
    let best = likelihood.rate(shape, sums)?;
    let left = (FALL - (maximum - likelihood.value(shape, sums, best))).max(0.0);
    if !likelihood.has_intervals() {
        return Some(best + ln_expected_by_seen(left / likelihood.failures, side));
    }
    let target = likelihood.value(shape, sums, best) - left;
    let above = |rate: f64| likelihood.value(shape, sums, rate) - target;
    let mut step = if side == Side::Lower { 1.0 } else { -1.0 };
    while above(best + step) > 0.0 {
        step *= 2.0;
        if step.abs() > 1e3 {
            return None;
        }
    }
    root(best, best + step, above)
}

/// The logarithm of the ratio w of expected to seen failures, on either side of 1, at which the log likelihood of each
/// failure has fallen by `fall`: w - 1 - ln w = fall, by Newton's method in ln w.
///
/// The start lies outside of the root and the function is convex, so that the steps come in from there.
fn ln_expected_by_seen(fall: f64, side: Side) -> f64 {
    let start = (2.0 * fall).sqrt();
    let mut x = if side == Side::Lower { start } else { -start - fall };
    for _ in 0..60 {
        let slope = x.exp_m1();
        if slope == 0.0 {
            break;
        }
        let step = (slope - x - fall) / slope;
        x -= step;
        if step.abs() <= 1e-15 * x.abs() {
            break;
        }
    }
    x
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_ratio_falls_by_what_was_asked_on_either_side() {
        for fall in [1e-8, 1e-3, 0.1, 1.0, 10.0] {
            let (below, above) =
                (ln_expected_by_seen(fall, Side::Upper), ln_expected_by_seen(fall, Side::Lower));
            assert!(below < 0.0 && above > 0.0, "{fall}");
            for x in [below, above] {
                let fallen = x.exp_m1() - x;
                assert!((fallen - fall).abs() < 1e-14 + 1e-12 * fall, "{fall}: ln {x} falls {fallen}");
            }
        }
        assert_eq!(ln_expected_by_seen(0.0, Side::Lower), 0.0);
    }
}
