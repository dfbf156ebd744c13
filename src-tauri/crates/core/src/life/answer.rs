//! The answer for a history.

use super::to_tell::{ToTell, to_tell};
use super::{Fit, Record, fit, kaplan_meier, kaplan_meier_ci95, turnbull};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// How long such hoses last. Times are in the history's unit; an infinite life or bound is none.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Life {
    /// Hoses in the history.
    pub n: usize,
    /// Those that failed.
    pub failures: usize,
    /// Of these, those found failed since nobody knows when.
    pub between: usize,
    /// What it would take to tell whether such hoses wear out.
    pub to_tell: ToTell,
    /// Why shape, scale and what follows from them are none, where they are.
    pub unfitted: Option<Unfitted>,
    /// Weibull shape.
    pub shape: Option<f64>,
    /// What its bounds say of wear.
    pub wear: Wear,
    /// Weibull scale: 63.2 % have failed by it.
    pub scale: Option<f64>,
    /// 95 % bounds of the shape by profile likelihood.
    pub shape_ci95: [Option<f64>; 2],
    /// 95 % bounds of the scale by profile likelihood.
    pub scale_ci95: [Option<f64>; 2],
    /// Log likelihood of the fit.
    pub log_likelihood: Option<f64>,
    /// Time by which one in ten has failed.
    pub b10: Option<f64>,
    /// Its 95 % bounds by the delta method on the log scale.
    pub b10_ci95: [Option<f64>; 2],
    /// Mean life.
    pub mean: Option<f64>,
    /// How the part still in service was reckoned.
    pub survival_by: SurvivalBy,
    /// For each time by which some failed, the part still in service just after it.
    pub survival: Vec<[f64; 2]>,
    /// 95 % bounds of each of them, for that time alone; none where nothing is left in service, and by Turnbull's way, which
    /// gives none.
    pub survival_ci95: Vec<Option<[f64; 2]>>,
    /// The fitted curve with its bounds, up to the longest that any was watched; empty where there is no fit.
    pub fitted: Vec<FittedPoint>,
}

/// Whether the chance to fail rises with age.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Wear {
    /// It rises: both bounds of the shape are above 1.
    WearsOut,
    /// It falls: both are below 1.
    FailsYoung,
    /// The history does not say.
    NotKnown,
}

impl Wear {
    fn of([low, high]: [Option<f64>; 2]) -> Self {
        if low.is_some_and(|low| low > 1.0) {
            Wear::WearsOut
        } else if high.is_some_and(|high| high < 1.0) {
            Wear::FailsYoung
        } else {
            Wear::NotKnown
        }
    }
}

/// How the part still in service was reckoned, without any law of lives.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum SurvivalBy {
    /// Kaplan and Meier: every age at failure is known.
    KaplanMeier,
    /// Turnbull: some were found failed since nobody knows when.
    Turnbull,
}

/// A point of the fitted curve.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema, TS)]
pub struct FittedPoint {
    /// Time.
    pub time: f64,
    /// The part still in service.
    pub survival: f64,
    /// Its 95 % bounds, for that time alone.
    pub ci95: [f64; 2],
}

/// Why there is no Weibull fit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Unfitted {
    /// Fewer than two failures that were certainly at different times.
    TooFewFailures,
    /// The history is the likelier the smaller the shape: every hose was entered old, and they failed
    /// soon after entry.
    NoMaximum,
}

/// Points of the fitted curve.
const POINTS: u32 = 60;

/// How long hoses of this history last: Weibull by maximum likelihood with 95 % bounds, and Kaplan-Meier, or Turnbull where
/// some were found failed since nobody knows when.
pub fn life(records: &[Record]) -> Life {
    life_and_fit(records).0
}

