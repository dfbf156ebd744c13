//! Who belongs to the fleet, worked out from the log and kept beside the tables: each of these is computed from the events
//! that count, so all of them are computed anew where the answer changes.

use crate::append::{self, Writer};
use crate::rows::{json, optional, parsed};
use crate::{Error, Register, log, rebuild};
use chrono::{DateTime, Utc};
use hosewright_core::fleet::DevicePublic;
use hosewright_core::record::{Body, DeviceId, Member, Membership};
use rusqlite::{Connection, TransactionBehavior, params};
use std::collections::BTreeMap;

/// The members as they were worked out last.
pub(crate) fn read(db: &Connection) -> Result<Membership, Error> {
    let (founder, here) = db
        .prepare_cached("SELECT founder, device FROM register")?
        .query_row([], |row| Ok((optional(row, "founder")?, parsed(row, "device")?)))?;
    let Some(founder) = founder else { return Ok(Membership::default()) };
    let mut statement = db.prepare_cached("SELECT device, content FROM member")?;
    let members = statement.query_map([], |row| Ok((parsed(row, "device")?, json(row, "content")?)))?;
    let members: BTreeMap<DeviceId, Member> = members.collect::<Result<_, _>>()?;
    Ok(Membership::again(founder, members).seen_from(here))
}

/// Works them out anew from the log.
pub(crate) fn project(db: &Connection) -> Result<Membership, Error> {
    let known = read(db)?;
    db.prepare_cached("DELETE FROM member")?.execute([])?;
    let Some(founder) = known.founder() else { return Ok(known) };
    let members = Membership::of(*founder, &log::said_of_devices(db)?);
    let mut insert = db.prepare_cached("INSERT INTO member (device, content) VALUES (?1, ?2)")?;
    for (device, member) in members.members() {
        insert.execute(params![device.to_string(), serde_json::to_string(member)?])?;
    }
    read(db)
}

/// Works them out anew. Tells whether they are others than before: then everything that was computed from the events that
/// count is stale.
pub(crate) fn changed(db: &Connection, members: &mut Membership) -> Result<bool, Error> {
    let before = std::mem::replace(members, project(db)?);
    Ok(before != *members)
}

/// Whether a body may change who belongs to the fleet.
pub(crate) fn touches(members: &Membership, body: &Body) -> bool {
    match body {
        Body::DeviceKey(told) => Some(&told.public_key) == members.founder(),
        Body::DeviceAdmitted(_) | Body::DeviceWithdrawn(_) => members.founder().is_some(),
        _ => false,
    }
}

/// Sets who is believed first. Tells whether it changed who belongs to the fleet.
fn set_founder(db: &Connection, founder: Option<DevicePublic>) -> Result<bool, Error> {
    let mut members = read(db)?;
    db.execute("UPDATE register SET founder = ?1", [founder.map(|key| key.to_string())])?;
    changed(db, &mut members)
}

impl Register {
    /// Who belongs to the fleet, as this device sees it.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn membership(&self) -> Result<Membership, Error> {
        read(&self.db)
    }

    /// From now on that device's key is believed first; without one, everybody is. The tables are computed anew.
    ///
    /// # Errors
    /// The register can not be read or written.
    pub fn believe(&mut self, founder: Option<DevicePublic>) -> Result<(), Error> {
        let tx = self.db.transaction_with_behavior(TransactionBehavior::Immediate)?;
        if set_founder(&tx, founder)? {
            rebuild::tables(&tx, &read(&tx)?)?;
        }
        Ok(tx.commit()?)
    }

    /// Makes the device with that key, which is this one, the founder, and writes what it says first: both or neither.
    ///
    /// # Errors
    /// As of [`append`](Self::append).
    pub fn found_fleet(
        &mut self,
        founder: DevicePublic,
        words: Vec<Body>,
        now: DateTime<Utc>,
    ) -> Result<(), Error> {
        let (keys, device) = (self.keys_path(), self.device);
        let tx = self.db.transaction_with_behavior(TransactionBehavior::Immediate)?;
        set_founder(&tx, Some(founder))?;
        append::write(&tx, Writer { device, keys: &keys, now }, words, |_| true)?;
        rebuild::tables(&tx, &read(&tx)?)?;
        Ok(tx.commit()?)
    }
}
