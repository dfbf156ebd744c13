//! What is to be fetched from a storage and what published to it.

use crate::SegmentName;
use hosewright_core::record::DeviceId;
use std::collections::{BTreeMap, BTreeSet};
use std::ops::RangeInclusive;

/// What an exchange is to do.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Plan {
    /// Segments of others that hold events the register lacks, each series in its order.
    pub fetch: Vec<SegmentName>,
    /// Runs of events that the register has and the storage lacks, its own series first and each in its order.
    pub publish: Vec<Run>,
    /// Where a series goes on behind events that nobody has published yet.
    pub gaps: Vec<Gap>,
}

/// Events of one series that follow each other.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Run {
    /// Whose.
    pub device: DeviceId,
    /// Which.
    pub numbers: RangeInclusive<u64>,
}

/// Events that the storage lacks, though it has later ones of the same series.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Gap {
    /// Whose.
    pub device: DeviceId,
    /// The first that is missing.
    pub from: u64,
    /// The last that is missing.
    pub to: u64,
}

/// Decides what an exchange does. `has` is the last number of each series in the register, `listed` what the storage
/// holds whole, `most` how many events go into one segment.
///
/// A segment that the register has already is never fetched, and one that the storage has is never published again; what
/// a storage has lost is published anew. What a register has of others is published too where the storage lacks it: a
/// device that was lost, or restored as a new one, can not do it any more. Two different segments of one stretch are both fetched: one of them tells of a
/// series that was written twice.
pub fn plan(own: DeviceId, has: &BTreeMap<DeviceId, u64>, listed: &BTreeSet<SegmentName>, most: u64) -> Plan {
    let mut plan = Plan::default();
    let mut series: BTreeMap<DeviceId, Vec<SegmentName>> = BTreeMap::new();
    for name in listed {
        series.entry(name.device).or_default().push(*name);
    }
    for (device, segments) in &series {
        if *device != own {
            let end = has.get(device).copied().unwrap_or(0);
            plan.fetch_series(*device, end, segments);
        }
    }
    let others = has.iter().filter(|(device, _)| **device != own);
    for (device, end) in has.get_key_value(&own).into_iter().chain(others) {
        plan.publish_series(*device, *end, series.get(device).map_or(&[], Vec::as_slice), most.max(1));
    }
    plan
}

impl Plan {
    /// The segments that lead furthest on from the end of the series, one after the other.
    fn fetch_series(&mut self, device: DeviceId, mut end: u64, segments: &[SegmentName]) {
        loop {
            let reach = segments.iter().filter(|name| name.from <= end + 1).map(|name| name.to).max();
            let Some(to) = reach.filter(|to| *to > end) else { break };
            // Of those that end in the same event the shortest does; of those that end in another each is wanted.
            let mut ends = BTreeSet::new();
            let fitting = segments.iter().rev().filter(|name| name.from <= end + 1 && name.to == to);
            self.fetch.extend(fitting.filter(|name| ends.insert(name.last)));
            end = to;
        }
        if let Some(next) = segments.iter().map(|name| name.from).filter(|from| *from > end + 1).min() {
            self.gaps.push(Gap { device, from: end + 1, to: next - 1 });
        }
    }

