//! `job`: half-finished jobs, kept at every change so that none is lost when the phone is put away.

use super::Nothing;
use crate::{Answer, Api, ApiError};
use hosewright_core::record::JobId;
use hosewright_store::Draft;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use ts_rs::TS;

/// A job as it stands.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Keep {
    /// Which; a new one without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub job: Option<JobId>,
    /// All that the screens need to go on with it.
    pub content: Value,
}

/// Which job.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Job {
    /// Its id.
    pub job: JobId,
}

/// Keeps a job. What is answered is on the disk.
///
/// # Errors
/// The register can not be written.
pub fn keep(api: &mut Api, asked: Keep, _: &[u8]) -> Result<Answer<Job>, ApiError> {
    let job = asked.job.unwrap_or_else(|| JobId::from_bytes(api.world.random()));
    let now = api.world.now();
    api.register()?.keep_draft(job, &asked.content, now)?;
    Ok(api.answer(Job { job }))
}

/// Jobs that are not done.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Jobs {
    /// The latest first.
    pub jobs: Vec<Draft>,
}

/// Jobs that are not done.
///
/// # Errors
/// The register can not be read.
pub fn list(api: &mut Api, _: Nothing, _: &[u8]) -> Result<Answer<Jobs>, ApiError> {
    let jobs = api.register()?.drafts()?;
    Ok(api.answer(Jobs { jobs }))
}

/// Closes a job: done, or given up.
///
/// # Errors
/// The register can not be written.
pub fn close(api: &mut Api, asked: Job, _: &[u8]) -> Result<Answer<Job>, ApiError> {
    api.register()?.close_draft(asked.job)?;
    Ok(api.answer(asked))
}
