//! Stock, batches, quotes and rounds in plain text.

use super::Plain;
use super::text::{columns, set_in, wrapped};
use hosewright_api::commands::batch::{Planned, cut_words, lengths, part_row, press_words};
use hosewright_api::commands::quote::{Quote, rows, sums};
use hosewright_api::commands::round::{Round, Visit};
use hosewright_api::commands::settings::Settings;
use hosewright_api::commands::stock::{
    BenchUndone, CutFrom, Elsewhere, HoseStock, ItemStock, Need, NeedLine, Said, StockChangedAnswer,
    StockList, StockTaken, amount,
};
use hosewright_api::key;
use hosewright_core::check::Verdict;
use hosewright_core::cutting::StockSort;
use hosewright_core::record::StockUnit;
use hosewright_words::{Pressure, Say, Words, length, number, pressure, signed};

fn said(said: &[Said], words: &Words, lines: &mut Vec<String>) {
    let caution = words.say("verdict-caution", &[]);
    lines.extend(said.iter().map(|said| wrapped(&format!("{caution}: {}", said.words), 2)));
}

/// Each setting by its name, as it is written.
impl Plain for Settings {
    fn plain(&self, _: &Words) -> String {
        let document = serde_json::to_value(self).unwrap_or_default();
        let rows = document.as_object().into_iter().flatten();
        let rows = rows.map(|(name, value)| vec![name.clone(), value.to_string()]);
        columns(&rows.collect::<Vec<_>>())
    }
}

impl Plain for StockList {
    fn plain(&self, words: &Words) -> String {
        let mut lines: Vec<String> = Vec::new();
        let mut stores: Vec<&str> = self.hoses.iter().map(|hose| hose.store.as_str()).collect();
        stores.extend(self.items.iter().map(|item| item.store.as_str()));
        stores.sort_unstable();
        stores.dedup();
        for store in stores {
            lines.push(store.to_owned());
            let hoses = self.hoses.iter().filter(|hose| hose.store == store);
            lines.extend(hoses.map(|hose| hose_lines(hose, words)));
            let items = self.items.iter().filter(|item| item.store == store);
            let rows: Vec<Vec<String>> = items.map(|item| item_row(item, words)).collect();
            lines.push(columns(&rows).trim_end().to_owned());
        }
        lines.retain(|line| !line.is_empty());
        if lines.is_empty() {
            lines.push(words.say("stock-list-none", &[]));
        }
        said(&self.said, words, &mut lines);
        lines.join("\n")
    }
}

fn hose_lines(hose: &HoseStock, words: &Words) -> String {
    let total = words.say(
        "stock-list-pieces",
        &[("count", &hose.pieces.len()), ("total", &length(hose.total_mm.get(), 1))],
    );
    let mut head = format!("{}: {total}", hose.name);
    if hose.low {
        head += &format!("  {}", words.say("stock-list-low", &[]));
    }
    if let Some(price) = &hose.price {
        head += &format!("  {}", words.say("stock-list-price-metre", &[("price", &price.text)]));
    }
    let mut rows = Vec::new();
    for piece in &hose.pieces {
        let mut notes = Vec::new();
        if !piece.label.is_empty() {
            notes.push(piece.label.clone());
        }
        if let Some(made) = piece.made {
            notes.push(words.say("stock-list-made", &[("made", &made.to_string())]));
        }
        if piece.negative {
            notes.push(words.say("stock-list-negative", &[]));
        } else if piece.useful == Some(false) {
            notes.push(words.say("stock-list-short-rest", &[]));
        }
        notes.push(piece.piece.to_string());
        rows.push(vec![
            format!("    {}", length(piece.length_mm.get(), 1)),
            sort(piece.sort, words),
            piece.bin.clone(),
            notes.join(", "),
        ]);
    }
    format!("{}\n{}", set_in(&head, 2, 2), columns(&rows).trim_end())
}

fn sort(sort: StockSort, words: &Words) -> String {
    words.say(&format!("stock-list-{}", key(&sort)), &[])
}

