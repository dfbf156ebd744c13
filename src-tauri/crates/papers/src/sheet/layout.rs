//! Placing a sheet on pages.

use super::{Body, Paper, Sheet, Step};
use crate::drawing::font::{self, CAP_HEIGHT};
use crate::{Anchor, Drawing, Op, Weight};
use hosewright_words::Words;

/// Margin on every side, in mm: printers of either paper reach it, and a punch leaves it whole.
pub(super) const MARGIN: f64 = 18.0;
/// Letters, em in mm (11 points).
const EM: f64 = 3.9;
/// Letters of footer and page number.
const SMALL: f64 = 2.9;
/// Letters of a section's heading.
const HEADING: f64 = 4.6;
/// Letters of the title.
const TITLE: f64 = 7.0;
/// From baseline to baseline, in em.
const LEADING: f64 = 1.3;
/// Space between rows and steps.
const GAP: f64 = 1.8;
/// Space between columns of a table.
const GUTTER: f64 = 4.0;
/// A table up to this part of a page's height stays on one page: the settings of two ends do. Chosen by eye.
const SHORT: f64 = 0.3;
/// From a step's left edge to its text: room for the box and the number.
const STEP_INDENT: f64 = 14.0;
/// Width of thin and of strong lines.
const THIN: f64 = 0.2;
const STRONG: f64 = 0.6;

pub(super) fn pages(sheet: &Sheet, paper: Paper, words: &Words) -> Vec<Drawing> {
    let mut page = Pages::new(sheet, paper);
    for section in &sheet.sections {
        let laid = page.laid(&section.body, words);
        page.heading(&section.heading, laid.begun());
        page.put(laid);
        page.y += GAP;
    }
    page.finish(words)
}

/// Operations below each other, y from their own top, that stay on one page.
#[derive(Clone)]
struct Block {
    ops: Vec<Op>,
    height: f64,
}

impl Block {
    fn empty() -> Self {
        Self { ops: Vec::new(), height: 0.0 }
    }

    /// Puts another beneath.
    fn below(&mut self, gap: f64, other: Block) {
        let down = self.height + gap;
        self.ops.extend(other.ops.iter().map(|op| op.moved(0.0, down)));
        self.height = down + other.height;
    }

    /// Puts another at its side.
    fn beside(&mut self, mut other: Block) {
        self.ops.append(&mut other.ops);
        self.height = self.height.max(other.height);
    }
}

/// A section's body in blocks below each other.
struct Laid {
    /// What its columns are: stands on every page that it goes on.
    head: Option<Block>,
    blocks: Vec<Block>,
}

impl Laid {
    /// How high it is at least that stands beneath the section's heading, whatever the page: the first block, and some
    /// lines.
    fn begun(&self) -> f64 {
        let head = self.head.as_ref().map_or(0.0, |head| head.height + GAP);
        let first = self.blocks.first().map_or(0.0, |block| block.height);
        let all = self.blocks.iter().map(|block| block.height + GAP).sum::<f64>() - GAP;
        head + first.max(all.min(6.0 * EM))
    }
}

struct Pages<'a> {
    sheet: &'a Sheet,
    size: (f64, f64),
    done: Vec<Drawing>,
    y: f64,
}

impl<'a> Pages<'a> {
    fn new(sheet: &'a Sheet, paper: Paper) -> Self {
        let mut pages = Self { sheet, size: paper.size_mm(), done: Vec::new(), y: 0.0 };
        pages.turn();
        pages
    }

    fn left(&self) -> f64 {
        MARGIN
    }

    fn right(&self) -> f64 {
        self.size.0 - MARGIN
    }

    fn width(&self) -> f64 {
        self.right() - self.left()
    }

    /// Lowest point of a page's content: the footer stands beneath.
    fn bottom(&self) -> f64 {
        self.size.1 - MARGIN - 2.0 * SMALL
    }

    /// Begins a page with its title.
    fn turn(&mut self) {
        let mut page = Drawing::new(self.size.0, self.size.1);
        let baseline = MARGIN + CAP_HEIGHT * TITLE;
        page.ops.push(text(self.left(), baseline, TITLE, Weight::Bold, Anchor::Start, &self.sheet.title));
        let size = self.subject_size();
        page.ops.push(text(self.right(), baseline, size, Weight::Bold, Anchor::End, &self.sheet.subject));
        let line = baseline + 2.5;
        page.ops.push(rule(self.left(), self.right(), line, STRONG));
        self.y = line + 4.0;
        self.done.push(page);
    }

    /// Letters of the subject: smaller where it is too long to stand beside the title.
    fn subject_size(&self) -> f64 {
        let room = self.width() - font::width(&self.sheet.title, TITLE, Weight::Bold) - GUTTER;
        let wanted = font::width(&self.sheet.subject, HEADING, Weight::Bold);
        if wanted > room { HEADING * room / wanted } else { HEADING }
    }

