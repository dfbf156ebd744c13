//! One error for every way in: a code that maps to an exit code, the field it is about, and a
//! message that says what was wrong and what would be right.

use hosewright_words::{Say, Words};
use schemars::JsonSchema;
use serde::Serialize;
use std::io::ErrorKind;
use std::path::Path;
use ts_rs::TS;

/// What kind of answer an error is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Code {
    /// The input is wrong: a field, its value, or the call of the program.
    Input,
    /// There is nothing to answer with: a picture without a tag, no such hose.
    Nothing,
    /// A file or register can not be read or written.
    File,
}

impl Code {
    /// The exit code of the command line.
    pub const fn exit(self) -> u8 {
        match self {
            Code::Input => 2,
            Code::Nothing => 3,
            Code::File => 4,
        }
    }
}

/// An error as every way in shows it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS, thiserror::Error)]
#[error("{message}")]
pub struct ApiError {
    /// What kind.
    pub code: Code,
    /// The field or file it is about; empty when it is about the whole.
    pub field: String,
    /// What was wrong and what would be right.
    pub message: String,
    /// The words of the message, where the catalogues have it, so that it is said in the language in use.
    #[serde(skip)]
    #[schemars(skip)]
    #[ts(skip)]
    pub(crate) words: Option<Said>,
}

/// A message of the catalogues.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Said {
    pub(crate) id: &'static str,
    pub(crate) values: Vec<(&'static str, String)>,
}

impl ApiError {
    /// The input is wrong.
    pub fn input(field: impl Into<String>, message: impl ToString) -> Self {
        Self { code: Code::Input, field: field.into(), message: message.to_string(), words: None }
    }

    /// There is nothing to answer with.
    pub fn nothing(field: impl Into<String>, message: impl ToString) -> Self {
        Self { code: Code::Nothing, field: field.into(), message: message.to_string(), words: None }
    }

    /// A file or register can not be read or written.
    pub fn file(field: impl Into<String>, message: impl ToString) -> Self {
        Self { code: Code::File, field: field.into(), message: message.to_string(), words: None }
    }

    /// The same error, about that field or file.
    #[must_use]
    pub fn about(self, field: String) -> Self {
        Self { field, ..self }
    }

    /// The same, in the language in use where the catalogues have it.
    pub(crate) fn in_words(self, words: &Words) -> Self {
        let Some(Said { id, values }) = &self.words else { return self };
        let values: Vec<(&str, &dyn Say)> =
            values.iter().map(|(name, value)| (*name, value as &dyn Say)).collect();
        Self { message: words.say(id, &values), ..self }
    }

    /// The system refuses a file that was to be `done` something to: read, written.
    pub fn refused(path: &Path, done: &str, error: &std::io::Error) -> Self {
        let file = path.display();
        Self::file(file.to_string(), format!("{file} can not be {done}: {}", why(error)))
    }
}

/// What the system said of a file, without its number.
fn why(error: &std::io::Error) -> String {
    match error.kind() {
        ErrorKind::NotFound => "there is no such file or folder".to_owned(),
        ErrorKind::PermissionDenied => "it is not allowed; check its permissions".to_owned(),
        ErrorKind::IsADirectory => "it is a folder; a file is expected".to_owned(),
        ErrorKind::StorageFull => "the disk is full; make room and try again".to_owned(),
        _ => error.to_string().split(" (os error").next().unwrap_or_default().to_lowercase(),
    }
}
