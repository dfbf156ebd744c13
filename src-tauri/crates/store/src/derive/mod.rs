//! From the rows of several things to what is asked of all hoses at once: how each stands, when it falls due, and where
//! a word is found. What an event changes here is worked out anew from the projected rows, so a rebuild gives the same.

mod asked;
mod hose;
mod meter;
mod search;

pub(crate) use asked::question;
pub(crate) use hose::{FACTS, Facts, facts};
pub(crate) use search::{HOSES, MACHINES, PLACES, SITES};

use crate::query::policies;
use crate::{Error, rows};
use hosewright_core::care::Rules;
use hosewright_core::catalogue::Catalogue;
use hosewright_core::record::{Body, CircuitId, Entry, Hlc, MachineId, PlaceId, Scope, SiteId, Track};
use hosewright_core::tag::TagCode;
use rusqlite::Connection;
use std::collections::{BTreeMap, BTreeSet};

/// What was touched by the events of one transaction.
#[derive(Default)]
pub(crate) struct Touched {
    /// Each with the time of what was recorded of it last, where that is known.
    hoses: BTreeMap<TagCode, Option<Hlc>>,
    places: BTreeSet<PlaceId>,
    machines: BTreeSet<MachineId>,
    sites: BTreeSet<SiteId>,
    meters: BTreeSet<MachineId>,
    /// Places where hours of their machine were noted with a hose.
    noted: BTreeSet<PlaceId>,
    circuits: BTreeSet<CircuitId>,
    policies: BTreeSet<Scope>,
}

impl Touched {
    /// Notes what a track is about, of whose events these are all that count or did before: a hose may have sat elsewhere,
    /// a place been on another machine. `last` is the time of the last of them, where none is later.
    pub(crate) fn note(&mut self, track: &Track, entries: &[Entry], last: Option<Hlc>) {
        match track {
            Track::Made(code) | Track::Inspections(code) | Track::Labels(code) => {
                self.hoses.insert(*code, last);
            }
            Track::Withdrawal(code) => {
                self.hoses.entry(*code).or_default();
            }
            Track::Whereabouts(code) => {
                self.hoses.insert(*code, last);
                self.noted.extend(entries.iter().filter_map(|entry| noted_at(&entry.body)));
            }
            Track::Place(place) => {
                self.places.insert(*place);
                self.meters.extend(entries.iter().filter_map(|entry| match &entry.body {
                    Body::PlaceSet(place) => Some(place.machine),
                    _ => None,
                }));
            }
            Track::Machine(machine) => {
                self.machines.insert(*machine);
            }
            Track::Hours(machine) => {
                self.meters.insert(*machine);
            }
            Track::Circuit(circuit) => {
                self.circuits.insert(*circuit);
            }
            Track::Site(site) => {
                self.sites.insert(*site);
            }
            Track::Policy(key) => {
                self.policies.insert(key.scope.clone());
            }
            _ => {}
        }
    }

    /// Works out anew what was touched.
    pub(crate) fn settle(mut self, db: &Connection) -> Result<(), Error> {
        let rules = rules(db)?;
        for place in &self.noted {
            self.meters.extend(machine_of(db, *place)?);
        }
        for machine in &self.meters {
            if meter::project(db, *machine)? && rules.count_hours() {
                self.policies.insert(Scope::Machine(*machine));
            }
        }
        for machine in &self.machines {
            self.places.extend(places_of(db, *machine)?);
        }
        for place in &self.places {
            for code in at_place(db, *place)? {
                self.hoses.entry(code).or_default();
            }
        }
        for circuit in &self.circuits {
            for code in asked::on_circuit(db, *circuit)? {
                self.hoses.entry(code).or_default();
            }
        }
        let mut words = search::Words::new(db);
        for (code, last) in &self.hoses {
            words.hose(*code, hose::project(db, *code, &rules)?, *last)?;
        }
        let mut ruled = BTreeSet::new();
        for scope in &self.policies {
            ruled.extend(hoses_in(db, scope)?);
        }
        for code in ruled.iter().filter(|code| !self.hoses.contains_key(code)) {
            hose::project(db, *code, &rules)?;
        }
        // The name of a site stands in what is searched of everything on it.
        for site in &self.sites {
            for code in hoses_in(db, &Scope::Site(*site))? {
                if self.hoses.insert(code, None).is_none() {
                    words.hose(code, hose::project(db, code, &rules)?, None)?;
                }
            }
            for machine in machines_of(db, *site)? {
                self.places.extend(places_of(db, machine)?);
                self.machines.insert(machine);
            }
        }
        self.places.iter().try_for_each(|place| words.place(*place))?;
        self.machines.iter().try_for_each(|machine| words.machine(*machine))?;
        self.sites.iter().try_for_each(|site| words.site(*site))?;
        words.put()
    }
}

