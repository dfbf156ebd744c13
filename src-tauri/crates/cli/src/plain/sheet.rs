//! The headings of a sheet in plain text.

use super::text::{columns, wrapped};
use hosewright_api::key;
use hosewright_core::sheet::{Column, Headings};
use hosewright_words::Words;

/// What each column seems to be, what is missing and what is asked.
pub fn headings<C: Column>(headings: &Headings<C>, words: &Words) -> String {
    let mut out = words.say("supplier-match", &[("row", &headings.header_row), ("rows", &headings.rows)]);
    out.push('\n');
    let rows = headings.columns.iter().map(|column| {
        let is = column.is.map_or_else(|| words.say("supplier-not-known", &[]), |is| is.name().to_owned());
        let unit =
            column.unit.map(|unit| key(&unit)).or(column.days.map(|days| key(&days))).unwrap_or_default();
        vec![format!("  {}", column.column), is, unit, column.heading.clone(), column.examples.join(" | ")]
    });
    out += &columns(&rows.collect::<Vec<_>>());
    for column in &headings.columns {
        if let (Some(asks), Some(is)) = (column.asks, column.is) {
            let asked = words.say(&format!("sheet-asks-{}", key(&asks)), &[("column", &is.name())]);
            out += &wrapped(&asked, 2);
            out.push('\n');
        }
    }
    if !headings.missing.is_empty() {
        let missing = headings.missing.iter().map(|column| column.name()).collect::<Vec<_>>().join(", ");
        out += &wrapped(&words.say("supplier-missing", &[("missing", &missing)]), 2);
    }
    out
}
