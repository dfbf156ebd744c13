//! What is searched: words of hoses, places, machines and sites, in the order of what was recorded of them last.

use super::hose::Projected;
use crate::project::Before;
use crate::{Error, log};
use hosewright_core::record::{Hlc, MachineId, PlaceId, SiteId, Track};
use hosewright_core::tag::TagCode;
use rusqlite::{Connection, OptionalExtension, params};

/// The first number of each kind; hoses come first because numbers are read from the top.
pub(crate) const HOSES: i64 = 3 << KIND_BITS;
/// Places.
pub(crate) const PLACES: i64 = 2 << KIND_BITS;
/// Machines.
pub(crate) const MACHINES: i64 = 1 << KIND_BITS;
/// Sites.
pub(crate) const SITES: i64 = 0;

/// Below the kind: 42 bits for the milliseconds, which last until 2109, and 19 for the count within one.
const KIND_BITS: u32 = 61;
const COUNT_BITS: u32 = 19;
const LAST_MS: i64 = (1 << (KIND_BITS - COUNT_BITS)) - 1;
const LAST_COUNT: i64 = (1 << COUNT_BITS) - 1;

/// How many things are put at once: as many as are held in the memory.
const AT_ONCE: usize = 10_000;

/// Things whose words are put anew where they are searched, in the order of their numbers: what is searched grows at its
/// end fast, and in any other order slowly.
pub(super) struct Words<'a> {
    db: &'a Connection,
    things: Vec<Thing>,
}

/// A thing with its words; none where it is no more.
struct Thing {
    kind: &'static str,
    key: String,
    had: Option<i64>,
    now: Option<(i64, String)>,
}

impl<'a> Words<'a> {
    pub fn new(db: &'a Connection) -> Self {
        Self { db, things: Vec::new() }
    }

    /// A hose. Where the time of what was recorded of it last is known it need not be looked for.
    pub fn hose(&mut self, code: TagCode, hose: Projected, last: Option<Hlc>) -> Result<(), Error> {
        let key = code.to_string();
        let had = match hose.before {
            Before::Nothing => None,
            Before::Rows => self.had("hose", &key)?,
        };
        let tracks =
            [Track::Made(code), Track::Whereabouts(code), Track::Inspections(code), Track::Labels(code)];
        let last = last.map_or_else(|| last_of(self.db, &tracks), Ok)?;
        self.add(("hose", HOSES), key, had, hose.words, last)
    }

    pub fn place(&mut self, place: PlaceId) -> Result<(), Error> {
        let text = "SELECT p.folded || ' ' || coalesce(m.folded, '') || ' ' || coalesce(t.folded, '')
                    FROM place p LEFT JOIN machine m ON m.machine = p.machine LEFT JOIN site t ON t.site = m.site
                    WHERE p.place = ?1";
        self.thing(("place", PLACES), place.to_string(), text, Track::Place(place))
    }

    pub fn machine(&mut self, machine: MachineId) -> Result<(), Error> {
        let text = "SELECT m.folded || ' ' || coalesce(t.folded, '')
                    FROM machine m LEFT JOIN site t ON t.site = m.site WHERE m.machine = ?1";
        self.thing(("machine", MACHINES), machine.to_string(), text, Track::Machine(machine))
    }

    pub fn site(&mut self, site: SiteId) -> Result<(), Error> {
        let text = "SELECT folded FROM site WHERE site = ?1";
        self.thing(("site", SITES), site.to_string(), text, Track::Site(site))
    }

    /// The number under which a thing is found, if it is.
    fn had(&self, kind: &'static str, key: &str) -> Result<Option<i64>, Error> {
        let mut statement = self.db.prepare_cached("SELECT id FROM found WHERE key = ?1 AND kind = ?2")?;
        Ok(statement.query_row([key, kind], |row| row.get(0)).optional()?)
    }

    /// Notes a thing of which one track tells.
    fn thing(
        &mut self,
        kind: (&'static str, i64),
        key: String,
        text: &str,
        track: Track,
    ) -> Result<(), Error> {
        let had = self.had(kind.0, &key)?;
        let last = last_of(self.db, &[track])?;
        let text = self.db.prepare_cached(text)?.query_row([&key], |row| row.get(0)).optional()?;
        self.add(kind, key, had, text, last)
    }

    /// Notes a thing. Its kind comes with the first number of it.
    fn add(
        &mut self,
        (kind, first): (&'static str, i64),
        key: String,
        had: Option<i64>,
        text: Option<String>,
        last: Hlc,
    ) -> Result<(), Error> {
        let now = text.map(|text| (first + number(last), text));
        self.things.push(Thing { kind, key, had, now });
        if self.things.len() >= AT_ONCE { self.put() } else { Ok(()) }
    }

    /// Puts what was noted.
    pub fn put(&mut self) -> Result<(), Error> {
        let mut things = std::mem::take(&mut self.things);
        things.sort_unstable_by_key(|thing| thing.had);
        for had in things.iter().filter_map(|thing| thing.had) {
            self.db.prepare_cached("DELETE FROM words WHERE rowid = ?1")?.execute([had])?;
            self.db.prepare_cached("DELETE FROM found WHERE id = ?1")?.execute([had])?;
        }
        things.sort_unstable_by_key(|thing| thing.now.as_ref().map(|(number, _)| *number));
        let mut found = self.db.prepare_cached(
            "INSERT INTO found (id, kind, key) VALUES (?1, ?2, ?3) ON CONFLICT (id) DO NOTHING",
        )?;
        let mut words = self.db.prepare_cached("INSERT INTO words (rowid, text) VALUES (?1, ?2)")?;
        let mut last = i64::MIN;
        for Thing { kind, key, now, .. } in things {
            let Some((number, text)) = now else { continue };
            let mut number = number.max(last.saturating_add(1));
            while found.execute(params![number, kind, key])? == 0 {
                number += 1;
            }
            words.execute(params![number, text])?;
            last = number;
        }
        Ok(())
    }
}

/// The number of what was recorded then, from the first of its kind on; it may be another's already.
fn number(at: Hlc) -> i64 {
    (at.ms.min(LAST_MS) << COUNT_BITS) + i64::from(at.count).min(LAST_COUNT)
}

/// The time of the last event of those tracks.
fn last_of(db: &Connection, tracks: &[Track]) -> Result<Hlc, Error> {
    let mut last = Hlc::default();
    for track in tracks {
        let mut statement = db.prepare_cached(
            "SELECT e.ms, e.count FROM track t JOIN event e ON e.device = t.device AND e.number = t.number
             WHERE t.key = ?1",
        )?;
        let mut events = statement.query([track.to_string()])?;
        while let Some(row) = events.next()? {
            last = last.max(log::time(row)?);
        }
    }
    Ok(last)
}
