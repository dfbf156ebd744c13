//! The log's table: events in, events out, and the index of which event belongs where.

use crate::Error;
use crate::rows::{json, parsed, unsigned};
use hosewright_core::record::{
    Body, DeviceId, Entry, Event, EventRef, Hash, Hlc, MemberRole, Membership, Track,
};
use rusqlite::{Connection, OptionalExtension, Row, params};
use std::ops::RangeInclusive;

/// The columns of an event, for [`event`].
const COLUMNS: &str = "device, number, previous, builds_on, schema, ms, count, body";

/// The end of a device's series: number and hash of its last event.
#[derive(Debug, Clone, Copy)]
pub(crate) struct End {
    pub number: u64,
    pub hash: Hash,
}

/// Where that device's series ends.
pub(crate) fn end(db: &Connection, device: DeviceId) -> Result<End, Error> {
    let mut statement =
        db.prepare_cached("SELECT number, hash FROM event WHERE device = ?1 ORDER BY number DESC LIMIT 1")?;
    let end = statement
        .query_row([device.to_string()], |row| {
            Ok(End { number: unsigned(row, "number")?, hash: parsed(row, "hash")? })
        })
        .optional()?;
    Ok(end.unwrap_or(End { number: 0, hash: Hash::NONE }))
}

/// The latest time in the log.
pub(crate) fn latest_time(db: &Connection) -> Result<Hlc, Error> {
    let mut statement =
        db.prepare_cached("SELECT ms, count FROM event ORDER BY ms DESC, count DESC LIMIT 1")?;
    Ok(statement.query_row([], time).optional()?.unwrap_or_default())
}

/// Hash of an event, if the log has it.
pub(crate) fn hash_of(db: &Connection, at: EventRef) -> Result<Option<Hash>, Error> {
    let mut statement = db.prepare_cached("SELECT hash FROM event WHERE device = ?1 AND number = ?2")?;
    Ok(statement
        .query_row(params![at.device.to_string(), at.number as i64], |row| parsed(row, "hash"))
        .optional()?)
}

/// Writes an event that continues its series, and indexes it. Gives what it says.
pub(crate) fn insert(db: &Connection, event: &Event, hash: Hash) -> Result<Body, Error> {
    let body = event.body.read();
    write(db, event, hash)?;
    index(db, event, &body)?;
    Ok(body)
}

/// Writes an event that continues its series.
pub(crate) fn write(db: &Connection, event: &Event, hash: Hash) -> Result<(), Error> {
    db.prepare_cached(
        "INSERT OR FAIL INTO event (device, number, hash, previous, builds_on, schema, ms, count, kind, body)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10)",
    )?
    .execute(params![
        event.device.to_string(),
        event.number as i64,
        hash.to_string(),
        event.previous.to_string(),
        serde_json::to_string(&event.builds_on)?,
        event.schema,
        event.time.ms,
        event.time.count,
        event.body.kind(),
        event.body.as_str(),
    ])?;
    Ok(())
}

/// Notes to which track an event belongs and what it builds on.
pub(crate) fn index(db: &Connection, event: &Event, body: &Body) -> Result<(), Error> {
    if let Some(track) = body.track(event.device) {
        db.prepare_cached("INSERT INTO track (key, device, number) VALUES (?1, ?2, ?3)")?
            .execute(params![track.to_string(), event.device.to_string(), event.number as i64])?;
    }
    for parent in &event.builds_on {
        db.prepare_cached("INSERT OR IGNORE INTO link (parent, child, kind) VALUES (?1, ?2, ?3)")?
            .execute(params![parent.to_string(), event.at().to_string(), event.body.kind()])?;
    }
    Ok(())
}

/// The tracks whose tables change when that event is written.
pub(crate) fn touched(db: &Connection, event: &Event, body: &Body) -> Result<Vec<Track>, Error> {
    if !matches!(body, Body::Voided(_)) {
        return Ok(body.track(event.device).into_iter().collect());
    }
    let mut tracks = Vec::new();
    for parent in &event.builds_on {
        if let Some(event) = get(db, *parent)? {
            tracks.extend(event.body.read().track(event.device));
        }
    }
    Ok(tracks)
}

/// One event, if the log has it.
pub(crate) fn get(db: &Connection, at: EventRef) -> Result<Option<Event>, Error> {
    let mut statement =
        db.prepare_cached(&format!("SELECT {COLUMNS} FROM event WHERE device = ?1 AND number = ?2"))?;
    Ok(statement.query_row(params![at.device.to_string(), at.number as i64], event).optional()?)
}

/// Every event, series by series.
pub(crate) fn all(db: &Connection) -> Result<Vec<Event>, Error> {
    let mut events = Vec::new();
    each(db, |event| {
        events.push(event);
        Ok(())
    })?;
    Ok(events)
}

/// Goes through every event, series by series, and holds one at a time.
pub(crate) fn each(db: &Connection, mut work: impl FnMut(Event) -> Result<(), Error>) -> Result<(), Error> {
    let mut statement = db.prepare(&format!("SELECT {COLUMNS} FROM event ORDER BY device, number"))?;
    let mut found = statement.query([])?;
    while let Some(row) = found.next()? {
        work(event(row)?)?;
    }
    Ok(())
}

/// Goes through every track that an event was noted to belong to.
pub(crate) fn tracks(db: &Connection, mut work: impl FnMut(Track) -> Result<(), Error>) -> Result<(), Error> {
    let mut statement = db.prepare("SELECT key, min(device) AS device, number FROM track GROUP BY key")?;
    let mut found = statement.query([])?;
    while let Some(row) = found.next()? {
        let at = at(row)?;
        // Any event of a track says which track it is.
        if let Some(track) = get(db, at)?.and_then(|event| event.body.read().track(event.device)) {
            work(track)?;
        }
    }
    Ok(())
}

