//! The table of hoses at the desk: filtered, sorted, a page at a time.

use super::{AgeCount, PlaceAt};
use crate::derive::{self, FACTS};
use crate::{Error, Register, rows};
use chrono::{Days, Months, NaiveDate};
use hosewright_core::care::{DueFor, DueRow, Rules};
use hosewright_core::check::Verdict;
use hosewright_core::quantity::{Dn, Millimetres};
use hosewright_core::record::{MachineId, SiteId};
use hosewright_core::spec::{HoseRef, Line};
use hosewright_core::tag::TagCode;
use rusqlite::types::Value;
use rusqlite::{Row, params_from_iter};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Which hoses.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
#[ts(optional_fields)]
pub struct HoseFilter {
    /// With words that begin so.
    pub words: Option<String>,
    /// On this site.
    pub site: Option<SiteId>,
    /// On this machine.
    pub machine: Option<MachineId>,
    /// On such a line.
    pub line: Option<Line>,
    /// Standing so in their life; all without.
    pub state: Option<HoseState>,
    /// Of this standard.
    pub standard: Option<String>,
    /// Of this type.
    #[serde(rename = "type")]
    pub kind: Option<String>,
    /// Due before that day.
    pub due_before: Option<NaiveDate>,
    /// Whose day has come, or not.
    pub past: Option<bool>,
}

/// Where a hose stands in its life.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum HoseState {
    /// Made, not fitted yet.
    Made,
    /// On a machine.
    Fitted,
    /// Off again.
    TakenOff,
    /// It failed its proof: scrap, never fitted.
    FailedProof,
    /// Its tag was taken out of use.
    Withdrawn,
}

impl HoseState {
    const fn name(self) -> &'static str {
        match self {
            HoseState::Made => "made",
            HoseState::Fitted => "fitted",
            HoseState::TakenOff => "taken-off",
            HoseState::FailedProof => "failed-proof",
            HoseState::Withdrawn => "withdrawn",
        }
    }
}

/// What the table is sorted by.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum HoseSort {
    /// The day it falls due; what has none comes last, what is not known first.
    #[default]
    Due,
    /// The day its age counts from.
    Age,
    /// Site, machine and place.
    Machine,
    /// Standard, type and size.
    Type,
    /// Code.
    Code,
    /// The day it was fitted.
    Fitted,
    /// How many hoses failed at its place.
    Failures,
}

impl HoseSort {
    const fn by(self, descending: bool) -> &'static str {
        match (self, descending) {
            (HoseSort::Due, false) => "h.next_day IS NULL, h.next_day, h.code",
            (HoseSort::Due, true) => "h.next_day DESC, h.code DESC",
            (HoseSort::Age, false) => "coalesce(h.assembled, h.hose_made, h.on_date) DESC, h.code",
            (HoseSort::Age, true) => "coalesce(h.assembled, h.hose_made, h.on_date), h.code",
            (HoseSort::Machine, false) => "t.name, m.name, h.machine, p.number, h.code",
            (HoseSort::Machine, true) => {
                "t.name DESC, m.name DESC, h.machine DESC, p.number DESC, h.code DESC"
            }
            (HoseSort::Type, false) => "h.standard, h.kind, h.dn, h.code",
            (HoseSort::Type, true) => "h.standard DESC, h.kind DESC, h.dn DESC, h.code DESC",
            (HoseSort::Code, false) => "h.code",
            (HoseSort::Code, true) => "h.code DESC",
            (HoseSort::Fitted, false) => "h.on_date, h.code",
            (HoseSort::Fitted, true) => "h.on_date DESC, h.code DESC",
            (HoseSort::Failures, false) => "failures, h.code",
            (HoseSort::Failures, true) => "failures DESC, h.code",
        }
    }
}

