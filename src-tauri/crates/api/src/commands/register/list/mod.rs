//! Hose lists in and out: one row for each hose that sat, or sits, at a place.

mod everything;
mod export;
mod import;
mod names;
mod plan;
mod stays;

pub use export::{Export, ExportKind, export};
pub use import::{
    Import, Imported, ListMatchQuestion, ListMatches, RowIs, RowRefused, RowTold, import, matches,
};
