//! The likelihood of Weibull lives, some censored on the right and some truncated on the left.
//!
//! With b the shape and s the scale, a hose that was watched from age e to age t adds
//! `failed * (ln b - b ln s + (b - 1) ln t) - ((t/s)^b - (e/s)^b)` (Lawless, Statistical Models and Methods for Lifetime
//! Data, 2003, section 5.2). All times are taken as logarithms relative to the longest, so that no power overflows.

use super::Record;

/// The history, prepared for sums over it.
pub(super) struct Likelihood {
    /// Number of failures.
    pub failures: f64,
    /// Logarithm of the longest time.
    pub ln_longest: f64,
    /// Sum of the failures' log times.
    ln_failed: f64,
    /// Log times at the end and, where watching began later than new, at entry.
    watched: Vec<(f64, Option<f64>)>,
}

/// Sums over the hoses of `u^k exp(b u) - v^k exp(b v)`, u the log time at the end, v at entry.
#[derive(Default, Clone, Copy)]
pub(super) struct Sums {
    /// k = 0.
    pub zeroth: f64,
    /// k = 1.
    pub first: f64,
    /// k = 2.
    pub second: f64,
}

impl Likelihood {
    pub(super) fn of(records: &[Record]) -> Self {
        // Who was watched for no time says nothing.
        let watched = records.iter().filter(|record| record.time() > record.entered());
        let longest = watched.clone().map(Record::time).fold(f64::MIN_POSITIVE, f64::max);
        let ln_longest = longest.ln();
        let relative = |time: f64| time.ln() - ln_longest;
        let failed = || watched.clone().filter(|record| record.failed());
        Self {
            failures: failed().count() as f64,
            ln_longest,
            ln_failed: failed().map(|record| relative(record.time())).sum(),
            watched: watched
                .clone()
                .map(|record| {
                    let entry = (record.entered() > 0.0).then(|| relative(record.entered()));
                    (relative(record.time()), entry)
                })
                .collect(),
        }
    }

    /// The sums at a shape.
    pub(super) fn sums(&self, shape: f64) -> Sums {
        self.watched.iter().fold(Sums::default(), |sums, &(end, entry)| {
            let power = (shape * end).exp();
            let Some(entry) = entry else {
                return Sums {
                    zeroth: sums.zeroth + power,
                    first: sums.first + end * power,
                    second: sums.second + end * end * power,
                };
            };
            // Differences of powers by `exp_m1`, so that short spans keep their digits.
            let between = -(shape * (entry - end)).exp_m1() * power;
            let at_entry = (shape * entry).exp();
            Sums {
                zeroth: sums.zeroth + between,
                first: sums.first + end * between + (end - entry) * at_entry,
                second: sums.second + end * end * between + (end * end - entry * entry) * at_entry,
            }
        })
    }

    /// Slope of the profile log likelihood over the shape. It falls everywhere: the profile is concave,
    /// with truncation too, for `sums.zeroth / shape` is the integral of `exp(shape x)` over the log spans and
    /// the logarithm of such an integral is convex in the shape.
    pub(super) fn profile_slope(&self, shape: f64) -> f64 {
        let sums = self.sums(shape);
        self.ln_failed - self.failures * (sums.first / sums.zeroth - 1.0 / shape)
    }

    /// Log likelihood at a shape with the scale that suits it best.
    pub(super) fn profile(&self, shape: f64) -> f64 {
        self.profile_with(shape, self.sums(shape))
    }

    /// [`Self::profile`] where the sums are at hand.
    pub(super) fn profile_with(&self, shape: f64, sums: Sums) -> f64 {
        let r = self.failures;
        r * (shape.ln() - (sums.zeroth / r).ln() - 1.0 - self.ln_longest) + (shape - 1.0) * self.ln_failed
    }

    /// Logarithm, relative to the longest time, of the scale at which the expected failures are `times` those seen;
    /// the best scale for the shape at `times` = 1.
    pub(super) fn ln_scale(&self, shape: f64, sums: Sums, times: f64) -> f64 {
        (sums.zeroth / (self.failures * times)).ln() / shape
    }

    /// Slope of the log likelihood over the shape with the scale of [`Self::ln_scale`] held.
    pub(super) fn slope_at_scale(&self, shape: f64, sums: Sums, times: f64) -> f64 {
        let ln_scale = self.ln_scale(shape, sums, times);
        let expected = times * self.failures * (sums.first / sums.zeroth - ln_scale);
        self.failures * (1.0 / shape - ln_scale) + self.ln_failed - expected
    }
}
