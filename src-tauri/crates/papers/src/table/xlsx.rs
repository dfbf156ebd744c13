//! XLSX workbooks.

use super::{CELLS, TableError, too_many_cells};
use calamine::{DataRef, ExcelDateTime, Reader, Xlsx};
use chrono::{Datelike, NaiveDate};
use rust_xlsxwriter::{ExcelDateTime as XlsxDateTime, Format, Workbook, XlsxError};
use std::io::{Cursor, Read};
use std::panic::catch_unwind;

/// Most bytes that a workbook may unpack to: ZIP can pack a thousandfold, and memory is small.
const UNPACKED: u64 = 128 << 20;

/// Widest and highest a sheet can be by its format.
const COLUMNS: u32 = 16_384;

pub(super) fn read(bytes: &[u8], name: &str) -> Result<Vec<Vec<String>>, TableError> {
    bounded(bytes, name)?;
    // The reader is others' code and gets files from anywhere: one it panics on is a broken file.
    catch_unwind(|| cells(bytes, name)).unwrap_or_else(|_| Err(broken(name, "its contents make no sense")))
}

fn broken(name: &str, cause: impl ToString) -> TableError {
    TableError::Broken { name: name.to_owned(), cause: cause.to_string() }
}

/// Unpacks everything once without keeping it: what the archive says of its sizes may be a lie.
fn bounded(bytes: &[u8], name: &str) -> Result<(), TableError> {
    let mut archive = zip::ZipArchive::new(Cursor::new(bytes)).map_err(|error| broken(name, error))?;
    let mut unpacked = 0;
    for index in 0..archive.len() {
        let file = archive.by_index(index).map_err(|error| broken(name, error))?;
        let mut rest = file.take(UNPACKED + 1 - unpacked);
        unpacked += std::io::copy(&mut rest, &mut std::io::sink()).map_err(|error| broken(name, error))?;
        if unpacked > UNPACKED {
            let limit = format!("{} MB unpacked", UNPACKED >> 20);
            return Err(TableError::TooLarge { name: name.to_owned(), limit });
        }
    }
    Ok(())
}

/// Cell by cell: a sheet with one cell far away would fill the memory as a rectangle.
fn cells(bytes: &[u8], name: &str) -> Result<Vec<Vec<String>>, TableError> {
    let mut workbook: Xlsx<_> = calamine::open_workbook_from_rs(Cursor::new(bytes))
        .map_err(|error: calamine::XlsxError| broken(name, error))?;
    let sheet = workbook.sheet_names().first().cloned().ok_or_else(|| broken(name, "it has no sheet"))?;
    let mut grid = Grid { name, rows: Vec::new(), held: 0 };
    let mut reader = workbook.worksheet_cells_reader(&sheet).map_err(|error| broken(name, error))?;
    while let Some(cell) = reader.next_cell().map_err(|error| broken(name, error))? {
        let text = text(cell.get_value());
        if !text.is_empty() {
            grid.put(cell.get_position(), text)?;
        }
    }
    drop(reader);
    let merged = workbook.merge_cells_by_sheet_name(&sheet).map_err(|error| broken(name, error))?;
    grid.fill(merged.into_iter().map(|region| (region.start, region.end)))?;
    Ok(grid.rows)
}

/// The cells of a sheet, each row as long as its last cell that is not blank.
struct Grid<'a> {
    name: &'a str,
    rows: Vec<Vec<String>>,
    held: usize,
}

