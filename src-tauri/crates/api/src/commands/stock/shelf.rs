//! What one van or shelf has, and what the others have.

use crate::{Api, ApiError};
use hosewright_core::catalogue::Catalogue;
use hosewright_core::record::{PieceId, StockUnit};
use hosewright_core::stock::{Found, Item, Shelved, StockKind, Thing, Wanted, needs};
use hosewright_store::{PieceKept, Stock};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// Another store that has some.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[ts(rename = "StockElsewhere")]
pub struct Elsewhere {
    /// The van or shelf.
    pub store: String,
    /// How much is there.
    #[ts(type = "number")]
    pub quantity: i64,
}

/// What one van or shelf has, and what the others have.
#[derive(Debug)]
pub(in crate::commands) struct Shelf {
    /// Its name.
    pub store: String,
    /// As it was counted.
    counted: Vec<Stock>,
    /// Bin by bin.
    stock: Vec<Stock>,
    pieces: Vec<PieceKept>,
}

impl Shelf {
    /// The store that is asked for, else the one this device works from, else the only one there is.
    pub(in crate::commands) fn of(api: &mut Api, asked: Option<&str>) -> Result<Self, ApiError> {
        let own = api.settings()?.store;
        let mut shelf = Self::of_all(api)?;
        let said = asked.map(str::trim).filter(|store| !store.is_empty());
        let said = said.map(str::to_owned).or(Some(own.trim().to_owned()).filter(|store| !store.is_empty()));
        let stores: Vec<&str> = shelf.stores().collect();
        shelf.store = match (said, stores.as_slice()) {
            (Some(store), known) => {
                let alike = known.iter().find(|known| known.to_lowercase() == store.to_lowercase());
                alike.map_or(store, |known| (*known).to_owned())
            }
            (None, [only]) => (*only).to_owned(),
            (None, []) => {
                return Err(ApiError::nothing("store", "nothing is kept anywhere yet: load the van first"));
            }
            (None, many) => {
                let why = format!(
                    "there are {}: say which, or set the one this device works from",
                    many.join(", ")
                );
                return Err(ApiError::input("store", why));
            }
        };
        Ok(shelf)
    }

    /// What all have, for changes that name their own store.
    pub(in crate::commands) fn of_all(api: &mut Api) -> Result<Self, ApiError> {
        let register = api.register()?;
        let counted = register.stock()?;
        let stock = bin_by_bin(&counted);
        Ok(Self { store: String::new(), counted, stock, pieces: register.pieces()? })
    }

    /// Every van and shelf, by name.
    pub(in crate::commands) fn stores(&self) -> impl Iterator<Item = &str> {
        let mut stores: Vec<&str> = self.stock.iter().map(|kept| kept.store.as_str()).collect();
        stores.extend(self.pieces.iter().map(|kept| kept.piece.record.store.as_str()));
        stores.sort_unstable();
        stores.dedup();
        stores.into_iter()
    }

    /// Every item that was ever counted or placed anywhere.
    pub(in crate::commands) fn known_items(&self) -> impl Iterator<Item = &Item> {
        self.stock.iter().map(|kept| &kept.item)
    }

    /// Counted things of this store.
    pub(in crate::commands) fn items(&self) -> Vec<Shelved> {
        self.items_of(|store| store == self.store)
    }

    /// Each bin of the counted things of this store, as it is known.
    pub(in crate::commands) fn lots(&self) -> Vec<&Stock> {
        let here = self.stock.iter().filter(|kept| kept.store == self.store);
        here.filter(|kept| kept.unit == StockUnit::Pieces && kept.item.kind() != StockKind::Hose).collect()
    }

    /// What is below nothing in one bin was taken out of another: so much less is there.
    fn items_of(&self, store: impl Fn(&str) -> bool) -> Vec<Shelved> {
        let kept = self.stock.iter().filter(|kept| store(&kept.store) && kept.unit == StockUnit::Pieces);
        let kept: Vec<&Stock> = kept.filter(|kept| kept.item.kind() != StockKind::Hose).collect();
        let mut items: Vec<Shelved> = Vec::new();
        for lots in kept.chunk_by(|one, other| one.store == other.store && one.item == other.item) {
            let counted = |lot: &Stock| lot.quantity.unwrap_or(0);
            let mut owed: i64 = lots.iter().map(|lot| counted(lot).min(0)).fold(0, i64::saturating_sub);
            items.extend(lots.iter().map(|lot| {
                let given = counted(lot).clamp(0, owed.max(0));
                owed -= given;
                Shelved { item: lot.item.clone(), quantity: counted(lot) - given, bin: lot.bin.clone() }
            }));
        }
        items
    }

    /// Pieces of hose in this store that something is left of.
    pub(in crate::commands) fn pieces(&self) -> impl Iterator<Item = &PieceKept> {
        let here = self.pieces.iter().filter(|kept| kept.piece.record.store == self.store);
        here.filter(|kept| kept.tenths_mm > 0)
    }

