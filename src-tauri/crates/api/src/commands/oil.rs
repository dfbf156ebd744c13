//! `flow`, `surge` and `oil`: oil in the line.

use crate::{Answer, Api, ApiError};
use hosewright_core::flow::{
    self, FlowAnswer, FlowError, FlowQuestion, OilAnswer, OilError, OilQuestion, SurgeAnswer, SurgeQuestion,
};

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

impl From<OilError> for ApiError {
    fn from(error: OilError) -> Self {
        ApiError::input(error.field(), &error)
    }
}

/// A hose and its service -> speed against what is usual, drop, sizes that would do, and the peak of a sudden stop.
///
/// # Errors
/// Names the field that is missing or that no line can have.
pub fn oil(api: &mut Api, question: OilQuestion, _: &[u8]) -> Result<Answer<OilAnswer>, ApiError> {
    let mut answer = flow::oil(api.catalogue, &question)?;
    for assumed in &mut answer.assumed {
        let value = assumed.value.map_or_else(String::new, |value| api.words.quantity(value, &assumed.unit));
        assumed.words = api.words.say(&format!("oil-taken-{}", assumed.what), &[("value", &value)]);
    }
    Ok(api.answer(answer))
}
