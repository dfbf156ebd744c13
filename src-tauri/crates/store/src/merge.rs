//! Taking in what other devices wrote: a union that comes out the same in any order.

use crate::derive::Touched;
use crate::project::Before;
use crate::{Bundle, Error, Register, log, members, people, project, rebuild};
use hosewright_core::record::{Body, DeviceId, Entry, Event, Hash, Membership, Track};
use rusqlite::{Connection, TransactionBehavior, params};
use std::collections::{BTreeMap, btree_map};

/// What a merge did.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Merged {
    /// Events that were new and are in the log now.
    pub added: u64,
    /// Events the log had.
    pub had: u64,
    /// Events that wait for earlier ones of their device.
    pub held: u64,
    /// Series that do not fit what the log has.
    pub refused: Vec<Refused>,
}

/// Events that were refused: those of one device from one number on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Refused {
    /// Whose.
    pub device: DeviceId,
    /// From which number on.
    pub from: u64,
    /// Why.
    pub why: Refusal,
}

/// Why events are refused.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Refusal {
    /// The log has another event under that number: two programs wrote as the same device, as
    /// happens when a register's file is copied. One of them has to go on as a new device: back it
    /// up and restore the backup.
    Fork,
    /// It does not continue the event before it: something was changed or left out on the way. Get
    /// the bundle anew from the device that wrote it.
    BrokenChain,
}

impl Refusal {
    /// Its code, by which words say it.
    pub fn code(self) -> &'static str {
        match self {
            Self::Fork => "fork",
            Self::BrokenChain => "broken-chain",
        }
    }
}

impl Register {
    /// Takes in the events and names of a bundle, all that fit or, on an error, none. Merging twice,
    /// or in another order, gives the same register. Events that arrive before the ones they
    /// continue are held until those come.
    ///
    /// # Errors
    /// The register is in use, full or can not be written. Events that do not fit are no error: they
    /// are named in the answer.
    pub fn merge(&mut self, bundle: &Bundle) -> Result<Merged, Error> {
        let mut events: Vec<&Event> = bundle.events.iter().collect();
        events.sort_by_key(|event| event.at());
        let tx = self.db.transaction_with_behavior(TransactionBehavior::Immediate)?;
        let mut members = members::read(&tx)?;
        let mut merge = Merge {
            db: &tx,
            members: &members,
            tracks: BTreeMap::new(),
            entries: 0,
            touched: Touched::default(),
            of_members: false,
            merged: Merged::default(),
        };
        for series in events.chunk_by(|one, next| one.device == next.device) {
            merge.series(series)?;
        }
        merge.project()?;
        let Merge { touched, of_members, mut merged, .. } = merge;
        if of_members && members::changed(&tx, &mut members)? {
            rebuild::tables(&tx, &members)?;
        } else {
            touched.settle(&tx)?;
        }
        for person in &bundle.people {
            people::merge(&tx, person)?;
        }
        merged.held =
            tx.query_row("SELECT count(*) FROM held", [], |row| crate::rows::unsigned(row, "count(*)"))?;
        tx.commit()?;
        Ok(merged)
    }
}

/// So many entries of new tracks are held; then their tracks are projected.
const AT_ONCE: usize = 20_000;

/// A track that changed.
struct Changed {
    track: Track,
    /// Its entries, where the log had none of it before and nothing that came later strikes one of them out.
    new: Option<Vec<Entry>>,
}

struct Merge<'a> {
    db: &'a Connection,
    members: &'a Membership,
    /// The tracks that are to be projected, by their keys.
    tracks: BTreeMap<String, Changed>,
    /// How many entries of them are held.
    entries: usize,
    touched: Touched,
    /// Whether something was said that may change who belongs to the fleet.
    of_members: bool,
    merged: Merged,
}