/// A run of one device's events, in their order.
pub(crate) fn series(
    db: &Connection,
    device: DeviceId,
    numbers: RangeInclusive<u64>,
) -> Result<Vec<Event>, Error> {
    let mut statement = db.prepare_cached(&format!(
        "SELECT {COLUMNS} FROM event WHERE device = ?1 AND number BETWEEN ?2 AND ?3 ORDER BY number"
    ))?;
    let (from, to) = (*numbers.start() as i64, *numbers.end() as i64);
    let events = statement.query_map(params![device.to_string(), from, to], event)?;
    Ok(events.collect::<Result<_, _>>()?)
}

/// The events of a track that count among these members, each with what strikes it out.
pub(crate) fn entries(db: &Connection, members: &Membership, track: &str) -> Result<Vec<Entry>, Error> {
    let mut statement = db.prepare_cached(
        "SELECT e.device, e.number, e.builds_on, e.ms, e.count, e.kind, e.body,
                EXISTS (SELECT 1 FROM link
                        WHERE parent = e.device || '/' || e.number AND kind = 'voided') AS void
         FROM track t JOIN event e ON e.device = t.device AND e.number = t.number
         WHERE t.key = ?1",
    )?;
    let entries = statement.query_map([track], |row| {
        let entry = Entry {
            at: at(row)?,
            time: time(row)?,
            builds_on: json(row, "builds_on")?,
            body: said(row)?,
            struck_out: Vec::new(),
        };
        Ok((entry, row.get::<_, bool>("void")?))
    })?;
    let mut told = Vec::new();
    for entry in entries {
        let (mut entry, void) = entry?;
        let needs = entry.body.needs();
        if members.judge(entry.at, needs).is_err() {
            continue;
        }
        if void {
            entry.struck_out = struck_out(db, members, entry.at, needs)?;
        }
        told.push(entry);
    }
    Ok(told)
}

/// Whether the log has an event of that track, be it one that counts or not.
pub(crate) fn has(db: &Connection, track: &str) -> Result<bool, Error> {
    Ok(db.prepare_cached("SELECT 1 FROM track WHERE key = ?1")?.exists([track])?)
}

/// What strikes out an event that takes such a role, of what counts among these members.
pub(crate) fn struck_out(
    db: &Connection,
    members: &Membership,
    event: EventRef,
    needs: Option<MemberRole>,
) -> Result<Vec<(EventRef, Hlc)>, Error> {
    let needs = needs.max(Some(MemberRole::Technician));
    let mut strikes = strikes(db, event)?;
    strikes.retain(|(at, _)| members.judge(*at, needs).is_ok());
    Ok(strikes)
}

/// What devices told of their keys and planners of devices, whether it counts or not.
pub(crate) fn said_of_devices(db: &Connection) -> Result<Vec<Entry>, Error> {
    let mut statement = db.prepare_cached(
        "SELECT e.device, e.number, e.ms, e.count, e.kind, e.body
         FROM track t JOIN event e ON e.device = t.device AND e.number = t.number
         WHERE t.key BETWEEN 'device-key/' AND 'device-key0' OR t.key BETWEEN 'member/' AND 'member0'",
    )?;
    let entries = statement.query_map([], |row| {
        let (at, time, body) = (at(row)?, time(row)?, said(row)?);
        Ok(Entry { at, time, builds_on: Vec::new(), body, struck_out: Vec::new() })
    })?;
    Ok(entries.collect::<Result<_, _>>()?)
}

/// The events that strike one out, with their times.
fn strikes(db: &Connection, struck: EventRef) -> Result<Vec<(EventRef, Hlc)>, Error> {
    let mut statement =
        db.prepare_cached("SELECT child FROM link WHERE parent = ?1 AND kind = 'voided' ORDER BY child")?;
    let strikes: Vec<EventRef> =
        statement.query_map([struck.to_string()], |row| parsed(row, "child"))?.collect::<Result<_, _>>()?;
    let events = strikes.into_iter().map(|at| Ok(get(db, at)?.map(|event| (at, event.time))));
    Ok(events.collect::<Result<Vec<_>, Error>>()?.into_iter().flatten().collect())
}

fn event(row: &Row<'_>) -> rusqlite::Result<Event> {
    Ok(Event {
        device: parsed(row, "device")?,
        number: unsigned(row, "number")?,
        previous: parsed(row, "previous")?,
        builds_on: json(row, "builds_on")?,
        schema: unsigned(row, "schema")?,
        time: time(row)?,
        body: parsed(row, "body")?,
    })
}

/// The event a row names by its device and number.
pub(crate) fn at(row: &Row<'_>) -> rusqlite::Result<EventRef> {
    Ok(EventRef { device: parsed(row, "device")?, number: unsigned(row, "number")? })
}

/// The time in a row.
pub(crate) fn time(row: &Row<'_>) -> rusqlite::Result<Hlc> {
    Ok(Hlc { ms: row.get("ms")?, count: unsigned(row, "count")? })
}

/// What the body in a row of that kind says, as far as this program knows.
pub(crate) fn said(row: &Row<'_>) -> rusqlite::Result<Body> {
    Ok(Body::of(row.get_ref("kind")?.as_str()?, row.get_ref("body")?.as_str()?))
}
