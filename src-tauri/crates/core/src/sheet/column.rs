//! What a column of a sheet can be.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::fmt::Debug;
use ts_rs::TS;

/// The columns that a kind of sheet can have.
pub trait Column: Copy + Ord + Debug + 'static {
    /// All of them, in the order they are asked for.
    const ALL: &'static [Self];
    /// The unit of a bare number of a length where nothing says one; none: a person is asked.
    const BARE_LENGTH: Option<Unit>;

    /// What no row can be without and none of these columns gives.
    fn missing(present: &[Self]) -> Vec<Self>;

    /// Its name in the contract and in messages.
    fn name(self) -> &'static str;

    /// What people call it, in the words of three languages, without capitals and signs, accents kept.
    fn words(self) -> &'static [&'static str];

    /// What stands in its cells.
    fn holds(self) -> Holds;

    /// What a heading means; `plain` is it in words alone. The column with the longest words in it; the earlier of two.
    fn meant(_heading: &str, plain: &str) -> Option<Self> {
        longest(plain, |_| true)
    }
}

/// The column whose longest words stand in a plain heading, of the words that may count.
pub(crate) fn longest<C: Column>(plain: &str, counts: impl Fn(&str) -> bool) -> Option<C> {
    let padded = format!(" {plain} ");
    let stands = |words: &str| padded.contains(&format!(" {words} "));
    let mut best: Option<(usize, C)> = None;
    for column in C::ALL {
        let fits = column.words().iter().filter(|words| stands(words) && counts(words));
        if let Some(length) = fits.map(|words| words.len()).max()
            && best.is_none_or(|(found, _)| length > found)
        {
            best = Some((length, *column));
        }
    }
    best.map(|(_, column)| column)
}

/// What the cells of a column hold.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
#[ts(rename = "SheetHolds")]
pub enum Holds {
    /// Words, names, codes.
    Text,
    /// A number without a unit.
    Number,
    /// A length.
    Length,
    /// A pressure.
    Pressure,
    /// A day.
    Day,
}

impl Holds {
    /// The units that its bare numbers can have.
    pub const fn units(self) -> &'static [Unit] {
        match self {
            Holds::Length => &[Unit::Mm, Unit::In],
            Holds::Pressure => &[Unit::Bar, Unit::Psi, Unit::Mpa],
            Holds::Text | Holds::Number | Holds::Day => &[],
        }
    }
}

/// Unit of the bare numbers of a column.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "lowercase")]
#[ts(rename = "SheetUnit")]
pub enum Unit {
    /// Millimetres.
    Mm,
    /// Inches.
    In,
    /// Bar.
    Bar,
    /// Pounds per square inch.
    Psi,
    /// Megapascals.
    Mpa,
}

impl Unit {
    /// As it stands behind a number.
    pub const fn name(self) -> &'static str {
        match self {
            Unit::Mm => "mm",
            Unit::In => "in",
            Unit::Bar => "bar",
            Unit::Psi => "psi",
            Unit::Mpa => "MPa",
        }
    }
}

/// What a person must say before a column can be read, because two readings are possible: it is never guessed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
#[ts(rename = "SheetAsks")]
pub enum Asks {
    /// The unit of its bare numbers.
    Unit,
    /// Whether the day or the month stands first.
    Days,
}
