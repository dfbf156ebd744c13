//! Tags taken out of use.

use crate::Error;
use hosewright_core::record::{Body, Entry};
use hosewright_core::tag::TagCode;
use rusqlite::{Connection, params};

pub(super) fn project(db: &Connection, code: &TagCode, current: Option<&Entry>) -> Result<(), Error> {
    let Some(Entry { at, body: Body::TagWithdrawn(withdrawn), .. }) = current else { return Ok(()) };
    db.prepare_cached("INSERT INTO withdrawal (code, reason, version) VALUES (?1, ?2, ?3)")?
        .execute(params![code.to_string(), withdrawn.reason, at.to_string()])?;
    Ok(())
}
