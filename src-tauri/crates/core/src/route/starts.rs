//! Curves of the right length between the clamps, from which the search for the least energy starts.

use super::chain::{Chain, Clamps};
use super::mesh::Mesh;
use super::vector::Vector;

/// Pieces of the curve when its length is measured.
const PIECES: usize = 64;

/// How far a bulge leans out of its plane, against its size.
const SKEW: f64 = 0.3;

/// A cubic curve with handles along the end tangents, and a bulge to one side.
#[derive(Debug, Clone, Copy)]
struct Curve<'a> {
    clamps: &'a Clamps,
    /// Length of both handles.
    handle: f64,
    /// Bulge in the middle.
    bulge: Vector,
    /// What is added to the bulge towards the near end and taken from it towards the far end.
    skew: Vector,
}

/// Starts that differ in how much of the slack runs on along the clamps and to which side the rest bulges.
/// `parts` of the slack in the handles; `sides` directions of the bulge about the chord.
pub(super) fn starts(mesh: &Mesh, clamps: &Clamps, parts: &[f64], sides: usize) -> Vec<Chain> {
    let straight = Curve { clamps, handle: 0.0, bulge: Vector::ZERO, skew: Vector::ZERO };
    let slack = 1.0 - clamps.gap.length();
    let mut starts = Vec::with_capacity(1 + parts.len() * sides);
    let with_handles = |length: f64| straight.grown(length, |curve, size| Curve { handle: size, ..curve });
    starts.push(with_handles(1.0).sampled(mesh));
    let [across, aside] = sideways(clamps);
    for part in parts {
        let base = with_handles(clamps.gap.length() + part * slack);
        for side in 0..sides {
            // A little out of every plane, so that no start is held in one.
            let angle = std::f64::consts::TAU * side as f64 / sides as f64 + 0.3;
            let direction = across * angle.cos() + aside * angle.sin();
            let skew = aside * (SKEW * angle.cos()) - across * (SKEW * angle.sin());
            let curve =
                base.grown(1.0, |curve, size| Curve { bulge: direction * size, skew: skew * size, ..curve });
            starts.push(curve.sampled(mesh));
        }
    }
    starts
}

/// Two directions across the chord; the first is the one to which both ends lean.
fn sideways(clamps: &Clamps) -> [Vector; 2] {
    let chord = [clamps.gap, clamps.start + clamps.end, clamps.start]
        .into_iter()
        .find(|axis| axis.length() > 0.05)
        .and_then(Vector::unit)
        .unwrap_or(clamps.start);
    let lean = (clamps.start - clamps.end).across(chord);
    let first = if lean.length() > 0.05 { lean.renormalised() } else { chord.frame()[0] };
    [first, chord.cross(first)]
}

impl Curve<'_> {
    /// Position at the parameter `u` from 0 to 1.
    fn at(&self, u: f64) -> Vector {
        let v = 1.0 - u;
        let first = self.clamps.start * self.handle;
        let second = self.clamps.gap - self.clamps.end * self.handle;
        let bulge = (self.bulge + self.skew * (v - u)) * (16.0 * u * u * v * v);
        first * (3.0 * u * v * v) + second * (3.0 * u * u * v) + self.clamps.gap * (u * u * u) + bulge
    }

    /// Length from the start to each of the pieces' ends.
    fn lengths(&self) -> Vec<f64> {
        let mut lengths = Vec::with_capacity(PIECES + 1);
        let (mut sum, mut before) = (0.0, Vector::ZERO);
        lengths.push(sum);
        for piece in 1..=PIECES {
            let here = self.at(piece as f64 / PIECES as f64);
            sum += (here - before).length();
            lengths.push(sum);
            before = here;
        }
        lengths
    }

    /// The curve whose size is changed until it has the given length.
    fn grown(self, length: f64, sized: impl Fn(Self, f64) -> Self) -> Self {
        let measured = |size: f64| sized(self, size).lengths().last().copied().unwrap_or(0.0);
        let (mut low, mut high) = (0.0, 0.5);
        while measured(high) < length && high < 100.0 {
            low = high;
            high *= 2.0;
        }
        for _ in 0..12 {
            let middle = (low + high) / 2.0;
            if measured(middle) < length { low = middle } else { high = middle }
        }
        sized(self, high)
    }

    /// The tangents at the mesh's nodes.
    fn sampled(&self, mesh: &Mesh) -> Chain {
        let lengths = self.lengths();
        let total = lengths.last().copied().unwrap_or(1.0);
        let mut piece = 0;
        let mut tangents: Vec<Vector> = mesh
            .at
            .iter()
            .map(|place| {
                while piece + 2 < lengths.len() && lengths[piece + 1] < place * total {
                    piece += 1;
                }
                let u = piece as f64 / PIECES as f64;
                (self.at(u + 1.0 / PIECES as f64) - self.at(u)).unit().unwrap_or(self.clamps.start)
            })
            .collect();
        if let [first, .., last] = tangents.as_mut_slice() {
            (*first, *last) = (self.clamps.start, self.clamps.end);
        }
        Chain { tangents, force: Vector::ZERO }
    }
}
