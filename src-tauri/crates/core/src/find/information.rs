//! What a reading is expected to tell: mutual information of hypothesis and reading, in bits
//! (Lindley 1956, Annals of Mathematical Statistics 27, 986).
//!
//! It is what all readings spread over less what they spread over under each truth. The second part
//! is a property of the truth alone, so that it and the densities are worked out once; a job only
//! adds them up by its own weights.

use super::truth::{Scale, Seen, Truth, slope_density};
use crate::catalogue::Direction;
use std::sync::OnceLock;

/// Truths that hold less than this are left out of the sums: together they change a gain by less
/// than is shown.
const NEGLIGIBLE: f64 = 1e-6;

/// Points of the integral to one standard error. The integrands are smoothed by the error, so the
/// sum converges fast: one point leaves 4e-5 of a gain, two less than 1e-6.
const POINTS_PER_ERROR: f64 = 1.0;

/// How many standard errors, and means of wear, a density reaches before it is lost in the strays.
const REACH: f64 = 6.0;
const WEAR_REACH: f64 = 7.0;

/// Threads between two diameters that a person is asked to read.
const THREADS_APART: f64 = 5.0;

/// What a reading on one scale, with one error, shows under each of some truths.
#[derive(Debug)]
pub(super) struct Outlook {
    scale: Scale,
    /// Standard error of one reading.
    error: f64,
    cells: Cells,
    /// Each truth with what it shows, worked out when it is first asked for.
    truths: Vec<(Truth, OnceLock<Shown>)>,
}

/// What a reading can be: the answers of a discrete scale, or the points of a continuous one.
#[derive(Debug)]
enum Cells {
    Answers(Vec<Seen>),
    Points { first: f64, step: f64, count: usize, error: f64 },
}

/// The chance or density of each reading under one truth: flat but for some cells.
#[derive(Debug)]
struct Shown {
    flat: f64,
    /// The first cell that is not flat, and the values from there on, the flat share included.
    first: usize,
    at: Vec<f64>,
    /// The sum of p ln p over all cells.
    p_ln_p: f64,
}

fn p_ln_p(p: f64) -> f64 {
    if p > 0.0 { p * p.ln() } else { 0.0 }
}

impl Outlook {
    /// Of readings with that standard error, where the scale is continuous.
    pub(super) fn new(scale: &Scale, truths: &[Truth], error: f64) -> Self {
        Self::with(scale, truths, error, POINTS_PER_ERROR)
    }

    fn with(scale: &Scale, truths: &[Truth], error: f64, points_per_error: f64) -> Self {
        // Whole steps from end to end, each read in its middle, so that flat shares add to one.
        let points = |lowest: f64, highest: f64, error: f64| {
            let count = ((highest - lowest) * points_per_error / error).ceil();
            let step = (highest - lowest) / count;
            Cells::Points { first: lowest + 0.5 * step, step, count: count as usize, error }
        };
        let cells = match scale {
            Scale::Gauge { .. } | Scale::Choice(_) => Cells::Answers(scale.answers()),
            Scale::Length { lowest, highest, .. } => points(*lowest, *highest, error),
            // The difference of two readings.
            Scale::Slope { widest, .. } => points(-widest, *widest, error * std::f64::consts::SQRT_2),
        };
        let truths = truths.iter().map(|&truth| (truth, OnceLock::new())).collect();
        Self { scale: scale.clone(), error, cells, truths }
    }

    /// The standard error of the readings.
    pub(super) fn error(&self) -> f64 {
        self.error
    }

