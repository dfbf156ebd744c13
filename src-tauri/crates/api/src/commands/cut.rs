//! `cut`: pieces that are wanted and hose that is there -> which is cut from what.

use crate::{Answer, Api, ApiError};
use hosewright_core::cutting::{self, Batch, CutPlan, CuttingError};

impl From<CuttingError> for ApiError {
    fn from(error: CuttingError) -> Self {
        ApiError::input(error.field(), &error)
    }
}

/// A batch -> which piece is cut from which reel or offcut.
///
/// # Errors
/// Names the length that can not be, or the list that is too long.
pub fn cut(api: &mut Api, batch: Batch, _: &[u8]) -> Result<Answer<CutPlan>, ApiError> {
    Ok(api.answer(cutting::cut(&batch)?))
}
