//! A tag's label: its QR code at whole printer dots, and words beside it.

mod compose;
mod facts;
mod lettering;
mod qr;
mod sheet;
mod tags;

pub use facts::Fact;
pub use sheet::on_pages;
pub use tags::tags;

use crate::drawing::{Drawing, DrawingError, Ink, to_pdf};
use compose::{Plan, Size};
use hosewright_core::quantity::Millimetres;
use hosewright_core::tag::{
    Curve, LabelDirection, LabelForm, LabelHolds, LabelStock, StockError, TagContent, seen,
};
use hosewright_words::Words;
use thiserror::Error;

/// A label that is wanted.
#[derive(Debug, Clone, Copy)]
pub struct Wanted<'a> {
    /// What it says.
    pub tag: &'a TagContent,
    /// What it is printed on.
    pub stock: &'a LabelStock,
    /// Diameter over the hose's cover; only a label that is stuck round the hose needs it.
    pub cover_od_mm: Option<Millimetres>,
    /// Whether the hose had a label before: the new one says so.
    pub reprint: bool,
}

/// A label, ready to print.
#[derive(Debug, Clone, PartialEq)]
pub struct Label {
    /// The drawing.
    pub drawing: Drawing,
    /// The stock it was made for.
    pub stock: LabelStock,
    /// What it holds.
    pub holds: LabelHolds,
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
    /// How it lies on the hose, where it is stuck round it.
    pub round: Option<(Curve, LabelDirection)>,
}

/// Why a label could not be made.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum LabelError {
    /// No such stock.
    #[error(transparent)]
    Stock(#[from] StockError),
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
    /// It is to be stuck round a hose whose diameter nobody knows.
    #[error(
        "a label that is stuck round the hose needs the diameter over its cover: measure it, or take a flag or a plate"
    )]
    NoDiameter,
    /// The hose is too thin for a code that a camera reads round it.
    #[error(
        "round a hose of {cover_od_mm:.1} mm a camera sees a code of {seen_mm:.1} mm at most, which is less than one takes at {dpi} dots per inch; take a flag or a plate, or a printer with finer dots"
    )]
    Curved {
        /// Diameter over the cover.
        cover_od_mm: f64,
        /// How wide a code may be round it.
        seen_mm: f64,
        /// Dots per inch.
        dpi: f64,
    },
}

fn cure(height_mm: &Option<f64>) -> String {
    match height_mm {
        Some(height) => format!("at this width it must be {height} mm high"),
        None => "take a wider one".to_owned(),
    }
}

/// Makes the label of a tag.
///
/// # Errors
/// When the stock is none, or has no room for the code and what warns, or a camera sees too little of it round the hose.
pub fn label(wanted: Wanted<'_>, words: &Words) -> Result<Label, LabelError> {
    let stock = wanted.stock;
    stock.plausible()?;
    let round = round(&wanted)?;
    let plan = Plan::new(wanted.tag, wanted.reprint, words);
    let size = Size::of(stock, round);
    if let Some(label) = plan.label(stock, size, round) {
        return Ok(label);
    }
    let LabelStock { width_mm, height_mm, dpi, .. } = *stock;
    if let Some((curve, _)) = round
        && plan.label(stock, size.flat(), None).is_some()
    {
        let (cover_od_mm, seen_mm) = (curve.cover_od_mm.get(), curve.seen_mm(1).get());
        return Err(LabelError::Curved { cover_od_mm, seen_mm, dpi });
    }
    let needed_height_mm = needed_height(&plan, stock, round);
    Err(LabelError::TooSmall { width_mm, height_mm, dpi, needed_height_mm })
}

/// A text as a QR code alone, for a screen: its modules and its quiet zone. None where no code holds it.
pub fn code(text: &str) -> Option<Drawing> {
    let code = qr::Code::smallest(text, qrcode::EcLevel::M)?;
    let module = qr::GOOD_MODULE_MM;
    let whole = code.with_quiet() as f64 * module;
    let mut drawing = Drawing::new(whole, whole);
    let quiet = qr::QUIET as f64 * module;
    let dark = code.modules(text)?;
    drawing.ops.push(crate::Op::Modules { x: quiet, y: quiet, module, side: code.side(), dark });
    Some(drawing)
}

/// How a label lies that is stuck round its hose. Its words run along the hose, where they are read without going round
/// it, unless its height would then cover itself and its width would not.
fn round(wanted: &Wanted<'_>) -> Result<Option<(Curve, LabelDirection)>, LabelError> {
    if wanted.stock.form != LabelForm::Wrap {
        return Ok(None);
    }
    let curve = wanted.cover_od_mm.and_then(seen).ok_or(LabelError::NoDiameter)?;
    let around = curve.around_mm.get();
    let turned = wanted.stock.height_mm > around && wanted.stock.width_mm <= around;
    Ok(Some((curve, if turned { LabelDirection::Around } else { LabelDirection::Along })))
}

/// The least height in whole mm at which a label of that width has room.
fn needed_height(plan: &Plan, stock: &LabelStock, round: Option<(Curve, LabelDirection)>) -> Option<f64> {
    let has_room = |height_mm: &f64| {
        let higher = LabelStock { height_mm: *height_mm, ..stock.clone() };
        plan.label(&higher, Size::of(&higher, round), round).is_some()
    };
    let highest = *LabelStock::SIDES_MM.end();
    let heights = stock.height_mm.ceil() as u32..=highest as u32;
    // A width that is too narrow for the words is so at any height.
    has_room(&highest).then(|| heights.map(f64::from).find(has_room)).flatten()
}

impl Label {
    /// Side of the QR code without its quiet zone.
    pub fn code_mm(&self) -> f64 {
        f64::from(17 + 4 * self.version) * self.module_mm
    }

    /// As SVG.
    pub fn to_svg(&self) -> String {
        self.drawing.to_svg()
    }

    /// As PNG, black and white, a pixel for each dot of the printer.
    ///
    /// # Errors
    /// When that is too many pixels.
    pub fn to_png(&self) -> Result<Vec<u8>, DrawingError> {
        self.drawing.to_png(self.stock.dpi, Ink::Dots)
    }

    /// As a PDF of one page of the label's size.
    ///
    /// # Errors
    /// When the writer refuses.
    pub fn to_pdf(&self) -> Result<Vec<u8>, DrawingError> {
        to_pdf(std::slice::from_ref(&self.drawing), self.text.lines().next().unwrap_or_default())
    }
}
