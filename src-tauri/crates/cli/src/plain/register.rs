//! `register` in plain text.

use super::Plain;
use super::care::due_line;
use super::check::verdict;
use super::place::{gravest, place, stay};
use super::sheet::headings;
use super::text::{columns, set_in, wrapped};
use hosewright_api::commands::register::{
    Backups, Hits, HoseShown, Imported, ListMatches, Merged, Recorded, Verified,
};
use hosewright_api::{ApiError, Code};
use hosewright_core::check::Verdict;
use hosewright_core::record::Body;
use hosewright_store::{Hit, Status};
use hosewright_words::{Pressure, Words, number, pressure};
use serde::Serialize;
use std::fmt::Write;
use std::path::Path;

/// A file that was left.
#[derive(Debug, Serialize)]
pub struct Left {
    /// Where.
    pub file: String,
}

impl Left {
    /// At that path.
    pub fn at(path: &Path) -> Self {
        Self { file: path.display().to_string() }
    }
}

impl Plain for Left {
    fn plain(&self, _: &Words) -> String {
        self.file.clone()
    }
}

impl Plain for ListMatches {
    fn plain(&self, words: &Words) -> String {
        headings(&self.headings, words)
    }
}

impl Plain for Imported {
    fn plain(&self, words: &Words) -> String {
        let said = match (self.dry_run, self.refused.is_empty()) {
            (_, false) => "import-would-not",
            (true, true) => "import-would",
            (false, true) => "import-done",
        };
        let done = words.say(
            said,
            &[
                ("refused", &self.refused.len()),
                ("rows", &self.rows),
                ("hoses", &self.hoses),
                ("machines", &self.machines),
                ("places", &self.places),
                ("known", &self.known),
                ("changed", &self.changed),
            ],
        );
        let mut out = wrapped(&done, 2);
        for row in &self.refused {
            let refused = words.say("import-refused", &[("row", &row.row), ("why", &row.why)]);
            let _ = write!(out, "\n{}", set_in(&refused, 2, 2));
        }
        out
    }

    /// A list with rows that can not be taken in is a wrong input, whether it is tried or only asked about.
    fn exit(&self) -> u8 {
        if self.refused.is_empty() { 0 } else { Code::Input.exit() }
    }
}

impl Plain for Recorded {
    fn plain(&self, words: &Words) -> String {
        words.say("record-done", &[("count", &self.written.len())])
    }
}

impl Plain for Merged {
    fn plain(&self, words: &Words) -> String {
        let count = |number: u64| usize::try_from(number).unwrap_or(usize::MAX);
        let done = words.say(
            "merge-done",
            &[("added", &count(self.added)), ("had", &count(self.had)), ("held", &count(self.held))],
        );
        let mut out = wrapped(&done, 2);
        for series in &self.refused {
            let device = series.device.to_string();
            let refused = words.say(&format!("merge-{}", series.why), &[("device", &device)]);
            let _ = write!(out, "\n{}", set_in(&refused, 2, 2));
        }
        out
    }
}

impl Plain for Verified {
    fn plain(&self, words: &Words) -> String {
        let count = |number: u64| usize::try_from(number).unwrap_or(usize::MAX);
        let (events, devices) = (count(self.events), count(self.devices));
        if self.faults.is_empty() {
            wrapped(&words.say("verify-whole", &[("events", &events), ("devices", &devices)]), 0)
        } else {
            self.faults.join("\n")
        }
    }
}

impl Plain for Backups {
    fn plain(&self, words: &Words) -> String {
        if self.backups.is_empty() {
            return words.say("backups-none", &[]);
        }
        let rows = self.backups.iter().map(|backup| {
            let made = backup.made.format("%Y-%m-%d %H:%M UTC").to_string();
            vec![made, format!("{} kB", backup.bytes.div_ceil(1000)), backup.name.clone()]
        });
        let folder = words.say("backups-folder", &[("folder", &self.folder)]);
        let mut out = format!("{}\n{}", wrapped(&folder, 0), columns(&rows.collect::<Vec<_>>()));
        let _ = write!(out, "\n{}", wrapped(&words.say("backups-photos", &[]), 0));
        if self.late {
            let _ = write!(out, "\n{}", wrapped(&words.say("backups-late", &[]), 0));
        }
        out
    }
}

