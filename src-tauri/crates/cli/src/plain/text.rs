//! Lines of at most 80 columns.

/// Columns of a terminal.
pub const COLUMNS: usize = 80;

/// The least room that a last column is wrapped in.
const LEAST: usize = 24;

/// A paragraph broken at spaces, each line after the first set in so far.
pub fn wrapped(text: &str, indent: usize) -> String {
    hanging("", text, indent)
}

/// A paragraph behind a lead, each line after the first set in by the lead's width.
pub fn behind(lead: &str, text: &str) -> String {
    hanging(lead, text, lead.chars().count())
}

/// Text whose lines are kept; one that is too wide is broken at spaces and set in, beneath its second column
/// where it has two.
pub fn wrapped_lines(text: &str) -> String {
    let broken = text.lines().map(|line| {
        if line.chars().count() <= COLUMNS {
            return line.to_owned();
        }
        let indent = line.len() - line.trim_start().len();
        match line.trim_start().find("  ") {
            Some(gap) => {
                let rest = line[indent + gap..].trim_start();
                let start = &line[..line.len() - rest.len()];
                hanging(start, rest, start.chars().count())
            }
            None => set_in(line, indent, 2),
        }
    });
    broken.collect::<Vec<_>>().join("\n")
}

/// A paragraph set in by `first`, its further lines by `first` and `more`.
pub fn set_in(text: &str, first: usize, more: usize) -> String {
    hanging(&" ".repeat(first), text, first + more)
}

/// A paragraph behind a start that is kept as it is, further lines set in.
fn hanging(start: &str, text: &str, indent: usize) -> String {
    let mut out = start.to_owned();
    let mut column = start.chars().count();
    let mut fresh = true;
    for word in text.split_whitespace() {
        let length = word.chars().count();
        if !fresh && column + 1 + length > COLUMNS {
            out.push('\n');
            out.push_str(&" ".repeat(indent));
            column = indent;
        } else if !fresh {
            out.push(' ');
            column += 1;
        }
        out.push_str(word);
        column += length;
        fresh = false;
    }
    out
}

/// Rows of cells as columns, two spaces apart; the last cell of a row is wrapped beneath itself, or where too
/// little room is left for that, on lines of its own.
pub fn columns(rows: &[Vec<String>]) -> String {
    let widths: Vec<usize> = (0..rows.iter().map(Vec::len).max().unwrap_or(0))
        .map(|at| {
            let beside = rows.iter().filter(|row| at + 1 < row.len());
            beside.filter_map(|row| row.get(at)).map(|cell| cell.chars().count()).max().unwrap_or(0)
        })
        .collect();
    let mut out = String::new();
    for row in rows {
        let Some((last, before)) = row.split_last() else { continue };
        let mut start = String::new();
        for (cell, width) in before.iter().zip(&widths) {
            start.push_str(cell);
            start.push_str(&" ".repeat(width.saturating_sub(cell.chars().count()) + 2));
        }
        let at = start.chars().count();
        if at + LEAST > COLUMNS && at + last.chars().count() > COLUMNS {
            out.push_str(start.trim_end());
            out.push('\n');
            out.push_str(&set_in(last, 4, 0));
        } else {
            out.push_str(hanging(&start, last, at).trim_end());
        }
        out.push('\n');
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_that_fits_is_kept_and_one_with_two_columns_is_broken_in_its_second() {
        assert_eq!(wrapped_lines("  find   Readings\n\nend"), "  find   Readings\n\nend");
        let wide = format!("  find   {}", "word ".repeat(20).trim_end());
        let broken = wrapped_lines(&wide);
        let lines: Vec<&str> = broken.lines().collect();
        assert_eq!(lines.len(), 2, "{broken}");
        assert!(lines[1].starts_with("         word"), "{broken}");
    }

    #[test]
    fn no_line_is_wider_than_a_terminal() {
        let text = "word ".repeat(60);
        assert!(wrapped(&text, 4).lines().all(|line| line.chars().count() <= COLUMNS));
        assert_eq!(wrapped(&text, 4).split_whitespace().count(), 60);
        let behind = behind("  end A: ", &text);
        assert!(behind.lines().all(|line| line.chars().count() <= COLUMNS), "{behind}");
        assert!(behind.lines().skip(1).all(|line| line.starts_with("         word")), "{behind}");
    }
}
