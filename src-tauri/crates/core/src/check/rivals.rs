//! What the hose that was there may have been.

use super::Evidence;
use crate::catalogue::{Catalogue, HoseRow};
use crate::find::HoseCandidate;

/// How much of the probability the originals looked at must hold.
pub(super) const PLAUSIBLE: f64 = 0.99;

/// The rows of the originals that together hold 99 %, with every row of their classes.
#[derive(Clone, Default)]
pub(super) struct Rivals<'a> {
    pub(super) rows: Vec<&'a HoseRow>,
    /// Candidates that this catalogue does not have.
    pub(super) strange: usize,
}

impl<'a> Rivals<'a> {
    pub(super) fn plausible(catalogue: &'a Catalogue, found: &Evidence) -> Self {
        let mut candidates: Vec<&HoseCandidate> = found.hose.iter().collect();
        candidates.sort_by(|a, b| b.probability.total_cmp(&a.probability));
        let mut rivals = Self::default();
        let mut held = 0.0;
        for candidate in candidates {
            if held >= PLAUSIBLE {
                break;
            }
            held += candidate.probability;
            let itself = (candidate.standard.as_str(), candidate.kind.as_str(), candidate.dn);
            let also = candidate.also.iter().map(|name| (name.standard.as_str(), name.kind.as_str(), name.dn));
            for (standard, kind, dn) in std::iter::once(itself).chain(also) {
                match catalogue.hose(standard, kind, dn) {
                    Ok(row) => rivals.rows.push(row),
                    Err(_) => rivals.strange += 1,
                }
            }
        }
        rivals
    }

    /// The rival that asks most by a measure, and what it asks. Rivals without that figure ask nothing.
    pub(super) fn most(&self, asks: impl Fn(&HoseRow) -> Option<f64>) -> Option<(&'a HoseRow, f64)> {
        let asked = self.rows.iter().filter_map(|row| Some((*row, asks(row)?)));
        asked.max_by(|(_, a), (_, b)| a.total_cmp(b))
    }

    /// The rival that asks least.
    pub(super) fn least(&self, asks: impl Fn(&HoseRow) -> Option<f64>) -> Option<(&'a HoseRow, f64)> {
        self.most(|row| asks(row).map(|asked| -asked)).map(|(row, asked)| (row, -asked))
    }
}
