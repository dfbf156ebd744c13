//! `print`: what stands on the cover -> fields.

use crate::{Answer, Api, ApiError};
use hosewright_core::print::{self, Printed};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What stands on the cover.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct PrintQuestion {
    /// As it reads; `?` or `.` for one worn letter, `*` or `...` for any number.
    pub text: String,
}

/// What stands on the cover -> standard, type, size, pressure and date.
///
/// # Errors
/// When the text is no layline at all.
pub fn print(api: &mut Api, question: PrintQuestion, _: &[u8]) -> Result<Answer<Printed>, ApiError> {
    let printed = print::read(api.catalogue, &question.text).map_err(|error| ApiError::input("text", error))?;
    Ok(api.answer(printed))
}
