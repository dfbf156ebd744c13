//! The attempts on a picture, the cheap ones first.
//!
//! Work is bounded by counts and never by a clock: the same picture gives the same answer on every machine.

use crate::Found;
use crate::decode;
use crate::mark::{Mark, marks};
use crate::mesh::Mesh;
use crate::modules::{Modules, SHARPENINGS};
use crate::plane::{Contrast, Grey};
use crate::point::{Point, at};
use crate::settle::{Look, settle};
use crate::surface::{Surface, flat, surfaces};
use crate::symbol::Symbol;
use crate::trio::{Trio, trios};
use std::cell::OnceCell;

/// How much is spent on a picture.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Effort {
    /// A frame of a live camera: the next one comes at once.
    Frame,
    /// A photograph.
    Photo,
}

impl Effort {
    /// Sets of three marks that are tried.
    fn trios(self) -> usize {
        match self {
            Self::Frame => 4,
            Self::Photo => 24,
        }
    }

    /// Modules of nets that are settled in vain.
    fn settled(self) -> usize {
        match self {
            Self::Frame => 4_000,
            Self::Photo => 40_000,
        }
    }

    /// Versions that a set of three is tried as.
    fn versions(self) -> usize {
        match self {
            Self::Frame => 1,
            Self::Photo => 3,
        }
    }
}

/// Pixels that the mean reaches which parts dark from light: some 5 modules of a code that is 4 pixels a module.
const REACH: usize = 20;

/// The same for blurred and noisy pictures, whose pixels are smoothed first.
const NEAR_REACH: usize = 8;

/// Contrast below which nothing counts: so many deviations of the noise, at least and at most so much of 255.
const NOISE: f32 = 3.0;
const NOISIEST: f32 = 120.0;
const DEVIATIONS: f32 = 1.5;

/// Pixels of a large picture. Its halves are searched before the whole, at a quarter of the work: they show every code of
/// more than some 2.5 pixels a module, and a smaller one is looked for only where they leave something unread. It is not
/// smoothed, for its halves are smooth already.
const LARGE: usize = 4_000_000;

/// Longest mark in a row of a picture that has a half, which shows it as well: 7 modules of 11 pixels.
const LONGEST: f32 = 80.0;

/// Shortest side of a picture that is halved again.
const SMALLEST: usize = 120;

/// A picture no larger is looked at twice as large too, and in a white frame.
const SMALL: usize = 500;
const RIM: usize = 12;

/// Least agreement of the timing rows of a code, -2 to 2, and of all modules of known colour, 0 to 1.
const TIMING: f32 = 0.5;
const AGREEMENT: f32 = 0.62;

/// Misfit of a mark that is hardly anything else, in modules.
const SURE: f32 = 0.25;

/// Sure marks that tell of a code; dirt may hide the third.
const TELLING: usize = 2;

/// Pixels of a module at which a code is best looked at.
const BEST_MODULE: f32 = 3.2;

/// A picture at one size.
struct Level {
    /// Pixels of the whole picture that one of these stands for.
    scale: f32,
    grey: Grey,
    /// Made when it is asked for: a large picture's is dear.
    contrast: OnceCell<Contrast>,
    /// Contrast below which nothing counts.
    noise: i8,
    /// Pixels of the longest mark that is looked for: its half shows a longer one.
    longest: f32,
}

impl Level {
    fn of(grey: Grey, scale: f32) -> Self {
        let noise = (grey.noise() * DEVIATIONS).clamp(NOISE, NOISIEST) as i8;
        Self { scale, contrast: OnceCell::new(), noise, longest: f32::INFINITY, grey }
    }

    /// How much each place stands out.
    fn contrast(&self) -> &Contrast {
        self.contrast.get_or_init(|| self.grey.contrast(REACH))
    }
}

/// What became of a picture.
#[derive(Default)]
pub(crate) struct Looked {
    /// Every code that was read.
    pub(crate) found: Vec<Found>,
    /// So many marks are hardly anything else as a code has: there may be one.
    pub(crate) likely: bool,
}

