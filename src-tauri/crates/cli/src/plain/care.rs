//! What falls due, the owner's rules, inspections and surveys in plain text.

use super::Plain;
use super::check::{source, verdict};
use super::place::place;
use super::text::{columns, set_in, wrapped};
use hosewright_api::Answer;
use hosewright_api::commands::care::{
    Affected, DeskTable, DueLine, DueList, InspectTried, Policies, PolicyAt, PolicyCounts, PolicyTried,
    Survey,
};
use hosewright_core::care::{DueClock, DueFor, Held, HoursClock, RuleAt};
use hosewright_core::check::Verdict;
use hosewright_words::{Words, number, percent};
use serde::Serialize;
use std::fmt::Write;

/// What falls due, cut to what a person reads at once unless all is asked for; the JSON answer has all.
#[derive(Debug, Serialize)]
#[serde(transparent)]
pub struct DueShown {
    /// The answer.
    pub list: Answer<DueList>,
    /// Show every row.
    #[serde(skip)]
    pub all: bool,
}

/// Rows of what falls due that are shown unless all is asked for.
const SHOWN: usize = 40;

impl Plain for DueShown {
    fn plain(&self, words: &Words) -> String {
        let DueList { on, guide, due, chances, .. } = &self.list.content;
        let count = due.len();
        // What must not run on stands first and is never cut off.
        let stopped = due.iter().take_while(|line| line.due.row.verdict == Verdict::Stop).count();
        let shown = if self.all { count } else { count.min(SHOWN.max(stopped)) };
        let rows: Vec<Vec<String>> = due.iter().take(shown).map(|due| due_row(due, words)).collect();
        let cut = if shown < count {
            words.say("due-cut", &[("shown", &shown), ("count", &count)])
        } else {
            String::new()
        };
        let mut heading = words.say("due-heading", &[("on", &on.to_string()), ("count", &count)]);
        if stopped > 0 {
            let _ = write!(heading, " {}", words.say("due-stopped", &[("count", &stopped)]));
        }
        // Said before the rows as well: who reads only the beginning must not take it for the whole.
        let mut out = format!("{}\n", wrapped(format!("{heading} {cut}").trim_end(), 2));
        if let Some(chances) = chances {
            let from = format!("due-chance-{}", hosewright_api::key(&chances.from));
            let days = usize::try_from(chances.ahead_days).unwrap_or(usize::MAX);
            let said = words
                .say(&from, &[("days", &days), ("failures", &chances.failures), ("needed", &chances.needed)]);
            let _ = writeln!(out, "{}", wrapped(&said, 2));
        }
        out += &columns(&rows);
        if !cut.is_empty() {
            let _ = writeln!(out, "{cut}");
        }
        if let Some(guide) = guide {
            let source = source(&guide.source, guide.basis, words);
            let _ = writeln!(out, "{}", wrapped(&format!("{} {source}", words.say("due-guide", &[])), 2));
        }
        out
    }
}

fn due_row(line: &DueLine, words: &Words) -> Vec<String> {
    let due = &line.due;
    let day = due.row.due.filter(|_| due.row.what != DueFor::Asked || due.row.since.is_some());
    let day = day.map_or_else(|| words.say("due-no-day", &[]), |day| day.to_string());
    let mut at: Vec<String> = due.at.as_ref().map(place).into_iter().collect();
    at.extend(line.seen.as_ref().map(|seen| seen.name.clone()));
    at.extend(line.asked.as_ref().map(|asked| asked.why.clone()));
    at.extend(
        due.row.hours.as_ref().filter(|_| due.row.by == DueClock::Hours).map(|hours| clock(hours, words)),
    );
    let mut cells = vec![verdict(due.row.verdict, words), day];
    if let Some(risk) = &line.risk {
        cells.push(format!("{} {} x {}", number(risk.product, 2), percent(risk.chance), risk.consequence));
    }
    cells.push(words.say(&format!("due-what-{}", hosewright_api::key(&due.row.what)), &[]));
    cells.push(due.code.to_string());
    cells.push(at.join("; "));
    cells
}

/// What falls due of a thing in a line: the verdict, the day, what and why; and in a list of several places, which.
pub(super) fn due_line(line: &DueLine, at: Option<String>, words: &Words) -> String {
    let row = &line.due.row;
    let what = words.say(&format!("due-what-{}", hosewright_api::key(&row.what)), &[]);
    // A day that nobody knows, of what stops all the same, is none that could be told.
    let day = row.due.filter(|_| row.what != DueFor::Asked || row.since.is_some());
    let day = day.map_or_else(|| words.say("due-no-day", &[]), |day| day.to_string());
    let rule = row.rule.as_ref().filter(|_| row.verdict == Verdict::Stop).map(|rule| rule.why.clone());
    let why = [
        line.seen.as_ref().map(|seen| seen.name.clone()),
        line.asked.as_ref().map(|asked| asked.why.clone()),
        rule,
    ];
    let said = [at].into_iter().chain(why).flatten().collect::<Vec<_>>().join("; ");
    let said = if said.is_empty() { said } else { format!(": {said}") };
    set_in(&format!("{} {day} {what}{said}", verdict(row.verdict, words)), 2, 2)
}

