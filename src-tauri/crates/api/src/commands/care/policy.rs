//! `policy`: the owner's rules beside the guides, which holds where and why, and what a change of one would do.

use super::first::First;
use super::words;
use crate::commands::Nothing;
use crate::{Answer, Api, ApiError};
use chrono::{Days, NaiveDate};
use hosewright_core::care::{DueFor, RuleAt, Spot};
use hosewright_core::catalogue::{Basis, Demand};
use hosewright_core::check::Verdict;
use hosewright_core::record::{EventRef, MachineId, PlaceId, PolicySet, Scope, SiteId};
use hosewright_core::spec::Line;
use hosewright_core::tag::TagCode;
use hosewright_store::{Due, DueAsk, PlaceAt};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::cmp::{Ordering, Reverse};
use std::collections::BTreeSet;
use ts_rs::TS;

/// The guides of the tables and the owner's rules over them.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Policies {
    /// The guides.
    pub rules: Vec<GuideRule>,
    /// The owner's.
    pub policies: Vec<PolicyKept>,
}

/// A guide of the tables.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct GuideRule {
    /// What it limits.
    pub what: DueFor,
    /// Where it is so hard on hoses; none is anywhere.
    pub demand: Option<Demand>,
    /// The limit.
    pub years: f64,
    /// The rule, such as `L055`.
    pub id: String,
    /// Where it comes from.
    pub source: String,
    /// How sure that is.
    pub basis: Basis,
    /// Remarks.
    pub note: String,
}

/// A rule of the owner's.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct PolicyKept {
    /// The rule.
    pub policy: PolicySet,
    /// The event that stands.
    pub version: EventRef,
    /// Where it holds and for which hoses, in words.
    pub name: String,
}

/// The guides and the owner's rules.
///
/// # Errors
/// The register can not be read.
pub fn list(api: &mut Api, _: Nothing, _: &[u8]) -> Result<Answer<Policies>, ApiError> {
    let register = api.register()?;
    let (guides, kept) = (register.rules()?.guides(), register.policies()?);
    let mut policies = Vec::new();
    for (policy, version) in kept {
        let name = named(api, &policy)?;
        policies.push(PolicyKept { policy, version, name });
    }
    let rules = guides.into_iter().map(|(what, age)| GuideRule {
        what,
        demand: age.demand,
        years: f64::from(age.months) / 12.0,
        id: age.id.clone(),
        source: age.provenance.source.clone(),
        basis: age.provenance.basis,
        note: age.note.clone(),
    });
    let policies = Policies { rules: rules.collect(), policies };
    Ok(api.answer(policies))
}

/// Where a policy holds by the names people use.
fn named(api: &mut Api, policy: &PolicySet) -> Result<String, ApiError> {
    let register = api.register()?;
    let name = match &policy.scope {
        Scope::Fleet => None,
        Scope::Site(site) => register.sites()?.into_iter().find(|row| row.site == *site).map(|row| row.name),
        Scope::Machine(machine) => register.machine(*machine)?.map(|sheet| sheet.machine.record.name),
        Scope::Place(place) => register.place(*place)?.map(|sheet| {
            let number = sheet.at.number.map(|number| number.to_string());
            let parts = [sheet.at.machine_name, number, sheet.at.place_name];
            parts.into_iter().flatten().collect::<Vec<_>>().join(", ")
        }),
    };
    let holds = words::holds(&api.words, &policy.scope, policy.of);
    Ok(name.map_or_else(|| holds.clone(), |name| format!("{name} ({holds})")))
}

/// Where rules are asked for.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
#[ts(optional_fields)]
pub struct PolicyAtQuestion {
    /// At this place.
    pub place: Option<PlaceId>,
    /// On this machine.
    pub machine: Option<MachineId>,
    /// On this site.
    pub site: Option<SiteId>,
    /// For such a line; a place has its own.
    pub line: Option<Line>,
    /// For such a demand; a place or machine has its own.
    pub demand: Option<Demand>,
}

/// What holds there.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct PolicyAt {
    /// For hoses in service.
    pub service: RuleAt,
    /// For hoses in store.
    pub storage: RuleAt,
    /// Between inspections.
    pub inspection: RuleAt,
}

