//! `route`: where the ports are -> how tight the hose bends.

use crate::{Answer, Api, ApiError, Code};
use hosewright_core::route::{self, Layout, RouteError, Routed};

impl From<RouteError> for ApiError {
    fn from(error: RouteError) -> Self {
        let code = match error {
            RouteError::NoShape { .. } | RouteError::Unsettled { .. } | RouteError::NoLength { .. } => Code::Nothing,
            _ => Code::Input,
        };
        ApiError { code, field: error.field(), message: error.to_string() }
    }
}

/// Ports and poses -> the hose's shape, its tightest spot, twist and the shortest length that will do.
///
/// # Errors
/// Names the field that can not be; [`Code::Nothing`] when no hose of that length lies so.
pub fn route(api: &mut Api, layout: Layout, _: &[u8]) -> Result<Answer<Routed>, ApiError> {
    Ok(api.answer(route::route(&layout)?))
}
