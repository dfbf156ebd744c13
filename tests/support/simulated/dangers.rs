//! Whether dangerous partners are warned of while nothing has parted the two, and no longer after.

use super::features::{Shows, shown};
use super::instruments::{ABSENT, Instrument, SECOND_STRAYS, SWAPPED, THREADS_APART};
use super::laws::{Reads, answers};
use super::scores::Share;
use super::strangers::spreads;
use super::world::{Part, World};
use hosewright_core::catalogue::Lookalike;
use hosewright_core::find::{EndFound, LookalikeFound};
use serde_json::Value;
use std::collections::BTreeMap;

/// A reading can part two ends when what the tables say of them lies so many standard errors apart: of the
/// caliper, or of the gauge's confusion.
const APART: f64 = 4.0;

/// While all readings together leave a pair this near, nothing parts it: one to eight.
const NEAR: f64 = 2.0;

/// A look can part two where its answer for the one is so much rarer for the other, and readings have parted two
/// where what was read is so much rarer for one of them: a caliper between two threads, or a seal that was taken
/// for a third thing, decides nothing.
const PARTS: f64 = 10.0;

/// Readings that are no rarer than this for either leave the pair as it was.
const TELLS: f64 = 2.0;

/// What holds less is taken for right by nobody: a list of hundreds of ends warns of no pair among them.
const LISTED: f64 = 0.01;

/// Counts over many lists of ends.
#[derive(Debug, Clone, Default)]
pub struct Dangers {
    /// Pairs of which one is in the list with a chance that somebody takes it for right, and that all readings
    /// together leave near: by what the tables say of the two, or by what was read. They are warned of.
    pub warned: Share,
    /// Pairs that the readings which the table of dangers names have parted: by what the tables say of the two,
    /// and by what was read. Still warned of.
    pub left: Share,
    /// The same by the readings taken that part them.
    pub left_by_readings: BTreeMap<String, Share>,
    /// Pairs not warned of, by the families of female and male.
    pub missed: BTreeMap<(String, String), usize>,
    /// Warnings of pairs that the truth is no side of.
    pub false_alarms: usize,
    /// Lists.
    pub lists: usize,
}

impl Dangers {
    /// Counts one list: `taken` are the readings it rests on, by a caliper of that standard error.
    pub fn count(&mut self, world: &World, truth: &Part, taken: &Reads, error: f64, found: &EndFound) {
        self.lists += 1;
        for pair in &world.catalogue.lookalikes {
            let is_said = found.lookalikes.iter().any(|said| is_of(said, pair));
            let Some(partner) = partner(pair, truth) else {
                self.false_alarms += usize::from(is_said);
                continue;
            };
            let is_named = |key: &str| pair.separating_readings.iter().any(|of| of == key);
            let told = told(world, truth, partner, taken, error);
            let is_near = told.iter().map(|told| told.apart * told.apart).sum::<f64>() < NEAR * NEAR;
            let is_even = told.iter().map(|told| told.odds).sum::<f64>().abs() < TELLS.ln();
            let named: Vec<&Told> = told.iter().filter(|told| is_named(told.key)).collect();
            let is_parted = match is_one_row(pair) {
                true => !named.is_empty(),
                false => !is_near && decides(&named),
            };
            let is_listed = share(found, &pair.female_family, &pair.female_size) >= LISTED
                || share(found, &pair.male_family, &pair.male_size) >= LISTED;
            if is_parted {
                self.left = self.left.and(is_said);
                let keys: Vec<&str> =
                    named.iter().filter(|told| told.apart >= APART).map(|told| told.key).collect();
                let by = self.left_by_readings.entry(keys.join(" ")).or_default();
                *by = by.and(is_said);
            } else if is_listed && (is_near || is_even) {
                self.warned = self.warned.and(is_said);
                if !is_said {
                    let sides = (pair.female_family.clone(), pair.male_family.clone());
                    *self.missed.entry(sides).or_default() += 1;
                }
            }
        }
    }

    /// Warnings that were beside the matter, for each list.
    pub fn false_alarms_each(&self) -> f64 {
        self.false_alarms as f64 / self.lists.max(1) as f64
    }
}

