//! Jobs that are not done. They change with every key and belong to this device alone, so they stand
//! beside the log: what comes of a job is recorded in it.

use crate::{Error, Register, rows};
use chrono::{DateTime, Utc};
use hosewright_core::record::JobId;
use schemars::JsonSchema;
use serde::Serialize;
use serde_json::Value;
use ts_rs::TS;

/// A half-finished job as its screens left it.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Draft {
    /// Which job.
    pub job: JobId,
    /// When it was kept.
    pub kept: DateTime<Utc>,
    /// Whatever the job needs to go on; nobody but the job reads it.
    pub content: Value,
}

impl Register {
    /// Keeps a job in the place of what was kept of it before. What has returned is on the disk.
    ///
    /// # Errors
    /// The register can not be written.
    pub fn keep_draft(&mut self, job: JobId, content: &Value, now: DateTime<Utc>) -> Result<(), Error> {
        self.db
            .prepare_cached("INSERT OR REPLACE INTO draft (job, content, ms) VALUES (?1, ?2, ?3)")?
            .execute((job.to_string(), content.to_string(), now.timestamp_millis()))?;
        Ok(())
    }

    /// A job is done or given up: it is no longer offered.
    ///
    /// # Errors
    /// The register can not be written.
    pub fn close_draft(&mut self, job: JobId) -> Result<(), Error> {
        self.db.prepare_cached("DELETE FROM draft WHERE job = ?1")?.execute([job.to_string()])?;
        Ok(())
    }

    /// The jobs that are not done, the latest first.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn drafts(&self) -> Result<Vec<Draft>, Error> {
        let mut statement =
            self.db.prepare_cached("SELECT job, ms, content FROM draft ORDER BY ms DESC, job")?;
        let drafts = statement.query_map([], |row| {
            Ok(Draft {
                job: rows::parsed(row, "job")?,
                kept: DateTime::from_timestamp_millis(row.get("ms")?).unwrap_or_default(),
                content: rows::json(row, "content")?,
            })
        })?;
        Ok(drafts.collect::<Result<_, _>>()?)
    }
}
