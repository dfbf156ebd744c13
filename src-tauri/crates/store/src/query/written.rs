//! Events as a person reads them.

use crate::{Error, log, rows};
use chrono::{DateTime, Utc};
use hosewright_core::record::{Body, EventRef};
use rusqlite::{Connection, Row};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// An entry of the log.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Written {
    /// Which event.
    pub event: EventRef,
    /// When it was written, by the writing device's logical clock.
    pub time: DateTime<Utc>,
    /// The writing device's name, where it has one.
    pub by: Option<String>,
    /// What it builds on.
    pub builds_on: Vec<EventRef>,
    /// Struck out.
    pub void: bool,
    /// What it says.
    pub body: Body,
}

/// The events of these tracks, with what strikes them out, in order of time.
pub(super) fn of_tracks(db: &Connection, tracks: &[String]) -> Result<Vec<Written>, Error> {
    let mut statement = db.prepare_cached(include_str!("written.sql"))?;
    let events = statement.query_map([serde_json::to_string(tracks)?], written)?;
    Ok(events.collect::<Result<_, _>>()?)
}

fn written(row: &Row<'_>) -> rusqlite::Result<Written> {
    Ok(Written {
        event: log::at(row)?,
        time: DateTime::from_timestamp_millis(log::time(row)?.ms).unwrap_or_default(),
        by: row.get("name")?,
        builds_on: rows::json(row, "builds_on")?,
        void: row.get("void")?,
        body: log::said(row)?,
    })
}
