//! The size of a hose and of its ends go together: what one size says of its neighbour's.

use crate::catalogue::Catalogue;
use crate::quantity::Dn;

/// The same for an end or hose of which the tables name no size: what a size got on average. Common
/// practice, no source.
const SIZELESS: f64 = 0.3;

/// Bins of size: one for each step of the series of nominal diameters, and the last for no size.
pub(super) const BINS: usize = 18;
pub(super) const NO_SIZE: usize = BINS - 1;

/// Nominal diameters grow by about this ratio from size to size (DN 5, 6, 8, 10, 12, 16, 19 ...).
const RATIO: f64 = 1.262;

/// A weight for each bin.
pub(super) type Shares = [f64; BINS];

/// The bin of a nominal diameter.
pub(super) fn bin(dn: Option<Dn>) -> usize {
    dn.map_or(NO_SIZE, |dn| {
        let step = ((dn.get() / 5.0).ln() / RATIO.ln()).round() + 2.0;
        step.clamp(0.0, (NO_SIZE - 1) as f64) as usize
    })
}

/// How well each size of a hose goes with each size of an end.
#[derive(Debug)]
pub(super) struct Sizes([Shares; BINS]);

impl Sizes {
    /// By the table of sizes apart.
    pub(super) fn of(catalogue: &Catalogue) -> Self {
        let mut rows: Vec<_> = catalogue.size_steps.iter().collect();
        rows.sort_by_key(|row| row.steps);
        let weight =
            |apart: usize| rows.iter().rev().find(|row| row.steps <= apart).map_or(1.0, |row| row.weight);
        let mut fit = [[SIZELESS; BINS]; BINS];
        for (from, row) in fit.iter_mut().enumerate().take(NO_SIZE) {
            for (to, fit) in row.iter_mut().enumerate().take(NO_SIZE) {
                *fit = weight(from.abs_diff(to));
            }
        }
        Self(fit)
    }

    /// What shares of one part say of the sizes of its neighbour.
    pub(super) fn across(&self, shares: &Shares) -> Shares {
        let mut message = [0.0; BINS];
        for (to, sum) in message.iter_mut().enumerate() {
            *sum = shares.iter().enumerate().map(|(from, share)| share * self.0[from][to]).sum();
        }
        message
    }
}
