//! Readings -> what it was: a ranked list of hose types and end families with honest probabilities.
//!
//! A hypothesis is a row of the catalogue (and for an end the half that was measured); rows that no
//! reading can tell apart are one class of the answer. Every reading has a column: the scale it is
//! read on and, for each hypothesis, the truth it should show. Weights multiply; "none of these" is
//! always among the hypotheses.

mod belief;
mod confusion;
mod contradiction;
mod end;
mod error;
mod explain;
mod found;
mod hose;
mod information;
mod joint;
mod likelihood;
mod lookalike;
mod mate;
mod model;
mod next;
mod origins;
mod range;
mod readings;
mod sizes;
mod stray;
mod terms;
mod truth;
mod worked;

pub use contradiction::{Contradicted, Contradiction, Stated};
pub use error::FindError;
pub use explain::{Explained, Said, Why, explain};
pub use found::{
    EndCandidate, EndFound, EndName, Found, HoseCandidate, HoseName, LookalikeFound, MateFound, NextReading,
    PairFound, Part, Settled, UnknownHose,
};
pub use readings::{CannotTell, EndReadings, HoseReadings, Origin, Readings, SeatShape};
pub use stray::Stray;

use crate::catalogue::{Catalogue, HoseRow, Reach};
use crate::print::{self, PrintEvidence};
use crate::quantity::Millimetres;
use crate::spec::Role;
use belief::{Belief, Class, Evidence, classes};
use end::Ends;
use hose::Hoses;
use joint::Ties;
use lookalike::Possible;
use mate::Mate;
use origins::Origins;
use sizes::Sizes;
use truth::Seen;
use worked::Worked;

/// Standard error of a caliper, operator and out-of-round included, unless it is given: common
/// practice.
pub const CALIPER_ERROR: Millimetres = Millimetres(0.1);

/// A class that holds this much is likelier than all else.
const LIKELY: f64 = 0.5;

/// One class must hold this much for a part to be settled.
const SETTLED: f64 = 0.99;

/// From this chance on that either end was changed it is asked whether one was: ends of one region have
/// 0.04 together, a 24 degree end beside a Japanese seat 0.2.
const ODD_ENDS: f64 = 0.14;

/// What is worked out of a catalogue once: every hypothesis, and what it says of every reading.
#[derive(Debug)]
pub(crate) struct Models {
    hoses: Hoses,
    ends: Ends,
    sizes: Sizes,
    origins: Origins,
}

impl Models {
    fn of(catalogue: &Catalogue) -> &Self {
        catalogue.finding.get_or_init(|| {
            let ends = Ends::of(catalogue);
            let families = ends.hypotheses.iter().map(|end| end.row(catalogue).family());
            let origins = Origins::of(catalogue, families, ends.model.ln_prior());
            Self { hoses: Hoses::of(catalogue), ends, sizes: Sizes::of(catalogue), origins }
        })
    }

    fn ties(&self) -> Ties<'_> {
        Ties {
            sizes: &self.sizes,
            origins: &self.origins,
            hose_bins: &self.hoses.model.bins,
            end_bins: &self.ends.model.bins,
        }
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
    Ok(Found { next: job.next(models, found.enough), ..found })
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
    print: PrintEvidence,
    hose_readings: HoseReadings,
    ends: [End; 2],
    reach: Reach,
    cannot_tell: Vec<CannotTell>,
}

