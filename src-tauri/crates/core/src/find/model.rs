//! Hypotheses in columns: one column for each reading, in it the few distinct truths, and for each
//! hypothesis which of them it holds. A reading is worked out once for each distinct truth.

use super::truth::{Scale, Seen, Truth};
use std::collections::HashMap;

/// Probability, before any reading, that a part is none of the catalogue's. Common practice: rare
/// in the trade, and never excluded.
pub(super) const UNKNOWN_PRIOR: f64 = 0.02;

/// One reading and what each hypothesis says of it.
#[derive(Debug)]
pub(super) struct Column {
    /// The key of the reading.
    pub(super) key: &'static str,
    /// How it is taken.
    pub(super) scale: Scale,
    truths: Vec<Truth>,
    of: Vec<u16>,
    ids: HashMap<[u64; 3], u16>,
}

impl Column {
    fn new(key: &'static str, scale: Scale) -> Self {
        Self { key, scale, truths: Vec::new(), of: Vec::new(), ids: HashMap::new() }
    }

    fn push(&mut self, truth: Truth) {
        let truths = &mut self.truths;
        let id = *self.ids.entry(identity(truth)).or_insert_with(|| {
            truths.push(truth);
            (truths.len() - 1) as u16
        });
        self.of.push(id);
    }

    /// Logarithm of the likelihood of a reading under each hypothesis, added to `ln_weights`.
    pub(super) fn add(&self, seen: Seen, ln_weights: &mut [f64]) {
        let each: Vec<f64> =
            self.truths.iter().map(|&truth| self.scale.ln_likelihood(truth, seen)).collect();
        for (weight, &id) in ln_weights.iter_mut().zip(&self.of) {
            *weight += each[usize::from(id)];
        }
    }

    /// The distinct truths with the probability each holds; `unknown` speaks for no truth.
    pub(super) fn weights(&self, probabilities: &[f64], unknown: f64) -> Vec<(Truth, f64)> {
        let mut each: Vec<(Truth, f64)> = self.truths.iter().map(|&truth| (truth, 0.0)).collect();
        for (probability, &id) in probabilities.iter().zip(&self.of) {
            each[usize::from(id)].1 += probability;
        }
        each.push((Truth::Unstated, unknown));
        each
    }
}

/// What makes two truths the same: kind and numbers, bit for bit.
fn identity(truth: Truth) -> [u64; 3] {
    use super::truth::Used;
    match truth {
        Truth::Absent => [0, 0, 0],
        Truth::Unstated => [1, 0, 0],
        Truth::Band { min, max, used } => {
            // Two hypotheses of one column that share a band wear the same way by the same mean.
            let way = match used {
                Used::AsNew => 2,
                Used::Smaller(_) => 3,
                Used::Larger(_) => 4,
                Used::Either(_) => 5,
            };
            [way, min.to_bits(), max.to_bits()]
        }
        Truth::AtMost { max, scale } => [6, max.to_bits(), scale.to_bits()],
        Truth::AtLeast { min, scale } => [7, min.to_bits(), scale.to_bits()],
        Truth::Exactly(value) => [8, value.to_bits(), 0],
        Truth::OneOf(mask) => [9, u64::from(mask), 0],
    }
}

/// All hypotheses about one part.
#[derive(Debug)]
pub(super) struct Model {
    pub(super) columns: Vec<Column>,
    /// The class of each hypothesis: those that agree in every column.
    pub(super) class: Vec<u32>,
    classes: HashMap<Vec<u16>, u32>,
    sizes: Vec<u32>,
}

impl Model {
    /// A model without hypotheses, with a column for each key.
    pub(super) fn new(scales: Vec<(&'static str, Scale)>) -> Self {
        Self {
            columns: scales.into_iter().map(|(key, scale)| Column::new(key, scale)).collect(),
            class: Vec::new(),
            classes: HashMap::new(),
            sizes: Vec::new(),
        }
    }

    /// Adds a hypothesis: a truth for each column, in their order.
    pub(super) fn push(&mut self, truths: &[Truth]) {
        debug_assert_eq!(truths.len(), self.columns.len(), "a truth for each column");
        for (column, &truth) in self.columns.iter_mut().zip(truths) {
            column.push(truth);
        }
        let key: Vec<u16> = self.columns.iter().filter_map(|column| column.of.last().copied()).collect();
        let new = self.sizes.len() as u32;
        let class = *self.classes.entry(key).or_insert(new);
        if class == new {
            self.sizes.push(0);
        }
        self.sizes[class as usize] += 1;
        self.class.push(class);
    }

    /// Logarithm of the prior of each hypothesis: flat over classes, and even within one.
    pub(super) fn ln_prior(&self) -> Vec<f64> {
        let classes = self.sizes.len().max(1) as f64;
        let each = (1.0 - UNKNOWN_PRIOR) / classes;
        self.class.iter().map(|&class| (each / f64::from(self.sizes[class as usize])).ln()).collect()
    }

    /// Logarithm of the likelihood of the readings under each hypothesis.
    pub(super) fn ln_likelihood(&self, seen: &[(usize, Seen)]) -> Vec<f64> {
        let mut ln = vec![0.0; self.class.len()];
        for &(column, seen) in seen {
            self.columns[column].add(seen, &mut ln);
        }
        ln
    }

    /// The same where nothing is known of the part.
    pub(super) fn ln_likelihood_of_unknown(&self, seen: &[(usize, Seen)]) -> f64 {
        seen.iter().map(|&(column, seen)| self.columns[column].scale.ln_likelihood(Truth::Unstated, seen)).sum()
    }
}
