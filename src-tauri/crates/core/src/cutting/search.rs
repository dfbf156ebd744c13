//! A first plan, bettered pair by pair, shaken and settled again.

use super::bound::Bound;
use super::exact;
use super::fill::Sums;
use super::measure::Measured;
use super::state::{Cost, State, UNMADE};

/// How often a settled plan is shaken. More did not better any of 200 random batches by a kerf.
const ROUNDS: usize = 120;

/// Pieces taken out at a shake, at most.
const SHAKEN: usize = 6;

/// The best plan that is found, and whether it was found by looking at all of them.
pub(super) fn search(batch: &Measured, bound: &Bound) -> (State, bool) {
    let mut settling = Settling { batch, sums: Sums::default(), unit: batch.unit() };
    let mut order = Order(0x9e37_79b9_7f4a_7c15);
    let mut best = filled(batch);
    settling.settle(&mut best, (0..batch.stocks.len()).collect());
    for _ in 0..ROUNDS {
        if bound.reached_by(best.cost) {
            break;
        }
        let mut next = best.clone();
        let touched = shake(batch, &mut next, &mut order);
        settling.settle(&mut next, touched);
        // A plan that costs the same is taken: it leads on from where the old one is stuck.
        if next.cost <= best.cost {
            best = next;
        }
    }
    if bound.reached_by(best.cost) {
        return (best, true);
    }
    let all = exact::better(batch, &mut best);
    (best, all)
}

/// Longest piece first into the stock it leaves least of, offcuts before reels.
fn filled(batch: &Measured) -> State {
    let mut state = State::empty(batch);
    let mut pieces: Vec<usize> = (0..batch.pieces.len()).collect();
    pieces.sort_by_key(|piece| std::cmp::Reverse(batch.pieces[*piece]));
    for piece in pieces {
        place(batch, &mut state, piece);
    }
    state
}

fn place(batch: &Measured, state: &mut State, piece: usize) {
    let fitting = (0..batch.stocks.len()).filter(|stock| state.fits(batch, piece, *stock));
    let tightest = fitting.min_by_key(|stock| {
        let room = batch.stocks[*stock];
        (room.reel, room.tenths - state.used[*stock])
    });
    if let Some(stock) = tightest {
        state.move_piece(batch, piece, stock);
    }
}

/// Takes some pieces out, and puts them back in another order, each into a stock by chance. The stocks that changed.
fn shake(batch: &Measured, state: &mut State, order: &mut Order) -> Vec<usize> {
    let mut touched = Vec::new();
    let mut out = Vec::new();
    for _ in 0..2 + order.below(SHAKEN - 1) {
        let piece = order.below(batch.pieces.len());
        if state.of[piece] != UNMADE {
            touched.push(state.of[piece]);
            state.move_piece(batch, piece, UNMADE);
            out.push(piece);
        }
    }
    for piece in out {
        let first = order.below(batch.stocks.len());
        let stocks = (0..batch.stocks.len()).map(|at| (first + at) % batch.stocks.len());
        let offcuts_first = stocks.clone().filter(|stock| !batch.stocks[*stock].reel).chain(stocks);
        if let Some(stock) = { offcuts_first }.find(|stock| state.fits(batch, piece, *stock)) {
            state.move_piece(batch, piece, stock);
            touched.push(stock);
        }
    }
    touched
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
}

struct Settling<'a> {
    batch: &'a Measured,
    sums: Sums,
    unit: usize,
}

impl Settling<'_> {
    /// Fills pairs of stocks anew until no pair with a changed stock gets better.
    fn settle(&mut self, state: &mut State, mut changed: Vec<usize>) {
        while let Some(one) = changed.pop() {
            let others = (0..self.batch.stocks.len()).chain([UNMADE]);
            for other in others.filter(|other| *other != one) {
                if self.pair(state, one, other) {
                    changed.extend([one, other].into_iter().filter(|stock| *stock != UNMADE));
                    changed.sort_unstable();
                    changed.dedup();
                }
            }
        }
    }

    /// Divides the pieces of two stocks between them as well as can be. Whether that bettered the plan.
    fn pair(&mut self, state: &mut State, one: usize, other: usize) -> bool {
        let pieces: Vec<usize> =
            (0..state.of.len()).filter(|piece| [one, other].contains(&state.of[*piece])).collect();
        if pieces.is_empty() {
            return false;
        }
        let total: u32 = pieces.iter().map(|piece| self.batch.pieces[*piece]).sum();
        let now = if one == UNMADE { 0 } else { state.used[one] };
        let most = self.batch.stocks[one].tenths.min(total) as usize;
        self.sums.reach(pieces.iter().map(|piece| self.batch.pieces[*piece] as usize / self.unit), most / self.unit);
        let cost = |used: u32| Some(self.batch.cost(one, used) + self.other_cost(other, total - used)?);
        let best = self.sums.reached().filter_map(|sum| {
            let used = (sum * self.unit) as u32;
            cost(used).map(|cost| (cost, used))
        });
        let Some((least, used)) = best.min() else { return false };
        if cost(now).is_none_or(|now| least >= now) {
            return false;
        }
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

    /// What the other of a pair costs; none where that much does not go into it.
    fn other_cost(&self, stock: usize, used: u32) -> Option<Cost> {
        if stock == UNMADE {
            return Some(Cost { unmade: u64::from(used), ..Cost::default() });
        }
        (used <= self.batch.stocks[stock].tenths).then(|| self.batch.cost(stock, used))
    }
}
