//! What hoses are put together by.

use crate::key;
use hosewright_core::spec::Line;
use hosewright_store::Spell;
use hosewright_words::Words;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What hoses are put together by.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum LivesBy {
    /// Standard and type of the hose.
    #[default]
    Hose,
    /// The line that the place is on.
    Line,
    /// How much of what the hose may carry its place asks.
    Load,
    /// What the machine is.
    Machine,
    /// Places of one name on machines of one kind.
    Place,
}

/// How much of what the hose may carry its place asks: working pressure or relief, whichever is higher, over its rating.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Load {
    /// Up to half.
    Half,
    /// More, up to three quarters.
    ThreeQuarters,
    /// More, up to all of it.
    Full,
    /// More than it may carry.
    Above,
}

/// Hoses that are put together.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, JsonSchema, TS)]
#[serde(tag = "by", rename_all = "kebab-case")]
pub enum Group {
    /// Of one type.
    Hose {
        /// Its standard.
        standard: String,
        /// Its type.
        #[serde(rename = "type")]
        kind: String,
    },
    /// On one kind of line.
    Line {
        /// Which.
        line: Line,
    },
    /// Loaded alike.
    Load {
        /// How much.
        load: Load,
    },
    /// On one kind of machine.
    Machine {
        /// Which, as it is written there.
        kind: String,
    },
    /// At places of one name, on one kind of machine.
    Place {
        /// The machines' kind.
        kind: String,
        /// What people call the place.
        name: String,
    },
    /// No record says.
    NotKnown,
}

impl Group {
    /// As people name it.
    pub fn named(&self, words: &Words) -> String {
        match self {
            Group::Hose { standard, kind } => format!("{standard} {kind}"),
            Group::Line { line } => words.say(&format!("lives-line-{}", key(line)), &[]),
            Group::Load { load } => words.say(&format!("lives-load-{}", key(load)), &[]),
            Group::Machine { kind } => kind.clone(),
            Group::Place { kind, name } => format!("{kind}, {name}"),
            Group::NotKnown => words.say("lives-not-known", &[]),
        }
    }
}

/// The group of a stay.
pub(super) fn group(spell: &Spell, by: LivesBy) -> Group {
    let line = |line: &String| serde_json::from_value(line.as_str().into()).ok();
    let kind = || spell.machine_kind.clone();
    let known = match by {
        LivesBy::Hose => spell.hose.clone().map(|(standard, kind)| Group::Hose { standard, kind }),
        LivesBy::Line => spell.line.as_ref().and_then(line).map(|line| Group::Line { line }),
        LivesBy::Load => load(spell).map(|load| Group::Load { load }),
        LivesBy::Machine => kind().map(|kind| Group::Machine { kind }),
        LivesBy::Place => {
            kind().zip(spell.at.place_name.clone()).map(|(kind, name)| Group::Place { kind, name })
        }
    };
    known.unwrap_or(Group::NotKnown)
}

fn load(spell: &Spell) -> Option<Load> {
    let part = spell.asked_bar?.get() / spell.pressure_bar.filter(|rating| rating.get() > 0.0)?.get();
    Some(match part {
        part if part <= 0.5 => Load::Half,
        part if part <= 0.75 => Load::ThreeQuarters,
        part if part <= 1.0 => Load::Full,
        _ => Load::Above,
    })
}
