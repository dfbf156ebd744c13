//! Curves of lives on paper.

use crate::drawing::{Anchor, Drawing, Op, Weight};

/// What is drawn of the hoses of one group: parts still in service over years.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct LivesDrawn {
    /// Year and part left: it falls in steps.
    pub steps: Vec<[f64; 2]>,
    /// Bounds of each step; none where there are none.
    pub bounds: Vec<Option<[f64; 2]>>,
    /// The fitted curve: year and part left.
    pub fitted: Vec<[f64; 2]>,
    /// The longest that any was watched: nothing is drawn beyond it.
    pub longest: f64,
    /// Where the scale ends.
    pub end: f64,
    /// The unit beneath the scale.
    pub unit: String,
}

/// Room about the field of the curves, in mm.
const LEFT: f64 = 12.0;
const BELOW: f64 = 9.0;
const ABOVE: f64 = 3.0;
/// Height of the field.
const HIGH: f64 = 42.0;
const TEXT: f64 = 3.2;

impl LivesDrawn {
    /// The drawing, so wide: the steps heavy, their bounds broken, the fit thin.
    pub fn drawing(&self, width_mm: f64) -> Drawing {
        let mut drawing = Drawing::new(width_mm, ABOVE + HIGH + BELOW);
        let field = Field { wide: width_mm - LEFT - 2.0, end: self.end.max(1e-9) };
        for part in [0.0, 0.5, 1.0] {
            let y = field.y(part);
            drawing.ops.push(line(vec![(LEFT, y), (LEFT + field.wide, y)], 0.15, None));
            let percent = format!("{:.0} %", part * 100.0);
            drawing.ops.push(text(LEFT - 1.5, y + 1.1, Anchor::End, percent));
        }
        for year in years(self.end) {
            let x = field.x(year);
            drawing.ops.push(line(vec![(x, field.y(0.0)), (x, field.y(0.0) + 1.5)], 0.25, None));
            drawing.ops.push(text(x, field.y(0.0) + 5.0, Anchor::Middle, format!("{year}")));
        }
        drawing.ops.push(text(LEFT + field.wide, field.y(0.0) + 8.3, Anchor::End, self.unit.clone()));
        for side in [0, 1] {
            let bound =
                |at: usize| self.bounds.get(at).copied().flatten().and_then(|both| both.get(side).copied());
            let known: Vec<[f64; 2]> =
                (0..).zip(&self.steps).map_while(|(at, [year, _])| Some([*year, bound(at)?])).collect();
            let until = if known.len() == self.steps.len() { self.longest } else { last(&known) };
            drawing.ops.push(line(field.falling(&known, until), 0.2, Some((1.2, 0.8))));
        }
        let fitted = std::iter::once(&[0.0, 1.0])
            .chain(&self.fitted)
            .map(|[year, left]| (field.x(*year), field.y(*left)));
        drawing.ops.push(line(fitted.collect(), 0.2, None));
        drawing.ops.push(line(field.falling(&self.steps, self.longest), 0.6, None));
        drawing
    }
}

fn last(steps: &[[f64; 2]]) -> f64 {
    steps.last().map_or(0.0, |[year, _]| *year)
}

/// Whole years under the scale, about eight of them.
fn years(end: f64) -> Vec<f64> {
    let step = (end / 8.0).ceil().max(1.0);
    (0..).map(|at| f64::from(at) * step).take_while(|year| *year <= end + 1e-9).collect()
}

/// Where years and parts lie on the paper.
struct Field {
    wide: f64,
    end: f64,
}

impl Field {
    fn x(&self, year: f64) -> f64 {
        LEFT + year / self.end * self.wide
    }

    fn y(&self, part: f64) -> f64 {
        ABOVE + (1.0 - part) * HIGH
    }

    /// A line that begins at all and falls in steps.
    fn falling(&self, steps: &[[f64; 2]], until: f64) -> Vec<(f64, f64)> {
        let mut left = 1.0;
        let mut points = vec![(self.x(0.0), self.y(left))];
        for [year, next] in steps {
            points.push((self.x(*year), self.y(left)));
            left = *next;
            points.push((self.x(*year), self.y(left)));
        }
        points.push((self.x(until), self.y(left)));
        points
    }
}

fn line(points: Vec<(f64, f64)>, width: f64, dash: Option<(f64, f64)>) -> Op {
    Op::Line { points, width, dash }
}

fn text(x: f64, y: f64, anchor: Anchor, text: String) -> Op {
    Op::Text { x, y, size: TEXT, weight: Weight::Regular, anchor, text }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_is_drawn_beyond_what_was_watched_nor_off_the_paper() {
        let lives = LivesDrawn {
            steps: vec![[1.0, 0.8], [3.0, 0.0]],
            bounds: vec![Some([0.5, 0.95]), None],
            fitted: vec![[2.0, 0.5], [4.0, 0.1]],
            longest: 4.0,
            end: 6.0,
            unit: "years".to_owned(),
        };
        let drawing = lives.drawing(170.0);
        let mut lines = 0;
        for op in &drawing.ops {
            if let Op::Line { points, width, .. } = op {
                lines += 1;
                assert!(
                    points
                        .iter()
                        .all(|(x, y)| (0.0..=170.0).contains(x) && (0.0..=drawing.height_mm).contains(y))
                );
                if *width == 0.6 {
                    let longest = LEFT + 4.0 / 6.0 * (170.0 - LEFT - 2.0);
                    assert!(points.iter().all(|(x, _)| *x <= longest + 1e-9), "{points:?}");
                }
            }
        }
        assert_eq!(lines, 3 + 7 + 2 + 2, "grid, years, bounds, fit and steps");
    }
}
