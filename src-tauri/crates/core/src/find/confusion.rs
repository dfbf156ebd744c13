//! How readings by eye and by gauge go wrong: the chance of each answer for each truth. Basis of
//! every figure: common practice, no source; a technician's own record of mistakes would be better.

use super::truth::{Scale, Spread};

/// Male or female: (row) what it is, (column) what is said.
pub(super) const GENDER: Scale = Scale::Choice(&[&[0.995, 0.005], &[0.005, 0.995]]);

/// What an end is at a glance, in the order of [`crate::catalogue::EndKind`]. A stud without its ring
/// looks like any male thread, a nut that rust holds like a socket, a test point like a small coupling.
pub(super) const KIND: Scale = Scale::Choice(&[
    // male, nut, stud, socket, banjo, tube, flange, coupling, staple, test-point
    &[0.930, 0.004, 0.050, 0.002, 0.001, 0.004, 0.001, 0.004, 0.002, 0.002],
    &[0.004, 0.955, 0.002, 0.020, 0.001, 0.004, 0.002, 0.008, 0.002, 0.002],
    &[0.080, 0.002, 0.900, 0.004, 0.004, 0.002, 0.001, 0.003, 0.002, 0.002],
    &[0.004, 0.030, 0.004, 0.950, 0.002, 0.002, 0.002, 0.003, 0.002, 0.001],
    &[0.002, 0.002, 0.006, 0.004, 0.980, 0.001, 0.002, 0.001, 0.001, 0.001],
    &[0.006, 0.004, 0.002, 0.002, 0.001, 0.970, 0.003, 0.005, 0.006, 0.001],
    &[0.001, 0.002, 0.001, 0.002, 0.001, 0.004, 0.985, 0.002, 0.001, 0.001],
    &[0.010, 0.020, 0.004, 0.006, 0.001, 0.004, 0.002, 0.930, 0.003, 0.020],
    &[0.004, 0.004, 0.006, 0.004, 0.001, 0.020, 0.002, 0.007, 0.950, 0.002],
    &[0.030, 0.030, 0.010, 0.005, 0.001, 0.002, 0.001, 0.060, 0.001, 0.860],
]);

/// Chamfered or flat, in the order of [`crate::catalogue::Shoulder`]: a worn edge looks like a chamfer,
/// and a profile ring in a collar like an O-ring behind the thread.
pub(super) const SHOULDER: Scale = Scale::Choice(&[&[0.95, 0.05], &[0.07, 0.93]]);

/// Parallel or taper, told by jaws laid flat: short worn threads mislead.
pub(super) const TAPER: Scale = Scale::Choice(&[&[0.95, 0.05], &[0.07, 0.93]]);

/// Convex, concave or flat, in the order of [`super::SeatShape`]: a short cone looks flat, and the mouth of a tube
/// or a chamfer hollow.
pub(super) const CONE: Scale =
    Scale::Choice(&[&[0.96, 0.03, 0.01], &[0.03, 0.95, 0.02], &[0.01, 0.04, 0.95]]);

/// What seals, in the order of [`crate::catalogue::Seal`]. An O-ring that fell out of a cone leaves
/// a cone (and the male half of a 24 degree end never had one); washers are taken for gaskets; a
/// male pipe thread often has a chamfer that looks like a seat.
pub(super) const SEAL: Scale = Scale::Choice(&[
    // cone, o-ring-face, o-ring-shoulder, o-ring-cone, bonded-washer, thread, inverted-flare, flat-gasket
    &[0.86, 0.01, 0.01, 0.06, 0.01, 0.01, 0.03, 0.01],
    &[0.01, 0.90, 0.03, 0.01, 0.01, 0.01, 0.01, 0.02],
    &[0.01, 0.02, 0.86, 0.01, 0.06, 0.02, 0.01, 0.01],
    &[0.38, 0.02, 0.02, 0.54, 0.01, 0.01, 0.01, 0.01],
    &[0.03, 0.02, 0.08, 0.01, 0.68, 0.03, 0.01, 0.14],
    &[0.08, 0.01, 0.02, 0.01, 0.02, 0.84, 0.01, 0.01],
    &[0.10, 0.01, 0.01, 0.01, 0.01, 0.02, 0.83, 0.01],
    &[0.03, 0.06, 0.02, 0.01, 0.17, 0.02, 0.01, 0.68],
]);

/// What carries the pressure, in the order of [`crate::catalogue::Reinforcement`]: two spirals can
/// look like a braid, textile round plastic like textile in rubber.
pub(super) const REINFORCEMENT: Scale = Scale::Choice(&[
    // wire-braid, wire-spiral, textile-braid, thermoplastic-textile, ptfe-steel-braid, suction-helix
    &[0.950, 0.030, 0.005, 0.005, 0.005, 0.005],
    &[0.040, 0.940, 0.005, 0.005, 0.005, 0.005],
    &[0.005, 0.005, 0.880, 0.080, 0.005, 0.025],
    &[0.005, 0.005, 0.120, 0.860, 0.005, 0.005],
    &[0.030, 0.005, 0.005, 0.005, 0.950, 0.005],
    &[0.020, 0.010, 0.040, 0.005, 0.005, 0.920],
]);

/// Layers counted, one to six: a layer is missed or counted twice.
pub(super) const LAYERS: Scale = Scale::Choice(&[
    &[0.950, 0.045, 0.002, 0.001, 0.001, 0.001],
    &[0.040, 0.925, 0.032, 0.001, 0.001, 0.001],
    &[0.003, 0.060, 0.890, 0.045, 0.001, 0.001],
    &[0.001, 0.030, 0.040, 0.900, 0.015, 0.014],
    &[0.001, 0.002, 0.010, 0.060, 0.867, 0.060],
    &[0.001, 0.001, 0.002, 0.050, 0.060, 0.886],
]);

/// How often a cover of each kind (rubber; thermoplastic) is plain, non-conductive,
/// flame-resistant, antistatic. Thermoplastic hose is the usual non-conductive one, and then orange
/// (SAE J517).
pub(super) const COVER: Scale = Scale::Choice(&[&[0.88, 0.02, 0.06, 0.04], &[0.70, 0.27, 0.01, 0.02]]);

/// Pitch by a leaf gauge. Neighbours of 6 % (1.5 mm and 16 or 17 threads an inch) are taken for
/// each other now and then, those of 2 % (1.25 mm and 20 threads) almost at will.
pub(super) fn pitch(leaves: Vec<f64>) -> Scale {
    Scale::Gauge { leaves, spread: Spread::Relative(0.02), lapse: 0.005 }
}

/// Seat by an angle gauge: the seats of the trade lie 14 degrees and more apart, and 42 degree seats
/// (84 included) are gauged as 45.
pub(super) fn seat(leaves: Vec<f64>) -> Scale {
    Scale::Gauge { leaves, spread: Spread::Absolute(3.5), lapse: 0.002 }
}

/// Flanks by the profile of a gauge's leaf: 55 and 60 degrees are hard to tell.
pub(super) fn flank(leaves: Vec<f64>) -> Scale {
    Scale::Gauge { leaves, spread: Spread::Absolute(2.6), lapse: 0.02 }
}
