//! Which of some pieces fill a room best: all sums that can be reached, as a set of bits.

/// The sums that subsets of some pieces reach, one set of bits after each piece.
#[derive(Debug, Default)]
pub(super) struct Sums {
    bits: Vec<u64>,
    words: usize,
    weights: Vec<usize>,
    /// Words of bits that were worked out so far, over all questions.
    pub work: u64,
}

/// What is asked of the sums.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Wanted {
    /// The largest alone: pieces behind those that fill it to the full are not looked at.
    Largest,
    /// All of them.
    All,
}

impl Sums {
    /// Works out the sums of `weights` up to `most`, both counted in the same unit.
    pub fn reach(&mut self, weights: impl Iterator<Item = usize>, most: usize, wanted: Wanted) {
        self.weights.clear();
        self.words = most / 64 + 1;
        self.next_layer();
        self.bits[..self.words].fill(0);
        self.bits[0] = 1;
        for weight in weights {
            self.weights.push(weight);
            self.next_layer();
            let end = self.words * self.weights.len();
            let (before, after) = self.bits.split_at_mut(end);
            add(&before[end - self.words..], &mut after[..self.words], weight);
            if wanted == Wanted::Largest && self.layer(self.weights.len())[most / 64] >> (most % 64) & 1 == 1
            {
                break;
            }
        }
        let last = self.words * (self.weights.len() + 1) - 1;
        self.bits[last] &= u64::MAX >> (self.words * 64 - 1 - most);
        self.work += (self.words * (self.weights.len() + 1)) as u64;
    }

    /// Room for one set more; what stands in it is written over.
    fn next_layer(&mut self) {
        let room = self.words * (self.weights.len() + 1);
        if self.bits.len() < room {
            self.bits.resize(room, 0);
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
        sums.reach(weights.iter().copied(), 140, Wanted::All);
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
    #[test]
    fn the_largest_is_the_same_whether_all_are_looked_at_or_not() {
        let weights = [5_usize, 7, 12, 3, 9, 30, 41];
        for most in 0..110 {
            let [mut all, mut largest] = [Sums::default(), Sums::default()];
            all.reach(weights.iter().copied(), most, Wanted::All);
            largest.reach(weights.iter().copied(), most, Wanted::Largest);
            let (one, other) = (all.reached().next(), largest.reached().next());
            assert_eq!(one, other, "up to {most}");
            let sum = one.expect("nothing at least");
            let made = largest.pieces(sum);
            assert!(all.pieces(sum).starts_with(&made), "up to {most}");
            assert!(largest.work <= all.work);
        }
    }
}
