//! What a hose can be: every size of every type, twins of other standards included.

use super::HoseReadings;
use super::confusion;
use super::model::Model;
use super::range::range_mm;
use super::terms;
use super::truth::{Scale, Seen, Terms, Truth};
use crate::catalogue::{Catalogue, HoseRow, HoseType, PartKind};
use crate::quantity::{Bar, Millimetres, Reading};
use std::collections::HashMap;

/// Columns of the model, in the order of their truths.
const BORE: usize = 0;
const REINFORCEMENT_OD: usize = 1;
const COVER_OD: usize = 2;
const REINFORCEMENT: usize = 3;
const LAYERS: usize = 4;
const COVER: usize = 5;
const COLUMNS: usize = 6;

/// Share of caliper readings that are anything. Common practice.
const OUTLIERS: f64 = 0.02;

/// Where a table gives the nominal bore alone: limits of the bore round it, and how far beyond it
/// the reinforcement and the cover may reach, mm. Broad on purpose; ISO 1307 bores lie within the
/// first.
const BORE_LIMITS_MM: (f64, f64) = (0.4, 0.8);
const REINFORCEMENT_BEYOND_BORE_MM: (f64, f64) = (1.5, 25.0);
const COVER_BEYOND_BORE_MM: (f64, f64) = (2.5, 35.0);

/// Scale of the half-normal where only one limit stands, mm: covers lie within about a millimetre
/// and a half of their largest, reinforcements within one.
const ONE_LIMIT_SCALE_MM: f64 = 0.8;

/// What a hose in no table adds to the logarithm of the likelihood of its readings: what lies round a bore lies as
/// near it as that of any hose.
pub(super) fn ln_round_a_bore(model: &Model, seen: &[(usize, Seen)]) -> f64 {
    let value = |column: usize| {
        seen.iter().find_map(|&(of, seen)| match seen {
            Seen::Value { value, .. } if of == column => Some(value),
            _ => None,
        })
    };
    let round = |column: usize, (least, most): (f64, f64)| {
        let beyond = value(column).zip(value(BORE)).map(|(outside, bore)| outside - bore);
        let is_near = beyond.is_some_and(|beyond| (least..=most).contains(&beyond));
        if is_near { -((most - least) * model.columns[column].scale.flat()).ln() } else { 0.0 }
    };
    round(REINFORCEMENT_OD, REINFORCEMENT_BEYOND_BORE_MM) + round(COVER_OD, COVER_BEYOND_BORE_MM)
}

/// Every hypothesis about the hose, and what each says of every reading.
#[derive(Debug)]
pub(super) struct Hoses {
    pub(super) model: Model,
    /// What each hypothesis asks of the hose that replaces it: rows that ask the same have the same
    /// number, and which of them it was changes nothing in the build.
    pub(super) build: Vec<usize>,
}

/// The hypotheses: all size rows of the catalogue, in its order.
pub(super) fn rows(catalogue: &Catalogue) -> Vec<&HoseRow> {
    catalogue.hoses.iter().chain(&catalogue.twins).collect()
}

impl Hoses {
    /// A hypothesis for each of [`rows`].
    pub(super) fn of(catalogue: &Catalogue) -> Self {
        let types: HashMap<(&str, &str), &HoseType> =
            catalogue.types.iter().map(|kind| ((kind.standard.as_str(), kind.kind.as_str()), kind)).collect();
        let mut hoses =
            Self { model: Model::new(columns(catalogue), catalogue, PartKind::Hose), build: Vec::new() };
        let mut builds = HashMap::new();
        for row in rows(catalogue) {
            let kind = types.get(&(row.standard.as_str(), row.kind.as_str())).copied();
            hoses.model.push(&truths(row, kind), Some(row.dn));
            let new = builds.len();
            hoses.build.push(*builds.entry(asked_of_a_new_hose(row, kind)).or_insert(new));
        }
        hoses
    }
}

/// All that a check holds a replacement to, by the row of the original: size and bore, pressure, bend,
/// temperatures, and what the hose is made of.
fn asked_of_a_new_hose(row: &HoseRow, kind: Option<&HoseType>) -> impl Eq + std::hash::Hash {
    let bits = |value: Option<f64>| value.map(f64::to_bits);
    (
        (row.dn, row.id_nom_mm.get().to_bits()),
        bits(row.max_working_pressure_bar.map(Bar::get)),
        (bits(row.min_bend_radius_mm.map(Millimetres::get)), bits(row.vacuum_kpa_abs)),
        (row.temp_min_c.get().to_bits(), row.temp_max_c.get().to_bits()),
        kind.map(|kind| (kind.reinforcement, kind.tube.clone(), kind.cover.clone())),
    )
}