/// [`life`], and the fit that it tells of where there is one.
pub fn life_and_fit(records: &[Record]) -> (Life, Option<Fit>) {
    let fitted = fit(records);
    let (unfitted, fit) = (fitted.err(), fitted.ok());
    let finite = |value: f64| value.is_finite().then_some(value);
    let failures = records.iter().filter(|record| record.failed()).count();
    let between = records.iter().filter(|record| record.after().is_some()).count();
    let (survival_by, survival, survival_ci95) = match between {
        0 => (SurvivalBy::KaplanMeier, kaplan_meier(records), kaplan_meier_ci95(records)),
        _ => {
            let survival = turnbull(records);
            let bounds = vec![None; survival.len()];
            (SurvivalBy::Turnbull, survival, bounds)
        }
    };
    let life = Life {
        n: records.len(),
        failures,
        between,
        to_tell: to_tell(fit.as_ref(), failures),
        unfitted,
        shape: fit.map(|fit| fit.weibull.shape),
        wear: Wear::of(fit.map_or([None; 2], |fit| fit.shape_ci95)),
        scale: fit.and_then(|fit| finite(fit.weibull.scale)),
        shape_ci95: fit.map_or([None; 2], |fit| fit.shape_ci95),
        scale_ci95: fit.map_or([None; 2], |fit| fit.scale_ci95),
        log_likelihood: fit.map(|fit| fit.log_likelihood),
        b10: fit.and_then(|fit| finite(fit.weibull.quantile(0.1))),
        b10_ci95: fit.map_or([None; 2], |fit| fit.quantile_ci95(0.1).map(finite)),
        mean: fit.and_then(|fit| finite(fit.weibull.mean())),
        survival_by,
        survival,
        survival_ci95,
        fitted: fit.map(|fit| fitted_curve(&fit, records)).unwrap_or_default(),
    };
    (life, fit)
}

fn fitted_curve(fit: &Fit, records: &[Record]) -> Vec<FittedPoint> {
    let longest = records.iter().map(Record::time).fold(0.0, f64::max);
    let times = (1..=POINTS).map(|point| longest * f64::from(point) / f64::from(POINTS));
    let point =
        |time: f64| FittedPoint { time, survival: fit.weibull.survival(time), ci95: fit.survival_ci95(time) };
    times.map(point).filter(|point| point.ci95.iter().all(|bound| bound.is_finite())).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    fn record(time: f64, failed: bool, entered: f64) -> Record {
        Record::new(time, failed, entered).unwrap()
    }

    #[rstest]
    #[case::nothing(&[])]
    #[case::none_failed(&[(900.0, false), (800.0, false)])]
    #[case::one_failed(&[(900.0, true), (1800.0, false)])]
    #[case::all_at_once(&[(900.0, true), (900.0, true), (900.0, true)])]
    fn too_few_failures_give_no_made_up_fit(#[case] history: &[(f64, bool)]) {
        let records: Vec<Record> = history.iter().map(|&(time, failed)| record(time, failed, 0.0)).collect();
        let answer = life(&records);
        assert_eq!(answer.unfitted, Some(Unfitted::TooFewFailures));
        assert_eq!((answer.shape, answer.scale, answer.b10, answer.mean), (None, None, None, None));
        assert_eq!(answer.n, history.len());
    }

    #[test]
    fn hoses_entered_old_that_fail_at_once_set_no_shape() {
        let records: Vec<Record> = (0..20)
            .map(|i| record(1000.0 + f64::from(i), i < 10, 100.0 + f64::from(i)))
            .chain((0..20).map(|i| record(101.0 + f64::from(i), true, 100.0 + f64::from(i))))
            .collect();
        assert_eq!(life(&records).unfitted, Some(Unfitted::NoMaximum));
    }

    #[test]
    fn two_failures_at_different_times_are_enough() {
        let answer = life(&[record(900.0, true, 0.0), record(1800.0, true, 0.0), record(1000.0, false, 0.0)]);
        assert_eq!((answer.n, answer.failures, answer.unfitted), (3, 2, None));
        let [Some(low), Some(high)] = answer.shape_ci95 else { panic!("bounds: {:?}", answer.shape_ci95) };
        assert!(low < answer.shape.unwrap() && answer.shape.unwrap() < high);
    }

    #[test]
    fn hoses_that_may_all_have_failed_at_one_age_set_no_shape() {
        let between = |after, time| Record::between(after, time, 0.0).unwrap();
        let answer = life(&[between(1.0, 4.0), between(2.0, 5.0), record(6.0, false, 0.0)]);
        assert_eq!((answer.unfitted, answer.between), (Some(Unfitted::TooFewFailures), 2));
        let apart = life(&[between(1.0, 2.0), between(3.0, 5.0), record(6.0, false, 0.0)]);
        assert_eq!((apart.unfitted, apart.survival_by), (None, SurvivalBy::Turnbull));
        assert!(apart.shape_ci95[0].unwrap() < apart.shape.unwrap());
    }

    #[test]
    fn a_hose_watched_for_no_time_changes_nothing_but_the_count() {
        let mut records =
            vec![record(900.0, true, 0.0), record(1800.0, true, 0.0), record(1000.0, false, 200.0)];
        let before = life(&records);
        records.extend([record(0.0, false, 0.0), record(5000.0, false, 5000.0)]);
        assert_eq!(life(&records), Life { n: 5, fitted: life(&records).fitted, ..before });
    }
}
