//! What can be wrong with a question about flow.

use thiserror::Error;

/// Why flow or surge can not be worked out. Each message says what would be right.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum FlowError {
    /// A value that no hydraulic line has.
    #[error("{field} is {value}; it must be from {least} to {most}")]
    OutOfRange {
        /// The key.
        field: &'static str,
        /// What was given.
        value: f64,
        /// Least that is right.
        least: f64,
        /// Most that is right.
        most: f64,
    },
    /// A value that another one needs is not there.
    #[error("{field} is missing; {needed_by} needs it")]
    Missing {
        /// The key that is missing.
        field: &'static str,
        /// The key that needs it.
        needed_by: &'static str,
    },
    /// Two values that say the same thing.
    #[error("{field} can not stand beside {other}; give one of them")]
    Conflict {
        /// The key.
        field: &'static str,
        /// The other key.
        other: &'static str,
    },
    /// A standard elbow of an angle that has no published loss.
    #[error(
        "elbows has one of {angle_deg} degrees; without radius_ratio it must be 45 or 90, \
         or give its loss_coefficient"
    )]
    ElbowAngle {
        /// What was given.
        angle_deg: f64,
    },
    /// An elbow of which nothing is said.
    #[error("elbows has an empty one; give angle_deg, angle_deg and radius_ratio, or loss_coefficient")]
    ElbowEmpty,
    /// Grade and index together describe an oil thinner than the index is defined for.
    #[error(
        "fluid with iso_vg {iso_vg} and viscosity_index {viscosity_index} has less than 2 mm2/s at 100 C, \
         where the viscosity index is not defined; give kinematic_viscosity_mm2_s"
    )]
    TooThin {
        /// Grade.
        iso_vg: f64,
        /// Index.
        viscosity_index: f64,
    },
    /// A temperature at which the oil's viscosity leaves the range of the standard's equation.
    #[error(
        "temp_c is {temp_c}, where this fluid's viscosity is outside 0.21 to 20 000 000 mm2/s and ASTM D341 \
         does not hold; give a temperature nearer 40 C, or kinematic_viscosity_mm2_s"
    )]
    OutsideViscosityEquation {
        /// Temperature asked for.
        temp_c: f64,
    },
}

impl FlowError {
    /// The key that is wrong.
    pub fn field(&self) -> &'static str {
        match self {
            Self::OutOfRange { field, .. } | Self::Missing { field, .. } | Self::Conflict { field, .. } => {
                field
            }
            Self::ElbowAngle { .. } | Self::ElbowEmpty => "elbows",
            Self::TooThin { .. } => "fluid",
            Self::OutsideViscosityEquation { .. } => "temp_c",
        }
    }
}

/// The value, when it lies in the range that the field can have.
pub(super) fn within(field: &'static str, value: f64, least: f64, most: f64) -> Result<f64, FlowError> {
    if (least..=most).contains(&value) {
        Ok(value)
    } else {
        Err(FlowError::OutOfRange { field, value, least, most })
    }
}

/// The value, which another field needs.
pub(super) fn needed<T>(
    field: &'static str,
    value: Option<T>,
    needed_by: &'static str,
) -> Result<T, FlowError> {
    value.ok_or(FlowError::Missing { field, needed_by })
}
