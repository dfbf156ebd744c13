//! The drawing of a hose assembly: its two ends, its length and turn. Not to scale.

use crate::drawing::font;
use crate::{Anchor, Drawing, Op, Weight};

/// What is drawn. All texts come in the reader's language.
#[derive(Debug, Clone, PartialEq)]
pub struct AssemblyDrawn {
    /// Name and angle of each end, A first; 0 is straight.
    pub ends: [(String, f64); 2],
    /// The overall length, with its unit.
    pub overall: String,
    /// The length of the cut, where it is known.
    pub cut: Option<String>,
    /// Degrees from A's elbow, which points up, clockwise to B's, looking from A to B.
    pub turn_deg: Option<f64>,
}

/// Strong and thin lines.
const STRONG: f64 = 0.5;
const THIN: f64 = 0.2;
/// Letters.
const EM: f64 = 3.4;
/// Half the width of the hose, of a ferrule and of a nut as they are drawn.
const HOSE: f64 = 3.0;
const FERRULE: f64 = 4.0;
const NUT: f64 = 5.0;
/// Length of a ferrule, of a nut, and of an end beyond the ferrule.
const FERRULE_LENGTH: f64 = 16.0;
const NUT_LENGTH: f64 = 6.0;
const REACH: f64 = 12.0;
/// Radius of the view along the hose.
const VIEW: f64 = 9.0;

impl AssemblyDrawn {
    /// The drawing, as wide as that.
    pub fn drawing(&self, width: f64) -> Drawing {
        let turn = self.turn_deg.is_some();
        let mut out = Drawing::new(width, 52.0);
        let axis = 22.0;
        // Room at the right for the view along the hose, and at both sides for an elbow's nut.
        let (left, right) = (REACH + NUT, width - REACH - NUT - if turn { 2.0 * VIEW + 8.0 } else { 0.0 });
        self.hose(&mut out, left, right, axis);
        // A's elbow points up; B's is drawn up or down, whichever is nearer to its turn.
        let down = self.turn_deg.is_some_and(|turn| (90.0..270.0).contains(&turn));
        let [a, b] = &self.ends;
        let from = end(&mut out, (left, axis), -1.0, a.1, -1.0);
        let to = end(&mut out, (right, axis), 1.0, b.1, if down { 1.0 } else { -1.0 });
        dimension(&mut out, (from, to), 41.0, &self.overall);
        if let Some(cut) = &self.cut {
            dimension(&mut out, (left + 2.0, right - 2.0), 33.0, cut);
        }
        let half = (right - left) / 2.0 + REACH;
        let size = fitted(&a.0, half).min(fitted(&b.0, half));
        for (x, anchor, name) in [(0.0, Anchor::Start, &a.0), (to.max(right), Anchor::End, &b.0)] {
            out.ops.push(text(x, 48.0, size, anchor, name));
        }
        if let Some(turn) = self.turn_deg {
            view(&mut out, (width - VIEW - 2.0, axis), turn);
        }
        out
    }

    /// The hose between its ferrules, broken in the middle: it is not drawn to scale.
    fn hose(&self, out: &mut Drawing, left: f64, right: f64, axis: f64) {
        let middle = (left + right) / 2.0;
        for side in [-HOSE, HOSE] {
            for (from, to) in [(left, middle - 2.0), (middle + 2.0, right)] {
                out.ops.push(line(vec![(from, axis + side), (to, axis + side)], STRONG));
            }
        }
        for at in [middle - 2.0, middle + 2.0] {
            let zigzag =
                vec![(at - 1.0, axis + HOSE), (at + 1.0, axis), (at - 1.0, axis), (at + 1.0, axis - HOSE)];
            out.ops.push(line(zigzag, THIN));
        }
    }
}

