//! What an end can be: every row of the catalogue's ends, male and female, and every flange.

use super::confusion;
use super::lookalike::Partners;
use super::model::Model;
use super::range::range_mm;
use super::terms;
use super::truth::{Scale, Seen, Terms, Truth};
use super::{EndReadings, SeatShape};
use crate::catalogue::{
    Band, Catalogue, Cone, Connection, EndKind, EndRow, Family, FamilyPart, Flange, PartKind, Seal,
    TAPER_ON_DIAMETER,
};
use crate::quantity::{Degrees, Millimetres, Reading};
use crate::spec::Gender;
use std::collections::HashMap;

/// Columns of the model, in the order of their truths.
const KIND: usize = 0;
const GENDER: usize = 1;
const DIAMETER: usize = 2;
const PITCH: usize = 3;
const TAPER: usize = 4;
const SECOND: usize = 5;
const FLANK: usize = 6;
const SHOULDER: usize = 7;
const SEAL: usize = 8;
const SEAT: usize = 9;
const CONE: usize = 10;
const TUBE: usize = 11;
const BORE: usize = 12;
const HEX: usize = 13;
const HEAD_OD: usize = 14;
const HEAD_THICKNESS: usize = 15;
const BOLT_LONG: usize = 16;
const BOLT_SHORT: usize = 17;
const COLUMNS: usize = 18;

/// Share of caliper readings that are anything: the wrong place, the wrong field. Common practice.
const OUTLIERS: f64 = 0.02;
/// The same for nut hexes and bores, which differ from maker to maker.
const MAKER_OUTLIERS: f64 = 0.15;

/// Limits round a nominal size that stands in the tables without limits, mm (below, above).
/// Tubes and the bore that takes them; through bores, of which makers differ by about 1 mm; hexes;
/// flange heads; bolt circles. Common practice, no source.
const TUBE_LIMITS_MM: (f64, f64) = (0.15, 0.3);
const BORE_LIMITS_MM: (f64, f64) = (0.75, 0.75);
const HEX_LIMITS_MM: (f64, f64) = (0.4, 0.1);
const HEAD_OD_LIMITS_MM: (f64, f64) = (0.4, 0.4);
const HEAD_THICKNESS_LIMITS_MM: (f64, f64) = (0.35, 0.35);
const BOLT_LIMITS_MM: (f64, f64) = (0.4, 0.4);

/// A hypothesis about an end: a row and the half that was measured.
#[derive(Debug, Clone, Copy)]
pub(super) struct Hypothesis {
    row: Row,
    /// None for flanges and for ends without a thread.
    pub(super) gender: Option<Gender>,
    /// The other half of the same row, where the tables have it.
    opposite: Option<usize>,
}

/// Place of a row in the catalogue's ends or flanges.
#[derive(Debug, Clone, Copy)]
enum Row {
    End(usize),
    Flange(usize),
}

impl Hypothesis {
    /// The row of the catalogue the models were made of.
    pub(super) fn row(self, catalogue: &Catalogue) -> Connection<'_> {
        match self.row {
            Row::End(at) => Connection::End(&catalogue.ends[at]),
            Row::Flange(at) => Connection::Flange(&catalogue.flanges[at]),
        }
    }

    /// The place of that row among [`Catalogue::connections`].
    pub(super) fn at(self, ends: &Ends) -> usize {
        match self.row {
            Row::End(at) => at,
            Row::Flange(at) => ends.first_flange + at,
        }
    }
}

/// The thread of a row as written.
pub(super) fn thread(row: Connection<'_>) -> Option<&str> {
    match row {
        Connection::End(row) => row.thread.as_deref(),
        Connection::Flange(_) => None,
    }
}

/// Every hypothesis about an end, and what each says of every reading.
#[derive(Debug)]
pub(super) struct Ends {
    pub(super) hypotheses: Vec<Hypothesis>,
    pub(super) model: Model,
    pub(super) partners: Partners,
    first_flange: usize,
}

