//! A sheet of cells -> rows of a supplier's table.

use super::Column;
use super::cell::{self, FigureError};
use super::row::{RowError, SupplierRow};
use crate::catalogue::{Catalogue, UnknownName};
use crate::sheet::cell::{CellError, dn, is_bare, length};
use crate::sheet::{Cell, Column as _, Holds, How, Sheet, SheetError, SheetRefused, SheetRow, Unit};
use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::Serialize;
use thiserror::Error;
use ts_rs::TS;

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
    pub refused: Vec<SheetRefused<Column>>,
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
    #[error(transparent)]
    Figure(#[from] FigureError),
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

/// Reads a sheet. Every row that is not blank is taken, repeated, left out or refused with its reason; `name` is the file's,
/// as its rows name it.
///
/// # Errors
/// No rows; something that no row can be without is in no column.
pub fn read(
    catalogue: &Catalogue,
    cells: &[Vec<String>],
    name: &str,
    how: &How<Column>,
    today: NaiveDate,
) -> Result<SheetRead, SheetError<Column>> {
    let sheet = Sheet::of(cells, how, today)?;
    let dashes = sheet.heading(Column::Dn).is_some_and(|heading| heading.to_lowercase().contains("dash"));
    let inches = sheet.columns().any(|matched| matched.unit == Some(Unit::In));
    let mut read = SheetRead { left_out: sheet.left_out(), ..SheetRead::default() };
    for row in sheet.rows() {
        let number = row.number;
        match (Reader { catalogue, row, dashes, inches }).row(&format!("{name}, row {number}")) {
            Ok(row) => read.take(number, row),
            Err((column, wrong)) => {
                read.refused.push(SheetRefused { row: number, column, why: wrong.to_string() });
            }
        }
    }
    Ok(read)
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
    row: SheetRow<'a, Column>,
    /// The hose's size stands in a column of dash sizes.
    dashes: bool,
    /// Some lengths stand in inches: a bare number in a column without a unit can be either.
    inches: bool,
}

type At = (Option<Column>, Wrong);

impl Reader<'_> {
    fn text(&self, column: Column) -> Option<String> {
        self.row.text(column)
    }

    fn needed(&self, column: Column) -> Result<String, At> {
        self.text(column).ok_or((Some(column), Wrong::Blank))
    }

    fn read<T, E: Into<Wrong>>(
        &self,
        column: Column,
        read: impl Fn(&str, Option<Unit>) -> Result<T, E>,
    ) -> Result<Option<T>, At> {
        let Some(Cell { text, unit, .. }) = self.row.get(column) else { return Ok(None) };
        if self.inches && unit.is_none() && column.holds() == Holds::Length && is_bare(&text) {
            return Err((Some(column), Wrong::NoUnit));
        }
        read(&text, unit).map(Some).map_err(|error| (Some(column), error.into()))
    }

    fn row(&self, from: &str) -> Result<SupplierRow, At> {
        let supplier = self.needed(Column::Supplier)?;
        let (standard, kind) = self.hose()?;
        let size = self.needed(Column::Dn)?;
        let bare = !size.is_empty() && size.chars().all(|letter| letter.is_ascii_digit());
        // A bare 10 in a column of dash sizes is the dash, and DN 10 is another hose.
        let size = if self.dashes && bare { format!("-{size}") } else { size };
        let dn =
            dn(&size, self.catalogue, &standard, &kind).map_err(|error| (Some(Column::Dn), error.into()))?;
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
            insertion_mm: self.read(Column::Insertion, length)?,
            skive: cell::skives(skive, self.read(Column::SkiveInner, cell::skive)?),
            lubricant: self.text(Column::Lubricant),
            die_set: self.text(Column::DieSet),
            crimp_diameter_mm: diameter.map(|(diameter, _)| diameter),
            crimp_tolerance_mm: tolerance,
            cutoff_mm: self.read(Column::Cutoff, length)?,
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
