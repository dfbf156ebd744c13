//! Remarks.

use crate::Error;
use hosewright_core::record::{About, Arranged, Body};
use rusqlite::{Connection, params};

pub(super) fn project(db: &Connection, about: &About, notes: &Arranged) -> Result<(), Error> {
    let mut insert = db.prepare_cached("INSERT INTO note (version, about, text) VALUES (?1, ?2, ?3)")?;
    for node in &notes.nodes {
        let Body::Noted(note) = &node.current.body else { continue };
        insert.execute(params![node.current.at.to_string(), about.to_string(), note.text])?;
    }
    Ok(())
}
