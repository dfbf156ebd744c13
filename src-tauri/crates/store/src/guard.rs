//! What a device refuses to write itself. What arrives from others is never refused for what it
//! says: contradictions between devices are conflicts that a person settles.

use crate::{Error, log, rows};
use chrono::NaiveDate;
use hosewright_core::record::{
    About, Body, DeviceId, EventRef, Fitted, LeftOut, Membership, Place, Scope, Standing, TakenOff,
};
use rusqlite::{Connection, OptionalExtension};

/// Whether this device may write that body there, as it stands in its fleet.
pub(crate) fn may(
    db: &Connection,
    members: &Membership,
    body: &Body,
    builds_on: Option<&[EventRef]>,
    at: EventRef,
) -> Result<(), Error> {
    let mut needs = body.needs();
    if matches!(body, Body::Voided(_)) {
        for struck in builds_on.unwrap_or_default() {
            let struck = log::get(db, *struck)?.map(|event| event.body.read());
            if struck.as_ref().and_then(Body::member).is_some() {
                return Err(Error::WordStays);
            }
            needs = needs.max(struck.and_then(|body| body.needs()));
        }
    }
    members.judge(at, needs).map_err(|why| match (why, members.standing(at.device)) {
        (LeftOut::Withdrawn, _) => Error::Gone,
        (_, Standing::Reader) => Error::Reader,
        _ => Error::PlannersOnly,
    })?;
    match body.member() {
        Some(_) if members.founder().is_none() => Err(Error::OpenFleet),
        Some(device) => members.may_judge(at.device, device).map_err(|_| Error::Senior),
        None => Ok(()),
    }
}

/// Whether that body may be written, given what the register has.
pub(crate) fn check(
    db: &Connection,
    body: &Body,
    builds_on: Option<&[EventRef]>,
    device: DeviceId,
) -> Result<(), Error> {
    body.check()?;
    for parent in builds_on.unwrap_or_default() {
        builds_on_its_own(db, body, *parent, device)?;
    }
    let correcting = builds_on.is_some_and(|parents| !parents.is_empty());
    match body {
        Body::MachineSet(machine) => match machine.site {
            Some(site) => known(db, Thing::Site, site),
            None => Ok(()),
        },
        Body::HoursRead(read) => known(db, Thing::Machine, read.machine),
        Body::CircuitSet(circuit) => known(db, Thing::Machine, circuit.machine),
        Body::PlaceSet(place) => check_place(db, place),
        Body::AssemblyMade(made) if !correcting && is_known(db, Thing::Hose, made.code)? => {
            Err(Error::CodeTaken { code: made.code })
        }
        Body::Fitted(fitted) => check_fitted(db, fitted, correcting),
        Body::TakenOff(off) => check_taken_off(db, off, correcting),
        Body::Inspected(seen) => known(db, Thing::Hose, seen.code),
        Body::Surveyed(seen) => known(db, Thing::Place, seen.place),
        Body::Overridden(over) => known(db, Thing::Hose, over.code).and(known(db, Thing::Person, over.by)),
        Body::Labelled(labelled) => known(db, Thing::Hose, labelled.code),
        Body::TagWithdrawn(withdrawn) => known(db, Thing::Hose, withdrawn.code),
        Body::PolicySet(policy) => match &policy.scope {
            Scope::Fleet => Ok(()),
            Scope::Site(site) => known(db, Thing::Site, site),
            Scope::Machine(machine) => known(db, Thing::Machine, machine),
            Scope::Place(place) => known(db, Thing::Place, place),
        },
        Body::PieceChanged(changed) => known(db, Thing::Piece, changed.piece),
        Body::PhotoAdded(photo) => check_about(db, &photo.about),
        Body::Noted(note) => check_about(db, &note.about),
        Body::Voided(_) if !correcting => Err(Error::NothingVoided),
        Body::DeviceKey(told) if !told.is_of(device) => Err(Error::OthersKey),
        Body::DeviceKey(_)
        | Body::DeviceAdmitted(_)
        | Body::DeviceWithdrawn(_)
        | Body::DeviceNamed(_)
        | Body::SiteNamed(_)
        | Body::AssemblyMade(_)
        | Body::StockChanged(_)
        | Body::StockMoved(_)
        | Body::StockPlaced(_)
        | Body::PriceSet(_)
        | Body::PieceSet(_)
        | Body::Voided(_)
        | Body::Unknown { .. } => Ok(()),
    }
}

/// An event builds on events of its own track; one that voids may name any.
fn builds_on_its_own(db: &Connection, body: &Body, parent: EventRef, device: DeviceId) -> Result<(), Error> {
    let event =
        log::get(db, parent)?.ok_or_else(|| Error::NotKnown { what: "event", id: parent.to_string() })?;
    let same = event.body.read().track(event.device) == body.track(device);
    if same || matches!(body, Body::Voided(_)) { Ok(()) } else { Err(Error::OtherTrack { event: parent }) }
}

