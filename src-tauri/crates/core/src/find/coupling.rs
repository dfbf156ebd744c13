//! The size of a hose and of its ends go together: a weak prior that ties the lists of one job.

use super::belief::Belief;
use crate::quantity::Dn;

/// How often an end goes on a hose so many sizes apart (jump sizes), relative to the same size.
/// Common practice, no source.
pub const JUMP_SIZES: [f64; 4] = [1.0, 0.4, 0.12, 0.03];

/// The same for an end or hose of which the tables name no size: what a size got on average.
const SIZELESS: f64 = 0.3;

/// Bins of size: one for each step of the series of nominal diameters, and the last for no size.
const BINS: usize = 18;
const NO_SIZE: usize = BINS - 1;

/// Nominal diameters grow by about this ratio from size to size (DN 5, 6, 8, 10, 12, 16, 19 ...).
const RATIO: f64 = 1.262;

/// The bin of a nominal diameter.
pub(super) fn bin(dn: Option<Dn>) -> usize {
    dn.map_or(NO_SIZE, |dn| {
        let step = ((dn.get() / 5.0).ln() / RATIO.ln()).round() + 2.0;
        step.clamp(0.0, (NO_SIZE - 1) as f64) as usize
    })
}

fn affinity(a: usize, b: usize) -> f64 {
    if a == NO_SIZE || b == NO_SIZE {
        return SIZELESS;
    }
    JUMP_SIZES[a.abs_diff(b).min(JUMP_SIZES.len() - 1)]
}

/// A part's belief and the size bin of each of its hypotheses.
pub(super) struct Part<'b> {
    pub(super) belief: &'b mut Belief,
    pub(super) bins: &'b [usize],
}

type Message = [f64; BINS];

/// What a part's own readings say of the sizes: the share each bin holds.
fn shares(part: &Part<'_>) -> Message {
    let (probabilities, unknown) = part.belief.probabilities();
    let mut shares = [0.0; BINS];
    for (probability, &bin) in probabilities.iter().zip(part.bins) {
        shares[bin] += probability;
    }
    shares[NO_SIZE] += unknown;
    shares
}

/// What shares of one part say of the sizes of its neighbour.
fn across(shares: &Message) -> Message {
    let mut message = [0.0; BINS];
    for (to, sum) in message.iter_mut().enumerate() {
        *sum = shares.iter().enumerate().map(|(from, share)| share * affinity(from, to)).sum();
    }
    message
}

fn apply(part: &mut Part<'_>, message: &Message) {
    let bins = part.bins;
    part.belief.multiply(|i| message[bins[i]].ln(), message[NO_SIZE].ln());
}

/// Ties a hose and its ends. The hose stands between the ends, so the exchange is exact: each part
/// hears what all others say, and nothing of itself.
pub(super) fn couple(hose: &mut Part<'_>, ends: &mut [Part<'_>]) {
    let of_hose = shares(hose);
    let to_hose: Vec<Message> = ends.iter().map(|end| across(&shares(end))).collect();
    for (i, end) in ends.iter_mut().enumerate() {
        let mut heard = of_hose;
        for (_, other) in to_hose.iter().enumerate().filter(|(j, _)| *j != i) {
            heard.iter_mut().zip(other).for_each(|(share, factor)| *share *= factor);
        }
        apply(end, &across(&heard));
    }
    for message in &to_hose {
        apply(hose, message);
    }
}
