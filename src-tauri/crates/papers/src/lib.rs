//! Papers: labels, build sheets, tables and calendars.
//!
//! A paper is one [`Drawing`]: a list of operations in millimetres that is written as SVG, PNG or
//! PDF. The font is compiled in, so a paper looks the same on every machine.

mod assembly;
pub mod calendar;
mod drawing;
mod label;
mod life;
pub mod sheet;
mod signature;
pub mod table;

pub use assembly::AssemblyDrawn;
pub use drawing::{Anchor, Drawing, DrawingError, Ink, Op, Weight, stacked, to_pdf};
pub use label::{Fact, Label, LabelError, Wanted, code, label, on_pages, tags};
pub use life::LivesDrawn;
pub use signature::signature;
