//! What is searched: words of hoses, places, machines and sites, in the order of what was recorded of them last.

use crate::Error;
use hosewright_core::record::{MachineId, PlaceId, SiteId, Track};
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

    pub fn hose(&mut self, code: TagCode) -> Result<(), Error> {
        let tracks =
            [Track::Made(code), Track::Whereabouts(code), Track::Inspections(code), Track::Labels(code)];
        let text = "SELECT coalesce(a.folded, lower(h.code)) || ' ' || coalesce(p.folded, '') || ' '
                           || coalesce(m.folded, '') || ' ' || coalesce(t.folded, '')
                    FROM hose h LEFT JOIN assembly a ON a.code = h.code
                    LEFT JOIN place p ON p.place = h.place
                    LEFT JOIN machine m ON m.machine = h.machine
                    LEFT JOIN site t ON t.site = h.site
                    WHERE h.code = ?1";
        self.add(("hose", HOSES), code.to_string(), text, &tracks)
    }

    pub fn place(&mut self, place: PlaceId) -> Result<(), Error> {
        let text = "SELECT p.folded || ' ' || coalesce(m.folded, '') || ' ' || coalesce(t.folded, '')
                    FROM place p LEFT JOIN machine m ON m.machine = p.machine LEFT JOIN site t ON t.site = m.site
                    WHERE p.place = ?1";
        self.add(("place", PLACES), place.to_string(), text, &[Track::Place(place)])
    }

    pub fn machine(&mut self, machine: MachineId) -> Result<(), Error> {
        let text = "SELECT m.folded || ' ' || coalesce(t.folded, '')
                    FROM machine m LEFT JOIN site t ON t.site = m.site WHERE m.machine = ?1";
        self.add(("machine", MACHINES), machine.to_string(), text, &[Track::Machine(machine)])
    }

    pub fn site(&mut self, site: SiteId) -> Result<(), Error> {
        let text = "SELECT folded FROM site WHERE site = ?1";
        self.add(("site", SITES), site.to_string(), text, &[Track::Site(site)])
    }

    /// Notes a thing. Its kind comes with the first number of it.
    fn add(
        &mut self,
        (kind, first): (&'static str, i64),
        key: String,
        text: &str,
        tracks: &[Track],
    ) -> Result<(), Error> {
        let had = self
            .db
            .prepare_cached("SELECT id FROM found WHERE key = ?1 AND kind = ?2")?
            .query_row([&key, kind], |row| row.get(0))
            .optional()?;
        let text: Option<String> =
            self.db.prepare_cached(text)?.query_row([&key], |row| row.get(0)).optional()?;
        let now = text.map(|text| Ok::<_, Error>((number(self.db, first, tracks)?, text))).transpose()?;
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
        let mut taken = self.db.prepare_cached("SELECT 1 FROM found WHERE id = ?1")?;
        let mut found = self.db.prepare_cached("INSERT INTO found (id, kind, key) VALUES (?1, ?2, ?3)")?;
        let mut words = self.db.prepare_cached("INSERT INTO words (rowid, text) VALUES (?1, ?2)")?;
        let mut last = i64::MIN;
        for Thing { kind, key, now, .. } in things {
            let Some((number, text)) = now else { continue };
            let mut number = number.max(last.saturating_add(1));
            while taken.exists([number])? {
                number += 1;
            }
            found.execute(params![number, kind, key])?;
            words.execute(params![number, text])?;
            last = number;
        }
        Ok(())
    }
}

/// The number by the time of the last event of those tracks; it may be another's already.
fn number(db: &Connection, first: i64, tracks: &[Track]) -> Result<i64, Error> {
    let mut statement = db.prepare_cached(
        "SELECT max((min(e.ms, ?5) << ?6) + min(e.count, ?7))
         FROM track t JOIN event e ON e.device = t.device AND e.number = t.number WHERE t.key IN (?1, ?2, ?3, ?4)",
    )?;
    let key = |at: usize| tracks.get(at).map(ToString::to_string);
    let last: Option<i64> = statement
        .query_row(params![key(0), key(1), key(2), key(3), LAST_MS, COUNT_BITS, LAST_COUNT], |row| {
            row.get(0)
        })?;
    Ok(first + last.unwrap_or_default())
}
