//! What a part shows to each reading, as the tables state it. The limits round bare sizes restate those
//! of the model (see `instruments.rs`).

use hosewright_core::catalogue::{
    Band, Cone, EndKind, EndRow, Family, FamilyPart, Flange, HoseRow, HoseType, Seal,
};
use hosewright_core::quantity::Millimetres;
use hosewright_core::spec::Gender;

/// What a part shows to one reading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Shows {
    /// It has no such feature.
    Absent,
    /// It has, and the tables do not say what.
    Unstated,
    /// A size between the limits of a new part, changed by use.
    Band {
        /// Least.
        min: f64,
        /// Most.
        max: f64,
        /// How use changes it.
        use_: Use,
    },
    /// A size of which only the most is given.
    AtMost(f64),
    /// A size of which only the least is given.
    AtLeast(f64),
    /// A leaf of a gauge.
    Leaf(f64),
    /// A change of diameter for each thread, mm.
    Slope(f64),
    /// One of the choices whose bits are set.
    OneOf(u16),
}

/// The ways in which use and jaws change a size: which way, share of readings, mean, mm.
pub type Use = &'static [(f64, f64, f64)];

const SMALLER: f64 = -1.0;
const LARGER: f64 = 1.0;

/// Not at all.
pub const NOT: Use = &[];
const MALE: Use = &[(SMALLER, 0.6, 0.15), (SMALLER, 0.05, 0.4), (LARGER, 0.05, 0.15)];
const FEMALE: Use = &[(LARGER, 0.45, 0.15), (LARGER, 0.1, 0.4), (SMALLER, 0.25, 0.08)];
const HEX: Use = &[(SMALLER, 0.2, 0.1), (LARGER, 0.1, 0.15)];
const INSIDE: Use = &[(SMALLER, 0.25, 0.08)];
const TUBE: Use = &[(SMALLER, 0.4, 0.2), (SMALLER, 0.05, 0.8), (SMALLER, 0.2, 0.08)];
const BRAID: Use = &[(LARGER, 0.4, 0.15), (SMALLER, 0.05, 0.8)];
const COVER: Use = &[(LARGER, 0.3, 0.3), (SMALLER, 0.3, 0.3)];

