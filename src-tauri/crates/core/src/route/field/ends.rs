//! The rigid ends: how an elbow goes on from its port, and where the hose begins.

use super::error::FieldError;
use super::ports::Face;
use super::question::{FieldEnd, Points};
use crate::catalogue::{Basis, Provenance};
use crate::quantity::Millimetres;
use crate::route::Port;
use crate::route::vector::Vector;
use crate::spec::{EndSpec, Role};
use std::f64::consts::{FRAC_PI_2, PI};

/// Lengths of an end whose own nobody gave, in outside diameters of the hose: what common crimped ends have in
/// plain proportion. Recalled; every answer that rests on them says so and is no pass.
struct Proportion {
    /// Steepest bend it is for, in degrees.
    up_to_deg: f64,
    drop: f64,
    rigid: f64,
}

const PROPORTIONS: [Proportion; 3] = [
    Proportion { up_to_deg: 0.0, drop: 0.0, rigid: 3.0 },
    Proportion { up_to_deg: 60.0, drop: 1.1, rigid: 3.6 },
    Proportion { up_to_deg: 180.0, drop: 2.2, rigid: 3.4 },
];

/// Where [`PROPORTIONS`] come from.
pub(super) fn proportion() -> Provenance {
    Provenance { source: "plain proportion of common crimped ends".to_owned(), basis: Basis::Memory }
}

/// A rigid end.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct RigidEnd {
    pub role: Role,
    /// The form as the spec writes it; none where nobody said.
    pub form: Option<String>,
    /// How far it bends, in radians; 0 is straight.
    pub bend: f64,
    pub points: Points,
    /// From the sealing point to the hose's axis, across the hose.
    pub drop_mm: f64,
    /// From the sealing point to the end of the ferrule, along the hose's axis.
    pub rigid_mm: f64,
    /// What of these nobody gave.
    pub assumed: Assumed,
}

/// What of an end is in plain proportion only.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub(super) struct Assumed {
    pub drop: bool,
    pub rigid: bool,
}

impl Assumed {
    pub fn any(self) -> bool {
        self.drop || self.rigid
    }
}

impl RigidEnd {
    /// What the spec and the question say of an end of a hose of that outside diameter.
    pub fn read(role: Role, spec: Option<&EndSpec>, said: &FieldEnd, od_mm: f64) -> Result<Self, FieldError> {
        let name = match role {
            Role::A => "a",
            Role::B => "b",
        };
        let form = spec.and_then(|end| end.form.clone());
        let bend_deg = match &form {
            Some(form) => bend_deg(form).ok_or_else(|| FieldError::Form {
                field: format!("spec.ends.{role:?}.form"),
                form: form.clone(),
            })?,
            None => 0.0,
        };
        let drop = positive(&format!("spec.ends.{role:?}.drop_mm"), spec.and_then(|end| end.drop_mm))?;
        let rigid = positive(&format!("{name}.rigid_mm"), said.rigid_mm)?;
        Self::with(role, form, bend_deg, said.points, [drop, rigid], od_mm).ok_or_else(|| {
            FieldError::Number {
                field: format!("{name}.rigid_mm"),
                value: rigid.unwrap_or_default(),
                wanted: "a length along the hose's axis that reaches past the elbow's corner",
            }
        })
    }

    /// The same end with another form, of which nobody gave a length.
    pub fn formed(&self, form: &str, points: Points, od_mm: f64) -> Option<Self> {
        Self::with(self.role, Some(form.to_owned()), bend_deg(form)?, points, [None; 2], od_mm)
    }

    /// None where the ferrule would end before the elbow's corner.
    fn with(
        role: Role,
        form: Option<String>,
        bend_deg: f64,
        points: Points,
        [drop, rigid]: [Option<f64>; 2],
        od_mm: f64,
    ) -> Option<Self> {
        let usual = PROPORTIONS.iter().find(|usual| bend_deg <= usual.up_to_deg)?;
        let bent = bend_deg > 0.0;
        let end = Self {
            role,
            form,
            bend: bend_deg.to_radians(),
            points,
            drop_mm: if bent { drop.unwrap_or(usual.drop * od_mm) } else { 0.0 },
            rigid_mm: rigid.unwrap_or(usual.rigid * od_mm),
            assumed: Assumed { drop: bent && drop.is_none(), rigid: rigid.is_none() },
        };
        (end.past_corner_mm() >= 0.0).then_some(end)
    }

    /// Whether it is bent, so that it has a direction of its own.
    pub fn bent(&self) -> bool {
        self.bend > 0.0
    }

    /// From the corner to the end of the ferrule; the whole of a straight end.
    fn past_corner_mm(&self) -> f64 {
        if self.bent() { self.rigid_mm - self.drop_mm / self.bend.tan() } else { self.rigid_mm }
    }

    /// The end on its port. `closed` is the port in the closed pose, which says where front is.
    pub fn on(&self, face: &Face, closed: &Face) -> Fitted {
        let towards_front = closed.mark.turned(closed.looks, FRAC_PI_2).0[2] >= 0.0;
        let about = match self.points {
            Points::Towards => 0.0,
            Points::Away => PI,
            Points::Front => FRAC_PI_2,
            Points::Back => -FRAC_PI_2,
        };
        let aside = face.mark.turned(face.looks, if towards_front { about } else { -about });
        let (sine, cosine) = self.bend.sin_cos();
        let leaves = face.looks * cosine + aside * sine;
        let corner = match self.bent() {
            true => face.position + face.looks * (self.drop_mm / sine),
            false => face.position,
        };
        Fitted {
            sealed: face.position,
            corner,
            leaves,
            // Of an elbow the side that its sealing face is on: the turn is told by it.
            up: if self.bent() { (face.looks * -sine + aside * cosine).renormalised() } else { face.mark },
            rigid_mm: self.past_corner_mm(),
        }
    }
}

