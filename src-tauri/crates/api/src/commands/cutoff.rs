//! `cutoff`: a cut-off measured on a new end.

use crate::{Answer, Api, ApiError};
use hosewright_core::cutoff::{self, CutoffError, CutoffMeasured, CutoffReadings};

impl From<CutoffError> for ApiError {
    fn from(error: CutoffError) -> Self {
        ApiError::input(error.field(), &error)
    }
}

/// Readings of a new end from sealing point to hose stop -> its cut-off, and how it is measured.
///
/// # Errors
/// A reading or instrument that can not be.
pub fn measured(api: &mut Api, asked: CutoffReadings, _: &[u8]) -> Result<Answer<CutoffMeasured>, ApiError> {
    Ok(api.answer(cutoff::measured(&asked)?))
}
