//! Sites.

use crate::Error;
use hosewright_core::record::{Body, Entry, SiteId};
use rusqlite::{Connection, params};

pub(super) fn project(db: &Connection, id: SiteId, current: Option<&Entry>) -> Result<(), Error> {
    let Some(Entry { at, body: Body::SiteNamed(site), .. }) = current else { return Ok(()) };
    db.prepare_cached("INSERT INTO site (site, name, folded, version) VALUES (?1, ?2, ?3, ?4)")?
        .execute(params![id.to_string(), site.name, site.name.to_lowercase(), at.to_string()])?;
    Ok(())
}
