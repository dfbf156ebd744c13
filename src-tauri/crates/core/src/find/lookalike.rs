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

/// What the readings leave of one row.
#[derive(Debug, Clone, Copy, Default)]
struct Left {
    /// Of both halves.
    probability: f64,
    /// What the classes of its halves hold.
    held: f64,
    is_possible: bool,
    /// Its hypotheses: the tables have two halves of a row, or one.
    halves: [Option<usize>; 2],
}

/// The ends that are still possible.
pub(super) struct Possible<'m> {
    ends: &'m Ends,
    partners: &'m Partners,
    rows: Vec<Left>,
    ln_likelihood: &'m [f64],
    /// The readings taken.
    taken: &'m [(usize, Seen)],
}

impl<'m> Possible<'m> {
    /// Ends that hold enough probability, and ends that the readings taken do not tell from the best:
    /// a prior alone never rules a dangerous partner out.
    pub(super) fn of(
        ends: &'m Ends,
        ln_likelihood: &'m [f64],
        probabilities: &[f64],
        taken: &'m [(usize, Seen)],
    ) -> Self {
        let best = ln_likelihood.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let least = best + POSSIBLE.ln();
        let mut classes = vec![0.0; ends.model.class.len()];
        for (&class, probability) in ends.model.class.iter().zip(probabilities) {
            classes[class as usize] += probability;
        }
        let mut rows = vec![Left::default(); ends.partners.of_row.len()];
        for (i, hypothesis) in ends.hypotheses.iter().enumerate() {
            let left = &mut rows[hypothesis.at(ends)];
            left.probability += probabilities[i];
            left.held += classes[ends.model.class[i] as usize];
            left.is_possible |= ln_likelihood[i] >= least;
            let half = usize::from(left.halves[0].is_some());
            left.halves[half] = Some(i);
        }
        for left in &mut rows {
            left.is_possible |= left.probability >= POSSIBLE;
        }
        Self { ends, partners: &ends.partners, rows, ln_likelihood, taken }
    }

    /// The dangerous pairs of which one may be taken for the right one and the other is still open beside
    /// it; of each pair the less likely is named, the pairs of the likeliest ends first.
    pub(super) fn pairs(&self, catalogue: &Catalogue) -> Vec<LookalikeFound> {
        let mut pairs: Vec<(f64, LookalikeFound)> = Vec::new();
        let known = self.partners.pairs.iter().zip(&catalogue.lookalikes);
        for ((female, male), pair) in known.filter_map(|(rows, pair)| Some(((*rows)?, pair))) {
            let (one, other) = (self.rows[female], self.rows[male]);
            if one.held.max(other.held) < TAKEN_FOR {
                continue;
            }
            let is_open = if female == male {
                one.is_possible && self.separating(pair).next().is_none()
            } else {
                self.are_open(female, male) && !self.is_parted(pair, one, other)
            };
            if is_open {
                let names_female = one.probability < other.probability;
                pairs.push((one.probability + other.probability, found(pair, names_female)));
            }
        }
        pairs.sort_by(|a, b| b.0.total_cmp(&a.0));
        pairs.into_iter().map(|(_, pair)| pair).collect()
    }

    /// Whether an end has a dangerous partner that is still possible. A wrong part of the same name (a
    /// ring that is lost, a staple that is too thin) is a caution, and no other candidate.
    pub(super) fn threatens(&self, row: usize) -> bool {
        self.partners.of_row[row].iter().filter_map(|&at| self.partners.pairs[at]).any(|(female, male)| {
            female != male && self.is_open_beside(row, if female == row { male } else { female })
        })
    }

    fn are_open(&self, one: usize, other: usize) -> bool {
        self.is_open_beside(one, other) && self.is_open_beside(other, one)
    }

    /// Whether a partner of a row is still possible, or is as unlikely as it is by chance alone: nothing that
    /// was taken tells it from the row, however badly both go with what was read.
    fn is_open_beside(&self, row: usize, partner: usize) -> bool {
        let all = || self.taken.iter().map(|&(at, seen)| (&self.ends.model.columns[at], seen));
        self.rows[partner].is_possible
            || self.beside(self.rows[row], self.rows[partner]).any(|halves| apart(all(), halves).0 < APART)
    }

    /// The readings taken that the pair is told apart by.
    fn separating(&self, pair: &Lookalike) -> impl Iterator<Item = (&Column, Seen)> {
        let columns = self.taken.iter().map(|&(at, seen)| (&self.ends.model.columns[at], seen));
        columns.filter(|(column, _)| pair.separating_readings.iter().any(|key| column.is_called(key)))
    }

    /// Whether enough of them were taken and speak for either of the two, whichever half is in the hand.
    fn is_parted(&self, pair: &Lookalike, one: Left, other: Left) -> bool {
        let mut halves = self.beside(one, other).peekable();
        halves.peek().is_some()
            && halves.all(|halves| {
                let (apart, speaks) = apart(self.separating(pair), halves);
                apart >= APART && speaks >= PARTED.ln()
            })
    }

    /// The hypotheses about two rows that can be the one half in the hand: the same half of both, and not one
    /// that the readings speak against for either.
    fn beside(&self, one: Left, other: Left) -> impl Iterator<Item = (usize, usize)> {
        let gender = |at: usize| self.ends.hypotheses[at].gender;
        let likelihood = |(a, b): (usize, usize)| self.ln_likelihood[a].max(self.ln_likelihood[b]);
        let halves: Vec<(usize, usize)> = one
            .halves
            .into_iter()
            .flatten()
            .flat_map(|a| other.halves.into_iter().flatten().map(move |b| (a, b)))
            .filter(|&(a, b)| gender(a).is_none() || gender(b).is_none() || gender(a) == gender(b))
            .collect();
        let best = halves.iter().copied().map(likelihood).fold(f64::NEG_INFINITY, f64::max);
        halves.into_iter().filter(move |&halves| likelihood(halves) >= best + POSSIBLE.ln())
    }
}

/// How many standard errors readings part two hypotheses by what the tables say of them, and how much, as a
/// logarithm of odds, what was read speaks for one of the two.
fn apart<'m>(taken: impl Iterator<Item = (&'m Column, Seen)>, (one, other): (usize, usize)) -> (f64, f64) {
    let (square, speaks) = taken.fold((0.0, 0.0), |(square, speaks), (column, seen)| {
        let says = column.ln_of(seen, one) - column.ln_of(seen, other);
        (square + column.apart(seen, one, other).powi(2), speaks + says)
    });
    (square.sqrt(), speaks.abs())
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
