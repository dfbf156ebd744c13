//! Counts of stock against what other devices had entered before them.

use super::{Body, Entry, EventRef, Hlc};

/// Counts that were made without knowing of something that another device had entered earlier, and that something: nobody
/// knows whether it was counted already. A later count that knows of both settles it. The answer depends on the entries
/// alone, not on their order.
///
/// What is entered later, by the logical clock, is a difference to the count like any other.
pub fn blind_counts(entries: &[Entry]) -> Vec<EventRef> {
    let deeds = deeds(entries);
    let counts: Vec<Count<'_>> = entries.iter().filter_map(Count::of).collect();
    let mut blind = Vec::new();
    for count in &counts {
        let settled = |deed: &Deed<'_>| {
            counts.iter().any(|later| later.lot == count.lot && later.knows(count.at) && later.knows(deed.at))
        };
        for deed in deeds.iter().filter(|deed| count.missed(deed) && !settled(deed)) {
            blind.extend([count.at, deed.at]);
        }
    }
    blind.sort_unstable();
    blind.dedup();
    blind
}

/// A store and a bin; of a piece of hose there is but one.
type Lot<'a> = (&'a str, &'a str);

/// A count that stands.
struct Count<'a> {
    at: EventRef,
    time: Hlc,
    lot: Lot<'a>,
    seen: &'a [EventRef],
}

/// What makes more or less of a lot: an event, or that one was struck out.
struct Deed<'a> {
    at: EventRef,
    time: Hlc,
    lot: Lot<'a>,
    /// The event that was struck out.
    strikes: Option<EventRef>,
    /// When it was struck out first.
    until: Option<Hlc>,
}

impl<'a> Count<'a> {
    fn of(entry: &'a Entry) -> Option<Self> {
        let (lot, seen) = match &entry.body {
            Body::StockChanged(change) => ((change.store.as_str(), change.bin.as_str()), &change.seen),
            Body::PieceChanged(change) => (("", ""), &change.seen),
            _ => return None,
        };
        let seen = seen.as_deref().filter(|_| entry.struck_out.is_empty())?;
        Some(Self { at: entry.at, time: entry.time, lot, seen })
    }

    fn knows(&self, other: EventRef) -> bool {
        let own = self.at.device == other.device && other.number < self.at.number;
        own || self.seen.iter().any(|seen| seen.device == other.device && seen.number >= other.number)
    }

    /// Whether it was made later than the deed and while it stood, without knowing of it. What was struck out counts
    /// where it was known before.
    fn missed(&self, deed: &Deed<'_>) -> bool {
        deed.lot == self.lot
            && deed.time < self.time
            && deed.until.is_none_or(|until| self.time < until)
            && !self.knows(deed.at)
            && deed.strikes.is_none_or(|struck| self.knows(struck))
    }
}

fn deeds(entries: &[Entry]) -> Vec<Deed<'_>> {
    let mut deeds = Vec::new();
    for entry in entries {
        let until = entry.struck_out.iter().map(|(_, time)| *time).min();
        for lot in lots(&entry.body) {
            deeds.push(Deed { at: entry.at, time: entry.time, lot, strikes: None, until });
            deeds.extend(entry.struck_out.iter().map(|(at, time)| Deed {
                at: *at,
                time: *time,
                lot,
                strikes: Some(entry.at),
                until: None,
            }));
        }
    }
    deeds
}

/// The lots that a body makes more or less of. A count that found what was known is none.
fn lots(body: &Body) -> Vec<Lot<'_>> {
    match body {
        Body::StockChanged(change) if change.difference != 0 => vec![(&change.store, &change.bin)],
        Body::StockMoved(moved) => vec![(&moved.from, &moved.from_bin), (&moved.to, &moved.to_bin)],
        Body::PieceChanged(change) if change.tenths_mm != 0 => vec![("", "")],
        _ => Vec::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::super::{DeviceId, StockChanged, StockUnit, StockWhy};
    use super::*;
    use crate::stock::Item;

    fn at(device: u8, number: u64) -> EventRef {
        EventRef { device: DeviceId::from_bytes([device; 16]), number }
    }

    fn entry(event: EventRef, ms: i64, difference: i64, seen: Option<&[EventRef]>) -> Entry {
        let change = StockChanged {
            store: "Van 2".into(),
            item: Item::Named("oil".into()),
            unit: StockUnit::Pieces,
            difference,
            why: Some(if seen.is_some() { StockWhy::Counted } else { StockWhy::Used }),
            hose: None,
            bin: String::new(),
            seen: seen.map(<[EventRef]>::to_vec),
        };
        let time = Hlc { ms, count: 0 };
        Entry {
            at: event,
            time,
            builds_on: Vec::new(),
            body: Body::StockChanged(change),
            struck_out: Vec::new(),
        }
    }

    #[test]
    fn a_count_that_did_not_know_of_an_earlier_change_is_named_with_it_until_it_is_counted_again() {
        let mut entries = vec![entry(at(1, 1), 1, -2, None), entry(at(2, 1), 2, -2, Some(&[]))];
        assert_eq!(blind_counts(&entries), [at(1, 1), at(2, 1)]);
        entries.push(entry(at(2, 2), 3, 0, Some(&[])));
        assert_eq!(blind_counts(&entries).len(), 3, "counted again without having heard of it");
        entries.push(entry(at(2, 3), 4, 2, Some(&[at(1, 1)])));
        assert_eq!(blind_counts(&entries), []);
    }

    #[test]
    fn what_was_known_came_later_or_changed_nothing_is_no_doubt() {
        for (other, seen) in [
            (entry(at(1, 1), 1, -2, None), vec![at(1, 1)]),
            (entry(at(1, 1), 9, -2, None), vec![]),
            (entry(at(1, 1), 1, 0, Some(&[])), vec![]),
            (entry(at(2, 1), 1, -2, None), vec![]),
        ] {
            assert_eq!(blind_counts(&[other, entry(at(2, 2), 2, 3, Some(&seen))]), []);
        }
        let elsewhere = match entry(at(1, 1), 1, -2, None) {
            Entry { body: Body::StockChanged(change), at, time, .. } => {
                let body = Body::StockChanged(StockChanged { bin: "A1".into(), ..change });
                Entry { at, time, body, builds_on: Vec::new(), struck_out: Vec::new() }
            }
            other => other,
        };
        assert_eq!(blind_counts(&[elsewhere, entry(at(2, 2), 2, 3, Some(&[]))]), [], "another bin");
    }

    #[test]
    fn what_was_struck_out_unheard_counts_where_it_was_known() {
        let mut used = entry(at(1, 1), 1, -2, None);
        used.struck_out.push((at(1, 2), Hlc { ms: 2, count: 0 }));
        let known = entry(at(2, 1), 3, 2, Some(&[at(1, 1)]));
        assert_eq!(blind_counts(&[used.clone(), known]), [at(1, 2), at(2, 1)]);
        let unheard = entry(at(2, 1), 3, 2, Some(&[]));
        assert_eq!(blind_counts(&[used, unheard]), [], "to the count it never was");
    }

    #[test]
    fn a_count_between_a_deed_and_its_striking_out_missed_the_deed() {
        let mut used = entry(at(1, 1), 1, -2, None);
        used.struck_out.push((at(1, 2), Hlc { ms: 3, count: 0 }));
        for (seen, blind) in [(vec![], vec![at(1, 1), at(2, 1)]), (vec![at(1, 1)], vec![])] {
            let counted = entry(at(2, 1), 2, 2, Some(&seen));
            assert_eq!(blind_counts(&[used.clone(), counted]), blind);
        }
    }
}
