//! How likely one reading is under one hypothesis: densities of a dimension with limits, in logs
//! that stay true in the tails.
//!
//! The formulas are those of a rectangular distribution convolved with a Gaussian error
//! (JCGM 100:2008, 4.3.7; JCGM 101:2008), of a half-normal below a maximum, and of a band less an
//! exponential wear.

use std::f64::consts::{FRAC_1_SQRT_2, PI};

/// Below this many standard errors the logarithm of the normal distribution comes from its
/// asymptotic series, because the distribution itself nears the smallest number.
const FAR_TAIL: f64 = -25.0;

/// A band narrower than this share of the error is a point.
const NARROW: f64 = 1e-9;

/// Standard normal distribution.
fn normal(z: f64) -> f64 {
    0.5 * libm::erfc(-z * FRAC_1_SQRT_2)
}

/// Logarithm of the standard normal distribution, true however far out.
fn ln_normal(z: f64) -> f64 {
    if z > FAR_TAIL {
        return normal(z).ln();
    }
    let square = (z * z).recip();
    let series = 1.0 - square * (1.0 - square * (3.0 - square * (15.0 - square * 105.0)));
    -0.5 * z * z - (-z).ln() - 0.5 * (2.0 * PI).ln() + series.ln()
}

/// Logarithm of the normal distribution's mass between two numbers of standard errors.
fn ln_normal_between(low: f64, high: f64) -> f64 {
    if low > 0.0 {
        // Mirrored: the survival function does not cancel where the distribution does.
        return ln_normal_between(-high, -low);
    }
    if high <= 0.0 {
        let (near, far) = (ln_normal(high), ln_normal(low));
        return near + (-(far - near).exp_m1()).ln();
    }
    (1.0 - normal(low) - normal(-high)).ln()
}

/// Logarithm of the Gaussian density.
fn ln_gauss(x: f64, mean: f64, error: f64) -> f64 {
    let z = (x - mean) / error;
    -0.5 * z * z - error.ln() - 0.5 * (2.0 * PI).ln()
}

/// Logarithm of the density of reading `x` of a dimension that lies anywhere between `min` and
/// `max`, read with the standard error `error` (greater than zero).
pub fn ln_band(x: f64, min: f64, max: f64, error: f64) -> f64 {
    if max - min <= NARROW * error {
        return ln_gauss(x, 0.5 * (min + max), error);
    }
    ln_normal_between((x - max) / error, (x - min) / error) - (max - min).ln()
}

/// The same where only a maximum is given: a half-normal of that `scale` below it.
pub fn ln_at_most(x: f64, max: f64, scale: f64, error: f64) -> f64 {
    let both = scale.hypot(error);
    std::f64::consts::LN_2 + ln_gauss(x, max, both) + ln_normal(-(x - max) * scale / (error * both))
}

/// The same where only a minimum is given.
pub fn ln_at_least(x: f64, min: f64, scale: f64, error: f64) -> f64 {
    ln_at_most(-x, -min, scale, error)
}

/// Logarithm of the density of a band from which wear has taken an exponential amount of that
/// `mean`: a used male thread reads small. Mirror the arguments for a dimension that grows.
///
/// Far above the band, where the difference of the two distributions cancels, the density of the
/// unworn band stands for it: wear only takes away there, so it is an upper bound.
pub fn ln_worn(x: f64, min: f64, max: f64, error: f64, mean: f64) -> f64 {
    if max - min <= NARROW * error {
        return ln_worn_point(x - 0.5 * (min + max), error, mean);
    }
    let mass = worn(x - min, error, mean) - worn(x - max, error, mean);
    if x > max && mass < 1e-12 { ln_band(x, min, max, error) } else { mass.ln() - (max - min).ln() }
}

/// Distribution of Gaussian error less exponential wear.
fn worn(y: f64, error: f64, mean: f64) -> f64 {
    normal(y / error) + worn_part(y, error, mean).exp()
}

/// Logarithm of the wear's part of that distribution; `mean` times its density.
fn worn_part(y: f64, error: f64, mean: f64) -> f64 {
    y / mean + 0.5 * (error / mean).powi(2) + ln_normal(-y / error - error / mean)
}

/// Logarithm of the density of a point less exponential wear, read with an error.
fn ln_worn_point(y: f64, error: f64, mean: f64) -> f64 {
    worn_part(y, error, mean) - mean.ln()
}

/// Probabilities that are proportional to weights given as logarithms; they add to one.
/// Where every weight is zero, all are equally likely.
pub fn posterior(ln_weights: &[f64]) -> Vec<f64> {
    let top = ln_weights.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    if !top.is_finite() {
        return vec![1.0 / ln_weights.len() as f64; ln_weights.len()];
    }
    let mut probabilities: Vec<f64> = ln_weights.iter().map(|ln| (ln - top).exp()).collect();
    let sum: f64 = probabilities.iter().sum();
    probabilities.iter_mut().for_each(|p| *p /= sum);
    probabilities
}
