//! What contradicts each other, for a person to settle.

use super::{PlaceAt, Stay, Written, stay, written};
use crate::{Error, Register, rows};
use hosewright_core::record::{About, Body, DeviceId, EventRef, MachineId, PieceId, PlaceId, Scope, Track};
use hosewright_core::tag::TagCode;
use schemars::JsonSchema;
use serde::Serialize;
use std::collections::BTreeMap;
use ts_rs::TS;

/// Two or more things that can not all be true.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
#[serde(tag = "what", rename_all = "kebab-case")]
pub enum Conflict {
    /// Events about one thing. Settled by an event that builds on all of them, or by voiding some.
    Events {
        /// The events, by time.
        events: Vec<Written>,
    },
    /// Several hoses at one place. Settled by taking off, or voiding, all but one.
    Place {
        /// The stays that have not ended.
        stays: Vec<Stay>,
    },
}

/// A contradiction as a list names it: what it is about, and who told what.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Contradiction {
    /// The hose, where it is about one.
    pub hose: Option<TagCode>,
    /// The place, where it is about one.
    pub at: Option<PlaceAt>,
    /// The machine, where it is about one or its hours.
    pub machine: Option<MachineId>,
    /// What people call it, where neither hose nor place says it: a machine, site, circuit, device or store.
    pub name: Option<String>,
    /// What was told, by time.
    pub told: Vec<Told>,
}

/// One side of a contradiction.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Told {
    /// The kind of event.
    pub kind: String,
    /// The device that wrote it.
    pub device: DeviceId,
    /// Its name, where it has one.
    pub by: Option<String>,
    /// The hose that it is about, where it is about one.
    pub hose: Option<TagCode>,
    /// The name that was told, where a name was.
    pub says: Option<String>,
}

impl Register {
    /// Everything that contradicts itself, by what it is about.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn contradictions(&self) -> Result<Vec<Contradiction>, Error> {
        self.conflicts()?
            .into_iter()
            .map(|conflict| match conflict {
                Conflict::Events { events } => self.about_events(&events),
                Conflict::Place { stays } => self.about_place(&stays),
            })
            .collect()
    }

    pub(crate) fn about_events(&self, events: &[Written]) -> Result<Contradiction, Error> {
        let Named { hose, place, machine, name, piece } =
            events.last().map(|written| named(&written.body)).unwrap_or_default();
        let at = place.map(|place| self.place(place)).transpose()?.flatten().map(|sheet| sheet.at);
        let machine_name = machine.map(|machine| self.machine(machine)).transpose()?.flatten();
        let name = name.or(machine_name.map(|sheet| sheet.machine.record.name));
        let of_piece = |piece| Ok::<_, Error>(self.piece(piece)?.map(|kept| kept.hose.name()));
        let name = name.map_or_else(|| piece.map_or(Ok(None), of_piece), |name| Ok(Some(name)))?;
        Ok(Contradiction { hose, at, machine, name, told: events.iter().map(told).collect() })
    }

    /// Several hoses that sit at one place: each was told by the event that put it there.
    fn about_place(&self, stays: &[Stay]) -> Result<Contradiction, Error> {
        let mut put_there = Vec::new();
        for stay in stays {
            let history = self.hose(&stay.code)?.map(|hose| hose.history).unwrap_or_default();
            put_there.extend(history.iter().filter(|written| Some(written.event) == stay.on).map(told));
        }
        let at = stays.first().map(|stay| stay.at.clone());
        Ok(Contradiction { hose: None, at, machine: None, name: None, told: put_there })
    }

    /// Everything that contradicts itself. Until a person settles it, the tables show the later.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn conflicts(&self) -> Result<Vec<Conflict>, Error> {
        let mut statement =
            self.db.prepare_cached("SELECT track, event FROM conflict ORDER BY track, event")?;
        let mut tracks: BTreeMap<String, Vec<EventRef>> = BTreeMap::new();
        let rows = statement.query_map([], |row| Ok((row.get("track")?, rows::parsed(row, "event")?)))?;
        for row in rows {
            let (track, event) = row?;
            tracks.entry(track).or_default().push(event);
        }
        let mut conflicts = Vec::new();
        for (track, named) in tracks {
            let mut events = written::of_tracks(&self.db, &[track])?;
            events.retain(|written| named.contains(&written.event));
            conflicts.push(Conflict::Events { events });
        }
        let mut places = self.db.prepare_cached(
            "SELECT place FROM stint WHERE off_version IS NULL GROUP BY place HAVING count(*) > 1 ORDER BY place",
        )?;
        for place in places.query_map([], |row| rows::parsed(row, "place"))? {
            let mut stays = stay::of(&self.db, None, Some(place?))?;
            stays.retain(|stay| stay.off.is_none());
            conflicts.push(Conflict::Place { stays });
        }
        Ok(conflicts)
    }
}