    /// Expected gain of a reading, in bits, where each truth holds the weight at its place. Chances
    /// of a truth may add to less than one: what is missing is "can not be read", which tells
    /// nothing.
    pub(super) fn gain(&self, weights: &[f64]) -> f64 {
        let possible: Vec<(f64, &Shown)> = weights
            .iter()
            .zip(&self.truths)
            .filter(|(weight, _)| **weight > NEGLIGIBLE)
            .map(|(weight, (truth, shown))| (*weight, shown.get_or_init(|| self.shown(*truth))))
            .collect();
        let flat: f64 = possible.iter().map(|(weight, shown)| weight * shown.flat).sum();
        let mut any = vec![flat; self.cells.count()];
        for (weight, shown) in &possible {
            for (sum, p) in any.iter_mut().skip(shown.first).zip(&shown.at) {
                *sum += weight * (p - shown.flat);
            }
        }
        // Most cells of a long scale are reached by no truth, and of those one stands for all.
        let of_flat = p_ln_p(flat);
        let of_any: f64 = any.iter().map(|&sum| if sum == flat { of_flat } else { p_ln_p(sum) }).sum();
        let of_each: f64 = possible.iter().map(|(weight, shown)| weight * shown.p_ln_p).sum();
        ((of_each - of_any) * self.cells.width() / std::f64::consts::LN_2).max(0.0)
    }

    fn shown(&self, truth: Truth) -> Shown {
        let (flat, first, at) = match &self.cells {
            Cells::Answers(answers) => {
                (0.0, 0, answers.iter().map(|&answer| self.scale.chance(truth, answer)).collect())
            }
            Cells::Points { first: start, step, count, error } => {
                let stray = self.scale.stray(truth);
                let flat = stray * self.scale.flat();
                let cell = |at: f64| (((at - start) / step).max(0.0) as usize).min(*count);
                let (first, last) = reach(&self.scale, truth, *error)
                    .map_or((0, 0), |(from, to)| (cell(from), cell(to + step)));
                let density = |i: usize| self.density(truth, start + i as f64 * step, *error);
                (flat, first, (first..last).map(|i| flat + (1.0 - stray) * density(i)).collect::<Vec<f64>>())
            }
        };
        let outside = (self.cells.count() - at.len()) as f64;
        let sum = outside * p_ln_p(flat) + at.iter().map(|&p| p_ln_p(p)).sum::<f64>();
        Shown { flat, first, at, p_ln_p: sum }
    }

    /// Density of a truth without its stray share.
    fn density(&self, truth: Truth, value: f64, error: f64) -> f64 {
        match (&self.scale, truth) {
            (Scale::Slope { .. }, Truth::Exactly(slope)) => {
                slope_density(THREADS_APART * slope, value, error)
            }
            (Scale::Slope { .. }, _) => 0.0,
            _ => self.scale.core_density(truth, value, error),
        }
    }
}

impl Cells {
    fn count(&self) -> usize {
        match self {
            Cells::Answers(answers) => answers.len(),
            Cells::Points { count, .. } => *count,
        }
    }

    fn width(&self) -> f64 {
        match self {
            Cells::Answers(_) => 1.0,
            Cells::Points { step, .. } => *step,
        }
    }
}

