//! Scores of lists whose truth is known.

use super::dangers::are_alike;
use super::laws::Reads;
use super::world::{Part, World};
use crate::calibration::expected_calibration_error;
use hosewright_core::find::{EndFound, Found};
use std::collections::BTreeMap;

/// Bins of a reliability diagram.
pub const BINS: usize = 10;

/// Probabilities that an answer leaves out are below this.
const SHOWN: f64 = 1e-5;

/// One list, its classes and "none of these" alike, and which of them was true.
#[derive(Debug, Clone)]
pub struct Scored {
    /// Each stated probability and whether it was of the truth; the last is that of the unknown.
    pub stated: Vec<(f64, bool)>,
    /// Kind of the truth: a family, a hose type, or a stranger.
    pub kind: String,
    /// What led, for a list of misses.
    pub leader: String,
    /// Whether the truth is met every day.
    pub is_everyday: bool,
    /// Whether the truth led, or a class that nothing read can part from it.
    pub is_right: bool,
}

impl Scored {
    /// The list of the hose.
    pub fn of_hose(found: &Found, truth: Option<&Part>) -> Self {
        let classes = found.hose.iter().map(|class| {
            let is = |standard: &str, kind: &str, dn: String| {
                truth.is_some_and(|truth| truth.name == [standard.to_owned(), kind.to_owned(), dn])
            };
            let is_true = is(&class.standard, &class.kind, class.dn.to_string())
                || class.also.iter().any(|name| is(&name.standard, &name.kind, name.dn.to_string()));
            (class.probability, is_true, format!("{} {}", class.standard, class.kind))
        });
        let kind =
            truth.map_or("stranger".to_owned(), |truth| format!("{} {}", truth.name[0], truth.name[1]));
        Self::of(classes.collect(), found.unknown.hose, truth, kind)
    }

    /// The list of an end.
    pub fn of_end(found: &EndFound, truth: Option<&Part>) -> Self {
        let classes = found.candidates.iter().map(|class| {
            let is = |family: &str, size: &str| {
                truth.is_some_and(|truth| truth.name[0] == family && truth.name[1] == size)
            };
            let is_half = truth.is_some_and(|truth| truth.gender == class.gender);
            let is_name =
                is(&class.family, &class.size) || class.also.iter().any(|name| is(&name.family, &name.size));
            (class.probability, is_half && is_name, class.family.clone())
        });
        let kind = truth.map_or("stranger".to_owned(), |truth| truth.name[0].clone());
        Self::of(classes.collect(), found.unknown, truth, kind)
    }

    fn of(classes: Vec<(f64, bool, String)>, unknown: f64, truth: Option<&Part>, kind: String) -> Self {
        let leader = match classes.first() {
            Some((p, _, name)) if *p >= unknown => name.clone(),
            _ => "unknown".to_owned(),
        };
        let mut stated: Vec<(f64, bool)> = classes.into_iter().map(|(p, is_true, _)| (p, is_true)).collect();
        stated.push((unknown, truth.is_none()));
        let is_everyday = truth.is_some_and(|truth| truth.is_everyday);
        let list = Self { stated, kind, leader, is_everyday, is_right: false };
        Self { is_right: list.top().1, ..list }
    }

    /// The same where the leading class is right as well if nothing taken can part it from the truth.
    pub fn or_alike(
        self,
        world: &World,
        leader: Option<&Part>,
        truth: Option<&Part>,
        taken: &Reads,
        error: f64,
    ) -> Self {
        let alike = leader.zip(truth).is_some_and(|(a, b)| are_alike(world, a, b, taken, error));
        Self { is_right: self.is_right || (alike && !self.is_called_unknown()), ..self }
    }

    /// The largest stated probability and whether it was of the truth.
    pub fn top(&self) -> (f64, bool) {
        let max = |a: (f64, bool), b: &(f64, bool)| if b.0 > a.0 { *b } else { a };
        self.stated.iter().fold((0.0, false), max)
    }

    /// Whether "none of these" leads.
    pub fn is_called_unknown(&self) -> bool {
        self.leader == "unknown"
    }

    /// Whether it truly is none of these.
    pub fn is_stranger(&self) -> bool {
        self.kind == "stranger"
    }

    fn of_truth(&self) -> f64 {
        self.stated.iter().filter(|(_, is_true)| *is_true).map(|(p, _)| *p).sum()
    }
}

/// One bar of a reliability diagram.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bin {
    /// Mean stated probability.
    pub stated: f64,
    /// Share that was true.
    pub observed: f64,
    /// How many.
    pub count: usize,
}

