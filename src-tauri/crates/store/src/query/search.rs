//! Search over codes, hoses, places, machines and sites.

use super::PlaceAt;
use crate::derive::{HOSES, MACHINES, PLACES, SITES};
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
        /// What is on record of it contradicts itself.
        unsettled: bool,
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
        /// What is on record of it contradicts itself.
        unsettled: bool,
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
    /// What has a word that begins with each word of the text, in any order and either case: a hose by its code (with or
    /// without hyphens), its size, ends, length, and the place, machine and site where it sits; a place, a machine, a
    /// site by their names. Hoses come first, then places, machines and sites, and in each what was recorded last. A
    /// text without a word finds nothing.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn search(&self, text: &str, most: u32) -> Result<Vec<Hit>, Error> {
        self.found(text, SITES, i64::MAX, most)
    }

    /// The places and machines that a text finds, in the order of [`Register::search`].
    ///
    /// # Errors
    /// The register can not be read.
    pub fn search_things(&self, text: &str, most: u32) -> Result<Vec<Hit>, Error> {
        self.found(text, MACHINES, HOSES - 1, most)
    }

    fn found(&self, text: &str, from: i64, to: i64, most: u32) -> Result<Vec<Hit>, Error> {
        let Some(words) = beginnings(text) else { return Ok(Vec::new()) };
        let mut statement = self.db.prepare_cached(include_str!("search.sql"))?;
        let hits = statement.query_map(params![words, most, from, to], hit)?;
        Ok(hits.collect::<Result<_, _>>()?)
    }

    /// How SQLite would go about a search: a test holds that it goes by the index of words alone.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn search_plan(&self) -> Result<Vec<String>, Error> {
        super::plan(&self.db, include_str!("search.sql"), params!["\"a\"*", 1, 0, i64::MAX])
    }
}

/// The words of a text as beginnings of words; none where it has no word. What is no letter and no digit parts words, as
/// it does in what is searched.
pub(super) fn beginnings(text: &str) -> Option<String> {
    let words = text.split(|letter: char| !letter.is_alphanumeric()).filter(|word| !word.is_empty());
    let beginnings: Vec<String> = words.map(|word| format!("\"{}\"*", word.to_lowercase())).collect();
    (!beginnings.is_empty()).then(|| beginnings.join(" AND "))
}

fn hit(row: &Row<'_>) -> rusqlite::Result<Hit> {
    let number: i64 = row.get("number_found")?;
    Ok(if number >= HOSES {
        Hit::Hose {
            code: rows::parsed(row, "code")?,
            at: match row.get::<_, Option<String>>("place")? {
                Some(_) => Some(super::place::place_at(row)?),
                None => None,
            },
            unsettled: row.get("unsettled")?,
        }
    } else if number >= PLACES {
        Hit::Place { at: super::place::place_at(row)?, failed: row.get("failed")? }
    } else if number >= MACHINES {
        Hit::Machine {
            machine: rows::parsed(row, "machine")?,
            name: row.get("machine_name")?,
            site_name: row.get("site_name")?,
            unsettled: row.get("unsettled")?,
        }
    } else {
        Hit::Site { site: rows::parsed(row, "site")?, name: row.get("site_name")? }
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_is_taken_as_beginnings_of_words_whatever_stands_between_them() {
        assert_eq!(beginnings("Stick rod"), Some("\"stick\"* AND \"rod\"*".to_owned()));
        assert_eq!(beginnings("3292T-Z4P"), Some("\"3292t\"* AND \"z4p\"*".to_owned()));
        for text in ["", "  ", "-/\"*", "'"] {
            assert_eq!(beginnings(text), None, "{text}");
        }
    }
}
