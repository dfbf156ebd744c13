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

/// 95 % bounds of the scale.
///
/// At a shape within its bounds, the scales within [`FALL`] are an interval, known in closed form. Its ends, followed
/// over the shape, turn where the likelihood's slope over the shape is zero: those are the bounds.
pub(super) fn scale_bounds(
    likelihood: &Likelihood,
    maximum: f64,
    [low, high]: [Option<f64>; 2],
) -> [Option<f64>; 2] {
    let (Some(low), Some(high)) = (low, high) else { return [None, None] };
    let times = |shape: f64, sums: Sums, side: f64| {
        let left = FALL - (maximum - likelihood.profile_with(shape, sums));
        expected_by_seen(left.max(0.0) / likelihood.failures, side)
    };
    let bound = |side: f64| {
        let shape = root(low.max(LEAST_SHAPE), high, |shape| {
            let sums = likelihood.sums(shape);
            likelihood.slope_at_scale(shape, sums, times(shape, sums, side))
        })?;
        let sums = likelihood.sums(shape);
        let ln_scale = likelihood.ln_scale(shape, sums, times(shape, sums, side));
        Some((ln_scale + likelihood.ln_longest).exp())
    };
    // A shape near 0 goes with a scale near 0.
    let lower = if low == 0.0 { Some(0.0) } else { bound(1.0) };
    [lower, bound(-1.0).filter(|scale| scale.is_finite())]
}

/// The ratio w of expected to seen failures, above 1 (`side` 1) or below (`side` -1), at which the log likelihood of each
/// failure has fallen by `fall`: w - 1 - ln w = fall, by Newton's method in ln w.
///
/// The start lies outside of the root and the function is convex, so that the steps come in from there.
fn expected_by_seen(fall: f64, side: f64) -> f64 {
    let start = (2.0 * fall).sqrt();
    let mut x = if side > 0.0 { start } else { -start - fall };
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
    x.exp()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_ratio_falls_by_what_was_asked_on_either_side() {
        for fall in [1e-8, 1e-3, 0.1, 1.0, 10.0] {
            let (below, above) = (expected_by_seen(fall, -1.0), expected_by_seen(fall, 1.0));
            assert!(below < 1.0 && above > 1.0, "{fall}");
            for w in [below, above] {
                let fallen = w - 1.0 - w.ln();
                assert!((fallen - fall).abs() < 1e-14 + 1e-12 * fall, "{fall}: {w} falls {fallen}");
            }
        }
        assert_eq!(expected_by_seen(0.0, 1.0), 1.0);
    }
}
