//! Hypotheses in columns: one column for each reading, in it the few distinct truths, and for each
//! hypothesis which of them it holds. A reading is worked out once for each distinct truth.

use super::information::Outlook;
use super::sizes;
use super::truth::{Scale, Seen, Terms, Truth};
use crate::catalogue::{Catalogue, PartKind, Reach};
use crate::quantity::Dn;
use std::collections::HashMap;
use std::sync::{Arc, Mutex, OnceLock, PoisonError};

/// Probability, before any reading, that a part is none of the catalogue's. Common practice: rare
/// in the trade, and never excluded.
pub(super) const UNKNOWN_PRIOR: f64 = 0.04;

/// One reading and what each hypothesis says of it.
#[derive(Debug)]
pub(super) struct Column {
    /// The key of the reading.
    pub(super) key: &'static str,
    /// How it is taken.
    pub(super) scale: Scale,
    /// What it costs, in readings by caliper of a part in the hand.
    pub(super) effort: f64,
    /// How far the hose must be apart for it.
    pub(super) reach: Reach,
    /// The trait it is read of, which a part in no table may share with those that are.
    pub(super) of_trait: Option<usize>,
    /// Each truth once; the first is the one of a part of which nothing is known.
    truths: Vec<Truth>,
    of: Vec<u16>,
    ids: HashMap<[u64; 3], u16>,
    /// What a reading shows, with the error it was last asked for: a technician has one caliper.
    outlook: Mutex<Option<Arc<Outlook>>>,
    /// Logarithm of the prior of each truth. Worked out when it is first asked for.
    ln_prior: OnceLock<Vec<f64>>,
}

/// Place of [`Truth::Unstated`] among the truths of a column.
pub(super) const UNSTATED: usize = 0;