fn item_row(item: &ItemStock, words: &Words) -> Vec<String> {
    let mut name = item.name.clone();
    if let Some(price) = &item.price {
        name += &format!("  {}", words.say("stock-list-price-one", &[("price", &price.text)]));
    }
    let state = match (item.negative, item.low) {
        (true, _) => words.say("stock-list-negative", &[]),
        (false, true) => words.say("stock-list-low", &[]),
        (false, false) => String::new(),
    };
    vec![format!("  {}", amount(item.quantity, item.unit)), item.bin.clone(), state, name]
}

impl Plain for StockChangedAnswer {
    fn plain(&self, words: &Words) -> String {
        let mut lines = vec![words.say("stock-changed", &[("count", &self.written.len())])];
        let piece = |id: &hosewright_core::record::PieceId| {
            words.say("stock-changed-piece", &[("piece", &id.to_string())])
        };
        lines.extend(self.pieces.iter().map(piece));
        said(&self.said, words, &mut lines);
        lines.join("\n")
    }
}

impl Plain for StockTaken {
    fn plain(&self, words: &Words) -> String {
        let counted = |value: f64, unit: StockUnit| match unit {
            StockUnit::Pieces => number(value, 0),
            StockUnit::Millimetres => length(value, 1),
        };
        let mut lines: Vec<String> = self
            .rows
            .iter()
            .map(|row| {
                let values: [(&str, &dyn Say); 4] = [
                    ("name", &row.name),
                    ("counted", &counted(row.counted, row.unit)),
                    ("known", &counted(row.known, row.unit)),
                    ("difference", &signed(row.difference, 1)),
                ];
                wrapped(&words.say("stock-take-row", &values), 2)
            })
            .collect();
        if lines.is_empty() {
            lines.push(words.say("stock-take-same", &[]));
        }
        lines.extend(self.changed.iter().map(|row| {
            let values: [(&str, &dyn Say); 3] = [
                ("name", &row.name),
                ("counted", &counted(row.counted, row.unit)),
                ("known", &counted(row.known, row.unit)),
            ];
            wrapped(&words.say("stock-take-changed", &values), 2)
        }));
        lines.extend(self.not_counted.iter().map(|left| {
            let values: [(&str, &dyn Say); 2] =
                [("name", &left.name), ("known", &counted(left.known, left.unit))];
            wrapped(&words.say("stock-take-not-counted", &values), 2)
        }));
        said(&self.said, words, &mut lines);
        lines.push(words.say(if self.saved { "stock-take-saved" } else { "stock-take-not-saved" }, &[]));
        lines.join("\n")
    }
}

impl Plain for Need {
    fn plain(&self, words: &Words) -> String {
        let mut lines = vec![words.say("stock-need-store", &[("store", &self.store)])];
        lines.extend(self.lines.iter().map(|line| need_line(line, words)));
        lines.extend(self.cuts.iter().map(|cut| cut_line(cut, words)));
        for other in &self.substitutes {
            let verdict = words.say(&format!("verdict-{}", key(&other.verdict)), &[]);
            let values: [(&str, &dyn Say); 3] = [
                ("name", &other.name),
                ("length", &length(other.length_mm.get(), 1)),
                ("where", &place(&[&other.bin])),
            ];
            lines.push(wrapped(&format!("{verdict}  {}", words.say("stock-need-substitute", &values)), 2));
            lines.extend(other.reasons.iter().map(|reason| set_in(reason, 4, 2)));
        }
        for way in &self.adapters {
            let verdict = words.say(&format!("verdict-{}", key(&way.verdict)), &[]);
            let carries = way.assembly_pressure_bar.map_or_else(
                || words.say("stock-need-pressure-unknown", &[]),
                |bar| pressure(bar.get(), Pressure::Bar),
            );
            let values: [(&str, &dyn Say); 3] = [
                ("end", &format!("{:?}", way.role)),
                ("what", &way.names.join(" + ")),
                ("pressure", &carries),
            ];
            lines.push(wrapped(&format!("{verdict}  {}", words.say("stock-need-adapter", &values)), 2));
        }
        said(&self.said, words, &mut lines);
        lines.join("\n")
    }

