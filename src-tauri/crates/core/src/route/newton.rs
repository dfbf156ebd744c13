//! From a start to a shape of least energy: damped Newton steps.

use super::chain::{Chain, Clamps, Stepper};
use super::mesh::Mesh;

/// Steps after which a start is given up. Good starts take 5 to 20.
const MOST_STEPS: usize = 60;

/// No tangent turns further than this in one step (radians).
const LARGEST_TURN: f64 = 0.7;

/// Least shift of the energy's curvature, of which bending alone has ten. Where a shape can roll about the
/// chord for nothing the curvature is nil that way, and without it rounding would roll the shape at each step.
const LEAST_SHIFT: f64 = 1e-6;

/// Above this shift nothing is left of the step.
const GREATEST_SHIFT: f64 = 1e16;

/// Follows `chain` downhill, closed at every step, until its unbalanced load over what is usual is
/// below `tolerance`. None when that does not come about.
pub(super) fn settle(
    stepper: &mut Stepper,
    mesh: &Mesh,
    clamps: &Clamps,
    mut chain: Chain,
    tolerance: f64,
) -> Option<Chain> {
    let mut damping = 0.0_f64;
    chain = chain.closed(mesh, clamps)?;
    for _ in 0..MOST_STEPS {
        let load = chain.unbalanced(mesh);
        if load < tolerance * (10.0 + chain.force.length()) {
            return Some(chain);
        }
        // A shift that goes to nothing with the load keeps the last steps quadratic even where the
        // least energy is not at one shape alone.
        let mut shift = damping.max(LEAST_SHIFT + 0.01 * load.min(100.0));
        let step = loop {
            match stepper.step(&chain, mesh, clamps, shift) {
                Some(step) => break step,
                None if shift > GREATEST_SHIFT => return None,
                None => shift *= 10.0,
            }
            damping = shift;
        };
        damping /= 10.0;
        let (energy, descent) = (chain.energy(mesh), chain.slope(mesh, &step.turns));
        // Close to the goal rounding hides the descent, and full steps are right.
        let near = step.largest < 1e-4;
        let mut along = (LARGEST_TURN / step.largest).min(1.0);
        chain = loop {
            match chain.moved(&step, along).closed(mesh, clamps) {
                Some(moved) if near || moved.energy(mesh) <= energy + 1e-4 * along * descent => break moved,
                _ if along < 1e-4 => return None,
                _ => along /= 2.0,
            }
        };
    }
    None
}
