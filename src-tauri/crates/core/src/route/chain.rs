//! The rod as a chain of unit tangents: energy, closure and one Newton step on both.
//!
//! An inextensible rod that bends equally easily all ways and carries no torque has the energy
//! 1/2 int |t'|^2 ds of its tangent t alone. Cut into intervals of lengths h, with end tangents held,
//! it is sum (1 - t_i . t_i+1) / h_i, and that the curve ends where it must is sum w_i t_i = gap:
//! both as simple as can be in the tangents, which live on the unit sphere. The multiplier of the closure is
//! the force in the rod. Everything is for a rod of unit length.

use super::mesh::Mesh;
use super::vector::Vector;

/// A chain that misses its far end by no more than this part of its length is closed.
const CLOSED: f64 = 1e-13;

/// Closing converges quadratically; more steps than this do not help.
const MOST_CLOSINGS: usize = 12;

/// What holds the rod: where its far end is from its near end, and the tangents at both.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Clamps {
    /// From the near end to the far end, over the rod's length.
    pub gap: Vector,
    /// Tangent at the near end.
    pub start: Vector,
    /// Tangent at the far end, onwards.
    pub end: Vector,
}

/// A shape: the tangent at each node of a mesh, and the force.
#[derive(Debug, Clone)]
pub(super) struct Chain {
    /// Unit tangents; the first and the last are the clamps'.
    pub tangents: Vec<Vector>,
    /// Force over bending stiffness, for unit length: how the energy grows with the gap.
    pub force: Vector,
}

impl Chain {
    /// Bending energy over bending stiffness, for unit length.
    pub fn energy(&self, mesh: &Mesh) -> f64 {
        // Half the square of the chord, which loses no digits where neighbours are nearly parallel.
        self.tangents
            .windows(2)
            .zip(&mesh.step)
            .map(|(pair, step)| {
                let turn = pair[1] - pair[0];
                turn.dot(turn) / (2.0 * step)
            })
            .sum()
    }

    /// By how much the curve misses its far end.
    pub fn miss(&self, mesh: &Mesh, clamps: &Clamps) -> Vector {
        self.tangents
            .iter()
            .zip(&mesh.weight)
            .fold(-clamps.gap, |sum, (tangent, weight)| sum + *tangent * *weight)
    }

    /// The nearest chain that ends where it must. None when it does not come about.
    pub fn closed(mut self, mesh: &Mesh, clamps: &Clamps) -> Option<Self> {
        for _ in 0..MOST_CLOSINGS {
            let miss = self.miss(mesh, clamps);
            if miss.length() < CLOSED {
                return Some(self);
            }
            let last = mesh.intervals();
            let inner = || self.tangents.iter().zip(&mesh.weight).take(last).skip(1);
            let mut reach = [Vector::ZERO; 3];
            for (tangent, weight) in inner() {
                for (axis, row) in reach.iter_mut().enumerate() {
                    let mut unit = [0.0; 3];
                    unit[axis] = *weight;
                    *row += Vector(unit).across(*tangent);
                }
            }
            let (push, _) = solve_symmetric(reach, -miss)?;
            for tangent in self.tangents.iter_mut().take(last).skip(1) {
                *tangent = (*tangent + push.across(*tangent)).unit()?;
            }
        }
        None
    }

    /// The greatest load across the rod that the force does not balance.
    pub fn unbalanced(&self, mesh: &Mesh) -> f64 {
        let pulls = self.tangents.windows(3).zip(mesh.step.windows(2));
        pulls
            .zip(mesh.weight.iter().skip(1))
            .map(|((near, step), weight)| {
                let pull = near[0] * (1.0 / step[0]) + near[2] * (1.0 / step[1]);
                (pull * (1.0 / weight) + self.force).across(near[1]).length()
            })
            .fold(0.0, f64::max)
    }

    /// How the energy changes with turns of the inner tangents, to first order.
    pub fn slope(&self, mesh: &Mesh, turns: &[Vector]) -> f64 {
        let pulls = self.tangents.windows(3).zip(mesh.step.windows(2));
        pulls
            .zip(turns)
            .map(|((near, step), turn)| -turn.dot(near[0] * (1.0 / step[0]) + near[2] * (1.0 / step[1])))
            .sum()
    }

