//! `find` in plain text.

use super::Plain;
use super::text::{columns, wrapped};
use hosewright_core::find::{EndCandidate, EndFound, Found, HoseCandidate, Part};
use hosewright_words::{Words, percent};
use std::fmt::Write;

/// Candidates that are shown; the JSON answer has all.
const SHOWN: usize = 6;

/// Look-alikes that are shown of an end; the rest are counted, and the JSON answer has all.
const LOOKALIKES: usize = 4;

/// Readings that are proposed; the JSON answer has all.
const NEXT: usize = 3;

impl Plain for Found {
    fn plain(&self, words: &Words) -> String {
        let mut out = String::new();
        if !self.hose.is_empty() {
            let rows = self.hose.iter().take(SHOWN).map(hose).collect();
            section(&mut out, words, "find-hose", self.settled.hose, rows, self.unknown.hose);
        }
        for end in &self.ends {
            let rows = end.candidates.iter().take(SHOWN).map(candidate).collect();
            let heading =
                if end.role == hosewright_core::spec::Role::A { "find-end-a" } else { "find-end-b" };
            section(&mut out, words, heading, self.settled.end(end.role), rows, end.unknown);
            lookalikes(&mut out, words, end);
        }
        if !self.next.is_empty() {
            let _ = writeln!(out, "{}", words.say("find-next", &[]));
            for next in self.next.iter().take(NEXT) {
                let of = match next.of {
                    Part::Hose => words.say("find-of-hose", &[]),
                    Part::A => words.say("find-of-a", &[]),
                    Part::B => words.say("find-of-b", &[]),
                };
                let _ = writeln!(out, "{}", wrapped(&format!("  {of}: {}", next.how), 4));
            }
        }
        out
    }
}

fn section(
    out: &mut String,
    words: &Words,
    heading: &str,
    settled: bool,
    mut rows: Vec<Vec<String>>,
    unknown: f64,
) {
    let state = words.say(if settled { "find-settled" } else { "find-unsettled" }, &[]);
    let _ = writeln!(out, "{}: {state}", words.say(heading, &[]));
    rows.push(vec![format!("  {:>5}", percent(unknown)), words.say("find-none-of-these", &[])]);
    out.push_str(&columns(&rows));
    out.push('\n');
}

fn hose(candidate: &HoseCandidate) -> Vec<String> {
    let also: Vec<String> =
        candidate.also.iter().map(|also| format!("{} {}", also.standard, also.kind)).collect();
    let also = if also.is_empty() { String::new() } else { format!("= {}", also.join(", ")) };
    vec![
        format!("  {:>5}", percent(candidate.probability)),
        format!("{} {} DN{}", candidate.standard, candidate.kind, candidate.dn),
        also,
    ]
}

fn candidate(candidate: &EndCandidate) -> Vec<String> {
    let also: Vec<String> =
        candidate.also.iter().map(|also| format!("{} {}", also.family, also.size)).collect();
    let also = if also.is_empty() { String::new() } else { format!("= {}", also.join(", ")) };
    vec![
        format!("  {:>5}", percent(candidate.probability)),
        format!("{} {}", candidate.family, candidate.size),
        candidate.thread.clone().unwrap_or_default(),
        also,
    ]
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
