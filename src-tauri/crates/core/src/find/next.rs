//! Which reading to take next: of each part that is open the ones that are expected to tell most for
//! the effort of taking them.

use super::belief::Belief;
use super::end;
use super::found::{NextReading, Part};
use super::model::{Column, Model};
use super::readings::CannotTell;
use super::truth::Seen;
use crate::catalogue::Reach;

/// Readings that are expected to tell less than this are not proposed. A dangerous partner that is
/// barely possible is worth some thousandths of a bit, and its part stays open for it.
const WORTH_TAKING_BITS: f64 = 0.002;

/// Readings proposed of one part: the best, and others where its gauge is not at hand.
const OF_ONE_PART: usize = 3;

/// How much more a reading of a part that is still untouched must tell to go first. What the parts
/// tell adds up in any order, but laying one part down to find another costs time; and a part of
/// which nothing is known always has most to tell (an end 4.8 bits by its thread), so that by gain
/// alone no doubt between two hoses (one bit) would be settled before everything had been touched.
const LAID_DOWN: f64 = 5.0;

/// What it costs to take up a part that is still untouched, beside its first reading: a glance at it is
/// cheap only once it is in the hand. Common practice, no source.
const TAKEN_UP: f64 = 1.0;

/// A part that is not settled.
pub(super) struct Open<'j> {
    pub(super) of: Part,
    /// Whether anything was read of it.
    pub(super) is_begun: bool,
    pub(super) model: &'j Model,
    pub(super) seen: &'j [(usize, Seen)],
    pub(super) belief: &'j Belief,
}

impl Open<'_> {
    /// The readings of the part that are worth taking, most useful first.
    fn readings(&self, can: &Can<'_>) -> Vec<NextReading> {
        let Belief { probabilities, unknown } = self.belief;
        let columns = self
            .model
            .columns
            .iter()
            .enumerate()
            .filter(|(at, column)| !self.is_idle(*at) && can.take(self.of, column));
        let mut readings: Vec<NextReading> = columns
            .map(|(_, column)| NextReading {
                of: self.of,
                reading: column.key.to_owned(),
                gain_bits: column.gain(probabilities, *unknown, can.caliper),
                effort: column.effort,
                how: String::new(),
            })
            .filter(|next| next.gain_bits >= WORTH_TAKING_BITS)
            .collect();
        readings.sort_by(|a, b| worth(b).total_cmp(&worth(a)));
        readings.truncate(OF_ONE_PART);
        readings
    }

    fn is_idle(&self, column: usize) -> bool {
        match self.of {
            Part::Hose => self.seen.iter().any(|(taken, _)| *taken == column),
            Part::A | Part::B => end::is_idle(column, self.seen),
        }
    }

    fn urgency(&self, reading: &NextReading) -> f64 {
        if self.is_begun {
            worth(reading) * LAID_DOWN
        } else {
            reading.gain_bits / (reading.effort + TAKEN_UP)
        }
    }
}

/// What a reading is expected to tell for the effort of taking it.
fn worth(reading: &NextReading) -> f64 {
    reading.gain_bits / reading.effort
}

/// What can be read here and now.
pub(super) struct Can<'j> {
    /// Standard error of the caliper.
    pub(super) caliper: f64,
    /// How far the hose is apart.
    pub(super) reach: Reach,
    /// What was tried and can not be had.
    pub(super) not: &'j [CannotTell],
}

impl Can<'_> {
    fn take(&self, of: Part, column: &Column) -> bool {
        column.reach <= self.reach
            && !self.not.iter().any(|not| not.of == of && column.is_called(&not.reading))
    }
}

/// What to read next: the best reading of each open part, then the second best of each, and so on,
/// so that no part crowds out another.
pub(super) fn readings(parts: &[Open<'_>], can: &Can<'_>) -> Vec<NextReading> {
    let mut ranked: Vec<(usize, f64, NextReading)> = Vec::new();
    for part in parts {
        let readings = part.readings(can).into_iter().enumerate();
        ranked.extend(readings.map(|(rank, reading)| (rank, part.urgency(&reading), reading)));
    }
    ranked.sort_by(|a, b| a.0.cmp(&b.0).then(b.1.total_cmp(&a.1)));
    ranked.into_iter().map(|(.., reading)| reading).collect()
}
