//! What is on the vans and shelves.

use super::price::Money;
use super::rows::{Prices, hoses, items, stores};
use super::said::{Said, SaidCode, conflicting};
use super::shelf::bin_by_bin;
use crate::{Answer, Api, ApiError};
use chrono::NaiveDate;
use hosewright_core::cutting::StockSort;
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::{EventRef, PieceId, StockUnit};
use hosewright_core::stock::{Item, StockKind, Thing};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Which stock is asked for; all of it without.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
#[ts(optional_fields)]
pub struct StockQuestion {
    /// Of this van or shelf alone.
    pub store: Option<String>,
    /// In this bin alone.
    pub bin: Option<String>,
    /// With these words in its name, bin or supplier's name.
    pub text: Option<String>,
    /// Of this kind alone.
    pub kind: Option<StockKind>,
    /// What is low alone.
    pub low: bool,
    /// Also pieces that are used up and things of which none is left.
    pub all: bool,
}

/// What is on the vans and shelves.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct StockList {
    /// Every van and shelf, whatever was asked for.
    pub stores: Vec<StoreSum>,
    /// Hose by store and name, each with its pieces.
    pub hoses: Vec<HoseStock>,
    /// Counted things by store and name.
    pub items: Vec<ItemStock>,
    /// What a person must see.
    pub said: Vec<Said>,
}

/// A van or shelf at a glance.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct StoreSum {
    /// Its name.
    pub store: String,
    /// Pieces of hose that something is left of.
    pub pieces: usize,
    /// Counted things that are there.
    pub items: usize,
    /// Things that are low.
    pub low: usize,
}

/// One kind of hose in a store.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct HoseStock {
    /// The van or shelf.
    pub store: String,
    /// What hose.
    pub hose: Thing,
    /// It in words.
    pub name: String,
    /// All its pieces together.
    pub total_mm: Millimetres,
    /// At or below which length it is low; none is not said.
    pub low_mark_mm: Option<Millimetres>,
    /// Whether it is low.
    pub low: bool,
    /// What a metre costs; none is not priced.
    pub price: Option<Money>,
    /// Its pieces, longest first.
    pub pieces: Vec<PieceStock>,
}

/// A piece of hose.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct PieceStock {
    /// Which.
    pub piece: PieceId,
    /// The event that stands for all of it but its length.
    pub version: EventRef,
    /// Reel or offcut.
    pub sort: StockSort,
    /// Its bin; blank is not said.
    pub bin: String,
    /// How much is left; below zero when more was cut than there was.
    pub length_mm: Millimetres,
    /// First day of the period printed on it; none is not known.
    pub made: Option<NaiveDate>,
    /// The supplier's name for it.
    pub label: String,
    /// Whether it is long enough to be kept; none where nobody said how long that is.
    pub useful: Option<bool>,
    /// Whether more was cut than there was.
    pub negative: bool,
}

/// A counted thing in one bin of a store.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct ItemStock {
    /// The van or shelf.
    pub store: String,
    /// What.
    pub item: Item,
    /// Which kind.
    pub kind: StockKind,
    /// It in words.
    pub name: String,
    /// Its bin; blank is not said.
    pub bin: String,
    /// How many lie there; below zero when more went than was ever entered.
    #[ts(type = "number")]
    pub quantity: i64,
    /// How many lie in all bins of the store.
    #[ts(type = "number")]
    pub in_store: i64,
    /// Counted in.
    pub unit: StockUnit,
    /// At or below how many in all bins it is low; none is not said.
    #[ts(type = "number | null")]
    pub low_mark: Option<i64>,
    /// Whether it is low.
    pub low: bool,
    /// Whether more went than was ever entered.
    pub negative: bool,
    /// What one costs; none is not priced.
    pub price: Option<Money>,
}

/// What is on the vans and shelves, what is low, and what can not be.
///
/// # Errors
/// The register can not be read.
pub fn list(api: &mut Api, asked: StockQuestion, _: &[u8]) -> Result<Answer<StockList>, ApiError> {
    let settings = api.settings()?;
    let register = api.register()?;
    let (stock, pieces, prices) = (register.stock()?, register.pieces()?, register.prices()?);
    let untold = register.untold_pieces()?;
    let stock = bin_by_bin(&stock);
    let prices = Prices { prices, pricing: &settings.pricing, words: api.words() };
    let mut hoses = hoses(&stock, pieces, &prices, settings.offcut_mm);
    let mut items = items(&stock, &prices);
    let mut said: Vec<Said> = Vec::new();
    let words = api.words();
    for item in items.iter().filter(|item| item.negative) {
        let values = [("name", item.name.as_str()), ("store", &item.store)];
        said.push(Said::of(words, SaidCode::Negative, &values));
    }
    for hose in &hoses {
        for piece in hose.pieces.iter().filter(|piece| piece.negative) {
            let over = words.length(-piece.length_mm.get(), 1);
            let values = [("name", hose.name.as_str()), ("store", &hose.store), ("over", &over)];
            said.push(Said::of(words, SaidCode::NegativePiece, &values));
        }
    }
    for piece in untold {
        said.push(Said::of(words, SaidCode::UntoldPiece, &[("name", &piece.to_string())]));
    }
    said.extend(conflicting(api)?);
    let stores = stores(&hoses, &items);
    asked.filter(&mut hoses, &mut items);
    hoses.sort_by(|one, other| (&one.store, &one.name).cmp(&(&other.store, &other.name)));
    items.sort_by(|one, other| {
        let key = |item: &ItemStock| (item.store.clone(), item.kind, item.name.clone(), item.bin.clone());
        key(one).cmp(&key(other))
    });
    Ok(api.answer(StockList { stores, hoses, items, said }))
}

impl StockQuestion {
    fn filter(&self, hoses: &mut Vec<HoseStock>, items: &mut Vec<ItemStock>) {
        let given = |text: &Option<String>| {
            text.as_deref().map(str::trim).filter(|text| !text.is_empty()).map(str::to_lowercase)
        };
        let (store, bin, text) = (given(&self.store), given(&self.bin), given(&self.text));
        let is = |asked: &Option<String>, own: &str| {
            asked.as_ref().is_none_or(|asked| own.trim().to_lowercase() == *asked)
        };
        let has = |own: &[&str]| {
            text.as_ref().is_none_or(|text| {
                let own = own.join(" ").to_lowercase();
                text.split_whitespace().all(|word| own.contains(word))
            })
        };
        hoses.retain(|hose| is(&store, &hose.store) && self.kind.is_none_or(|kind| kind == StockKind::Hose));
        for hose in hoses.iter_mut() {
            let name = hose.name.clone();
            hose.pieces.retain(|piece| {
                is(&bin, &piece.bin)
                    && has(&[&name, &piece.bin, &piece.label])
                    && (self.all || piece.length_mm.get() != 0.0)
            });
        }
        hoses.retain(|hose| {
            let bare = bin.is_none() && has(&[&hose.name]) && (hose.low || self.all);
            (!self.low || hose.low) && (!hose.pieces.is_empty() || bare)
        });
        items.retain(|item| {
            is(&store, &item.store)
                && is(&bin, &item.bin)
                && has(&[&item.name, &item.bin])
                && self.kind.is_none_or(|kind| kind == item.kind)
                && (!self.low || item.low)
                && (self.all || item.quantity != 0 || item.low)
        });
    }
}
