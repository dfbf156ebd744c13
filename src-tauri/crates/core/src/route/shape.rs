//! A settled shape: its curvature, its course through space, and how true it is.

use super::chain::{Chain, Clamps};
use super::mesh::{Grading, Mesh};
use super::rod::FINEST;
use super::vector::Vector;
use std::ops::Add;

/// Below this curvature times length a hose counts as straight.
const STRAIGHT: f64 = 1e-7;

/// The shape of a hose between two clamps.
///
/// Computed on meshes of 64, 128 and 256 intervals, whose errors go with even powers of the step,
/// and extrapolated to none; kept at the 129 nodes of the middle one.
#[derive(Debug, Clone)]
pub struct Shape {
    length_mm: f64,
    mesh: Mesh,
    tangents: Vec<Vector>,
    /// Change of the tangents along the hose of unit length.
    bends: Vec<Vector>,
    gap: Vector,
    force: Vector,
    energy: f64,
}

/// Where a hose bends most.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tightest {
    /// Radius of the centre line in mm.
    pub radius_mm: f64,
    /// How far along the hose, in mm from the near clamp.
    pub at_mm: f64,
}

/// A shape as a rod of unit length and stiffness: what a check needs that takes nothing else from here. The moment
/// about the near end, bending moment and place x force together, is the same all along.
#[derive(Debug, Clone, PartialEq)]
pub struct Rod {
    /// Places along it.
    pub nodes: Vec<RodNode>,
    /// Force at the near end.
    pub force: Vector,
    /// Moment about the near end.
    pub moment: Vector,
}

/// A place along a rod.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RodNode {
    /// How far along, 0 to 1.
    pub at: f64,
    /// Where, from the near clamp.
    pub place: Vector,
    /// The way it runs.
    pub tangent: Vector,
}

impl Shape {
    /// A straight hose.
    pub(super) fn straight(length_mm: f64, along: Vector) -> Self {
        let mesh = Mesh::new(FINEST[1], Grading::for_pull(0.0));
        let nodes = mesh.at.len();
        Self {
            length_mm,
            mesh,
            tangents: vec![along; nodes],
            bends: vec![Vector::ZERO; nodes],
            gap: along,
            force: Vector::ZERO,
            energy: 0.0,
        }
    }

    /// The limit of three shapes, each on twice the intervals of the one before.
    pub(super) fn extrapolated(
        length_mm: f64,
        clamps: &Clamps,
        [(first, coarse), (mesh, middle), (third, fine)]: [(&Mesh, Chain); 3],
    ) -> Self {
        let fourth_order = |coarse: Vector, fine: Vector| fine + (fine - coarse) * (1.0 / 3.0);
        let sixth_order = |coarse: Vector, middle: Vector, fine: Vector| {
            let better = fourth_order(middle, fine);
            better + (better - fourth_order(coarse, middle)) * (1.0 / 15.0)
        };
        // The last correction is known at every other node; it is smooth, so its mean stands between.
        let corrections: Vec<Vector> = (0..=first.intervals())
            .map(|node| {
                let (a, b, c) = (coarse.tangents[node], middle.tangents[2 * node], fine.tangents[4 * node]);
                sixth_order(a, b, c) - fourth_order(b, c)
            })
            .collect();
        let tangents: Vec<Vector> = (0..=mesh.intervals())
            .map(|node| {
                let correction = (corrections[node / 2] + corrections[node.div_ceil(2)]) * 0.5;
                (fourth_order(middle.tangents[node], fine.tangents[2 * node]) + correction).renormalised()
            })
            .collect();
        let energies = [coarse.energy(first), middle.energy(mesh), fine.energy(third)];
        let [a, b, c] = energies.map(|energy| Vector([energy, 0.0, 0.0]));
        let bends = slopes(&tangents)
            .iter()
            .zip(&mesh.stretch)
            .map(|(slope, stretch)| *slope * (1.0 / stretch))
            .collect();
        Self {
            length_mm,
            mesh: mesh.clone(),
            tangents,
            bends,
            gap: clamps.gap,
            force: sixth_order(coarse.force, middle.force, fine.force),
            energy: sixth_order(a, b, c).0[0],
        }
    }

    /// Bending energy for a hose of unit length.
    pub(super) fn unit_energy(&self) -> f64 {
        self.energy
    }

    /// Bending energy over bending stiffness, in 1/mm: half the integral of curvature squared.
    pub fn bend_energy_per_mm(&self) -> f64 {
        self.energy / self.length_mm
    }

    /// Length between the clamps in mm.
    pub fn length_mm(&self) -> f64 {
        self.length_mm
    }

    /// Where it bends most; none for a straight hose.
    pub fn tightest(&self) -> Option<Tightest> {
        let squares: Vec<f64> = self.bends.iter().map(|bend| bend.dot(*bend)).collect();
        let (node, greatest) = squares
            .iter()
            .copied()
            .enumerate()
            .max_by(|a, b| a.1.total_cmp(&b.1))
            .filter(|top| top.1 > STRAIGHT * STRAIGHT)?;
        let beside = node.checked_sub(1).and_then(|before| squares.get(before)).zip(squares.get(node + 1));
        // The top of the parabola through the greatest and its neighbours.
        let (shift, square) = match beside {
            Some((before, after)) if before + after < 2.0 * greatest => {
                let shift = (before - after) / (2.0 * (before + after - 2.0 * greatest));
                (shift, greatest - (before - after) * shift / 4.0)
            }
            _ => (0.0, greatest),
        };
        let place = self.mesh.at[node] + shift * self.mesh.stretch[node];
        Some(Tightest { radius_mm: self.length_mm / square.sqrt(), at_mm: place * self.length_mm })
    }

