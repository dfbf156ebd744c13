//! The likelihood of Weibull lives, some censored on the right or in an interval and some truncated on the left.
//!
//! With b the shape and s the scale, a hose that was watched from age e to age t adds
//! `failed * (ln b - b ln s + (b - 1) ln t) - ((t/s)^b - (e/s)^b)`, and one that was whole at age a and found failed at age
//! t adds `-((a/s)^b - (e/s)^b) + ln(1 - exp(-((t/s)^b - (a/s)^b)))` (Lawless, Statistical Models and Methods for Lifetime
//! Data, 2003, sections 2.4 and 5.2). All times are taken as logarithms relative to the longest, so that no power overflows.
//!
//! The scale is reckoned with as the rate `y = ln(s^-b)`, relative like the times. At a given shape the likelihood is
//! concave in it, with intervals too; without intervals its summit is known in closed form.

use super::Record;
use crate::root::root;

/// The history, prepared for sums over it.
pub(super) struct Likelihood {
    /// Failures whose age is known.
    pub failures: f64,
    /// Logarithm of the longest time.
    pub ln_longest: f64,
    /// Sum of the log times of these failures.
    ln_failed: f64,
    /// Log times until which each was whole, or failed at a known age, and, where watching began later than new, at entry.
    watched: Vec<(f64, Option<f64>)>,
    /// Log times between which each of the others failed; the first is none where nobody looked since it was new.
    between: Vec<(Option<f64>, f64)>,
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

/// Slopes in the logarithms of shape and scale, of the second order.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Curvature {
    pub shape_shape: f64,
    pub shape_scale: f64,
    pub scale_scale: f64,
}

impl Likelihood {
    pub(super) fn of(records: &[Record]) -> Self {
        // Who was watched for no time says nothing.
        let watched = records.iter().filter(|record| record.time() > record.entered());
        let longest = watched.clone().map(Record::time).fold(f64::MIN_POSITIVE, f64::max);
        let ln_longest = longest.ln();
        let relative = |time: f64| time.ln() - ln_longest;
        let known = || watched.clone().filter(|record| record.failed() && record.after().is_none());
        Self {
            failures: known().count() as f64,
            ln_longest,
            ln_failed: known().map(|record| relative(record.time())).sum(),
            watched: watched
                .clone()
                .map(|record| (record.after().unwrap_or(record.time()), record.entered()))
                .filter(|(whole, entered)| whole > entered)
                .map(|(whole, entered)| (relative(whole), (entered > 0.0).then(|| relative(entered))))
                .collect(),
            between: watched
                .filter_map(|record| Some((record.after()?, record.time())))
                .map(|(after, time)| ((after > 0.0).then(|| relative(after)), relative(time)))
                .collect(),
        }
    }

