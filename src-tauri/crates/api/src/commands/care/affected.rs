//! `register.affected`: the hoses that rest on rows of the tables that have changed since.

use crate::{Answer, Api, ApiError};
use hosewright_core::catalogue::{RowMark, RowStands};
use hosewright_core::tag::TagCode;
use hosewright_store::PlaceAt;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What is asked.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
#[ts(optional_fields)]
pub struct AffectedQuestion {
    /// Of this hose alone.
    pub code: Option<TagCode>,
}

/// The hoses that rest on what has changed.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Affected {
    /// The tables now.
    pub tables: String,
    /// Rows that hoses rest on.
    pub checked: usize,
    /// Times that a hose rests on a row that has changed or is gone.
    pub hoses: u32,
    /// Hoses recorded by other tables without their rows: nobody knows what of theirs has changed.
    pub not_known: u32,
    /// The rows that have changed, those that are gone first, and last those that are not known.
    pub rows: Vec<AffectedRow>,
}

/// A row that has changed.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct AffectedRow {
    /// Its table; none where the rows are not known.
    pub table: Option<String>,
    /// What the row is called there.
    pub row: String,
    /// How it stands now; none where it is not known.
    pub stands: Option<RowStands>,
    /// How many hoses.
    pub count: u32,
    /// The first of them, those on machines first.
    pub hoses: Vec<AffectedHose>,
}

/// A hose that rests on it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct AffectedHose {
    /// Its code.
    pub code: TagCode,
    /// Where it sits.
    pub at: Option<PlaceAt>,
    /// The version of the tables it was recorded by.
    pub tables: String,
}

/// Hoses that are shown of a row.
const SHOWN: u32 = 200;

/// The hoses that rest on rows that have changed since they were recorded.
///
/// # Errors
/// The register can not be read, or has no such hose.
pub fn affected(api: &mut Api, asked: AffectedQuestion, _: &[u8]) -> Result<Answer<Affected>, ApiError> {
    let catalogue = api.catalogue;
    let register = api.register()?;
    let marks = match asked.code {
        None => register.rested_on()?,
        Some(code) => {
            let made = register.hose(&code)?.and_then(|hose| hose.assembly);
            let made = made.ok_or_else(|| {
                ApiError::nothing("code", format!("the register has no record of how hose {code} was made"))
            })?;
            let none = RowMark { table: String::new(), row: String::new(), digest: made.record.catalogue };
            let marks = if made.record.rests_on.is_empty() { vec![none] } else { made.record.rests_on };
            marks.into_iter().map(|mark| (mark, 1)).collect()
        }
    };
    let mut answer = Affected {
        tables: catalogue.version.clone(),
        checked: marks.len(),
        hoses: 0,
        not_known: 0,
        rows: vec![],
    };
    for (mark, count) in marks {
        let is_known = !mark.table.is_empty();
        let stands = is_known.then(|| catalogue.stands(&mark));
        if stands == Some(RowStands::Same) || (!is_known && mark.digest == catalogue.version) {
            continue;
        }
        if is_known {
            answer.hoses += count;
        } else {
            answer.not_known += count;
        }
        let hoses = register
            .resting_on(&mark, SHOWN)?
            .into_iter()
            .filter(|hose| asked.code.is_none_or(|code| code == hose.code));
        let hoses = hoses.map(|hose| AffectedHose { code: hose.code, at: hose.at, tables: hose.catalogue });
        answer.rows.push(AffectedRow {
            table: is_known.then_some(mark.table),
            row: mark.row,
            stands,
            count,
            hoses: hoses.collect(),
        });
    }
    answer.rows.sort_by_key(|row| match row.stands {
        Some(RowStands::Gone) => 0,
        Some(_) => 1,
        None => 2,
    });
    Ok(api.answer(answer))
}
