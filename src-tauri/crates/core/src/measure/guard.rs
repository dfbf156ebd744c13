//! A tolerance with its guard band: what is read inside it is inside it.
//!
//! Decision rule of JCGM 106:2012, 8.3.2, guarded acceptance with a guard band as wide as the expanded
//! uncertainty (w = U): accepted is what lies between the lower limit plus U and the upper limit less U.

use super::instrument::COVERAGE;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A tolerance and what a measurement leaves of it, in the unit of what is measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tolerance {
    /// Lower limit.
    pub low: f64,
    /// Upper limit.
    pub high: f64,
    /// Expanded uncertainty of a reading.
    pub expanded: f64,
}

/// Where a reading lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Lies {
    /// Inside, whatever the instrument's error.
    Inside,
    /// Inside as read, but so near the lower limit that it may lie outside.
    DoubtfulLow,
    /// Inside as read, but so near the upper limit that it may lie outside.
    DoubtfulHigh,
    /// Below the lower limit.
    Low,
    /// Above the upper limit.
    High,
}

/// What a measurement says of a limit. Ordered: the gravest of several is that of the whole.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS,
)]
#[serde(rename_all = "kebab-case")]
pub enum Judged {
    /// Inside. The only one that may be ticked.
    Pass,
    /// It can not be said.
    Unsettled,
    /// Outside.
    Stop,
}

/// What an instrument is for a tolerance.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Fit {
    /// The tolerance is four times its expanded uncertainty or more.
    Good,
    /// It leaves some room.
    Narrow,
    /// It leaves no room: nothing can be accepted by it.
    TooCoarse,
}

/// The sums of decimals must not decide at an edge.
const EDGE: f64 = 1e-9;

/// How many times the expanded uncertainty a tolerance should be (common practice: four to one).
const GOOD: f64 = 4.0;

impl Tolerance {
    /// What is accepted, low and high; none where the uncertainty leaves no room.
    pub fn accepted(&self) -> Option<(f64, f64)> {
        let (low, high) = (self.low + self.expanded, self.high - self.expanded);
        (low < high - EDGE).then_some((low, high))
    }

    /// Measurement capability index (JCGM 106:2012, 7.6.3): the tolerance over four standard uncertainties,
    /// which is twice the expanded one.
    pub fn capability(&self) -> f64 {
        (self.high - self.low) / (2.0 * self.expanded)
    }

    /// What the instrument is for it.
    pub fn fit(&self) -> Fit {
        match self.accepted() {
            None => Fit::TooCoarse,
            Some(_) if self.capability() + EDGE >= GOOD => Fit::Good,
            Some(_) => Fit::Narrow,
        }
    }

    /// The coarsest standard error, of those that instruments have (1, 2, 5 and their tenths), that is good for it.
    pub fn would_do(&self) -> f64 {
        let most = (self.high - self.low) / (2.0 * COVERAGE * GOOD);
        let decade = 10.0_f64.powf(most.log10().floor());
        let step = [5.0, 2.0].into_iter().find(|step| step * decade <= most + EDGE).unwrap_or(1.0);
        step * decade
    }

    /// Where a reading lies.
    pub fn lies(&self, value: f64) -> Lies {
        if value < self.low - EDGE {
            return Lies::Low;
        }
        if value > self.high + EDGE {
            return Lies::High;
        }
        match self.accepted() {
            Some((low, _)) if value < low - EDGE => Lies::DoubtfulLow,
            Some((_, high)) if value > high + EDGE => Lies::DoubtfulHigh,
            Some(_) => Lies::Inside,
            None if value < (self.low + self.high) / 2.0 => Lies::DoubtfulLow,
            None => Lies::DoubtfulHigh,
        }
    }
}

impl From<Lies> for Judged {
    fn from(lies: Lies) -> Self {
        match lies {
            Lies::Inside => Judged::Pass,
            Lies::DoubtfulLow | Lies::DoubtfulHigh => Judged::Unsettled,
            Lies::Low | Lies::High => Judged::Stop,
        }
    }
}