/// A hose in the table.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct HoseRow {
    /// Its code.
    pub code: TagCode,
    /// Where it stands in its life, by its name.
    pub state: String,
    /// Where it sits.
    pub at: Option<PlaceAt>,
    /// Standard.
    pub standard: Option<String>,
    /// Type.
    #[serde(rename = "type")]
    pub kind: Option<String>,
    /// Size.
    pub dn: Option<Dn>,
    /// Overall length.
    pub length_mm: Option<Millimetres>,
    /// What the line does.
    pub line: Option<Line>,
    /// When the hose was made.
    pub hose_made: Option<NaiveDate>,
    /// When it was assembled.
    pub assembled: Option<NaiveDate>,
    /// When it was fitted where it sits.
    pub fitted: Option<NaiveDate>,
    /// Its age in years by the clock that its service life counts by; none where no day is known.
    pub age_years: Option<f64>,
    /// It is older than that: it was found in place.
    pub at_least: bool,
    /// The limit of service or storage that holds for it, in years.
    pub limit_years: Option<f64>,
    /// The soonest day it falls due.
    pub due: Option<NaiveDate>,
    /// What falls due then.
    pub due_what: Option<DueFor>,
    /// The gravest of all that falls due; none where nothing does.
    pub verdict: Option<Verdict>,
    /// How many hoses failed at its place.
    pub failures: u32,
    /// The gravest that its last inspection found; none where it was never inspected.
    pub grade: Option<Verdict>,
}

/// Hoses at a glance.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema, TS)]
pub struct HosesGlance {
    /// All of the filter.
    pub hoses: u32,
    /// On a machine.
    pub in_service: u32,
    /// Whose soonest day has come.
    pub past: u32,
    /// Whose soonest day is not known.
    pub unknown: u32,
    /// That must not run on.
    pub stopped: u32,
    /// That fall due in the next 30 days.
    pub within_30: u32,
    /// That fall due in the next 90 days.
    pub within_90: u32,
    /// Failures at places of the filter's site and machine in the last 12 months.
    pub failures_12_months: u32,
    /// Of those in service, how many are how old.
    pub ages: Vec<AgeCount>,
}

/// Mean length of a year.
const YEAR_DAYS: f64 = 365.25;