fn check_place(db: &Connection, place: &Place) -> Result<(), Error> {
    known(db, Thing::Machine, place.machine)?;
    let Some(circuit) = place.circuit else { return Ok(()) };
    known(db, Thing::Circuit, circuit)?;
    let mut statement = db.prepare_cached("SELECT 1 FROM circuit WHERE circuit = ?1 AND machine = ?2")?;
    if statement.exists([circuit.to_string(), place.machine.to_string()])? {
        Ok(())
    } else {
        Err(Error::OtherMachine { circuit: circuit.to_string() })
    }
}

/// What stands in the way of a hose's being fitted at a place.
const FITTED: &str =
    "SELECT EXISTS (SELECT 1 FROM place WHERE place = ?2) AS place, a.code AS made, a.failed_proof,
       EXISTS (SELECT 1 FROM withdrawal WHERE code = ?1) AS withdrawn,
       (SELECT place FROM stint WHERE code = ?1 AND off_version IS NULL) AS sits,
       (SELECT code FROM stint WHERE place = ?2 AND off_version IS NULL) AS other
FROM (SELECT 1) LEFT JOIN assembly a ON a.code = ?1";

fn check_fitted(db: &Connection, fitted: &Fitted, correcting: bool) -> Result<(), Error> {
    let Fitted { code, place, .. } = *fitted;
    let mut statement = db.prepare_cached(FITTED)?;
    let mut found = statement.query([code.to_string(), place.to_string()])?;
    let row = found.next()?.ok_or(rusqlite::Error::QueryReturnedNoRows)?;
    let not_known = |thing: Thing, id: String| Err(Error::NotKnown { what: thing.name(), id });
    if row.get::<_, Option<String>>("made")?.is_none() {
        return not_known(Thing::Hose, code.to_string());
    }
    if !row.get::<_, bool>("place")? {
        return not_known(Thing::Place, place.to_string());
    }
    if row.get("failed_proof")? {
        return Err(Error::ProofFailed { code });
    }
    if correcting {
        return Ok(());
    }
    if row.get("withdrawn")? {
        return Err(Error::Withdrawn { code });
    }
    if let Some(place) = rows::optional(row, "sits")? {
        return Err(Error::AlreadyFitted { code, place });
    }
    match rows::optional(row, "other")? {
        Some(code) => Err(Error::Occupied { place, code }),
        None => Ok(()),
    }
}

fn check_taken_off(db: &Connection, off: &TakenOff, correcting: bool) -> Result<(), Error> {
    if correcting {
        return known(db, Thing::Place, off.place);
    }
    let mut sits = db
        .prepare_cached("SELECT on_date FROM stint WHERE code = ?1 AND place = ?2 AND off_version IS NULL")?;
    let on: Option<Option<NaiveDate>> = sits
        .query_row([off.code.to_string(), off.place.to_string()], |row| rows::optional(row, "on_date"))
        .optional()?;
    match on {
        None => Err(Error::NotFittedThere { code: off.code, place: off.place }),
        Some(Some(on)) if off.date < on => Err(Error::OffBeforeOn { code: off.code }),
        Some(_) => Ok(()),
    }
}

fn check_about(db: &Connection, about: &About) -> Result<(), Error> {
    match about {
        About::Site(site) => known(db, Thing::Site, site),
        About::Machine(machine) => known(db, Thing::Machine, machine),
        About::Place(place) => known(db, Thing::Place, place),
        About::Hose(code) => known(db, Thing::Hose, code),
    }
}

/// What an event can name.
#[derive(Clone, Copy)]
enum Thing {
    Site,
    Machine,
    Circuit,
    Place,
    Hose,
    Piece,
    Person,
}

impl Thing {
    const fn name(self) -> &'static str {
        match self {
            Thing::Site => "site",
            Thing::Machine => "machine",
            Thing::Circuit => "circuit",
            Thing::Place => "place",
            Thing::Hose => "hose",
            Thing::Piece => "piece of hose",
            Thing::Person => "person",
        }
    }

    const fn sql(self) -> &'static str {
        match self {
            Thing::Site => "SELECT 1 FROM site WHERE site = ?1",
            Thing::Machine => "SELECT 1 FROM machine WHERE machine = ?1",
            Thing::Circuit => "SELECT 1 FROM circuit WHERE circuit = ?1",
            Thing::Place => "SELECT 1 FROM place WHERE place = ?1",
            Thing::Hose => "SELECT 1 FROM assembly WHERE code = ?1",
            Thing::Piece => "SELECT 1 FROM piece WHERE piece = ?1",
            Thing::Person => "SELECT 1 FROM person WHERE id = ?1 AND erased = 0",
        }
    }
}

fn is_known(db: &Connection, thing: Thing, id: impl ToString) -> Result<bool, Error> {
    Ok(db.prepare_cached(thing.sql())?.exists([id.to_string()])?)
}

fn known(db: &Connection, thing: Thing, id: impl ToString) -> Result<(), Error> {
    let id = id.to_string();
    if is_known(db, thing, &id)? { Ok(()) } else { Err(Error::NotKnown { what: thing.name(), id }) }
}
