//! `quote`: what hoses cost by the user's own prices and times, before they are made or by what went into them.

mod paper;

pub use paper::{QuotePaper, paper, rows, sums};

use super::batch::{BatchHose, One, ones};
use super::settings::{Labour, LabourPer, Pricing};
use super::stock::{Money, Said, SaidCode, item_name, money};
use crate::{Answer, Api, ApiError};
use hosewright_core::check::Verdict;
use hosewright_core::record::{PriceSet, StockWhy};
use hosewright_core::stock::money::{MoneyError, share, sum};
use hosewright_core::stock::{Item, Thing};
use hosewright_core::tag::TagCode;
use hosewright_store::UsedWhat;
use hosewright_words::Words;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

impl From<MoneyError> for ApiError {
    fn from(error: MoneyError) -> Self {
        ApiError::input("price", error)
    }
}

/// What is to be priced.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
#[ts(optional_fields)]
pub struct QuoteQuestion {
    /// Hoses that are to be made, by what they need.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[ts(as = "Option<Vec<BatchHose>>")]
    pub hoses: Vec<BatchHose>,
    /// Hoses on record, by what was taken from stock for them.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[ts(as = "Option<Vec<TagCode>>")]
    pub codes: Vec<TagCode>,
}

/// What it costs.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Quote {
    /// The currency by its letters; blank is not said.
    pub currency: String,
    /// Parts, then work.
    pub lines: Vec<QuoteLine>,
    /// All lines that are priced together.
    pub sum: Money,
    /// What has no price, in words. While anything has none there is no total.
    pub not_priced: Vec<String>,
    /// Tax in hundredths of a percent; none is not said.
    pub tax_hundredths: Option<u32>,
    /// The tax on the sum, rounded once; none where it is not said.
    pub tax: Option<Money>,
    /// Sum and tax; none while anything is not priced or the tax is not said.
    pub total: Option<Money>,
    /// What a person must see.
    pub said: Vec<Said>,
}

/// A line of a quote.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct QuoteLine {
    /// Part or work.
    pub kind: QuoteKind,
    /// It in words.
    pub name: String,
    /// How much, in words.
    pub quantity: String,
    /// What one, or of hose a metre and of work an hour, costs; none is not priced.
    pub price: Option<Money>,
    /// What the line costs, rounded once; none is not priced.
    pub amount: Option<Money>,
}

/// What a line is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum QuoteKind {
    /// Something that is used up.
    Part,
    /// Time.
    Labour,
}

/// Something that costs.
struct Cost {
    kind: QuoteKind,
    name: String,
    /// What is priced; none has no price.
    item: Option<Item>,
    /// So many of `whole`; none is not known.
    part: Option<i64>,
    /// Of how many its price is.
    whole: i64,
}

/// Tenths of a millimetre in the metre that hose is priced by.
const METRE: i64 = 10_000;

/// Minutes in the hour that work is priced by.
const HOUR: i64 = 60;

