//! From overall length to cut length, and the tolerance of the overall length.

use super::subject::Subject;
use crate::catalogue::Catalogue;
use crate::quantity::{Dn, Millimetres};
use crate::spec::{Role, Spec};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Whose length tolerances are worked to.
#[derive(
    Debug, Clone, Copy, Default, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema, TS,
)]
#[serde(rename_all = "kebab-case")]
pub enum LengthPractice {
    /// DIN 20066, by length and size.
    #[default]
    Din20066,
    /// The American handbook practice, by length alone.
    American,
}

/// Lengths up to and with that one, sizes of a range, and the two rules that hold there.
struct Band {
    dn: (f64, f64),
    up_to_mm: f64,
    plus: &'static str,
    minus: &'static str,
}

const fn din(dn: (f64, f64), up_to_mm: f64, plus: &'static str, minus: &'static str) -> Band {
    Band { dn, up_to_mm, plus, minus }
}

const UP_TO_DN_25: (f64, f64) = (0.0, 25.0);
const DN_32_TO_50: (f64, f64) = (32.0, 50.0);
const DN_60_TO_100: (f64, f64) = (60.0, 100.0);
const ALL_SIZES: (f64, f64) = (0.0, f64::INFINITY);

/// The bands of DIN 20066, shortest first; the figures stand in the rules.
const DIN_20066: [Band; 9] = [
    din(UP_TO_DN_25, 630.0, "L014", "L015"),
    din(UP_TO_DN_25, 1250.0, "L016", "L017"),
    din(UP_TO_DN_25, 2500.0, "L018", "L019"),
    din(DN_32_TO_50, 630.0, "L020", "L021"),
    din(DN_32_TO_50, 1250.0, "L022", "L023"),
    din(DN_32_TO_50, 2500.0, "L024", "L025"),
    din(DN_60_TO_100, 630.0, "L026", "L027"),
    din(ALL_SIZES, 8000.0, "L028", "L029"),
    din(ALL_SIZES, f64::INFINITY, "L030", "L031"),
];

/// Where the bands of all sizes begin.
const DIN_ALL_SIZES_FROM_MM: f64 = 2500.0;

/// The American bands, shortest first: plus or minus one figure.
const AMERICAN: [(f64, &str); 6] = [
    (305.0, "L033"),
    (610.0, "L034"),
    (915.0, "L035"),
    (1220.0, "L036"),
    (1830.0, "L037"),
    (f64::INFINITY, "L038"),
];

/// Tolerance of an overall length: minus (negative) and plus, in mm. None where the practice gives
/// none for that size and length.
pub fn length_tolerance(
    catalogue: &Catalogue,
    practice: LengthPractice,
    dn: Dn,
    overall: Millimetres,
) -> Option<[f64; 2]> {
    let (minus, plus) = match practice {
        LengthPractice::Din20066 => {
            let band = din_band(dn, overall.get())?;
            (allowance(catalogue, band.minus, overall)?, allowance(catalogue, band.plus, overall)?)
        }
        LengthPractice::American => {
            let (_, rule) = AMERICAN.iter().find(|(up_to_mm, _)| overall.get() <= *up_to_mm)?;
            let allowance = allowance(catalogue, rule, overall)?;
            (-allowance, allowance)
        }
    };
    Some([minus, plus])
}

fn din_band(dn: Dn, overall_mm: f64) -> Option<&'static Band> {
    let dn = din_size(dn);
    DIN_20066.iter().find(|band| {
        let of_size = band.dn.0 <= dn && dn <= band.dn.1;
        let long_enough = band.dn != ALL_SIZES || overall_mm > DIN_ALL_SIZES_FROM_MM;
        of_size && long_enough && overall_mm <= band.up_to_mm
    })
}

/// The size as DIN 20066 writes it: DN 31 is its 32, DN 51 its 50.
fn din_size(dn: Dn) -> f64 {
    match dn.get() {
        31.0 => 32.0,
        51.0 => 50.0,
        other => other,
    }
}

/// A rule's allowance in mm; percentages are of the overall length.
fn allowance(catalogue: &Catalogue, id: &str, overall: Millimetres) -> Option<f64> {
    let rule = catalogue.rules.iter().find(|rule| rule.id == id)?;
    let share = if rule.unit.contains('%') { overall.get() / 100.0 } else { 1.0 };
    Some(rule.value? * share)
}

/// The tolerance of the spec's overall length.
pub(super) fn tolerance_of(subject: &Subject<'_>) -> Option<[f64; 2]> {
    let dn = subject.hose?.row.dn;
    let overall = subject.spec.overall_length_mm?;
    length_tolerance(subject.catalogue, subject.question.length_practice, dn, overall)
}

/// Overall length less both cut-offs. None while one of the three is not known, or where nothing
/// would be left to cut.
pub(super) fn cut_length(spec: &Spec) -> Option<Millimetres> {
    let left = left_to_cut(spec)?;
    (left.get() > 0.0).then_some(left)
}

/// The same, even where it is nothing or less.
pub(super) fn left_to_cut(spec: &Spec) -> Option<Millimetres> {
    let overall = spec.overall_length_mm?.get();
    let a = spec.end(Role::A)?.cutoff_mm?.get();
    let b = spec.end(Role::B)?.cutoff_mm?.get();
    Some(Millimetres(overall - a - b))
}
