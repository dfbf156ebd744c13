//! Writing: events of this device, their tables changed in the same transaction.

use crate::derive::Touched;
use crate::project::Before;
use crate::{Error, Register, guard, keys, log, members, project, rebuild};
use chrono::{DateTime, Utc};
use hosewright_core::record::{
    Body, BodyText, DeviceId, Entry, Event, EventRef, Hash, Hlc, Membership, SCHEMA, StockWhy, Track,
};
use rusqlite::{Connection, OptionalExtension, TransactionBehavior};
use std::path::Path;

/// What is to be written.
#[derive(Debug, Clone, PartialEq)]
pub struct NewEvent {
    /// What happened.
    pub body: Body,
    /// The events it builds on. None lets the register choose what it shows at present: a change of
    /// a record builds on the version that stands, a hose that is taken off on its being fitted. Give
    /// them where the person saw an older version, to correct a fact, to settle a conflict by
    /// building on both sides, and to void.
    pub builds_on: Option<Vec<EventRef>>,
}

impl NewEvent {
    /// A body that builds on just these events.
    pub fn on(body: Body, builds_on: impl Into<Vec<EventRef>>) -> Self {
        Self { body, builds_on: Some(builds_on.into()) }
    }
}

impl From<Body> for NewEvent {
    fn from(body: Body) -> Self {
        Self { body, builds_on: None }
    }
}

impl Register {
    /// Writes these events, all or none. When it returns they are on the disk.
    ///
    /// # Errors
    /// A body can not be kept or contradicts what the register has (a taken code, a hose that sits
    /// elsewhere); the register is in use, full or can not be written. Nothing is written then.
    pub fn append<E: Into<NewEvent>>(
        &mut self,
        events: impl IntoIterator<Item = E>,
        now: DateTime<Utc>,
    ) -> Result<Vec<EventRef>, Error> {
        self.append_while(events, now, |_| true)
    }

    /// [`append`](Self::append) of many, told how many stand after each; it is given up where `goes_on` says no.
    ///
    /// # Errors
    /// As `append`; [`Error::Stopped`] where it was given up. Nothing is written then.
    pub fn append_while<E: Into<NewEvent>>(
        &mut self,
        events: impl IntoIterator<Item = E>,
        now: DateTime<Utc>,
        mut goes_on: impl FnMut(usize) -> bool,
    ) -> Result<Vec<EventRef>, Error> {
        let (keys, device) = (self.keys_path(), self.device);
        let tx = self.db.transaction_with_behavior(TransactionBehavior::Immediate)?;
        let written = write(&tx, Writer { device, keys: &keys, now }, events, &mut goes_on)?;
        tx.commit()?;
        Ok(written)
    }
}

/// Who writes, and when.
pub(crate) struct Writer<'a> {
    pub device: DeviceId,
    /// The file of its keys.
    pub keys: &'a Path,
    pub now: DateTime<Utc>,
}

/// Writes events, and changes their tables.
pub(crate) fn write<E: Into<NewEvent>>(
    tx: &Connection,
    writer: Writer<'_>,
    events: impl IntoIterator<Item = E>,
    mut goes_on: impl FnMut(usize) -> bool,
) -> Result<Vec<EventRef>, Error> {
    let Writer { device, keys, now } = writer;
    let mut end = log::end(tx, device)?;
    let mut time = log::latest_time(tx)?;
    let mut members = members::read(tx)?;
    let mut stale = false;
    let mut touched = Touched::default();
    let mut written = Vec::new();
    for new in events {
        let NewEvent { body, builds_on } = new.into();
        let at = EventRef { device, number: end.number + 1 };
        guard::may(tx, &members, &body, builds_on.as_deref(), at)?;
        guard::check(tx, &body, builds_on.as_deref(), device)?;
        let builds_on = match builds_on {
            Some(given) => given,
            None => stands(tx, &body, device)?,
        };
        let body = signed(counted(tx, &members, body, device)?, at, keys)?;
        time = Hlc::after(time, now);
        let event = Event {
            device,
            number: at.number,
            previous: end.hash,
            builds_on,
            schema: SCHEMA,
            time,
            body: BodyText::of(&body)?,
        };
        let hash = event.hash()?;
        let may_change_members = members::touches(&members, &body);
        take(tx, &members, &event, hash, body, &mut touched)?;
        stale |= may_change_members && members::changed(tx, &mut members)?;
        end = log::End { number: event.number, hash };
        written.push(at);
        if !goes_on(written.len()) {
            return Err(Error::Stopped);
        }
    }
    if stale {
        rebuild::tables(tx, &members)?;
    } else {
        touched.settle(tx)?;
    }
    Ok(written)
}

