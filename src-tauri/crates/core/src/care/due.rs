//! When a hose falls due, and how grave it is if that day has come.

use super::{Held, HoursUnknown, Meter, Rule, RuleAt, Rules, Spot, after_days, after_years};
use crate::check::Verdict;
use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What falls due.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum DueFor {
    /// To be replaced.
    Service,
    /// Stored long enough; not to be fitted any more.
    Storage,
    /// To be inspected.
    Inspection,
    /// Something was seen on it: to be replaced or looked at again.
    Finding,
    /// Its place asks more of it than it stands: to be replaced.
    Asked,
}

impl DueFor {
    /// Its name in the contract.
    pub const fn name(self) -> &'static str {
        match self {
            DueFor::Service => "service",
            DueFor::Storage => "storage",
            DueFor::Inspection => "inspection",
            DueFor::Finding => "finding",
            DueFor::Asked => "asked",
        }
    }
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

/// Which clock gave the day.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum DueClock {
    /// Years.
    Calendar,
    /// Hours of the machine.
    Hours,
    /// What was seen.
    Finding,
    /// What its place asks.
    Asked,
}

/// Hours of the machine against their limit.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct HoursClock {
    /// The limit.
    pub limit: f64,
    /// The rule that sets it.
    pub rule: Rule,
    /// Hours run when the meter was read last; none is not known.
    pub run: Option<f64>,
    /// When it was read.
    pub read_on: Option<NaiveDate>,
    /// The machine's own rate of use, which turns hours to a day.
    pub per_day: Option<f64>,
    /// The day the limit is reached at that rate.
    pub due: Option<NaiveDate>,
    /// Why something of this is not known.
    pub why_not: Option<HoursUnknown>,
}

/// Something that was seen on a hose and stands.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Standing {
    /// The sign, by its code.
    pub sign: String,
    /// How grave: a stop stops the machine.
    pub grade: Verdict,
    /// When.
    pub seen_on: NaiveDate,
    /// The day it is due for.
    pub due: NaiveDate,
}

/// Since when a hose sits where it sits.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OnSince {
    /// The day it was fitted or found there.
    pub day: Option<NaiveDate>,
    /// It was found there on that day, fitted at some earlier time.
    pub already_there: bool,
    /// The machine's hours then.
    pub hours: Option<f64>,
}

/// What is known of the age of a hose.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Aged {
    /// When it was assembled.
    pub assembled: Option<NaiveDate>,
    /// When the hose was made.
    pub hose_made: Option<NaiveDate>,
    /// Since when it sits where it sits; none for one that was never fitted.
    pub on: Option<OnSince>,
    /// Its last inspection.
    pub inspected: Option<NaiveDate>,
    /// What was seen on it and stands, the gravest first.
    pub standing: Vec<Standing>,
    /// What its machine's meter says.
    pub meter: Option<Meter>,
    /// Its place asks more of it than it is known to stand.
    pub too_much: bool,
}

/// One thing that falls due.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct DueRow {
    /// What falls due.
    pub what: DueFor,
    /// The day the age counts from; none where no day is known.
    pub since: Option<NaiveDate>,
    /// What that day is.
    pub counted_from: CountedFrom,
    /// The limit of age in years; none for what was seen.
    pub years: Option<f64>,
    /// The rule that sets it; none for what was seen.
    pub rule: Option<Rule>,
    /// The day by the calendar alone.
    pub calendar: Option<NaiveDate>,
    /// Hours against their limit, where the owner set one.
    pub hours: Option<HoursClock>,
    /// The guide's own day, where the owner's rule stands over it.
    pub guide_day: Option<NaiveDate>,
    /// What was seen.
    pub finding: Option<Standing>,
    /// The day it falls due, the earlier of both clocks; none where no day is known to count from.
    pub due: Option<NaiveDate>,
    /// Which clock gave it.
    pub by: DueClock,
    /// The first day on which it is a stop; none where it never is.
    pub stop_from: Option<NaiveDate>,
    /// A caution where a limit is crossed or the age is not known, a stop where the owner's policy or a finding says
    /// so, else a pass.
    pub verdict: Verdict,
}

