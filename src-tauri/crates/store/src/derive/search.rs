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

pub(super) fn hose(db: &Connection, code: TagCode) -> Result<(), Error> {
    let tracks = [Track::Made(code), Track::Whereabouts(code), Track::Inspections(code), Track::Labels(code)];
    let text = "SELECT coalesce(a.folded, lower(h.code)) || ' ' || coalesce(p.folded, '') || ' '
                       || coalesce(m.folded, '') || ' ' || coalesce(t.folded, '')
                FROM hose h LEFT JOIN assembly a ON a.code = h.code
                LEFT JOIN place p ON p.place = h.place
                LEFT JOIN machine m ON m.machine = h.machine
                LEFT JOIN site t ON t.site = h.site
                WHERE h.code = ?1";
    keep(db, ("hose", HOSES), &code.to_string(), text, &tracks)
}

pub(super) fn place(db: &Connection, place: PlaceId) -> Result<(), Error> {
    let text = "SELECT p.folded || ' ' || coalesce(m.folded, '') || ' ' || coalesce(t.folded, '')
                FROM place p LEFT JOIN machine m ON m.machine = p.machine LEFT JOIN site t ON t.site = m.site
                WHERE p.place = ?1";
    keep(db, ("place", PLACES), &place.to_string(), text, &[Track::Place(place)])
}

pub(super) fn machine(db: &Connection, machine: MachineId) -> Result<(), Error> {
    let text = "SELECT m.folded || ' ' || coalesce(t.folded, '')
                FROM machine m LEFT JOIN site t ON t.site = m.site WHERE m.machine = ?1";
    keep(db, ("machine", MACHINES), &machine.to_string(), text, &[Track::Machine(machine)])
}

pub(super) fn site(db: &Connection, site: SiteId) -> Result<(), Error> {
    let text = "SELECT folded FROM site WHERE site = ?1";
    keep(db, ("site", SITES), &site.to_string(), text, &[Track::Site(site)])
}

/// Puts the words of a thing where what was recorded of it last puts it; takes them away where it is no more. Its kind
/// comes with the first number of it.
fn keep(
    db: &Connection,
    (kind, first): (&str, i64),
    id: &str,
    text: &str,
    tracks: &[Track],
) -> Result<(), Error> {
    let had: Option<i64> = db
        .prepare_cached("SELECT id FROM found WHERE key = ?1 AND kind = ?2")?
        .query_row([id, kind], |row| row.get(0))
        .optional()?;
    if let Some(had) = had {
        db.prepare_cached("DELETE FROM words WHERE rowid = ?1")?.execute([had])?;
        db.prepare_cached("DELETE FROM found WHERE id = ?1")?.execute([had])?;
    }
    let text: Option<String> = db.prepare_cached(text)?.query_row([id], |row| row.get(0)).optional()?;
    let Some(text) = text else { return Ok(()) };
    let number = number(db, first, tracks)?;
    db.prepare_cached("INSERT INTO found (id, kind, key) VALUES (?1, ?2, ?3)")?
        .execute(params![number, kind, id])?;
    db.prepare_cached("INSERT INTO words (rowid, text) VALUES (?1, ?2)")?.execute(params![number, text])?;
    Ok(())
}

/// A free number by the time of the last event of those tracks.
fn number(db: &Connection, first: i64, tracks: &[Track]) -> Result<i64, Error> {
    let keys: Vec<String> = tracks.iter().map(Track::to_string).collect();
    let last: Option<(i64, i64)> = db
        .prepare_cached(
            "SELECT e.ms, e.count FROM json_each(?1) k CROSS JOIN track t ON t.key = k.value
             JOIN event e ON e.device = t.device AND e.number = t.number
             ORDER BY e.ms DESC, e.count DESC LIMIT 1",
        )?
        .query_row([serde_json::to_string(&keys)?], |row| Ok((row.get(0)?, row.get(1)?)))
        .optional()?;
    let (ms, count) = last.unwrap_or_default();
    let mut number = first + (ms.clamp(0, LAST_MS) << COUNT_BITS) + count.clamp(0, LAST_COUNT);
    let mut taken = db.prepare_cached("SELECT 1 FROM found WHERE id = ?1")?;
    while taken.exists([number])? {
        number += 1;
    }
    Ok(number)
}
