//! A sheet of cells -> rows of a supplier's table.

use super::cell::{self, CellError};
use super::row::{RowError, SupplierRow};
use super::{Column, LengthUnit, headings};
use crate::catalogue::{Catalogue, UnknownName};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use thiserror::Error;
use ts_rs::TS;

/// What a person says a column is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Matched {
    /// Its number, from 0.
    pub column: usize,
    /// What it is.
    pub is: Column,
    /// Unit of its bare numbers; millimetres without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unit: Option<LengthUnit>,
}

/// How a sheet is read.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Sheeted {
    /// The file, as its rows name it.
    pub name: String,
    /// The row of the headings, from 1; found by itself without.
    pub header_row: Option<usize>,
    /// What the columns are; as the headings propose without.
    pub columns: Option<Vec<Matched>>,
    /// What stands in no column and holds for every row.
    pub fixed: BTreeMap<Column, String>,
    /// Rows that a person leaves out, as a spreadsheet numbers them.
    pub leave_out: Vec<usize>,
}

/// A sheet that can not be read at all.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum SheetError {
    /// Nothing in it.
    #[error("the sheet has no row beneath its headings")]
    Empty,
    /// Something no row can be without.
    #[error("no column is {}; match a column to it, or give one value for all rows", .0.iter().map(|column| column.name()).collect::<Vec<_>>().join(", "))]
    Missing(Vec<Column>),
    /// Two columns are the same.
    #[error("two columns are said to be {}; one is expected", .0.name())]
    Twice(Column),
}

/// What a sheet holds: every row that is not blank is in one of these.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct SheetRead {
    /// Rows to be taken, with their number.
    pub rows: Vec<(usize, SupplierRow)>,
    /// Rows that say just what an earlier one says.
    pub repeated: Vec<SheetRepeated>,
    /// Rows that the person leaves out.
    pub left_out: Vec<usize>,
    /// Rows that can not be taken.
    pub refused: Vec<SheetRefused>,
}

/// A row that can not be taken.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct SheetRefused {
    /// Its number as a spreadsheet shows it.
    pub row: usize,
    /// The column that is wrong; none where it is the row.
    pub column: Option<Column>,
    /// Why, and what would be right.
    pub why: String,
}

/// A row that says just what an earlier one says.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct SheetRepeated {
    /// Its number.
    pub row: usize,
    /// The number of the earlier one.
    pub of: usize,
}