/// An event goes into the log, and what it says into the tables.
fn take(
    db: &Connection,
    members: &Membership,
    event: &Event,
    hash: Hash,
    body: Body,
    touched: &mut Touched,
) -> Result<(), Error> {
    let Some(track) = body.track(event.device) else {
        // It strikes out others, or says nothing that this program knows.
        log::insert(db, event, hash)?;
        for track in log::touched(db, event, &body)? {
            let entries = log::entries(db, members, &track.to_string())?;
            touched.note(&track, &entries, None);
            project::entries(db, &track, entries, Before::Rows)?;
        }
        return Ok(());
    };
    let mut entries = log::entries(db, members, &track.to_string())?;
    // What counts no more since this transaction began still has its rows.
    let is_new = entries.is_empty() && !log::has(db, &track.to_string())?;
    let before = if is_new { Before::Nothing } else { Before::Rows };
    log::write(db, event, hash)?;
    log::index(db, event, &body)?;
    let builds_on = event.builds_on.clone();
    // It counts: what does not was refused before.
    entries.push(Entry { at: event.at(), time: event.time, builds_on, body, struck_out: Vec::new() });
    // The clock is ahead of all that the log has.
    touched.note(&track, &entries, Some(event.time));
    project::entries(db, &track, entries, before)
}

/// A word on membership is signed for the place where it is written.
fn signed(body: Body, at: EventRef, keys: &Path) -> Result<Body, Error> {
    if body.member().is_none() {
        return Ok(body);
    }
    let key = keys::read(keys)?.device.ok_or(Error::NoKey)?;
    Ok(body.signed_for(at, &key))
}

/// A count says what this device had heard of the thing when it was written.
fn counted(db: &Connection, members: &Membership, mut body: Body, device: DeviceId) -> Result<Body, Error> {
    let track = body.track(device);
    let seen = match &mut body {
        Body::StockChanged(change) if change.why == Some(StockWhy::Counted) => &mut change.seen,
        Body::PieceChanged(change) if change.why == StockWhy::Counted => &mut change.seen,
        _ => return Ok(body),
    };
    let mut devices: Vec<DeviceId> = Vec::new();
    for entry in track.map_or(Ok(Vec::new()), |track| log::entries(db, members, &track.to_string()))? {
        devices.push(entry.at.device);
        devices.extend(entry.struck_out.iter().map(|(at, _)| at.device));
    }
    devices.sort_unstable();
    devices.dedup();
    let last = |device: DeviceId| Ok(EventRef { device, number: log::end(db, device)?.number });
    *seen = Some(devices.into_iter().map(last).collect::<Result<_, Error>>()?);
    Ok(body)
}