/// Reads the codes of a picture: all but what [`LARGE`] leaves.
pub(crate) fn read(picture: &Grey, effort: Effort) -> Looked {
    if picture.width < 16 || picture.height < 16 {
        return Looked::default();
    }
    // A code that was cut out of its sheet has lost its quiet zone.
    let cut_out = effort == Effort::Photo && picture.width.max(picture.height) <= SMALL;
    let rim = if cut_out { RIM } else { 0 };
    let levels = levels(if cut_out { picture.framed(RIM, 255) } else { picture.clone() }, effort);
    let mut all = Vec::new();
    let mut found: Vec<Found> = Vec::new();
    let (whole, halves) = levels.split_at(usize::from(levels[0].grey.pixels.len() > LARGE));
    for together in [halves, whole] {
        let first = all.len();
        for level in together {
            gather(&mut all, level, level.contrast(), level.noise);
        }
        attempt(&levels, &all, first, effort, &mut found);
        if !wanting(&all, &found) {
            break;
        }
    }
    if effort == Effort::Photo && wanting(&all, &found) {
        let first = all.len();
        for level in levels.iter().filter(|level| level.grey.pixels.len() <= LARGE) {
            let smooth = level.grey.smoothed().contrast(NEAR_REACH);
            gather(&mut all, level, &smooth, (level.noise + 2) / 3);
        }
        attempt(&levels, &all, first, effort, &mut found);
    }
    for (x, y) in found.iter_mut().flat_map(|found| &mut found.corners) {
        *x -= rim as f32;
        *y -= rim as f32;
    }
    let likely = all.iter().filter(|mark| mark.misfit < SURE).count() >= TELLING;
    Looked { found, likely }
}

/// Whether nothing was read, or marks that belong to no code that was read tell of another one.
fn wanting(all: &[Mark], found: &[Found]) -> bool {
    let unread =
        |mark: &&Mark| mark.misfit < SURE && !found.iter().any(|found| inside(&found.corners, mark.middle));
    found.is_empty() || all.iter().filter(unread).count() >= TELLING
}

/// The picture, doubled where it is small, and its halves.
fn levels(picture: Grey, effort: Effort) -> Vec<Level> {
    let mut levels = Vec::new();
    let small = picture.width.max(picture.height) <= SMALL + 2 * RIM;
    if small && effort == Effort::Photo {
        levels.push(Level::of(picture.doubled(), 0.5));
    }
    levels.push(Level::of(picture, 1.0));
    while let Some(last) =
        levels.last_mut().filter(|last| last.grey.width.min(last.grey.height) >= 2 * SMALLEST)
    {
        last.longest = LONGEST;
        let next = Level::of(last.grey.halved(), last.scale * 2.0);
        levels.push(next);
    }
    levels
}

/// Adds the marks of a picture to those that are known, unless they are the same.
fn gather(all: &mut Vec<Mark>, level: &Level, contrast: &Contrast, noise: i8) {
    for mark in marks(contrast, noise, level.longest) {
        let mark = mark.times(level.scale);
        let same = |known: &Mark| {
            known.inverted == mark.inverted && (known.middle - mark.middle).length() < 1.5 * mark.module()
        };
        if !all.iter().any(same) {
            all.push(mark);
        }
    }
}

/// Tries the sets of three that have a mark from `first` on.
fn attempt(levels: &[Level], all: &[Mark], first: usize, effort: Effort, found: &mut Vec<Found>) {
    let (mut tried, mut left) = (0, effort.settled());
    for trio in trios(all) {
        let news = first == 0 || trio.marks.iter().any(|mark| *mark >= first);
        let middle = (trio.top_right.middle + trio.bottom_left.middle) * 0.5;
        if !news || found.iter().any(|known| inside(&known.corners, middle)) {
            continue;
        }
        found.extend(code(levels, &trio, effort, &mut left));
        tried += 1;
        if tried == effort.trios() {
            return;
        }
    }
}

/// Whether a place lies within four corners.
fn inside(corners: &[(f32, f32); 4], place: Point) -> bool {
    let corner = |number: usize| at(corners[number % 4].0, corners[number % 4].1);
    (0..4).all(|side| (corner(side + 1) - corner(side)).cross(place - corner(side)) > 0.0)
}

/// The code whose corners three marks are.
fn code(levels: &[Level], trio: &Trio, effort: Effort, left: &mut usize) -> Option<Found> {
    let level = levels.iter().rfind(|level| trio.module() / level.scale >= BEST_MODULE).or(levels.first())?;
    let trio = trio.times(1.0 / level.scale);
    surfaces(&trio, level.contrast())
        .into_iter()
        .take(effort.versions())
        .filter(|(timing, ..)| *timing > TIMING)
        .find_map(|(_, version, surface)| shaped(level, version, surface, left))
}