/// What an end holds in the list, both halves and all classes.
fn share(found: &EndFound, family: &str, size: &str) -> f64 {
    let is = |of: (&str, &str)| of == (family, size);
    let holds = found.candidates.iter().filter(|class| {
        is((&class.family, &class.size)) || class.also.iter().any(|name| is((&name.family, &name.size)))
    });
    holds.map(|class| class.probability).sum()
}

/// Whether a warning is of that pair.
fn is_of(said: &LookalikeFound, pair: &Lookalike) -> bool {
    said.pair.as_ref().is_some_and(|said| {
        said.mechanism == pair.mechanism
            && (&said.female.family, &said.female.size) == (&pair.female_family, &pair.female_size)
            && (&said.male.family, &said.male.size) == (&pair.male_family, &pair.male_size)
    })
}

/// Whether a pair is of one end with a wrong part of the same name: a ring that is lost, a staple that is too thin.
fn is_one_row(pair: &Lookalike) -> bool {
    (&pair.female_family, &pair.female_size) == (&pair.male_family, &pair.male_size)
}

/// The other side of a pair, where the truth is one.
fn partner<'p>(pair: &'p Lookalike, truth: &Part) -> Option<(&'p str, &'p str)> {
    let is_truth = |family: &str, size: &str| truth.name[0] == family && truth.name[1] == size;
    if is_truth(&pair.female_family, &pair.female_size) {
        Some((&pair.male_family, &pair.male_size))
    } else if is_truth(&pair.male_family, &pair.male_size) {
        Some((&pair.female_family, &pair.female_size))
    } else {
        None
    }
}

/// What one reading tells of a pair.
struct Told {
    key: &'static str,
    /// How many standard errors the two lie apart by the tables.
    apart: f64,
    /// Logarithm of the odds of what was read, truth against partner.
    odds: f64,
}

/// Whether readings part two: one of them can, what was read is much rarer for one of the two, and none says
/// otherwise.
fn decides(named: &[&Told]) -> bool {
    let odds: f64 = named.iter().map(|told| told.odds).sum();
    let is_denied = named.iter().any(|told| told.odds * odds.signum() <= -TELLS.ln());
    named.iter().any(|told| told.apart >= APART) && odds.abs() >= PARTS.ln() && !is_denied
}

/// What each reading taken tells of the truth and its partner in that half, or in either half where the truth has
/// none; of two halves the nearer counts.
fn told(world: &World, truth: &Part, (family, size): (&str, &str), taken: &Reads, error: f64) -> Vec<Told> {
    let is_partner = |part: &&Part| {
        let is_half = truth.gender.is_none() || part.gender.is_none() || part.gender == truth.gender;
        part.name[0] == family && part.name[1] == size && is_half
    };
    let by = |part: &Part| -> Vec<Told> {
        let of = |key: &'static str| {
            let (truth, partner) = (shown(&truth.features, key), shown(&part.features, key));
            Told {
                key,
                apart: errors_apart(world, key, truth, partner, error),
                odds: ln_chance(world, key, truth, taken, error)
                    - ln_chance(world, key, partner, taken, error),
            }
        };
        telling(taken).map(of).collect()
    };
    let square = |told: &Vec<Told>| told.iter().map(|told| told.apart * told.apart).sum::<f64>();
    let halves = world.halves.iter().filter(is_partner).map(by);
    let no_such_half = || vec![Told { key: "no such half", apart: APART, odds: f64::INFINITY }];
    halves.min_by(|a, b| square(a).total_cmp(&square(b))).unwrap_or_else(no_such_half)
}

/// The readings that tell something: a second diameter without a first tells nothing.
fn telling(taken: &Reads) -> impl Iterator<Item = &'static str> {
    let has_first = taken.contains_key("thread_diameter_mm");
    taken.keys().copied().filter(move |key| has_first || *key != "second_thread_diameter_mm")
}

/// Whether nothing that was read can part two: all readings together by less than their own error.
pub fn are_alike(world: &World, one: &Part, other: &Part, taken: &Reads, error: f64) -> bool {
    let apart = |key| errors_apart(world, key, shown(&one.features, key), shown(&other.features, key), error);
    one.gender == other.gender && telling(taken).map(|key| apart(key).powi(2)).sum::<f64>() < 1.0
}