/// One end of the job, and what all of it makes of the end.
struct End {
    read: EndRead,
    belief: Belief,
    /// The chance that it is not of the family the machine came with.
    changed: f64,
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
        let worked = Worked::new(model, &hose_seen);
        let mut likelihood = worked.ln_likelihood();
        likelihood.iter_mut().zip(&print.rows).for_each(|(ln, print)| *ln += print);
        let unknown =
            worked.ln_likelihood_of_unknown() + hose::ln_round_a_bore(model, &hose_seen) + print.unknown;
        let hose = Evidence::new(model.ln_prior(), likelihood, unknown);
        let read = [Role::A, Role::B].map(|role| EndRead::of(&models.ends, readings, role, caliper));
        let named = origins::named(readings.origin);
        let joint = joint::joint(&models.ties(), &hose, [&read[0].evidence, &read[1].evidence], named);
        let ([a, b], [of_a, of_b], [was_a, was_b]) = (read, joint.ends, joint.changed);
        let hose_readings = readings.hose.clone().unwrap_or_default();
        Ok(Self {
            caliper,
            hose_seen,
            hose: joint.hose,
            print,
            hose_readings,
            ends: [
                End { read: a, belief: of_a, changed: was_a },
                End { read: b, belief: of_b, changed: was_b },
            ],
            reach: readings.reach.unwrap_or_default(),
            cannot_tell: readings.cannot_tell.clone(),
        })
    }

    /// The classes of the hose, likeliest first, and the unknown.
    fn hose_classes(&self, models: &Models) -> (Vec<Class>, f64) {
        let Belief { probabilities, unknown } = &self.hose;
        classes(probabilities, *unknown, |i| self.hose_class(models, i))
    }

    /// What tells a row from another: its class by readings, and what the print says of it.
    fn hose_class(&self, models: &Models, row: usize) -> (u32, u64) {
        (models.hoses.model.class[row], self.print.rows[row].to_bits())
    }

    fn has_print(&self) -> bool {
        self.print.rows.iter().any(|ln| *ln != 0.0)
    }

    fn answer(&self, catalogue: &Catalogue, models: &Models) -> Found {
        let (mut found, mut unknown) = self.hose_classes(models);
        let rows = hose::rows(catalogue);
        let contradictions = contradiction::contradictions(
            catalogue,
            &self.print.said,
            &rows,
            &self.hose_readings,
            self.caliper,
            contradiction::likely(&found, &rows),
        );
        let probabilities = &self.hose.probabilities;
        if let Some(printed) = contradiction::printed_row(&self.print.said, &contradictions, probabilities) {
            let key = |row| self.hose_class(models, row);
            let members: Vec<usize> = (0..rows.len()).filter(|&row| key(row) == key(printed)).collect();
            let probability = members.iter().map(|&row| probabilities[row]).sum();
            contradiction::keep(&mut found, &mut unknown, members, probability);
        }
        let mut strays = self.strays_of_hose(models, &found, &rows);
        // Doubt about which hose it is settles nothing, however strong the rest speaks.
        let is_clear = strays.is_empty() && !contradictions.iter().any(|found| found.code.is_of_identity());
        let mut settled = Settled { hose: is_clear && is_settled(&found), ..Settled::default() };
        let mut ends = Vec::new();
        for end in self.ends.iter().filter(|end| end.read.is_read) {
            let (found, is_settled) = end.answer(catalogue, &models.ends);
            let of_end = end.strays(catalogue, &models.ends);
            let is_settled = is_settled && of_end.is_empty();
            strays.extend(of_end);
            match end.read.role {
                Role::A => settled.a = is_settled,
                Role::B => settled.b = is_settled,
            }
            ends.push(found);
        }
        let (builds, _) = classes(probabilities, self.hose.unknown, |row| models.hoses.build[row]);
        Found {
            hose: found.iter().filter_map(|class| hose_candidate(class, &rows)).collect(),
            ends,
            unknown: UnknownHose { hose: unknown },
            settled,
            enough: Settled { hose: settled.hose || is_clear && is_settled(&builds), ..settled },
            odd_ends: self.ends.iter().all(|end| end.read.is_read)
                && self.ends.iter().map(|end| end.changed).sum::<f64>() >= ODD_ENDS,
            next: Vec::new(),
            contradictions,
            strays,
            printed_pressure_bar: self.print.said.pressure,
            printed_year: self.print.said.year,
        }
    }

    /// The readings of the hose that its likeliest class does not explain.
    fn strays_of_hose(&self, models: &Models, found: &[Class], rows: &[&HoseRow]) -> Vec<Stray> {
        let Some(leader) = leader(found) else { return Vec::new() };
        let HoseRow { standard, kind, dn, .. } = rows[leader];
        let named = format!("{standard} {kind} DN{dn}");
        stray::strays(Part::Hose, &models.hoses.model, &self.hose_seen, leader, &named)
    }

    fn next(&self, models: &Models, enough: Settled) -> Vec<NextReading> {
        let hose = next::Open {
            of: Part::Hose,
            is_begun: !self.hose_seen.is_empty() || self.has_print(),
            model: &models.hoses.model,
            seen: &self.hose_seen,
            belief: &self.hose,
        };
        let mut open = Vec::new();
        open.extend((!enough.hose).then_some(hose));
        for end in self.ends.iter().filter(|end| !enough.end(end.read.role)) {
            open.push(next::Open {
                of: end.read.role.into(),
                is_begun: !end.read.seen.is_empty() || end.read.mate.is_some(),
                model: &models.ends.model,
                seen: &end.read.seen,
                belief: &end.belief,
            });
        }
        let can = next::Can { caliper: self.caliper, reach: self.reach, not: &self.cannot_tell };
        next::readings(&open, &can)
    }
}

