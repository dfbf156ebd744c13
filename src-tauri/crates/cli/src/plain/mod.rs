//! Answers as a person reads them on a terminal of 80 columns.

mod check;
mod find;
mod make;
mod oil;
mod print;
mod register;
mod route;
mod schema;
mod tag;
mod text;

pub use register::Left;
pub use schema::Schemas;

use hosewright_api::Answer;
use hosewright_core::check::Verdict;
use hosewright_words::Words;

/// What can be shown to a person.
pub trait Plain {
    /// The text.
    fn plain(&self, words: &Words) -> String;

    /// The verdict it gives, where it gives one.
    fn verdict(&self) -> Option<Verdict> {
        None
    }
}

impl<T: Plain> Plain for Answer<T> {
    fn plain(&self, words: &Words) -> String {
        self.content.plain(words)
    }

    fn verdict(&self) -> Option<Verdict> {
        self.content.verdict()
    }
}
