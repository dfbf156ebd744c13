//! What one device hands to another: events and names as lines of text.
//!
//! A header line with the format's number and the counts, a line for each person, a line for each
//! event, and a line with the SHA-256 of all the bytes before it.

use crate::{Error, Register, log, people};
use hosewright_core::record::{Event, EventError, Hash, PersonId};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use thiserror::Error;
use ts_rs::TS;

/// The number of the format below.
const FORMAT: u32 = 1;

/// Events and names on their way from one device to another.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Bundle {
    /// Names of people, erased ones too.
    pub people: Vec<Person>,
    /// Events, series by series.
    pub events: Vec<Event>,
}

/// A person, whom the log knows by id only.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Person {
    /// Who.
    pub id: PersonId,
    /// The name; none once it was erased.
    pub name: Option<String>,
    /// When the name was entered, in milliseconds since 1970 UTC.
    #[ts(type = "number")]
    pub ms: i64,
}

/// A text that is no whole bundle.
#[derive(Debug, Error)]
pub enum BundleError {
    /// No bundle at all.
    #[error("this is no bundle of a register; a bundle begins with a line that names its format")]
    NoHeader,
    /// A format this program does not know.
    #[error("the bundle has format {found}, this program reads {FORMAT}; update this program")]
    Format {
        /// Its format.
        found: u32,
    },
    /// Cut off, or changed on the way.
    #[error("the bundle is not whole: it was cut off or changed on the way; fetch it again")]
    NotWhole,
    /// A line that says nothing a bundle has.
    #[error("line {line} of the bundle is no person")]
    Person {
        /// Which line, from 1.
        line: usize,
        /// Why.
        source: serde_json::Error,
    },
    /// A line that is no event.
    #[error("line {line} of the bundle is no event")]
    Event {
        /// Which line, from 1.
        line: usize,
        /// Why.
        source: EventError,
    },
}

#[derive(Serialize, Deserialize)]
struct Header {
    hosewright_bundle: u32,
    people: usize,
    events: usize,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Trailer {
    sha256: Hash,
}

impl Bundle {
    /// The bundle as text.
    ///
    /// # Errors
    /// An event has a body that is no JSON; none that a register gave has.
    pub fn write(&self) -> Result<String, Error> {
        let header =
            Header { hosewright_bundle: FORMAT, people: self.people.len(), events: self.events.len() };
        let mut text = serde_json::to_string(&header)? + "\n";
        for person in &self.people {
            text += &serde_json::to_string(person)?;
            text.push('\n');
        }
        for event in &self.events {
            text += &event.line()?;
            text.push('\n');
        }
        let trailer = Trailer { sha256: Hash::of(&text) };
        Ok(text + &serde_json::to_string(&trailer)? + "\n")
    }

    /// Reads a bundle.
    ///
    /// # Errors
    /// The text is no bundle, was cut off or changed, or is of a format this program does not know.
    pub fn read(text: &str) -> Result<Self, BundleError> {
        let first = text.lines().next().unwrap_or_default();
        let header: Header = serde_json::from_str(first).map_err(|_| BundleError::NoHeader)?;
        if header.hosewright_bundle != FORMAT {
            return Err(BundleError::Format { found: header.hosewright_bundle });
        }
        let (body, last) =
            text.strip_suffix('\n').and_then(|text| text.rsplit_once('\n')).ok_or(BundleError::NotWhole)?;
        let trailer: Trailer = serde_json::from_str(last).map_err(|_| BundleError::NotWhole)?;
        let reckoned = Sha256::new().chain_update(body).chain_update("\n").finalize();
        if trailer.sha256 != Hash::from_bytes(reckoned.into()) {
            return Err(BundleError::NotWhole);
        }
        let mut lines = (1..).zip(body.split('\n')).skip(1);
        let people = lines
            .by_ref()
            .take(header.people)
            .map(|(line, text)| {
                serde_json::from_str(text).map_err(|source| BundleError::Person { line, source })
            })
            .collect::<Result<_, _>>()?;
        let events = lines
            .map(|(line, text)| Event::from_line(text).map_err(|source| BundleError::Event { line, source }))
            .collect::<Result<Vec<_>, _>>()?;
        if events.len() != header.events {
            return Err(BundleError::NotWhole);
        }
        Ok(Self { people, events })
    }
}

impl Register {
    /// Everything the register knows, to hand to another device.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn bundle(&self) -> Result<Bundle, Error> {
        Ok(Bundle { people: people::all(&self.db)?, events: log::all(&self.db)? })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_empty_bundle_comes_back() {
        let text = Bundle::default().write().expect("writes");
        assert_eq!(Bundle::read(&text).expect("reads"), Bundle::default());
    }

    #[test]
    fn a_bundle_that_was_cut_off_or_changed_is_refused() {
        let person = Person { id: PersonId::from_bytes([5; 16]), name: Some("N. N.".into()), ms: 7 };
        let text = Bundle { people: vec![person], events: vec![] }.write().expect("writes");
        for end in 0..text.len() {
            assert!(Bundle::read(&text[..end]).is_err(), "taken when cut off after {end} bytes");
        }
        let changed = text.replacen("N. N.", "M. M.", 1);
        assert!(matches!(Bundle::read(&changed), Err(BundleError::NotWhole)));
        let newer = text.replacen("\"hosewright_bundle\":1", "\"hosewright_bundle\":2", 1);
        assert!(matches!(Bundle::read(&newer), Err(BundleError::Format { found: 2 })));
    }
}
