//! What a hose can be: every size of every type, twins of other standards included.

use super::HoseReadings;
use super::confusion;
use super::model::Model;
use super::truth::{Scale, Seen, Truth, Used};
use crate::catalogue::{Catalogue, HoseRow, HoseType};
use crate::quantity::{Millimetres, Reading};
use std::collections::HashMap;

/// Columns of the model, in the order of their truths.
const BORE: usize = 0;
const REINFORCEMENT_OD: usize = 1;
const COVER_OD: usize = 2;
const REINFORCEMENT: usize = 3;
const LAYERS: usize = 4;
const COVER: usize = 5;
const COLUMNS: usize = 6;

/// Mean amounts by which used hose leaves its limits, mm. A swollen tube reads a small bore; a burst
/// braid is flared; a cover swells with oil and is abraded, and one that lies up to 0.5 mm outside
/// the table is not rejected for it (rule L114). Common practice, no source.
const BORE_SWELLING_MM: f64 = 0.15;
const BRAID_FLARING_MM: f64 = 0.1;
const COVER_CHANGE_MM: f64 = 0.25;

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

/// Every hypothesis about the hose, and what each says of every reading.
pub(super) struct Hoses<'c> {
    pub(super) hypotheses: Vec<&'c HoseRow>,
    pub(super) model: Model,
}

impl<'c> Hoses<'c> {
    /// All size rows of the catalogue, in its order.
    pub(super) fn of(catalogue: &'c Catalogue) -> Self {
        let types: HashMap<(&str, &str), &HoseType> = catalogue
            .types
            .iter()
            .map(|kind| ((kind.standard.as_str(), kind.kind.as_str()), kind))
            .collect();
        let mut hoses = Self { hypotheses: Vec::new(), model: Model::new(scales()) };
        for row in catalogue.hoses.iter().chain(&catalogue.twins) {
            hoses.hypotheses.push(row);
            let kind = types.get(&(row.standard.as_str(), row.kind.as_str())).copied();
            hoses.model.push(&truths(row, kind));
        }
        hoses
    }
}

fn scales() -> Vec<(&'static str, Scale)> {
    let length = |lowest, highest| Scale::Length { lowest, highest, outliers: OUTLIERS };
    vec![
        ("id_mm", length(2.0, 120.0)),
        ("reinforcement_od_mm", length(5.0, 140.0)),
        ("cover_od_mm", length(6.0, 150.0)),
        ("reinforcement", confusion::REINFORCEMENT),
        ("layers", confusion::LAYERS),
        ("cover", confusion::COVER),
    ]
}

fn truths(row: &HoseRow, kind: Option<&HoseType>) -> [Truth; COLUMNS] {
    let nominal = row.id_nom_mm.get();
    let beyond = |(least, most): (f64, f64)| (nominal + least, nominal + most);
    let (bore_min, bore_max) = row
        .id_mm
        .map_or((nominal - BORE_LIMITS_MM.0, nominal + BORE_LIMITS_MM.1), |band| (band.min, band.max));
    let mut truths = [Truth::Unstated; COLUMNS];
    truths[BORE] = Truth::Band { min: bore_min, max: bore_max, used: Used::Smaller(BORE_SWELLING_MM) };
    truths[REINFORCEMENT_OD] = limits(
        row.reinforcement_od_min_mm,
        row.reinforcement_od_max_mm,
        beyond(REINFORCEMENT_BEYOND_BORE_MM),
        Used::Larger(BRAID_FLARING_MM),
    );
    truths[COVER_OD] = limits(
        row.cover_od_min_mm,
        row.cover_od_max_mm,
        beyond(COVER_BEYOND_BORE_MM),
        Used::Either(COVER_CHANGE_MM),
    );
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
fn limits(min: Option<Millimetres>, max: Option<Millimetres>, broad: (f64, f64), used: Used) -> Truth {
    match (min, max) {
        (Some(min), Some(max)) => Truth::Band { min: min.get(), max: max.get(), used },
        (None, Some(max)) => Truth::AtMost { max: max.get(), scale: ONE_LIMIT_SCALE_MM },
        (Some(min), None) => Truth::AtLeast { min: min.get(), scale: ONE_LIMIT_SCALE_MM },
        (None, None) => Truth::Band { min: broad.0, max: broad.1, used: Used::AsNew },
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
