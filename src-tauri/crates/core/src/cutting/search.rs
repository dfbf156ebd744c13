//! A first plan, bettered pair by pair; then again and again a few offcuts are emptied and filled anew.

use super::bound::Bound;
use super::exact;
use super::fill::{Sums, Wanted};
use super::measure::Measured;
use super::state::{Cost, State, UNMADE};

/// How often offcuts are filled anew. Twice as often took 0.01 % less off the reels of 200 random batches.
const ROUNDS: usize = 15_000;

/// Words of bits after which it ends earlier: lengths of many different tenths make long sets. It is counted and not timed,
/// so that the same batch has the same plan on a fast machine and on a slow one. Of 200 random batches the slowest then takes
/// 50 ms on two slow cores; with 9,000,000 it took 58 ms, and the most scrap over another solver's was 11 mm and not 37.
const WORK: u64 = 6_500_000;

/// Offcuts filled anew at once, at most.
const EMPTIED: usize = 5;

/// How much more a plan may cost at first, weighed, and be gone on from: some metres.
const SLACK: f64 = 40_000.0;

/// The slack falls to this power of e over the rounds: to a millimetre or so.
const COOLS: f64 = -8.0;

/// The best plan that is found, and whether nothing better can be.
pub(super) fn search(batch: &Measured, bound: &Bound) -> (State, bool) {
    let mut filling =
        Filling { batch, sums: Sums::default(), unit: batch.unit(), order: Order(0x9e37_79b9_7f4a_7c15) };
    let mut best = State::empty(batch);
    filling.place(&mut best, filling.longest_first());
    filling.settle(&mut best);
    let mut now = best.clone();
    let mut next = best.clone();
    for round in 0..ROUNDS {
        if bound.reached_by(best.cost) {
            return (best, true);
        }
        let done = (round as f64 / ROUNDS as f64).max(filling.sums.work as f64 / WORK as f64);
        if done >= 1.0 {
            break;
        }
        next.clone_from(&now);
        filling.refill(&mut next);
        // A plan that costs somewhat more is gone on from at first: it leads out of where a better one is stuck.
        let slack = (SLACK * (COOLS * done).exp()) as u64;
        if next.cost.weighed() <= now.cost.weighed() + slack {
            std::mem::swap(&mut now, &mut next);
            if now.cost < best.cost {
                best.clone_from(&now);
            }
        }
    }
    filling.settle(&mut best);
    let proved = bound.reached_by(best.cost) || exact::better(batch, &mut best);
    (best, proved)
}

/// A fixed row of numbers that looks like chance: the same batch has the same plan every time.
struct Order(u64);

impl Order {
    fn below(&mut self, count: usize) -> usize {
        // Marsaglia's xorshift with shifts 13, 7, 17 (Xorshift RNGs, J. Stat. Softw. 8(14), 2003).
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 >> 33) as usize % count.max(1)
    }

    fn shuffle(&mut self, list: &mut [usize]) {
        for at in (1..list.len()).rev() {
            list.swap(at, self.below(at + 1));
        }
    }
}

struct Filling<'a> {
    batch: &'a Measured,
    sums: Sums,
    unit: usize,
    order: Order,
}

