//! Whether a kept item is the one that is wanted.

use super::{Item, Thing};
use crate::catalogue::Catalogue;
use crate::quantity::Dn;
use crate::spec::Gender;

/// Whether a kept item is what is wanted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Fit {
    No,
    Doubtful,
    Yes,
}

/// Whether a kept item may be the wanted one: nothing that both say speaks against it.
pub fn may_be(catalogue: &Catalogue, wanted: &Item, kept: &Item) -> bool {
    fits(catalogue, wanted, kept) != Fit::No
}

/// Whether a kept item is the wanted one. What only one of the two says is a doubt where a wrong part could be taken.
pub(super) fn fits(catalogue: &Catalogue, wanted: &Item, kept: &Item) -> Fit {
    let (Item::Thing(wanted), Item::Thing(kept)) = (wanted, kept) else {
        return if wanted == kept { Fit::Yes } else { Fit::No };
    };
    match (wanted, kept) {
        (
            Thing::End { family, size, gender, form, dn, series },
            Thing::End {
                family: k_family,
                size: k_size,
                gender: k_gender,
                form: k_form,
                dn: k_dn,
                series: k_series,
            },
        ) => {
            if family != k_family || size != k_size || !catalogue.one_size(*dn, *k_dn) {
                return Fit::No;
            }
            let forms = same(form.as_deref(), k_form.as_deref(), false);
            // Ends, ferrules and crimp figures of two series do not go together.
            let series = same(series.as_deref(), k_series.as_deref(), true);
            halves(family, *gender, *k_gender).min(forms).min(series)
        }
        (Thing::Ferrule { name: a, dn: a_dn }, Thing::Ferrule { name: b, dn: b_dn })
        | (Thing::Sleeve { name: a, dn: a_dn }, Thing::Sleeve { name: b, dn: b_dn }) => {
            named(a, b).min(sizes(catalogue, *a_dn, *b_dn))
        }
        // An adapter is its name, both its sides and its rating: the chain was reckoned with them.
        (
            Thing::Adapter { name, hose_side, machine_side, rating_bar },
            Thing::Adapter {
                name: k_name,
                hose_side: k_hose_side,
                machine_side: k_machine_side,
                rating_bar: k_rating_bar,
            },
        ) => {
            let agree = |wanted, kept| wanted == kept;
            let hose_sides = both(hose_side.as_ref(), k_hose_side.as_ref(), agree);
            let machine_sides = both(machine_side.as_ref(), k_machine_side.as_ref(), agree);
            let ratings =
                both(rating_bar.as_ref(), k_rating_bar.as_ref(), |wanted, kept| kept.get() >= wanted.get());
            named(name, k_name).min(hose_sides).min(machine_sides).min(ratings)
        }
        (Thing::Seal { name: a }, Thing::Seal { name: b }) => named(a, b),
        _ if wanted == kept => Fit::Yes,
        _ => Fit::No,
    }
}

/// A flange has no halves; of anything else a half that nobody wrote down is a doubt.
fn halves(family: &str, wanted: Option<Gender>, kept: Option<Gender>) -> Fit {
    match (wanted, kept) {
        (None, None) if !family.starts_with("flange") => Fit::Doubtful,
        _ => both(wanted, kept, |wanted, kept| wanted == kept),
    }
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
