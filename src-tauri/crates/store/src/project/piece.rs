//! Pieces of hose and the sums of what was cut from them.

use super::stock::kept;
use crate::Error;
use hosewright_core::record::{Arranged, Body, Entry, PieceId, StockUnit};
use rusqlite::{Connection, params};

pub(super) fn project(db: &Connection, id: PieceId, current: Option<&Entry>) -> Result<(), Error> {
    let Some(Entry { at, body: Body::PieceSet(piece), .. }) = current else { return Ok(()) };
    db.prepare_cached("INSERT INTO piece (piece, content, version) VALUES (?1, ?2, ?3)")?
        .execute(params![id.to_string(), serde_json::to_string(piece)?, at.to_string()])?;
    Ok(())
}

pub(super) fn project_length(db: &Connection, id: PieceId, changes: &Arranged) -> Result<(), Error> {
    let mut used = db.prepare_cached(
        "INSERT INTO stock_used (version, code, piece, unit, quantity, why) VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
    )?;
    let mut sum = None;
    for Entry { at, body, .. } in changes.nodes.iter().map(|node| &node.current) {
        let Body::PieceChanged(change) = body else { continue };
        sum = Some(sum.unwrap_or(0) + i128::from(change.tenths_mm));
        if let Some(code) = change.hose {
            let quantity = change.tenths_mm.saturating_neg();
            let unit = StockUnit::Millimetres.name();
            let (at, code, why) = (at.to_string(), code.to_string(), change.why.name());
            used.execute(params![at, code, id.to_string(), unit, quantity, why])?;
        }
    }
    if let Some(sum) = sum {
        db.prepare_cached("INSERT INTO piece_length (piece, tenths) VALUES (?1, ?2)")?
            .execute(params![id.to_string(), kept(sum)])?;
    }
    Ok(())
}
