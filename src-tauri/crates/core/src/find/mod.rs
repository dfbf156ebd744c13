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
    EndCandidate, EndFound, EndName, Found, HoseCandidate, HoseName, LookalikeFound, NextReading, PairFound,
    Part, Settled, UnknownHose,
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

/// What is worked out of a catalogue once: every hypothesis, and what it says of every reading.
#[derive(Debug)]
pub(crate) struct Models {
    hoses: Hoses,
    ends: Ends,
}

impl Models {
    fn of(catalogue: &Catalogue) -> &Self {
        catalogue.finding.get_or_init(|| Self { hoses: Hoses::of(catalogue), ends: Ends::of(catalogue) })
    }
}

/// What the readings say a hose and its ends were, and which reading to take next.
///
/// # Errors
/// A reading that can not be (negative, absurd, two ends with one role), with the path of its field
/// and what would be right.
pub fn find(catalogue: &Catalogue, readings: &Readings) -> Result<Found, FindError> {
    let models = Models::of(catalogue);
    let job = Job::read(catalogue, models, readings)?;
    let found = job.answer(catalogue, models);
    Ok(Found { next: job.next(models, found.settled), ..found })
}

/// The same without the next reading, for a screen that follows each key.
///
/// # Errors
/// As [`find`].
pub fn candidates(catalogue: &Catalogue, readings: &Readings) -> Result<Found, FindError> {
    let models = Models::of(catalogue);
    Ok(Job::read(catalogue, models, readings)?.answer(catalogue, models))
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
    fn read(catalogue: &Catalogue, models: &Models, readings: &Readings) -> Result<Self, FindError> {
        error::validate(readings)?;
        let caliper = readings.caliper_error_mm.unwrap_or(CALIPER_ERROR).get();
        let model = &models.hoses.model;
        let (hose_seen, text) = match &readings.hose {
            Some(hose) => (hose::seen(hose, caliper), hose.print.as_deref().unwrap_or_default()),
            None => (Vec::new(), ""),
        };
        let print = print::evidence(catalogue, text, &hose::rows(catalogue))?;
        let mut likelihood = model.ln_likelihood(&hose_seen);
        likelihood.iter_mut().zip(&print.rows).for_each(|(ln, print)| *ln += print);
        let unknown = model.ln_likelihood_of_unknown(&hose_seen) + print.unknown;
        let mut hose = Belief::new(model.ln_prior(), likelihood, unknown);
        let mut ends =
            [Role::A, Role::B].map(|role| End::read(catalogue, &models.ends, readings, role, caliper));
        couple(models, &mut hose, &mut ends);
        Ok(Self { caliper, hose_seen, hose, print: print.rows, ends })
    }

    fn answer(&self, catalogue: &Catalogue, models: &Models) -> Found {
        let (probabilities, unknown) = self.hose.probabilities();
        let class = &models.hoses.model.class;
        let (found, unknown) = classes(&probabilities, unknown, |i| (class[i], self.print[i].to_bits()));
        let mut settled = Settled { hose: is_settled(&found), ..Settled::default() };
        let rows = hose::rows(catalogue);
        let mut ends = Vec::new();
        for end in self.ends.iter().filter(|end| end.is_read) {
            let (found, is_settled) = end.answer(catalogue, &models.ends);
            match end.role {
                Role::A => settled.a = is_settled,
                Role::B => settled.b = is_settled,
            }
            ends.push(found);
        }
        Found {
            hose: found.iter().filter_map(|class| hose_candidate(class, &rows)).collect(),
            ends,
            unknown: UnknownHose { hose: unknown },
            settled,
            next: Vec::new(),
        }
    }

    fn next(&self, models: &Models, settled: Settled) -> Vec<NextReading> {
        let hose = next::Open {
            of: Part::Hose,
            is_begun: !self.hose_seen.is_empty() || self.print.iter().any(|ln| *ln != 0.0),
            model: &models.hoses.model,
            seen: &self.hose_seen,
            belief: &self.hose,
        };
        let mut open = Vec::new();
        open.extend((!settled.hose).then_some(hose));
        for end in self.ends.iter().filter(|end| !settled.end(end.role)) {
            open.push(next::Open {
                of: match end.role {
                    Role::A => Part::A,
                    Role::B => Part::B,
                },
                is_begun: !end.seen.is_empty() || end.mate_is_read,
                model: &models.ends.model,
                seen: &end.seen,
                belief: &end.belief,
            });
        }
        next::readings(&open, self.caliper)
    }
}

