//! Several labels on sheets of paper.

use super::Label;
use crate::sheet::Paper;
use crate::{Drawing, Op};

/// Free edge of a sheet, in mm: office printers do not print there.
const EDGE: f64 = 10.0;

/// Between two labels, in mm: room for a knife.
const GAP: f64 = 4.0;

/// Length of a cutting mark, in mm; it stands in the gap, never on a label.
const MARK: f64 = 1.6;

/// Labels row by row on as many sheets as they take, with marks to cut along, upper left first. Each stands on whole
/// dots of the printer it was made for. A label that is larger than the sheet has a page of its own size.
pub fn on_pages(labels: &[Label], paper: Paper) -> Vec<Drawing> {
    let (width, height) = paper.size_mm();
    let mut pages: Vec<Drawing> = Vec::new();
    // Where the next label goes, and how high the row is.
    let (mut x, mut y, mut row) = (EDGE, EDGE, 0.0_f64);
    let mut open = false;
    for label in labels {
        let (wide, high) = (label.drawing.width_mm, label.drawing.height_mm);
        if wide > width - 2.0 * EDGE || high > height - 2.0 * EDGE {
            pages.push(label.drawing.clone());
            open = false;
            continue;
        }
        if x + wide > width - EDGE {
            (x, y, row) = (EDGE, y + row + GAP, 0.0);
        }
        if !open || y + high > height - EDGE {
            pages.push(Drawing::new(width, height));
            (x, y, row, open) = (EDGE, EDGE, 0.0, true);
        }
        let dot = 25.4 / label.stock.dpi;
        let (left, top) = ((x / dot).ceil() * dot, (y / dot).ceil() * dot);
        if let Some(page) = pages.last_mut() {
            page.ops.extend(label.drawing.ops.iter().map(|op| op.moved(left, top)));
            page.ops.extend(marks(left, top, wide, high));
        }
        (x, row) = (x + wide + GAP, row.max(high));
    }
    pages
}

/// Two short lines outside each corner.
fn marks(left: f64, top: f64, wide: f64, high: f64) -> impl Iterator<Item = Op> {
    let line = |from: (f64, f64), to: (f64, f64)| Op::Line { points: vec![from, to], width: 0.1, dash: None };
    let corners = [
        (left, top, -1.0, -1.0),
        (left + wide, top, 1.0, -1.0),
        (left, top + high, -1.0, 1.0),
        (left + wide, top + high, 1.0, 1.0),
    ];
    corners.into_iter().flat_map(move |(x, y, right, down)| {
        let start = 0.3;
        [
            line((x + right * start, y), (x + right * MARK, y)),
            line((x, y + down * start), (x, y + down * MARK)),
        ]
    })
}
