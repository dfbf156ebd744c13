//! A hose by its tag, with everything that is recorded of it.

use super::{Stay, Versioned, Written, stay, written};
use crate::{Error, Register, rows};
use chrono::NaiveDate;
use hosewright_core::record::{About, Assembly, EventRef, Graded, Hash, PersonId, Proof, Track};
use hosewright_core::spec::Spec;
use hosewright_core::tag::TagCode;
use rusqlite::{Connection, OptionalExtension, Row};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// A hose with its history.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Hose {
    /// Its code.
    pub code: TagCode,
    /// Where it stands in its life.
    pub status: Status,
    /// The assembly; none while another device's record of its making has not arrived.
    pub assembly: Option<Versioned<Assembly>>,
    /// Where it sat and sits, by date.
    pub stays: Vec<Stay>,
    /// Inspections, by date.
    pub inspections: Vec<HoseInspection>,
    /// Whether a label of it was printed, or seen on it.
    pub labelled: bool,
    /// Limits of prudence that were taken on for it.
    pub overrides: Vec<HoseOverride>,
    /// Photos of it.
    pub photos: Vec<HosePhoto>,
    /// Remarks on it.
    pub notes: Vec<HoseNote>,
    /// Events about it that contradict each other, for a person to settle.
    pub conflicts: Vec<EventRef>,
    /// Every event about it, by time.
    pub history: Vec<Written>,
}

/// Where a hose stands in its life.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(tag = "state", rename_all = "kebab-case")]
pub enum Status {
    /// Made, not fitted yet.
    Made,
    /// On a machine.
    Fitted,
    /// Off again.
    TakenOff,
    /// It failed its proof: scrap, never fitted.
    FailedProof,
    /// Its tag was taken out of use.
    Withdrawn {
        /// Why.
        reason: String,
    },
}

/// One inspection.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct HoseInspection {
    /// The event that stands.
    pub version: EventRef,
    /// When.
    pub date: NaiveDate,
    /// What was seen.
    pub findings: Vec<Graded>,
    /// Its ends were opened; else it was looked at in place.
    pub opened: bool,
}

/// A limit of prudence that was taken on.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct HoseOverride {
    /// The event that stands.
    pub version: EventRef,
    /// The finding's rule.
    pub rule: String,
    /// Why.
    pub reason: String,
    /// Who.
    pub person: PersonId,
    /// The person's name, unless it was erased or has not arrived.
    pub name: Option<String>,
}

/// A photo.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct HosePhoto {
    /// The event that stands.
    pub version: EventRef,
    /// Hash of its bytes.
    pub sha256: Hash,
    /// Media type.
    pub mime: String,
    /// Length in bytes.
    #[ts(type = "number")]
    pub length: u64,
}

/// A remark.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct HoseNote {
    /// The event that stands.
    pub version: EventRef,
    /// The remark.
    pub text: String,
}

impl Register {
    /// Every hose of which anything is on record, fitted or not, by code; with its spec where that is.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn hose_specs(&self) -> Result<Vec<(TagCode, Option<Spec>)>, Error> {
        let mut statement = self.db.prepare_cached(
            "SELECT code, json_extract(content, '$.spec') AS spec FROM assembly
             UNION ALL
             SELECT DISTINCT code, NULL FROM stint WHERE code NOT IN (SELECT code FROM assembly)
             ORDER BY code",
        )?;
        let hoses = statement.query_map([], |row| {
            let spec: Option<String> = row.get("spec")?;
            let spec = spec.map(|_| rows::json(row, "spec")).transpose()?;
            Ok((rows::parsed(row, "code")?, spec))
        })?;
        Ok(hoses.collect::<Result<_, _>>()?)
    }

    /// A hose by its code, with everything that is recorded of it; none if nothing is.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn hose(&self, code: &TagCode) -> Result<Option<Hose>, Error> {
        let db = &self.db;
        let tracks = Track::of_hose(*code);
        let history = written::of_tracks(db, &tracks)?;
        if history.is_empty() {
            return Ok(None);
        }
        let key = &code.to_string();
        let about = About::Hose(*code).to_string();
        let assembly: Option<Versioned<Assembly>> =
            rows_of(db, "SELECT version, content FROM assembly WHERE code = ?1", key, |row| {
                Ok(Versioned { version: version(row)?, record: rows::json(row, "content")? })
            })?
            .pop();
        let stays = stay::of(db, Some(code), None)?;
        let conflicts = rows_of(
            db,
            "SELECT event AS version FROM conflict
             WHERE track IN (SELECT value FROM json_each(?1)) ORDER BY event",
            &serde_json::to_string(&tracks)?,
            version,
        )?;
        Ok(Some(Hose {
            code: *code,
            status: status(db, code, &stays, assembly.as_ref().map(|made| &made.record.proof))?,
            assembly,
            stays,
            inspections: rows_of(db, include_str!("hose_inspections.sql"), key, inspection)?,
            labelled: db.prepare_cached("SELECT 1 FROM labelled WHERE code = ?1")?.exists([key])?,
            overrides: rows_of(db, include_str!("hose_overrides.sql"), key, overriding)?,
            photos: rows_of(
                db,
                "SELECT version, sha256, mime, length FROM photo WHERE about = ?1 ORDER BY version",
                &about,
                photo,
            )?,
            notes: rows_of(
                db,
                "SELECT version, text FROM note WHERE about = ?1 ORDER BY version",
                &about,
                |row| Ok(HoseNote { version: version(row)?, text: row.get("text")? }),
            )?,
            conflicts,
            history,
        }))
    }
}

fn status(db: &Connection, code: &TagCode, stays: &[Stay], proof: Option<&Proof>) -> Result<Status, Error> {
    let reason: Option<String> = db
        .prepare_cached("SELECT reason FROM withdrawal WHERE code = ?1")?
        .query_row([code.to_string()], |row| row.get(0))
        .optional()?;
    Ok(match reason {
        Some(reason) => Status::Withdrawn { reason },
        None if stays.iter().any(|stay| stay.off.is_none()) => Status::Fitted,
        None if matches!(proof, Some(Proof::Failed { .. })) => Status::FailedProof,
        None if stays.is_empty() => Status::Made,
        None => Status::TakenOff,
    })
}

fn rows_of<T>(
    db: &Connection,
    sql: &str,
    key: &str,
    read: impl FnMut(&Row<'_>) -> rusqlite::Result<T>,
) -> Result<Vec<T>, Error> {
    let mut statement = db.prepare_cached(sql)?;
    let rows = statement.query_map([key], read)?;
    Ok(rows.collect::<Result<_, _>>()?)
}

fn version(row: &Row<'_>) -> rusqlite::Result<EventRef> {
    rows::parsed(row, "version")
}

fn inspection(row: &Row<'_>) -> rusqlite::Result<HoseInspection> {
    Ok(HoseInspection {
        version: version(row)?,
        date: rows::parsed(row, "date")?,
        findings: rows::json(row, "findings")?,
        opened: row.get("opened")?,
    })
}

fn overriding(row: &Row<'_>) -> rusqlite::Result<HoseOverride> {
    Ok(HoseOverride {
        version: version(row)?,
        rule: row.get("rule")?,
        reason: row.get("reason")?,
        person: rows::parsed(row, "person")?,
        name: row.get("name")?,
    })
}

fn photo(row: &Row<'_>) -> rusqlite::Result<HosePhoto> {
    Ok(HosePhoto {
        version: version(row)?,
        sha256: rows::parsed(row, "sha256")?,
        mime: row.get("mime")?,
        length: rows::unsigned(row, "length")?,
    })
}