    /// Whether so much stands on this page; of more than a page's worth it is begun on a fresh one.
    fn has_room(&self, height: f64) -> bool {
        self.y + height <= self.bottom() || self.y <= MARGIN + TITLE + 6.5
    }

    /// Puts a block down, on the next page if it has no room on this one.
    fn place(&mut self, block: Block) {
        if !self.has_room(block.height) {
            self.turn();
        }
        let y = self.y;
        if let Some(page) = self.done.last_mut() {
            page.ops.extend(block.ops.iter().map(|op| op.moved(0.0, y)));
        }
        self.y += block.height + GAP;
    }

    /// Text in lines within a width, its own top at zero.
    fn block(&self, content: &str, weight: Weight, x: f64, width: f64) -> Block {
        let mut block = Block::empty();
        for (index, line) in font::wrap(content, EM, weight, width).iter().enumerate() {
            let y = CAP_HEIGHT * EM + index as f64 * LEADING * EM;
            block.ops.push(text(x, y, EM, weight, Anchor::Start, line));
            block.height = y + 0.25 * EM;
        }
        block
    }

    /// A heading, on the page of what stands beneath it.
    fn heading(&mut self, heading: &str, beneath: f64) {
        if heading.is_empty() {
            return;
        }
        let y = CAP_HEIGHT * HEADING;
        let height = y + 0.3 * HEADING;
        if !self.has_room(height + GAP + beneath) {
            self.turn();
        }
        let ops = vec![text(self.left(), y, HEADING, Weight::Bold, Anchor::Start, heading)];
        self.place(Block { ops, height });
    }

    fn laid(&self, body: &Body, words: &Words) -> Laid {
        let blocks = match body {
            Body::Table { head, rows } => return self.table(head, rows),
            Body::Facts(facts) => self.facts(facts),
            Body::Steps(steps) => self.steps(steps, words),
            Body::Drawing { drawing, .. } => {
                let ops = drawing.ops.iter().map(|op| op.moved(self.left(), 0.0)).collect();
                vec![Block { ops, height: drawing.height_mm }]
            }
            Body::Text(paragraphs) => {
                let block = |said: &String| self.block(said, Weight::Regular, self.left(), self.width());
                paragraphs.iter().map(block).collect()
            }
        };
        Laid { head: None, blocks }
    }

    fn put(&mut self, Laid { head, blocks }: Laid) {
        let mut headed = false;
        for block in blocks {
            match &head {
                Some(head) if !headed || !self.has_room(block.height) => {
                    let mut first = head.clone();
                    first.below(GAP, block);
                    self.place(first);
                    headed = true;
                }
                _ => self.place(block),
            }
        }
    }

    fn facts(&self, facts: &[(String, String)]) -> Vec<Block> {
        let widest = facts.iter().map(|(name, _)| font::width(name, EM, Weight::Regular));
        let name_width = widest.fold(0.0, f64::max).min(self.width() * 0.4);
        let indent = name_width + GUTTER;
        let row = |(name, value): &(String, String)| {
            let mut row = self.block(name, Weight::Regular, self.left(), name_width);
            row.beside(self.block(value, Weight::Bold, self.left() + indent, self.width() - indent));
            row
        };
        facts.iter().map(row).collect()
    }

    fn table(&self, head: &[String], rows: &[Vec<String>]) -> Laid {
        let columns = self.columns(head, rows);
        let ruled = |cells: &[String], weight, line| {
            let mut row = Block::empty();
            for (cell, (x, width)) in cells.iter().zip(&columns) {
                row.beside(self.block(cell, weight, *x, *width));
            }
            row.height += GAP / 2.0;
            row.ops.push(rule(self.left(), self.right(), row.height, line));
            row
        };
        let rows: Vec<Block> = rows.iter().map(|cells| ruled(cells, Weight::Regular, THIN)).collect();
        if rows.is_empty() {
            return Laid { head: None, blocks: rows };
        }
        let mut head = ruled(head, Weight::Bold, STRONG);
        let height = head.height + rows.iter().map(|row| GAP + row.height).sum::<f64>();
        if height > SHORT * self.size.1 {
            return Laid { head: Some(head), blocks: rows };
        }
        for row in rows {
            head.below(GAP, row);
        }
        Laid { head: None, blocks: vec![head] }
    }

