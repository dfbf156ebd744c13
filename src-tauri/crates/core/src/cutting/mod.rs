//! A batch of hoses and what hose is there -> which piece is cut from which reel or offcut.
//!
//! The aim, in this order: no hose left unmade, least new hose off the reels, least hose scrapped (what is left of a
//! cut offcut and too short to be kept). [`cut`] reads the [`Batch`] in whole tenths of a millimetre (`measure`),
//! builds a first plan and betters it (`search`): pairs of stocks are filled anew as well as two can be (`fill`), and
//! when no pair gets better the plan is shaken and settled again. `bound` says when nothing better can exist, and a small
//! batch that stays above it is gone through plan by plan (`exact`).

mod batch;
mod bound;
mod error;
mod exact;
mod fill;
mod measure;
mod search;
mod state;

pub use batch::{Batch, CutPlan, Stock, StockCut, StockSort};
pub use error::CuttingError;

use measure::Measured;

/// Which piece is cut from what.
///
/// The answer is the same every time. It is the best there is where `proved` says so; a small batch nearly always
/// is, a large one is bettered for a fixed number of rounds.
///
/// # Errors
/// A length that can not be, or more pieces or stocks than [`Batch::MOST`].
pub fn cut(batch: &Batch) -> Result<CutPlan, CuttingError> {
    let measured = Measured::of(batch)?;
    let bound = bound::bound(&measured);
    let (best, proved) = search::search(&measured, &bound);
    Ok(measured.plan(&best, &bound, proved))
}