    /// The chain after the part `along` of a step.
    pub fn moved(&self, step: &Step, along: f64) -> Self {
        let mut tangents = self.tangents.clone();
        for (tangent, turn) in tangents.iter_mut().skip(1).zip(&step.turns) {
            *tangent = (*tangent + *turn * along).renormalised();
        }
        Self { tangents, force: step.force }
    }

    /// The largest angle (as a chord) between this shape's tangents and another's on the same mesh.
    pub fn distance(&self, other: &Self) -> f64 {
        self.tangents.iter().zip(&other.tangents).map(|(a, b)| (*a - *b).length()).fold(0.0, f64::max)
    }

    /// The same shape on a mesh of twice as many intervals with the same grading.
    pub fn doubled(&self) -> Self {
        let coarse = &self.tangents;
        let last = coarse.len() - 1;
        let mut tangents = Vec::with_capacity(2 * last + 1);
        for node in 0..last {
            let between = if node == 0 {
                coarse[0] * 3.0 + coarse[1] * 6.0 - coarse[2]
            } else if node + 1 == last {
                coarse[last] * 3.0 + coarse[last - 1] * 6.0 - coarse[last - 2]
            } else {
                (coarse[node] + coarse[node + 1]) * 9.0 - coarse[node - 1] - coarse[node + 2]
            };
            tangents.push(coarse[node]);
            tangents.push(between.unit().unwrap_or(coarse[node]));
        }
        tangents.push(coarse[last]);
        Self { tangents, force: self.force }
    }
}

/// A 2 x 2 matrix, by rows.
type Square = [[f64; 2]; 2];

/// One inner node of the system that a Newton step solves, after elimination of the nodes before it.
#[derive(Debug, Clone, Copy)]
struct Row {
    /// Two directions in which the tangent can turn.
    frame: [Vector; 2],
    /// Inverse of the pivot.
    inverse: Square,
    /// Coupling to the next node.
    coupling: Square,
    /// Slope of the energy less the work of the force.
    slope: [f64; 2],
    /// Slope of the closure.
    closure: [Vector; 2],
}

/// Solves for Newton steps; keeps its memory between them.
#[derive(Debug, Default)]
pub(super) struct Stepper {
    rows: Vec<Row>,
}

/// A Newton step of energy and closure together.
#[derive(Debug)]
pub(super) struct Step {
    /// How each inner tangent turns.
    pub turns: Vec<Vector>,
    /// The new force.
    pub force: Vector,
    /// The largest turn.
    pub largest: f64,
}

impl Stepper {
    /// The step from `chain`, with `shift` added to the curvature of the energy. None where the energy
    /// is not convex along the closure at that shift: the step would not lead to a least energy.
    pub fn step(&mut self, chain: &Chain, mesh: &Mesh, clamps: &Clamps, shift: f64) -> Option<Step> {
        let (negative_pivots, normal, drift) = self.eliminate(chain, mesh, shift)?;
        let target = drift - chain.miss(mesh, clamps);
        let (more_force, positive) = solve_symmetric(normal, target)?;
        // Sylvester: the energy is convex along the closure when the whole system has exactly three
        // negative pivots, the closure's own.
        (negative_pivots + positive == 3).then(|| self.substitute(chain.force, more_force))
    }