impl Register {
    /// What contradicts itself about one thing, by time; nothing where it is settled.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn contradicting(&self, track: &Track) -> Result<Vec<Written>, Error> {
        let track = track.to_string();
        let mut statement = self.db.prepare_cached("SELECT event FROM conflict WHERE track = ?1")?;
        let named = statement.query_map([&track], |row| rows::parsed(row, "event"))?;
        let named: Vec<EventRef> = named.collect::<Result<_, _>>()?;
        if named.is_empty() {
            return Ok(Vec::new());
        }
        let mut events = written::of_tracks(&self.db, &[track])?;
        events.retain(|written| named.contains(&written.event));
        Ok(events)
    }
}

fn told(written: &Written) -> Told {
    Told {
        kind: kind(&written.body),
        device: written.event.device,
        by: written.by.clone(),
        hose: named(&written.body).hose,
        says: says(&written.body),
    }
}

/// The name that a body gives to what it is about; none where it gives none.
fn says(body: &Body) -> Option<String> {
    match body {
        Body::DeviceNamed(named) => Some(named.name.clone()),
        Body::SiteNamed(site) => Some(site.name.clone()),
        Body::MachineSet(machine) => Some(machine.name.clone()),
        Body::CircuitSet(circuit) => Some(circuit.name.clone()),
        Body::PlaceSet(place) => Some(place.name.clone()),
        _ => None,
    }
}

/// The kind as the log writes it.
fn kind(body: &Body) -> String {
    match body {
        Body::Unknown { kind } => kind.clone(),
        known => serde_json::to_value(known)
            .ok()
            .and_then(|body| body.get("kind")?.as_str().map(str::to_owned))
            .unwrap_or_default(),
    }
}

/// What a body is about.
#[derive(Default)]
struct Named {
    hose: Option<TagCode>,
    place: Option<PlaceId>,
    machine: Option<MachineId>,
    name: Option<String>,
    /// A piece of hose, by its id alone.
    piece: Option<PieceId>,
}

impl Named {
    fn hose(code: TagCode) -> Self {
        Self { hose: Some(code), ..Self::default() }
    }

    fn place(place: PlaceId) -> Self {
        Self { place: Some(place), ..Self::default() }
    }

    fn machine(machine: MachineId, name: Option<&str>) -> Self {
        Self { machine: Some(machine), name: name.map(str::to_owned), ..Self::default() }
    }

    fn name(name: &str) -> Self {
        Self { name: Some(name.to_owned()), ..Self::default() }
    }

    fn about(about: &About) -> Self {
        match about {
            About::Hose(code) => Self::hose(*code),
            About::Place(place) => Self::place(*place),
            About::Machine(machine) => Self::machine(*machine, None),
            About::Site(_) => Self::default(),
        }
    }
}

fn named(body: &Body) -> Named {
    match body {
        Body::DeviceNamed(named) => Named::name(&named.name),
        Body::DeviceKey(told) => Named::name(&told.public_key.mark()),
        Body::DeviceAdmitted(said) => Named::name(&said.public_key.mark()),
        Body::SiteNamed(site) => Named::name(&site.name),
        Body::MachineSet(machine) => Named::machine(machine.machine, Some(&machine.name)),
        Body::HoursRead(read) => Named::machine(read.machine, None),
        Body::CircuitSet(circuit) => Named::machine(circuit.machine, Some(&circuit.name)),
        Body::PlaceSet(place) => Named::place(place.place),
        Body::AssemblyMade(made) => Named::hose(made.code),
        Body::Fitted(fitted) => Named::hose(fitted.code),
        Body::TakenOff(off) => Named::hose(off.code),
        Body::Inspected(seen) => Named::hose(seen.code),
        Body::Surveyed(seen) => Named::place(seen.place),
        Body::Overridden(over) => Named::hose(over.code),
        Body::Labelled(labelled) => Named::hose(labelled.code),
        Body::TagWithdrawn(withdrawn) => Named::hose(withdrawn.code),
        Body::PolicySet(policy) => match policy.scope {
            Scope::Place(place) => Named::place(place),
            Scope::Machine(machine) => Named::machine(machine, None),
            Scope::Site(_) | Scope::Fleet => Named::default(),
        },
        Body::StockChanged(stock) => Named::name(&stock.item.name()),
        Body::StockMoved(moved) => Named::name(&moved.item.name()),
        Body::StockPlaced(placed) => Named::name(&placed.item.name()),
        Body::PriceSet(price) => Named::name(&price.item.name()),
        Body::PieceSet(piece) => Named::name(&piece.hose.name()),
        Body::PhotoAdded(photo) => Named::about(&photo.about),
        Body::Noted(note) => Named::about(&note.about),
        Body::PieceChanged(change) => Named { piece: Some(change.piece), ..Named::default() },
        Body::DeviceWithdrawn(_) | Body::Voided(_) | Body::Unknown { .. } => Named::default(),
    }
}
