//! `tables`: what the screens offer and draw of the catalogue, in one answer.

use super::Nothing;
use crate::{Answer, Api, ApiError};
use hosewright_core::catalogue::{
    Band, Basis, Catalogue, Cone, Demand, EndRow, Flange, FluidGroup, HoseRow, HoseType, Reinforcement, Seal,
    SignGroup, StandsUntil,
};
use hosewright_core::check::Verdict;
use hosewright_core::quantity::{Bar, Celsius, Degrees, Dn, Millimetres};
use hosewright_core::spec::{Duty, Gender, Line};
use schemars::JsonSchema;
use serde::Serialize;
use std::collections::BTreeMap;
use ts_rs::TS;

/// What can be chosen and drawn.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Tables {
    /// Threaded and plain ends.
    pub ends: Vec<EndEntry>,
    /// Four-bolt flanges.
    pub flanges: Vec<FlangeEntry>,
    /// Hose types with their sizes.
    pub hoses: Vec<HoseEntry>,
    /// Fluids.
    pub fluids: Vec<FluidEntry>,
    /// Forms of ends, as a spec names them; an elbow of another angle is named like these.
    pub forms: Vec<&'static str>,
    /// Causes of failure.
    pub causes: Vec<CauseEntry>,
    /// What is seen at inspections, and what it does.
    pub signs: Vec<SignEntry>,
    /// What a failure puts at risk, and how bad that is.
    pub stakes: Vec<StakeEntry>,
    /// How hard a place can be on hoses.
    pub demands: Vec<Demand>,
    /// What a place can ask of the hose.
    pub duties: Vec<Duty>,
    /// What a line can do.
    pub lines: Vec<Line>,
    /// Keys of the readings of a hose, in the order they are taken.
    pub hose_readings: Vec<&'static str>,
    /// Keys of the readings of an end, in the order they are taken.
    pub end_readings: Vec<&'static str>,
}

/// Smallest and largest of a new part. Where the table gives a nominal size alone, both are that size;
/// where it gives one limit, the other is none.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema, TS)]
pub struct Limits(pub Option<f64>, pub Option<f64>);

/// Dimensions in mm by the key of the reading that measures them.
pub type Dimensions = BTreeMap<&'static str, Limits>;

/// One size of a family of ends.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
#[ts(optional_fields)]
pub struct EndEntry {
    /// Family.
    pub family: String,
    /// Standard.
    pub standard: String,
    /// Size within the family.
    pub size: String,
    /// Dash size.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub dash: Option<i16>,
    /// Hose size it goes with in the standard.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub dn: Option<Dn>,
    /// Thread as written; none for plain ends.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub thread: Option<String>,
    /// Pitch.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pitch_mm: Option<Millimetres>,
    /// Threads an inch, where the thread is named so.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub tpi: Option<f64>,
    /// Taper thread (1 in 16).
    pub taper: bool,
    /// Flank angle of the thread.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub flank_angle_deg: Option<Degrees>,
    /// What seals; more than one where the family is used so.
    pub seals: Vec<Seal>,
    /// Included angle of the seat.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub seat_included_angle_deg: Option<Degrees>,
    /// The halves that can be measured.
    pub halves: Vec<HalfEntry>,
    /// The tube-fitting ceiling; missing is not known, never unlimited.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub max_pressure_bar: Option<Bar>,
    /// Basis of that pressure.
    pub pressure_basis: Basis,
    /// Basis of the row.
    pub basis: Basis,
}

/// One half of a connection.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
#[ts(optional_fields)]
pub struct HalfEntry {
    /// Which; none for ends without a thread.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub gender: Option<Gender>,
    /// Shape of its cone.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cone: Option<Cone>,
    /// Its dimensions.
    pub dimensions: Dimensions,
}

