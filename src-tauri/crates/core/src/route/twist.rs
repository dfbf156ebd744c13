//! The twist that the ports' own turning forces into the hose.

use super::shape::Shape;
use super::travel::Ends;

/// Degrees by which the far end's mark stands clockwise, seen from the near end along the hose,
/// of where the hose carries the near end's mark without twisting.
pub(super) fn mark_angle_deg(ends: &Ends, shape: &Shape) -> f64 {
    let onwards = -ends.b.direction;
    let carried = shape.carried(ends.a.up);
    onwards.dot(carried.cross(ends.b.up)).atan2(carried.dot(ends.b.up)).to_degrees()
}

/// Twist in each pose against the first, from the mark angles. Between neighbouring poses it changes by the
/// smaller turn, so that a travel can twist a hose by more than half a turn.
pub(super) fn twists_deg(mark_angles: &[f64]) -> Vec<f64> {
    let mut before = mark_angles.first().copied().unwrap_or(0.0);
    let mut twist = 0.0;
    let turned = |angle: &f64| {
        twist += (angle - before + 180.0).rem_euclid(360.0) - 180.0;
        before = *angle;
        twist
    };
    mark_angles.iter().map(turned).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn twist_goes_on_past_half_a_turn() {
        let twists = twists_deg(&[170.0, -100.0, -10.0, 80.0, 170.0, 160.0]);
        for (twist, expected) in twists.iter().zip([0.0, 90.0, 180.0, 270.0, 360.0, 350.0]) {
            assert!((twist - expected).abs() < 1e-9, "{twists:?}");
        }
    }
}
