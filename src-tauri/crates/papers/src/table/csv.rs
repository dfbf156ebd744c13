//! CSV, in the separators and letters that spreadsheets use.

use super::{CELLS, TableError, too_many_cells};
use encoding_rs::{Encoding, UTF_8, WINDOWS_1252};

pub(super) fn read(bytes: &[u8], name: &str) -> Result<Vec<Vec<String>>, TableError> {
    let text = text(bytes);
    let broken = |cause: String| TableError::Broken { name: name.to_owned(), cause };
    if text.contains('\0') {
        return Err(broken("it is no text".to_owned()));
    }
    let mut reader = ::csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .delimiter(separator(&text))
        .from_reader(text.as_bytes());
    let mut rows: Vec<Vec<String>> = Vec::new();
    let mut cells = 0;
    for record in reader.records() {
        let record = record.map_err(|error| broken(error.to_string()))?;
        // Empty lines are skipped with the record behind them: they are put back as empty rows.
        let begins = record.position().map_or(0, |position| position.byte()) as usize;
        let rest = text.get(begins..).unwrap_or_default();
        rows.extend(rest.bytes().take_while(|byte| *byte == b'\n').map(|_| Vec::new()));
        cells += record.len().max(1);
        if cells + rows.len() > CELLS {
            return Err(too_many_cells(name));
        }
        rows.push(record.iter().map(|cell| unguarded(cell).to_owned()).collect());
    }
    Ok(rows)
}

/// The text with plain line ends: in UTF-8 or what a byte order mark says; else in the letters of western Windows, which spreadsheets
/// there still save in.
fn text(bytes: &[u8]) -> String {
    let encoding = match Encoding::for_bom(bytes) {
        Some((encoding, _)) => encoding,
        None if std::str::from_utf8(bytes).is_ok() => UTF_8,
        None => WINDOWS_1252,
    };
    encoding.decode(bytes).0.replace("\r\n", "\n")
}

/// How far down a separator is looked for: titles and notes stand above the headings.
const LOOKED: usize = 30;

/// Comma, semicolon or tab, whichever a line of the first ones has most of outside quotes: where the comma is the decimal
/// sign, spreadsheets write semicolons, and a comma between two figures counts for none.
fn separator(text: &str) -> u8 {
    let outside = unquoted(text);
    let most =
        |separator: u8| outside.lines().take(LOOKED).map(|line| count(line, separator)).max().unwrap_or(0);
    let mut best = b',';
    for separator in [b';', b'\t'] {
        if most(separator) > most(best) {
            best = separator;
        }
    }
    best
}

/// The text without what stands in quotes, line ends there too. A quote opens where a cell begins, so that a sign for inches
/// opens none.
fn unquoted(text: &str) -> String {
    let mut outside = String::new();
    let (mut before, mut inside) = ('\n', false);
    for letter in text.chars() {
        if letter == '"' && (inside || matches!(before, '\n' | ',' | ';' | '\t')) {
            inside = !inside;
        } else if !inside {
            outside.push(letter);
        }
        // Two quotes inside stand for one: the second opens again.
        before = if letter == '"' && !inside { ',' } else { letter };
    }
    outside
}

/// How often it parts cells in a line.
fn count(line: &str, separator: u8) -> usize {
    let bytes = line.as_bytes();
    let figure = |at: Option<usize>| at.and_then(|at| bytes.get(at)).is_some_and(u8::is_ascii_digit);
    let decimal = |at: usize| separator == b',' && figure(at.checked_sub(1)) && figure(Some(at + 1));
    bytes.iter().enumerate().filter(|(at, byte)| **byte == separator && !decimal(*at)).count()
}

/// Rows as CSV in UTF-8 with commas. A cell that a spreadsheet would take for a formula is guarded
/// by an apostrophe, which [`read`](super::read) takes away again.
pub fn to_csv<R: AsRef<[String]>>(rows: &[R]) -> Vec<u8> {
    let mut out = String::new();
    for row in rows {
        let cells: Vec<_> = row.as_ref().iter().map(|cell| quoted(&guarded(cell))).collect();
        // A row of one empty cell would read as no row at all.
        out += if cells == [""] { "\"\"".to_owned() } else { cells.join(",") }.as_str();
        out += "\r\n";
    }
    out.into_bytes()
}

