//! What a reading is expected to tell: mutual information of hypothesis and reading, in bits
//! (Lindley 1956, Annals of Mathematical Statistics 27, 986).

use super::truth::{Scale, Truth, Used, core_density, slope_density};

/// Truths that hold less than this are left out of the sums: together they change a gain by less
/// than is shown.
const NEGLIGIBLE: f64 = 1e-6;

/// Points of the integral to one standard error. The integrands are smoothed by the error, so the
/// trapezoid converges fast: one point leaves 4e-5 of a gain, two less than 1e-6.
const POINTS_PER_ERROR: f64 = 1.0;

/// How many standard errors, and means of wear, a density reaches before it is lost in the strays.
const REACH: f64 = 6.0;
const WEAR_REACH: f64 = 7.0;

/// Threads between two diameters that a person is asked to read.
const THREADS_APART: f64 = 5.0;

/// Expected gain of a discrete reading, in bits: `chances[i][j]` is the chance of answer j where
/// hypothesis i, which holds `weights[i]`, is true. Rows may add to less than one: what is missing
/// is "can not be read", which tells nothing.
fn gain_of_choice(weights: &[f64], chances: &[Vec<f64>]) -> f64 {
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
    gain_with(scale, truths, error, POINTS_PER_ERROR)
}

fn gain_with(scale: &Scale, truths: &[(Truth, f64)], error: f64, points_per_error: f64) -> f64 {
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
            let grid = Grid { lowest: *lowest, highest: *highest, step: error / points_per_error };
            gain_on_grid(scale, &truths, &grid, error, core_density)
        }
        Scale::Slope { widest, .. } => {
            let error = error * std::f64::consts::SQRT_2;
            let grid = Grid { lowest: -widest, highest: *widest, step: error / points_per_error };
            gain_on_grid(scale, &truths, &grid, error, |truth, value, error| match truth {
                Truth::Exactly(slope) => slope_density(THREADS_APART * slope, value, error),
                _ => 0.0,
            })
        }
    }
}

/// The points a continuous reading is summed over.
struct Grid {
    lowest: f64,
    highest: f64,
    step: f64,
}

fn gain_on_grid(
    scale: &Scale,
    truths: &[(Truth, f64)],
    grid: &Grid,
    error: f64,
    density: impl Fn(Truth, f64, f64) -> f64,
) -> f64 {
    let Grid { lowest, highest, step } = *grid;
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

#[cfg(test)]
mod tests {
    use super::*;

    const BANDS: [(f64, f64, f64); 3] = [(12.85, 13.16, 0.5), (13.30, 13.56, 0.3), (14.30, 14.55, 0.2)];
    /// Prior entropy of 0.5, 0.3, 0.2.
    const CEILING: f64 = 1.485_475_297;

    fn gain_of_bands(error: f64) -> f64 {
        let scale = Scale::Length { lowest: 10.0, highest: 18.0, outliers: 0.0 };
        let truths = BANDS.map(|(min, max, weight)| (Truth::Band { min, max, used: Used::AsNew }, weight));
        gain_with(&scale, &truths, error, 2.0)
    }

    fn entropy(probabilities: &[f64]) -> f64 {
        -probabilities.iter().map(|p| p * p.log2()).sum::<f64>()
    }

    /// LK-17 and LK-19 (scipy 1.17.1), relative 1e-6.
    #[test]
    fn the_gain_of_a_caliper_reading_is_the_certified_one() {
        for (error, certified) in [(0.02, 1.485_461_761_92), (0.2, 1.062_415_866_1)] {
            let got = gain_of_bands(error);
            assert!(
                (got - certified).abs() / certified < 1e-6,
                "error {error}: {got}, {certified} is certified"
            );
            assert!(got <= CEILING, "no reading tells more than there is to know");
        }
    }

    /// LK-21 (analytic).
    #[test]
    fn the_gain_of_a_gauge_is_the_certified_one() {
        let chances = [vec![0.95, 0.05, 0.0], vec![0.04, 0.92, 0.04], vec![0.0, 0.06, 0.94]];
        let got = gain_of_choice(&[0.5, 0.3, 0.2], &chances);
        assert!((got - 1.141_068_060_63).abs() < 1e-11, "{got}");
        let answers: Vec<f64> =
            (0..3).map(|j| [0.5, 0.3, 0.2].iter().zip(&chances).map(|(p, row)| p * row[j]).sum()).collect();
        let given: f64 = [0.5, 0.3, 0.2]
            .iter()
            .zip(&chances)
            .map(|(p, row)| p * entropy(&row.iter().copied().filter(|c| *c > 0.0).collect::<Vec<_>>()))
            .sum();
        assert!((got - (entropy(&answers) - given)).abs() < 1e-12, "H(reading) - E H(reading | class)");
    }

    #[test]
    fn a_reading_that_tells_nothing_apart_gains_nothing() {
        let scale = Scale::Length { lowest: 10.0, highest: 18.0, outliers: 0.02 };
        let same = Truth::Band { min: 13.0, max: 13.2, used: Used::Smaller(0.1) };
        assert!(gain(&scale, &[(same, 0.5), (same, 0.5)], 0.1) < 1e-9);
    }

    proptest::proptest! {
        #[test]
        fn a_gain_lies_between_nothing_and_all_there_is_to_know(
            mins in proptest::collection::vec((11.0..16.0_f64, 0.05..1.0_f64, 0.01..1.0_f64), 2..8),
            error in 0.02..0.8_f64,
        ) {
            let sum: f64 = mins.iter().map(|(_, _, weight)| weight).sum();
            let truths: Vec<(Truth, f64)> = mins.iter().map(|(min, width, weight)| {
                (Truth::Band { min: *min, max: min + width, used: Used::Larger(0.1) }, weight / sum)
            }).collect();
            let weights: Vec<f64> = truths.iter().map(|(_, weight)| *weight).collect();
            let scale = Scale::Length { lowest: 5.0, highest: 25.0, outliers: 0.02 };
            let got = gain(&scale, &truths, error);
            proptest::prop_assert!(got >= 0.0 && got <= entropy(&weights) * 1.001 + 1e-6, "{got}");
        }
    }
}