    /// The stretches up to the register's end that no published segment covers.
    fn publish_series(&mut self, device: DeviceId, end: u64, segments: &[SegmentName], most: u64) {
        let mut from = 1;
        while from <= end {
            if let Some(to) = segments.iter().filter(|s| s.from <= from && s.to >= from).map(|s| s.to).max() {
                from = to + 1;
                continue;
            }
            let next = segments.iter().map(|s| s.from).filter(|next| *next > from).min();
            let to = end.min(from + most - 1).min(next.map_or(u64::MAX, |next| next - 1));
            self.publish.push(Run { device, numbers: from..=to });
            from = to + 1;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use hosewright_core::record::Hash;
    use proptest::prelude::*;

    const OWN: DeviceId = DeviceId::from_bytes([1; 16]);
    const OTHER: DeviceId = DeviceId::from_bytes([2; 16]);

    fn name(device: DeviceId, from: u64, to: u64, last: u8) -> SegmentName {
        SegmentName { device, from, to, last: Hash::from_bytes([last; 32]), bytes: 9 }
    }

    fn run(device: DeviceId, numbers: RangeInclusive<u64>) -> Run {
        Run { device, numbers }
    }

    #[test]
    fn what_is_lacking_is_fetched_and_published_and_nothing_else() {
        let has = BTreeMap::from([(OWN, 10), (OTHER, 5)]);
        let listed = BTreeSet::from([
            name(OWN, 1, 4, 1),
            name(OTHER, 1, 5, 1),
            name(OTHER, 4, 7, 1),
            name(OTHER, 6, 9, 1),
            name(OTHER, 12, 13, 1),
        ]);
        let plan = plan(OWN, &has, &listed, 4);
        assert_eq!(plan.publish, [run(OWN, 5..=8), run(OWN, 9..=10)]);
        assert_eq!(plan.fetch, [name(OTHER, 6, 9, 1)]);
        assert_eq!(plan.gaps, [Gap { device: OTHER, from: 10, to: 11 }]);
    }

    #[test]
    fn a_series_that_was_written_twice_is_fetched_twice_and_a_lost_segment_is_published_again() {
        let listed = BTreeSet::from([name(OTHER, 1, 3, 1), name(OTHER, 1, 3, 2), name(OWN, 4, 6, 1)]);
        let plan = plan(OWN, &BTreeMap::from([(OWN, 6)]), &listed, 100);
        assert_eq!(plan.fetch, [name(OTHER, 1, 3, 2), name(OTHER, 1, 3, 1)]);
        assert_eq!(plan.publish, [run(OWN, 1..=3)]);
    }

    #[test]
    fn what_a_lost_device_left_here_is_published_for_it() {
        let has = BTreeMap::from([(OWN, 2), (OTHER, 5)]);
        let listed = BTreeSet::from([name(OTHER, 1, 3, 1)]);
        assert_eq!(plan(OWN, &has, &listed, 100).publish, [run(OWN, 1..=2), run(OTHER, 4..=5)]);
    }

    proptest! {
        /// Whatever is listed: after doing what the plan says, the next plan has nothing to do.
        #[test]
        fn an_exchange_leaves_nothing_to_do(
            own_end in 0_u64..40,
            end in 0_u64..40,
            runs in proptest::collection::btree_set((any::<bool>(), 1_u64..40, 0_u64..20), 0..12),
            most in 1_u64..9,
        ) {
            let mut listed: BTreeSet<SegmentName> = runs
                .iter()
                .map(|(own, from, more)| name(if *own { OWN } else { OTHER }, *from, from + more, 1))
                // Nobody publishes for a device what it never wrote.
                .filter(|name| name.device != OWN || name.to <= own_end)
                .collect();
            let mut has = BTreeMap::from([(OWN, own_end), (OTHER, end)]);
            let first = plan(OWN, &has, &listed, most);
            for segment in &first.fetch {
                prop_assert!(segment.from <= has[&OTHER] + 1, "{segment} does not continue the series");
                prop_assert!(segment.to > has[&OTHER], "{segment} tells nothing new");
                has.insert(OTHER, segment.to);
            }
            for Run { device, numbers } in &first.publish {
                prop_assert!(numbers.end() - numbers.start() < most);
                listed.insert(name(*device, *numbers.start(), *numbers.end(), 1));
            }
            for (device, end) in [(OWN, own_end), (OTHER, end)] {
                let covered =
                    |number: u64| listed.iter().any(|s| s.device == device && s.from <= number && number <= s.to);
                prop_assert!((1..=end).all(covered), "the storage lacks some of {}", device);
            }
            let next = plan(OWN, &has, &listed, most);
            prop_assert_eq!((next.fetch, next.publish), (vec![], vec![]));
        }
    }
}