/// Which rules hold somewhere, and why those.
///
/// # Errors
/// There is no such place or machine.
pub fn at(api: &mut Api, asked: PolicyAtQuestion, _: &[u8]) -> Result<Answer<PolicyAt>, ApiError> {
    let spot = spot(api, &asked)?;
    let rules = api.register()?.rules()?;
    let mut at = PolicyAt {
        service: rules.at(DueFor::Service, &spot),
        storage: rules.at(DueFor::Storage, &spot),
        inspection: rules.at(DueFor::Inspection, &spot),
    };
    for each in [&mut at.service, &mut at.storage, &mut at.inspection] {
        words::word_all(&api.words, each);
    }
    Ok(api.answer(at))
}

fn spot(api: &mut Api, asked: &PolicyAtQuestion) -> Result<Spot, ApiError> {
    let register = api.register()?;
    let mut spot = Spot {
        place: asked.place,
        machine: asked.machine,
        site: asked.site,
        line: asked.line,
        demand: asked.demand,
    };
    if let Some(place) = asked.place {
        let sheet = register.place(place)?;
        let sheet = sheet.ok_or_else(|| ApiError::nothing("place", format!("there is no place {place}")))?;
        let record = &sheet.place.record;
        spot.machine = sheet.at.machine;
        spot.line = spot.line.or(record.service.line).or(record.line);
        spot.demand = spot.demand.or(record.demand);
    }
    if let Some(machine) = spot.machine {
        let sheet = register.machine(machine)?;
        let sheet =
            sheet.ok_or_else(|| ApiError::nothing("machine", format!("there is no machine {machine}")))?;
        spot.site = sheet.machine.record.site;
        spot.demand = spot.demand.or(sheet.machine.record.demand);
    }
    Ok(spot)
}

/// A rule as it would be written down.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct PolicyTry {
    /// The rule.
    pub policy: PolicySet,
    /// As of that day; today without.
    #[serde(default)]
    #[ts(optional)]
    pub on: Option<NaiveDate>,
    /// How many days ahead are looked at; 365 without.
    #[serde(default)]
    #[ts(optional)]
    pub within_days: Option<u32>,
}

/// What a change of a rule would do.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct PolicyTried {
    /// Where it holds and for which hoses, in words.
    pub name: String,
    /// Hoses in its scope that fall due at all.
    pub hoses: usize,
    /// As it is.
    pub before: PolicyCounts,
    /// As it would be.
    pub after: PolicyCounts,
    /// What the rule speaks of, now or as it stands; what is counted is of these alone.
    pub what: Vec<DueFor>,
    /// How many dates would be others.
    pub moved: usize,
    /// How many dates or verdicts would be others.
    pub changed: usize,
    /// The first of them, the gravest and soonest first.
    pub rows: Vec<PolicyMove>,
    /// How many dates would lie past that of the guide, which they do not now.
    pub past_guide: usize,
    /// How many dates have come that would come later.
    pub put_off: usize,
    /// Machines with a hose that would stop and does not now.
    pub machines_stopped: usize,
}

/// Dates of a scope.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct PolicyCounts {
    /// Whose day has come.
    pub past: usize,
    /// That stop.
    pub stopped: usize,
    /// That come within the days that are looked at.
    pub within: usize,
}

/// A date that would be another.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct PolicyMove {
    /// The hose.
    pub code: TagCode,
    /// Where it sits.
    pub at: Option<PlaceAt>,
    /// What falls due.
    pub what: DueFor,
    /// The day as it is.
    pub due_before: Option<NaiveDate>,
    /// And as it would be.
    pub due_after: Option<NaiveDate>,
    /// The verdict as it is.
    pub verdict_before: Verdict,
    /// And as it would be.
    pub verdict_after: Verdict,
}

const WITHIN_DAYS: u32 = 365;
/// Dates that are shown; more would not be read.
const MOVES_SHOWN: usize = 20;