/// Where a truth's density is more than negligible.
fn reach(scale: &Scale, truth: Truth, error: f64) -> Option<(f64, f64)> {
    let far = REACH * error;
    match truth {
        Truth::Band { min, max, terms } => {
            let furthest = |direction| scale.furthest(terms, direction);
            let (below, above) = (furthest(Direction::Smaller), furthest(Direction::Larger));
            Some((min - far - WEAR_REACH * below, max + far + WEAR_REACH * above))
        }
        Truth::AtMost { max, scale: below } => Some((max - far - REACH * below, max + far)),
        Truth::AtLeast { min, scale: above } => Some((min - far, min + far + REACH * above)),
        // A slope's two places lie either side of zero.
        Truth::Exactly(slope) => {
            let furthest = THREADS_APART * slope.abs();
            Some((-furthest - far, furthest + far))
        }
        Truth::Absent | Truth::Unstated | Truth::OneOf(_) => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::find::truth::{Term, Terms};

    const BANDS: [(f64, f64, f64); 3] = [(12.85, 13.16, 0.5), (13.30, 13.56, 0.3), (14.30, 14.55, 0.2)];
    /// Prior entropy of 0.5, 0.3, 0.2.
    const CEILING: f64 = 1.485_475_297;

    /// A scale on which males read small and females large.
    fn worn(lowest: f64, highest: f64) -> Scale {
        let off = |direction| vec![Term { direction, share: 0.8, mean: 0.1 }];
        let (male, female) = (off(Direction::Smaller), off(Direction::Larger));
        Scale::Length { lowest, highest, outliers: 0.02, male, female }
    }

    fn gain_of_bands(error: f64) -> f64 {
        let scale = Scale::Length {
            lowest: 10.0,
            highest: 18.0,
            outliers: 0.0,
            male: Vec::new(),
            female: Vec::new(),
        };
        let truths = BANDS.map(|(min, max, _)| Truth::Band { min, max, terms: Terms::None });
        Outlook::with(&scale, &truths, error, 2.0).gain(&BANDS.map(|(.., weight)| weight))
    }

    fn entropy(probabilities: &[f64]) -> f64 {
        -probabilities.iter().map(|p| p_ln_p(*p)).sum::<f64>() / std::f64::consts::LN_2
    }

    /// LK-17 and LK-19 (scipy 1.17.1), relative 1e-6.
    #[test]
    fn the_gain_of_a_caliper_reading_is_the_certified_one() {
        for (error, certified) in [(0.02, 1.485_461_761_92), (0.2, 1.062_415_866_1)] {
            let got = gain_of_bands(error);
            assert!(
                (got - certified).abs() / certified < 1e-6,
                "error {error}: {got}, {certified} is certified"
            );
            assert!(got <= CEILING, "no reading tells more than there is to know");
        }
    }

    /// LK-21 (analytic).
    #[test]
    fn the_gain_of_a_gauge_is_the_certified_one() {
        const CHANCES: [&[f64]; 3] = [&[0.95, 0.05, 0.0], &[0.04, 0.92, 0.04], &[0.0, 0.06, 0.94]];
        const WEIGHTS: [f64; 3] = [0.5, 0.3, 0.2];
        let truths = [0, 1, 2].map(|choice| Truth::OneOf(1 << choice));
        let got = Outlook::new(&Scale::Choice(&CHANCES), &truths, 0.1).gain(&WEIGHTS);
        assert!((got - 1.141_068_060_63).abs() < 1e-11, "{got}");
        let answers: Vec<f64> =
            (0..3).map(|j| WEIGHTS.iter().zip(&CHANCES).map(|(p, row)| p * row[j]).sum()).collect();
        let given: f64 = WEIGHTS.iter().zip(&CHANCES).map(|(p, row)| p * entropy(row)).sum();
        assert!((got - (entropy(&answers) - given)).abs() < 1e-12, "H(reading) - E H(reading | class)");
    }

    #[test]
    fn a_reading_that_tells_nothing_apart_gains_nothing() {
        let scale = worn(10.0, 18.0);
        let same = Truth::Band { min: 13.0, max: 13.2, terms: Terms::Male };
        assert!(Outlook::new(&scale, &[same, same], 0.1).gain(&[0.5, 0.5]) < 1e-9);
    }

    proptest::proptest! {
        #[test]
        fn a_gain_lies_between_nothing_and_all_there_is_to_know(
            mins in proptest::collection::vec((11.0..16.0_f64, 0.05..1.0_f64, 0.01..1.0_f64), 2..8),
            error in 0.02..0.8_f64,
        ) {
            let sum: f64 = mins.iter().map(|(_, _, weight)| weight).sum();
            let truths: Vec<Truth> = mins.iter().map(|(min, width, _)| {
                Truth::Band { min: *min, max: min + width, terms: Terms::Female }
            }).collect();
            let weights: Vec<f64> = mins.iter().map(|(.., weight)| weight / sum).collect();
            let scale = worn(5.0, 25.0);
            let got = Outlook::new(&scale, &truths, error).gain(&weights);
            proptest::prop_assert!(got >= 0.0 && got <= entropy(&weights) * 1.001 + 1e-6, "{got}");
        }
    }
}
