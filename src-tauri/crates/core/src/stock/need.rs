//! What is wanted against what is there.

use super::{Item, Thing};
use crate::catalogue::Catalogue;
use crate::quantity::Dn;
use crate::spec::Gender;
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
    /// Items that may be it: half, form or series is not written down.
    pub doubtful: Vec<Shelved>,
}

/// Whether a kept item is what is wanted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Fit {
    No,
    Doubtful,
    Yes,
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

/// Whether a kept item is the wanted one. What only one of the two says is a doubt where a wrong part could be taken.
fn fits(catalogue: &Catalogue, wanted: &Item, kept: &Item) -> Fit {
    let (Item::Thing(wanted), Item::Thing(kept)) = (wanted, kept) else {
        return if wanted == kept { Fit::Yes } else { Fit::No };
    };
    match (wanted, kept) {
        (Thing::End { .. }, Thing::End { .. }) => ends(catalogue, wanted, kept),
        (Thing::Ferrule { name: a, dn: a_dn }, Thing::Ferrule { name: b, dn: b_dn })
        | (Thing::Sleeve { name: a, dn: a_dn }, Thing::Sleeve { name: b, dn: b_dn }) => {
            named(a, b).min(sizes(catalogue, *a_dn, *b_dn))
        }
        (Thing::Adapter { name: a, .. }, Thing::Adapter { name: b, .. })
        | (Thing::Seal { name: a }, Thing::Seal { name: b }) => named(a, b),
        _ if wanted == kept => Fit::Yes,
        _ => Fit::No,
    }
}

fn ends(catalogue: &Catalogue, wanted: &Thing, kept: &Thing) -> Fit {
    let (
        Thing::End { family, size, gender, form, dn, series },
        Thing::End {
            family: k_family,
            size: k_size,
            gender: k_gender,
            form: k_form,
            dn: k_dn,
            series: k_series,
        },
    ) = (wanted, kept)
    else {
        return Fit::No;
    };
    if family != k_family || size != k_size || !catalogue.one_size(*dn, *k_dn) {
        return Fit::No;
    }
    let halves = same(gender.as_ref().map(half), k_gender.as_ref().map(half), family.starts_with("flange"));
    let forms = same(form.as_deref(), k_form.as_deref(), false);
    // A series that nobody asked for is none to go by; one that is asked for must be written on the box.
    let series = match series {
        None => Fit::Yes,
        Some(asked) => same(Some(asked.as_str()), k_series.as_deref(), false),
    };
    halves.min(forms).min(series)
}

const fn half(gender: &Gender) -> &'static str {
    match gender {
        Gender::Male => "male",
        Gender::Female => "female",
    }
}

fn same(wanted: Option<&str>, kept: Option<&str>, none_is_none: bool) -> Fit {
    match (wanted, kept) {
        (Some(wanted), Some(kept)) => named(wanted, kept),
        (None, None) if none_is_none => Fit::Yes,
        _ => Fit::Doubtful,
    }
}

fn named(wanted: &str, kept: &str) -> Fit {
    if wanted.trim().eq_ignore_ascii_case(kept.trim()) { Fit::Yes } else { Fit::No }
}

/// A size that only one of the two says is no other size: the supplier's name tells it.
fn sizes(catalogue: &Catalogue, wanted: Option<Dn>, kept: Option<Dn>) -> Fit {
    match (wanted, kept) {
        (Some(wanted), Some(kept)) if !catalogue.one_size(wanted, kept) => Fit::No,
        _ => Fit::Yes,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

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
    }

    #[test]
    fn nothing_is_given_twice_and_below_zero_is_nothing() {
        let (narrow, wide) = (end(FEMALE, Some("straight"), Some("S1")), end(FEMALE, Some("straight"), None));
        let shelf = [kept(narrow.clone(), 3)];
        stands(&[(wide, 2), (narrow.clone(), 2)], &shelf, &[(Stands::Short, 1, 0), (Stands::There, 2, 0)]);
        stands(&[(narrow.clone(), 1), (narrow.clone(), 1)], &[kept(narrow, -1)], &[(Stands::Short, 0, 0)]);
    }

    #[test]
    fn what_was_never_kept_is_not_known_to_be_missing() {
        let seal = Item::from(Thing::Seal { name: "O-ring 21.3 x 2.4".into() });
        stands(&[(seal.clone(), 1)], &[], &[(Stands::NotKept, 0, 0)]);
        stands(&[(seal.clone(), 1)], &[kept(seal, 0)], &[(Stands::Short, 0, 0)]);
    }
}
