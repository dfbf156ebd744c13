//! Stock: the sum of what came and went.

use crate::Error;
use hosewright_core::record::{Arranged, Body, StockUnit};
use rusqlite::{Connection, params};

pub(super) fn project(
    db: &Connection,
    (store, item, unit): (&str, &str, StockUnit),
    changes: &Arranged,
) -> Result<(), Error> {
    db.prepare_cached("DELETE FROM stock WHERE store = ?1 AND item = ?2 AND unit = ?3")?.execute(params![
        store,
        item,
        unit.name()
    ])?;
    let differences = changes.nodes.iter().filter_map(|node| match &node.current.body {
        Body::StockChanged(change) => Some(i128::from(change.difference)),
        _ => None,
    });
    let mut differences = differences.peekable();
    if differences.peek().is_none() {
        return Ok(());
    }
    let sum: i128 = differences.sum();
    let quantity = sum.clamp(i128::from(i64::MIN), i128::from(i64::MAX)) as i64;
    db.prepare_cached("INSERT INTO stock (store, item, unit, quantity) VALUES (?1, ?2, ?3, ?4)")?
        .execute(params![store, item, unit.name(), quantity])?;
    Ok(())
}
