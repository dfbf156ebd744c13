//! A track's events in order: what corrects what, what follows what, and where two contradict.

use super::{Body, EventRef, Hlc};
use std::collections::BTreeMap;
use std::mem::discriminant;

/// How the events of a track hang together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shape {
    /// One record with versions: all events are versions of it.
    Record,
    /// States that follow each other, each of which may be corrected.
    Line,
    /// Facts that stand beside each other, each of which may be corrected.
    Facts,
}

/// An event of a track, as far as order goes.
#[derive(Debug, Clone, PartialEq)]
pub struct Entry {
    /// Which event.
    pub at: EventRef,
    /// Its time.
    pub time: Hlc,
    /// What it builds on.
    pub builds_on: Vec<EventRef>,
    /// What it says.
    pub body: Body,
    /// The events that strike it out, with their times; none while it stands.
    pub struck_out: Vec<(EventRef, Hlc)>,
}

/// A record, state or fact with all its corrections.
#[derive(Debug, Clone, PartialEq)]
pub struct Node {
    /// The version that stands.
    pub current: Entry,
    /// In a line: which node it follows.
    pub follows: Option<usize>,
}

/// A track in order.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Arranged {
    /// By the time of each one's first version.
    pub nodes: Vec<Node>,
    /// Events that contradict each other, in order; a person settles it by an event that builds on
    /// all of them, or by voiding some.
    pub conflicts: Vec<EventRef>,
}

/// Arranges the events of one track. The answer depends on the events alone, not on their order.
///
/// An event that builds on one of its own kind corrects it. Two corrections of the same version, two
/// followers of the same state, and two beginnings of one record or line are a conflict: the later by
/// time stands until a person settles it, and both are named.
pub fn arrange(entries: impl IntoIterator<Item = Entry>, shape: Shape) -> Arranged {
    let mut live: Vec<Entry> = entries.into_iter().filter(|entry| entry.struck_out.is_empty()).collect();
    if live.len() < 2 {
        // Most tracks have one event, which contradicts nothing.
        let nodes = live.into_iter().map(|current| Node { current, follows: None }).collect();
        return Arranged { nodes, conflicts: Vec::new() };
    }
    live.sort_by_key(|entry| (entry.time, entry.at));
    let place: BTreeMap<EventRef, usize> =
        live.iter().enumerate().map(|(index, entry)| (entry.at, index)).collect();
    let parents = |index: usize| live[index].builds_on.iter().filter_map(|at| place.get(at).copied());
    let corrects = |index: usize, parent: usize| {
        index != parent && discriminant(&live[index].body) == discriminant(&live[parent].body)
    };

    let mut groups = Groups::of(live.len());
    let mut superseded = vec![false; live.len()];
    for index in 0..live.len() {
        if shape == Shape::Record {
            groups.join(0, index);
        }
        for parent in parents(index).filter(|parent| corrects(index, *parent)) {
            groups.join(parent, index);
            superseded[parent] = true;
        }
    }

    let mut members: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
    for index in 0..live.len() {
        members.entry(groups.first(index)).or_default().push(index);
    }
    let number: BTreeMap<usize, usize> = members.keys().enumerate().map(|(n, first)| (*first, n)).collect();

    let mut arranged = Arranged::default();
    for versions in members.values() {
        let mut heads: Vec<usize> = versions.iter().copied().filter(|index| !superseded[*index]).collect();
        if heads.is_empty() {
            // Events that claim to build on each other in a ring: all of them contradict.
            heads.clone_from(versions);
        }
        if heads.len() > 1 {
            arranged.conflicts.extend(heads.iter().map(|index| live[*index].at));
        }
        let Some(current) = heads.last() else { continue };
        let follows = versions
            .iter()
            .flat_map(|index| parents(*index))
            .map(|parent| groups.first(parent))
            .filter(|parent| Some(parent) != versions.first())
            .max()
            .and_then(|first| number.get(&first).copied());
        arranged.nodes.push(Node { current: live[*current].clone(), follows });
    }
    if shape == Shape::Line {
        arranged.conflicts.extend(contradicting_followers(&arranged.nodes));
    }
    arranged.conflicts.sort_unstable();
    arranged.conflicts.dedup();
    arranged
}

