//! What is recorded beside making and fitting: inspections, overrides, photos, notes.

use super::{Hash, MachineId, PersonId, PlaceId, SiteId};
use crate::check::Verdict;
use crate::tag::TagCode;
use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::fmt;
use ts_rs::TS;

/// A hose looked at in place.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Inspected {
    /// Which hose.
    pub code: TagCode,
    /// When.
    pub date: NaiveDate,
    /// What was seen, each with its gravity. Empty: nothing was found.
    #[serde(default)]
    pub findings: Vec<Graded>,
}

/// One thing seen, and how grave it is.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Graded {
    /// What: a code of the failure causes, such as `ABR`.
    pub sign: String,
    /// How grave.
    pub grade: Verdict,
}

/// A person took a limit of prudence on.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Overridden {
    /// For which hose.
    pub code: TagCode,
    /// The finding's rule.
    pub rule: String,
    /// Why.
    pub reason: String,
    /// Who.
    pub by: PersonId,
}

/// What a photo or a note is about.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum About {
    /// A site.
    Site(SiteId),
    /// A machine.
    Machine(MachineId),
    /// A place on a machine.
    Place(PlaceId),
    /// A hose by its tag.
    Hose(TagCode),
}

impl fmt::Display for About {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            About::Site(id) => write!(to, "site/{id}"),
            About::Machine(id) => write!(to, "machine/{id}"),
            About::Place(id) => write!(to, "place/{id}"),
            About::Hose(code) => write!(to, "hose/{code}"),
        }
    }
}

/// A photo, by the hash of its bytes; the bytes are kept beside the register.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct PhotoAdded {
    /// Of what.
    pub about: About,
    /// Hash of its bytes.
    pub sha256: Hash,
    /// Media type, such as `image/jpeg`.
    pub mime: String,
    /// Length in bytes.
    #[ts(type = "number")]
    pub length: u64,
}

/// A remark. It stays in the log for good: names of people do not belong in it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Noted {
    /// About what.
    pub about: About,
    /// The remark.
    pub text: String,
}
