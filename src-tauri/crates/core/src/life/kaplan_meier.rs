//! The part still in service, without any law of lives assumed.

use super::Record;
use super::fit::NORMAL_97_5;

/// Kaplan and Meier's product-limit estimate (1958): for each time at which hoses failed, the part that
/// is still in service just after it. A hose counts as at risk from the age at which watching began.
pub fn kaplan_meier(records: &[Record]) -> Vec<[f64; 2]> {
    steps(records).iter().map(|step| [step.time, step.survival]).collect()
}

/// 95 % bounds of [`kaplan_meier`], step by step, each for its own time alone: Greenwood's variance on the scale of
/// ln(-ln S), which keeps them within 0 and 1 (Kalbfleisch and Prentice, The Statistical Analysis of Failure Time
/// Data, 1980). None where nothing is left in service: there the history sets no bound.
pub fn kaplan_meier_ci95(records: &[Record]) -> Vec<Option<[f64; 2]>> {
    steps(records).iter().map(Step::ci95).collect()
}

/// The estimate at a time with failures.
struct Step {
    time: f64,
    survival: f64,
    /// Greenwood's sum: the variance of ln S.
    variance: f64,
}

impl Step {
    fn ci95(&self) -> Option<[f64; 2]> {
        let deviation = self.variance.sqrt() / self.survival.ln().abs();
        let bound = |side: f64| self.survival.powf((side * NORMAL_97_5 * deviation).exp());
        (self.survival > 0.0).then(|| [bound(1.0), bound(-1.0)])
    }
}

fn steps(records: &[Record]) -> Vec<Step> {
    let mut ends: Vec<(f64, bool)> = records.iter().map(|record| (record.time(), record.failed())).collect();
    let mut entries: Vec<f64> = records.iter().map(Record::entered).collect();
    ends.sort_by(|a, b| a.0.total_cmp(&b.0));
    entries.sort_by(f64::total_cmp);

    let (mut survival, mut variance) = (1.0, 0.0);
    let mut steps = Vec::new();
    let (mut ended, mut entered) = (0, 0);
    for at_once in ends.chunk_by(|a, b| a.0 == b.0) {
        let Some(&(time, _)) = at_once.first() else { continue };
        let failed = at_once.iter().filter(|(_, failed)| *failed).count();
        if failed > 0 {
            entered += entries.iter().skip(entered).take_while(|entry| **entry < time).count();
            let at_risk = entered - ended;
            let left = at_risk - failed;
            survival *= left as f64 / at_risk as f64;
            variance += failed as f64 / (at_risk as f64 * left as f64);
            steps.push(Step { time, survival, variance });
        }
        ended += at_once.len();
    }
    steps
}

#[cfg(test)]
mod tests {
    use super::*;

    fn record(time: f64, failed: bool, entered: f64) -> Record {
        Record::new(time, failed, entered).unwrap()
    }

    #[test]
    fn hoses_that_were_taken_off_whole_count_until_then() {
        let steps = kaplan_meier(&[record(1.0, true, 0.0), record(2.0, false, 0.0), record(3.0, true, 0.0)]);
        assert_eq!(steps, [[1.0, 2.0 / 3.0], [3.0, 0.0]]);
    }

    #[test]
    fn a_hose_that_was_entered_old_is_not_at_risk_before() {
        let steps = kaplan_meier(&[record(1.0, true, 0.0), record(3.0, true, 0.0), record(4.0, false, 2.0)]);
        assert_eq!(steps, [[1.0, 0.5], [3.0, 0.25]]);
    }

    #[test]
    fn no_failure_gives_no_step() {
        assert!(kaplan_meier(&[record(5.0, false, 0.0)]).is_empty());
    }

    #[test]
    fn bounds_are_those_of_the_log_log_scale_and_none_where_nothing_is_left() {
        let ten: Vec<Record> = (0..10).map(|i| record(1.0 + f64::from(i), i == 0, 0.0)).collect();
        let bounds = kaplan_meier_ci95(&ten);
        let [Some([low, high])] = bounds.as_slice() else { panic!("one step is expected: {bounds:?}") };
        // One of ten: S 0.9, Greenwood's sum 1/90; worked by hand.
        assert!((low - 0.4730).abs() < 1e-4 && (high - 0.9853).abs() < 1e-4, "{low} {high}");
        assert_eq!(kaplan_meier_ci95(&[record(1.0, true, 0.0)]), [None]);
    }
}
