//! The machine's travel, read from the question: where the free hose begins and ends in every pose.

use super::error::RouteError;
use super::layout::{Layout, Port, Pose};
use super::rod::Span;
use super::vector::Vector;
use crate::quantity::Millimetres;

/// One end of the free hose in one pose.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct End {
    /// Where the rigid end stops.
    pub position: Vector,
    /// The way the hose leaves, a unit vector.
    pub direction: Vector,
    /// The mark on the port, a unit vector across the direction.
    pub up: Vector,
}

/// Both ends in one pose.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Ends {
    pub a: End,
    pub b: End,
}

impl Ends {
    /// From the near end to the far one.
    pub fn gap(&self) -> Vector {
        self.b.position - self.a.position
    }

    /// The hose between them.
    pub fn span(&self, length_mm: f64) -> Span {
        Span { gap_mm: self.gap(), start: self.a.direction, end: -self.b.direction, length_mm }
    }
}

/// Reads every pose, the first as fitted. A first pose that is given twice counts once.
pub(super) fn travel(layout: &Layout) -> Result<Vec<Ends>, RouteError> {
    let fitted = Pose { a: layout.a.clone(), b: layout.b.clone() };
    let is_fitted = |pose: &Pose| {
        [(&pose.a, &fitted.a), (&pose.b, &fitted.b)].iter().all(|(own, first)| own.is_none() || own == first)
    };
    let complete = fitted.a.is_some() && fitted.b.is_some();
    let mut poses: Vec<(String, &Pose)> = Vec::new();
    if (complete && !layout.poses.first().is_some_and(is_fitted)) || layout.poses.is_empty() {
        poses.push((String::new(), &fitted));
    }
    poses.extend(layout.poses.iter().enumerate().map(|(number, pose)| (format!("poses[{number}]."), pose)));
    let mut travel: Vec<Ends> = Vec::new();
    let mut marked = [false; 2];
    for (place, pose) in poses {
        let first = travel.first().copied();
        let mut end = |side: usize, name: &str, own: &Option<Port>, fitted: &Option<Port>| {
            let (port, field) = match (own, fitted) {
                (Some(port), _) => (port, format!("{place}{name}")),
                (None, Some(port)) => (port, name.to_owned()),
                (None, None) => return Err(RouteError::NoPort { field: format!("{place}{name}") }),
            };
            let first = first.map(|ends| (if side == 0 { ends.a } else { ends.b }, marked[side]));
            marked[side] |= first.is_none() && port.up.is_some();
            read_end(port, &field, first)
        };
        let a = end(0, "a", &pose.a, &fitted.a)?;
        let b = end(1, "b", &pose.b, &fitted.b)?;
        travel.push(Ends { a, b });
    }
    Ok(travel)
}

/// Reads a port; `first` is the same port in the first pose and whether its mark was given there.
fn read_end(port: &Port, field: &str, first: Option<(End, bool)>) -> Result<End, RouteError> {
    let vector = |name: &str, parts: [f64; 3]| match parts.iter().find(|part| !part.is_finite()) {
        Some(part) => Err(RouteError::Number {
            field: format!("{field}.{name}"),
            value: *part,
            wanted: "a finite number",
        }),
        None => Ok(Vector(parts)),
    };
    let direction = vector("direction", port.direction)?
        .unit()
        .ok_or_else(|| RouteError::NoDirection { field: format!("{field}.direction") })?;
    let up = match (port.up, first) {
        (Some(_), Some((_, false))) => return Err(RouteError::UpNotInFirst { field: format!("{field}.up") }),
        (Some(up), _) => {
            let up = vector("up", up)?;
            let across = up.across(direction);
            if across.length() <= 1e-6 * up.length() {
                return Err(RouteError::UpAlong { field: format!("{field}.up") });
            }
            across.renormalised()
        }
        (None, Some((first, _))) => first
            .up
            .carried(first.direction, direction)
            .ok_or_else(|| RouteError::UpNeeded { field: format!("{field}.direction") })?,
        (None, None) => direction.frame()[0],
    };
    let rigid = length(&format!("{field}.rigid_mm"), port.rigid_mm, 0.0)?.unwrap_or(0.0);
    let position = vector("position_mm", port.position_mm.map(Millimetres::get))? + direction * rigid;
    Ok(End { position, direction, up })
}

/// A length that is at least `least`, where it is given.
pub(super) fn length(field: &str, given: Option<Millimetres>, least: f64) -> Result<Option<f64>, RouteError> {
    match given.map(Millimetres::get) {
        Some(value) if !(value.is_finite() && value >= least) => Err(RouteError::Number {
            field: field.to_owned(),
            value,
            wanted: if least > 0.0 { "a length above 0 mm" } else { "a length of 0 mm or more" },
        }),
        value => Ok(value),
    }
}
