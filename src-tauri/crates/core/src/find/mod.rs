//! Readings -> what it was: a ranked list of hose types and end families with honest probabilities.
//!
//! A hypothesis is a row of the catalogue (and for an end the half that was measured); rows that no
//! reading can tell apart are one class of the answer. Every reading has a column: the scale it is
//! read on and, for each hypothesis, the truth it should show. Weights multiply; "none of these" is
//! always among the hypotheses.

mod belief;
mod confusion;
mod coupling;
mod end;
mod error;
mod found;
mod hose;
mod information;
mod likelihood;
mod lookalike;
mod model;
mod next;
mod readings;
mod truth;

pub use coupling::JUMP_SIZES;
pub use end::ORIGIN_HINTS;
pub use error::FindError;
pub use found::{
    EndCandidate, EndFound, EndName, Found, HoseCandidate, HoseName, LookalikeFound, NextReading, Part,
    Settled, UnknownHose,
};
pub use readings::{EndReadings, HoseReadings, Origin, Readings};

use crate::catalogue::{Catalogue, HoseRow};
use crate::print;
use crate::quantity::Millimetres;
use crate::spec::Role;
use belief::{Belief, Class, classes};
use end::Ends;
use hose::Hoses;
use lookalike::Possible;
use truth::Seen;

/// Standard error of a caliper, operator and out-of-round included, unless it is given: common
/// practice.
pub const CALIPER_ERROR: Millimetres = Millimetres(0.1);

/// One class must hold this much for a part to be settled.
const SETTLED: f64 = 0.99;

/// Share of jobs where the machine's half is of another size or family than the hose's end: whoever
/// fitted the last hose used a wrong one. Common practice, no source.
const MISMATCHED_MATES: f64 = 0.03;

/// What the readings say a hose and its ends were, and which reading to take next.
///
/// # Errors
/// A reading that can not be (negative, absurd, two ends with one role), with the path of its field
/// and what would be right.
pub fn find(catalogue: &Catalogue, readings: &Readings) -> Result<Found, FindError> {
    error::validate(readings)?;
    let hoses = Hoses::of(catalogue);
    let ends = Ends::of(catalogue);
    let mut job = Job::read(catalogue, &hoses, &ends, readings)?;
    job.couple(&hoses, &ends);
    Ok(job.answer(catalogue, &hoses, &ends))
}

/// One job's readings and beliefs.
struct Job {
    caliper: f64,
    hose_seen: Vec<(usize, Seen)>,
    hose: Belief,
    /// The print's part of the likelihood, which tells rows apart that no other reading does.
    print: Vec<f64>,
    ends: [End; 2],
}

/// One end of the job.
struct End {
    role: Role,
    /// Whether anything was read of it or of its mate.
    is_read: bool,
    mate_is_read: bool,
    seen: Vec<(usize, Seen)>,
    belief: Belief,
}

impl Job {
    fn read(
        catalogue: &Catalogue,
        hoses: &Hoses<'_>,
        ends: &Ends<'_>,
        readings: &Readings,
    ) -> Result<Self, FindError> {
        let caliper = readings.caliper_error_mm.unwrap_or(CALIPER_ERROR).get();
        let hose = readings.hose.clone().unwrap_or_default();
        let hose_seen = hose::seen(&hose, caliper);
        let text = hose.print.as_deref().unwrap_or_default();
        let print = print::evidence(catalogue, text, &hoses.hypotheses)?;
        let mut likelihood = hoses.model.ln_likelihood(&hose_seen);
        likelihood.iter_mut().zip(&print.rows).for_each(|(ln, print)| *ln += print);
        let unknown = hoses.model.ln_likelihood_of_unknown(&hose_seen) + print.unknown;
        let hose = Belief::new(hoses.model.ln_prior(), likelihood, unknown);
        let ends = [Role::A, Role::B].map(|role| End::read(ends, readings, role, caliper));
        Ok(Self { caliper, hose_seen, hose, print: print.rows, ends })
    }

    /// Ties the sizes of hose and ends.
    fn couple(&mut self, hoses: &Hoses<'_>, ends: &Ends<'_>) {
        let hose_bins: Vec<usize> = hoses.hypotheses.iter().map(|row| coupling::bin(Some(row.dn))).collect();
        let end_bins: Vec<usize> = ends.hypotheses.iter().map(|end| coupling::bin(end.row.dn())).collect();
        let mut hose = coupling::Part { belief: &mut self.hose, bins: &hose_bins };
        let mut parts: Vec<coupling::Part<'_>> = self
            .ends
            .iter_mut()
            .map(|end| coupling::Part { belief: &mut end.belief, bins: &end_bins })
            .collect();
        coupling::couple(&mut hose, &mut parts);
    }

