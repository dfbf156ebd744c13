//! What falls due by age: service, storage, inspection.

use super::PlaceAt;
use crate::{Error, Register, rows};
use chrono::{Months, NaiveDate};
use hosewright_core::check::Verdict;
use hosewright_core::record::{MachineId, PolicySet, Scope};
use hosewright_core::tag::TagCode;
use rusqlite::{Connection, Row};
use schemars::JsonSchema;
use serde::Serialize;
use std::collections::BTreeMap;
use ts_rs::TS;

/// Ages that hold where the owner's policy says nothing, in years: guide values of the tables.
/// Crossing one is a caution; only a policy can make it a stop.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Guide {
    /// Service life of an assembly, storage included (rule L055: DIN 20066).
    pub service_years: f64,
    /// Storage of an assembly before it is fitted (rule L054: ISO 8331, DIN 20066).
    pub storage_years: f64,
    /// Between inspections (rule L066).
    pub inspection_years: f64,
}

/// One thing that falls due.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Due {
    /// The hose.
    pub code: TagCode,
    /// Where it sits; none for a hose that was never fitted.
    pub at: Option<PlaceAt>,
    /// What falls due.
    pub what: DueFor,
    /// The day the age counts from; none where no day is known.
    pub since: Option<NaiveDate>,
    /// What that day is.
    pub counted_from: CountedFrom,
    /// The limit of age in years.
    pub years: f64,
    /// Where the limit comes from.
    pub limit: LimitFrom,
    /// The day it falls due; none where no day is known to count from.
    pub due: Option<NaiveDate>,
    /// A caution where the guide is crossed or the age is not known, a stop where the owner's policy
    /// says so, else a pass.
    pub verdict: Verdict,
}

/// What falls due.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum DueFor {
    /// To be replaced.
    Service,
    /// Stored long enough; not to be fitted any more.
    Storage,
    /// To be inspected.
    Inspection,
}

/// What an age counts from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum CountedFrom {
    /// The day it was assembled.
    Assembled,
    /// The day the hose was made, which is no later: assembly is not known.
    HoseMade,
    /// The day it was fitted, or found in place: it is at least that old.
    Fitted,
    /// Its last inspection.
    Inspected,
    /// Nothing: no day is known.
    Unknown,
}

impl Due {
    /// Whether the day it falls due has come. What has no known age has no such day.
    pub fn is_past(&self, on: NaiveDate) -> bool {
        self.due.is_some_and(|due| due <= on)
    }
}

/// Where a limit comes from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum LimitFrom {
    /// A guide value of the tables.
    Guide,
    /// The owner's policy there.
    Policy(Scope),
}

/// Hoses on machines whose day of service life has come. One of no known age has no such day: it is not among them.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Overdue {
    /// All of them.
    pub hoses: u32,
    /// Those of each machine that has any.
    pub machines: BTreeMap<MachineId, u32>,
}

