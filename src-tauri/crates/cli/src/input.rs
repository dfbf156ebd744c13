//! Reading what a command is asked: files and standard input.

use hosewright_api::{ApiError, document};
use hosewright_core::sheet::Matched;
use serde::Deserialize;
use serde::de::DeserializeOwned;
use std::collections::BTreeMap;
use std::io::Read;
use std::path::Path;

/// How a sheet is read, beside its name.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields, bound = "C: DeserializeOwned + Ord")]
pub struct How<C> {
    /// The row of its headings.
    #[serde(default)]
    pub header_row: Option<usize>,
    /// What the columns are.
    #[serde(default)]
    pub columns: Option<Vec<Matched<C>>>,
    /// Values for all rows.
    #[serde(default)]
    pub fixed: BTreeMap<C, String>,
    /// Rows that are left out.
    #[serde(default)]
    pub leave_out: Vec<usize>,
}

impl<C> Default for How<C> {
    fn default() -> Self {
        Self { header_row: None, columns: None, fixed: BTreeMap::new(), leave_out: Vec::new() }
    }
}

/// The bytes of a file, or of standard input for `-`.
///
/// # Errors
/// [`ApiError::file`] naming the path.
pub fn bytes(path: &Path) -> Result<Vec<u8>, ApiError> {
    let read = if path == Path::new("-") {
        let mut bytes = Vec::new();
        std::io::stdin().read_to_end(&mut bytes).map(|_| bytes)
    } else {
        std::fs::read(path)
    };
    read.map_err(|error| ApiError::refused(path, "read", &error))
}

/// The text of a file, or of standard input for `-`.
///
/// # Errors
/// [`ApiError::file`] when it can not be read, [`ApiError::input`] when it is no text.
pub fn text(path: &Path) -> Result<String, ApiError> {
    String::from_utf8(bytes(path)?)
        .map_err(|_| ApiError::input("", format!("{} is no text in UTF-8", path.display())))
}

/// A question as a JSON document.
///
/// # Errors
/// As [`text`], and [`ApiError::input`] naming the field that is wrong.
pub fn question<T: DeserializeOwned>(path: &Path) -> Result<T, ApiError> {
    hosewright_api::question(document(&text(path)?)?)
}

/// Leaves a new file that only its owner may read, where the system has owners of files.
///
/// # Errors
/// [`ApiError::file`] naming the path; one that is there is not written over, others might have it open.
pub fn leave_private(path: &Path, bytes: &[u8]) -> Result<(), ApiError> {
    let mut new = std::fs::OpenOptions::new();
    new.write(true).create_new(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut new, 0o600);
    new.open(path)
        .and_then(|mut file| std::io::Write::write_all(&mut file, bytes))
        .map_err(|error| ApiError::refused(path, "written", &error))
}

/// Leaves a file.
///
/// # Errors
/// [`ApiError::file`] naming the path.
pub fn leave(path: &Path, bytes: &[u8]) -> Result<(), ApiError> {
    std::fs::write(path, bytes).map_err(|error| ApiError::refused(path, "written", &error))
}
