//! Reading a table: comma separated text with one header line -> rows of typed cells. A wrong cell
//! is an error that names table, line, column and what would be right.

use super::{Band, Basis, Provenance, Table};
use crate::quantity::{Bar, Degrees, Dn, Millimetres};
use serde::Deserialize;
use serde::de::value::{Error as NameError, StrDeserializer};
use std::collections::HashMap;
use std::str::FromStr;
use thiserror::Error;

/// Why a table could not be read.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum CatalogueError {
    /// The header is not that of the table.
    #[error("{}: the columns are \"{found}\"; they must be \"{right}\"", .table.file())]
    Columns {
        /// The table's file.
        table: Table,
        /// The header as found.
        found: String,
        /// The header that is right.
        right: String,
    },
    /// A line has more or fewer cells than the header, or is no text.
    #[error("{}: {reason}", .table.file())]
    Line {
        /// The table's file.
        table: Table,
        /// What is wrong and where.
        reason: String,
    },
    /// A cell holds what it can not hold.
    #[error("{} line {line}, {column}: \"{found}\" is wrong; right is {right}", .table.file())]
    Cell {
        /// The table's file.
        table: Table,
        /// The line of the file, the header being line 1.
        line: u64,
        /// The column's name.
        column: String,
        /// What stands there.
        found: String,
        /// What would be right.
        right: String,
    },
    /// Two rows say which row they are in the same words.
    #[error("{}: \"{key}\" stands in two rows; keep one", .table.file())]
    Twice {
        /// The table's file.
        table: Table,
        /// What both rows are called.
        key: String,
    },
}

/// One line of a table.
pub(super) struct Row<'t> {
    table: Table,
    line: u64,
    columns: &'t [&'static str],
    cells: &'t csv::StringRecord,
    sources: &'t HashMap<String, String>,
}

