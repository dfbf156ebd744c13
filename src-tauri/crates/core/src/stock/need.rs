//! What is wanted against what is there.

use super::{Item, Thing};
use crate::catalogue::Catalogue;
use crate::quantity::Dn;
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

/// Whether a kept item may be the wanted one: nothing that both say speaks against it.
pub fn may_be(catalogue: &Catalogue, wanted: &Item, kept: &Item) -> bool {
    fits(catalogue, wanted, kept) != Fit::No
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
        (Thing::Adapter { .. }, Thing::Adapter { .. }) => adapters(wanted, kept),
        (Thing::Seal { name: a }, Thing::Seal { name: b }) => named(a, b),
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
    let halves = match (gender, k_gender) {
        // A flange has no halves.
        (None, None) if !family.starts_with("flange") => Fit::Doubtful,
        _ => both(*gender, *k_gender, |wanted, kept| wanted == kept),
    };
    let forms = same(form.as_deref(), k_form.as_deref(), false);
    // Ends, ferrules and crimp figures of two series do not go together.
    let series = same(series.as_deref(), k_series.as_deref(), true);
    halves.min(forms).min(series)
}

/// An adapter is its name, both its sides and its rating: the chain was reckoned with them.
fn adapters(wanted: &Thing, kept: &Thing) -> Fit {
    let (
        Thing::Adapter { name, hose_side, machine_side, rating_bar },
        Thing::Adapter {
            name: k_name,
            hose_side: k_hose_side,
            machine_side: k_machine_side,
            rating_bar: k_rating_bar,
        },
    ) = (wanted, kept)
    else {
        return Fit::No;
    };
    let sides = both(hose_side.as_ref(), k_hose_side.as_ref(), |wanted, kept| wanted == kept).min(both(
        machine_side.as_ref(),
        k_machine_side.as_ref(),
        |wanted, kept| wanted == kept,
    ));
    let rating = both(rating_bar.as_ref(), k_rating_bar.as_ref(), |wanted, kept| kept.get() >= wanted.get());
    named(name, k_name).min(sides).min(rating)
}

fn same(wanted: Option<&str>, kept: Option<&str>, none_is_none: bool) -> Fit {
    match (wanted, kept) {
        (None, None) if !none_is_none => Fit::Doubtful,
        _ => both(wanted, kept, |wanted, kept| named(wanted, kept) == Fit::Yes),
    }
}

/// What both say must agree; what one alone says is a doubt.
fn both<T>(wanted: Option<T>, kept: Option<T>, agree: impl Fn(T, T) -> bool) -> Fit {
    match (wanted, kept) {
        (Some(wanted), Some(kept)) => {
            if agree(wanted, kept) {
                Fit::Yes
            } else {
                Fit::No
            }
        }
        (None, None) => Fit::Yes,
        _ => Fit::Doubtful,
    }
}

fn named(wanted: &str, kept: &str) -> Fit {
    if wanted.trim().eq_ignore_ascii_case(kept.trim()) { Fit::Yes } else { Fit::No }
}

fn sizes(catalogue: &Catalogue, wanted: Option<Dn>, kept: Option<Dn>) -> Fit {
    both(wanted, kept, |wanted, kept| catalogue.one_size(wanted, kept))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Bar;
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
