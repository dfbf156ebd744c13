//! The secret keys of this device, in a file of their own beside the register. They are in no register, backup, bundle
//! or export. Where a system has owners of files only their owner may read them; elsewhere whoever can open their folder can.

use crate::backup::beside;
use crate::{Error, Register, private};
use chrono::{DateTime, Utc};
use hosewright_core::fleet::{DeviceKey, FleetKey, StorageAccess};
use rusqlite::TransactionBehavior;
use serde::{Deserialize, Serialize};
use std::fs;
use std::io;
use std::path::{Path, PathBuf};

/// The keys of this device.
#[derive(Debug, Default)]
pub struct Keys {
    /// Its own key pair; none before it was first needed.
    pub device: Option<DeviceKey>,
    /// The fleets whose key it has. At most one is its own.
    pub fleets: Vec<FleetKept>,
    /// Where the fleet's devices exchange what they wrote.
    pub storage: Option<StorageAccess>,
}

/// A fleet whose key this device has.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FleetKept {
    /// What its people call it.
    pub name: String,
    /// Its key.
    pub key: FleetKey,
    /// This device makes tags for it; else it is a partner's.
    pub own: bool,
    /// Since when.
    pub since: DateTime<Utc>,
    /// Mark of the device that handed it on; none where it was begun here.
    pub from: Option<String>,
}

impl Keys {
    /// The fleet that this device makes tags for.
    pub fn own(&self) -> Option<&FleetKept> {
        self.fleets.iter().find(|fleet| fleet.own)
    }

    /// The keys of the others.
    pub fn partners(&self) -> Vec<&FleetKey> {
        self.fleets.iter().filter(|fleet| !fleet.own).map(|fleet| &fleet.key).collect()
    }
}

/// The file's text.
#[derive(Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Written {
    device: Option<[u8; 32]>,
    fleets: Vec<WrittenFleet>,
    #[serde(default)]
    storage: Option<StorageAccess>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenFleet {
    name: String,
    key: [u8; 32],
    own: bool,
    since: DateTime<Utc>,
    from: Option<String>,
}

impl Register {
    /// The file of this device's keys.
    pub fn keys_path(&self) -> PathBuf {
        beside(self.path(), "keys")
    }

    /// The keys of this device; none where it has none yet.
    ///
    /// # Errors
    /// The file can not be read, or is none of keys.
    pub fn keys(&self) -> Result<Keys, Error> {
        read(&self.keys_path())
    }

    /// Changes the keys as they are kept now, and nobody else's change is lost: the register is held for writing meanwhile.
    /// What has returned is on the disk.
    ///
    /// # Errors
    /// The change is refused, the register is in use, or the file can not be read or written; the one that was there stays.
    pub fn change_keys<T, E: From<Error>>(
        &mut self,
        change: impl FnOnce(&mut Keys) -> Result<T, E>,
    ) -> Result<(Keys, T), E> {
        let path = self.keys_path();
        let held = self.db.transaction_with_behavior(TransactionBehavior::Immediate).map_err(Error::from)?;
        let mut keys = read(&path)?;
        let changed = change(&mut keys)?;
        keep(&path, &keys)?;
        held.commit().map_err(Error::from)?;
        Ok((keys, changed))
    }
}

pub(crate) fn read(path: &Path) -> Result<Keys, Error> {
    let cannot = |source| Error::Keys { path: path.to_owned(), source };
    let text = match fs::read(path) {
        Ok(text) => text,
        Err(missing) if missing.kind() == io::ErrorKind::NotFound => return Ok(Keys::default()),
        Err(other) => return Err(cannot(other)),
    };
    // A copy that others may read is closed to them again before it is used.
    for_its_owner(path).map_err(cannot)?;
    // What is wrong is not repeated: it would show what stands around it.
    let written: Written = serde_json::from_slice(&text)
        .map_err(|_| cannot(io::Error::new(io::ErrorKind::InvalidData, "it is no file of keys")))?;
    let fleets = written.fleets.into_iter().map(|fleet| FleetKept {
        name: fleet.name,
        key: FleetKey::from_bytes(fleet.key),
        own: fleet.own,
        since: fleet.since,
        from: fleet.from,
    });
    Ok(Keys {
        device: written.device.map(DeviceKey::from_bytes),
        fleets: fleets.collect(),
        storage: written.storage,
    })
}

fn keep(path: &Path, keys: &Keys) -> Result<(), Error> {
    let fleets = keys.fleets.iter().map(|fleet| WrittenFleet {
        name: fleet.name.clone(),
        key: fleet.key.bytes(),
        own: fleet.own,
        since: fleet.since,
        from: fleet.from.clone(),
    });
    let written = Written {
        device: keys.device.as_ref().map(DeviceKey::bytes),
        fleets: fleets.collect(),
        storage: keys.storage.clone(),
    };
    let text = serde_json::to_vec(&written)?;
    private::replace(path, &text).map_err(|source| Error::Keys { path: path.to_owned(), source })
}

/// Sets a file of keys aside that was left beside where a register is restored: they are another device's, and the restored
/// one joins its fleet again.
pub(crate) fn set_aside(register: &Path) -> Result<(), Error> {
    let path = beside(register, "keys");
    let free = (1..).map(|count| beside(&path, &format!("before-{count}"))).find(|aside| !aside.exists());
    let (true, Some(aside)) = (path.exists(), free) else { return Ok(()) };
    fs::rename(&path, aside).map_err(|source| Error::Keys { path, source })
}

#[cfg(unix)]
fn for_its_owner(path: &Path) -> io::Result<()> {
    use std::os::unix::fs::PermissionsExt;
    if fs::metadata(path)?.permissions().mode() & 0o077 == 0 {
        return Ok(());
    }
    fs::set_permissions(path, fs::Permissions::from_mode(0o600))
}

#[cfg(not(unix))]
fn for_its_owner(_: &Path) -> io::Result<()> {
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use hosewright_core::record::DeviceId;
    use std::thread;

    #[test]
    fn two_programs_that_change_the_keys_at_once_lose_none() {
        let folder = tempfile::tempdir().expect("a folder");
        let path = folder.path().join("register.db");
        Register::open(&path, DeviceId::from_bytes([1; 16])).expect("opens");
        let add = &|number: u8| {
            let mut register = Register::open(&path, DeviceId::from_bytes([1; 16])).expect("opens");
            for count in 0..5 {
                let key = FleetKey::from_bytes([number * 10 + count; 32]);
                let fleet = FleetKept {
                    name: "North".into(),
                    key,
                    own: false,
                    since: DateTime::UNIX_EPOCH,
                    from: None,
                };
                let added = register.change_keys(|keys| {
                    keys.fleets.push(fleet);
                    Ok::<_, Error>(())
                });
                added.expect("is written");
            }
        };
        thread::scope(|scope| {
            for number in 1..=3 {
                scope.spawn(move || add(number));
            }
        });
        let register = Register::open(&path, DeviceId::from_bytes([1; 16])).expect("opens");
        assert_eq!(register.keys().expect("reads").fleets.len(), 15);
    }
}
