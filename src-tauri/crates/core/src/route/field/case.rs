//! One way to route the hose: ports, rigid ends and a length, put through the routing.

use super::answer::{DrawnEnd, DrawnPose};
use super::ends::{Fitted, RigidEnd};
use super::ports::{Face, Ports};
use super::stands::Stands;
use crate::quantity::Millimetres;
use crate::route::{Layout, Pose, Reason, RouteError, Routed, route};

/// Ports and ends, for any length.
#[derive(Debug, Clone)]
pub(super) struct Case<'a> {
    pub ports: &'a [Ports],
    pub stands: &'a Stands,
    pub ends: [RigidEnd; 2],
}

/// How the hose lies at one length.
#[derive(Debug)]
pub(super) struct Lain {
    pub overall_mm: f64,
    /// Held by its ferrules alone.
    pub routed: Result<Routed, RouteError>,
    /// Tightest inside radius where so much of it, in outside diameters, is kept straight behind each ferrule:
    /// first as the rule asks, then the least in use. None where it does not reach, or bends too tight without.
    pub straight_inside_mm: [Option<f64>; 2],
}

impl Case<'_> {
    /// What of the overall length can not bend.
    pub fn rigid_mm(&self) -> f64 {
        self.ends.iter().map(|end| end.rigid_mm).sum()
    }

    /// Whether everything lies and moves in the plane of the drawing, which an elbow would only leave.
    pub fn plane(&self) -> bool {
        let flat = |face: &Face| [face.position, face.looks, face.mark].iter().all(|v| v.0[2].abs() < 1e-6);
        self.ports.iter().all(|ports| flat(&ports.a) && flat(&ports.b))
    }

    /// Both ends in every pose.
    fn fitted(&self) -> impl Iterator<Item = [Fitted; 2]> {
        let [a, b] = &self.ends;
        let closed = self.ports.first();
        self.ports.iter().filter_map(move |ports| {
            let closed = closed?;
            Some([a.on(&ports.a, &closed.a), b.on(&ports.b, &closed.b)])
        })
    }

    /// Both ends as they are drawn in every pose.
    pub fn drawn(&self) -> Vec<DrawnPose> {
        let drawn = |end: &Fitted, looks: [f64; 3]| DrawnEnd { direction: looks, axis_mm: end.axis_mm() };
        self.ports
            .iter()
            .zip(self.fitted())
            .map(|(ports, [a, b])| DrawnPose {
                travel: ports.travel,
                a: drawn(&a, ports.a.looks.0),
                b: drawn(&b, ports.b.looks.0),
            })
            .collect()
    }

    /// What the routing is asked, with so much of the hose kept straight behind each ferrule. Without an overall
    /// length the shortest is sought.
    pub fn layout(&self, overall_mm: Option<f64>, straight_mm: f64, least_inside_mm: Option<f64>) -> Layout {
        let free = |overall: f64| overall - self.rigid_mm() - 2.0 * straight_mm;
        let mut poses: Vec<Pose> = self
            .fitted()
            .map(|[a, b]| Pose { a: Some(a.port(straight_mm)), b: Some(b.port(straight_mm)) })
            .collect();
        let first = if poses.is_empty() { Pose::default() } else { poses.remove(0) };
        Layout {
            a: first.a,
            b: first.b,
            free_length_mm: overall_mm.map(free).map(Millimetres),
            hose_od_mm: Some(Millimetres(self.stands.od_mm)),
            min_bend_radius_mm: least_inside_mm.map(Millimetres),
            poses,
            length_change_pct: Some(self.stands.change_pct),
        }
    }

    /// How the hose lies at that overall length. `straights` are the straight lengths behind a ferrule to try,
    /// in outside diameters: each only where the one before it bends the hose too tight.
    pub fn lain(&self, overall_mm: f64, straights: [f64; 2]) -> Lain {
        let least = self.stands.least_inside_mm;
        let routed = route(&self.layout(Some(overall_mm), 0.0, least));
        let mut straight_inside_mm = [None; 2];
        // Where the hose bends too tight by its ferrules alone there is no room for more.
        if routed.as_ref().is_ok_and(|routed| !routed.reasons.contains(&Reason::BelowLimit)) {
            for (inside, times) in straight_inside_mm.iter_mut().zip(straights) {
                *inside = self.straight_inside(overall_mm, times);
                if keeps(*inside, least) {
                    break;
                }
            }
        }
        Lain { overall_mm, routed, straight_inside_mm }
    }

    fn straight_inside(&self, overall_mm: f64, times: f64) -> Option<f64> {
        let straight_mm = times * self.stands.od_mm;
        let kept = route(&self.layout(Some(overall_mm), straight_mm, self.stands.least_inside_mm)).ok()?;
        Some(kept.min_inside_radius_mm.map_or(f64::INFINITY, Millimetres::get))
    }
}

/// Whether an inside radius keeps the least one; not known is never kept.
pub(super) fn keeps(inside_mm: Option<f64>, least_mm: Option<f64>) -> bool {
    inside_mm.zip(least_mm).is_some_and(|(inside, least)| inside >= least * (1.0 - 1e-9))
}
