//! The Weibull distribution under which a history is likeliest.

use super::answer::Unfitted;
use super::bounds::{scale_bounds, shape_bounds};
use super::likelihood::{Curvature, Likelihood};
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
    /// The likeliest distribution at each of these bounds; none where the bound is none or 0.
    pub at_shape_ci95: [Option<Weibull>; 2],
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

    /// 95 % bounds of the part still in service at a time, for that time alone, by the delta method on the scale of
    /// ln(-ln S).
    pub fn survival_ci95(&self, time: f64) -> [f64; 2] {
        let Covariance { ln_shape, ln_scale, both } = self.covariance;
        let Weibull { shape, scale } = self.weibull;
        let x = shape * (time / scale).ln();
        let variance = x * x * ln_shape + shape * shape * ln_scale - 2.0 * x * shape * both;
        [1.0, -1.0].map(|side| (-(x + side * NORMAL_97_5 * variance.sqrt()).exp()).exp())
    }
}

/// Fits a Weibull distribution to a history by maximum likelihood.
///
/// # Errors
/// Says why there is none, rather than make one up: it takes failures at two different times.
pub fn fit(records: &[Record]) -> Result<Fit, Unfitted> {
    if at_one_time(records) {
        return Err(Unfitted::TooFewFailures);
    }
    let likelihood = Likelihood::of(records);
    let shape = likeliest_shape(&likelihood).ok_or(Unfitted::NoMaximum)?;
    let sums = likelihood.sums(shape);
    let rate = likelihood.rate(shape, sums).ok_or(Unfitted::NoMaximum)?;
    let log_likelihood = likelihood.value(shape, sums, rate);
    let shape_ci95 = shape_bounds(&likelihood, shape, log_likelihood);
    Ok(Fit {
        weibull: Weibull { shape, scale: likelihood.ln_scale(shape, rate).exp() },
        log_likelihood,
        shape_ci95,
        at_shape_ci95: shape_ci95.map(|shape| likeliest_of_shape(&likelihood, shape?)),
        scale_ci95: scale_bounds(&likelihood, log_likelihood, shape_ci95),
        covariance: Covariance::of(likelihood.information(shape, rate)),
    })
}

/// Whether all failures may have been at one age: then the history is the likelier the larger the shape.
fn at_one_time(records: &[Record]) -> bool {
    let failed = || records.iter().filter(|record| record.failed());
    let earliest_end = failed().map(Record::time).fold(f64::INFINITY, f64::min);
    // Of those whose age at failure is known that age itself, of the others the last look before.
    failed().all(|record| match record.after() {
        Some(after) => after < earliest_end,
        None => record.time() <= earliest_end,
    })
}

/// The distribution of that shape with the scale that suits it best.
fn likeliest_of_shape(likelihood: &Likelihood, shape: f64) -> Option<Weibull> {
    if shape <= 0.0 {
        return None;
    }
    let rate = likelihood.rate(shape, likelihood.sums(shape))?;
    Some(Weibull { shape, scale: likelihood.ln_scale(shape, rate).exp() })
}

/// Where the falling slope of the profile crosses zero, between 1e-6 and 1e12.
fn likeliest_shape(likelihood: &Likelihood) -> Option<f64> {
    let slope = |shape: f64| likelihood.profile_slope(shape).unwrap_or(f64::NAN);
    let (mut low, mut high) = (1.0, 1.0);
    while slope(low) < 0.0 {
        high = low;
        low /= 2.0;
        if low < 1e-6 {
            return None;
        }
    }
    while slope(high) > 0.0 {
        low = high;
        high *= 2.0;
        if high > 1e12 {
            return None;
        }
    }
    root(low, high, slope)
}

impl Covariance {
    /// The inverse of the observed information.
    fn of(information: Curvature) -> Self {
        let Curvature { shape_shape, shape_scale, scale_scale } = information;
        let determinant = shape_shape * scale_scale - shape_scale * shape_scale;
        Self {
            ln_shape: scale_scale / determinant,
            ln_scale: shape_shape / determinant,
            both: -shape_scale / determinant,
        }
    }
}
