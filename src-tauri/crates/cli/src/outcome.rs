//! What a command ends with: text on standard output and an exit code, or an error.

use crate::plain::{Plain, wrapped_lines};
use hosewright_api::ApiError;
use hosewright_words::Words;
use serde::Serialize;
use std::io::Write;
use std::process::ExitCode;

/// Text for standard output and the exit code.
pub struct Outcome {
    /// What is printed.
    pub text: String,
    /// The exit code.
    pub exit: u8,
}

impl Outcome {
    /// An answer, as JSON or plainly.
    ///
    /// # Errors
    /// When there is nothing to answer with, or the answer can not be written as JSON, which only a number
    /// that is none can cause.
    pub fn of<T: Serialize + Plain>(answer: &T, json: bool, words: &Words) -> Result<Self, ApiError> {
        if let Some(nothing) = answer.nothing(words) {
            return Err(nothing);
        }
        let text = if json {
            serde_json::to_string_pretty(answer).map_err(|error| ApiError::input("", error))?
        } else {
            answer.plain(words)
        };
        Ok(Self { text, exit: answer.exit() })
    }
}

/// Prints a text. A reader that has gone away is no failure of ours.
pub fn print(text: &str) -> ExitCode {
    let mut out = std::io::stdout().lock();
    match writeln!(out, "{}", text.trim_end()) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) if error.kind() == std::io::ErrorKind::BrokenPipe => ExitCode::SUCCESS,
        Err(_) => ExitCode::from(4),
    }
}

/// Says an error on standard error.
pub fn fail(error: &ApiError, json: bool) -> ExitCode {
    let mut out = std::io::stderr().lock();
    // Where even standard error is gone, the exit code still tells.
    let _ = if json {
        writeln!(out, "{}", serde_json::json!({ "error": error }))
    } else if error.field.is_empty() || error.message.contains(&error.field) {
        writeln!(out, "{}", wrapped_lines(&format!("hosewright: {}", error.message)))
    } else {
        writeln!(out, "{}", wrapped_lines(&format!("hosewright: {}: {}", error.field, error.message)))
    };
    ExitCode::from(error.code.exit())
}
