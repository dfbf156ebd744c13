//! The answer for a history.

use super::{Record, fit, kaplan_meier, kaplan_meier_ci95};
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
    /// Why shape, scale and what follows from them are none, where they are.
    pub unfitted: Option<Unfitted>,
    /// Weibull shape.
    pub shape: Option<f64>,
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
    /// Kaplan and Meier: for each time with a failure, the part still in service just after it.
    pub survival: Vec<[f64; 2]>,
    /// 95 % bounds of each of them, for that time alone; none where nothing is left in service.
    pub survival_ci95: Vec<Option<[f64; 2]>>,
}

/// Why there is no Weibull fit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Unfitted {
    /// Fewer than two failures at different times.
    TooFewFailures,
    /// The history is the likelier the smaller the shape: every hose was entered old, and they failed
    /// soon after entry.
    NoMaximum,
}

/// How long hoses of this history last: Weibull by maximum likelihood with 95 % bounds, and Kaplan-Meier.
pub fn life(records: &[Record]) -> Life {
    let fitted = fit(records);
    let (unfitted, fit) = (fitted.err(), fitted.ok());
    let finite = |value: f64| value.is_finite().then_some(value);
    Life {
        n: records.len(),
        failures: records.iter().filter(|record| record.failed()).count(),
        unfitted,
        shape: fit.map(|fit| fit.weibull.shape),
        scale: fit.and_then(|fit| finite(fit.weibull.scale)),
        shape_ci95: fit.map_or([None; 2], |fit| fit.shape_ci95),
        scale_ci95: fit.map_or([None; 2], |fit| fit.scale_ci95),
        log_likelihood: fit.map(|fit| fit.log_likelihood),
        b10: fit.and_then(|fit| finite(fit.weibull.quantile(0.1))),
        b10_ci95: fit.map_or([None; 2], |fit| fit.quantile_ci95(0.1).map(finite)),
        mean: fit.and_then(|fit| finite(fit.weibull.mean())),
        survival: kaplan_meier(records),
        survival_ci95: kaplan_meier_ci95(records),
    }
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
    fn a_hose_watched_for_no_time_changes_nothing_but_the_count() {
        let mut records =
            vec![record(900.0, true, 0.0), record(1800.0, true, 0.0), record(1000.0, false, 200.0)];
        let before = life(&records);
        records.extend([record(0.0, false, 0.0), record(5000.0, false, 5000.0)]);
        assert_eq!(life(&records), Life { n: 5, ..before });
    }
}
