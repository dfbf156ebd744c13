//! Whether dangerous partners are warned of while nothing has parted the two, and no longer after.

use super::laws::Reads;
use super::scores::Share;
use super::world::{Part, World};
use hosewright_core::catalogue::Lookalike;
use hosewright_core::find::EndFound;
use std::collections::BTreeMap;

/// Counts over many lists of ends.
#[derive(Debug, Clone, Default)]
pub struct Dangers {
    /// Pairs of which no reading that parts them was taken: warned of.
    pub warned: Share,
    /// Pairs of which every such reading was taken: still warned of.
    pub left: Share,
    /// The same by the readings that part them.
    pub left_by_readings: BTreeMap<String, Share>,
    /// Pairs not warned of, by family and partner.
    pub missed: BTreeMap<(String, String), usize>,
    /// Warnings of pairs that the truth is no side of.
    pub false_alarms: usize,
    /// Lists.
    pub lists: usize,
}

impl Dangers {
    /// Counts one list: `taken` are the readings it rests on, `all` those that could be taken.
    pub fn count(&mut self, world: &World, truth: &Part, taken: &Reads, all: &Reads, found: &EndFound) {
        self.lists += 1;
        let is_truth = |family: &str, size: &str| truth.name[0] == family && truth.name[1] == size;
        let is_side = |pair: &Lookalike| {
            is_truth(&pair.female_family, &pair.female_size) || is_truth(&pair.male_family, &pair.male_size)
        };
        let is_said =
            |pair: &Lookalike| found.lookalikes.iter().any(|said| said.danger.starts_with(&pair.starts));
        for pair in &world.catalogue.lookalikes {
            if !is_side(pair) {
                self.false_alarms += usize::from(is_said(pair));
                continue;
            }
            let parts = |reads: &Reads| {
                pair.separating_readings.iter().filter(|key| reads.contains_key(key.as_str())).count()
            };
            if parts(taken) == 0 {
                self.warned = self.warned.and(is_said(pair));
                if !is_said(pair) {
                    let sides = (pair.female_family.clone(), pair.male_family.clone());
                    *self.missed.entry(sides).or_default() += 1;
                }
            } else if parts(taken) == parts(all) {
                self.left = self.left.and(is_said(pair));
                let by = self.left_by_readings.entry(pair.separating_readings.join(" ")).or_default();
                *by = by.and(is_said(pair));
            }
        }
    }

    /// Warnings that were beside the matter, for each list.
    pub fn false_alarms_each(&self) -> f64 {
        self.false_alarms as f64 / self.lists.max(1) as f64
    }
}