/// A hose in no table may have the bore of one that is, and nothing else of it.
fn columns(catalogue: &Catalogue) -> Vec<(&'static str, Scale, Option<usize>)> {
    let length = |key: &'static str, of_trait| {
        let (lowest, highest) = range_mm(key);
        let male = terms::of(catalogue, PartKind::Hose, key, None);
        (key, Scale::Length { lowest, highest, outliers: OUTLIERS, male, female: Vec::new() }, of_trait)
    };
    vec![
        length("id_mm", Some(0)),
        length("reinforcement_od_mm", None),
        length("cover_od_mm", None),
        ("reinforcement", confusion::REINFORCEMENT, None),
        ("layers", confusion::LAYERS, None),
        ("cover", confusion::COVER, None),
    ]
}

/// Limits of the bore of a new hose.
pub(super) fn bore_limits(row: &HoseRow) -> (f64, f64) {
    let nominal = row.id_nom_mm.get();
    row.id_mm.map_or((nominal - BORE_LIMITS_MM.0, nominal + BORE_LIMITS_MM.1), |band| (band.min, band.max))
}

fn truths(row: &HoseRow, kind: Option<&HoseType>) -> [Truth; COLUMNS] {
    let nominal = row.id_nom_mm.get();
    let beyond = |(least, most): (f64, f64)| (nominal + least, nominal + most);
    let (bore_min, bore_max) = bore_limits(row);
    let mut truths = [Truth::Unstated; COLUMNS];
    truths[BORE] = Truth::Band { min: bore_min, max: bore_max, terms: Terms::Male };
    truths[REINFORCEMENT_OD] = limits(
        row.reinforcement_od_min_mm,
        row.reinforcement_od_max_mm,
        beyond(REINFORCEMENT_BEYOND_BORE_MM),
    );
    truths[COVER_OD] = limits(row.cover_od_min_mm, row.cover_od_max_mm, beyond(COVER_BEYOND_BORE_MM));
    if let Some(kind) = kind {
        if let Some(reinforcement) = kind.reinforcement {
            truths[REINFORCEMENT] = Truth::OneOf(1 << reinforcement as u16);
        }
        let layers = (kind.layers_min..=kind.layers_max).filter(|layers| (1..=6).contains(layers));
        match layers.fold(0, |mask, layers| mask | 1 << (layers - 1)) {
            0 => {}
            mask => truths[LAYERS] = Truth::OneOf(mask),
        }
        truths[COVER] = Truth::OneOf(if kind.cover.contains("thermoplastic") { 0b10 } else { 0b01 });
    }
    truths
}

/// A band, one limit with a half-normal, or a broad band where the table has neither.
fn limits(min: Option<Millimetres>, max: Option<Millimetres>, broad: (f64, f64)) -> Truth {
    match (min, max) {
        (Some(min), Some(max)) => Truth::Band { min: min.get(), max: max.get(), terms: Terms::Male },
        (None, Some(max)) => Truth::AtMost { max: max.get(), scale: ONE_LIMIT_SCALE_MM },
        (Some(min), None) => Truth::AtLeast { min: min.get(), scale: ONE_LIMIT_SCALE_MM },
        (None, None) => Truth::Band { min: broad.0, max: broad.1, terms: Terms::None },
    }
}

/// What was read off the hose, by column. What stands on the cover is read elsewhere.
pub(super) fn seen(hose: &HoseReadings, caliper: f64) -> Vec<(usize, Seen)> {
    let value = |reading: Reading| Seen::Value {
        value: reading.value.get(),
        error: reading.error.map_or(caliper, Millimetres::get),
    };
    let layers = hose.layers.and_then(|layers| layers.checked_sub(1)).map(usize::from);
    [
        (BORE, hose.id_mm.map(value)),
        (REINFORCEMENT_OD, hose.reinforcement_od_mm.map(value)),
        (COVER_OD, hose.cover_od_mm.map(value)),
        (REINFORCEMENT, hose.reinforcement.map(|kind| Seen::Choice(kind as usize))),
        (LAYERS, layers.map(Seen::Choice)),
        (COVER, hose.cover.map(|cover| Seen::Choice(cover as usize))),
    ]
    .into_iter()
    .filter_map(|(column, seen)| Some((column, seen?)))
    .collect()
}