/// Reads a table: its header must be `columns`, each line becomes what `make` makes of it.
pub(super) fn read<T>(
    table: Table,
    text: &str,
    columns: &'static str,
    sources: &HashMap<String, String>,
    make: impl Fn(&Row<'_>) -> Result<T, CatalogueError>,
) -> Result<Vec<T>, CatalogueError> {
    let line_error = |error: csv::Error| CatalogueError::Line { table, reason: error.to_string() };
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let header = reader.headers().map_err(line_error)?;
    let found = header.iter().collect::<Vec<_>>().join(",");
    if found != columns {
        return Err(CatalogueError::Columns { table, found, right: columns.to_owned() });
    }
    let columns: Vec<_> = columns.split(',').collect();
    let mut rows = Vec::new();
    for record in reader.records() {
        let cells = record.map_err(line_error)?;
        let line = cells.position().map_or(0, csv::Position::line);
        rows.push(make(&Row { table, line, columns: &columns, cells: &cells, sources })?);
    }
    Ok(rows)
}

impl Row<'_> {
    /// The error that this cell is wrong.
    pub fn wrong(&self, column: &str, right: impl Into<String>) -> CatalogueError {
        CatalogueError::Cell {
            table: self.table,
            line: self.line,
            column: column.to_owned(),
            found: self.cell(column).unwrap_or_default().to_owned(),
            right: right.into(),
        }
    }

    fn cell(&self, column: &str) -> Option<&str> {
        let place = self.columns.iter().position(|name| *name == column)?;
        self.cells.get(place)
    }

    /// A cell that may be blank.
    pub fn optional(&self, column: &str) -> Option<&str> {
        self.cell(column).map(str::trim).filter(|text| !text.is_empty())
    }

    /// A cell that must hold something.
    pub fn text(&self, column: &str) -> Result<String, CatalogueError> {
        self.optional(column).map(str::to_owned).ok_or_else(|| self.wrong(column, "a text"))
    }

    /// A text that may be blank; blank is the empty text.
    pub fn note(&self, column: &str) -> String {
        self.optional(column).unwrap_or_default().to_owned()
    }

    /// A text that may be blank.
    pub fn optional_text(&self, column: &str) -> Option<String> {
        self.optional(column).map(str::to_owned)
    }

    /// A value that reads itself from text; blank is none.
    pub fn optional_value<T: FromStr>(&self, column: &str, right: &str) -> Result<Option<T>, CatalogueError> {
        self.optional(column).map(|text| text.parse().map_err(|_| self.wrong(column, right))).transpose()
    }

    /// A value that reads itself from text.
    pub fn value<T: FromStr>(&self, column: &str, right: &str) -> Result<T, CatalogueError> {
        self.optional_value(column, right)?.ok_or_else(|| self.wrong(column, right))
    }

    /// A finite number; blank is none.
    pub fn optional_number(&self, column: &str) -> Result<Option<f64>, CatalogueError> {
        const RIGHT: &str = "a number such as 12.7";
        match self.optional_value::<f64>(column, RIGHT)? {
            Some(number) if !number.is_finite() => Err(self.wrong(column, RIGHT)),
            number => Ok(number),
        }
    }

    /// A finite number.
    pub fn number(&self, column: &str) -> Result<f64, CatalogueError> {
        self.optional_number(column)?.ok_or_else(|| self.wrong(column, "a number such as 12.7"))
    }

    /// A number above nought, or blank.
    fn positive(&self, column: &str) -> Result<Option<f64>, CatalogueError> {
        match self.optional_number(column)? {
            Some(number) if number <= 0.0 => Err(self.wrong(column, "a number above 0")),
            number => Ok(number),
        }
    }

    /// A length, or blank.
    pub fn mm(&self, column: &str) -> Result<Option<Millimetres>, CatalogueError> {
        Ok(self.positive(column)?.map(Millimetres))
    }

    /// A pressure, or blank: not known, never unlimited.
    pub fn bar(&self, column: &str) -> Result<Option<Bar>, CatalogueError> {
        Ok(self.positive(column)?.map(Bar))
    }

    /// An angle, or blank.
    pub fn degrees(&self, column: &str) -> Result<Option<Degrees>, CatalogueError> {
        Ok(self.positive(column)?.map(Degrees))
    }

    /// A hose size, or blank.
    pub fn dn(&self, column: &str) -> Result<Option<Dn>, CatalogueError> {
        self.optional_value(column, "a nominal diameter such as 12")
    }

    /// Both limits, or neither.
    pub fn band(&self, min: &str, max: &str) -> Result<Option<Band>, CatalogueError> {
        match (self.positive(min)?, self.positive(max)?) {
            (None, None) => Ok(None),
            (Some(low), Some(high)) if low <= high => Ok(Some(Band { min: low, max: high })),
            (Some(low), Some(_)) => Err(self.wrong(max, format!("{low} or more, the limit in {min}"))),
            (Some(_), None) => Err(self.wrong(max, format!("a number, as {min} has one"))),
            (None, Some(_)) => Err(self.wrong(min, format!("a number, as {max} has one"))),
        }
    }

    /// `yes` or `no`.
    pub fn yes(&self, column: &str) -> Result<bool, CatalogueError> {
        match self.optional(column) {
            Some("yes") => Ok(true),
            Some("no") => Ok(false),
            _ => Err(self.wrong(column, "yes or no")),
        }
    }

    /// One of a set of names, or blank.
    pub fn optional_name<'de, T: Deserialize<'de>>(
        &'de self,
        column: &str,
    ) -> Result<Option<T>, CatalogueError> {
        self.optional(column).map(|text| self.named(column, text)).transpose()
    }

    /// One of a set of names.
    pub fn name<'de, T: Deserialize<'de>>(&'de self, column: &str) -> Result<T, CatalogueError> {
        self.named(column, self.optional(column).unwrap_or_default())
    }

    /// Names of a set, parted by spaces.
    pub fn names<'de, T: Deserialize<'de>>(&'de self, column: &str) -> Result<Vec<T>, CatalogueError> {
        self.note_words(column).map(|text| self.named(column, text)).collect()
    }

    /// Words, parted by spaces.
    pub fn words(&self, column: &str) -> Vec<String> {
        self.note_words(column).map(str::to_owned).collect()
    }

    fn note_words(&self, column: &str) -> impl Iterator<Item = &str> {
        self.optional(column).unwrap_or_default().split_whitespace()
    }

    fn named<'de, T: Deserialize<'de>>(&self, column: &str, text: &'de str) -> Result<T, CatalogueError> {
        T::deserialize(StrDeserializer::<NameError>::new(text)).map_err(|error| {
            let said = error.to_string();
            let right = said.split_once("expected ").map_or(said.as_str(), |(_, right)| right);
            self.wrong(column, right)
        })
    }

    /// How sure a column is.
    pub fn basis(&self, column: &str) -> Result<Basis, CatalogueError> {
        self.name(column)
    }

    /// The row's `source` and `basis`. Labels of the table of sources become what they stand for.
    pub fn provenance(&self) -> Result<Provenance, CatalogueError> {
        let text = self.text("source")?;
        let source = text
            .split(';')
            .map(str::trim)
            .map(|part| self.sources.get(part).map_or(part, String::as_str))
            .collect::<Vec<_>>()
            .join("; ");
        Ok(Provenance { source, basis: self.basis("basis")? })
    }
}

/// Holds that no two rows have the same key.
pub(super) fn unique<T>(table: Table, rows: &[T], key: impl Fn(&T) -> String) -> Result<(), CatalogueError> {
    let mut seen = std::collections::HashSet::new();
    for row in rows {
        let key = key(row);
        if !seen.insert(key.clone()) {
            return Err(CatalogueError::Twice { table, key });
        }
    }
    Ok(())
}
