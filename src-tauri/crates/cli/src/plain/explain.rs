//! `explain` in plain text: a bar for each reading, to the right for the candidate, to the left against it.

use super::Plain;
use super::text::{columns, wrapped};
use hosewright_core::catalogue::Basis;
use hosewright_core::find::Explained;
use hosewright_words::Words;
use std::fmt::Write;

/// Length of the longest bar, in letters.
const LONGEST: f64 = 12.0;

/// Bits of the longest bar; what says more has a bar of that length.
const FULL_BITS: f64 = 12.0;

impl Plain for Explained {
    fn plain(&self, words: &Words) -> String {
        let none = words.say("find-none-of-these", &[]);
        let rival = self.rival.as_deref().unwrap_or(&none);
        let mut out = String::new();
        let _ = writeln!(
            out,
            "{}",
            words.say("explain-title", &[("candidate", &self.candidate), ("rival", &rival)])
        );
        let _ = writeln!(out, "{}", words.say("explain-how", &[]));
        let mut rows: Vec<Vec<String>> =
            self.readings.iter().map(|said| row(reading(&said.reading, words), said.bits)).collect();
        rows.push(row(words.say("explain-together", &[]), self.together_bits));
        rows.push(row(words.say("explain-all", &[]), self.odds_bits));
        let _ = write!(out, "{}", columns(&rows));
        if !self.must_be_wrong.is_empty() {
            let wrong: Vec<String> = self.must_be_wrong.iter().map(|key| reading(key, words)).collect();
            let wrong = wrong.join(", ");
            let text = words.say("explain-must-be-wrong", &[("rival", &rival), ("readings", &wrong)]);
            let _ = writeln!(out, "{}", wrapped(&text, 2));
        }
        let from = [(Some(&self.candidate_from), self.candidate.as_str()), (self.rival_from.as_ref(), rival)];
        for (provenance, name) in from {
            if provenance.is_some_and(|from| from.basis == Basis::Memory) {
                let _ = writeln!(out, "{}", wrapped(&words.say("explain-unverified", &[("name", &name)]), 2));
            }
        }
        out
    }
}

/// Name of a reading, a bar and its bits.
fn row(name: String, bits: f64) -> Vec<String> {
    let length = (bits.abs() / FULL_BITS * LONGEST).round().min(LONGEST) as usize;
    let bar = if bits < 0.0 {
        format!("{:>12}|{:12}", "-".repeat(length), "")
    } else {
        format!("{:12}|{:<12}", "", "+".repeat(length))
    };
    vec![format!("  {name}"), bar, format!("{bits:+.1}")]
}

fn reading(key: &str, words: &Words) -> String {
    words.say(&format!("find-key-{}", key.replace('_', "-")), &[])
}
