//! What falls due: by calendar, by hours of the machine, by what was seen.

use super::PlaceAt;
use crate::derive::{self, FACTS, Facts};
use crate::{Error, Register, rows};
use chrono::NaiveDate;
use hosewright_core::care::{DueFor, DueRow, Rules};
use hosewright_core::catalogue::Stake;
use hosewright_core::check::{Question, Verdict};
use hosewright_core::quantity::Dn;
use hosewright_core::record::{EventRef, MachineId, PlaceId, PolicySet, SiteId};
use hosewright_core::spec::HoseRef;
use hosewright_core::tag::TagCode;
use rusqlite::types::Value;
use rusqlite::{Connection, params_from_iter};
use schemars::JsonSchema;
use serde::Serialize;
use std::collections::{BTreeMap, HashMap};
use ts_rs::TS;

/// One thing that falls due.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Due {
    /// The hose.
    pub code: TagCode,
    /// Where it sits; none for a hose that was never fitted.
    pub at: Option<PlaceAt>,
    /// What it is; none where no record says.
    pub hose: Option<DueHose>,
    /// When, and why.
    #[serde(flatten)]
    #[ts(flatten)]
    pub row: DueRow,
    /// The first day it was in service; none where it may have been before.
    #[serde(skip)]
    #[ts(skip)]
    pub new_on: Option<NaiveDate>,
    /// What a failure there puts at risk; none where nobody has said.
    #[serde(skip)]
    #[ts(skip)]
    pub stakes: Option<Vec<Stake>>,
    /// The owner's own word on that.
    #[serde(skip)]
    #[ts(skip)]
    pub consequence: Option<u8>,
}

/// Standard, type and size of a hose.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct DueHose {
    /// Standard.
    pub standard: String,
    /// Type.
    #[serde(rename = "type")]
    pub kind: String,
    /// Size.
    pub dn: Dn,
}

/// Which of what falls due is asked for.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct DueAsk {
    /// Of these kinds; all without.
    pub what: Vec<DueFor>,
    /// On this site.
    pub site: Option<SiteId>,
    /// On this machine.
    pub machine: Option<MachineId>,
    /// At this place.
    pub place: Option<PlaceId>,
    /// Of this hose.
    pub code: Option<TagCode>,
    /// That must not run on.
    pub stopped: bool,
    /// Due by that day, or on a day that is not known.
    pub until: Option<NaiveDate>,
    /// So many from the first are left out.
    pub offset: u32,
    /// So many at most.
    pub limit: Option<u32>,
}

impl DueAsk {
    /// Whether a thing that falls due is of a kind that is asked for, and by that day.
    fn wants(&self, row: &DueRow) -> bool {
        let is_of_kind = self.what.is_empty() || self.what.contains(&row.what);
        let is_so_grave = !self.stopped || row.verdict == Verdict::Stop;
        is_of_kind && is_so_grave && self.until.is_none_or(|until| row.due.is_none_or(|due| due <= until))
    }
}

/// How much falls due.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct DueCounts {
    /// All.
    pub total: u32,
    /// The day has come.
    pub past: u32,
    /// No day is known.
    pub unknown: u32,
    /// Of the past, what must not run on.
    pub stopped: u32,
    /// Hoses of which something is past or stopped, each counted once.
    pub hoses: u32,
    /// In the next 30 days.
    pub within_30: u32,
    /// In the next 90 days.
    pub within_90: u32,
    /// In the next 365 days.
    pub within_365: u32,
}

/// How much falls due on a site.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct DueSite {
    /// Which; none is no site that is known.
    pub site: Option<SiteId>,
    /// What people call it.
    pub name: String,
    /// The day has come.
    pub past: u32,
    /// Of the past, what must not run on.
    pub stopped: u32,
    /// No day is known.
    pub unknown: u32,
    /// In the next 90 days.
    pub within_90: u32,
}

/// Hoses of one age in whole years.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct AgeCount {
    /// Whole years since it was assembled, made or, where neither is known, fitted.
    pub years: u32,
    /// How many hoses.
    pub count: u32,
}

/// Hoses that are to be replaced by now, each counted once: past their age, stored too long, found wanting, asked too much
/// of, or stopped by whatever it is. One of no known age has no day that could have come: it is not among them.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Overdue {
    /// All of them.
    pub hoses: u32,
    /// Those of each machine that has any.
    pub machines: BTreeMap<MachineId, u32>,
    /// Those that stop their machine, of each machine that is stopped.
    pub stopped: BTreeMap<MachineId, u32>,
}

