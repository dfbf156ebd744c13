//! The shortest free length that keeps a radius in every pose.

use super::error::RouteError;
use super::lie::{Changes, radius_mm, under_pressure};
use super::shape::Shape;
use super::travel::Ends;
use std::f64::consts::PI;

/// How finely a length is sought, in parts of itself.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Fineness {
    /// Lengths are tried in such steps; a narrower window of good ones is passed by.
    step: f64,
    /// The length is found to this.
    exact: f64,
}

impl Fineness {
    /// To the last digit. A window of good lengths that is narrower could not be cut to anyhow.
    pub const EXACT: Self = Self { step: 0.01, exact: 1e-7 };

    /// To the millimetre of a usual hose, for lengths that are rounded up and routed again.
    pub const WORKSHOP: Self = Self { step: 0.02, exact: 1e-3 };
}

/// The shortest free length at which the centre line's radius is nowhere below `least_radius_mm`.
///
/// The radius does not simply grow with the length: past a good length a hose may bulge and bend tighter
/// again, so lengths are tried upwards from the first that reaches, and a longer hose than
/// the one found need not do.
pub(super) fn shortest(
    travel: &[Ends],
    changes: &Changes,
    least_radius_mm: f64,
    fineness: Fineness,
) -> Result<f64, RouteError> {
    let Fineness { step, exact } = fineness;
    let gap_mm = travel.iter().map(|ends| ends.gap().length()).fold(0.0, f64::max);
    // Long slack hoses bend wide: two full circles of the least radius and the gap twice over are ample.
    let longest_mm = 2.0 * (gap_mm + 4.0 * PI * least_radius_mm);
    // A curve of that radius turns by no more than its length over the radius.
    let turn = travel.iter().map(|ends| (-ends.b.direction).angle_to(ends.a.direction)).fold(0.0, f64::max);
    let least_mm = gap_mm.max(turn * least_radius_mm * (1.0 - 1e-9));
    if !longest_mm.is_finite() {
        return Err(RouteError::NoLength { up_to_mm: f64::MAX });
    }
    let reach_mm = least_mm * least_mm / changes.shortest(least_mm).max(f64::MIN_POSITIVE);
    let wide = |shape: &Shape| radius_mm(shape) >= least_radius_mm;
    let keeps = |ends: &Ends, length_mm: f64| {
        // Most lengths that are tried bend too tight without any pressure.
        let fitted = ends.span(length_mm).settle().ok().filter(|fitted| wide(&fitted.shape));
        fitted
            .and_then(|fitted| under_pressure(ends, length_mm, changes, fitted).ok())
            .is_some_and(|lie| wide(&lie.worst))
    };
    let mut length_mm = reach_mm.max(longest_mm * step);
    let mut kept = 0;
    for ends in travel.iter().cycle() {
        if kept == travel.len() {
            break;
        }
        if keeps(ends, length_mm) {
            kept += 1;
            continue;
        }
        kept = 1;
        let (mut low, mut high) = (length_mm, length_mm * (1.0 + step));
        while !keeps(ends, high) {
            (low, high) = (high, high * (1.0 + step));
            if low > longest_mm {
                return Err(RouteError::NoLength { up_to_mm: longest_mm });
            }
        }
        while high - low > exact * high {
            let middle = (low + high) / 2.0;
            if keeps(ends, middle) { high = middle } else { low = middle }
        }
        length_mm = high;
    }
    Ok(length_mm)
}