    /// The course of the centre line from the near clamp at `origin`, in mm.
    pub fn points_mm(&self, origin: Vector) -> Vec<Vector> {
        self.course().into_iter().map(|place| origin + place * self.length_mm).collect()
    }

    /// The course for unit length, from the origin.
    fn course(&self) -> Vec<Vector> {
        let mut places = Vec::with_capacity(self.tangents.len());
        let mut here = Vector::ZERO;
        places.push(here);
        for ((tangent, bend), step) in
            self.tangents.windows(2).zip(self.bends.windows(2)).zip(&self.mesh.step)
        {
            // The integral of the cubic through both tangents and their changes.
            let change = (bend[0] - bend[1]) * (step / 12.0);
            here += ((tangent[0] + tangent[1]) * 0.5 + change) * *step;
            places.push(here);
        }
        places
    }

    /// The shape as a rod of unit length.
    pub fn rod(&self) -> Rod {
        let course = self.course();
        let moments = self.tangents.iter().zip(&self.bends).map(|(tangent, bend)| tangent.cross(*bend));
        let totals = moments.zip(&course).map(|(moment, place)| moment + place.cross(self.force));
        let moment = totals.fold(Vector::ZERO, Add::add) * (1.0 / course.len() as f64);
        let nodes = self.mesh.at.iter().zip(course).zip(&self.tangents);
        let nodes = nodes.map(|((at, place), tangent)| RodNode { at: *at, place, tangent: *tangent });
        Rod { nodes: nodes.collect(), force: self.force, moment }
    }

    /// How far the shape is from the exact one: the greater of the miss at the far end, over the length,
    /// and of the unbalanced moment, over the greatest. In balance the bending moment t x t' and the moment
    /// r x n of the force n add to the same all along. Both are taken from the final tangents
    /// by other formulas than those that led to them.
    pub fn residual(&self) -> f64 {
        let course = self.course();
        let miss = course.last().map_or(f64::INFINITY, |end| (*end - self.gap).length());
        let moments = || self.tangents.iter().zip(&self.bends).map(|(tangent, bend)| tangent.cross(*bend));
        let totals = || moments().zip(&course).map(|(moment, place)| moment + place.cross(self.force));
        let mean = totals().fold(Vector::ZERO, Add::add) * (1.0 / course.len() as f64);
        let unbalanced = totals().map(|total| (total - mean).length()).fold(0.0, f64::max);
        let greatest = moments().map(Vector::length).fold(STRAIGHT, f64::max);
        miss.max(unbalanced / greatest)
    }

    /// A vector across the near end, carried along the hose without turning about it, to the far end.
    pub fn carried(&self, across: Vector) -> Vector {
        let along = |stride: usize| {
            let nodes: Vec<Vector> = self.tangents.iter().copied().step_by(stride).collect();
            nodes.windows(2).fold(across, |vector, pair| vector.carried(pair[0], pair[1]).unwrap_or(vector))
        };
        // Steps along great circles err with the square of the step.
        let (fine, coarse) = (along(1), along(2));
        fine + (fine - coarse) * (1.0 / 3.0)
    }

    /// The largest angle (as a chord) between the tangents of two shapes.
    pub(super) fn distance(&self, other: &Self) -> f64 {
        self.tangents.iter().zip(&other.tangents).map(|(a, b)| (*a - *b).length()).fold(0.0, f64::max)
    }

    /// Every `stride`-th node as a chain between other clamps.
    pub(super) fn coarse(&self, stride: usize, clamps: &Clamps) -> Chain {
        let mut tangents: Vec<Vector> = self.tangents.iter().copied().step_by(stride).collect();
        if let [first, .., last] = tangents.as_mut_slice() {
            (*first, *last) = (clamps.start, clamps.end);
        }
        Chain { tangents, force: self.force }
    }
}

/// The slope of evenly spaced values at each of them, to the sixth order.
fn slopes(values: &[Vector]) -> Vec<Vector> {
    /// Weights, times 60, of seven neighbours for the slope at the first four of them.
    const WEIGHTS: [[f64; 7]; 4] = [
        [-147.0, 360.0, -450.0, 400.0, -225.0, 72.0, -10.0],
        [-10.0, -77.0, 150.0, -100.0, 50.0, -15.0, 2.0],
        [2.0, -24.0, -35.0, 80.0, -30.0, 8.0, -1.0],
        [-1.0, 9.0, -45.0, 0.0, 45.0, -9.0, 1.0],
    ];
    let last = values.len() - 1;
    (0..=last)
        .map(|node| {
            let inner = node.min(last - node).min(3);
            let from_far_end = node > last - 3;
            let weighted = WEIGHTS[inner].iter().enumerate().map(|(place, weight)| {
                if from_far_end {
                    values[last - place] * -*weight
                } else {
                    values[node - inner + place] * *weight
                }
            });
            weighted.fold(Vector::ZERO, Add::add) * (1.0 / 60.0)
        })
        .collect()
}
