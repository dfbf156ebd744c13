//! The grey value of each module, and from these its colour.

use crate::mesh::Mesh;
use crate::plane::Grey;
use crate::point::at;

/// Modules to each side whose mean parts dark from light.
const ROUND: usize = 4;

/// How strongly a module is set off from its neighbours, which undoes blur: each is tried in turn.
pub(crate) const SHARPENINGS: [f32; 4] = [0.4, 0.0, 1.2, 2.5];

/// The modules of a code, row by row.
pub(crate) struct Modules {
    pub(crate) side: usize,
    pub(crate) values: Vec<f32>,
}

impl Modules {
    /// The mean grey value near the middle of each module.
    pub(crate) fn sampled(grey: &Grey, mesh: &Mesh, side: usize, inverted: bool) -> Self {
        const TAPS: [(f32, f32); 5] = [(0.5, 0.5), (0.28, 0.5), (0.72, 0.5), (0.5, 0.28), (0.5, 0.72)];
        let value = |module: usize| {
            let (x, y) = ((module % side) as f32, (module / side) as f32);
            let sum: f32 = TAPS.iter().map(|(dx, dy)| grey.between(mesh.place(at(x + dx, y + dy)))).sum();
            let mean = sum / TAPS.len() as f32;
            if inverted { 255.0 - mean } else { mean }
        };
        Self { side, values: (0..side * side).map(value).collect() }
    }

    /// How much lighter each module is than those round it, once set off from its neighbours.
    pub(crate) fn set_off(&self, sharpening: f32) -> Vec<f32> {
        let near = means(&self.values, self.side, 1);
        let sharp: Vec<f32> =
            self.values.iter().zip(&near).map(|(value, near)| value + sharpening * (value - near)).collect();
        let round = means(&sharp, self.side, ROUND);
        sharp.iter().zip(round).map(|(value, round)| value - round).collect()
    }
}

/// The mean of the square round each module, cut at the rim.
fn means(values: &[f32], side: usize, reach: usize) -> Vec<f32> {
    let along = |values: &[f32], stride: usize, across: usize| {
        let mut means = vec![0.0; values.len()];
        for line in 0..side {
            for at in 0..side {
                let (from, to) = (at.saturating_sub(reach), (at + reach + 1).min(side));
                let sum: f32 = (from..to).map(|at| values[line * across + at * stride]).sum();
                means[line * across + at * stride] = sum / (to - from) as f32;
            }
        }
        means
    };
    along(&along(values, 1, side), side, 1)
}
