//! `share.left-out`: what a device wrote and does not count, one by one.

use crate::{Answer, Api, ApiError};
use hosewright_core::record::DeviceId;
use hosewright_store::Unheard;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Most that are listed: the latest.
const MOST: usize = 200;

/// Whose.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct LeftOutQuestion {
    /// The device that wrote it.
    pub device: DeviceId,
}

/// What does not count.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct LeftOutList {
    /// The latest first, 200 at most.
    pub events: Vec<Unheard>,
}

/// What a device wrote and does not count, and why.
///
/// # Errors
/// The register can not be read.
pub fn left_out(api: &mut Api, asked: LeftOutQuestion, _: &[u8]) -> Result<Answer<LeftOutList>, ApiError> {
    let events = api.register()?.left_out_of(asked.device, MOST)?;
    Ok(api.answer(LeftOutList { events }))
}
