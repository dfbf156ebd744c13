//! `supplier` in plain text.

use super::Plain;
use super::sheet::headings;
use super::text::{set_in, wrapped};
use hosewright_api::Code;
use hosewright_api::commands::supplier::{
    EndKnown, SupplierId, SupplierImported, SupplierList, SupplierLookup, SupplierMatches, SupplierRemoved,
};
use hosewright_core::quantity::Millimetres;
use hosewright_core::sheet::Column as _;
use hosewright_core::supplier::SupplierRow;
use hosewright_words::{Words, length};
use std::fmt::Write;

impl Plain for SupplierMatches {
    fn plain(&self, words: &Words) -> String {
        headings(&self.headings, words)
    }
}

impl Plain for SupplierImported {
    fn plain(&self, words: &Words) -> String {
        let said = match (self.dry_run, self.refused.is_empty()) {
            (_, false) => "supplier-would-not",
            (true, true) => "supplier-would",
            (false, true) => "supplier-done",
        };
        let done = words.say(
            said,
            &[
                ("refused", &self.refused.len()),
                ("rows", &self.rows),
                ("taken", &self.taken),
                ("new", &self.new),
                ("changed", &self.changed),
                ("same", &self.same),
            ],
        );
        let mut out = wrapped(&done, 2);
        for row in &self.refused {
            let column = row.column.map_or_else(String::new, |column| format!("{}: ", column.name()));
            let why = format!("{column}{}", row.why);
            let refused = words.say("supplier-refused", &[("row", &row.row), ("why", &why)]);
            let _ = write!(out, "\n{}", set_in(&refused, 2, 2));
        }
        for row in &self.repeated {
            let said = words.say("supplier-repeated", &[("row", &row.row), ("of", &row.of)]);
            let _ = write!(out, "\n{}", set_in(&said, 2, 2));
        }
        if !self.left_out.is_empty() {
            let rows = self.left_out.iter().map(usize::to_string).collect::<Vec<_>>().join(", ");
            let _ = write!(out, "\n{}", set_in(&words.say("supplier-left-out", &[("rows", &rows)]), 2, 2));
        }
        out
    }

    /// A sheet with rows that can not be taken is a wrong input, whether it is tried or only asked about.
    fn exit(&self) -> u8 {
        if self.refused.is_empty() { 0 } else { Code::Input.exit() }
    }
}

impl Plain for SupplierList {
    fn plain(&self, words: &Words) -> String {
        if self.suppliers.is_empty() {
            return wrapped(&words.say("supplier-empty", &[]), 0);
        }
        let mut out = String::new();
        for of in &self.suppliers {
            let said = words.say("supplier-of", &[("supplier", &of.supplier), ("count", &of.rows)]);
            let _ = writeln!(out, "{said}");
        }
        for kept in &self.rows {
            let _ = writeln!(out, "{}", set_in(&format!("{}  {}", kept.id, row(&kept.row, words)), 2, 4));
        }
        out
    }
}

/// A row in a line: for what, and its figures.
fn row(row: &SupplierRow, words: &Words) -> String {
    let end =
        [&row.family, &row.size, &row.series].into_iter().flatten().cloned().collect::<Vec<_>>().join(" ");
    let mut said = format!("{}: {} {} DN{} {end}", row.supplier, row.standard, row.kind, row.dn);
    let mm = |value: Option<Millimetres>| value.map(|value| length(value.get(), 2));
    let figures = [
        ("sheet-insertion", mm(row.insertion_mm)),
        ("sheet-ferrule", row.ferrule.clone()),
        ("sheet-die-set", row.die_set.clone()),
        ("sheet-crimp", mm(row.crimp_diameter_mm)),
        ("sheet-crimp-tolerance", mm(row.crimp_tolerance_mm).map(|mm| format!("\u{b1}{mm}"))),
    ];
    for (name, figure) in figures {
        if let Some(figure) = figure {
            let _ = write!(said, "; {} {figure}", words.say(name, &[]).to_lowercase());
        }
    }
    format!("{said} ({})", row.from)
}

impl Plain for SupplierLookup {
    fn plain(&self, words: &Words) -> String {
        let mut out = String::new();
        for end in &self.ends {
            let _ = writeln!(out, "{}", known(end, words));
        }
        if let Some(sum) = self.cutoffs {
            out += &learned("supplier-cutoffs", sum.mm, sum.n, sum.spread_mm, words);
        }
        out
    }
}

fn known(end: &EndKnown, words: &Words) -> String {
    let mut out = words.say("sheet-end", &[("end", &format!("{:?}", end.role))]);
    for kept in &end.rows {
        let _ = write!(out, "\n{}", set_in(&format!("{}  {}", kept.id, row(&kept.row, words)), 2, 4));
    }
    if end.rows.is_empty() {
        let _ = write!(out, "\n  {}", words.say("supplier-no-row", &[]));
    }
    if let Some(last) = &end.last {
        let day = last.assembled.map(|day| day.to_string()).unwrap_or_default();
        let said = words.say("supplier-last", &[("code", &last.code.to_string()), ("day", &day)]);
        let source = last.settings.source.as_deref().unwrap_or_default();
        let _ = write!(out, "\n{}", set_in(&format!("{said}: {source}"), 2, 4));
    }
    if let Some(cutoff) = end.cutoff {
        let said = learned("supplier-cutoff", cutoff.mm, cutoff.n, cutoff.spread_mm, words);
        let _ = write!(out, "\n  {said}");
    }
    out
}

fn learned(id: &str, mm: Millimetres, n: usize, spread: Option<Millimetres>, words: &Words) -> String {
    let spread = spread.map_or_else(String::new, |spread| {
        words.say("supplier-spread", &[("spread", &length(spread.get(), 1))])
    });
    words.say(id, &[("mm", &length(mm.get(), 1)), ("n", &n), ("spread", &spread)])
}

impl Plain for SupplierId {
    fn plain(&self, words: &Words) -> String {
        words.say("supplier-kept", &[("id", &self.id.to_string())])
    }
}

impl Plain for SupplierRemoved {
    fn plain(&self, words: &Words) -> String {
        words.say("supplier-removed", &[("count", &self.removed)])
    }
}
