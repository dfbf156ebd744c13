//! A signature that was drawn on a screen.

use crate::{Anchor, Drawing, Op, Weight};

/// Height of the box over its width.
const SHAPE: f64 = 0.25;

/// Most points of a signature; more is no handwriting.
const MOST: usize = 20_000;

/// Letters of the caption.
const EM: f64 = 3.9;

/// The strokes in a box of that width with a line and a caption beneath. Their points run from 0 to 1 to the right and down; what
/// lies outside, or is no number, is drawn in to the edge or left out.
pub fn signature(strokes: &[Vec<[f64; 2]>], width: f64, caption: &str) -> Drawing {
    let height = width * SHAPE;
    let mut out = Drawing::new(width, height + 2.0 + 1.3 * EM);
    let points = strokes.iter().map(|stroke| {
        let finite = stroke.iter().filter(|[x, y]| x.is_finite() && y.is_finite());
        finite.map(|[x, y]| (x.clamp(0.0, 1.0) * width, y.clamp(0.0, 1.0) * height)).collect::<Vec<_>>()
    });
    let mut left = MOST;
    for mut points in points.filter(|points| !points.is_empty()) {
        points.truncate(left);
        left -= points.len();
        // A dot is a short line.
        if let [(x, y)] = points.as_slice() {
            points = vec![(*x, *y), (*x + 0.3, *y)];
        }
        out.ops.push(Op::Line { points, width: 0.5, dash: None });
    }
    out.ops.push(Op::Line {
        points: vec![(0.0, height + 0.5), (width, height + 0.5)],
        width: 0.2,
        dash: None,
    });
    out.ops.push(Op::Text {
        x: 0.0,
        y: height + 2.0 + EM,
        size: EM,
        weight: Weight::Bold,
        anchor: Anchor::Start,
        text: caption.to_owned(),
    });
    out
}
