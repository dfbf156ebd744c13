//! Answers as a person reads them on a terminal of 80 columns.

mod bench;
mod care;
mod check;
mod cut;
mod explain;
mod find;
mod fleet;
mod lives;
mod make;
mod office;
mod oil;
mod photo;
mod place;
mod press;
mod print;
mod register;
mod route;
mod schema;
mod share;
mod sheet;
mod stock;
mod supplier;
mod tag;
mod text;

pub use care::DueShown;
pub use cut::CutShown;
pub use fleet::FleetHandedOn;
pub use make::SheetShown;
pub use register::Left;
pub use schema::Schemas;
pub use tag::{Stocks, TagAgain, TagShown};
pub use text::wrapped_lines;

use hosewright_api::{Answer, ApiError};
use hosewright_core::check::Verdict;
use hosewright_words::Words;

/// What can be shown to a person.
pub trait Plain {
    /// The text.
    fn plain(&self, words: &Words) -> String;

    /// Why there is nothing to answer with, where there is nothing.
    fn nothing(&self, _: &Words) -> Option<ApiError> {
        None
    }

    /// The verdict it gives, where it gives one.
    fn verdict(&self) -> Option<Verdict> {
        None
    }

    /// The exit code it ends with: 1 where the verdict is stop.
    fn exit(&self) -> u8 {
        u8::from(self.verdict() == Some(Verdict::Stop))
    }
}

impl<T: Plain> Plain for Answer<T> {
    fn plain(&self, words: &Words) -> String {
        self.content.plain(words)
    }

    fn nothing(&self, words: &Words) -> Option<ApiError> {
        self.content.nothing(words)
    }

    fn verdict(&self) -> Option<Verdict> {
        self.content.verdict()
    }

    fn exit(&self) -> u8 {
        self.content.exit()
    }
}
