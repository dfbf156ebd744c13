//! The words of a dangerous pair that was worked out of the threads; a pair of the table has its own.

use crate::sheet::key;
use hosewright_core::catalogue::{FemalePart, ThreadFit};
use hosewright_core::find::{EndName, LookalikeFound, PairFound};
use hosewright_words::{Words, number};

/// Readings that another of the list stands for: the gauge gives pitch and threads an inch alike, and two
/// diameters are how a taper is measured.
const STOOD_FOR: [&str; 2] = ["tpi", "second_thread_diameter_mm"];

/// Writes what the core left to the edge.
pub(super) fn write(words: &Words, found: &mut LookalikeFound) {
    let Some(pair) = &found.pair else { return };
    let Some(fit) = pair.fit else { return };
    found.danger = format!("{}: {}", starts(words, pair), happens(words, pair, fit));
    found.separates = separates(words, pair);
}

fn starts(words: &Words, pair: &PairFound) -> String {
    let name = |end: &EndName| format!("{} {}", end.family, end.size);
    let id = if pair.female_part == FemalePart::Port { "port" } else { "nut" };
    let (female, male) = (name(&pair.female), name(&pair.male));
    words.say(&format!("lookalike-starts-{id}"), &[("female", &female), ("male", &male)])
}

fn happens(words: &Words, pair: &PairFound, fit: ThreadFit) -> String {
    let turns = fit.turns.unwrap_or_default().round();
    let turns = words.say("lookalike-turns", &[("turns", &turns)]);
    let overlap = number(fit.overlap_pct, 0);
    let meets = words.say(&format!("lookalike-{}", key(&fit.rule)), &[("overlap", &overlap)]);
    let does = words.say(&format!("lookalike-{}", key(&pair.mechanism)), &[("turns", &turns)]);
    format!("{meets}; {does}")
}

fn separates(words: &Words, pair: &PairFound) -> String {
    let keys = pair.separating_readings.iter().filter(|key| !STOOD_FOR.contains(&key.as_str()));
    let readings: Vec<String> = keys.map(|key| words.say(&format!("lookalike-by-{key}"), &[])).collect();
    match readings.as_slice() {
        [] => words.say("lookalike-separates-none", &[]),
        several => words.say("lookalike-separates", &[("readings", &several.join(", "))]),
    }
}
