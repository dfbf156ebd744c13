//! The batch in whole tenths of a millimetre, and the plan in millimetres again.

use super::batch::{Batch, CutPlan, Stock, StockCut, StockSort};
use super::bound::Bound;
use super::error::CuttingError;
use super::state::{Cost, State, UNMADE};
use crate::quantity::Millimetres;

/// Tenths of a millimetre: finer than any hose is cut.
const PER_MM: f64 = 10.0;

/// A batch in tenths. Each piece carries the kerf of its own cut, and each stock has one kerf more than its length:
/// the last piece of a stock that comes out even needs no cut behind it.
pub(super) struct Measured {
    /// Piece and its kerf.
    pub pieces: Vec<u32>,
    /// Room, and whether it is a reel.
    pub stocks: Vec<Room>,
    pub kerf: u32,
    useful: u32,
}

/// How much of a stock can be used up, kerfs included.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Room {
    pub reel: bool,
    pub tenths: u32,
}

impl Measured {
    /// Reads a batch. Pieces are rounded up and stocks down, so that a plan can always be cut.
    pub fn of(batch: &Batch) -> Result<Self, CuttingError> {
        few_enough("pieces_mm", batch.pieces_mm.len())?;
        few_enough("stock", batch.stock.len())?;
        let kerf = tenths("kerf_mm", batch.kerf_mm, 0.0)?.ceil() as u32;
        let useful = tenths("useful_mm", batch.useful_mm, 0.0)?.ceil() as u32;
        let piece = |(at, length): (usize, &Millimetres)| {
            let wanted = tenths(&format!("pieces_mm[{at}]"), *length, 1.0 / PER_MM)?;
            Ok((wanted - 1e-6).ceil() as u32 + kerf)
        };
        let room = |(at, stock): (usize, &Stock)| {
            let there = tenths(&format!("stock[{at}].length_mm"), stock.length_mm, 0.0)?;
            let tenths = (there + 1e-6).floor() as u32 + kerf;
            Ok(Room { reel: stock.sort == StockSort::Reel, tenths })
        };
        Ok(Self {
            pieces: batch.pieces_mm.iter().enumerate().map(piece).collect::<Result<_, _>>()?,
            stocks: batch.stock.iter().enumerate().map(room).collect::<Result<_, _>>()?,
            kerf,
            useful,
        })
    }

    /// The largest unit that every piece is a whole number of: sums are counted in it.
    pub fn unit(&self) -> usize {
        self.pieces.iter().fold(0, |unit, piece| greatest_common_divisor(unit, *piece as usize)).max(1)
    }

    /// What a stock costs when that much of it is used.
    pub fn cost(&self, stock: usize, used: u32) -> Cost {
        let room = self.stocks[stock];
        let left = self.left(stock, used);
        let off_reel = if room.reel { room.tenths - self.kerf - left } else { 0 };
        let wasted = !room.reel && used > 0 && left < self.useful;
        Cost { unmade: 0, reel: u64::from(off_reel), scrap: if wasted { u64::from(left) } else { 0 } }
    }

    /// Room that must stay for a rest worth keeping.
    pub fn kept(&self) -> u32 {
        self.useful + self.kerf
    }

    fn left(&self, stock: usize, used: u32) -> u32 {
        (self.stocks[stock].tenths - used).saturating_sub(self.kerf)
    }

    /// The answer.
    pub fn plan(&self, state: &State, bound: &Bound, proved: bool) -> CutPlan {
        let cuts = (0..self.stocks.len()).filter_map(|stock| {
            let mut pieces = state.pieces_of(stock);
            if pieces.is_empty() {
                return None;
            }
            pieces.sort_by_key(|piece| (std::cmp::Reverse(self.pieces[*piece]), *piece));
            let left = self.left(stock, state.used[stock]);
            let kept = self.stocks[stock].reel || left >= self.useful;
            Some(StockCut { stock, pieces, left_mm: millimetres(u64::from(left)), kept })
        });
        CutPlan {
            cuts: cuts.collect(),
            unmade: state.pieces_of(UNMADE),
            reel_mm: millimetres(state.cost.reel),
            scrap_mm: millimetres(state.cost.scrap),
            proved,
            least_reel_mm: millimetres(bound.least_reel(state.cost.unmade)),
        }
    }
}

fn greatest_common_divisor(a: usize, b: usize) -> usize {
    if b == 0 { a } else { greatest_common_divisor(b, a % b) }
}

fn millimetres(tenths: u64) -> Millimetres {
    Millimetres(tenths as f64 / PER_MM)
}

fn tenths(field: &str, length: Millimetres, least: f64) -> Result<f64, CuttingError> {
    let value = length.get();
    if (least..=1e6).contains(&value) {
        Ok(value * PER_MM)
    } else {
        Err(CuttingError::Length { field: field.to_owned(), value, least })
    }
}

fn few_enough(field: &'static str, count: usize) -> Result<(), CuttingError> {
    if count > Batch::MOST { Err(CuttingError::TooMany { field, count, most: Batch::MOST }) } else { Ok(()) }
}