    fn answer(&self, catalogue: &Catalogue, hoses: &Hoses<'_>, ends: &Ends<'_>) -> Found {
        let (of_hose, unknown) = self.hose.probabilities();
        let mut next = next::readings(Part::Hose, &hoses.model, &self.hose_seen, &of_hose, unknown, self.caliper);
        let key = |i: usize| (hoses.model.class[i], self.print[i].to_bits());
        let (found, unknown) = classes(&of_hose, unknown, key);
        let mut settled = Settled { hose: is_settled(&found), ..Settled::default() };
        let mut found_ends = Vec::new();
        for end in &self.ends {
            let (probabilities, unknown) = end.belief.probabilities();
            let part = if end.role == Role::A { Part::A } else { Part::B };
            next.extend(next::readings(part, &ends.model, &end.seen, &probabilities, unknown, self.caliper));
            if end.is_read {
                let (found, is_settled) = end.answer(catalogue, ends, &probabilities, unknown);
                match end.role {
                    Role::A => settled.a = is_settled,
                    Role::B => settled.b = is_settled,
                }
                found_ends.push(found);
            }
        }
        next.sort_by(|a, b| b.gain_bits.total_cmp(&a.gain_bits));
        Found {
            hose: found.iter().filter_map(|class| hose_candidate(class, hoses)).collect(),
            ends: found_ends,
            unknown: UnknownHose { hose: unknown },
            settled,
            next,
        }
    }
}

impl End {
    fn read(ends: &Ends<'_>, readings: &Readings, role: Role, caliper: f64) -> Self {
        let of = |halves: &[EndReadings]| {
            let half = halves.iter().find(|half| half.role == role);
            half.map(|half| end::seen(half, caliper)).unwrap_or_default()
        };
        let (seen, mate) = (of(&readings.ends), of(&readings.mates));
        let prior: Vec<f64> = ends
            .model
            .ln_prior()
            .iter()
            .zip(&ends.hypotheses)
            .map(|(ln, end)| ln + end::ln_origin_hint(readings.origin, end.row.family()))
            .collect();
        let mut likelihood = ends.model.ln_likelihood(&seen);
        let mut unknown = ends.model.ln_likelihood_of_unknown(&seen);
        if !mate.is_empty() {
            let of_mate = ends.ln_likelihood_of_mate(&mate);
            let of_unknown = ends.model.ln_likelihood_of_unknown(&mate);
            let top = of_mate.iter().copied().fold(of_unknown, f64::max);
            let any: f64 = prior.iter().zip(&of_mate).map(|(prior, mate)| (prior + mate - top).exp()).sum();
            let mixed = |ln: f64| {
                ((1.0 - MISMATCHED_MATES) * (ln - top).exp() + MISMATCHED_MATES * any).ln() + top
            };
            likelihood.iter_mut().zip(&of_mate).for_each(|(ln, mate)| *ln += mixed(*mate));
            unknown += mixed(of_unknown);
        }
        let is_in = |halves: &[EndReadings]| halves.iter().any(|half| half.role == role);
        Self {
            role,
            is_read: is_in(&readings.ends) || is_in(&readings.mates),
            mate_is_read: !mate.is_empty(),
            seen,
            belief: Belief::new(prior, likelihood, unknown),
        }
    }

    fn answer(
        &self,
        catalogue: &Catalogue,
        ends: &Ends<'_>,
        probabilities: &[f64],
        unknown: f64,
    ) -> (EndFound, bool) {
        let key = |i: usize| (ends.model.class[i], if self.mate_is_read { ends.mate_class(i) } else { 0 });
        let (found, unknown) = classes(probabilities, unknown, key);
        let possible = Possible::of(ends, &self.belief, probabilities);
        let threatened = found.first().is_some_and(|class| {
            class.members.iter().any(|&i| {
                let row = ends.hypotheses[i].row;
                possible.threatens(catalogue, row.family(), row.size())
            })
        });
        let answer = EndFound {
            role: self.role,
            candidates: found.iter().filter_map(|class| end_candidate(class, ends)).collect(),
            lookalikes: possible.pairs(catalogue),
            unknown,
        };
        (answer, is_settled(&found) && !threatened)
    }
}

fn is_settled(found: &[Class]) -> bool {
    found.first().is_some_and(|class| class.probability >= SETTLED)
}

fn hose_candidate(class: &Class, hoses: &Hoses<'_>) -> Option<HoseCandidate> {
    let mut names = class.members.iter().map(|&i| hose_name(hoses.hypotheses[i]));
    let HoseName { standard, kind, dn, dash } = names.next()?;
    Some(HoseCandidate { standard, kind, dn, dash, probability: class.probability, also: names.collect() })
}

fn hose_name(row: &HoseRow) -> HoseName {
    HoseName { standard: row.standard.clone(), kind: row.kind.clone(), dn: row.dn, dash: row.dash }
}

fn end_candidate(class: &Class, ends: &Ends<'_>) -> Option<EndCandidate> {
    let (&first, rest) = class.members.split_first()?;
    let end = ends.hypotheses[first];
    let also = rest.iter().map(|&i| ends.hypotheses[i].row);
    Some(EndCandidate {
        family: end.row.family().to_owned(),
        standard: end.row.standard().to_owned(),
        size: end.row.size().to_owned(),
        dash: end.row.dash(),
        thread: end.thread().map(str::to_owned),
        gender: end.gender,
        probability: class.probability,
        also: also
            .map(|row| EndName { family: row.family().to_owned(), size: row.size().to_owned() })
            .collect(),
    })
}
