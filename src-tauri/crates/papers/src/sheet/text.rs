//! A sheet as plain text.

use super::{Body, Sheet, Step};
use hosewright_words::Words;

pub(super) fn write(sheet: &Sheet, width: usize, words: &Words) -> String {
    let mut out = format!("{}  {}\n", sheet.title, sheet.subject).trim_end().to_owned();
    out.push('\n');
    for section in &sheet.sections {
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
            Body::Text(paragraphs) => {
                for paragraph in paragraphs {
                    out += &hanging("", paragraph, width);
                }
            }
        }
    }
    if !sheet.footer.is_empty() {
        out += &format!("\n{}\n", sheet.footer);
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

/// Columns as wide as their widest cell; the last one wraps.
fn columns<'a, R: IntoIterator<Item = &'a String>>(rows: impl Iterator<Item = R>, width: usize) -> String {
    let rows: Vec<Vec<&String>> = rows.map(|row| row.into_iter().collect()).collect();
    let mut widths: Vec<usize> = Vec::new();
    for row in &rows {
        for (column, cell) in row.iter().enumerate() {
            let length = cell.chars().count();
            match widths.get_mut(column) {
                Some(widest) => *widest = length.max(*widest),
                None => widths.push(length),
            }
        }
    }
    let mut out = String::new();
    for row in &rows {
        let Some((last, before)) = row.split_last() else { continue };
        let mut start = String::from("  ");
        for (cell, width) in before.iter().zip(&widths) {
            start += &format!("{cell:<width$}  ");
        }
        out += &hanging(&start, last, width);
    }
    out
}

/// Text behind a start, further lines beneath its first letter.
fn hanging(start: &str, text: &str, width: usize) -> String {
    let indent = start.chars().count();
    // A column that begins far to the right would be a ladder of single words: it runs over instead.
    let width = width.max(indent + 24);
    let mut out = String::new();
    let mut line = start.to_owned();
    let mut length = indent;
    for word in text.split_whitespace() {
        let letters = word.chars().count();
        if length > indent && length + 1 + letters > width {
            out += line.trim_end();
            out.push('\n');
            line = " ".repeat(indent);
            length = indent;
        }
        if length > indent {
            line.push(' ');
            length += 1;
        }
        line += word;
        length += letters;
    }
    out + line.trim_end() + "\n"
}

#[cfg(test)]
mod tests {
    use super::super::example;
    use hosewright_words::{Language, Words};

    #[test]
    fn a_sheet_reads_on_a_terminal() {
        let text = example::sheet(2).to_text(60, &Words::of(Language::English));
        let expected = "\
Build sheet  7KQ4M-2XR9D-W

What it is
  Hose            EN 853 2SN DN16
  Overall length  1240 mm, +12 −8 mm

Ends
  End  Family                                                   Cut-off
  A    JIC 37 flare -10 female, 90° elbow with a drop of 55 mm  32.5 mm
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