/// The events that a new one of that body builds on when nobody says: what the tables show. What is said anew of a piece,
/// bin or price settles whatever two devices said of it at once: whoever says it is told of that.
fn stands(db: &Connection, body: &Body, device: DeviceId) -> Result<Vec<EventRef>, Error> {
    let Some(track) = body.track(device) else { return Ok(Vec::new()) };
    if matches!(track, Track::StockPlace { .. } | Track::Price(_) | Track::Piece(_)) {
        let mut both = db.prepare_cached("SELECT event FROM conflict WHERE track = ?1 ORDER BY event")?;
        let both: Vec<EventRef> = both
            .query_map([track.to_string()], |row| crate::rows::parsed(row, "event"))?
            .collect::<Result<_, _>>()?;
        if !both.is_empty() {
            return Ok(both);
        }
    }
    let (sql, key) = match (&track, body) {
        (Track::Device(id), _) => ("SELECT version FROM device WHERE device = ?1", id.to_string()),
        (Track::DeviceKey(id), _) => ("SELECT version FROM device_key WHERE device = ?1", id.to_string()),
        (Track::Site(id), _) => ("SELECT version FROM site WHERE site = ?1", id.to_string()),
        (Track::Machine(id), _) => ("SELECT version FROM machine WHERE machine = ?1", id.to_string()),
        (Track::Circuit(id), _) => ("SELECT version FROM circuit WHERE circuit = ?1", id.to_string()),
        (Track::Place(id), _) => ("SELECT version FROM place WHERE place = ?1", id.to_string()),
        (Track::Withdrawal(code), _) => ("SELECT version FROM withdrawal WHERE code = ?1", code.to_string()),
        (Track::Policy(key), _) => ("SELECT version FROM policy WHERE key = ?1", key.to_string()),
        (Track::StockPlace { store, item }, _) => (
            "SELECT version FROM stock_place WHERE json_array(store, item) = ?1",
            serde_json::to_string(&[store, &item.key()])?,
        ),
        (Track::Price(item), _) => ("SELECT version FROM price WHERE item = ?1", item.key()),
        (Track::Piece(id), _) => ("SELECT version FROM piece WHERE piece = ?1", id.to_string()),
        (Track::Whereabouts(code), Body::TakenOff(_)) => (
            "SELECT on_version AS version FROM stint WHERE code = ?1 AND off_version IS NULL",
            code.to_string(),
        ),
        (Track::Whereabouts(code), _) => (
            "SELECT off_version AS version FROM stint WHERE code = ?1 ORDER BY position DESC LIMIT 1",
            code.to_string(),
        ),
        // A hose is made once; facts stand beside each other. Both are corrected only by name.
        (
            Track::Made(_)
            | Track::Member(_)
            | Track::Hours(_)
            | Track::Inspections(_)
            | Track::Surveys(_)
            | Track::Overrides(_)
            | Track::Labels(_)
            | Track::Stock { .. }
            | Track::PieceLength(_)
            | Track::Photos(_)
            | Track::Notes(_),
            _,
        ) => return Ok(Vec::new()),
    };
    let mut statement = db.prepare_cached(sql)?;
    let version: Option<Option<EventRef>> =
        statement.query_row([key], |row| crate::rows::optional(row, "version")).optional()?;
    Ok(version.flatten().into_iter().collect())
}

#[cfg(test)]
mod tests {
    use super::*;
    use hosewright_core::record::{Site, SiteId};

    fn begin() -> (Register, tempfile::TempDir) {
        let folder = tempfile::tempdir().expect("a folder");
        let path = folder.path().join("register.db");
        (Register::open(path, DeviceId::from_bytes([1; 16])).expect("opens"), folder)
    }

    fn site(n: u8, name: &str) -> Body {
        Body::SiteNamed(Site { site: SiteId::from_bytes([n; 16]), name: name.into() })
    }

    #[test]
    fn what_is_committed_is_synced_to_the_disk() {
        let (register, _folder) = begin();
        let setting = |name| {
            register
                .db
                .pragma_query_value(None, name, |row| row.get::<_, rusqlite::types::Value>(0))
                .expect("reads")
        };
        assert_eq!(setting("journal_mode"), "wal".to_owned().into());
        // 2 is FULL: the write-ahead log is synced at every commit (SQLite, "PRAGMA synchronous").
        assert_eq!(setting("synchronous"), 2.into());
        assert_eq!(setting("foreign_keys"), 1.into());
    }

    #[test]
    fn what_is_given_up_half_way_leaves_nothing_half_written() {
        let (mut register, _folder) = begin();
        register.append([site(1, "North")], DateTime::UNIX_EPOCH).expect("is written");
        let before = register.dump().expect("reads");
        let sites = (1..=100).map(|n| site(n, "South"));
        let error = register.append_while(sites, DateTime::UNIX_EPOCH, |written| written < 50);
        assert!(matches!(error, Err(Error::Stopped)), "{error:?}");
        assert_eq!(register.dump().expect("reads"), before);
    }

    #[test]
    fn a_full_disk_says_so_and_leaves_nothing_half_written() {
        let (mut register, _folder) = begin();
        register.append([site(1, "North")], DateTime::UNIX_EPOCH).expect("is written");
        let before = register.dump().expect("reads");
        let pages: i64 = register.db.pragma_query_value(None, "page_count", |row| row.get(0)).expect("reads");
        register.db.pragma_update(None, "max_page_count", pages + 4).expect("is set");
        let sites = (1..=100).map(|n| site(n, &"x".repeat(3000)));
        let error = register.append(sites, DateTime::UNIX_EPOCH).expect_err("was written");
        assert!(matches!(error, Error::DiskFull), "{error}");
        assert_eq!(register.dump().expect("reads"), before);
    }
}
