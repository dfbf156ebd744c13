//! `route`: where the ports are -> how tight the hose bends.

use super::check::word;
use crate::{Answer, Api, ApiError, key};
use hosewright_core::route::field::{Change, Cure, FieldError, FieldQuestion, FieldRouted};
use hosewright_core::route::{self, Layout, RouteError, Routed, field};
use hosewright_words::{Say, Words};

impl From<RouteError> for ApiError {
    fn from(error: RouteError) -> Self {
        let field = error.field();
        match error {
            RouteError::NoShape { .. } | RouteError::Unsettled { .. } | RouteError::NoLength { .. } => {
                ApiError::nothing(field, error)
            }
            _ => ApiError::input(field, error),
        }
    }
}

/// Ports and poses -> the hose's shape, its tightest spot, twist and the shortest length that will do.
///
/// # Errors
/// Names the field that can not be; [`crate::Code::Nothing`] when no hose of that length lies so.
pub fn route(api: &mut Api, layout: Layout, _: &[u8]) -> Result<Answer<Routed>, ApiError> {
    Ok(api.answer(route::route(&layout)?))
}

impl From<FieldError> for ApiError {
    fn from(error: FieldError) -> Self {
        match error {
            FieldError::Route(error) => error.into(),
            error => ApiError::input(error.field(), &error),
        }
    }
}

/// How the ports face and a few lengths -> ports, poses, the hose's shape in each, findings, the length to make, and
/// single changes that would cure it.
///
/// # Errors
/// Names the field that is missing or can not be. A hose that does not reach is a finding.
pub fn field(api: &mut Api, question: FieldQuestion, _: &[u8]) -> Result<Answer<FieldRouted>, ApiError> {
    let mut routed = field::field(api.catalogue, &question)?;
    for finding in &mut routed.findings {
        word(&api.words, finding);
    }
    for cure in &mut routed.cures {
        cure.what = what(&api.words, cure);
    }
    Ok(api.answer(routed))
}

/// A cure in words.
fn what(words: &Words, cure: &Cure) -> String {
    let length = words.quantity(cure.overall_length_mm.get(), "mm");
    let end = cure.end.map_or_else(String::new, |end| format!("{end:?}"));
    let form = cure.form.as_deref().map_or_else(String::new, |form| words.form(form));
    let points =
        cure.points.map_or_else(String::new, |points| words.say(&format!("points-{}", key(&points)), &[]));
    let values: [(&str, &dyn Say); 4] =
        [("length", &length), ("end", &end), ("form", &form), ("points", &points)];
    let id = match cure.change {
        Change::Length => "route-cure-length",
        Change::Exit => "route-cure-exit",
        Change::Form => "route-cure-form",
    };
    words.say(id, &values)
}
