//! Whether dangerous partners are warned of while nothing has parted the two, and no longer after.

use super::features::{Feature, Shows};
use super::instruments::Instrument;
use super::laws::Reads;
use super::scores::Share;
use super::world::{Part, World};
use hosewright_core::catalogue::Lookalike;
use hosewright_core::find::EndFound;
use std::collections::BTreeMap;

/// A reading parts two ends when what the tables say of them lies so many standard errors apart: of the
/// caliper, or of the gauge's confusion. A look parts them where they have no shape in common.
const APART: f64 = 4.0;

/// Counts over many lists of ends.
#[derive(Debug, Clone, Default)]
pub struct Dangers {
    /// Pairs of which nothing that was read parts the two, by what the tables say of them: warned of.
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
            let is_said = found.lookalikes.iter().any(|said| said.danger.starts_with(&pair.starts));
            let Some((family, size)) = partner(pair, truth) else {
                self.false_alarms += usize::from(is_said);
                continue;
            };
            let parting = parting(world, truth, (family, size), taken, error);
            let named: Vec<&str> = parting
                .iter()
                .copied()
                .filter(|key| pair.separating_readings.iter().any(|named| named == key))
                .collect();
            if parting.is_empty() {
                self.warned = self.warned.and(is_said);
                if !is_said {
                    let sides = (pair.female_family.clone(), pair.male_family.clone());
                    *self.missed.entry(sides).or_default() += 1;
                }
            } else if !named.is_empty() {
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

/// The readings taken that part the truth from its partner in that half, or from either half where the
/// truth has none; of two halves the one that fewer readings part counts.
fn parting<'r>(
    world: &World,
    truth: &Part,
    (family, size): (&str, &str),
    taken: &'r Reads,
    error: f64,
) -> Vec<&'r str> {
    let is_partner = |part: &&Part| {
        let is_half = truth.gender.is_none() || part.gender.is_none() || part.gender == truth.gender;
        part.name[0] == family && part.name[1] == size && is_half
    };
    let by = |part: &Part| -> Vec<&'r str> {
        let parts =
            |key: &&str| do_part(world, key, shown(&truth.features, key), shown(&part.features, key), error);
        taken.keys().copied().filter(parts).collect()
    };
    world
        .halves
        .iter()
        .filter(is_partner)
        .map(by)
        .min_by_key(Vec::len)
        .unwrap_or_else(|| vec!["no such half"])
}

fn shown(features: &[Feature], key: &str) -> Shows {
    features.iter().find(|(known, _)| *known == key).map_or(Shows::Absent, |(_, shows)| *shows)
}

fn do_part(world: &World, key: &str, a: Shows, b: Shows, error: f64) -> bool {
    match (a, b) {
        (Shows::Band { min, max, .. }, Shows::Band { min: least, max: most, .. }) => {
            (least - max).max(min - most) - APART * error > -1e-9
        }
        (Shows::Leaf(a), Shows::Leaf(b)) => match world.instruments.of_key(key) {
            Instrument::Gauge { width, .. } => (a - b).abs() - APART * width.at(a) > -1e-9,
            _ => false,
        },
        (Shows::Slope(a), Shows::Slope(b)) => {
            (a - b).abs() * super::instruments::THREADS_APART - APART * error > -1e-9
        }
        (Shows::OneOf(a), Shows::OneOf(b)) => a & b == 0,
        (Shows::Unstated, _) | (_, Shows::Unstated) => false,
        (a, b) => (a == Shows::Absent) != (b == Shows::Absent),
    }
}
