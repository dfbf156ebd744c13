//! Every plan of a small batch.

use super::measure::Measured;
use super::state::{Cost, State, UNMADE};

/// Steps after which a batch is too large to go through: some milliseconds.
const STEPS: u32 = 30_000;

/// Betters a plan as far as any can be. Whether all were looked at; a large batch is given up.
pub(super) fn better(batch: &Measured, best: &mut State) -> bool {
    let mut pieces: Vec<usize> = (0..batch.pieces.len()).collect();
    pieces.sort_by_key(|piece| std::cmp::Reverse(batch.pieces[*piece]));
    let mut all = All { batch, pieces, best, steps: 0 };
    all.from(0, &mut State::empty(batch), 0);
    all.steps <= STEPS
}

struct All<'a> {
    batch: &'a Measured,
    /// Longest first.
    pieces: Vec<usize>,
    best: &'a mut State,
    steps: u32,
}

impl All<'_> {
    /// Every way to cut the pieces from `at` on, `left_out` of those before being unmade.
    fn from(&mut self, at: usize, state: &mut State, left_out: u64) {
        self.steps += 1;
        if self.steps > STEPS || self.least(at, state, left_out) >= self.best.cost {
            return;
        }
        let Some(piece) = self.pieces.get(at).copied() else {
            self.best.clone_from(state);
            return;
        };
        let mut tried = Vec::new();
        for stock in 0..self.batch.stocks.len() {
            // Stocks that look the same give the same plans.
            let like = (self.batch.stocks[stock], state.used[stock]);
            if state.fits(self.batch, piece, stock) && !tried.contains(&like) {
                tried.push(like);
                state.move_piece(self.batch, piece, stock);
                self.from(at + 1, state, left_out);
                state.move_piece(self.batch, piece, UNMADE);
            }
        }
        self.from(at + 1, state, left_out + u64::from(self.batch.pieces[piece]));
    }

    /// No way to go on costs less: the offcuts take what they have room for, and nothing is scrapped.
    fn least(&self, at: usize, state: &State, left_out: u64) -> Cost {
        if at == self.pieces.len() {
            return state.cost;
        }
        let open: u64 = self.pieces[at..].iter().map(|piece| u64::from(self.batch.pieces[*piece])).sum();
        let (mut offcuts, mut last_cuts) = (0, 0);
        for (room, used) in self.batch.stocks.iter().zip(&state.used) {
            if room.reel {
                last_cuts += u64::from(self.batch.kerf);
            } else {
                offcuts += u64::from(room.tenths - used);
            }
        }
        let reel = state.cost.reel.max((state.cost.reel + open).saturating_sub(offcuts + last_cuts));
        Cost { unmade: left_out, reel: if left_out > 0 { state.cost.reel } else { reel }, scrap: 0 }
    }
}
