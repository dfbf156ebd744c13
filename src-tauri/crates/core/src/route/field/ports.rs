//! From how the ports face to where they are in every pose of the travel.

use super::error::FieldError;
use super::question::{DrawnPort, Facing, FieldPose, FieldQuestion};
use super::swing::Swing;
use crate::quantity::{Degrees, Millimetres};
use crate::route::vector::Vector;

/// Poses that are looked at over a travel: enough for a slider, and near enough to each other that the hose of
/// one leads to that of the next.
const POSES: usize = 9;

/// How far a port may swing between the poses.
const WIDEST_DEG: f64 = 300.0;

const X: Vector = Vector([1.0, 0.0, 0.0]);
const Y: Vector = Vector([0.0, 1.0, 0.0]);
const Z: Vector = Vector([0.0, 0.0, 1.0]);

/// A port: where it is, the way its face looks, and a mark on it that turns with it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Face {
    pub position: Vector,
    /// Of length 1.
    pub looks: Vector,
    /// Across that, of length 1: towards the other port in the closed pose.
    pub mark: Vector,
}

/// Both ports in one pose.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Ports {
    /// Share of the travel.
    pub travel: f64,
    pub a: Face,
    pub b: Face,
}

/// Both ports in every pose, the closed one first.
pub(super) fn ports(question: &FieldQuestion) -> Result<Vec<Ports>, FieldError> {
    let closed = Said::read("closed", &question.closed, question.facing)?;
    let Some(open) = &question.open else { return Ok(vec![closed.marked()]) };
    if question.fixed {
        return Err(FieldError::Misplaced {
            field: "open".to_owned(),
            with: "fixed",
            wanted: "leave one of the two out",
        });
    }
    let open = Said::read("open", open, question.facing)?;
    let from = closed.marked();
    let angle = |open: f64, closed: f64| (open - closed).to_radians();
    let turns = [
        ("open.angle_deg", open.angle_deg - closed.angle_deg),
        ("open.roll_deg", open.roll_deg - closed.roll_deg),
    ];
    if let Some((field, turn)) = turns.into_iter().find(|(_, turn)| turn.abs() > WIDEST_DEG) {
        let wanted = "an angle within 300 degrees of the closed pose's";
        return Err(FieldError::Number { field: field.to_owned(), value: turn, wanted });
    }
    let roll = angle(open.roll_deg, closed.roll_deg);
    let a = Swing::between(&from.a, open.a.0, open.a.1, None, 0.0);
    let swung = match question.facing {
        Facing::Free => None,
        _ => Some((Z, angle(open.angle_deg, closed.angle_deg))),
    };
    let b = Swing::between(&from.b, open.b.0, open.b.1, swung, roll);
    let part = |pose: usize| pose as f64 / (POSES - 1) as f64;
    Ok((0..POSES)
        .map(|pose| Ports { travel: part(pose), a: a.at(part(pose)), b: b.at(part(pose)) })
        .collect())
}

/// A pose as it was said: where each port is and the way it looks, without marks.
struct Said {
    a: (Vector, Vector),
    b: (Vector, Vector),
    angle_deg: f64,
    roll_deg: f64,
}

