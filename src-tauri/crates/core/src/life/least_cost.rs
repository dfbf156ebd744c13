//! The age at which it costs least to replace a hose that still holds.
//!
//! Replacement at an age (Barlow and Hunter, Optimum preventive maintenance policies, Operations Research 8, 1960): each
//! hose is replaced when it fails or at that age, whichever comes first, and the cost of a long run is that of a renewal
//! over its mean length.

use super::{Fit, Weibull};
use crate::gamma;
use crate::root::root;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// When it costs least to replace, and what other ages cost.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct LeastCost {
    /// What a failure costs, in planned replacements. It is the user's.
    pub ratio: f64,
    /// The age; none where no age costs less than to wait for the failure.
    pub age: Option<f64>,
    /// Where the age would lie at either bound of the shape, the earlier first; none is: waiting would cost least.
    pub age_ci95: [Option<f64>; 2],
    /// Cost at the age over that of waiting for failures.
    pub cost: f64,
    /// The ages between which the cost is within 5 % of the least; the later is none where waiting is within it.
    pub near: Option<[Option<f64>; 2]>,
    /// Age and cost over that of waiting for failures.
    pub curve: Vec<[f64; 2]>,
}

/// Points of the curve.
const POINTS: u32 = 60;
/// What is as good as the least.
const NEAR: f64 = 1.05;

/// When it costs least to replace, where a failure costs `ratio` planned replacements. None where the ratio is no number
/// above 1: then nothing speaks for replacing a hose that holds. The curve runs to `longest`.
pub fn least_cost(fit: &Fit, ratio: f64, longest: f64) -> Option<LeastCost> {
    if !(ratio > 1.0 && ratio.is_finite() && longest > 0.0) {
        return None;
    }
    let law = &fit.weibull;
    let age = best_age(law, ratio);
    let at_bounds = fit.at_shape_ci95.map(|law| law.and_then(|law| best_age(&law, ratio)));
    let [at_low, at_high] = at_bounds;
    let cost = |age: f64| cost_over_waiting(law, ratio, age);
    let least = age.map_or(1.0, cost);
    let end = age.map_or(longest, |age| longest.max(1.5 * age));
    Some(LeastCost {
        ratio,
        age,
        age_ci95: earlier_first(at_high, at_low),
        cost: least,
        near: age.map(|age| near(age, least, cost)),
        curve: (1..=POINTS)
            .map(|point| end * f64::from(point) / f64::from(POINTS))
            .map(|age| [age, cost(age)])
            .collect(),
    })
}

/// Two ages in order; none, to wait, is the latest.
fn earlier_first(a: Option<f64>, b: Option<f64>) -> [Option<f64>; 2] {
    match (a, b) {
        (Some(a), Some(b)) => [Some(a.min(b)), Some(a.max(b))],
        (one, other) => [one.or(other), None],
    }
}

/// The ages about the best at which the cost is [`NEAR`] the least.
fn near(age: f64, least: f64, cost: impl Fn(f64) -> f64) -> [Option<f64>; 2] {
    let above = |age: f64| cost(age) - NEAR * least;
    let earlier = root(age * 1e-6, age, above);
    let later = (NEAR * least < 1.0)
        .then(|| {
            let mut far = 2.0 * age;
            while above(far) < 0.0 && far < 1e6 * age {
                far *= 2.0;
            }
            root(age, far, above)
        })
        .flatten();
    [earlier, later]
}

/// Mean length of a renewal that comes at failure or at that age: the integral of the part still in service.
fn mean_length(law: &Weibull, age: f64) -> f64 {
    let hazard = (age / law.scale).powf(law.shape);
    law.mean() * gamma::lower(1.0 / law.shape, hazard)
}

/// Cost of replacing at an age over that of waiting for failures.
fn cost_over_waiting(law: &Weibull, ratio: f64, age: f64) -> f64 {
    let held = law.survival(age);
    let renewal = held + ratio * (1.0 - held);
    renewal / mean_length(law, age) * law.mean() / ratio
}

