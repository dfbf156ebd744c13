//! How long the hoses of this register last.

mod group;
mod paper;
mod places;

pub use group::{Group, LivesBy, Load};
pub use paper::{LivesPaper, paper};
pub use places::PlaceLives;

use crate::{Answer, Api, ApiError};
use chrono::NaiveDate;
use group::group;
use hosewright_core::life::{Counts, Expected, Fit, LeastCost, Life, Record, least_cost, life_and_fit};
use hosewright_store::Spell;
use places::places;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use ts_rs::TS;

/// What is asked of the lives of hoses.
#[derive(Debug, Clone, Copy, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct LivesQuestion {
    /// What is put together.
    pub by: LivesBy,
    /// As of which day; today without.
    pub on: Option<NaiveDate>,
    /// Since which day every failure is on record: what failed earlier is not known, and hoses that were on by then are
    /// counted from their age on that day. Without it, every hose is counted from the day it was fitted.
    pub since: Option<NaiveDate>,
    /// What a failure costs, with all that comes of it, in the user's money.
    pub failure_cost: Option<f64>,
    /// What a planned replacement costs, in the same money.
    pub planned_cost: Option<f64>,
}

/// How long the hoses of this register last, in years since they were fitted.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Lives {
    /// As of that day.
    pub on: NaiveDate,
    /// Since that day every failure is taken to be on record.
    pub since: Option<NaiveDate>,
    /// The groups, the one with most failures first.
    pub groups: Vec<LivesOf>,
    /// Failures to expect in the next quarter of a year, of all groups of which something can be told; none where of none.
    pub expected: Option<Expected>,
    /// Hoses on machines that are in no expectation: their group has too few failures.
    pub not_expected: usize,
    /// The places with most failures against what was to be expected, the most unlikely first.
    pub places: Vec<PlaceLives>,
    /// Places that were looked at for it: of so many some are bad by chance.
    pub places_looked_at: usize,
    /// Stays that say nothing of a life and are in no group: nobody knows when that hose was fitted, or its days contradict.
    pub left_out: usize,
    /// Stays that ended before `since` and are in no group.
    pub ended_before: usize,
}

/// The lives of one group.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct LivesOf {
    /// Which hoses.
    pub of: Group,
    /// The longest that any was watched, in years: nothing is known beyond it.
    pub longest: f64,
    /// Hoses on machines now.
    pub in_service: usize,
    /// What it says, in years.
    pub life: Life,
    /// Failures to expect in the next quarter of a year; none where too few have failed.
    pub expected: Option<Expected>,
    /// When it costs least to replace; none where too few have failed or the costs were not given.
    pub least_cost: Option<LeastCost>,
    /// Years until as many have failed as it takes to tell, if they go on failing as they did; none where none has.
    pub years_to_tell: Option<f64>,
}

/// How long hoses last here: Kaplan-Meier and Weibull for each group. A hose that came off whole, or is still on, counts
/// as far as it was watched; one that was moved counts at its age; one that an inspection found failed, failed since it
/// was last seen whole.
///
/// # Errors
/// The register can not be read; costs that can not be, or one without the other.
pub fn life(api: &mut Api, asked: LivesQuestion, _: &[u8]) -> Result<Answer<Lives>, ApiError> {
    let lives = lives(api, asked)?;
    Ok(api.answer(lives))
}

fn lives(api: &mut Api, asked: LivesQuestion) -> Result<Lives, ApiError> {
    let ratio = ratio(asked)?;
    let on = asked.on.unwrap_or_else(|| api.today());
    let spells = api.register()?.spells()?;
    let (mut watched, mut left_out, mut ended_before) = (Vec::new(), 0, 0);
    for hose in spells.chunk_by(|one, other| one.code == other.code) {
        let new = hose.first().and_then(|spell| spell.fitted);
        for spell in hose {
            match new.map_or(Said::Nothing, |new| said(spell, new, on, asked.since)) {
                Said::Life(record) => watched.push(Watched { spell, record, from: spell.fitted }),
                Said::Nothing => left_out += 1,
                Said::EndedBefore => ended_before += 1,
            }
        }
    }
    let mut groups: BTreeMap<Group, Vec<&Watched<'_>>> = BTreeMap::new();
    for one in &watched {
        groups.entry(group(one.spell, asked.by)).or_default().push(one);
    }
    let told = groups.into_iter().map(|(of, watched)| lives_of(of, &watched, on, ratio));
    let (mut groups, counts): (Vec<LivesOf>, Vec<Option<Counts>>) = told.unzip();
    let not_expected =
        groups.iter().filter(|group| group.expected.is_none()).map(|group| group.in_service).sum();
    let counts = counts.into_iter().flatten().reduce(|sum, next| sum.and(&next));
    groups.sort_by_key(|group| std::cmp::Reverse((group.life.failures, group.life.n)));
    let (places, places_looked_at) = places(&watched);
    Ok(Lives {
        on,
        since: asked.since,
        groups,
        expected: counts.map(|counts| counts.expected()),
        not_expected,
        places,
        places_looked_at,
        left_out,
        ended_before,
    })
}