impl Ends {
    /// All ends and flanges of the catalogue, in its order.
    pub(super) fn of(catalogue: &Catalogue) -> Self {
        let mut ends = Self {
            hypotheses: Vec::new(),
            model: Model::new(columns(catalogue), catalogue, PartKind::End),
            partners: Partners::of(catalogue),
            first_flange: catalogue.ends.len(),
        };
        let families: HashMap<&str, &Family> =
            catalogue.families.iter().map(|family| (family.family.as_str(), family)).collect();
        for (at, row) in catalogue.ends.iter().enumerate() {
            let family = families.get(row.family.as_str()).copied();
            let genders = halves(row);
            let first = ends.hypotheses.len();
            for (i, &gender) in genders.iter().enumerate() {
                let opposite = match genders.len() {
                    2 => Some(first + 1 - i),
                    _ => gender.is_none().then_some(first),
                };
                ends.hypotheses.push(Hypothesis { row: Row::End(at), gender, opposite });
                ends.model.push(&truths_of_end(row, family, gender), row.dn);
            }
        }
        for (at, flange) in catalogue.flanges.iter().enumerate() {
            let opposite = Some(ends.hypotheses.len());
            ends.hypotheses.push(Hypothesis { row: Row::Flange(at), gender: None, opposite });
            ends.model.push(&truths_of_flange(flange), flange.dn);
        }
        ends
    }

    /// The class of the other half of each hypothesis; its own where the tables have no other half.
    pub(super) fn mate_class(&self, hypothesis: usize) -> u32 {
        let at = self.hypotheses[hypothesis].opposite.unwrap_or(hypothesis);
        self.model.class[at]
    }

    /// What each hypothesis about the end says of the machine's half, by what every half says of it for
    /// itself; a row without another half knows nothing of it.
    pub(super) fn of_other_halves(&self, own: &[f64], unknown: f64) -> Vec<f64> {
        self.hypotheses.iter().map(|end| end.opposite.map_or(unknown, |other| own[other])).collect()
    }
}

/// Ends without a thread have no gender; a bolt of a banjo has no other half in the tables.
fn halves(row: &EndRow) -> &'static [Option<Gender>] {
    match (&row.thread, row.male_major_mm, row.female_minor_mm) {
        (None, ..) => &[None],
        (_, Some(_), None) => &[Some(Gender::Male)],
        (_, None, Some(_)) => &[Some(Gender::Female)],
        _ => &[Some(Gender::Male), Some(Gender::Female)],
    }
}

/// What goes together on a part: what its half is, its thread, how it seals, and sizes beside those.
const HALF: usize = 0;
const THREAD: usize = 1;
const SEALING: usize = 2;
const SIZES: usize = 3;

fn columns(catalogue: &Catalogue) -> Vec<(&'static str, Scale, Option<usize>)> {
    let ends = &catalogue.ends;
    let leaves = |of: fn(&EndRow) -> Option<f64>| {
        let mut leaves: Vec<f64> = ends.iter().filter_map(of).collect();
        leaves.sort_by(f64::total_cmp);
        leaves.dedup_by(|a, b| (*a - *b).abs() < 1e-3);
        leaves
    };
    let length = |key: &'static str, outliers, of_trait| {
        let (lowest, highest) = range_mm(key);
        let of = |half| terms::of(catalogue, PartKind::End, key, Some(half));
        let (male, female) = (of(Gender::Male), of(Gender::Female));
        (key, Scale::Length { lowest, highest, outliers, male, female }, Some(of_trait))
    };
    vec![
        ("kind", confusion::KIND, Some(HALF)),
        ("gender", confusion::GENDER, Some(HALF)),
        length("thread_diameter_mm", OUTLIERS, THREAD),
        ("pitch_mm", confusion::pitch(leaves(|end| end.pitch_mm.map(Millimetres::get))), Some(THREAD)),
        ("taper", confusion::TAPER, Some(HALF)),
        ("second_thread_diameter_mm", Scale::Slope { widest: 3.0, outliers: OUTLIERS }, Some(HALF)),
        (
            "flank_angle_deg",
            confusion::flank(leaves(|end| end.flank_angle_deg.map(Degrees::get))),
            Some(THREAD),
        ),
        ("shoulder", confusion::SHOULDER, Some(SEALING)),
        ("seal", confusion::SEAL, Some(SEALING)),
        (
            "seat_included_angle_deg",
            confusion::seat(leaves(|end| end.seat_included_angle_deg.map(Degrees::get))),
            Some(SEALING),
        ),
        ("cone", confusion::CONE, Some(SEALING)),
        length("tube_od_mm", OUTLIERS, SIZES),
        length("male_bore_mm", MAKER_OUTLIERS, SIZES),
        length("swivel_hex_mm", MAKER_OUTLIERS, SIZES),
        length("head_od_mm", OUTLIERS, SIZES),
        length("head_thickness_mm", OUTLIERS, SIZES),
        length("bolt_long_mm", OUTLIERS, SIZES),
        length("bolt_short_mm", OUTLIERS, SIZES),
    ]
}

