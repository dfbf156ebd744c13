//! The owner's limits of age.

use crate::Error;
use hosewright_core::record::{Body, Entry, PolicyKey};
use rusqlite::{Connection, params};

pub(super) fn project(db: &Connection, key: &PolicyKey, current: Option<&Entry>) -> Result<(), Error> {
    let Some(Entry { at, body: Body::PolicySet(policy), .. }) = current else { return Ok(()) };
    db.prepare_cached("INSERT INTO policy (key, scope, content, version) VALUES (?1, ?2, ?3, ?4)")?.execute(
        params![key.to_string(), key.scope.to_string(), serde_json::to_string(policy)?, at.to_string()],
    )?;
    Ok(())
}
