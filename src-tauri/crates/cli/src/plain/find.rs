//! `find` in plain text.

use super::Plain;
use super::text::{behind, columns, wrapped};
use hosewright_core::find::{EndCandidate, EndFound, Found, HoseCandidate, Part};
use hosewright_core::spec::{Gender, Role};
use hosewright_words::{Words, percent};
use std::fmt::Write;

/// Candidates that are shown; the JSON answer has all.
const SHOWN: usize = 6;

/// Look-alikes that are shown of an end; the rest are counted, and the JSON answer has all.
const LOOKALIKES: usize = 4;

/// Other names of a candidate that are shown; the rest are counted, and the JSON answer has all.
const ALSO: usize = 6;

/// The share of the probability by which the classes that are still likely are counted.
const NEARLY_ALL: f64 = 0.95;

/// Readings that are proposed, one of each open part; the JSON answer has more.
const NEXT: usize = 3;

impl Plain for Found {
    fn plain(&self, words: &Words) -> String {
        let mut out = what_is_open(self, words);
        if !self.hose.is_empty() {
            let rows = self.hose.iter().take(SHOWN).map(|candidate| hose(candidate, words)).collect();
            section(&mut out, words, "find-hose", self.settled.hose, rows, self.unknown.hose);
            if self.enough.hose && !self.settled.hose {
                let _ = writeln!(out, "{}\n", wrapped(&words.say("find-enough", &[]), 0));
            }
        }
        for contradiction in &self.contradictions {
            let _ = writeln!(out, "{}\n", wrapped(&format!("! {}", contradiction.words), 2));
        }
        for end in &self.ends {
            let heading = if end.role == Role::A { "find-end-a" } else { "find-end-b" };
            section(&mut out, words, heading, self.settled.end(end.role), rows_of(end, words), end.unknown);
            lookalikes(&mut out, words, end);
            mate(&mut out, words, end);
        }
        for stray in &self.strays {
            let _ = writeln!(out, "{}\n", wrapped(&format!("! {}", stray.words), 2));
        }
        if self.odd_ends {
            let _ = writeln!(out, "{}\n", wrapped(&format!("! {}", words.say("find-odd-ends", &[])), 2));
        }
        out
    }
}

/// How much is still open and what to read next. It stands first: while many classes are left, the likeliest
/// of them are a list of chances and no answer.
fn what_is_open(found: &Found, words: &Words) -> String {
    let mut out = String::new();
    if found.next.is_empty() {
        return out;
    }
    let mut open = Vec::new();
    if !found.settled.hose && !found.hose.is_empty() {
        let count = likely(found.hose.iter().map(|hose| hose.probability));
        open.push(words.say("find-open-hose", &[("count", &count)]));
    }
    for end in found.ends.iter().filter(|end| !found.settled.end(end.role)) {
        let count = likely(end.candidates.iter().map(|end| end.probability));
        let key = if end.role == Role::A { "find-open-a" } else { "find-open-b" };
        open.push(words.say(key, &[("count", &count)]));
    }
    if !open.is_empty() {
        let open = words.say("find-open", &[("what", &open.join(", "))]);
        let _ = writeln!(out, "{}", wrapped(&open, 2));
    }
    let _ = writeln!(out, "{}", words.say("find-next", &[]));
    for next in found.next.iter().take(NEXT) {
        let of = match next.of {
            Part::Hose => words.say("find-of-hose", &[]),
            Part::A => words.say("find-of-a", &[]),
            Part::B => words.say("find-of-b", &[]),
        };
        let _ = writeln!(out, "{}", behind(&format!("  {of}: "), &next.how));
    }
    out.push('\n');
    out
}

/// The fewest classes that hold nearly all of what the known ones hold together.
fn likely(probabilities: impl Iterator<Item = f64>) -> usize {
    let probabilities: Vec<f64> = probabilities.collect();
    let nearly_all = NEARLY_ALL * probabilities.iter().sum::<f64>();
    let mut held = 0.0;
    let before = probabilities.iter().take_while(|probability| {
        let is_before = held < nearly_all;
        held += *probability;
        is_before
    });
    before.count()
}

/// A candidate as a line: its cells, and the other names of its class.
struct Row {
    cells: Vec<String>,
    also: String,
}

