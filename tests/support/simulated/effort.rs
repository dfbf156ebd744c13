//! The effort until an end is settled: guided by the reading that `find` proposes first, and in the
//! fixed order of the trade.

use super::jobs::of_role;
use super::laws::Reads;
use crate::find_figures::ask;
use hosewright_core::catalogue::{Catalogue, PartKind};
use hosewright_core::find::{Found, Part};
use serde_json::{Value, json};
use std::collections::BTreeSet;

/// To see that a part has no such feature. Common practice, no source.
const LOOK: f64 = 0.3;

/// The fixed order: taper or parallel, diameter, pitch, seat angle, shape and seal, flange by its bolts
/// or head. A plain end has its tube where others have a thread.
const FIXED: [&str; 11] = [
    "taper",
    "gender",
    "thread_diameter_mm",
    "tube_od_mm",
    "pitch_mm",
    "seat_included_angle_deg",
    "cone",
    "seal",
    "bolt_long_mm",
    "head_od_mm",
    "bolt_short_mm",
];

/// What is left to read where that order is through and the end is not settled.
const AND_THEN: [&str; 8] = [
    "tube_od_mm",
    "male_bore_mm",
    "swivel_hex_mm",
    "flank_angle_deg",
    "second_thread_diameter_mm",
    "shoulder",
    "kind",
    "head_thickness_mm",
];

/// The effort of a reading by the table: what is compared is the order of reading.
fn effort(catalogue: &Catalogue, key: &str) -> f64 {
    let row = catalogue.efforts.iter().find(|row| row.part == PartKind::End && row.reading == key);
    row.unwrap_or_else(|| panic!("{key} has no effort")).effort
}

/// How one end was settled, or not.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Walk {
    /// What it took.
    pub effort: f64,
    /// Readings asked for.
    pub readings: usize,
    /// Whether it was settled.
    pub is_settled: bool,
    /// Whether one class held 99 % and a dangerous partner alone kept it open.
    pub is_threatened: bool,
}

/// By the reading proposed first, until the end is settled or nothing more is proposed.
pub fn guided(catalogue: &Catalogue, all: &Reads, error: f64) -> Walk {
    walk(catalogue, all, error, |found, asked| {
        let open = |reading: &&str| !asked.contains(*reading);
        let proposed = found.next.iter().filter(|next| next.of == Part::A).map(|next| next.reading.as_str());
        proposed.filter(open).map(str::to_owned).next()
    })
}

/// In the fixed order, until the end is settled or everything is read. What an end plainly does not
/// have is passed over: a thread or a flange is told at a glance.
pub fn fixed(catalogue: &Catalogue, all: &Reads, error: f64) -> Walk {
    walk(catalogue, all, error, |_, asked| {
        let is_tube = !all.contains_key("thread_diameter_mm");
        let is_left =
            |key: &&str| !asked.contains(*key) && all.contains_key(*key) && (is_tube || *key != "tube_od_mm");
        let left = FIXED.into_iter().find(is_left);
        let then = || AND_THEN.into_iter().find(|key| !asked.contains(*key) && all.contains_key(*key));
        left.or_else(then).map(str::to_owned)
    })
}

fn walk(
    catalogue: &Catalogue,
    all: &Reads,
    error: f64,
    next: impl Fn(&Found, &BTreeSet<String>) -> Option<String>,
) -> Walk {
    let mut taken = Reads::new();
    let mut asked = BTreeSet::new();
    let mut effort_spent = 0.0;
    loop {
        let half: Value = of_role("A", &taken);
        let found = ask(catalogue, &json!({"ends": [half], "caliper_error_mm": error}));
        let walk = |is_settled| Walk {
            effort: effort_spent,
            readings: asked.len(),
            is_settled,
            is_threatened: !is_settled
                && found.ends[0].candidates.first().is_some_and(|first| first.probability >= 0.99),
        };
        if found.settled.a {
            return walk(true);
        }
        let Some(key) = next(&found, &asked) else { return walk(false) };
        match all.get_key_value(key.as_str()) {
            Some((known, value)) => {
                effort_spent += effort(catalogue, &key);
                taken.insert(*known, value.clone());
            }
            None => effort_spent += LOOK,
        }
        asked.insert(key);
    }
}