fn around(size: Option<Millimetres>, (below, above): (f64, f64), terms: Terms, otherwise: Truth) -> Truth {
    size.map_or(otherwise, |size| Truth::Band { min: size.get() - below, max: size.get() + above, terms })
}

fn gauged(value: Option<f64>, otherwise: Truth) -> Truth {
    value.map_or(otherwise, Truth::Exactly)
}

fn gender_index(gender: Gender) -> usize {
    match gender {
        Gender::Male => 0,
        Gender::Female => 1,
    }
}

fn shape(cone: Cone) -> SeatShape {
    match cone {
        Cone::Convex => SeatShape::Convex,
        Cone::Concave => SeatShape::Concave,
    }
}

fn truths_of_end(row: &EndRow, family: Option<&Family>, gender: Option<Gender>) -> [Truth; COLUMNS] {
    let on_thread = if row.thread.is_some() { Truth::Unstated } else { Truth::Absent };
    let has_seat = row.seals.iter().any(|seal| has_seat(*seal));
    let in_seat = if has_seat { Truth::Unstated } else { Truth::Absent };
    let (diameter, cone, slope_sign) = match gender {
        Some(Gender::Female) => {
            (limits(row.female_minor_mm, Terms::Female, on_thread), row.female_cone, -1.0)
        }
        _ => (limits(row.male_major_mm, Terms::Male, on_thread), row.male_cone, 1.0),
    };
    let slope = match (row.taper, row.pitch_mm) {
        (false, _) => Some(0.0),
        (true, pitch) => pitch.map(|pitch| slope_sign * pitch.get() * TAPER_ON_DIAMETER),
    };
    let mut truths = [Truth::Absent; COLUMNS];
    truths[KIND] =
        family.map_or(Truth::Unstated, |family| Truth::OneOf(1 << family.kind(gender, &row.seals) as u16));
    truths[SHOULDER] = shoulder(family);
    truths[GENDER] = gender.map_or(Truth::Unstated, |gender| Truth::OneOf(1 << gender_index(gender)));
    truths[DIAMETER] = diameter;
    truths[PITCH] = gauged(row.pitch_mm.map(Millimetres::get), on_thread);
    if row.thread.is_some() {
        truths[TAPER] = Truth::OneOf(1 << usize::from(row.taper));
        truths[SECOND] = gauged(slope, on_thread);
    }
    truths[FLANK] = gauged(row.flank_angle_deg.map(Degrees::get), on_thread);
    truths[SEAL] = seals(&row.seals);
    truths[SEAT] = gauged(row.seat_included_angle_deg.map(Degrees::get), in_seat);
    truths[CONE] = match cone {
        Some(cone) => Truth::OneOf(1 << shape(cone) as u16),
        None if has_seat => Truth::Unstated,
        None => without_cone(row, family, gender),
    };
    let half = match gender {
        Some(Gender::Female) => Terms::Female,
        _ => Terms::Male,
    };
    truths[TUBE] = around(row.tube_od_mm, TUBE_LIMITS_MM, half, Truth::Unstated);
    truths[BORE] = around(row.male_bore_mm, BORE_LIMITS_MM, half, Truth::Unstated);
    truths[HEX] = match gender {
        Some(Gender::Female) => around(row.swivel_hex_mm, HEX_LIMITS_MM, half, Truth::Unstated),
        _ => Truth::Unstated,
    };
    truths
}

fn truths_of_flange(flange: &Flange) -> [Truth; COLUMNS] {
    let mut truths = [Truth::Absent; COLUMNS];
    truths[KIND] = Truth::OneOf(1 << EndKind::Flange as u16);
    truths[GENDER] = Truth::Unstated;
    truths[SEAL] = seals(&[Seal::ORingFace]);
    truths[CONE] = Truth::OneOf(1 << SeatShape::Flat as u16);
    truths[HEAD_OD] = around(flange.head_od_mm, HEAD_OD_LIMITS_MM, Terms::None, Truth::Unstated);
    truths[HEAD_THICKNESS] =
        around(flange.head_thickness_mm, HEAD_THICKNESS_LIMITS_MM, Terms::None, Truth::Unstated);
    truths[BOLT_LONG] = around(flange.bolt_long_mm, BOLT_LIMITS_MM, Terms::None, Truth::Unstated);
    truths[BOLT_SHORT] = around(flange.bolt_short_mm, BOLT_LIMITS_MM, Terms::None, Truth::Unstated);
    truths
}

