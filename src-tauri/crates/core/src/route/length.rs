//! The shortest free length that keeps a radius in every pose.

use super::error::RouteError;
use super::lie::{Changes, lie, radius_mm};
use super::travel::Ends;
use std::f64::consts::PI;

/// Lengths are tried in steps of this part of themselves. A narrower window of good lengths
/// could not be cut to anyhow.
const STEP: f64 = 0.01;

/// The length is found to this part of itself.
const EXACT: f64 = 1e-7;

/// The shortest free length at which the centre line's radius is nowhere below `least_radius_mm`.
///
/// The radius does not simply grow with the length: past a good length a hose may bulge and bend tighter
/// again, so lengths are tried upwards from the first that reaches, and a longer hose than
/// the one found need not do.
pub(super) fn shortest(travel: &[Ends], changes: &Changes, least_radius_mm: f64) -> Result<f64, RouteError> {
    let gap_mm = travel.iter().map(|ends| ends.gap().length()).fold(0.0, f64::max);
    // Long slack hoses bend wide: two full circles of the least radius and the gap twice over are ample.
    let longest_mm = 2.0 * (gap_mm + 4.0 * PI * least_radius_mm);
    let reach_mm = gap_mm * gap_mm / changes.shortest(gap_mm).max(f64::MIN_POSITIVE);
    let keeps = |ends: &Ends, length_mm: f64| {
        lie(ends, length_mm, changes, None).is_ok_and(|lie| radius_mm(&lie.worst) >= least_radius_mm)
    };
    let mut length_mm = reach_mm.max(longest_mm * STEP);
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
        let (mut low, mut high) = (length_mm, length_mm * (1.0 + STEP));
        while !keeps(ends, high) {
            (low, high) = (high, high * (1.0 + STEP));
            if low > longest_mm {
                return Err(RouteError::NoLength { up_to_mm: longest_mm });
            }
        }
        while high - low > EXACT * high {
            let middle = (low + high) / 2.0;
            if keeps(ends, middle) { high = middle } else { low = middle }
        }
        length_mm = high;
    }
    Ok(length_mm)
}
