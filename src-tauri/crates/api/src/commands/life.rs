//! `life`: how long hoses last, from a history of times.

use super::Nothing;
use crate::{Answer, Api, ApiError};
use hosewright_core::life::{self, Life};

/// A history as CSV (columns time, failed and, where known, entered) -> Weibull and Kaplan-Meier.
///
/// # Errors
/// Names the row and column that can not be read.
pub fn life(api: &mut Api, _: Nothing, history: &[u8]) -> Result<Answer<Life>, ApiError> {
    let text = std::str::from_utf8(history)
        .map_err(|_| ApiError::input("", "the history is no text in UTF-8; save it as CSV in UTF-8"))?;
    let records = life::read_csv(text).map_err(|error| ApiError::input("", error))?;
    Ok(api.answer(life::life(&records)))
}
