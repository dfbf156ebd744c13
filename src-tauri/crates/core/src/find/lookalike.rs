//! Ends that start on each other and must not, while the readings leave both possible.

use super::end::Ends;
use super::found::LookalikeFound;
use crate::catalogue::{Catalogue, Lookalike};
use std::collections::HashMap;

/// From here on a partner is possible: its probability, and the likelihood of the readings under it
/// against the best.
const POSSIBLE: f64 = 1e-3;

/// The ends that are still possible, with the probability each holds.
pub(super) struct Possible<'c>(HashMap<(&'c str, &'c str), f64>);

impl<'c> Possible<'c> {
    /// Ends that hold enough probability, and ends that the readings taken do not tell from the best:
    /// a prior alone never rules a dangerous partner out.
    pub(super) fn of(
        catalogue: &'c Catalogue,
        ends: &Ends,
        ln_likelihood: &[f64],
        probabilities: &[f64],
    ) -> Self {
        let best = ln_likelihood.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let mut sums: HashMap<(&str, &str), (f64, bool)> = HashMap::new();
        for (i, end) in ends.hypotheses.iter().enumerate() {
            let undecided = ln_likelihood[i] - best >= POSSIBLE.ln();
            if !undecided && probabilities[i] < POSSIBLE / 2.0 {
                continue;
            }
            let row = end.row(catalogue);
            let sum = sums.entry((row.family(), row.size())).or_default();
            sum.0 += probabilities[i];
            sum.1 |= undecided;
        }
        sums.retain(|_, (probability, undecided)| *undecided || *probability >= POSSIBLE);
        Self(sums.into_iter().map(|(name, (probability, _))| (name, probability)).collect())
    }

    fn probability(&self, family: &str, size: &str) -> Option<f64> {
        self.0.get(&(family, size)).copied()
    }

    /// The dangerous pairs of which both are possible; of each pair the less likely is named,
    /// the pairs of the likeliest ends first.
    pub(super) fn pairs(&self, catalogue: &Catalogue) -> Vec<LookalikeFound> {
        let mut pairs: Vec<(f64, LookalikeFound)> = catalogue
            .lookalikes
            .iter()
            .filter_map(|pair| {
                let female = self.probability(&pair.female_family, &pair.female_size)?;
                let male = self.probability(&pair.male_family, &pair.male_size)?;
                let (family, size) = if female >= male {
                    (&pair.male_family, &pair.male_size)
                } else {
                    (&pair.female_family, &pair.female_size)
                };
                Some((female + male, found(pair, family, size)))
            })
            .collect();
        pairs.sort_by(|a, b| b.0.total_cmp(&a.0));
        pairs.into_iter().map(|(_, pair)| pair).collect()
    }

    /// Whether an end has a dangerous partner that is still possible.
    pub(super) fn threatens(&self, catalogue: &Catalogue, family: &str, size: &str) -> bool {
        catalogue.lookalikes.iter().any(|pair| {
            let is_female = pair.female_family == family && pair.female_size == size;
            let is_male = pair.male_family == family && pair.male_size == size;
            (is_female && self.probability(&pair.male_family, &pair.male_size).is_some())
                || (is_male && self.probability(&pair.female_family, &pair.female_size).is_some())
        })
    }
}

fn found(pair: &Lookalike, family: &str, size: &str) -> LookalikeFound {
    LookalikeFound {
        family: family.to_owned(),
        size: size.to_owned(),
        danger: format!("{}: {}", pair.starts, pair.happens),
        separates: pair.separates.clone(),
    }
}
