//! Changes of stock while they are put together: what stands after those before, and the events that they come to.

use super::kept::Kept;
use super::names::{hose_name, item_name, known, mm};
use super::said::{Said, SaidCode};
use super::shelf::Shelf;
use crate::{Api, ApiError};
use hosewright_core::record::{
    Body, Piece, PieceChanged, PieceId, StockChanged, StockMoved, StockPlaced, StockUnit, StockWhy,
};
use hosewright_core::stock::{Item, StockKind};
use hosewright_core::tag::TagCode;
use std::collections::BTreeMap;

/// Most of a thing that a van or shelf can hold.
pub(super) const MOST: i64 = 1_000_000;

/// A thing in a store.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct At {
    pub store: String,
    pub item: Item,
}

impl At {
    fn key(&self) -> (String, String) {
        (self.store.clone(), self.item.key())
    }
}

/// Changes while they are put together, and what stands after those before.
pub(super) struct Doing {
    shelf: Shelf,
    pub bodies: Vec<Body>,
    pub new: Vec<PieceId>,
    kept: BTreeMap<(String, String), Kept>,
    lengths: BTreeMap<PieceId, (Piece, i64)>,
}

impl Doing {
    pub fn begin(api: &mut Api) -> Result<Self, ApiError> {
        Ok(Self {
            shelf: Shelf::of_all(api)?,
            bodies: Vec::new(),
            new: Vec::new(),
            kept: BTreeMap::new(),
            lengths: BTreeMap::new(),
        })
    }

    /// A store by its name, as it is written where it is known already.
    pub fn store(&self, asked: &str) -> Result<String, ApiError> {
        let asked = asked.trim();
        if asked.is_empty() {
            return Err(ApiError::input("store", "the name of a van or shelf is expected"));
        }
        let new = self.kept.keys().map(|(store, _)| store.as_str());
        let new = new.chain(self.lengths.values().map(|(piece, _)| piece.store.as_str()));
        Ok(alike(self.shelf.stores().chain(new), asked))
    }

    /// A bin by its name, as it is written where it is known already in that store.
    pub fn bin(&self, store: &str, asked: &str) -> String {
        let new = self.kept.iter().filter(|((of, _), _)| of == store);
        let new = new.flat_map(|(_, kept)| kept.counted.keys().chain([&kept.usual]).map(String::as_str));
        alike(self.shelf.bins(store).chain(new), asked.trim())
    }

    /// A thing of a store, both as they are written where they are known already.
    pub fn at(&self, api: &Api, store: &str, item: Item) -> Result<At, ApiError> {
        Ok(At { store: self.store(store)?, item: self.item(api, item)? })
    }

    /// A counted thing of a store: hose is none.
    pub fn counted_at(&self, api: &Api, store: &str, item: Item) -> Result<At, ApiError> {
        let at = self.at(api, store, item)?;
        match at.item.kind() {
            StockKind::Hose => {
                Err(ApiError::input("item", "hose is kept as pieces with their length: `load-hose`"))
            }
            _ => Ok(at),
        }
    }

    /// An item by its names, as it is written where it is known already.
    pub fn item(&self, api: &Api, asked: Item) -> Result<Item, ApiError> {
        let item = known(api.catalogue, asked)?;
        let key = item.key().to_lowercase();
        let new = self.kept.values().map(|kept| &kept.item);
        let mut known = self.shelf.known_items().chain(new);
        Ok(known.find(|known| known.key().to_lowercase() == key).cloned().unwrap_or(item))
    }

    /// How many lie in a bin; in all bins without. The bins where it lies.
    pub fn count(&mut self, at: &At, bin: Option<&str>) -> (i64, Vec<String>) {
        let bins = self.kept(at).bins();
        let count = match bin {
            Some(bin) => bins.get(bin).copied().unwrap_or(0),
            None => bins.values().copied().fold(0, i64::saturating_add),
        };
        (count, bins.into_keys().collect())
    }

