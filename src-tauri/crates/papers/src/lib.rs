//! Papers: labels, build sheets, tables and calendars.
//!
//! A paper is one [`Drawing`]: a list of operations in millimetres that is written as SVG, PNG or
//! PDF. The font is compiled in, so a paper looks the same on every machine.

pub mod calendar;
mod drawing;
mod label;
pub mod sheet;
pub mod table;

pub use drawing::{Anchor, Drawing, DrawingError, Ink, Op, Weight, to_pdf};
pub use label::{Fact, Form, Label, LabelError, LabelSize, label};
