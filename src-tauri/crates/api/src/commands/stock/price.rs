//! Money as it is shown.

use crate::commands::settings::Pricing;
use hosewright_core::stock::money;
use hosewright_words::Words;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

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

/// An amount as it is shown, with the decimals of its currency and the decimal sign of the language.
pub(in crate::commands) fn money(minor: i64, pricing: &Pricing, words: &Words) -> Money {
    let amount = words.figure(&money::written(minor, money::digits(&pricing.currency)));
    Money {
        minor,
        currency: pricing.currency.clone(),
        text: format!("{amount} {}", pricing.currency).trim_end().to_owned(),
    }
}
