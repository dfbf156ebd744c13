//! What is done with stock: loaded, corrected, thrown away, moved, given a bin, a low mark or a price.

use super::deed::deed;
use super::doing::Doing;
use super::said::Said;
use crate::{Answer, Api, ApiError};
use chrono::NaiveDate;
use hosewright_core::cutting::StockSort;
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::{EventRef, PieceId};
use hosewright_core::stock::{Item, Thing};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What is to be done, all or none.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct StockChange {
    /// In order.
    pub changes: Vec<StockDo>,
}

/// One thing that is done with stock.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "do", rename_all = "kebab-case", deny_unknown_fields)]
#[ts(optional_fields)]
pub enum StockDo {
    /// Counted things come.
    Load {
        /// To which van or shelf.
        store: String,
        /// What.
        item: Item,
        /// How many.
        #[ts(type = "number")]
        count: i64,
        /// Into which bin; where most of it lies without.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        bin: Option<String>,
    },
    /// Hose comes, as pieces of one length each.
    LoadHose(HoseLoaded),
    /// There are really so many.
    Correct {
        /// Where.
        store: String,
        /// What.
        item: Item,
        /// How many.
        #[ts(type = "number")]
        to: i64,
        /// In which bin; needed where it lies in more than one.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        bin: Option<String>,
    },
    /// A piece is really that long.
    CorrectPiece {
        /// Which.
        piece: PieceId,
        /// How long.
        to_mm: Millimetres,
    },
    /// Counted things are thrown away.
    Scrap {
        /// Where.
        store: String,
        /// What.
        item: Item,
        /// How many.
        #[ts(type = "number")]
        count: i64,
        /// Out of which bin; out of those that have some without.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        bin: Option<String>,
    },
    /// What is left of a piece is thrown away.
    ScrapPiece {
        /// Which.
        piece: PieceId,
    },
    /// Counted things go to another van or shelf, or into another bin.
    Move {
        /// What.
        item: Item,
        /// From where.
        from: String,
        /// To where.
        to: String,
        /// How many.
        #[ts(type = "number")]
        count: i64,
        /// Out of which bin; out of those that have some without.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        from_bin: Option<String>,
        /// Into which bin there; where most of it lies without.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        bin: Option<String>,
    },
    /// A piece goes to another van or shelf, or into another bin.
    MovePiece {
        /// Which.
        piece: PieceId,
        /// To where.
        to: String,
        /// Into which bin there; none without, or in the same store as it was.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        bin: Option<String>,
    },
    /// Bin and low mark of a thing: pieces, of hose millimetres. All of it goes into that bin. What is not said stays; a low
    /// mark of none is taken away.
    Keep {
        /// Where.
        store: String,
        /// What.
        item: Item,
        /// Its bin.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        bin: Option<String>,
        /// At or below how much it is low.
        #[serde(default, deserialize_with = "said", skip_serializing_if = "Option::is_none")]
        #[ts(type = "number | null")]
        low: Option<Option<i64>>,
    },
    /// What one, or of hose a metre, costs in the currency of the settings.
    Price {
        /// What.
        item: Item,
        /// As it is typed, such as `12.50`; none takes the price away.
        price: Option<String>,
    },
}

/// Hose that comes, as pieces of one length each.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(optional_fields)]
pub struct HoseLoaded {
    /// To which van or shelf.
    pub store: String,
    /// What hose.
    pub hose: Thing,
    /// Reel or offcut.
    pub sort: StockSort,
    /// Length of each piece.
    pub length_mm: Millimetres,
    /// How many pieces; one without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pieces: Option<u32>,
    /// First day of the period printed on it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub made: Option<NaiveDate>,
    /// The supplier's name for it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub label: Option<String>,
    /// Into which bin.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bin: Option<String>,
}

/// A field that may be left out, or be there and none.
fn said<'de, D: serde::Deserializer<'de>>(from: D) -> Result<Option<Option<i64>>, D::Error> {
    Option::<i64>::deserialize(from).map(Some)
}

/// What was done.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
#[ts(rename = "StockChangeAnswer")]
pub struct StockChangedAnswer {
    /// The events; they are on the disk.
    pub written: Vec<EventRef>,
    /// The ids of pieces that came, in order.
    pub pieces: Vec<PieceId>,
    /// What a person must see.
    pub said: Vec<Said>,
}

/// Does it, all or none. More may go than there is known to be: it is written and said.
///
/// # Errors
/// A thing, piece, length, count or price that can not be; the register can not be written.
pub fn change(api: &mut Api, asked: StockChange, _: &[u8]) -> Result<Answer<StockChangedAnswer>, ApiError> {
    let pricing = api.settings()?.pricing;
    let mut doing = Doing::begin(api)?;
    for (at, one) in asked.changes.into_iter().enumerate() {
        deed(&mut doing, api, one, &pricing).map_err(|error| {
            let field = format!("changes[{at}].{}", error.field);
            ApiError { field: field.trim_end_matches('.').to_owned(), ..error }
        })?;
    }
    let (bodies, pieces, said) = (std::mem::take(&mut doing.bodies), doing.new.clone(), doing.said(api));
    let now = api.world.now();
    let written = api.register()?.append(bodies, now)?;
    Ok(api.answer(StockChangedAnswer { written, pieces, said }))
}
