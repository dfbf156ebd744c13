//! A sheet as plain text.

use super::{Body, Sheet, Step};
use hosewright_words::Words;

pub(super) fn write(sheet: &Sheet, width: usize, words: &Words) -> String {
    let mut out = hanging(&format!("{}  ", sheet.title), &sheet.subject, width);
    let silent = |body: &Body| matches!(body, Body::Drawing { said, .. } if said.is_empty());
    for section in sheet.sections.iter().filter(|section| !silent(&section.body)) {
        out.push('\n');
        if !section.heading.is_empty() {
            out += &format!("{}\n", section.heading);
        }
        match &section.body {
            Body::Facts(facts) => out += &columns(facts.iter().map(|(name, value)| [name, value]), width),
            Body::Table { head, rows } => {
                out += &columns(std::iter::once(head).chain(rows).map(|row| row.iter()), width);
            }
            Body::Steps(steps) => out += &numbered(steps, width, words),
            Body::Drawing { said, .. } => out += &hanging("", said, width),
            Body::Text(paragraphs) => {
                for paragraph in paragraphs {
                    out += &hanging("", paragraph, width);
                }
            }
        }
    }
    if !sheet.footer.is_empty() {
        out.push('\n');
        out += &hanging("", &sheet.footer, width);
    }
    out
}

fn numbered(steps: &[Step], width: usize, words: &Words) -> String {
    let mut out = String::new();
    for (index, step) in steps.iter().enumerate() {
        out += &hanging(&format!("{:>3}. ", index + 1), &step.text, width);
        for caution in &step.cautions {
            out += &hanging(&format!("     ! {}: ", words.say("sheet-caution", &[])), caution, width);
        }
    }
    out
}

/// Space before a table and between its columns.
const GUTTER: usize = 2;

/// Columns as wide as their widest cell; where that is more than the width, the widest are narrowed and their
/// cells wrapped.
fn columns<'a, R: IntoIterator<Item = &'a String>>(rows: impl Iterator<Item = R>, width: usize) -> String {
    let rows: Vec<Vec<&String>> = rows.map(|row| row.into_iter().collect()).collect();
    let widths = fitted(&rows, width);
    let mut out = String::new();
    for row in &rows {
        let cells: Vec<Vec<String>> =
            row.iter().zip(&widths).map(|(cell, width)| wrap(cell, *width)).collect();
        let height = cells.iter().map(Vec::len).max().unwrap_or(0);
        for at in 0..height {
            let mut line = String::new();
            for (cell, width) in cells.iter().zip(&widths) {
                let text = cell.get(at).map_or("", String::as_str);
                line += &format!("{:GUTTER$}{text:<width$}", "");
            }
            out += line.trim_end();
            out.push('\n');
        }
    }
    out
}

/// The width of each column: no column narrower than its longest word, else the whole no wider than the page.
fn fitted(rows: &[Vec<&String>], width: usize) -> Vec<usize> {
    let count = rows.iter().map(Vec::len).max().unwrap_or(0);
    let widest = |of: fn(&str) -> usize| -> Vec<usize> {
        let column = |at: usize| rows.iter().filter_map(move |row| row.get(at));
        (0..count).map(|at| column(at).map(|cell| of(cell)).max().unwrap_or(0)).collect()
    };
    let mut widths = widest(|cell| cell.chars().count());
    let least = widest(|cell| cell.split_whitespace().map(|word| word.chars().count()).max().unwrap_or(0));
    while widths.iter().sum::<usize>() + GUTTER * count > width {
        let narrowable = widths.iter_mut().zip(&least).filter(|(width, least)| **width > **least);
        match narrowable.map(|(width, _)| width).max() {
            Some(width) => *width -= 1,
            None => break,
        }
    }
    widths
}

/// The lines of a text within a width; a text without words is one blank line.
fn wrap(text: &str, width: usize) -> Vec<String> {
    let mut lines = vec![String::new()];
    for word in text.split_whitespace() {
        match lines.last_mut() {
            Some(line) if line.is_empty() => line.push_str(word),
            Some(line) if line.chars().count() + 1 + word.chars().count() <= width => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}

/// Text behind a start, further lines beneath its first letter.
fn hanging(start: &str, text: &str, width: usize) -> String {
    let indent = start.chars().count();
    let mut out = String::new();
    for (at, line) in wrap(text, width.saturating_sub(indent)).iter().enumerate() {
        let before = if at == 0 { start.to_owned() } else { " ".repeat(indent) };
        out += format!("{before}{line}").trim_end();
        out.push('\n');
    }
    out
}

#[cfg(test)]
mod tests {
    use super::super::example;
    use hosewright_words::{Language, Words};

    #[test]
    fn a_sheet_reads_on_a_terminal() {
        let text = example::sheet(2).to_text(60, &Words::of(Language::English));
        let expected = "\
Build sheet  7KQ4M-2XR9D-D

What it is
  Hose            EN 853 2SN DN16
  Overall length  1240 mm, +12 −8 mm

Ends
  End  Family                                        Cut-off
  A    JIC 37 flare -10 female, 90° elbow with a     32.5 mm
       drop of 55 mm
  B    flange 62 -12

Steps
  1. Step number 1: push the hose on to the insertion mark
     and look whether it has moved.
     ! Caution: Keep fingers out of the dies; the press
                closes with tonnes of force.
  2. Step number 2: push the hose on to the insertion mark
     and look whether it has moved.

The maker's instructions come first.

catalogue 5f0c1d2e
";
        assert_eq!(text, expected);
    }
}
