//! Names and public keys of devices.

use crate::Error;
use hosewright_core::record::{Body, DeviceId, Entry};
use rusqlite::{Connection, params};

pub(super) fn project(db: &Connection, id: DeviceId, current: Option<&Entry>) -> Result<(), Error> {
    let Some(Entry { at, body: Body::DeviceNamed(device), .. }) = current else { return Ok(()) };
    db.prepare_cached("INSERT INTO device (device, name, version) VALUES (?1, ?2, ?3)")?.execute(params![
        id.to_string(),
        device.name,
        at.to_string()
    ])?;
    Ok(())
}

/// The key of which the device has the private half; one that it could not sign is none.
pub(super) fn project_key(db: &Connection, id: DeviceId, current: Option<&Entry>) -> Result<(), Error> {
    let Some(Entry { at, body: Body::DeviceKey(told), .. }) = current else { return Ok(()) };
    if told.is_of(id) {
        db.prepare_cached("INSERT INTO device_key (device, public_key, version) VALUES (?1, ?2, ?3)")?
            .execute(params![id.to_string(), told.public_key.to_string(), at.to_string()])?;
    }
    Ok(())
}
