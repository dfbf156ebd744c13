//! What it would take to tell.

use super::Fit;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// How many failures it takes until the shape is known to [`FACTOR`] either way, at 95 %: until then nobody knows whether
/// such hoses wear out.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema, TS)]
pub struct ToTell {
    /// Failures in all.
    pub failures: usize,
    /// Of these still to come; 0: it can be told.
    pub more: usize,
    /// The factor.
    pub factor: f64,
}

/// Known well enough: half as much again either way.
const FACTOR: f64 = 1.5;
/// Failures times the variance of ln(shape) where all failed, for many: 6 / pi squared (Bain and Engelhardt, Statistical
/// Analysis of Reliability and Life-Testing Models, 1991, section 4.3).
const ALL_FAILED: f64 = 6.0 / (std::f64::consts::PI * std::f64::consts::PI);

/// What it would take: by how much this history knows already or, where nothing could be fitted, by how much one knows in
/// which all fail. It goes by the rule that a variance falls as failures come.
pub(super) fn to_tell(fit: Option<&Fit>, failures: usize) -> ToTell {
    let variance = fit.map_or(ALL_FAILED, |fit| fit.covariance.ln_shape * failures as f64);
    let deviations = FACTOR.ln() / super::fit::NORMAL_97_5;
    let needed = (variance / (deviations * deviations)).ceil().max(2.0) as usize;
    ToTell { failures: needed.max(failures), more: needed.saturating_sub(failures), factor: FACTOR }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_takes_fifteen_where_nothing_is_known_yet() {
        // 0.6079 (1.96 / ln 1.5)^2 = 14.2, worked by hand.
        assert_eq!(to_tell(None, 1), ToTell { failures: 15, more: 14, factor: 1.5 });
        assert_eq!(to_tell(None, 20).more, 0);
    }
}
