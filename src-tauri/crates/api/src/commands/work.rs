//! `work.look`, `work.stop`: how far the work is that a use case is at. A way in that can asks [`crate::Work`] beside the
//! use cases; asked here, nothing else is going on.

use super::Nothing;
use crate::{Answer, Api, ApiError, WorkDone};

/// How far the work is.
///
/// # Errors
/// None.
pub fn look(api: &mut Api, _: Nothing, _: &[u8]) -> Result<Answer<WorkDone>, ApiError> {
    Ok(api.answer(api.work.done()))
}