impl Said {
    fn read(place: &str, pose: &FieldPose, facing: Facing) -> Result<Self, FieldError> {
        let roll_deg = degrees(place, "roll_deg", pose.roll_deg)?;
        if facing == Facing::Free {
            let said = [
                ("gap_mm", pose.gap_mm.is_some()),
                ("rise_mm", pose.rise_mm.is_some()),
                ("offset_mm", pose.offset_mm.is_some()),
                ("angle_deg", pose.angle_deg.is_some()),
            ];
            misplaced(place, &said, "free ports", "give where the ports are as `a` and `b`")?;
            let (a, b) = (drawn(place, "a", pose.a.as_ref())?, drawn(place, "b", pose.b.as_ref())?);
            return Ok(Self { a, b, angle_deg: 0.0, roll_deg });
        }
        let said = [("a", pose.a.is_some()), ("b", pose.b.is_some())];
        misplaced(
            place,
            &said,
            "this facing",
            "give gap, rise and offset, or say that the ports are `free`",
        )?;
        let gap = needed(place, "gap_mm", pose.gap_mm, "how far B is to the right of A, in mm")?;
        let rise = match facing {
            Facing::RightAngle | Facing::Offset => {
                needed(place, "rise_mm", pose.rise_mm, "how far B is above A, in mm")?
            }
            _ => finite(place, "rise_mm", pose.rise_mm)?.unwrap_or(0.0),
        };
        let offset = finite(place, "offset_mm", pose.offset_mm)?.unwrap_or(0.0);
        let angle_deg = degrees(place, "angle_deg", pose.angle_deg)?;
        let (a, b) = match facing {
            Facing::U => (Y, Y),
            Facing::Facing | Facing::Offset => (X, -X),
            Facing::RightAngle => (X, -Y),
            Facing::Away | Facing::Free => (-X, X),
        };
        let b = b.turned(Z, angle_deg.to_radians());
        Ok(Self { a: (Vector::ZERO, a), b: (Vector([gap, rise, offset]), b), angle_deg, roll_deg })
    }

    /// The closed pose, whose ports get their marks: each towards the other one.
    fn marked(&self) -> Ports {
        let face = |(position, looks): (Vector, Vector), (other, _): (Vector, Vector)| Face {
            position,
            looks,
            mark: mark(looks, other - position),
        };
        Ports { travel: 0.0, a: face(self.a, self.b), b: face(self.b, self.a) }
    }
}

/// Across the port, towards the other one; up, or right, where the two stand in one line.
fn mark(looks: Vector, other: Vector) -> Vector {
    let aside = other.across(looks);
    let seen = (aside.length() > 0.01 * other.length()).then_some(aside);
    [seen, Some(Y), Some(X)]
        .into_iter()
        .flatten()
        .map(|towards| towards.across(looks))
        .find(|across| across.length() > 1e-3)
        .and_then(Vector::unit)
        .unwrap_or(looks.frame()[0])
}

fn misplaced(
    place: &str,
    said: &[(&str, bool)],
    with: &'static str,
    wanted: &'static str,
) -> Result<(), FieldError> {
    match said.iter().find(|(_, given)| *given) {
        Some((name, _)) => Err(FieldError::Misplaced { field: format!("{place}.{name}"), with, wanted }),
        None => Ok(()),
    }
}

fn drawn(place: &str, name: &str, port: Option<&DrawnPort>) -> Result<(Vector, Vector), FieldError> {
    let field = format!("{place}.{name}");
    let wanted = "a position and a direction";
    let port = port.ok_or_else(|| FieldError::Missing { field: field.clone(), wanted })?;
    let parts = port.position_mm.map(Millimetres::get).into_iter().chain(port.direction);
    if let Some(value) = parts.into_iter().find(|part| !part.is_finite()) {
        return Err(FieldError::Number { field, value, wanted: "finite numbers" });
    }
    let looks = Vector(port.direction).unit();
    let looks = looks.ok_or_else(|| FieldError::NoDirection { field: format!("{field}.direction") })?;
    Ok((Vector(port.position_mm.map(Millimetres::get)), looks))
}

fn finite(place: &str, name: &str, given: Option<Millimetres>) -> Result<Option<f64>, FieldError> {
    match given.map(Millimetres::get) {
        Some(value) if !value.is_finite() => {
            Err(FieldError::Number { field: format!("{place}.{name}"), value, wanted: "a length in mm" })
        }
        value => Ok(value),
    }
}

fn needed(
    place: &str,
    name: &str,
    given: Option<Millimetres>,
    wanted: &'static str,
) -> Result<f64, FieldError> {
    finite(place, name, given)?
        .ok_or_else(|| FieldError::Missing { field: format!("{place}.{name}"), wanted })
}

fn degrees(place: &str, name: &str, given: Option<Degrees>) -> Result<f64, FieldError> {
    let value = given.map_or(0.0, Degrees::get);
    if value.abs() <= 360.0 {
        return Ok(value);
    }
    let wanted = "an angle between -360 and 360 degrees";
    Err(FieldError::Number { field: format!("{place}.{name}"), value, wanted })
}