    /// Pieces of that hose in this store that something is left of.
    pub(in crate::commands) fn pieces_of(&self, hose: &Thing) -> Vec<&PieceKept> {
        self.pieces().filter(|kept| kept.piece.record.hose == *hose).collect()
    }

    /// Whether that hose was ever kept here.
    pub(in crate::commands) fn keeps_hose(&self, hose: &Thing) -> bool {
        let item = Item::from(hose.clone());
        self.pieces
            .iter()
            .any(|kept| kept.piece.record.store == self.store && kept.piece.record.hose == *hose)
            || self.stock.iter().any(|kept| kept.store == self.store && kept.item == item)
    }

    /// A piece by its id, wherever it is.
    pub(in crate::commands) fn piece(&self, piece: PieceId) -> Option<&PieceKept> {
        self.pieces.iter().find(|kept| kept.piece.record.piece == piece)
    }

    /// How many of an item were counted in each bin of a store; a blank bin is the usual one.
    pub(in crate::commands) fn counted(&self, store: &str, item: &Item) -> Vec<(String, i64)> {
        let kept = self
            .counted
            .iter()
            .filter(|kept| kept.store == store && kept.unit == StockUnit::Pieces && kept.item == *item);
        kept.filter_map(|kept| Some((kept.bin.clone(), kept.quantity?))).collect()
    }

    /// The bin and low mark that were set for an item in a store.
    pub(in crate::commands) fn place(&self, store: &str, item: &Item) -> (String, Option<i64>) {
        let kept = self.stock.iter().find(|kept| kept.store == store && kept.item == *item);
        kept.map(|kept| (kept.usual.clone(), kept.low)).unwrap_or_default()
    }

    /// Every bin that something lies in.
    pub(in crate::commands) fn bins(&self, store: &str) -> impl Iterator<Item = &str> {
        let counted = self.stock.iter().filter(move |kept| kept.store == store);
        let pieces = self.pieces.iter().map(|kept| &kept.piece.record).filter(move |one| one.store == store);
        counted.map(|kept| kept.bin.as_str()).chain(pieces.map(|piece| piece.bin.as_str()))
    }

    /// What is wanted against this store, with what the others have.
    pub(in crate::commands) fn needs(&self, catalogue: &Catalogue, wanted: &[Wanted]) -> Vec<Found> {
        needs(catalogue, wanted, &self.items())
    }

    /// How much of something the other stores have.
    pub(in crate::commands) fn elsewhere(&self, catalogue: &Catalogue, wanted: &Wanted) -> Vec<Elsewhere> {
        self.others()
            .filter_map(|store| {
                let shelf = self.items_of(|one| one == store);
                let plenty = Wanted { item: wanted.item.clone(), count: i64::MAX };
                let quantity = needs(catalogue, &[plenty], &shelf).first()?.there;
                (quantity > 0).then(|| Elsewhere { store: store.to_owned(), quantity })
            })
            .collect()
    }

    /// How much of that hose the other stores have, in millimetres.
    pub(in crate::commands) fn hose_elsewhere(&self, hose: &Thing) -> Vec<Elsewhere> {
        self.others()
            .filter_map(|store| {
                let there = self.pieces.iter().filter(|kept| {
                    kept.piece.record.store == store && kept.piece.record.hose == *hose && kept.tenths_mm > 0
                });
                let tenths: i64 = there.map(|kept| kept.tenths_mm).sum();
                (tenths > 0).then(|| Elsewhere { store: store.to_owned(), quantity: tenths / 10 })
            })
            .collect()
    }

    fn others(&self) -> impl Iterator<Item = &str> {
        self.stores().filter(|store| *store != self.store)
    }
}

/// Each bin of each thing once: what was counted without a bin lies in the usual one. Of a thing with several bins the empty
/// ones are left out.
pub(super) fn bin_by_bin(counted: &[Stock]) -> Vec<Stock> {
    let same = |one: &Stock, other: &Stock| {
        one.store == other.store && one.item == other.item && one.unit == other.unit
    };
    counted.chunk_by(same).flat_map(bins_of).collect()
}

/// The bins of one thing.
fn bins_of(counted: &[Stock]) -> Vec<Stock> {
    let mut bins: Vec<Stock> = Vec::new();
    for row in counted {
        let bin = if row.bin.is_empty() { &row.usual } else { &row.bin };
        match bins.iter_mut().find(|known| known.bin == *bin) {
            Some(known) => {
                let both = known.quantity.unwrap_or(0).saturating_add(row.quantity.unwrap_or(0));
                known.quantity = Some(both);
            }
            None => bins.push(Stock { bin: bin.clone(), ..row.clone() }),
        }
    }
    let empty = |lot: &Stock| lot.quantity == Some(0);
    match bins.iter().all(empty) {
        true => bins.truncate(1),
        false => bins.retain(|lot| !empty(lot)),
    }
    bins
}
