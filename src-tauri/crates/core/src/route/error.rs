//! Why a routing can not be answered.

use thiserror::Error;

/// Why a routing can not be answered. Fields are named as in the question, such as `poses[2].b.direction`.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum RouteError {
    /// A port is missing.
    #[error("{field}: no port is given here; give it a position and a direction")]
    NoPort {
        /// The port.
        field: String,
    },
    /// A number that must be finite is not, or one that must be positive is not.
    #[error("{field}: {value} is not right here; give {wanted}")]
    Number {
        /// The field.
        field: String,
        /// What was given.
        value: f64,
        /// What would be right.
        wanted: &'static str,
    },
    /// A direction of no length.
    #[error("{field}: this is no direction; give three numbers that are not all 0, such as [1, 0, 0]")]
    NoDirection {
        /// The field.
        field: String,
    },
    /// An `up` that lies along the direction and so marks no turn.
    #[error("{field}: lies along the port's direction; give one across it")]
    UpAlong {
        /// The field.
        field: String,
    },
    /// An `up` in a later pose that has nothing to be compared with.
    #[error("{field}: is given, but not in the first pose; give it there as well, or nowhere")]
    UpNotInFirst {
        /// The field.
        field: String,
    },
    /// A port that points the opposite way to the first pose: how it got there is not known.
    #[error(
        "{field}: the port points the opposite way to the first pose, so how it turned is not known; give `up` for it in both poses"
    )]
    UpNeeded {
        /// The field.
        field: String,
    },
    /// The shortest length is sought, but not for what.
    #[error("{field}: is needed to seek the shortest length; give it, or give free_length_mm")]
    NothingToSeek {
        /// The field that is missing.
        field: &'static str,
    },
    /// The hose does not reach.
    #[error(
        "free_length_mm: {length_mm:.2} mm has no shape in pose {pose}, where its ends are {gap_mm:.2} mm apart; give a longer hose or bring the ports nearer"
    )]
    NoShape {
        /// Number of the pose, 0 for the first.
        pose: usize,
        /// Free length at its least within the change under pressure, or as given.
        length_mm: f64,
        /// Distance of the rigid ends.
        gap_mm: f64,
    },
    /// The search for the shape came to no end.
    #[error("poses[{pose}]: no shape was settled on at {length_mm:.2} mm; try a slightly different length")]
    Unsettled {
        /// Number of the pose, 0 for the first.
        pose: usize,
        /// Free length.
        length_mm: f64,
    },
    /// No length up to a long one keeps the least bend radius.
    #[error(
        "min_bend_radius_mm: no free length up to {up_to_mm:.0} mm keeps it in every pose; move or turn the ports, or take a hose that bends tighter"
    )]
    NoLength {
        /// The longest length tried.
        up_to_mm: f64,
    },
}

impl RouteError {
    /// The field of the question that has to change.
    pub fn field(&self) -> String {
        match self {
            Self::NoPort { field }
            | Self::Number { field, .. }
            | Self::NoDirection { field }
            | Self::UpAlong { field }
            | Self::UpNotInFirst { field }
            | Self::UpNeeded { field } => field.clone(),
            Self::NothingToSeek { field } => (*field).to_owned(),
            Self::NoShape { .. } => "free_length_mm".to_owned(),
            Self::Unsettled { pose, .. } => format!("poses[{pose}]"),
            Self::NoLength { .. } => "min_bend_radius_mm".to_owned(),
        }
    }
}
