//! What is done with stock: loaded, corrected, thrown away, moved, given a bin, a low mark or a price.

use super::shelf::{Said, Shelf, hose_name, item_name, known, mm, tenths};
use crate::commands::settings::Pricing;
use crate::{Answer, Api, ApiError};
use chrono::NaiveDate;
use hosewright_core::cutting::StockSort;
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::{
    Body, EventRef, Piece, PieceChanged, PieceId, PriceSet, StockChanged, StockMoved, StockPlaced, StockUnit,
    StockWhy,
};
use hosewright_core::stock::{Item, StockKind, Thing, money};
use hosewright_core::tag::TagCode;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
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
        /// Into which bin; as it was without.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        bin: Option<String>,
    },
    /// Hose comes, as pieces of one length each.
    LoadHose {
        /// To which van or shelf.
        store: String,
        /// What hose.
        hose: Thing,
        /// Reel or offcut.
        sort: StockSort,
        /// Length of each piece.
        length_mm: Millimetres,
        /// How many pieces; one without.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        pieces: Option<u32>,
        /// First day of the period printed on it.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        made: Option<NaiveDate>,
        /// The supplier's name for it.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        label: Option<String>,
        /// Into which bin.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        bin: Option<String>,
    },
    /// There are really so many.
    Correct {
        /// Where.
        store: String,
        /// What.
        item: Item,
        /// How many.
        #[ts(type = "number")]
        to: i64,
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
    },
    /// What is left of a piece is thrown away.
    ScrapPiece {
        /// Which.
        piece: PieceId,
    },
    /// Counted things go to another van or shelf.
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
        /// Into which bin there; as it was without.
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
    /// Bin and low mark of a thing: pieces, of hose millimetres. What is not said stays; a low mark of none is taken away.
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

/// Most pieces that come at once.
const MOST_PIECES: u32 = 200;

/// Does it, all or none. More may go than there is known to be: it is written and said.
///
/// # Errors
/// A thing, piece, length, count or price that can not be; the register can not be written.
pub fn change(api: &mut Api, asked: StockChange, _: &[u8]) -> Result<Answer<StockChangedAnswer>, ApiError> {
    let pricing = api.settings()?.pricing;
    let mut doing = Doing::begin(api)?;
    for (at, one) in asked.changes.into_iter().enumerate() {
        doing.one(api, one, &pricing).map_err(|error| {
            let field = format!("changes[{at}].{}", error.field);
            ApiError { field: field.trim_end_matches('.').to_owned(), ..error }
        })?;
    }
    let (bodies, pieces, said) = (std::mem::take(&mut doing.bodies), doing.new.clone(), doing.said(api));
    let now = api.world.now();
    let written = api.register()?.append(bodies, now)?;
    Ok(api.answer(StockChangedAnswer { written, pieces, said }))
}

/// Changes while they are put together, and what stands after those before.
pub(super) struct Doing {
    shelf: Shelf,
    pub(super) bodies: Vec<Body>,
    new: Vec<PieceId>,
    counts: BTreeMap<(String, String), (Item, i64)>,
    lengths: BTreeMap<PieceId, (Piece, i64)>,
}

impl Doing {
    pub(super) fn begin(api: &mut Api) -> Result<Self, ApiError> {
        let shelf = Shelf::of_all(api)?;
        Ok(Self {
            shelf,
            bodies: Vec::new(),
            new: Vec::new(),
            counts: BTreeMap::new(),
            lengths: BTreeMap::new(),
        })
    }

