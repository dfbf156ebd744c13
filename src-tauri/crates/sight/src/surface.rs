//! The first guess of a code's shape, out of its three marked corners.

use crate::plane::Contrast;
use crate::point::{Point, at};
use crate::symbol::Symbol;
use crate::trio::Trio;

/// A patch that has the corners' places and steps: rows and columns between two corners are cubics.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Surface {
    trio: Trio,
    /// Modules between two corners' middles.
    span: f32,
    /// How far the middles of the first row and column stand out from the cubics.
    bulge: [Point; 2],
    /// How far the fourth corner is from where three others alone put it.
    twist: Point,
}

/// What a search tries, in modules.
const BULGES: [f32; 5] = [-0.8, -0.4, 0.0, 0.4, 0.8];
const SHIFTS: [f32; 3] = [-0.35, 0.0, 0.35];

impl Surface {
    fn of(trio: &Trio, side: usize) -> Self {
        let span = side as f32 - 7.0;
        let [by_rows, by_columns] = turns(trio, span);
        Self { trio: *trio, span, bulge: [Point::default(); 2], twist: (by_rows + by_columns) * 0.5 }
    }

    /// Where a place on the code, in modules, lies in the picture.
    pub(crate) fn place(&self, module: Point) -> Point {
        let Trio { top_left, top_right, bottom_left, .. } = &self.trio;
        let (s, t) = ((module.x - 3.5) / self.span, (module.y - 3.5) / self.span);
        let row = cubic([top_left.middle, top_right.middle], [top_left.right, top_right.right], self.span, s);
        let column =
            cubic([top_left.middle, bottom_left.middle], [top_left.down, bottom_left.down], self.span, t);
        let [by_rows, by_columns] = turns(&self.trio, self.span);
        row + column - top_left.middle
            + self.bulge[0] * (4.0 * s * (1.0 - s))
            + self.bulge[1] * (4.0 * t * (1.0 - t))
            + self.twist * (s * t)
            + (by_columns - self.twist) * (s * t * (1.0 - t))
            + (by_rows - self.twist) * (s * t * (1.0 - s))
    }

    fn steps(&self, module: Point) -> [Point; 2] {
        let along = |step: Point| self.place(module + step * 0.5) - self.place(module - step * 0.5);
        [along(at(1.0, 0.0)), along(at(0.0, 1.0))]
    }

    /// How well the timing row fits, -1 to 1, with the middle bulged along and across it so many modules.
    fn timing(&self, contrast: &Contrast, side: usize, column: bool, sign: f32) -> f32 {
        let (mut sum, mut total) = (0.0, 1e-3);
        for number in 8..side - 8 {
            let along = number as f32 + 0.5;
            let place = self.place(if column { at(6.5, along) } else { at(along, 6.5) });
            let value = sign * contrast.between(place);
            sum += if number % 2 == 0 { -value } else { value };
            total += value.abs();
        }
        sum / total
    }

    /// Bulges the first row or column so that its timing fits best; how well it does.
    fn bulged(&mut self, contrast: &Contrast, side: usize, column: bool, sign: f32) -> f32 {
        let steps = self.steps(at(self.span / 2.0 + 3.5, self.span / 2.0 + 3.5));
        let (along, across) = if column { (steps[1], steps[0]) } else { (steps[0], steps[1]) };
        let which = usize::from(column);
        let mut best = (f32::NEG_INFINITY, Point::default());
        for out in BULGES {
            for shift in SHIFTS {
                self.bulge[which] = along * shift + across * out;
                let fit = self.timing(contrast, side, column, sign) - 0.03 * (out.abs() + shift.abs());
                if fit > best.0 {
                    best = (fit, self.bulge[which]);
                }
            }
        }
        self.bulge[which] = best.1;
        best.0
    }

    /// Moves the fourth corner so that its alignment mark fits best; how well it does, 0 where there is none.
    pub(crate) fn aligned(&mut self, contrast: &Contrast, symbol: &Symbol, scale: f32) -> f32 {
        if symbol.side < 25 {
            return 0.0;
        }
        let middle = at(symbol.side as f32 - 6.5, symbol.side as f32 - 6.5);
        let place = self.place(middle);
        let [right, down] = self.steps(middle);
        let fit = |offset: Point| {
            let moved = place + right * offset.x + down * offset.y;
            let mut sum = 0.0;
            for y in -2..=2_i32 {
                for x in -2..=2_i32 {
                    let value = contrast.between(moved + right * x as f32 + down * y as f32) * scale;
                    let light = x.abs().max(y.abs()) == 1;
                    sum += value.clamp(-1.0, 1.0) * if light { 1.0 } else { -1.0 };
                }
            }
            sum / 25.0 - 0.01 * offset.length()
        };
        let reach = 2.0 + 0.06 * symbol.side as f32;
        let mut best = (f32::NEG_INFINITY, Point::default());
        let mut middle_of_search = Point::default();
        for step in [0.5, 0.2, 0.08] {
            let steps = if step == 0.5 { (reach / step).ceil() as i32 } else { 2 };
            for y in -steps..=steps {
                for x in -steps..=steps {
                    let offset = middle_of_search + at(x as f32, y as f32) * step;
                    let fit = fit(offset);
                    if fit > best.0 {
                        best = (fit, offset);
                    }
                }
            }
            middle_of_search = best.1;
        }
        let (s, offset) = ((middle.x - 3.5) / self.span, right * best.1.x + down * best.1.y);
        if best.0 > 0.45 {
            // The steps at the two other corners hold; only the product of both ways moves this one.
            let reaches = s * s - 2.0 * s * s * (1.0 - s);
            self.twist = self.twist + offset * (1.0 / reaches);
        }
        best.0
    }

