//! `crimp`: readings over a crimped ferrule -> whether it may be ticked.

use crate::{Answer, Api, ApiError};
use hosewright_core::crimp::{CrimpError, CrimpQuestion, Crimped, crimp as judge};

impl From<CrimpError> for ApiError {
    fn from(error: CrimpError) -> Self {
        ApiError::input(error.field(), &error)
    }
}

/// Readings over a crimped ferrule -> mean, spread, out of round, taper, and whether it may be ticked.
///
/// # Errors
/// A diameter, tolerance or instrument that can not be.
pub fn crimp(api: &mut Api, asked: CrimpQuestion, _: &[u8]) -> Result<Answer<Crimped>, ApiError> {
    Ok(api.answer(judge(&asked)?))
}
