//! Readings of one part as a model takes them: what each says of every truth is worked out once, and serves the rows
//! of the tables as well as a part that is in none.

use super::likelihood::ln_sum;
use super::model::{Column, Model, UNKNOWN_PRIOR, UNSTATED};
use super::truth::{Scale, Seen};

/// Share of parts in no table that have a trait (its thread, its way of sealing) of some row all the same, and
/// of those that do not the share of readings that are like some row's: makers put their own seats on common
/// threads, and known seats on threads of their own. Common practice, no source.
const COMMON_SHARE: f64 = 0.7;

/// Share of parts in no table that are some row's in all but their sizes: a size of its family that the tables
/// have not. Common practice, no source.
const ODD_SIZE_SHARE: f64 = 0.3;

/// The readings of one part.
#[derive(Debug)]
pub(super) struct Worked<'a> {
    model: &'a Model,
    readings: Vec<One<'a>>,
}

/// One reading.
#[derive(Debug)]
struct One<'a> {
    at: usize,
    column: &'a Column,
    /// Logarithm of its likelihood under each truth of the column.
    of_each: Vec<f64>,
}

impl<'a> Worked<'a> {
    pub(super) fn new(model: &'a Model, seen: &[(usize, Seen)]) -> Self {
        let one = |&(at, seen): &(usize, Seen)| {
            let column = &model.columns[at];
            One { at, column, of_each: column.ln_of_each(seen) }
        };
        let mut readings: Vec<One<'_>> = seen.iter().map(one).collect();
        // Those of one trait stand together.
        readings.sort_by_key(|one| one.column.of_trait);
        Self { model, readings }
    }

    /// Logarithm of the likelihood of the readings under each hypothesis.
    pub(super) fn ln_likelihood(&self) -> Vec<f64> {
        self.of_rows(self.readings.iter())
    }

    /// The same for a part that is in no table: a row of another size, or a part put together anew.
    pub(super) fn ln_likelihood_of_unknown(&self) -> f64 {
        let ways = [
            ODD_SIZE_SHARE.ln() + self.ln_of_another_size(),
            (1.0 - ODD_SIZE_SHARE).ln() + self.ln_of_a_new_whole(),
        ];
        ln_sum(ways.into_iter())
    }

    /// The same of each reading for itself, together.
    pub(super) fn ln_of_unknown_each_alone(&self) -> f64 {
        self.readings.iter().map(|one| self.ln_alone(one)).sum()
    }

    /// All but the sizes are some row's; each size is one for itself.
    fn ln_of_another_size(&self) -> f64 {
        let (sizes, rest): (Vec<_>, Vec<_>) = self.readings.iter().partition(|one| one.is_size());
        self.ln_of_some_row(&rest) + sizes.into_iter().map(|one| self.ln_alone(one)).sum::<f64>()
    }

    /// Each trait is that of some row, or each reading of it is like some row's for itself, or all of it is of
    /// a standard that the tables have not: a strange thread is strange in diameter and pitch alike.
    fn ln_of_a_new_whole(&self) -> f64 {
        let traits = self.readings.chunk_by(|a, b| a.column.of_trait == b.column.of_trait);
        let of_trait = |of: &[One<'_>]| {
            let alone = of.iter().map(|one| self.ln_alone(one)).sum();
            if of.len() == 1 || of[0].column.of_trait.is_none() {
                return alone;
            }
            let anything = of.iter().map(One::ln_of_anything).sum();
            either(self.ln_of_some_row(&of.iter().collect::<Vec<_>>()), either(alone, anything))
        };
        traits.map(of_trait).sum()
    }

    /// One reading for itself, where the part is in no table.
    fn ln_alone(&self, one: &One<'_>) -> f64 {
        match one.column.of_trait {
            Some(_) => either(self.ln_of_some_row(&[one]), one.ln_of_anything()),
            None => one.ln_of_anything(),
        }
    }

    fn ln_of_some_row(&self, readings: &[&One<'_>]) -> f64 {
        let all = match readings {
            [] => return 0.0,
            // Of one column the few truths stand for all rows.
            [one] => {
                let truths = self.model.ln_prior_of_truths(one.at).iter().zip(&one.of_each);
                ln_sum(truths.map(|(prior, likelihood)| prior + likelihood))
            }
            _ => {
                let rows = self.model.ln_prior().iter().zip(self.of_rows(readings.iter().copied()));
                ln_sum(rows.map(|(prior, likelihood)| prior + likelihood))
            }
        };
        all - (1.0 - UNKNOWN_PRIOR).ln()
    }

    fn of_rows<'b>(&self, readings: impl Iterator<Item = &'b One<'a>>) -> Vec<f64>
    where
        'a: 'b,
    {
        let mut ln = vec![0.0; self.model.class.len()];
        readings.for_each(|one| one.column.add(&one.of_each, &mut ln));
        ln
    }
}

impl One<'_> {
    fn is_size(&self) -> bool {
        matches!(self.column.scale, Scale::Length { .. })
    }

    /// Where nothing is known of the part.
    fn ln_of_anything(&self) -> f64 {
        self.of_each[UNSTATED]
    }
}

/// What a part in no table has of some row, or has not.
fn either(of_some_row: f64, otherwise: f64) -> f64 {
    ln_sum([COMMON_SHARE.ln() + of_some_row, (1.0 - COMMON_SHARE).ln() + otherwise].into_iter())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::Catalogue;
    use crate::find::Models;

    /// Some reading of every column.
    fn reading(scale: &Scale) -> Seen {
        match *scale {
            Scale::Length { lowest, highest, .. } => {
                Seen::Value { value: 0.7 * lowest + 0.3 * highest, error: 0.05 }
            }
            Scale::Slope { .. } => Seen::Difference { value: 0.4, apart: Some(5.0), error: 0.07 },
            Scale::Gauge { .. } | Scale::Choice(_) => scale.answers()[0],
        }
    }

    #[test]
    fn one_reading_says_of_the_truths_what_it_says_of_their_rows() {
        let models = Models::of(Catalogue::embedded());
        for model in [&models.hoses.model, &models.ends.model] {
            for (at, column) in model.columns.iter().enumerate() {
                let worked = Worked::new(model, &[(at, reading(&column.scale))]);
                let rows = model.ln_prior().iter().zip(worked.ln_likelihood());
                let by_rows = ln_sum(rows.map(|(prior, ln)| prior + ln)) - (1.0 - UNKNOWN_PRIOR).ln();
                let by_truths = worked.ln_of_some_row(&[&worked.readings[0]]);
                assert!((by_rows - by_truths).abs() < 1e-12, "{}: {by_rows}, {by_truths}", column.key);
            }
        }
    }
}
