//! Stock that is counted: the sum of what came, went and moved; where it lies; its price.

use crate::Error;
use hosewright_core::record::{Arranged, Body, Entry, StockUnit, StockWhy};
use hosewright_core::stock::Item;
use rusqlite::{Connection, params};
use std::collections::BTreeMap;

pub(super) fn project(
    db: &Connection,
    item: &Item,
    unit: StockUnit,
    changes: &Arranged,
) -> Result<(), Error> {
    let key = item.key();
    let mut used = db.prepare_cached(
        "INSERT INTO stock_used (version, code, store, item, unit, quantity, why)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)",
    )?;
    let mut sums: BTreeMap<(&str, &str), i128> = BTreeMap::new();
    for Entry { at, body, .. } in changes.nodes.iter().map(|node| &node.current) {
        match body {
            Body::StockChanged(change) => {
                *sums.entry((&change.store, &change.bin)).or_default() += i128::from(change.difference);
                if let Some(code) = change.hose {
                    let quantity = change.difference.saturating_neg();
                    let (at, code) = (at.to_string(), code.to_string());
                    let why = change.why.unwrap_or(StockWhy::Used).name();
                    used.execute(params![at, code, change.store, key, unit.name(), quantity, why])?;
                }
            }
            Body::StockMoved(moved) => {
                *sums.entry((&moved.from, &moved.from_bin)).or_default() -= i128::from(moved.count);
                *sums.entry((&moved.to, &moved.to_bin)).or_default() += i128::from(moved.count);
            }
            _ => {}
        }
    }
    let mut insert = db
        .prepare_cached("INSERT INTO stock (store, item, unit, bin, quantity) VALUES (?1, ?2, ?3, ?4, ?5)")?;
    for ((store, bin), sum) in sums {
        insert.execute(params![store, key, unit.name(), bin, kept(sum)])?;
    }
    Ok(())
}

/// A sum as the column holds it.
pub(super) fn kept(sum: i128) -> i64 {
    sum.clamp(i128::from(i64::MIN), i128::from(i64::MAX)) as i64
}

pub(super) fn project_place(
    db: &Connection,
    store: &str,
    item: &Item,
    current: Option<&Entry>,
) -> Result<(), Error> {
    let key = item.key();
    let Some(Entry { at, body: Body::StockPlaced(placed), .. }) = current else { return Ok(()) };
    db.prepare_cached(
        "INSERT INTO stock_place (store, item, bin, low, version) VALUES (?1, ?2, ?3, ?4, ?5)",
    )?
    .execute(params![store, key, placed.bin, placed.low, at.to_string()])?;
    Ok(())
}

pub(super) fn project_price(db: &Connection, item: &Item, current: Option<&Entry>) -> Result<(), Error> {
    let key = item.key();
    let Some(Entry { at, body: Body::PriceSet(price), .. }) = current else { return Ok(()) };
    db.prepare_cached("INSERT INTO price (item, minor, currency, version) VALUES (?1, ?2, ?3, ?4)")?
        .execute(params![key, price.minor, price.currency, at.to_string()])?;
    Ok(())
}