impl Register {
    /// Everything that falls due by age, what can not be reckoned first and then by day, up to what
    /// is far from due: the caller takes what it shows.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn due(&self, today: NaiveDate, guide: Guide) -> Result<Vec<Due>, Error> {
        let policies = policies(&self.db)?;
        let mut due = Vec::new();
        for hose in self.aged()? {
            let limits = Limits { policies: &policies, at: hose.at.as_ref() };
            if hose.at.is_none() {
                due.push(hose.storage(limits.storage(guide), today));
                continue;
            }
            due.push(hose.service(limits.service(guide), today));
            due.push(hose.inspection(limits.inspection(guide), today));
        }
        due.sort_by(|one, other| (one.due, one.what, &one.code).cmp(&(other.due, other.what, &other.code)));
        Ok(due)
    }

    /// How many hoses are past their limit of service life, by the same reckoning as [`Register::due`].
    ///
    /// # Errors
    /// The register can not be read.
    pub fn overdue(&self, today: NaiveDate, guide: Guide) -> Result<Overdue, Error> {
        let policies = policies(&self.db)?;
        let mut overdue = Overdue::default();
        for hose in self.aged()? {
            let Some(at) = &hose.at else { continue };
            let limit = Limits { policies: &policies, at: Some(at) }.service(guide);
            if hose.service(limit, today).is_past(today) {
                overdue.hoses += 1;
                if let Some(machine) = at.machine {
                    *overdue.machines.entry(machine).or_default() += 1;
                }
            }
        }
        Ok(overdue)
    }

    /// What is known of the age of every hose that ages here.
    fn aged(&self) -> Result<Vec<Aged>, Error> {
        let mut statement = self.db.prepare_cached(include_str!("due.sql"))?;
        let hoses = statement.query_map([], hose)?;
        Ok(hoses.collect::<Result<_, _>>()?)
    }

    /// The owner's policies, by scope.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn policies(&self) -> Result<Vec<PolicySet>, Error> {
        Ok(policies(&self.db)?.into_values().collect())
    }
}

fn policies(db: &Connection) -> Result<BTreeMap<Scope, PolicySet>, Error> {
    let mut statement = db.prepare_cached(
        "SELECT scope, service_years, storage_years, inspection_years, stop FROM policy ORDER BY scope",
    )?;
    let policies = statement.query_map([], |row| {
        Ok(PolicySet {
            scope: rows::parsed(row, "scope")?,
            service_years: row.get("service_years")?,
            storage_years: row.get("storage_years")?,
            inspection_years: row.get("inspection_years")?,
            stop: row.get("stop")?,
        })
    })?;
    policies.map(|policy| policy.map(|policy| (policy.scope.clone(), policy)).map_err(Error::from)).collect()
}

/// A limit of age and where it comes from.
struct Limit {
    years: f64,
    from: LimitFrom,
    stop: bool,
}

/// The limits that hold at a place: the narrowest scope that says anything.
struct Limits<'a> {
    policies: &'a BTreeMap<Scope, PolicySet>,
    at: Option<&'a PlaceAt>,
}

impl Limits<'_> {
    fn service(&self, guide: Guide) -> Limit {
        self.limit(|policy| policy.service_years, guide.service_years)
    }

    fn storage(&self, guide: Guide) -> Limit {
        self.limit(|policy| policy.storage_years, guide.storage_years)
    }

    fn inspection(&self, guide: Guide) -> Limit {
        self.limit(|policy| policy.inspection_years, guide.inspection_years)
    }

    fn limit(&self, years: impl Fn(&PolicySet) -> Option<f64>, guide: f64) -> Limit {
        let scopes = [
            self.at.map(|at| Scope::Place(at.place)),
            self.at.and_then(|at| at.machine).map(Scope::Machine),
            self.at.and_then(|at| at.site).map(Scope::Site),
            Some(Scope::Fleet),
        ];
        for policy in scopes.into_iter().flatten().filter_map(|scope| self.policies.get(&scope)) {
            if let Some(years) = years(policy) {
                return Limit { years, from: LimitFrom::Policy(policy.scope.clone()), stop: policy.stop };
            }
        }
        Limit { years: guide, from: LimitFrom::Guide, stop: false }
    }
}

/// What is known of the age of a hose.
struct Aged {
    code: TagCode,
    at: Option<PlaceAt>,
    assembled: Option<NaiveDate>,
    hose_made: Option<NaiveDate>,
    on: Option<NaiveDate>,
    already_there: bool,
    inspected: Option<NaiveDate>,
}

fn hose(row: &Row<'_>) -> rusqlite::Result<Aged> {
    let fitted: Option<String> = row.get("on_version")?;
    Ok(Aged {
        code: rows::parsed(row, "code")?,
        at: fitted.map(|_| super::place::place_at(row)).transpose()?,
        assembled: rows::optional(row, "assembled")?,
        hose_made: rows::optional(row, "hose_made")?,
        on: rows::optional(row, "on_date")?,
        already_there: row.get::<_, Option<bool>>("already_there")?.unwrap_or(false),
        inspected: rows::optional(row, "inspected")?,
    })
}