/// What a failure costs in planned replacements; none where the user said no costs.
fn ratio(asked: LivesQuestion) -> Result<Option<f64>, ApiError> {
    let cost = |field: &str, cost: f64| {
        let right = cost.is_finite() && cost > 0.0;
        let wrong = || ApiError::input(field, format!("{cost} is no cost; write an amount above 0"));
        right.then_some(cost).ok_or_else(wrong)
    };
    match (asked.failure_cost, asked.planned_cost) {
        (None, None) => Ok(None),
        (Some(failure), Some(planned)) => {
            let ratio = cost("failure_cost", failure)? / cost("planned_cost", planned)?;
            if ratio <= 1.0 {
                let why = "a failure costs no more than a planned replacement: then waiting costs least";
                return Err(ApiError::input(
                    "failure_cost",
                    format!("{why}; give what a failure costs in all"),
                ));
            }
            Ok(Some(ratio))
        }
        (Some(_), None) => Err(ApiError::input("planned_cost", "it is needed beside failure_cost")),
        (None, Some(_)) => Err(ApiError::input("failure_cost", "it is needed beside planned_cost")),
    }
}

/// A stay and what it says of a life.
struct Watched<'a> {
    spell: &'a Spell,
    record: Record,
    from: Option<NaiveDate>,
}

impl Watched<'_> {
    /// On a machine still.
    fn in_service(&self) -> bool {
        self.spell.off.is_none()
    }
}

/// A quarter of a year.
const QUARTER: f64 = 0.25;

fn lives_of(
    of: Group,
    watched: &[&Watched<'_>],
    on: NaiveDate,
    ratio: Option<f64>,
) -> (LivesOf, Option<Counts>) {
    let records: Vec<Record> = watched.iter().map(|one| one.record).collect();
    let longest = records.iter().map(Record::time).fold(0.0, f64::max);
    let (life, fit) = life_and_fit(&records);
    let ages: Vec<f64> = watched.iter().filter(|one| one.in_service()).map(|one| one.record.time()).collect();
    let counts = fit.as_ref().map(|fit: &Fit| Counts::of(fit, &ages, QUARTER));
    let group = LivesOf {
        of,
        longest,
        in_service: ages.len(),
        expected: counts.as_ref().map(Counts::expected),
        least_cost: fit.zip(ratio).and_then(|(fit, ratio)| least_cost(&fit, ratio, longest)),
        years_to_tell: years_to_tell(&life, watched, on),
        life,
    };
    (group, counts)
}

/// By how fast they failed since the first of them was fitted.
fn years_to_tell(life: &Life, watched: &[&Watched<'_>], on: NaiveDate) -> Option<f64> {
    let first = watched.iter().filter_map(|one| one.from).min()?;
    let years = (on - first).num_days() as f64 / YEAR_DAYS;
    (life.failures > 0 && years > 0.0).then(|| life.to_tell.more as f64 * years / life.failures as f64)
}

/// Mean length of a year.
const YEAR_DAYS: f64 = 365.25;
/// A hose that failed on the day it was fitted lasted some part of it.
const PART_OF_A_DAY: f64 = 0.5;

/// What a stay says.
enum Said {
    /// A life, or part of one.
    Life(Record),
    /// Nothing: its days can not be.
    Nothing,
    /// It ended before every failure was put on record.
    EndedBefore,
}

/// A stay as a life in years, from the day the hose was new to service. None where its days can not be.
pub(in crate::commands) fn record(spell: &Spell, new: NaiveDate, on: NaiveDate) -> Option<Record> {
    match said(spell, new, on, None) {
        Said::Life(record) => Some(record),
        Said::Nothing | Said::EndedBefore => None,
    }
}

/// A stay as a life, at ages counted from the day the hose was new to service.
fn said(spell: &Spell, new: NaiveDate, on: NaiveDate, since: Option<NaiveDate>) -> Said {
    let age = |day: NaiveDate| (day - new).num_days() as f64;
    let Some(fitted) = spell.fitted else { return Said::Nothing };
    let off = spell.off.unwrap_or(on);
    if since.is_some_and(|since| off < since) {
        return Said::EndedBefore;
    }
    let entered = age(since.map_or(fitted, |since| since.max(fitted))).max(0.0);
    let years = |days: f64| days / YEAR_DAYS;
    let record = match spell.found.filter(|found| age(found.failed) > entered) {
        Some(found) => {
            Record::between(years(age(found.whole).max(entered)), years(age(found.failed)), years(entered))
        }
        None => {
            let ended = age(off);
            let time = if spell.failed && ended == entered { ended + PART_OF_A_DAY } else { ended };
            Record::new(years(time), spell.failed, years(entered))
        }
    };
    record.map_or(Said::Nothing, Said::Life)
}