/// What stops a machine or a place, before anything else is said of it.
pub(super) fn stopped(lines: &[DueLine], words: &Words) -> String {
    lines.iter().fold(String::new(), |mut out, line| {
        let at = line.due.at.as_ref();
        let number = at.and_then(|at| at.number).map(|number| number.to_string());
        let name = [number, at.and_then(|at| at.place_name.clone()), Some(line.due.code.to_string())];
        let name = name.into_iter().flatten().collect::<Vec<_>>().join(", ");
        let _ = writeln!(out, "{}", due_line(line, Some(name), words));
        out
    })
}

/// Hours against their limit.
fn clock(hours: &HoursClock, words: &Words) -> String {
    let run = hours.run.map_or_else(|| "?".to_owned(), |run| number(run, 0));
    let rate = hours.per_day.map_or_else(|| "?".to_owned(), |rate| number(rate, 1));
    words.say("due-hours", &[("run", &run), ("limit", &number(hours.limit, 0)), ("rate", &rate)])
}

impl Plain for InspectTried {
    fn plain(&self, words: &Words) -> String {
        let mut out = String::new();
        for said in &self.said {
            let line = format!("{} {}: {}", verdict(said.grade, words), said.code, said.words);
            let _ = writeln!(out, "{}", wrapped(&line, 2));
        }
        if let Some(machine) = self.machine.as_ref().filter(|_| self.machine_stopped) {
            let stopped = words.say("inspect-stopped", &[("machine", &machine.name)]);
            let _ = writeln!(out, "{}: {}", verdict(Verdict::Stop, words), wrapped(&stopped, 2));
        }
        let day = |day: Option<chrono::NaiveDate>| {
            day.map_or_else(|| words.say("due-no-day", &[]), |day| day.to_string())
        };
        let due =
            words.say("inspect-due", &[("before", &day(self.due_before)), ("after", &day(self.due_after))]);
        let _ = writeln!(out, "{}", wrapped(&due, 2));
        out
    }

    fn verdict(&self) -> Option<Verdict> {
        Some(self.grade)
    }
}

impl Plain for Survey {
    fn plain(&self, words: &Words) -> String {
        let heading = words.say("survey-heading", &[("done", &self.done), ("left", &self.left)]);
        let rows = self.places.iter().map(|place| {
            let state = place.last.as_ref().map_or_else(
                || words.say("survey-state-not-yet", &[]),
                |last| {
                    let state =
                        words.say(&format!("survey-state-{}", hosewright_api::key(&last.record.state)), &[]);
                    format!("{} {state}", last.record.date)
                },
            );
            let found = [&place.found.hose, &place.found.a, &place.found.b].into_iter().flatten().cloned();
            let found = found.collect::<Vec<_>>().join("; ");
            vec![
                format!("  {:>3}", place.number),
                state,
                [place.name.clone(), found].join("  ").trim_end().to_owned(),
            ]
        });
        format!("{}\n{}\n{}", self.name, wrapped(&heading, 2), columns(&rows.collect::<Vec<_>>()))
    }
}

impl Plain for Affected {
    fn plain(&self, words: &Words) -> String {
        let count = |count: u32| usize::try_from(count).unwrap_or(usize::MAX);
        let heading = words.say(
            "affected-heading",
            &[("tables", &self.tables), ("hoses", &count(self.hoses)), ("unknown", &count(self.not_known))],
        );
        let mut out = format!("{}\n", wrapped(&heading, 2));
        for row in &self.rows {
            let stands = match row.stands {
                Some(stands) => words.say(&format!("affected-row-{}", hosewright_api::key(&stands)), &[]),
                None => words.say("affected-row-unknown", &[]),
            };
            let name = [row.table.clone().unwrap_or_default(), row.row.clone()].join(" ");
            let _ = writeln!(out, "\n{}", set_in(&format!("{} {stands} ({})", name.trim(), row.count), 0, 2));
            let hoses = row.hoses.iter().map(|hose| {
                vec![format!("  {}", hose.code), hose.at.as_ref().map(place).unwrap_or_default()]
            });
            out += &columns(&hoses.collect::<Vec<_>>());
        }
        out
    }
}

impl Plain for DeskTable {
    fn plain(&self, words: &Words) -> String {
        let (shown, total) = (self.rows.len(), usize::try_from(self.total).unwrap_or(usize::MAX));
        let heading = words.say("hoses-heading", &[("shown", &shown), ("total", &total)]);
        let rows = self.rows.iter().map(|row| {
            let dn = row.dn.map(|dn| format!("DN{dn}"));
            let hose = [row.standard.clone(), row.kind.clone(), dn].into_iter().flatten().collect::<Vec<_>>();
            vec![
                row.verdict.map(|of| verdict(of, words)).unwrap_or_default(),
                row.due.map(|day| day.to_string()).unwrap_or_default(),
                row.code.to_string(),
                hose.join(" "),
                row.at.as_ref().map_or_else(|| words.say(&format!("status-{}", row.state), &[]), place),
            ]
        });
        format!("{}\n{}", wrapped(&heading, 2), columns(&rows.collect::<Vec<_>>()))
    }
}