fn section(out: &mut String, words: &Words, heading: &str, settled: bool, mut rows: Vec<Row>, unknown: f64) {
    let state = words.say(if settled { "find-settled" } else { "find-unsettled" }, &[]);
    let _ = writeln!(out, "{}: {state}", words.say(heading, &[]));
    let none = vec![format!("  {:>5}", percent(unknown)), words.say("find-none-of-these", &[])];
    rows.push(Row { cells: none, also: String::new() });
    let (cells, also): (Vec<_>, Vec<_>) = rows.into_iter().map(|row| (row.cells, row.also)).unzip();
    let lines = columns(&cells);
    let width = lines.lines().map(|line| line.chars().count()).max().unwrap_or(0);
    for (line, also) in lines.lines().zip(also) {
        let pad = width - line.chars().count();
        let lead = if also.is_empty() { line.to_owned() } else { format!("{line}{}  = ", " ".repeat(pad)) };
        let _ = writeln!(out, "{}", behind(&lead, &also));
    }
    out.push('\n');
}

/// Names under what they have in common, which is said once: "SAE J517 100R2AT, 100R2S, ISO 1436 2SN".
fn names<'n>(all: impl ExactSizeIterator<Item = (&'n str, &'n str)>, words: &Words) -> String {
    let more = all.len().saturating_sub(ALSO);
    let mut said = Vec::new();
    let mut last = "";
    for (common, own) in all.take(ALSO) {
        said.push(if common == last { own.to_owned() } else { format!("{common} {own}") });
        last = common;
    }
    if more > 0 {
        said.push(words.say("find-more-names", &[("count", &more)]));
    }
    said.join(", ")
}

fn hose(candidate: &HoseCandidate, words: &Words) -> Row {
    let also = candidate.also.iter().map(|also| (also.standard.as_str(), also.kind.as_str()));
    let name = format!("{} {} DN{}", candidate.standard, candidate.kind, candidate.dn);
    Row { cells: vec![format!("  {:>5}", percent(candidate.probability)), name], also: names(also, words) }
}

/// The candidates of an end; male or female is said where both are among them.
fn rows_of(end: &EndFound, words: &Words) -> Vec<Row> {
    let shown = || end.candidates.iter().take(SHOWN);
    let has = |gender| shown().any(|candidate| candidate.gender == Some(gender));
    let is_open = has(Gender::Male) && has(Gender::Female);
    shown().map(|candidate| row_of(candidate, candidate.gender.filter(|_| is_open), words)).collect()
}

fn row_of(candidate: &EndCandidate, gender: Option<Gender>, words: &Words) -> Row {
    let also = candidate.also.iter().map(|also| (also.family.as_str(), also.size.as_str()));
    let mut name = format!("{} {}", candidate.family, candidate.size);
    if let Some(gender) = gender {
        let key = if gender == Gender::Male { "gender-male" } else { "gender-female" };
        let _ = write!(name, ", {}", words.say(key, &[]));
    }
    Row {
        cells: vec![
            format!("  {:>5}", percent(candidate.probability)),
            name,
            candidate.thread.clone().unwrap_or_default(),
        ],
        also: names(also, words),
    }
}

/// A machine's half that belongs to another end.
fn mate(out: &mut String, words: &Words, end: &EndFound) {
    let Some(mate) = end.mate.as_ref().filter(|mate| mate.is_another) else { return };
    let name = format!("{} {}", mate.family, mate.size);
    let role = format!("{:?}", end.role);
    let text = words.say("find-mate-differs", &[("role", &role), ("name", &name)]);
    let _ = writeln!(out, "{}\n", wrapped(&format!("! {text}"), 2));
}

fn lookalikes(out: &mut String, words: &Words, end: &EndFound) {
    for pair in end.lookalikes.iter().take(LOOKALIKES) {
        let text =
            format!("! {} {} {}: {}", words.say("find-lookalike", &[]), pair.family, pair.size, pair.danger);
        let _ = writeln!(out, "{}", wrapped(&text, 2));
        if !pair.separates.is_empty() {
            let _ = writeln!(
                out,
                "{}",
                wrapped(&format!("  {} {}", words.say("find-separates", &[]), pair.separates), 2)
            );
        }
    }
    if let more @ 1.. = end.lookalikes.len().saturating_sub(LOOKALIKES) {
        let _ = writeln!(out, "! {}", words.say("find-more-lookalikes", &[("count", &more)]));
    }
    if !end.lookalikes.is_empty() {
        out.push('\n');
    }
}
