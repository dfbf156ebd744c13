//! `flow` and `surge`: oil in the line.

use crate::{Answer, Api, ApiError};
use hosewright_core::flow::{self, FlowAnswer, FlowError, FlowQuestion, SurgeAnswer, SurgeQuestion};

impl From<FlowError> for ApiError {
    fn from(error: FlowError) -> Self {
        ApiError::input(error.field(), error)
    }
}

/// A flow through a bore -> speed, friction and pressure drop.
///
/// # Errors
/// Names the key whose value no line can have.
pub fn flow(api: &mut Api, question: FlowQuestion, _: &[u8]) -> Result<Answer<FlowAnswer>, ApiError> {
    Ok(api.answer(flow::flow(&question)?))
}

/// A flow that is stopped -> the pressure peak.
///
/// # Errors
/// Names the key whose value no line can have.
pub fn surge(api: &mut Api, question: SurgeQuestion, _: &[u8]) -> Result<Answer<SurgeAnswer>, ApiError> {
    Ok(api.answer(flow::surge(&question)?))
}