/// What is done about by replacing the hose.
const REPLACED: &str = "('service', 'storage', 'finding', 'asked')";

impl Register {
    /// What falls due: what must not run on first, then what has no known day, then by day.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn due(&self, on: NaiveDate, ask: &DueAsk, rules: &Rules<'_>) -> Result<Vec<Due>, Error> {
        let keys = self.due_keys(on, ask)?;
        let codes: Vec<String> = keys.iter().map(|(code, _)| code.to_string()).collect();
        let mut known: HashMap<TagCode, (Facts, Vec<DueRow>)> = HashMap::new();
        for facts in facts_of(&self.db, &codes)? {
            let due = facts.due(rules, on);
            known.insert(facts.code, (facts, due));
        }
        let found = keys.into_iter().filter_map(|(code, what)| {
            let (facts, due) = known.get(&code)?;
            let row = due.iter().find(|row| row.what.name() == what)?;
            Some(of(facts, row.clone()))
        });
        Ok(found.collect())
    }

    /// The keys of a page, those of what must not run on first.
    fn due_keys(&self, on: NaiveDate, ask: &DueAsk) -> Result<Vec<(TagCode, String)>, Error> {
        let mut keys = self.keys_of(&stops(on, ask, ask.limit, ask.offset))?;
        if ask.stopped {
            return Ok(keys);
        }
        let limit =
            ask.limit.map(|limit| limit.saturating_sub(u32::try_from(keys.len()).unwrap_or(u32::MAX)));
        let before = match ask.offset {
            0 => 0,
            _ => u32::try_from(self.keys_of(&stops(on, ask, Some(ask.offset), 0))?.len()).unwrap_or(u32::MAX),
        };
        keys.extend(self.keys_of(&others(on, ask, limit, ask.offset - before))?);
        Ok(keys)
    }

    fn keys_of(&self, (sql, values): &(String, Vec<Value>)) -> Result<Vec<(TagCode, String)>, Error> {
        let mut statement = self.db.prepare_cached(sql)?;
        let keys = statement
            .query_map(params_from_iter(values), |row| Ok((rows::parsed(row, "code")?, row.get("what")?)))?;
        Ok(keys.collect::<Result<_, _>>()?)
    }

    /// What the check is asked of a hose that sits at that place; none where nobody knows the hose or the place.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn asked_of(&self, code: TagCode, place: PlaceId) -> Result<Option<Question>, Error> {
        derive::question(&self.db, code, place)
    }

    /// How much of what is asked for falls due; its page and day are not looked at.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn due_counts(&self, on: NaiveDate, ask: &DueAsk) -> Result<DueCounts, Error> {
        let (condition, mut values) = condition(ask);
        let sql = format!(
            "SELECT count(*) AS total, count(*) FILTER (WHERE day = '') AS unknown,
                    count(*) FILTER (WHERE day > '' AND day <= :on) AS past,
                    count(*) FILTER (WHERE stop_day <= :on) AS stopped,
                    count(DISTINCT code) FILTER (WHERE day > '' AND day <= :on) AS hoses,
                    count(*) FILTER (WHERE day > :on AND day <= :d30) AS within_30,
                    count(*) FILTER (WHERE day > :on AND day <= :d90) AS within_90,
                    count(*) FILTER (WHERE day > :on AND day <= :d365) AS within_365
             FROM due d WHERE {condition}"
        );
        let days = [(":on", 0), (":d365", 365), (":d90", 90), (":d30", 30)];
        let sql = dated(&sql, &mut values, on, &days);
        let mut statement = self.db.prepare_cached(&sql)?;
        Ok(statement.query_row(params_from_iter(values), |row| {
            Ok(DueCounts {
                total: row.get("total")?,
                past: row.get("past")?,
                unknown: row.get("unknown")?,
                stopped: row.get("stopped")?,
                hoses: row.get("hoses")?,
                within_30: row.get("within_30")?,
                within_90: row.get("within_90")?,
                within_365: row.get("within_365")?,
            })
        })?)
    }

    /// How much falls due on each site, the one with most stopped first, then with most past.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn due_sites(&self, on: NaiveDate, what: &[DueFor]) -> Result<Vec<DueSite>, Error> {
        let (condition, mut values) = condition(&DueAsk { what: what.to_vec(), ..DueAsk::default() });
        let sql = format!(
            "SELECT d.site, coalesce(t.name, '') AS name, count(*) FILTER (WHERE day = '') AS unknown,
                    count(*) FILTER (WHERE day > '' AND day <= :on) AS past,
                    count(*) FILTER (WHERE stop_day <= :on) AS stopped,
                    count(*) FILTER (WHERE day > :on AND day <= :d90) AS within_90
             FROM due d LEFT JOIN site t ON t.site = d.site
             WHERE {condition} GROUP BY d.site ORDER BY stopped DESC, past DESC, within_90 DESC, name"
        );
        let sql = dated(&sql, &mut values, on, &[(":on", 0), (":d90", 90)]);
        let mut statement = self.db.prepare_cached(&sql)?;
        let sites = statement.query_map(params_from_iter(values), |row| {
            Ok(DueSite {
                site: rows::optional(row, "site")?,
                name: row.get("name")?,
                past: row.get("past")?,
                stopped: row.get("stopped")?,
                unknown: row.get("unknown")?,
                within_90: row.get("within_90")?,
            })
        })?;
        Ok(sites.collect::<Result<_, _>>()?)
    }

    /// How many hoses are to be replaced by now, and how many of them stop which machine.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn overdue(&self, on: NaiveDate) -> Result<Overdue, Error> {
        let mut statement = self.db.prepare_cached(&format!(
            "SELECT machine, count(DISTINCT code) AS hoses,
                    count(DISTINCT code) FILTER (WHERE stop_day <= ?1) AS stopped
             FROM due WHERE (what IN {REPLACED} AND day > '' AND day <= ?1) OR stop_day <= ?1 GROUP BY machine"
        ))?;
        let mut overdue = Overdue::default();
        let mut found = statement.query([on.to_string()])?;
        while let Some(row) = found.next()? {
            let hoses: u32 = row.get("hoses")?;
            overdue.hoses += hoses;
            if let Some(machine) = rows::optional(row, "machine")? {
                overdue.machines.insert(machine, hoses);
                let stopped: u32 = row.get("stopped")?;
                if stopped > 0 {
                    overdue.stopped.insert(machine, stopped);
                }
            }
        }
        Ok(overdue)
    }

    /// The rules that hold here: the owner's policies over the guides of the tables.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn rules(&self) -> Result<Rules<'static>, Error> {
        derive::rules(&self.db)
    }

    /// The owner's policies with the events that stand for them.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn policies(&self) -> Result<Vec<(PolicySet, EventRef)>, Error> {
        let mut statement = self.db.prepare_cached("SELECT content, version FROM policy ORDER BY key")?;
        let policies = statement
            .query_map([], |row| Ok((rows::json(row, "content")?, rows::parsed(row, "version")?)))?;
        Ok(policies.collect::<Result<_, _>>()?)
    }

    /// What falls due of every hose one after the other, by each of the rules given, of which one hose is held at a time.
    /// The page that is asked for is not looked at.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn each_due<const N: usize>(
        &self,
        on: NaiveDate,
        ask: &DueAsk,
        all_rules: [&Rules<'_>; N],
        mut see: impl FnMut([Vec<Due>; N]),
    ) -> Result<(), Error> {
        let mut conditions = vec!["h.next_day IS NOT NULL".to_owned()];
        let mut values: Vec<Value> = Vec::new();
        for (column, id) in [
            ("site", ask.site.map(|id| id.to_string())),
            ("machine", ask.machine.map(|id| id.to_string())),
            ("place", ask.place.map(|id| id.to_string())),
            ("code", ask.code.map(|code| code.to_string())),
        ] {
            if let Some(id) = id {
                values.push(id.into());
                conditions.push(format!("h.{column} = ?{}", values.len()));
            }
        }
        let mut statement = self.db.prepare(&format!("{FACTS} WHERE {}", conditions.join(" AND ")))?;
        let mut found = statement.query(params_from_iter(values))?;
        while let Some(row) = found.next()? {
            let facts = derive::facts(row)?;
            see(all_rules.map(|rules| {
                let due = facts.due(rules, on).into_iter().filter(|row| ask.wants(row));
                due.map(|row| of(&facts, row)).collect()
            }));
        }
        Ok(())
    }
}