impl Merge<'_> {
    /// Events of one device, by number.
    fn series(&mut self, series: &[&Event]) -> Result<(), Error> {
        let Some(device) = series.first().map(|event| event.device) else { return Ok(()) };
        let mut end = log::end(self.db, device)?;
        for event in series {
            let hash = event.hash()?;
            if event.number > end.number + 1 {
                self.hold(event, hash)?;
                continue;
            }
            let refusal = if event.number <= end.number {
                match log::hash_of(self.db, event.at())? {
                    Some(had) if had == hash => {
                        self.merged.had += 1;
                        continue;
                    }
                    _ => Refusal::Fork,
                }
            } else if event.previous == end.hash {
                end = self.take(event, hash)?;
                continue;
            } else {
                Refusal::BrokenChain
            };
            self.merged.refused.push(Refused { device, from: event.number, why: refusal });
            break;
        }
        self.release(device, end)
    }

    /// An event that continues its series goes into the log.
    fn take(&mut self, event: &Event, hash: Hash) -> Result<log::End, Error> {
        let body = event.body.read();
        self.of_members |= members::touches(self.members, &body);
        log::write(self.db, event, hash)?;
        match body.track(event.device) {
            Some(track) => self.changed(track, event, body)?,
            None => {
                log::index(self.db, event, &body)?;
                for track in log::touched(self.db, event, &body)? {
                    self.tracks.insert(track.to_string(), Changed { track, new: None });
                }
            }
        }
        self.merged.added += 1;
        if self.entries >= AT_ONCE {
            self.project()?;
        }
        Ok(log::End { number: event.number, hash })
    }

    /// An event of a track. The entries of one that is new are held; those of others are read from the log.
    fn changed(&mut self, track: Track, event: &Event, body: Body) -> Result<(), Error> {
        let changed = match self.tracks.entry(track.to_string()) {
            btree_map::Entry::Occupied(known) => known.into_mut(),
            btree_map::Entry::Vacant(unknown) => {
                let new = if log::has(self.db, unknown.key())? { None } else { Some(Vec::new()) };
                unknown.insert(Changed { track, new })
            }
        };
        log::index(self.db, event, &body)?;
        if let Some(entries) = &mut changed.new {
            let (at, needs) = (event.at(), body.needs());
            if self.members.judge(at, needs).is_ok() {
                let struck_out = log::struck_out(self.db, self.members, at, needs)?;
                let (time, builds_on) = (event.time, event.builds_on.clone());
                entries.push(Entry { at, time, builds_on, body, struck_out });
                self.entries += 1;
            }
        }
        Ok(())
    }

    /// Projects the tracks that changed.
    fn project(&mut self) -> Result<(), Error> {
        self.entries = 0;
        // In the order of their keys, which is that of the tables.
        for (key, Changed { track, new }) in std::mem::take(&mut self.tracks) {
            let (entries, before) = match new {
                Some(entries) => (entries, Before::Nothing),
                None => (log::entries(self.db, self.members, &key)?, Before::Rows),
            };
            self.touched.note(&track, &entries, None);
            project::entries(self.db, &track, entries, before)?;
        }
        Ok(())
    }

    /// An event that comes too early waits.
    fn hold(&mut self, event: &Event, hash: Hash) -> Result<(), Error> {
        self.db
            .prepare_cached(
                "INSERT OR IGNORE INTO held (device, number, hash, line) VALUES (?1, ?2, ?3, ?4)",
            )?
            .execute(params![
                event.device.to_string(),
                event.number as i64,
                hash.to_string(),
                event.line()?
            ])?;
        Ok(())
    }

    /// Events that waited and can follow now do; what waited and can never follow is let go.
    fn release(&mut self, device: DeviceId, mut end: log::End) -> Result<(), Error> {
        loop {
            let waiting = self.waiting(device, end.number + 1)?;
            if waiting.is_empty() {
                break;
            }
            let Some(event) = waiting.iter().find(|event| event.previous == end.hash) else {
                let from = end.number + 1;
                self.merged.refused.push(Refused { device, from, why: Refusal::BrokenChain });
                self.db
                    .prepare_cached("DELETE FROM held WHERE device = ?1")?
                    .execute([device.to_string()])?;
                break;
            };
            end = self.take(event, event.hash()?)?;
        }
        self.db
            .prepare_cached("DELETE FROM held WHERE device = ?1 AND number <= ?2")?
            .execute(params![device.to_string(), end.number as i64])?;
        Ok(())
    }

    fn waiting(&self, device: DeviceId, number: u64) -> Result<Vec<Event>, Error> {
        let mut statement = self
            .db
            .prepare_cached("SELECT line FROM held WHERE device = ?1 AND number = ?2 ORDER BY hash")?;
        let lines = statement
            .query_map(params![device.to_string(), number as i64], |row| row.get::<_, String>("line"))?;
        lines.map(|line| Ok(Event::from_line(&line?)?)).collect()
    }
}
