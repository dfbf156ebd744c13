//! From a layout to its answer: pose by pose, then the whole.

use super::error::RouteError;
use super::layout::Layout;
use super::length::{Fineness, shortest};
use super::lie::{Changes, Lie, lie, radius_mm};
use super::rod::Shapeless;
use super::routed::{Bend, Reason, Routed};
use super::shape::Shape;
use super::travel::{Ends, length, travel};
use super::twist::{mark_angle_deg, twists_deg};
use crate::check::Verdict;
use crate::quantity::{Degrees, Millimetres};

/// An inside radius that keeps the limit by less than this part of it is a caution: the shape is an estimate.
/// Common practice.
pub(crate) const MARGIN: f64 = 0.1;

/// Twist from which a hose loses much of its life: up to 70 % at 5 degrees (trade press, two articles).
pub(super) const TWIST_DEG: f64 = 5.0;

/// The hose between the ports: how tight it bends and twists in every pose, and whether it may.
///
/// # Errors
/// A field that can not be read, a length with which the hose does not reach, or no length that does.
pub fn route(layout: &Layout) -> Result<Routed, RouteError> {
    let travel = travel(layout)?;
    let changes = Changes::read(layout.length_change_pct)?;
    let limits = Limits {
        half_od_mm: length("hose_od_mm", layout.hose_od_mm, 0.0)?.map(|od| od / 2.0),
        least_inside_mm: length("min_bend_radius_mm", layout.min_bend_radius_mm, f64::MIN_POSITIVE)?,
    };
    let given = length("free_length_mm", layout.free_length_mm, f64::MIN_POSITIVE)?;
    let (free_length_mm, sought) = match given {
        Some(length_mm) => (length_mm, None),
        None => {
            let length_mm = shortest(&travel, &changes, limits.least_radius_mm()?, Fineness::EXACT)?;
            (length_mm, Some(Millimetres(length_mm)))
        }
    };
    let lies = lies(&travel, free_length_mm, &changes)?;
    let mark_angles: Vec<f64> =
        travel.iter().zip(&lies).map(|(ends, lie)| mark_angle_deg(ends, &lie.fitted.shape)).collect();
    let twists = twists_deg(&mark_angles);
    let tightest_mm = lies.iter().map(|lie| radius_mm(&lie.worst)).fold(f64::INFINITY, f64::min);
    let least = twists.iter().copied().fold(0.0, f64::min);
    let greatest = twists.iter().copied().fold(0.0, f64::max);
    let reasons = limits.reasons(&lies, greatest - least);
    Ok(Routed {
        min_radius_mm: finite(tightest_mm),
        min_inside_radius_mm: limits.inside(tightest_mm),
        free_length_mm: Millimetres(free_length_mm),
        shortest_free_length_mm: sought,
        twist_range_deg: [Degrees(least), Degrees(greatest)],
        turn_deg: mark_angles
            .first()
            .filter(|_| is_marked(layout))
            .map(|turn| Degrees(turn.rem_euclid(360.0))),
        verdict: reasons.iter().map(|reason| reason.verdict()).max().unwrap_or(Verdict::Pass),
        reasons,
        estimate: true,
        poses: travel
            .iter()
            .zip(&lies)
            .zip(&twists)
            .map(|((ends, lie), twist)| limits.bend(ends, lie, *twist))
            .collect(),
    })
}

/// Whether both ports have a mark of the user's in the first pose.
fn is_marked(layout: &Layout) -> bool {
    [&layout.a, &layout.b].iter().all(|port| port.as_ref().is_some_and(|port| port.up.is_some()))
}

/// How the hose lies in every pose.
fn lies(travel: &[Ends], free_length_mm: f64, changes: &Changes) -> Result<Vec<Lie>, RouteError> {
    let mut lies: Vec<Lie> = Vec::with_capacity(travel.len());
    for (pose, ends) in travel.iter().enumerate() {
        let near = lies.last().map(|lie| &lie.fitted.shape);
        let lie = lie(ends, free_length_mm, changes, near).map_err(|why| match why {
            Shapeless::TooShort => RouteError::NoShape {
                pose,
                length_mm: changes.shortest(free_length_mm),
                gap_mm: ends.gap().length(),
            },
            Shapeless::Unsettled => RouteError::Unsettled { pose, length_mm: free_length_mm },
        })?;
        lies.push(lie);
    }
    Ok(lies)
}

/// What the hose can stand.
struct Limits {
    half_od_mm: Option<f64>,
    least_inside_mm: Option<f64>,
}

impl Limits {
    /// Least radius of the centre line; both limits are needed for it.
    fn least_radius_mm(&self) -> Result<f64, RouteError> {
        let inside = self.least_inside_mm.ok_or(RouteError::NothingToSeek { field: "min_bend_radius_mm" })?;
        let half_od = self.half_od_mm.ok_or(RouteError::NothingToSeek { field: "hose_od_mm" })?;
        Ok(inside + half_od)
    }

    fn inside(&self, radius_mm: f64) -> Option<Millimetres> {
        self.half_od_mm.and_then(|half| finite(radius_mm - half))
    }

    /// What keeps the whole from a pass, gravest first.
    fn reasons(&self, lies: &[Lie], twist_deg: f64) -> Vec<Reason> {
        let tightest = |shape: fn(&Lie) -> Option<&Shape>| {
            // An inside radius can only be less than the centre line's: without a diameter that one stands in.
            lies.iter()
                .filter_map(shape)
                .map(|shape| radius_mm(shape) - self.half_od_mm.unwrap_or(0.0))
                .fold(f64::INFINITY, f64::min)
        };
        let (worst, rival) = (tightest(|lie| Some(&lie.worst)), tightest(|lie| lie.fitted.rival.as_ref()));
        let limit = self.least_inside_mm.unwrap_or(0.0);
        let found = [
            // A length that was sought meets the limit but for rounding.
            (Reason::BelowLimit, worst < limit * (1.0 - 1e-9)),
            (Reason::NearLimit, worst >= limit * (1.0 - 1e-9) && worst < limit * (1.0 + MARGIN)),
            (Reason::RivalTooTight, worst >= limit && rival < limit),
            (Reason::Twist, twist_deg >= TWIST_DEG),
            (Reason::NoLimit, self.least_inside_mm.is_none()),
            (Reason::NoDiameter, self.half_od_mm.is_none()),
        ];
        found.into_iter().filter(|(_, holds)| *holds).map(|(reason, _)| reason).collect()
    }

    fn bend(&self, ends: &Ends, lie: &Lie, twist_deg: f64) -> Bend {
        let radius = radius_mm(&lie.worst);
        let rival = lie.fitted.rival.as_ref();
        Bend {
            min_radius_mm: finite(radius),
            min_inside_radius_mm: self.inside(radius),
            at_mm: lie.worst.tightest().map(|tightest| Millimetres(tightest.at_mm)),
            bend_energy_per_mm: lie.worst.bend_energy_per_mm(),
            twist_deg: Degrees(twist_deg),
            residual: lie.worst.residual(),
            length_change_pct: lie.worst_change_pct,
            near_rival: rival.is_some(),
            rival_energy_per_mm: rival.map(Shape::bend_energy_per_mm),
            rival_min_radius_mm: rival.and_then(|shape| finite(radius_mm(shape))),
            points_mm: lie.worst.points_mm(ends.a.position).into_iter().map(|point| point.0).collect(),
        }
    }
}

/// An infinite radius is none.
fn finite(radius_mm: f64) -> Option<Millimetres> {
    radius_mm.is_finite().then_some(Millimetres(radius_mm))
}
