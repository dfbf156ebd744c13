//! Lists of hoses as offices keep them: one row for each hose that sat, or sits, at a place.

mod column;
mod end_words;
mod read;
mod row;

pub use column::Column;
pub use read::{ListRead, Reader, read};
pub use row::Row;