impl Grid<'_> {
    fn get(&self, (row, column): (u32, u32)) -> Option<&str> {
        let cell = self.rows.get(row as usize)?.get(column as usize)?;
        (!cell.is_empty()).then_some(cell)
    }

    fn put(&mut self, (row, column): (u32, u32), text: String) -> Result<(), TableError> {
        let (at, column) = (row as usize, column as usize);
        if column >= COLUMNS as usize || at >= CELLS {
            return Err(too_many_cells(self.name));
        }
        if self.rows.len() <= at {
            self.held += at + 1 - self.rows.len();
            self.rows.resize(at + 1, Vec::new());
        }
        let Some(row) = self.rows.get_mut(at) else { return Ok(()) };
        if row.len() <= column {
            self.held += column + 1 - row.len();
            if self.held > CELLS {
                return Err(too_many_cells(self.name));
            }
            row.resize(column + 1, String::new());
        }
        if let Some(cell) = row.get_mut(column) {
            *cell = text;
        }
        Ok(())
    }

    /// Writes what stands in the corner of merged cells into all of them: it holds for each of their rows.
    fn fill(&mut self, merged: impl Iterator<Item = ((u32, u32), (u32, u32))>) -> Result<(), TableError> {
        let mut filled = 0;
        for (start, end) in merged {
            let Some(text) = self.get(start).map(str::to_owned) else { continue };
            for row in start.0..=end.0 {
                for column in start.1..=end.1 {
                    filled += 1;
                    if filled > CELLS {
                        return Err(too_many_cells(self.name));
                    }
                    if self.get((row, column)).is_none() {
                        self.put((row, column), text.clone())?;
                    }
                }
            }
        }
        Ok(())
    }
}

fn text(value: &DataRef<'_>) -> String {
    match value {
        DataRef::Int(number) => number.to_string(),
        DataRef::Float(number) => number.to_string(),
        DataRef::String(text) | DataRef::DateTimeIso(text) | DataRef::DurationIso(text) => text.clone(),
        DataRef::SharedString(text) => (*text).to_owned(),
        DataRef::Bool(value) => value.to_string(),
        DataRef::DateTime(value) => date(value),
        // An error such as #DIV/0! is no value; the cell is as good as empty.
        DataRef::Error(_) | DataRef::Empty => String::new(),
    }
}

/// A date, with its time of day where it has one; a duration as the number it is.
fn date(value: &ExcelDateTime) -> String {
    if !value.is_datetime() {
        return value.as_f64().to_string();
    }
    let (year, month, day, hour, minute, second, _) = value.to_ymd_hms_milli();
    let day = format!("{year:04}-{month:02}-{day:02}");
    if (hour, minute, second) == (0, 0, 0) { day } else { format!("{day} {hour:02}:{minute:02}:{second:02}") }
}

/// Rows as a workbook of one sheet, the first row as its head. What is plainly a number or a day, such as `2026-11-25`, is
/// written as one; everything else is text, which a spreadsheet never takes for a formula.
///
/// # Errors
/// When the rows or the sheet's name are more than a sheet can hold.
pub fn to_xlsx<R: AsRef<[String]>>(sheet: &str, rows: &[R]) -> Result<Vec<u8>, TableError> {
    let failed = |error: XlsxError| TableError::Writing(error.to_string());
    let mut workbook = Workbook::new();
    let page = workbook.add_worksheet();
    page.set_name(sheet).map_err(failed)?;
    let (head, plain, day) =
        (Format::new().set_bold(), Format::new(), Format::new().set_num_format("yyyy-mm-dd"));
    for (row, cells) in rows.iter().enumerate() {
        let row = u32::try_from(row).map_err(|error| TableError::Writing(error.to_string()))?;
        let format = if row == 0 { &head } else { &plain };
        for (column, cell) in cells.as_ref().iter().enumerate() {
            let column = u16::try_from(column).map_err(|error| TableError::Writing(error.to_string()))?;
            match (plain_number(cell), plain_day(cell)) {
                (Some(number), _) => page.write_number_with_format(row, column, number, format),
                (_, Some(date)) => page.write_datetime_with_format(row, column, &date, &day),
                (None, None) => page.write_string_with_format(row, column, cell, format),
            }
            .map_err(failed)?;
        }
    }
    if !rows.is_empty() {
        page.set_freeze_panes(1, 0).map_err(failed)?;
    }
    // A day that is wider than its column is shown as a row of marks.
    page.autofit();
    workbook.save_to_buffer().map_err(failed)
}

/// A day that a spreadsheet has: before 1901 they count days that were none.
fn plain_day(cell: &str) -> Option<XlsxDateTime> {
    if cell.len() != 10 {
        return None;
    }
    let day: NaiveDate = cell.parse().ok()?;
    XlsxDateTime::from_ymd(
        u16::try_from(day.year()).ok()?,
        u8::try_from(day.month()).ok()?,
        u8::try_from(day.day()).ok()?,
    )
    .ok()
    .filter(|_| day.year() > 1900)
}

