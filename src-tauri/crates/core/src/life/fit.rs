//! The Weibull distribution under which a history is likeliest.

use super::answer::Unfitted;
use super::bounds::{scale_bounds, shape_bounds};
use super::likelihood::Likelihood;
use super::{Record, Weibull};
use crate::root::root;

/// Standard normal deviate that leaves 2.5 % above.
pub(super) const NORMAL_97_5: f64 = 1.959_963_984_540_054;

/// A fit by maximum likelihood, with 95 % bounds. A bound is none where the history sets none.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fit {
    /// The distribution.
    pub weibull: Weibull,
    /// Its log likelihood.
    pub log_likelihood: f64,
    /// By profile likelihood.
    pub shape_ci95: [Option<f64>; 2],
    /// By profile likelihood.
    pub scale_ci95: [Option<f64>; 2],
    /// Covariance of the estimates.
    pub covariance: Covariance,
}

/// Covariance of the logarithms of shape and scale, from the observed information.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Covariance {
    /// Variance of ln(shape).
    pub ln_shape: f64,
    /// Variance of ln(scale).
    pub ln_scale: f64,
    /// Covariance of both.
    pub both: f64,
}

impl Fit {
    /// 95 % bounds of the time by which a part `failed` has failed, by the delta method on the log scale
    /// (Meeker and Escobar, Statistical Methods for Reliability Data, 1998, section 8.4).
    pub fn quantile_ci95(&self, failed: f64) -> [f64; 2] {
        let Covariance { ln_shape, ln_scale, both } = self.covariance;
        let over_ln_shape = -(-(-failed).ln_1p()).ln() / self.weibull.shape;
        let variance = ln_scale + over_ln_shape * over_ln_shape * ln_shape + 2.0 * over_ln_shape * both;
        let factor = (NORMAL_97_5 * variance.sqrt()).exp();
        let quantile = self.weibull.quantile(failed);
        [quantile / factor, quantile * factor]
    }
}

/// Fits a Weibull distribution to a history by maximum likelihood.
///
/// # Errors
/// Says why there is none, rather than make one up: it takes failures at two different times.
pub fn fit(records: &[Record]) -> Result<Fit, Unfitted> {
    let mut failed = records.iter().filter(|record| record.failed()).map(Record::time);
    let first = failed.next().ok_or(Unfitted::TooFewFailures)?;
    if failed.all(|time| time == first) {
        return Err(Unfitted::TooFewFailures);
    }
    let likelihood = Likelihood::of(records);
    let shape = likeliest_shape(&likelihood).ok_or(Unfitted::NoMaximum)?;
    let sums = likelihood.sums(shape);
    let log_likelihood = likelihood.profile_with(shape, sums);
    let ln_scale = likelihood.ln_scale(shape, sums, 1.0);
    let shape_ci95 = shape_bounds(&likelihood, shape, log_likelihood);
    Ok(Fit {
        weibull: Weibull { shape, scale: (ln_scale + likelihood.ln_longest).exp() },
        log_likelihood,
        shape_ci95,
        scale_ci95: scale_bounds(&likelihood, log_likelihood, shape_ci95),
        covariance: covariance(&likelihood, shape),
    })
}

/// Where the falling slope of the profile crosses zero, between 1e-6 and 1e12.
fn likeliest_shape(likelihood: &Likelihood) -> Option<f64> {
    let (mut low, mut high) = (1.0, 1.0);
    while likelihood.profile_slope(low) < 0.0 {
        high = low;
        low /= 2.0;
        if low < 1e-6 {
            return None;
        }
    }
    while likelihood.profile_slope(high) > 0.0 {
        low = high;
        high *= 2.0;
        if high > 1e12 {
            return None;
        }
    }
    root(low, high, |shape| likelihood.profile_slope(shape))
}

/// Inverse of the observed information in ln(shape) and ln(scale) at the maximum.
fn covariance(likelihood: &Likelihood, shape: f64) -> Covariance {
    let sums = likelihood.sums(shape);
    let ln_scale = likelihood.ln_scale(shape, sums, 1.0);
    let r = likelihood.failures;
    // Moments of x = ln(t / scale) under the weights (t/scale)^shape, which add to r.
    let mean = sums.first / sums.zeroth - ln_scale;
    let square = sums.second / sums.zeroth - 2.0 * ln_scale * sums.first / sums.zeroth + ln_scale * ln_scale;
    let b2 = shape * shape;
    let (shape_shape, shape_scale, scale_scale) = (r + b2 * r * square, -b2 * r * mean, b2 * r);
    let determinant = shape_shape * scale_scale - shape_scale * shape_scale;
    Covariance {
        ln_shape: scale_scale / determinant,
        ln_scale: shape_shape / determinant,
        both: -shape_scale / determinant,
    }
}
