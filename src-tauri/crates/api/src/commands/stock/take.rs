//! Stock take: what was counted and measured in a bin, against what was known.

use super::change::Doing;
use super::shelf::{Said, Shelf, hose_name, item_name, mm, tenths};
use crate::{Answer, Api, ApiError};
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::{EventRef, PieceId, StockUnit};
use hosewright_core::stock::Item;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What was counted. Ask first without saving, show what differs, then save.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(rename = "StockTakeQuestion")]
pub struct StockTake {
    /// In which van or on which shelf.
    pub store: String,
    /// In which bin; the whole store without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub bin: Option<String>,
    /// Counted things.
    #[serde(default)]
    pub items: Vec<CountedItem>,
    /// Pieces of hose.
    #[serde(default)]
    pub pieces: Vec<CountedPiece>,
    /// Write the differences down; only tell them without.
    #[serde(default)]
    pub save: bool,
}

/// A thing that was counted.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct CountedItem {
    /// What.
    pub item: Item,
    /// How many are there.
    #[ts(type = "number")]
    pub counted: i64,
}

/// A piece that was looked for.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct CountedPiece {
    /// Which.
    pub piece: PieceId,
    /// How long it is; none: it is not there.
    pub length_mm: Option<Millimetres>,
}

/// What differs.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
#[ts(rename = "StockTakeAnswer")]
pub struct StockTaken {
    /// What was counted otherwise than it was known.
    pub rows: Vec<TakeRow>,
    /// What is known to be there and was not counted; it stays as it is.
    pub not_counted: Vec<NotCounted>,
    /// Whether the differences were written down.
    pub saved: bool,
    /// The events; they are on the disk.
    pub written: Vec<EventRef>,
    /// What a person must see.
    pub said: Vec<Said>,
}

/// A difference.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct TakeRow {
    /// It in words.
    pub name: String,
    /// The thing; none for a piece of hose.
    pub item: Option<Item>,
    /// The piece; none for a counted thing.
    pub piece: Option<PieceId>,
    /// How much was known: a number, of a piece millimetres.
    pub known: f64,
    /// How much there is.
    pub counted: f64,
    /// What that is more or less.
    pub difference: f64,
    /// Counted in.
    pub unit: StockUnit,
}

/// Something that was not counted.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct NotCounted {
    /// It in words.
    pub name: String,
    /// The thing; none for a piece of hose.
    pub item: Option<Item>,
    /// The piece; none for a counted thing.
    pub piece: Option<PieceId>,
    /// How much is known: a number, of a piece millimetres.
    pub known: f64,
    /// Counted in.
    pub unit: StockUnit,
}

/// What differs, and with `save` written down.
///
/// # Errors
/// A thing twice, a count or length that can not be, a piece there is none of; the register can not be written.
pub fn take(api: &mut Api, asked: StockTake, _: &[u8]) -> Result<Answer<StockTaken>, ApiError> {
    let mut doing = Doing::begin(api)?;
    let store = doing.store(&asked.store)?;
    let (mut rows, mut seen, mut looked_for) = (Vec::new(), Vec::new(), Vec::new());
    for (at, one) in asked.items.into_iter().enumerate() {
        let field = |error: ApiError| ApiError { field: format!("items[{at}]"), ..error };
        let item = doing.item(api, one.item).map_err(field)?;
        if seen.contains(&item) {
            return Err(field(ApiError::input("", format!("{} is counted twice", item.name()))));
        }
        let known = doing.count(&store, &item);
        let difference = doing.correct(&store, &item, one.counted).map_err(field)?;
        if difference != 0 {
            rows.push(TakeRow {
                name: item_name(&item, api.words()),
                item: Some(item.clone()),
                piece: None,
                known: known as f64,
                counted: one.counted as f64,
                difference: difference as f64,
                unit: StockUnit::Pieces,
            });
        }
        seen.push(item);
    }
    for (at, one) in asked.pieces.into_iter().enumerate() {
        let field = |error: ApiError| ApiError { field: format!("pieces[{at}]"), ..error };
        if looked_for.contains(&one.piece) {
            return Err(field(ApiError::input("", format!("piece {} is there twice", one.piece))));
        }
        let (piece, known) = doing.piece(one.piece).map_err(field)?;
        let counted = one.length_mm.map_or(Ok(0), |length| tenths("length_mm", length)).map_err(field)?;
        let difference = doing.correct_piece(one.piece, counted).map_err(field)?;
        if difference != 0 {
            rows.push(TakeRow {
                name: hose_name(&piece.hose),
                item: None,
                piece: Some(one.piece),
                known: mm(known).get(),
                counted: mm(counted).get(),
                difference: mm(difference).get(),
                unit: StockUnit::Millimetres,
            });
        }
        looked_for.push(one.piece);
    }
    let not_counted = not_counted(api, &store, asked.bin.as_deref(), &seen, &looked_for)?;
    let said = doing.said(api);
    let written = match asked.save {
        true => {
            let now = api.world.now();
            api.register()?.append(doing.bodies, now)?
        }
        false => Vec::new(),
    };
    Ok(api.answer(StockTaken { rows, not_counted, saved: asked.save, written, said }))
}

/// What is known in that bin, or in the whole store, and was not counted.
fn not_counted(
    api: &mut Api,
    store: &str,
    bin: Option<&str>,
    items: &[Item],
    pieces: &[PieceId],
) -> Result<Vec<NotCounted>, ApiError> {
    let shelf = Shelf::of(api, Some(store))?;
    let bin = bin.map(|bin| bin.trim().to_lowercase()).filter(|bin| !bin.is_empty());
    let here = |own: &str| bin.as_ref().is_none_or(|bin| own.trim().to_lowercase() == *bin);
    let left_items = shelf
        .items()
        .into_iter()
        .filter(|kept| kept.quantity != 0 && here(&kept.bin) && !items.contains(&kept.item));
    let mut left: Vec<NotCounted> = left_items
        .map(|kept| NotCounted {
            name: item_name(&kept.item, api.words()),
            item: Some(kept.item),
            piece: None,
            known: kept.quantity as f64,
            unit: StockUnit::Pieces,
        })
        .collect();
    let left_pieces = shelf
        .pieces()
        .filter(|kept| here(&kept.piece.record.bin) && !pieces.contains(&kept.piece.record.piece));
    left.extend(left_pieces.map(|kept| NotCounted {
        name: hose_name(&kept.piece.record.hose),
        item: None,
        piece: Some(kept.piece.record.piece),
        known: mm(kept.tenths_mm).get(),
        unit: StockUnit::Millimetres,
    }));
    Ok(left)
}