impl Column {
    fn new(
        (key, scale, of_trait): (&'static str, Scale, Option<usize>),
        catalogue: &Catalogue,
        part: PartKind,
    ) -> Self {
        let truths = vec![Truth::Unstated];
        let ids = HashMap::from([(identity(Truth::Unstated), UNSTATED as u16)]);
        let cost = catalogue.efforts.iter().find(|row| row.part == part && row.reading == key);
        // A test over the tables holds that every reading has its effort.
        let (effort, reach) = cost.map_or((1.0, Reach::Off), |row| (row.effort, row.reach));
        Self {
            key,
            scale,
            effort,
            reach,
            of_trait,
            truths,
            of: Vec::new(),
            ids,
            outlook: Mutex::new(None),
            ln_prior: OnceLock::new(),
        }
    }

    fn push(&mut self, truth: Truth) {
        let truths = &mut self.truths;
        let id = *self.ids.entry(identity(truth)).or_insert_with(|| {
            truths.push(truth);
            (truths.len() - 1) as u16
        });
        self.of.push(id);
    }

    /// Logarithm of the likelihood of a reading under each truth.
    pub(super) fn ln_of_each(&self, seen: Seen) -> Vec<f64> {
        self.truths.iter().map(|&truth| self.scale.ln_likelihood(truth, seen)).collect()
    }

    /// Adds to each hypothesis what its truth has.
    pub(super) fn add(&self, of_each: &[f64], to: &mut [f64]) {
        for (sum, &id) in to.iter_mut().zip(&self.of) {
            *sum += of_each[usize::from(id)];
        }
    }

    /// Whether a reading of that key fills this column: a pitch is read as threads an inch as well.
    pub(super) fn is_called(&self, reading: &str) -> bool {
        self.key == reading || (self.key == "pitch_mm" && reading == "tpi")
    }

    /// Logarithm of the likelihood of a reading under one hypothesis.
    pub(super) fn ln_of(&self, seen: Seen, hypothesis: usize) -> f64 {
        self.scale.ln_likelihood(self.truths[usize::from(self.of[hypothesis])], seen)
    }

    /// Where a reading is under a hypothesis no more than a stray: the limits it should lie in, or none
    /// where such a part has no such thing. Readings that differ from maker to maker are never called so.
    pub(super) fn limits_of_stray(&self, seen: Seen, hypothesis: usize) -> Option<Option<(f64, f64)>> {
        let truth = self.truths[usize::from(self.of[hypothesis])];
        self.scale.is_stray(truth, seen).then(|| truth.limits())
    }

    /// How many standard errors of such a reading two hypotheses lie apart.
    pub(super) fn apart(&self, seen: Seen, one: usize, other: usize) -> f64 {
        let truth = |hypothesis: usize| self.truths[usize::from(self.of[hypothesis])];
        self.scale.apart(truth(one), truth(other), seen)
    }

    /// What a reading with that standard error is expected to tell, in bits.
    pub(super) fn gain(&self, probabilities: &[f64], unknown: f64, error: f64) -> f64 {
        self.outlook(error).gain(&self.weights(probabilities, unknown))
    }

    fn outlook(&self, error: f64) -> Arc<Outlook> {
        let mut last = self.outlook.lock().unwrap_or_else(PoisonError::into_inner);
        match &*last {
            Some(outlook) if outlook.error() == error => Arc::clone(outlook),
            _ => Arc::clone(last.insert(Arc::new(Outlook::new(&self.scale, &self.truths, error)))),
        }
    }

    /// The probability that each of the truths holds; `unknown` speaks for no other.
    fn weights(&self, probabilities: &[f64], unknown: f64) -> Vec<f64> {
        let mut weights = vec![0.0; self.truths.len()];
        weights[UNSTATED] = unknown;
        for (probability, &id) in probabilities.iter().zip(&self.of) {
            weights[usize::from(id)] += probability;
        }
        weights
    }
}

/// What makes two truths the same: kind and numbers, bit for bit.
fn identity(truth: Truth) -> [u64; 3] {
    match truth {
        Truth::Absent => [0, 0, 0],
        Truth::Unstated => [1, 0, 0],
        Truth::Band { min, max, terms } => {
            let way = match terms {
                Terms::None => 2,
                Terms::Male => 3,
                Terms::Female => 4,
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
    /// The bin of size of each hypothesis.
    pub(super) bins: Vec<usize>,
    classes: HashMap<Vec<u16>, u32>,
    sizes: Vec<u32>,
    /// Worked out when it is first asked for: a model is whole by then.
    ln_prior: OnceLock<Vec<f64>>,
}

impl Model {
    /// A model without hypotheses, with a column for each key, its scale and the trait it is read of.
    pub(super) fn new(
        columns: Vec<(&'static str, Scale, Option<usize>)>,
        catalogue: &Catalogue,
        part: PartKind,
    ) -> Self {
        Self {
            columns: columns.into_iter().map(|column| Column::new(column, catalogue, part)).collect(),
            class: Vec::new(),
            bins: Vec::new(),
            classes: HashMap::new(),
            sizes: Vec::new(),
            ln_prior: OnceLock::new(),
        }
    }

    /// Adds a hypothesis: a truth for each column, in their order, and its hose size.
    pub(super) fn push(&mut self, truths: &[Truth], dn: Option<Dn>) {
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
        self.bins.push(sizes::bin(dn));
    }

    /// Logarithm of the prior of each hypothesis: flat over classes, and even within one.
    pub(super) fn ln_prior(&self) -> &[f64] {
        self.ln_prior.get_or_init(|| {
            let classes = self.sizes.len().max(1) as f64;
            let each = (1.0 - UNKNOWN_PRIOR) / classes;
            let of_class: Vec<f64> = self.sizes.iter().map(|&size| (each / f64::from(size)).ln()).collect();
            self.class.iter().map(|&class| of_class[class as usize]).collect()
        })
    }

    /// Logarithm of the prior of each truth of a column: the sum over the hypotheses that hold it.
    pub(super) fn ln_prior_of_truths(&self, column: usize) -> &[f64] {
        let column = &self.columns[column];
        column.ln_prior.get_or_init(|| {
            let priors: Vec<f64> = self.ln_prior().iter().map(|ln| ln.exp()).collect();
            column.weights(&priors, 0.0).into_iter().map(f64::ln).collect()
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::Catalogue;
    use crate::find::belief::{Belief, Evidence};
    use crate::find::worked::Worked;
    use crate::find::{CALIPER_ERROR, EndReadings, Models, end};
    use crate::quantity::{Millimetres, Reading};
    use crate::spec::{Gender, Role};

    /// Truths that hold less are left out here, which leaves less than 0.001 bit out.
    const NEGLIGIBLE: f64 = 1e-6;

    /// Every reading a column can show, with the width it stands for.
    fn readings(scale: &Scale, error: f64) -> (Vec<Seen>, f64) {
        let step = error / 2.0;
        let points = |lowest: f64, highest: f64, step: f64| {
            (0..((highest - lowest) / step) as usize).map(move |i| lowest + (i as f64 + 0.5) * step)
        };
        match *scale {
            Scale::Length { lowest, highest, .. } => {
                (points(lowest, highest, step).map(|value| Seen::Value { value, error }).collect(), step)
            }
            Scale::Slope { widest, .. } => {
                let error = error * std::f64::consts::SQRT_2;
                let seen = |value| Seen::Difference { value, apart: Some(5.0), error };
                (points(-widest, widest, step).map(seen).collect(), step)
            }
            Scale::Gauge { .. } | Scale::Choice(_) => (scale.answers(), 1.0),
        }
    }

    /// The mean of log2 p(reading | truth) / p(reading), summed over every reading as it is defined.
    fn gain_by_definition(column: &Column, probabilities: &[f64], unknown: f64, error: f64) -> f64 {
        let weights = column.weights(probabilities, unknown);
        let possible: Vec<(f64, Truth)> = weights
            .into_iter()
            .zip(column.truths.iter().copied())
            .filter(|(weight, _)| *weight > NEGLIGIBLE)
            .collect();
        let (readings, width) = readings(&column.scale, error);
        let of_reading = |seen: Seen| {
            let each: Vec<f64> =
                possible.iter().map(|(_, truth)| column.scale.ln_likelihood(*truth, seen).exp()).collect();
            let any: f64 = possible.iter().zip(&each).map(|((weight, _), p)| weight * p).sum();
            let told = possible.iter().zip(&each).filter(|(_, p)| **p > 0.0);
            told.map(|((weight, _), p)| weight * p * (p / any).log2()).sum::<f64>()
        };
        width * readings.into_iter().map(of_reading).sum::<f64>()
    }

    fn beliefs(models: &Models) -> Vec<(String, Belief)> {
        let model = &models.ends.model;
        let mut beliefs = vec![(
            "nothing".to_owned(),
            Evidence::new(model.ln_prior(), Worked::new(model, &[]).ln_likelihood(), 0.0).alone(),
        )];
        let text = include_str!("../../../../../tests/vectors/connection_cases.csv");
        let mut reader = csv::Reader::from_reader(text.as_bytes());
        let headers = reader.headers().expect("headers").clone();
        for row in reader.records().step_by(6) {
            let row = row.expect("a row");
            let cell =
                |name: &str| headers.iter().position(|header| header == name).and_then(|at| row.get(at));
            let Some(gender) = [("male", Gender::Male), ("female", Gender::Female)]
                .into_iter()
                .find_map(|(name, gender)| (cell("part") == Some(name)).then_some(gender))
            else {
                continue;
            };
            let mm = if cell("unit") == Some("in") { 25.4 } else { 1.0 };
            let value: f64 = cell("value").expect("a value").parse().expect("a number");
            let readings = EndReadings {
                gender: Some(gender),
                thread_diameter_mm: Some(Reading { value: Millimetres(value * mm), error: None }),
                tpi: cell("tpi").and_then(|tpi| tpi.parse().ok()),
                ..serde_json::from_value(serde_json::json!({"role": Role::A})).expect("an end")
            };
            let seen = end::seen(&readings, CALIPER_ERROR.get());
            let worked = Worked::new(model, &seen);
            beliefs.push((
                format!("{row:?}"),
                Evidence::new(model.ln_prior(), worked.ln_likelihood(), worked.ln_likelihood_of_unknown())
                    .alone(),
            ));
        }
        beliefs
    }

    /// Over published connections of which the thread was read: each gain is that of the definition,
    /// so that readings are proposed in its order.
    #[test]
    fn gains_and_their_order_are_those_of_the_definition() {
        let models = Models::of(Catalogue::embedded());
        let beliefs = beliefs(models);
        assert!(beliefs.len() > 10, "only {} jobs", beliefs.len());
        for (job, belief) in beliefs {
            let Belief { probabilities, unknown } = belief;
            let error = CALIPER_ERROR.get();
            let mut gains: Vec<(f64, f64, &str)> = Vec::new();
            for column in &models.ends.model.columns {
                let got = column.gain(&probabilities, unknown, error);
                let defined = gain_by_definition(column, &probabilities, unknown, error);
                assert!(
                    (got - defined).abs() < 0.002,
                    "{job}, {}: {got}, by definition {defined}",
                    column.key
                );
                gains.push((got, defined, column.key));
            }
            gains.sort_by(|a, b| b.0.total_cmp(&a.0));
            let is_ordered = gains.is_sorted_by(|a, b| a.1 >= b.1 - 1e-3);
            assert!(is_ordered, "{job}: {gains:?}");
        }
    }
}
