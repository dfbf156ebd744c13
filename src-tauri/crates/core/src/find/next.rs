//! Which reading to take next: the one that is expected to tell most.

use super::end;
use super::found::{NextReading, Part};
use super::information::gain;
use super::model::Model;
use super::truth::Seen;

/// Readings that are expected to tell less than this are not proposed.
const WORTH_TAKING_BITS: f64 = 0.02;

/// The readings of one part that are worth taking, each with its expected gain.
pub(super) fn readings(
    of: Part,
    model: &Model,
    seen: &[(usize, Seen)],
    probabilities: &[f64],
    unknown: f64,
    caliper: f64,
) -> Vec<NextReading> {
    let is_idle = |column: usize| match of {
        Part::Hose => seen.iter().any(|(taken, _)| *taken == column),
        Part::A | Part::B => end::is_idle(column, seen),
    };
    let columns = model.columns.iter().enumerate().filter(|(column, _)| !is_idle(*column));
    columns
        .map(|(_, column)| NextReading {
            of,
            reading: column.key.to_owned(),
            gain_bits: gain(&column.scale, &column.weights(probabilities, unknown), caliper),
            how: String::new(),
        })
        .filter(|next| next.gain_bits >= WORTH_TAKING_BITS)
        .collect()
}
