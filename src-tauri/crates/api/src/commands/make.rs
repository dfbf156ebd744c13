//! `make`: a spec that may be made -> its build sheet.

use super::File;
use super::check::checked;
use super::supplier;
use crate::{Answer, Api, ApiError};
use hosewright_core::check::{Checked, Question};
use hosewright_core::make::{self, BuildSheet, EndSettings, Filled, MakeError, SheetStep};
use hosewright_core::quantity::Millimetres;
use hosewright_papers::sheet::Paper;
use hosewright_words::Words;
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
    /// Whose table of the open register fills ends without settings; without, the one that fits where no other does.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub supplier: Option<String>,
    /// What the saw takes; without, what the settings of this device say.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub kerf_mm: Option<Millimetres>,
}

/// A spec that may be made -> parts, lengths, settings and steps with the cautions at their steps. An end without
/// settings of its own is filled from the supplier's table of the open register, where only one row fits.
///
/// # Errors
/// The check says stop, something without which nothing can be cut is missing, or a field can not be.
pub fn make(api: &mut Api, asked: MakeQuestion, _: &[u8]) -> Result<Answer<BuildSheet>, ApiError> {
    let prepared = Prepared::of(api, asked)?;
    let sheet = prepared.sheet(api)?;
    Ok(api.answer(sheet))
}

/// What is to be made, filled from the supplier's table and put through the check once.
#[derive(Debug)]
pub(super) struct Prepared {
    /// The question as it was answered.
    pub asked: MakeQuestion,
    /// Which ends were filled, and from whose table.
    filled: Vec<Filled>,
    /// What the check says of it; it may be a stop.
    pub checked: Checked,
    /// What the saw takes; none where nobody said.
    pub kerf: Option<Millimetres>,
}

impl Prepared {
    pub(super) fn of(api: &mut Api, mut asked: MakeQuestion) -> Result<Self, ApiError> {
        let filled = supplier::fill(api, &mut asked)?;
        let checked = checked(api, &asked.question)?;
        let kerf = match asked.kerf_mm {
            Some(kerf) => Some(kerf),
            None => api.settings()?.kerf_mm,
        };
        Ok(Self { asked, filled, checked, kerf })
    }

    /// Its build sheet; none of what the check stops.
    pub(super) fn sheet(&self, api: &Api) -> Result<BuildSheet, ApiError> {
        let Self { asked, filled, checked, kerf } = self;
        let mut sheet = make::make(api.catalogue, checked, &asked.settings, filled.clone(), *kerf)?;
        word(api.words(), &mut sheet.steps);
        Ok(sheet)
    }
}

/// The steps that the hoses of a batch have in common, with their cautions in words.
pub(super) fn shared_steps(api: &Api) -> Vec<SheetStep> {
    let mut steps = make::shared_steps(api.catalogue);
    word(api.words(), &mut steps);
    steps
}

fn word(words: &Words, steps: &mut [SheetStep]) {
    for caution in steps.iter_mut().flat_map(|step| &mut step.cautions) {
        caution.caution = words.say(&format!("caution-{}", caution.id), &[]);
    }
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

impl From<PaperSize> for Paper {
    fn from(size: PaperSize) -> Self {
        match size {
            PaperSize::A4 => Paper::A4,
            PaperSize::Letter => Paper::Letter,
        }
    }
}

/// Kinds of paper files.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum PaperKind {
    /// All pages.
    Pdf,
    /// Plain text of 80 columns.
    Text,
    /// What stands on it, as a document for other programs.
    Json,
    /// The pages as pictures below each other, to be looked at before they are printed.
    Svg,
}

/// The build sheet as a file.
///
/// # Errors
/// As [`make`], and when the pages can not be written.
pub fn paper(api: &mut Api, asked: PaperQuestion, _: &[u8]) -> Result<File, ApiError> {
    let made = make(api, asked.make, &[])?;
    let sheet = crate::sheet::sheet(&made.content, &asked.subject, &api.words);
    super::paper::file(api, "build-sheet", &sheet, &made, asked.paper, asked.kind)
}
