//! The words of a dangerous pair. One that was worked out of the threads has none of its own; one of the table has
//! them in English, with its figures, and is told by its codes in any other language.

use crate::sheet::key;
use hosewright_core::catalogue::{FemalePart, ThreadFit};
use hosewright_core::find::{EndName, LookalikeFound, PairFound};
use hosewright_words::{Language, Words, number};

/// Readings that another of the list stands for: the gauge gives pitch and threads an inch alike, and two
/// diameters are how a taper is measured.
const STOOD_FOR: [&str; 2] = ["tpi", "second_thread_diameter_mm"];

/// Writes what the core left to the edge.
pub(super) fn write(words: &Words, found: &mut LookalikeFound) {
    let Some(pair) = &found.pair else { return };
    let happens = match pair.fit {
        Some(fit) => happens(words, pair, fit),
        // Two of one name are told apart by the table's own words alone.
        None if words.language() == Language::English || pair.female == pair.male => return,
        None => does(words, pair, &words.say("lookalike-turns-unknown", &[])),
    };
    found.danger = format!("{}: {happens}", starts(words, pair));
    found.separates = separates(words, pair);
}

fn starts(words: &Words, pair: &PairFound) -> String {
    let name = |end: &EndName| format!("{} {}", end.family, end.size);
    let id = match pair.female_part {
        FemalePart::Nut => "nut",
        FemalePart::Port => "port",
        FemalePart::Body => "body",
        FemalePart::Socket => "socket",
        FemalePart::Halves => "halves",
    };
    let (female, male) = (name(&pair.female), name(&pair.male));
    words.say(&format!("lookalike-starts-{id}"), &[("female", &female), ("male", &male)])
}

fn happens(words: &Words, pair: &PairFound, fit: ThreadFit) -> String {
    let turns = fit.turns.unwrap_or_default().round();
    let turns = words.say("lookalike-turns", &[("turns", &turns)]);
    let overlap = number(fit.overlap_pct, 0);
    let meets = words.say(&format!("lookalike-{}", key(&fit.rule)), &[("overlap", &overlap)]);
    format!("{meets}; {}", does(words, pair, &turns))
}

fn does(words: &Words, pair: &PairFound, turns: &str) -> String {
    words.say(&format!("lookalike-{}", key(&pair.mechanism)), &[("turns", &turns)])
}

fn separates(words: &Words, pair: &PairFound) -> String {
    let keys = pair.separating_readings.iter().filter(|key| !STOOD_FOR.contains(&key.as_str()));
    let readings: Vec<String> = keys.map(|key| words.say(&format!("lookalike-by-{key}"), &[])).collect();
    match readings.as_slice() {
        [] => words.say("lookalike-separates-none", &[]),
        several => words.say("lookalike-separates", &[("readings", &several.join(", "))]),
    }
}
