//! The part still in service, without any law of lives assumed.

use super::Record;

/// Kaplan and Meier's product-limit estimate (1958): for each time at which hoses failed, the part that
/// is still in service just after it. A hose counts as at risk from the age at which watching began.
pub fn kaplan_meier(records: &[Record]) -> Vec<[f64; 2]> {
    let mut ends: Vec<(f64, bool)> = records.iter().map(|record| (record.time(), record.failed())).collect();
    let mut entries: Vec<f64> = records.iter().map(Record::entered).collect();
    ends.sort_by(|a, b| a.0.total_cmp(&b.0));
    entries.sort_by(f64::total_cmp);

    let mut survival = 1.0;
    let mut steps = Vec::new();
    let (mut ended, mut entered) = (0, 0);
    for at_once in ends.chunk_by(|a, b| a.0 == b.0) {
        let Some(&(time, _)) = at_once.first() else { continue };
        let failed = at_once.iter().filter(|(_, failed)| *failed).count();
        if failed > 0 {
            entered += entries.iter().skip(entered).take_while(|entry| **entry < time).count();
            let at_risk = entered - ended;
            survival *= (at_risk - failed) as f64 / at_risk as f64;
            steps.push([time, survival]);
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
}