/// The code of that version, flat or bent; `left` is how many modules may still be settled in vain.
fn shaped(level: &Level, version: u32, mut surface: Surface, left: &mut usize) -> Option<Found> {
    let symbol = Symbol::of(version)?;
    let inverted = surface.trio().inverted;
    let scale = scale(level, &symbol, &surface, inverted);
    let look = Look { contrast: level.contrast(), scale, symbol: &symbol };
    surface.aligned(level.contrast(), &symbol, scale);
    let far = symbol.side as f32 - if symbol.side < 25 { 3.5 } else { 6.5 };
    let fourth = (at(far, far), surface.place(at(far, far)));
    let plane = flat(surface.trio(), symbol.side, fourth).map(|plane| Mesh::over(symbol.side, plane));
    let bent = Mesh::over(symbol.side, |module| surface.place(module));
    let mut meshes: Vec<(f32, Mesh)> =
        plane.into_iter().chain([bent]).map(|mesh| (look.fit(&mesh), mesh)).collect();
    meshes.sort_by(|one, other| other.0.total_cmp(&one.0));
    let mut likely = false;
    for (_, mesh) in &meshes {
        let (agreement, found) = told(level, &symbol, mesh, inverted);
        if found.is_some() {
            return found;
        }
        likely |= agreement > AGREEMENT;
    }
    if !likely {
        return None;
    }
    meshes.into_iter().find_map(|(_, mut mesh)| {
        let rest = left.checked_sub(symbol.side * symbol.side)?;
        settle(&mut mesh, &look);
        let found = told(level, &symbol, &mesh, inverted).1;
        if found.is_none() {
            *left = rest;
        }
        found
    })
}

/// One over the contrast of a whole module, by the corners' marks.
fn scale(level: &Level, symbol: &Symbol, surface: &Surface, inverted: bool) -> f32 {
    let (mut sum, mut count) = (0.0, 0.0);
    for (number, fixed) in symbol.fixed.iter().enumerate().filter(|(_, fixed)| **fixed != 0) {
        let (column, row) = (number % symbol.side, number / symbol.side);
        let reach = |at: usize| at < 8 || at + 8 >= symbol.side;
        if *fixed < 0 && reach(column) && reach(row) {
            sum += level.contrast().between(surface.place(at(column as f32 + 0.5, row as f32 + 0.5))).abs();
            count += 1.0;
        }
    }
    let scale = count / (sum + count);
    if inverted { -scale } else { scale }
}

/// What a code says whose modules lie as a net tells, and how far the modules of known colour agree.
fn told(level: &Level, symbol: &Symbol, mesh: &Mesh, inverted: bool) -> (f32, Option<Found>) {
    let modules = Modules::sampled(&level.grey, mesh, symbol.side, inverted);
    let mut best = 0.0_f32;
    for sharpening in SHARPENINGS {
        let values = modules.set_off(sharpening);
        let agreement = agreement(symbol, &values);
        best = best.max(agreement);
        if agreement > AGREEMENT {
            let text = decode::text(symbol, &values);
            let text = text.or_else(|| decode::text(symbol, &mirrored(&values, symbol.side)));
            if let Some(text) = text {
                return (agreement, Some(Found { text, corners: corners(level, symbol, mesh) }));
            }
        }
    }
    (best, None)
}

fn corners(level: &Level, symbol: &Symbol, mesh: &Mesh) -> [(f32, f32); 4] {
    let side = symbol.side as f32;
    [(0.0, 0.0), (side, 0.0), (side, side), (0.0, side)].map(|(x, y)| {
        let place = mesh.place(at(x, y)) * level.scale;
        (place.x, place.y)
    })
}

/// The part of the modules of known colour that have it.
fn agreement(symbol: &Symbol, values: &[f32]) -> f32 {
    let known = symbol.fixed.iter().zip(values).filter(|(fixed, _)| **fixed != 0);
    let (right, all) = known.fold((0, 0), |(right, all), (fixed, value)| {
        (right + usize::from((*fixed < 0) == (*value < 0.0)), all + 1)
    });
    right as f32 / all as f32
}

/// As seen in a mirror.
fn mirrored(values: &[f32], side: usize) -> Vec<f32> {
    (0..side * side).map(|at| values[at % side * side + at / side]).collect()
}
