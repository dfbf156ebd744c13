//! What was begun on this device and is no job, beside the log: one of each kind.

use crate::{Error, Register, rows};
use chrono::{DateTime, Utc};
use rusqlite::OptionalExtension;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use ts_rs::TS;

/// What can be left half done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Begun {
    /// A supplier's sheet whose columns are being matched.
    SupplierSheet,
    /// A supplier's row that is being entered by hand.
    SupplierRow,
}

impl Begun {
    fn key(self) -> &'static str {
        match self {
            Self::SupplierSheet => "supplier-sheet",
            Self::SupplierRow => "supplier-row",
        }
    }
}

/// It as its screen left it.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Unfinished {
    /// When it was kept.
    pub kept: DateTime<Utc>,
    /// Whatever the screen needs to go on; nobody but the screen reads it.
    pub content: Value,
}

impl Register {
    /// Keeps it in the place of what was kept of it before; its file stays where none is given. What has returned is on
    /// the disk.
    ///
    /// # Errors
    /// The register can not be written.
    pub fn keep_unfinished(
        &mut self,
        what: Begun,
        content: &Value,
        file: Option<&[u8]>,
        now: DateTime<Utc>,
    ) -> Result<(), Error> {
        self.db
            .prepare_cached(
                "INSERT INTO unfinished (what, content, file, ms) VALUES (?1, ?2, ?3, ?4)
                 ON CONFLICT (what) DO UPDATE
                 SET content = excluded.content, file = coalesce(excluded.file, file), ms = excluded.ms",
            )?
            .execute((what.key(), content.to_string(), file, now.timestamp_millis()))?;
        Ok(())
    }

    /// What was begun; none where nothing was, or it is done.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn unfinished(&self, what: Begun) -> Result<Option<Unfinished>, Error> {
        let mut statement = self.db.prepare_cached("SELECT content, ms FROM unfinished WHERE what = ?1")?;
        let found = statement.query_row([what.key()], |row| {
            Ok(Unfinished {
                kept: DateTime::from_timestamp_millis(row.get("ms")?).unwrap_or_default(),
                content: rows::json(row, "content")?,
            })
        });
        Ok(found.optional()?)
    }

    /// The file it is about.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn unfinished_file(&self, what: Begun) -> Result<Option<Vec<u8>>, Error> {
        let mut statement = self.db.prepare_cached("SELECT file FROM unfinished WHERE what = ?1")?;
        let found = statement.query_row([what.key()], |row| row.get::<_, Option<Vec<u8>>>("file"));
        Ok(found.optional()?.flatten())
    }

    /// It is done or given up.
    ///
    /// # Errors
    /// The register can not be written.
    pub fn close_unfinished(&mut self, what: Begun) -> Result<(), Error> {
        self.db.prepare_cached("DELETE FROM unfinished WHERE what = ?1")?.execute([what.key()])?;
        Ok(())
    }
}