fn quoted(cell: &str) -> String {
    let edge = cell.starts_with(char::is_whitespace) || cell.ends_with(char::is_whitespace);
    if edge || cell.contains([',', '"', '\n', '\r', ';', '\t']) {
        format!("\"{}\"", cell.replace('"', "\"\""))
    } else {
        cell.to_owned()
    }
}

/// What a spreadsheet takes for the start of a formula or drops, and the guard itself.
const GUARDED: [char; 7] = ['=', '+', '-', '@', '\t', '\r', '\''];

fn guarded(cell: &str) -> String {
    if cell.starts_with(GUARDED) { format!("'{cell}") } else { cell.to_owned() }
}

fn unguarded(cell: &str) -> &str {
    match cell.strip_prefix('\'') {
        Some(rest) if rest.starts_with(GUARDED) => rest,
        _ => cell,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::table::read;

    fn rows(text: &[u8]) -> Vec<Vec<String>> {
        read(text, "hoses.csv").unwrap()
    }

    #[test]
    fn tables_of_every_office_are_read() {
        let want = [["size", "Länge"], ["-10", "1240,5"]];
        assert_eq!(rows("size;Länge\r\n-10;1240,5\r\n".as_bytes()), want);
        assert_eq!(rows("\u{feff}size\tLänge\n-10\t1240,5".as_bytes()), want);
        assert_eq!(rows("\"size\",\"Länge\"\n-10,\"1240,5\"\n".as_bytes()), want);
        assert_eq!(rows(b"size;L\xe4nge\r\n-10;1240,5\r\n"), want);
    }

    #[test]
    fn a_title_above_the_headings_does_not_hide_what_parts_the_cells() {
        let read = rows(b"Hoses, yard 3\r\n\r\nsize;length;bar\r\n-10;1240,5;20,7\r\n");
        assert_eq!(read[3], ["-10", "1240,5", "20,7"]);
        assert_eq!(rows(b"a,b,c\n1,2,3\n")[1], ["1", "2", "3"]);
    }

    #[test]
    fn signs_for_inches_and_line_ends_in_a_cell_do_not_hide_it_either() {
        assert_eq!(rows(b"size;length\n1/2\";48\"\n")[1], ["1/2\"", "48\""]);
        assert_eq!(rows(b"\"\n\",\"a\tb\"\n"), [["\n", "a\tb"]]);
        assert_eq!(rows(b"\"1/2\"\" x\";b\n"), [["1/2\" x", "b"]]);
    }

    #[test]
    fn rows_keep_their_numbers() {
        let rows = rows(b"a,b\r\n\r\n\"1\n2\",3\r\n4,5\r\n");
        assert_eq!(rows.len(), 4);
        assert!(rows[1].is_empty());
        assert_eq!(rows[3], ["4", "5"]);
    }

    #[test]
    fn no_cell_is_taken_for_a_formula_and_none_is_changed() {
        let cells = ["=1+1", "+1", "-10", "@x", "'=x", "'quoted", "plain", "", "a,\"b\"\nc", "\tt", " s "];
        let row: Vec<String> = cells.map(str::to_owned).to_vec();
        let csv = to_csv(&[row.clone(), vec![String::new()]]);
        let text = String::from_utf8(csv.clone()).unwrap();
        assert!(text.starts_with("'=1+1,'+1,'-10,'@x,"), "{text}");
        assert_eq!(rows(&csv), [row, vec![String::new()]]);
    }

    #[test]
    fn what_is_no_table_is_refused() {
        assert!(matches!(read(b"\xd0\xcf\x11\xe0rest", "old.xls"), Err(TableError::Kind { .. })));
        assert!(matches!(read(b"a\0b", "x.bin"), Err(TableError::Broken { .. })));
        assert!(read(b"", "empty.csv").unwrap().is_empty());
    }
}
