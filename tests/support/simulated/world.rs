//! All parts a job can hold, by the catalogue.

use super::features::{self, Feature};
use super::instruments::Instruments;
use hosewright_core::catalogue::{Catalogue, FamilyPart, HoseType};
use hosewright_core::quantity::Dn;
use hosewright_core::spec::Gender;
use std::collections::HashMap;

/// A hose, or one half of an end.
#[derive(Debug)]
pub struct Part {
    /// Standard, type and size of a hose; family and size of an end.
    pub name: [String; 3],
    /// Which half; none for hoses, flanges and plain ends.
    pub gender: Option<Gender>,
    /// What it shows.
    pub features: Vec<Feature>,
    /// The other half.
    pub opposite: Option<usize>,
    /// Its step in the series of nominal diameters.
    pub step: Option<i32>,
    /// Its share before any reading, all classes alike: rows that show the same share one.
    pub even: f64,
    /// Whether it is met every day.
    pub is_everyday: bool,
    /// How much oftener it is met on machines of each origin, by the table of families and origins, than
    /// on any; alike of hoses.
    pub by_origin: [f64; 4],
}

/// Everything there is to draw from.
#[derive(Debug)]
pub struct World {
    /// The tables.
    pub catalogue: &'static Catalogue,
    /// How readings are taken.
    pub instruments: Instruments,
    /// Hoses.
    pub hoses: Vec<Part>,
    /// Halves of ends.
    pub halves: Vec<Part>,
}

/// Standards whose hoses hang on most machines. Common practice, no source.
const EVERYDAY_HOSES: [&str; 3] = ["EN 853", "EN 856", "EN 857"];

/// Nominal diameters grow by about this ratio from size to size.
const RATIO: f64 = 1.262;

fn step(dn: Option<Dn>) -> Option<i32> {
    dn.map(|dn| ((dn.get() / 5.0).ln() / RATIO.ln()).round() as i32)
}

impl World {
    /// Of the embedded catalogue.
    pub fn new() -> Self {
        let catalogue = Catalogue::embedded();
        Self {
            catalogue,
            instruments: Instruments::of(catalogue),
            hoses: hoses(catalogue),
            halves: halves(catalogue),
        }
    }
}

impl Default for World {
    fn default() -> Self {
        Self::new()
    }
}

fn hoses(catalogue: &Catalogue) -> Vec<Part> {
    let types: HashMap<(&str, &str), &HoseType> =
        catalogue.types.iter().map(|kind| ((kind.standard.as_str(), kind.kind.as_str()), kind)).collect();
    let rows = catalogue.hoses.iter().chain(&catalogue.twins);
    let part = |row: &hosewright_core::catalogue::HoseRow| Part {
        name: [row.standard.clone(), row.kind.clone(), row.dn.to_string()],
        gender: None,
        features: features::of_hose(row, types.get(&(row.standard.as_str(), row.kind.as_str())).copied()),
        opposite: None,
        step: step(Some(row.dn)),
        even: 0.0,
        is_everyday: EVERYDAY_HOSES.contains(&row.standard.as_str()),
        by_origin: [1.0; 4],
    };
    shared(rows.map(part).collect())
}

fn halves(catalogue: &Catalogue) -> Vec<Part> {
    let is_everyday = |family: &str| {
        let of = catalogue.families.iter().find(|row| row.family == family);
        of.is_some_and(|row| matches!(row.part, FamilyPart::HoseEnd | FamilyPart::Flange))
    };
    let by_origin = |family: &str| {
        let row = catalogue.origins.iter().find(|row| row.family == family);
        row.map_or([1.0; 4], |row| row.weights)
    };
    let mut parts: Vec<Part> = Vec::new();
    for row in &catalogue.ends {
        let family = catalogue.families.iter().find(|family| family.family == row.family);
        let Some(family) = family else { panic!("{} is no family", row.family) };
        let genders: &[Option<Gender>] = match (&row.thread, row.male_major_mm, row.female_minor_mm) {
            (None, ..) => &[None],
            (_, Some(_), None) => &[Some(Gender::Male)],
            (_, None, Some(_)) => &[Some(Gender::Female)],
            _ => &[Some(Gender::Male), Some(Gender::Female)],
        };
        let first = parts.len();
        for (at, &gender) in genders.iter().enumerate() {
            parts.push(Part {
                name: [row.family.clone(), row.size.clone(), String::new()],
                gender,
                features: features::of_half(row, family, gender),
                opposite: match genders.len() {
                    2 => Some(first + 1 - at),
                    _ => gender.is_none().then_some(first),
                },
                step: step(row.dn),
                even: 0.0,
                is_everyday: is_everyday(&row.family),
                by_origin: by_origin(&row.family),
            });
        }
    }
    for row in &catalogue.flanges {
        parts.push(Part {
            name: [row.family.clone(), row.size.clone(), String::new()],
            gender: None,
            features: features::of_flange(row),
            opposite: Some(parts.len()),
            step: step(row.dn),
            even: 0.0,
            is_everyday: true,
            by_origin: by_origin(&row.family),
        });
    }
    shared(parts)
}

/// Gives each class of parts that show the same one share, and each member an even part of it.
fn shared(mut parts: Vec<Part>) -> Vec<Part> {
    let mut sizes: HashMap<String, usize> = HashMap::new();
    let key = |part: &Part| format!("{:?}", part.features);
    for part in &parts {
        *sizes.entry(key(part)).or_default() += 1;
    }
    let classes = sizes.len() as f64;
    for part in &mut parts {
        part.even = 1.0 / (classes * sizes[&key(part)] as f64);
    }
    let mean = |at: usize| parts.iter().map(|part| part.even * part.by_origin[at]).sum::<f64>();
    let means: [f64; 4] = std::array::from_fn(mean);
    for part in &mut parts {
        part.by_origin.iter_mut().zip(means).for_each(|(weight, mean)| *weight /= mean);
    }
    parts
}