/// An end with its ferrule, at the end of the hose; `out` is the way it points along the axis, `up` the side its
/// elbow bends to. Gives how far it reaches along the axis.
fn end(on: &mut Drawing, (x, y): (f64, f64), out: f64, angle: f64, up: f64) -> f64 {
    let inner = x - out * FERRULE_LENGTH;
    on.ops.push(rect(inner.min(x), y - FERRULE, FERRULE_LENGTH, 2.0 * FERRULE));
    for ridge in 1..4 {
        let at = inner + out * FERRULE_LENGTH * f64::from(ridge) / 4.0;
        on.ops.push(line(vec![(at, y - FERRULE), (at, y + FERRULE)], THIN));
    }
    let turned = angle.to_radians();
    let way = (out * turned.cos(), up * turned.sin());
    let bend = if angle > 0.0 { (x + out * 4.0, y) } else { (x, y) };
    let tip = (bend.0 + way.0 * REACH, bend.1 + way.1 * REACH);
    let across = (-way.1, way.0);
    let at = |along: f64, side: f64| {
        (bend.0 + way.0 * along + across.0 * side, bend.1 + way.1 * along + across.1 * side)
    };
    for side in [-1.5, 1.5] {
        let mut pipe = vec![at(0.0, side), at(REACH - NUT_LENGTH, side)];
        if angle > 0.0 {
            // The pipe's walls cross the bend on whichever side lies nearer to the hose.
            let start = (x, y - side * out * if out > 0.0 { -1.0 } else { 1.0 });
            pipe.insert(0, start);
        }
        on.ops.push(line(pipe, STRONG));
    }
    let nut = vec![
        at(REACH - NUT_LENGTH, -NUT),
        at(REACH, -NUT),
        at(REACH, NUT),
        at(REACH - NUT_LENGTH, NUT),
        at(REACH - NUT_LENGTH, -NUT),
    ];
    on.ops.push(line(nut, STRONG));
    for side in [-NUT / 2.0, NUT / 2.0] {
        on.ops.push(line(vec![at(REACH - NUT_LENGTH, side), at(REACH, side)], THIN));
    }
    // A bent end is measured to the centre of its sealing face.
    tip.0
}

/// A dimension line with its figure above.
fn dimension(on: &mut Drawing, (from, to): (f64, f64), y: f64, figure: &str) {
    on.ops.push(line(vec![(from, y), (to, y)], THIN));
    for (at, into) in [(from, 1.0), (to, -1.0)] {
        on.ops.push(line(vec![(at, y - 2.0), (at, y + 2.0)], THIN));
        on.ops.push(line(vec![(at + into * 2.0, y - 0.8), (at, y), (at + into * 2.0, y + 0.8)], THIN));
    }
    on.ops.push(text((from + to) / 2.0, y - 1.2, EM, Anchor::Middle, figure));
}

/// The view along the hose from A to B: A's elbow up, B's at its turn.
fn view(on: &mut Drawing, (x, y): (f64, f64), turn: f64) {
    let circle = |radius: f64| -> Vec<(f64, f64)> {
        (0..=36)
            .map(|step| f64::from(step) * std::f64::consts::TAU / 36.0)
            .map(|at| (x + radius * at.cos(), y + radius * at.sin()))
            .collect()
    };
    on.ops.push(line(circle(2.5), STRONG));
    let hand = |degrees: f64| {
        let at = degrees.to_radians();
        ((x + VIEW * at.sin(), y - VIEW * at.cos()), (x + 2.5 * at.sin(), y - 2.5 * at.cos()))
    };
    for (degrees, dash) in [(0.0, None), (turn, Some((1.2, 0.8)))] {
        let (tip, root) = hand(degrees);
        on.ops.push(Op::Line { points: vec![root, tip], width: 1.0, dash });
    }
    on.ops.push(text(x + 1.5, y - VIEW + 1.0, EM, Anchor::Start, "A"));
    let at = turn.to_radians();
    let name = (x + (VIEW - 2.0) * at.sin() + 1.2, y - (VIEW - 2.0) * at.cos() + 4.0);
    on.ops.push(text(name.0, name.1, EM, Anchor::Start, "B"));
    on.ops.push(text(x, y + VIEW + 5.0, EM, Anchor::Middle, &format!("{turn:.0}\u{b0}")));
}

/// Letters as large as they may be for a text to fit.
fn fitted(content: &str, room: f64) -> f64 {
    let wide = font::width(content, EM, Weight::Regular);
    if wide > room { EM * room / wide } else { EM }
}

fn text(x: f64, y: f64, size: f64, anchor: Anchor, text: &str) -> Op {
    Op::Text { x, y, size, weight: Weight::Regular, anchor, text: text.to_owned() }
}

fn line(points: Vec<(f64, f64)>, width: f64) -> Op {
    Op::Line { points, width, dash: None }
}

fn rect(x: f64, y: f64, width: f64, height: f64) -> Op {
    Op::Rect { x, y, width, height, line: Some(STRONG) }
}
