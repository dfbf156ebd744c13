//! The finder marks of QR codes: squares of 1 : 1 : 3 : 1 : 1 in every direction.
//!
//! Rows are searched for the ratio, then rays from the middle find the edges all round, and a parallelogram is fitted
//! to them: it gives the middle and the module's two steps to a fraction of a pixel, and no other shape fits.

use crate::plane::{Contrast, in_bands};
use crate::point::{Point, at};
use std::mem;
use std::ops::Range;

/// A finder mark.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Mark {
    /// Its middle.
    pub(crate) middle: Point,
    /// The steps of one module along its two sides, which of the four ways is open.
    pub(crate) steps: [Point; 2],
    /// Light on dark.
    pub(crate) inverted: bool,
    /// How far its edges are from a parallelogram's, in modules.
    pub(crate) misfit: f32,
}

/// Rays from the middle.
const RAYS: usize = 24;

/// Rays that must meet three edges.
const RAYS_NEEDED: usize = 14;

/// Of so many lines through the middle one must be whole and have the ratio: most of what has it in a row has it in no other
/// direction, letters above all.
const ONE_LINE_OF: usize = 4;

/// Edges of a mark in modules from its middle.
const EDGES: [f32; 3] = [1.5, 2.5, 3.5];

/// Most misfit of a mark, in modules.
const MISFIT: f32 = 0.36;

/// An edge so far from where it should be is some other edge, in modules.
const STRAYED: f32 = 0.8;

/// The part of the edges that must not have strayed.
const KEPT: f32 = 0.7;

/// A row's runs may differ so far from what they should be, in modules.
const LOOSE: f32 = 0.75;

/// Shortest mark in a row: 7 modules of 1.2 pixels.
const SHORTEST: f32 = 8.0;

/// Every mark in a picture that is no longer in a row than so many pixels, some twice. `noise` is the contrast below
/// which nothing counts.
pub(crate) fn marks(contrast: &Contrast, noise: i8, longest: f32) -> Vec<Mark> {
    in_bands(contrast.height, contrast.pixels.len(), |rows| marks_of(contrast, noise, longest, rows)).concat()
}

fn marks_of(contrast: &Contrast, noise: i8, longest: f32, rows: Range<usize>) -> Vec<Mark> {
    let mut marks: Vec<Mark> = Vec::new();
    let mut refused: Vec<(Point, f32)> = Vec::new();
    let mut likely = Vec::new();
    for row in rows.step_by(2) {
        likely.clear();
        in_row(&contrast.pixels[row * contrast.width..][..contrast.width], noise, &mut likely);
        for run in likely.iter().filter(|run| run.length <= longest) {
            let place = at(run.middle, row as f32 + 0.5);
            let known = |middle: Point, reach: f32| {
                let apart = place - middle;
                apart.x.abs() < reach && apart.y.abs() < reach
            };
            if marks.iter().rev().take(64).any(|mark| known(mark.middle, mark.module()))
                || refused.iter().rev().take(64).any(|(middle, reach)| known(*middle, *reach))
            {
                continue;
            }
            match mark(contrast, place, run, noise) {
                Some(mark) => marks.push(mark),
                None => refused.push((place, 0.4 * run.length / 7.0)),
            }
        }
    }
    marks
}

impl Mark {
    /// Side of a module, in pixels.
    pub(crate) fn module(&self) -> f32 {
        self.steps[0].cross(self.steps[1]).abs().sqrt()
    }

    /// The same in a picture so many times as large.
    pub(crate) fn times(self, factor: f32) -> Self {
        Self { middle: self.middle * factor, steps: self.steps.map(|step| step * factor), ..self }
    }

    /// A place in modules along its two steps from its middle.
    pub(crate) fn inside(&self, place: Point) -> Point {
        let [u, v] = self.steps;
        let (apart, area) = (place - self.middle, u.cross(v));
        at(apart.cross(v) / area, u.cross(apart) / area)
    }
}

/// A stretch of a row that has the ratio.
struct Run {
    middle: f32,
    length: f32,
    inverted: bool,
}

fn in_row(row: &[i8], noise: i8, found: &mut Vec<Run>) {
    let mut edges = [f32::NEG_INFINITY; 6];
    let mut dark = false;
    let mut zero = 0.0;
    let mut before = 0_i8;
    for (column, &here) in row.iter().enumerate() {
        if (here < 0) != (before < 0) {
            let (from, to) = (f32::from(before), f32::from(here));
            zero = column as f32 - 0.5 + from / (from - to);
        }
        before = here;
        if if dark { here > noise } else { here < -noise } {
            dark = !dark;
            edges.rotate_left(1);
            edges[5] = zero;
            found.extend(ratio(&edges).map(|(middle, length)| Run { middle, length, inverted: dark }));
        }
    }
}