/// A four-bolt flange.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
#[ts(optional_fields)]
pub struct FlangeEntry {
    /// Family, such as `flange 61`.
    pub family: String,
    /// Standard.
    pub standard: String,
    /// Size as written.
    pub size: String,
    /// Dash size.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub dash: Option<i16>,
    /// Hose size.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub dn: Option<Dn>,
    /// Metric bolt.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub bolt_metric: Option<String>,
    /// Inch bolt.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub bolt_inch: Option<String>,
    /// Its dimensions.
    pub dimensions: Dimensions,
    /// Rating; missing is not known, never unlimited.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub max_pressure_bar: Option<Bar>,
    /// Basis of that pressure.
    pub pressure_basis: Basis,
    /// Basis of the row.
    pub basis: Basis,
}

/// A hose type.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
#[ts(optional_fields)]
pub struct HoseEntry {
    /// Standard, such as `EN 853`.
    pub standard: String,
    /// Type, such as `2SN`.
    #[serde(rename = "type")]
    pub kind: String,
    /// What carries the pressure; missing where the standard leaves it open.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub reinforcement: Option<Reinforcement>,
    /// Fewest layers of it.
    pub layers_min: u8,
    /// Most layers of it.
    pub layers_max: u8,
    /// Cover, in the table's words.
    pub cover: String,
    /// Classes of fluid it is made for.
    pub fluids: Vec<String>,
    /// What took its place.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub superseded_by: Option<String>,
    /// Its sizes, smallest first.
    pub sizes: Vec<HoseSize>,
}

/// One size of a hose type.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
#[ts(optional_fields)]
pub struct HoseSize {
    /// Nominal diameter.
    pub dn: Dn,
    /// Dash size as printed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub dash: Option<u16>,
    /// Its dimensions.
    pub dimensions: Dimensions,
    /// Maximum working pressure; missing is not known, never unlimited.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub max_working_pressure_bar: Option<Bar>,
    /// Basis of that pressure.
    pub pressure_basis: Basis,
    /// Minimum bend radius, at the inside of the bend.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub min_bend_radius_mm: Option<Millimetres>,
    /// Coldest fluid and hottest oil.
    pub temperatures_c: (Celsius, Celsius),
}

/// A class of fluid.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct FluidEntry {
    /// Its class.
    pub class: String,
    /// What it is.
    pub name: String,
    /// What kind of fluid.
    pub group: FluidGroup,
}

/// A cause of failure.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct CauseEntry {
    /// Its code.
    pub code: String,
    /// Its name.
    pub name: String,
    /// What it looks like.
    pub seen: String,
}

/// Something seen at an inspection.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct SignEntry {
    /// Its code.
    pub code: String,
    /// What kind of thing.
    pub group: SignGroup,
    /// The cause of failure it leads to, by its code.
    pub cause: String,
    /// What is seen.
    pub name: String,
    /// What to do.
    pub act: String,
    /// A stop stops the machine; a caution moves the day.
    pub grade: Verdict,
    /// Due at most so many days after the inspection; none for a stop, which is due at once.
    pub within_days: Option<u16>,
    /// How long it stands.
    pub until: StandsUntil,
    /// Where it comes from.
    pub source: String,
    /// How sure that is.
    pub basis: Basis,
}

/// What a failure puts at risk.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct StakeEntry {
    /// Its name in the contract; `none` and `not-said` besides.
    pub stake: String,
    /// From 1, a nuisance, to 5, someone may be hurt.
    pub weight: u8,
    /// What it is called.
    pub name: String,
    /// Where it comes from.
    pub source: String,
    /// How sure that is.
    pub basis: Basis,
}

const FORMS: [&str; 6] = ["straight", "elbow45", "elbow90", "compact90", "standpipe", "banjo"];
const DUTIES: [Duty; 3] = [Duty::NonConductive, Duty::FlameResistant, Duty::Antistatic];
const LINES: [Line; 6] =
    [Line::Pressure, Line::Return, Line::Suction, Line::CaseDrain, Line::Pilot, Line::Cylinder];
