//! What every answer carries beside its content, and reading a question strictly.

use crate::{ApiError, PROGRAM};
use hosewright_core::catalogue::{Catalogue, nearest};
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
        ApiError::input(path, in_words(&error.inner().to_string()))
    })
}

/// What was wrong with a document. A key or choice that is not known is said with the nearest that is.
pub(crate) fn in_words(error: &str) -> String {
    let [key, choice] = ["unknown field `", "unknown variant `"].map(|start| error.strip_prefix(start));
    let Some((given, expected)) = key.or(choice).and_then(|rest| rest.split_once("`, expected ")) else {
        return error.to_owned();
    };
    let known: Vec<&str> = expected.split('`').skip(1).step_by(2).collect();
    let what = if key.is_some() { "no key here" } else { "not known here" };
    match nearest(given, known.iter().copied()).first() {
        Some(near) if known.len() > 1 => {
            format!("\"{given}\" is {what}; nearest is {near}; there are {}", known.join(", "))
        }
        _ => format!("\"{given}\" is {what}; right would be {}", known.join(", ")),
    }
}

/// Reads a JSON document from text.
///
/// # Errors
/// [`ApiError::input`] with line and column.
pub fn document(text: &str) -> Result<Value, ApiError> {
    serde_json::from_str(text)
        .map_err(|error| ApiError::input("", format!("the input is no JSON document: {error}")))
}
