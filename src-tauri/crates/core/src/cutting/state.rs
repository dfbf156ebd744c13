//! A plan while it is being made.

use super::measure::Measured;
use std::ops::Add;

/// What a plan costs in tenths of a millimetre. Ordered as the aim is: unmade first, then reel, then scrap.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Cost {
    pub unmade: u64,
    pub reel: u64,
    pub scrap: u64,
}

impl Cost {
    /// One figure for a search that goes uphill a little; plans are compared by the order, never by this.
    pub fn weighed(self) -> u64 {
        1000 * self.unmade + 10 * self.reel + self.scrap
    }
}

impl Add for Cost {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            unmade: self.unmade + other.unmade,
            reel: self.reel + other.reel,
            scrap: self.scrap + other.scrap,
        }
    }
}

/// The stock of the pieces that no stock gives.
pub(super) const UNMADE: usize = usize::MAX;

/// Each piece with the stock it is cut from.
#[derive(Debug, PartialEq, Eq)]
pub(super) struct State {
    /// Stock of each piece, or [`UNMADE`].
    pub of: Vec<usize>,
    /// Used of each stock.
    pub used: Vec<u32>,
    pub cost: Cost,
}

/// By hand, since a plan is copied at every round: its lists are written over and not made anew.
impl Clone for State {
    fn clone(&self) -> Self {
        Self { of: self.of.clone(), used: self.used.clone(), cost: self.cost }
    }

    fn clone_from(&mut self, other: &Self) {
        self.of.clone_from(&other.of);
        self.used.clone_from(&other.used);
        self.cost = other.cost;
    }
}

impl State {
    /// Nothing is cut yet.
    pub fn empty(batch: &Measured) -> Self {
        let unmade = batch.pieces.iter().map(|piece| u64::from(*piece)).sum();
        Self {
            of: vec![UNMADE; batch.pieces.len()],
            used: vec![0; batch.stocks.len()],
            cost: Cost { unmade, ..Cost::default() },
        }
    }

    pub fn pieces_of(&self, stock: usize) -> Vec<usize> {
        (0..self.of.len()).filter(|piece| self.of[*piece] == stock).collect()
    }

    /// Whether a piece fits into a stock as it is now.
    pub fn fits(&self, batch: &Measured, piece: usize, stock: usize) -> bool {
        self.used[stock] + batch.pieces[piece] <= batch.stocks[stock].tenths
    }

    /// Cuts a piece from another stock, where it fits.
    pub fn move_piece(&mut self, batch: &Measured, piece: usize, to: usize) {
        let from = std::mem::replace(&mut self.of[piece], to);
        let length = batch.pieces[piece];
        for (stock, grows) in [(from, false), (to, true)] {
            if stock == UNMADE {
                let unmade = &mut self.cost.unmade;
                *unmade = if grows { *unmade + u64::from(length) } else { *unmade - u64::from(length) };
                continue;
            }
            let before = batch.cost(stock, self.used[stock]);
            self.used[stock] = if grows { self.used[stock] + length } else { self.used[stock] - length };
            let after = batch.cost(stock, self.used[stock]);
            self.cost.reel = self.cost.reel - before.reel + after.reel;
            self.cost.scrap = self.cost.scrap - before.scrap + after.scrap;
        }
    }
}
