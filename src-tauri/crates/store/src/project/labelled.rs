//! Labels of hoses: printed here, or found on them.

use crate::Error;
use hosewright_core::record::{Arranged, Body};
use hosewright_core::tag::TagCode;
use rusqlite::{Connection, params};

pub(super) fn project(db: &Connection, code: &TagCode, labels: &Arranged) -> Result<(), Error> {
    let mut insert = db.prepare_cached("INSERT INTO labelled (version, code, how) VALUES (?1, ?2, ?3)")?;
    for node in &labels.nodes {
        let Body::Labelled(labelled) = &node.current.body else { continue };
        insert.execute(params![node.current.at.to_string(), code.to_string(), labelled.how.name()])?;
    }
    Ok(())
}
