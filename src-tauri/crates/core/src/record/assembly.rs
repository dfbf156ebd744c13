//! A hose assembly as it was made, and its proof.

use super::BenchRecord;
use crate::catalogue::RowMark;
use crate::check::Verdict;
use crate::quantity::Bar;
use crate::spec::{Service, Spec};
use crate::tag::TagCode;
use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A hose assembly under its tag: one we made, or one that was found and tagged.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Assembly {
    /// The code on its tag.
    pub code: TagCode,
    /// What it is.
    pub spec: Spec,
    /// The service it was checked for.
    #[serde(default)]
    pub service: Service,
    /// First day of the period printed on the hose (3Q24 is 2024-07-01).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hose_made: Option<NaiveDate>,
    /// When it was assembled; service life counts from here (DIN 20066). None is not known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub assembled: Option<NaiveDate>,
    /// Whether it was proved.
    pub proof: Proof,
    /// What the check said; none for an assembly that was not checked here.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub verdict: Option<Verdict>,
    /// Working pressure of the assembly: its weakest part's. None is not known, never unlimited.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pressure_bar: Option<Bar>,
    /// What was done at the bench; none where it was made elsewhere or nothing was written down.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bench: Option<Box<BenchRecord>>,
    /// Version of the tables the check rested on.
    pub catalogue: String,
    /// The rows of the tables that it rests on, as they were; none where it was recorded without them.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[ts(optional, as = "Option<Vec<RowMark>>")]
    pub rests_on: Vec<RowMark>,
    /// Version of the program.
    pub program: String,
    /// Whose word it is, where it was taken in from a tag; none where it was entered or made here.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub taken_in: Option<TakenIn>,
}

/// Whose word an assembly that was taken in from a tag is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum TakenIn {
    /// The own fleet's: its seal was true.
    Own,
    /// A partner fleet's: its seal was true.
    Partner,
    /// Nobody's who is known here.
    Unknown,
}

/// State of the proof test.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "state", rename_all = "kebab-case")]
pub enum Proof {
    /// Held without a leak.
    Proved {
        /// Pressure it was held at.
        pressure_bar: Bar,
        /// How long, in seconds.
        hold_s: f64,
        /// The gauge, by its number or mark.
        gauge: String,
        /// When the gauge was last calibrated; none is not known.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        gauge_calibrated: Option<NaiveDate>,
    },
    /// It leaked, moved or burst: the assembly is scrap and is never tagged or fitted.
    Failed {
        /// What happened.
        what: ProofFailure,
        /// Pressure it came to; none is not known.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        pressure_bar: Option<Bar>,
        /// How long it held, in seconds.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        hold_s: Option<f64>,
        /// The gauge, by its number or mark.
        #[serde(default)]
        gauge: String,
        /// When the gauge was last calibrated; none is not known.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        gauge_calibrated: Option<NaiveDate>,
    },
    /// Not proved, and why.
    NotProved {
        /// Why.
        why: NotProved,
    },
}

/// How an assembly failed its proof.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum ProofFailure {
    /// Fluid came out of the hose or at an end.
    Leak,
    /// An end moved on the hose.
    EndMoved,
    /// It burst.
    Burst,
}

/// Why an assembly was not proved.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum NotProved {
    /// No rig on the van.
    NoRig,
    /// Made elsewhere; nobody here knows.
    MadeElsewhere,
}

/// A hose got a label here, or was found with one.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Labelled {
    /// Which hose.
    pub code: TagCode,
    /// How that is known.
    pub how: LabelledHow,
}

/// How it is known that a hose has a label.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum LabelledHow {
    /// Its label was printed.
    Printed,
    /// It was taken in from its tag.
    Seen,
}

impl LabelledHow {
    /// The name it is written by.
    pub const fn name(self) -> &'static str {
        match self {
            LabelledHow::Printed => "printed",
            LabelledHow::Seen => "seen",
        }
    }
}

/// A tag taken out of use: lost, doubled, unreadable, hose scrapped before it was fitted.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct TagWithdrawn {
    /// Which.
    pub code: TagCode,
    /// Why.
    pub reason: String,
}

#[cfg(test)]
pub(super) mod tests {
    use super::*;

    /// An assembly with nothing known but its code.
    pub(in super::super) fn assembly(code: TagCode) -> Assembly {
        Assembly {
            code,
            spec: Spec::default(),
            service: Service::default(),
            hose_made: None,
            assembled: None,
            proof: Proof::NotProved { why: NotProved::NoRig },
            verdict: None,
            pressure_bar: None,
            bench: None,
            catalogue: "tables".into(),
            program: "test".into(),
            rests_on: Vec::new(),
            taken_in: None,
        }
    }

    #[test]
    fn not_proved_is_a_state_with_its_reason() {
        let proof = Proof::NotProved { why: NotProved::NoRig };
        let json = serde_json::to_string(&proof).expect("writes");
        assert_eq!(json, r#"{"state":"not-proved","why":"no-rig"}"#);
    }
}