/// A number that a spreadsheet gives back letter by letter: not `007`, not a serial of 20 figures.
fn plain_number(cell: &str) -> Option<f64> {
    let number: f64 = cell.parse().ok()?;
    (cell.len() <= 15 && number.is_finite() && number.to_string() == cell).then_some(number)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::table::read;

    #[test]
    fn a_workbook_is_read_as_it_was_written() {
        let rows: Vec<Vec<String>> = [
            vec!["code", "size", "length", "serial"],
            vec!["7KQ4M-2XR9D-D", "-10", "1240.5", "007"],
            vec!["=1+1", "1/2", "+5", "12345678901234567890"],
            vec!["2026-11-25", "2026-11", "1/11/2026", "0224-03-25"],
        ]
        .into_iter()
        .map(|row| row.into_iter().map(str::to_owned).collect())
        .collect();
        let bytes = to_xlsx("hoses", &rows).unwrap();
        assert_eq!(read(&bytes, "hoses.xlsx").unwrap(), rows);
    }

    #[test]
    fn what_stands_in_merged_cells_holds_for_each_of_their_rows() {
        let mut workbook = Workbook::new();
        let page = workbook.add_worksheet();
        page.merge_range(0, 0, 2, 0, "EN 853", &Format::new()).unwrap();
        for row in 0..3 {
            page.write_number(row, 1, f64::from(row)).unwrap();
        }
        let rows = read(&workbook.save_to_buffer().unwrap(), "merged.xlsx").unwrap();
        assert_eq!(rows, [["EN 853", "0"], ["EN 853", "1"], ["EN 853", "2"]]);
    }

    #[test]
    fn a_day_is_written_as_a_day() {
        let bytes = to_xlsx("days", &[vec!["fitted".to_owned()], vec!["2026-11-25".to_owned()]]).unwrap();
        let mut workbook: Xlsx<_> = calamine::open_workbook_from_rs(Cursor::new(bytes)).unwrap();
        let sheet = workbook.worksheet_range("days").unwrap();
        assert!(matches!(sheet.get_value((1, 0)), Some(calamine::Data::DateTime(_))), "{sheet:?}");
    }

    #[test]
    fn dates_are_read_as_dates() {
        let mut workbook = Workbook::new();
        let date = rust_xlsxwriter::ExcelDateTime::from_ymd(2026, 11, 25).unwrap();
        let format = Format::new().set_num_format("dd.mm.yyyy");
        workbook.add_worksheet().write_datetime_with_format(1, 2, &date, &format).unwrap();
        let rows = read(&workbook.save_to_buffer().unwrap(), "dates.xlsx").unwrap();
        assert_eq!(rows, [vec![], vec![String::new(), String::new(), "2026-11-25".to_owned()]]);
    }

    /// One cell in the far corner of a sheet would be 17 thousand million cells as a rectangle.
    #[test]
    fn a_far_corner_takes_no_memory() {
        let mut workbook = Workbook::new();
        let page = workbook.add_worksheet();
        page.write_string(0, 0, "a").unwrap();
        page.write_string(1_048_575, 16_383, "b").unwrap();
        let rows = read(&workbook.save_to_buffer().unwrap(), "corner.xlsx").unwrap();
        assert_eq!((rows.len(), rows[0].len(), rows[1_048_575].len()), (1_048_576, 1, 16_384));
    }

    #[test]
    fn a_packed_bomb_is_refused() {
        use std::io::Write;
        let mut archive = zip::ZipWriter::new(Cursor::new(Vec::new()));
        archive.start_file("xl/sharedStrings.xml", zip::write::SimpleFileOptions::default()).unwrap();
        let zeros = vec![b' '; 1 << 20];
        for _ in 0..=UNPACKED >> 20 {
            archive.write_all(&zeros).unwrap();
        }
        let bytes = archive.finish().unwrap().into_inner();
        assert!(bytes.len() < 1 << 20, "{} bytes", bytes.len());
        assert!(matches!(read(&bytes, "bomb.xlsx"), Err(TableError::TooLarge { .. })));
    }

    #[test]
    fn half_a_workbook_is_an_error() {
        let bytes = to_xlsx("hoses", &[vec!["a".to_owned()]]).unwrap();
        for end in (4..bytes.len()).step_by(37) {
            assert!(read(&bytes[..end], "half.xlsx").is_err(), "cut at {end}");
        }
    }
}
