//! Lines of at most 80 columns.

/// Columns of a terminal.
pub const COLUMNS: usize = 80;

/// A paragraph broken at spaces, each line after the first set in so far.
pub fn wrapped(text: &str, indent: usize) -> String {
    broken(text, 0, indent)
}

/// A paragraph behind a lead, each line after the first set in by the lead's width.
pub fn behind(lead: &str, text: &str) -> String {
    let width = lead.chars().count();
    format!("{lead}{}", broken(text, width, width))
}

/// A paragraph whose first line begins at `start`, and every other at `indent`.
fn broken(text: &str, start: usize, indent: usize) -> String {
    let mut out = String::new();
    let mut column = start;
    for word in text.split_whitespace() {
        let length = word.chars().count();
        if out.is_empty() {
            // The first word stands where the line begins.
        } else if column + 1 + length > COLUMNS {
            out.push('\n');
            out.push_str(&" ".repeat(indent));
            column = indent;
        } else {
            out.push(' ');
            column += 1;
        }
        out.push_str(word);
        column += length;
    }
    out
}

/// Rows of cells as columns, two spaces apart; the last cell of a row is wrapped.
pub fn columns(rows: &[Vec<String>]) -> String {
    let widths: Vec<usize> = (0..rows.iter().map(Vec::len).max().unwrap_or(0))
        .map(|at| {
            rows.iter().filter_map(|row| row.get(at)).map(|cell| cell.chars().count()).max().unwrap_or(0)
        })
        .collect();
    let mut out = String::new();
    for row in rows {
        let mut line = String::new();
        for (cell, width) in row.iter().zip(&widths) {
            line.push_str(cell);
            line.push_str(&" ".repeat(width.saturating_sub(cell.chars().count()) + 2));
        }
        out.push_str(line.trim_end());
        out.push('\n');
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

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