/// What is seen where a cone would be. A male pipe thread often has a chamfer inside; of couplings, test points
/// and staples the tables do not say.
fn without_cone(row: &EndRow, family: Option<&Family>, gender: Option<Gender>) -> Truth {
    const FLAT: u16 = 1 << SeatShape::Flat as u16;
    const HOLLOW: u16 = 1 << SeatShape::Concave as u16;
    let is_tube = family.is_some_and(|family| family.part == FamilyPart::Tube);
    match gender {
        _ if row.seals.is_empty() && !is_tube => Truth::Absent,
        Some(Gender::Male) if row.seals.contains(&Seal::Thread) => Truth::OneOf(FLAT | HOLLOW),
        _ => Truth::OneOf(FLAT),
    }
}

/// Ends without a shoulder have none to look at, but those of which the table says nothing.
fn shoulder(family: Option<&Family>) -> Truth {
    let Some(family) = family else { return Truth::Unstated };
    match (family.shoulder, family.part) {
        (Some(shoulder), _) => Truth::OneOf(1 << shoulder as u16),
        (None, FamilyPart::Port | FamilyPart::HoseEnd | FamilyPart::Water) => Truth::Unstated,
        (None, _) => Truth::Absent,
    }
}

fn limits(band: Option<Band>, terms: Terms, otherwise: Truth) -> Truth {
    band.map_or(otherwise, |band| Truth::Band { min: band.min, max: band.max, terms })
}

fn seals(seals: &[Seal]) -> Truth {
    match seals.iter().fold(0, |mask, seal| mask | 1 << *seal as u16) {
        0 => Truth::Unstated,
        mask => Truth::OneOf(mask),
    }
}

/// Whether that way of sealing has a seat whose angle can be gauged.
fn has_seat(seal: Seal) -> bool {
    matches!(seal, Seal::Cone | Seal::ORingCone | Seal::InvertedFlare)
}

/// What was read off one half, by column. A diameter has the caliper's error unless it carries its
/// own.
pub(super) fn seen(half: &EndReadings, caliper: f64) -> Vec<(usize, Seen)> {
    let mut seen = Vec::new();
    let error = |reading: Reading| reading.error.map_or(caliper, Millimetres::get);
    let lengths = [
        (DIAMETER, half.thread_diameter_mm),
        (TUBE, half.tube_od_mm),
        (BORE, half.male_bore_mm),
        (HEX, half.swivel_hex_mm),
        (HEAD_OD, half.head_od_mm),
        (HEAD_THICKNESS, half.head_thickness_mm),
        (BOLT_LONG, half.bolt_long_mm),
        (BOLT_SHORT, half.bolt_short_mm),
    ];
    for (column, reading) in lengths {
        if let Some(reading) = reading {
            seen.push((column, Seen::Value { value: reading.value.get(), error: error(reading) }));
        }
    }
    let gauge = |value: f64| Seen::Value { value, error: 0.0 };
    if let Some(pitch) = half.pitch_mm {
        let error = pitch.error.map_or(0.0, Millimetres::get);
        seen.push((PITCH, Seen::Value { value: pitch.value.get(), error }));
    }
    let gauges = [
        (PITCH, half.tpi.map(|tpi| Millimetres::PER_INCH / tpi)),
        (FLANK, half.flank_angle_deg.map(Degrees::get)),
        (SEAT, half.seat_included_angle_deg.map(Degrees::get)),
    ];
    seen.extend(gauges.into_iter().filter_map(|(column, value)| Some((column, gauge(value?)))));
    let choices = [
        (KIND, half.kind.map(|kind| kind as usize)),
        (GENDER, half.gender.map(gender_index)),
        (TAPER, half.taper.map(usize::from)),
        (SHOULDER, half.shoulder.map(|shoulder| shoulder as usize)),
        (SEAL, half.seal.map(|seal| seal as usize)),
        (CONE, half.cone.map(|cone| cone as usize)),
    ];
    seen.extend(choices.into_iter().filter_map(|(column, choice)| Some((column, Seen::Choice(choice?)))));
    if let (Some(first), Some(second)) = (half.thread_diameter_mm, half.second_thread_diameter_mm) {
        seen.push((
            SECOND,
            Seen::Difference {
                value: second.value.get() - first.value.get(),
                apart: half.threads_apart,
                error: error(first).hypot(error(second)),
            },
        ));
    }
    seen
}

/// Whether a reading of that column would repeat one that was taken, or can not be taken yet.
pub(super) fn is_idle(column: usize, seen: &[(usize, Seen)]) -> bool {
    let taken = |column| seen.iter().any(|(taken, _)| *taken == column);
    taken(column) || (column == SECOND && taken(TAPER)) || (column == TAPER && taken(SECOND))
}