    /// Whether some failed at an age that nobody knows.
    pub(super) fn has_intervals(&self) -> bool {
        !self.between.is_empty()
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

    /// For each hose that failed in an interval, how much the cumulative hazard grew in it at rate 1, and the slope of that
    /// over the shape.
    fn grown(&self, shape: f64) -> impl Iterator<Item = (f64, f64)> {
        self.between.iter().map(move |&(after, until)| {
            let power = (shape * until).exp();
            match after {
                None => (power, until * power),
                Some(after) => {
                    let grown = -(shape * (after - until)).exp_m1() * power;
                    (grown, until * grown + (until - after) * (shape * after).exp())
                }
            }
        })
    }

    /// The rate at which the history is likeliest at a shape. None where it is the likelier the higher the rate: nothing
    /// was ever seen whole.
    pub(super) fn rate(&self, shape: f64, sums: Sums) -> Option<f64> {
        if self.between.is_empty() {
            return Some((self.failures / sums.zeroth).ln());
        }
        let most = ((self.failures + self.between.len() as f64) / sums.zeroth).ln();
        if !most.is_finite() {
            return None;
        }
        let slope = |rate: f64| self.slope_over_rate(shape, sums, rate);
        let mut low = most - 1.0;
        while slope(low) < 0.0 {
            low -= most - low;
        }
        root(low, most, slope)
    }

    /// Log likelihood.
    pub(super) fn value(&self, shape: f64, sums: Sums, rate: f64) -> f64 {
        let hazard = rate.exp();
        let known = self.failures * (shape.ln() + rate - self.ln_longest) + (shape - 1.0) * self.ln_failed;
        let between = |(grown, _): (f64, f64)| (-(-hazard * grown).exp_m1()).ln();
        known - hazard * sums.zeroth + self.grown(shape).map(between).sum::<f64>()
    }

    /// Slope of the log likelihood over the rate.
    pub(super) fn slope_over_rate(&self, shape: f64, sums: Sums, rate: f64) -> f64 {
        let hazard = rate.exp();
        let between = |(grown, _): (f64, f64)| hazard * grown / (hazard * grown).exp_m1();
        self.failures - hazard * sums.zeroth + self.grown(shape).map(between).sum::<f64>()
    }

    /// Slope over the shape with the rate held.
    fn slope_over_shape(&self, shape: f64, sums: Sums, rate: f64) -> f64 {
        let hazard = rate.exp();
        let between = |(grown, slope): (f64, f64)| hazard * slope / (hazard * grown).exp_m1();
        self.failures / shape + self.ln_failed - hazard * sums.first
            + self.grown(shape).map(between).sum::<f64>()
    }

    /// Slope over the shape with the scale held.
    pub(super) fn slope_at_scale(&self, shape: f64, sums: Sums, rate: f64) -> f64 {
        self.slope_over_shape(shape, sums, rate) + rate / shape * self.slope_over_rate(shape, sums, rate)
    }

    /// Slope of the profile log likelihood over the shape, the rate being the best for each. Without intervals it falls
    /// everywhere: the profile is concave, with truncation too, for `sums.zeroth / shape` is the integral of
    /// `exp(shape x)` over the log spans and the logarithm of such an integral is convex in the shape.
    pub(super) fn profile_slope(&self, shape: f64) -> Option<f64> {
        let sums = self.sums(shape);
        Some(self.slope_over_shape(shape, sums, self.rate(shape, sums)?))
    }

    /// Log likelihood at a shape with the scale that suits it best; minus infinity where none does.
    pub(super) fn profile(&self, shape: f64) -> f64 {
        let sums = self.sums(shape);
        self.rate(shape, sums).map_or(f64::NEG_INFINITY, |rate| self.value(shape, sums, rate))
    }

    /// Logarithm of the scale that a rate stands for.
    pub(super) fn ln_scale(&self, shape: f64, rate: f64) -> f64 {
        self.ln_longest - rate / shape
    }

    /// How the log likelihood bends over the logarithms of shape and scale: the observed information.
    pub(super) fn information(&self, shape: f64, rate: f64) -> Curvature {
        let (sums, hazard, ln_scale) = (self.sums(shape), rate.exp(), -rate / shape);
        // Sums over the hoses of w, x w and x^2 w, with w = (t/s)^b and x = ln w.
        let whole = hazard * sums.zeroth;
        let first = shape * hazard * (sums.first - ln_scale * sums.zeroth);
        let square = sums.second - 2.0 * ln_scale * sums.first + ln_scale * ln_scale * sums.zeroth;
        let second = shape * shape * hazard * square;
        let r = self.failures;
        let known = Curvature {
            shape_shape: first + second - shape * (self.ln_failed - r * ln_scale),
            shape_scale: shape * (r - whole - first),
            scale_scale: shape * shape * whole,
        };
        self.between.iter().fold(known, |sum, &(after, until)| {
            let until = Growth::at(shape, shape * (until - ln_scale));
            let after =
                after.map_or(Growth::default(), |after| Growth::at(shape, shape * (after - ln_scale)));
            sum.plus(until.less(after).information())
        })
    }
}

/// The cumulative hazard at an age, or between two, with its slopes over the logarithms of shape (1) and scale (2).
#[derive(Default, Clone, Copy)]
struct Growth {
    value: f64,
    slopes: [f64; 2],
    bends: Curvature,
}

impl Growth {
    /// At an age whose hazard has the logarithm x.
    fn at(shape: f64, x: f64) -> Self {
        let value = x.exp();
        let bends = Curvature {
            shape_shape: (x + x * x) * value,
            shape_scale: -shape * (1.0 + x) * value,
            scale_scale: shape * shape * value,
        };
        Self { value, slopes: [x * value, -shape * value], bends }
    }

    fn less(self, earlier: Self) -> Self {
        let [shape, scale] = earlier.slopes;
        Self {
            value: self.value - earlier.value,
            slopes: [self.slopes[0] - shape, self.slopes[1] - scale],
            bends: self.bends.plus(earlier.bends.times(-1.0)),
        }
    }

    /// What `ln(1 - exp(-value))` adds to the observed information.
    fn information(self) -> Curvature {
        let slope = 1.0 / self.value.exp_m1();
        let bend = -(slope + slope * slope);
        let [shape, scale] = self.slopes;
        let squares =
            Curvature { shape_shape: shape * shape, shape_scale: shape * scale, scale_scale: scale * scale };
        squares.times(-bend).plus(self.bends.times(-slope))
    }
}

impl Curvature {
    fn plus(self, other: Self) -> Self {
        Self {
            shape_shape: self.shape_shape + other.shape_shape,
            shape_scale: self.shape_scale + other.shape_scale,
            scale_scale: self.scale_scale + other.scale_scale,
        }
    }

    fn times(self, by: f64) -> Self {
        Self {
            shape_shape: self.shape_shape * by,
            shape_scale: self.shape_scale * by,
            scale_scale: self.scale_scale * by,
        }
    }
}