/// What a rule would do, before it is written down. Nothing is written.
///
/// # Errors
/// A limit that can not be; the register can not be read.
pub fn tried(api: &mut Api, asked: PolicyTry, _: &[u8]) -> Result<Answer<PolicyTried>, ApiError> {
    hosewright_core::record::Body::PolicySet(asked.policy.clone())
        .check()
        .map_err(|error| ApiError::input("policy", error))?;
    let on = asked.on.unwrap_or_else(|| api.today());
    let until = on.checked_add_days(Days::new(u64::from(asked.within_days.unwrap_or(WITHIN_DAYS))));
    let until = until.ok_or_else(|| ApiError::input("within_days", "that day is past every calendar"))?;
    let name = named(api, &asked.policy)?;
    let register = api.register()?;
    let before = register.rules()?;
    let after = before.with(asked.policy.clone());
    let stands = before.policies().find(|policy| policy.key() == asked.policy.key());
    let what = spoken_of(&[Some(&asked.policy), stands]);
    let mut ask = DueAsk { what: what.clone(), ..DueAsk::default() };
    match &asked.policy.scope {
        Scope::Fleet => {}
        Scope::Site(site) => ask.site = Some(*site),
        Scope::Machine(machine) => ask.machine = Some(*machine),
        Scope::Place(place) => ask.place = Some(*place),
    }
    let mut seen = Effect::nothing();
    register.each_due(on, &ask, [&before, &after], |both| seen.see(both, on, until))?;
    let Effect { hoses, before, after, moved, changed, past_guide, put_off, first, stopped } = seen;
    let (rows, machines_stopped) = (first.take(), stopped.len());
    let tried = PolicyTried {
        name,
        hoses,
        before,
        after,
        what,
        moved,
        changed,
        rows,
        past_guide,
        put_off,
        machines_stopped,
    };
    Ok(api.answer(tried))
}

/// What any of these rules sets a limit to.
fn spoken_of(policies: &[Option<&PolicySet>]) -> Vec<DueFor> {
    let says = |policy: &PolicySet, what: &DueFor| match what {
        DueFor::Service => policy.service_years.or(policy.service_hours).is_some(),
        DueFor::Storage => policy.storage_years.is_some(),
        DueFor::Inspection => policy.inspection_years.or(policy.inspection_hours).is_some(),
        DueFor::Finding | DueFor::Asked => false,
    };
    let all = [DueFor::Service, DueFor::Storage, DueFor::Inspection];
    let said = |what: &DueFor| policies.iter().flatten().any(|policy| says(policy, what));
    // Of a rule that says nothing nothing moves, and everything may be counted.
    let spoken: Vec<DueFor> = all.into_iter().filter(said).collect();
    if spoken.is_empty() { all.to_vec() } else { spoken }
}

/// What was seen of a change.
struct Effect {
    hoses: usize,
    before: PolicyCounts,
    after: PolicyCounts,
    moved: usize,
    changed: usize,
    past_guide: usize,
    put_off: usize,
    first: First<PolicyMove>,
    stopped: BTreeSet<MachineId>,
}

/// The gravest first, then the soonest.
fn graver(one: &PolicyMove, other: &PolicyMove) -> Ordering {
    let key = |row: &PolicyMove| (Reverse(row.verdict_after), row.due_after, row.code, row.what);
    key(one).cmp(&key(other))
}

impl Effect {
    fn nothing() -> Self {
        Self {
            hoses: 0,
            before: PolicyCounts::default(),
            after: PolicyCounts::default(),
            moved: 0,
            changed: 0,
            past_guide: 0,
            put_off: 0,
            first: First::of(MOVES_SHOWN, graver),
            stopped: BTreeSet::new(),
        }
    }

    fn see(&mut self, [before, after]: [Vec<Due>; 2], on: NaiveDate, until: NaiveDate) {
        self.hoses += usize::from(!before.is_empty());
        for (was, is) in before.into_iter().zip(after) {
            self.before.count(&was, on, until);
            self.after.count(&is, on, until);
            if (was.row.due, was.row.verdict) == (is.row.due, is.row.verdict) {
                continue;
            }
            let stops = was.row.verdict != Verdict::Stop && is.row.verdict == Verdict::Stop;
            self.stopped.extend(is.at.as_ref().filter(|_| stops).and_then(|at| at.machine));
            self.changed += 1;
            self.moved += usize::from(was.row.due != is.row.due);
            self.past_guide += usize::from(is_past_guide(&is) && !is_past_guide(&was));
            self.put_off += usize::from(was.row.is_past(on) && !is.row.is_past(on));
            self.first.see(PolicyMove {
                code: is.code,
                at: is.at,
                what: is.row.what,
                due_before: was.row.due,
                due_after: is.row.due,
                verdict_before: was.row.verdict,
                verdict_after: is.row.verdict,
            });
        }
    }
}

/// Whether its day lies past that of the guide.
fn is_past_guide(due: &Due) -> bool {
    due.row.guide_day.is_some_and(|guide| due.row.due.is_none_or(|day| day > guide))
}

impl PolicyCounts {
    fn count(&mut self, due: &Due, on: NaiveDate, until: NaiveDate) {
        self.past += usize::from(due.row.is_past(on));
        self.stopped += usize::from(due.row.verdict == Verdict::Stop);
        self.within += usize::from(due.row.due.is_some_and(|day| day > on && day <= until));
    }
}
