//! What is wanted against what is there.

use super::Item;
use super::fit::{Fit, fits};
use crate::catalogue::Catalogue;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// A counted item of a van or shelf.
#[derive(Debug, Clone, PartialEq)]
pub struct Shelved {
    /// What.
    pub item: Item,
    /// How many; what is below zero is nothing.
    pub quantity: i64,
    /// Its bin; blank is not said.
    pub bin: String,
}

/// Something that is wanted.
#[derive(Debug, Clone, PartialEq)]
pub struct Wanted {
    /// What, as far as it is known.
    pub item: Item,
    /// How many.
    pub count: i64,
}

/// Whether what is wanted is there.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Stands {
    /// Enough is there.
    There,
    /// Some is missing.
    Short,
    /// Nothing like it was ever kept here: nobody knows.
    NotKept,
    /// What is wanted is not known well enough to be looked for.
    NotKnown,
}

/// What is wanted, and what is there of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Found {
    /// What is wanted.
    pub wanted: Wanted,
    /// Whether it is there.
    pub stands: Stands,
    /// The items it is taken from, each with how many.
    pub from: Vec<(Shelved, i64)>,
    /// How many are there that nothing else of what is wanted takes.
    pub there: i64,
    /// Items that may be it: half, form, series, size, side or rating is not written down.
    pub doubtful: Vec<Shelved>,
}

/// Holds what is wanted against what is there. No item is given twice: what is described most narrowly is served first.
pub fn needs(catalogue: &Catalogue, wanted: &[Wanted], shelf: &[Shelved]) -> Vec<Found> {
    let wanted = summed(wanted);
    let mut order: Vec<usize> = (0..wanted.len()).collect();
    order.sort_by_key(|at| std::cmp::Reverse(wanted[*at].item.key().len()));
    let mut left: Vec<i64> = shelf.iter().map(|kept| kept.quantity.max(0)).collect();
    let mut found: Vec<Option<Found>> = vec![None; wanted.len()];
    for at in order {
        found[at] = Some(served(catalogue, &wanted[at], shelf, &mut left));
    }
    let mut found: Vec<Found> = found.into_iter().flatten().collect();
    for one in &mut found {
        let taken: i64 = one.from.iter().map(|(_, taken)| taken).sum();
        let fitting = shelf
            .iter()
            .zip(&left)
            .filter(|(kept, _)| fits(catalogue, &one.wanted.item, &kept.item) == Fit::Yes);
        one.there = taken + fitting.map(|(_, left)| left).sum::<i64>();
    }
    found
}

/// The same thing once, with its counts together, in the order it was first asked for.
fn summed(wanted: &[Wanted]) -> Vec<Wanted> {
    let mut sums: Vec<Wanted> = Vec::new();
    for each in wanted {
        match sums.iter_mut().find(|sum| sum.item == each.item) {
            Some(sum) => sum.count += each.count,
            None => sums.push(each.clone()),
        }
    }
    sums
}

fn served(catalogue: &Catalogue, wanted: &Wanted, shelf: &[Shelved], left: &mut [i64]) -> Found {
    let mut found = Found {
        wanted: wanted.clone(),
        stands: Stands::NotKept,
        from: Vec::new(),
        there: 0,
        doubtful: Vec::new(),
    };
    let mut open = wanted.count;
    for (kept, left) in shelf.iter().zip(left) {
        match fits(catalogue, &wanted.item, &kept.item) {
            Fit::No => {}
            Fit::Doubtful => found.doubtful.push(kept.clone()),
            Fit::Yes => {
                found.stands = Stands::Short;
                let taken = open.min(*left);
                if taken > 0 {
                    (open, *left) = (open - taken, *left - taken);
                    found.from.push((kept.clone(), taken));
                }
            }
        }
    }
    if open <= 0 {
        found.stands = Stands::There;
    }
    found
}

#[cfg(test)]
mod tests {
    use super::super::Thing;
    use super::*;
    use crate::quantity::{Bar, Dn};
    use crate::spec::{Gender, Side};

    fn end(gender: Option<Gender>, form: Option<&str>, series: Option<&str>) -> Item {
        Item::from(Thing::End {
            family: "JIC 37 flare".into(),
            size: "-10".into(),
            gender,
            form: form.map(str::to_owned),
            dn: dn(16),
            series: series.map(str::to_owned),
        })
    }

    fn dn(size: u16) -> Dn {
        size.to_string().parse().expect("a size")
    }

    fn kept(item: Item, quantity: i64) -> Shelved {
        Shelved { item, quantity, bin: "A1".into() }
    }

