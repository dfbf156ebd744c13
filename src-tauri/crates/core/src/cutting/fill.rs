//! Which of some pieces fill a room best: all sums that can be reached, as a set of bits.

/// The sums that subsets of some pieces reach, one set of bits after each piece.
#[derive(Debug, Default)]
pub(super) struct Sums {
    bits: Vec<u64>,
    words: usize,
    weights: Vec<usize>,
}

impl Sums {
    /// Works out every sum of `weights` up to `most`, both counted in the same unit.
    pub fn reach(&mut self, weights: impl Iterator<Item = usize>, most: usize) {
        self.weights.clear();
        self.weights.extend(weights);
        self.words = most / 64 + 1;
        self.bits.clear();
        self.bits.resize(self.words * (self.weights.len() + 1), 0);
        self.bits[0] = 1;
        for (at, weight) in self.weights.iter().enumerate() {
            let (before, after) = self.bits.split_at_mut(self.words * (at + 1));
            add(&before[self.words * at..], &mut after[..self.words], *weight);
        }
        let past = self.words * 64 - 1 - most;
        if let Some(last) = self.bits.last_mut() {
            *last &= u64::MAX >> past;
        }
    }

    /// The sums that are reached, largest first.
    pub fn reached(&self) -> impl Iterator<Item = usize> {
        self.layer(self.weights.len()).iter().enumerate().rev().flat_map(|(at, word)| {
            let mut rest = *word;
            std::iter::from_fn(move || {
                let bit = (rest != 0).then(|| 63 - rest.leading_zeros() as usize)?;
                rest ^= 1 << bit;
                Some(at * 64 + bit)
            })
        })
    }

    /// Which pieces make up a sum that is reached.
    pub fn pieces(&self, sum: usize) -> Vec<bool> {
        let mut rest = sum;
        let mut taken = vec![false; self.weights.len()];
        for at in (0..self.weights.len()).rev() {
            let without = self.layer(at)[rest / 64] >> (rest % 64) & 1 == 1;
            if !without {
                taken[at] = true;
                rest -= self.weights[at];
            }
        }
        taken
    }

    fn layer(&self, at: usize) -> &[u64] {
        &self.bits[self.words * at..self.words * (at + 1)]
    }
}

/// What is reached without a piece, and all of that moved up by its weight.
fn add(before: &[u64], after: &mut [u64], weight: usize) {
    let (words, bits) = (weight / 64, weight % 64);
    after.copy_from_slice(before);
    for at in words..after.len() {
        let low = before[at - words] << bits;
        let high = if bits > 0 && at > words { before[at - words - 1] >> (64 - bits) } else { 0 };
        after[at] |= low | high;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_sum_is_reached_and_made_of_its_pieces() {
        let weights = [3_usize, 61, 64, 70, 3];
        let mut sums = Sums::default();
        sums.reach(weights.iter().copied(), 140);
        let mut expected: Vec<usize> = (0_u32..32)
            .map(|set| (0..5).filter(|at| set >> at & 1 == 1).map(|at| weights[at as usize]).sum())
            .filter(|sum| *sum <= 140)
            .collect();
        expected.sort_unstable_by(|one, other| other.cmp(one));
        expected.dedup();
        assert_eq!(sums.reached().collect::<Vec<_>>(), expected);
        for sum in expected {
            let taken = sums.pieces(sum);
            let made: usize = weights.iter().zip(&taken).filter(|(_, taken)| **taken).map(|(w, _)| w).sum();
            assert_eq!(made, sum);
        }
    }
}
