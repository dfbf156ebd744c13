//! What a check found, and what it was asked.

use super::{Case, PRUDENCE};
use crate::catalogue::{Basis, LengthPractice, Provenance};
use crate::find::{Contradiction, EndFound, Found, HoseCandidate, NextReading, Settled, Stray, UnknownHose};
use crate::quantity::{Bar, Dn, Millimetres};
use crate::spec::{Service, Spec};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use ts_rs::TS;

/// How grave. Ordered: the gravest finding is the verdict of the whole.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS,
)]
#[serde(rename_all = "kebab-case")]
pub enum Verdict {
    /// Within its limit.
    Pass,
    /// A person should know and decide.
    Caution,
    /// Must not be made so.
    Stop,
}

/// What a check is asked: a spec, its service and what is known of the original.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct Question {
    /// The assembly to be made.
    pub spec: Spec,
    /// What it will have to stand.
    pub service: Service,
    /// What the original was, as `find` gives it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub found: Option<Evidence>,
    /// Limits of prudence that a person takes on.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub overrides: Vec<Override>,
    /// Whose length tolerances are worked to.
    pub length_practice: LengthPractice,
}

/// What is known of the original hose: `find`'s answer, and what was printed or recorded.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(default, deny_unknown_fields)]
pub struct Evidence {
    /// Hose candidates.
    pub hose: Vec<HoseCandidate>,
    /// End candidates.
    pub ends: Vec<EndFound>,
    /// Probability of an unknown hose.
    pub unknown: UnknownHose,
    /// Whether each part is settled; without it no part that was read is.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub settled: Option<Settled>,
    /// Not used here; accepted because `find`'s answer has it.
    pub next: Vec<NextReading>,
    /// Not used here: a contradiction about what the hose is leaves it unsettled.
    pub contradictions: Vec<Contradiction>,
    /// Not used here: a part with a stray reading is not settled.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[ts(optional, as = "Option<Vec<Stray>>")]
    pub strays: Vec<Stray>,
    /// Not used here; accepted because `find`'s answer has it.
    pub enough: Settled,
    /// Not used here; accepted because `find`'s answer has it.
    pub odd_ends: bool,
    /// Working pressure printed on the old hose or recorded for it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub printed_pressure_bar: Option<Bar>,
    /// Year of manufacture printed on the old hose or recorded for it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub printed_year: Option<u16>,
    /// The catalogue `find` answered from.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub catalogue: Option<String>,
    /// The program that answered.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub program: Option<String>,
}

impl From<Found> for Evidence {
    fn from(found: Found) -> Self {
        Self {
            hose: found.hose,
            ends: found.ends,
            unknown: found.unknown,
            settled: Some(found.settled),
            next: found.next,
            printed_pressure_bar: found.printed_pressure_bar,
            printed_year: found.printed_year,
            ..Self::default()
        }
    }
}

/// A person takes a limit of prudence on. Never pressure, end family, fluid or conductivity.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Override {
    /// The finding's rule.
    pub rule: String,
    /// Who.
    pub by: String,
    /// Why.
    pub reason: String,
}

/// The answer of a check.
///
/// `pass` means that everything was looked at and is within its limit. What nobody said (the surge,
/// the bend, how hot it gets) is a finding of its own, so a pass is never had by leaving a field out.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Checked {
    /// The gravest finding.
    pub verdict: Verdict,
    /// Rating of the whole: its weakest part's. None while a part's is not known.
    pub assembly_pressure_bar: Option<Bar>,
    /// Which part that is: `hose`, `A`, `B` or `adapter`.
    pub weakest: Option<Weakest>,
    /// Length to cut, once both cut-offs are known.
    pub cut_length_mm: Option<Millimetres>,
    /// Tolerance of the overall length: minus (negative) and plus.
    pub length_tolerance_mm: Option<[f64; 2]>,
    /// Where that tolerance is from.
    #[serde(skip)]
    #[ts(skip)]
    pub length_source: Option<Provenance>,
    /// By gravity, gravest first.
    pub findings: Vec<Finding>,
    /// Other hoses that were put through the same check.
    pub alternatives: Vec<Alternative>,
    /// What was not looked at, because nobody said or because the check never does. Same for same leaves most of
    /// this out.
    pub not_checked: Vec<NotChecked>,
    /// What was checked: a build sheet is made of this and of nothing else.
    #[serde(skip)]
    #[ts(skip)]
    pub spec: Spec,
}

/// Something that a check did not look at.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct NotChecked {
    /// What, such as `flow` or `route`.
    pub what: &'static str,
    /// It in words; empty until the edge writes it.
    pub words: String,
}

/// The part that sets the pressure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub enum Weakest {
    /// The hose.
    #[serde(rename = "hose")]
    Hose,
    /// End A.
    A,
    /// End B.
    B,
    /// An adapter.
    #[serde(rename = "adapter")]
    Adapter,
}

/// One thing looked at, with its limit and where the limit comes from.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Finding {
    /// The rule's name, such as `pressure` or `end-unsettled`; the key of its words.
    pub rule: String,
    /// How grave.
    pub verdict: Verdict,
    /// What it is.
    pub value: Option<f64>,
    /// What it may be.
    pub limit: Option<f64>,
    /// Unit of both.
    pub unit: &'static str,
    /// Why, in words; empty until the edge writes it.
    pub why: String,
    /// What to do about it, in words; empty until the edge writes it, and for a pass.
    pub cure: String,
    /// Where the limit comes from.
    pub source: String,
    /// How sure the limit is.
    pub basis: Basis,
    /// Whether it is a limit of prudence, which a person may take on with a name and a reason.
    pub prudence: bool,
    /// Which case of the rule it is.
    #[serde(flatten)]
    #[ts(flatten)]
    pub case: Case,
    /// Names put into the words, such as the `part` or `end` it is about.
    pub names: BTreeMap<&'static str, String>,
}

impl Finding {
    /// A finding with nothing measured yet.
    pub(crate) fn new(rule: &str, verdict: Verdict, case: Case) -> Self {
        Self {
            rule: rule.to_owned(),
            verdict,
            value: None,
            limit: None,
            unit: "",
            why: String::new(),
            cure: String::new(),
            source: String::new(),
            basis: Basis::None,
            prudence: PRUDENCE.contains(&rule),
            case,
            names: BTreeMap::new(),
        }
    }

    /// What it is and what it may be.
    pub(crate) fn measured(self, value: f64, limit: impl Into<Option<f64>>, unit: &'static str) -> Self {
        Self { value: Some(value), limit: limit.into(), unit, ..self }
    }

    /// Where its limit comes from.
    pub(crate) fn from(self, provenance: &Provenance) -> Self {
        Self { source: provenance.source.clone(), basis: provenance.basis, ..self }
    }

    /// A name that stands in its words.
    pub(crate) fn about(mut self, name: &'static str, what: impl Into<String>) -> Self {
        self.names.insert(name, what.into());
        self
    }
}

/// Another hose put through the same check.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Alternative {
    /// Standard.
    pub standard: String,
    /// Type.
    #[serde(rename = "type")]
    pub kind: String,
    /// Nominal diameter.
    pub dn: Dn,
    /// Its verdict in the same service.
    pub verdict: Verdict,
    /// For and against, in words; empty until the edge writes them.
    pub reasons: Vec<String>,
    /// The findings those reasons are written from.
    #[serde(skip)]
    #[ts(skip)]
    pub grounds: Vec<Finding>,
}
