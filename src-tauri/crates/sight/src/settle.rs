//! Settles a net on the code: each node moves to where the modules round it stand out most.
//!
//! At a module's middle a code is as dark or light as it gets, at an edge between two it is neither; so the right
//! place is the one of most contrast, whatever the modules say. Nodes are settled from the marks outwards, each from
//! where its settled neighbours lead, so that a bend is followed round.

use crate::mesh::Mesh;
use crate::plane::Contrast;
use crate::point::{Point, at};
use crate::symbol::Symbol;

/// Modules round a node that are looked at, to each side.
const REACH: f32 = 3.6;

/// What a code's contrast is measured by.
pub(crate) struct Look<'a> {
    pub(crate) contrast: &'a Contrast,
    /// One over the contrast of a whole module; negative for light on dark.
    pub(crate) scale: f32,
    pub(crate) symbol: &'a Symbol,
}

impl Look<'_> {
    /// How far a module stands out there, the right way where its colour is known: -1 to 1.
    fn out(&self, column: usize, row: usize, place: Point) -> f32 {
        let value = (self.contrast.between(place) * self.scale).clamp(-1.0, 1.0);
        match self.symbol.fixed[row * self.symbol.side + column] {
            0 => value.abs(),
            fixed => value * f32::from(fixed),
        }
    }

    /// How well a whole net fits: the mean of all modules.
    pub(crate) fn fit(&self, mesh: &Mesh) -> f32 {
        let side = self.symbol.side;
        let one = |at_module: usize| {
            let (column, row) = (at_module % side, at_module / side);
            self.out(column, row, mesh.place(at(column as f32 + 0.5, row as f32 + 0.5)))
        };
        (0..side * side).map(one).sum::<f32>() / (side * side) as f32
    }

    /// How well the modules round a node fit, with the node at a place and the steps given.
    fn round(&self, module: Point, place: Point, [right, down]: [Point; 2]) -> f32 {
        let range = |middle: f32| {
            let first = (middle - REACH).max(0.0).round() as usize;
            let last = ((middle + REACH).round() as usize).min(self.symbol.side);
            first..last
        };
        let (mut sum, mut count) = (0.0, 0.0);
        for row in range(module.y) {
            for column in range(module.x) {
                let (x, y) = (column as f32 + 0.5 - module.x, row as f32 + 0.5 - module.y);
                sum += self.out(column, row, place + right * x + down * y);
                count += 1.0;
            }
        }
        sum / count
    }
}

/// Moves the nodes of a net to where they fit.
pub(crate) fn settle(mesh: &mut Mesh, look: &Look) {
    let first = mesh.clone();
    let mut order: Vec<usize> = (0..mesh.places.len()).collect();
    let far = |node: &usize| from_known(mesh.module(*node), look.symbol.side as f32);
    order.sort_by(|one, other| far(one).total_cmp(&far(other)));
    let mut moved: Vec<Option<Point>> = vec![None; order.len()];
    for node in &order {
        let led = led(&first, &moved, *node).unwrap_or_default();
        moved[*node] = Some(led + search(&first, look, *node, led, 0.6, 0.2));
    }
    // Once more, each node now between neighbours on all sides.
    for (step, reach) in [(0.15, 0.45), (0.08, 0.16)] {
        let before = moved.clone();
        for node in &order {
            let led = led(&first, &before, *node).unwrap_or_default();
            moved[*node] = Some(led + search(&first, look, *node, led, reach, step));
        }
    }
    for node in &order {
        let smooth = led(&first, &moved, *node).unwrap_or_default();
        mesh.places[*node] = first.places[*node] + smooth;
    }
}

/// How far a place on the code is from its timing lines and marks, which are known from the beginning.
fn from_known(module: Point, side: f32) -> f32 {
    let line = (module.x - 6.5).abs().min((module.y - 6.5).abs());
    let alignment = if side < 25.0 { f32::INFINITY } else { (module - at(side - 6.5, side - 6.5)).length() };
    line.min(alignment)
}

/// The offset from where a node is led that fits best; none where nothing fits clearly better.
fn search(first: &Mesh, look: &Look, node: usize, led: Point, reach: f32, step: f32) -> Point {
    let (module, place, steps) = (first.module(node), first.places[node] + led, first.steps(node));
    let [right, down] = steps;
    let fit =
        |x: f32, y: f32| look.round(module, place + right * x + down * y, steps) - 0.08 * (x * x + y * y);
    let count = (reach / step).round() as i32;
    let mut best = (fit(0.0, 0.0) + 0.004, 0.0, 0.0);
    for y in -count..=count {
        for x in -count..=count {
            let (x, y) = (x as f32 * step, y as f32 * step);
            let fit = fit(x, y);
            if fit > best.0 {
                best = (fit, x, y);
            }
        }
    }
    right * best.1 + down * best.2
}

/// Where settled nodes lead another: a plane through their moves, the near ones first.
fn led(first: &Mesh, moved: &[Option<Point>], node: usize) -> Option<Point> {
    const NEAR: i32 = 2;
    let (column, row) = ((node % first.nodes) as i32, (node / first.nodes) as i32);
    let nodes = first.nodes as i32;
    // Sums of weight, x, y, xx, xy, yy and of the moves with weight, x and y.
    let mut sums = [0.0_f32; 6];
    let mut moves = [Point::default(); 3];
    for y in (row - NEAR).max(0)..=(row + NEAR).min(nodes - 1) {
        for x in (column - NEAR).max(0)..=(column + NEAR).min(nodes - 1) {
            let Some(step) = moved[(y * nodes + x) as usize] else { continue };
            let (dx, dy) = ((x - column) as f32, (y - row) as f32);
            let weight = (-(dx * dx + dy * dy) / 3.0).exp();
            for (sum, part) in sums.iter_mut().zip([1.0, dx, dy, dx * dx, dx * dy, dy * dy]) {
                *sum += weight * part;
            }
            for (sum, part) in moves.iter_mut().zip([1.0, dx, dy]) {
                *sum = *sum + step * (weight * part);
            }
        }
    }
    let [w, x, y, xx, xy, yy] = sums;
    if w < 1e-3 {
        return None;
    }
    // Slopes are held back, or two nodes would lead the third astray.
    let (xx, yy) = (xx + 0.4, yy + 0.4);
    let (a, b, c) = (xx - x * x / w, xy - x * y / w, yy - y * y / w);
    let area = a * c - b * b;
    let (mx, my) = (moves[1] - moves[0] * (x / w), moves[2] - moves[0] * (y / w));
    let slope_x = (mx * c - my * b) * (1.0 / area);
    let slope_y = (my * a - mx * b) * (1.0 / area);
    Some((moves[0] - slope_x * x - slope_y * y) * (1.0 / w))
}
