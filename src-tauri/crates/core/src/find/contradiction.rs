//! Where the print says one thing and the hose in the hand another.

use super::belief::Class;
use super::hose::bore_limits;
use super::{HoseReadings, LIKELY, Part};
use crate::catalogue::{Catalogue, HoseRow, Reinforcement};
use crate::print::{Said, is_one_pressure};
use crate::quantity::{Millimetres, Reading};
use crate::spec::Cover;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::ops::RangeInclusive;
use ts_rs::TS;

/// How far beyond its limits a diameter of used hose is still no contradiction, mm (below, above): wear,
/// oil and a flared braid change it. Common practice, no source.
const BORE_MARGIN_MM: (f64, f64) = (0.3, 0.1);
const REINFORCEMENT_MARGIN_MM: (f64, f64) = (0.1, 0.5);
const COVER_MARGIN_MM: (f64, f64) = (1.0, 1.0);

/// A reading differs that lies so many standard errors beyond the margin.
const ERRORS: f64 = 3.0;

/// One thing that the print and the readings say differently. Candidates come from both together all
/// the same: either can be wrong.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[ts(rename = "PrintContradiction")]
pub struct Contradiction {
    /// What is contradicted.
    pub code: Contradicted,
    /// Which part.
    pub of: Part,
    /// What the print names, such as `EN 853 2SN DN 16`; for a pressure, the hose whose rating it is not.
    pub named: String,
    /// What the print says, or the limit or rating nearest to what was read.
    #[serde(default)]
    pub printed: Option<Stated>,
    /// What was read; for a pressure, the rating of the table.
    #[serde(default)]
    pub measured: Option<Stated>,
    /// Both in words, and what to do; empty until the edge writes it.
    #[serde(default)]
    pub words: String,
}

impl Contradiction {
    fn new(code: Contradicted, named: impl Into<String>, sides: Option<(Stated, Stated)>) -> Self {
        let (printed, measured) = sides.unzip();
        Self { code, of: Part::Hose, named: named.into(), printed, measured, words: String::new() }
    }
}

/// What a print and the readings can differ in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Contradicted {
    /// The print itself: no hose of the tables has that standard, type and size.
    NoSuchHose,
    /// What carries the pressure.
    Reinforcement,
    /// Layers of it.
    Layers,
    /// Bore, mm.
    Bore,
    /// Diameter over the reinforcement, mm.
    ReinforcementOd,
    /// Diameter over the cover, mm.
    CoverOd,
    /// The cover's duty.
    Cover,
    /// The working pressure, bar: that of the print and of the table.
    Pressure,
}

impl Contradicted {
    /// Every code.
    pub const ALL: [Self; 8] = [
        Self::NoSuchHose,
        Self::Reinforcement,
        Self::Layers,
        Self::Bore,
        Self::ReinforcementOd,
        Self::CoverOd,
        Self::Cover,
        Self::Pressure,
    ];

    /// Whether it leaves open which hose it is. Ratings differ between editions of one standard.
    pub(super) fn is_of_identity(self) -> bool {
        self != Self::Pressure
    }
}

/// A value of one side.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(untagged)]
pub enum Stated {
    /// A count, millimetres or bar, by the code.
    Number(f64),
    /// What carries the pressure.
    Reinforcement(Reinforcement),
    /// What the cover is.
    Cover(Cover),
}

/// Every contradiction between a print and what was read of the hose, and within the print.
/// `otherwise` is the row that all evidence together makes likeliest, where one is likely.
pub(super) fn contradictions(
    catalogue: &Catalogue,
    said: &Said,
    rows: &[&HoseRow],
    hose: &HoseReadings,
    caliper: f64,
    otherwise: Option<&HoseRow>,
) -> Vec<Contradiction> {
    let meant: Vec<&HoseRow> = said.meant.iter().filter_map(|&at| rows.get(at).copied()).collect();
    let mut found = Vec::new();
    let mut differ = |code, printed: Stated, measured: Stated| {
        found.push(Contradiction::new(code, &said.named, Some((printed, measured))));
    };
    if let Some((printed, seen)) = reinforcement(catalogue, &meant, hose) {
        differ(Contradicted::Reinforcement, Stated::Reinforcement(printed), Stated::Reinforcement(seen));
    }
    if let Some((printed, seen)) = layers(catalogue, &meant, hose) {
        differ(Contradicted::Layers, Stated::Number(printed.into()), Stated::Number(seen.into()));
    }
    let lengths = [
        (Contradicted::Bore, hose.id_mm, BORE_MARGIN_MM, bore as fn(&HoseRow) -> _),
        (
            Contradicted::ReinforcementOd,
            hose.reinforcement_od_mm,
            REINFORCEMENT_MARGIN_MM,
            over_reinforcement,
        ),
        (Contradicted::CoverOd, hose.cover_od_mm, COVER_MARGIN_MM, over_cover),
    ];
    for (code, reading, margin, limits) in lengths {
        if let Some(reading) = reading
            && let Some(nearest) = outside(reading, caliper, margin, meant.iter().map(|row| limits(row)))
        {
            differ(code, Stated::Number(nearest), Stated::Number(reading.value.get()));
        }
    }
    if let (Some(printed), Some(seen)) = (said.cover, hose.cover)
        && printed != seen
    {
        differ(Contradicted::Cover, Stated::Cover(printed), Stated::Cover(seen));
    }
    if said.names_hose && meant.is_empty() {
        found.push(Contradiction::new(Contradicted::NoSuchHose, &said.named, None));
    }
    found.extend(pressure(catalogue, said, &meant, otherwise));
    found
}

