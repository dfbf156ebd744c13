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

/// The mass itself: of what lies far out nothing is left.
fn normal_between(low: f64, high: f64) -> f64 {
    // Mirrored as above.
    if low > 0.0 { normal(-low) - normal(-high) } else { normal(high) - normal(low) }
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

/// The density itself, for sums in which what lies far out counts for nothing.
pub(super) fn band(x: f64, min: f64, max: f64, error: f64) -> f64 {
    if max - min <= NARROW * error {
        return ln_gauss(x, 0.5 * (min + max), error).exp();
    }
    normal_between((x - max) / error, (x - min) / error) / (max - min)
}

/// Logarithm of the density where only a maximum is given: a half-normal of that `scale` below it.
pub fn ln_at_most(x: f64, max: f64, scale: f64, error: f64) -> f64 {
    let both = scale.hypot(error);
    std::f64::consts::LN_2 + ln_gauss(x, max, both) + ln_normal(-(x - max) * scale / (error * both))
}

/// The same where only a minimum is given.
pub fn ln_at_least(x: f64, min: f64, scale: f64, error: f64) -> f64 {
    ln_at_most(-x, -min, scale, error)
}

/// The density of a band from which wear has taken an exponential amount of that `mean`: a used male thread reads
/// small. Mirror the arguments for a dimension that grows. It is for sums in which what lies far out counts for nothing.
///
/// Far above the band, where the difference of the two distributions cancels, the density of the
/// unworn band stands for it: wear only takes away there, so it is an upper bound.
pub(super) fn worn(x: f64, min: f64, max: f64, error: f64, mean: f64) -> f64 {
    if max - min <= NARROW * error {
        return ln_worn_point(x - 0.5 * (min + max), error, mean).exp();
    }
    match worn_mass(x, min, max, error, mean) {
        Some(mass) => mass / (max - min),
        None => band(x, min, max, error),
    }
}

/// The difference of the two distributions; none where it cancels.
fn worn_mass(x: f64, min: f64, max: f64, error: f64, mean: f64) -> Option<f64> {
    let up_to = |y: f64| normal(y / error) + of_wear(y, error, mean);
    let mass = up_to(x - min) - up_to(x - max);
    (x <= max || mass >= 1e-12).then_some(mass)
}

/// The wear's part of the distribution of Gaussian error less exponential wear. Short of the far tail without
/// logarithms, which take as long again; the power is a number there, `rise` being `(z^2 - (y / error)^2) / 2`.
fn of_wear(y: f64, error: f64, mean: f64) -> f64 {
    let rise = y / mean + 0.5 * (error / mean).powi(2);
    let z = -y / error - error / mean;
    if z > FAR_TAIL { rise.exp() * normal(z) } else { worn_part(y, error, mean).exp() }
}

/// Logarithm of the wear's part; `mean` times its density.
fn worn_part(y: f64, error: f64, mean: f64) -> f64 {
    y / mean + 0.5 * (error / mean).powi(2) + ln_normal(-y / error - error / mean)
}

/// Logarithm of the density of a point less exponential wear, read with an error.
fn ln_worn_point(y: f64, error: f64, mean: f64) -> f64 {
    worn_part(y, error, mean) - mean.ln()
}

/// Logarithm of the sum of weights given as logarithms.
pub(super) fn ln_sum(ln_weights: impl Iterator<Item = f64> + Clone) -> f64 {
    let top = ln_weights.clone().fold(f64::NEG_INFINITY, f64::max);
    if !top.is_finite() {
        return top;
    }
    top + ln_weights.map(|ln| (ln - top).exp()).sum::<f64>().ln()
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

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    /// The table of check values (scipy 1.17.1, numerical convolution beside it).
    const CASES: &str = include_str!("../../../../../tests/vectors/likelihood_cases.csv");

    struct Case(csv::StringRecord);

    impl Case {
        /// Columns: case, quantity, model, band_min, band_max, sigma, reading, wear_mean,
        /// other_inputs, value, second_value, relative_difference, tolerance_rel, ...
        fn of(id: &str) -> Self {
            let rows = csv::Reader::from_reader(CASES.as_bytes()).into_records();
            let mut rows = rows.map(|row| row.expect("a row"));
            Self(rows.find(|row| row.get(0) == Some(id)).expect("the case is in the table"))
        }

        fn number(&self, column: usize) -> f64 {
            self.0.get(column).expect("the column").parse().expect("a number")
        }

        #[track_caller]
        fn holds(&self, got: f64) {
            let (value, tolerance) = (self.number(9), self.number(12));
            let difference = ((got - value) / value).abs();
            assert!(difference <= tolerance, "{:?}: {got} differs by {difference:e}", self.0);
        }
    }

    #[rstest]
    #[case("LK-01")]
    #[case("LK-03")]
    #[case("LK-04")]
    #[case("LK-05")]
    #[case("LK-07")]
    #[case("LK-08")]
    fn a_band_has_the_certified_density(#[case] id: &str) {
        let case = Case::of(id);
        case.holds(ln_band(case.number(6), case.number(3), case.number(4), case.number(5)).exp());
    }

    #[test]
    fn a_band_keeps_its_logarithm_far_outside() {
        let case = Case::of("LK-09");
        case.holds(ln_band(case.number(6), case.number(3), case.number(4), case.number(5)));
    }

    #[test]
    fn a_maximum_has_the_certified_density() {
        let case = Case::of("LK-11");
        let scale = case.0.get(8).expect("inputs").trim_start_matches("tau=").parse().expect("a number");
        case.holds(ln_at_most(case.number(6), case.number(4), scale, case.number(5)).exp());
    }

    #[test]
    fn a_minimum_is_the_mirror_of_a_maximum() {
        assert_eq!(ln_at_least(10.3, 10.0, 0.2, 0.1), ln_at_most(9.7, 10.0, 0.2, 0.1));
    }

    #[rstest]
    #[case("LK-12")]
    #[case("LK-13")]
    fn a_worn_thread_has_the_certified_density(#[case] id: &str) {
        let case = Case::of(id);
        let [min, max, error, reading, mean] = [3, 4, 5, 6, 7].map(|column| case.number(column));
        case.holds(worn(reading, min, max, error, mean));
    }

    #[rstest]
    #[case("LK-15", 0)]
    #[case("LK-16", 1)]
    fn three_bands_have_the_certified_posterior(#[case] id: &str, #[case] class: usize) {
        let case = Case::of(id);
        let bands = [(12.85, 13.16, 0.5_f64), (13.30, 13.56, 0.3), (14.30, 14.55, 0.2)];
        let ln =
            bands.map(|(min, max, prior)| prior.ln() + ln_band(case.number(6), min, max, case.number(5)));
        case.holds(posterior(&ln)[class]);
    }

    #[test]
    fn a_gauge_has_the_certified_posterior() {
        let ln =
            [(0.5_f64, 0.05_f64), (0.3, 0.92), (0.2, 0.06)].map(|(prior, chance)| prior.ln() + chance.ln());
        Case::of("LK-20").holds(posterior(&ln)[0]);
    }

    #[test]
    fn posteriors_add_to_one_where_nothing_fits() {
        assert_eq!(posterior(&[f64::NEG_INFINITY; 4]), vec![0.25; 4]);
    }

    /// Closed forms meet at the limits.
    #[test]
    fn densities_meet_at_their_limits() {
        let unworn = ln_band(13.1, 13.05, 13.16, 0.02);
        assert!((worn(13.1, 13.05, 13.16, 0.02, 1e-6).ln() - unworn).abs() < 1e-4, "no wear is no wear");
        let point = ln_band(13.1, 13.1, 13.1, 0.02);
        assert!(
            (ln_band(13.1, 13.1 - 1e-7, 13.1 + 1e-7, 0.02) - point).abs() < 1e-6,
            "a narrow band is a point"
        );
        let sharp = ln_band(13.1, 13.05, 13.16, 1e-9);
        assert!((sharp + 0.11_f64.ln()).abs() < 1e-9, "without error the density is flat");
    }

    proptest::proptest! {
        /// Every density is a number, or zero, however far the reading lies.
        #[test]
        fn densities_are_never_nan(x in -500.0..500.0_f64, min in 0.1..300.0_f64, width in 0.0..5.0_f64,
                                   error in 0.001..20.0_f64, mean in 0.01..1.0_f64) {
            for ln in [
                ln_band(x, min, min + width, error),
                worn(x, min, min + width, error, mean).ln(),
                ln_at_most(x, min, mean, error),
                ln_at_least(x, min, mean, error),
            ] {
                proptest::prop_assert!(!ln.is_nan() && ln < 20.0, "{ln}");
            }
        }

        /// Wear takes mass downwards only.
        #[test]
        fn wear_makes_large_readings_less_likely(over in 0.0..1.8_f64, mean in 0.02..0.5_f64) {
            let (min, max) = (16.4, 16.66);
            let (worn, new) = (worn(max + over, min, max, 0.05, mean), ln_band(max + over, min, max, 0.05).exp());
            // The smallest numbers of all have few digits.
            proptest::prop_assert!(worn <= new * (1.0 + 1e-9) + f64::MIN_POSITIVE, "{worn} of {new}");
        }
    }
}
