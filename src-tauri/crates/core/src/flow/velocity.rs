//! How fast the oil runs, and the bore for a speed.

use crate::quantity::{LitresPerMinute, Millimetres};
use std::f64::consts::PI;

/// Mean velocity in m/s of a flow through a round bore.
pub fn velocity(flow: LitresPerMinute, bore: Millimetres) -> f64 {
    let metres_cubed_a_second = flow.get() / 60_000.0;
    let radius = bore.get() / 2000.0;
    metres_cubed_a_second / (PI * radius * radius)
}

/// The smallest bore through which a flow runs no faster than `speed_m_s`.
pub fn bore_for(flow: LitresPerMinute, speed_m_s: f64) -> Millimetres {
    let metres_cubed_a_second = flow.get() / 60_000.0;
    Millimetres(2000.0 * (metres_cubed_a_second / (PI * speed_m_s)).sqrt())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_bore_for_a_speed_runs_at_that_speed() {
        for speed in [0.5, 1.2, 6.0, 15.0] {
            let bore = bore_for(LitresPerMinute(80.0), speed);
            assert!((velocity(LitresPerMinute(80.0), bore) / speed - 1.0).abs() < 1e-14, "{speed} m/s");
        }
    }
}
