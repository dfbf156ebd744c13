//! The incomplete gamma function, and what of the Poisson distribution follows from it.

use crate::root::root;

/// Terms after which series and fraction are long settled.
const TERMS: usize = 10_000;

/// The regularised lower incomplete gamma function P(a, x), a above 0.
///
/// The power series below a + 1 (NIST Digital Library of Mathematical Functions, 8.7.1) and the continued fraction above
/// (8.9.2).
pub(crate) fn lower(a: f64, x: f64) -> f64 {
    if x <= 0.0 {
        0.0
    } else if x.is_infinite() {
        1.0
    } else if x < a + 1.0 {
        series(a, x)
    } else {
        1.0 - fraction(a, x)
    }
}

/// x^a e^-x / gamma(a).
fn front(a: f64, x: f64) -> f64 {
    (a * x.ln() - x - libm::lgamma(a)).exp()
}

fn series(a: f64, x: f64) -> f64 {
    let (mut term, mut sum) = (1.0 / a, 1.0 / a);
    for n in 1..TERMS {
        term *= x / (a + n as f64);
        sum += term;
        if term < sum * f64::EPSILON {
            break;
        }
    }
    front(a, x) * sum
}

/// Q(a, x) by Lentz's method.
fn fraction(a: f64, x: f64) -> f64 {
    const LEAST: f64 = f64::MIN_POSITIVE;
    let mut b = x + 1.0 - a;
    let (mut c, mut d) = (1.0 / LEAST, 1.0 / b);
    let mut value = d;
    for n in 1..TERMS {
        let n = n as f64;
        let term = n * (a - n);
        b += 2.0;
        let nonzero = |value: f64| if value.abs() < LEAST { LEAST } else { value };
        d = 1.0 / nonzero(term * d + b);
        c = nonzero(b + term / c);
        value *= d * c;
        if (d * c - 1.0).abs() < f64::EPSILON {
            break;
        }
    }
    front(a, x) * value
}

/// The chance of at least that many where `mean` are expected, by Poisson's law.
pub(crate) fn at_least(count: usize, mean: f64) -> f64 {
    if count == 0 { 1.0 } else { lower(count as f64, mean) }
}

/// The exact 95 % bounds of what is expected where that many were seen: at each bound the chance of as many, or as few, is
/// 2.5 % (F. Garwood, Fiducial limits for the Poisson distribution, Biometrika 28, 1936).
pub(crate) fn expected_ci95(seen: usize) -> [f64; 2] {
    const TAIL: f64 = 0.025;
    let count = seen as f64;
    let most = count + 10.0 * (count + 1.0).sqrt() + 10.0;
    let low =
        if seen == 0 { 0.0 } else { root(0.0, count, |mean| at_least(seen, mean) - TAIL).unwrap_or(0.0) };
    let high = root(count, most, |mean| 1.0 - at_least(seen + 1, mean) - TAIL).unwrap_or(most);
    [low, high]
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    #[rstest]
    // Closed forms: P(1, x) = 1 - exp(-x), P(1/2, x) = erf(sqrt x), P(2, x) = 1 - (1 + x) exp(-x).
    #[case(1.0, 0.3, 1.0 - (-0.3_f64).exp())]
    #[case(1.0, 12.0, 1.0 - (-12.0_f64).exp())]
    #[case(0.5, 0.7, libm::erf(0.7_f64.sqrt()))]
    #[case(0.5, 4.0, libm::erf(2.0))]
    #[case(2.0, 0.01, 1.0 - 1.01 * (-0.01_f64).exp())]
    #[case(2.0, 9.0, 1.0 - 10.0 * (-9.0_f64).exp())]
    fn it_is_that_of_the_closed_forms(#[case] a: f64, #[case] x: f64, #[case] expected: f64) {
        let found = lower(a, x);
        assert!((found - expected).abs() < 1e-13, "P({a}, {x}) is {found} and not {expected}");
    }

    /// The printed table of Garwood (1936) as public handbooks of epidemiology repeat it: 95 % limits of a Poisson mean.
    #[rstest]
    #[case(0, 0.0, 3.689)]
    #[case(1, 0.0253, 5.572)]
    #[case(2, 0.242, 7.225)]
    #[case(3, 0.619, 8.767)]
    #[case(5, 1.623, 11.668)]
    #[case(10, 4.795, 18.390)]
    #[case(20, 12.217, 30.888)]
    fn bounds_are_those_of_the_printed_table(#[case] seen: usize, #[case] low: f64, #[case] high: f64) {
        let [found_low, found_high] = expected_ci95(seen);
        assert!(
            (found_low - low).abs() < 6e-4 && (found_high - high).abs() < 6e-4,
            "{seen}: {found_low} {found_high}"
        );
    }

    #[test]
    fn chances_of_exact_counts_add_up_to_that_of_at_least() {
        for mean in [0.2, 3.0, 40.0_f64] {
            for count in [1_usize, 3, 30] {
                let chance = |n: usize| (1..=n).fold((-mean).exp(), |chance, i| chance * mean / i as f64);
                let below: f64 = (0..count).map(chance).sum();
                assert!((at_least(count, mean) - (1.0 - below)).abs() < 1e-12, "{count} of {mean}");
            }
        }
    }
}
