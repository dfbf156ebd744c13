//! Events as a person reads them.

use crate::{Error, log, members, rows};
use chrono::{DateTime, Utc};
use hosewright_core::record::{Body, EventRef, MemberRole, Membership};
use rusqlite::{Connection, Row};
use schemars::JsonSchema;
use serde::Serialize;
use std::collections::{BTreeMap, BTreeSet};
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
    let mut events: Vec<Written> = events.collect::<Result<_, _>>()?;
    let members = members::read(db)?;
    if members.founder().is_some() {
        only_what_counts(&members, &mut events);
    }
    Ok(events)
}

/// Of a fleet that has a founder: what its members wrote, and struck out.
fn only_what_counts(members: &Membership, events: &mut Vec<Written>) {
    let needs: BTreeMap<EventRef, Option<MemberRole>> =
        events.iter().map(|written| (written.event, written.body.needs())).collect();
    let needs_of = |written: &Written| {
        let struck = written.builds_on.iter().filter_map(|at| needs.get(at).copied()).max().flatten();
        let strikes = matches!(written.body, Body::Voided(_));
        if strikes { written.body.needs().max(struck) } else { written.body.needs() }
    };
    events.retain(|written| members.judge(written.event, needs_of(written)).is_ok());
    let struck: BTreeSet<EventRef> = events
        .iter()
        .filter(|written| matches!(written.body, Body::Voided(_)))
        .flat_map(|written| written.builds_on.iter().copied())
        .collect();
    for written in events {
        written.void &= struck.contains(&written.event);
    }
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
