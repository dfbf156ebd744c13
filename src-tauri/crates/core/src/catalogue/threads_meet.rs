//! Which female thread starts on which male, and how far it goes: from the sizes in the table of ends.

use super::EndRow;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Below this share of the right thread's depth a male falls through the female or turns over at once.
/// Common practice: threads that keep half of their depth feel like threads.
const LEAST_OVERLAP: f64 = 0.5;

/// A pair must catch for one turn before its pitch binds, or nobody would think that it starts; and
/// pitches further apart than the furthest near miss of the trade (G1/8 and M10x1, a tenth) are seen at
/// once. Common practice.
const LEAST_TURNS: f64 = 1.0;
const WIDEST_PITCH: f64 = 0.11;

/// Pitches and pitch lines nearer than this are one thread under two names, mm: the tables give
/// three decimals.
const ONE_PITCH_MM: f64 = 0.002;
const ONE_PITCH_LINE_MM: f64 = 0.03;

/// Taper of pipe threads on the diameter, for each unit of length (ISO 7-1, ASME B1.20.1).
pub(crate) const TAPER_ON_DIAMETER: f64 = 1.0 / 16.0;

/// By which rule two threads start on each other.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum ThreadRule {
    /// One thread, another seat, tube or port.
    SameThread,
    /// Two parallel threads whose diameter and pitch are near enough.
    NearThread,
    /// A taper male in a parallel female.
    TaperInParallel,
    /// A parallel male in a taper female.
    ParallelInTaper,
    /// Taper threads of two standards.
    TwoTapers,
}

/// How the threads of a pair meet.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct ThreadFit {
    /// By which rule they start.
    pub rule: ThreadRule,
    /// How much of the right thread's depth overlaps, percent.
    pub overlap_pct: f64,
    /// How much the male's diameter differs from that of the right male.
    pub diameter_difference_mm: f64,
    /// How much the pitches differ.
    pub pitch_difference_mm: f64,
    /// Turns until the pitch binds or the taper wedges; none where the female runs to the end.
    pub turns: Option<f64>,
}

/// The thread of a row: its pitch and the distance, on the diameter, from its crests to its pitch line.
/// Worked out once for each row, because every row is held against every other.
pub(super) struct Thread<'r> {
    row: &'r EndRow,
    pitch: f64,
    /// Of the male's crests above the pitch line, and of the female's below it.
    male: f64,
    female: f64,
    /// Tangent of the flank to the axis' normal: play along the axis for play on the diameter.
    flank: f64,
}

impl<'r> Thread<'r> {
    /// Of ISO 68-1 and ASME B1.1 (60 degrees), ISO 228-1 and ISO 7-1 (55 degrees), ASME B1.20.1
    /// (taper, 60 degrees, crests cut to 0.8 of the pitch). None where the tables do not say.
    pub(super) fn of(row: &'r EndRow) -> Option<Self> {
        let (pitch, angle) = (row.pitch_mm?.get(), row.flank_angle_deg?.get());
        let (male, female) = match (angle < 57.5, row.taper) {
            (true, _) => (0.6403, 0.6403),
            (false, true) => (0.8, 0.8),
            (false, false) => (0.6495, 0.4330),
        };
        let flank = (angle / 2.0).to_radians().tan();
        Some(Self { row, pitch, male: male * pitch, female: female * pitch, flank })
    }
}

/// How the female of one row meets the male of another; none where it does not start.
pub(super) fn fit(of_female: &Thread<'_>, of_male: &Thread<'_>) -> Option<ThreadFit> {
    let (female, male) = (of_female.row, of_male.row);
    let minor = female.female_minor_nom_mm?.get();
    let (right, major) = (female.male_major_nom_mm?.get(), male.male_major_nom_mm?.get());
    let overlap = (major.min(right) - minor) / (right - minor);

    let pitch_line = minor + of_female.female;
    // A taper female is widest at its face; a male enters by its small end, or at its smallest as new.
    let mouth = match female.female_minor_mm {
        Some(band) if female.taper => band.max + of_female.female,
        _ => pitch_line,
    };
    let smallest = male.male_major_mm.map_or(major, |band| band.min) - of_male.male;
    let largest = male.male_major_mm.map_or(major, |band| band.max) - of_male.male;
    let play = mouth - smallest;
    let pitch_difference = (of_female.pitch - of_male.pitch).abs();
    let is_near_pitch = pitch_difference <= ONE_PITCH_MM
        || (pitch_difference <= WIDEST_PITCH * of_female.pitch.min(of_male.pitch)
            && play * of_female.flank / pitch_difference >= LEAST_TURNS);
    if overlap < LEAST_OVERLAP || play < 0.0 || !is_near_pitch {
        return None;
    }
    let slack = (pitch_line - major + of_male.male).max(0.0);
    let binds = (pitch_difference > ONE_PITCH_MM).then(|| slack * of_female.flank / pitch_difference);
    let wedges = |slack: f64| slack / TAPER_ON_DIAMETER / of_male.pitch;
    let is_one = pitch_difference <= ONE_PITCH_MM
        && (pitch_line - major + of_male.male).abs() <= ONE_PITCH_LINE_MM
        && female.flank_angle_deg == male.flank_angle_deg
        && female.taper == male.taper;
    let (rule, turns) = match (female.taper, male.taper) {
        _ if is_one => (ThreadRule::SameThread, None),
        (false, false) => (ThreadRule::NearThread, binds),
        (false, true) => {
            (ThreadRule::TaperInParallel, (largest > pitch_line).then(|| wedges(pitch_line - smallest)))
        }
        (true, false) => (ThreadRule::ParallelInTaper, Some(wedges(mouth - major + of_male.male))),
        (true, true) => (ThreadRule::TwoTapers, Some(wedges(play))),
    };
    Some(ThreadFit {
        rule,
        overlap_pct: (100.0 * overlap).min(100.0),
        diameter_difference_mm: (right - major).abs(),
        pitch_difference_mm: pitch_difference,
        turns: turns.map(|turns| turns.max(0.0)),
    })
}
