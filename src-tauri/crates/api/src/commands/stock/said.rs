//! What a person must see of stock, in words.

use super::names::{hose_name, item_name};
use crate::{Api, ApiError};
use hosewright_store::StockConflict;
use hosewright_words::{Say, Words};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// Something that a person must see: stock below nothing, a piece cut twice.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[ts(rename = "StockSaid")]
pub struct Said {
    /// What.
    pub code: SaidCode,
    /// It in words.
    pub words: String,
}

/// What is said: the words `stock-said-<code>`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum SaidCode {
    /// More of a thing went than there was.
    Negative,
    /// More was cut from a piece than there was.
    NegativePiece,
    /// Something was cut from a piece that no device has told of.
    UntoldPiece,
    /// Two devices set a thing anew at once.
    Conflict,
    /// It was counted before its device had heard of what another had entered.
    CountedBlind,
    /// What the saw takes is not known.
    KerfNotKnown,
    /// The length to cut is not known.
    CutLengthNotKnown,
    /// The finished length is taken in the place of the length to cut.
    OverallTaken,
    /// Nobody set a currency.
    CurrencyNotSaid,
    /// A price is in another currency.
    OtherCurrency,
    /// Nobody set the tax.
    TaxNotSaid,
    /// Hose that is too old to be made up.
    HoseOld,
    /// Hose of an age that nobody knows.
    HoseAgeNotKnown,
    /// More pieces than are planned at once.
    TooManyPieces,
    /// Nothing was taken from stock for a hose on record.
    NothingUsed,
    /// Nobody set what an hour costs.
    NoLabourRate,
    /// An adapter of the shelf that can not be reckoned with.
    AdapterNotReckoned,
}

impl SaidCode {
    /// All of them, for the test that each has words.
    pub const ALL: &[Self] = &[
        Self::Negative,
        Self::NegativePiece,
        Self::UntoldPiece,
        Self::Conflict,
        Self::CountedBlind,
        Self::KerfNotKnown,
        Self::CutLengthNotKnown,
        Self::OverallTaken,
        Self::CurrencyNotSaid,
        Self::OtherCurrency,
        Self::TaxNotSaid,
        Self::HoseOld,
        Self::HoseAgeNotKnown,
        Self::TooManyPieces,
        Self::NothingUsed,
        Self::NoLabourRate,
        Self::AdapterNotReckoned,
    ];
}

impl Said {
    /// What is said of something by its name.
    pub(in crate::commands) fn of(words: &Words, code: SaidCode, values: &[(&str, &str)]) -> Self {
        let values: Vec<(&str, &dyn Say)> =
            values.iter().map(|(name, value)| (*name, value as &dyn Say)).collect();
        Self { code, words: words.say(&format!("stock-said-{}", crate::key(&code)), &values) }
    }
}

/// What devices said of the stock without knowing of each other.
pub(super) fn conflicting(api: &mut Api) -> Result<Vec<Said>, ApiError> {
    let register = api.register()?;
    let (conflicts, pieces) = (register.stock_conflicts()?, register.pieces()?);
    let words = api.words();
    let mut said: Vec<Said> = Vec::new();
    for conflict in conflicts {
        let one = match conflict {
            StockConflict::Changed { name } => Said::of(words, SaidCode::Conflict, &[("name", &name)]),
            StockConflict::Counted { store, item, .. } => {
                let name = item_name(&item, words);
                Said::of(words, SaidCode::CountedBlind, &[("name", &name), ("store", &store)])
            }
            StockConflict::Measured { piece } => {
                let kept = pieces.iter().find(|kept| kept.piece.record.piece == piece);
                let named =
                    kept.map(|kept| (hose_name(&kept.piece.record.hose), kept.piece.record.store.clone()));
                let (name, store) = named.unwrap_or_else(|| (piece.to_string(), String::new()));
                Said::of(words, SaidCode::CountedBlind, &[("name", &name), ("store", &store)])
            }
        };
        if !said.contains(&one) {
            said.push(one);
        }
    }
    Ok(said)
}
