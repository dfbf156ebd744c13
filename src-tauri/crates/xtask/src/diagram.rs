//! The reliability diagram as a picture.

use hosewright_papers::{Anchor, Drawing, Ink, Op, Weight};
use hosewright_tests::simulated::scores::{Bin, Share};
use std::io::{Error, Result};
use std::path::Path;

/// Writes it as SVG and as PNG.
pub fn write(folder: &Path, own: &[Bin], others: &[Bin]) -> Result<()> {
    let drawing = diagram(own, others);
    std::fs::create_dir_all(folder)?;
    std::fs::write(folder.join("reliability.svg"), drawing.to_svg())?;
    std::fs::write(folder.join("reliability.png"), drawing.to_png(200.0, Ink::Smooth).map_err(Error::other)?)
}

/// Side of the square of the diagram and its place, mm.
const SIDE: f64 = 90.0;
const LEFT: f64 = 18.0;
const TOP: f64 = 14.0;

/// Observed share over stated probability: the model's own laws as squares, all others at once as
/// rings of the same width; on the diagonal they are honest.
fn diagram(own: &[Bin], others: &[Bin]) -> Drawing {
    let mut drawing = Drawing::new(LEFT + SIDE + 8.0, TOP + SIDE + 24.0);
    let at = |stated: f64, observed: f64| (LEFT + SIDE * stated, TOP + SIDE * (1.0 - observed));
    let mut text = |x: f64, y: f64, size: f64, anchor, text: &str| {
        drawing.ops.push(Op::Text { x, y, size, weight: Weight::Regular, anchor, text: text.to_owned() });
    };
    text(LEFT, 8.0, 4.0, Anchor::Start, "Said and seen: the leading class of each list");
    for tenth in (0..=10).step_by(2) {
        let share = f64::from(tenth) / 10.0;
        let (x, y) = at(share, share);
        text(x, TOP + SIDE + 5.0, 3.2, Anchor::Middle, &format!("{} %", tenth * 10));
        text(LEFT - 2.0, y + 1.0, 3.2, Anchor::End, &format!("{} %", tenth * 10));
    }
    text(
        LEFT + SIDE / 2.0,
        TOP + SIDE + 11.0,
        3.4,
        Anchor::Middle,
        "probability that was stated; upwards: share that was true",
    );
    text(LEFT + 6.0, TOP + SIDE + 17.0, 3.4, Anchor::Start, "readings by the model's own laws");
    text(LEFT + 6.0, TOP + SIDE + 22.0, 3.4, Anchor::Start, "by all other laws of the table at once");
    let mark = |x: f64, y: f64, is_own: bool| Op::Rect {
        x: x - 1.2,
        y: y - 1.2,
        width: 2.4,
        height: 2.4,
        line: (!is_own).then_some(0.5),
    };
    drawing.ops.push(mark(LEFT + 2.0, TOP + SIDE + 15.8, true));
    drawing.ops.push(mark(LEFT + 2.0, TOP + SIDE + 20.8, false));
    drawing.ops.push(Op::Rect { x: LEFT, y: TOP, width: SIDE, height: SIDE, line: Some(0.3) });
    drawing.ops.push(Op::Line {
        points: vec![at(0.0, 0.0), at(1.0, 1.0)],
        width: 0.25,
        dash: Some((1.5, 1.0)),
    });
    for (bins, is_own) in [(own, true), (others, false)] {
        drawing.ops.push(Op::Line {
            points: bins.iter().map(|bin| at(bin.stated, bin.observed)).collect(),
            width: 0.3,
            dash: (!is_own).then_some((0.6, 0.6)),
        });
        for bin in bins {
            let (x, y) = at(bin.stated, bin.observed);
            drawing.ops.push(mark(x, y, is_own));
            drawing.ops.push(spread(bin, at));
        }
    }
    drawing
}

/// Two binomial standard errors of a bar, up and down.
fn spread(bin: &Bin, at: impl Fn(f64, f64) -> (f64, f64)) -> Op {
    let share = Share { did: (bin.observed * bin.count as f64).round() as usize, of: bin.count };
    let limit = |sign: f64| at(bin.stated, (bin.observed + sign * 2.0 * share.error()).clamp(0.0, 1.0));
    Op::Line { points: vec![limit(-1.0), limit(1.0)], width: 0.2, dash: None }
}