    fn kept(&mut self, at: &At) -> &mut Kept {
        let shelf = &self.shelf;
        self.kept.entry(at.key()).or_insert_with(|| {
            let (usual, low) = shelf.place(&at.store, &at.item);
            let counted = shelf.counted(&at.store, &at.item).into_iter().collect();
            Kept { item: at.item.clone(), usual, low, counted }
        })
    }

    /// So many come, into that bin or where most of it lies.
    pub fn load(&mut self, at: &At, bin: Option<&str>, count: i64) {
        let bin = bin.map_or_else(|| self.kept(at).where_most(), str::to_owned);
        self.add(at, &bin, count, StockWhy::Loaded, None);
    }

    /// So many go, out of that bin or out of those that have some.
    pub fn take_out(&mut self, at: &At, bin: Option<&str>, count: i64, why: StockWhy, hose: Option<TagCode>) {
        for (bin, count) in self.out_of(at, bin, count, None) {
            self.add(at, &bin, -count, why, hose);
        }
    }

    fn out_of(&mut self, at: &At, bin: Option<&str>, count: i64, but: Option<&str>) -> Vec<(String, i64)> {
        match bin {
            Some(bin) => vec![(bin.to_owned(), count)],
            None => self.kept(at).spread(count, but),
        }
    }

    fn add(&mut self, at: &At, bin: &str, difference: i64, why: StockWhy, hose: Option<TagCode>) {
        let kept = self.kept(at);
        let bin = kept.written(bin);
        let count = kept.counted.entry(bin.clone()).or_default();
        *count = count.saturating_add(difference);
        self.bodies.push(Body::StockChanged(StockChanged {
            store: at.store.clone(),
            item: at.item.clone(),
            unit: StockUnit::Pieces,
            difference,
            why: Some(why),
            hose,
            bin,
            seen: None,
        }));
    }

    /// There are really so many in that bin. It is written where that was known too: another device may have counted
    /// something else.
    pub fn correct(&mut self, at: &At, bin: Option<&str>, to: i64) -> Result<i64, ApiError> {
        if !(0..=MOST).contains(&to) {
            return Err(ApiError::input("to", format!("a number from 0 to {MOST} is expected")));
        }
        let (known, bins) = self.count(at, bin);
        let bin = match (bin, bins.as_slice()) {
            (Some(bin), _) => bin.to_owned(),
            (None, [] | [_]) => self.kept(at).where_most(),
            (None, several) => {
                let why = format!("it lies in {}: say which bin was counted", several.join(", "));
                return Err(ApiError::input("bin", why));
            }
        };
        self.add(at, &bin, to - known, StockWhy::Counted, None);
        Ok(to - known)
    }

    /// So many go to another store or bin.
    pub fn move_counted(
        &mut self,
        from: &At,
        from_bin: Option<&str>,
        to: &At,
        bin: Option<&str>,
        count: i64,
    ) -> Result<(), ApiError> {
        let to_bin = bin.map_or_else(|| self.kept(to).where_most(), str::to_owned);
        let within = from.store == to.store;
        if within && (bin.is_none() || from_bin == Some(to_bin.as_str())) {
            return Err(ApiError::input("to", "another van or shelf is expected, or another bin"));
        }
        let but = within.then_some(to_bin.as_str());
        for (from_bin, count) in self.out_of(from, from_bin, count, but) {
            let (from_bin, to_bin) = (self.kept(from).written(&from_bin), self.kept(to).written(&to_bin));
            self.moved(from, &from_bin, to, &to_bin, count);
        }
        Ok(())
    }

    fn moved(&mut self, from: &At, from_bin: &str, to: &At, to_bin: &str, count: i64) {
        for (at, bin, difference) in [(from, from_bin, -count), (to, to_bin, count)] {
            let here = self.kept(at).counted.entry(bin.to_owned()).or_default();
            *here = here.saturating_add(difference);
        }
        self.bodies.push(Body::StockMoved(StockMoved {
            item: from.item.clone(),
            unit: StockUnit::Pieces,
            from: from.store.clone(),
            to: to.store.clone(),
            count,
            from_bin: from_bin.to_owned(),
            to_bin: to_bin.to_owned(),
        }));
    }