/// Logarithm of the chance of what was read where a part shows that, in proportion to the others of one reading: by
/// the distance from its limits in spreads of use and caliper together, no rarer than a stray.
fn ln_chance(world: &World, key: &str, shows: Shows, taken: &Reads, error: f64) -> f64 {
    let read = &taken[key];
    let within =
        |spreads: f64, strays: f64| ((1.0 - strays) * (-0.5 * spreads * spreads).exp() + strays).ln();
    let number = read.as_f64().unwrap_or_default();
    match (world.instruments.of_key(key), shows) {
        (_, Shows::Absent) => ABSENT.ln(),
        (Instrument::Caliper { strays, .. }, Shows::Band { min, max, use_ }) => {
            let (below, above) = spreads(use_, error);
            within(((min - number) / below).max((number - max) / above).max(0.0), *strays)
        }
        (Instrument::Gauge { width, lapse, .. }, Shows::Leaf(leaf)) => {
            within((number - leaf) / width.at(leaf), *lapse)
        }
        (Instrument::Second, Shows::Slope(slope)) => {
            let first = taken.get("thread_diameter_mm").and_then(Value::as_f64);
            let differ = number - first.unwrap_or(number);
            let by = |slope: f64| (differ - slope * THREADS_APART) / (error * std::f64::consts::SQRT_2);
            let either = [(by(slope), 1.0 - SWAPPED), (by(-slope), SWAPPED)];
            either
                .map(|(spreads, share)| share * within(spreads, SECOND_STRAYS).exp())
                .iter()
                .sum::<f64>()
                .ln()
        }
        (Instrument::Eye(table), Shows::OneOf(mask)) => {
            let said = answers(key).iter().position(|answer| answer == read).expect("an answer of that look");
            by_looks(table, mask, said).ln()
        }
        // Nothing is known of it: neither for nor against.
        _ => 0.0,
    }
}

/// How many standard errors two truths lie apart in one reading.
fn errors_apart(world: &World, key: &str, a: Shows, b: Shows, error: f64) -> f64 {
    match (a, b) {
        (Shows::Unstated, _) | (_, Shows::Unstated) | (Shows::Absent, Shows::Absent) => 0.0,
        (Shows::Absent, _) | (_, Shows::Absent) => APART,
        (Shows::Band { min, max, .. }, Shows::Band { min: least, max: most, .. }) => {
            (least - max).max(min - most).max(0.0) / error
        }
        (Shows::Leaf(a), Shows::Leaf(b)) => match world.instruments.of_key(key) {
            Instrument::Gauge { width, .. } => (a - b).abs() / width.at(a),
            _ => 0.0,
        },
        (Shows::Slope(a), Shows::Slope(b)) => {
            (a - b).abs() * THREADS_APART / (error * std::f64::consts::SQRT_2)
        }
        (Shows::OneOf(a), Shows::OneOf(b)) => match world.instruments.of_key(key) {
            Instrument::Eye(table) => by_look(table, a, b),
            _ => 0.0,
        },
        _ => 0.0,
    }
}

/// The chance of an answer where any of the choices whose bits are set may be the truth.
fn by_looks(table: &[&[f64]], mask: u16, answer: usize) -> f64 {
    let rows: Vec<f64> = table
        .iter()
        .enumerate()
        .filter(|(at, _)| mask & (1 << at) != 0)
        .map(|(_, row)| row[answer])
        .collect();
    rows.iter().sum::<f64>() / rows.len() as f64
}

/// A look parts two or tells nothing certain: standard errors of the odds, and of a parting one enough.
fn by_look(table: &[&[f64]], a: u16, b: u16) -> f64 {
    let odds = |a: u16, b: u16| {
        let likeliest = (0..table[0].len())
            .max_by(|x, y| by_looks(table, a, *x).total_cmp(&by_looks(table, a, *y)))
            .unwrap_or(0);
        by_looks(table, a, likeliest) / by_looks(table, b, likeliest)
    };
    let odds = odds(a, b).min(odds(b, a)).max(1.0);
    if odds >= PARTS { APART } else { (2.0 * odds.ln()).sqrt() }
}
