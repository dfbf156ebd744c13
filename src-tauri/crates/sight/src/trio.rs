//! Three marks that may be the corners of one code.

use crate::mark::Mark;
use crate::point::Point;

/// A mark whose steps are known to be along the code's rows and columns.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Corner {
    pub(crate) middle: Point,
    /// One module to the right on the code.
    pub(crate) right: Point,
    /// One module down.
    pub(crate) down: Point,
}

/// The three marked corners of a code.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Trio {
    pub(crate) top_left: Corner,
    pub(crate) top_right: Corner,
    pub(crate) bottom_left: Corner,
    /// Light on dark.
    pub(crate) inverted: bool,
    /// Which marks they are.
    pub(crate) marks: [usize; 3],
    /// How unlikely: 0 for three that fit perfectly.
    pub(crate) strain: f32,
}

/// A mark seen from another lies so far off its axis, in parts of its distance.
const ASLANT: f32 = 0.5;

/// Distances between middles in modules: a code of version 1 has 14, of version 40 170; a bent one looks smaller or larger.
const NEAREST: f32 = 9.0;
const FURTHEST: f32 = 230.0;

/// Marks that are looked at, and of each the partners, both the surest: gravel and leaves are full of what looks like a mark,
/// and sets of three grow with the cube.
const MOST: usize = 400;
const PARTNERS: usize = 48;

/// All sets of three that could be a code, the likeliest first.
pub(crate) fn trios(marks: &[Mark]) -> Vec<Trio> {
    let mut surest: Vec<usize> = (0..marks.len()).collect();
    surest.sort_by(|one, other| marks[*one].misfit.total_cmp(&marks[*other].misfit));
    surest.truncate(MOST);
    let mut trios = Vec::new();
    for &first in &surest {
        let corner = &marks[first];
        let seen = surest.iter().filter_map(|other| Some((*other, sight(corner, &marks[*other])?)));
        let partners: Vec<(usize, Sight)> = seen.take(PARTNERS).collect();
        for (right, seen_right) in &partners {
            for (below, seen_below) in &partners {
                let ways = (seen_right.way, seen_below.way);
                if seen_right.axis != seen_below.axis && ways.0.cross(ways.1) > 0.0 {
                    trios.extend(trio(marks, [first, *right, *below], [*seen_right, *seen_below]));
                }
            }
        }
    }
    trios.sort_by(|one, other| one.strain.total_cmp(&other.strain));
    trios
}

/// How one mark sees another: along which of its axes, which way, how far and how far aside.
#[derive(Clone, Copy)]
struct Sight {
    axis: usize,
    way: Point,
    modules: f32,
    aside: f32,
}

/// None where the other is the same mark, too near or far, of another kind, or off both axes.
fn sight(from: &Mark, to: &Mark) -> Option<Sight> {
    let place = from.inside(to.middle);
    let (axis, along, aside) =
        if place.x.abs() > place.y.abs() { (0, place.x, place.y) } else { (1, place.y, place.x) };
    let sizes = to.module() / from.module();
    let sound = from.inverted == to.inverted
        && (NEAREST..FURTHEST).contains(&along.abs())
        && aside.abs() < ASLANT * along.abs()
        && (0.4..2.5).contains(&sizes);
    let way = from.steps[axis] * along.signum();
    sound.then_some(Sight { axis, way, modules: along.abs(), aside: (aside / along).abs() })
}

fn trio(marks: &[Mark], which: [usize; 3], seen: [Sight; 2]) -> Option<Trio> {
    let [corner, right, below] = which.map(|number| &marks[number]);
    let back = [sight(right, corner)?, sight(below, corner)?];
    let (row, column) =
        ((seen[0].modules + back[0].modules) / 2.0, (seen[1].modules + back[1].modules) / 2.0);
    let uneven = (row / column).ln().abs();
    let size = (row + column) / 2.0;
    // Each of the two must see the other across the code.
    let across = |from: &Mark, other: &Mark| {
        let place = from.inside(other.middle);
        ((place.x.abs() / size - 1.0).abs()).max((place.y.abs() / size - 1.0).abs())
    };
    let skew = across(right, below).max(across(below, right));
    if uneven > 0.5 || skew > 0.6 {
        return None;
    }
    let other_axis = |mark: &Mark, axis: usize, along: Point, turn: f32| {
        let step = mark.steps[1 - axis];
        if along.cross(step) * turn > 0.0 { step } else { step * -1.0 }
    };
    let (right_step, down_step) = (back[0].way * -1.0, back[1].way * -1.0);
    let misfit: f32 = which.iter().map(|number| marks[*number].misfit).sum();
    let aside = seen.iter().chain(&back).map(|sight| sight.aside).sum::<f32>();
    Some(Trio {
        top_left: Corner { middle: corner.middle, right: seen[0].way, down: seen[1].way },
        top_right: Corner {
            middle: right.middle,
            right: right_step,
            down: other_axis(right, back[0].axis, right_step, 1.0),
        },
        bottom_left: Corner {
            middle: below.middle,
            right: other_axis(below, back[1].axis, down_step, -1.0),
            down: down_step,
        },
        inverted: corner.inverted,
        marks: which,
        strain: uneven + skew + aside / 2.0 + misfit + size / 500.0,
    })
}

impl Trio {
    /// Modules of a side, by the steps at the corners.
    pub(crate) fn side(&self) -> f32 {
        let along = |from: &Corner, to: &Corner, step: fn(&Corner) -> Point| {
            let (way, length) = (to.middle - from.middle, (to.middle - from.middle).length());
            let modules = |corner: &Corner| length * length / way.dot(step(corner)).abs().max(1e-3);
            (modules(from) + modules(to)) / 2.0
        };
        let row = along(&self.top_left, &self.top_right, |corner| corner.right);
        let column = along(&self.top_left, &self.bottom_left, |corner| corner.down);
        (row + column) / 2.0 + 7.0
    }

    /// Side of a module in pixels.
    pub(crate) fn module(&self) -> f32 {
        let corners = [&self.top_left, &self.top_right, &self.bottom_left];
        corners.iter().map(|corner| corner.right.cross(corner.down).abs().sqrt()).sum::<f32>() / 3.0
    }

    /// The same in a picture so many times as large.
    pub(crate) fn times(&self, factor: f32) -> Self {
        let scaled = |corner: &Corner| Corner {
            middle: corner.middle * factor,
            right: corner.right * factor,
            down: corner.down * factor,
        };
        Self {
            top_left: scaled(&self.top_left),
            top_right: scaled(&self.top_right),
            bottom_left: scaled(&self.bottom_left),
            ..*self
        }
    }
}
