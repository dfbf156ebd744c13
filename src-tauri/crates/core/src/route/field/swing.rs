//! How a port gets from the closed pose to the open one.

use super::ports::Face;
use crate::route::vector::Vector;

/// Below this angle, in radians, a port slides and does not swing.
const SLIDES: f64 = 1e-6;

/// The way of a port: swung about the one pin that takes it from the first place and direction to the last, as a
/// hinge does; slid in a straight line where it does not turn. What it turns about its own axis comes on top.
#[derive(Debug, Clone, Copy)]
pub(super) struct Swing {
    from: Face,
    pin: Vector,
    axis: Vector,
    angle: f64,
    along: Vector,
    roll: f64,
}

impl Swing {
    /// From the closed pose to a place and direction. `swung` is the axis and angle where they are known;
    /// without it the least turn is taken, and for a half turn that in the plane of the drawing.
    pub fn between(
        from: &Face,
        position: Vector,
        looks: Vector,
        swung: Option<(Vector, f64)>,
        roll: f64,
    ) -> Self {
        let (axis, angle) = swung.unwrap_or_else(|| least_turn(from.looks, looks));
        let way = position - from.position;
        if angle.abs() < SLIDES {
            return Self { from: *from, pin: from.position, axis, angle: 0.0, along: way, roll };
        }
        // The pole of a plane displacement (Chasles): on the middle normal of the way, seen under the angle.
        let across = way.across(axis);
        let pin = from.position + (across + axis.cross(across) * (1.0 / (angle / 2.0).tan())) * 0.5;
        Self { from: *from, pin, axis, angle, along: axis * way.dot(axis), roll }
    }

    /// After that part of the way, 0 to 1.
    pub fn at(&self, part: f64) -> Face {
        let turned = |vector: Vector| vector.turned(self.axis, self.angle * part);
        let looks = turned(self.from.looks).renormalised();
        Face {
            position: self.pin + turned(self.from.position - self.pin) + self.along * part,
            looks,
            // Clockwise seen against the way the port looks.
            mark: turned(self.from.mark).turned(looks, -self.roll * part).renormalised(),
        }
    }
}

fn least_turn(from: Vector, to: Vector) -> (Vector, f64) {
    let axis = from.cross(to);
    let angle = from.angle_to(to);
    let drawing = Vector([0.0, 0.0, 1.0]).across(from).unit();
    let axis = if axis.length() > 1e-9 { axis.unit() } else { drawing };
    (axis.unwrap_or(from.frame()[0]), angle)
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::f64::consts::{FRAC_PI_2, PI};

    const X: Vector = Vector([1.0, 0.0, 0.0]);
    const Y: Vector = Vector([0.0, 1.0, 0.0]);
    const Z: Vector = Vector([0.0, 0.0, 1.0]);

    fn face(position: [f64; 3], looks: Vector, mark: Vector) -> Face {
        Face { position: Vector(position), looks, mark }
    }

    #[track_caller]
    fn near(a: Vector, b: Vector) {
        assert!((a - b).length() < 1e-9, "{a:?} and not {b:?}");
    }

    #[test]
    fn a_port_that_turns_goes_round_the_pin_and_keeps_its_distance_from_it() {
        // A lever of 200 mm about the origin, a quarter turn: its port looks outwards all the way.
        let from = face([200.0, 0.0, 0.0], X, Y);
        let swing = Swing::between(&from, Vector([0.0, 200.0, 0.0]), Y, Some((Z, FRAC_PI_2)), 0.0);
        let half = swing.at(0.5);
        near(half.position, Vector([200.0 * 0.5_f64.sqrt(), 200.0 * 0.5_f64.sqrt(), 0.0]));
        near(half.looks, Vector([0.5_f64.sqrt(), 0.5_f64.sqrt(), 0.0]));
        near(swing.at(1.0).position, Vector([0.0, 200.0, 0.0]));
        near(swing.at(1.0).mark, -X);
    }

    #[test]
    fn a_port_that_does_not_turn_slides_in_a_straight_line() {
        let from = face([100.0, 0.0, 0.0], X, Y);
        let slid = Swing::between(&from, Vector([300.0, 50.0, -20.0]), X, None, 0.0);
        near(slid.at(0.25).position, Vector([150.0, 12.5, -5.0]));
        near(slid.at(1.0).looks, X);
    }

    #[test]
    fn the_end_of_the_way_is_met_whatever_the_turn() {
        for (to, looks) in [
            ([10.0, 20.0, 30.0], Vector([0.6, 0.0, 0.8])),
            ([-50.0, 5.0, 400.0], Vector([0.0, -0.6, 0.8])),
            ([120.0, -70.0, 0.0], Vector([-1.0, 0.0, 0.0])),
        ] {
            let from = face([100.0, 40.0, -10.0], X, Y);
            let swing = Swing::between(&from, Vector(to), looks, None, 0.0);
            near(swing.at(0.0).position, from.position);
            near(swing.at(1.0).position, Vector(to));
            near(swing.at(1.0).looks, looks);
            assert!(swing.at(0.7).mark.dot(swing.at(0.7).looks).abs() < 1e-9, "the mark stays across");
        }
    }

    #[test]
    fn a_roll_turns_the_mark_about_the_ports_own_axis() {
        let from = face([0.0; 3], X, Y);
        let swing = Swing::between(&from, Vector::ZERO, X, None, PI / 3.0);
        near(swing.at(0.5).mark, Y.turned(X, -PI / 6.0));
    }
}
