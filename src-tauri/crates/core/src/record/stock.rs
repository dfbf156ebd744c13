//! Stock of vans and shelves, as differences: what two devices write adds up and never overwrites.

use super::{EventRef, PieceId};
use crate::stock::{Item, Thing};
use crate::tag::TagCode;
use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Counted stock of a van or shelf, as a difference.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct StockChanged {
    /// The van or shelf, by what people call it.
    pub store: String,
    /// What.
    pub item: Item,
    /// What is counted.
    pub unit: StockUnit,
    /// How much came (positive) or went (negative).
    #[ts(type = "number")]
    pub difference: i64,
    /// Why; none in the records of older programs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub why: Option<StockWhy>,
    /// The hose it went into.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hose: Option<TagCode>,
    /// In which bin; blank is the one that was set for the thing, if any was.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub bin: String,
    /// Of a count, what its device had heard of the thing; the register fills it in. None in the records of older programs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seen: Option<Vec<EventRef>>,
}

/// Counted stock that went from one van, shelf or bin to another: one event, so that neither half can be had alone.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct StockMoved {
    /// What.
    pub item: Item,
    /// What is counted.
    pub unit: StockUnit,
    /// Where it was.
    pub from: String,
    /// Where it is.
    pub to: String,
    /// How much, above nothing.
    #[ts(type = "number")]
    pub count: i64,
    /// Out of which bin; blank is the one that was set for the thing.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub from_bin: String,
    /// Into which bin; blank is the one that was set for the thing.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub to_bin: String,
}

/// Where a thing lies on a van or shelf unless its count says otherwise, and when it runs low there. Written whole.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct StockPlaced {
    /// The van or shelf.
    pub store: String,
    /// What.
    pub item: Item,
    /// Its bin or drawer; blank is not said.
    #[serde(default)]
    pub bin: String,
    /// At or below how much it is low: pieces, of hose millimetres. None is not said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(type = "number", optional)]
    pub low: Option<i64>,
}

/// What the user asks for a thing: for one piece, of hose for a metre.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct PriceSet {
    /// What.
    pub item: Item,
    /// In the currency's smallest unit. None takes the price away: not priced, never nothing.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(type = "number", optional)]
    pub minor: Option<i64>,
    /// By the letters of ISO 4217.
    pub currency: String,
}

/// A piece of hose with all of it but its length. Written whole.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Piece {
    /// Which piece.
    pub piece: PieceId,
    /// Where it is.
    pub store: String,
    /// Its bin; blank is not said.
    #[serde(default)]
    pub bin: String,
    /// What hose it is.
    pub hose: Thing,
    /// New hose on a reel, or what was left of a cut.
    pub sort: crate::cutting::StockSort,
    /// First day of the period printed on it; none is not known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub made: Option<NaiveDate>,
    /// The supplier's name for it; blank is not said.
    #[serde(default)]
    pub label: String,
}

/// The length of a piece, as a difference.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct PieceChanged {
    /// Which piece.
    pub piece: PieceId,
    /// How many tenths of a millimetre came (positive) or went (negative), kerf included.
    #[ts(type = "number")]
    pub tenths_mm: i64,
    /// Why.
    pub why: StockWhy,
    /// The hose it went into.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hose: Option<TagCode>,
    /// Of a measuring, what its device had heard of the piece; the register fills it in. None in the records of older
    /// programs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seen: Option<Vec<EventRef>>,
}

/// Why stock changed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum StockWhy {
    /// It was taken in.
    Loaded,
    /// It went into a hose.
    Used,
    /// It was thrown away.
    Scrapped,
    /// It was counted or measured, and was another.
    Counted,
}

impl StockWhy {
    /// The name it is written by.
    pub const fn name(self) -> &'static str {
        match self {
            StockWhy::Loaded => "loaded",
            StockWhy::Used => "used",
            StockWhy::Scrapped => "scrapped",
            StockWhy::Counted => "counted",
        }
    }
}

/// What stock is counted in.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS,
)]
#[serde(rename_all = "kebab-case")]
pub enum StockUnit {
    /// Pieces.
    Pieces,
    /// Millimetres of hose.
    Millimetres,
}

impl StockUnit {
    /// The name it is written by.
    pub const fn name(self) -> &'static str {
        match self {
            StockUnit::Pieces => "pieces",
            StockUnit::Millimetres => "millimetres",
        }
    }
}
