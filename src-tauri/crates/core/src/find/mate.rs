//! The machine's half as evidence: mostly it is the other half of the end's own row, and now and then,
//! where somebody fitted a wrong hose, anything.

use super::belief::{Evidence, classes};
use super::end::Ends;
use super::found::MateFound;
use super::truth::Seen;
use super::worked::Worked;
use crate::catalogue::Catalogue;

/// Share of jobs where the machine's half is of another size or family than the hose's end: whoever
/// fitted the last hose used a wrong one. Common practice, no source.
const MISMATCHED: f64 = 0.03;

/// Below this chance it rather belongs to another end than to this one.
const EITHER: f64 = 0.5;

/// The readings of one half of the machine.
#[derive(Debug)]
pub(super) struct Mate {
    /// Likelihood of the readings where the half belongs to each hypothesis about the end, on a scale
    /// whose logarithm of one is `top`.
    belonging: Vec<f64>,
    /// The same where the end is none of the catalogue's.
    of_unknown: f64,
    /// The same where the half is anything.
    anything: f64,
    top: f64,
    /// What the half is by its own readings.
    own: Evidence,
}

impl Mate {
    /// None where nothing was read.
    pub(super) fn read(ends: &Ends, seen: &[(usize, Seen)]) -> Option<Self> {
        if seen.is_empty() {
            return None;
        }
        let ln_prior = ends.model.ln_prior();
        let worked = Worked::new(&ends.model, seen);
        let (ln_own, ln_unknown) = (worked.ln_likelihood(), worked.ln_likelihood_of_unknown());
        let top = ln_own.iter().copied().fold(ln_unknown, f64::max);
        let scaled = |ln: f64| (ln - top).exp();
        let anything = ln_prior.iter().zip(&ln_own).map(|(prior, ln)| prior.exp() * scaled(*ln)).sum();
        let belonging = ends.of_other_halves(&ln_own, ln_unknown).into_iter().map(scaled).collect();
        let own = Evidence::new(ln_prior, ln_own, ln_unknown);
        Some(Self { belonging, of_unknown: scaled(ln_unknown), anything, top, own })
    }

    /// Logarithm of the likelihood of the readings under a hypothesis about the end.
    pub(super) fn ln_likelihood(&self, hypothesis: usize) -> f64 {
        self.mixed(self.belonging[hypothesis]).ln() + self.top
    }

    /// The same where the end is none of the catalogue's.
    pub(super) fn ln_likelihood_of_unknown(&self) -> f64 {
        self.mixed(self.of_unknown).ln() + self.top
    }

    fn mixed(&self, belonging: f64) -> f64 {
        (1.0 - MISMATCHED) * belonging + MISMATCHED * self.anything
    }

    /// What the half is, and whether it belongs to an end that is believed to be what `probabilities` say.
    pub(super) fn found(
        &self,
        catalogue: &Catalogue,
        ends: &Ends,
        probabilities: &[f64],
    ) -> Option<MateFound> {
        let of_each = probabilities.iter().zip(&self.belonging);
        let (belonging, all) = of_each.fold((0.0, 0.0), |(sum, all), (probability, belonging)| {
            let chance = (1.0 - MISMATCHED) * belonging / self.mixed(*belonging);
            (sum + probability * chance, all + probability)
        });
        let belongs = if all > 0.0 { belonging / all } else { 0.0 };
        let own = self.own.alone();
        let (classes, _) = classes(&own.probabilities, own.unknown, |i| ends.model.class[i]);
        let likeliest = classes.first()?;
        let half = ends.hypotheses[*likeliest.members.first()?];
        let row = half.row(catalogue);
        Some(MateFound {
            belongs,
            is_another: belongs < EITHER,
            family: row.family().to_owned(),
            size: row.size().to_owned(),
            gender: half.gender,
            probability: likeliest.probability,
        })
    }
}
