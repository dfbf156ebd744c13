//! `make`: a spec that may be made -> its build sheet.

use super::File;
use super::check::checked;
use crate::{Answer, Api, ApiError};
use hosewright_core::check::Question;
use hosewright_core::make::{self, BuildSheet, EndSettings, MakeError};
use hosewright_papers::sheet::Paper;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

impl From<MakeError> for ApiError {
    fn from(error: MakeError) -> Self {
        ApiError::input(error.field(), &error)
    }
}

/// What is to be made, and the user's own settings for its ends.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct MakeQuestion {
    /// What `check` is asked.
    pub question: Question,
    /// Insertion, ferrule, die set and crimp diameter of each end, from the user's supplier.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub settings: Vec<EndSettings>,
}

/// A spec that may be made -> parts, lengths, settings and steps with the cautions at their steps.
///
/// # Errors
/// The check says stop, something without which nothing can be cut is missing, or a field can not be.
pub fn make(api: &mut Api, asked: MakeQuestion, _: &[u8]) -> Result<Answer<BuildSheet>, ApiError> {
    let checked = checked(api, &asked.question)?;
    Ok(api.answer(make::make(api.catalogue, &checked, &asked.settings)?))
}

/// A build sheet as a paper.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct PaperQuestion {
    /// What is to be made.
    pub make: MakeQuestion,
    /// What the sheet is about, such as the tag's code or the place.
    #[serde(default)]
    pub subject: String,
    /// Size of the paper.
    pub paper: PaperSize,
    /// The kind of file.
    #[serde(rename = "as")]
    pub kind: PaperKind,
}

/// Sizes of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum PaperSize {
    /// ISO 216.
    A4,
    /// ANSI/ASME Y14.1.
    Letter,
}

/// Kinds of paper files.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum PaperKind {
    /// All pages.
    Pdf,
    /// Plain text of 80 columns.
    Text,
}

/// Columns of a sheet as plain text: those of a terminal.
const COLUMNS: usize = 80;

/// The build sheet as a file.
///
/// # Errors
/// As [`make`], and when the pages can not be written.
pub fn paper(api: &mut Api, asked: PaperQuestion, _: &[u8]) -> Result<File, ApiError> {
    let build = make(api, asked.make, &[])?.content;
    let sheet = crate::sheet::sheet(&build, &asked.subject, &api.words);
    let paper = match asked.paper {
        PaperSize::A4 => Paper::A4,
        PaperSize::Letter => Paper::Letter,
    };
    let (ending, mime, bytes) = match asked.kind {
        PaperKind::Text => ("txt", "text/plain; charset=utf-8", sheet.to_text(COLUMNS, &api.words).into_bytes()),
        PaperKind::Pdf => {
            let pdf = hosewright_papers::to_pdf(&sheet.pages(paper, &api.words));
            ("pdf", "application/pdf", pdf.map_err(|error| ApiError::file("", error))?)
        }
    };
    Ok(File { name: format!("build-sheet.{ending}"), mime, bytes })
}