/// Scores of many lists.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Scores {
    /// Lists.
    pub lists: usize,
    /// Expected calibration error of the leading class of each list.
    pub ece_of_first: f64,
    /// What that would be on average by chance alone, were every probability right: the error is biased
    /// upwards by about this.
    pub ece_by_chance: f64,
    /// Expected calibration error of all stated probabilities.
    pub ece_of_all: f64,
    /// Brier score over all classes, 0 to 2.
    pub brier: f64,
    /// Mean negative logarithm of the probability of the truth, nats.
    pub log_score: f64,
}

/// Scores of lists.
pub fn scores(lists: &[Scored]) -> Scores {
    let (first, is_first): (Vec<f64>, Vec<bool>) = lists.iter().map(Scored::top).unzip();
    let (all, is_true): (Vec<f64>, Vec<bool>) =
        lists.iter().flat_map(|list| list.stated.iter().copied()).unzip();
    let mean = |of: &dyn Fn(&Scored) -> f64| lists.iter().map(of).sum::<f64>() / lists.len() as f64;
    let brier = |list: &Scored| {
        let squares = list.stated.iter().map(|(p, is_true)| (p - f64::from(u8::from(*is_true))).powi(2));
        let is_listed = list.stated.iter().any(|(_, is_true)| *is_true);
        squares.sum::<f64>() + if is_listed { 0.0 } else { 1.0 }
    };
    Scores {
        lists: lists.len(),
        ece_of_first: expected_calibration_error(&first, &is_first, BINS),
        ece_by_chance: by_chance(&bins(lists), lists.len()),
        ece_of_all: expected_calibration_error(&all, &is_true, BINS),
        brier: mean(&brier),
        log_score: mean(&|list| -list.of_truth().max(SHOWN).ln()),
    }
}

/// Mean distance of observed from stated by the binomial spread of each bin.
fn by_chance(bins: &[Bin], lists: usize) -> f64 {
    let spread = |bin: &Bin| (bin.stated * (1.0 - bin.stated) * bin.count as f64).max(0.0).sqrt();
    (2.0 / std::f64::consts::PI).sqrt() * bins.iter().map(spread).sum::<f64>() / lists as f64
}

/// The bars of the reliability diagram of the leading classes; bins that hold none are left out.
pub fn bins(lists: &[Scored]) -> Vec<Bin> {
    let mut sums = [(0.0, 0usize, 0usize); BINS];
    for (p, is_true) in lists.iter().map(Scored::top) {
        let at = ((p * BINS as f64).ceil() as usize).clamp(1, BINS) - 1;
        sums[at].0 += p;
        sums[at].1 += usize::from(is_true);
        sums[at].2 += 1;
    }
    sums.iter()
        .filter(|(.., count)| *count > 0)
        .map(|&(p, is_true, count)| Bin {
            stated: p / count as f64,
            observed: is_true as f64 / count as f64,
            count,
        })
        .collect()
}

/// A share and how many it was counted over.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Share {
    /// How many did.
    pub did: usize,
    /// Of how many.
    pub of: usize,
}

impl Share {
    /// Of those that can be asked.
    pub fn of<T>(all: impl IntoIterator<Item = T>, did: impl Fn(&T) -> bool) -> Self {
        all.into_iter().fold(Self::default(), |sum, one| sum.and(did(&one)))
    }

    /// One more.
    pub fn and(self, did: bool) -> Self {
        Self { did: self.did + usize::from(did), of: self.of + 1 }
    }

    /// Between 0 and 1.
    pub fn get(self) -> f64 {
        self.did as f64 / self.of.max(1) as f64
    }

    /// Standard error by the size of the sample, as if two more had failed and two more not.
    pub fn error(self) -> f64 {
        let (did, of) = (self.did as f64 + 2.0, self.of as f64 + 4.0);
        (did / of * (1.0 - did / of) / of).sqrt()
    }
}

/// What was taken for what, most often first: the truth, what led, how often.
pub fn misses<'s>(lists: impl IntoIterator<Item = &'s Scored>) -> Vec<(String, String, usize)> {
    let mut counts: BTreeMap<(&str, &str), usize> = BTreeMap::new();
    for list in lists.into_iter().filter(|list| !list.is_right) {
        *counts.entry((&list.kind, &list.leader)).or_default() += 1;
    }
    let mut misses: Vec<(String, String, usize)> = counts
        .into_iter()
        .map(|((kind, leader), count)| (kind.to_owned(), leader.to_owned(), count))
        .collect();
    misses.sort_by_key(|(.., count)| std::cmp::Reverse(*count));
    misses
}
