//! How the hose lies in one pose over its change of length under pressure.

use super::error::RouteError;
use super::rod::{Settled, Shapeless};
use super::shape::Shape;
use super::travel::Ends;

/// Changes of length to look at, in percent: none, and the least and greatest under pressure.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Changes(Vec<f64>);

impl Changes {
    /// Reads `length_change_pct`.
    pub fn read(given: Option<[f64; 2]>) -> Result<Self, RouteError> {
        let field = "length_change_pct";
        let [least, greatest] = given.unwrap_or_default();
        for value in [least, greatest] {
            if !(-50.0..=50.0).contains(&value) {
                let wanted = "a change in percent between -50 and 50";
                return Err(RouteError::Number { field: field.to_owned(), value, wanted });
            }
        }
        if least > greatest {
            let wanted = "the least change first, such as [-4, 2]";
            return Err(RouteError::Number { field: field.to_owned(), value: least, wanted });
        }
        // Without pressure the hose has its fitted length, whatever it does under pressure.
        Ok(Self(
            std::iter::once(0.0)
                .chain([least, greatest].into_iter().filter(|change| *change != 0.0))
                .collect(),
        ))
    }

    /// What the free length becomes at its shortest.
    pub fn shortest(&self, free_length_mm: f64) -> f64 {
        self.0.iter().map(|change| changed(free_length_mm, *change)).fold(free_length_mm, f64::min)
    }
}

/// How the hose lies in a pose.
#[derive(Debug, Clone)]
pub(super) struct Lie {
    /// At the fitted length.
    pub fitted: Settled,
    /// At the change of length at which it bends most.
    pub worst: Shape,
    /// That change in percent.
    pub worst_change_pct: f64,
}

/// Smallest radius of a shape in mm, infinite where it is straight.
pub(super) fn radius_mm(shape: &Shape) -> f64 {
    shape.tightest().map_or(f64::INFINITY, |tightest| tightest.radius_mm)
}

/// How the hose lies in a pose; shapes like `near` are looked at as well.
pub(super) fn lie(
    ends: &Ends,
    free_length_mm: f64,
    changes: &Changes,
    near: Option<&Shape>,
) -> Result<Lie, Shapeless> {
    let fitted = ends.span(free_length_mm).settle_near(near)?;
    under_pressure(ends, free_length_mm, changes, fitted)
}

/// How a hose that lies so without pressure lies under it.
pub(super) fn under_pressure(
    ends: &Ends,
    free_length_mm: f64,
    changes: &Changes,
    fitted: Settled,
) -> Result<Lie, Shapeless> {
    let (mut worst, mut worst_change_pct) = (fitted.shape.clone(), 0.0);
    for change in changes.0.iter().skip(1) {
        let span = ends.span(changed(free_length_mm, *change));
        // Under pressure the hose stays in the shape it lies in, as long as there is one like it.
        let shape = match span.follow(&fitted.shape)? {
            Some(shape) => shape,
            None => span.settle()?.shape,
        };
        if radius_mm(&shape) < radius_mm(&worst) {
            (worst, worst_change_pct) = (shape, *change);
        }
    }
    Ok(Lie { fitted, worst, worst_change_pct })
}

fn changed(length_mm: f64, change_pct: f64) -> f64 {
    length_mm * (1.0 + change_pct / 100.0)
}
