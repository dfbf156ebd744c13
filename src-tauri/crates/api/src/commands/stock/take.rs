//! Stock take: what was counted and measured in a bin, against what was known.

use super::doing::Doing;
use super::names::{hose_name, item_name, mm, tenths};
use super::said::Said;
use super::shelf::Shelf;
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
    /// In which bin; the one that is counted without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub bin: Option<String>,
    /// How many were known when it was counted. Where another number is known by now it is not written down.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional, type = "number")]
    pub known: Option<i64>,
}

/// A piece that was looked for.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct CountedPiece {
    /// Which.
    pub piece: PieceId,
    /// How long it is; none: it is not there.
    pub length_mm: Option<Millimetres>,
    /// How long it was known to be when it was measured. Where another length is known by now it is not written down.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub known_mm: Option<Millimetres>,
}

/// What differs.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
#[ts(rename = "StockTakeAnswer")]
pub struct StockTaken {
    /// What was counted otherwise than it was known.
    pub rows: Vec<TakeRow>,
    /// What changed since it was counted, such as by a hose that was made in between: it is not written down and has to be
    /// counted again.
    pub changed: Vec<TakeRow>,
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
    /// The bin; blank is not said.
    pub bin: String,
    /// How much is known: a number, of a piece millimetres.
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
    /// The bin; blank is not said.
    pub bin: String,
    /// How much is known: a number, of a piece millimetres.
    pub known: f64,
    /// Counted in.
    pub unit: StockUnit,
}

/// What differs, and with `save` written down, all or none but for what changed since it was counted.
///
/// # Errors
/// A thing twice, a count or length that can not be, a piece there is none of; the register can not be written.
pub fn take(api: &mut Api, asked: StockTake, _: &[u8]) -> Result<Answer<StockTaken>, ApiError> {
    let mut doing = Doing::begin(api)?;
    let store = doing.store(&asked.store)?;
    let bin = asked.bin.as_deref().map(str::trim).filter(|bin| !bin.is_empty());
    let bin = bin.map(|bin| doing.bin(&store, bin));
    let (mut rows, mut changed) = (Vec::new(), Vec::new());
    let (mut seen, mut looked_for) = (Vec::new(), Vec::new());
    for (at, one) in asked.items.into_iter().enumerate() {
        let (row, stands, counted) = counted(&mut doing, api, &store, bin.as_deref(), one)
            .map_err(|error| ApiError { field: format!("items[{at}]"), ..error })?;
        if seen.contains(&counted) {
            let why = format!("{} is counted twice", counted.0.name());
            return Err(ApiError::input(format!("items[{at}]"), why));
        }
        seen.push(counted);
        if stands { rows.push(row) } else { changed.push(row) }
    }
    for (at, one) in asked.pieces.into_iter().enumerate() {
        let field = |error: ApiError| ApiError { field: format!("pieces[{at}]"), ..error };
        if looked_for.contains(&one.piece) {
            return Err(field(ApiError::input("", format!("piece {} is there twice", one.piece))));
        }
        looked_for.push(one.piece);
        let (row, stands) = measured(&mut doing, &one).map_err(field)?;
        if stands { rows.push(row) } else { changed.push(row) }
    }
    rows.retain(|row| row.difference != 0.0);
    let not_counted = not_counted(api, &store, bin.as_deref(), &seen, &looked_for)?;
    let said = doing.said(api);
    let written = match asked.save {
        true => {
            let now = api.world.now();
            api.register()?.append(doing.bodies, now)?
        }
        false => Vec::new(),
    };
    Ok(api.answer(StockTaken { rows, changed, not_counted, saved: asked.save, written, said }))
}

/// A thing and its bin.
type Counted = (Item, String);

/// A thing that was counted, whether its count stands, and which it is.
fn counted(
    doing: &mut Doing,
    api: &Api,
    store: &str,
    bin: Option<&str>,
    one: CountedItem,
) -> Result<(TakeRow, bool, Counted), ApiError> {
    let at = doing.counted_at(api, store, one.item)?;
    let own = one.bin.map(|own| doing.bin(store, &own));
    let bin = own.as_deref().or(bin);
    let (known, bins) = doing.count(&at, bin);
    let stands = one.known.is_none_or(|then| then == known);
    if stands {
        doing.correct(&at, bin, one.counted)?;
    }
    let only = if let [only] = bins.as_slice() { only.clone() } else { String::new() };
    let bin = bin.map_or(only, str::to_owned);
    let row = TakeRow {
        name: item_name(&at.item, api.words()),
        item: Some(at.item.clone()),
        piece: None,
        bin: bin.clone(),
        known: known as f64,
        counted: one.counted as f64,
        difference: one.counted.saturating_sub(known) as f64,
        unit: StockUnit::Pieces,
    };
    Ok((row, stands, (at.item, bin)))
}

/// A piece that was measured, and whether that stands.
fn measured(doing: &mut Doing, one: &CountedPiece) -> Result<(TakeRow, bool), ApiError> {
    let (piece, known) = doing.piece(one.piece)?;
    let counted = one.length_mm.map_or(Ok(0), |length| tenths("length_mm", length))?;
    let then = one.known_mm.map(|then| (then.get() * 10.0).round() as i64);
    let stands = then.is_none_or(|then| then == known);
    if stands {
        doing.correct_piece(one.piece, counted)?;
    }
    let row = TakeRow {
        name: hose_name(&piece.hose),
        item: None,
        piece: Some(one.piece),
        bin: piece.bin,
        known: mm(known).get(),
        counted: mm(counted).get(),
        difference: mm(counted - known).get(),
        unit: StockUnit::Millimetres,
    };
    Ok((row, stands))
}

/// What is known in that bin, or in the whole store, and was not counted.
fn not_counted(
    api: &mut Api,
    store: &str,
    bin: Option<&str>,
    items: &[Counted],
    pieces: &[PieceId],
) -> Result<Vec<NotCounted>, ApiError> {
    let shelf = Shelf::of(api, Some(store))?;
    let here = |own: &str| bin.is_none_or(|bin| own.trim() == bin);
    let seen = |item: &Item, own: &str| items.iter().any(|(of, bin)| of == item && bin == own);
    let lots = shelf.lots().into_iter();
    let left_items =
        lots.filter(|lot| lot.quantity != Some(0) && here(&lot.bin) && !seen(&lot.item, &lot.bin));
    let mut left: Vec<NotCounted> = left_items
        .filter_map(|lot| {
            Some(NotCounted {
                name: item_name(&lot.item, api.words()),
                known: lot.quantity? as f64,
                item: Some(lot.item.clone()),
                piece: None,
                bin: lot.bin.clone(),
                unit: StockUnit::Pieces,
            })
        })
        .collect();
    let left_pieces = shelf
        .pieces()
        .filter(|kept| here(&kept.piece.record.bin) && !pieces.contains(&kept.piece.record.piece));
    left.extend(left_pieces.map(|kept| NotCounted {
        name: hose_name(&kept.piece.record.hose),
        item: None,
        piece: Some(kept.piece.record.piece),
        bin: kept.piece.record.bin.clone(),
        known: mm(kept.tenths_mm).get(),
        unit: StockUnit::Millimetres,
    }));
    Ok(left)
}
