//! Where a machine was made, and what that says of its ends: a hint that both ends share, and that an
//! end which was changed since does not.

use super::Origin;
use crate::catalogue::Catalogue;

/// Origins in the order of their table; the last is elsewhere.
pub(super) const ORIGINS: usize = 4;

/// How often a machine comes from each, before anything is known. Common practice, no source.
const PRIOR: ByOrigin = [0.3, 0.35, 0.25, 0.1];

/// How often the origin that a technician names is right. Common practice, no source.
const NAMED_RIGHT: f64 = 0.9;

/// Share of ends that were changed for another family since the machine was new. Common practice, no
/// source.
const CHANGED: f64 = 0.05;

/// A weight for each origin.
pub(super) type ByOrigin = [f64; ORIGINS];

/// How often each hypothesis about an end is met on machines of each origin, relative to its prior.
#[derive(Debug)]
pub(super) struct Origins(Vec<ByOrigin>);

impl Origins {
    /// For hypotheses with these families and priors, by the table of families.
    pub(super) fn of<'f>(
        catalogue: &Catalogue,
        families: impl Iterator<Item = &'f str>,
        ln_prior: &[f64],
    ) -> Self {
        let weights: Vec<ByOrigin> = families
            .map(|family| {
                let row = catalogue.origins.iter().find(|row| row.family == family);
                row.map_or([1.0; ORIGINS], |row| row.weights)
            })
            .collect();
        let mut mean = [0.0; ORIGINS];
        for (weights, ln) in weights.iter().zip(ln_prior) {
            mean.iter_mut().zip(weights).for_each(|(mean, weight)| *mean += weight * ln.exp());
        }
        let all: f64 = ln_prior.iter().map(|ln| ln.exp()).sum();
        let relative = |weights: ByOrigin| {
            std::array::from_fn(|at| (1.0 - CHANGED) * weights[at] * all / mean[at] + CHANGED)
        };
        Self(weights.into_iter().map(relative).collect())
    }

    /// The factors of one hypothesis.
    pub(super) fn factors(&self, hypothesis: usize) -> &ByOrigin {
        &self.0[hypothesis]
    }
}

/// The chance that an end was changed, where its hypothesis has that factor.
pub(super) fn changed(factor: f64) -> f64 {
    CHANGED / factor
}

/// How likely each origin is by what the technician named.
pub(super) fn named(origin: Option<Origin>) -> ByOrigin {
    let right = match origin {
        Some(Origin::NorthAmerica) => 0,
        Some(Origin::Europe) => 1,
        Some(Origin::EastAsia) => 2,
        Some(Origin::Unknown) | None => return PRIOR,
    };
    let wrong = (1.0 - NAMED_RIGHT) / (ORIGINS - 1) as f64;
    std::array::from_fn(|at| PRIOR[at] * if at == right { NAMED_RIGHT } else { wrong })
}