/// Where the slope of the cost is zero: hazard * mean length - part failed = 1 / (ratio - 1). The left side rises with age
/// from 0 where the shape is above 1, and only there.
fn best_age(law: &Weibull, ratio: f64) -> Option<f64> {
    if law.shape <= 1.0 {
        return None;
    }
    let slope = |age: f64| {
        let hazard = law.shape / age * (age / law.scale).powf(law.shape);
        hazard * mean_length(law, age) - (1.0 - law.survival(age)) - 1.0 / (ratio - 1.0)
    };
    let mut high = law.scale;
    while slope(high) < 0.0 {
        high *= 2.0;
        // As late as that hardly any is left to replace: it is waiting.
        if high > 1e3 * law.scale {
            return None;
        }
    }
    let age = root(1e-9 * high, high, slope)?;
    (law.survival(age) > 1e-3).then_some(age)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::life::Covariance;

    fn fit(shape: f64, scale: f64) -> Fit {
        let law = |shape| Some(Weibull { shape, scale });
        Fit {
            weibull: Weibull { shape, scale },
            log_likelihood: 0.0,
            shape_ci95: [Some(shape * 0.8), Some(shape * 1.25)],
            at_shape_ci95: [law(shape * 0.8), law(shape * 1.25)],
            scale_ci95: [None; 2],
            covariance: Covariance { ln_shape: 0.0, ln_scale: 0.0, both: 0.0 },
        }
    }

    /// The cost by its definition, the integral by Simpson's rule.
    fn plain_cost(shape: f64, scale: f64, ratio: f64, age: f64) -> f64 {
        let held = |t: f64| (-(t / scale).powf(shape)).exp();
        let steps = 20_000;
        let width = age / f64::from(steps);
        let inner: f64 =
            (1..steps).map(|i| (if i % 2 == 1 { 4.0 } else { 2.0 }) * held(f64::from(i) * width)).sum();
        let length = (1.0 + inner + held(age)) * width / 3.0;
        (held(age) + ratio * (1.0 - held(age))) / length
    }

    #[test]
    fn no_other_age_costs_less_by_the_definition() {
        for (shape, scale, ratio) in [(2.0, 8.0, 10.0), (3.5, 6.0, 4.0), (1.3, 10.0, 30.0)] {
            let found = least_cost(&fit(shape, scale), ratio, 12.0).unwrap();
            let age = found.age.unwrap();
            let here = plain_cost(shape, scale, ratio, age);
            for factor in [0.8, 0.95, 0.99, 1.01, 1.05, 1.3] {
                let there = plain_cost(shape, scale, ratio, age * factor);
                assert!(there >= here * (1.0 - 1e-9), "{shape} {ratio}: {there} at {factor}, {here}");
            }
            let waiting = ratio / Weibull { shape, scale }.mean();
            assert!((found.cost - here / waiting).abs() < 1e-6, "{} {}", found.cost, here / waiting);
        }
    }

    #[test]
    fn without_wear_or_without_dearer_failures_no_age_pays() {
        for shape in [0.7, 1.0] {
            let found = least_cost(&fit(shape, 8.0), 20.0, 10.0).unwrap();
            assert_eq!((found.age, found.cost, found.near), (None, 1.0, None));
        }
        assert_eq!(least_cost(&fit(2.0, 8.0), 1.0, 10.0), None);
        assert_eq!(least_cost(&fit(2.0, 8.0), f64::NAN, 10.0), None);
    }

    #[test]
    fn the_bounds_hold_the_age_and_say_where_waiting_may_be_as_good() {
        let found = least_cost(&fit(2.5, 8.0), 10.0, 10.0).unwrap();
        let [Some(early), Some(late)] = found.age_ci95 else { panic!("{found:?}") };
        assert!(early <= found.age.unwrap() && found.age.unwrap() <= late, "{found:?}");
        let [Some(from), Some(to)] = found.near.unwrap() else { panic!("{found:?}") };
        assert!(from < found.age.unwrap() && found.age.unwrap() < to, "{found:?}");
        // Its lower bound of the shape is below 1.
        assert_eq!(least_cost(&fit(1.2, 8.0), 10.0, 10.0).unwrap().age_ci95[1], None);
    }
}