/// The place where a hose was fitted or taken off, if the hours of its machine were written down.
fn noted_at(body: &Body) -> Option<PlaceId> {
    match body {
        Body::Fitted(fitted) => fitted.hours.map(|_| fitted.place),
        Body::TakenOff(off) => off.hours.map(|_| off.place),
        _ => None,
    }
}

/// Everything anew, from projected rows.
pub(crate) fn all(db: &Connection) -> Result<(), Error> {
    for table in ["meter", "hose", "due", "found"] {
        db.execute(&format!("DELETE FROM {table}"), [])?;
    }
    db.execute("INSERT INTO words (words) VALUES ('delete-all')", [])?;
    each(db, "SELECT machine AS id FROM hours UNION SELECT machine FROM place", |machine| {
        meter::project(db, machine).map(|_| ())
    })?;
    let rules = rules(db)?;
    let mut words = search::Words::new(db);
    each(db, "SELECT code AS id FROM assembly UNION SELECT code FROM stint", |code| {
        words.hose(code, hose::project(db, code, &rules)?, None)
    })?;
    each(db, "SELECT place AS id FROM place", |place| words.place(place))?;
    each(db, "SELECT machine AS id FROM machine", |machine| words.machine(machine))?;
    each(db, "SELECT site AS id FROM site", |site| words.site(site))?;
    words.put()
}

/// The rules that hold in this register.
pub(crate) fn rules(db: &Connection) -> Result<Rules<'static>, Error> {
    Ok(Rules::new(Catalogue::embedded(), policies(db)?))
}

fn each<T>(db: &Connection, sql: &str, mut work: impl FnMut(T) -> Result<(), Error>) -> Result<(), Error>
where
    T: std::str::FromStr,
    T::Err: std::error::Error + Send + Sync + 'static,
{
    let mut statement = db.prepare(sql)?;
    let mut found = statement.query([])?;
    while let Some(row) = found.next()? {
        work(rows::parsed(row, "id")?)?;
    }
    Ok(())
}

fn ids<T>(db: &Connection, sql: &str, of: &str) -> Result<Vec<T>, Error>
where
    T: std::str::FromStr,
    T::Err: std::error::Error + Send + Sync + 'static,
{
    let mut statement = db.prepare_cached(sql)?;
    let ids = statement.query_map([of], |row| rows::parsed(row, "id"))?;
    Ok(ids.collect::<Result<_, _>>()?)
}

fn at_place(db: &Connection, place: PlaceId) -> Result<Vec<TagCode>, Error> {
    ids(db, "SELECT code AS id FROM stint WHERE place = ?1 AND off_version IS NULL", &place.to_string())
}

fn machine_of(db: &Connection, place: PlaceId) -> Result<Vec<MachineId>, Error> {
    ids(db, "SELECT machine AS id FROM place WHERE place = ?1", &place.to_string())
}

fn places_of(db: &Connection, machine: MachineId) -> Result<Vec<PlaceId>, Error> {
    ids(db, "SELECT place AS id FROM place WHERE machine = ?1", &machine.to_string())
}

fn machines_of(db: &Connection, site: SiteId) -> Result<Vec<MachineId>, Error> {
    ids(db, "SELECT machine AS id FROM machine WHERE site = ?1", &site.to_string())
}

fn hoses_in(db: &Connection, scope: &Scope) -> Result<Vec<TagCode>, Error> {
    match scope {
        Scope::Fleet => ids(db, "SELECT code AS id FROM hose WHERE ?1 <> ''", "fleet"),
        Scope::Site(site) => ids(db, "SELECT code AS id FROM hose WHERE site = ?1", &site.to_string()),
        Scope::Machine(machine) => {
            ids(db, "SELECT code AS id FROM hose WHERE machine = ?1", &machine.to_string())
        }
        Scope::Place(place) => ids(db, "SELECT code AS id FROM hose WHERE place = ?1", &place.to_string()),
    }
}