impl DueRow {
    /// Whether the day it falls due has come. What has no known age has no such day.
    pub fn is_past(&self, on: NaiveDate) -> bool {
        self.due.is_some_and(|due| due <= on)
    }
}

impl Aged {
    /// All that falls due of it, as of that day.
    pub fn due(&self, rules: &Rules<'_>, spot: &Spot, today: NaiveDate) -> Vec<DueRow> {
        if self.on.is_none() {
            return vec![self.storage(&rules.at(DueFor::Storage, spot), today)];
        }
        let mut due = vec![
            self.service(&rules.at(DueFor::Service, spot), today),
            self.inspection(&rules.at(DueFor::Inspection, spot), today),
        ];
        due.extend(self.standing.first().map(|standing| found(standing, today)));
        due.extend(self.too_much.then(|| self.asked(today)));
        due
    }

    /// What its place asks too much of it must not run on, from the day it was fitted. Where nobody knows a day of it, it
    /// is taken to sit there since ever: a stop does not wait for a date.
    fn asked(&self, today: NaiveDate) -> DueRow {
        let fitted = self.on.and_then(|on| on.day);
        let (since, from) = match fitted {
            Some(day) => (Some(day), CountedFrom::Fitted),
            None => self.made().unwrap_or((None, CountedFrom::Unknown)),
        };
        let stop_from = since.unwrap_or_default();
        DueRow {
            what: DueFor::Asked,
            since,
            counted_from: from,
            years: None,
            rule: None,
            calendar: None,
            hours: None,
            guide_day: None,
            finding: None,
            due: Some(stop_from),
            by: DueClock::Asked,
            stop_from: Some(stop_from),
            verdict: if stop_from <= today { Verdict::Stop } else { Verdict::Caution },
        }
    }

    fn service(&self, rule: &RuleAt, today: NaiveDate) -> DueRow {
        let on = self.on.and_then(|on| on.day);
        let (since, from) = self.made().unwrap_or((on, CountedFrom::Fitted));
        let at_least = from == CountedFrom::Fitted;
        let hours = rule.hours.as_ref().map(|held| self.hours_in_service(held));
        row(DueFor::Service, (since, from), at_least, rule, hours, today)
    }

    fn storage(&self, rule: &RuleAt, today: NaiveDate) -> DueRow {
        let since = self.made().unwrap_or((None, CountedFrom::Unknown));
        row(DueFor::Storage, since, false, rule, None, today)
    }

    /// A hose was looked at when it was fitted; one that was found in place was not.
    fn inspection(&self, rule: &RuleAt, today: NaiveDate) -> DueRow {
        let already_there = self.on.is_some_and(|on| on.already_there);
        let since = match (self.inspected, self.on.and_then(|on| on.day)) {
            (Some(inspected), on) if on.is_none_or(|on| inspected >= on) || already_there => {
                (Some(inspected), CountedFrom::Inspected)
            }
            (_, Some(on)) if !already_there => (Some(on), CountedFrom::Fitted),
            _ => (None, CountedFrom::Unknown),
        };
        let hours = rule.hours.as_ref().map(|held| self.hours_since(held, since.0));
        row(DueFor::Inspection, since, false, rule, hours, today)
    }

    fn made(&self) -> Option<(Option<NaiveDate>, CountedFrom)> {
        let assembled = self.assembled.map(|day| (Some(day), CountedFrom::Assembled));
        assembled.or(self.hose_made.map(|day| (Some(day), CountedFrom::HoseMade)))
    }

