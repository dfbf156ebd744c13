//! Where a function of one number crosses zero.

/// The root of `of` between `low` and `high`, where it must change sign, to the last digits that
/// `f64` has. `None` when it does not change sign there.
///
/// Brent's method: R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 4.
pub(crate) fn root(low: f64, high: f64, of: impl Fn(f64) -> f64) -> Option<f64> {
    let (mut best, mut best_value) = (high, of(high));
    let (mut last, mut last_value) = (low, of(low));
    let opposite = (best_value <= 0.0 && last_value >= 0.0) || (best_value >= 0.0 && last_value <= 0.0);
    if !opposite {
        return None;
    }
    // The root lies between `best` and `other`; `last` is the best before this one.
    let (mut other, mut other_value) = (last, last_value);
    let mut step = best - last;
    let mut step_before = step;
    for _ in 0..200 {
        if other_value.abs() < best_value.abs() {
            (last, best, other) = (best, other, best);
            (last_value, best_value, other_value) = (best_value, other_value, best_value);
        }
        let tolerance = 2.0 * f64::EPSILON * best.abs();
        let half = 0.5 * (other - best);
        if half.abs() <= tolerance || best_value == 0.0 {
            break;
        }
        let interpolated = (step_before.abs() >= tolerance && last_value.abs() > best_value.abs())
            .then(|| interpolate([last, best, other], [last_value, best_value, other_value]))
            .filter(|&by| 2.0 * by.abs() < (3.0 * half).abs().min(step_before.abs()) && by * half > 0.0);
        (step_before, step) = match interpolated {
            Some(by) => (step, by),
            None => (half, half),
        };
        (last, last_value) = (best, best_value);
        best += if step.abs() > tolerance { step } else { tolerance.copysign(half) };
        best_value = of(best);
        if best_value != 0.0 && other_value != 0.0 && (best_value > 0.0) == (other_value > 0.0) {
            (other, other_value) = (last, last_value);
            step = best - last;
            step_before = step;
        }
    }
    Some(best)
}

/// The step from the middle of three points to the zero of the secant or, where all three differ,
/// of the inverse parabola through them.
fn interpolate([last, best, other]: [f64; 3], [f_last, f_best, f_other]: [f64; 3]) -> f64 {
    let s = f_best / f_last;
    let (p, q) = if last == other {
        ((other - best) * s, 1.0 - s)
    } else {
        let (q, r) = (f_last / f_other, f_best / f_other);
        (s * ((other - best) * q * (q - r) - (best - last) * (r - 1.0)), (q - 1.0) * (r - 1.0) * (s - 1.0))
    };
    -p / q
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    #[rstest]
    #[case(0.0, 2.0, |x: f64| x * x - 2.0, 2_f64.sqrt())]
    #[case(0.0, 1.0, |x: f64| x.cos() - x, 0.739_085_133_215_160_6)]
    #[case(-10.0, 4.0, |x: f64| x.exp() - 1e-3, 1e-3_f64.ln())]
    #[case(1.0, 1e9, |x: f64| 1.0 / x - 1e-6, 1e6)]
    #[case(-1.0, 3.0, |x: f64| (x - 1.0).powi(9), 1.0)]
    #[case(3.0, 5.0, |x: f64| x - 3.0, 3.0)]
    fn a_sign_change_is_found(
        #[case] low: f64,
        #[case] high: f64,
        #[case] of: fn(f64) -> f64,
        #[case] expected: f64,
    ) {
        let found = root(low, high, of).unwrap();
        assert!((found - expected).abs() <= 1e-12 * expected.abs().max(1.0), "{found} for {expected}");
        assert!((root(high, low, of).unwrap() - expected).abs() <= 1e-12 * expected.abs().max(1.0));
    }

    #[test]
    fn no_sign_change_is_no_root() {
        assert_eq!(root(0.0, 1.0, |x| x + 1.0), None);
        assert_eq!(root(0.0, 1.0, |_| f64::NAN), None);
    }

    #[test]
    fn few_evaluations_are_enough() {
        let count = std::cell::Cell::new(0);
        let of = |x: f64| {
            count.set(count.get() + 1);
            x.exp() - 5.0
        };
        assert!(root(0.0, 10.0, of).is_some());
        assert!(count.get() < 20, "{} evaluations", count.get());
    }
}
