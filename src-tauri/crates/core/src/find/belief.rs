//! What is believed of one part: a weight for each hypothesis and one for "none of these".

use super::likelihood::posterior;
use super::model::UNKNOWN_PRIOR;

/// Candidates that hold less than this are left out of an answer; the rest are scaled to add to one.
const SHOWN: f64 = 1e-6;

/// Weights of all hypotheses about one part, as logarithms.
#[derive(Debug, Clone)]
pub(super) struct Belief {
    /// Of the readings alone.
    pub(super) ln_likelihood: Vec<f64>,
    /// Prior times likelihood.
    pub(super) ln: Vec<f64>,
    ln_unknown: f64,
}

impl Belief {
    /// Prior and likelihood put together.
    pub(super) fn new(ln_prior: Vec<f64>, ln_likelihood: Vec<f64>, ln_likelihood_of_unknown: f64) -> Self {
        let ln = ln_prior.iter().zip(&ln_likelihood).map(|(prior, likelihood)| prior + likelihood).collect();
        Self { ln_likelihood, ln, ln_unknown: UNKNOWN_PRIOR.ln() + ln_likelihood_of_unknown }
    }

    /// Probabilities of the hypotheses, and of none of them.
    pub(super) fn probabilities(&self) -> (Vec<f64>, f64) {
        let mut all = self.ln.clone();
        all.push(self.ln_unknown);
        let mut probabilities = posterior(&all);
        let unknown = probabilities.pop().unwrap_or(1.0);
        (probabilities, unknown)
    }

    /// Multiplies each weight, the unknown's included, by a factor given as a logarithm.
    pub(super) fn multiply(&mut self, ln_factor: impl Fn(usize) -> f64, ln_factor_of_unknown: f64) {
        for (i, ln) in self.ln.iter_mut().enumerate() {
            *ln += ln_factor(i);
        }
        self.ln_unknown += ln_factor_of_unknown;
    }
}

/// A class that is worth showing: its members, in the order of the tables, and its probability.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Class {
    pub(super) members: Vec<usize>,
    pub(super) probability: f64,
}

/// Hypotheses grouped by key, likeliest first; what is left out is scaled away, so that the classes
/// and the unknown given back add to one.
pub(super) fn classes<K: Ord + Copy>(
    probabilities: &[f64],
    unknown: f64,
    key: impl Fn(usize) -> K,
) -> (Vec<Class>, f64) {
    let mut order: Vec<(K, usize)> = (0..probabilities.len()).map(|i| (key(i), i)).collect();
    order.sort_unstable();
    let mut classes: Vec<Class> = order
        .chunk_by(|a, b| a.0 == b.0)
        .map(|chunk| {
            let members: Vec<usize> = chunk.iter().map(|(_, i)| *i).collect();
            let probability = members.iter().map(|&i| probabilities[i]).sum();
            Class { members, probability }
        })
        .filter(|class| class.probability >= SHOWN)
        .collect();
    classes.sort_by(|a, b| b.probability.total_cmp(&a.probability).then(a.members.cmp(&b.members)));
    let all = unknown + classes.iter().map(|class| class.probability).sum::<f64>();
    classes.iter_mut().for_each(|class| class.probability /= all);
    (classes, unknown / all)
}
