//! Where each module of a code lies in the picture: a net of places over the code, bent as the label is.

use crate::point::{Point, at};

/// Modules between two nodes, at most.
const SPACING: f32 = 3.5;

/// A net of nodes, evenly over the code, with their places in the picture.
#[derive(Debug, Clone)]
pub(crate) struct Mesh {
    /// Nodes of a side.
    pub(crate) nodes: usize,
    /// Modules between nodes.
    pub(crate) spacing: f32,
    /// Row by row.
    pub(crate) places: Vec<Point>,
}

impl Mesh {
    /// A net over a code of so many modules a side; `place` tells where a place in modules lies.
    pub(crate) fn over(side: usize, place: impl Fn(Point) -> Point) -> Self {
        let nodes = (side as f32 / SPACING).ceil() as usize + 1;
        let spacing = side as f32 / (nodes - 1) as f32;
        let empty = Self { nodes, spacing, places: Vec::new() };
        let places = (0..nodes * nodes).map(|node| place(empty.module(node))).collect();
        Self { places, ..empty }
    }

    /// The place of a node on the code, in modules.
    pub(crate) fn module(&self, node: usize) -> Point {
        at((node % self.nodes) as f32, (node / self.nodes) as f32) * self.spacing
    }

    /// Where a place on the code, in modules, lies in the picture.
    pub(crate) fn place(&self, module: Point) -> Point {
        let (x, y) = (module.x / self.spacing, module.y / self.spacing);
        let most = self.nodes - 2;
        let (column, row) = ((x.max(0.0) as usize).min(most), (y.max(0.0) as usize).min(most));
        let (fx, fy) = (x - column as f32, y - row as f32);
        let node = |right: usize, down: usize| self.places[(row + down) * self.nodes + column + right];
        let above = node(0, 0) * (1.0 - fx) + node(1, 0) * fx;
        let below = node(0, 1) * (1.0 - fx) + node(1, 1) * fx;
        above * (1.0 - fy) + below * fy
    }

    /// The steps of a module to the right and down, at a node.
    pub(crate) fn steps(&self, node: usize) -> [Point; 2] {
        let (column, row) = (node % self.nodes, node / self.nodes);
        let along = |at: usize, stride: usize| {
            let (from, to) = (
                if at > 0 { node - stride } else { node },
                if at + 1 < self.nodes { node + stride } else { node },
            );
            let spans = ((to - from) / stride) as f32 * self.spacing;
            (self.places[to] - self.places[from]) * (1.0 / spans)
        };
        [along(column, 1), along(row, self.nodes)]
    }
}
