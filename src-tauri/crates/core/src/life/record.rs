//! One hose's time in service.

use thiserror::Error;

/// How long one hose was watched and how that ended.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Record {
    time: f64,
    failed: bool,
    /// It failed some time after this age; none where the age at failure is known.
    after: Option<f64>,
    entered: f64,
}

/// Why a record can not be.
#[derive(Debug, Clone, Copy, PartialEq, Error)]
pub enum RecordError {
    /// Neither finite nor from nought.
    #[error("time is {0}; it must be a number from 0")]
    Time(f64),
    /// Neither finite nor from nought.
    #[error("entered is {0}; it must be a number from 0")]
    Entered(f64),
    /// Failed at an age of nought.
    #[error("failed at time 0; a hose that failed has a time above 0")]
    FailedAtNought,
    /// The end lies before the beginning.
    #[error(
        "time {time} is not after entered {entered}; time is the age at the end, entered the age at the start"
    )]
    EndedBeforeEntry {
        /// Age at the end.
        time: f64,
        /// Age at the start.
        entered: f64,
    },
    /// The last look before the failure can not be.
    #[error(
        "after is {after}; it is the age at which the hose was last seen whole, from entered {entered} and below time \
         {time}"
    )]
    After {
        /// Age at the last look.
        after: f64,
        /// Age at which it was found failed.
        time: f64,
        /// Age at the start.
        entered: f64,
    },
}

impl Record {
    /// A hose of age `time` (any unit, the same for all), which failed then or is still in service,
    /// and which was watched since age `entered` (0: from new). One that was already old when
    /// watching began would not be known had it failed before: that is its left truncation.
    ///
    /// # Errors
    /// Says which number can not be.
    pub fn new(time: f64, failed: bool, entered: f64) -> Result<Self, RecordError> {
        if !(time.is_finite() && time >= 0.0) {
            return Err(RecordError::Time(time));
        }
        if !(entered.is_finite() && entered >= 0.0) {
            return Err(RecordError::Entered(entered));
        }
        if failed && time == 0.0 {
            return Err(RecordError::FailedAtNought);
        }
        // One still in service may have been entered today; it says nothing yet.
        if time < entered || (failed && time == entered) {
            return Err(RecordError::EndedBeforeEntry { time, entered });
        }
        Ok(Self { time, failed, after: None, entered })
    }

    /// A hose that was found failed at age `time` and was whole when it was last looked at, at age `after`: nobody knows
    /// when in between. 0 is a hose that nobody looked at since it was new.
    ///
    /// # Errors
    /// Says which number can not be.
    pub fn between(after: f64, time: f64, entered: f64) -> Result<Self, RecordError> {
        let known = Self::new(time, true, entered)?;
        if !(after >= entered && after < time) {
            return Err(RecordError::After { after, time, entered });
        }
        Ok(Self { after: Some(after), ..known })
    }

    /// Age at the end.
    pub fn time(&self) -> f64 {
        self.time
    }

    /// Whether it failed; else it is still in service.
    pub fn failed(&self) -> bool {
        self.failed
    }

    /// Age at which it was last seen whole, of a hose that was found failed later.
    pub fn after(&self) -> Option<f64> {
        self.after
    }

    /// Age at which watching began.
    pub fn entered(&self) -> f64 {
        self.entered
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    #[rstest]
    #[case(-1.0, false, 0.0)]
    #[case(f64::NAN, false, 0.0)]
    #[case(f64::INFINITY, true, 0.0)]
    #[case(100.0, true, -5.0)]
    #[case(0.0, true, 0.0)]
    #[case(100.0, false, 200.0)]
    #[case(100.0, true, 100.0)]
    fn a_life_that_can_not_be_is_refused(#[case] time: f64, #[case] failed: bool, #[case] entered: f64) {
        assert!(Record::new(time, failed, entered).is_err());
    }

    #[rstest]
    #[case(100.0, 100.0, 0.0)]
    #[case(50.0, 100.0, 60.0)]
    #[case(f64::NAN, 100.0, 0.0)]
    #[case(-1.0, 100.0, 0.0)]
    fn a_last_look_that_can_not_be_is_refused(#[case] after: f64, #[case] time: f64, #[case] entered: f64) {
        assert!(Record::between(after, time, entered).is_err());
    }

    #[test]
    fn a_hose_fitted_or_entered_today_is_a_record() {
        assert!(Record::new(0.0, false, 0.0).is_ok());
        assert!(Record::new(500.0, false, 500.0).is_ok());
    }
}
