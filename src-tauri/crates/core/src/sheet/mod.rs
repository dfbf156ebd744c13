//! Sheets of cells as others write them: a person says which column is what, and every row is taken or listed with its reason.
//!
//! One way for all of them; what the columns can be is said by a [`Column`].

pub mod cell;
mod column;
mod day;
mod heading;
mod how;

pub(crate) use column::longest;
pub use column::{Asks, Column, Holds, Unit};
pub use day::{DayError, DayOrder, Part, day};
pub use heading::{HeadingFound, Headings, headings};
pub use how::{Cell, How, Matched, Sheet, SheetError, SheetRefused, SheetRow};
