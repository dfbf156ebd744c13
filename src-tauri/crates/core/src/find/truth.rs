//! What a hypothesis says a reading should be, on what scale it is read, and how likely a reading
//! is then.

use super::likelihood::{self, ln_at_least, ln_at_most, ln_band};
use crate::catalogue::Direction;

/// Share of readings that are given although the part has no such feature: a reading taken of
/// something else, or put into the wrong field. Common practice, no source.
const ABSENT_SHARE: f64 = 0.02;

/// A scale of which more than this strays says nothing against a part.
const OFTEN_STRAY: f64 = 0.1;

/// Share of readings of two diameters that were taken in the other order.
const SWAPPED_SHARE: f64 = 0.1;

/// Counts of threads that are tried where two diameters came without one.
const THREADS_APART: [f64; 3] = [3.0, 5.0, 8.0];

/// This many standard errors out a Gaussian is below 1e-26 of its middle ...
const FAR: f64 = 11.0;

/// ... and so many means out an exponential below 1e-21: both less than the last bit of what strays on a scale of some
/// hundred mm, where one reading of fifty does.
const FAR_WORN: f64 = 50.0;

/// What a hypothesis says about one reading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Truth {
    /// The part has no such feature.
    Absent,
    /// It has, and the tables do not say what it is: a flat density over the scale.
    Unstated,
    /// A dimension between the limits of a new part, and the terms by which its readings leave them.
    Band { min: f64, max: f64, terms: Terms },
    /// Only the largest is given; the density falls off below it over `scale`.
    AtMost { max: f64, scale: f64 },
    /// Only the smallest is given.
    AtLeast { min: f64, scale: f64 },
    /// One leaf of a gauge, or one slope of a taper.
    Exactly(f64),
    /// Any of the choices whose bits are set.
    OneOf(u16),
}

impl Truth {
    /// Least and most of a part as new, where the tables say; twice the one limit, where they say one.
    pub(super) fn limits(self) -> Option<(f64, f64)> {
        match self {
            Truth::Band { min, max, .. } => Some((min, max)),
            Truth::Exactly(value) => Some((value, value)),
            Truth::AtMost { max: limit, .. } | Truth::AtLeast { min: limit, .. } => Some((limit, limit)),
            Truth::Absent | Truth::Unstated | Truth::OneOf(_) => None,
        }
    }
}

/// Which of a scale's sets of terms holds: wear makes a male read small and a female large.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Terms {
    /// None: the limits are broad, and hold every used part as well.
    None,
    /// Those of a male, or of a part without halves.
    Male,
    /// Those of a female.
    Female,
}

/// A share of readings that leaves the band by an exponential amount of that mean.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Term {
    pub(super) direction: Direction,
    pub(super) share: f64,
    pub(super) mean: f64,
}

/// How a reading is taken, and with it how it errs.
#[derive(Debug, Clone)]
pub(super) enum Scale {
    /// By caliper, somewhere between `lowest` and `highest`; the share `outliers` of readings is
    /// anything in that range (burrs, out of round, the wrong place).
    /// `male` and `female` are the terms of either half.
    Length { lowest: f64, highest: f64, outliers: f64, male: Vec<Term>, female: Vec<Term> },
    /// By a gauge with leaves: a Gaussian confusion of neighbours, and a share of lapses.
    Gauge { leaves: Vec<f64>, spread: Spread, lapse: f64 },
    /// By eye, out of a few: the chance of each answer (column) for each truth (row).
    Choice(&'static [&'static [f64]]),
    /// Two diameters some threads apart; the share `outliers` lies anywhere within `widest`.
    Slope { widest: f64, outliers: f64 },
}

/// Width of a gauge's confusion.
#[derive(Debug, Clone, Copy)]
pub(super) enum Spread {
    /// As a share of the leaf's value.
    Relative(f64),
    /// In the unit of the gauge.
    Absolute(f64),
}

