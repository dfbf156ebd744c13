//! What is on the vans and shelves.

use crate::{Error, Register, rows};
use hosewright_core::record::StockUnit;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// How much of an item a van or shelf has.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Stock {
    /// The van or shelf.
    pub store: String,
    /// What.
    pub item: String,
    /// Counted in.
    pub unit: StockUnit,
    /// How much; below zero when more went than was ever entered.
    #[ts(type = "number")]
    pub quantity: i64,
}

impl Register {
    /// What is on the vans and shelves, by store and item.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn stock(&self) -> Result<Vec<Stock>, Error> {
        let mut statement = self.db.prepare_cached(
            "SELECT store, item, json_quote(unit) AS unit, quantity FROM stock ORDER BY store, item, unit",
        )?;
        let stock = statement.query_map([], |row| {
            Ok(Stock {
                store: row.get("store")?,
                item: row.get("item")?,
                unit: rows::json(row, "unit")?,
                quantity: row.get("quantity")?,
            })
        })?;
        Ok(stock.collect::<Result<_, _>>()?)
    }
}