    fn one(&mut self, api: &mut Api, one: StockDo, pricing: &Pricing) -> Result<(), ApiError> {
        match one {
            StockDo::Load { store, item, count, bin } => {
                let (store, item) = (self.store(&store)?, self.item(api, item)?);
                counted(&item)?;
                self.add(&store, &item, some("count", count)?, StockWhy::Loaded, None);
                self.place(&store, &item, bin, None);
            }
            StockDo::LoadHose { store, hose, sort, length_mm, pieces, made, label, bin } => {
                let store = self.store(&store)?;
                let Item::Thing(hose) = known(api.catalogue, hose.into())? else {
                    return Err(ApiError::input("hose", "a hose is expected"));
                };
                let length = tenths("length_mm", length_mm)?;
                let pieces = pieces.unwrap_or(1);
                if !(1..=MOST_PIECES).contains(&pieces) || length == 0 {
                    let why = format!("1 to {MOST_PIECES} pieces of more than 0 mm are expected");
                    return Err(ApiError::input("pieces", why));
                }
                let text = |text: &Option<String>| text.as_deref().unwrap_or_default().trim().to_owned();
                for _ in 0..pieces {
                    let id = PieceId::from_bytes(api.world.random());
                    let piece = Piece {
                        piece: id,
                        store: store.clone(),
                        bin: text(&bin),
                        hose: hose.clone(),
                        sort,
                        made,
                        label: text(&label),
                    };
                    self.new.push(id);
                    self.lengths.insert(id, (piece.clone(), 0));
                    self.bodies.push(Body::PieceSet(Box::new(piece)));
                    self.lengthen(id, length, StockWhy::Loaded, None)?;
                }
            }
            StockDo::Correct { store, item, to } => {
                let (store, item) = (self.store(&store)?, self.item(api, item)?);
                self.correct(&store, &item, to)?;
            }
            StockDo::CorrectPiece { piece, to_mm } => {
                self.correct_piece(piece, tenths("to_mm", to_mm)?)?;
            }
            StockDo::Scrap { store, item, count } => {
                let (store, item) = (self.store(&store)?, self.item(api, item)?);
                counted(&item)?;
                self.add(&store, &item, -some("count", count)?, StockWhy::Scrapped, None);
            }
            StockDo::ScrapPiece { piece } => {
                let (_, left) = self.piece(piece)?;
                self.lengthen(piece, -left, StockWhy::Scrapped, None)?;
            }
            StockDo::Move { item, from, to, count, bin } => {
                let (from, to, item) = (self.store(&from)?, self.store(&to)?, self.item(api, item)?);
                counted(&item)?;
                if from == to {
                    return Err(ApiError::input(
                        "to",
                        "another van or shelf is expected; `keep` sets the bin",
                    ));
                }
                let count = some("count", count)?;
                let unit = StockUnit::Pieces;
                self.sum(&from, &item, -count);
                self.sum(&to, &item, count);
                self.bodies.push(Body::StockMoved(StockMoved {
                    item: item.clone(),
                    unit,
                    from,
                    to: to.clone(),
                    count,
                }));
                self.place(&to, &item, bin, None);
            }
            StockDo::MovePiece { piece, to, bin } => {
                let to = self.store(&to)?;
                let (mut record, left) = self.piece(piece)?;
                let stays = record.store == to;
                record.bin = match bin {
                    Some(bin) => bin.trim().to_owned(),
                    None if stays => record.bin,
                    None => String::new(),
                };
                record.store = to;
                self.lengths.insert(piece, (record.clone(), left));
                self.bodies.push(Body::PieceSet(Box::new(record)));
            }
            StockDo::Keep { store, item, bin, low } => {
                let (store, item) = (self.store(&store)?, self.item(api, item)?);
                if low.flatten().is_some_and(|low| low < 0) {
                    return Err(ApiError::input("low", "a number from 0 up is expected, or none"));
                }
                self.place(&store, &item, bin, low);
            }
            StockDo::Price { item, price } => {
                let item = self.item(api, item)?;
                if pricing.currency.is_empty() {
                    let why = "no currency is set: set it before anything is priced (pricing.currency)";
                    return Err(ApiError::input("price", why));
                }
                let price = price.as_deref().map(str::trim).filter(|price| !price.is_empty());
                let minor = price.map(|price| money::parse(price, pricing.currency_digits)).transpose();
                let minor = minor.map_err(|error| ApiError::input("price", error))?;
                self.bodies.push(Body::PriceSet(PriceSet {
                    item,
                    minor,
                    currency: pricing.currency.clone(),
                }));
            }
        }
        Ok(())
    }

    /// A store by its name, as it is written where it is known already.
    pub(super) fn store(&self, asked: &str) -> Result<String, ApiError> {
        let asked = asked.trim();
        if asked.is_empty() {
            return Err(ApiError::input("store", "the name of a van or shelf is expected"));
        }
        let new = self.counts.keys().map(|(store, _)| store.as_str());
        let new = new.chain(self.lengths.values().map(|(piece, _)| piece.store.as_str()));
        let alike = self.shelf.stores().chain(new).find(|known| known.to_lowercase() == asked.to_lowercase());
        Ok(alike.unwrap_or(asked).to_owned())
    }

    /// An item by its names, as it is written where it is known already.
    pub(super) fn item(&self, api: &Api, asked: Item) -> Result<Item, ApiError> {
        let item = known(api.catalogue, asked)?;
        let key = item.key().to_lowercase();
        let new = self.counts.values().map(|(item, _)| item);
        let mut known = self.shelf.known_items().chain(new);
        Ok(known.find(|known| known.key().to_lowercase() == key).cloned().unwrap_or(item))
    }

    pub(super) fn count(&self, store: &str, item: &Item) -> i64 {
        let changed = self.counts.get(&(store.to_owned(), item.key())).map(|(_, count)| *count);
        changed.unwrap_or_else(|| self.shelf.count(store, item).unwrap_or(0))
    }

