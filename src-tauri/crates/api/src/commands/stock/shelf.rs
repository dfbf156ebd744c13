//! What the other commands of stock share: one store's things, names in words, money as it is shown.

use crate::commands::settings::Pricing;
use crate::{Api, ApiError};
use hosewright_core::catalogue::Catalogue;
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::{PieceId, StockUnit};
use hosewright_core::spec::{EndSpec, Role, Side};
use hosewright_core::stock::{Found, Item, Shelved, Stands, StockKind, Thing, Wanted, needs};
use hosewright_store::{PieceKept, Stock};
use hosewright_words::{Pressure, Words, pressure};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// Something that a person must see: stock below nothing, a piece cut twice.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[ts(rename = "StockSaid")]
pub struct Said {
    /// What: the words `stock-said-<code>`.
    pub code: &'static str,
    /// It in words.
    pub words: String,
}

impl Said {
    /// What is said of something by its name.
    pub(in crate::commands) fn of(words: &Words, code: &'static str, values: &[(&str, &str)]) -> Self {
        let values: Vec<(&str, &dyn hosewright_words::Say)> =
            values.iter().map(|(name, value)| (*name, value as &dyn hosewright_words::Say)).collect();
        Self { code, words: words.say(&format!("stock-said-{code}"), &values) }
    }
}

/// Every code of [`Said`], for the test that each has words.
pub const SAID: &[&str] = &[
    "negative",
    "negative-piece",
    "untold-piece",
    "conflict",
    "kerf-not-known",
    "cut-length-not-known",
    "overall-taken",
    "currency-not-said",
    "other-currency",
    "tax-not-said",
    "hose-old",
    "hose-age-not-known",
    "too-many-pieces",
    "nothing-used",
    "no-labour-rate",
];

/// An amount of money.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[ts(rename = "MoneyShown")]
pub struct Money {
    /// In the currency's smallest unit.
    #[ts(type = "number")]
    pub minor: i64,
    /// The currency by its letters.
    pub currency: String,
    /// As it is shown.
    pub text: String,
}

/// An amount as it is shown.
pub(in crate::commands) fn money(minor: i64, pricing: &Pricing) -> Money {
    let amount = hosewright_core::stock::money::written(minor, pricing.currency_digits);
    Money {
        minor,
        currency: pricing.currency.clone(),
        text: format!("{amount} {}", pricing.currency).trim_end().to_owned(),
    }
}

/// What is wanted, and what is there of it.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct NeedLine {
    /// What kind of thing.
    pub part: StockKind,
    /// What; none where it is not known well enough to be named.
    pub item: Option<Item>,
    /// For which ends.
    pub roles: Vec<Role>,
    /// It in words.
    pub name: String,
    /// How much is wanted.
    #[ts(type = "number")]
    pub wanted: i64,
    /// Counted in.
    pub unit: StockUnit,
    /// Whether it is there.
    pub state: Stands,
    /// How much is there.
    #[ts(type = "number")]
    pub quantity: i64,
    /// Where it lies.
    pub bins: Vec<String>,
    /// What may be it, where half, form or series is not written down.
    pub doubtful: Vec<String>,
    /// Where else there is some.
    pub elsewhere: Vec<Elsewhere>,
}

/// Another store that has some.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[ts(rename = "StockElsewhere")]
pub struct Elsewhere {
    /// The van or shelf.
    pub store: String,
    /// How much is there.
    #[ts(type = "number")]
    pub quantity: i64,
}

/// What one van or shelf has, and what the others have.
#[derive(Debug)]
pub(in crate::commands) struct Shelf {
    /// Its name.
    pub store: String,
    stock: Vec<Stock>,
    pieces: Vec<PieceKept>,
}

impl Shelf {
    /// The store that is asked for, else the one this device works from, else the only one there is.
    pub(in crate::commands) fn of(api: &mut Api, asked: Option<&str>) -> Result<Self, ApiError> {
        let own = api.settings()?.store;
        let register = api.register()?;
        let (stock, pieces) = (register.stock()?, register.pieces()?);
        let said = asked.map(str::trim).filter(|store| !store.is_empty());
        let said = said.map(str::to_owned).or(Some(own.trim().to_owned()).filter(|store| !store.is_empty()));
        let mut shelf = Self { store: String::new(), stock, pieces };
        let stores: Vec<&str> = shelf.stores().collect();
        shelf.store = match (said, stores.as_slice()) {
            (Some(store), known) => {
                let alike = known.iter().find(|known| known.to_lowercase() == store.to_lowercase());
                alike.map_or(store, |known| (*known).to_owned())
            }
            (None, [only]) => (*only).to_owned(),
            (None, []) => {
                return Err(ApiError::nothing("store", "nothing is kept anywhere yet: load the van first"));
            }
            (None, many) => {
                let why = format!(
                    "there are {}: say which, or set the one this device works from",
                    many.join(", ")
                );
                return Err(ApiError::input("store", why));
            }
        };
        Ok(shelf)
    }

    /// What all have, for changes that name their own store.
    pub(in crate::commands) fn of_all(api: &mut Api) -> Result<Self, ApiError> {
        let register = api.register()?;
        Ok(Self { store: String::new(), stock: register.stock()?, pieces: register.pieces()? })
    }

    /// Every van and shelf, by name.
    pub(in crate::commands) fn stores(&self) -> impl Iterator<Item = &str> {
        let mut stores: Vec<&str> = self.stock.iter().map(|kept| kept.store.as_str()).collect();
        stores.extend(self.pieces.iter().map(|kept| kept.piece.record.store.as_str()));
        stores.sort_unstable();
        stores.dedup();
        stores.into_iter()
    }