/// What hoses cost: of those on record what was used, and nothing of a rest that was thrown away. Each line is exact and rounded once to the currency's smallest unit, halves away from nothing; the
/// tax is reckoned on the sum and rounded once.
///
/// # Errors
/// What `check` refuses or stops; a hose that is not on record; more money than can be kept.
pub fn quote(api: &mut Api, asked: QuoteQuestion, _: &[u8]) -> Result<Answer<Quote>, ApiError> {
    let pricing = api.settings()?.pricing;
    let ones = ones(api, asked.hoses)?;
    let stopped = ones.iter().find(|one| one.build.checked.verdict == Verdict::Stop);
    if let Some(one) = stopped {
        let why = format!("{}: the check stops it; nothing is quoted that must not be made", one.name);
        return Err(ApiError::input("hoses", why));
    }
    let (mut costs, mut said) = (Vec::new(), Vec::new());
    for one in &ones {
        planned(api, one, &mut costs);
    }
    for (at, code) in asked.codes.iter().enumerate() {
        if asked.codes[..at].contains(code) {
            return Err(ApiError::input(format!("codes[{at}]"), format!("{code} is there twice")));
        }
        made(api, *code, &mut costs, &mut said)?;
    }
    let mut costs = together(costs);
    costs.extend(work(&pricing, ones.len() + asked.codes.len()));
    let prices = api.register()?.prices()?;
    let words = api.words();
    let lines: Vec<QuoteLine> =
        costs.iter().map(|cost| line(cost, &prices, &pricing, words)).collect::<Result<_, _>>()?;
    let not_priced: Vec<String> =
        lines.iter().filter(|line| line.amount.is_none()).map(|line| line.name.clone()).collect();
    said.extend(said_of(api, &costs, &prices, &pricing));
    let total = sum(lines.iter().filter_map(|line| line.amount.as_ref().map(|amount| amount.minor)))?;
    let tax = pricing.tax_hundredths.map(|tax| share(total, i64::from(tax), 10_000)).transpose()?;
    let whole = not_priced.is_empty() && !lines.is_empty();
    let gross = tax.filter(|_| whole).map(|tax| sum([total, tax])).transpose()?;
    Ok(api.answer(Quote {
        currency: pricing.currency.clone(),
        lines,
        sum: money(total, &pricing, words),
        not_priced,
        tax_hundredths: pricing.tax_hundredths,
        tax: tax.map(|tax| money(tax, &pricing, words)),
        total: gross.map(|gross| money(gross, &pricing, words)),
        said,
    }))
}

/// What a hose takes that is to be made.
fn planned(api: &Api, one: &One, costs: &mut Vec<Cost>) {
    let build = &one.build;
    if let Some(hose) = &build.hose {
        let kerf = build.kerf.map_or(0.0, |kerf| kerf.get());
        let tenths = build.cut_mm.map(|cut| ((cut.get() + kerf) * 10.0).round() as i64);
        costs.push(hose_cost(hose, tenths));
    }
    for part in &build.wanted {
        costs.push(part_cost(api, &part.item, part.count));
    }
    for unnamed in build.unnamed_ferrules(api) {
        costs.push(Cost {
            kind: QuoteKind::Part,
            name: unnamed.name,
            item: None,
            part: Some(unnamed.wanted),
            whole: 1,
        });
    }
}

/// What went into a hose.
fn made(api: &mut Api, code: TagCode, costs: &mut Vec<Cost>, said: &mut Vec<Said>) -> Result<(), ApiError> {
    let register = api.register()?;
    let none = || ApiError::nothing("codes", format!("the register has no build of {code}"));
    register.hose(&code)?.and_then(|hose| hose.assembly).ok_or_else(none)?;
    let (used, pieces) = (register.used_for(code)?, register.pieces()?);
    if used.is_empty() {
        // What it is made of is not known: without a price for that there is no total.
        let name = code.to_string();
        said.push(Said::of(api.words(), SaidCode::NothingUsed, &[("name", &name)]));
        costs.push(Cost {
            kind: QuoteKind::Part,
            name: api.words().say("quote-parts-of", &[("name", &name)]),
            item: None,
            part: None,
            whole: 1,
        });
    }
    for one in used.into_iter().filter(|one| one.why == StockWhy::Used) {
        match one.what {
            UsedWhat::Item { item, count, .. } => costs.push(part_cost(api, &item, count)),
            UsedWhat::Piece { piece, tenths_mm } => {
                let kept = pieces.iter().find(|kept| kept.piece.record.piece == piece);
                costs.push(match kept {
                    Some(kept) => hose_cost(&kept.piece.record.hose, Some(tenths_mm)),
                    None => Cost {
                        kind: QuoteKind::Part,
                        name: piece.to_string(),
                        item: None,
                        part: Some(tenths_mm),
                        whole: METRE,
                    },
                });
            }
        }
    }
    Ok(())
}

