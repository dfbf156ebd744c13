//! Tables of text in and out: CSV and XLSX as spreadsheets and offices write them.

mod csv;
mod set;
mod xlsx;

pub use csv::to_csv;
pub use set::to_zip;
pub use xlsx::to_xlsx;

use thiserror::Error;

/// Most cells of a table that is read.
const CELLS: usize = 2_000_000;

/// Why a table could not be read or written.
#[derive(Debug, Error)]
pub enum TableError {
    /// Neither CSV nor XLSX.
    #[error("{name} is a spreadsheet of an old or other kind; save it as .xlsx or .csv")]
    Kind {
        /// The file.
        name: String,
    },
    /// Broken.
    #[error("{name} can't be read: {cause}; open it in a spreadsheet and save it again as .xlsx or .csv")]
    Broken {
        /// The file.
        name: String,
        /// What is wrong with it.
        cause: String,
    },
    /// Too large.
    #[error("{name} is larger than a table can be: {limit}; split it")]
    TooLarge {
        /// The file.
        name: String,
        /// What it exceeds.
        limit: String,
    },
    /// The sheet could not be written.
    #[error("the sheet could not be written: {0}")]
    Writing(String),
}

/// The rows of a table, the first sheet's of a workbook, each cell as text. Row 1 of the file is
/// the first; empty rows are kept, so that a row's number is the one a spreadsheet shows. Dates are
/// written `2026-11-25`; what stands in merged cells of a workbook stands in each of them.
///
/// `name` is the file's, for messages; what it is, is told by its bytes.
///
/// # Errors
/// When the bytes are no table, or more than can be taken in.
pub fn read(bytes: &[u8], name: &str) -> Result<Vec<Vec<String>>, TableError> {
    // How a ZIP archive begins, and the older compound files of spreadsheets.
    if bytes.starts_with(b"PK\x03\x04") {
        xlsx::read(bytes, name)
    } else if bytes.starts_with(b"\xd0\xcf\x11\xe0") || bytes.starts_with(b"%PDF") {
        Err(TableError::Kind { name: name.to_owned() })
    } else {
        csv::read(bytes, name)
    }
}

fn too_many_cells(name: &str) -> TableError {
    TableError::TooLarge { name: name.to_owned(), limit: format!("{CELLS} cells") }
}