impl Register {
    /// A page of the hoses of a filter.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn hoses(
        &self,
        on: NaiveDate,
        filter: &HoseFilter,
        (sort, descending): (HoseSort, bool),
        (offset, limit): (u32, u32),
        rules: &Rules<'_>,
    ) -> Result<Vec<HoseRow>, Error> {
        let (condition, values) = condition(on, filter);
        let sql = format!(
            "{} WHERE {condition} ORDER BY {} LIMIT {limit} OFFSET {offset}",
            with_failures(),
            sort.by(descending)
        );
        self.hose_rows(&sql, values, on, rules)
    }

    /// Chosen hoses, in the order of their codes; what the register does not have is left out.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn hoses_of(
        &self,
        on: NaiveDate,
        codes: &[TagCode],
        rules: &Rules<'_>,
    ) -> Result<Vec<HoseRow>, Error> {
        let codes: Vec<String> = codes.iter().map(TagCode::to_string).collect();
        let sql =
            format!("{} WHERE h.code IN (SELECT value FROM json_each(?1)) ORDER BY h.code", with_failures());
        self.hose_rows(&sql, vec![serde_json::to_string(&codes)?.into()], on, rules)
    }

    fn hose_rows(
        &self,
        sql: &str,
        values: Vec<Value>,
        on: NaiveDate,
        rules: &Rules<'_>,
    ) -> Result<Vec<HoseRow>, Error> {
        let mut statement = self.db.prepare_cached(sql)?;
        let mut found = statement.query(params_from_iter(values))?;
        let mut hoses = Vec::new();
        while let Some(row) = found.next()? {
            hoses.push(hose_row(row, on, rules)?);
        }
        Ok(hoses)
    }

    /// How many hoses a filter has.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn hoses_count(&self, on: NaiveDate, filter: &HoseFilter) -> Result<u32, Error> {
        let (condition, values) = condition(on, filter);
        let mut statement =
            self.db.prepare_cached(&format!("SELECT count(*) AS count FROM hose h WHERE {condition}"))?;
        Ok(statement.query_row(params_from_iter(values), |row| row.get("count"))?)
    }

    /// The codes of the hoses of a filter, in the order of the table.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn hose_codes(
        &self,
        on: NaiveDate,
        filter: &HoseFilter,
        (sort, descending): (HoseSort, bool),
        (offset, limit): (u32, u32),
    ) -> Result<Vec<TagCode>, Error> {
        let (condition, values) = condition(on, filter);
        let sql = format!(
            "SELECT h.code, {FAILURES} AS failures FROM hose h LEFT JOIN place p ON p.place = h.place
             LEFT JOIN machine m ON m.machine = h.machine LEFT JOIN site t ON t.site = h.site
             WHERE {condition} ORDER BY {} LIMIT {limit} OFFSET {offset}",
            sort.by(descending)
        );
        let mut statement = self.db.prepare_cached(&sql)?;
        let codes = statement.query_map(params_from_iter(values), |row| rows::parsed(row, "code"))?;
        Ok(codes.collect::<Result<_, _>>()?)
    }

    /// The hoses of a filter at a glance.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn hoses_glance(&self, on: NaiveDate, filter: &HoseFilter) -> Result<HosesGlance, Error> {
        let (condition, mut values) = condition(on, filter);
        let first = values.len();
        let ahead = |days| on.checked_add_days(Days::new(days)).unwrap_or(NaiveDate::MAX);
        values.extend([on, ahead(30), ahead(90)].map(|day| Value::from(day.to_string())));
        let (today, d30, d90) = (first + 1, first + 2, first + 3);
        let sql = format!(
            "SELECT count(*) AS hoses, count(*) FILTER (WHERE h.place IS NOT NULL) AS in_service,
                    count(*) FILTER (WHERE h.next_day = '') AS unknown,
                    count(*) FILTER (WHERE h.next_day > '' AND h.next_day <= ?{today}) AS past,
                    count(*) FILTER (WHERE h.next_day > ?{today} AND h.next_day <= ?{d30}) AS within_30,
                    count(*) FILTER (WHERE h.next_day > ?{today} AND h.next_day <= ?{d90}) AS within_90,
                    count(*) FILTER (WHERE EXISTS (SELECT 1 FROM due d WHERE d.code = h.code
                                                   AND d.stop_day <= ?{today})) AS stopped
             FROM hose h WHERE {condition}"
        );
        let mut glance = self.db.prepare_cached(&sql)?.query_row(params_from_iter(values.iter()), |row| {
            Ok(HosesGlance {
                hoses: row.get("hoses")?,
                in_service: row.get("in_service")?,
                past: row.get("past")?,
                unknown: row.get("unknown")?,
                stopped: row.get("stopped")?,
                within_30: row.get("within_30")?,
                within_90: row.get("within_90")?,
                ..HosesGlance::default()
            })
        })?;
        glance.ages = self.hose_ages(on, filter)?;
        glance.failures_12_months = self.failures(on, filter)?.iter().map(|(_, count)| count).sum();
        Ok(glance)
    }

    /// How many hoses of a filter that are in service are how old.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn hose_ages(&self, on: NaiveDate, filter: &HoseFilter) -> Result<Vec<AgeCount>, Error> {
        let (condition, mut values) = condition(on, filter);
        values.push(on.to_string().into());
        let today = values.len();
        let sql = format!(
            "SELECT max(0, CAST((julianday(?{today}) - julianday(coalesce(h.assembled, h.hose_made, h.on_date)))
                                / {YEAR_DAYS} AS INTEGER)) AS years, count(*) AS count
             FROM hose h WHERE {condition} AND h.place IS NOT NULL
                           AND coalesce(h.assembled, h.hose_made, h.on_date) IS NOT NULL
             GROUP BY years ORDER BY years"
        );
        let mut statement = self.db.prepare_cached(&sql)?;
        let ages = statement.query_map(params_from_iter(values), |row| {
            Ok(AgeCount { years: row.get("years")?, count: row.get("count")? })
        })?;
        Ok(ages.collect::<Result<_, _>>()?)
    }

    /// Failures of the last 12 months on the filter's site and machine by the code of their cause, the commonest first.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn failures(&self, on: NaiveDate, filter: &HoseFilter) -> Result<Vec<(String, u32)>, Error> {
        let from = on.checked_sub_months(Months::new(12)).unwrap_or(NaiveDate::MIN);
        let mut statement = self.db.prepare_cached(
            "SELECT s.cause, count(*) AS count FROM stint s
             LEFT JOIN place p ON p.place = s.place LEFT JOIN machine m ON m.machine = p.machine
             WHERE s.cause IS NOT NULL AND s.off_date > ?1 AND s.off_date <= ?2
               AND (?3 IS NULL OR p.machine = ?3) AND (?4 IS NULL OR m.site = ?4)
             GROUP BY s.cause ORDER BY count DESC, s.cause",
        )?;
        let (machine, site) = (filter.machine.map(|id| id.to_string()), filter.site.map(|id| id.to_string()));
        let causes = statement.query_map((from.to_string(), on.to_string(), machine, site), |row| {
            Ok((row.get("cause")?, row.get("count")?))
        })?;
        Ok(causes.collect::<Result<_, _>>()?)
    }
}

