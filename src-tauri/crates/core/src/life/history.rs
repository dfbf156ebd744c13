//! A history as a spreadsheet writes it.

use super::record::{Record, RecordError};
use csv::{ErrorKind, Position, StringRecord};
use thiserror::Error;

/// Why a history can not be read. Rows are lines of the file: the header is row 1.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum HistoryError {
    /// A column is not there.
    #[error(
        "there is no column {column}; the first row must name the columns time, failed and, where known, entered and after"
    )]
    NoColumn {
        /// The column's name.
        column: &'static str,
    },
    /// Two columns of one name.
    #[error("there are two columns {column}; leave one")]
    TwoColumns {
        /// The column's name.
        column: &'static str,
    },
    /// More or fewer cells than the header has.
    #[error(
        "row {row} has {cells} cells and the header {columns}; where the comma is decimal, part the cells by semicolons"
    )]
    Cells {
        /// Row in the file.
        row: u64,
        /// Cells in it.
        cells: u64,
        /// Columns of the header.
        columns: u64,
    },
    /// A cell that says something else than its column.
    #[error("row {row}, column {column}: \"{text}\" is no {expected}")]
    Cell {
        /// Row in the file.
        row: u64,
        /// The column's name.
        column: &'static str,
        /// What stands there.
        text: String,
        /// What would be right.
        expected: &'static str,
    },
    /// Numbers that can not be together.
    #[error("row {row}: {why}")]
    Record {
        /// Row in the file.
        row: u64,
        /// What is wrong with them.
        why: RecordError,
    },
    /// Text that is no CSV.
    #[error("the table can not be read: {0}; save it as CSV")]
    NoTable(String),
}

impl HistoryError {
    fn of(error: &csv::Error, text: &str) -> Self {
        match error.kind() {
            ErrorKind::UnequalLengths { pos, expected_len, len } => {
                Self::Cells { row: row_at(text, pos.as_ref()), cells: *len, columns: *expected_len }
            }
            _ => Self::NoTable(error.to_string()),
        }
    }
}

/// The line of the text at which a record stands. The reader's own count goes wrong after blank lines
/// and after line ends of two characters.
fn row_at(text: &str, position: Option<&Position>) -> u64 {
    let byte = position.and_then(|position| usize::try_from(position.byte()).ok()).unwrap_or(0);
    let (before, after) = text.as_bytes().split_at_checked(byte).unwrap_or((text.as_bytes(), &[]));
    let blank = after.iter().take_while(|byte| matches!(byte, b'\r' | b'\n'));
    let mut ends = 0;
    let mut last = 0;
    for &byte in before.iter().chain(blank) {
        if byte == b'\r' || (byte == b'\n' && last != b'\r') {
            ends += 1;
        }
        last = byte;
    }
    ends + 1
}

/// Reads a history: columns `time`, `failed` (1 failed, 0 still in service) and, optionally, `entered`
/// (empty: 0) and `after` (the age at which one that was found failed was last seen whole; empty: `time` is the age at which it
/// failed); others are ignored. Cells are parted by commas or, as spreadsheets write where the
/// comma is decimal, by semicolons. Only there may numbers have a decimal comma: elsewhere
/// `1,250` might as well be a thousand.
///
/// # Errors
/// Says which row and column can not be read, and what would be right.
pub fn read_csv(text: &str) -> Result<Vec<Record>, HistoryError> {
    let text = text.trim_start_matches('\u{feff}');
    let header = text.lines().find(|line| !line.trim().is_empty()).unwrap_or_default();
    let decimal_comma = header.matches(';').count() > header.matches(',').count();
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(if decimal_comma { b';' } else { b',' })
        .trim(csv::Trim::All)
        .from_reader(text.as_bytes());
    let no_table = |error: csv::Error| HistoryError::of(&error, text);
    let columns = Columns::of(reader.headers().map_err(no_table)?, decimal_comma)?;
    reader.records().map(|cells| columns.record(&cells.map_err(no_table)?, text)).collect()
}

/// Where the columns stand and how their numbers are written.
struct Columns {
    time: usize,
    failed: usize,
    entered: Option<usize>,
    after: Option<usize>,
    decimal_comma: bool,
}

