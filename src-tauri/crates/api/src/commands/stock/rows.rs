//! The rows of the list of stock.

use super::list::{HoseStock, ItemStock, PieceStock, StoreSum};
use super::names::{hose_name, item_name, mm};
use super::price::{Money, money};
use crate::commands::settings::Pricing;
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::PriceSet;
use hosewright_core::stock::{Item, StockKind, Thing};
use hosewright_store::{PieceKept, Stock};
use hosewright_words::Words;
use std::collections::BTreeMap;

/// Prices in the currency in use.
pub(super) struct Prices<'a> {
    pub prices: Vec<PriceSet>,
    pub pricing: &'a Pricing,
    pub words: &'a Words,
}

impl Prices<'_> {
    /// What one, or of hose a metre, costs. A price in another currency is none.
    fn of(&self, item: &Item) -> Option<Money> {
        let set = self.prices.iter().find(|set| set.item == *item)?;
        let minor = set.minor.filter(|_| set.currency == self.pricing.currency)?;
        Some(money(minor, self.pricing, self.words))
    }
}

/// Hose by store and name, each with its pieces.
pub(super) fn hoses(
    stock: &[Stock],
    pieces: Vec<PieceKept>,
    prices: &Prices<'_>,
    useful: Option<Millimetres>,
) -> Vec<HoseStock> {
    let mut hoses: BTreeMap<(String, String), HoseStock> = BTreeMap::new();
    let entry = |hose: &Thing, store: &str| HoseStock {
        store: store.to_owned(),
        hose: hose.clone(),
        name: hose_name(hose),
        total_mm: mm(0),
        low_mark_mm: None,
        low: false,
        price: prices.of(&Item::from(hose.clone())),
        pieces: Vec::new(),
    };
    let mut total: BTreeMap<(String, String), i64> = BTreeMap::new();
    for PieceKept { piece, tenths_mm } in pieces {
        let record = piece.record;
        let key = (record.store.clone(), hose_name(&record.hose));
        *total.entry(key.clone()).or_default() += tenths_mm;
        let of = hoses.entry(key).or_insert_with(|| entry(&record.hose, &record.store));
        of.pieces.push(PieceStock {
            piece: record.piece,
            version: piece.version,
            sort: record.sort,
            bin: record.bin,
            length_mm: mm(tenths_mm),
            made: record.made,
            label: record.label,
            useful: useful.map(|least| mm(tenths_mm).get() >= least.get()),
            negative: tenths_mm < 0,
        });
    }
    for kept in stock {
        let Item::Thing(hose @ Thing::Hose { .. }) = &kept.item else { continue };
        let key = (kept.store.clone(), hose_name(hose));
        let of = hoses.entry(key).or_insert_with(|| entry(hose, &kept.store));
        of.low_mark_mm = kept.low.map(|low| Millimetres(low as f64));
    }
    for (key, hose) in &mut hoses {
        let tenths = total.get(key).copied().unwrap_or(0);
        hose.total_mm = mm(tenths);
        hose.low = hose.low_mark_mm.is_some_and(|low| hose.total_mm.get() <= low.get());
        hose.pieces.sort_by(|one, other| {
            other.length_mm.get().total_cmp(&one.length_mm.get()).then(one.piece.cmp(&other.piece))
        });
    }
    hoses.into_values().collect()
}

/// Counted things, bin by bin.
pub(super) fn items(stock: &[Stock], prices: &Prices<'_>) -> Vec<ItemStock> {
    let same = |one: &Stock, other: &Stock| {
        one.store == other.store && one.item == other.item && one.unit == other.unit
    };
    let things =
        stock.chunk_by(same).filter(|bins| bins.iter().all(|kept| kept.item.kind() != StockKind::Hose));
    let of_thing = |bins: &[Stock]| {
        let quantity = |kept: &Stock| kept.quantity.unwrap_or(0);
        let in_store = bins.iter().map(quantity).fold(0, i64::saturating_add);
        let item = |kept: &Stock| ItemStock {
            name: item_name(&kept.item, prices.words),
            kind: kept.item.kind(),
            price: prices.of(&kept.item),
            low: kept.low.is_some_and(|low| in_store <= low),
            negative: quantity(kept) < 0,
            store: kept.store.clone(),
            item: kept.item.clone(),
            bin: kept.bin.clone(),
            quantity: quantity(kept),
            in_store,
            unit: kept.unit,
            low_mark: kept.low,
        };
        bins.iter().map(item).collect::<Vec<_>>()
    };
    things.flat_map(of_thing).collect()
}

/// Every van and shelf at a glance.
pub(super) fn stores(hoses: &[HoseStock], items: &[ItemStock]) -> Vec<StoreSum> {
    let mut sums: BTreeMap<&str, StoreSum> = BTreeMap::new();
    let of_hoses = hoses.iter().map(|hose| {
        let pieces = hose.pieces.iter().filter(|piece| piece.length_mm.get() > 0.0).count();
        (hose.store.as_str(), pieces, 0, hose.low)
    });
    let things = items.chunk_by(|one, other| one.store == other.store && one.item == other.item);
    let of_items = things.filter_map(|bins| {
        let item = bins.first()?;
        Some((item.store.as_str(), 0, usize::from(item.in_store > 0), item.low))
    });
    for (store, pieces, items, low) in of_hoses.chain(of_items) {
        let sum =
            sums.entry(store).or_insert_with(|| StoreSum { store: store.to_owned(), ..StoreSum::default() });
        sum.pieces += pieces;
        sum.items += items;
        sum.low += usize::from(low);
    }
    sums.into_values().collect()
}