    #[track_caller]
    fn stands(wanted: &[(Item, i64)], shelf: &[Shelved], expected: &[(Stands, i64, usize)]) {
        let wanted: Vec<Wanted> =
            wanted.iter().map(|(item, count)| Wanted { item: item.clone(), count: *count }).collect();
        let found = needs(Catalogue::embedded(), &wanted, shelf);
        let found: Vec<_> = found.iter().map(|one| (one.stands, one.there, one.doubtful.len())).collect();
        assert_eq!(found, expected);
    }

    const FEMALE: Option<Gender> = Some(Gender::Female);

    #[test]
    fn an_end_that_nobody_described_is_a_doubt_and_never_there() {
        let wanted = end(FEMALE, Some("straight"), Some("S1"));
        for doubtful in [
            end(None, Some("straight"), Some("S1")),
            end(FEMALE, None, Some("S1")),
            end(FEMALE, Some("straight"), None),
        ] {
            stands(&[(wanted.clone(), 1)], &[kept(doubtful, 5)], &[(Stands::NotKept, 0, 1)]);
        }
        for other in [
            end(Some(Gender::Male), Some("straight"), Some("S1")),
            end(FEMALE, Some("elbow90"), Some("S1")),
            end(FEMALE, Some("straight"), Some("S2")),
        ] {
            stands(&[(wanted.clone(), 1)], &[kept(other, 5)], &[(Stands::NotKept, 0, 0)]);
        }
        stands(&[(wanted.clone(), 2)], &[kept(wanted, 2)], &[(Stands::There, 2, 0)]);
        // A series that nobody asked for is one to be looked at: another's ferrule and figures do not go with it.
        let wanted = end(FEMALE, Some("straight"), None);
        stands(
            &[(wanted, 1)],
            &[kept(end(FEMALE, Some("straight"), Some("S1")), 5)],
            &[(Stands::NotKept, 0, 1)],
        );
    }

    #[test]
    fn an_adapter_is_the_one_that_was_reckoned_with() {
        let adapter = |rating: Option<f64>, machine: Option<&str>| {
            let side = |size: &str| Side { family: "BSPP 60 cone".into(), size: size.into(), gender: FEMALE };
            Item::from(Thing::Adapter {
                name: "test point".into(),
                hose_side: Some(side("1/2")),
                machine_side: machine.map(side),
                rating_bar: rating.map(Bar),
            })
        };
        let wanted = adapter(Some(400.0), Some("1/2"));
        for there in [Some(400.0), Some(630.0)] {
            stands(&[(wanted.clone(), 1)], &[kept(adapter(there, Some("1/2")), 1)], &[(Stands::There, 1, 0)]);
        }
        for other in [adapter(Some(40.0), Some("1/2")), adapter(Some(400.0), Some("3/8"))] {
            stands(&[(wanted.clone(), 1)], &[kept(other, 1)], &[(Stands::NotKept, 0, 0)]);
        }
        for doubtful in [adapter(None, Some("1/2")), adapter(Some(400.0), None)] {
            stands(&[(wanted.clone(), 1)], &[kept(doubtful, 1)], &[(Stands::NotKept, 0, 1)]);
        }
    }

    #[test]
    fn a_ferrule_without_a_size_on_it_is_a_doubt() {
        let ferrule = |dn| Item::from(Thing::Ferrule { name: "two-wire".into(), dn });
        stands(&[(ferrule(Some(dn(16))), 2)], &[kept(ferrule(None), 9)], &[(Stands::NotKept, 0, 1)]);
        stands(&[(ferrule(Some(dn(16))), 2)], &[kept(ferrule(Some(dn(12))), 9)], &[(Stands::NotKept, 0, 0)]);
    }

    #[test]
    fn nothing_is_given_twice_and_below_zero_is_nothing() {
        let narrow = end(FEMALE, Some("straight"), Some("S1"));
        let shelf = [kept(narrow.clone(), 3)];
        stands(&[(narrow.clone(), 2), (narrow.clone(), 2)], &shelf, &[(Stands::Short, 3, 0)]);
        stands(&[(narrow.clone(), 1), (narrow.clone(), 1)], &[kept(narrow, -1)], &[(Stands::Short, 0, 0)]);
    }

    #[test]
    fn what_was_never_kept_is_not_known_to_be_missing() {
        let seal = Item::from(Thing::Seal { name: "O-ring 21.3 x 2.4".into() });
        stands(&[(seal.clone(), 1)], &[], &[(Stands::NotKept, 0, 0)]);
        stands(&[(seal.clone(), 1)], &[kept(seal, 0)], &[(Stands::Short, 0, 0)]);
    }
}
