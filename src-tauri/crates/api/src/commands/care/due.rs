//! `register.due`: what falls due, by day or by risk, a page at a time.

use super::first::First;
use super::words;
use crate::commands::register::record_of_life;
use crate::{Answer, Api, ApiError};
use chrono::{Days, NaiveDate};
use hosewright_core::care::{
    Chance, ChanceFrom, Chances, DueFor, FEWEST_FAILURES, Lives, Risk, chances, consequence,
};
use hosewright_core::catalogue::{Catalogue, Provenance};
use hosewright_core::check::{Finding, Verdict, too_much};
use hosewright_core::record::{MachineId, PlaceId, PolicySet, SiteId};
use hosewright_core::tag::TagCode;
use hosewright_store::{AgeCount, Due, DueAsk, DueCounts, DueSite, HoseFilter, HoseState};
use hosewright_words::Words;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::cmp::Ordering;
use ts_rs::TS;

/// Which of what falls due.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
#[ts(optional_fields)]
pub struct DueQuestion {
    /// As of that day; today without.
    pub on: Option<NaiveDate>,
    /// In which order; by day without.
    pub by: Option<DueOrder>,
    /// Of these kinds; all without.
    #[ts(as = "Option<Vec<DueFor>>")]
    pub what: Vec<DueFor>,
    /// On this site.
    pub site: Option<SiteId>,
    /// On this machine.
    pub machine: Option<MachineId>,
    /// At this place.
    pub place: Option<PlaceId>,
    /// Of this hose.
    pub code: Option<TagCode>,
    /// What must not run on alone.
    #[ts(as = "Option<bool>")]
    pub stopped: bool,
    /// Whose day has come, is not known or comes within so many days; all without.
    pub within_days: Option<u32>,
    /// How many days ahead the chance of failing looks; 90 without.
    pub ahead_days: Option<u32>,
    /// So many from the first are left out.
    pub offset: Option<u32>,
    /// So many at most; all without.
    pub limit: Option<u32>,
    /// Tell the whole at a glance as well.
    pub glance: Option<bool>,
}

/// In which order.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum DueOrder {
    /// What must not run on first, then what has no known day, then by day.
    #[default]
    Date,
    /// What must not run on first, then what has no known age, then by chance times consequence.
    Risk,
}

/// What falls due.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct DueList {
    /// As of that day.
    pub on: NaiveDate,
    /// Where the guide value of service life comes from, which holds without a policy of the owner's.
    pub guide: Option<Provenance>,
    /// The owner's policies: a change of one writes all of it anew.
    pub policies: Vec<PolicySet>,
    /// This page of it.
    pub due: Vec<DueLine>,
    /// There is more after this page.
    pub more: bool,
    /// The whole at a glance, where it was asked for.
    pub glance: Option<DueGlance>,
    /// Where the chances come from, by risk.
    pub chances: Option<ChancesSaid>,
}

/// One thing that falls due, and what it puts at risk.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct DueLine {
    /// The hose, the day and why.
    #[serde(flatten)]
    #[ts(flatten)]
    pub due: Due,
    /// What was seen, in words.
    pub seen: Option<FindingSaid>,
    /// What its place asks too much, as the check says it.
    pub asked: Option<Finding>,
    /// Chance times consequence, by risk; none where the age is not known.
    pub risk: Option<Risk>,
}

/// What was seen on a hose.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct FindingSaid {
    /// The sign, by its code.
    pub sign: String,
    /// What it is called.
    pub name: String,
    /// How grave.
    pub grade: Verdict,
    /// When.
    pub seen_on: NaiveDate,
}

/// What falls due at a glance, the page and the days of the question left aside.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct DueGlance {
    /// How much.
    pub counts: DueCounts,
    /// Site by site.
    pub sites: Vec<DueSite>,
    /// Hoses in service by their age in whole years.
    pub ages: Vec<AgeCount>,
}

/// Where chances of failing come from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct ChancesSaid {
    /// From what.
    pub from: ChanceFrom,
    /// How many days they look ahead.
    pub ahead_days: u32,
    /// Failures that are known of.
    pub failures: usize,
    /// How many it takes for the fleet's own lives to be used.
    pub needed: usize,
}

/// How far the chance of failing looks ahead unless it is said: a quarter.
const AHEAD_DAYS: u32 = 90;

