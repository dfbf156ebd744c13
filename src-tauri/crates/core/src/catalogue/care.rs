//! What the care of hoses rests on: how hard a place is on them, what is seen at an inspection and what it does,
//! and what a failure puts at risk.

use super::Provenance;
use super::table::{CatalogueError, Row};
use crate::check::Verdict;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// How hard a machine or place is on its hoses.
#[derive(
    Debug, Clone, Copy, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS,
)]
#[serde(rename_all = "kebab-case")]
pub enum Demand {
    /// As usual.
    #[default]
    Normal,
    /// Harder: shifts round the clock, heat, dirt, short cycles.
    Harsh,
}

impl Demand {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Normal, Self::Harsh];

    /// Its name in the contract.
    pub const fn name(self) -> &'static str {
        match self {
            Demand::Normal => "normal",
            Demand::Harsh => "harsh",
        }
    }
}

/// What a failure at a place puts at risk.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS,
)]
#[serde(rename_all = "kebab-case")]
pub enum Stake {
    /// Someone works or passes beside it.
    SomeoneBeside,
    /// It holds a load, a boom or a person up.
    LoadHeldUp,
    /// A hot surface lies within reach of a jet.
    HotSurface,
    /// Help and spares are far away.
    Remote,
}

impl Stake {
    /// All of them, the gravest first.
    pub const ALL: [Self; 4] = [Self::SomeoneBeside, Self::LoadHeldUp, Self::HotSurface, Self::Remote];

    /// Its name in the contract.
    pub const fn name(self) -> &'static str {
        match self {
            Stake::SomeoneBeside => "someone-beside",
            Stake::LoadHeldUp => "load-held-up",
            Stake::HotSurface => "hot-surface",
            Stake::Remote => "remote",
        }
    }
}

/// How bad it is, from 1 to 5.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct StakeWeight {
    /// The stake's name; `none` where none of them holds, `not-said` where nobody has looked.
    pub key: String,
    /// From 1, a nuisance, to 5, someone may be hurt.
    pub weight: u8,
    /// What it is called.
    pub name: String,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

/// What kind of thing is seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum SignGroup {
    /// The cover.
    Cover,
    /// The shape of the hose.
    Shape,
    /// Fluid outside.
    Leak,
    /// The ends and ferrules.
    End,
    /// How it lies.
    Routing,
    /// What stands on it.
    Marking,
    /// What no other group has.
    Other,
}

/// How long something that was seen stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum StandsUntil {
    /// As long as that hose is in use: it does not heal.
    Off,
    /// Until an inspection that does not find it any more.
    Next,
}

/// Something seen at an inspection, and what it does.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sign {
    /// Code, such as `ABR-WIRE`.
    pub code: String,
    /// What kind of thing.
    pub group: SignGroup,
    /// The cause of failure it leads to, by its code.
    pub cause: String,
    /// What is seen.
    pub name: String,
    /// What to do.
    pub act: String,
    /// A stop stops the machine; a caution moves the day.
    pub grade: Verdict,
    /// Due at most so many days after the inspection; none for a stop, which is due at once.
    pub within_days: Option<u16>,
    /// How long it stands.
    pub until: StandsUntil,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

pub(super) const SIGN_COLUMNS: &str = "code,group,cause,name,act,grade,within_days,until,source,basis,note";
pub(super) const STAKE_COLUMNS: &str = "key,weight,name,source,basis,note";

impl Sign {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        let (grade, within_days) =
            (row.name("grade")?, row.optional_value("within_days", "a number of days")?);
        match (grade, within_days) {
            (Verdict::Stop, None) | (Verdict::Caution, Some(_)) => {}
            (Verdict::Stop, Some(_)) => return Err(row.wrong("within_days", "blank: a stop is due at once")),
            (Verdict::Caution, None) => return Err(row.wrong("within_days", "a number of days")),
            (Verdict::Pass, _) => return Err(row.wrong("grade", "caution or stop")),
        }
        Ok(Self {
            code: row.text("code")?,
            group: row.name("group")?,
            cause: row.text("cause")?,
            name: row.text("name")?,
            act: row.text("act")?,
            grade,
            within_days,
            until: row.name("until")?,
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}

impl StakeWeight {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        let weight = row.value("weight", "a number from 1 to 5")?;
        if !(1..=5).contains(&weight) {
            return Err(row.wrong("weight", "a number from 1 to 5"));
        }
        Ok(Self {
            key: row.text("key")?,
            weight,
            name: row.text("name")?,
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}