/// How many hoses failed at the place.
const FAILURES: &str = "(SELECT count(*) FROM stint f WHERE f.place = h.place AND f.cause IS NOT NULL)";

/// Which hoses are asked for, of the table `hose h`.
fn condition(on: NaiveDate, filter: &HoseFilter) -> (String, Vec<Value>) {
    let mut parts = Vec::new();
    let mut values: Vec<Value> = Vec::new();
    let mut put = |part: &str, value: Option<String>| {
        if let Some(value) = value {
            values.push(value.into());
            parts.push(part.replace('?', &format!("?{}", values.len())));
        }
    };
    put("h.site = ?", filter.site.map(|id| id.to_string()));
    put("h.machine = ?", filter.machine.map(|id| id.to_string()));
    put("h.line = ?", filter.line.map(|line| line.name().to_owned()));
    put("h.state = ?", filter.state.map(|state| state.name().to_owned()));
    put("h.standard = ?", filter.standard.clone());
    put("h.kind = ?", filter.kind.clone());
    put("h.next_day > '' AND h.next_day < ?", filter.due_before.map(|day| day.to_string()));
    match filter.past {
        Some(true) => put("h.next_day > '' AND h.next_day <= ?", Some(on.to_string())),
        Some(false) => put("(h.next_day IS NULL OR h.next_day = '' OR h.next_day > ?)", Some(on.to_string())),
        None => {}
    }
    if let Some(words) = filter.words.as_deref().filter(|words| !words.trim().is_empty()) {
        let words = super::search::beginnings(words).unwrap_or_else(|| "\"\"".to_owned());
        put(
            "h.code IN (SELECT f.key FROM words w JOIN found f ON f.id = w.rowid WHERE words MATCH ?)",
            Some(words),
        );
    }
    let condition = if parts.is_empty() { "1".to_owned() } else { parts.join(" AND ") };
    (condition, values)
}

fn hose_row(row: &Row<'_>, on: NaiveDate, rules: &Rules<'_>) -> Result<HoseRow, Error> {
    let facts = derive::facts(row)?;
    let due = facts.due(rules, on);
    let failures = row.get("failures")?;
    let line = facts.spot.line;
    let by_age = due.iter().find(|row| matches!(row.what, DueFor::Service | DueFor::Storage));
    let soonest = due.iter().min_by_key(|row| (row.due, row.what));
    let (standard, kind, dn) = match facts.hose {
        Some(HoseRef { standard, kind, dn, .. }) => (Some(standard), Some(kind), Some(dn)),
        None => (None, None, None),
    };
    let fitted = facts.aged.on.and_then(|on| on.day);
    let since = facts.aged.assembled.or(facts.aged.hose_made).or(fitted);
    Ok(HoseRow {
        code: facts.code,
        state: facts.state,
        at: facts.at,
        standard,
        kind,
        dn,
        length_mm: facts.length_mm,
        line,
        hose_made: facts.aged.hose_made,
        assembled: facts.aged.assembled,
        fitted,
        age_years: since.map(|since| (on - since).num_days() as f64 / YEAR_DAYS),
        at_least: facts.aged.assembled.is_none() && facts.aged.hose_made.is_none(),
        limit_years: by_age.and_then(|row| row.years),
        due: soonest.and_then(|row| row.due),
        due_what: soonest.map(|row| row.what),
        verdict: due.iter().map(|row: &DueRow| row.verdict).max(),
        failures,
        grade: facts.grade,
    })
}

/// What is known of a hose, with how many failed at its place.
fn with_failures() -> String {
    FACTS.replacen("SELECT ", &format!("SELECT {FAILURES} AS failures, "), 1)
}
