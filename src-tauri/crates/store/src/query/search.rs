//! Search over codes, hoses, places, machines and sites.

use super::PlaceAt;
use crate::{Error, Register, rows};
use hosewright_core::record::{MachineId, SiteId};
use hosewright_core::tag::TagCode;
use rusqlite::{Row, params};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// One thing found.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(tag = "what", rename_all = "kebab-case")]
pub enum Hit {
    /// A hose.
    Hose {
        /// Its code.
        code: TagCode,
        /// Where it sits, if it is fitted.
        at: Option<PlaceAt>,
    },
    /// A place.
    Place {
        /// Where it is.
        at: PlaceAt,
        /// How many hoses failed there.
        failed: u32,
    },
    /// A machine.
    Machine {
        /// Which.
        machine: MachineId,
        /// What people call it.
        name: String,
        /// What people call its site.
        site_name: Option<String>,
    },
    /// A site.
    Site {
        /// Which.
        site: SiteId,
        /// What people call it.
        name: String,
    },
}

impl Register {
    /// What holds every word of the text, in any order and either case: a hose by its code (with or
    /// without hyphens), its size, ends, length, and the place, machine and site where it sits; a
    /// place, a machine, a site by their names. Codes that begin so come first, then hoses,
    /// places, machines and sites. A text without a word finds nothing.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn search(&self, text: &str, most: u32) -> Result<Vec<Hit>, Error> {
        let text = text.to_lowercase();
        let words: Vec<&str> = text.split_whitespace().collect();
        let Some(first) = words.first() else { return Ok(Vec::new()) };
        let mut statement = self.db.prepare_cached(include_str!("search.sql"))?;
        let hits = statement.query_map(params![serde_json::to_string(&words)?, first, most], hit)?;
        Ok(hits.collect::<Result<_, _>>()?)
    }
}

fn hit(row: &Row<'_>) -> rusqlite::Result<Hit> {
    let rank: i64 = row.get("rank")?;
    Ok(match rank {
        0 | 1 => Hit::Hose {
            code: rows::parsed(row, "code")?,
            at: match row.get::<_, Option<String>>("place")? {
                Some(_) => Some(super::place::place_at(row)?),
                None => None,
            },
        },
        2 => Hit::Place { at: super::place::place_at(row)?, failed: row.get("failed")? },
        3 => Hit::Machine {
            machine: rows::parsed(row, "machine")?,
            name: row.get("machine_name")?,
            site_name: row.get("site_name")?,
        },
        _ => Hit::Site { site: rows::parsed(row, "site")?, name: row.get("site_name")? },
    })
}
