//! What people call a thing, and a thing by the names of the tables.

use crate::ApiError;
use hosewright_core::catalogue::Catalogue;
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::StockUnit;
use hosewright_core::spec::{EndSpec, Gender, Role, Side};
use hosewright_core::stock::{Item, Thing};
use hosewright_words::{Pressure, Words, pressure};

/// A hose as people name it.
pub(in crate::commands) fn hose_name(hose: &Thing) -> String {
    hose.name()
}

/// An item as people name it.
pub(in crate::commands) fn item_name(item: &Item, words: &Words) -> String {
    match item {
        Item::Thing(Thing::End { family, size, gender, form, dn, series }) => {
            let end = end(Role::A, family, size, *gender, form.clone());
            let series = series.as_ref().map(|series| words.say("stock-series", &[("series", series)]));
            let rest = series.map_or_else(String::new, |series| format!(", {series}"));
            format!("{}, DN{dn}{rest}", crate::end_name(&end, words))
        }
        Item::Thing(Thing::Adapter { name, hose_side, machine_side, rating_bar }) => {
            let sides = [hose_side, machine_side].into_iter().flatten().map(|side| side_name(side, words));
            let sides: Vec<String> = sides.collect();
            let rated = rating_bar.map_or_else(
                || words.say("stock-not-rated", &[]),
                |rated| pressure(rated.get(), Pressure::Bar),
            );
            let between = if sides.is_empty() { String::new() } else { format!(" ({})", sides.join(" / ")) };
            format!("{name}{between}, {rated}")
        }
        other => other.name(),
    }
}

fn side_name(side: &Side, words: &Words) -> String {
    crate::end_name(&end(Role::A, &side.family, &side.size, side.gender, None), words)
}

/// An end with nothing but its names.
pub(in crate::commands) fn end(
    role: Role,
    family: &str,
    size: &str,
    gender: Option<Gender>,
    form: Option<String>,
) -> EndSpec {
    EndSpec {
        role,
        family: family.to_owned(),
        size: size.to_owned(),
        gender,
        form,
        drop_mm: None,
        cutoff_mm: None,
        rating_bar: None,
    }
}

/// An item with its names as the tables have them. A hose or end that the tables do not have is an error; what is kept
/// beyond them goes by a plain text.
pub(in crate::commands) fn known(catalogue: &Catalogue, item: Item) -> Result<Item, ApiError> {
    let refused = |error| ApiError::input("item", format!("{error}"));
    let side = |side: Side| {
        let found = catalogue.connection(&side.family, &side.size).map_err(refused)?;
        Ok::<_, ApiError>(Side { family: found.family().to_owned(), size: found.size().to_owned(), ..side })
    };
    let text = |text: String| text.trim().to_owned();
    let item = match item {
        Item::Named(name) => Item::Named(text(name)),
        Item::Thing(thing) => Item::Thing(match thing {
            Thing::Hose { standard, kind, dn } => {
                let row = catalogue.hose(&standard, &kind, dn).map_err(refused)?;
                Thing::Hose { standard: row.standard.clone(), kind: row.kind.clone(), dn: row.dn }
            }
            Thing::End { family, size, gender, form, dn, series } => {
                let found = catalogue.connection(&family, &size).map_err(refused)?;
                Thing::End {
                    family: found.family().to_owned(),
                    size: found.size().to_owned(),
                    gender,
                    form: form.map(|form| text(form).to_lowercase()).filter(|form| !form.is_empty()),
                    dn,
                    series: series.map(text).filter(|series| !series.is_empty()),
                }
            }
            Thing::Adapter { name, hose_side, machine_side, rating_bar } => Thing::Adapter {
                name: text(name),
                hose_side: hose_side.map(side).transpose()?,
                machine_side: machine_side.map(side).transpose()?,
                rating_bar,
            },
            Thing::Ferrule { name, dn } => Thing::Ferrule { name: text(name), dn },
            Thing::Sleeve { name, dn } => Thing::Sleeve { name: text(name), dn },
            Thing::Seal { name } => Thing::Seal { name: text(name) },
        }),
    };
    if item.is_blank() {
        return Err(ApiError::input("item", "it has no name; write what it is"));
    }
    if let Item::Thing(Thing::Adapter { rating_bar: Some(rating), .. }) = &item
        && !(rating.get().is_finite() && rating.get() > 0.0)
    {
        let why = format!("{} bar can not be; leave out a rating that nobody knows", rating.get());
        return Err(ApiError::input("item.rating_bar", why));
    }
    Ok(item)
}

/// Millimetres of tenths.
pub(in crate::commands) fn mm(tenths: i64) -> Millimetres {
    Millimetres(tenths as f64 / 10.0)
}

/// Tenths of millimetres, of a length that can be.
pub(in crate::commands) fn tenths(field: &str, length: Millimetres) -> Result<i64, ApiError> {
    let tenths = length.get() * 10.0;
    if !(0.0..=10_000_000.0).contains(&tenths) {
        let why = format!("{} can not be; a length from 0 to 1000000 mm is expected", length.get());
        return Err(ApiError::input(field, why));
    }
    Ok(tenths.round() as i64)
}

/// How much, with its unit where it is a length.
pub fn amount(quantity: i64, unit: StockUnit) -> String {
    match unit {
        StockUnit::Pieces => quantity.to_string().replace('-', "\u{2212}"),
        StockUnit::Millimetres => hosewright_words::length(quantity as f64, 0),
    }
}