/// One reading's key and what the part shows to it.
pub type Feature = (&'static str, Shows);

/// Shapes of a seat: a hollow cone, and none.
const HOLLOW: u16 = 1 << 1;
const FLAT: u16 = 1 << 2;

/// What features show to one reading.
pub fn shown(features: &[Feature], key: &str) -> Shows {
    features.iter().find(|(known, _)| *known == key).map_or(Shows::Absent, |(_, shows)| *shows)
}

/// Scale of the half-normal beyond a single limit, mm.
pub const ONE_LIMIT: f64 = 0.8;

fn around(size: Option<Millimetres>, below: f64, above: f64, use_: Use) -> Shows {
    size.map_or(Shows::Unstated, |size| Shows::Band {
        min: size.get() - below,
        max: size.get() + above,
        use_,
    })
}

fn seals(seals: &[Seal]) -> Shows {
    match seals.iter().fold(0, |mask, seal| mask | 1 << *seal as u16) {
        0 => Shows::Unstated,
        mask => Shows::OneOf(mask),
    }
}

/// What lies at the shoulder of a stud or the mouth of a port.
fn shoulder(family: &Family) -> Shows {
    match (family.shoulder, family.part) {
        (Some(shoulder), _) => Shows::OneOf(1 << shoulder as u16),
        (None, FamilyPart::Port | FamilyPart::HoseEnd | FamilyPart::Water) => Shows::Unstated,
        (None, _) => Shows::Absent,
    }
}

/// A half of a threaded or plain end.
pub fn of_half(row: &EndRow, family: &Family, gender: Option<Gender>) -> Vec<Feature> {
    let is_thread = row.thread.is_some();
    let or_absent = |is_there: bool| if is_there { Shows::Unstated } else { Shows::Absent };
    let thread = or_absent(is_thread);
    let has_seat = |seal: &Seal| matches!(seal, Seal::Cone | Seal::ORingCone | Seal::InvertedFlare);
    let seat = or_absent(row.seals.iter().any(has_seat));
    let worn = |band: Option<Band>, use_| {
        band.map_or(thread, |band| Shows::Band { min: band.min, max: band.max, use_ })
    };
    let is_female = gender == Some(Gender::Female);
    let (diameter, cone, sign) = if is_female {
        (worn(row.female_minor_mm, FEMALE), row.female_cone, -1.0)
    } else {
        (worn(row.male_major_mm, MALE), row.male_cone, 1.0)
    };
    let slope = match (row.taper, row.pitch_mm) {
        (false, _) => Shows::Slope(0.0),
        (true, Some(pitch)) => Shows::Slope(sign * pitch.get() / 16.0),
        (true, None) => thread,
    };
    let leaf = |value: Option<f64>, otherwise| value.map_or(otherwise, Shows::Leaf);
    let without_cone = match seat {
        Shows::Unstated => seat,
        _ if row.seals.is_empty() && family.part != FamilyPart::Tube => Shows::Absent,
        _ if row.seals.contains(&Seal::Thread) && !is_female => Shows::OneOf(FLAT | HOLLOW),
        _ => Shows::OneOf(FLAT),
    };
    vec![
        ("kind", Shows::OneOf(1 << family.kind(gender, &row.seals) as u16)),
        ("shoulder", shoulder(family)),
        ("gender", gender.map_or(Shows::Unstated, |_| Shows::OneOf(1 << u16::from(is_female)))),
        ("thread_diameter_mm", diameter),
        ("pitch_mm", leaf(row.pitch_mm.map(Millimetres::get), thread)),
        ("taper", if is_thread { Shows::OneOf(1 << u16::from(row.taper)) } else { Shows::Absent }),
        ("second_thread_diameter_mm", if is_thread { slope } else { Shows::Absent }),
        ("flank_angle_deg", leaf(row.flank_angle_deg.map(|angle| angle.get()), thread)),
        ("seal", seals(&row.seals)),
        ("seat_included_angle_deg", leaf(row.seat_included_angle_deg.map(|angle| angle.get()), seat)),
        ("cone", cone.map_or(without_cone, |cone| Shows::OneOf(1 << u16::from(cone == Cone::Concave)))),
        ("tube_od_mm", around(row.tube_od_mm, 0.15, 0.3, if is_female { INSIDE } else { NOT })),
        ("male_bore_mm", around(row.male_bore_mm, 0.75, 0.75, INSIDE)),
        ("swivel_hex_mm", if is_female { around(row.swivel_hex_mm, 0.4, 0.1, HEX) } else { Shows::Unstated }),
    ]
}

/// A flange head.
pub fn of_flange(row: &Flange) -> Vec<Feature> {
    vec![
        ("kind", Shows::OneOf(1 << EndKind::Flange as u16)),
        ("seal", Shows::OneOf(1 << Seal::ORingFace as u16)),
        ("cone", Shows::OneOf(FLAT)),
        ("head_od_mm", around(row.head_od_mm, 0.4, 0.4, NOT)),
        ("head_thickness_mm", around(row.head_thickness_mm, 0.35, 0.35, NOT)),
        ("bolt_long_mm", around(row.bolt_long_mm, 0.4, 0.4, NOT)),
        ("bolt_short_mm", around(row.bolt_short_mm, 0.4, 0.4, NOT)),
    ]
}

/// A hose.
pub fn of_hose(row: &HoseRow, kind: Option<&HoseType>) -> Vec<Feature> {
    let nominal = row.id_nom_mm.get();
    let (min, max) = row.id_mm.map_or((nominal - 0.4, nominal + 0.8), |band| (band.min, band.max));
    let limits = |min: Option<Millimetres>, max: Option<Millimetres>, least, most, use_| match (min, max) {
        (Some(min), Some(max)) => Shows::Band { min: min.get(), max: max.get(), use_ },
        (None, Some(max)) => Shows::AtMost(max.get()),
        (Some(min), None) => Shows::AtLeast(min.get()),
        (None, None) => Shows::Band { min: nominal + least, max: nominal + most, use_: NOT },
    };
    let braid = (row.reinforcement_od_min_mm, row.reinforcement_od_max_mm);
    let layers = kind.map_or(0, |kind| {
        let counted = (kind.layers_min..=kind.layers_max).filter(|layers| (1..=6).contains(layers));
        counted.fold(0, |mask, layers| mask | 1 << (layers - 1))
    });
    let one_of = |mask| if mask == 0 { Shows::Unstated } else { Shows::OneOf(mask) };
    vec![
        ("id_mm", Shows::Band { min, max, use_: TUBE }),
        ("reinforcement_od_mm", limits(braid.0, braid.1, 1.5, 25.0, BRAID)),
        ("cover_od_mm", limits(row.cover_od_min_mm, row.cover_od_max_mm, 2.5, 35.0, COVER)),
        ("reinforcement", one_of(kind.and_then(|kind| kind.reinforcement).map_or(0, |of| 1 << of as u16))),
        ("layers", one_of(layers)),
        ("cover", one_of(kind.map_or(0, |kind| 1 << u16::from(kind.cover.contains("thermoplastic"))))),
    ]
}
