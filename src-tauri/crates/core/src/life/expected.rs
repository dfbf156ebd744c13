//! How many will fail in a span to come.

use super::Fit;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// Failures to expect in a span to come.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema, TS)]
pub struct Expected {
    /// The mean.
    pub failures: f64,
    /// Bounds that hold the count with a chance of at least 95 %: how little is known of the law is in them, and chance.
    pub ci95: [usize; 2],
}

/// The chance of each count from 0 up.
#[derive(Debug, Clone, PartialEq)]
pub struct Counts(Vec<f64>);

/// Abscissae and weights of the Gauss-Hermite rule of seven points for the standard normal law: the roots of He7 (Abramowitz
/// and Stegun, Handbook of Mathematical Functions, 1964, table 25.10, scaled by the root of 2 and of pi).
const NODES: [(f64, f64); 7] = [
    (-3.750_439_717_725_742, 5.482_688_559_722_18e-4),
    (-2.366_759_410_734_541, 3.075_712_396_758_65e-2),
    (-1.154_405_394_739_968, 0.240_123_178_605_012_7),
    (0.0, 0.457_142_857_142_857_1),
    (1.154_405_394_739_968, 0.240_123_178_605_012_7),
    (2.366_759_410_734_541, 3.075_712_396_758_65e-2),
    (3.750_439_717_725_742, 5.482_688_559_722_18e-4),
];

/// What may be left out of the chances.
const NEGLIGIBLE: f64 = 1e-9;

impl Counts {
    /// None fails.
    pub fn none() -> Self {
        Self(vec![1.0])
    }

    /// How many hoses of these ages will fail within `span`: each by its chance given its age, the law as unsure as the fit
    /// (normal in the logarithms of shape and scale). The count is taken as binomial with the mean of the chances, which
    /// spreads no less than the true law (W. Hoeffding, On the distribution of the number of successes in independent
    /// trials, Ann. Math. Statist. 27, 1956). A hose that is renewed on the way does not fail again here.
    pub fn of(fit: &Fit, ages: &[f64], span: f64) -> Self {
        let (hoses, all) = (counted(ages), ages.len());
        let chances = laws(fit).map(|(law, weight)| {
            let sum: f64 = hoses.iter().map(|&(age, count)| count * law.fails_within(age, span)).sum();
            (sum / all as f64, weight)
        });
        let chances: Vec<(f64, f64)> = chances.filter(|(chance, _)| chance.is_finite()).collect();
        let whole: f64 = chances.iter().map(|(_, weight)| weight).sum();
        let mut counts = Vec::new();
        let mut left = 1.0;
        while left > NEGLIGIBLE && counts.len() <= all && whole > 0.0 {
            let count = counts.len();
            let chance: f64 =
                chances.iter().map(|(chance, weight)| weight / whole * binomial(count, all, *chance)).sum();
            left -= chance;
            counts.push(chance);
        }
        if counts.is_empty() { Self::none() } else { Self(counts) }
    }

    /// Both together, the one saying nothing of the other.
    pub fn and(&self, other: &Self) -> Self {
        let mut chances = vec![0.0; self.0.len() + other.0.len() - 1];
        for (one, chance) in self.0.iter().enumerate() {
            for (sum, with) in chances.iter_mut().skip(one).zip(&other.0) {
                *sum += chance * with;
            }
        }
        let kept = chances.iter().rposition(|chance| *chance > NEGLIGIBLE * 1e-3).unwrap_or(0);
        chances.truncate(kept + 1);
        Self(chances)
    }

    /// Mean and bounds.
    pub fn expected(&self) -> Expected {
        let mean = (0..).zip(&self.0).map(|(count, chance)| f64::from(count) * chance).sum();
        let within = |tail: f64| {
            let mut sum = 0.0;
            self.0
                .iter()
                .position(|chance| {
                    sum += chance;
                    sum >= tail
                })
                .unwrap_or(self.0.len().saturating_sub(1))
        };
        Expected { failures: mean, ci95: [within(0.025), within(0.975)] }
    }
}

