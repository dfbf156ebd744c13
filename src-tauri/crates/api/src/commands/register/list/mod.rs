//! Hose lists in and out: one row for each hose that sat, or sits, at a place.

mod columns;
mod export;
mod import;
mod plan;
mod row;
mod stays;

pub use export::{Export, ExportKind, export};
pub use import::{Import, Imported, RowRefused, import};