    fn verdict(&self) -> Option<Verdict> {
        Some(self.verdict)
    }
}

fn place(parts: &[&str]) -> String {
    let parts: Vec<&str> = parts.iter().copied().filter(|part| !part.is_empty()).collect();
    if parts.is_empty() { String::new() } else { format!(" ({})", parts.join(", ")) }
}

fn need_line(line: &NeedLine, words: &Words) -> String {
    let state = words.say(&format!("stock-state-{}", key(&line.state)), &[]);
    let mut parts = vec![words.say(
        "stock-need-line",
        &[
            ("state", &state),
            ("name", &line.name),
            ("wanted", &amount(line.wanted, line.unit)),
            ("there", &amount(line.quantity, line.unit)),
        ],
    )];
    if !line.bins.is_empty() {
        parts.push(words.say("stock-list-bin", &[("bin", &line.bins.join(", "))]));
    }
    if !line.doubtful.is_empty() {
        parts.push(words.say("stock-need-doubtful", &[("what", &line.doubtful.join("; "))]));
    }
    parts.extend(line.elsewhere.iter().map(|other| elsewhere(other, line.unit, words)));
    set_in(&parts.join("; "), 2, 2)
}

fn elsewhere(other: &Elsewhere, unit: StockUnit, words: &Words) -> String {
    let quantity = amount(other.quantity, unit);
    words.say("stock-need-elsewhere", &[("store", &other.store), ("quantity", &quantity)])
}

fn cut_line(cut: &CutFrom, words: &Words) -> String {
    let pieces: Vec<String> = cut.cuts_mm.iter().map(|mm| length(mm.get(), 1)).collect();
    let values: [(&str, &dyn Say); 5] = [
        ("sort", &sort(cut.sort, words)),
        ("length", &length(cut.length_mm.get(), 1)),
        ("where", &place(&[&cut.label, &cut.bin])),
        ("pieces", &pieces.join(", ")),
        ("left", &length(cut.left_mm.get(), 1)),
    ];
    set_in(&words.say("stock-need-cut", &values), 2, 2)
}

impl Plain for BenchUndone {
    fn plain(&self, words: &Words) -> String {
        let mut lines = vec![words.say("stock-undone", &[])];
        lines.extend(self.given_back.iter().map(|back| {
            let quantity = match back.unit {
                StockUnit::Pieces => number(back.quantity, 0),
                StockUnit::Millimetres => length(back.quantity, 1),
            };
            wrapped(&words.say("stock-given-back", &[("name", &back.name), ("quantity", &quantity)]), 2)
        }));
        if self.given_back.is_empty() {
            lines.push(words.say("stock-nothing-given-back", &[]));
        }
        lines.join("\n")
    }
}

fn heading(text: String, lines: &mut Vec<String>) {
    lines.push(format!("\n{text}"));
}

impl Plain for Planned {
    fn plain(&self, words: &Words) -> String {
        let mut lines = vec![words.say("stock-need-store", &[("store", &self.store)])];
        let stop = words.say("verdict-stop", &[]);
        for hose in self.hoses.iter().filter(|hose| hose.verdict == Verdict::Stop) {
            lines.push(wrapped(&format!("{stop}: {}: {}", hose.name, hose.stops.join(" ")), 2));
        }
        for cut in &self.cuts {
            heading(words.say("batch-cut-list", &[("hose", &cut.hose)]), &mut lines);
            lines.extend(cut.steps.iter().map(|step| set_in(&cut_words(step, words), 2, 2)));
            if !cut.unmade.is_empty() {
                let unmade = words.say("batch-unmade", &[("pieces", &lengths(&cut.unmade, words))]);
                lines.push(set_in(&format!("{stop}: {unmade}"), 2, 2));
            }
            let proved = if cut.proved { "yes" } else { "no" };
            let values: [(&str, &dyn Say); 4] = [
                ("reel", &length(cut.reel_mm.get(), 1)),
                ("scrap", &length(cut.scrap_mm.get(), 1)),
                ("proved", &proved),
                ("least", &length(cut.least_reel_mm.get(), 1)),
            ];
            lines.push(set_in(&words.say("batch-cut-sum", &values), 2, 2));
        }
        heading(words.say("batch-parts", &[]), &mut lines);
        lines.push(parts(&self.parts, words));
        heading(words.say("batch-order", &[]), &mut lines);
        lines.extend(self.presses.iter().map(|setup| set_in(&press_words(setup, words), 2, 2)));
        lines.push(set_in(&self.rule, 2, 2));
        said(&self.said, words, &mut lines);
        lines.join("\n")
    }