impl Spread {
    fn at(self, leaf: f64) -> f64 {
        match self {
            Spread::Relative(share) => share * leaf,
            Spread::Absolute(width) => width,
        }
    }
}

/// A reading as it was taken.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Seen {
    /// A number with its standard error (none by a gauge).
    Value { value: f64, error: f64 },
    /// The choice with that index.
    Choice(usize),
    /// A second diameter less the first, so many threads nearer the body.
    Difference { value: f64, apart: Option<f64>, error: f64 },
}

impl Seen {
    /// Its standard error; none by a gauge or by eye.
    fn error(self) -> f64 {
        match self {
            Seen::Value { error, .. } | Seen::Difference { error, .. } => error,
            Seen::Choice(_) => 0.0,
        }
    }

    /// Threads between two diameters; those that are asked for, where none were counted.
    fn threads_apart(self) -> f64 {
        match self {
            Seen::Difference { apart: Some(threads), .. } => threads,
            _ => THREADS_APART[1],
        }
    }
}

/// Standard errors between two Gaussians whose middles have such odds.
fn of_odds(odds: f64) -> f64 {
    (2.0 * odds.max(1.0).ln()).sqrt()
}

impl Scale {
    /// Logarithm of the likelihood of a reading under a truth.
    pub(super) fn ln_likelihood(&self, truth: Truth, seen: Seen) -> f64 {
        self.likelihood(truth, seen).ln()
    }

    /// The likelihood itself: a density on the continuous scales, a chance on the others.
    fn likelihood(&self, truth: Truth, seen: Seen) -> f64 {
        match (truth, seen) {
            (Truth::Absent, _) => ABSENT_SHARE * self.flat(),
            (Truth::Unstated, _) => self.flat(),
            (_, Seen::Value { value, error }) => match self {
                Scale::Gauge { .. } => self.gauge(truth, value, error),
                _ => self.length(truth, value, error),
            },
            (Truth::OneOf(mask), Seen::Choice(seen)) => self.choice(mask, seen),
            (Truth::Exactly(slope), Seen::Difference { value, apart, error }) => match apart {
                Some(threads) => self.slope(threads * slope, value, error),
                None => {
                    let each = THREADS_APART.iter().map(|threads| self.slope(threads * slope, value, error));
                    each.sum::<f64>() / THREADS_APART.len() as f64
                }
            },
            _ => self.flat(),
        }
    }

    /// The broad density, or the even chance, of a reading about which nothing is known.
    pub(super) fn flat(&self) -> f64 {
        match self {
            Scale::Length { lowest, highest, .. } => 1.0 / (highest - lowest),
            Scale::Gauge { leaves, .. } => 1.0 / leaves.len() as f64,
            Scale::Choice(table) => 1.0 / table.first().map_or(1, |row| row.len()) as f64,
            Scale::Slope { widest, .. } => 0.5 / widest,
        }
    }

    /// The share of a truth's readings that lies anywhere on the scale.
    pub(super) fn stray(&self, truth: Truth) -> f64 {
        match (truth, self) {
            (Truth::Absent, _) => ABSENT_SHARE,
            (Truth::Unstated, _) => 1.0,
            (_, Scale::Length { outliers, .. } | Scale::Slope { outliers, .. }) => *outliers,
            (_, Scale::Gauge { lapse, .. }) => *lapse,
            (_, Scale::Choice(_)) => 0.0,
        }
    }

    /// Whether a reading is sooner a stray than one of that truth.
    pub(super) fn is_stray(&self, truth: Truth, seen: Seen) -> bool {
        let stray = self.stray(truth);
        match truth {
            Truth::Unstated | Truth::OneOf(_) => false,
            Truth::Absent => true,
            _ => stray <= OFTEN_STRAY && self.likelihood(truth, seen) < 2.0 * stray * self.flat(),
        }
    }

    fn length(&self, truth: Truth, value: f64, error: f64) -> f64 {
        let stray = self.stray(truth);
        let strays = stray * self.flat();
        if strays > 0.0 && self.is_far(truth, value, error) {
            return strays;
        }
        strays + (1.0 - stray) * self.core_density(truth, value, error)
    }

