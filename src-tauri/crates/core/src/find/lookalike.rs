//! Ends that start on each other and must not, while the readings leave both possible.

use super::SETTLED;
use super::end::Ends;
use super::found::{EndName, LookalikeFound, PairFound};
use super::model::Column;
use super::truth::Seen;
use crate::catalogue::{Catalogue, Lookalike};
use std::collections::HashMap;

/// From here on a partner is possible: its probability, and the likelihood of the readings under it
/// against the best.
const POSSIBLE: f64 = 1e-3;

/// An end whose class holds this much may be taken for the right one: with less beside it a class is
/// settled.
const TAKEN_FOR: f64 = 1.0 - SETTLED;

/// Separating readings part a pair when what the tables say of the two lies this many standard errors
/// apart (ten to one, as a look tells parallel from taper; flanks of 55 and 60 degrees alone do not) ...
const APART: f64 = 2.14;

/// ... and what was read speaks at least this much for one of the two.
const PARTED: f64 = 5.0;

/// The dangerous pairs by the ends they are of, worked out once.
#[derive(Debug, Default)]
pub(super) struct Partners {
    /// Of each pair of the catalogue the rows of female and male.
    pairs: Vec<Option<(usize, usize)>>,
    /// Of each row the pairs it is in.
    of_row: Vec<Vec<usize>>,
}

impl Partners {
    /// Of the catalogue's pairs, by the rows of its ends and flanges.
    pub(super) fn of(catalogue: &Catalogue) -> Self {
        let rows: HashMap<(&str, &str), usize> =
            catalogue.connections().enumerate().map(|(at, row)| ((row.family(), row.size()), at)).collect();
        let mut partners = Self { pairs: Vec::new(), of_row: vec![Vec::new(); rows.len()] };
        for (at, pair) in catalogue.lookalikes.iter().enumerate() {
            let female = rows.get(&(pair.female_family.as_str(), pair.female_size.as_str())).copied();
            let male = rows.get(&(pair.male_family.as_str(), pair.male_size.as_str())).copied();
            if let Some((female, male)) = female.zip(male) {
                partners.of_row[female].push(at);
                if male != female {
                    partners.of_row[male].push(at);
                }
            }
            partners.pairs.push(female.zip(male));
        }
        partners
    }
}

/// What the readings leave of one row, either half.
#[derive(Debug, Clone, Copy, Default)]
struct Left {
    probability: f64,
    /// What the likeliest class of it holds.
    class: f64,
    is_possible: bool,
    /// The hypothesis about it that the readings speak most for.
    likeliest: Option<usize>,
}

/// The ends that are still possible.
pub(super) struct Possible<'m> {
    ends: &'m Ends,
    partners: &'m Partners,
    rows: Vec<Left>,
    /// The readings taken.
    taken: &'m [(usize, Seen)],
}

impl<'m> Possible<'m> {
    /// Ends that hold enough probability, and ends that the readings taken do not tell from the best:
    /// a prior alone never rules a dangerous partner out.
    pub(super) fn of(
        ends: &'m Ends,
        ln_likelihood: &[f64],
        probabilities: &[f64],
        taken: &'m [(usize, Seen)],
    ) -> Self {
        let best = ln_likelihood.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let mut classes: HashMap<u32, f64> = HashMap::new();
        for (&class, probability) in ends.model.class.iter().zip(probabilities) {
            *classes.entry(class).or_default() += probability;
        }
        let mut rows = vec![Left::default(); ends.partners.of_row.len()];
        for (i, hypothesis) in ends.hypotheses.iter().enumerate() {
            let left = &mut rows[hypothesis.at(ends)];
            left.probability += probabilities[i];
            left.class = left.class.max(classes[&ends.model.class[i]]);
            left.is_possible |= ln_likelihood[i] - best >= POSSIBLE.ln();
            if left.likeliest.is_none_or(|of| ln_likelihood[of] < ln_likelihood[i]) {
                left.likeliest = Some(i);
            }
        }
        for left in &mut rows {
            left.is_possible |= left.probability >= POSSIBLE;
        }
        Self { ends, partners: &ends.partners, rows, taken }
    }

    /// The dangerous pairs of which both are possible and one may be taken for the right one; of each
    /// pair the less likely is named, the pairs of the likeliest ends first.
    pub(super) fn pairs(&self, catalogue: &Catalogue) -> Vec<LookalikeFound> {
        let mut pairs: Vec<(f64, LookalikeFound)> = Vec::new();
        for (row, left) in self.rows.iter().enumerate().filter(|(_, left)| left.is_possible) {
            for &at in &self.partners.of_row[row] {
                let Some((female, male)) = self.partners.pairs[at].filter(|(female, _)| *female == row)
                else {
                    continue;
                };
                let (pair, other) = (&catalogue.lookalikes[at], self.rows[male]);
                let is_open = if female == male {
                    self.separating(pair).next().is_none()
                } else {
                    other.is_possible && !self.is_parted(pair, *left, other)
                };
                if is_open && left.class.max(other.class) >= TAKEN_FOR {
                    let names_female = left.probability < other.probability;
                    pairs.push((left.probability + other.probability, found(pair, names_female)));
                }
            }
        }
        pairs.sort_by(|a, b| b.0.total_cmp(&a.0));
        pairs.into_iter().map(|(_, pair)| pair).collect()
    }

    /// Whether an end has a dangerous partner that is still possible. A wrong part of the same name (a
    /// ring that is lost, a staple that is too thin) is a caution, and no other candidate.
    pub(super) fn threatens(&self, row: usize) -> bool {
        self.partners.of_row[row].iter().filter_map(|&at| self.partners.pairs[at]).any(|(female, male)| {
            female != male && self.rows[if female == row { male } else { female }].is_possible
        })
    }

    /// The readings taken that the pair is told apart by.
    fn separating(&self, pair: &Lookalike) -> impl Iterator<Item = (&Column, Seen)> {
        let columns = self.taken.iter().map(|&(at, seen)| (&self.ends.model.columns[at], seen));
        columns.filter(|(column, _)| pair.separating_readings.iter().any(|key| column.is_called(key)))
    }

    /// Whether enough of them were taken and speak for either of the two.
    fn is_parted(&self, pair: &Lookalike, one: Left, other: Left) -> bool {
        let Some((one, other)) = one.likeliest.zip(other.likeliest) else { return false };
        let (mut apart, mut speaks) = (0.0, 0.0);
        for (column, seen) in self.separating(pair) {
            apart += column.apart(seen, one, other).powi(2);
            speaks += column.ln_of(seen, one) - column.ln_of(seen, other);
        }
        apart >= APART * APART && speaks.abs() >= PARTED.ln()
    }
}

fn found(pair: &Lookalike, names_female: bool) -> LookalikeFound {
    let female = EndName { family: pair.female_family.clone(), size: pair.female_size.clone() };
    let male = EndName { family: pair.male_family.clone(), size: pair.male_size.clone() };
    let EndName { family, size } = if names_female { female.clone() } else { male.clone() };
    let danger = match pair.fit {
        Some(_) => String::new(),
        None => format!("{}: {}", pair.starts, pair.happens),
    };
    let pair_found = PairFound {
        female,
        female_part: pair.female_part,
        male,
        mechanism: pair.mechanism,
        grade: pair.danger,
        separating_readings: pair.separating_readings.clone(),
        fit: pair.fit,
    };
    LookalikeFound { family, size, danger, separates: pair.separates.clone(), pair: Some(pair_found) }
}
