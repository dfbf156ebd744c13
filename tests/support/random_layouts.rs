//! Random layouts put through the rod, each shape checked by a routine of its own: the rod's differential equation,
//! integrated piece by piece from what the shape says of its force and moment.

use crate::simulated::random::Random;
use hosewright_core::route::{Rod, RodNode, Shapeless, Span, Vector};

/// Steps of the integration in each piece between two places of the shape, and more for each unit of its stiffness.
const STEPS: f64 = 8.0;

/// A piece stiffer than this (its length times the root of the force) is no initial value problem: a miss at its
/// beginning grows by e to that power. It is checked by what the equation says of it as a whole.
const STIFF: f64 = 3.0;

/// What is asked of a shape: its clamps, every piece of its course and its own residual are true to this part of
/// its length and of its greatest moment.
pub const TRUE_TO: f64 = 1e-3;

/// What became of many random layouts.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Outcome {
    /// Layouts tried.
    pub layouts: usize,
    /// With a shape that is true.
    pub shapes: usize,
    /// Whose hose is too short, and was said to be.
    pub too_short: usize,
    /// Without a shape though the hose is long enough, or with one that is not true; by their number.
    pub wrong: Vec<usize>,
    /// Greatest residual that a shape says of itself.
    pub worst_residual: f64,
    /// Greatest defect that the integration finds.
    pub worst_defect: f64,
}

/// Puts so many layouts through the rod, the same ones for the same seed.
pub fn outcome(layouts: usize, seed: u64) -> Outcome {
    let mut random = Random(seed);
    let mut outcome = Outcome { layouts, ..Outcome::default() };
    for number in 0..layouts {
        let span = span(&mut random);
        let reaches = span.length_mm > span.gap_mm.length();
        match span.settle() {
            Ok(settled) if reaches => {
                let residual = settled.shape.residual();
                let defect = defect(&span, &settled.shape.rod());
                outcome.worst_residual = outcome.worst_residual.max(residual);
                outcome.worst_defect = outcome.worst_defect.max(defect);
                if residual < TRUE_TO && defect < TRUE_TO {
                    outcome.shapes += 1;
                } else {
                    outcome.wrong.push(number);
                }
            }
            Err(Shapeless::TooShort) if !reaches => outcome.too_short += 1,
            _ => outcome.wrong.push(number),
        }
    }
    outcome
}

/// Any two directions 100 to 500 mm apart; every tenth hose is too short, the others have 0.1 % of slack to three
/// times the gap, evenly by its logarithm.
fn span(random: &mut Random) -> Span {
    let gap = random.between(100.0, 500.0);
    let gap_mm = direction(random) * gap;
    let slack = if random.chance(0.1) {
        -random.between(0.001, 0.5)
    } else {
        random.between(0.001_f64.ln(), 3.0_f64.ln()).exp()
    };
    Span { gap_mm, start: direction(random), end: direction(random), length_mm: gap * (1.0 + slack) }
}

fn direction(random: &mut Random) -> Vector {
    loop {
        let vector = Vector([0; 3].map(|_| random.between(-1.0, 1.0)));
        if (0.1..1.0).contains(&vector.length()) {
            return vector * (1.0 / vector.length());
        }
    }
}

/// The state of a rod of unit length and stiffness: where it is, its tangent, its bending moment.
#[derive(Clone, Copy)]
struct State {
    place: Vector,
    tangent: Vector,
    moment: Vector,
}

impl State {
    /// r' = t, t' = m x t, m' = n x t for the force n at the near end (Love, Treatise on the Mathematical Theory of
    /// Elasticity, 4th ed., art. 253-262: equilibrium of a thin rod, here without torsion or load).
    fn slope(&self, force: Vector) -> Self {
        Self {
            place: self.tangent,
            tangent: self.moment.cross(self.tangent),
            moment: force.cross(self.tangent),
        }
    }

    fn plus(&self, slope: &Self, step: f64) -> Self {
        Self {
            place: self.place + slope.place * step,
            tangent: self.tangent + slope.tangent * step,
            moment: self.moment + slope.moment * step,
        }
    }

