//! Why no build sheet is given.

use crate::spec::Role;
use thiserror::Error;

/// Why no build sheet is given.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum MakeError {
    /// The check says stop.
    #[error("the check says stop ({}); nothing is made before that is cured", .rules.join(", "))]
    Stopped {
        /// The rules that stopped it.
        rules: Vec<String>,
    },
    /// The spec lacks what a sheet can't be without.
    #[error("{field} is missing; {expected} is expected")]
    Missing {
        /// The field.
        field: &'static str,
        /// What would be right.
        expected: &'static str,
    },
    /// Two settings are given for one end.
    #[error("settings for end {0:?} are given twice; one for A and one for B are expected")]
    SettingsTwice(Role),
    /// A kerf that can not be.
    #[error("kerf_mm is {value}; what the saw takes, from 0 to 20 mm, is expected")]
    Kerf {
        /// What was given, as text.
        value: String,
    },
    /// A setting that can not be.
    #[error("settings.{field} is {value} for end {role:?}; a number from 0 up is expected")]
    Setting {
        /// The end.
        role: Role,
        /// The field.
        field: &'static str,
        /// What was given, as text: what can not be a number is written too.
        value: String,
    },
}

impl MakeError {
    /// The field that is wrong; empty when it is the whole.
    pub fn field(&self) -> &str {
        match self {
            Self::Stopped { .. } => "",
            Self::Missing { field, .. } | Self::Setting { field, .. } => field,
            Self::SettingsTwice(_) => "settings",
            Self::Kerf { .. } => "kerf_mm",
        }
    }
}