    /// Hours run since it was fitted, by the meter.
    fn hours_in_service(&self, held: &Held) -> HoursClock {
        let Some(meter) = self.meter else { return unknown(held, HoursUnknown::NoReading) };
        let clock = HoursClock { read_on: Some(meter.read_on), per_day: meter.per_day, ..clock(held) };
        let Some(at_fitting) = self.on.filter(|on| !on.already_there).and_then(|on| on.hours) else {
            return HoursClock { why_not: Some(HoursUnknown::NoHoursAtFitting), ..clock };
        };
        if at_fitting > meter.hours {
            return HoursClock { why_not: Some(HoursUnknown::MeterSetBack), ..clock };
        }
        let run = meter.hours - at_fitting;
        let due = match meter.per_day {
            Some(rate) => after_days(meter.read_on, (held.limit - run) / rate),
            // Past is past, whatever the rate.
            None => (run >= held.limit).then_some(meter.read_on),
        };
        let why_not = (due.is_none() && meter.per_day.is_none()).then_some(HoursUnknown::NoRate);
        HoursClock { run: Some(run), due, why_not, ..clock }
    }

    /// Hours run since a day on which nobody read the meter: by the machine's rate of use.
    fn hours_since(&self, held: &Held, since: Option<NaiveDate>) -> HoursClock {
        let Some(meter) = self.meter else { return unknown(held, HoursUnknown::NoReading) };
        let clock = HoursClock { read_on: Some(meter.read_on), per_day: meter.per_day, ..clock(held) };
        let Some(rate) = meter.per_day else {
            return HoursClock { why_not: Some(HoursUnknown::NoRate), ..clock };
        };
        let Some(since) = since else { return clock };
        let run = (meter.read_on - since).num_days() as f64 * rate;
        HoursClock { run: Some(run.max(0.0)), due: after_days(since, held.limit / rate), ..clock }
    }
}

fn clock(held: &Held) -> HoursClock {
    HoursClock {
        limit: held.limit,
        rule: held.rule.clone(),
        run: None,
        read_on: None,
        per_day: None,
        due: None,
        why_not: None,
    }
}

fn unknown(held: &Held, why: HoursUnknown) -> HoursClock {
    HoursClock { why_not: Some(why), ..clock(held) }
}

/// What was seen is a caution or a stop from the day it was seen.
fn found(standing: &Standing, today: NaiveDate) -> DueRow {
    let stop = standing.grade == Verdict::Stop;
    DueRow {
        what: DueFor::Finding,
        since: Some(standing.seen_on),
        counted_from: CountedFrom::Inspected,
        years: None,
        rule: None,
        calendar: None,
        hours: None,
        guide_day: None,
        finding: Some(standing.clone()),
        due: Some(standing.due),
        by: DueClock::Finding,
        stop_from: stop.then_some(standing.seen_on),
        // One that is dated ahead of the day asked about is said all the same.
        verdict: if stop && standing.seen_on <= today { Verdict::Stop } else { Verdict::Caution },
    }
}

