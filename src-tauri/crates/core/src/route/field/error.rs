//! Why a routing as it was said can not be answered.

use crate::catalogue::UnknownName;
use crate::route::RouteError;
use thiserror::Error;

/// Why a routing as it was said can not be answered. Fields are named as in the question.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum FieldError {
    /// Something is missing without which nothing can be drawn.
    #[error("{field}: is needed; give {wanted}")]
    Missing {
        /// The field.
        field: String,
        /// What would be right.
        wanted: &'static str,
    },
    /// A number that can not be.
    #[error("{field}: {value} is not right here; give {wanted}")]
    Number {
        /// The field.
        field: String,
        /// What was given.
        value: f64,
        /// What would be right.
        wanted: &'static str,
    },
    /// Something that does not go with the rest of the question.
    #[error("{field}: does not go with {with}; {wanted}")]
    Misplaced {
        /// The field.
        field: String,
        /// With what.
        with: &'static str,
        /// What would be right.
        wanted: &'static str,
    },
    /// A direction of no length.
    #[error("{field}: this is no direction; give three numbers that are not all 0, such as [1, 0, 0]")]
    NoDirection {
        /// The field.
        field: String,
    },
    /// A form of an end whose angle is not known.
    #[error(
        "{field}: \"{form}\" is no form whose bend is known; give straight, elbow45, elbow90 or the like"
    )]
    Form {
        /// The field.
        field: String,
        /// What was given.
        form: String,
    },
    /// A name that is not in the tables.
    #[error("{field}: {name}")]
    Unknown {
        /// The field.
        field: String,
        /// The name and the nearest ones.
        name: UnknownName,
    },
    /// What the routing itself refuses.
    #[error(transparent)]
    Route(#[from] RouteError),
}

impl FieldError {
    /// The field of the question that has to change.
    pub fn field(&self) -> String {
        match self {
            Self::Missing { field, .. }
            | Self::Number { field, .. }
            | Self::Misplaced { field, .. }
            | Self::NoDirection { field }
            | Self::Form { field, .. }
            | Self::Unknown { field, .. } => field.clone(),
            Self::Route(error) => error.field(),
        }
    }
}
