//! Columns that hold more than SQLite's own types.

use hosewright_core::quantity::Dn;
use hosewright_core::spec::HoseRef;
use rusqlite::Row;
use rusqlite::types::{FromSqlError, Type};
use serde::de::DeserializeOwned;
use std::str::FromStr;

/// A column whose text is parsed: an id, an event, a date.
pub(crate) fn parsed<T>(row: &Row<'_>, column: &str) -> rusqlite::Result<T>
where
    T: FromStr,
    T::Err: std::error::Error + Send + Sync + 'static,
{
    let text: String = row.get(column)?;
    text.parse().map_err(|error: T::Err| failure(row, column, error))
}

/// Such a column where it may be empty.
pub(crate) fn optional<T>(row: &Row<'_>, column: &str) -> rusqlite::Result<Option<T>>
where
    T: FromStr,
    T::Err: std::error::Error + Send + Sync + 'static,
{
    let text: Option<String> = row.get(column)?;
    text.map(|text| text.parse().map_err(|error: T::Err| failure(row, column, error))).transpose()
}

/// A column of JSON.
pub(crate) fn json<T: DeserializeOwned>(row: &Row<'_>, column: &str) -> rusqlite::Result<T> {
    let text: String = row.get(column)?;
    serde_json::from_str(&text).map_err(|error| failure(row, column, error))
}

/// A name of a set; none where it is blank, or one this program does not know.
pub(crate) fn named<T: DeserializeOwned>(row: &Row<'_>, column: &str) -> rusqlite::Result<Option<T>> {
    let text: Option<String> = row.get(column)?;
    Ok(text.and_then(|text| serde_json::from_value(text.into()).ok()))
}

/// The standard, type and size of a hose; none unless all three are known.
pub(crate) fn hose(row: &Row<'_>) -> rusqlite::Result<Option<HoseRef>> {
    let (standard, kind): (Option<String>, Option<String>) = (row.get("standard")?, row.get("kind")?);
    let dn = row.get::<_, Option<f64>>("dn")?.and_then(Dn::new);
    Ok(standard.zip(kind).zip(dn).map(|((standard, kind), dn)| HoseRef::named(standard, kind, dn)))
}

fn failure(
    row: &Row<'_>,
    column: &str,
    error: impl std::error::Error + Send + Sync + 'static,
) -> rusqlite::Error {
    match row.as_ref().column_index(column) {
        Ok(index) => rusqlite::Error::FromSqlConversionFailure(index, Type::Text, Box::new(error)),
        Err(missing) => missing,
    }
}

/// An unsigned number; SQLite holds signed ones.
pub(crate) fn unsigned<T: TryFrom<i64>>(row: &Row<'_>, column: &str) -> rusqlite::Result<T> {
    let number: i64 = row.get(column)?;
    T::try_from(number).map_err(|_| failure(row, column, FromSqlError::OutOfRange(number)))
}
