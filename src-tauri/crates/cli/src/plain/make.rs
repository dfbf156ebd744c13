//! `make` in plain text: the sheet itself.

use super::Plain;
use super::text::COLUMNS;
use hosewright_api::Answer;
use hosewright_core::check::Verdict;
use hosewright_core::make::BuildSheet;
use hosewright_words::Words;
use serde::Serialize;

/// A build sheet and what it is for.
#[derive(Debug, Serialize)]
#[serde(transparent)]
pub struct SheetShown {
    /// The answer.
    pub sheet: Answer<BuildSheet>,
    /// What it is for.
    #[serde(skip)]
    pub subject: String,
}

impl Plain for SheetShown {
    fn plain(&self, words: &Words) -> String {
        hosewright_api::sheet(&self.sheet.content, &self.subject, words).to_text(COLUMNS, words)
    }

    fn verdict(&self) -> Option<Verdict> {
        Some(self.sheet.content.verdict)
    }
}