    /// Every item that was ever counted or placed anywhere.
    pub(in crate::commands) fn known_items(&self) -> impl Iterator<Item = &Item> {
        self.stock.iter().map(|kept| &kept.item)
    }

    /// Counted things of this store.
    pub(in crate::commands) fn items(&self) -> Vec<Shelved> {
        self.items_of(|store| store == self.store)
    }

    fn items_of(&self, store: impl Fn(&str) -> bool) -> Vec<Shelved> {
        let kept = self.stock.iter().filter(|kept| store(&kept.store) && kept.unit == StockUnit::Pieces);
        let kept = kept.filter(|kept| kept.item.kind() != StockKind::Hose);
        kept.map(|kept| Shelved {
            item: kept.item.clone(),
            quantity: kept.quantity.unwrap_or(0),
            bin: kept.bin.clone(),
        })
        .collect()
    }

    /// Pieces of hose in this store that something is left of.
    pub(in crate::commands) fn pieces(&self) -> impl Iterator<Item = &PieceKept> {
        let here = self.pieces.iter().filter(|kept| kept.piece.record.store == self.store);
        here.filter(|kept| kept.tenths_mm > 0)
    }

    /// Pieces of that hose in this store that something is left of.
    pub(in crate::commands) fn pieces_of(&self, hose: &Thing) -> Vec<&PieceKept> {
        self.pieces().filter(|kept| kept.piece.record.hose == *hose).collect()
    }

    /// Whether that hose was ever kept here.
    pub(in crate::commands) fn keeps_hose(&self, hose: &Thing) -> bool {
        let item = Item::from(hose.clone());
        self.pieces
            .iter()
            .any(|kept| kept.piece.record.store == self.store && kept.piece.record.hose == *hose)
            || self.stock.iter().any(|kept| kept.store == self.store && kept.item == item)
    }

    /// A piece by its id, wherever it is.
    pub(in crate::commands) fn piece(&self, piece: PieceId) -> Option<&PieceKept> {
        self.pieces.iter().find(|kept| kept.piece.record.piece == piece)
    }

    /// How many there are of an item in a store; none where it was never counted there.
    pub(in crate::commands) fn count(&self, store: &str, item: &Item) -> Option<i64> {
        let kept = self
            .stock
            .iter()
            .find(|kept| kept.store == store && kept.unit == StockUnit::Pieces && kept.item == *item);
        kept.and_then(|kept| kept.quantity)
    }

    /// Bin and low mark of an item in a store.
    pub(in crate::commands) fn place(&self, store: &str, item: &Item) -> (String, Option<i64>) {
        let kept = self.stock.iter().find(|kept| kept.store == store && kept.item == *item);
        kept.map(|kept| (kept.bin.clone(), kept.low)).unwrap_or_default()
    }

    /// What is wanted against this store, with what the others have.
    pub(in crate::commands) fn needs(&self, catalogue: &Catalogue, wanted: &[Wanted]) -> Vec<Found> {
        needs(catalogue, wanted, &self.items())
    }

    /// How much of something the other stores have.
    fn elsewhere(&self, catalogue: &Catalogue, wanted: &Wanted) -> Vec<Elsewhere> {
        self.others()
            .filter_map(|store| {
                let shelf = self.items_of(|one| one == store);
                let plenty = Wanted { item: wanted.item.clone(), count: i64::MAX };
                let quantity = needs(catalogue, &[plenty], &shelf).first()?.there;
                (quantity > 0).then(|| Elsewhere { store: store.to_owned(), quantity })
            })
            .collect()
    }

    /// How much of that hose the other stores have, in millimetres.
    pub(in crate::commands) fn hose_elsewhere(&self, hose: &Thing) -> Vec<Elsewhere> {
        self.others()
            .filter_map(|store| {
                let there = self.pieces.iter().filter(|kept| {
                    kept.piece.record.store == store && kept.piece.record.hose == *hose && kept.tenths_mm > 0
                });
                let tenths: i64 = there.map(|kept| kept.tenths_mm).sum();
                (tenths > 0).then(|| Elsewhere { store: store.to_owned(), quantity: tenths / 10 })
            })
            .collect()
    }

    fn others(&self) -> impl Iterator<Item = &str> {
        self.stores().filter(|store| *store != self.store)
    }
}

/// A line of what is wanted, in words.
pub(in crate::commands) fn line(api: &Api, shelf: &Shelf, found: &Found, roles: Vec<Role>) -> NeedLine {
    let words = api.words();
    let mut bins: Vec<String> = found.from.iter().map(|(kept, _)| kept.bin.clone()).collect();
    bins.retain(|bin| !bin.is_empty());
    bins.dedup();
    NeedLine {
        part: found.wanted.item.kind(),
        item: Some(found.wanted.item.clone()),
        roles,
        name: item_name(&found.wanted.item, words),
        wanted: found.wanted.count,
        unit: StockUnit::Pieces,
        state: found.stands,
        quantity: found.there,
        bins,
        doubtful: found.doubtful.iter().map(|kept| item_name(&kept.item, words)).collect(),
        elsewhere: match found.stands {
            Stands::There => Vec::new(),
            _ => shelf.elsewhere(api.catalogue, &found.wanted),
        },
    }
}

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
    gender: Option<hosewright_core::spec::Gender>,
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
