//! Limits of prudence that a person took on.

use crate::Error;
use hosewright_core::record::{Arranged, Body};
use hosewright_core::tag::TagCode;
use rusqlite::{Connection, params};

pub(super) fn project(db: &Connection, code: &TagCode, overrides: &Arranged) -> Result<(), Error> {
    let mut insert = db.prepare_cached(
        "INSERT INTO override (version, code, rule, reason, person) VALUES (?1, ?2, ?3, ?4, ?5)",
    )?;
    for node in &overrides.nodes {
        let Body::Overridden(over) = &node.current.body else { continue };
        insert.execute(params![
            node.current.at.to_string(),
            code.to_string(),
            over.rule,
            over.reason,
            over.by.to_string()
        ])?;
    }
    Ok(())
}
