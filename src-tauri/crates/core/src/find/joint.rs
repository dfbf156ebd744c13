//! All parts of a job together. The hose stands between its two ends and ties their sizes; where the
//! machine was made ties their families. Given the origin the parts are a chain, so the exchange is
//! exact: each part hears what all others say, and nothing of itself; the origins are summed over.

use super::belief::{Belief, Evidence};
use super::origins::{ByOrigin, ORIGINS, Origins, changed};
use super::sizes::{BINS, NO_SIZE, Shares, Sizes};

/// What the parts are tied by.
pub(super) struct Ties<'m> {
    pub(super) sizes: &'m Sizes,
    pub(super) origins: &'m Origins,
    /// The bin of size of each hypothesis.
    pub(super) hose_bins: &'m [usize],
    pub(super) end_bins: &'m [usize],
}

/// What is believed when everything was heard.
#[derive(Debug)]
pub(super) struct Joint {
    pub(super) hose: Belief,
    pub(super) ends: [Belief; 2],
    /// The chance that each end is not of the family the machine came with.
    pub(super) changed: [f64; 2],
}

/// Puts the evidence of a hose and its two ends together, with how likely each origin is.
pub(super) fn joint(ties: &Ties<'_>, hose: &Evidence, ends: [&Evidence; 2], named: ByOrigin) -> Joint {
    let of_hose = shares(hose, ties.hose_bins, |_| 1.0);
    // What each end says of the hose's size, under each origin.
    let to_hose: [[Shares; 2]; ORIGINS] = std::array::from_fn(|at| {
        ends.map(|end| {
            let shares = shares(end, ties.end_bins, |i| ties.origins.factors(i)[at]);
            ties.sizes.across(&shares)
        })
    });
    // The evidence of an origin is in the messages; as factors of a part they stand unscaled.
    let mut heard_by_hose = [0.0; BINS];
    let mut heard_by_end = [[[0.0; BINS]; ORIGINS]; 2];
    for (at, [a, b]) in to_hose.iter().enumerate() {
        let product = |other: &Shares| std::array::from_fn(|bin| of_hose[bin] * other[bin]);
        heard_by_end[0][at] = ties.sizes.across(&product(b)).map(|share| share * named[at]);
        heard_by_end[1][at] = ties.sizes.across(&product(a)).map(|share| share * named[at]);
        for (bin, heard) in heard_by_hose.iter_mut().enumerate() {
            *heard += named[at] * a[bin] * b[bin];
        }
    }
    let weights = hose.weights.iter().zip(ties.hose_bins).map(|(weight, &bin)| weight * heard_by_hose[bin]);
    let hose = Belief::of(weights.collect(), hose.unknown * heard_by_hose[NO_SIZE]);
    let [a, b] = [0, 1].map(|which| of_end(ties, ends[which], &heard_by_end[which]));
    Joint { hose, ends: [a.0, b.0], changed: [a.1, b.1] }
}

/// What a part's own readings say of the sizes: the weight each bin holds.
fn shares(part: &Evidence, bins: &[usize], factor: impl Fn(usize) -> f64) -> Shares {
    let mut shares = [0.0; BINS];
    for (i, (weight, &bin)) in part.weights.iter().zip(bins).enumerate() {
        shares[bin] += weight * factor(i);
    }
    shares[NO_SIZE] += part.unknown;
    shares
}

/// The belief of an end, and the chance that it was changed.
fn of_end(ties: &Ties<'_>, end: &Evidence, heard: &[Shares; ORIGINS]) -> (Belief, f64) {
    let (mut was_changed, mut all) = (0.0, 0.0);
    let weights = end.weights.iter().zip(ties.end_bins).enumerate().map(|(i, (weight, &bin))| {
        let factors = ties.origins.factors(i);
        let mut sum = 0.0;
        for (factor, heard) in factors.iter().zip(heard) {
            let each = weight * factor * heard[bin];
            was_changed += each * changed(*factor);
            sum += each;
        }
        all += sum;
        sum
    });
    let weights: Vec<f64> = weights.collect();
    let unknown = end.unknown * heard.iter().map(|heard| heard[NO_SIZE]).sum::<f64>();
    let chance = if all > 0.0 { was_changed / all } else { 0.0 };
    (Belief::of(weights, unknown), chance)
}
