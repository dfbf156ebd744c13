//! Bundles, and proving the register.

use crate::commands::{File, Nothing};
use crate::{Answer, Api, ApiError};
use hosewright_core::record::DeviceId;
use hosewright_store::{Bundle, Problem};
use schemars::JsonSchema;
use serde::Serialize;
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
        why: series.why.code().to_owned(),
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