    fn verdict(&self) -> Option<Verdict> {
        self.hoses.iter().map(|hose| hose.verdict).max()
    }
}

fn parts(parts: &[NeedLine], words: &Words) -> String {
    let rows = parts.iter().map(|part| {
        let row = part_row(part, words);
        let [name, wanted, state, bins] = row.as_slice() else { return row };
        vec![format!("  {wanted}"), state.clone(), bins.clone(), name.clone()]
    });
    columns(&rows.collect::<Vec<_>>()).trim_end().to_owned()
}

impl Plain for Quote {
    fn plain(&self, words: &Words) -> String {
        let lines = rows(self, words).into_iter().map(|row| {
            let [name, quantity, price, amount] = row.as_slice() else { return row };
            vec![quantity.clone(), price.clone(), amount.clone(), name.clone()]
        });
        let mut out = vec![columns(&lines.collect::<Vec<_>>()).trim_end().to_owned()];
        out.extend(
            sums(self, words)
                .into_iter()
                .map(|(name, value)| format!("{name}: {value}").trim_end().to_owned()),
        );
        if !self.not_priced.is_empty() {
            let what = self.not_priced.join(", ");
            out.push(wrapped(&words.say("quote-not-priced-list", &[("what", &what)]), 2));
        }
        said(&self.said, words, &mut out);
        out.join("\n")
    }
}

impl Plain for Round {
    fn plain(&self, words: &Words) -> String {
        let mut lines: Vec<String> = self.visits.iter().map(|visit| visit_lines(visit, words)).collect();
        if lines.is_empty() {
            lines.push(words.say("round-nothing", &[]));
        }
        heading(words.say("batch-parts", &[]), &mut lines);
        lines.push(parts(&self.parts, words));
        heading(words.say("round-load", &[]), &mut lines);
        for load in &self.load {
            let state = words.say(&format!("stock-state-{}", key(&load.state)), &[]);
            let values: [(&str, &dyn Say); 3] =
                [("name", &load.name), ("missing", &load.missing), ("wanted", &load.wanted)];
            let mut line = format!("{state}: {}", words.say("round-load-line", &values));
            for other in &load.from {
                line += &format!("; {}", elsewhere(other, load.unit, words));
            }
            lines.push(set_in(&line, 2, 2));
        }
        if self.load.is_empty() {
            lines.push(set_in(&words.say("round-load-nothing", &[]), 2, 2));
        }
        said(&self.said, words, &mut lines);
        lines.join("\n")
    }
}

fn visit_lines(visit: &Visit, words: &Words) -> String {
    let names = [visit.site.as_str(), visit.machine.as_str()];
    let mut lines = vec![names.into_iter().filter(|name| !name.is_empty()).collect::<Vec<_>>().join(", ")];
    for place in &visit.places {
        let mut parts = vec![place.name.clone()];
        parts.extend(place.hose.clone());
        parts.extend(place.code.map(|code| code.to_string()));
        parts.extend(place.due.map(|due| words.say("round-due", &[("due", &due.to_string())])));
        parts.extend(place.verdict.map(|verdict| words.say(&format!("verdict-{}", key(&verdict)), &[])));
        parts.extend(place.why_not.clone());
        lines.push(set_in(&parts.join("; "), 2, 2));
    }
    lines.join("\n")
}
