//! The JSON Schema of commands.

use super::Plain;
use hosewright_api::ApiError;
use hosewright_api::commands::{Described, NAMES, described};
use hosewright_words::Words;
use serde::Serialize;
use serde_json::Value;

/// Schemas of one command, or the names of all.
#[derive(Debug, Serialize)]
#[serde(untagged)]
pub enum Schemas {
    /// Names of all commands.
    Names {
        /// In the order of the day.
        commands: &'static [&'static str],
    },
    /// One command.
    One {
        /// Its name.
        command: &'static str,
        /// JSON Schema of its question.
        input: Value,
        /// JSON Schema of its answer.
        output: Value,
    },
}

impl Schemas {
    /// The schemas of a command, or without a name the list of commands.
    ///
    /// # Errors
    /// There is no such command.
    pub fn of(name: Option<&str>) -> Result<Self, ApiError> {
        let Some(name) = name else { return Ok(Self::Names { commands: NAMES }) };
        let found = described().into_iter().find(|command| command.name == name);
        let Described { name, input, output, .. } = found.ok_or_else(|| {
            ApiError::input("name", format!("\"{name}\" is no command; there are {}", NAMES.join(", ")))
        })?;
        Ok(Self::One { command: name, input: input.to_value(), output: output.to_value() })
    }
}

impl Plain for Schemas {
    fn plain(&self, _: &Words) -> String {
        match self {
            Self::Names { commands } => commands.join("\n"),
            // A schema is read by programs: its plain form is its JSON.
            Self::One { .. } => serde_json::to_string_pretty(self).unwrap_or_default(),
        }
    }
}
