//! Numbers that can not be, before any rule looks at them.

use super::Question;
use crate::catalogue::UnknownName;
use crate::quantity::Celsius;
use crate::spec::{EndSpec, Role, Service, Spec};
use thiserror::Error;

/// A question that can not be answered because its input is wrong.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum CheckError {
    /// A number that can not be.
    #[error("{field} is {value}; {expected} is expected")]
    Number {
        /// The field, such as `service.working_pressure_bar`.
        field: String,
        /// What was given.
        value: f64,
        /// What would be right.
        expected: &'static str,
    },
    /// The coldest fluid is hotter than the hottest.
    #[error("service.fluid_min_c is {min} and service.fluid_max_c {max}; the coldest first is expected")]
    TemperaturesCrossed {
        /// Coldest as given.
        min: f64,
        /// Hottest as given.
        max: f64,
    },
    /// Two ends have the same role.
    #[error("spec.ends has end {0:?} twice; one A and one B are expected")]
    EndTwice(Role),
    /// A name that is not in the tables.
    #[error("{field}: {name}")]
    Unknown {
        /// The field, such as `spec.hose.type`.
        field: String,
        /// The name and the nearest ones.
        name: UnknownName,
    },
}

impl CheckError {
    /// The field that is wrong.
    pub fn field(&self) -> &str {
        match self {
            Self::Number { field, .. } | Self::Unknown { field, .. } => field,
            Self::TemperaturesCrossed { .. } => "service.fluid_min_c",
            Self::EndTwice(_) => "spec.ends",
        }
    }
}

/// Refuses numbers that can not be.
pub(super) fn plausible(question: &Question) -> Result<(), CheckError> {
    spec(&question.spec)?;
    service(&question.service)?;
    let printed = question.found.as_ref().and_then(|found| found.printed_pressure_bar);
    above_nothing("found.printed_pressure_bar", printed.map(|bar| bar.get()))
}

fn spec(spec: &Spec) -> Result<(), CheckError> {
    for role in [Role::A, Role::B] {
        if spec.ends.iter().filter(|end| end.role == role).count() > 1 {
            return Err(CheckError::EndTwice(role));
        }
    }
    if let Some(hose) = &spec.hose {
        let bend = hose.min_bend_radius_mm.map(|mm| mm.get());
        above_nothing("spec.hose.min_bend_radius_mm", bend)?;
        not_negative("spec.hose.vacuum_kpa_abs", hose.vacuum_kpa_abs)?;
    }
    spec.ends.iter().try_for_each(end)?;
    for adapter in &spec.adapters {
        not_negative("spec.adapters.rating_bar", adapter.rating_bar.map(|bar| bar.get()))?;
    }
    not_negative("spec.overall_length_mm", spec.overall_length_mm.map(|mm| mm.get()))?;
    let turn = spec.turn_deg.map(|turn| turn.get());
    within("spec.turn_deg", turn, |turn| (0.0..360.0).contains(&turn), "an angle from 0 to below 360 degrees")
}

fn end(end: &EndSpec) -> Result<(), CheckError> {
    let field = |name: &str| format!("spec.ends.{:?}.{name}", end.role);
    not_negative(&field("cutoff_mm"), end.cutoff_mm.map(|mm| mm.get()))?;
    not_negative(&field("drop_mm"), end.drop_mm.map(|mm| mm.get()))?;
    not_negative(&field("rating_bar"), end.rating_bar.map(|bar| bar.get()))
}

fn service(service: &Service) -> Result<(), CheckError> {
    above_nothing("service.working_pressure_bar", service.working_pressure_bar.map(|bar| bar.get()))?;
    above_nothing("service.relief_bar", service.relief_bar.map(|bar| bar.get()))?;
    above_nothing("service.surge_pressure_bar", service.surge_pressure_bar.map(|bar| bar.get()))?;
    above_nothing("service.flow_l_min", service.flow_l_min.map(|flow| flow.get()))?;
    not_negative("service.bend_radius_mm", service.bend_radius_mm.map(|mm| mm.get()))?;
    not_negative("service.vacuum_kpa_abs", service.vacuum_kpa_abs)?;
    temperature("service.fluid_min_c", service.fluid_min_c)?;
    temperature("service.fluid_max_c", service.fluid_max_c)?;
    temperature("service.ambient_max_c", service.ambient_max_c)?;
    match (service.fluid_min_c, service.fluid_max_c) {
        (Some(min), Some(max)) if min > max => {
            Err(CheckError::TemperaturesCrossed { min: min.get(), max: max.get() })
        }
        _ => Ok(()),
    }
}

fn not_negative(field: &str, value: Option<f64>) -> Result<(), CheckError> {
    within(field, value, |value| value >= 0.0 && value.is_finite(), "a number from 0 up")
}

/// A zero is how a form says "not known", which is said by leaving the field out: taken for a figure it
/// would keep the field's own caution silent.
fn above_nothing(field: &str, value: Option<f64>) -> Result<(), CheckError> {
    within(
        field,
        value,
        |value| value > 0.0 && value.is_finite(),
        "a number above 0, or nothing while it is not known",
    )
}

fn temperature(field: &str, value: Option<Celsius>) -> Result<(), CheckError> {
    /// Absolute zero in degrees Celsius (definition of the Celsius scale).
    const ABSOLUTE_ZERO_C: f64 = -273.15;
    let value = value.map(|celsius| celsius.get());
    within(
        field,
        value,
        |value| value >= ABSOLUTE_ZERO_C && value.is_finite(),
        "a temperature above -273.15 C",
    )
}

fn within(
    field: &str,
    value: Option<f64>,
    possible: impl Fn(f64) -> bool,
    expected: &'static str,
) -> Result<(), CheckError> {
    match value {
        Some(value) if !possible(value) => {
            Err(CheckError::Number { field: field.to_owned(), value, expected })
        }
        _ => Ok(()),
    }
}
