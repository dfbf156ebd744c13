//! Jobs that are not done.

use crate::{Error, Register, rows};
use chrono::{DateTime, Utc};
use hosewright_core::record::{EventRef, JobId};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// A half-finished job as its screens left it.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Draft {
    /// Which job.
    pub job: JobId,
    /// The event that stands.
    pub version: EventRef,
    /// When it was kept.
    pub kept: DateTime<Utc>,
    /// Whatever the job needs to go on.
    pub content: serde_json::Value,
}

impl Register {
    /// The jobs that are not done, the latest first.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn drafts(&self) -> Result<Vec<Draft>, Error> {
        let mut statement =
            self.db.prepare_cached("SELECT job, version, ms, content FROM draft ORDER BY ms DESC, job")?;
        let drafts = statement.query_map([], |row| {
            Ok(Draft {
                job: rows::parsed(row, "job")?,
                version: rows::parsed(row, "version")?,
                kept: DateTime::from_timestamp_millis(row.get("ms")?).unwrap_or_default(),
                content: rows::json(row, "content")?,
            })
        })?;
        Ok(drafts.collect::<Result<_, _>>()?)
    }
}
