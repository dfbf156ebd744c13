//! Backups: a file to take elsewhere, those kept beside the register, and going on from either.

use super::copies::{Verified, verify};
use crate::commands::{File, Nothing};
use crate::{Answer, Api, ApiError, World};
use chrono::{DateTime, Utc};
use hosewright_core::record::DeviceId;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::path::{Path, PathBuf};
use ts_rs::TS;

/// The whole register as a file, with the photos that are here.
///
/// # Errors
/// The register can not be read, or there is no room beside it.
pub fn backup(api: &mut Api, _: Nothing, _: &[u8]) -> Result<File, ApiError> {
    let register = api.register()?;
    let copy = beside(register.path(), "backup-part");
    register.backup(&copy)?;
    let bytes = std::fs::read(&copy);
    // The copy has served; what is left of it would only take room.
    let _ = std::fs::remove_file(&copy);
    let bytes = bytes.map_err(|error| ApiError::refused(&copy, "read", &error))?;
    Ok(File { name: "register.hosewright".to_owned(), mime: "application/vnd.sqlite3", bytes })
}

/// The backups that stand beside the register, each proved by restoring it when it was made.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Backups {
    /// Their folder.
    pub folder: String,
    /// The newest first.
    pub backups: Vec<Backup>,
    /// The newest is old, or from the future: something keeps the next from being made.
    pub late: bool,
}

/// One of them.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Backup {
    /// Its file in the folder.
    pub name: String,
    /// When it was made.
    pub made: DateTime<Utc>,
    /// Its size in bytes.
    pub bytes: u64,
}

/// The backups beside the register, whether or not it can be opened.
///
/// # Errors
/// Their folder can not be read.
pub fn backups(api: &mut Api, _: Nothing, _: &[u8]) -> Result<Answer<Backups>, ApiError> {
    let path = api.register_path()?;
    let kept = hosewright_store::backups(path)?;
    let late = hosewright_store::backup_late(&kept, api.world.now());
    let folder = hosewright_store::backups_of(path).display().to_string();
    let backups = kept.into_iter().map(|kept| Backup { name: kept.name, made: kept.made, bytes: kept.bytes });
    Ok(api.answer(Backups { folder, backups: backups.collect(), late }))
}

/// Makes one more, proves it by restoring it, and takes away those that are no longer kept.
///
/// # Errors
/// The register can not be read or does not verify, or there is no room; the older ones stay.
pub fn keep_backup(api: &mut Api, _: Nothing, _: &[u8]) -> Result<Answer<Backups>, ApiError> {
    let (now, device) = (api.world.now(), DeviceId::from_bytes(api.world.random()));
    hosewright_store::keep_backup(api.register()?.path(), now, device)?;
    backups(api, Nothing {}, &[])
}

/// The same beside a register in use, where the newest is a day old. For a thread of its own: it may take seconds.
///
/// # Errors
/// As [`keep_backup`].
pub fn keep_backup_when_due(register: &Path, world: &mut dyn World) -> Result<(), ApiError> {
    let now = world.now();
    if hosewright_store::backup_due(&hosewright_store::backups(register)?, now) {
        hosewright_store::keep_backup(register, now, DeviceId::from_bytes(world.random()))?;
    }
    Ok(())
}

/// Which backup is put in place.
#[derive(Debug, Clone, Default, PartialEq, Eq, Deserialize, JsonSchema, TS)]
#[serde(default, deny_unknown_fields)]
pub struct RestoreQuestion {
    /// One of those beside the register, by its name; without it the bytes of a file.
    #[ts(optional)]
    pub kept: Option<String>,
}

/// Puts a backup in the place of the register, of which a copy stays beside it under another name, and goes on as a new
/// device. Also where the register can not be opened.
///
/// # Errors
/// There is no such backup, it is no register or is damaged, or another program has the register open: all stays as
/// it is.
pub fn restore(api: &mut Api, asked: RestoreQuestion, backup: &[u8]) -> Result<Answer<Verified>, ApiError> {
    let path = api.register_path()?.to_owned();
    let restored = beside(&path, "restored-part");
    // A part left by an attempt that was cut short would be in the way.
    let _ = std::fs::remove_file(&restored);
    let device = DeviceId::from_bytes(api.world.random());
    match asked.kept {
        // Those beside the register carry no photos: these stay where they are.
        Some(name) => drop(hosewright_store::restore(kept(api, &path, &name)?, &restored, device)?),
        None => from_bytes(&path, backup, &restored, device)?,
    }
    let aside = beside(&path, &format!("before-{}", api.world.now().format("%Y%m%dT%H%M%S")));
    let replaced = hosewright_store::replace(&restored, api.register.take(), &path, &aside);
    let opened = api.open(&path);
    replaced?;
    opened?;
    verify(api, Nothing {}, &[])
}

/// The file of a backup that is listed; a name that is none reaches no other file.
fn kept(api: &Api, register: &Path, name: &str) -> Result<PathBuf, ApiError> {
    let listed = hosewright_store::backups(register)?;
    let found = listed.iter().find(|kept| kept.name == name);
    let found = found
        .ok_or_else(|| ApiError::nothing("kept", api.words.say("backups-no-such", &[("name", &name)])))?;
    Ok(hosewright_store::backups_of(register).join(&found.name))
}

fn from_bytes(register: &Path, backup: &[u8], to: &Path, device: DeviceId) -> Result<(), ApiError> {
    let incoming = beside(register, "incoming-part");
    std::fs::write(&incoming, backup).map_err(|error| ApiError::refused(&incoming, "written", &error))?;
    let restored = hosewright_store::restore(&incoming, to, device)
        .and_then(|_| hosewright_store::restore_photos(&incoming, register));
    let _ = std::fs::remove_file(&incoming);
    Ok(restored?)
}

fn beside(path: &Path, name: &str) -> PathBuf {
    let mut file = path.as_os_str().to_owned();
    file.push(".");
    file.push(name);
    PathBuf::from(file)
}
