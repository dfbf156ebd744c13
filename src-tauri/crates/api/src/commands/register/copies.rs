//! Bundles, backups, and proving the register.

use crate::commands::{File, Nothing};
use crate::{Answer, Api, ApiError};
use hosewright_core::record::DeviceId;
use hosewright_store::{Bundle, Problem, Refusal, Register};
use schemars::JsonSchema;
use serde::Serialize;
use std::path::{Path, PathBuf};
use ts_rs::TS;

/// This register's events for another device.
///
/// # Errors
/// The register can not be read.
pub fn export_bundle(api: &mut Api, _: Nothing, _: &[u8]) -> Result<File, ApiError> {
    let bundle = api.register()?.bundle()?.write()?;
    Ok(File { name: "hosewright.bundle".to_owned(), mime: "application/jsonl", bytes: bundle.into_bytes() })
}

/// What a merge did.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Merged {
    /// Events that were new.
    pub added: u64,
    /// Events that were there already.
    pub had: u64,
    /// Events that wait for earlier ones of their device.
    pub held: u64,
    /// Series that do not fit.
    pub refused: Vec<RefusedSeries>,
}

/// A series that was refused.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct RefusedSeries {
    /// Whose.
    pub device: DeviceId,
    /// From which number on.
    pub from: u64,
    /// `fork` or `broken-chain`.
    pub why: String,
}

/// Takes in another device's bundle. Twice, or in another order, gives the same register.
///
/// # Errors
/// The bundle is not whole, or the register can not be written.
pub fn merge(api: &mut Api, _: Nothing, bundle: &[u8]) -> Result<Answer<Merged>, ApiError> {
    let text = std::str::from_utf8(bundle)
        .map_err(|_| ApiError::input("", "this is no bundle of a register; a bundle is text in UTF-8"))?;
    let bundle = Bundle::read(text).map_err(|error| ApiError::input("", error))?;
    let merged = api.register()?.merge(&bundle)?;
    let refused = merged.refused.iter().map(|series| RefusedSeries {
        device: series.device,
        from: series.from,
        why: match series.why {
            Refusal::Fork => "fork".to_owned(),
            Refusal::BrokenChain => "broken-chain".to_owned(),
        },
    });
    let merge =
        Merged { added: merged.added, had: merged.had, held: merged.held, refused: refused.collect() };
    Ok(api.answer(merge))
}

/// What a verification found.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Verified {
    /// Events looked at.
    pub events: u64,
    /// Devices that wrote them.
    pub devices: u64,
    /// What is wrong; empty when all is well.
    pub faults: Vec<String>,
}

/// Walks the log, reckons every hash anew and compares the tables with what the log gives.
///
/// # Errors
/// The register can not be read at all.
pub fn verify(api: &mut Api, _: Nothing, _: &[u8]) -> Result<Answer<Verified>, ApiError> {
    let verified = api.register()?.verify()?;
    let words = &api.words;
    let faults = verified.faults.into_iter().map(|fault| {
        let (key, cause) = match fault.problem {
            Problem::Unreadable => ("fault-unreadable", String::new()),
            Problem::Changed => ("fault-changed", String::new()),
            Problem::BrokenChain => ("fault-broken-chain", String::new()),
            Problem::Tables => ("fault-tables", String::new()),
            Problem::File(cause) => ("fault-file", cause),
        };
        words.say(key, &[("event", &fault.event), ("cause", &cause)])
    });
    let checked = Verified { events: verified.events, devices: verified.devices, faults: faults.collect() };
    Ok(api.answer(checked))
}

/// Builds the tables anew from the log.
///
/// # Errors
/// The register can not be read or written.
pub fn rebuild(api: &mut Api, _: Nothing, _: &[u8]) -> Result<Answer<Verified>, ApiError> {
    api.register()?.rebuild()?;
    verify(api, Nothing {}, &[])
}

/// The whole register as a file.
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

/// Puts a backup in the place of the open register, which is kept beside it under another name, and goes on
/// as a new device.
///
/// # Errors
/// The backup is no register or is damaged: the open register stays as it is.
pub fn restore(api: &mut Api, _: Nothing, backup: &[u8]) -> Result<Answer<Verified>, ApiError> {
    let path = api.register()?.path().to_owned();
    let [incoming, restored] = ["incoming-part", "restored-part"].map(|name| beside(&path, name));
    let failed = |error: std::io::Error| ApiError::refused(&path, "written", &error);
    std::fs::write(&incoming, backup).map_err(failed)?;
    // A part left by an attempt that was cut short would be in the way.
    let _ = std::fs::remove_file(&restored);
    let device = DeviceId::from_bytes(api.world.random());
    let made = hosewright_store::restore(&incoming, &restored, device);
    let _ = std::fs::remove_file(&incoming);
    drop(made?);
    let old = beside(&path, &format!("before-{}", api.world.now().format("%Y%m%dT%H%M%S")));
    api.register = None;
    let moved = std::fs::rename(&path, &old).and_then(|()| std::fs::rename(&restored, &path));
    api.register = Some(Register::open(&path, device)?);
    moved.map_err(failed)?;
    verify(api, Nothing {}, &[])
}

fn beside(path: &Path, name: &str) -> PathBuf {
    let mut file = path.as_os_str().to_owned();
    file.push(".");
    file.push(name);
    PathBuf::from(file)
}