/// The owner's policies.
pub(crate) fn policies(db: &Connection) -> Result<Vec<PolicySet>, Error> {
    let mut statement = db.prepare_cached("SELECT content FROM policy ORDER BY key")?;
    let policies = statement.query_map([], |row| rows::json(row, "content"))?;
    Ok(policies.collect::<Result<_, _>>()?)
}

fn of(facts: &Facts, row: DueRow) -> Due {
    let hose = facts.hose.clone().map(|HoseRef { standard, kind, dn, .. }| DueHose { standard, kind, dn });
    Due {
        code: facts.code,
        at: facts.at.clone(),
        hose,
        row,
        new_on: facts.new_on,
        stakes: facts.stakes.clone(),
        consequence: facts.consequence,
    }
}

fn facts_of(db: &Connection, codes: &[String]) -> Result<Vec<Facts>, Error> {
    let sql =
        concat!(include_str!("../derive/facts.sql"), "WHERE h.code IN (SELECT value FROM json_each(?1))");
    let mut statement = db.prepare_cached(sql)?;
    let facts = statement.query_map([serde_json::to_string(codes)?], derive::facts)?;
    Ok(facts.collect::<Result<_, _>>()?)
}

/// The question for so many of the keys of what must not run on, the longest stopped first.
fn stops(on: NaiveDate, ask: &DueAsk, limit: Option<u32>, offset: u32) -> (String, Vec<Value>) {
    let (mut condition, mut values) = condition(ask);
    until(ask, &mut condition, &mut values);
    values.push(on.to_string().into());
    // The second condition is that of the index, which has them in this order.
    condition += &format!(" AND d.stop_day <= ?{} AND d.stop_day < '9999-12-31'", values.len());
    paged(&condition, "d.stop_day, d.machine, d.code, d.what", limit, offset, values)
}