    /// Sets bin and low mark; all of it goes into that bin. What is set again as it was settles what two devices set at once.
    pub fn keep(&mut self, at: &At, bin: Option<String>, low: Option<Option<i64>>) {
        if bin.is_some() {
            let counted = self.kept(at).counted.clone();
            for (written, count) in counted.into_iter().filter(|(bin, count)| !bin.is_empty() && *count != 0)
            {
                match count > 0 {
                    true => self.moved(at, &written, at, "", count),
                    false => self.moved(at, "", at, &written, count.saturating_neg()),
                }
            }
        }
        let kept = self.kept(at);
        kept.usual = bin.unwrap_or_else(|| kept.usual.clone());
        kept.low = low.unwrap_or(kept.low);
        let (bin, low) = (kept.usual.clone(), kept.low);
        self.bodies.push(Body::StockPlaced(StockPlaced {
            store: at.store.clone(),
            item: at.item.clone(),
            bin,
            low,
        }));
    }

    pub fn piece(&self, piece: PieceId) -> Result<(Piece, i64), ApiError> {
        let known = self.shelf.piece(piece).map(|kept| (kept.piece.record.clone(), kept.tenths_mm));
        self.lengths
            .get(&piece)
            .cloned()
            .or(known)
            .ok_or_else(|| ApiError::nothing("piece", format!("there is no piece {piece}")))
    }

    /// A piece comes, or is described anew.
    pub fn set_piece(&mut self, piece: Piece, tenths_mm: i64) {
        self.lengths.insert(piece.piece, (piece.clone(), tenths_mm));
        self.bodies.push(Body::PieceSet(Box::new(piece)));
    }

    pub fn correct_piece(&mut self, piece: PieceId, to: i64) -> Result<i64, ApiError> {
        let (_, left) = self.piece(piece)?;
        self.lengthen(piece, to - left, StockWhy::Counted, None)?;
        Ok(to - left)
    }

    pub fn lengthen(
        &mut self,
        piece: PieceId,
        tenths_mm: i64,
        why: StockWhy,
        hose: Option<TagCode>,
    ) -> Result<i64, ApiError> {
        let (record, left) = self.piece(piece)?;
        let left = left.saturating_add(tenths_mm);
        self.lengths.insert(piece, (record, left));
        self.bodies.push(Body::PieceChanged(PieceChanged { piece, tenths_mm, why, hose, seen: None }));
        Ok(left)
    }

    /// What is below nothing after all of it.
    pub fn said(&self, api: &Api) -> Vec<Said> {
        let words = api.words();
        let short = self.kept.iter().filter(|(_, kept)| kept.bins().values().any(|count| *count < 0));
        let counts = short.map(|((store, _), kept)| {
            let values = [("name", item_name(&kept.item, words)), ("store", store.clone())];
            Said::of(words, SaidCode::Negative, &values.each_ref().map(|(key, value)| (*key, value.as_str())))
        });
        let pieces = self.lengths.values().filter(|(_, left)| *left < 0).map(|(piece, left)| {
            let over = words.length(-mm(*left).get(), 1);
            let name = hose_name(&piece.hose);
            let values = [("name", name.as_str()), ("store", &piece.store), ("over", &over)];
            Said::of(words, SaidCode::NegativePiece, &values)
        });
        counts.chain(pieces).collect()
    }
}

/// A name as it is written where it is known already, whatever the case of its letters.
fn alike<'a>(mut known: impl Iterator<Item = &'a str>, asked: &str) -> String {
    known.find(|known| known.to_lowercase() == asked.to_lowercase()).unwrap_or(asked).to_owned()
}