/// The chance that exactly `count` of `all` fail where each fails with that chance.
fn binomial(count: usize, all: usize, chance: f64) -> f64 {
    if chance <= 0.0 || chance >= 1.0 {
        let certain = if chance <= 0.0 { 0 } else { all };
        return if count == certain { 1.0 } else { 0.0 };
    }
    let (hits, trials) = (count as f64, all as f64);
    let ways = libm::lgamma(trials + 1.0) - libm::lgamma(hits + 1.0) - libm::lgamma(trials - hits + 1.0);
    (ways + hits * chance.ln() + (trials - hits) * (-chance).ln_1p()).exp()
}

/// Equal ages once, with how many have them.
fn counted(ages: &[f64]) -> Vec<(f64, f64)> {
    let mut sorted = ages.to_vec();
    sorted.sort_by(f64::total_cmp);
    sorted.chunk_by(|a, b| a == b).filter_map(|same| Some((*same.first()?, same.len() as f64))).collect()
}

/// Laws about the fitted one with their weights.
fn laws(fit: &Fit) -> impl Iterator<Item = (super::Weibull, f64)> {
    let covariance = fit.covariance;
    let shape_deviation = covariance.ln_shape.max(0.0).sqrt();
    let slope = if shape_deviation > 0.0 { covariance.both / shape_deviation } else { 0.0 };
    let rest = (covariance.ln_scale - slope * slope).max(0.0).sqrt();
    let weibull = fit.weibull;
    NODES.iter().flat_map(move |&(x, weight_x)| {
        NODES.iter().map(move |&(y, weight_y)| {
            let law = super::Weibull {
                shape: weibull.shape * (shape_deviation * x).exp(),
                scale: weibull.scale * (slope * x + rest * y).exp(),
            };
            (law, weight_x * weight_y)
        })
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::life::{Covariance, Weibull};

    fn sure(shape: f64, scale: f64) -> Fit {
        Fit {
            weibull: Weibull { shape, scale },
            log_likelihood: 0.0,
            shape_ci95: [None; 2],
            at_shape_ci95: [None; 2],
            scale_ci95: [None; 2],
            covariance: Covariance { ln_shape: 0.0, ln_scale: 0.0, both: 0.0 },
        }
    }

    #[test]
    fn the_rule_integrates_powers_of_the_normal_law_exactly() {
        // Moments 0, 2, 4, 6 of the standard normal law are 1, 1, 3, 15.
        for (power, expected) in [(0, 1.0), (2, 1.0), (4, 3.0), (6, 15.0)] {
            let found: f64 = NODES.iter().map(|(x, weight)| weight * x.powi(power)).sum();
            assert!((found - expected).abs() < 1e-10, "moment {power} is {found}");
        }
    }

    #[test]
    fn without_wear_the_count_is_binomial_whatever_the_ages() {
        // A shape of 1 forgets the age: 1000 hoses at a rate of 1/100 for a span of 1 are 1000 (1 - e^-0.01) = 9.950.
        let ages: Vec<f64> = (0..1000).map(|age| f64::from(age % 17)).collect();
        let expected = Counts::of(&sure(1.0, 100.0), &ages, 1.0).expected();
        assert!((expected.failures - 9.950_166).abs() < 1e-4, "{expected:?}");
        // Quantiles of the binomial law of 1000 at 0.00995017 by scipy 1.17.1.
        assert_eq!(expected.ci95, [4, 17]);
    }

    #[test]
    fn what_is_less_sure_has_wider_bounds_and_two_groups_add() {
        let mut unsure = sure(2.0, 50.0);
        unsure.covariance = Covariance { ln_shape: 0.04, ln_scale: 0.04, both: 0.0 };
        let ages = vec![20.0; 200];
        let (narrow, wide) = (Counts::of(&sure(2.0, 50.0), &ages, 2.0), Counts::of(&unsure, &ages, 2.0));
        assert!(wide.expected().ci95[0] < narrow.expected().ci95[0]);
        assert!(wide.expected().ci95[1] > narrow.expected().ci95[1]);
        let both = narrow.and(&wide).expected().failures;
        assert!((both - narrow.expected().failures - wide.expected().failures).abs() < 1e-6);
        assert_eq!(narrow.and(&Counts::none()).expected(), narrow.expected());
    }

    #[test]
    fn no_more_fail_than_there_are() {
        let expected = Counts::of(&sure(3.0, 1.0), &[5.0, 5.0, 5.0], 100.0).expected();
        assert!((expected.failures - 3.0).abs() < 1e-6 && expected.ci95[1] == 3, "{expected:?}");
    }
}