    /// Whether a reading lies so far from a band that nothing but strays counts there, to the last bit.
    fn is_far(&self, truth: Truth, value: f64, error: f64) -> bool {
        let Truth::Band { min, max, terms } = truth else { return false };
        let beyond = |over: f64, direction| over > FAR * error + FAR_WORN * self.furthest(terms, direction);
        beyond(min - value, Direction::Smaller) || beyond(value - max, Direction::Larger)
    }

    fn slope(&self, expected: f64, value: f64, error: f64) -> f64 {
        let Scale::Slope { outliers, .. } = self else { return self.flat() };
        outliers * self.flat() + (1.0 - outliers) * slope_density(expected, value, error)
    }

    /// The chance of a leaf. A value between the leaves is taken as a leaf of its own.
    fn gauge(&self, truth: Truth, value: f64, error: f64) -> f64 {
        let (Scale::Gauge { leaves, spread, lapse }, Truth::Exactly(leaf)) = (self, truth) else {
            return self.flat();
        };
        let width = spread.at(leaf).hypot(error);
        let kernel = |read: f64| (-0.5 * ((read - leaf) / width).powi(2)).exp();
        let all: f64 = leaves.iter().map(|&other| kernel(other)).sum();
        lapse * self.flat() + (1.0 - lapse) * kernel(value) / all.max(f64::MIN_POSITIVE)
    }

    /// The chance of an answer: the mean over the choices that may be the truth.
    fn choice(&self, mask: u16, seen: usize) -> f64 {
        let Scale::Choice(table) = self else { return self.flat() };
        let rows = table.iter().enumerate().filter(|(row, _)| mask & (1 << row) != 0);
        let (sum, count) = rows.fold((0.0, 0), |(sum, count), (_, row)| {
            (sum + row.get(seen).copied().unwrap_or_default(), count + 1)
        });
        if count == 0 { self.flat() } else { sum / f64::from(count) }
    }

    /// Density of a length without its stray share.
    pub(super) fn core_density(&self, truth: Truth, value: f64, error: f64) -> f64 {
        match truth {
            Truth::Band { min, max, terms } => self.band(min, max, self.terms(terms), value, error),
            Truth::AtMost { max, scale } => ln_at_most(value, max, scale, error).exp(),
            Truth::AtLeast { min, scale } => ln_at_least(value, min, scale, error).exp(),
            Truth::Exactly(point) => ln_band(value, point, point, error).exp(),
            Truth::Absent | Truth::Unstated | Truth::OneOf(_) => 0.0,
        }
    }

    /// The largest mean of the terms that go that way.
    pub(super) fn furthest(&self, terms: Terms, direction: Direction) -> f64 {
        let those = self.terms(terms).iter().filter(|term| term.direction == direction);
        those.map(|term| term.mean).fold(0.0, f64::max)
    }

    /// The terms of that half.
    fn terms(&self, of: Terms) -> &[Term] {
        match (self, of) {
            (Scale::Length { male, .. }, Terms::Male) => male,
            (Scale::Length { female, .. }, Terms::Female) => female,
            _ => &[],
        }
    }

    fn band(&self, min: f64, max: f64, terms: &[Term], value: f64, error: f64) -> f64 {
        let as_new = 1.0 - terms.iter().map(|term| term.share).sum::<f64>();
        let off = terms.iter().map(|term| {
            let density = match term.direction {
                Direction::Smaller => likelihood::worn(value, min, max, error, term.mean),
                Direction::Larger => likelihood::worn(-value, -max, -min, error, term.mean),
            };
            term.share * density
        });
        as_new * likelihood::band(value, min, max, error) + off.sum::<f64>()
    }

