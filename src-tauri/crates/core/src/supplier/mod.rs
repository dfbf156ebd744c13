//! The crimp tables of the user's own suppliers: a sheet of cells -> rows, each taken or refused with its reason.
//!
//! None is shipped: what only a fitting maker knows is never invented.

mod cell;
mod column;
mod read;
mod row;

pub use column::Column;
pub use read::{SheetRead, SheetRepeated, read};
pub use row::{RowError, SupplierRow};