/// Why a row can not be taken.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
enum Wrong {
    #[error(
        "it is blank; it is needed. Where cells were merged, save the sheet as .xlsx or write it in every row"
    )]
    Blank,
    #[error(transparent)]
    Cell(#[from] CellError),
    #[error("{0}")]
    Name(#[from] UnknownName),
    #[error("{0}")]
    Row(#[from] RowError),
    #[error("other lengths of this sheet are in inches and this column has no unit; match it with mm or in")]
    NoUnit,
    #[error("two tolerances stand in this row; leave one out")]
    TwoTolerances,
    #[error("the end's size has no family beside it; match its column or give one value for all rows")]
    SizeAlone,
    #[error("row {0} says otherwise for the same hose and end; leave one of them out")]
    Contradicts(usize),
}

/// Reads a sheet. Every row that is not blank is taken, repeated, left out or refused with its reason.
///
/// # Errors
/// No rows; something that no row can be without is in no column.
pub fn read(catalogue: &Catalogue, cells: &[Vec<String>], how: &Sheeted) -> Result<SheetRead, SheetError> {
    let found = headings(cells, how.header_row);
    let columns = match &how.columns {
        Some(given) => given.clone(),
        None => {
            let meant = found.columns.iter().filter_map(|column| Some((column, column.is?)));
            meant.map(|(found, is)| Matched { column: found.column, is, unit: found.unit }).collect()
        }
    };
    sound(&columns, how)?;
    if found.rows == 0 {
        return Err(SheetError::Empty);
    }
    let dashes = columns.iter().any(|matched| {
        let heading = cells.get(found.header_row.saturating_sub(1)).and_then(|row| row.get(matched.column));
        matched.is == Column::Dn && heading.is_some_and(|heading| heading.to_lowercase().contains("dash"))
    });
    let inches = columns.iter().any(|matched| matched.unit == Some(LengthUnit::In));
    let mut read = SheetRead::default();
    for (at, row) in cells.iter().enumerate().skip(found.header_row) {
        let number = at + 1;
        if row.iter().all(|cell| cell::tidy(cell).is_empty()) {
            continue;
        }
        if how.leave_out.contains(&number) {
            read.left_out.push(number);
            continue;
        }
        let reader = Reader { catalogue, columns: &columns, fixed: &how.fixed, cells: row, dashes, inches };
        match reader.row(&format!("{}, row {number}", how.name)) {
            Ok(row) => read.take(number, row),
            Err((column, wrong)) => {
                read.refused.push(SheetRefused { row: number, column, why: wrong.to_string() });
            }
        }
    }
    Ok(read)
}

fn sound(columns: &[Matched], how: &Sheeted) -> Result<(), SheetError> {
    let count = |wanted: Column| columns.iter().filter(|matched| matched.is == wanted).count();
    if let Some(twice) = Column::ALL.into_iter().find(|column| count(*column) > 1) {
        return Err(SheetError::Twice(twice));
    }
    let missing = |column: &Column| count(*column) == 0 && !how.fixed.contains_key(column);
    let missing: Vec<Column> = Column::NEEDED.into_iter().filter(missing).collect();
    if missing.is_empty() { Ok(()) } else { Err(SheetError::Missing(missing)) }
}

impl SheetRead {
    fn take(&mut self, number: usize, row: SupplierRow) {
        match self.rows.iter().find(|(_, taken)| taken.same_as(&row)) {
            None => self.rows.push((number, row)),
            // The place in the file aside, they say the same.
            Some((of, taken)) if SupplierRow { from: taken.from.clone(), ..row } == *taken => {
                self.repeated.push(SheetRepeated { row: number, of: *of });
            }
            Some((of, _)) => {
                let why = Wrong::Contradicts(*of).to_string();
                self.refused.push(SheetRefused { row: number, column: None, why });
            }
        }
    }
}

struct Reader<'a> {
    catalogue: &'a Catalogue,
    columns: &'a [Matched],
    fixed: &'a BTreeMap<Column, String>,
    cells: &'a [String],
    /// The hose's size stands in a column of dash sizes.
    dashes: bool,
    /// Some lengths stand in inches: a bare number in a column without a unit can be either.
    inches: bool,
}

type At = (Option<Column>, Wrong);

impl Reader<'_> {
    /// A cell in one line and the unit of its column; none where it is blank.
    fn get(&self, column: Column) -> Option<(String, Option<LengthUnit>)> {
        let matched = self.columns.iter().find(|matched| matched.is == column);
        let cell = matched.and_then(|matched| self.cells.get(matched.column)).map(|cell| cell::tidy(cell));
        let unit = matched.and_then(|matched| matched.unit);
        let fixed = || self.fixed.get(&column).map(|value| cell::tidy(value));
        let text = cell.filter(|cell| !cell.is_empty()).or_else(fixed)?;
        (!text.is_empty()).then_some((text, unit))
    }

    fn text(&self, column: Column) -> Option<String> {
        self.get(column).map(|(text, _)| text)
    }

    fn needed(&self, column: Column) -> Result<String, At> {
        self.text(column).ok_or((Some(column), Wrong::Blank))
    }

    fn read<T>(
        &self,
        column: Column,
        read: impl Fn(&str, Option<LengthUnit>) -> Result<T, CellError>,
    ) -> Result<Option<T>, At> {
        let Some((cell, unit)) = self.get(column) else { return Ok(None) };
        if self.inches && unit.is_none() && column.is_length() && cell::is_bare(&cell) {
            return Err((Some(column), Wrong::NoUnit));
        }
        read(&cell, unit).map(Some).map_err(|error| (Some(column), error.into()))
    }

    fn row(&self, from: &str) -> Result<SupplierRow, At> {
        let supplier = self.needed(Column::Supplier)?;
        let (standard, kind) = self.hose()?;
        let size = self.needed(Column::Dn)?;
        let bare = !size.is_empty() && size.chars().all(|letter| letter.is_ascii_digit());
        // A bare 10 in a column of dash sizes is the dash, and DN 10 is another hose.
        let size = if self.dashes && bare { format!("-{size}") } else { size };
        let dn = cell::dn(&size, self.catalogue, &standard, &kind)
            .map_err(|error| (Some(Column::Dn), error.into()))?;
        let (family, size) = self.end()?;
        let diameter = self.read(Column::CrimpDiameter, cell::diameter)?;
        let own = self.read(Column::CrimpTolerance, cell::tolerance)?;
        let tolerance = match (own, diameter.and_then(|(_, behind)| behind)) {
            (Some(_), Some(_)) => return Err((Some(Column::CrimpTolerance), Wrong::TwoTolerances)),
            (own, behind) => own.or(behind),
        };
        let skive = self.read(Column::Skive, cell::skive)?;
        let row = SupplierRow {
            supplier,
            standard,
            kind,
            dn,
            family,
            size,
            series: self.text(Column::Series),
            ferrule: self.text(Column::Ferrule),
            insertion_mm: self.read(Column::Insertion, cell::length)?,
            skive: cell::skives(skive, self.read(Column::SkiveInner, cell::skive)?),
            lubricant: self.text(Column::Lubricant),
            die_set: self.text(Column::DieSet),
            crimp_diameter_mm: diameter.map(|(diameter, _)| diameter),
            crimp_tolerance_mm: tolerance,
            cutoff_mm: self.read(Column::Cutoff, cell::length)?,
            from: from.to_owned(),
        };
        row.plausible().map_err(|error| (column_of(error.field()), error.into()))?;
        Ok(row)
    }

    /// Standard and type by the names of the tables.
    fn hose(&self) -> Result<(String, String), At> {
        let (standard, kind) = (self.needed(Column::Standard)?, self.needed(Column::Type)?);
        let found = self.catalogue.hose_type(&standard, &kind).map_err(|error| {
            let column = if error.what == "standard" { Column::Standard } else { Column::Type };
            (Some(column), Wrong::from(error))
        })?;
        Ok((found.standard.clone(), found.kind.clone()))
    }

    /// Family and size of the end by the names of the tables. A family alone is every size of it.
    fn end(&self) -> Result<(Option<String>, Option<String>), At> {
        let named = |column, error| (Some(column), Wrong::Name(error));
        match (self.text(Column::Family), self.text(Column::Size)) {
            (None, None) => Ok((None, None)),
            (None, Some(_)) => Err((Some(Column::Size), Wrong::SizeAlone)),
            (Some(family), None) => {
                let families = self.catalogue.families_named(&family);
                let families = families.map_err(|error| named(Column::Family, error))?;
                match families.as_slice() {
                    [one] => Ok((Some((*one).to_owned()), None)),
                    _ => Err((Some(Column::Size), Wrong::Blank)),
                }
            }
            (Some(family), Some(size)) => {
                let found = self.catalogue.connection(&family, &size).map_err(|error| {
                    let column = if error.what == "family" { Column::Family } else { Column::Size };
                    named(column, error)
                })?;
                Ok((Some(found.family().to_owned()), Some(found.size().to_owned())))
            }
        }
    }
}

/// The column that a field of a row is read from.
fn column_of(field: &str) -> Option<Column> {
    Some(match field {
        "supplier" => Column::Supplier,
        "series" => Column::Series,
        "ferrule" => Column::Ferrule,
        "lubricant" => Column::Lubricant,
        "die_set" => Column::DieSet,
        "insertion_mm" => Column::Insertion,
        "skive" => Column::Skive,
        "crimp_diameter_mm" => Column::CrimpDiameter,
        "crimp_tolerance_mm" => Column::CrimpTolerance,
        "cutoff_mm" => Column::Cutoff,
        _ => return None,
    })
}
