//! From a track of events to the rows that screens read, one module for each kind of thing. Rows
//! are computed from the whole track and replace what was there, so they do not depend on the order
//! in which events arrived.

mod assembly;
mod before;
mod device;
mod inspection;
mod labelled;
mod machine;
mod note;
mod overriding;
mod photo;
mod piece;
mod place;
mod policy;
mod site;
mod stint;
mod stock;
mod survey;
mod withdrawal;

pub(crate) use before::Before;
pub(crate) use inspection::grade_name;

use crate::{Error, log};
use hosewright_core::record::{Arranged, Entry, Membership, Track, arrange, blind_counts};
use rusqlite::{Connection, params};

/// Computes the rows of one track anew.
pub(crate) fn track(
    db: &Connection,
    members: &Membership,
    track: &Track,
    before: Before,
) -> Result<(), Error> {
    entries(db, track, log::entries(db, members, &track.to_string())?, before)
}

/// Computes the rows of one track anew, all of whose events that count these are.
pub(crate) fn entries(
    db: &Connection,
    track: &Track,
    entries: Vec<Entry>,
    before: Before,
) -> Result<(), Error> {
    if before == Before::Rows {
        before::clear(db, track)?;
    }
    let blind = match track {
        Track::Stock { .. } | Track::PieceLength(_) => blind_counts(&entries),
        _ => Vec::new(),
    };
    let mut arranged = arrange(entries, track.shape());
    arranged.conflicts.extend(blind);
    conflicts(db, track, &arranged)?;
    match track {
        Track::Device(id) => device::project(db, *id, current(&arranged)),
        Track::DeviceKey(id) => device::project_key(db, *id, current(&arranged)),
        // Worked out of all of them together.
        Track::Member(_) => Ok(()),
        Track::Site(id) => site::project(db, *id, current(&arranged)),
        Track::Machine(id) => machine::project(db, *id, current(&arranged)),
        Track::Hours(id) => machine::project_hours(db, *id, &arranged),
        Track::Circuit(id) => machine::project_circuit(db, *id, current(&arranged)),
        Track::Place(id) => place::project(db, *id, current(&arranged)),
        Track::Made(code) => assembly::project(db, code, current(&arranged)),
        Track::Whereabouts(code) => stint::project(db, code, &arranged),
        Track::Inspections(code) => inspection::project(db, code, &arranged),
        Track::Overrides(code) => overriding::project(db, code, &arranged),
        Track::Labels(code) => labelled::project(db, code, &arranged),
        Track::Withdrawal(code) => withdrawal::project(db, code, current(&arranged)),
        Track::Policy(key) => policy::project(db, key, current(&arranged)),
        Track::Surveys(place) => survey::project(db, *place, &arranged),
        Track::Stock { item, unit } => stock::project(db, item, *unit, &arranged),
        Track::StockPlace { store, item } => stock::project_place(db, store, item, current(&arranged)),
        Track::Price(item) => stock::project_price(db, item, current(&arranged)),
        Track::Piece(id) => piece::project(db, *id, current(&arranged)),
        Track::PieceLength(id) => piece::project_length(db, *id, &arranged),
        Track::Photos(about) => photo::project(db, about, &arranged),
        Track::Notes(about) => note::project(db, about, &arranged),
    }
}

/// The version of a record that stands; none where all were voided.
fn current(arranged: &Arranged) -> Option<&Entry> {
    arranged.nodes.first().map(|node| &node.current)
}

fn conflicts(db: &Connection, track: &Track, arranged: &Arranged) -> Result<(), Error> {
    for event in &arranged.conflicts {
        db.prepare_cached("INSERT OR IGNORE INTO conflict (track, event) VALUES (?1, ?2)")?
            .execute(params![track.to_string(), event.to_string()])?;
    }
    Ok(())
}
