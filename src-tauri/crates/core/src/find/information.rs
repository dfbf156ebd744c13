//! What a reading is expected to tell: mutual information of hypothesis and reading, in bits
//! (Lindley 1956, Annals of Mathematical Statistics 27, 986).

use super::truth::{Scale, Truth, Used, core_density, slope_density};

/// Truths that hold less than this are left out of the sums: together they change a gain by less
/// than is shown.
const NEGLIGIBLE: f64 = 1e-6;

/// Points of the integral to one standard error. The integrands are smoothed by the error, so the
/// trapezoid converges fast.
const POINTS_PER_ERROR: f64 = 1.0;

/// How many standard errors, and means of wear, a density reaches.
const REACH: f64 = 6.0;
const WEAR_REACH: f64 = 12.0;

/// Threads between two diameters that a person is asked to read.
const THREADS_APART: f64 = 5.0;

/// Entropy of a distribution, in bits.
pub fn entropy(probabilities: &[f64]) -> f64 {
    -probabilities.iter().filter(|p| **p > 0.0).map(|p| p * p.log2()).sum::<f64>()
}

/// Expected gain of a discrete reading, in bits: `chances[i][j]` is the chance of answer j where
/// hypothesis i, which holds `weights[i]`, is true. Rows may add to less than one: what is missing
/// is "can not be read", which tells nothing.
pub fn gain_of_choice(weights: &[f64], chances: &[Vec<f64>]) -> f64 {
    let answers = chances.iter().map(Vec::len).max().unwrap_or(0);
    let mut any = vec![0.0; answers];
    for (weight, row) in weights.iter().zip(chances) {
        for (sum, chance) in any.iter_mut().zip(row) {
            *sum += weight * chance;
        }
    }
    let mut gain = 0.0;
    for (weight, row) in weights.iter().zip(chances) {
        for (sum, chance) in any.iter().zip(row) {
            if *chance > 0.0 && *weight > 0.0 {
                gain += weight * chance * (chance / sum).log2();
            }
        }
    }
    gain.max(0.0)
}

/// A density that is nothing outside an interval, and a flat share everywhere.
struct Local {
    weight: f64,
    flat: f64,
    /// First point of the grid and the density at each, the flat share included.
    first: usize,
    at: Vec<f64>,
}

/// Expected gain of a continuous reading, in bits. Each hypothesis holds a weight, has a density
/// that is negligible outside an interval, and a flat share over the whole grid.
fn gain_of_densities(locals: &[Local], points: usize, step: f64) -> f64 {
    let flat: f64 = locals.iter().map(|local| local.weight * local.flat).sum();
    let mut any = vec![flat; points];
    for local in locals {
        for (sum, density) in any.iter_mut().skip(local.first).zip(&local.at) {
            *sum += local.weight * (density - local.flat);
        }
    }
    let ln_any: Vec<f64> = any.iter().map(|sum| sum.max(f64::MIN_POSITIVE).ln()).collect();
    let all: f64 = ln_any.iter().sum();
    let mut gain = 0.0;
    for local in locals {
        let near = &ln_any[local.first..local.first + local.at.len()];
        let mut sum = 0.0;
        for (density, ln_any) in local.at.iter().zip(near) {
            if *density > 0.0 {
                sum += density * (density.ln() - ln_any);
            }
        }
        if local.flat > 0.0 {
            let outside = (points - local.at.len()) as f64;
            sum += local.flat * (outside * local.flat.ln() - (all - near.iter().sum::<f64>()));
        }
        gain += local.weight * sum;
    }
    (gain * step / std::f64::consts::LN_2).max(0.0)
}

/// Expected gain, in bits, of a reading on that scale with that error, where each truth holds the
/// weight beside it.
pub(super) fn gain(scale: &Scale, truths: &[(Truth, f64)], error: f64) -> f64 {
    let truths: Vec<(Truth, f64)> =
        truths.iter().copied().filter(|(_, weight)| *weight > NEGLIGIBLE).collect();
    if truths.len() < 2 {
        return 0.0;
    }
    match scale {
        Scale::Gauge { .. } | Scale::Choice(_) => {
            let answers = scale.answers();
            let weights: Vec<f64> = truths.iter().map(|(_, weight)| *weight).collect();
            let chances: Vec<Vec<f64>> = truths
                .iter()
                .map(|&(truth, _)| answers.iter().map(|&answer| scale.chance(truth, answer)).collect())
                .collect();
            gain_of_choice(&weights, &chances)
        }
        Scale::Length { lowest, highest, .. } => {
            gain_on_grid(scale, &truths, *lowest, *highest, error, core_density)
        }
        Scale::Slope { widest, .. } => {
            let error = error * std::f64::consts::SQRT_2;
            gain_on_grid(scale, &truths, -widest, *widest, error, |truth, value, error| match truth {
                Truth::Exactly(slope) => slope_density(THREADS_APART * slope, value, error),
                _ => 0.0,
            })
        }
    }
}

fn gain_on_grid(
    scale: &Scale,
    truths: &[(Truth, f64)],
    lowest: f64,
    highest: f64,
    error: f64,
    density: impl Fn(Truth, f64, f64) -> f64,
) -> f64 {
    let step = error / POINTS_PER_ERROR;
    let points = ((highest - lowest) / step).ceil() as usize + 1;
    let index = |x: f64| (((x - lowest) / step).max(0.0) as usize).min(points);
    let locals: Vec<Local> = truths
        .iter()
        .map(|&(truth, weight)| {
            let stray = scale.stray(truth);
            let flat = stray * scale.flat();
            let (first, last) = match reach(truth, error) {
                Some((from, to)) => (index(from), index(to + step)),
                None => (0, 0),
            };
            let at = (first..last)
                .map(|i| flat + (1.0 - stray) * density(truth, lowest + i as f64 * step, error))
                .collect();
            Local { weight, flat, first, at }
        })
        .collect();
    gain_of_densities(&locals, points, step)
}

/// Where a truth's density is more than negligible.
fn reach(truth: Truth, error: f64) -> Option<(f64, f64)> {
    let far = REACH * error;
    match truth {
        Truth::Band { min, max, used } => {
            let (below, above) = match used {
                Used::AsNew => (0.0, 0.0),
                Used::Smaller(mean) => (mean, 0.0),
                Used::Larger(mean) => (0.0, mean),
                Used::Either(mean) => (mean, mean),
            };
            Some((min - far - WEAR_REACH * below, max + far + WEAR_REACH * above))
        }
        Truth::AtMost { max, scale } => Some((max - far - REACH * scale, max + far)),
        Truth::AtLeast { min, scale } => Some((min - far, min + far + REACH * scale)),
        // A slope's two places lie either side of zero.
        Truth::Exactly(slope) => {
            let furthest = THREADS_APART * slope.abs();
            Some((-furthest - far, furthest + far))
        }
        Truth::Absent | Truth::Unstated | Truth::OneOf(_) => None,
    }
}
