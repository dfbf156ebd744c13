//! How a sheet is read, and its rows.

use super::cell::tidy;
use super::heading::{Headings, headings};
use super::{Column, DayOrder, Unit};
use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use thiserror::Error;
use ts_rs::TS;

/// What a person says a column is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(rename = "SheetMatched")]
pub struct Matched<C> {
    /// Its number, from 0.
    pub column: usize,
    /// What it is.
    pub is: C,
    /// Unit of its bare numbers.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unit: Option<Unit>,
    /// Which stands first in its days.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub days: Option<DayOrder>,
}

/// How a sheet is read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct How<C> {
    /// The row of the headings, from 1; found by itself without.
    pub header_row: Option<usize>,
    /// What the columns are; as the headings propose without.
    pub columns: Option<Vec<Matched<C>>>,
    /// What stands in no column and holds for every row.
    pub fixed: BTreeMap<C, String>,
    /// Rows that a person leaves out, as a spreadsheet numbers them.
    pub leave_out: Vec<usize>,
}

impl<C> Default for How<C> {
    fn default() -> Self {
        Self { header_row: None, columns: None, fixed: BTreeMap::new(), leave_out: Vec::new() }
    }
}

/// A sheet that can not be read at all.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum SheetError<C: Column> {
    /// Nothing in it.
    #[error("the sheet has no row beneath its headings")]
    Empty,
    /// Something no row can be without.
    #[error("no column is {}; match a column to it, or give one value for all rows", .0.iter().map(|column| column.name()).collect::<Vec<_>>().join(", "))]
    Missing(Vec<C>),
    /// Two columns are the same.
    #[error("two columns are said to be {}; one is expected", .0.name())]
    Twice(C),
}

/// A row that can not be taken.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct SheetRefused<C> {
    /// Its number as a spreadsheet shows it.
    pub row: usize,
    /// The column that is wrong; none where it is the row.
    pub column: Option<C>,
    /// Why, and what would be right.
    pub why: String,
}

/// A sheet whose columns are known.
#[derive(Debug)]
pub struct Sheet<'a, C> {
    /// Its headings.
    pub headings: Headings<C>,
    cells: &'a [Vec<String>],
    /// By the place of each column in [`Column::ALL`].
    columns: Vec<Option<Matched<C>>>,
    how: &'a How<C>,
}

/// A row of it that is not blank.
#[derive(Debug, Clone, Copy)]
pub struct SheetRow<'a, C> {
    /// Its number as a spreadsheet shows it.
    pub number: usize,
    sheet: &'a Sheet<'a, C>,
    cells: &'a [String],
}

/// What stands in a cell, in one line.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Cell {
    /// The text; never blank.
    pub text: String,
    /// The unit of its column.
    pub unit: Option<Unit>,
    /// Which stands first in the days of its column.
    pub days: Option<DayOrder>,
}

impl<'a, C: Column> Sheet<'a, C> {
    /// The sheet by its headings, or as a person matched them.
    ///
    /// # Errors
    /// No rows; something that no row can be without is in no column; two columns are the same.
    pub fn of(cells: &'a [Vec<String>], how: &'a How<C>, today: NaiveDate) -> Result<Self, SheetError<C>> {
        let headings = headings::<C>(cells, how.header_row, None, today);
        let matched = match &how.columns {
            Some(given) => given.clone(),
            None => headings.matched(),
        };
        let mut columns = vec![None; C::ALL.len()];
        for one in matched {
            let Some(slot) = place(one.is).and_then(|at| columns.get_mut(at)) else { continue };
            if slot.replace(one).is_some() {
                return Err(SheetError::Twice(one.is));
            }
        }
        let given = columns.iter().flatten().map(|matched| matched.is).chain(how.fixed.keys().copied());
        let missing = C::missing(&given.collect::<Vec<_>>());
        if !missing.is_empty() {
            return Err(SheetError::Missing(missing));
        }
        if headings.rows == 0 {
            return Err(SheetError::Empty);
        }
        Ok(Self { headings, cells, columns, how })
    }

    /// The rows that are neither blank nor left out.
    pub fn rows(&self) -> impl Iterator<Item = SheetRow<'_, C>> {
        let filled =
            self.cells.iter().enumerate().skip(self.headings.header_row).filter(|(_, cells)| !blank(cells));
        filled
            .map(|(at, cells)| SheetRow { number: at + 1, sheet: self, cells })
            .filter(|row| !self.how.leave_out.contains(&row.number))
    }

    /// The rows that a person leaves out and that are not blank.
    pub fn left_out(&self) -> Vec<usize> {
        let filled = |row: &usize| {
            *row > self.headings.header_row
                && row.checked_sub(1).and_then(|at| self.cells.get(at)).is_some_and(|cells| !blank(cells))
        };
        let mut rows: Vec<usize> = self.how.leave_out.iter().copied().filter(filled).collect();
        rows.sort_unstable();
        rows.dedup();
        rows
    }

    /// The columns that are read.
    pub fn columns(&self) -> impl Iterator<Item = &Matched<C>> {
        self.columns.iter().flatten()
    }

    /// The heading over a column, where one is that.
    pub fn heading(&self, column: C) -> Option<&str> {
        let matched = self.columns.get(place(column)?)?.as_ref()?;
        let row = self.cells.get(self.headings.header_row.checked_sub(1)?)?;
        row.get(matched.column).map(String::as_str)
    }
}

impl<C: Column> SheetRow<'_, C> {
    /// What stands in its cell of that column, or is said for all rows; none where nothing does.
    pub fn get(&self, column: C) -> Option<Cell> {
        let matched = self.sheet.columns.get(place(column)?)?.as_ref();
        let cell = matched.and_then(|matched| self.cells.get(matched.column)).map(|cell| tidy(cell));
        let fixed = || self.sheet.how.fixed.get(&column).map(|value| tidy(value));
        let text = cell.filter(|cell| !cell.is_empty()).or_else(fixed)?;
        (!text.is_empty()).then(|| Cell {
            text,
            unit: matched.and_then(|matched| matched.unit),
            days: matched.and_then(|matched| matched.days),
        })
    }

    /// Whether its sheet has that column, or one value of it for all rows.
    pub fn has(&self, column: C) -> bool {
        let matched = place(column).is_some_and(|at| self.sheet.columns.get(at).is_some_and(Option::is_some));
        matched || self.sheet.how.fixed.contains_key(&column)
    }

    /// Its text alone.
    pub fn text(&self, column: C) -> Option<String> {
        self.get(column).map(|cell| cell.text)
    }
}

fn place<C: Column>(column: C) -> Option<usize> {
    C::ALL.iter().position(|one| *one == column)
}

fn blank(cells: &[String]) -> bool {
    cells.iter().all(|cell| cell.chars().all(|c| c.is_whitespace() || c == '\u{a0}' || c == '\u{202f}'))
}
