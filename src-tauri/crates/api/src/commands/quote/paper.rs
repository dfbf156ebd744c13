//! A quote as a paper.

use super::{Quote, QuoteLine, QuoteQuestion, quote};
use crate::commands::File;
use crate::commands::make::{PaperKind, PaperSize};
use crate::commands::stock::Money;
use crate::{Api, ApiError, PROGRAM};
use hosewright_papers::sheet::{Body, Section, Sheet};
use hosewright_words::Words;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A quote as a paper.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct QuotePaper {
    /// What is priced.
    pub quote: QuoteQuestion,
    /// What the sheet is for, such as the machine.
    #[serde(default)]
    pub subject: String,
    /// Size of the paper.
    pub paper: PaperSize,
    /// The kind of file.
    #[serde(rename = "as")]
    pub kind: PaperKind,
}

/// The quote as a file.
///
/// # Errors
/// As [`quote`], and when the pages can not be written.
pub fn paper(api: &mut Api, asked: QuotePaper, _: &[u8]) -> Result<File, ApiError> {
    let quoted = quote(api, asked.quote, &[])?;
    let sheet = sheet(&quoted.content, &asked.subject, &quoted.catalogue, api.words());
    crate::commands::paper::file(api, "quote", &sheet, &quoted, asked.paper, asked.kind)
}

/// The lines of a quote in cells, without a head.
pub fn rows(quote: &Quote, words: &Words) -> Vec<Vec<String>> {
    let said = |money: &Option<Money>| {
        money.as_ref().map_or_else(|| words.say("quote-not-priced", &[]), |money| money.text.clone())
    };
    let row = |line: &QuoteLine| {
        vec![line.name.clone(), line.quantity.clone(), said(&line.price), said(&line.amount)]
    };
    quote.lines.iter().map(row).collect()
}

/// Sum, tax and total by their names.
pub fn sums(quote: &Quote, words: &Words) -> Vec<(String, String)> {
    let tax = quote.tax_hundredths.map_or_else(
        || words.say("quote-tax-unknown", &[]),
        |tax| words.say("quote-tax", &[("percent", &words.number(f64::from(tax) / 100.0, 2))]),
    );
    let said = |money: &Option<Money>| {
        money.as_ref().map_or_else(|| words.say("quote-no-total", &[]), |money| money.text.clone())
    };
    vec![
        (words.say("quote-sum", &[]), quote.sum.text.clone()),
        (tax, quote.tax.as_ref().map(|tax| tax.text.clone()).unwrap_or_default()),
        (words.say("quote-total", &[]), said(&quote.total)),
    ]
}

fn sheet(quote: &Quote, subject: &str, catalogue: &str, words: &Words) -> Sheet {
    let say = |id: &str| words.say(id, &[]);
    let section = |heading: &str, body: Body| Section { heading: say(heading), body };
    let head = ["quote-what", "quote-quantity", "quote-price", "quote-amount"].map(say).to_vec();
    let mut sections = vec![
        section("quote-lines", Body::Table { head, rows: rows(quote, words) }),
        section("quote-sums", Body::Facts(sums(quote, words))),
    ];
    let mut notes: Vec<String> = quote.said.iter().map(|said| said.words.clone()).collect();
    if !quote.not_priced.is_empty() {
        notes.push(words.say("quote-not-priced-list", &[("what", &quote.not_priced.join(", "))]));
    }
    if !notes.is_empty() {
        sections.push(section("batch-mind", Body::Text(notes)));
    }
    Sheet {
        title: say("quote-title"),
        subject: subject.to_owned(),
        sections,
        footer: words.say("sheet-footer", &[("program", &PROGRAM), ("catalogue", &catalogue)]),
    }
}
