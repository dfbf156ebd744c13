//! A line of what is wanted against what is there.

use super::names::item_name;
use super::shelf::{Elsewhere, Shelf};
use crate::Api;
use hosewright_core::record::StockUnit;
use hosewright_core::spec::Role;
use hosewright_core::stock::{Found, Item, Stands, StockKind};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// What is wanted, and what is there of it.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct NeedLine {
    /// What kind of thing.
    pub part: StockKind,
    /// What; none where it is not known well enough to be named.
    pub item: Option<Item>,
    /// For which ends.
    pub roles: Vec<Role>,
    /// It in words.
    pub name: String,
    /// How much is wanted.
    #[ts(type = "number")]
    pub wanted: i64,
    /// Counted in.
    pub unit: StockUnit,
    /// Whether it is there.
    pub state: Stands,
    /// How much is there.
    #[ts(type = "number")]
    pub quantity: i64,
    /// Where it lies.
    pub bins: Vec<String>,
    /// What may be it, where half, form or series is not written down.
    pub doubtful: Vec<String>,
    /// Where else there is some.
    pub elsewhere: Vec<Elsewhere>,
}

/// A line of what is wanted, in words.
pub(in crate::commands) fn line(api: &Api, shelf: &Shelf, found: &Found, roles: Vec<Role>) -> NeedLine {
    let words = api.words();
    let mut bins: Vec<String> = found.from.iter().map(|(kept, _)| kept.bin.clone()).collect();
    bins.retain(|bin| !bin.is_empty());
    bins.dedup();
    NeedLine {
        part: found.wanted.item.kind(),
        item: Some(found.wanted.item.clone()),
        roles,
        name: item_name(&found.wanted.item, words),
        wanted: found.wanted.count,
        unit: StockUnit::Pieces,
        state: found.stands,
        quantity: found.there,
        bins,
        doubtful: found.doubtful.iter().map(|kept| item_name(&kept.item, words)).collect(),
        elsewhere: match found.stands {
            Stands::There => Vec::new(),
            _ => shelf.elsewhere(api.catalogue, &found.wanted),
        },
    }
}