const HOSE_READINGS: [&str; 7] =
    ["print", "reinforcement", "layers", "id_mm", "cover_od_mm", "reinforcement_od_mm", "cover"];
const END_READINGS: [&str; 20] = [
    "gender",
    "kind",
    "shoulder",
    "seal",
    "thread_diameter_mm",
    "tpi",
    "pitch_mm",
    "taper",
    "second_thread_diameter_mm",
    "threads_apart",
    "flank_angle_deg",
    "seat_included_angle_deg",
    "cone",
    "swivel_hex_mm",
    "tube_od_mm",
    "male_bore_mm",
    "head_od_mm",
    "head_thickness_mm",
    "bolt_long_mm",
    "bolt_short_mm",
];

/// What the screens offer and draw of the catalogue.
///
/// # Errors
/// None.
pub fn tables(api: &mut Api, _: Nothing, _: &[u8]) -> Result<Answer<Tables>, ApiError> {
    let catalogue = api.catalogue;
    let fluids = catalogue.fluid_classes.iter().map(|row| FluidEntry {
        class: row.class.clone(),
        name: api.words.say(&format!("fluid-{}", row.class), &[]),
        group: row.group,
    });
    let causes = catalogue.causes.iter().map(|row| CauseEntry {
        code: row.code.clone(),
        name: api.words.say(&format!("cause-{}", row.code), &[]),
        seen: api.words.say(&format!("cause-{}-seen", row.code), &[]),
    });
    let signs = catalogue.signs.iter().map(|row| SignEntry {
        code: row.code.clone(),
        group: row.group,
        cause: row.cause.clone(),
        name: api.words.say(&format!("sign-{}", row.code), &[]),
        act: api.words.say(&format!("sign-{}-act", row.code), &[]),
        grade: row.grade,
        within_days: row.within_days,
        until: row.until,
        source: row.provenance.source.clone(),
        basis: row.provenance.basis,
    });
    let stakes = catalogue.stakes.iter().map(|row| StakeEntry {
        stake: row.key.clone(),
        weight: row.weight,
        name: api.words.say(&format!("stake-{}", row.key), &[]),
        source: row.provenance.source.clone(),
        basis: row.provenance.basis,
    });
    Ok(api.answer(Tables {
        ends: catalogue.ends.iter().map(end).collect(),
        flanges: catalogue.flanges.iter().map(flange).collect(),
        hoses: catalogue.types.iter().map(|kind| hose(kind, catalogue)).collect(),
        fluids: fluids.collect(),
        forms: FORMS.to_vec(),
        causes: causes.collect(),
        signs: signs.collect(),
        stakes: stakes.collect(),
        demands: Demand::ALL.to_vec(),
        duties: DUTIES.to_vec(),
        lines: LINES.to_vec(),
        hose_readings: HOSE_READINGS.to_vec(),
        end_readings: END_READINGS.to_vec(),
    }))
}

fn between(band: Option<Band>) -> Option<Limits> {
    band.map(|band| Limits(Some(band.min), Some(band.max)))
}

fn nominal(size: Option<Millimetres>) -> Option<Limits> {
    size.map(|size| Limits(Some(size.get()), Some(size.get())))
}

fn one_or_both(min: Option<Millimetres>, max: Option<Millimetres>) -> Option<Limits> {
    min.or(max).map(|_| Limits(min.map(Millimetres::get), max.map(Millimetres::get)))
}