    pub(crate) fn trio(&self) -> &Trio {
        &self.trio
    }
}

/// How far the fourth corner would be turned aside by the change of the steps along each edge.
fn turns(trio: &Trio, span: f32) -> [Point; 2] {
    [(trio.bottom_left.right - trio.top_left.right) * span, (trio.top_right.down - trio.top_left.down) * span]
}

/// Between two places with the steps at both.
fn cubic(ends: [Point; 2], steps: [Point; 2], span: f32, s: f32) -> Point {
    let (s2, s3) = (s * s, s * s * s);
    ends[0] * (2.0 * s3 - 3.0 * s2 + 1.0)
        + ends[1] * (3.0 * s2 - 2.0 * s3)
        + steps[0] * ((s3 - 2.0 * s2 + s) * span)
        + steps[1] * ((s3 - s2) * span)
}

/// The versions that three corners may be of, each with how well its timing fits (-2 to 2) and its surface, the
/// likeliest first.
pub(crate) fn surfaces(trio: &Trio, contrast: &Contrast) -> Vec<(f32, u32, Surface)> {
    let sign = if trio.inverted { -1.0 } else { 1.0 };
    let side = trio.side();
    let loose = (0.2 * side).max(5.0);
    let mut likely: Vec<(f32, u32, Surface)> = (1..=40_u32)
        .filter(|number| ((17 + 4 * number) as f32 - side).abs() < loose)
        .map(|number| {
            let modules = 17 + 4 * number as usize;
            let mut surface = Surface::of(trio, modules);
            let row = surface.bulged(contrast, modules, false, sign);
            let column = surface.bulged(contrast, modules, true, sign);
            let off = (modules as f32 - side).abs() / loose;
            (row + column - 0.2 * off, number, surface)
        })
        .collect();
    likely.sort_by(|one, other| other.0.total_cmp(&one.0));
    likely
}

/// The plane that has the three corners' middles and a fourth place, for a label that is flat.
pub(crate) fn flat(trio: &Trio, side: usize, fourth: (Point, Point)) -> Option<impl Fn(Point) -> Point> {
    let (near, far) = (3.5, side as f32 - 3.5);
    let pairs = [
        (at(near, near), trio.top_left.middle),
        (at(far, near), trio.top_right.middle),
        (at(near, far), trio.bottom_left.middle),
        fourth,
    ];
    let mut rows: Vec<[f64; 9]> = Vec::with_capacity(8);
    for (module, place) in pairs {
        let [x, y, u, v] = [module.x, module.y, place.x, place.y].map(f64::from);
        rows.push([x, y, 1.0, 0.0, 0.0, 0.0, -u * x, -u * y, u]);
        rows.push([0.0, 0.0, 0.0, x, y, 1.0, -v * x, -v * y, v]);
    }
    let h = solved(rows)?;
    Some(move |module: Point| {
        let (x, y) = (f64::from(module.x), f64::from(module.y));
        let depth = h[6] * x + h[7] * y + 1.0;
        at(((h[0] * x + h[1] * y + h[2]) / depth) as f32, ((h[3] * x + h[4] * y + h[5]) / depth) as f32)
    })
}

/// Eight unknowns by elimination.
fn solved(mut rows: Vec<[f64; 9]>) -> Option<[f64; 8]> {
    for step in 0..8 {
        let pivot =
            (step..8).max_by(|one, other| rows[*one][step].abs().total_cmp(&rows[*other][step].abs()))?;
        rows.swap(step, pivot);
        if rows[step][step].abs() < 1e-9 {
            return None;
        }
        let top = rows[step];
        for (number, row) in rows.iter_mut().enumerate() {
            if number != step {
                let factor = row[step] / top[step];
                row.iter_mut().zip(top).for_each(|(value, above)| *value -= factor * above);
            }
        }
    }
    Some(std::array::from_fn(|at| rows[at][8] / rows[at][at]))
}