/// Ties the sizes of hose and ends.
fn couple(models: &Models, hose: &mut Belief, ends: &mut [End]) {
    let mut hose = coupling::Part { belief: hose, bins: &models.hoses.model.bins };
    let mut parts: Vec<coupling::Part<'_>> = ends
        .iter_mut()
        .map(|end| coupling::Part { belief: &mut end.belief, bins: &models.ends.model.bins })
        .collect();
    coupling::couple(&mut hose, &mut parts);
}

impl End {
    fn read(catalogue: &Catalogue, ends: &Ends, readings: &Readings, role: Role, caliper: f64) -> Self {
        let of = |halves: &[EndReadings]| {
            let half = halves.iter().find(|half| half.role == role);
            half.map(|half| end::seen(half, caliper)).unwrap_or_default()
        };
        let (seen, mate) = (of(&readings.ends), of(&readings.mates));
        let mut prior = ends.model.ln_prior();
        if let Some(origin) = readings.origin {
            for (ln, end) in prior.iter_mut().zip(&ends.hypotheses) {
                *ln += end::ln_origin_hint(origin, end.row(catalogue).family());
            }
        }
        let mut likelihood = ends.model.ln_likelihood(&seen);
        let mut unknown = ends.model.ln_likelihood_of_unknown(&seen);
        if !mate.is_empty() {
            let (of_mate, of_unknown) = mate_likelihood(ends, &prior, &mate);
            likelihood.iter_mut().zip(of_mate).for_each(|(ln, mate)| *ln += mate);
            unknown += of_unknown;
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

    fn answer(&self, catalogue: &Catalogue, ends: &Ends) -> (EndFound, bool) {
        let (probabilities, unknown) = self.belief.probabilities();
        let key = |i: usize| (ends.model.class[i], if self.mate_is_read { ends.mate_class(i) } else { 0 });
        let (found, unknown) = classes(&probabilities, unknown, key);
        let taken = self.seen.iter().map(|(column, _)| ends.model.columns[*column].key).collect();
        let possible = Possible::of(ends, &self.belief, &probabilities, taken);
        let threatened = found.first().is_some_and(|class| {
            class.members.iter().any(|&i| possible.threatens(ends.hypotheses[i].at(ends)))
        });
        let answer = EndFound {
            role: self.role,
            candidates: found.iter().filter_map(|class| end_candidate(class, catalogue, ends)).collect(),
            lookalikes: possible.pairs(catalogue),
            unknown,
        };
        (answer, is_settled(&found) && !threatened)
    }
}

/// Logarithm of the likelihood of the mate's readings under each hypothesis and under none of them:
/// mostly the mate is the other half, and now and then anything.
fn mate_likelihood(ends: &Ends, ln_prior: &[f64], mate: &[(usize, Seen)]) -> (Vec<f64>, f64) {
    let each = ends.ln_likelihood_of_mate(mate);
    let unknown = ends.model.ln_likelihood_of_unknown(mate);
    let top = each.iter().copied().fold(unknown, f64::max);
    let anything: f64 = ln_prior.iter().zip(&each).map(|(prior, ln)| (prior + ln - top).exp()).sum();
    let mixed =
        |ln: f64| ((1.0 - MISMATCHED_MATES) * (ln - top).exp() + MISMATCHED_MATES * anything).ln() + top;
    (each.into_iter().map(mixed).collect(), mixed(unknown))
}

fn is_settled(found: &[Class]) -> bool {
    found.first().is_some_and(|class| class.probability >= SETTLED)
}

fn hose_candidate(class: &Class, rows: &[&HoseRow]) -> Option<HoseCandidate> {
    let mut names = class.members.iter().map(|&i| hose_name(rows[i]));
    let HoseName { standard, kind, dn, dash } = names.next()?;
    Some(HoseCandidate { standard, kind, dn, dash, probability: class.probability, also: names.collect() })
}

fn hose_name(row: &HoseRow) -> HoseName {
    HoseName { standard: row.standard.clone(), kind: row.kind.clone(), dn: row.dn, dash: row.dash }
}

fn end_candidate(class: &Class, catalogue: &Catalogue, ends: &Ends) -> Option<EndCandidate> {
    let (&first, rest) = class.members.split_first()?;
    let end = ends.hypotheses[first];
    let row = end.row(catalogue);
    let also = rest.iter().map(|&i| ends.hypotheses[i].row(catalogue));
    Some(EndCandidate {
        family: row.family().to_owned(),
        standard: row.standard().to_owned(),
        size: row.size().to_owned(),
        dash: row.dash(),
        thread: end::thread(row).map(str::to_owned),
        gender: end.gender,
        probability: class.probability,
        also: also
            .map(|row| EndName { family: row.family().to_owned(), size: row.size().to_owned() })
            .collect(),
    })
}