    /// How many standard errors of a reading like this two truths lie apart; nothing where the tables do
    /// not part them. A look parts two by as many as a Gaussian of the same odds.
    pub(super) fn apart(&self, one: Truth, other: Truth, seen: Seen) -> f64 {
        match (self, one, other) {
            (_, Truth::Unstated, _) | (_, _, Truth::Unstated) => 0.0,
            (_, Truth::Absent, Truth::Absent) => 0.0,
            (_, Truth::Absent, _) | (_, _, Truth::Absent) => of_odds(ABSENT_SHARE.recip()),
            (_, Truth::Band { min, max, .. }, Truth::Band { min: least, max: most, .. }) => {
                (least - max).max(min - most).max(0.0) / seen.error()
            }
            (Scale::Gauge { spread, .. }, Truth::Exactly(one), Truth::Exactly(other)) => {
                (one - other).abs() / spread.at(one).hypot(seen.error())
            }
            (Scale::Slope { .. }, Truth::Exactly(one), Truth::Exactly(other)) => {
                (one - other).abs() * seen.threads_apart() / seen.error()
            }
            (Scale::Choice(table), Truth::OneOf(one), Truth::OneOf(other)) => {
                let answers = 0..table.first().map_or(0, |row| row.len());
                let odds = |a: u16, b: u16| {
                    let likeliest =
                        answers.clone().max_by(|x, y| self.choice(a, *x).total_cmp(&self.choice(a, *y)));
                    likeliest.map_or(1.0, |answer| self.choice(a, answer) / self.choice(b, answer))
                };
                of_odds(odds(one, other).min(odds(other, one)))
            }
            _ => 0.0,
        }
    }

    /// Every answer a discrete scale can give; empty for the continuous ones.
    pub(super) fn answers(&self) -> Vec<Seen> {
        match self {
            Scale::Gauge { leaves, .. } => {
                leaves.iter().map(|&value| Seen::Value { value, error: 0.0 }).collect()
            }
            Scale::Choice(table) => (0..table.first().map_or(0, |row| row.len())).map(Seen::Choice).collect(),
            Scale::Length { .. } | Scale::Slope { .. } => Vec::new(),
        }
    }

    /// The chance of one of [`Scale::answers`].
    pub(super) fn chance(&self, truth: Truth, answer: Seen) -> f64 {
        self.likelihood(truth, answer)
    }
}

/// Density of the difference of two diameters without its stray share.
pub(super) fn slope_density(expected: f64, value: f64, error: f64) -> f64 {
    (1.0 - SWAPPED_SHARE) * ln_band(value, expected, expected, error).exp()
        + SWAPPED_SHARE * ln_band(value, -expected, -expected, error).exp()
}

#[cfg(test)]
mod tests {
    use super::*;

    proptest::proptest! {
        /// Near, far, and just where the one becomes the other.
        #[test]
        fn a_far_reading_has_the_density_it_would_have_to_the_last_bit(
            value in 5.0..80.0_f64, near in -1.0..1.0_f64, error in 0.01..0.3_f64, mean in 0.02..0.5_f64, female: bool,
        ) {
            let off = |direction| vec![Term { direction, share: 0.3, mean }];
            let (male, female_terms) = (off(Direction::Smaller), off(Direction::Larger));
            let scale = Scale::Length { lowest: 5.0, highest: 80.0, outliers: 0.02, male, female: female_terms };
            let terms = if female { Terms::Female } else { Terms::Male };
            let truth = Truth::Band { min: 36.0, max: 36.3, terms };
            let edge = FAR * error + FAR_WORN * mean;
            for value in [value, 36.0 - edge + near, 36.3 + edge + near, 36.3 + FAR * error + near] {
                let stray = scale.stray(truth);
                let whole = stray * scale.flat() + (1.0 - stray) * scale.core_density(truth, value, error);
                proptest::prop_assert!((scale.length(truth, value, error) - whole).abs() <= f64::EPSILON * whole);
            }
            let far_end = if female { 80.0 } else { 5.0 };
            proptest::prop_assert!(scale.is_far(truth, far_end, 0.01), "the shortcut is taken");
        }
    }
}
