//! Places and machines of the register in plain text.

use super::Plain;
use super::care::stopped;
use super::check::finding_text;
use super::text::{columns, set_in, wrapped};
use hosewright_api::commands::care::DueLine;
use hosewright_api::commands::register::{MachineSaid, PlaceSaid};
use hosewright_core::catalogue::Catalogue;
use hosewright_core::check::Verdict;
use hosewright_store::{PlaceAt, PlaceSheet, Stay};
use hosewright_words::{Words, number};
use std::fmt::Write;

/// A place in a line: site, machine, number and name.
pub fn place(at: &PlaceAt) -> String {
    let number = at.number.map(|number| number.to_string());
    let parts = [&at.site_name, &at.machine_name, &number, &at.place_name];
    parts.into_iter().flatten().map(String::as_str).collect::<Vec<_>>().join(", ")
}

/// A stay in a line: the days, who or where, why it failed and what was seen.
pub fn stay(stay: &Stay, who: &str, words: &Words) -> String {
    let day = |day: Option<chrono::NaiveDate>| day.map_or_else(|| "?".to_owned(), |day| day.to_string());
    let days = match stay.off {
        Some(_) => format!("{} \u{2013} {}", day(stay.on_date), day(stay.off_date)),
        None => words.say("show-since", &[("from", &day(stay.on_date))]),
    };
    let mut line = format!("{days}: {who}");
    if let Some(cause) = &stay.cause {
        let _ = write!(line, "; {} {}", words.say("show-failed", &[]), cause_name(cause));
    }
    if let Some(note) = &stay.note {
        let _ = write!(line, " ({note})");
    }
    set_in(&line, 2, 2)
}

/// A cause of failure in words; a code that the tables do not have as it stands.
fn cause_name(code: &str) -> &str {
    let causes = &Catalogue::embedded().causes;
    causes.iter().find(|cause| cause.code == code).map_or(code, |cause| cause.name.as_str())
}

impl Plain for PlaceSheet {
    fn plain(&self, words: &Words) -> String {
        let failed: Vec<String> = self.stays.iter().filter_map(failure).collect();
        let before = words.say("show-failures", &[("count", &failed.len()), ("causes", &failed.join(", "))]);
        let mut out = format!("{}\n{}\n", wrapped(&place(&self.at), 2), set_in(&before, 2, 2));
        for each in &self.stays {
            let _ = writeln!(out, "{}", stay(each, &each.code.to_string(), words));
        }
        out
    }
}

impl Plain for PlaceSaid {
    /// What must not run on there, and a hose that does not belong there.
    fn verdict(&self) -> Option<Verdict> {
        let strange = self.findings.iter().filter(|finding| finding.rule == "belongs");
        gravest(&self.stopped_by).max(strange.map(|finding| finding.verdict).max())
    }

    fn plain(&self, words: &Words) -> String {
        let mut out = stopped(&self.stopped_by, words) + &self.sheet.plain(words);
        for finding in &self.findings {
            let _ = writeln!(out, "{}", finding_text(finding, words));
        }
        out
    }
}

/// The gravest of what falls due; none where nothing does.
pub(super) fn gravest(lines: &[DueLine]) -> Option<Verdict> {
    lines.iter().map(|line| line.due.row.verdict).max()
}

/// Why and when a hose failed.
fn failure(stay: &Stay) -> Option<String> {
    let cause = cause_name(stay.cause.as_deref()?);
    Some(stay.off_date.map_or_else(|| cause.to_owned(), |day| format!("{cause} ({day})")))
}

impl Plain for MachineSaid {
    fn verdict(&self) -> Option<Verdict> {
        gravest(&self.stopped_by)
    }

    fn plain(&self, words: &Words) -> String {
        let sheet = &self.sheet;
        let mut parts: Vec<String> = sheet.site.iter().map(|site| site.record.name.clone()).collect();
        parts.extend([sheet.machine.record.name.clone(), sheet.machine.record.sort.clone()]);
        if let Some(read) = &sheet.hours {
            let (hours, date) = (number(read.hours, 0), read.date.to_string());
            parts.push(words.say("show-hours", &[("hours", &hours), ("date", &date)]));
        }
        let rows = sheet.places.iter().map(|row| {
            let codes: Vec<String> = row.hoses.iter().map(|stay| stay.code.to_string()).collect();
            let codes = if codes.is_empty() { words.say("show-no-hose", &[]) } else { codes.join(", ") };
            vec![format!("  {:>3}", row.place.record.number), codes, row.place.record.name.clone()]
        });
        let name = wrapped(&parts.join(", "), 2);
        format!("{name}\n{}{}", stopped(&self.stopped_by, words), columns(&rows.collect::<Vec<_>>()))
    }
}