    /// Eliminates the nodes one after the other. Gives the number of negative pivots, the matrix
    /// that stays for the force, and how far the unbalanced load would move the far end.
    fn eliminate(&mut self, chain: &Chain, mesh: &Mesh, shift: f64) -> Option<(usize, [Vector; 3], Vector)> {
        self.rows.clear();
        let tangents = &chain.tangents;
        let mut negative = 0;
        let mut normal = [Vector::ZERO; 3];
        let mut drift = Vector::ZERO;
        let mut before: Option<Row> = None;
        let mut frame = tangents[1].frame();
        for node in 1..mesh.intervals() {
            let tangent = tangents[node];
            let (h_before, h_after, weight) = (mesh.step[node - 1], mesh.step[node], mesh.weight[node]);
            let pull = tangents[node - 1] * (1.0 / h_before) + tangents[node + 1] * (1.0 / h_after);
            let stiffness = tangent.dot(pull) + weight * (tangent.dot(chain.force) + shift);
            let mut pivot = [[stiffness, 0.0], [0.0, stiffness]];
            let load = pull + chain.force * weight;
            let mut slope = frame.map(|axis| -axis.dot(load));
            let mut closure = frame.map(|axis| axis * weight);
            if let Some(before) = before {
                // factor = coupling^T inverse; every quantity loses factor times the one before.
                let factor = times(transposed(before.coupling), before.inverse);
                let taken = times(factor, before.coupling);
                for i in 0..2 {
                    for j in 0..2 {
                        pivot[i][j] -= taken[i][j];
                        slope[i] -= factor[i][j] * before.slope[j];
                        closure[i] += before.closure[j] * -factor[i][j];
                    }
                }
            }
            let (inverse, signs) = inverted(pivot)?;
            negative += signs;
            let next_frame = tangents[node + 1].frame();
            let coupling = frame.map(|axis| next_frame.map(|next| -axis.dot(next) / h_after));
            for i in 0..2 {
                let moved = closure[0] * inverse[i][0] + closure[1] * inverse[i][1];
                drift += moved * slope[i];
                for (row, along) in normal.iter_mut().zip(closure[i].0) {
                    *row += moved * along;
                }
            }
            let row = Row { frame, inverse, coupling, slope, closure };
            self.rows.push(row);
            before = Some(row);
            frame = next_frame;
        }
        Some((negative, normal, drift))
    }

    /// The turns that belong to a change of the force.
    fn substitute(&self, force: Vector, more_force: Vector) -> Step {
        let mut turns = vec![Vector::ZERO; self.rows.len()];
        let mut largest = 0.0_f64;
        let mut after = [0.0; 2];
        for (row, turn) in self.rows.iter().zip(&mut turns).rev() {
            let mut load = [0.0; 2];
            for i in 0..2 {
                load[i] = row.closure[i].dot(more_force)
                    - row.slope[i]
                    - row.coupling[i][0] * after[0]
                    - row.coupling[i][1] * after[1];
            }
            let angle = [
                row.inverse[0][0] * load[0] + row.inverse[0][1] * load[1],
                row.inverse[1][0] * load[0] + row.inverse[1][1] * load[1],
            ];
            *turn = row.frame[0] * angle[0] + row.frame[1] * angle[1];
            largest = largest.max(angle[0].hypot(angle[1]));
            after = angle;
        }
        Step { turns, force: force + more_force, largest }
    }
}

fn transposed(m: Square) -> Square {
    [[m[0][0], m[1][0]], [m[0][1], m[1][1]]]
}

fn times(a: Square, b: Square) -> Square {
    let entry = |i: usize, j: usize| a[i][0] * b[0][j] + a[i][1] * b[1][j];
    [[entry(0, 0), entry(0, 1)], [entry(1, 0), entry(1, 1)]]
}

/// The inverse of a symmetric matrix and the number of its negative eigenvalues.
fn inverted(m: Square) -> Option<(Square, usize)> {
    let determinant = m[0][0] * m[1][1] - m[0][1] * m[1][0];
    let scale = 1.0 / determinant;
    if !scale.is_finite() {
        return None;
    }
    let negative = match (determinant < 0.0, m[0][0] + m[1][1] < 0.0) {
        (true, _) => 1,
        (false, true) => 2,
        (false, false) => 0,
    };
    Some(([[m[1][1] * scale, -m[0][1] * scale], [-m[1][0] * scale, m[0][0] * scale]], negative))
}

/// Solves a symmetric system of three, given by rows; also gives how many of its eigenvalues are positive.
fn solve_symmetric(rows: [Vector; 3], right: Vector) -> Option<(Vector, usize)> {
    let [a, b, c] = rows;
    let minors = [a.cross(b), b.cross(c), c.cross(a)];
    let determinant = a.dot(minors[1]);
    let solution =
        (minors[1] * right.0[0] + minors[2] * right.0[1] + minors[0] * right.0[2]) * (1.0 / determinant);
    if !solution.0.iter().all(|part| part.is_finite()) {
        return None;
    }
    // Signs of the leading minors (Jacobi): each change of sign is a negative eigenvalue.
    let leading = [1.0, a.0[0], a.0[0] * b.0[1] - a.0[1] * b.0[0], determinant];
    let positive = leading.windows(2).filter(|pair| (pair[0] > 0.0) == (pair[1] > 0.0)).count();
    Some((solution, positive))
}