fn hose_cost(hose: &Thing, tenths: Option<i64>) -> Cost {
    Cost {
        kind: QuoteKind::Part,
        name: hose.name(),
        item: Some(hose.clone().into()),
        part: tenths,
        whole: METRE,
    }
}

fn part_cost(api: &Api, item: &Item, count: i64) -> Cost {
    Cost {
        kind: QuoteKind::Part,
        name: item_name(item, api.words()),
        item: Some(item.clone()),
        part: Some(count),
        whole: 1,
    }
}

/// The same thing in one line. A length that is not known keeps a line of its own.
fn together(costs: Vec<Cost>) -> Vec<Cost> {
    let mut sums: Vec<Cost> = Vec::new();
    for cost in costs {
        let same = |sum: &&mut Cost| {
            sum.item == cost.item && sum.name == cost.name && sum.part.is_some() == cost.part.is_some()
        };
        match sums.iter_mut().find(same) {
            Some(sum) => sum.part = sum.part.zip(cost.part).map(|(one, other)| one + other),
            None => sums.push(cost),
        }
    }
    sums
}

fn work(pricing: &Pricing, hoses: usize) -> Vec<Cost> {
    let minutes = |labour: &Labour| match labour.per {
        LabourPer::Hose => i64::from(labour.minutes) * hoses as i64,
        LabourPer::Job => i64::from(labour.minutes),
    };
    let labours = pricing.labour.iter().filter(|_| hoses > 0);
    labours
        .map(|labour| Cost {
            kind: QuoteKind::Labour,
            name: labour.name.trim().to_owned(),
            item: None,
            part: Some(minutes(labour)),
            whole: HOUR,
        })
        .collect()
}

fn line(cost: &Cost, prices: &[PriceSet], pricing: &Pricing, words: &Words) -> Result<QuoteLine, ApiError> {
    let set = cost.item.as_ref().and_then(|item| prices.iter().find(|set| set.item == *item));
    let price = match cost.kind {
        _ if pricing.currency.is_empty() => None,
        QuoteKind::Labour => pricing.hour()?,
        QuoteKind::Part => set.filter(|set| set.currency == pricing.currency).and_then(|set| set.minor),
    };
    let amount = price.zip(cost.part).map(|(price, part)| share(price, part, cost.whole)).transpose()?;
    let quantity = match (cost.part, cost.whole) {
        (None, _) => "?".to_owned(),
        (Some(tenths), METRE) => format!("{} m", words.number(tenths as f64 / METRE as f64, 4)),
        (Some(minutes), HOUR) => format!("{minutes} min"),
        (Some(count), _) => count.to_string(),
    };
    Ok(QuoteLine {
        kind: cost.kind,
        name: cost.name.clone(),
        quantity,
        price: price.map(|price| money(price, pricing, words)),
        amount: amount.map(|amount| money(amount, pricing, words)),
    })
}

fn said_of(api: &Api, costs: &[Cost], prices: &[PriceSet], pricing: &Pricing) -> Vec<Said> {
    let words = api.words();
    let mut said = Vec::new();
    if pricing.currency.is_empty() {
        said.push(Said::of(words, SaidCode::CurrencyNotSaid, &[]));
        return said;
    }
    if pricing.tax_hundredths.is_none() {
        said.push(Said::of(words, SaidCode::TaxNotSaid, &[]));
    }
    if pricing.labour_rate.is_none() && costs.iter().any(|cost| cost.kind == QuoteKind::Labour) {
        said.push(Said::of(words, SaidCode::NoLabourRate, &[]));
    }
    for cost in costs {
        let set = cost.item.as_ref().and_then(|item| prices.iter().find(|set| set.item == *item));
        if let Some(set) = set.filter(|set| set.currency != pricing.currency && set.minor.is_some()) {
            let values = [("name", cost.name.as_str()), ("currency", set.currency.as_str())];
            said.push(Said::of(words, SaidCode::OtherCurrency, &values));
        }
    }
    said
}
