//! How the ports face and a few lengths -> how tight the hose bends, and what would cure it.
//!
//! What a technician can say without vectors ([`FieldQuestion`]) becomes the ports in every pose of the travel
//! (`ports`, `swing`), with the rigid ends and their elbows on them (`ends`), and is put through
//! [`route`](super::route()) at one length (`case`). The hose's figures come from the tables or the user (`stands`);
//! the length to make is sought (`lengths`), what was found is said with its limits (`findings`), and single
//! changes that would better it are routed before they are offered (`cures`).

mod answer;
mod case;
mod cures;
mod ends;
mod error;
mod findings;
mod lengths;
mod ports;
mod question;
mod stands;
mod swing;

pub use answer::{Change, Cure, DrawnEnd, DrawnPose, FieldRouted, HoseFigure, LengthChange, Recommended};
pub use error::FieldError;
pub use question::{DrawnPort, Facing, FieldEnd, FieldPose, FieldQuestion, Points};

use crate::catalogue::Catalogue;
use crate::check::gravest;
use crate::quantity::{Degrees, Millimetres};
use crate::route::{RouteError, Routed};
use crate::spec::Role;
use case::{Case, Lain};
use cures::{Ill, cures};
use ends::RigidEnd;
use findings::{Asked, Rules, findings, needed_turn};
use lengths::{recommended, shortest_mm};
use stands::Stands;

/// The hose between the ports as they were said: how it lies over the travel, whether it may, how long to make it,
/// and what would cure it.
///
/// # Errors
/// Names the field that is missing or can not be. A hose that does not reach is a finding, not an error.
pub fn field(catalogue: &Catalogue, question: &FieldQuestion) -> Result<FieldRouted, FieldError> {
    let ports = ports::ports(question)?;
    let stands = Stands::of(catalogue, question)?;
    let end = |role, said| RigidEnd::read(role, question.spec.end(role), said, stands.od_mm);
    let ends = [end(Role::A, &question.a)?, end(Role::B, &question.b)?];
    let case = Case { ports: &ports, stands: &stands, ends };
    let rules = Rules::of(catalogue);
    let given = given_length(question, &case)?;
    let seeks = !question.shape_only || given.is_none();
    let shortest_mm = seeks.then(|| shortest_mm(&case, &rules, 1.0)).flatten();
    let recommended = seeks.then(|| recommended(catalogue, &case, &rules)).flatten();
    let length = given.or(recommended.as_ref().map(|length| length.overall_length_mm.get())).or(shortest_mm);
    let lain = length.map(|length| case.lain(length, rules.straights()));
    refused(lain.as_ref())?;
    let asked = Asked { catalogue, question, rules: &rules, shortest_mm };
    let findings = findings(&case, lain.as_ref(), &asked);
    let ill = Ill {
        case: &case,
        lain: lain.as_ref(),
        recommended: recommended.as_ref(),
        length_given: given.is_some(),
    };
    let cures = if seeks { cures(&ill, &asked) } else { Vec::new() };
    let routed = lain.and_then(|lain| lain.routed.ok());
    Ok(FieldRouted {
        verdict: gravest(&findings),
        findings,
        layout: case.layout(length, 0.0, stands.least_inside_mm),
        poses: case.drawn(),
        worst_pose: routed.as_ref().and_then(worst_pose),
        hose_od_mm: HoseFigure { value: Some(Millimetres(stands.od_mm)), provenance: stands.od_from.clone() },
        min_bend_radius_mm: HoseFigure {
            value: stands.least_inside_mm.map(Millimetres),
            provenance: stands.bend_from.clone(),
        },
        length_change_pct: LengthChange { value: stands.change_pct, provenance: stands.change_from.clone() },
        overall_length_mm: length.map(Millimetres),
        shortest_overall_length_mm: shortest_mm.map(Millimetres),
        turn_deg: routed.as_ref().and_then(|routed| needed_turn(&case, routed)).map(Degrees),
        recommended,
        routed,
        cures,
    })
}

/// The overall length of the spec, which must leave some hose between the rigid ends.
fn given_length(question: &FieldQuestion, case: &Case<'_>) -> Result<Option<f64>, FieldError> {
    match question.spec.overall_length_mm.map(Millimetres::get) {
        Some(value) if !(value.is_finite() && value > case.rigid_mm()) => Err(FieldError::Number {
            field: "spec.overall_length_mm".to_owned(),
            value,
            wanted: "a length from sealing point to sealing point that is more than both rigid ends together",
        }),
        value => Ok(value),
    }
}

/// A hose that does not reach is an answer; anything else that the routing refuses is an error.
fn refused(lain: Option<&Lain>) -> Result<(), FieldError> {
    match lain.map(|lain| &lain.routed) {
        Some(Err(error)) => match error {
            RouteError::NoShape { .. } | RouteError::Unsettled { .. } | RouteError::NoLength { .. } => Ok(()),
            other => Err(FieldError::Route(other.clone())),
        },
        _ => Ok(()),
    }
}

/// The pose whose bend is tightest.
fn worst_pose(routed: &Routed) -> Option<usize> {
    let radius = |pose: &super::Bend| pose.min_radius_mm.map_or(f64::INFINITY, Millimetres::get);
    let worst = routed.poses.iter().enumerate().min_by(|(_, a), (_, b)| radius(a).total_cmp(&radius(b)))?;
    worst.1.min_radius_mm.map(|_| worst.0)
}
