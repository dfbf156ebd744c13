//! How long the hoses of this register last.

use crate::{Answer, Api, ApiError};
use chrono::NaiveDate;
use hosewright_core::life::{Life, Record, life as reckon};
use hosewright_core::spec::Line;
use hosewright_store::Spell;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use ts_rs::TS;

/// What is asked of the lives of hoses.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct LivesQuestion {
    /// What is put together.
    pub by: LivesBy,
    /// As of which day; today without.
    pub on: Option<NaiveDate>,
}

/// What hoses are put together by.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum LivesBy {
    /// Standard and type of the hose.
    #[default]
    Hose,
    /// The line that the place is on.
    Line,
}

/// How long the hoses of this register last, in years since they were fitted.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Lives {
    /// As of that day.
    pub on: NaiveDate,
    /// The groups, the one with most failures first.
    pub groups: Vec<LivesOf>,
    /// Stays that say nothing of a life and are in no group: nobody knows when that hose was fitted, or its days contradict.
    pub left_out: usize,
}

/// The lives of one group.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct LivesOf {
    /// Which hoses.
    pub of: Group,
    /// The longest that any was watched, in years: nothing is known beyond it.
    pub longest: f64,
    /// What it says, in years.
    pub life: Life,
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
    /// No record says.
    NotKnown,
}

/// How long hoses last here: Kaplan-Meier and Weibull for each group. A hose that came off whole, or is still on, counts
/// as far as it was watched; one that was moved counts at its age.
///
/// # Errors
/// The register can not be read.
pub fn life(api: &mut Api, asked: LivesQuestion, _: &[u8]) -> Result<Answer<Lives>, ApiError> {
    let on = asked.on.unwrap_or_else(|| api.today());
    let spells = api.register()?.spells()?;
    let mut groups: BTreeMap<Group, Vec<Record>> = BTreeMap::new();
    let mut left_out = 0;
    for hose in spells.chunk_by(|one, other| one.code == other.code) {
        let new = hose.first().and_then(|spell| spell.fitted);
        for spell in hose {
            match new.and_then(|new| record(spell, new, on)) {
                Some(record) => groups.entry(group(spell, asked.by)).or_default().push(record),
                None => left_out += 1,
            }
        }
    }
    let mut groups: Vec<LivesOf> = groups.into_iter().map(|(of, records)| lives_of(of, &records)).collect();
    groups.sort_by_key(|group| std::cmp::Reverse((group.life.failures, group.life.n)));
    Ok(api.answer(Lives { on, groups, left_out }))
}

fn lives_of(of: Group, records: &[Record]) -> LivesOf {
    let longest = records.iter().map(Record::time).fold(0.0, f64::max);
    LivesOf { of, longest, life: reckon(records) }
}

fn group(spell: &Spell, by: LivesBy) -> Group {
    let line = |line: &String| serde_json::from_value(line.as_str().into()).ok();
    let known = match by {
        LivesBy::Hose => spell.hose.clone().map(|(standard, kind)| Group::Hose { standard, kind }),
        LivesBy::Line => spell.line.as_ref().and_then(line).map(|line| Group::Line { line }),
    };
    known.unwrap_or(Group::NotKnown)
}

/// Mean length of a year.
const YEAR_DAYS: f64 = 365.25;
/// A hose that failed on the day it was fitted lasted some part of it.
const PART_OF_A_DAY: f64 = 0.5;

/// A stay as a life, at ages counted from the day the hose was new to service. None where its days can not be.
pub(in crate::commands) fn record(spell: &Spell, new: NaiveDate, on: NaiveDate) -> Option<Record> {
    let age = |day: NaiveDate| (day - new).num_days() as f64;
    let (entered, ended) = (age(spell.fitted?), age(spell.off.unwrap_or(on)));
    let time = if spell.failed && ended == entered { ended + PART_OF_A_DAY } else { ended };
    Record::new(time / YEAR_DAYS, spell.failed, entered / YEAR_DAYS).ok()
}