    /// One step of the classical fourth-order Runge-Kutta method.
    fn stepped(&self, force: Vector, step: f64) -> Self {
        let a = self.slope(force);
        let b = self.plus(&a, step / 2.0).slope(force);
        let c = self.plus(&b, step / 2.0).slope(force);
        let d = self.plus(&c, step).slope(force);
        self.plus(&a, step / 6.0).plus(&b, step / 3.0).plus(&c, step / 3.0).plus(&d, step / 6.0)
    }
}

/// The greatest of what a rod misses: its clamps, and the next place, tangent and moment of each piece when the
/// equation is integrated from the one before. Moments count against the greatest.
pub fn defect(span: &Span, rod: &Rod) -> f64 {
    let length = |vector: Vector| vector.length();
    let (Some(first), Some(last)) = (rod.nodes.first(), rod.nodes.last()) else { return f64::INFINITY };
    let clamps = [
        length(first.place),
        length(first.tangent - span.start),
        length(last.place - span.gap_mm * (1.0 / span.length_mm)),
        length(last.tangent - span.end),
    ];
    // The moment about the near end is the same all along: m + r x n.
    let moment = |place: Vector| rod.moment - place.cross(rod.force);
    let greatest = rod.nodes.iter().map(|node| length(moment(node.place))).fold(1e-7, f64::max);
    let pull = length(rod.force).sqrt();
    let pieces = rod.nodes.windows(2).map(|pair| {
        let along = pair[1].at - pair[0].at;
        if pull * along > STIFF {
            return turn_missed(&pair[0], &pair[1], rod);
        }
        let steps = (STEPS * (1.0 + pull * along)).ceil();
        let from = State { place: pair[0].place, tangent: pair[0].tangent, moment: moment(pair[0].place) };
        let to = (0..steps as usize).fold(from, |state, _| state.stepped(rod.force, along / steps));
        let missed = length(to.moment - moment(pair[1].place)) / greatest;
        length(to.place - pair[1].place).max(length(to.tangent - pair[1].tangent)).max(missed)
    });
    clamps.into_iter().chain(pieces).fold(0.0, f64::max)
}

/// How much a piece's tangent turns otherwise than t' = m x t says, and its place moves otherwise than its tangents
/// say: integrals over the cubic through both ends, by Simpson's rule.
fn turn_missed(from: &RodNode, to: &RodNode, rod: &Rod) -> f64 {
    let along = to.at - from.at;
    let slope = |place: Vector, tangent: Vector| (rod.moment - place.cross(rod.force)).cross(tangent);
    let middle = (from.place + to.place) * 0.5 + (from.tangent - to.tangent) * (along / 8.0);
    let heading = (from.tangent + to.tangent) * 0.5;
    let turned = slope(from.place, from.tangent) + slope(middle, heading) * 4.0 + slope(to.place, to.tangent);
    let moved = (from.tangent + heading * 4.0 + to.tangent) * (along / 6.0);
    let turn = to.tangent - from.tangent - turned * (along / 6.0);
    turn.length().max((to.place - from.place - moved).length())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn half_circle() -> Span {
        Span {
            gap_mm: Vector([0.0, 200.0, 0.0]),
            start: Vector([1.0, 0.0, 0.0]),
            end: Vector([-1.0, 0.0, 0.0]),
            length_mm: 100.0 * std::f64::consts::PI,
        }
    }

    #[test]
    fn the_check_sees_a_shape_that_is_bent_out_of_true() {
        let span = half_circle();
        let rod = span.settle().unwrap().shape.rod();
        assert!(defect(&span, &rod) < 1e-8, "{}", defect(&span, &rod));
        let mut off = rod.clone();
        off.nodes[40].place += Vector([0.0, 0.0, 1e-3]);
        assert!(defect(&span, &off) > 9e-4, "a place that is off");
        let mut off = rod.clone();
        off.moment = off.moment * 1.1;
        assert!(defect(&span, &off) > 9e-4, "a moment that is off");
        let mut off = rod;
        off.force = Vector([1.0, 0.0, 0.0]);
        assert!(defect(&span, &off) > 9e-4, "a force that is off");
        let elsewhere = Span { end: Vector([0.0, -1.0, 0.0]), ..span };
        assert!(defect(&elsewhere, &span.settle().unwrap().shape.rod()) > 0.5, "another clamp");
    }
}