    /// Left edge and width of each column: as wide as its widest cell, shrunk in proportion where
    /// that is more than the page, but no column below a fair share.
    fn columns(&self, head: &[String], rows: &[Vec<String>]) -> Vec<(f64, f64)> {
        let count = head.len().max(1) as f64;
        let room = self.width() - GUTTER * (count - 1.0);
        let wanted: Vec<f64> = head
            .iter()
            .enumerate()
            .map(|(column, name)| {
                let cells = rows.iter().filter_map(|row| row.get(column));
                let widths = cells.map(|cell| font::width(cell, EM, Weight::Regular));
                widths.fold(font::width(name, EM, Weight::Bold), f64::max) + 0.01
            })
            .collect();
        let fair = room / count / 2.0;
        let over: f64 = wanted.iter().sum::<f64>() - room;
        let spare: f64 = wanted.iter().map(|width| (width - fair).max(0.0)).sum();
        let shrink = if over > 0.0 && spare > 0.0 { (over / spare).min(1.0) } else { 0.0 };
        let mut x = self.left();
        let mut columns = Vec::with_capacity(wanted.len());
        for width in wanted {
            let width = width - (width - fair).max(0.0) * shrink;
            columns.push((x, width));
            x += width + GUTTER;
        }
        columns
    }

    /// A step and its cautions stay on one page.
    fn steps(&self, steps: &[Step], words: &Words) -> Vec<Block> {
        let (left, right) = (self.left(), self.right());
        let x = left + STEP_INDENT;
        let laid = |(index, step): (usize, &Step)| {
            let mut block = self.block(&step.text, Weight::Regular, x, right - x);
            block.ops.push(Op::Rect { x: left, y: 0.0, width: 4.0, height: 4.0, line: Some(0.3) });
            let number = (index + 1).to_string();
            block.ops.push(text(x - 2.0, CAP_HEIGHT * EM, EM, Weight::Bold, Anchor::End, &number));
            block.height = block.height.max(4.2);
            for caution in &step.cautions {
                let told = format!("{}: {caution}", words.say("sheet-caution", &[]));
                let mut beneath = self.block(&told, Weight::Bold, x + 3.5, right - x - 3.5);
                let bar = Op::Rect { x, y: 0.0, width: 1.4, height: beneath.height, line: None };
                beneath.ops.push(bar);
                block.below(GAP, beneath);
            }
            block
        };
        steps.iter().enumerate().map(laid).collect()
    }

    fn finish(mut self, words: &Words) -> Vec<Drawing> {
        let (left, right, y) = (self.left(), self.right(), self.size.1 - MARGIN);
        let pages = self.done.len();
        for (index, page) in self.done.iter_mut().enumerate() {
            let number = words.say("sheet-page", &[("page", &(index + 1)), ("pages", &pages)]);
            page.ops.push(rule(left, right, y - 1.5 * SMALL, THIN));
            page.ops.push(text(left, y, SMALL, Weight::Regular, Anchor::Start, &self.sheet.footer));
            page.ops.push(text(right, y, SMALL, Weight::Regular, Anchor::End, &number));
        }
        self.done
    }
}

fn text(x: f64, y: f64, size: f64, weight: Weight, anchor: Anchor, text: &str) -> Op {
    Op::Text { x, y, size, weight, anchor, text: text.to_owned() }
}

fn rule(left: f64, right: f64, y: f64, width: f64) -> Op {
    Op::Line { points: vec![(left, y), (right, y)], width, dash: None }
}

#[cfg(test)]
mod tests {
    use super::super::{Section, example};
    use super::*;
    use crate::drawing::text_start;
    use hosewright_words::Language;

    fn texts(page: &Drawing) -> Vec<&str> {
        page.ops
            .iter()
            .filter_map(|op| if let Op::Text { text, .. } = op { Some(text.as_str()) } else { None })
            .collect()
    }

    #[test]
    fn nothing_leaves_the_page() {
        let words = Words::of(Language::English);
        for paper in [Paper::A4, Paper::Letter] {
            let pages = example::sheet(40).pages(paper, &words);
            assert!(pages.len() > 1, "{}", pages.len());
            for page in &pages {
                for op in &page.ops {
                    let (x, y, right) = match op {
                        Op::Text { x, y, size, weight, anchor, text } => {
                            let start = text_start(*x, *size, *weight, *anchor, text);
                            (start, *y, start + font::width(text, *size, *weight))
                        }
                        Op::Rect { x, y, width, .. } => (*x, *y, x + width),
                        Op::Line { points, .. } => (points[0].0, points[0].1, points[1].0),
                        Op::Modules { .. } => continue,
                    };
                    let inside = x >= MARGIN - 0.01
                        && right <= page.width_mm - MARGIN + 0.01
                        && y <= page.height_mm - MARGIN + 0.01;
                    assert!(inside, "{paper:?}: {op:?}");
                }
            }
        }
    }