/// The middle and length of five runs that are near 1 : 1 : 3 : 1 : 1.
fn ratio(edges: &[f32; 6]) -> Option<(f32, f32)> {
    let length = edges[5] - edges[0];
    ((SHORTEST..1e6).contains(&length) && in_ratio(edges)).then_some(((edges[2] + edges[3]) / 2.0, length))
}

fn in_ratio(edges: &[f32; 6]) -> bool {
    let module = (edges[5] - edges[0]) / 7.0;
    let near = |part: usize, modules: f32| {
        ((edges[part + 1] - edges[part]) / module - modules).abs() < LOOSE * if part == 2 { 1.6 } else { 1.0 }
    };
    near(0, 1.0) && near(1, 1.0) && near(2, 3.0) && near(3, 1.0) && near(4, 1.0)
}

/// The mark round a place, where there is one.
fn mark(contrast: &Contrast, place: Point, run: &Run, noise: i8) -> Option<Mark> {
    // The row ran through the inner part anywhere: a first fit finds the middle, a second one the mark.
    let rough = fitted_round(contrast, place, run, noise, run.length * 2.0)?;
    let near = rough.0 - place;
    if near.length() > 0.6 * run.length {
        return None;
    }
    let (middle, steps, misfit) =
        fitted_round(contrast, rough.0, run, noise, rough.1[0].length().max(rough.1[1].length()) * 7.0)?;
    let (long, short) = (steps[0].length(), steps[1].length());
    let slant = steps[0].dot(steps[1]).abs() / (long * short);
    let sound = misfit < MISFIT && slant < 0.75 && (0.28..3.6).contains(&(long / short));
    sound.then_some(Mark { middle, steps, inverted: run.inverted, misfit })
}

/// The middle, steps and misfit of the parallelogram that fits the edges round a place.
fn fitted_round(
    contrast: &Contrast,
    place: Point,
    run: &Run,
    noise: i8,
    longest: f32,
) -> Option<(Point, [Point; 2], f32)> {
    let mut edges: [Option<[Point; 3]>; RAYS] = [None; RAYS];
    let (mut met, mut lines) = (0, 0);
    for line in 0..RAYS / 2 {
        let opposite = [line, line + RAYS / 2];
        let ways = opposite.map(way);
        let fars = ways.map(|way| ray(contrast, place, way, run.inverted, longest, noise));
        for ((number, way), far) in opposite.into_iter().zip(ways).zip(fars) {
            edges[number] = far.map(|far| far.map(|far| way * far));
            met += usize::from(far.is_some());
        }
        if let [Some([a, b, c]), Some([d, e, f])] = fars {
            lines += usize::from(in_ratio(&[-f, -e, -d, a, b, c]));
        }
        // What is no mark is given up after a few lines all round.
        if met + RAYS - 2 * (line + 1) < RAYS_NEEDED || ONE_LINE_OF * (lines + 1) <= line + 1 {
            return None;
        }
    }
    let fit = (0..4).filter_map(|turn| fitted(&edges, turn as f32 * std::f32::consts::PI / 8.0));
    let (sides, misfit) = fit.min_by(|(_, one), (_, other)| one.total_cmp(other))?;
    let [a, b] = sides;
    let area = a.along.cross(b.along);
    let steps = [at(b.along.y, -b.along.x) * (1.0 / area), at(-a.along.y, a.along.x) * (1.0 / area)];
    let offset = steps[0] * -a.offset + steps[1] * -b.offset;
    Some((place + offset, steps, misfit))
}

/// The way of a ray: the seventh next of the one before. The rays of one half lie opposite those of the other.
fn way(number: usize) -> Point {
    let (sin, cos) = ((number * 7 % RAYS) as f32 * std::f32::consts::TAU / RAYS as f32).sin_cos();
    at(cos, sin)
}

