//! What can be wrong with a batch.

use thiserror::Error;

/// Why a batch can not be planned.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum CuttingError {
    /// A length that can not be.
    #[error("{field} is {value}; a length from {least} to 1000000 mm is expected")]
    Length {
        /// The field, such as `pieces_mm[2]`.
        field: String,
        /// What was given.
        value: f64,
        /// The least that can be.
        least: f64,
    },
    /// More than can be planned at once.
    #[error("{field} has {count} entries; at most {most} are planned at once: make two batches")]
    TooMany {
        /// The field.
        field: &'static str,
        /// How many were given.
        count: usize,
        /// How many may be.
        most: usize,
    },
}

impl CuttingError {
    /// The field that is wrong.
    pub fn field(&self) -> &str {
        match self {
            Self::Length { field, .. } => field,
            Self::TooMany { field, .. } => field,
        }
    }
}