impl Filling<'_> {
    fn longest_first(&self) -> Vec<usize> {
        let mut pieces: Vec<usize> = (0..self.batch.pieces.len()).collect();
        pieces.sort_by_key(|piece| std::cmp::Reverse(self.batch.pieces[*piece]));
        pieces
    }

    /// Each piece into the stock it leaves least of, offcuts before reels.
    fn place(&self, state: &mut State, pieces: Vec<usize>) {
        for piece in pieces {
            let fitting = (0..self.batch.stocks.len()).filter(|stock| state.fits(self.batch, piece, *stock));
            let tightest = fitting.min_by_key(|stock| {
                let room = self.batch.stocks[*stock];
                (room.reel, room.tenths - state.used[*stock])
            });
            if let Some(stock) = tightest {
                state.move_piece(self.batch, piece, stock);
            }
        }
    }

    /// Empties a few offcuts and fills them anew, from their pieces and what is cut from reels.
    fn refill(&mut self, state: &mut State) {
        let stocks = self.batch.stocks.len();
        let mut emptied: Vec<usize> =
            (0..2 + self.order.below(EMPTIED - 1)).map(|_| self.order.below(stocks)).collect();
        emptied.sort_unstable();
        emptied.dedup();
        let open =
            |stock: usize| stock == UNMADE || self.batch.stocks[stock].reel || emptied.contains(&stock);
        let mut pool: Vec<usize> = (0..state.of.len()).filter(|piece| open(state.of[*piece])).collect();
        for piece in &pool {
            state.move_piece(self.batch, *piece, UNMADE);
        }
        emptied.retain(|stock| !self.batch.stocks[*stock].reel);
        self.order.shuffle(&mut emptied);
        // Pieces in another order make up the same sum in another way.
        self.order.shuffle(&mut pool);
        for stock in emptied {
            self.fill(state, stock, &mut pool);
        }
        pool.sort_by_key(|piece| std::cmp::Reverse(self.batch.pieces[*piece]));
        self.place(state, pool);
    }

    /// Fills an offcut from a pool: to the full, or now and then so far that a useful rest stays.
    fn fill(&mut self, state: &mut State, stock: usize, pool: &mut Vec<usize>) {
        let room = self.batch.stocks[stock].tenths;
        let most = if self.order.below(4) == 0 { room.saturating_sub(self.batch.kept()) } else { room };
        self.reach(pool, most, Wanted::Largest);
        let Some(sum) = self.sums.reached().next() else { return };
        let taken = self.sums.pieces(sum);
        for (piece, _) in pool.iter().zip(&taken).filter(|(_, taken)| **taken) {
            state.move_piece(self.batch, *piece, stock);
        }
        pool.retain(|piece| state.of[*piece] == UNMADE);
    }

    fn reach(&mut self, pieces: &[usize], most: u32, wanted: Wanted) {
        let weights = pieces.iter().map(|piece| self.batch.pieces[*piece] as usize / self.unit);
        self.sums.reach(weights, most as usize / self.unit, wanted);
    }

    /// Fills pairs of stocks anew until no pair gets better.
    fn settle(&mut self, state: &mut State) {
        let mut changed: Vec<usize> = (0..self.batch.stocks.len()).collect();
        while let Some(one) = changed.pop() {
            let others = (0..self.batch.stocks.len()).chain([UNMADE]);
            for other in others.filter(|other| *other != one) {
                // The one with less room is filled: fewer sums are to be looked at.
                let (one, other) =
                    if self.room(one) <= self.room(other) { (one, other) } else { (other, one) };
                if self.pair(state, one, other) {
                    changed.extend([one, other].into_iter().filter(|stock| *stock != UNMADE));
                    changed.sort_unstable();
                    changed.dedup();
                }
            }
        }
    }

    fn room(&self, stock: usize) -> u32 {
        if stock == UNMADE { u32::MAX } else { self.batch.stocks[stock].tenths }
    }

    /// What a pair costs when one of it has that much; none where the rest does not go into the other.
    fn cost(&self, one: usize, other: usize, used: u32, rest: u32) -> Option<Cost> {
        let of_other = match other {
            UNMADE => Cost { unmade: u64::from(rest), ..Cost::default() },
            _ if rest > self.room(other) => return None,
            _ => self.batch.cost(other, rest),
        };
        Some(self.batch.cost(one, used) + of_other)
    }

    /// Divides the pieces of two stocks between them as well as can be. Whether that bettered the plan.
    fn pair(&mut self, state: &mut State, one: usize, other: usize) -> bool {
        let pieces: Vec<usize> =
            (0..state.of.len()).filter(|piece| [one, other].contains(&state.of[*piece])).collect();
        let total: u32 = pieces.iter().map(|piece| self.batch.pieces[*piece]).sum();
        let used = state.used[one];
        let Some(now) = self.cost(one, other, used, total - used).filter(|now| *now > Cost::default()) else {
            return false;
        };
        // What one of them takes more of, a reel gives less of: the fullest is the best.
        let fullest_is_best = other == UNMADE || self.batch.stocks[other].reel;
        self.reach(&pieces, self.room(one).min(total), Wanted::All);
        let fitting = self.sums.reached().filter_map(|sum| {
            let used = (sum * self.unit) as u32;
            self.cost(one, other, used, total - used).map(|cost| (cost, used))
        });
        let best = if fullest_is_best { { fitting }.next() } else { fitting.min() };
        let Some((_, used)) = best.filter(|(least, _)| *least < now) else { return false };
        let taken = self.sums.pieces(used as usize / self.unit);
        let to = taken.iter().map(|taken| if *taken { one } else { other });
        let moved: Vec<(usize, usize)> =
            pieces.into_iter().zip(to).filter(|(piece, to)| state.of[*piece] != *to).collect();
        // All come out before any goes in: two that change places would not both have room.
        for (piece, _) in &moved {
            state.move_piece(self.batch, *piece, UNMADE);
        }
        for (piece, to) in moved {
            state.move_piece(self.batch, piece, to);
        }
        true
    }
}
