//! `make` in plain text: the sheet itself.

use super::Plain;
use super::text::COLUMNS;
use hosewright_core::check::Verdict;
use hosewright_core::make::BuildSheet;
use hosewright_words::Words;

impl Plain for BuildSheet {
    fn plain(&self, words: &Words) -> String {
        hosewright_api::sheet(self, "", words).to_text(COLUMNS, words)
    }

    fn verdict(&self) -> Option<Verdict> {
        Some(self.verdict)
    }
}
