//! The ways a reading leaves the band of a new part, from their table.

use super::truth::Term;
use crate::catalogue::{Catalogue, PartKind};
use crate::spec::Gender;

/// The terms of one reading of that half; those without a half hold for both.
pub(super) fn of(catalogue: &Catalogue, part: PartKind, reading: &str, half: Option<Gender>) -> Vec<Term> {
    let rows = catalogue.reading_terms.iter().filter(|row| row.part == part && row.reading == reading);
    rows.filter(|row| row.half.is_none() || row.half == half)
        .map(|row| Term { direction: row.direction, share: row.share, mean: row.mean_mm })
        .collect()
}
