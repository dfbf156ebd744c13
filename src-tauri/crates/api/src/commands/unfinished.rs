//! `unfinished`: what was begun on this device and is no job, kept at every change.

use super::{File, Nothing};
use crate::{Answer, Api, ApiError};
use hosewright_store::{Begun, Unfinished};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use ts_rs::TS;

/// What was begun, as it stands.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct UnfinishedKeep {
    /// Which.
    pub what: Begun,
    /// All that its screen needs to go on with it.
    pub content: Value,
}

/// Which.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct UnfinishedWhat {
    /// Which.
    pub what: Begun,
}

/// What was kept of it.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct UnfinishedRead {
    /// None where nothing was begun, or it is done.
    pub unfinished: Option<Unfinished>,
}

/// Keeps what was begun, and its file where one comes beside it. What is answered is on the disk.
///
/// # Errors
/// The register can not be written.
pub fn keep(api: &mut Api, asked: UnfinishedKeep, file: &[u8]) -> Result<Answer<Nothing>, ApiError> {
    let now = api.world.now();
    let file = Some(file).filter(|file| !file.is_empty());
    api.register()?.keep_unfinished(asked.what, &asked.content, file, now)?;
    Ok(api.answer(Nothing {}))
}

/// What was begun.
///
/// # Errors
/// The register can not be read.
pub fn read(api: &mut Api, asked: UnfinishedWhat, _: &[u8]) -> Result<Answer<UnfinishedRead>, ApiError> {
    let unfinished = api.register()?.unfinished(asked.what)?;
    Ok(api.answer(UnfinishedRead { unfinished }))
}

/// The file it is about, as it was picked.
///
/// # Errors
/// There is none; the register can not be read.
pub fn file(api: &mut Api, asked: UnfinishedWhat, _: &[u8]) -> Result<File, ApiError> {
    let bytes = api.register()?.unfinished_file(asked.what)?;
    let bytes = bytes.ok_or_else(|| ApiError::nothing("what", "no file was kept of it; pick it again"))?;
    Ok(File { name: "unfinished".to_owned(), mime: "application/octet-stream", bytes })
}

/// It is done, or given up.
///
/// # Errors
/// The register can not be written.
pub fn close(api: &mut Api, asked: UnfinishedWhat, _: &[u8]) -> Result<Answer<Nothing>, ApiError> {
    api.register()?.close_unfinished(asked.what)?;
    Ok(api.answer(Nothing {}))
}