/// Followers of the same state, where there is more than one; beginnings count as one state's.
fn contradicting_followers(nodes: &[Node]) -> Vec<EventRef> {
    let mut followers: BTreeMap<Option<usize>, Vec<EventRef>> = BTreeMap::new();
    for node in nodes {
        followers.entry(node.follows).or_default().push(node.current.at);
    }
    followers.into_values().filter(|events| events.len() > 1).flatten().collect()
}

/// Disjoint sets of indices, each known by its smallest.
struct Groups(Vec<usize>);

impl Groups {
    fn of(length: usize) -> Self {
        Self((0..length).collect())
    }

    fn first(&self, mut index: usize) -> usize {
        while self.0[index] != index {
            index = self.0[index];
        }
        index
    }

    fn join(&mut self, one: usize, other: usize) {
        let (one, other) = (self.first(one), self.first(other));
        self.0[one.max(other)] = one.min(other);
    }
}

#[cfg(test)]
mod tests {
    use super::super::{DeviceId, Fitted, PlaceId, Site, SiteId, TakenOff};
    use super::*;
    use crate::tag::TagCode;
    use chrono::NaiveDate;
    use proptest::prelude::*;

    fn at(device: u8, number: u64) -> EventRef {
        EventRef { device: DeviceId::from_bytes([device; 16]), number }
    }

    fn entry(event: EventRef, ms: i64, builds_on: &[EventRef], body: Body) -> Entry {
        Entry {
            at: event,
            time: Hlc { ms, count: 0 },
            builds_on: builds_on.to_vec(),
            body,
            struck_out: Vec::new(),
        }
    }

    fn site(name: &str) -> Body {
        Body::SiteNamed(Site { site: SiteId::from_bytes([1; 16]), name: name.into() })
    }

    fn fitted(place: u8) -> Body {
        Body::Fitted(Fitted {
            code: TagCode::from_random([1; 7]),
            place: PlaceId::from_bytes([place; 16]),
            date: NaiveDate::MIN,
            already_there: false,
            hours: None,
        })
    }

    fn taken_off(place: u8) -> Body {
        Body::TakenOff(TakenOff {
            code: TagCode::from_random([1; 7]),
            place: PlaceId::from_bytes([place; 16]),
            date: NaiveDate::MIN,
            hours: None,
            cause: None,
            note: None,
        })
    }

    #[test]
    fn a_change_that_builds_on_the_last_stands_without_conflict() {
        let entries = [entry(at(1, 1), 5, &[], site("Pit")), entry(at(2, 1), 3, &[at(1, 1)], site("Quarry"))];
        let arranged = arrange(entries, Shape::Record);
        assert_eq!(arranged.nodes.len(), 1);
        assert_eq!(
            arranged.nodes[0].current.body,
            site("Quarry"),
            "the clock overruled the order of changes"
        );
        assert_eq!(arranged.conflicts, []);
    }

    #[test]
    fn two_changes_of_the_same_version_are_a_conflict_until_one_builds_on_both() {
        let mut entries = vec![
            entry(at(1, 1), 1, &[], site("Pit")),
            entry(at(1, 2), 2, &[at(1, 1)], site("North pit")),
            entry(at(2, 1), 3, &[at(1, 1)], site("South pit")),
        ];
        let arranged = arrange(entries.clone(), Shape::Record);
        assert_eq!(arranged.conflicts, [at(1, 2), at(2, 1)]);
        assert_eq!(arranged.nodes[0].current.body, site("South pit"));

        entries.push(entry(at(1, 3), 4, &[at(1, 2), at(2, 1)], site("East pit")));
        let settled = arrange(entries.clone(), Shape::Record);
        assert_eq!((settled.conflicts, settled.nodes.len()), (vec![], 1));

        entries.push(entry(at(3, 1), 2, &[at(1, 1)], site("West pit")));
        let reopened = arrange(entries, Shape::Record);
        assert_eq!(reopened.conflicts, [at(1, 3), at(3, 1)], "a third change that comes later was not seen");
    }