impl Aged {
    fn service(&self, limit: Limit, today: NaiveDate) -> Due {
        let (since, from) = self.made().unwrap_or((self.on, CountedFrom::Fitted));
        self.due(DueFor::Service, since, from, limit, today)
    }

    fn storage(&self, limit: Limit, today: NaiveDate) -> Due {
        let (since, from) = self.made().unwrap_or((None, CountedFrom::Unknown));
        self.due(DueFor::Storage, since, from, limit, today)
    }

    /// A hose was looked at when it was fitted; one that was found in place was not.
    fn inspection(&self, limit: Limit, today: NaiveDate) -> Due {
        let (since, from) = match (self.inspected, self.on) {
            (Some(inspected), on) if on.is_none_or(|on| inspected >= on) || self.already_there => {
                (Some(inspected), CountedFrom::Inspected)
            }
            (_, Some(on)) if !self.already_there => (Some(on), CountedFrom::Fitted),
            _ => (None, CountedFrom::Unknown),
        };
        self.due(DueFor::Inspection, since, from, limit, today)
    }

    fn made(&self) -> Option<(Option<NaiveDate>, CountedFrom)> {
        let assembled = self.assembled.map(|day| (Some(day), CountedFrom::Assembled));
        assembled.or(self.hose_made.map(|day| (Some(day), CountedFrom::HoseMade)))
    }

    fn due(
        &self,
        what: DueFor,
        since: Option<NaiveDate>,
        from: CountedFrom,
        limit: Limit,
        today: NaiveDate,
    ) -> Due {
        let due = since.and_then(|since| after(since, limit.years));
        let at_least = what == DueFor::Service && from == CountedFrom::Fitted;
        let verdict = match due {
            Some(due) if due <= today => {
                if limit.stop {
                    Verdict::Stop
                } else {
                    Verdict::Caution
                }
            }
            Some(_) if !at_least => Verdict::Pass,
            _ => Verdict::Caution,
        };
        Due {
            code: self.code,
            at: self.at.clone(),
            what,
            since,
            counted_from: if since.is_some() { from } else { CountedFrom::Unknown },
            years: limit.years,
            limit: limit.from,
            due,
            verdict,
        }
    }
}

/// That many years later, in whole months; none beyond the calendar.
fn after(day: NaiveDate, years: f64) -> Option<NaiveDate> {
    let months = (years * 12.0).round();
    (0.0..=f64::from(u32::MAX))
        .contains(&months)
        .then(|| Months::new(months as u32))
        .and_then(|months| day.checked_add_months(months))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> NaiveDate {
        text.parse().expect("a day")
    }

    #[test]
    fn years_are_counted_in_months_and_keep_the_day() {
        assert_eq!(after(day("2020-11-25"), 6.0), Some(day("2026-11-25")));
        assert_eq!(after(day("2020-02-29"), 1.0), Some(day("2021-02-28")));
        assert_eq!(after(day("2020-01-31"), 0.5), Some(day("2020-07-31")));
        assert_eq!(after(day("2020-01-31"), f64::INFINITY), None);
        assert_eq!(after(NaiveDate::MAX, 1.0), None);
    }

    #[test]
    fn a_limit_that_lies_beyond_the_calendar_is_never_a_quiet_pass() {
        let hose = Aged {
            code: TagCode::from_random([1; 7]),
            at: None,
            assembled: Some(day("2020-01-01")),
            hose_made: None,
            on: None,
            already_there: false,
            inspected: None,
        };
        let limit = Limit { years: f64::MAX, from: LimitFrom::Guide, stop: false };
        assert_eq!(hose.storage(limit, day("2026-11-25")).verdict, Verdict::Caution);
    }
}
