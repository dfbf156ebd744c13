//! Whether dangerous partners are warned of while nothing has parted the two, and no longer after.

use super::features::{Feature, Shows};
use super::instruments::Instrument;
use super::laws::Reads;
use super::scores::Share;
use super::world::{Part, World};
use hosewright_core::catalogue::Lookalike;
use hosewright_core::find::{EndFound, LookalikeFound};
use std::collections::BTreeMap;

/// A reading parts two ends when what the tables say of them lies so many standard errors apart: of the
/// caliper, or of the gauge's confusion.
const APART: f64 = 4.0;

/// While all readings together leave a pair this near, nothing parts it: one to eight.
const NEAR: f64 = 2.0;

/// A look parts two where its answer for the one is so much rarer for the other.
const LOOK_PARTS: f64 = 10.0;

/// What holds less is taken for right by nobody: a list of hundreds of ends warns of no pair among them.
const LISTED: f64 = 0.01;

/// Counts over many lists of ends.
#[derive(Debug, Clone, Default)]
pub struct Dangers {
    /// Pairs that all readings together leave near, by what the tables say of them, and of which one is in the
    /// list with a chance that somebody takes it for right: warned of.
    pub warned: Share,
    /// Pairs of which a reading that the table of dangers names was taken and parts the two: still
    /// warned of.
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
            let Some((family, size)) = partner(pair, truth) else {
                self.false_alarms += usize::from(is_said);
                continue;
            };
            let apart = apart(world, truth, (family, size), taken, error);
            let named: Vec<&str> = apart
                .iter()
                .filter(|(key, apart)| *apart >= APART && pair.separating_readings.iter().any(|of| of == key))
                .map(|(key, _)| *key)
                .collect();
            let is_near = apart.iter().map(|(_, apart)| apart * apart).sum::<f64>() < NEAR * NEAR;
            let is_listed = share(found, &pair.female_family, &pair.female_size) >= LISTED
                || share(found, &pair.male_family, &pair.male_size) >= LISTED;
            if is_near && is_listed {
                self.warned = self.warned.and(is_said);
                if !is_said {
                    let sides = (pair.female_family.clone(), pair.male_family.clone());
                    *self.missed.entry(sides).or_default() += 1;
                }
            } else if !is_near && !named.is_empty() {
                self.left = self.left.and(is_said);
                let by = self.left_by_readings.entry(named.join(" ")).or_default();
                *by = by.and(is_said);
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

/// How far each reading taken parts the truth from its partner in that half, or from either half where
/// the truth has none; of two halves the nearer counts.
fn apart<'r>(
    world: &World,
    truth: &Part,
    (family, size): (&str, &str),
    taken: &'r Reads,
    error: f64,
) -> Vec<(&'r str, f64)> {
    let is_partner = |part: &&Part| {
        let is_half = truth.gender.is_none() || part.gender.is_none() || part.gender == truth.gender;
        part.name[0] == family && part.name[1] == size && is_half
    };
    let by = |part: &Part| -> Vec<(&'r str, f64)> {
        let of = |key: &'r str| {
            (key, errors_apart(world, key, shown(&truth.features, key), shown(&part.features, key), error))
        };
        taken.keys().map(|key| of(key)).collect()
    };
    let square = |apart: &Vec<(&str, f64)>| apart.iter().map(|(_, apart)| apart * apart).sum::<f64>();
    let halves = world.halves.iter().filter(is_partner).map(by);
    halves.min_by(|a, b| square(a).total_cmp(&square(b))).unwrap_or_else(|| vec![("no such half", APART)])
}

fn shown(features: &[Feature], key: &str) -> Shows {
    features.iter().find(|(known, _)| *known == key).map_or(Shows::Absent, |(_, shows)| *shows)
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
            (a - b).abs() * super::instruments::THREADS_APART / (error * std::f64::consts::SQRT_2)
        }
        (Shows::OneOf(a), Shows::OneOf(b)) => match world.instruments.of_key(key) {
            Instrument::Eye(table) => by_look(table, a, b),
            _ => 0.0,
        },
        _ => 0.0,
    }
}

/// A look parts two or tells nothing certain: standard errors of the odds, and of a parting one enough.
fn by_look(table: &[&[f64]], a: u16, b: u16) -> f64 {
    let chance = |mask: u16, answer: usize| {
        let rows: Vec<f64> = table
            .iter()
            .enumerate()
            .filter(|(at, _)| mask & (1 << at) != 0)
            .map(|(_, row)| row[answer])
            .collect();
        rows.iter().sum::<f64>() / rows.len() as f64
    };
    let odds = |a: u16, b: u16| {
        let likeliest =
            (0..table[0].len()).max_by(|x, y| chance(a, *x).total_cmp(&chance(a, *y))).unwrap_or(0);
        chance(a, likeliest) / chance(b, likeliest)
    };
    let odds = odds(a, b).min(odds(b, a)).max(1.0);
    if odds >= LOOK_PARTS { APART } else { (2.0 * odds.ln()).sqrt() }
}
