//! Readings that can not be.

use super::{EndReadings, HoseReadings, Readings};
use crate::quantity::{Degrees, Millimetres, Reading};
use crate::spec::Role;
use thiserror::Error;

/// Why readings were refused. Each message says where, what was wrong and what would be right.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum FindError {
    /// A number that no part can have.
    #[error("{field} is {value}; it must lie between {lowest} and {highest}")]
    OutOfRange {
        /// Path of the field.
        field: String,
        /// What was given.
        value: f64,
        /// Smallest that can be.
        lowest: f64,
        /// Largest that can be.
        highest: f64,
    },
    /// Two lists of readings for one end.
    #[error("{field} is a second {role:?}; each end is read once, so one must be A and the other B")]
    RoleTwice {
        /// Path of the field.
        field: String,
        /// The role that stands twice.
        role: Role,
    },
    /// A seat given by its angle per side.
    #[error("{field} is {value}, the angle per side; give the included angle, {included}")]
    PerSide {
        /// Path of the field.
        field: String,
        /// What was given.
        value: f64,
        /// The included angle.
        included: f64,
    },
    /// The print can not be read at all.
    #[error("hose.print: {0}")]
    Print(#[from] crate::print::PrintError),
}

impl FindError {
    /// Path of the field that is wrong, such as `ends[0].tpi`.
    pub fn field(&self) -> &str {
        match self {
            FindError::OutOfRange { field, .. }
            | FindError::RoleTwice { field, .. }
            | FindError::PerSide { field, .. } => field,
            FindError::Print(_) => "hose.print",
        }
    }
}

/// Largest length of a hose or an end that is taken, mm: far beyond what the trade has, since 13/16 in is a 13 in
/// while it is typed. What the trade has no part of is a stray, and settles nothing.
const LARGEST_MM: f64 = 500.0;
/// Longest assembly that is believed, mm.
const LONGEST_MM: f64 = 200_000.0;
/// Smallest and largest standard error that is believed, mm.
const ERRORS_MM: (f64, f64) = (0.001, 20.0);
/// Threads an inch of the coarsest and the finest thread that is believed.
const TPI: (f64, f64) = (2.0, 100.0);
/// Pitches that are believed, mm.
const PITCH_MM: (f64, f64) = (0.2, 12.0);
/// Seats by their angle per side, as inch and Japanese names give them, with what they include.
const PER_SIDE: [(f64, f64); 4] = [(12.0, 24.0), (30.0, 60.0), (37.0, 74.0), (45.0, 90.0)];

/// Refuses readings that can not be.
pub(super) fn validate(readings: &Readings) -> Result<(), FindError> {
    if let Some(hose) = &readings.hose {
        validate_hose(hose)?;
    }
    validate_halves("ends", &readings.ends)?;
    validate_halves("mates", &readings.mates)?;
    length("overall_length_mm", readings.overall_length_mm, LONGEST_MM)?;
    let error = readings.caliper_error_mm.map(Millimetres::get);
    within("caliper_error_mm", error, ERRORS_MM.0, ERRORS_MM.1)
}

fn validate_hose(hose: &HoseReadings) -> Result<(), FindError> {
    length("hose.id_mm", hose.id_mm, LARGEST_MM)?;
    length("hose.cover_od_mm", hose.cover_od_mm, LARGEST_MM)?;
    length("hose.reinforcement_od_mm", hose.reinforcement_od_mm, LARGEST_MM)?;
    within("hose.layers", hose.layers.map(f64::from), 1.0, 6.0)
}

fn validate_halves(list: &str, halves: &[EndReadings]) -> Result<(), FindError> {
    for (i, half) in halves.iter().enumerate() {
        let at = |field: &str| format!("{list}[{i}].{field}");
        if halves[..i].iter().any(|other| other.role == half.role) {
            return Err(FindError::RoleTwice { field: at("role"), role: half.role });
        }
        let lengths = [
            ("thread_diameter_mm", half.thread_diameter_mm),
            ("second_thread_diameter_mm", half.second_thread_diameter_mm),
            ("tube_od_mm", half.tube_od_mm),
            ("male_bore_mm", half.male_bore_mm),
            ("swivel_hex_mm", half.swivel_hex_mm),
            ("head_od_mm", half.head_od_mm),
            ("head_thickness_mm", half.head_thickness_mm),
            ("bolt_long_mm", half.bolt_long_mm),
            ("bolt_short_mm", half.bolt_short_mm),
        ];
        for (field, reading) in lengths {
            length(&at(field), reading, LARGEST_MM)?;
        }
        let pitch = half.pitch_mm.map(|pitch| pitch.value.get());
        within(&at("pitch_mm"), pitch, PITCH_MM.0, PITCH_MM.1)?;
        within(&at("pitch_mm.error"), error_of(half.pitch_mm), ERRORS_MM.0 / 100.0, ERRORS_MM.1)?;
        within(&at("tpi"), half.tpi, TPI.0, TPI.1)?;
        within(&at("threads_apart"), half.threads_apart, 0.5, 100.0)?;
        within(&at("flank_angle_deg"), half.flank_angle_deg.map(Degrees::get), 20.0, 100.0)?;
        let seat = half.seat_included_angle_deg.map(Degrees::get);
        if let (Some(value), field) = (seat, at("seat_included_angle_deg")) {
            if let Some((_, included)) = PER_SIDE.into_iter().find(|(side, _)| *side == value) {
                return Err(FindError::PerSide { field, value, included });
            }
            within(&field, seat, 5.0, 180.0)?;
        }
    }
    Ok(())
}

fn error_of(reading: Option<Reading>) -> Option<f64> {
    reading.and_then(|reading| reading.error).map(Millimetres::get)
}

fn length(field: &str, reading: Option<Reading>, largest: f64) -> Result<(), FindError> {
    within(field, reading.map(|reading| reading.value.get()), 0.1, largest)?;
    within(&format!("{field}.error"), error_of(reading), ERRORS_MM.0, ERRORS_MM.1)
}

fn within(field: &str, value: Option<f64>, lowest: f64, highest: f64) -> Result<(), FindError> {
    match value {
        Some(value) if !(lowest..=highest).contains(&value) => {
            Err(FindError::OutOfRange { field: field.to_owned(), value, lowest, highest })
        }
        _ => Ok(()),
    }
}
