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

/// Contrast below which nothing counts, of 255.
const NOISE: i8 = 4;
const SMOOTH_NOISE: i8 = 1;

/// Shortest side of a picture that is halved again.
const SMALLEST: usize = 120;

/// Pixels of a module at which a code is best looked at.
const BEST_MODULE: f32 = 3.2;

/// A picture at one size.
struct Level {
    /// Pixels of the whole picture that one of these stands for.
    scale: f32,
    grey: Grey,
    contrast: Contrast,
}

/// Every code of a picture.
pub(crate) fn read(picture: Grey, effort: Effort) -> Vec<Found> {
    if picture.width < 16 || picture.height < 16 {
        return Vec::new();
    }
    let levels = levels(picture, effort);
    let mut all = Vec::new();
    let mut found: Vec<Found> = Vec::new();
    for level in &levels {
        gather(&mut all, &level.contrast, NOISE, level.scale);
    }
    attempt(&levels, &all, 0, effort, &mut found);
    if effort == Effort::Photo {
        let first = all.len();
        for level in &levels {
            let smooth = level.grey.smoothed().contrast(NEAR_REACH);
            gather(&mut all, &smooth, SMOOTH_NOISE, level.scale);
        }
        attempt(&levels, &all, first, effort, &mut found);
    }
    found
}

/// The picture, doubled where it is small, and its halves.
fn levels(picture: Grey, effort: Effort) -> Vec<Level> {
    let mut levels = Vec::new();
    let small = picture.width.max(picture.height) <= 500;
    let level = |grey: Grey, scale: f32| Level { scale, contrast: grey.contrast(REACH), grey };
    if small && effort == Effort::Photo {
        levels.push(level(picture.doubled(), 0.5));
    }
    levels.push(level(picture, 1.0));
    while let Some(last) = levels.last().filter(|last| last.grey.width.min(last.grey.height) >= 2 * SMALLEST)
    {
        let next = level(last.grey.halved(), last.scale * 2.0);
        levels.push(next);
    }
    levels
}

/// Adds the marks of a picture to those that are known, unless they are the same.
fn gather(all: &mut Vec<Mark>, contrast: &Contrast, noise: i8, scale: f32) {
    for mark in marks(contrast, noise) {
        let mark = mark.times(scale);
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
    let mut tried = 0;
    for trio in trios(all) {
        let news = first == 0 || trio.marks.iter().any(|mark| *mark >= first);
        let middle = (trio.top_right.middle + trio.bottom_left.middle) * 0.5;
        if !news || found.iter().any(|known| inside(&known.corners, middle)) {
            continue;
        }
        found.extend(code(levels, &trio, effort));
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
fn code(levels: &[Level], trio: &Trio, effort: Effort) -> Option<Found> {
    let level = levels
        .iter()
        .filter(|level| trio.module() / level.scale >= BEST_MODULE)
        .next_back()
        .or(levels.first())?;
    let trio = trio.times(1.0 / level.scale);
    surfaces(&trio, &level.contrast)
        .into_iter()
        .take(effort.versions())
        .find_map(|(version, surface)| shaped(level, version, surface, effort))
}

/// The code of that version, flat or bent.
fn shaped(level: &Level, version: u32, mut surface: Surface, effort: Effort) -> Option<Found> {
    let symbol = Symbol::of(version)?;
    let inverted = surface.trio().inverted;
    let scale = scale(level, &symbol, &surface, inverted);
    let look = Look { contrast: &level.contrast, scale, symbol: &symbol };
    surface.aligned(&level.contrast, &symbol, scale);
    let far = symbol.side as f32 - if symbol.side < 25 { 3.5 } else { 6.5 };
    let fourth = (at(far, far), surface.place(at(far, far)));
    let plane = flat(surface.trio(), symbol.side, fourth).map(|plane| Mesh::over(symbol.side, plane));
    let bent = Mesh::over(symbol.side, |module| surface.place(module));
    let mut meshes: Vec<(f32, Mesh)> =
        plane.into_iter().chain([bent]).map(|mesh| (look.fit(&mesh), mesh)).collect();
    meshes.sort_by(|one, other| other.0.total_cmp(&one.0));
    for (_, mesh) in &meshes {
        if let Some(found) = told(level, &symbol, mesh, inverted) {
            return Some(found);
        }
    }
    let tries = if effort == Effort::Frame { 1 } else { meshes.len() };
    meshes.into_iter().take(tries).find_map(|(_, mut mesh)| {
        settle(&mut mesh, &look);
        told(level, &symbol, &mesh, inverted)
    })
}

/// One over the contrast of a whole module, by the corners' marks.
fn scale(level: &Level, symbol: &Symbol, surface: &Surface, inverted: bool) -> f32 {
    let (mut sum, mut count) = (0.0, 0.0);
    for (number, fixed) in symbol.fixed.iter().enumerate().filter(|(_, fixed)| **fixed != 0) {
        let (column, row) = (number % symbol.side, number / symbol.side);
        let reach = |at: usize| at < 8 || at + 8 >= symbol.side;
        if *fixed < 0 && reach(column) && reach(row) {
            sum += level.contrast.between(surface.place(at(column as f32 + 0.5, row as f32 + 0.5))).abs();
            count += 1.0;
        }
    }
    let scale = count / (sum + count);
    if inverted { -scale } else { scale }
}

/// What a code says whose modules lie as a net tells.
fn told(level: &Level, symbol: &Symbol, mesh: &Mesh, inverted: bool) -> Option<Found> {
    let modules = Modules::sampled(&level.grey, mesh, symbol.side, inverted);
    let text = SHARPENINGS.iter().find_map(|sharpening| {
        let values = modules.set_off(*sharpening);
        if agreement(symbol, &values) < 0.7 {
            return None;
        }
        decode::text(symbol, &values).or_else(|| decode::text(symbol, &mirrored(&values, symbol.side)))
    })?;
    let side = symbol.side as f32;
    let corners = [(0.0, 0.0), (side, 0.0), (side, side), (0.0, side)].map(|(x, y)| {
        let place = mesh.place(at(x, y)) * level.scale;
        (place.x, place.y)
    });
    Some(Found { text, corners })
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
