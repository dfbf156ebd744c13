//! What every answer carries beside its content, and reading a question strictly.

use crate::{ApiError, PROGRAM};
use hosewright_core::catalogue::Catalogue;
use schemars::JsonSchema;
use serde::{Serialize, de::DeserializeOwned};
use serde_json::Value;
use ts_rs::TS;

/// An answer with the tables and the program it rests on.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Answer<T> {
    /// The content.
    #[serde(flatten)]
    pub content: T,
    /// Version of the tables: their hash.
    pub catalogue: String,
    /// Version of the program.
    pub program: String,
}

impl<T> Answer<T> {
    /// Content answered from that catalogue.
    pub fn new(content: T, catalogue: &Catalogue) -> Self {
        Self { content, catalogue: catalogue.version.clone(), program: PROGRAM.to_owned() }
    }
}

/// Reads a question. Unknown keys and wrong values are errors that name the field's path.
///
/// # Errors
/// [`ApiError::input`] with the path of the field.
pub fn question<T: DeserializeOwned>(value: Value) -> Result<T, ApiError> {
    serde_path_to_error::deserialize(value).map_err(|error| {
        let path = match error.path().to_string() {
            path if path == "." => String::new(),
            path => path,
        };
        ApiError::input(path, error.inner())
    })
}

/// Reads a JSON document from text.
///
/// # Errors
/// [`ApiError::input`] with line and column.
pub fn document(text: &str) -> Result<Value, ApiError> {
    serde_json::from_str(text).map_err(|error| ApiError::input("", format!("the input is no JSON document: {error}")))
}