impl Plain for Policies {
    fn plain(&self, words: &Words) -> String {
        let mut out = String::new();
        for rule in &self.rules {
            let what = words.say(&format!("policy-{}", hosewright_api::key(&rule.what)), &[]);
            let demand = rule.demand.map(|demand| words.say(&format!("care-demand-{}", demand.name()), &[]));
            let limit = words.say("policy-years", &[("years", &number(rule.years, 1))]);
            let name = [Some(what), demand].into_iter().flatten().collect::<Vec<_>>().join(", ");
            let line = format!("{name}: {limit} {} {}", rule.id, source(&rule.source, rule.basis, words));
            let _ = writeln!(out, "{}", set_in(&line, 0, 2));
        }
        let _ = writeln!(out, "\n{}", words.say("policy-yours", &[("count", &self.policies.len())]));
        for kept in &self.policies {
            let policy = &kept.policy;
            let mut limits = Vec::new();
            for (what, years, hours) in [
                ("service", policy.service_years, policy.service_hours),
                ("storage", policy.storage_years, None),
                ("inspection", policy.inspection_years, policy.inspection_hours),
            ] {
                let years = years.map(|years| words.say("policy-years", &[("years", &number(years, 1))]));
                let hours = hours.map(|hours| words.say("policy-hours", &[("hours", &number(hours, 0))]));
                let both: Vec<String> = years.into_iter().chain(hours).collect();
                if !both.is_empty() {
                    limits.push(format!("{} {}", words.say(&format!("policy-{what}"), &[]), both.join(", ")));
                }
            }
            if policy.stop {
                limits.push(words.say("policy-stops", &[]));
            }
            let _ = writeln!(out, "{}", set_in(&format!("{}: {}", kept.name, limits.join("; ")), 2, 2));
        }
        out
    }
}

impl Plain for PolicyAt {
    fn plain(&self, words: &Words) -> String {
        let mut out = String::new();
        for (what, at) in
            [("service", &self.service), ("storage", &self.storage), ("inspection", &self.inspection)]
        {
            let _ = writeln!(out, "{}", words.say(&format!("policy-{what}"), &[]));
            for line in held(at, words) {
                let _ = writeln!(out, "{}", set_in(&line, 2, 2));
            }
        }
        out
    }
}

fn held(at: &RuleAt, words: &Words) -> Vec<String> {
    let years = |held: &Held| words.say("policy-years", &[("years", &number(held.limit, 1))]);
    let hours = |held: &Held| words.say("policy-hours", &[("hours", &number(held.limit, 0))]);
    let line = |limit: String, held: &Held| {
        let stop =
            if held.rule.stop { format!(" {}", words.say("policy-stops", &[])) } else { String::new() };
        format!("{limit}{stop}: {} {}", held.rule.why, source(&held.rule.source, held.rule.basis, words))
    };
    let holds = at.years.iter().map(|held| line(years(held), held));
    let hours = at.hours.iter().map(|held| line(hours(held), held));
    let beside =
        at.guide.iter().map(|held| words.say("policy-beside", &[("limit", &line(years(held), held))]));
    let over = at.over.iter().map(|held| words.say("policy-over", &[("limit", &line(years(held), held))]));
    holds.chain(hours).chain(beside).chain(over).collect()
}

impl Plain for PolicyTried {
    fn plain(&self, words: &Words) -> String {
        let mut out = format!("{}\n", wrapped(&self.name, 2));
        let counts = |id: &str, counts: &PolicyCounts| {
            words.say(id, &[("past", &counts.past), ("stopped", &counts.stopped), ("within", &counts.within)])
        };
        let moved = words.say(
            "policy-moved",
            &[("moved", &self.moved), ("hoses", &self.hoses), ("machines", &self.machines_stopped)],
        );
        for line in [counts("policy-before", &self.before), counts("policy-after", &self.after), moved] {
            let _ = writeln!(out, "{}", set_in(&line, 0, 2));
        }
        let day = |day: Option<chrono::NaiveDate>| day.map_or_else(|| "?".to_owned(), |day| day.to_string());
        let rows = self.rows.iter().map(|row| {
            vec![
                verdict(row.verdict_after, words),
                format!("{} > {}", day(row.due_before), day(row.due_after)),
                words.say(&format!("due-what-{}", hosewright_api::key(&row.what)), &[]),
                row.code.to_string(),
                row.at.as_ref().map(place).unwrap_or_default(),
            ]
        });
        out + &columns(&rows.collect::<Vec<_>>())
    }
}
