//! A tag's label: its QR code at whole printer dots, and words beside it.

mod compose;
mod facts;
mod qr;

pub use facts::Fact;

use crate::drawing::{Drawing, DrawingError, Ink, to_pdf};
use compose::Plan;
use hosewright_core::tag::TagContent;
use hosewright_words::Words;
use thiserror::Error;

/// Size of a label and the dots of the printer it is for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LabelSize {
    /// Width in mm.
    pub width_mm: f64,
    /// Height in mm.
    pub height_mm: f64,
    /// Dots per inch of the printer, commonly 203, 300 or 600.
    pub dpi: f64,
}

/// What the QR code of a label holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Form {
    /// The whole text of the tag: the hose can be rebuilt from the label alone.
    FullText,
    /// The code alone, because the whole text has no room at modules a camera can read; every fact
    /// stands in words.
    CodeAlone,
}

/// A label, ready to print.
#[derive(Debug, Clone, PartialEq)]
pub struct Label {
    /// The drawing.
    pub drawing: Drawing,
    /// Size and printer it was made for.
    pub size: LabelSize,
    /// What its QR code holds.
    pub form: Form,
    /// What the QR code says when read.
    pub text: String,
    /// Version of the QR code, 1 to 40.
    pub version: i16,
    /// Error correction level of the QR code: `L`, `M`, `Q` or `H`.
    pub level: char,
    /// Side of a module in printer dots.
    pub module_dots: u32,
    /// Side of a module in mm.
    pub module_mm: f64,
    /// Facts that had no room in words. With the full text they stand in the QR code.
    pub left_off: Vec<Fact>,
}

/// Why a label could not be made.
#[derive(Debug, Error)]
pub enum LabelError {
    /// No size for a label, or no printer.
    #[error(
        "a label of {width_mm} x {height_mm} mm at {dpi} dots per inch can't be made; sides may be 10 to 300 mm and printers 150 to 1200 dots per inch"
    )]
    Size {
        /// Width.
        width_mm: f64,
        /// Height.
        height_mm: f64,
        /// Dots per inch.
        dpi: f64,
    },
    /// No room.
    #[error("a label of {width_mm} x {height_mm} mm at {dpi} dots per inch has no room for what must stand on it; {}", cure(.needed_height_mm))]
    TooSmall {
        /// Width.
        width_mm: f64,
        /// Height.
        height_mm: f64,
        /// Dots per inch.
        dpi: f64,
        /// The height that would do at this width, where there is one.
        needed_height_mm: Option<f64>,
    },
    /// The drawing could not be written.
    #[error(transparent)]
    Drawing(#[from] DrawingError),
}

fn cure(height_mm: &Option<f64>) -> String {
    match height_mm {
        Some(height) => format!("at this width it must be {height} mm high"),
        None => "take a wider one".to_owned(),
    }
}

/// Sides of a label that are made, in mm.
const SIDES_MM: std::ops::RangeInclusive<f64> = 10.0..=300.0;

/// Printers that labels are made for. Below, letters of a label can't be read; above is no printer.
const DPI: std::ops::RangeInclusive<f64> = 150.0..=1200.0;

/// Makes the label of a tag.
///
/// # Errors
/// When the size is none, or has no room for the code, the facts that must be read without a
/// phone, and a QR code with at least the tag's code in it.
pub fn label(tag: &TagContent, size: LabelSize, words: &Words) -> Result<Label, LabelError> {
    let LabelSize { width_mm, height_mm, dpi } = size;
    if !(SIDES_MM.contains(&width_mm) && SIDES_MM.contains(&height_mm) && DPI.contains(&dpi)) {
        return Err(LabelError::Size { width_mm, height_mm, dpi });
    }
    let plan = Plan::new(tag, words);
    plan.label(size).ok_or_else(|| LabelError::TooSmall {
        width_mm,
        height_mm,
        dpi,
        needed_height_mm: needed_height(&plan, size),
    })
}

/// The least height in whole mm at which a label of that width has room.
fn needed_height(plan: &Plan, size: LabelSize) -> Option<f64> {
    let heights = size.height_mm.ceil() as u32..=*SIDES_MM.end() as u32;
    heights.map(f64::from).find(|height_mm| plan.label(LabelSize { height_mm: *height_mm, ..size }).is_some())
}

impl Label {
    /// As SVG.
    pub fn to_svg(&self) -> String {
        self.drawing.to_svg()
    }

    /// As PNG, black and white, a pixel for each dot of the printer.
    ///
    /// # Errors
    /// When that is too many pixels.
    pub fn to_png(&self) -> Result<Vec<u8>, DrawingError> {
        self.drawing.to_png(self.size.dpi, Ink::Dots)
    }

    /// As a PDF of one page of the label's size.
    ///
    /// # Errors
    /// When the writer refuses.
    pub fn to_pdf(&self) -> Result<Vec<u8>, DrawingError> {
        to_pdf(std::slice::from_ref(&self.drawing), &self.text.lines().next().unwrap_or_default())
    }
}