/// The dimensions that the table gives.
fn dimensions<const N: usize>(all: [(&'static str, Option<Limits>); N]) -> Dimensions {
    all.into_iter().filter_map(|(key, limits)| Some((key, limits?))).collect()
}

fn end(row: &EndRow) -> EndEntry {
    EndEntry {
        family: row.family.clone(),
        standard: row.standard.clone(),
        size: row.size.clone(),
        dash: row.dash,
        dn: row.dn,
        thread: row.thread.clone(),
        pitch_mm: row.pitch_mm,
        tpi: row.tpi,
        taper: row.taper,
        flank_angle_deg: row.flank_angle_deg,
        seals: row.seals.clone(),
        seat_included_angle_deg: row.seat_included_angle_deg,
        halves: halves(row),
        max_pressure_bar: row.max_pressure_bar,
        pressure_basis: row.pressure_basis,
        basis: row.provenance.basis,
    }
}

/// Ends without a thread have no gender; a bolt of a banjo has no other half in the tables.
fn halves(row: &EndRow) -> Vec<HalfEntry> {
    let male = HalfEntry {
        gender: Some(Gender::Male),
        cone: row.male_cone,
        dimensions: dimensions([
            ("thread_diameter_mm", between(row.male_major_mm)),
            ("tube_od_mm", nominal(row.tube_od_mm)),
            ("male_bore_mm", nominal(row.male_bore_mm)),
        ]),
    };
    let female = HalfEntry {
        gender: Some(Gender::Female),
        cone: row.female_cone,
        dimensions: dimensions([
            ("thread_diameter_mm", between(row.female_minor_mm)),
            ("tube_od_mm", nominal(row.tube_od_mm)),
            ("swivel_hex_mm", nominal(row.swivel_hex_mm)),
        ]),
    };
    match (&row.thread, row.male_major_mm, row.female_minor_mm) {
        (None, ..) => vec![HalfEntry { gender: None, ..male }],
        (_, Some(_), None) => vec![male],
        (_, None, Some(_)) => vec![female],
        _ => vec![male, female],
    }
}

fn flange(row: &Flange) -> FlangeEntry {
    FlangeEntry {
        family: row.family.clone(),
        standard: row.standard.clone(),
        size: row.size.clone(),
        dash: row.dash,
        dn: row.dn,
        bolt_metric: row.bolt_metric.clone(),
        bolt_inch: row.bolt_inch.clone(),
        dimensions: dimensions([
            ("head_od_mm", nominal(row.head_od_mm)),
            ("head_thickness_mm", nominal(row.head_thickness_mm)),
            ("bolt_long_mm", nominal(row.bolt_long_mm)),
            ("bolt_short_mm", nominal(row.bolt_short_mm)),
        ]),
        max_pressure_bar: row.max_pressure_bar,
        pressure_basis: row.pressure_basis,
        basis: row.provenance.basis,
    }
}

fn hose(kind: &HoseType, catalogue: &Catalogue) -> HoseEntry {
    let mut sizes: Vec<HoseSize> = catalogue
        .hoses
        .iter()
        .chain(&catalogue.twins)
        .filter(|row| row.standard == kind.standard && row.kind == kind.kind)
        .map(size)
        .collect();
    sizes.sort_by_key(|size| size.dn);
    HoseEntry {
        standard: kind.standard.clone(),
        kind: kind.kind.clone(),
        reinforcement: kind.reinforcement,
        layers_min: kind.layers_min,
        layers_max: kind.layers_max,
        cover: kind.cover.clone(),
        fluids: kind.fluids.clone(),
        superseded_by: kind.superseded_by.clone(),
        sizes,
    }
}

fn size(row: &HoseRow) -> HoseSize {
    HoseSize {
        dn: row.dn,
        dash: row.dash,
        dimensions: dimensions([
            ("id_mm", between(row.id_mm).or_else(|| nominal(Some(row.id_nom_mm)))),
            ("reinforcement_od_mm", one_or_both(row.reinforcement_od_min_mm, row.reinforcement_od_max_mm)),
            ("cover_od_mm", one_or_both(row.cover_od_min_mm, row.cover_od_max_mm)),
        ]),
        max_working_pressure_bar: row.max_working_pressure_bar,
        pressure_basis: row.columns.pressure,
        min_bend_radius_mm: row.min_bend_radius_mm,
        temperatures_c: (row.temp_min_c, row.temp_max_c),
    }
}