/// An end on its port.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Fitted {
    sealed: Vector,
    /// Where the hose's axis begins: the elbow's corner, or the sealing point of a straight end.
    corner: Vector,
    leaves: Vector,
    up: Vector,
    rigid_mm: f64,
}

impl Fitted {
    /// The port as the routing takes it, with so much of the hose kept straight behind the ferrule.
    pub fn port(&self, straight_mm: f64) -> Port {
        Port {
            position_mm: self.corner.0.map(Millimetres),
            direction: self.leaves.0,
            up: Some(self.up.0),
            rigid_mm: Some(Millimetres(self.rigid_mm + straight_mm)),
        }
    }

    /// Its axis from the sealing point to the end of the ferrule.
    pub fn axis_mm(&self) -> Vec<[f64; 3]> {
        let end = self.corner + self.leaves * self.rigid_mm;
        let corner = (self.corner != self.sealed).then_some(self.corner);
        std::iter::once(self.sealed).chain(corner).chain([end]).map(|point| point.0).collect()
    }
}

/// How far a form bends, in degrees: the number at its end; a banjo and what is called compact or block without
/// one stand across their port. None where nobody could say.
fn bend_deg(form: &str) -> Option<f64> {
    let form = form.to_lowercase();
    let named = form.trim_start_matches(|letter: char| !letter.is_ascii_digit());
    let kind = form.trim_end_matches(named).trim_end();
    match (kind, named) {
        ("straight" | "standpipe" | "standpipe-straight", "") => Some(0.0),
        ("banjo" | "compact" | "block", "") => Some(90.0),
        ("elbow" | "compact" | "block", degrees) => {
            degrees.parse().ok().filter(|degrees| (1.0..=180.0).contains(degrees) && *degrees < 180.0)
        }
        _ => None,
    }
}

fn positive(field: &str, given: Option<Millimetres>) -> Result<Option<f64>, FieldError> {
    match given.map(Millimetres::get) {
        Some(value) if !(value.is_finite() && value >= 0.0) => {
            Err(FieldError::Number { field: field.to_owned(), value, wanted: "a length of 0 mm or more" })
        }
        value => Ok(value),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const UP: Face = Face {
        position: Vector([10.0, 0.0, 0.0]),
        looks: Vector([0.0, 1.0, 0.0]),
        mark: Vector([1.0, 0.0, 0.0]),
    };

    fn end(form: &str, points: Points, drop: f64, rigid: f64) -> RigidEnd {
        let bend = bend_deg(form).unwrap();
        RigidEnd::with(Role::A, Some(form.to_owned()), bend, points, [Some(drop), Some(rigid)], 20.0).unwrap()
    }

    #[track_caller]
    fn ends_at(fitted: &Fitted, expected: [f64; 3]) {
        let axis = fitted.axis_mm();
        let last = Vector(*axis.last().unwrap());
        assert!((last - Vector(expected)).length() < 1e-9, "{axis:?}");
    }

    #[test]
    fn a_square_elbow_goes_up_by_its_drop_and_then_across() {
        let fitted = end("elbow90", Points::Towards, 60.0, 80.0).on(&UP, &UP);
        ends_at(&fitted, [90.0, 60.0, 0.0]);
        assert_eq!(fitted.axis_mm().len(), 3, "the corner is drawn");
        ends_at(&end("elbow90", Points::Away, 60.0, 80.0).on(&UP, &UP), [-70.0, 60.0, 0.0]);
        ends_at(&end("elbow90", Points::Front, 60.0, 80.0).on(&UP, &UP), [10.0, 60.0, 80.0]);
        ends_at(&end("elbow90", Points::Back, 60.0, 80.0).on(&UP, &UP), [10.0, 60.0, -80.0]);
    }

    #[test]
    fn drop_and_rigid_length_are_measured_across_and_along_the_hose() {
        let half = 0.5_f64.sqrt();
        let fitted = end("elbow45", Points::Towards, 25.0, 90.0).on(&UP, &UP);
        let end = Vector(*fitted.axis_mm().last().unwrap()) - UP.position;
        let along = Vector([half, half, 0.0]);
        assert!((end.dot(along) - 90.0).abs() < 1e-9, "along the hose");
        assert!((end.across(along).length() - 25.0).abs() < 1e-9, "across it");
    }

    #[test]
    fn forms_are_read_by_their_angle() {
        for (form, degrees) in [
            ("straight", Some(0.0)),
            ("elbow22.5", Some(22.5)),
            ("elbow45", Some(45.0)),
            ("compact90", Some(90.0)),
            ("elbow135", Some(135.0)),
            ("standpipe", Some(0.0)),
            ("banjo", Some(90.0)),
            ("elbow", None),
            ("elbow360", None),
            ("elbow-45", None),
            ("bent", None),
        ] {
            assert_eq!(bend_deg(form), degrees, "{form}");
        }
    }

    #[test]
    fn an_elbow_whose_ferrule_would_end_before_its_corner_is_refused() {
        assert!(
            RigidEnd::with(Role::A, None, 45.0, Points::Towards, [Some(90.0), Some(60.0)], 20.0).is_none()
        );
    }
}