fn status(status: &Status) -> &'static str {
    match status {
        Status::Made => "status-made",
        Status::Fitted => "status-fitted",
        Status::TakenOff => "status-taken-off",
        Status::FailedProof => "status-failed-proof",
        Status::Withdrawn { .. } => "status-withdrawn",
    }
}

impl Plain for HoseShown {
    /// A record that contradicts itself stops like the tag of the hose does.
    fn verdict(&self) -> Option<Verdict> {
        let contradicted = (!self.hose.conflicts.is_empty()).then_some(Verdict::Stop);
        gravest(&self.due).max(contradicted)
    }

    fn plain(&self, words: &Words) -> String {
        let hose = &self.hose;
        let status = words.say(status(&hose.status), &[]);
        let mut out = format!("{}  {status}\n", hose.code);
        if !hose.conflicts.is_empty() {
            let count = hose.conflicts.len();
            let said = format!(
                "{} {}",
                verdict(Verdict::Stop, words),
                words.say("show-not-settled", &[("count", &count)])
            );
            let _ = writeln!(out, "{}", set_in(&said, 2, 2));
        }
        let (stops, others): (Vec<_>, Vec<_>) =
            self.due.iter().partition(|line| line.due.row.verdict == Verdict::Stop);
        for line in stops {
            let _ = writeln!(out, "{}", due_line(line, None, words));
        }
        if let Some(made) = hose.assembly.as_ref().map(|made| &made.record) {
            if let Some(hose) = &made.spec.hose {
                let _ = writeln!(out, "  {} {} DN{}", hose.standard, hose.kind, hose.dn);
            }
            for end in &made.spec.ends {
                let end = format!("{:?} {}", end.role, hosewright_api::end_name(end, words));
                let _ = writeln!(out, "{}", set_in(&end, 2, 2));
            }
            if let Some(length) = made.spec.overall_length_mm {
                let _ = writeln!(out, "  {} mm", number(length.get(), 1));
            }
            if let Some(rating) = made.pressure_bar {
                let _ = writeln!(
                    out,
                    "  {}",
                    words.say("label-pressure", &[("pressure", &pressure(rating.get(), Pressure::Bar))])
                );
            }
            if let Some(day) = made.assembled {
                let _ = writeln!(out, "  {}", words.say("label-made", &[("date", &day.to_string())]));
            }
        }
        for each in &hose.stays {
            let _ = writeln!(out, "{}", stay(each, &place(&each.at), words));
        }
        for line in others {
            let _ = writeln!(out, "{}", due_line(line, None, words));
        }
        for note in hose.history.iter().filter(|written| !written.void) {
            if let Body::Noted(noted) = &note.body {
                let note = format!("{}  {}", note.time.format("%Y-%m-%d"), noted.text);
                let _ = writeln!(out, "{}", set_in(&note, 2, 2));
            }
        }
        out
    }
}

/// A place with how often hoses failed there, which is said before anything is made for it again.
fn failures(place: String, failed: u32, words: &Words) -> String {
    match usize::try_from(failed).unwrap_or(usize::MAX) {
        0 => place,
        count => format!("{place}; {}", words.say("search-failed", &[("count", &count)])),
    }
}

/// A name, and that what is on record under it contradicts itself.
fn not_settled(name: String, unsettled: bool, words: &Words) -> String {
    if !unsettled {
        return name;
    }
    let said = words.say("search-not-settled", &[]);
    [name, said].into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join("; ")
}

impl Plain for Hits {
    fn nothing(&self, words: &Words) -> Option<ApiError> {
        self.hits.is_empty().then(|| ApiError::nothing("words", words.say("search-nothing", &[])))
    }

    fn plain(&self, words: &Words) -> String {
        let rows = self.hits.iter().map(|hit| match hit {
            Hit::Hose { code, at, unsettled } => vec![
                words.say("search-hose", &[]),
                code.to_string(),
                not_settled(at.as_ref().map(place).unwrap_or_default(), *unsettled, words),
            ],
            Hit::Place { at, failed } => {
                vec![words.say("search-place", &[]), failures(place(at), *failed, words)]
            }
            Hit::Machine { name, unsettled, .. } => {
                vec![words.say("search-machine", &[]), not_settled(name.clone(), *unsettled, words)]
            }
            Hit::Site { name, .. } => vec![words.say("search-site", &[]), name.clone()],
        });
        columns(&rows.collect::<Vec<_>>())
    }
}