    #[test]
    fn a_hose_fitted_twice_without_being_taken_off_is_a_conflict() {
        let entries = [entry(at(1, 1), 1, &[], fitted(1)), entry(at(2, 1), 2, &[], fitted(2))];
        let arranged = arrange(entries, Shape::Line);
        assert_eq!(arranged.nodes.len(), 2);
        assert_eq!(arranged.conflicts, [at(1, 1), at(2, 1)]);
    }

    #[test]
    fn a_correction_replaces_a_state_in_its_place_in_the_line() {
        let entries = [
            entry(at(1, 1), 1, &[], fitted(1)),
            entry(at(1, 2), 2, &[at(1, 1)], taken_off(1)),
            entry(at(1, 3), 3, &[at(1, 2)], fitted(3)),
            entry(at(1, 4), 4, &[at(1, 1)], fitted(2)),
        ];
        let arranged = arrange(entries, Shape::Line);
        let bodies: Vec<_> = arranged.nodes.iter().map(|node| node.current.body.clone()).collect();
        assert_eq!(bodies, [fitted(2), taken_off(1), fitted(3)]);
        assert_eq!(arranged.nodes.iter().map(|n| n.follows).collect::<Vec<_>>(), [None, Some(0), Some(1)]);
        assert_eq!(arranged.conflicts, []);
    }

    #[test]
    fn a_voided_correction_gives_the_old_version_back() {
        let mut correction = entry(at(1, 2), 2, &[at(1, 1)], site("Quarry"));
        correction.struck_out.push((at(2, 1), Hlc::default()));
        let arranged = arrange([entry(at(1, 1), 1, &[], site("Pit")), correction], Shape::Record);
        assert_eq!(arranged.nodes[0].current.body, site("Pit"));
    }

    #[test]
    fn events_that_build_on_each_other_in_a_ring_do_not_hang_it() {
        let entries =
            [entry(at(1, 1), 1, &[at(2, 1)], site("Pit")), entry(at(2, 1), 2, &[at(1, 1)], site("Quarry"))];
        assert_eq!(arrange(entries, Shape::Record).conflicts.len(), 2);
    }

    #[test]
    fn of_two_versions_the_later_by_time_stands_whatever_arrived_first() {
        let (early, late) = (entry(at(2, 1), 1, &[], site("Pit")), entry(at(1, 1), 2, &[], site("Quarry")));
        for entries in [[early.clone(), late.clone()], [late, early]] {
            assert_eq!(arrange(entries, Shape::Record).nodes[0].current.body, site("Quarry"));
        }
    }

    /// Up to eight events of two devices that build on any of each other, some of them struck out.
    fn entries() -> impl Strategy<Value = Vec<Entry>> {
        let event = (0..3_i64, any::<bool>(), 0..3_u8, prop::collection::vec(0..8_u64, 0..3), 0..8_u8);
        prop::collection::vec(event, 1..8).prop_map(|events| {
            let named = |n: u64| at((n % 2) as u8, n / 2 + 1);
            let entry_of = |(n, (ms, on, place, builds_on, void)): (u64, (i64, bool, u8, Vec<u64>, u8))| {
                let builds_on: Vec<_> = builds_on.into_iter().map(named).collect();
                let body = if on { fitted(place) } else { taken_off(place) };
                let struck_out = if void == 0 { vec![(at(9, 1), Hlc::default())] } else { Vec::new() };
                Entry { struck_out, ..entry(named(n), ms, &builds_on, body) }
            };
            (0..).zip(events).map(entry_of).collect()
        })
    }

    proptest! {
        #[test]
        fn the_order_of_arrival_makes_no_difference(
            (entries, shuffled) in entries().prop_flat_map(|e| (Just(e.clone()), Just(e).prop_shuffle())),
        ) {
            for shape in [Shape::Record, Shape::Line, Shape::Facts] {
                let live = entries.iter().filter(|entry| entry.struck_out.is_empty()).count();
                let arranged = arrange(entries.clone(), shape);
                prop_assert_eq!(&arranged, &arrange(shuffled.clone(), shape));
                prop_assert!(arranged.nodes.len() <= live);
                prop_assert_eq!(arranged.nodes.is_empty(), live == 0, "an event was lost");
            }
        }
    }
}
