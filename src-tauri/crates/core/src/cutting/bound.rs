//! What no plan can better.

use super::fill::{Sums, Wanted};
use super::measure::Measured;
use super::state::Cost;

/// The least that any plan costs. Scrap has no bound but nothing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Bound {
    unmade: u64,
    /// What the offcuts can not give whatever is cut from them.
    beyond_offcuts: u64,
}

impl Bound {
    /// Whether nothing better than that cost exists.
    pub fn reached_by(&self, cost: Cost) -> bool {
        cost == Cost { unmade: self.unmade, reel: self.least_reel(self.unmade), scrap: 0 }
    }

    /// The least new hose that any plan takes which leaves that much unmade.
    pub fn least_reel(&self, unmade: u64) -> u64 {
        self.beyond_offcuts.saturating_sub(unmade)
    }
}

/// Every stock filled as well as the pieces allow if it could have them all.
pub(super) fn bound(batch: &Measured) -> Bound {
    let wanted: u64 = batch.pieces.iter().map(|piece| u64::from(*piece)).sum();
    let mut sums = Sums::default();
    let (mut offcuts, mut reels, mut last_cuts) = (0, 0, 0);
    let unit = batch.unit();
    for room in &batch.stocks {
        let most = u64::from(room.tenths).min(wanted) as usize;
        if room.reel {
            // A reel that comes out even saves the cut behind its last piece.
            last_cuts += if u64::from(room.tenths) <= wanted { u64::from(batch.kerf) } else { 0 };
            reels += most as u64;
        } else {
            sums.reach(batch.pieces.iter().map(|piece| *piece as usize / unit), most / unit, Wanted::Largest);
            offcuts += sums.reached().next().unwrap_or(0) as u64 * unit as u64;
        }
    }
    let unmade = wanted.saturating_sub(offcuts + reels);
    Bound { unmade, beyond_offcuts: wanted.saturating_sub(offcuts + last_cuts) }
}
