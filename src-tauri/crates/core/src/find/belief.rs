//! What is believed of one part: evidence for each hypothesis and for "none of these", and what all
//! parts of a job together make of it.

use super::likelihood::posterior;
use super::model::UNKNOWN_PRIOR;

/// Candidates that hold less than this are left out of an answer; the rest are scaled to add to one.
const SHOWN: f64 = 1e-5;

/// What is known of one part for itself.
#[derive(Debug, Clone)]
pub(super) struct Evidence {
    /// Logarithm of the likelihood of its readings under each hypothesis.
    pub(super) ln_likelihood: Vec<f64>,
    /// Prior times likelihood, scaled so that all and the unknown add to one.
    pub(super) weights: Vec<f64>,
    /// The same for "none of these".
    pub(super) unknown: f64,
}

impl Evidence {
    /// Prior and likelihood put together.
    pub(super) fn new(ln_prior: &[f64], ln_likelihood: Vec<f64>, ln_likelihood_of_unknown: f64) -> Self {
        let both = ln_prior.iter().zip(&ln_likelihood).map(|(prior, likelihood)| prior + likelihood);
        let ln: Vec<f64> = both.chain([UNKNOWN_PRIOR.ln() + ln_likelihood_of_unknown]).collect();
        let mut weights = posterior(&ln);
        let unknown = weights.pop().unwrap_or(1.0);
        Self { ln_likelihood, weights, unknown }
    }

    /// What it says when nothing else is asked.
    pub(super) fn alone(&self) -> Belief {
        Belief { probabilities: self.weights.clone(), unknown: self.unknown }
    }
}

/// Probabilities of the hypotheses about one part, and of none of them; they add to one.
#[derive(Debug, Clone)]
pub(super) struct Belief {
    pub(super) probabilities: Vec<f64>,
    pub(super) unknown: f64,
}

impl Belief {
    /// Probabilities in proportion to weights, of which one at least is above nothing.
    pub(super) fn of(mut weights: Vec<f64>, unknown: f64) -> Self {
        let all = unknown + weights.iter().sum::<f64>();
        weights.iter_mut().for_each(|weight| *weight /= all);
        Self { probabilities: weights, unknown: unknown / all }
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
        .filter_map(|chunk| {
            let probability = chunk.iter().map(|(_, i)| probabilities[*i]).sum();
            let class = || Class { members: chunk.iter().map(|(_, i)| *i).collect(), probability };
            (probability >= SHOWN).then(class)
        })
        .collect();
    classes.sort_by(|a, b| b.probability.total_cmp(&a.probability).then(a.members.cmp(&b.members)));
    let all = unknown + classes.iter().map(|class| class.probability).sum::<f64>();
    classes.iter_mut().for_each(|class| class.probability /= all);
    (classes, unknown / all)
}
