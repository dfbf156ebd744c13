//! A supplier's sheet: what its columns seem to be, and taking it in.

use crate::{Answer, Api, ApiError};
use hosewright_core::sheet::{Column as _, Headings, How, Matched, SheetError, SheetRefused, headings};
use hosewright_core::supplier::{Column, SheetRepeated, SupplierRow, read};
use hosewright_papers::table;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use ts_rs::TS;

impl<C: hosewright_core::sheet::Column> From<SheetError<C>> for ApiError {
    fn from(error: SheetError<C>) -> Self {
        ApiError::input("columns", &error)
    }
}

/// A sheet to be looked at.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct SupplierMatchQuestion {
    /// The file's name, for messages.
    pub name: String,
    /// The row of its headings, from 1; found by itself without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub header_row: Option<usize>,
    /// What a person says they are, to see what is missing and asked then.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub columns: Option<Vec<Matched<Column>>>,
}

/// What the columns of a sheet seem to be: a proposal.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct SupplierMatches {
    /// The headings.
    #[serde(flatten)]
    #[ts(flatten)]
    pub headings: Headings<Column>,
    /// Everything that a column can be.
    pub choices: Vec<Column>,
}

/// What the columns of a sheet seem to be.
///
/// # Errors
/// The file is no table.
pub fn matches(
    api: &mut Api,
    asked: SupplierMatchQuestion,
    file: &[u8],
) -> Result<Answer<SupplierMatches>, ApiError> {
    let cells = cells(&asked.name, file)?;
    let headings = headings(&cells, asked.header_row, asked.columns.as_deref(), api.today());
    Ok(api.answer(SupplierMatches { headings, choices: Column::ALL.to_vec() }))
}

/// The cells of a file that should be a table.
///
/// # Errors
/// It is none.
pub(in crate::commands) fn cells(name: &str, file: &[u8]) -> Result<Vec<Vec<String>>, ApiError> {
    table::read(file, name).map_err(|error| ApiError::input(name, error))
}

/// A sheet to be taken in.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct SupplierImport {
    /// The file's name: the rows say that they are from it.
    pub name: String,
    /// Say what would be taken and refused; change nothing.
    #[serde(default)]
    pub dry_run: bool,
    /// The row of its headings, from 1; found by itself without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub header_row: Option<usize>,
    /// What the columns are; as their headings propose without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub columns: Option<Vec<Matched<Column>>>,
    /// What stands in no column and holds for every row, such as the supplier.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    #[ts(type = "Partial<Record<SupplierColumn, string>>")]
    pub fixed: BTreeMap<Column, String>,
    /// Rows that are left out, as a spreadsheet numbers them.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub leave_out: Vec<usize>,
}

/// What was, or would be, taken of a sheet. Every row that is not blank is in one of these.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct SupplierImported {
    /// Nothing was changed.
    pub dry_run: bool,
    /// Rows that are not blank.
    pub rows: usize,
    /// Rows that are taken.
    pub taken: usize,
    /// Of these, rows for what there was none for.
    pub new: usize,
    /// Rows that take the place of an earlier edition's.
    pub changed: usize,
    /// Rows that were there already.
    pub same: usize,
    /// Rows that say just what an earlier one of the sheet says.
    pub repeated: Vec<SheetRepeated>,
    /// Rows that the person left out.
    pub left_out: Vec<usize>,
    /// Rows that can not be taken, with the reason. Unless this is a dry run there are none.
    pub refused: Vec<SheetRefused<Column>>,
}

/// Refused rows that a message names; the dry run lists them all.
const NAMED: usize = 5;

/// Takes in a supplier's sheet from CSV or XLSX: all rows that are not left out, or none.
///
/// # Errors
/// The file is no table; what no row can be without is in no column; a row that can not be taken.
pub fn import(
    api: &mut Api,
    asked: SupplierImport,
    file: &[u8],
) -> Result<Answer<SupplierImported>, ApiError> {
    let cells = cells(&asked.name, file)?;
    let how = How {
        header_row: asked.header_row,
        columns: asked.columns,
        fixed: asked.fixed,
        leave_out: asked.leave_out,
    };
    let read = read(api.catalogue, &cells, &asked.name, &how, api.today())?;
    if !read.refused.is_empty() && !asked.dry_run {
        return Err(refusal(&asked.name, &read.refused));
    }
    let rows: Vec<SupplierRow> = read.rows.iter().map(|(_, row)| row.clone()).collect();
    let now = api.world.now();
    let counts = api.register()?.keep_supplier_rows(&rows, now, asked.dry_run)?;
    Ok(api.answer(SupplierImported {
        dry_run: asked.dry_run,
        rows: rows.len() + read.repeated.len() + read.left_out.len() + read.refused.len(),
        taken: rows.len(),
        new: counts.new,
        changed: counts.changed,
        same: counts.same,
        repeated: read.repeated,
        left_out: read.left_out,
        refused: read.refused,
    }))
}

fn refusal(name: &str, refused: &[SheetRefused<Column>]) -> ApiError {
    let said = |row: &SheetRefused<Column>| {
        let column = row.column.map_or_else(String::new, |column| format!("{}: ", column.name()));
        format!("\nrow {}: {column}{}", row.row, row.why)
    };
    let first: Vec<String> = refused.iter().take(NAMED).map(said).collect();
    let more = match refused.len().saturating_sub(NAMED) {
        0 => String::new(),
        more => format!("\nand {more} more, which a dry run lists"),
    };
    ApiError::input(
        name,
        format!("nothing was taken in; mend these rows or leave them out{}{more}", first.concat()),
    )
}