/// The likeliest row of all that the print can mean, where it names a hose and is contradicted.
pub(super) fn printed_row(
    said: &Said,
    contradictions: &[Contradiction],
    probabilities: &[f64],
) -> Option<usize> {
    let rows = || said.meant.iter().copied().filter(|&at| at < probabilities.len());
    rows()
        .filter(|_| !contradictions.is_empty())
        .max_by(|&a, &b| probabilities[a].total_cmp(&probabilities[b]))
}

/// Keeps the class of that row in the list, however unlikely the readings make it.
pub(super) fn keep(found: &mut Vec<Class>, unknown: &mut f64, members: Vec<usize>, probability: f64) {
    if members.is_empty() || found.iter().any(|class| class.members == members) {
        return;
    }
    found.push(Class { members, probability });
    let all = 1.0 + probability;
    found.iter_mut().for_each(|class| class.probability /= all);
    *unknown /= all;
}

/// The row of the likeliest class, where it is likely.
pub(super) fn likely<'c>(found: &[Class], rows: &[&'c HoseRow]) -> Option<&'c HoseRow> {
    let class = found.first().filter(|class| class.probability >= LIKELY)?;
    rows.get(*class.members.first()?).copied()
}

/// What the meant types have for a part that was seen; nothing where one of them leaves it open.
fn of_types<T>(
    catalogue: &Catalogue,
    meant: &[&HoseRow],
    of: impl Fn(&crate::catalogue::HoseType) -> Option<T>,
) -> Option<Vec<T>> {
    meant
        .iter()
        .map(|row| catalogue.hose_type(&row.standard, &row.kind).ok().and_then(&of))
        .collect::<Option<Vec<T>>>()
        .filter(|all| !all.is_empty())
}

fn reinforcement(
    catalogue: &Catalogue,
    meant: &[&HoseRow],
    hose: &HoseReadings,
) -> Option<(Reinforcement, Reinforcement)> {
    let seen = hose.reinforcement?;
    let printed = of_types(catalogue, meant, |kind| kind.reinforcement)?;
    (!printed.contains(&seen)).then(|| (printed[0], seen))
}

/// The allowed count nearest to the one that was counted.
fn layers(catalogue: &Catalogue, meant: &[&HoseRow], hose: &HoseReadings) -> Option<(u8, u8)> {
    let seen = hose.layers?;
    let printed = of_types(catalogue, meant, |kind| Some(kind.layers_min..=kind.layers_max))?;
    let nearest = printed.into_iter().map(|layers| seen.clamp(*layers.start(), *layers.end()));
    nearest.min_by_key(|layers| layers.abs_diff(seen)).filter(|layers| *layers != seen).map(|n| (n, seen))
}

type Limits = Option<RangeInclusive<f64>>;

fn bore(row: &HoseRow) -> Limits {
    let (min, max) = bore_limits(row);
    Some(min..=max)
}

/// Limits of which one may stand alone.
fn limits(min: Option<Millimetres>, max: Option<Millimetres>) -> Limits {
    if min.is_none() && max.is_none() {
        return None;
    }
    Some(min.map_or(0.0, Millimetres::get)..=max.map_or(f64::INFINITY, Millimetres::get))
}

fn over_reinforcement(row: &HoseRow) -> Limits {
    limits(row.reinforcement_od_min_mm, row.reinforcement_od_max_mm)
}

fn over_cover(row: &HoseRow) -> Limits {
    limits(row.cover_od_min_mm, row.cover_od_max_mm)
}

/// The nearest limit, where the reading lies beyond those of every row.
fn outside(
    reading: Reading,
    caliper: f64,
    (below, above): (f64, f64),
    rows: impl Iterator<Item = Limits>,
) -> Option<f64> {
    let value = reading.value.get();
    let error = ERRORS * reading.error.map_or(caliper, Millimetres::get);
    let mut nearest: Option<f64> = None;
    for limits in rows {
        let (min, max) = limits?.into_inner();
        if value >= min - below - error && value <= max + above + error {
            return None;
        }
        let limit = value.clamp(min, max);
        nearest = nearest.filter(|other| (other - value).abs() <= (limit - value).abs()).or(Some(limit));
    }
    nearest
}

/// A printed pressure that is the rating of nothing the print can mean; where it names no hose, of
/// what the hose otherwise is.
fn pressure(
    catalogue: &Catalogue,
    said: &Said,
    meant: &[&HoseRow],
    otherwise: Option<&HoseRow>,
) -> Option<Contradiction> {
    let printed = said.pressure?.get();
    let (rows, named) = match otherwise {
        Some(row) if meant.is_empty() => {
            (std::slice::from_ref(&row).to_vec(), format!("{} {} DN {}", row.standard, row.kind, row.dn))
        }
        _ => (meant.to_vec(), said.named.clone()),
    };
    let newer = rows.iter().filter_map(|row| Some(catalogue.newer_edition(row)?.1));
    let rated: Option<Vec<f64>> = rows
        .iter()
        .copied()
        .chain(newer)
        .map(|row| row.max_working_pressure_bar.map(|bar| bar.get()))
        .collect();
    let nearest = rated?.into_iter().min_by(|a, b| (a - printed).abs().total_cmp(&(b - printed).abs()))?;
    let sides = (Stated::Number(printed), Stated::Number(nearest));
    (!is_one_pressure(printed, nearest))
        .then(|| Contradiction::new(Contradicted::Pressure, named, Some(sides)))
}