    fn sum(&mut self, store: &str, item: &Item, difference: i64) {
        let now = self.count(store, item).saturating_add(difference);
        self.counts.insert((store.to_owned(), item.key()), (item.clone(), now));
    }

    pub(super) fn add(
        &mut self,
        store: &str,
        item: &Item,
        difference: i64,
        why: StockWhy,
        hose: Option<TagCode>,
    ) {
        self.sum(store, item, difference);
        self.bodies.push(Body::StockChanged(StockChanged {
            store: store.to_owned(),
            item: item.clone(),
            unit: StockUnit::Pieces,
            difference,
            why: Some(why),
            hose,
        }));
    }

    /// There are really so many; nothing is written where that was known.
    pub(super) fn correct(&mut self, store: &str, item: &Item, to: i64) -> Result<i64, ApiError> {
        counted(item)?;
        if !(0..=MOST).contains(&to) {
            return Err(ApiError::input("to", format!("a number from 0 to {MOST} is expected")));
        }
        let difference = to - self.count(store, item);
        let fresh = self.shelf.count(store, item).is_none();
        if difference != 0 || fresh {
            self.add(store, item, difference, StockWhy::Counted, None);
        }
        Ok(difference)
    }

    pub(super) fn correct_piece(&mut self, piece: PieceId, to: i64) -> Result<i64, ApiError> {
        let (_, left) = self.piece(piece)?;
        if to != left {
            self.lengthen(piece, to - left, StockWhy::Counted, None)?;
        }
        Ok(to - left)
    }

    pub(super) fn piece(&self, piece: PieceId) -> Result<(Piece, i64), ApiError> {
        let known = self.shelf.piece(piece).map(|kept| (kept.piece.record.clone(), kept.tenths_mm));
        self.lengths
            .get(&piece)
            .cloned()
            .or(known)
            .ok_or_else(|| ApiError::nothing("piece", format!("there is no piece {piece}")))
    }

    pub(super) fn lengthen(
        &mut self,
        piece: PieceId,
        tenths_mm: i64,
        why: StockWhy,
        hose: Option<TagCode>,
    ) -> Result<i64, ApiError> {
        let (record, left) = self.piece(piece)?;
        let left = left.saturating_add(tenths_mm);
        self.lengths.insert(piece, (record, left));
        self.bodies.push(Body::PieceChanged(PieceChanged { piece, tenths_mm, why, hose }));
        Ok(left)
    }

    fn place(&mut self, store: &str, item: &Item, bin: Option<String>, low: Option<Option<i64>>) {
        let placed = self.bodies.iter().rev().find_map(|body| match body {
            Body::StockPlaced(placed) if placed.store == store && placed.item == *item => {
                Some((placed.bin.clone(), placed.low))
            }
            _ => None,
        });
        let now = placed.unwrap_or_else(|| self.shelf.place(store, item));
        let then = (bin.map_or_else(|| now.0.clone(), |bin| bin.trim().to_owned()), low.unwrap_or(now.1));
        if then != now {
            self.bodies.push(Body::StockPlaced(StockPlaced {
                store: store.to_owned(),
                item: item.clone(),
                bin: then.0,
                low: then.1,
            }));
        }
    }

    /// What is below nothing after all of it.
    pub(super) fn said(&self, api: &Api) -> Vec<Said> {
        let words = api.words();
        let counts =
            self.counts.iter().filter(|(_, (_, count))| *count < 0).map(|((store, _), (item, _))| {
                Said::of(words, "negative", &[("name", &item_name(item, words)), ("store", store)])
            });
        let pieces = self.lengths.values().filter(|(_, left)| *left < 0).map(|(piece, left)| {
            let over = hosewright_words::length(-mm(*left).get(), 1);
            let name = hose_name(&piece.hose);
            Said::of(words, "negative-piece", &[("name", &name), ("store", &piece.store), ("over", &over)])
        });
        counts.chain(pieces).collect()
    }
}

/// Most of a thing that a van or shelf can hold.
const MOST: i64 = 1_000_000;

/// How many, where that can be.
fn some(field: &str, count: i64) -> Result<i64, ApiError> {
    if (1..=MOST).contains(&count) {
        Ok(count)
    } else {
        Err(ApiError::input(
            field,
            format!("{count} can not be; a whole number from 1 to {MOST} is expected"),
        ))
    }
}

/// Hose is never counted.
fn counted(item: &Item) -> Result<(), ApiError> {
    match item.kind() {
        StockKind::Hose => {
            Err(ApiError::input("item", "hose is kept as pieces with their length: `load-hose`"))
        }
        _ => Ok(()),
    }
}
