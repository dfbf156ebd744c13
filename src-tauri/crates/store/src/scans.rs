//! What was scanned on this device, beside the log: a scan changes nothing of a hose.

use crate::{Error, Register, rows};
use chrono::{DateTime, Utc};
use hosewright_core::check::Verdict;
use hosewright_core::record::DeviceId;
use hosewright_core::tag::{TagCode, TagStanding};
use rusqlite::types::Type;
use rusqlite::{Row, TransactionBehavior, params};
use schemars::JsonSchema;
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The latest scans that are kept; those before them go.
const KEPT: u32 = 2000;

/// A camera reads the same tag many times a second: within so many milliseconds it is one scan.
const ONE_SCAN_MS: i64 = 60_000;

/// A scan to be kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Scanned {
    /// The code, where it could be read.
    pub code: Option<TagCode>,
    /// How it came in.
    pub way: ScanWay,
    /// What the tag was judged to be.
    pub standing: TagStanding,
    /// The gravest thing that was said of it.
    pub verdict: Verdict,
}

/// How a code came in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum ScanWay {
    /// Off a picture.
    Picture,
    /// Typed or pasted.
    Typed,
}

/// A scan as it was kept.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct ScanKept {
    /// Its number here.
    #[ts(type = "number")]
    pub id: i64,
    /// When.
    pub time: DateTime<Utc>,
    /// The device that scanned, by the id it writes under.
    pub device: DeviceId,
    /// The code; none where it could not be read.
    pub code: Option<TagCode>,
    /// How it came in.
    pub way: ScanWay,
    /// What the tag was judged to be.
    pub standing: TagStanding,
    /// The gravest thing that was said of it.
    pub verdict: Verdict,
}

impl Register {
    /// Keeps a scan, unless it says the same as the one before it, a moment ago.
    ///
    /// # Errors
    /// The register can not be written.
    pub fn keep_scan(&mut self, scan: Scanned, now: DateTime<Utc>) -> Result<(), Error> {
        let device = self.device();
        let ms = now.timestamp_millis();
        let code = scan.code.map(|code| code.to_string());
        let [way, standing, verdict] = [word(&scan.way)?, word(&scan.standing)?, word(&scan.verdict)?];
        let tx = self.db.transaction_with_behavior(TransactionBehavior::Immediate)?;
        let again = tx
            .prepare_cached(
                "SELECT 1 FROM (SELECT * FROM scan ORDER BY id DESC LIMIT 1)
                 WHERE code IS ?1 AND way = ?2 AND standing = ?3 AND verdict = ?4 AND ?5 - ms BETWEEN 0 AND ?6",
            )?
            .exists(params![code, way, standing, verdict, ms, ONE_SCAN_MS])?;
        if !again {
            tx.prepare_cached(
                "INSERT INTO scan (ms, device, code, way, standing, verdict) VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
            )?
            .execute(params![ms, device.to_string(), code, way, standing, verdict])?;
            tx.prepare_cached("DELETE FROM scan WHERE id <= (SELECT max(id) FROM scan) - ?1")?
                .execute([KEPT])?;
        }
        Ok(tx.commit()?)
    }

    /// The latest scans, newest first.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn scans(&self, most: u32) -> Result<Vec<ScanKept>, Error> {
        let mut statement = self.db.prepare_cached("SELECT * FROM scan ORDER BY id DESC LIMIT ?1")?;
        let scans = statement.query_map([most], kept)?;
        Ok(scans.collect::<Result<_, _>>()?)
    }
}

/// The word a value of a fixed list is written by.
fn word(value: &impl Serialize) -> Result<String, Error> {
    Ok(serde_json::to_string(value)?.trim_matches('"').to_owned())
}

fn kept(row: &Row<'_>) -> rusqlite::Result<ScanKept> {
    Ok(ScanKept {
        id: row.get("id")?,
        time: DateTime::from_timestamp_millis(row.get("ms")?).unwrap_or_default(),
        device: rows::parsed(row, "device")?,
        code: rows::optional(row, "code")?,
        way: listed(row, "way")?,
        standing: listed(row, "standing")?,
        verdict: listed(row, "verdict")?,
    })
}

/// A word of a fixed list.
fn listed<T: DeserializeOwned>(row: &Row<'_>, column: &str) -> rusqlite::Result<T> {
    let text: String = row.get(column)?;
    serde_json::from_value(text.into()).map_err(|error| {
        let index = row.as_ref().column_index(column).unwrap_or_default();
        rusqlite::Error::FromSqlConversionFailure(index, Type::Text, Box::new(error))
    })
}