impl Columns {
    fn of(header: &StringRecord, decimal_comma: bool) -> Result<Self, HistoryError> {
        let find = |column: &'static str| {
            let mut named = (0..).zip(header).filter(|(_, cell)| cell.eq_ignore_ascii_case(column));
            match (named.next(), named.next()) {
                (_, Some(_)) => Err(HistoryError::TwoColumns { column }),
                (first, None) => Ok(first.map(|(index, _)| index)),
            }
        };
        Ok(Self {
            time: find("time")?.ok_or(HistoryError::NoColumn { column: "time" })?,
            failed: find("failed")?.ok_or(HistoryError::NoColumn { column: "failed" })?,
            entered: find("entered")?,
            after: find("after")?,
            decimal_comma,
        })
    }

    fn record(&self, cells: &StringRecord, text: &str) -> Result<Record, HistoryError> {
        let row = || row_at(text, cells.position());
        let cell = |index: usize| cells.get(index).unwrap_or_default();
        let wrong = |column, index, expected| HistoryError::Cell {
            row: row(),
            column,
            text: cell(index).to_owned(),
            expected,
        };
        let age = |column, index| {
            self.number(cell(index)).ok_or_else(|| wrong(column, index, "number; write for example 1250.5"))
        };
        let failed = match cell(self.failed) {
            "1" => true,
            "0" => false,
            _ => return Err(wrong("failed", self.failed, "1 (failed) or 0 (still in service)")),
        };
        let given = |column, index: Option<usize>| match index {
            Some(index) if !cell(index).is_empty() => age(column, index).map(Some),
            _ => Ok(None),
        };
        let (time, entered) = (age("time", self.time)?, given("entered", self.entered)?.unwrap_or(0.0));
        let record = match given("after", self.after)? {
            // Of one still in service nobody asks when it was last seen whole.
            Some(after) if failed => Record::between(after, time, entered),
            _ => Record::new(time, failed, entered),
        };
        record.map_err(|why| HistoryError::Record { row: row(), why })
    }

    fn number(&self, cell: &str) -> Option<f64> {
        let number = if self.decimal_comma { cell.replace(',', ".").parse() } else { cell.parse() };
        number.ok().filter(|number: &f64| number.is_finite())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use rstest::rstest;

    fn record(time: f64, failed: bool, entered: f64) -> Record {
        Record::new(time, failed, entered).unwrap()
    }

    #[rstest]
    #[case("time,failed\n1250.5,1\n800,0\n")]
    #[case("\u{feff}time;failed\r\n1250,5;1\r\n800;0\r\n")]
    #[case("place,FAILED,note, Time\nboom,1,\"a, b\",1250.5\nboom,0,,800")]
    fn a_spreadsheets_table_is_read(#[case] text: &str) {
        assert_eq!(read_csv(text).unwrap(), [record(1250.5, true, 0.0), record(800.0, false, 0.0)]);
    }

    #[test]
    fn an_age_at_entry_is_read_and_may_be_empty() {
        let read = read_csv("time,failed,entered\n900,1,300\n800,0,\n").unwrap();
        assert_eq!(read, [record(900.0, true, 300.0), record(800.0, false, 0.0)]);
    }

    #[test]
    fn a_last_look_before_the_failure_is_read_and_may_be_empty() {
        let read = read_csv("time,failed,entered,after\n900,1,300,600\n800,1,,\n700,0,,500\n").unwrap();
        let found = Record::between(600.0, 900.0, 300.0).unwrap();
        assert_eq!(read, [found, record(800.0, true, 0.0), record(700.0, false, 0.0)]);
    }

    #[rstest]
    #[case("time,failed,after\n100,1,200\n", "row 2: after is 200")]
    #[case("", "there is no column time")]
    #[case("time,broken\n1,1\n", "there is no column failed")]
    #[case("time,failed,time\n1,1,2\n", "there are two columns time")]
    #[case("time,failed\n100,1\nlong,0\n", "row 3, column time: \"long\" is no number")]
    #[case("time,failed\n100,1\n\n\nlong,0\n", "row 5, column time")]
    #[case("\ntime,failed\r\n\r\n100,1\r\r100,1,1", "row 6 has 3 cells and the header 2")]
    #[case("time,failed,note\n100,1,\"two\nlines\"\nlong,0,\n", "row 4, column time")]
    #[case("time,failed\r\n100,1\r\n100,yes\r\n", "row 3, column failed: \"yes\" is no 1 (failed)")]
    #[case("time,failed\n12,5,1\n", "row 2 has 3 cells and the header 2")]
    #[case("time,failed\n\"1,250\",1\n", "row 2, column time: \"1,250\"")]
    #[case("time,failed\nNaN,1\n", "row 2, column time")]
    #[case("time,failed\n,1\n", "row 2, column time: \"\"")]
    #[case("time,failed\n-3,1\n", "row 2: time is -3")]
    #[case("time,failed,entered\n100,1,200\n", "row 2: time 100 is not after entered 200")]
    fn a_wrong_row_is_named_with_its_reason(#[case] text: &str, #[case] message: &str) {
        let error = read_csv(text).unwrap_err().to_string();
        assert!(error.starts_with(message), "{error}");
    }

    proptest! {
        #[test]
        fn no_text_makes_it_panic(text in "(time|failed|entered|[0-9.,;\"\r\n -]|\\PC){0,60}") {
            let _ = read_csv(&text);
            let _ = read_csv(&format!("time,failed,entered\n{text}"));
        }
    }
}
