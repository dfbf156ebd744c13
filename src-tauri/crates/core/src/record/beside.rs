//! What is recorded beside making and fitting: inspections, overrides, photos, notes.

use super::{Hash, MachineId, PersonId, PlaceId, SiteId};
use crate::check::Verdict;
use crate::find::Readings;
use crate::tag::TagCode;
use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::fmt;
use ts_rs::TS;

/// A hose looked at.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Inspected {
    /// Which hose.
    pub code: TagCode,
    /// When.
    pub date: NaiveDate,
    /// What was seen, each with its gravity. Empty: nothing was found.
    #[serde(default)]
    pub findings: Vec<Graded>,
    /// Its ends were opened; else it was looked at in place, and what can not be seen there was not.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    #[ts(optional, as = "Option<bool>")]
    pub opened: bool,
}

/// One thing seen, and how grave it is.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Graded {
    /// What: a code of the signs, such as `ABR-WIRE`. One that the tables do not have counts by its grade.
    pub sign: String,
    /// How grave. A lighter grade than that of the tables does not count.
    pub grade: Verdict,
}

/// How far a place was looked into when it was surveyed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum SurveyState {
    /// Read in place, with nothing opened: what can only be read of an open hose stays unsettled.
    NotOpened,
    /// The hose was off.
    Opened,
    /// Nobody could get at it.
    NotReached,
    /// No hose sits there.
    NoHose,
}

/// A place looked at on a walk round the machine.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Surveyed {
    /// Which.
    pub place: PlaceId,
    /// When.
    pub date: NaiveDate,
    /// How far.
    pub state: SurveyState,
    /// The tag that was seen there; none was seen without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub code: Option<TagCode>,
    /// What was read.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub readings: Option<Readings>,
    /// What was seen besides.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub note: Option<String>,
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