/// What one end says for itself.
struct EndRead {
    role: Role,
    /// Whether anything was read of it or of its mate.
    is_read: bool,
    mate: Option<Mate>,
    seen: Vec<(usize, Seen)>,
    evidence: Evidence,
}

impl EndRead {
    fn of(ends: &Ends, readings: &Readings, role: Role, caliper: f64) -> Self {
        let of = |halves: &[EndReadings]| {
            let half = halves.iter().find(|half| half.role == role);
            half.map(|half| end::seen(half, caliper)).unwrap_or_default()
        };
        let seen = of(&readings.ends);
        let mate = Mate::read(ends, &of(&readings.mates));
        let worked = Worked::new(&ends.model, &seen);
        let (mut likelihood, mut unknown) = (worked.ln_likelihood(), worked.ln_likelihood_of_unknown());
        if let Some(mate) = &mate {
            likelihood.iter_mut().enumerate().for_each(|(i, ln)| *ln += mate.ln_likelihood(i));
            unknown += mate.ln_likelihood_of_unknown();
        }
        let is_in = |halves: &[EndReadings]| halves.iter().any(|half| half.role == role);
        Self {
            role,
            is_read: is_in(&readings.ends) || is_in(&readings.mates),
            mate,
            seen,
            evidence: Evidence::new(ends.model.ln_prior(), likelihood, unknown),
        }
    }
}

impl End {
    /// The classes of the end, likeliest first, and the unknown.
    fn classes(&self, ends: &Ends) -> (Vec<Class>, f64) {
        let Belief { probabilities, unknown } = &self.belief;
        let mate_class = |i: usize| if self.read.mate.is_some() { ends.mate_class(i) } else { 0 };
        classes(probabilities, *unknown, |i| (ends.model.class[i], mate_class(i)))
    }

    /// The readings of the end that its likeliest class does not explain.
    fn strays(&self, catalogue: &Catalogue, ends: &Ends) -> Vec<Stray> {
        let Some(leader) = leader(&self.classes(ends).0) else { return Vec::new() };
        let row = ends.hypotheses[leader].row(catalogue);
        let named = row.name();
        stray::strays(self.read.role.into(), &ends.model, &self.read.seen, leader, &named)
    }

    fn answer(&self, catalogue: &Catalogue, ends: &Ends) -> (EndFound, bool) {
        let (found, unknown) = self.classes(ends);
        let probabilities = &self.belief.probabilities;
        let possible = Possible::of(ends, &self.read.evidence.ln_likelihood, probabilities, &self.read.seen);
        let threatened = found.first().is_some_and(|class| {
            class.members.iter().any(|&i| possible.threatens(ends.hypotheses[i].at(ends)))
        });
        let answer = EndFound {
            role: self.read.role,
            candidates: found.iter().filter_map(|class| end_candidate(class, catalogue, ends)).collect(),
            lookalikes: possible.pairs(catalogue),
            unknown,
            changed: self.changed,
            mate: self.read.mate.as_ref().and_then(|mate| mate.found(catalogue, ends, probabilities)),
        };
        (answer, is_settled(&found) && !threatened)
    }
}

/// The first row of the class that leads, where it is likelier than all else.
fn leader(found: &[Class]) -> Option<usize> {
    found.first().filter(|class| class.probability >= LIKELY)?.members.first().copied()
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