    #[test]
    fn every_page_says_what_it_is_and_its_number() {
        let pages = example::sheet(40).pages(Paper::A4, &Words::of(Language::English));
        for (index, page) in pages.iter().enumerate() {
            let texts = texts(page);
            let number = format!("{} of {}", index + 1, pages.len());
            for expected in ["Build sheet", "7KQ4M-2XR9D-D", "catalogue 5f0c1d2e", &number] {
                assert!(texts.contains(&expected), "{expected} is not on page {index}: {texts:?}");
            }
        }
    }

    /// A figure without its column may be the other end's.
    #[test]
    fn a_table_says_on_every_page_what_its_columns_are() {
        let mut sheet = example::sheet(1);
        let long = |at: usize| vec![format!("row {at}"), "A".to_owned(), "B".to_owned()];
        let head = ["Setting", "End A", "End B"].map(str::to_owned).to_vec();
        let body = Body::Table { head, rows: (0..120).map(long).collect() };
        sheet.sections = vec![Section { heading: "Settings".to_owned(), body }];
        for paper in [Paper::A4, Paper::Letter] {
            let pages = sheet.pages(paper, &Words::of(Language::English));
            assert!(pages.len() > 1);
            for page in &pages {
                let texts = texts(page);
                let heads = texts.iter().filter(|text| **text == "End B").count();
                assert_eq!(heads, 1, "{texts:?}");
            }
        }
    }

    #[test]
    fn a_short_table_and_what_a_heading_is_of_stay_on_one_page() {
        let cells = |at: usize| vec![format!("row {at}"), "A".to_owned()];
        let head = vec!["Setting".to_owned(), "End A".to_owned()];
        let table = |rows: usize| Body::Table { head: head.clone(), rows: (0..rows).map(cells).collect() };
        let step = Step { text: "row 0".to_owned(), cautions: vec!["look".to_owned(); 6] };
        let facts = (0..9).map(|at| (format!("row {at}"), "A".to_owned())).collect();
        // Of a long body some lines stand with its heading.
        for (body, last) in [
            (table(7), "row 6"),
            (table(90), "row 0"),
            (Body::Steps(vec![step]), "row 0"),
            (Body::Facts(facts), "row 2"),
        ] {
            for (above, paper) in (0..60).flat_map(|above| [(above, Paper::A4), (above, Paper::Letter)]) {
                let mut sheet = example::sheet(1);
                let filled = Body::Text(vec!["above".to_owned(); above]);
                sheet.sections = [("", filled), ("Settings", body.clone())]
                    .map(|(heading, body)| Section { heading: heading.to_owned(), body })
                    .to_vec();
                let pages = sheet.pages(paper, &Words::of(Language::English));
                let on = |wanted: &str| pages.iter().position(|page| texts(page).contains(&wanted));
                assert!(on(last).is_some(), "{above} lines above, {paper:?}");
                assert_eq!(
                    (on("Settings"), on("row 0")),
                    (on(last), on(last)),
                    "{above} lines above, {paper:?}"
                );
            }
        }
    }

    #[test]
    fn a_table_without_rows_has_no_head_either() {
        let mut sheet = example::sheet(1);
        let body = Body::Table { head: vec!["Setting".to_owned()], rows: Vec::new() };
        sheet.sections = vec![Section { heading: "Settings".to_owned(), body }];
        let pages = sheet.pages(Paper::A4, &Words::of(Language::English));
        assert!(!texts(&pages[0]).contains(&"Setting"), "{:?}", texts(&pages[0]));
    }

    #[test]
    fn the_widest_name_of_the_facts_stands_on_one_line() {
        for name in ["Schlauch", "Overall length", "Tolerancia de la longitud total"] {
            let mut sheet = example::sheet(1);
            let body = Body::Facts(vec![(name.to_owned(), "1240 mm".to_owned())]);
            sheet.sections = vec![Section { heading: String::new(), body }];
            let pages = sheet.pages(Paper::A4, &Words::of(Language::German));
            assert!(texts(&pages[0]).contains(&name), "{:?}", texts(&pages[0]));
        }
    }

    /// A caution on the next page is a caution nobody sees at its step.
    #[test]
    fn a_caution_stands_on_the_page_of_its_step() {
        for steps in 1..60 {
            for page in example::sheet(steps).pages(Paper::A4, &Words::of(Language::English)) {
                let texts = texts(&page);
                let cautions = texts.iter().filter(|text| text.starts_with("Caution:")).count();
                let with = texts.iter().filter(|text| {
                    let number = text.strip_prefix("Step number ").and_then(|rest| rest.split(':').next());
                    number
                        .and_then(|number| number.parse::<usize>().ok())
                        .is_some_and(|number| number % 3 == 1)
                });
                assert_eq!(cautions, with.count(), "{steps} steps");
            }
        }
    }
}
