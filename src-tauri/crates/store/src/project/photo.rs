//! Photos, by their hash.

use crate::Error;
use hosewright_core::record::{About, Arranged, Body};
use rusqlite::{Connection, params};

pub(super) fn project(db: &Connection, about: &About, photos: &Arranged) -> Result<(), Error> {
    let mut insert = db.prepare_cached(
        "INSERT INTO photo (version, about, sha256, mime, length) VALUES (?1, ?2, ?3, ?4, ?5)",
    )?;
    for node in &photos.nodes {
        let Body::PhotoAdded(photo) = &node.current.body else { continue };
        insert.execute(params![
            node.current.at.to_string(),
            about.to_string(),
            photo.sha256.to_string(),
            photo.mime,
            i64::try_from(photo.length).unwrap_or(i64::MAX),
        ])?;
    }
    Ok(())
}
