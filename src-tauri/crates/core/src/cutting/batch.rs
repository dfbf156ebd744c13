//! What is asked and what is answered.

use crate::quantity::Millimetres;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Pieces of one hose that are wanted, and the hose that is there.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Batch {
    /// Cut lengths wanted.
    pub pieces_mm: Vec<Millimetres>,
    /// Hose that is there.
    pub stock: Vec<Stock>,
    /// What the saw takes at each cut.
    pub kerf_mm: Millimetres,
    /// From which length a rest is worth keeping; the user's own.
    pub useful_mm: Millimetres,
}

impl Batch {
    /// Most pieces, and most stocks, that are planned at once.
    pub const MOST: usize = 200;
}

/// A length of hose that can be cut from.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Stock {
    /// Reel or offcut.
    pub sort: StockSort,
    /// How much is left.
    pub length_mm: Millimetres,
}

/// What a stock is. A reel's rest stays on the reel, whatever its length.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum StockSort {
    /// New hose.
    Reel,
    /// What was left of an earlier cut.
    Offcut,
}

/// Which piece is cut from what.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct CutPlan {
    /// The stocks that are cut, in the order they were given.
    pub cuts: Vec<StockCut>,
    /// Pieces that no stock can give, by their place in the question.
    pub unmade: Vec<usize>,
    /// New hose taken off the reels, kerf included.
    pub reel_mm: Millimetres,
    /// Rests of cut offcuts that are too short to keep.
    pub scrap_mm: Millimetres,
    /// Nothing better exists: less left unmade, then less off the reels, then less scrap.
    pub proved: bool,
    /// No plan that leaves as little unmade takes less than this off the reels.
    pub least_reel_mm: Millimetres,
}

/// What is cut from one stock.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct StockCut {
    /// The stock, by its place in the question.
    pub stock: usize,
    /// The pieces, by their place in the question, longest first.
    pub pieces: Vec<usize>,
    /// What is left of the stock.
    pub left_mm: Millimetres,
    /// Whether the rest is kept; a shorter one of an offcut is scrap.
    pub kept: bool,
}