fn row(
    what: DueFor,
    (since, from): (Option<NaiveDate>, CountedFrom),
    at_least: bool,
    at: &RuleAt,
    hours: Option<HoursClock>,
    today: NaiveDate,
) -> DueRow {
    let day = |held: &Option<Held>| held.as_ref().and_then(|held| after_years(since?, held.limit));
    let (calendar, guide_day) = (day(&at.years), day(&at.guide));
    let by_hours = hours.as_ref().and_then(|hours| hours.due);
    let (due, by) = match (calendar, by_hours) {
        (calendar, Some(hours)) if calendar.is_none_or(|day| hours < day) => (Some(hours), DueClock::Hours),
        (calendar, _) => (calendar, DueClock::Calendar),
    };
    let stops =
        |held: Option<&Rule>, day: Option<NaiveDate>| day.filter(|_| held.is_some_and(|rule| rule.stop));
    let calendar_stop = stops(at.years.as_ref().map(|held| &held.rule), calendar);
    let hours_stop = stops(hours.as_ref().map(|hours| &hours.rule), by_hours);
    let stop_from = calendar_stop.into_iter().chain(hours_stop).min();
    let come = |day: Option<NaiveDate>| day.is_some_and(|day| day <= today);
    let doubt = calendar.is_none() || at_least || hours.as_ref().is_some_and(|hours| hours.due.is_none());
    let verdict = if come(stop_from) {
        Verdict::Stop
    } else if come(due) || come(guide_day) || doubt {
        Verdict::Caution
    } else {
        Verdict::Pass
    };
    DueRow {
        what,
        since,
        counted_from: if since.is_some() { from } else { CountedFrom::Unknown },
        years: at.years.as_ref().map(|held| held.limit),
        rule: at.years.as_ref().map(|held| held.rule.clone()),
        calendar,
        hours,
        guide_day,
        finding: None,
        due,
        by,
        stop_from,
        verdict,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::Catalogue;
    use crate::record::{PolicyOf, PolicySet, Scope};

    fn day(text: &str) -> NaiveDate {
        text.parse().expect("a day")
    }

    fn fitted(made: &str, on: &str, hours: Option<f64>) -> Aged {
        Aged {
            assembled: Some(day(made)),
            on: Some(OnSince { day: Some(day(on)), already_there: false, hours }),
            ..Aged::default()
        }
    }

    fn policy(change: impl FnOnce(&mut PolicySet)) -> PolicySet {
        let mut policy = PolicySet::none(Scope::Fleet, PolicyOf::ALL);
        change(&mut policy);
        policy
    }

    #[track_caller]
    fn service(aged: &Aged, policy: PolicySet, today: &str) -> (Option<String>, DueClock, Verdict) {
        let rules = Rules::new(Catalogue::embedded(), [policy]);
        let row = aged.due(&rules, &Spot::default(), day(today)).remove(0);
        (row.due.map(|day| day.to_string()), row.by, row.verdict)
    }

    #[test]
    fn a_guide_crossed_is_a_caution_whatever_the_owner_allows_and_only_the_owner_stops() {
        let hose = fitted("2019-01-10", "2019-02-01", None);
        let years = |years, stop| policy(|policy| (policy.service_years, policy.stop) = (Some(years), stop));
        let due = |text: &str| Some(text.to_owned());
        let (by, none) = (DueClock::Calendar, policy(|_| ()));
        assert_eq!(service(&hose, none.clone(), "2024-06-01"), (due("2025-01-10"), by, Verdict::Pass));
        assert_eq!(service(&hose, none, "2026-06-01"), (due("2025-01-10"), by, Verdict::Caution));
        assert_eq!(service(&hose, years(8.0, true), "2026-06-01"), (due("2027-01-10"), by, Verdict::Caution));
        assert_eq!(service(&hose, years(8.0, true), "2027-01-10"), (due("2027-01-10"), by, Verdict::Stop));
        assert_eq!(
            service(&hose, years(3.0, false), "2026-06-01"),
            (due("2022-01-10"), by, Verdict::Caution)
        );
    }

    #[test]
    fn the_stricter_of_calendar_and_hours_counts_by_the_machines_own_rate() {
        let limit = |years: Option<f64>, hours| {
            policy(|policy| {
                (policy.service_years, policy.service_hours, policy.stop) = (years, Some(hours), true);
            })
        };
        let meter = Meter { read_on: day("2026-01-01"), hours: 3000.0, per_day: Some(5.0) };
        let hose = Aged { meter: Some(meter), ..fitted("2025-01-01", "2025-01-01", Some(2000.0)) };
        // 1000 h run; 500 h are left at 5 h a day: 100 days.
        assert_eq!(
            service(&hose, limit(None, 1500.0), "2026-02-01"),
            (Some("2026-04-11".into()), DueClock::Hours, Verdict::Pass)
        );
        assert_eq!(service(&hose, limit(None, 1500.0), "2026-04-11").2, Verdict::Stop);
        // 100000 h lie beyond the six years of the guide.
        assert_eq!(
            service(&hose, limit(None, 100_000.0), "2026-02-01"),
            (Some("2031-01-01".into()), DueClock::Calendar, Verdict::Pass)
        );
        // Long past: the day lies before the reading.
        assert_eq!(service(&hose, limit(None, 500.0), "2026-02-01").0, Some("2025-09-23".into()));
    }

    #[test]
    fn hours_that_can_not_be_reckoned_are_never_a_quiet_pass() {
        let rule = || policy(|policy| policy.service_hours = Some(5000.0));
        let meter = |hours, per_day| Some(Meter { read_on: day("2026-01-01"), hours, per_day });
        let at = |hours| fitted("2025-01-01", "2025-01-01", hours);
        for (hose, why) in [
            (at(Some(1.0)), HoursUnknown::NoReading),
            (Aged { meter: meter(10.0, Some(1.0)), ..at(None) }, HoursUnknown::NoHoursAtFitting),
            (Aged { meter: meter(10.0, Some(1.0)), ..at(Some(500.0)) }, HoursUnknown::MeterSetBack),
            (Aged { meter: meter(10.0, None), ..at(Some(1.0)) }, HoursUnknown::NoRate),
        ] {
            let rules = Rules::new(Catalogue::embedded(), [rule()]);
            let row = hose.due(&rules, &Spot::default(), day("2026-01-02")).remove(0);
            assert_eq!(row.hours.and_then(|hours| hours.why_not), Some(why));
            assert_eq!((row.verdict, row.by), (Verdict::Caution, DueClock::Calendar), "{why:?}");
        }
        // What has run past its limit is past, though nobody knows how fast.
        let past = Aged { meter: meter(9000.0, None), ..at(Some(1.0)) };
        assert_eq!(service(&past, rule(), "2026-01-02").0, Some("2026-01-01".into()));
    }

    #[test]
    fn what_was_seen_has_a_day_of_its_own_and_a_stop_stops_from_the_day_it_was_seen() {
        let rules = Rules::new(Catalogue::embedded(), []);
        let standing = |grade, due: &str| Standing {
            sign: "RUB".into(),
            grade,
            seen_on: day("2026-05-01"),
            due: day(due),
        };
        let of = |standing| Aged { standing: vec![standing], ..fitted("2026-01-01", "2026-01-01", None) };
        let seen = |aged: Aged| {
            let row = aged.due(&rules, &Spot::default(), day("2026-05-02")).pop().expect("a row");
            (row.what, row.due.map(|day| day.to_string()), row.verdict)
        };
        let due = |text: &str| Some(text.to_owned());
        assert_eq!(
            seen(of(standing(Verdict::Caution, "2026-05-31"))),
            (DueFor::Finding, due("2026-05-31"), Verdict::Caution)
        );
        assert_eq!(
            seen(of(standing(Verdict::Stop, "2026-05-01"))),
            (DueFor::Finding, due("2026-05-01"), Verdict::Stop)
        );
    }

    #[test]
    fn what_its_place_asks_too_much_of_stops_whether_or_not_a_day_of_it_is_known() {
        let rules = Rules::new(Catalogue::embedded(), []);
        let known = Aged { too_much: true, ..fitted("2026-01-01", "2026-02-01", None) };
        let on = Some(OnSince { day: None, already_there: true, hours: None });
        let unknown = Aged { too_much: true, on, ..Aged::default() };
        for (hose, since) in [(known, Some("2026-02-01".to_owned())), (unknown, None)] {
            let row = hose.due(&rules, &Spot::default(), day("2026-05-02")).pop().expect("a row");
            assert_eq!((row.what, row.verdict), (DueFor::Asked, Verdict::Stop));
            assert_eq!(row.since.map(|day| day.to_string()), since);
            assert!(row.is_past(day("2026-05-02")), "a stop is never listed as not known");
        }
    }

    #[test]
    fn a_limit_that_lies_beyond_the_calendar_is_never_a_quiet_pass() {
        let hose = Aged { assembled: Some(day("2020-01-01")), ..Aged::default() };
        let rules =
            Rules::new(Catalogue::embedded(), [policy(|policy| policy.storage_years = Some(f64::MAX))]);
        let row = hose.due(&rules, &Spot::default(), day("2020-01-02")).remove(0);
        assert_eq!((row.what, row.due, row.verdict), (DueFor::Storage, None, Verdict::Caution));
    }
}