/// How far the three edges are along a ray.
fn ray(
    contrast: &Contrast,
    from: Point,
    way: Point,
    inverted: bool,
    longest: f32,
    noise: i8,
) -> Option<[f32; 3]> {
    let sign = if inverted { -1.0 } else { 1.0 };
    let noise = f32::from(noise) * 0.7;
    let mut found = [0.0; 3];
    let mut count = 0;
    let mut inside = -1.0_f32;
    let (mut before, mut zero) = (-1.0, 0.0);
    let mut far = 0.0;
    while far < longest {
        let place = from + way * far;
        if !contrast.holds(place) {
            return None;
        }
        let here = sign * contrast.between(place);
        if (here < 0.0) != (before < 0.0) {
            zero = far - here / (here - before);
        }
        before = here;
        if here * inside < 0.0 && here.abs() > noise {
            inside = -inside;
            found[count] = zero.max(0.0);
            count += 1;
            if count == 3 {
                return Some(found);
            }
        }
        far += 1.0;
    }
    None
}

/// One of a parallelogram's two pairs of sides: a place is `along` times it and `offset` modules from the middle.
#[derive(Clone, Copy, PartialEq)]
struct Side {
    along: Point,
    offset: f32,
}

impl Side {
    fn far(self, place: Point) -> f32 {
        self.along.dot(place) + self.offset
    }
}

/// The parallelogram that fits edges best, beginning at a turn, and its misfit.
fn fitted(edges: &[Option<[Point; 3]>; RAYS], turn: f32) -> Option<([Side; 2], f32)> {
    let mean = edges.iter().flatten().map(|far| far[2].length()).sum::<f32>()
        / edges.iter().flatten().count() as f32;
    // A square's edge is 1.12 times its half side away on the mean.
    let module = mean / (EDGES[2] * 1.12);
    let (sin, cos) = turn.sin_cos();
    let mut sides =
        [at(cos, sin), at(-sin, cos)].map(|way| Side { along: way * (1.0 / module), offset: 0.0 });
    // Dirt hides a part of the edges: once the rest is about right, what is far off is left out.
    for strayed in [f32::INFINITY, STRAYED] {
        for _ in 0..3 {
            let mut sums = [Squares::default(); 2];
            each(edges, &sides, |side, place, far| {
                if (sides[side].far(place) - far).abs() < strayed {
                    sums[side].add(place, far);
                }
            });
            let before = mem::replace(&mut sides, [sums[0].solved()?, sums[1].solved()?]);
            if sides == before {
                break;
            }
        }
    }
    let (mut total, mut count, mut all) = (0.0, 0.0, 0.0);
    each(edges, &sides, |side, place, far| {
        let off = sides[side].far(place) - far;
        all += 1.0;
        if off.abs() < STRAYED {
            total += off * off;
            count += 1.0;
        }
    });
    (count >= KEPT * all).then(|| (sides, (total / count).sqrt()))
}

/// Every edge with the side that it belongs to and where it should lie; corners are left out.
fn each(edges: &[Option<[Point; 3]>; RAYS], sides: &[Side; 2], mut with: impl FnMut(usize, Point, f32)) {
    for far in edges.iter().flatten() {
        let [a, b] = sides.map(|side| side.far(far[2]));
        let side = usize::from(b.abs() > a.abs());
        let (greater, lesser) = if side == 0 { (a, b) } else { (b, a) };
        if lesser.abs() < 0.85 * greater.abs() {
            for (place, edge) in far.iter().zip(EDGES) {
                with(side, *place, edge.copysign(greater));
            }
        }
    }
}

/// Sums for the least squares of a side.
#[derive(Clone, Copy, Default)]
struct Squares {
    xx: f32,
    xy: f32,
    yy: f32,
    x: f32,
    y: f32,
    count: f32,
    xf: f32,
    yf: f32,
    f: f32,
}

impl Squares {
    fn add(&mut self, place: Point, far: f32) {
        self.xx += place.x * place.x;
        self.xy += place.x * place.y;
        self.yy += place.y * place.y;
        self.x += place.x;
        self.y += place.y;
        self.count += 1.0;
        self.xf += place.x * far;
        self.yf += place.y * far;
        self.f += far;
    }

    fn solved(self) -> Option<Side> {
        if self.count < 6.0 {
            return None;
        }
        let (mx, my, mf) = (self.x / self.count, self.y / self.count, self.f / self.count);
        let (xx, xy, yy) = (self.xx - self.x * mx, self.xy - self.x * my, self.yy - self.y * my);
        let (xf, yf) = (self.xf - self.x * mf, self.yf - self.y * mf);
        let area = xx * yy - xy * xy;
        if area.abs() < 1e-6 {
            return None;
        }
        let along = at((xf * yy - yf * xy) / area, (yf * xx - xf * xy) / area);
        Some(Side { along, offset: mf - along.x * mx - along.y * my })
    }
}