/// What falls due.
///
/// # Errors
/// The register can not be read, or a day lies past every calendar.
pub fn due(api: &mut Api, asked: DueQuestion, _: &[u8]) -> Result<Answer<DueList>, ApiError> {
    let on = asked.on.unwrap_or_else(|| api.today());
    let ask = ask(&asked, on)?;
    let by_risk = asked.by == Some(DueOrder::Risk);
    let (mut lines, chances, more) = if by_risk {
        let chances = of_fleet(api, on, asked.ahead_days.unwrap_or(AHEAD_DAYS))?;
        let (lines, more) = by_risk_of(api, on, &ask, &chances)?;
        (lines, Some(said(&chances)), more)
    } else {
        let limit = ask.limit.map(|limit| limit.saturating_add(1));
        let mut lines = self::lines(api, on, &DueAsk { limit, ..ask.clone() })?;
        let more = ask.limit.is_some_and(|limit| lines.len() > limit as usize);
        lines.truncate(ask.limit.map_or(usize::MAX, |limit| limit as usize));
        (lines, None, more)
    };
    word_all(api, &mut lines)?;
    let glance = asked.glance.unwrap_or(false).then(|| glance(api, on, &ask)).transpose()?;
    let register = api.register()?;
    let policies = register.policies()?.into_iter().map(|(policy, _)| policy).collect();
    let guides = register.rules()?.guides();
    let service = guides.into_iter().find(|(what, _)| *what == DueFor::Service);
    let guide = service.map(|(_, age)| age.provenance.clone());
    Ok(api.answer(DueList { on, guide, policies, due: lines, more, glance, chances }))
}

/// The question as the register takes it.
fn ask(asked: &DueQuestion, on: NaiveDate) -> Result<DueAsk, ApiError> {
    let until = asked.within_days.map(|days| {
        on.checked_add_days(Days::new(u64::from(days)))
            .ok_or_else(|| ApiError::input("within_days", "that day is past every calendar"))
    });
    Ok(DueAsk {
        what: asked.what.clone(),
        site: asked.site,
        machine: asked.machine,
        place: asked.place,
        code: asked.code,
        stopped: asked.stopped,
        until: until.transpose()?,
        offset: asked.offset.unwrap_or(0),
        limit: asked.limit,
    })
}

/// The lines of a question by day, without words.
pub(in crate::commands) fn lines(
    api: &mut Api,
    on: NaiveDate,
    ask: &DueAsk,
) -> Result<Vec<DueLine>, ApiError> {
    let register = api.register()?;
    let rules = register.rules()?;
    let due = register.due(on, ask, &rules)?;
    Ok(due.into_iter().map(|due| DueLine { due, seen: None, asked: None, risk: None }).collect())
}

/// What must not run on, of a machine or at a place: what stops it, in words.
pub(in crate::commands) fn stops(api: &mut Api, ask: DueAsk) -> Result<Vec<DueLine>, ApiError> {
    let on = api.today();
    let mut stops = lines(api, on, &DueAsk { stopped: true, ..ask })?;
    word_all(api, &mut stops)?;
    Ok(stops)
}

/// Says whose rule each is, what was seen, and what is asked too much.
pub(super) fn word_all(api: &mut Api, lines: &mut [DueLine]) -> Result<(), ApiError> {
    for line in lines {
        word(&api.words, line);
        line.asked = asked_too_much(api, &line.due)?;
    }
    Ok(())
}

/// What its place asks too much of a hose, where that is why it is due.
fn asked_too_much(api: &mut Api, due: &Due) -> Result<Option<Finding>, ApiError> {
    let Some(at) = due.at.as_ref().filter(|_| due.row.what == DueFor::Asked) else { return Ok(None) };
    let catalogue = api.catalogue;
    let question = api.register()?.asked_of(due.code, at.place)?;
    let found = question.and_then(|question| too_much(catalogue, &question).ok().flatten());
    Ok(found.map(|mut finding| {
        crate::commands::check::word(&api.words, &mut finding);
        finding
    }))
}