/// The question for so many of the keys of all else, in order.
fn others(on: NaiveDate, ask: &DueAsk, limit: Option<u32>, offset: u32) -> (String, Vec<Value>) {
    let (mut condition, mut values) = condition(ask);
    until(ask, &mut condition, &mut values);
    values.push(on.to_string().into());
    condition += &format!(" AND +d.stop_day > ?{}", values.len());
    paged(&condition, "d.day, d.what, d.code", limit, offset, values)
}

fn until(ask: &DueAsk, condition: &mut String, values: &mut Vec<Value>) {
    if let Some(until) = ask.until {
        values.push(until.to_string().into());
        *condition += &format!(" AND d.day <= ?{}", values.len());
    }
}

fn paged(
    condition: &str,
    order: &str,
    limit: Option<u32>,
    offset: u32,
    values: Vec<Value>,
) -> (String, Vec<Value>) {
    let limit = limit.map_or(-1, i64::from);
    let sql = format!(
        "SELECT d.code, d.what FROM due d WHERE {condition} ORDER BY {order} LIMIT {limit} OFFSET {offset}"
    );
    (sql, values)
}

/// Which rows are asked for, whatever their day.
fn condition(ask: &DueAsk) -> (String, Vec<Value>) {
    let mut parts = Vec::new();
    let mut values: Vec<Value> = Vec::new();
    let mut value = |text: String| {
        values.push(text.into());
        format!("?{}", values.len())
    };
    if let Some(machine) = ask.machine {
        parts.push(format!("d.machine = {}", value(machine.to_string())));
    }
    if let Some(site) = ask.site {
        parts.push(format!("d.site = {}", value(site.to_string())));
    }
    if let Some(place) = ask.place {
        parts.push(format!("d.code IN (SELECT code FROM hose WHERE place = {})", value(place.to_string())));
    }
    if let Some(code) = ask.code {
        parts.push(format!("d.code = {}", value(code.to_string())));
    }
    if !ask.what.is_empty() {
        let names: Vec<String> = ask.what.iter().map(|what| value(what.name().to_owned())).collect();
        parts.push(match names.as_slice() {
            [one] => format!("d.what = {one}"),
            many => format!("+d.what IN ({})", many.join(", ")),
        });
    }
    let condition = if parts.is_empty() { "1".to_owned() } else { parts.join(" AND ") };
    (condition, values)
}

/// The question with each named day as a value of its own: so many days after that one.
fn dated(sql: &str, values: &mut Vec<Value>, on: NaiveDate, days: &[(&str, u64)]) -> String {
    days.iter().fold(sql.to_owned(), |sql, (name, days)| {
        let day = on.checked_add_days(chrono::Days::new(*days)).unwrap_or(NaiveDate::MAX);
        values.push(day.to_string().into());
        sql.replace(name, &format!("?{}", values.len()))
    })
}

impl Register {
    /// How SQLite would go about a page of what falls due: a test holds that it reads no more than the page.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn due_plan(&self, on: NaiveDate, ask: &DueAsk) -> Result<Vec<String>, Error> {
        let (sql, values) = others(on, ask, ask.limit, ask.offset);
        super::plan(&self.db, &sql, params_from_iter(values))
    }
}
