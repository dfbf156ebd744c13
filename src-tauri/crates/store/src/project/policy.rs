//! The owner's limits of age.

use crate::Error;
use hosewright_core::record::{Body, Entry, Scope};
use rusqlite::{Connection, params};

pub(super) fn project(db: &Connection, scope: &Scope, current: Option<&Entry>) -> Result<(), Error> {
    db.prepare_cached("DELETE FROM policy WHERE scope = ?1")?.execute([scope.to_string()])?;
    let Some(Entry { at, body: Body::PolicySet(policy), .. }) = current else { return Ok(()) };
    db.prepare_cached(
        "INSERT INTO policy (scope, service_years, storage_years, inspection_years, stop, version)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
    )?
    .execute(params![
        scope.to_string(),
        policy.service_years,
        policy.storage_years,
        policy.inspection_years,
        policy.stop,
        at.to_string(),
    ])?;
    Ok(())
}