/// Says whose rule it is and what was seen.
fn word(words: &Words, line: &mut DueLine) {
    let row = &mut line.due.row;
    let rules = row.rule.iter_mut().chain(row.hours.iter_mut().map(|hours| &mut hours.rule));
    rules.for_each(|rule| words::word(words, rule));
    line.seen = row.finding.as_ref().map(|finding| FindingSaid {
        sign: finding.sign.clone(),
        name: words::sign(words, &finding.sign),
        grade: finding.grade,
        seen_on: finding.seen_on,
    });
}

/// A page by risk: all that is asked for is weighed, and the gravest come first.
fn by_risk_of(
    api: &mut Api,
    on: NaiveDate,
    ask: &DueAsk,
    chances: &Chances,
) -> Result<(Vec<DueLine>, bool), ApiError> {
    let (catalogue, offset) = (api.catalogue, ask.offset as usize);
    let limit = ask.limit.map_or(usize::MAX, |limit| limit as usize);
    let register = api.register()?;
    let rules = register.rules()?;
    let mut gravest = First::of(offset.saturating_add(limit).saturating_add(1), graver);
    register.each_due(on, ask, [&rules], |[due]| {
        for due in due {
            let risk = risk(catalogue, on, &due, chances);
            gravest.see(DueLine { due, seen: None, asked: None, risk });
        }
    })?;
    let mut page: Vec<DueLine> = gravest.take().into_iter().skip(offset).collect();
    let more = page.len() > limit;
    page.truncate(limit);
    Ok((page, more))
}

/// What must not run on first, then what has no known age, then the gravest, then the soonest.
fn graver(one: &DueLine, other: &DueLine) -> Ordering {
    let product = |line: &DueLine| line.risk.as_ref().map_or(f64::INFINITY, |risk| risk.product);
    let day = |line: &DueLine| (line.due.row.due, line.due.code, line.due.row.what);
    let runs = |line: &DueLine| line.due.row.verdict != Verdict::Stop;
    runs(one)
        .cmp(&runs(other))
        .then_with(|| product(other).total_cmp(&product(one)))
        .then_with(|| day(one).cmp(&day(other)))
}

/// Chance times consequence of one line. What must not run on is as likely as can be.
fn risk(catalogue: &Catalogue, on: NaiveDate, due: &Due, chances: &Chances) -> Option<Risk> {
    let consequence = consequence(catalogue, due.stakes.as_deref(), due.consequence);
    let hose = due.hose.as_ref().map(|hose| (hose.standard.clone(), hose.kind.clone()));
    let seen = due.row.finding.as_ref().is_some_and(|finding| finding.grade == Verdict::Stop);
    let stops = seen || due.row.what == DueFor::Asked;
    let chance = if stops {
        Some(Chance { chance: 1.0, from: chances.from() })
    } else {
        chances.of(hose.as_ref(), due.new_on, &due.row, on)
    };
    chance.map(|chance| Risk::of(chance, consequence))
}

/// The chances of this fleet's hoses, from the lives of its own.
fn of_fleet(api: &mut Api, on: NaiveDate, ahead_days: u32) -> Result<Chances, ApiError> {
    let mut lives = Lives::new();
    // The hose whose stays are seen, and the day it was new to service.
    let mut of: Option<(TagCode, Option<NaiveDate>)> = None;
    api.register()?.each_spell(|spell| {
        let new = of.filter(|(code, _)| *code == spell.code).map_or(spell.fitted, |(_, new)| new);
        of = Some((spell.code, new));
        if let Some(record) = new.and_then(|new| record_of_life(&spell, new, on)) {
            lives.entry(spell.hose).or_default().push(record);
        }
    })?;
    Ok(chances(&lives, ahead_days))
}

fn said(chances: &Chances) -> ChancesSaid {
    ChancesSaid {
        from: chances.from(),
        ahead_days: chances.ahead_days(),
        failures: chances.failures(),
        needed: FEWEST_FAILURES,
    }
}

fn glance(api: &mut Api, on: NaiveDate, ask: &DueAsk) -> Result<DueGlance, ApiError> {
    let register = api.register()?;
    let here = HoseFilter {
        site: ask.site,
        machine: ask.machine,
        state: Some(HoseState::Fitted),
        ..HoseFilter::default()
    };
    Ok(DueGlance {
        counts: register.due_counts(on, ask)?,
        sites: register.due_sites(on, &ask.what)?,
        ages: register.hose_ages(on, &here)?,
    })
}
